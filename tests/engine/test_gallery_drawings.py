"""Every technique is known by its drawing in the gallery: no two of them look alike."""

from __future__ import annotations

import re
from functools import cache
from itertools import combinations

import pytest
from shapely import MultiLineString, Polygon, STRtree
from shapely.geometry import box

from handout_engine import register
from handout_engine.amounts.saying import Tape
from handout_engine.drawing.layout import lay_out
from handout_engine.drawing.markup import xml
from handout_engine.drawing.page import Path
from handout_engine.drawing.svg import svg
from handout_engine.pages.fragments.gallery import small_drawing
from handout_engine.working.technique import make

KEYS = register.keys()
NAMED = re.compile(r"<title.*?</title>|<desc.*?</desc>", re.DOTALL)
CELL = 6.0
"""How fine the grid is on which two drawings are compared, on a page 360 wide."""
ALIKE = 0.9
"""Two drawings look alike that share so much of the grid they touch."""


@cache
def touched(key: str) -> frozenset[tuple[int, int]]:
    """The cells of a grid that the lines of a small drawing pass through, by shapely."""
    page = lay_out(small_drawing(key), Tape())
    lines = [
        part.points + part.points[:1] if part.closed else part.points
        for part in page.parts
        if isinstance(part, Path) and len(part.points) > 1
    ]
    left, top, right, low = MultiLineString(lines).bounds
    cells = [
        (column, row)
        for column in range(int((right - left) / CELL) + 1)
        for row in range(int((low - top) / CELL) + 1)
    ]
    boxes = [_cell(left + column * CELL, top + row * CELL) for column, row in cells]
    _, met = STRtree(boxes).query([MultiLineString([line]) for line in lines], "intersects")
    return frozenset(cells[number] for number in met)


def _cell(left: float, top: float) -> Polygon:
    return box(left, top, left + CELL, top + CELL)


def test_no_two_small_drawings_are_the_same():
    drawings: dict[str, str] = {}
    for key in KEYS:
        drawing = NAMED.sub("", xml(svg(small_drawing(key), Tape(), "gallery")))
        assert drawing not in drawings, f"{key} is drawn as {drawings[drawing]} is"
        drawings[drawing] = key


def test_no_two_small_drawings_look_alike():
    for one, other in combinations(KEYS, 2):
        first, second = touched(one), touched(other)
        shared = len(first & second) / len(first | second)
        assert shared < ALIKE, f"{one} looks like {other}: {shared:.0%} of their lines"


@pytest.mark.parametrize("key", [key for key in KEYS if register.find(key).known_by])
def test_what_a_technique_is_known_by_is_one_of_its_pictures(key: str):
    technique = register.find(key)
    pictures = make(technique, {}).work().pictures
    (known,) = (picture for picture in pictures if picture.name == technique.known_by)
    assert not known.finished, "the finished thing needs no other name"
