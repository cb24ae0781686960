"""Figures typed into the prose of a handout: none repeats what a block of its page holds.

Such a figure stays when the reader changes the measure, and the sentence is then untrue. What is
said of a measure is put in by its name; a fact of a source, or a rule, may be typed, and is listed
here with the reason.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction
from pathlib import Path

import pytest

from handout_engine.amounts.inputs import declared_inputs
from handout_engine.amounts.lengths import Length, NamedLength
from handout_engine.amounts.reading import UNITS, read_length
from handout_engine.amounts.saying import Amount, Tape
from handout_engine.amounts.thread_counts import read_thread_count
from handout_engine.pages.page import Page, work_page
from handout_engine.register import find
from handout_site.fences import INLINE
from handout_site.reading import read_blocks
from small_sites import REPOSITORY

HANDOUTS = REPOSITORY / "handouts"
PAGES = sorted(path for path in HANDOUTS.rglob("*.md"))

TYPED = {
    "bias/piping.md": {"1/16 to 1/8 in": "which cords are for what"},
    "closures/lap-placket.md": {"an inch": "a seam to unpick, of any length"},
    "closures/tie-pair.md": {"two ties": "a pair"},
    "edges/curved-hem.md": {"360 degrees": "a full circle"},
    "lattice/lattice-panel.md": {"two tubes": "between which a gap is measured"},
    "materials/needle-numbers.md": {"a millimetre": "in hundredths of it"},
    "materials/thread-amount.md": {"two threads": "of a lockstitch"},
    "nursery/nap-cover.md": {"One yard": "by which it is said what a cloth gives"},
    "nursery/shawl-square.md": {"A yard": "what is usual"},
    "bias/single-binding.md": {"3/8 in": "what a textbook says"},
    "projects/christening-slip.md": {
        "1/8 in": "what to write for a variation", "5/8 in": "the same", "2 in": "the same",
    },
    "projects/puffed-bonnet.md": {
        "1 in": "what to write for a variation", "1 1/4 in": "the same", "2 in": "the same",
        "an inch": "a rule of the eye",
    },
    "tucks/graduated-tucks.md": {"an eighth of an inch": "the least that is seen"},
    "projects/tucked-summer-dress.md": {
        "1/2 in": "what to write for a variation", "1 in": "the same", "1/4 in": "the same",
    },
    "tucks/tuck-set.md": {"0 in": "what to write for a variation"},
    "tucks/twin-needle-clearance.md": {
        "2.5 mm": "how the figures on a package are read", "0.8 mm": "the same",
    },
    "nursery/bonnet.md": {"half an inch": "a rule of safety, whatever the size"},
    "pleats/inverted-pleat.md": {"Two folds": "what an inverted pleat is"},
    "pleats/knife-pleats.md": {"half an inch": "a mistake that anyone makes"},
    "pleats/underlay-pleat.md": {"an inch": "the least that is seen"},
    "seams/fine-seams.md": {"half an inch": "a mistake that anyone makes"},
}  # fmt: skip
"""What may be typed though a block of the page happens to hold as much, and why."""

ONE_TO_TWENTY = """
    one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen
    seventeen eighteen nineteen twenty
"""
NUMBERS = {word: number for number, word in enumerate(ONE_TO_TWENTY.split(), 1)}
PARTS = {"half": 2, "third": 3, "quarter": 4, "eighth": 8, "sixteenth": 16}
COUNT = "|".join(NUMBERS)
PART = "|".join(PARTS)
FIGURE = r"\d+ \d+/\d+|\d+/\d+|\d+(?:\.\d+)?"
WRITTEN = re.compile(
    rf"(?<![\w/.])(?:{FIGURE})(?: (?:to|by) (?:{FIGURE}))?[ -]?(?P<unit>[a-z]+|°)?"
)
UNIT = r"(?P<unit>inch(?:es)?|yards?|millimetres?|centimetres?|degrees?)"
SPOKEN = re.compile(
    rf"\b(?:(?P<whole>an?|{COUNT}) {UNIT}(?: and an? (?P<and>{PART}))?"
    rf"|half an? (?P<half>inch|yard)"
    rf"|(?P<top>an?|{COUNT}) (?P<bottom>{PART})s?(?: of an? (?P<of>inch|yard))?)\b",
    re.IGNORECASE,
)
COUNTED = re.compile(rf"\b(?P<count>{COUNT}) (?P<noun>[a-z]{{3,}}s)\b", re.IGNORECASE)


def prose(text: str) -> str:
    """A handout's own sentences: no blocks, no values that are put in, no front matter."""
    text = re.sub(r"\A---\n.*?\n---\n", "", text, flags=re.DOTALL)
    text = re.sub(r"^```.*?^```$", "", text, flags=re.DOTALL | re.MULTILINE)
    text = re.sub(r"\]\([^)]*\)", "]", INLINE.sub("#", text))
    text = re.sub(r"\*\*Time:\*\*[^\n]*", "", text)
    return " ".join(text.split())


def written(text: str) -> Iterator[tuple[str, Amount]]:
    """The figures of a text with a unit, and what each amounts to: `3/8 in`, `1/2 to 1 in`."""
    for match in WRITTEN.finditer(text):
        unit = match["unit"] or ""
        for figure in re.findall(FIGURE, match[0]):
            if unit in {"°", "deg", "degrees"}:
                yield match[0], Fraction(figure)
            elif unit in {"denier", "tex"}:
                yield match[0], read_thread_count(f"{figure} {unit}")
            elif unit in UNITS:
                yield match[0], read_length(f"{figure} {unit}")


def spoken(text: str) -> Iterator[tuple[str, Amount]]:
    """Measures in words: `half an inch`, `five inches and a half`, `three sixteenths`."""
    for match in SPOKEN.finditer(text):
        unit = (match["unit"] or match["half"] or match["of"] or "inch").lower()
        if match["whole"]:
            number = Fraction(NUMBERS.get(match["whole"].lower(), 1))
            number += Fraction(1, PARTS[match["and"].lower()]) if match["and"] else 0
        elif match["half"]:
            number = Fraction(1, 2)
        elif not match["of"] and not match[0].endswith("s"):
            continue  # a share of something: a quarter, one third
        else:
            top = NUMBERS.get(match["top"].lower(), 1)
            number = Fraction(top, PARTS[match["bottom"].lower()])
        degrees = unit.startswith("degree")
        yield match[0], number if degrees else Length(number * UNITS[unit])


def counted(text: str) -> Iterator[tuple[str, str, int]]:
    """Things that are counted in words: `twelve tucks`, the noun, and how many."""
    for match in COUNTED.finditer(text):
        yield match[0], match["noun"].lower(), NUMBERS[match["count"].lower()]


def held(page: Page) -> Iterator[tuple[str, str, Amount]]:
    """What the blocks of a page were given, and what they work out."""
    for name, working in page.workings.items():
        block = next(each for each in page.blocks if each.name == name)
        declared = {each.name: each.label for each in declared_inputs(find(block.technique))}
        for key, value in working.named.items():
            if key in working.values or key in block.fields:
                yield f"{name}.{key}", declared.get(key, value.label), value.amount


def amounts(amount: Amount) -> Iterator[Amount]:
    """A measure, and the measures in a list."""
    if isinstance(amount, tuple):
        for each in amount:
            yield from amounts(each)
    elif isinstance(amount, NamedLength):
        yield amount.length
    else:
        yield amount


def said(amount: Amount) -> set[str]:
    """A length as either tape says it: what is typed is rounded as a tape rounds."""
    if not isinstance(amount, Length):
        return set()
    return {Tape().say(amount), Tape("metric").say(amount)}


def repeated(text: str) -> list[str]:
    """Every typed figure that a block of the page holds, with the name of what it repeats."""
    blocks, _ = read_blocks(text, "page.md")
    page = work_page([replace(block, show=()) for block in blocks], Tape())
    known = [(name, label, each) for name, label, amount in held(page) for each in amounts(amount)]
    own = prose(text)
    found = [
        f"{figure}: {name}"
        for figure, amount in [*written(own), *spoken(own)]
        for name, _, each in known
        if type(each) is type(amount) and (each == amount or said(each) & said(amount))
    ]
    found += [
        f"{figure}: {name}"
        for figure, noun, number in counted(own)
        for name, label, each in known
        if each == number and type(each) is int and noun in re.split(r"\W", f"{name} {label}")
    ]
    return list(dict.fromkeys(found))


@pytest.mark.parametrize("path", PAGES, ids=lambda path: path.relative_to(HANDOUTS).as_posix())
def test_no_figure_of_a_page_is_typed_into_its_prose(path: Path):
    allowed = TYPED.get(path.relative_to(HANDOUTS).as_posix(), {})
    found = repeated(path.read_text(encoding="utf-8"))
    assert [each for each in found if each.partition(":")[0] not in allowed] == []


def test_every_exception_is_still_typed():
    for name, figures in TYPED.items():
        own = prose((HANDOUTS / name).read_text(encoding="utf-8"))
        assert [figure for figure in figures if figure not in own] == [], name


EXAMPLE = """\
# Page

{}

```calc
technique: tuck-set
name: front
tucks: 12
depth: 3/16 in
finished_width: 9 in
```
"""


@pytest.mark.parametrize(
    ("sentence", "figure"),
    [
        ("A front of 9 in.", "9 in"),
        ("A front of nine inches.", "nine inches"),
        ("Tucks of three sixteenths of an inch.", "three sixteenths of an inch"),
        ("Tucks of three sixteenths.", "three sixteenths"),
        ("A front of 22.9 cm.", "22.9 cm"),
        ("In the twelve tucks.", "twelve tucks"),
    ],
)
def test_a_typed_figure_is_found_however_it_is_written(sentence: str, figure: str):
    assert figure in {each.partition(":")[0] for each in repeated(EXAMPLE.format(sentence))}


@pytest.mark.parametrize(
    "sentence",
    ["A front {{ front.finished_width }} wide.", "Seven inches.", "Twelve threads.", "A quarter."],
)
def test_what_repeats_nothing_may_be_typed(sentence: str):
    assert repeated(EXAMPLE.format(sentence)) == []
