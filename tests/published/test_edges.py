"""Edges and hems, held against what is published; the rest is common practice."""

import pytest

from handout_engine.amounts.inputs import declared_inputs
from handout_engine.amounts.lengths import inches
from handout_engine.amounts.sources import PRACTICE, published
from handout_engine.register import find
from worked import length, work

L_87 = published("oregon-l87")


@pytest.mark.parametrize(
    ("skirt", "least", "most"),
    [
        ("moderate flare", "2", "3"),
        ("straight and sheer", "4", "4"),
        ("flared", "3/2", "3/2"),
        ("circle", "1/4", "1/4"),
        ("narrow hem", "1/4", "1/4"),
    ],
)
def test_hem_depths_are_the_published_ones(skirt, least, most):
    """Oregon State 4-H, L-87, p. 15, with 1/4 in turned under."""
    working = work("hem", skirt=skirt, finished_length="30 in")
    rows = {row[0]: row[1:] for row in working.charts[0].rows}
    assert rows[skirt] == (inches(least), inches(most))
    assert inches(least) <= length(working, "hem_depth") <= inches(most)
    assert length(working, "turn") == inches("1/4")
    assert working.named["hem_depth"].basis == working.named["turn"].basis == L_87


def test_a_narrow_hem_takes_a_quarter_inch_twice():
    """Oregon State 4-H, L-87, p. 15: 1/4 + 1/4 in."""
    working = work("hem", skirt="narrow hem")
    assert length(working, "hem_allowance") == inches("1/2")


def test_a_circle_skirt_has_the_published_hem_and_it_can_be_eased():
    """Oregon State 4-H, L-87, p. 15: a circle 1/4 in, or rolled."""
    working = work("curved-hem", turning="360", edge="100 in")
    assert length(working, "hem_depth") == inches("1/4")
    assert working.named["hem_depth"].basis == L_87


@pytest.mark.parametrize("hem", ["1/2", "1", "2"])
def test_a_square_with_an_equal_double_hem_is_cut_four_depths_larger(hem):
    """Common practice, no source: F + 4 h."""
    working = work("mitred-corner", width="18 in", length="18 in", hem_depth=inches(hem))
    assert length(working, "cut_width") == inches(18) + 4 * inches(hem)


def test_wing_needles_are_100_and_120_and_want_a_wide_plate():
    """Common practice, no source: with a fine two-ply thread; a straight-stitch plate comes off."""
    (needle,) = [
        each for each in declared_inputs(find("hemstitched-edge")) if each.name == "needle"
    ]
    assert needle.kind.choices[:2] == ("wing 100", "wing 120")
    assert needle.basis == PRACTICE
    working = work("hemstitched-edge")
    assert any("two-ply" in supply.name for supply in working.supplies)
    assert any("straight-stitch plate" in caution.text for caution in working.cautions)


@pytest.mark.parametrize(
    ("key", "names"),
    [
        ("hemstitched-edge", ["repeat", "tolerance", "hem_depth", "side_hem", "clearance"]),
        ("decorative-row", ["repeat", "tolerance", "stitch_width", "clearance"]),
        ("scallop-edge", ["rise_limit", "least_gap", "seam_allowance", "trim", "facing_depth"]),
        ("hem", ["roll", "facing_seam", "side_allowance"]),
        ("curved-hem", ["most_ease", "facing_seam", "facing_overlap"]),
        ("mitred-corner", ["hem_depth", "turn", "mitre_allowance"]),
    ],
)
def test_every_habit_of_the_trade_is_an_input_that_says_so(key, names):
    """Common practice, no source."""
    declared = {each.name: each for each in declared_inputs(find(key))}
    assert {name: declared[name].basis for name in names} == dict.fromkeys(names, PRACTICE)
