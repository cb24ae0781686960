"""HTML and SVG as trees: text and attributes are escaped by the serialiser, never by hand."""

from __future__ import annotations

from collections.abc import Iterable
from xml.etree.ElementTree import Element, tostring

Child = Element | str


def element(tag: str, *children: Child | None, **attributes: str) -> Element:
    """An element with its children in order; None is left out.

    An attribute whose name is a Python word is written with `_` behind it (`class_`), and a
    hyphen as `_` (`data_label`).
    """
    made = Element(tag, {_attribute(name): value for name, value in attributes.items()})
    append(made, children)
    return made


def _attribute(name: str) -> str:
    return name if name == "viewBox" else name.rstrip("_").replace("_", "-")


def append(parent: Element, children: Iterable[Child | None]) -> None:
    """Add children after those that an element has."""
    last = parent[-1] if len(parent) else None
    for child in children:
        if isinstance(child, str):
            if last is None:
                parent.text = (parent.text or "") + child
            else:
                last.tail = (last.tail or "") + child
        elif child is not None:
            parent.append(child)
            last = child


def html(tree: Element) -> str:
    """An element as HTML."""
    return tostring(tree, encoding="unicode", method="html")


def xml(tree: Element) -> str:
    """An element as a document of its own."""
    return '<?xml version="1.0" encoding="UTF-8"?>\n' + tostring(tree, encoding="unicode")
