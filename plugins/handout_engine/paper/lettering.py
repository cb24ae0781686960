"""How much room words take on paper, in the font that paper drawings are written with.

Widths are those of DejaVu Sans, in classes of letters; the fonts named after it are narrower, so
that words which fit by this reckoning fit in them too.
"""

from __future__ import annotations

import re
from functools import lru_cache

FONT = "DejaVu Sans, Noto Sans, sans-serif"
ASCENT, DESCENT = 0.78, 0.24
"""How far letters reach above and below their line, for each unit of their size."""
BOLDER = 1.14
"""How much wider bold letters are."""

_CLASSES = (
    (0.28, "'ijl"),
    (0.32, " ,.IJ·"),
    (0.36, "-/:;f|"),
    (0.42, "!()[]tr"),
    (0.5, '"*_`°'),
    (0.56, "?Lcsz"),
    (0.6, "Fkvxy"),
    (0.64, "0123456789EPSTYabdeghnopqu"),
    (0.7, "ABCKRVXZ"),
    (0.78, "&DGHNU"),
    (0.84, "+<=>OQw×→←↑↓"),
    (0.9, "M"),
)
_WIDTHS = {letter: round(width * 100) for width, letters in _CLASSES for letter in letters}
_OTHER = 100
_HELD = "\u00a0"
_WHOLE = re.compile(r"(?<=\d) (?=\d+/\d|(?:in|mm|cm|m|yd)\b|%)|(?<=\bcut) (?=\d)")


def width(words: str, size: float, bold: bool = False) -> float:
    """How wide words are in letters of a size, in the size's unit; rather too much than too little.

    Widths are added as whole hundredths, so that the sum is the same on every machine.
    """
    return _hundredths(words) / 100 * size * (BOLDER if bold else 1.0)


@lru_cache(maxsize=1000)
def _hundredths(words: str) -> int:
    return sum(_WIDTHS.get(letter, _OTHER) for letter in words)


def wrapped(words: str, room: float, size: float, bold: bool = False) -> list[str]:
    """The words in lines that are at most as wide as the room; a longer word has its own line.

    A number stays with its fraction and its unit, and "cut" with how often.
    """
    lines: list[str] = []
    for word in _WHOLE.sub(_HELD, words).split(" "):
        longer = f"{lines[-1]} {word}" if lines else word
        if lines and width(longer.replace(_HELD, " "), size, bold) <= room:
            lines[-1] = longer
        else:
            lines.append(word)
    return [line.replace(_HELD, " ") for line in lines]
