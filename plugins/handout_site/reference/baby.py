"""The reference's page on babies: how each measure is taken, and the table of sizes."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from xml.etree.ElementTree import Element

from handout_engine.amounts.lengths import Length
from handout_engine.amounts.reading import read_length
from handout_engine.amounts.saying import Tape, decimal
from handout_engine.amounts.sources import Ground
from handout_engine.bodies.body_table import WEAK_POINTS
from handout_engine.bodies.measures import (
    LENGTHS,
    MEASURES,
    SPAN,
    Measure,
    figure,
    kilograms,
    months,
)
from handout_engine.drawing.markup import element, html
from handout_engine.pages.fragments.words import NO_BREAK
from handout_site.reference.writing import code, rows

METRIC, INCHES = Tape("metric"), Tape(finest=8)
MEASURED = """
A garment is made in a size, which is the length of the baby's body in centimetres, as EN 13402
names sizes. It goes by the measures of the table below, by as many of them as it needs; each of
them may be written into its block instead, or typed into the form of the page, and goes before the
table's. A baby between two sizes has a `body_length` of her own, and every measure that is not
given then lies between those of the two sizes in proportion.
"""
TYPED = """
## How to take them

With the baby lying, in a vest at most, the tape close but not tight. Measure twice.
"""


def page() -> str:
    """The page as Markdown."""
    return "\n".join(_lines())


def _lines() -> Iterator[str]:
    yield "# A baby's measures: reference"
    yield MEASURED + TYPED
    least, most = SPAN
    yield from rows(
        "Measure",
        [
            (code("body_length"), f"From the crown to the sole, lying. From {least} to {most}."),
            *((code(name), _taken(each)) for name, each in MEASURES.items()),
        ],
    )
    yield "\n## The table of sizes\n"
    yield "In centimetres; the age is that at which half of the children have reached the length, a"
    yield "guide only. Choose by the baby's own length.\n"
    yield html(_table("Sizes, in centimetres", METRIC)) + "\n"
    yield "The same in inches, to the nearest eighth:\n"
    yield html(_table("Sizes, in inches", INCHES)) + "\n"
    yield "\\* An estimate; see below.\n"
    yield "## What the table rests on\n"
    yield from rows("Measure", ((each.label, each.basis.text) for each in MEASURES.values()))
    yield "\n## Its weak points\n"
    yield from (f"- {point}" for point in WEAK_POINTS)


def _taken(measure: Measure) -> str:
    least, most = (read_length(each) for each in measure.bounds)
    inches = f"{Tape().say(least)} to {Tape().say(most)}"
    return f"{measure.help} From {measure.bounds[0]} to {measure.bounds[1]} ({inches})."


def _table(caption: str, tape: Tape) -> Element:
    heading = element("tr", *(element("th", text, scope="col") for text in ("Size", *LENGTHS)))
    body = [
        _row(_label(each), [_said(figure(name, length), tape) for length in LENGTHS.values()])
        for name, each in MEASURES.items()
    ]
    ages = _ages() if tape == METRIC else ()
    table = element(
        "table",
        element("caption", caption),
        element("thead", heading),
        element("tbody", *ages, *body),
        class_="handout-table graded",
    )
    return element(
        "div", table, class_="table-area", tabindex="0", role="group", aria_label=caption
    )


def _label(measure: Measure) -> str:
    return f"{measure.label} *" if measure.basis.ground is Ground.ESTIMATE else measure.label


def _said(length: Length, tape: Tape) -> str:
    """The number alone, since all stand in the same unit."""
    if tape.first == "metric":
        return _number(length.mm / 10)
    return tape.say(length).removesuffix(" in").replace(" ", NO_BREAK)


def _ages() -> Iterator[Element]:
    for sex in ("girls", "boys"):
        yield _row(
            f"age of {sex}, months", [_number(months(sex, each)) for each in LENGTHS.values()]
        )
    yield _row("weight, kg", [_number(kilograms(each)) for each in LENGTHS.values()])


def _number(number: Fraction) -> str:
    said = decimal(number, 1)
    return said if "." in said else f"{said}.0"


def _row(label: str, cells: list[str]) -> Element:
    return element(
        "tr", element("th", label, scope="row"), *(element("td", text) for text in cells)
    )
