"""Summer dress: a worked example by hand, figures to expect, what its steps say."""

import pytest

from handout_engine.amounts.lengths import millimetres
from handout_engine.working.cautions import GARMENT_IS_DAYWEAR, LONG_HEM
from worked import length, refusal, said, steps, work


def test_size_74_by_hand():
    # chest 451 + 80; neck 215 + 30; a quarter of 451 and, without sleeves, 5
    working = work("summer-dress", size="74")
    assert length(working, "finished_chest") == millimetres(531)
    assert length(working, "neck_edge") == millimetres(245)
    assert length(working, "armhole_depth") == millimetres("117.75")
    # three quarters of that; the back neck is 10 deep
    assert length(working, "yoke_depth") == millimetres("88.3125")
    assert length(working, "back_edge") == millimetres("78.3125")
    # back waist 203 and three tenths of 740
    assert length(working, "finished_length") == millimetres(425)
    assert length(working, "skirt_reach") == millimetres("336.6875")
    # a button of 3/8 in with 1/4 in on both its sides: 7/8 in, 22.225
    assert said(working, "lap") == "7/8 in"
    assert length(working, "neck_run") == millimetres("267.225")
    # the head needs (455 + 20 - 245) / 2 = 115; yoke, lap and 10 are 110.54, up to 115
    assert length(working, "opening") == millimetres(115)
    assert length(working, "placket_edge") == millimetres("36.6875")
    assert length(working, "placket_slit") == millimetres("43.0375")
    # twofold fullness; the slit lies half the lap, twice, beside the centre
    assert length(working, "skirt_top") == 2 * length(working, "yoke_edge")
    assert said(working, "slit_aside") == "7/8 in"


@pytest.mark.parametrize(("size", "chest"), [("50", 440), ("74", 530), ("98", 610)])
def test_the_chest_is_what_is_expected(size, chest):
    # common knowledge, no source; at size 98 the table's chest is a centimetre less
    found = length(work("summer-dress", size=size), "finished_chest")
    assert float(found) == pytest.approx(chest, abs=12)


def test_a_length_of_ones_own_goes_before_the_knee():
    working = work("summer-dress", size="74", reach="50 cm")
    assert length(working, "finished_length") == millimetres(500)


def test_a_skirt_that_its_trim_leaves_nothing_of_is_refused():
    assert refusal("summer-dress", size="50", reach="25 cm", hem_trim="12 cm") == (
        "the skirt's side seam would be 1 9/16 in (40 mm) long, less than 1 31/32 in (50 mm); make "
        "the garment longer, or hem_trim smaller"
    )


def test_steps_follow_what_is_chosen():
    plain = steps(work("summer-dress", size="74"))
    assert not any("ucks" in step for step in plain)
    tucked = steps(work("summer-dress", size="74", taken_in="tucked", skirt="front worked"))
    assert any(
        step.startswith("The 8 tucks of the skirt front were stitched in its cloth")
        for step in tucked
    )
    assert any("the skirt front out of the cloth that was tucked for it" in step for step in tucked)
    here = steps(work("summer-dress", size="74", taken_in="tucked"))
    assert any(step.startswith("Stitch the 8 tucks of the skirt front") for step in here)
    trimmed = steps(work("summer-dress", size="74", hem="1/4 in", hem_trim="2 in"))
    assert any(step.startswith("Sew the ruffle or band to the lower edge") for step in trimmed)


def test_its_cautions():
    cautions = work("summer-dress").cautions
    assert GARMENT_IS_DAYWEAR in cautions
    assert LONG_HEM not in cautions
