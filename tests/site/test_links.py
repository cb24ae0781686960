"""What is left of a link to a handout that the scenario does not publish."""

from __future__ import annotations

import pytest

from handout_site.links import published_links

MISSING = {"handouts/tucks/pin.md", "handouts/bias/binding.md"}
PAGE = "handouts/tucks/index.md"
LINKS = {
    "words stay in a sentence": ("Sew [a *pin* tuck](pin.md) here.", "Sew a *pin* tuck here."),
    "a place on the page": ("See [tucks](pin.md#press).", "See tucks."),
    "another folder": ("By [binding](../bias/binding.md).", "By binding."),
    "a published one stays": ("See [wide](wide.md).", "See [wide](wide.md)."),
    "elsewhere stays": ("See [all](../../sources.md).", "See [all](../../sources.md)."),
    "a button goes": ("[Read on](pin.md){ .md-button }", ""),
    "a row goes": ("| a |\n|---|\n| [Pin](pin.md) | x |\n| [B](b.md) |",
                   "| a |\n|---|\n| [B](b.md) |"),
    "a row that only mentions one stays": ("| x | [Pin](pin.md) |", "| x | Pin |"),
    "an item goes with its lines": ("- [Pin](pin.md): one\n  more.\n- [B](b.md)", "- [B](b.md)"),
    "a numbered item goes": ("1. [Pin](pin.md)\n2. B", "2. B"),
    "both in one line": ("[Pin](pin.md), [B](b.md), [C](../bias/binding.md).",
                         "Pin, [B](b.md), C."),
}  # fmt: skip


@pytest.mark.parametrize(("written", "left"), LINKS.values(), ids=LINKS)
def test_a_link_to_what_is_not_published(written: str, left: str):
    assert published_links(written, PAGE, MISSING) == left


def test_nothing_changes_where_all_is_published():
    for written, _ in LINKS.values():
        assert published_links(written, PAGE, set()) == written
