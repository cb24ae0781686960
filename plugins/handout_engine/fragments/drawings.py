"""The drawings of a working as figures."""

from __future__ import annotations

from xml.etree.ElementTree import Element

from handout_engine.drawing.svg import svg
from handout_engine.fragments.words import phrase
from handout_engine.markup import element
from handout_engine.saying import Tape
from handout_engine.workings import Picture, Working


def finished(working: Working, tape: Tape, identity: str) -> Element | None:
    """The drawing of the finished thing."""
    figures = [_figure(each, tape, identity) for each in working.pictures if each.finished]
    return element("div", *figures) if figures else None


def drawings(working: Working, tape: Tape, identity: str) -> Element | None:
    """All other drawings."""
    figures = [_figure(each, tape, identity) for each in working.pictures if not each.finished]
    return element("div", *figures, class_="drawings") if figures else None


def _figure(picture: Picture, tape: Tape, identity: str) -> Element:
    drawing = svg(picture.scene, tape, f"{identity}-{picture.name}")
    return element("figure", drawing, element("figcaption", *phrase(picture.caption, tape)))
