"""What the prose of the handouts with a garment in them must not contradict."""

from __future__ import annotations

from pathlib import Path

import pytest

HANDOUTS = Path(__file__).parents[2] / "handouts"
WITH_GARMENTS = [
    each for each in sorted(HANDOUTS.rglob("*.md")) if "\ngarment: " in each.read_text("utf-8")
]

every_garment_handout = pytest.mark.parametrize(
    "handout", WITH_GARMENTS, ids=[each.stem for each in WITH_GARMENTS]
)


@every_garment_handout
def test_it_leaves_to_the_layout_how_the_cloth_lies(handout):
    """A layout may cut on a single layer what the prose would cut on the fold."""
    assert "on the fold" not in handout.read_text("utf-8")


@every_garment_handout
def test_a_slip_s_prose_and_its_closure_agree(handout):
    """Its slit is faced and its edges meet at a thread loop: nothing laps there."""
    text = handout.read_text("utf-8")
    if "\ngarment: slip" in text:
        assert "placket" not in text.lower()
