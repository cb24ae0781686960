"""Threads, needles and stitches against standards and trade systems; what is neither says so."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handout_engine.amounts.thread_counts import (
    DENIER,
    NE_ONE,
    NM_ONE,
    NUMBERS,
    WEIGHTS,
    read_thread_count,
)
from handout_engine.amounts.units import registry, thread_count
from handout_engine.families.materials.materials import EXEMPT_WEIGHT, MATERIALS, NEEDLE_SIZES
from handout_engine.families.materials.stitch_types import LOCKSTITCH, STITCH_TYPES
from handout_engine.working.cautions import WING_NEEDLE
from worked import said, work

TECHNIQUES = ("cloth-adviser",)


@pytest.mark.parametrize("word", sorted(WEIGHTS))
def test_every_weight_of_a_length_is_pint_s_own(word):
    """pint, which holds the exact definitions of the units, at the version installed."""
    name = {"den": "denier", "deniers": "denier"}.get(word, word)
    assert thread_count(Fraction(1), name) == WEIGHTS[word]


@pytest.mark.parametrize("word", ["Nm", "Ne"])
def test_every_length_of_a_weight_is_pint_s_own(word):
    """pint: Nm is metres to the gram, Ne hanks of 840 yards to the pound."""
    one = registry().Quantity(Fraction(1), word)
    assert Fraction((1 / one).to("tex").magnitude) == NUMBERS[word.lower()]


@given(st.fractions(1, 300, max_denominator=8), st.sampled_from(["tex", "denier", "Nm", "Ne"]))
def test_any_count_is_converted_as_pint_converts_it(number, word):
    """pint, exact."""
    assert thread_count(number, word) == read_thread_count(f"{number} {word}")


def test_tex_times_ne_is_590_5412():
    """ISO 1144 / ISO 2947: tex x Ne = 590.5412, tex x Nm = 1000, denier = 9 tex."""
    assert round(float(NE_ONE), 4) == 590.5412
    assert NM_ONE == 1000
    assert DENIER == 9


def test_number_thirty_cotton_is_19_685_tex():
    """ISO 1144: Ne 30 = 19.685 tex."""
    assert round(float(read_thread_count("30 Ne")), 3) == 19.685


@pytest.mark.parametrize(
    ("ne", "tex"),
    [(120, 5), (80, Fraction("7.4")), (60, 10), (50, 12), (40, 15), (30, 20), (24, 25), (20, 30)],
)
def test_rounded_tex_stay_within_two_per_cent(ne, tex):
    """ISO 2947: rounded tex beside cotton numbers, within about 2 % (the pairs from memory)."""
    assert abs(read_thread_count(f"{ne} Ne") / Fraction(tex) - 1) <= Fraction(2, 100)


@pytest.mark.parametrize(
    "pair", ["60/8", "65/9", "70/10", "75/11", "80/12", "90/14", "100/16", "110/18", "120/19"]
)
def test_needle_pairs_are_those_of_the_trade(pair):
    """Trade systems; definition without authority."""
    metric, old = map(int, pair.split("/"))
    assert NEEDLE_SIZES[metric] == old
    working = work("needle-numbers", size=pair)
    assert said(working, "metric") == str(metric)
    assert working.named["blade"].length.mm == Fraction(metric, 100)


@pytest.mark.parametrize("metric", [each for each in NEEDLE_SIZES if NEEDLE_SIZES[each] < 19])
def test_below_nineteen_the_metric_number_follows_from_the_old_one(metric):
    """Trade systems: metric = (n - 8) x 5 + 60 for n < 19; definition without authority."""
    working = work("needle-numbers", size=f"{metric}/{NEEDLE_SIZES[metric]}")
    assert working.named["from_old"].whole == metric


def test_a_hundred_and_twenty_is_not_given_by_that_rule():
    """Trade systems: 120/19, where the rule would give 115."""
    assert "from_old" not in work("needle-numbers", size="120/19").named


def test_a_twin_needle_is_named_by_spacing_and_number():
    """Trade: 2.0/80 are needles of number 80, 2 mm apart; spacings of 1.6 to 8 mm."""
    for spacing in ("1.6 mm", "8 mm"):
        assert work("needle-numbers", kind="twin", spacing=spacing)
    assert said(work("needle-numbers", kind="twin", spacing="2 mm"), "code") == "2.0/80"


@pytest.mark.parametrize("size", ["100/16", "120/19"])
def test_wing_needles_with_fine_two_ply_thread_and_no_straight_stitch_plate(size):
    """Common practice, no source."""
    working = work("needle-numbers", kind="wing", size=size)
    assert "fine two-ply thread, the same above and below" in {s.name for s in working.supplies}
    assert WING_NEEDLE in working.cautions
    assert "straight-stitch plate" in WING_NEEDLE.text


def test_a_lockstitch_takes_two_and_a_half_to_three_times_its_seam():
    """Common practice, no source; the path of its threads says the same for two fine layers."""
    working = work("thread-amount")
    path = working.named["path_factor"].amount
    assert Fraction(5, 2) <= path <= STITCH_TYPES[LOCKSTITCH].factor == 3


def test_stitch_types_stand_in_their_class():
    """ISO 4915, the list of classes from memory: 100 chain, 200 hand, 300 lock, 400 multi-thread
    chain, 500 overedge, 600 cover."""
    words = {1: "chain", 2: "hand", 3: "lockstitch", 4: "chain", 5: "overedge", 6: "covering"}
    for name, kind in STITCH_TYPES.items():
        assert words[kind.number // 100] in name
        working = work("thread-amount", stitch=name)
        assert working.values["type_number"].amount == kind.number


def test_batiste_and_lawn_are_often_lighter_than_what_is_exempt_from_testing():
    """16 CFR 1610.1(d): plain cloth of 2.6 oz/sq yd, 88.2 g/m2, or more is exempt."""
    ounces = Fraction("2.6") * Fraction("28.349523125") / Fraction("0.9144") ** 2
    assert round(float(ounces), 1) == float(EXEMPT_WEIGHT) == 88.2
    assert MATERIALS["batiste"].burns_fast
    assert MATERIALS["lawn"].burns_fast
    assert not MATERIALS["pique"].burns_fast


@pytest.mark.parametrize("cloth", ["batiste", "lawn", "voile"])
def test_light_cloth_gathers_two_to_three_times(cloth):
    """Utah State University Extension, Straight ruffle: two to three times in light cloth."""
    fullness = MATERIALS[cloth].fullness.what
    assert (fullness.least, fullness.most) == (2, 3)
