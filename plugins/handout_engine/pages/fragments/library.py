"""What the engine holds altogether: its techniques and its sources."""

from __future__ import annotations

from xml.etree.ElementTree import Element

from handout_engine.amounts.saying import Tape
from handout_engine.amounts.sources import SOURCES
from handout_engine.drawing.legend import legend
from handout_engine.drawing.markup import element
from handout_engine.drawing.svg import svg
from handout_engine.pages.fragments.tables import table
from handout_engine.register import find, keys


def all_techniques() -> Element:
    """Every technique with its family and one sentence."""
    every = sorted((find(key) for key in keys()), key=lambda each: (each.family, each.title))
    rows = [(each.title, each.family, each.summary) for each in every]
    return table("Techniques", ("Technique", "Family", "What it is"), rows)


def all_sources() -> Element:
    """Every source, each once."""
    return element("ul", *(element("li", source.line) for source in SOURCES.values()))


def key_to_drawings() -> Element:
    """What each kind of line and face in the drawings stands for."""
    return element("figure", svg(legend(), Tape(), "key-to-drawings"))
