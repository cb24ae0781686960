"""Lace, ribbon and fine seams, held against what is published; the rest is common practice.

No source prints the allowances of the fine seams or of the joins of lace: they are habits of the
trade, and each is an input that says so.
"""

from fractions import Fraction

import pytest

from handout_engine.amounts.inputs import declared_inputs
from handout_engine.amounts.lengths import inches, millimetres
from handout_engine.amounts.sources import PRACTICE, published
from handout_engine.register import find
from worked import length, said, work


def test_a_narrow_hem_takes_a_quarter_inch_twice():
    """Oregon State 4-H L-87, It's Fun to Sew a Cotton School Dress, p. 15: 1/4 + 1/4 in."""
    working = work("gathered-ruffle", hem="double")
    assert said(working, "hem_turn") == "1/4 in"
    assert said(working, "hem_allowance") == "1/2 in"


def test_ties_at_waist_and_hem_hang_at_most_75_mm():
    """16 CFR 1120.3 and ASTM F1816: at waist and hem at most 75 mm outside the channel."""
    working = work("beading-ribbon", place="waist or hem")
    assert length(working, "longest_tie") == millimetres(75)
    assert working.values["longest_tie"].basis == published("cfr-1120")
    assert length(working, "tie") <= millimetres(75)


def test_a_square_mitre_is_two_widths():
    """Common practice, no source: 2 × width × tan(45) = 2 widths at a right angle."""
    working = work("mitred-lace", mitre_seam="0 in", turn=Fraction(90), lace_width="1 in")
    assert length(working, "corner_takes") == inches(2)


@pytest.mark.parametrize(
    ("key", "names"),
    [
        ("fine-seams", ["seam_allowance", "french_first", "french_second", "french_trim",
                        "fell_width", "fell_turn", "roll", "pin_turn", "pin_lap"]),
        ("insertion-band", ["roll", "entredeux_allowance", "trim", "cloth_allowance", "fullness"]),
        ("entredeux-join", ["entredeux_allowance", "trim", "fullness"]),
        ("gathered-edging", ["fullness", "corner_widths", "roll"]),
        ("beading-ribbon", ["factor", "turn_in"]),
        ("mitred-lace", ["mitre_seam", "lace_shrinkage"]),
        ("lace-shapes", ["fold_extra"]),
    ],
)  # fmt: skip
def test_every_habit_of_the_trade_is_an_input_that_says_so(key, names):
    """Common practice, no source."""
    declared = {each.name: each for each in declared_inputs(find(key))}
    assert {name: declared[name].basis for name in names} == dict.fromkeys(names, PRACTICE)
