"""Writes a scene at true scale: an SVG of its own in which 1 unit is 1 mm, to print and lay under.

Above the drawing stand its title, the sentence that says how to print it, and two squares to
measure: whoever prints can see whether the printer has kept the scale.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from xml.etree.ElementTree import Element

from handout_engine.amounts.saying import Tape
from handout_engine.drawing.markup import element
from handout_engine.drawing.scene import Line, Scene, rectangle
from handout_engine.geometry.windows import Window, around
from handout_engine.paper.ink import TEXT, Ink, Rule, Words, closed, inked
from handout_engine.paper.ink_svg import document, elements, number
from handout_engine.paper.lettering import wrapped

BORDER = 8.0
LINE_HEIGHT = 5.0
SQUARES = (("5 cm", 50.0), ("2 in", 50.8))
SQUARE_GAP = 8.0
NARROWEST = 2 * BORDER + sum(size for _, size in SQUARES) + SQUARE_GAP
PRINT_AT = (
    "Print at actual size: 100 %, not fitted to the page. Before you use it measure both squares; "
    "if they are not 5 cm and 2 in, the printer has changed the scale."
)


def true_scale(scene: Scene, tape: Tape) -> Element:
    """The scene as a stand-alone `<svg>` whose width and height are given in mm."""
    inks = inked(scene.shapes, tape)
    reach = reach_of(inks)
    width = max(NARROWEST, reach.width + 2 * BORDER)
    heading = list(_heading(scene, tape, width))
    top = BORDER + len(heading) * LINE_HEIGHT + SQUARES[1][1] + 3 * LINE_HEIGHT
    height = top + reach.height + BORDER
    placed = element("g", *elements(inks))
    across, down = (width - reach.width) / 2 - reach.left, top - reach.top
    placed.set("transform", f"translate({number(across)} {number(down)})")
    squares = _squares(BORDER + (len(heading) + 0.5) * LINE_HEIGHT)
    title, description = scene.title.first(tape), scene.description.first(tape)
    drawn = [*elements([*heading, *squares]), placed]
    return document(title, description, (width, height), drawn)


def reach_of(inks: Sequence[Ink]) -> Window:
    """The window that a whole drawing takes, words included."""
    every = [ink.reach for ink in inks]
    return around([corner for each in every for corner in each.corners])


def _heading(scene: Scene, tape: Tape, width: float) -> Iterable[Ink]:
    """Title, what is shown, and how to print, in lines that fit the width."""
    room = width - 2 * BORDER
    lines = [scene.title.first(tape), *wrapped(scene.description.text(tape), room, TEXT)]
    for place, line in enumerate([*lines, *wrapped(PRINT_AT, room, TEXT)]):
        at = (BORDER, BORDER + (place + 0.7) * LINE_HEIGHT)
        yield Words(line, at, bold=place == 0)


def _squares(top: float) -> Iterable[Ink]:
    left = BORDER
    for name, size in SQUARES:
        yield Rule(closed(rectangle(left, top, size, size)), Line.CUT)
        yield Words(f"this square is {name}", (left + size / 2, top + size / 2), "middle")
        left += size + SQUARE_GAP
