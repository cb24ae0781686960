"""A band of strips, against strips sewn place by place in `stitching`."""

from fractions import Fraction

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from handout_engine.amounts.lengths import NamedLength, inches, total
from stitching import sewn_width
from worked import length, refusal, said, steps, work

ROLL, ENTREDEUX, CLOTH, OUTER = Fraction(3), Fraction(6), Fraction(7), Fraction(8)
GIVEN = {"roll": "3 mm", "entredeux_allowance": "6 mm", "trim": "2 mm", "cloth_allowance": "7 mm",
         "outer_allowance": "8 mm"}  # fmt: skip
# What a strip of the row gives to its neighbour of the column, by the habits of the trade
# (common practice, no source). Lace and beading have finished edges; entredeux has its own cloth.
GIVES = {
    "lace": dict.fromkeys(("lace", "entredeux", "cloth", "edge"), Fraction(0)),
    "entredeux": dict.fromkeys(("lace", "entredeux", "cloth", "edge"), ENTREDEUX),
    "cloth": {"lace": ROLL, "entredeux": ENTREDEUX, "cloth": CLOTH, "edge": OUTER},
}
LIKE = {"lace": "lace", "beading": "lace", "entredeux": "entredeux", "puffing": "cloth",
        "embroidered": "cloth", "cloth": "cloth", None: "edge"}  # fmt: skip

strips = st.lists(
    st.builds(
        NamedLength,
        st.sampled_from([kind for kind in LIKE if kind]),
        st.fractions(Fraction(1, 16), 4, max_denominator=16).map(inches),
    ),
    min_size=1,
    max_size=9,
).map(tuple)


def test_five_strips_worked_by_hand():
    """Common practice, no source: 5/8 + 1/8 + 1 1/2 + 1/8 + 5/8 = 3 in show.

    The puffing between entredeux is cut 1 1/2 + 1/4 + 1/4 = 2 in wide and 1.75 × 18 + 1 in long.
    """
    working = work("insertion-band")
    assert said(working, "finished_width") == "3 in"
    assert said(working, "strip1_cut_width") == "5/8 in"
    assert said(working, "strip2_cut_width") == "5/8 in"
    assert said(working, "strip3_cut_width") == "2 in"
    assert said(working, "puffing_length") == "32 1/2 in"
    assert said(working, "cut_length") == "19 in"
    assert [piece.name for piece in working.pieces] == ["strip 3 puffing"]


@settings(max_examples=300)
@given(strips)
def test_sewn_together_the_strips_are_as_wide_as_the_page_says(band):
    working = work("insertion-band", strips=band, run="10 in", cloth_width="60 in", **GIVEN)
    kinds = [None, *(strip.name for strip in band), None]
    cut = []
    for number in range(1, len(band) + 1):
        over, kind, under = (LIKE[kinds[place]] for place in (number - 1, number, number + 1))
        width = length(working, f"strip{number}_cut_width").mm
        cut.append((width, GIVES[kind][over], GIVES[kind][under]))
    assert sewn_width(cut) == length(working, "finished_width").mm
    assert sewn_width(cut) == sum(strip.length.mm for strip in band)
    taken = sum(before + behind for _, before, behind in cut)
    assert sum(width for width, _, _ in cut) - taken == length(working, "finished_width").mm


@given(strips, st.integers(1, 9), st.fractions(1, 40, max_denominator=16).map(inches))
def test_one_strip_gives_way_to_a_wanted_width(band, fit, wanted):
    assume(fit <= len(band))
    others = total(s.length for n, s in enumerate(band, 1) if n != fit)
    assume(wanted > others)
    working = work("insertion-band", strips=band, wanted=wanted, fit=fit, run="10 in")
    assert length(working, "finished_width") == wanted
    assert length(working, f"strip{fit}_width") == wanted - others


def test_the_first_strip_of_cloth_gives_way_unless_another_is_named():
    band = "lace 1/2 in; cloth 2 in; lace 1/2 in; puffing 1 in"
    assert said(work("insertion-band", strips=band, wanted="5 in"), "strip2_width") == "3 in"
    assert said(work("insertion-band", strips=band, wanted="5 in", fit=4), "strip4_width") == "2 in"


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        (
            {"strips": "lace 1 in; cloth 1 in", "wanted": "1 in"},
            "wanted 1 in leaves nothing for strip 2; the other strips alone are 1 in (25 mm) wide, "
            "so want more than that or take one out",
        ),
        (
            {"strips": "lace 1 in; lace 1 in", "wanted": "3 in"},
            "no strip of this band is cut from cloth, so none can be cut to fit; use a number "
            "from 1 to 2 for the strip that gives way, or add a strip of cloth or puffing",
        ),
        (
            {"strips": "lace 1 in; lace 1 in", "wanted": "3 in", "fit": "3"},
            "fit 3 is not a strip of this band; use a number from 1 to 2",
        ),
        ({"fit": "1"}, "fit needs the wanted width; write wanted, or leave fit out"),
        (
            {"strips": "lace 1 in; lase 1 in"},
            'strips: there is no strip called "lase"; did you mean "lace"?',
        ),
    ],
)
def test_what_cannot_be_joined_is_refused_with_a_way_out(written, sentence):
    assert refusal("insertion-band", **written) == sentence


def test_each_way_of_joining_is_told_once_with_its_strips():
    told = steps(work("insertion-band"))
    lace = [step for step in told if step.startswith("Join 1 lace to 2 entredeux; 4 entredeux")]
    assert len(lace) == 1 and "strips 1 and 2 together show 3/4 in" in lace[0]
    assert any(step.startswith("Join 2 entredeux to 3 puffing") for step in told)
    assert told[-1].endswith("18 in long between its end allowances.")


def test_strips_of_one_trim_are_bought_together_with_its_shrinkage():
    """Two lengths of 19 in and 4 in to spare are 42 in; washed from 42 / 0.97 = 43.3 in."""
    working = work("insertion-band")
    assert said(working, "strip1_to_buy") == "1 1/4 yd"
    names = [supply.name for supply in working.supplies if supply.amount]
    assert names == ["lace for strips 1, 5", "entredeux for strips 2, 4", "cloth"]
