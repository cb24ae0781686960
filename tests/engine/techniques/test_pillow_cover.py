"""Pillow cover: worked example, then the lap put together from its panels, 1,000 random times."""

from fractions import Fraction
from math import dist, pi
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from folding import turn_up
from handout_engine.amounts.lengths import Length, inches
from handout_engine.amounts.refusals import RefusalError
from handout_engine.families.nursery.pillow_cover_drawing import _rounded
from worked import length, refusal, said, steps, work

SIXTEENTH = Fraction(127, 80)


def test_a_flanged_cover_by_hand():
    # 12 x 16 and 2 in of flange: 16 x 20; + 2 x 1/2: 17 x 21
    # panels (20 + 4) / 2 = 12; + 1/2 + 2 x 1 = 14 1/2
    working = work("pillow-cover")
    assert (said(working, "cut_width"), said(working, "front_cut_length")) == ("17 in", "21 in")
    assert said(working, "panel_cut_length") == "14 1/2 in"
    assert [piece.count for piece in working.pieces] == [1, 2]
    assert any("stitch on it, pivoting" in step for step in steps(working))


def test_a_ruffled_cover_names_the_edge_of_its_ruffle():
    # 2 x (12 + 16) = 56, less (8 - 2 pi) x 1 = 1.717 for the rounded corners: 54.28 in
    working = work("pillow-cover", edge="ruffled")
    assert float(length(working, "ruffle_edge")) / 25.4 == pytest.approx(56 - 8 + 2 * pi)
    assert said(working, "cover_length") == "16 in"


def test_a_plain_cover_has_neither():
    working = work("pillow-cover", edge="plain")
    assert "ruffle_edge" not in working.values
    assert said(working, "front_cut_length") == "17 in"


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"overlap": "12 in", "pillow_length": "8 in"},
         "overlap 12 in is more than the pillow is long, 8 in; use at most 8 in (20.3 cm), "
         "or a longer pillow"),
        ({"overlap": "1 in", "back_hem": "2 in"},
         "back_hem 2 in is deeper than the panels lap, 1 in; use at most 1 in (25 mm), "
         "or more overlap"),
        ({"edge": "ruffled", "corner": "6 in", "pillow_width": "8 in"},
         "corner 6 in rounds more than a whole side of the pillow; use at most 4 in "
         "(10.1 cm), or a larger pillow"),
        ({"pillow_length": "40 in"},
         "the front is cut 45 in (114.3 cm) and the cloth is only 44 in (111.8 cm) wide between "
         "its selvages; use a pillow at most 39 in (99 cm) long, or wider cloth"),
    ],
)  # fmt: skip
def test_what_cannot_be_covered_is_refused(written, sentence):
    assert refusal("pillow-cover", **written) == sentence


def test_hemmed_and_lapped_the_panels_are_as_long_as_the_front_with_the_overlap():
    random = Random(3)
    worked = 0
    for _ in range(1000):
        written = {
            "edge": random.choice(["flanged", "ruffled", "plain"]),
            "pillow_width": Length(random.randint(64, 300) * SIXTEENTH),
            "pillow_length": Length(random.randint(64, 480) * SIXTEENTH),
            "ease": Length(random.randint(0, 20) * SIXTEENTH),
            "overlap": Length(random.randint(16, 192) * SIXTEENTH),
            "back_hem": Length(random.randint(4, 48) * SIXTEENTH),
            "flange": Length(random.randint(8, 80) * SIXTEENTH),
            "cloth_width": "60 in",
        }
        try:
            working = work("pillow-cover", **written)
        except RefusalError:
            continue
        worked += 1
        hem = turn_up(length(working, "panel_cut_length").mm, written["back_hem"].mm, 2)
        assert hem.layers == 3
        allowance = length(working, "seam_allowance").mm
        front = length(working, "front_cut_length").mm
        # the first panel runs from the left raw edge, the second from the right one
        assert hem.finished - (front - hem.finished) == written["overlap"].mm
        flange = written["flange"].mm if written["edge"] == "flanged" else 0
        inside = front - 2 * allowance - 2 * flange
        assert inside == written["pillow_length"].mm + written["ease"].mm
    assert worked > 500


@given(st.integers(4, 20), st.integers(4, 20), st.integers(0, 8))
def test_the_edge_of_the_ruffle_is_the_length_walked_round_the_rounded_pillow(wide, long, quarters):
    if quarters / 2 > min(wide, long):
        return
    radius = quarters / 4
    working = work("pillow-cover", edge="ruffled", pillow_width=inches(wide),
                   pillow_length=inches(long), overlap="1 in",
                   corner=inches(Fraction(quarters, 4)))  # fmt: skip
    points = _rounded(0, 0, long, wide, radius)
    walked = sum(dist(one, two) for one, two in zip(points, [*points[1:], points[0]], strict=True))
    assert float(length(working, "ruffle_edge")) / 25.4 == pytest.approx(walked, rel=2e-3)
