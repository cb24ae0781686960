"""Markdown as an author writes it: blocks, and blocks set into other things."""

from __future__ import annotations


def calc(*lines: str, marks: str = "```", info: str = "calc") -> str:
    """A block with these lines."""
    return "\n".join([f"{marks}{info}", *lines, marks]) + "\n"


def ruffle(name: str, *lines: str) -> str:
    """A block that works a gathered ruffle out and shows its cut list, unless `lines` say more."""
    return calc("technique: gathered-ruffle", f"name: {name}", "edge: 9 in", *lines)


def set_in(text: str, prefix: str) -> str:
    """Each line of a text with a prefix, as lists and quotations want it."""
    return "".join(f"{prefix}{line}\n" if line else "\n" for line in text.splitlines())


def page(*parts: str) -> str:
    """A page with a heading and these parts, a blank line between two."""
    return "\n".join(["# A page\n", *parts])
