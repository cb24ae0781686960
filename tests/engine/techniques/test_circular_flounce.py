"""Circular flounce: worked examples, then the seam walked round the outline that is cut."""

from itertools import pairwise
from math import dist, pi

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from shapely import LineString, Polygon

from handout_engine.amounts.lengths import inches, total
from handout_engine.families.ruffles.flounces import sector
from worked import length, refusal, said, steps, work

edges = st.integers(8, 60).map(inches)
depths = st.integers(1, 10).map(inches)


def test_a_whole_ring_round_a_closed_edge_by_hand():
    # 12 in / 2 pi = 1.91 in; cut 1/4 in inside it and 2 1/8 in outside it; hem 3.91 / 1.91
    working = work("circular-flounce", edge="12 in", depth="2 in", ends="closed")
    assert said(working, "seam_radius") == "1 29/32 in"
    assert said(working, "inner_radius") == "1 21/32 in"
    assert said(working, "outer_radius") == "4 1/32 in"
    assert said(working, "cut_depth") == "2 3/8 in"
    assert said(working, "clips_apart") == "1/2 in"
    assert float(working.values["hem_fullness"].amount) == pytest.approx(1 + 4 * pi / 12)
    assert float(length(working, "hem_line") / inches(1)) == pytest.approx(12 + 4 * pi)
    assert not any("Slit" in step or "Join" in step for step in steps(working))


def test_two_slit_rings_in_a_closed_edge_give_each_its_two_allowances():
    # 24 in / 2 = 12 in, and 1/4 in at both ends of each ring: 12 1/2 in of seam line a ring
    working = work("circular-flounce", edge="24 in", pieces="2", ends="closed", make="3")
    assert said(working, "seam_line") == "12 1/2 in"
    assert said(working, "whole_seam_line") == "25 in"
    assert working.values["pieces_in_all"].amount == working.pieces[0].count == 6
    assert any("Slit each ring" in step for step in steps(working))


def test_an_open_piece_has_two_end_hems():
    working = work("circular-flounce", edge="12 in", ends="open")
    assert said(working, "seam_line") == "12 1/2 in"


@pytest.mark.parametrize(
    ("ends", "whole", "each"),
    [
        # 12 in and two end hems of 1/4 in, and what one join of 1/2 in takes of both pieces
        ("open", "13 1/2 in", "6 3/4 in"),
        # 12 in, and what two joins take of both pieces
        ("closed", "14 in", "7 in"),
    ],
)
def test_end_hems_and_joins_of_different_widths(ends, whole, each):
    working = work("circular-flounce", edge="12 in", pieces="2", turn="90 deg", ends=ends,
                   end_hem="1/4 in", join_allowance="1/2 in")  # fmt: skip
    assert said(working, "whole_seam_line") == whole
    assert said(working, "seam_line") == each


def test_a_seam_line_shorter_than_its_own_allowance_is_refused():
    assert refusal("circular-flounce", edge="1 in", ends="closed").startswith(
        "the seam line would have a radius of 5/32 in (4 mm), not more than the edge_allowance "
        "1/4 in"
    )
    # two rings of 2 π × 1/4 in = 1.571 in: 3.142 in without the four allowances of 1/4 in
    assert refusal("circular-flounce", edge="1 in", ends="closed", pieces="2").endswith(
        "use more than 2 5/32 in (55 mm) of edge, or fewer pieces, or a smaller turn"
    )


def test_a_ring_wider_than_the_cloth_is_refused_with_smaller_arcs_of_the_same_fullness():
    said_no = refusal("circular-flounce", edge="60 in", depth="14 in", ends="closed")
    assert "pieces: 3 with turn: 120 deg" in said_no
    thirds = work("circular-flounce", edge="60 in", depth="14 in", ends="closed", pieces="3",
                  turn="120 deg")  # fmt: skip
    assert float(thirds.values["hem_fullness"].amount) == pytest.approx(1 + 14 * 2 * pi / 60, 0.02)


@given(edges, depths, st.integers(1, 4), st.integers(30, 360), st.sampled_from(["open", "closed"]))
def test_the_stitching_walked_round_all_pieces_is_the_edge(edge, depth, pieces, turn, ends):
    try:
        working = work("circular-flounce", edge=edge, depth=depth, pieces=pieces,
                       turn=f"{turn} deg", ends=ends, cloth_width="120 in")  # fmt: skip
    except Exception as error:  # the refusals have tests of their own
        assume("radius" not in str(error) and "across" not in str(error))
        raise
    radius = length(working, "seam_radius").mm
    walked = walk(sector(float(radius), float(radius) + 1, turn))
    if pieces == 1 and turn == 360 and ends == "closed":
        taken = 0.0
    else:
        joins = 2 * (pieces if ends == "closed" else pieces - 1)
        taken = joins * 6.35 + (0.0 if ends == "closed" else 2 * 6.35)
    assert walked * pieces - taken == pytest.approx(float(edge), rel=2e-3)


def walk(outline: tuple[tuple[float, float], ...]) -> float:
    """The length of the inner line of a sector, point to point."""
    inner = outline[len(outline) // 2 :]
    return sum(dist(*pair) for pair in pairwise(inner))


@given(edges, depths)
def test_a_deeper_flounce_is_fuller_and_a_longer_edge_less(edge, depth):
    def full(edge, depth):
        working = work("circular-flounce", edge=edge, depth=depth, pieces=2, turn="120 deg",
                       cloth_width="120 in")  # fmt: skip
        return working.values["hem_fullness"].amount

    assert full(edge, depth + inches(1)) > full(edge, depth) > full(edge + inches(4), depth)


def test_the_outline_lies_in_the_piece_it_is_cut_from():
    for turn in ("360 deg", "270 deg", "200 deg", "180 deg", "130 deg", "90 deg", "50 deg"):
        (piece,) = work("circular-flounce", edge="16 in", turn=turn).pieces
        xs, ys = zip(*piece.outline, strict=True)
        assert min(xs) == min(ys) == 0
        assert max(xs) == pytest.approx(piece.length.mm, abs=0.05)
        assert max(ys) == pytest.approx(piece.width.mm, abs=0.05)


@pytest.mark.parametrize(
    ("ends", "pieces", "inside"), [("closed", "2", 12.7), ("open", "1", 6.35), ("open", "2", None)]
)
def test_each_piece_is_sewn_as_far_inside_its_ends_as_they_take(ends, pieces, inside):
    """Joins of 1/2 in, end hems of 1/4 in; pieces of which one end is hemmed carry no line."""
    (piece,) = work("circular-flounce", edge="16 in", turn="100 deg", pieces=pieces, ends=ends,
                    end_hem="1/4 in", join_allowance="1/2 in").pieces  # fmt: skip
    if inside is None:
        assert piece.seam_outline == ()
        return
    sewn = Polygon(piece.seam_outline)
    assert Polygon(piece.outline).contains(sewn)
    sides = sorted(pairwise((*piece.outline, piece.outline[0])), key=lambda side: dist(*side))
    for end in sides[-2:]:
        assert LineString(end).distance(sewn) == pytest.approx(inside, abs=0.05)


def test_nothing_is_lost_between_the_cut_edges():
    working = work("circular-flounce", hem="double", hem_depth="1/4 in")
    parts = [length(working, name) for name in ("edge_allowance", "depth", "hem_allowance")]
    cut = length(working, "outer_radius") - length(working, "inner_radius")
    assert cut == total(parts)
