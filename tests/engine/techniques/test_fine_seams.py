"""The fine seams, against layers sewn and folded place by place in `stitching`."""

from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from handout_engine.amounts.lengths import inches, total
from stitching import SewnEdge, flat_fell, french, rolled, sewn_width
from worked import length, refusal, said, steps, work

KINDS = ("plain", "French", "flat fell", "rolled and whipped", "pin stitch")
small = st.fractions(Fraction(1, 16), 1, max_denominator=32).map(inches)


def test_a_panel_of_three_with_french_seams_worked_by_hand():
    """Common practice, no source: 1/4 in, then 1/8 in from the fold: 3/8 in of each layer.

    21 in in 3 pieces of 7 in: the outer ones are cut 7 + 3/8 + 1/2 = 7 7/8 in, the middle one
    7 + 3/8 + 3/8 = 7 3/4 in; side by side 23 1/2 in.
    """
    working = work("fine-seams", seam="French", panel="21 in", seams="2", side="1/2 in")
    assert said(working, "first_takes") == said(working, "second_takes") == "3/8 in"
    assert said(working, "ridge") == "1/8 in"
    assert said(working, "first_cut_width") == said(working, "last_cut_width") == "7 7/8 in"
    assert said(working, "middle_cut_width") == "7 3/4 in"
    assert said(working, "total_cut_width") == "23 1/2 in"
    assert [piece.count for piece in working.pieces] == [1, 1, 1]


def sewn(working, kind: str) -> tuple[SewnEdge, SewnEdge]:
    """Both layers after sewing, by folding."""
    named = {name: value.amount.mm for name, value in working.named.items()
             if name in ("seam_allowance", "french_first", "trimmed", "french_second",
                         "fell_width", "turned", "roll", "pin_turn", "pin_lap")}  # fmt: skip
    if kind == "French":
        one = french(named["french_first"], named["trimmed"], named["french_second"])
        return one, one
    if kind == "flat fell":
        one = flat_fell(named["fell_width"], named["turned"])
        return one, one
    if kind == "rolled and whipped":
        one = rolled(named["roll"])
        return one, one
    if kind == "plain":
        one = SewnEdge(named["seam_allowance"], named["seam_allowance"], Fraction(0))
        return one, one
    return (SewnEdge(named["pin_turn"], named["pin_turn"], Fraction(0)),
            SewnEdge(named["pin_lap"], named["pin_lap"], Fraction(0)))  # fmt: skip


@settings(max_examples=300)
@given(
    st.sampled_from(KINDS),
    st.fractions(12, 40, max_denominator=16).map(inches),
    st.integers(1, 3),
    st.fixed_dictionaries({
        "seam_allowance": small, "french_second": small, "fell_width": small,
        "pin_turn": small, "pin_lap": small,
        "roll": st.fractions(Fraction(1, 16), Fraction(7, 16), max_denominator=32).map(inches),
    }),
    st.fractions(0, 4, max_denominator=16).map(inches),
)  # fmt: skip
def test_sewn_by_hand_the_panel_is_as_wide_as_it_was_asked_to_be(kind, panel, many, sizes, side):
    working = work("fine-seams", seam=kind, panel=panel, seams=many, side=side,
                   french_first="1 in", cloth_width="120 in", **sizes)  # fmt: skip
    first, second = sewn(working, kind)
    names = ["first", *["middle"] * (many - 1), "last"]
    widths = [length(working, f"{name}_cut_width").mm for name in names]
    before = [side.mm, *[second.taken] * many]
    behind = [*[first.taken] * many, side.mm]
    assert sewn_width(zip(widths, before, behind, strict=True)) == panel.mm
    for raw, left, right in zip(widths, before, behind, strict=True):
        assert sewn_width([(raw, left, right)]) == panel.mm / (many + 1)
    assert sum(widths) == length(working, "total_cut_width").mm
    spread = first.ridge + second.ridge if kind in ("plain", "rolled and whipped") else max(
        first.ridge, second.ridge
    )  # fmt: skip
    assert length(working, "ridge").mm == spread


@given(small, small)
def test_a_french_seam_hides_its_raw_edge_and_a_fell_its_turn(second, turn):
    seam = french(inches(1).mm, (second / 2).mm, second.mm)
    assert 0 < seam.raw_edge_inside < seam.ridge
    fell = flat_fell(max(second, turn).mm, min(second, turn).mm)
    assert fell.raw_edge_inside >= 0


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        (
            {"seam": "French", "french_trim": "1/8 in"},
            "french_trim 1/8 in would show beyond the second seam; use less than 1/8 in (3 mm), "
            "or a deeper second seam",
        ),
        (
            {"seam": "French", "french_first": "1/16 in", "french_second": "1/2 in"},
            "french_first 1/16 in leaves less than the 1/4 in it is trimmed to; use at least "
            "1/4 in (7 mm), or a narrower second seam",
        ),
        (
            {"seam": "flat fell", "fell_width": "1/4 in", "fell_turn": "3/8 in"},
            "fell_turn 3/8 in is wider than fell_width 1/4 in; the turned edge would reach past "
            "the seam (use at most 1/4 in (6 mm), or a wider fell)",
        ),
        (
            {"seam": "plain", "panel": "2 in", "seams": "4", "seam_allowance": "1/4 in"},
            "seams 4 leaves pieces 13/32 in wide, and each seam alone is 1/2 in (13 mm) wide; use "
            "at most 2 seams or a wider panel",
        ),
    ],
)
def test_what_cannot_be_sewn_is_refused_with_a_way_out(written, sentence):
    assert refusal("fine-seams", **written) == sentence


def test_the_ways_out_are_open():
    assert work("fine-seams", seam="French", french_trim="3/32 in")
    assert work("fine-seams", seam="flat fell", fell_width="1/4 in", fell_turn="1/4 in")
    assert work("fine-seams", seam="plain", panel="2 in", seams="2", seam_allowance="1/4 in")


def test_rolled_and_whipped_gathers_make_each_piece_longer_than_the_one_before():
    working = work("fine-seams", seam="rolled and whipped gathers", seams="2", along="10 in",
                   fullness="1.5")  # fmt: skip
    assert [piece.length.length for piece in working.pieces] == [
        inches(10), inches(15), inches("45/2")
    ]  # fmt: skip
    assert any("Draw the laid thread up" in step for step in steps(working))
    assert "more than" not in refusal("fine-seams", seam="rolled and whipped gathers", seams="12",
                                      fullness="4")  # fmt: skip


def test_scraps_and_seam_line_of_a_plain_seam_by_hand():
    """Of 21 in in three pieces each shows 7 in beside a side of 1/2 in; eight seams of 2 × 1/4 in
    are 4 in of scraps."""
    working = work("fine-seams", seam="plain")
    assert said(working, "first_seam_line") == "7 1/2 in"
    assert said(working, "sample_scrap") == "2 in"


def test_the_sample_loses_what_one_seam_takes():
    working = work("fine-seams", seam="pin stitch", pin_turn="1/4 in", pin_lap="1/8 in")
    lost = length(working, "sample_before") - length(working, "sample_after")
    assert lost == total([inches("1/4"), inches("1/8")])
