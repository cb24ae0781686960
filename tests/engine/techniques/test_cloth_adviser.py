"""The cloth adviser: a cloth by hand, its table row by row, and threads weighed metre by metre."""

from fractions import Fraction
from math import pi
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handout_engine.amounts.lengths import inches, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.sources import PRACTICE, published
from handout_engine.families.materials.materials import EXEMPT_WEIGHT, MATERIALS, NEEDLE_SIZES
from worked import length, refusal, said, steps, work

tex = st.fractions(5, 120, max_denominator=20)


def test_two_yards_of_batiste_by_hand():
    """12 to 20 tex, so 16; Ne 590.54 / 16 = 36.91; 72 in / 0.97 = 74.23 in; 25.4 / 1.8 = 14.1."""
    working = work("cloth-adviser", cloth="batiste", wanted="2 yd")
    assert said(working, "thread") == "16 tex"
    assert said(working, "thread_ne") == "36.91"
    assert said(working, "thread_nm") == "62.5"
    assert said(working, "thread_denier") == "144"
    assert said(working, "needle") == "65"
    assert said(working, "old_needle") == "9"
    assert said(working, "stitches") == "14.11"
    assert said(working, "buy") == "74 1/4 in"
    assert any("number 65 (old number 9, point sharp)" in step for step in steps(working))


def test_a_washed_sample_takes_the_place_of_the_table():
    working = work("cloth-adviser", sample_before="10 in", sample_after="9 1/2 in", wanted="19 in")
    assert working.named["shrinkage"].amount == Fraction(1, 20)
    assert said(working, "buy") == "20 in"


def test_a_thick_thread_wants_a_larger_needle():
    fine, thick = (work("cloth-adviser", thread_at_hand=each) for each in ("16 tex", "90 tex"))
    assert said(fine, "needle") == "65"
    assert said(thick, "needle") == "90"
    assert said(thick, "verdict").startswith("thicker than usual")
    assert said(fine, "verdict") == "what this cloth wants"


@pytest.mark.parametrize("cloth", MATERIALS)
def test_every_cell_of_the_table_stands_on_the_page_with_its_basis(cloth):
    """Value by value; where no sample and no thread are given nothing else is used."""
    row, working = MATERIALS[cloth], work("cloth-adviser", cloth=cloth)
    cells = {
        "usual_needle": row.needle, "point": row.point, "stitch_length": row.stitch,
        "frays": row.frays, "shrinkage": row.shrinkage, "press": row.press, "weight": row.weight,
    }  # fmt: skip
    for name, cell in cells.items():
        value = working.values[name]
        assert (value.amount, value.basis) == (cell.what, cell.basis), name
    for name, cell in (("thread", row.thread), ("fullness", row.fullness)):
        least, most = working.values[f"{name}_least"], working.values[f"{name}_most"]
        assert (least.amount, most.amount) == (cell.what.least, cell.what.most)
        assert least.basis == most.basis == cell.basis
        assert cell.what.least < cell.what.most
    assert working.values["needle"].amount in NEEDLE_SIZES


def test_each_cell_is_common_practice_unless_it_is_published():
    """Only the fullness of light cottons stands in print."""
    bases = {cell for row in MATERIALS.values() for cell in vars(row).values()
             if hasattr(cell, "basis")}  # fmt: skip
    assert {cell.basis for cell in bases} == {PRACTICE, published("utah-ruffle")}


@given(tex, st.fractions("2/5", "8/5", max_denominator=20))
def test_a_kilometre_of_thread_weighs_its_tex(thread, density):
    """The drawn thickness, a metre at a time: its volume times its density is its weight."""
    working = work("cloth-adviser", thread_at_hand=thread, thread_density=density,
                   greatest_share="60 %")  # fmt: skip
    thick = float(length(working, "thread_diameter")) / 10
    grams_of_a_metre = pi * thick**2 / 4 * 100 * float(density)
    assert grams_of_a_metre * 1000 == pytest.approx(float(thread), rel=1e-6)


def test_a_thousand_threads_pass_the_needle_that_is_named_and_none_smaller():
    chance = Random(5)
    refused = 0
    for _ in range(1000):
        thread = Fraction(chance.randint(50, 1200), 10)
        share = Fraction(chance.randint(15, 60), 100)
        cloth = chance.choice(list(MATERIALS))
        try:
            working = work("cloth-adviser", cloth=cloth, thread_at_hand=thread,
                           greatest_share=share)  # fmt: skip
        except RefusalError as refusal:
            refused += 1
            assert "passes no needle up to number 120" in refusal.message
            continue
        thick = length(working, "thread_diameter")
        number = working.named["needle"].whole
        usual = MATERIALS[cloth].needle.what

        def passes(size, thick=thick, share=share, usual=usual):
            return size >= usual and millimetres(f"{size}/100") * share >= thick

        assert passes(number)
        assert not any(passes(size) for size in NEEDLE_SIZES if size < number)
    assert 0 < refused < 500


def test_the_thread_that_a_refusal_names_passes():
    sentence = refusal("cloth-adviser", thread_at_hand="120 tex", greatest_share="20 %")
    assert "use a thread of at most" in sentence
    most = sentence.split("at most ")[1].split(",")[0]
    assert said(work("cloth-adviser", thread_at_hand=most, greatest_share="20 %"),
                "needle") == "120"  # fmt: skip


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"sample_after": "11 in"}, "the two may be exchanged"),
        ({"greatest_share": "0 %"}, "lets no thread pass; use 40 %"),
        ({"thread_at_hand": "50"}, "has no unit; write 50 tex"),
        ({"thread_at_hand": "2 tex"}, "too small; use at least 5 tex"),
        ({"cloth": "batist"}, 'did you mean "batiste"?'),
    ],
)
def test_what_cannot_be_advised_on_is_refused(written, sentence):
    assert sentence in refusal("cloth-adviser", **written)


@given(st.integers(1, 1800), st.fractions("1/2", 1, max_denominator=64))
def test_what_is_bought_shrinks_to_what_is_wanted(wanted, kept):
    before = inches(12)
    working = work("cloth-adviser", wanted=inches(wanted), sample_before=before,
                   sample_after=before * kept)  # fmt: skip
    assert length(working, "buy") * kept == inches(wanted)


@pytest.mark.parametrize("cloth", MATERIALS)
def test_thin_and_raised_cloths_carry_their_caution(cloth):
    keys = {caution.key for caution in work("cloth-adviser", cloth=cloth).cautions}
    assert ("thin-cotton" in keys) == (MATERIALS[cloth].weight.what < EXEMPT_WEIGHT)
    assert ("raised-cloth" in keys) == (cloth in {"flannel", "towelling", "fine corduroy"})
