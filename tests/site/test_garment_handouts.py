"""What the prose of the handouts with a garment in them must not contradict."""

from __future__ import annotations

from pathlib import Path

import pytest

from handout_site.reading import Terms, read_handout

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
@pytest.mark.parametrize("size", ["74"])
def test_its_page_never_cuts_on_the_fold_of_a_single_layer(handout, size):
    """All that its blocks show, the layout of the whole page and its sheets among it."""
    body = handout.read_text("utf-8").split("---\n", 2)[2]
    page = read_handout(body, handout.stem, Terms(fit={"size": size})).page
    shown = " ".join(page.fragment(number) for number in range(len(page.blocks)))
    sheets = " ".join(line for sheet in page.sheets().values() for drawing in sheet.drawings
                      for line in drawing.label.lines)  # fmt: skip
    assert not page.problems
    assert "single layer" not in shown or "on the fold" not in shown + sheets


@every_garment_handout
def test_a_slip_s_prose_and_its_closure_agree(handout):
    """Its slit is faced and its edges meet at a thread loop: nothing laps there."""
    text = handout.read_text("utf-8")
    if "\ngarment: slip" in text:
        assert "placket" not in text.lower()
