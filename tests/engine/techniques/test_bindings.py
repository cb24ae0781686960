"""Single and double bindings, against strips walked round the edge and its corners."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bias_cutting import mitred_round
from handout_engine.lengths import ZERO, inches
from worked import length, refusal, said, steps, work

TRIMMED = "trimmed to the binding"
widths = st.fractions(Fraction(1, 8), 1, max_denominator=32).map(inches)


def wrapped(strip: Fraction, seam: Fraction, binding: Fraction) -> Fraction:
    """Walk along a strip from its sewn edge: to the seam, out to the edge, back to the seam.

    What is left of it then is turned under.
    """
    place = seam
    place += binding
    place += binding
    return strip - place


def test_a_neck_binding_by_hand():
    """Quarter-inch binding, all four parts equal: 4 x 1/4 = 1 in; 12 in of neck + 3 in of tail."""
    working = work("single-binding", edge="12 in")
    assert said(working, "strip_width") == "1 in"
    assert said(working, "strip_length") == "15 in"
    assert said(working, "edge_fold") == "1/2 in"
    assert said(working, "turn_fold") == "3/4 in"


def test_a_blanket_binding_by_hand():
    """3/8 in binding in two layers: 6 x 3/8 = 2 1/4 in; 36 x 45 in round: 162 in + 10 in."""
    working = work("double-binding", edge="162 in", binding="3/8 in", corners="4")
    assert said(working, "strip_width") == "2 1/4 in"
    assert said(working, "folded_width") == "1 1/8 in"
    assert said(working, "strip_length") == "172 in"
    assert said(working, "corners_take") == "0 in"


@given(widths, widths, widths)
def test_wrapped_round_a_single_binding_leaves_its_turning(binding, seam, turn):
    working = work(
        "single-binding", binding=binding, seam_allowance=seam, turn_under=turn, after=TRIMMED
    )
    assert wrapped(length(working, "strip_width").mm, seam.mm, binding.mm) == turn.mm


@given(widths, widths)
def test_wrapped_round_a_double_binding_ends_with_its_fold_on_the_seam(binding, seam):
    working = work("double-binding", binding=binding, seam_allowance=seam, after=TRIMMED)
    folded = length(working, "strip_width").mm / 2
    assert wrapped(folded, seam.mm, binding.mm) == 0


@given(widths)
def test_with_all_parts_equal_it_is_four_and_six_times_the_binding(binding):
    assert length(work("single-binding", binding=binding), "strip_width") == 4 * binding
    assert length(work("double-binding", binding=binding), "strip_width") == 6 * binding


@given(
    widths, widths, st.lists(st.integers(6, 60), min_size=2, max_size=2),
    st.sampled_from(["single-binding", "double-binding"]),
)  # fmt: skip
def test_the_length_goes_round_every_mitred_corner(binding, seam, sides, technique):
    outline = [inches(side) for side in (*sides, *sides)]
    edge = sum(outline[1:], outline[0])
    working = work(
        technique, edge=edge, corners="4", binding=binding, seam_allowance=seam, after=TRIMMED
    )
    walked = mitred_round([float(side) for side in outline], float(seam), float(binding))
    tail = length(working, "tail")
    assert float(length(working, "strip_length") - tail) == pytest.approx(walked)


def test_as_wide_as_the_binding_a_mitre_costs_nothing_extra():
    with_corners = work("double-binding", edge="100 in", corners="4", binding="1/2 in")
    without = work("double-binding", edge="100 in", binding="1/2 in")
    assert length(with_corners, "strip_length") == length(without, "strip_length")


@pytest.mark.parametrize("technique", ["single-binding", "double-binding"])
def test_corners_trimmed_off_are_not_bound(technique):
    """Four corners, 1/4 in trimmed from each of their two sides: 2 in less to bind."""
    working = work(
        technique, edge="40 in", corners="4", binding="1/4 in", seam_allowance="1/2 in",
        after=TRIMMED, ends="open", end_turn="1/2 in",
    )  # fmt: skip
    assert said(working, "corners_spare") == "2 in"
    assert said(working, "corners_take") == "0 in"
    assert said(working, "strip_length") == "39 in"


@given(widths, widths, st.integers(0, 8))
def test_mitres_take_or_spare_and_neither_is_negative(binding, seam, corners):
    written = {"corners": corners} if corners else {}
    working = work("double-binding", binding=binding, seam_allowance=seam, after=TRIMMED, **written)
    take, spare = (
        length(working, name) if name in working.named else ZERO
        for name in ("corners_take", "corners_spare")
    )
    assert min(take, spare) == ZERO
    assert take - spare == 2 * corners * (binding - seam)


def test_open_ends_are_turned_in_instead_of_joined():
    working = work("single-binding", edge="10 in", ends="open")
    assert said(working, "strip_length") == "11 in"
    assert any("Turn the open ends in first" in step for step in steps(working))
    assert not any("overlap by" in step for step in steps(working))


def test_several_edges_are_cut_together():
    pair = work("single-binding", edge="9 in", make="2")
    assert said(pair, "length_for_all") == "24 in"
    assert length(pair, "joined_length") >= inches(24)


@pytest.mark.parametrize("technique", ["single-binding", "double-binding"])
def test_an_allowance_wider_than_the_binding_is_refused_unless_trimmed(technique):
    assert refusal(technique, binding="1/4 in", seam_allowance="3/8 in") == (
        "seam_allowance 3/8 in is wider than binding 1/4 in; the edge cannot lie inside it (use at "
        'most 1/4 in, or trim it after sewing: after: "trimmed to the binding")'
    )
    working = work(technique, binding="1/4 in", seam_allowance="3/8 in", after=TRIMMED)
    assert any("Trim all allowances to 1/4 in" in step for step in steps(working))


def test_a_turning_deeper_than_the_binding_is_refused():
    assert refusal("single-binding", binding="1/4 in", turn_under="1/2 in") == (
        "turn_under 1/2 in is deeper than binding 1/4 in; it would reach past the fold (use at "
        'most 1/4 in, or trim it: after: "trimmed to the binding")'
    )


@given(st.integers(10, 300).map(inches), st.sampled_from(["single-binding", "double-binding"]))
def test_strips_across_the_cloth_join_into_the_length(edge, technique):
    working = work(technique, edge=edge, grain="across")
    strips, each = working.named["binding_strips"].amount, length(working, "binding_strip_length")
    joined = strips * each - (strips - 1) * length(working, "strip_width")
    assert joined == length(working, "strip_length")
    assert each <= length(working, "usable_width")
