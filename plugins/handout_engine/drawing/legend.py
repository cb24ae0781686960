"""A key to the lines and faces of all drawings, drawn by the same hand as they are."""

from __future__ import annotations

from collections.abc import Iterable

from handout_engine.amounts.values import sentence
from handout_engine.drawing.breaks import zigzag
from handout_engine.drawing.scene import (
    Area,
    Grain,
    Line,
    Note,
    Scene,
    Shape,
    Stroke,
    Tone,
    rectangle,
)

LINES = (
    (Line.CUT, "cut edge, or outline of the cloth"),
    (Line.STITCH, "stitching"),
    (Line.FOLD, "fold"),
    (Line.GATHER, "gathering row"),
    (Line.HIDDEN, "what lies behind, or meets"),
    (Line.THIN, "crease, or measure"),
    (Line.BREAK, "break: cloth is left out, or goes on"),
)
TONES = (
    (Tone.RIGHT, "right side of the cloth"),
    (Tone.SECOND, "right side of a second cloth"),
    (Tone.WRONG, "wrong side"),
    (Tone.SHADE, "the other part, or the shade of a fold"),
)
WIDE, ROW, SAMPLE = 174.0, 11.0, 44.0


def legend() -> Scene:
    """Each kind of line and face with its meaning, one below another."""
    every = [*(words for _, words in LINES), *(words for _, words in TONES), "lengthwise grain"]
    return Scene(
        sentence("Key to the drawings"),
        sentence("Samples of each line and face: " + "; ".join(every) + "."),
        (
            Area(rectangle(0, 0, WIDE, ROW * len(every)), Tone.GROUND, outline=None),
            *_samples(),
            *(
                Note((SAMPLE + 10, ROW * (row + 0.5)), sentence(words), anchor="start")
                for row, words in enumerate(every)
            ),
        ),
        tallest=400.0,
    )


def _samples() -> Iterable[Shape]:
    for row, (line, _) in enumerate(LINES):
        height = ROW * (row + 0.5)
        ends = (4.0, height), (SAMPLE, height)
        yield Stroke(zigzag(*ends) if line is Line.BREAK else ends, line)
    for row, (tone, _) in enumerate(TONES, len(LINES)):
        yield Area(rectangle(4, ROW * (row + 0.15), SAMPLE - 4, ROW * 0.7), tone)
    yield Grain((SAMPLE / 2, ROW * (len(LINES) + len(TONES) + 0.5)), (1.0, 0.0))
