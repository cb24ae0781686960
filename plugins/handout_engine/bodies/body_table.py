"""The body measures of babies by size, as numbers only; `bodies` says what they mean.

A size is the body length in cm. Head comes from the CDC growth charts of 2000, the girths and
lengths from the means of Snyder and others (1977), smoothed as a quadratic in body length
(upper arm to wrist and thigh: a straight line). Neck, wrist, back waist and upper thigh are
estimates by fixed ratios at two to three and a half years, since no measured infants were found:
neck the mean of 0.481 of the head and 0.469 of the chest (from size 86 up to 2 mm more, to meet the
necks measured at that age), wrist 0.713 of the forearm, back waist 0.4246 of the crown-rump length,
upper thigh 0.563 of the hip.
"""

from __future__ import annotations

from collections.abc import Mapping

SIZES = (50, 56, 62, 68, 74, 80, 86, 92, 98)


def _row(figures: str) -> tuple[str, ...]:
    return tuple(figures.split())


CENTIMETRES: Mapping[str, tuple[str, ...]] = {
    "head": _row("35.5 38.6 41.4 43.7 45.5 46.9 48.0 48.8 49.4"),
    "neck": _row("16.5 18.0 19.3 20.5 21.5 22.4 23.2 23.7 24.2"),
    "chest": _row("34.0 37.2 40.1 42.7 45.1 47.2 49.0 50.6 51.9"),
    "waist": _row("32.0 34.6 37.0 39.3 41.5 43.5 45.4 47.1 48.7"),
    "hip": _row("33.8 37.2 40.3 43.1 45.6 47.9 49.8 51.4 52.8"),
    "shoulder_breadth": _row("15.4 16.9 18.3 19.7 20.9 22.1 23.2 24.2 25.2"),
    "back_waist": _row("15.2 16.6 17.9 19.1 20.3 21.3 22.2 23.1 23.9"),
    "crown_rump": _row("35.8 39.0 42.1 45.0 47.7 50.1 52.4 54.5 56.3"),
    "arm_length": _row("16.4 18.6 20.8 23.1 25.3 27.5 29.7 31.9 34.1"),
    "upper_arm": _row("10.7 11.9 12.9 13.7 14.4 15.0 15.4 15.7 15.8"),
    "forearm": _row("11.0 12.0 12.8 13.6 14.3 14.8 15.3 15.6 15.8"),
    "wrist": _row("7.8 8.6 9.1 9.7 10.2 10.6 10.9 11.1 11.3"),
    "hand_length": _row("6.0 6.7 7.4 8.1 8.7 9.3 9.9 10.5 11.0"),
    "thigh": _row("16.2 17.8 19.5 21.2 22.9 24.5 26.2 27.9 29.5"),
    "upper_thigh": _row("19.0 20.9 22.7 24.3 25.7 27.0 28.0 28.9 29.7"),
    "calf": _row("12.1 13.8 15.3 16.6 17.8 18.8 19.7 20.4 21.0"),
    "ankle": _row("9.3 10.3 11.3 12.1 12.9 13.6 14.2 14.7 15.1"),
    "foot_length": _row("7.1 8.0 9.0 10.0 11.1 12.1 13.2 14.3 15.5"),
}
"""Each measure in cm, one for each size."""

MONTHS: Mapping[str, tuple[str, ...]] = {
    "girls": _row("0.1 1.8 4.2 7.7 12.2 17.7 24.3 31.7 40.2"),
    "boys": _row("0.0 1.3 3.5 6.6 10.8 16.1 22.5 30.3 39.1"),
}
"""The age in months at which half of the children have reached the size: a guide only."""

KILOGRAMS = _row("3.5 4.7 6.3 8.1 9.7 11.1 12.3 13.4 14.6")
"""The median weight at that age, girls and boys averaged: a guide only."""

WEAK_POINTS = (
    "Each girth and length is a smooth curve through the means of 27 to 45 babies in each band of "
    "age, measured in the United States in 1975 to 1977: a middle, which few babies have in every "
    "place.",
    "The smallest babies measured were about 56 cm long: at size 50 every girth and length but the "
    "head is the curve carried on.",
    "No measured infant's neck, wrist, back waist or upper thigh was found: these are estimates by "
    "the proportions of children of two to four and a half years. Measure them where they matter.",
    "The thigh, round its middle, is carried on from infants from size 86 on: older children were "
    "measured at the top of it, round the upper thigh.",
    "Seats vary most: the babies of 6 to 8 months measured 45.7 cm round the hip, those of 9 to 11 "
    "months 44.8 cm, and the curve lies up to 2.4 cm from a mean. Whether a nappy was on is not "
    "known; measure the seat without one.",
    "Infants were measured lying, children from two years on standing, which is shorter by about a "
    "centimetre.",
    "Heads and ages are those of other children than girths and lengths. Choose by length, never "
    "by age.",
)
"""What the table cannot be trusted with, as the reference says it."""
