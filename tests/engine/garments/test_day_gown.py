"""Day gown: a worked example by hand, figures to expect, where its hem lies."""

import pytest

from handout_engine.amounts.lengths import millimetres
from handout_engine.working.cautions import LONG_HEM
from measured_babies import SIZES
from worked import length, refusal, steps, work


def test_size_50_by_hand():
    # chest 340 + 100; a quarter of 340 and 15, seven tenths of it
    working = work("day-gown", size="50")
    assert length(working, "finished_chest") == millimetres(440)
    assert length(working, "armhole_depth") == millimetres(100)
    assert length(working, "yoke_depth") == millimetres(70)
    # to the sole 0.765 × 500, and 80 beyond it
    assert length(working, "sole") == millimetres("382.5")
    assert length(working, "finished_length") == millimetres("462.5")
    assert length(working, "skirt_reach") == millimetres("392.5")
    # the sleeve: arm 164 long, 107 + 60 round at least, wrist 78 + 50
    assert length(working, "sleeve_reach") == millimetres(164)
    assert length(working, "least_sleeve_girth") == millimetres(167)
    assert length(working, "sleeve_edge") == millimetres(128)


@pytest.mark.parametrize(("size", "long"), [("50", 460), ("74", 660), ("98", 880)])
def test_below_the_foot_it_is_as_long_as_expected(size, long):
    # common knowledge, no source
    gown = work("day-gown", size=size, hem_at="below the foot")
    assert float(length(gown, "finished_length")) == pytest.approx(long, abs=10)


@pytest.mark.parametrize(("size", "chest"), [("50", 440), ("74", 551), ("98", 619)])
def test_the_chest_has_ten_centimetres_of_ease(size, chest):
    assert length(work("day-gown", size=size), "finished_chest") == millimetres(chest)


@pytest.mark.parametrize("size", SIZES)
def test_the_hem_stays_off_the_floor_from_size_80(size):
    gown = work("day-gown", size=size)
    walks = int(size) >= 80
    assert (length(gown, "finished_length") < length(gown, "sole")) is walks
    assert (LONG_HEM in gown.cautions) is not walks


def test_at_the_ankle_by_hand():
    # 0.79 × 740 less a twentieth of 740
    gown = work("day-gown", size="74", hem_at="ankle")
    assert length(gown, "finished_length") == millimetres("547.6")


@pytest.mark.parametrize("size", ["50", "62", "80"])
def test_a_christening_gown_reaches_30_to_45_cm_below_the_foot(size):
    gown = work("day-gown", size=size, hem_at="christening")
    below = length(gown, "finished_length") - length(gown, "sole")
    assert millimetres(300) <= below <= millimetres(450)
    assert LONG_HEM in gown.cautions
    longer = work("day-gown", size=size, hem_at="christening", below_foot="45 cm")
    assert length(longer, "finished_length") - length(longer, "sole") == millimetres(450)


def test_a_length_of_ones_own_below_the_foot_is_cautioned_too():
    assert LONG_HEM in work("day-gown", size="92", reach="90 cm").cautions
    assert LONG_HEM not in work("day-gown", size="50", reach="35 cm").cautions


def test_a_short_sleeve_is_drawn_up_or_hemmed():
    short = work("day-gown", size="74", sleeve="short", sleeve_fullness="1.5")
    # 0.35 × 253 and 20; round the arm 144 + 35
    assert length(short, "sleeve_reach") == millimetres("108.55")
    assert length(short, "sleeve_edge") == millimetres(179)
    assert any("draw it up and bind it" in step for step in steps(short))
    trimmed = steps(work("day-gown", size="74", sleeve_trim="1 1/4 in"))
    assert any("sew its band or ruffle to it, 1 1/4 in deep" in step for step in trimmed)
    assert any("narrow hem" in step for step in steps(work("day-gown")))


def test_the_sides_are_sewn_after_the_sleeves_and_the_neck_after_the_shoulders():
    said = steps(work("day-gown"))
    places = [
        next(number for number, step in enumerate(said) if step.startswith(words))
        for words in ("On the skirt back mark the slit", "Pin the skirt front", "Sew the shoulder",
                      "Lay each sleeve", "Sew each side seam", "Fold the facings in",
                      "The raw lower edge", "Lay the centre backs")
    ]  # fmt: skip
    assert places == sorted(places)


def test_a_short_sleeve_keeps_two_centimetres_under_the_arm():
    for size in SIZES:
        gown = work("day-gown", size=size, sleeve="short", sleeve_trim="1 cm")
        under = length(gown, "sleeve_cloth_reach") - length(gown, "cap_height")
        assert under >= millimetres(20)


def test_a_long_sleeve_that_its_trim_leaves_nothing_of_is_refused():
    assert refusal("day-gown", size="50", sleeve_trim="9 cm") == (
        "the seam under the arm would be 5/8 in (16 mm) long, less than 25/32 in (20 mm); make "
        "sleeve_trim smaller, or cap_share less for a lower cap"
    )


def test_an_arm_that_no_ease_gets_through_the_armhole_is_told_of_the_armhole_alone():
    told = refusal("day-gown", size="50", upper_arm="24 cm", chest="32 cm")
    assert told.endswith("; use more armhole_ease")
    assert "sleeve_ease" not in told
