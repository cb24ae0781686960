"""A gallery of all techniques: a small drawing of each, with a link to its handout."""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from itertools import groupby
from math import dist
from xml.etree.ElementTree import Element

from handout_engine.amounts.saying import Tape
from handout_engine.drawing.markup import element
from handout_engine.drawing.scene import Area, Dimension, Note, Point, Scene, Stroke, Tag
from handout_engine.drawing.svg import svg
from handout_engine.register import find, keys
from handout_engine.working.technique import Technique, make

FAMILY_TITLES = {
    "lace": "Lace and insertions",
    "materials": "Cloth, needle and thread",
    "seams": "Fine seams",
}
"""Titles of families that are not their names; they are those of the families' introductions."""
FINEST = 0.01
"""How far apart the points of a curve are at the least, for each length of the drawing."""
FEW = 9
TALLEST = 190.0
"""How tall a small drawing may be, on a page 360 wide, so that a row of them is even."""


def gallery() -> Element:
    """Every technique by family: drawing, title and one sentence.

    The links lead from the page `index` of the handouts to the handouts below it.
    """
    every = sorted(((find(key).family, key) for key in keys()), key=_order)
    families = [
        _family(family, [key for _, key in members])
        for family, members in groupby(every, key=lambda each: each[0])
    ]
    return element("div", *families, class_="gallery")


def family_title(family: str) -> str:
    """What a family is called."""
    return FAMILY_TITLES.get(family, family.replace("-", " ").capitalize())


def thumbnail(scene: Scene) -> Scene:
    """The scene without what could not be seen in small: measures, words, and the finest steps of
    its curves."""
    drawn = [each for each in scene.shapes if not isinstance(each, Dimension | Tag | Note)]
    lines = [each for each in drawn if isinstance(each, Area | Stroke)]
    xs, ys = zip(*(point for each in lines for point in each.points), strict=True)
    least = max(max(xs) - min(xs), max(ys) - min(ys)) * FINEST
    shapes = [
        replace(each, points=_thinned(each.points, least))
        if isinstance(each, Area | Stroke)
        else each
        for each in drawn
    ]
    return replace(scene, shapes=tuple(shapes), tallest=min(scene.tallest, TALLEST))


def _thinned(points: tuple[Point, ...], least: float) -> tuple[Point, ...]:
    """A curve with points at least so far apart; what has few points is no curve, and stays."""
    if len(points) <= FEW:
        return points
    kept = [points[0]]
    for point in points[1:-1]:
        if dist(point, kept[-1]) >= least:
            kept.append(point)
    return (*kept, points[-1])


def _order(each: tuple[str, str]) -> tuple[str, str]:
    family, key = each
    return family_title(family), find(key).title


def _family(family: str, members: list[str]) -> Element:
    identity = f"family-{family}"
    heading = element("a", family_title(family), href=f"{family}/index.html")
    return element(
        "section",
        element("h2", heading, id=identity),
        element("ul", *(_entry(key, find(key)) for key in members)),
        class_="gallery-family",
        aria_labelledby=identity,
    )


def _entry(key: str, technique: type[Technique]) -> Element:
    """One technique, its drawing within the link to its handout."""
    drawing = svg(small_drawing(key), Tape(), f"gallery-{key}")
    name = element("span", technique.title, class_="gallery-title")
    address = f"{technique.family}/{key}.html"
    return element(
        "li",
        element("a", drawing, name, href=address),
        element("p", technique.summary),
        class_="gallery-entry",
        data_handout=f"{technique.family}/{key}",
    )


@cache
def small_drawing(key: str) -> Scene:
    """What a technique is known by, in small, worked out from its own defaults once in a run."""
    technique = find(key)
    pictures = make(technique, {}).work().pictures
    if technique.known_by:
        (known,) = (each for each in pictures if each.name == technique.known_by)
    else:
        known = next((each for each in pictures if each.finished), pictures[0])
    return thumbnail(known.scene)
