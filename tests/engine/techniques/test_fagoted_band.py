"""A fagoted band, against strips and gaps laid end to end and stitches counted one by one."""

from fractions import Fraction
from math import floor, hypot
from random import Random

import pytest

from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from worked import length, refusal, said, work

SIXTEENTH = Fraction(127, 80)


def test_three_strips_by_hand():
    """3 x 3/4 in and 2 gaps of 1/4 in are 2 3/4 in; every strip is cut 3/4 + 2 x 1/4 in wide.

    12 in holds 48 repeats of 1/4 in. Once over the gap is the root of 1/4 and 1/8 in squared,
    0.2795 in; twice that and four bites of 1/16 in for each of 2 x 48 repeats are 77.67 in.
    """
    working = work("fagoted-band", edge="12 in", widths="3/4 in, 3/4 in, 3/4 in")
    assert said(working, "finished_width") == "2 3/4 in"
    assert {said(working, "strip1_cut"), said(working, "strip2_cut")} == {"1 1/4 in"}
    assert said(working, "repeats") == "48"
    assert said(working, "true_repeat") == "1/4 in"
    assert float(length(working, "thread")) / 25.4 == pytest.approx(77.67, abs=0.005)
    assert [(piece.name, piece.count) for piece in working.pieces] == [
        ("outer strip 1", 2), ("inner strip 2", 1),
    ]  # fmt: skip


def laid(widths, gap):
    """Strips put down one after another with the gap between them: how far they reach."""
    at = Fraction(0)
    for number, width in enumerate(widths):
        at += width + (gap if number else 0)
    return at


def stitched(edge, step):
    """Stitch to and fro until the end of the edge is passed: stitches on the first edge."""
    at, count = Fraction(0), 0
    while at + step / 2 < edge:
        at += step
        count += 1
    return count, at


def test_a_thousand_bands_are_as_wide_as_laid_and_end_on_a_stitch():
    random = Random(1900)
    worked = 0
    for _ in range(1000):
        widths = [random.randint(4, 40) * SIXTEENTH for _ in range(random.randint(2, 6))]
        gap, repeat = (random.randint(1, 8) * SIXTEENTH for _ in range(2))
        edge = random.randint(16, 400) * SIXTEENTH
        written = {
            "widths": tuple(map(Length, widths)), "gap": Length(gap), "repeat": Length(repeat),
            "edge": Length(edge),
        }  # fmt: skip
        try:
            working = work("fagoted-band", **written)
        except RefusalError:
            nearest = max(1, floor(edge / repeat + Fraction(1, 2)))
            assert abs(edge / nearest / repeat - 1) > Fraction(1, 10)
            continue
        worked += 1
        assert abs(working.values["repeats"].amount - edge / repeat) <= Fraction(1, 2)
        assert length(working, "finished_width").mm == laid(widths, gap)
        step = length(working, "true_repeat").mm
        assert stitched(edge, step) == (working.values["repeats"].amount, edge)
        assert abs(step / repeat - 1) <= Fraction(1, 10)
        over = hypot(float(gap), float(step) / 2)
        bites = 4 * 25.4 / 16
        count = stitched(edge, step)[0] * (len(widths) - 1)
        assert float(length(working, "thread")) == pytest.approx(count * (2 * over + bites))
        cut = sum(piece.width.length.mm * piece.count for piece in working.pieces)
        turned = (2 * len(widths) - 2) * 4 * SIXTEENTH
        assert cut == sum(widths) + turned + 2 * 4 * SIXTEENTH
    assert worked > 900


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"widths": "1 in"}, "give at least two widths"),
        ({"widths": "1/8 in, 1 in"}, "use at most 1/8 in (3 mm), or wider strips"),
        ({"edge": "1 3/8 in", "repeat": "1 in"}, "use 1 in or 2 in (51 mm), which need no"),
        ({"edge": "100 in", "repeat": "1/16 in", "tolerance": "0 %"}, ""),
    ],
)
def test_what_cannot_be_fagoted_is_refused_with_the_way_out(written, sentence):
    if sentence:
        assert sentence in refusal("fagoted-band", **written)
    else:
        assert said(work("fagoted-band", **written), "repeats") == "1600"
