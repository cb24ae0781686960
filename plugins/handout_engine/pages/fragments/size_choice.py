"""The row of sizes under a sized page's title: plain links, one for each page, and a guide."""

from __future__ import annotations

from collections.abc import Mapping
from xml.etree.ElementTree import Element

from handout_engine.amounts.lengths import Length
from handout_engine.amounts.saying import decimal
from handout_engine.bodies.measures import LENGTHS, kilograms, length_in_words, months
from handout_engine.drawing.markup import Child, element
from handout_engine.pages.made_to import MadeTo


def size_choice(addresses: Mapping[str, str], shown: MadeTo) -> Element:
    """Links to the pages of all sizes, the shown one marked; `addresses` are by size.

    None is marked for a body length between two sizes.
    """
    links: list[Child] = []
    for size, address in addresses.items():
        if size == shown.size:
            links.append(element("span", size, aria_current="page"))
        else:
            links.append(element("a", size, href=address))
        links.append(" ")
    return element(
        "nav",
        element("p", element("strong", "Size"), " ", *links, class_="size-links"),
        element("p", about(shown), class_="detail"),
        class_="size-choice",
        aria_label="Sizes",
    )


def about(shown: MadeTo) -> str:
    """What a size means: body length, and age and weight as a guide only."""
    length = shown.length
    ages = sorted(months(sex, length) for sex in ("girls", "boys"))
    low, high = (decimal(age, 0) for age in ages)
    age = low if low == high else f"{low} to {high}"
    weight = decimal(kilograms(length), 1)
    called = f"Size {shown.size} is" if shown.size else f"Between sizes {_neighbours(length)} lies"
    then = "Her own measures go before the table's." if shown.measured else "Measure the baby."
    return (
        f"{called} a body length of {length_in_words(length)}: about {age} months and {weight} kg, "
        f"as a guide only. {then}"
    )


def _neighbours(length: Length) -> str:
    """The sizes below and above a body length that is none of them."""
    below = [size for size, named in LENGTHS.items() if named.mm < length.mm]
    return f"{below[-1]} and {list(LENGTHS)[len(below)]}"
