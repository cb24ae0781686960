"""Hemstitched edges: repeats counted out one by one along the inner line of the hem."""

from fractions import Fraction
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handout_engine.amounts.lengths import Length, inches
from handout_engine.amounts.reading import read_length
from handout_engine.amounts.refusals import RefusalError
from worked import length, refusal, said, steps, work

SIXTEENTH = Fraction(127, 80)
PERCENT = Fraction(1, 100)
HALF = Fraction(1, 2)


def test_a_napkin_of_18_in_by_hand():
    """18 in with hems of 1 in: the row is 18 - 2 = 16 in long.

    Repeats of 1/4 in fit 64 times as they are. Of 3/8 in: 16 / 0.375 = 42.67, so 43 of 0.3721 in,
    0.8 % shorter.
    """
    plain = work("hemstitched-edge", width="18 in", hem_depth="1 in", repeat="1/4 in")
    assert said(plain, "row_width") == said(plain, "row_length") == "16 in"
    assert plain.named["repeats_width"].whole == 64
    assert length(plain, "repeat_width") == inches("1/4")
    assert said(plain, "cut_width") == said(plain, "cut_length") == "22 in"
    assert said(plain, "stitch_line") == "3 in"
    wide = work("hemstitched-edge", width="18 in", hem_depth="1 in", repeat="3/8 in")
    assert wide.named["repeats_width"].whole == 43
    assert length(wide, "repeat_width") == inches(Fraction(16, 43))
    assert said(wide, "change_width") == "-0.8 %"


def test_a_towel_is_stitched_across_its_ends_only():
    """16 in wide, side hems of 1/4 + 1/4 in: 17 in cut; 28 in long with 2 + 2 in: 36 in cut."""
    working = work("hemstitched-edge", shape="towel", width="16 in", length="28 in",
                   hem_depth="2 in", repeat="1/4 in")  # fmt: skip
    assert said(working, "cut_width") == "17 in"
    assert said(working, "cut_length") == "36 in"
    assert working.named["repeats_width"].whole == 64
    assert "repeats_length" not in working.named
    assert "mitre_mark" not in working.named


def walked(run: Fraction, repeat: Fraction, number: int) -> Fraction:
    """What is left of a line after so many repeats are set one behind another."""
    place = Fraction(0)
    for _ in range(number):
        place += repeat
    return run - place


def test_a_thousand_sides_fit_or_name_the_sizes_that_do():
    """Whole repeats end exactly at the corner and stay in tolerance, or the nearest sizes fit."""
    random = Random(53)
    fitted = refused = 0
    for _ in range(1000):
        side = random.randint(48, 900) * SIXTEENTH
        hem = random.randint(2, 16) * SIXTEENTH
        repeat = random.choice([Fraction(random.randint(2, 80)), random.randint(2, 60) * SIXTEENTH])
        corner = random.choice([Fraction(0), random.randint(0, 4) * SIXTEENTH])
        tolerance = random.randint(0, 8) * PERCENT
        written = {
            "width": Length(side), "hem_depth": Length(hem), "repeat": Length(repeat),
            "corner_unit": Length(corner), "tolerance": tolerance, "cloth_width": "120 in",
        }  # fmt: skip
        run = side - 2 * hem - 2 * corner
        try:
            working = work("hemstitched-edge", **written)
        except RefusalError as no:
            refused += 1
            assert no.field == "width"
            # no whole number of repeats would have stayed within the tolerance
            for number in range(1, int(run / repeat) + 3):
                assert abs(run / number / repeat - 1) > tolerance
            check_named_sizes(no.message, run, repeat, 2 * hem + 2 * corner, tolerance)
            continue
        fitted += 1
        for name in ("width", "length"):
            number = working.named[f"repeats_{name}"].whole
            adjusted = length(working, f"repeat_{name}").mm
            assert walked(run, adjusted, number) == 0
            assert abs(adjusted - repeat) <= tolerance * repeat
    assert fitted > 400 and refused > 60, (fitted, refused)


def check_named_sizes(
    message: str, run: Fraction, repeat: Fraction, taken: Fraction, tolerance: Fraction
) -> None:
    """The sizes a refusal names are those beside the wanted one, as a tape says them, and fit."""
    advice = message.partition("; use ")[2]
    named = advice.partition(", which needs no")[0].split(" or ") if ", which" in advice else []
    beside = [repeat * number + taken for number in range(1, int(run / repeat) + 2)][-2:]
    for words in named:
        told = read_length(words.partition(" (")[0]).mm
        assert min(abs(told - size) for size in beside) <= max(Fraction(127, 5) / 64, HALF), message
        number = max(1, round((told - taken) / repeat))
        assert abs((told - taken) / number / repeat - 1) <= tolerance, message
    on_the_tape = [size for size in beside if (size / SIXTEENTH).denominator == 1]
    assert len(named) >= len(on_the_tape), message


def test_a_size_that_the_chart_names_needs_no_adjustment():
    working = work("hemstitched-edge", width="18 in", repeat="7 mm", corner_unit="1/4 in")
    sizes, _ = working.charts
    for _, size in sizes.rows:
        fitting = work("hemstitched-edge", width=size, repeat="7 mm", corner_unit="1/4 in",
                       tolerance="0 %")  # fmt: skip
        assert length(fitting, "repeat_width") == length(fitting, "repeat")


@given(st.integers(1, 200), st.integers(3, 20))
def test_more_side_never_has_fewer_repeats(more, repeat):
    written = {"repeat": f"{repeat} mm", "tolerance": "30 %", "hem_depth": "1/2 in"}
    short = work("hemstitched-edge", width="6 in", **written)
    long = work("hemstitched-edge", width=inches(6) + Length(Fraction(more)), **written)
    assert long.named["repeats_width"].whole >= short.named["repeats_width"].whole


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        (
            {"width": "9 in", "repeat": "3 in", "hem_depth": "1/2 in", "tolerance": "2 %"},
            "width 9 in: each repeat would have to be 11.1 % shorter, more than the tolerance of "
            "2 %; use 7 in (17.8 cm) or 10 in (25.4 cm), which needs no adjustment",
        ),
        ({"width": "3 in", "corner_unit": "1/2 in"}, "so no row is left"),
        (
            {"stitch_width": "5 mm", "needle_spread": "2 mm", "opening": "7 mm"},
            "stitch_width 5 mm with a needle 2 mm wide strikes an opening of 7 mm and breaks; use "
            "a stitch of at most 4.5 mm",
        ),
    ],
)
def test_what_cannot_be_stitched_is_refused(written, sentence):
    assert sentence in refusal("hemstitched-edge", **written)


def test_the_needle_and_its_plate_are_named():
    """Common practice, no source: wing needles 100 and 120 with a fine two-ply thread."""
    for number in ("100", "120"):
        working = work("hemstitched-edge", needle=f"wing {number}")
        named = " ".join(supply.name for supply in working.supplies)
        assert f"a wing needle, number {number}" in named and "two-ply" in named
        assert "not a straight-stitch plate" in named
        (caution,) = [each for each in working.cautions if each.key == "wing-needle"]
        assert "straight-stitch plate off" in caution.text
    plain = work("hemstitched-edge", needle="universal 80")
    assert "wide-stitch" in {each.key for each in plain.cautions}


def test_the_steps_count_the_repeats():
    text = " ".join(steps(work("hemstitched-edge", width="18 in", repeat="1/4 in")))
    assert "at the next corner it has 64 repeats" in text
    assert "every side has 64 repeats" in text
    oblong = " ".join(steps(work("hemstitched-edge", length="24 in", repeat="1/4 in")))
    assert "ten repeats are 2 1/2 in, and there are 88" in oblong
