"""Single and double bindings, against strips walked round the edge and its corners."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bias_cutting import mitred_round
from handout_engine.amounts.lengths import ZERO, inches
from handout_engine.amounts.refusals import RefusalError
from slabs import reach_round
from worked import INCHES, length, refusal, said, steps, work

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


@given(widths, widths, widths)
def test_with_its_turn_of_cloth_a_binding_reaches_round_a_slab_as_thick(binding, seam, thick):
    """Its own path, from the stitching round the edge to the stitching at the back."""
    written = {"binding": binding, "seam_allowance": seam, "turn_of_cloth": thick, "after": TRIMMED}
    reach = reach_round(float(thick), float(binding))
    single = work("single-binding", **written)
    left = length(single, "strip_width") - length(single, "turn") - seam
    assert float(left) >= reach - 1e-9
    double = work("double-binding", **written)
    left = length(double, "folded_width") - seam
    assert float(left) >= reach - 1e-9


@pytest.mark.parametrize("technique", ["single-binding", "double-binding"])
def test_what_a_sample_falls_short_by_is_what_the_turn_of_cloth_adds(technique):
    """The sample says to add it; the strip must then reach so much further, not half of it."""
    short = inches("3/16")
    before, after = work(technique), work(technique, turn_of_cloth=short)
    name, layers = ("folded_width", 2) if technique == "double-binding" else ("strip_width", 1)
    assert length(after, name) - length(before, name) == short
    wider = length(after, "strip_width") - length(before, "strip_width")
    assert wider == layers * short
    assert "turn of cloth" in after.sample[0].checkpoint.first(INCHES)


@pytest.mark.parametrize("technique", ["single-binding", "double-binding"])
@pytest.mark.parametrize("corners", [7, 8, 13, 40])
def test_corners_that_leave_nothing_between_them_are_refused(technique, corners):
    """Each takes 1 1/2 in on both of its sides: seven take 21 in of 20, six leave 2 in."""
    written = {"edge": "20 in", "seam_allowance": "1 1/2 in", "after": TRIMMED}
    words = refusal(technique, corners=corners, **written)
    assert words.startswith(f"corners {corners} with an allowance of 1 1/2 in (38 mm)")
    assert words.endswith("use at most 6, or a narrower allowance")
    working = work(technique, corners=6, **written)
    assert said(working, "bound_edge") == "5 in"


@given(
    widths,
    widths,
    st.integers(1, 40),
    st.integers(4, 320).map(lambda n: inches(Fraction(n, 4))),
    st.sampled_from(
        [("single-binding", "round"), ("double-binding", "round"), ("double-binding", "open")]
    ),
)
def test_no_strip_is_shorter_than_the_edge_it_finishes(binding, seam, corners, edge, sewn):
    """The edge is measured as it lies when it is bound, its joined ends taken off the strip."""
    technique, ends = sewn
    written = {
        "binding": binding,
        "seam_allowance": seam,
        "corners": corners,
        "edge": edge,
        "ends": ends,
        "after": TRIMMED,
    }
    try:
        working = work(technique, **written)
    except RefusalError as refused:
        assert refused.field == "corners" and 2 * corners * seam >= edge
        return
    sides = [float(edge) / corners] * corners
    joined = 2 * 2**0.5 * 6.35 if ends == "round" else 0.0
    strip = float(length(working, "strip_length"))
    assert strip - joined >= mitred_round(sides, float(seam), float(binding)) - 1e-6


def test_a_tail_that_the_last_join_uses_up_is_refused():
    """Allowances of 1/2 in on the slant take 1.414 in of the strip where its ends are joined."""
    assert refusal("single-binding", tail="1 in", strip_allowance="1/2 in") == (
        "tail 1 in is used up where the ends are joined; use at least 1 7/16 in (36 mm)"
    )
    work("single-binding", tail="1 in", strip_allowance="1/2 in", ends="open")


@pytest.mark.parametrize("grain", ["bias", "across"])
def test_a_folded_strip_is_opened_before_its_ends_are_joined(grain):
    (joining,) = [
        step for step in steps(work("double-binding", grain=grain)) if "Leave off" in step
    ]
    assert joining.index("Open the fold of both ends") < joining.index("join them")
    assert joining.index("join them") < joining.index("fold the strip again")
    slant = "on the grain" if grain == "bias" else "at the same slant of 45 degrees"
    assert slant in joining
    single = steps(work("single-binding", grain=grain))
    assert not any("Open the fold" in step for step in single)


@pytest.mark.parametrize(
    ("edge", "words"),
    [("5 in", "cut out the longest of them."), ("60 in", "of them, the longest.")],
)
def test_the_strips_to_cut_are_named_without_their_chart(edge: str, words: str):
    (ruled,) = [step for step in steps(work("single-binding", edge=edge)) if "Rule it" in step]
    assert words in ruled
    assert "chart" not in ruled


def test_tips_stand_out_twice_the_allowance_where_strips_are_joined():
    assert said(work("double-binding", strip_allowance="3/8 in"), "tip") == "3/4 in"
    assert "tip" not in work("single-binding", grain="across").values


def test_straight_strips_are_cut_for_every_edge():
    """40 in and a tail of 10 in take two strips of 44 in; five such edges take ten."""
    working = work("double-binding", grain="across", edge="40 in", make=5)
    assert said(working, "binding_strips") == "2"
    assert said(working, "strips_used") == "10"
