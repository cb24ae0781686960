"""Writes a laid-out scene as SVG: for the screen (styled by the page) or for paper (plain).

On the screen, colours come from the page's custom properties through classes, so that a drawing
is right in light and dark. On paper each part carries its own plain colour, since a PDF maker may
not know custom properties.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal
from xml.etree.ElementTree import Element

from handout_engine.amounts.saying import Tape
from handout_engine.drawing.layout import lay_out
from handout_engine.drawing.markup import Child, element
from handout_engine.drawing.page import (
    CHARACTER,
    PAGE_WIDTH,
    SMALL,
    TEXT,
    Hatch,
    Page,
    Path,
    Text,
)
from handout_engine.drawing.scene import Point, Scene, Shown

Medium = Literal["screen", "paper"]

# One row a style: line width, dashes, colour of the line, colour of the face. ISO 128 sets the
# kinds of line; the widths keep its two to one of thick to thin.
PAPER: dict[str, tuple[float, str, str, str]] = {
    "cut": (1.6, "", "#111", "none"),
    "stitch": (0.8, "4 2.5", "#111", "none"),
    "fold": (0.8, "9 2.5 1 2.5", "#111", "none"),
    "hidden": (0.8, "2 2", "#555", "none"),
    "gather": (1.1, "0.1 3", "#111", "none"),
    "thin": (0.6, "", "#333", "none"),
    "break": (0.6, "", "#333", "none"),
    "head": (0, "", "none", "#333"),
    "hatch": (0.5, "", "#888", "none"),
    "face-right": (0, "", "none", "#fff"),
    "face-second": (0, "", "none", "#dde3ea"),
    "face-wrong": (0, "", "none", "#fff"),
    "face-ground": (0, "", "none", "#fff"),
    "face-shade": (0, "", "none", "#e6e6e6"),
}
SHEET_GAP = 16.0
FONT = "DejaVu Sans, Noto Sans, sans-serif"


def svg(scene: Scene, tape: Tape, identity: str, medium: Medium = "screen") -> Element:
    """The scene as an `<svg>` element; `identity` makes its ids the page's only ones."""
    page = lay_out(scene, tape)
    drawing = element(
        "svg",
        element("title", scene.title.first(tape), id=f"{identity}-title"),
        element("desc", described(scene, tape), id=f"{identity}-desc"),
        *_background(page, medium),
        *(_part(part, medium) for part in page.parts),
        xmlns="http://www.w3.org/2000/svg",
        viewBox=f"0 {_number(page.top)} {_number(PAGE_WIDTH)} {_number(page.height)}",
        role="img",
        aria_labelledby=f"{identity}-title {identity}-desc",
        class_="drawing",
    )
    if medium == "paper":
        drawing.set("width", f"{_number(PAGE_WIDTH)}")
        drawing.set("height", f"{_number(page.height)}")
        drawing.set("font-family", FONT)
    return drawing


def paper_sheet(scenes: Sequence[Scene], tape: Tape, identity: str) -> Element:
    """Several scenes one below another as one paper drawing."""
    sheet = element("svg", xmlns="http://www.w3.org/2000/svg")
    height = 0.0
    for number, scene in enumerate(scenes, 1):
        drawing = svg(scene, tape, f"{identity}-{number}", "paper")
        drawing.set("y", _number(height))
        height += float(drawing.get("height", "0")) + SHEET_GAP
        sheet.append(drawing)
    sheet.insert(0, _white(0.0, height))
    sheet.set("viewBox", f"0 0 {_number(PAGE_WIDTH)} {_number(height)}")
    sheet.set("width", _number(PAGE_WIDTH))
    sheet.set("height", _number(height))
    return sheet


def described(scene: Scene, tape: Tape) -> str:
    """What a drawing shows, and that a part of it is left out, for who does not see it."""
    words = scene.description.first(tape)
    return f"{words} It is {Shown.BROKEN.value}." if scene.shortened else words


def _background(page: Page, medium: Medium) -> list[Element]:
    return [] if medium == "screen" else [_white(page.top, page.height)]


def _white(top: float, height: float) -> Element:
    return element(
        "rect",
        x="0",
        y=_number(top),
        width=_number(PAGE_WIDTH),
        height=_number(height),
        fill="#fff",
    )


def _part(part: Path | Hatch | Text, medium: Medium) -> Child:
    match part:
        case Path():
            return _styled(_steps(part.points, part.closed), part.style, medium)
        case Hatch():
            return _styled("".join(_steps(line, False) for line in part.lines), part.style, medium)
        case Text():
            return _text(part, medium)


def _styled(steps: str, style: str, medium: Medium) -> Element:
    path = element("path", d=steps)
    if medium == "screen":
        path.set("class", f"line-{style}")
        return path
    width, dashes, line, face = PAPER[style]
    path.set("fill", face)
    path.set("stroke", line)
    path.set("stroke-width", str(width))
    path.set("stroke-linejoin", "round")
    path.set("stroke-linecap", "round")
    if dashes:
        path.set("stroke-dasharray", dashes)
    return path


def _text(text: Text, medium: Medium) -> Element:
    if medium == "paper":
        return _paper_text(text)
    words = _run(text.words, text.at, text.anchor, TEXT)
    if text.beside:
        beside = element("tspan", text.beside, class_="beside", font_size=_number(SMALL))
        if text.stacked:
            beside.set("x", _number(text.at[0]))
            beside.set("dy", _number(SMALL + 1))
        words.append(beside)
    return words


def _paper_text(text: Text) -> Element:
    """Words without spans inside, which makers of PDF files anchor each by itself.

    Amounts side by side become one run, in the size that takes the room of both.
    """
    (x, y), words, size = text.at, text.words, TEXT
    if text.beside and not text.stacked:
        words += text.beside
        size = min(TEXT, text.width / (CHARACTER * len(words)))
    lines = [_run(words, (x, y), text.anchor, size)]
    if text.beside and text.stacked:
        lines.append(_run(text.beside, (x, y + SMALL + 1), text.anchor, SMALL))
    return element("g", *lines, fill="#111")


def _run(words: str, at: Point, anchor: str, size: float) -> Element:
    return element(
        "text",
        words,
        x=_number(at[0]),
        y=_number(at[1]),
        text_anchor=anchor,
        font_size=_number(size),
    )


def _steps(points: tuple[Point, ...], closed: bool) -> str:
    placed = "L".join(f"{_number(x)} {_number(y)}" for x, y in points)
    return f"M{placed}{'Z' if closed else ''}"


def _number(value: float) -> str:
    """A coordinate to a tenth of a page unit, the same on every machine.

    It is rounded twice: a sum may differ in its last bits from one Python to another, and a value
    that lies halfway between two tenths must fall to the same side in each.
    """
    rounded = round(round(value, 6) * 10) / 10
    return f"{rounded:.1f}".removesuffix(".0") if rounded else "0"
