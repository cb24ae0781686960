"""Lists what a change of the code changes: every amount, every sentence, every page.

    python tests/differences.py write FOLDER             what today's code works out
    python tests/differences.py compare OLD NEW          two such folders, or two built sites

`write` works every technique and garment out at three sets of measures (as it comes, a small one,
a large one) and keeps each as JSON; `compare` prints a line for each value, step or piece that
differs, and of two sites a line for each page whose words differ. Nothing is judged here: each line
is there to be explained.
"""

from __future__ import annotations

import json
import re
import sys
from collections.abc import Iterator, Mapping
from difflib import unified_diff
from fractions import Fraction
from pathlib import Path
from typing import Any

from handout_engine.amounts.inputs import declared_inputs
from handout_engine.amounts.kinds import LengthKind, Raw
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.reading import read_length
from handout_engine.amounts.refusals import RefusalError, RefusalsError
from handout_engine.amounts.saying import Tape
from handout_engine.register import find, keys
from handout_engine.working.technique import Technique, make
from handout_site.spelled import as_json

TAPE = Tape(finest=32)
SIZES = {"usual": "62", "small": "50", "large": "98"}
"""What a garment is made for in each set; a technique's lengths go by the factors below."""
FACTORS = {"usual": Fraction(1), "small": Fraction(4, 5), "large": Fraction(5, 4)}
TAG = re.compile(r"<(script|style|svg)\b.*?</\1>|<[^>]+>", re.DOTALL)
"""Drawings are compared by looking at them, so their lettering is left out."""


def measures(technique: type[Technique], named: str) -> dict[str, Raw]:
    """What is written for a set: a garment's size, or a technique's lengths made smaller or larger.

    A length that its bounds or the technique refuse at that factor stays as it comes.
    """
    inputs = declared_inputs(technique)
    if any(each.name == "size" for each in inputs):
        return {"size": SIZES[named]}
    chosen: dict[str, Raw] = {}
    for each in inputs if FACTORS[named] != 1 else ():
        if isinstance(each.kind, LengthKind) and each.default is not None:
            tried = Length(read_length(each.default).mm * FACTORS[named])
            if not isinstance(spelled(technique, {**chosen, each.name: tried}), str):
                chosen[each.name] = tried
    return chosen


def spelled(technique: type[Technique], written: Mapping[str, Raw]) -> dict[str, Any] | str:
    """The working as plain data, or the sentence that refuses it."""
    try:
        return as_json(make(technique, written).work(), TAPE)
    except (RefusalError, RefusalsError) as refusal:
        return str(refusal)


def write(folder: Path) -> None:
    """Keep every technique at every set of measures."""
    folder.mkdir(parents=True, exist_ok=True)
    for key in keys():
        technique = find(key)
        for named in FACTORS:
            worked = spelled(technique, measures(technique, named))
            text = json.dumps(worked, indent=1, ensure_ascii=False)
            (folder / f"{key}.{named}.json").write_text(text, encoding="utf-8")


def leaves(data: Any, way: str = "") -> Iterator[tuple[str, Any]]:
    """Every plain figure or sentence of nested data, with the way to it."""
    match data:
        case {"mm": _, "text": text}:
            yield way, text
        case dict():
            for name, each in data.items():
                yield from leaves(each, f"{way}/{name}")
        case list():
            for number, each in enumerate(data):
                yield from leaves(each, f"{way}/{number}")
        case _:
            yield way, data


def compare_workings(old: Path, new: Path) -> Iterator[str]:
    """A line for each figure or sentence that only one of them has, or that differs."""
    for name in sorted({each.name for folder in (old, new) for each in folder.glob("*.json")}):
        before, after = (_leaves_of(folder / name) for folder in (old, new))
        for way in sorted(before.keys() | after.keys()):
            was, now = before.get(way, "nothing"), after.get(way, "nothing")
            if was != now:
                yield f"{name}{way}: {was} -> {now}"


def _leaves_of(path: Path) -> dict[str, Any]:
    return dict(leaves(json.loads(path.read_text(encoding="utf-8")))) if path.exists() else {}


def compare_sites(old: Path, new: Path) -> Iterator[str]:
    """A line for each file that only one site has, and each line of words that differs."""
    pages = {
        each.relative_to(folder)
        for folder in (old, new)
        for each in folder.rglob("*.html")
        if "sheets" not in each.parts
    }
    for page in sorted(pages):
        before, after = (_words(folder / page) for folder in (old, new))
        if before is None or after is None:
            yield f"{page}: {'only new' if before is None else 'only old'}"
            continue
        for line in unified_diff(before, after, lineterm="", n=0):
            if line[0] in "+-" and line[:3] not in ("+++", "---"):
                yield f"{page}: {line}"


def _words(path: Path) -> list[str] | None:
    if not path.exists():
        return None
    lines = TAG.sub("\n", path.read_text(encoding="utf-8")).split("\n")
    return [line.strip() for line in lines if line.strip()]


def main(words: list[str]) -> int:
    """Write a folder, or compare two; 2 for anything else."""
    match words:
        case ["write", folder]:
            write(Path(folder))
        case ["compare", old, new]:
            sites = (Path(old) / "index.html").exists()
            found = (compare_sites if sites else compare_workings)(Path(old), Path(new))
            print(*found, sep="\n")
        case _:
            print(__doc__)
            return 2
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
