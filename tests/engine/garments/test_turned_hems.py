"""Turned hems: one by hand, then every garment's against shapely, then any flare.

What is turned up must come to lie on the garment, its side seams on one another; what its raw edge
is longer there is stated, and can be eased in. A twentieth of a millimetre is let pass, since the
curves are rows of short straight sides.
"""

from __future__ import annotations

from dataclasses import replace
from math import atan2, degrees

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import LineString, Point, Polygon, box
from shapely.affinity import rotate, scale, translate

from drafted import drafted
from handout_engine.amounts.lengths import inches, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.drafting.curves import beyond
from handout_engine.drafting.drafts import FOLD, Draft, Edge
from handout_engine.drafting.turned_hems import Half, deepest
from measured_babies import check_outlines
from worked import length, refusal, steps, work

FINE = 0.05
HEMMED = ("baby-jacket", "day-gown", "slip", "summer-dress")
FLARED = ("day-gown", "slip", "summer-dress")

SIDE = ((100.0, 0.0), (112.0, 100.0))
LEVEL = ((112.0, 100.0), (0.0, 100.0))


def turned_up(draft: Draft) -> list[Edge]:
    return [edge for edge in draft.edges if edge.turned_up]


def test_the_rest_of_a_line_begins_exactly_so_far_along_it():
    line = ((0.0, 0.0), (10.0, 0.0), (20.0, 0.0))
    assert beyond(line, 8) == ((8.0, 0.0), (10.0, 0.0), (20.0, 0.0))
    assert beyond(line, 12) == ((12.0, 0.0), (20.0, 0.0))
    assert beyond(line, 18) == ((18.0, 0.0), (20.0, 0.0))
    # of a line that is shorter, half its last stretch is left
    assert beyond(line, 20) == beyond(line, 50) == ((15.0, 0.0), (20.0, 0.0))


def test_a_level_hem_by_hand():
    # The side leans outward by 12 in 100, so 20 above the hem the piece is 112 - 2.4 wide. So wide
    # the raw edge is cut, 20 below it; going straight on, it would be 112 + 2.4.
    edges = (Edge("top", ((0.0, 0.0), SIDE[0])), Edge("side", SIDE), Edge("hem", LEVEL, 20.0, True),
             Edge(FOLD, (LEVEL[-1], (0.0, 0.0))))  # fmt: skip
    cut = Draft("piece", edges).cut_outline
    assert cut == ((0, 0), (100, 0), (112, 100), (109.6, 120), (0, 120))
    half = Half(SIDE, LEVEL)
    assert half.eased(20.0) == pytest.approx((0, 109.6), abs=1e-6)
    assert deepest([half], inches(2), millimetres(0).mm) == inches(2)


def test_a_curved_hem_is_made_shallower_until_it_can_be_eased_in():
    # A quarter of a circle with a radius of 300 is longer by 2 h for every 300 - h of where it
    # lands, all round: 3 % of that is eased in by h = 4.43; in eighths of an inch that is 3.175.
    arc = tuple(rotate(Point(300, 0), turn, origin=(0, 0)).coords[0] for turn in range(91))
    half = Half(((250.0, 0.0), (300.0, 0.0)), arc)
    assert deepest([half], inches(2), millimetres(3).mm / 100) == inches("1/8")


def laid_level(shape, edge: Edge):
    """A shape moved so that an edge runs from the origin along the level, its piece above it."""
    (x1, y1), (x2, y2) = edge.points[0], edge.points[-1]
    return rotate(translate(shape, -x1, -y1), -degrees(atan2(y2 - y1, x2 - x1)), origin=(0, 0))


def opened(points, draft: Draft) -> Polygon:
    """A piece whole, where half of it is drafted."""
    half = Polygon(points)
    return half.union(scale(half, -1, 1, origin=(0, 0))) if draft.on_fold else half


def folds_onto_the_piece(draft: Draft, edge: Edge) -> bool:
    """Whether all that is cut beyond an edge, folded over on a straight line, lies on the piece."""
    cut = laid_level(opened(draft.cut_outline, draft), edge)
    seam = laid_level(Polygon(draft.seam_outline), edge)
    way = -1 if seam.centroid.y > 0 else 1
    # beside a centre front that overlaps, the hem goes on in an edge of its own
    goes_on = draft.edges[draft.edges.index(edge) + 1].turned_up
    end = LineString([edge.points[0], edge.points[-1]]).length if goes_on else 2000
    outside = box(-2000, 0, end, way * 2000)
    near = laid_level(LineString(edge.points), edge).buffer(1.5 * edge.allowance)
    folded = scale(cut.intersection(near).intersection(outside), 1, -1, origin=(0, 0))
    return cut.buffer(FINE).contains(folded) and folded.area > 0


def raw_edge_and_landing(draft: Draft, edge: Edge) -> tuple[float, float]:
    """How long both are between the seam lines of the sides, for a hem square to its side."""
    bare = [replace(each, allowance=each.allowance * (each is edge)) for each in draft.edges]
    cut, seam = Polygon(replace(draft, edges=tuple(bare)).cut_outline), Polygon(draft.seam_outline)
    fold = LineString(edge.points)
    raw = cut.exterior.difference(seam.buffer(edge.allowance - FINE))
    landings = [fold.offset_curve(way * edge.allowance) for way in (1, -1)]
    return raw.length, max(landings, key=lambda line: line.intersection(seam).length).length


@pytest.mark.parametrize("key", HEMMED)
@pytest.mark.parametrize("size", ["50", "62", "74", "98"])
def test_what_is_turned_up_comes_to_lie_on_the_garment(key, size):
    working, drafts = drafted(key, size=size)
    folded = [(draft, edge) for draft in drafts for edge in turned_up(draft)]
    assert {edge.name for _, edge in folded} >= {"hem"}
    for draft, edge in folded:
        assert folds_onto_the_piece(draft, edge), (draft.name, edge.name)
    more = [raw_edge_and_landing(draft, edge) for draft, edge in folded if edge.name == "hem"]
    assert all(raw - lies <= 0.031 * lies for raw, lies in more)
    stated = float(length(working, "hem_ease"))
    assert 2 * sum(raw - lies for raw, lies in more) <= stated + 4 * FINE


@pytest.mark.parametrize("key", FLARED)
@settings(max_examples=settings.default.max_examples // 5)
@given(st.integers(0, 200), st.sampled_from(["50", "62", "98"]), st.integers(0, 24))
def test_a_hem_of_any_flare_can_be_eased_in_or_is_faced(key, flare, size, eighths):
    hem = {"hem": inches(eighths) / 8} if eighths else {}
    try:
        working, drafts = drafted(key, size=size, flare=millimetres(flare), **hem)
    except RefusalError as refused:
        assert refused.field in {"hem", "flare"}, refused.message
        return
    check_outlines(working)
    if "hem_ease" not in working.values:
        assert {"front hem facing", "back hem facing"} <= {piece.name for piece in working.pieces}
        assert any("Sew the facing to the lower edge" in step for step in steps(working))
        return
    assert float(length(working, "hem_ease")) <= 0.03 * float(length(working, "hem_edge"))
    for draft in drafts:
        for edge in turned_up(draft):
            assert folds_onto_the_piece(draft, edge), (draft.name, edge.name)


def test_the_ease_is_said_in_the_steps():
    for key in FLARED:
        assert any("longer, once round, than where it will land" in step
                   for step in steps(work(key, size="50")))  # fmt: skip


def test_a_hem_deeper_than_can_be_eased_in_is_faced_with_its_own_shape():
    working, drafts = drafted("slip", size="62", flare="12 cm", hem="2 in")
    facing = next(draft for draft in drafts if draft.name == "front hem facing")
    front = next(draft for draft in drafts if draft.name == "slip front")
    assert facing.edge("hem") == front.edge("hem")
    assert length(working, "hem_depth") == inches(2)
    # it lies flat behind the front: all of it is inside the front's seam line
    assert Polygon(front.seam_outline).buffer(FINE).contains(Polygon(facing.seam_outline))


def test_more_ease_turns_a_deeper_hem_up():
    allowed = work("slip", size="62", flare="12 cm", hem="3/4 in", hem_easing="15 %")
    assert "hem_ease" in allowed.values


@pytest.mark.parametrize("key", ["slip", "summer-dress"])
def test_a_trim_takes_the_seam_allowance_where_nothing_else_is_said(key):
    trimmed = work(key, hem_trim="2 in")
    assert trimmed.values["hem_depth"].amount == trimmed.inputs["seam_allowance"].amount


def test_a_hem_deeper_than_its_side_and_a_jacket_s_too_curved_are_refused():
    assert refusal("slip", size="50", reach="22 cm", hem="6 in") == (
        "hem 6 in is deeper than the side seam above it is long, 5 1/8 in (13 cm); use at most "
        "5 3/32 in (13 cm), or a longer garment"
    )
    assert refusal("baby-jacket", size="62", flare="6 cm", hem="2 in") == (
        "the lower edge curves too much for a hem 2 in (51 mm) deep, whose raw edge could not be "
        "eased in; give hem at most 5/8 in (15 mm), or flare less"
    )
    assert length(work("baby-jacket", size="62", flare="6 cm", hem="5/8 in"), "hem_depth")
