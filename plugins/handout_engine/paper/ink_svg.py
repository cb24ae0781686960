"""Writes what a pen draws as SVG in which 1 unit is 1 mm."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import groupby
from xml.etree.ElementTree import Element

from handout_engine.drawing.markup import Child, element
from handout_engine.drawing.scene import Line, Point
from handout_engine.paper.ink import BLACK, DOT, Face, Ink, Rule, Spots, Words
from handout_engine.paper.lettering import FONT

# Line width in mm, dashes in mm, colour of the line. ISO 128 sets the kinds of line.
LINES: dict[Line, tuple[float, str, str]] = {
    Line.CUT: (0.5, "", BLACK),
    Line.STITCH: (0.35, "2.4 1.4", BLACK),
    Line.FOLD: (0.25, "5 1.2 0.6 1.2", BLACK),
    Line.HIDDEN: (0.25, "1 1", BLACK),
    Line.GATHER: (0.5, "0.05 1.4", BLACK),
    Line.THIN: (0.25, "", BLACK),
    Line.BREAK: (0.25, "", BLACK),
}
WIDEST = 0.5
"""The widest of all lines, in mm."""


def document(
    title: str, description: str, size: tuple[float, float], children: Iterable[Child]
) -> Element:
    """A stand-alone white `<svg>` whose width and height are given in mm."""
    wide, high = (number(each) for each in size)
    return element(
        "svg",
        element("title", title),
        element("desc", description),
        element("rect", width=wide, height=high, fill="#fff"),
        *children,
        xmlns="http://www.w3.org/2000/svg",
        viewBox=f"0 0 {wide} {high}",
        width=f"{wide}mm",
        height=f"{high}mm",
        font_family=FONT,
    )


def elements(inks: Iterable[Ink]) -> Iterable[Element]:
    """Each thing as an element, in order; thin lines of one kind that follow each other as one."""
    for kind, group in groupby(inks, _kind):
        several = list(group)
        if kind is Line.HIDDEN:  # hatching: thousands of lines would be thousands of elements
            yield path(
                "".join(steps(each.points) for each in several if isinstance(each, Rule)),
                Line.HIDDEN,
            )
        else:
            yield from (_element(each) for each in several)


def _kind(ink: Ink) -> object:
    return ink.line if isinstance(ink, Rule) else None


def _element(ink: Ink) -> Element:
    match ink:
        case Rule():
            return path(steps(ink.points), ink.line, ink.offset)
        case Face():
            return element("path", d=steps((*ink.points, ink.points[0])), fill=ink.colour)
        case Spots():
            return _spots(ink)
        case Words():
            return words(ink)


def path(drawn: str, line: Line, offset: float = 0.0) -> Element:
    """A line of one kind; `offset` is how far into its dashes it begins, in mm."""
    width, dashes, colour = LINES[line]
    made = element(
        "path",
        d=drawn,
        fill="none",
        stroke=colour,
        stroke_width=str(width),
        stroke_linejoin="round",
    )
    made.set("stroke-linecap", "round" if line is Line.GATHER else "butt")
    if dashes:
        made.set("stroke-dasharray", dashes)
    if dashes and offset:
        made.set("stroke-dashoffset", number(offset))
    return made


def _spots(spots: Spots) -> Element:
    """All dots as one path of lines without length, so that thousands of them stay small."""
    drawn = "".join(f"M{number(x)} {number(y)}h0" for x, y in spots.at)
    made = element("path", d=drawn, fill="none", stroke=BLACK, stroke_width=str(DOT))
    made.set("stroke-linecap", "round")
    return made


def words(each: Words) -> Element:
    """One line of words."""
    x, y = number(each.at[0]), number(each.at[1])
    made = element(
        "text",
        each.text,
        x=x,
        y=y,
        text_anchor=each.anchor,
        font_size=number(each.size),
        fill=each.colour,
    )
    if each.bold:
        made.set("font-weight", "bold")
    if each.turned:
        made.set("transform", f"rotate(-90 {x} {y})")
    return made


def steps(points: Sequence[Point]) -> str:
    """A line as the steps of a path; one that comes back to its beginning is closed."""
    if len(points) > 2 and points[0] == points[-1]:
        return _steps(points[:-1]) + "Z"
    return _steps(points)


def _steps(points: Sequence[Point]) -> str:
    return "M" + "L".join(f"{number(x)} {number(y)}" for x, y in points)


def number(value: float) -> str:
    """A coordinate in mm to a thousandth, the same on every machine.

    It is rounded twice: a sum may differ in its last bits from one Python to another, and a value
    that lies halfway between two thousandths must fall to the same side in each.
    """
    rounded = round(round(value, 6) * 1000) / 1000
    return f"{rounded:.3f}".rstrip("0").rstrip(".") if rounded else "0"
