"""The row of sizes under a sized page's title: plain links, one for each page."""

from __future__ import annotations

from collections.abc import Mapping
from xml.etree.ElementTree import Element

from handout_engine.bodies import LENGTHS, kilograms, months
from handout_engine.markup import Child, element
from handout_engine.saying import decimal


def size_choice(addresses: Mapping[str, str], shown: str) -> Element:
    """Links to the pages of all sizes, the shown one marked; `addresses` are by size."""
    links: list[Child] = []
    for size, address in addresses.items():
        if size == shown:
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


def about(size: str) -> str:
    """What a size means: body length, and age and weight as a guide only."""
    length = LENGTHS[size]
    ages = sorted(months(sex, length) for sex in ("girls", "boys"))
    low, high = (decimal(age, 0) for age in ages)
    age = low if low == high else f"{low} to {high}"
    weight = decimal(kilograms(length), 1)
    return (
        f"Size {size} is a body length of {size} cm: about {age} months and {weight} kg, as a "
        "guide only. Measure the baby."
    )
