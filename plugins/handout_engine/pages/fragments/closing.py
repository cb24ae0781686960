"""What closes a page: cautions and sources of all its blocks, each once."""

from __future__ import annotations

from collections.abc import Iterable
from xml.etree.ElementTree import Element

from handout_engine.amounts.saying import Tape
from handout_engine.drawing.markup import element
from handout_engine.working.workings import Working

DEFERENCE = (
    "These are the usual cautions of the craft. Local rules, and the advice of a doctor or of a "
    "safety body, come before them."
)


def cautions(workings: Iterable[Working], tape: Tape) -> Element:
    """The cautions that any of the workings calls for."""
    del tape
    every = dict.fromkeys(caution for working in workings for caution in working.cautions)
    items = [
        element(
            "li",
            caution.text,
            *(element("span", f" ({source.title})", class_="detail") for source in caution.sources),
        )
        for caution in every
    ]
    return element(
        "div", element("ul", *items), element("p", DEFERENCE, class_="detail"), class_="cautions"
    )


def sources(workings: Iterable[Working], tape: Tape) -> Element:
    """The sources that the values and cautions of the workings rest on."""
    del tape
    every = dict.fromkeys(source for working in workings for source in working.sources)
    items = [element("li", source.line) for source in every]
    words = "Figures marked common practice have no published source."
    return element("div", element("ul", *items), element("p", words), class_="sources")
