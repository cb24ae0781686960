"""Knots and bullions, against knots counted one by one and thread wound round a needle."""

from fractions import Fraction
from itertools import pairwise
from math import cos, hypot, pi, sin
from random import Random

import pytest

from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.drawing.scene import Dots
from worked import length, refusal, said, work

SIXTEENTH = Fraction(127, 80)


def test_a_line_by_hand():
    """6 in in spaces of 1/2 in are 12, so 13 knots.

    Twice round 0.8 + 0.5 mm is 8.17 mm, with 1/2 in through the cloth 20.87 mm; 13 of them and
    6 in from the first to the last are 423.7 mm. A needleful of 18 in gives 14 in: 2 of them.
    """
    working = work("knots")
    assert said(working, "knots") == "13"
    assert float(length(working, "knot_thread")) == pytest.approx(20.868, abs=0.001)
    assert float(length(working, "thread_used")) == pytest.approx(423.7, abs=0.05)
    assert said(working, "needlefuls") == "2"
    assert said(working, "thread_total") == "36 in"


def test_a_sample_goes_before_the_estimate():
    working = work("knots", sample_knots=10, sample_thread="15 in")
    assert said(working, "knot_thread") == "1 1/2 in"
    assert said(working, "thread_used") == "19 1/2 in"


def test_seven_wraps_of_half_a_millimetre_lie_three_and_a_half_long():
    assert said(work("knots", kind="bullions"), "size") == "3.5 mm"


def wound(wraps, needle, thread, steps=4000):
    """The middle of the thread followed round the needle in small straight steps."""
    radius = (needle + thread) / 2
    at = [(radius * cos(2 * pi * n / steps), radius * sin(2 * pi * n / steps))
          for n in range(steps + 1)]  # fmt: skip
    once = sum(hypot(b[0] - a[0], b[1] - a[1]) for a, b in pairwise(at))
    return wraps * once


@pytest.mark.parametrize(("wraps", "needle", "thread"), [(1, 3, 5), (2, 8, 5), (9, 12, 3)])
def test_the_thread_of_one_is_what_is_wound_and_what_passes_through(wraps, needle, thread):
    working = work("knots", wraps=wraps, needle=f"{needle / 10} mm", thread=f"{thread / 10} mm")
    wanted = wound(wraps, needle / 10, thread / 10) + 12.7
    assert float(length(working, "knot_thread")) == pytest.approx(wanted, rel=1e-5)


def counted(run, height, step, down, staggered):
    """Walk row by row and put a knot down at every step, half a step in on every other row."""
    found, y, row = [], Fraction(0), 0
    while y <= height:
        x = step / 2 if staggered and row % 2 else Fraction(0)
        while x <= run:
            found.append((float(x), float(y)))
            x += step
        y += down
        row += 1
    return found


def to_and_fro(found):
    """The same knots with every second row worked from its right end."""
    rows = {}
    for x, y in found:
        rows.setdefault(y, []).append((x, y))
    return [at for n, row in enumerate(rows.values()) for at in (row[::-1] if n % 2 else row)]


def test_on_a_thousand_grids_as_many_are_worked_as_are_counted():
    random = Random(1897)
    worked = 0
    for _ in range(1000):
        run, height = (random.randint(8, 160) * SIXTEENTH for _ in range(2))
        spacing = random.randint(3, 32) * SIXTEENTH
        staggered = random.random() < 0.5
        try:
            working = work("knots", arrangement="a staggered grid" if staggered else "a grid",
                           run=Length(run), height=Length(height),
                           spacing=Length(spacing))  # fmt: skip
        except RefusalError:
            continue
        worked += 1
        step = length(working, "true_spacing").mm
        down = length(working, "true_row_spacing").mm
        found = counted(run, height, step, down, staggered)
        assert working.values["knots"].amount == len(found)
        (dots,) = [each for each in working.pictures[0].sheet.shapes if isinstance(each, Dots)]
        for (x, y), (wanted_x, wanted_y) in zip(dots.at, found, strict=True):
            assert x == pytest.approx(wanted_x, abs=1e-9)
            assert y == pytest.approx(wanted_y, abs=1e-9)
        walk = sum(hypot(b[0] - a[0], b[1] - a[1]) for a, b in pairwise(to_and_fro(found)))
        said_travel = float(length(working, "travel"))
        if staggered:
            assert walk <= said_travel + 1e-6
        else:
            assert walk == pytest.approx(said_travel)
    assert worked > 600


def test_chosen_points_are_walked_in_their_order():
    working = work(
        "knots", arrangement="chosen points", points="0 in, 0 in; 3 in, 4 in; 3 in, 0 in"
    )
    assert said(working, "knots") == "3"
    assert said(working, "travel") == "9 in"
    assert len(working.charts[0].rows) == 3


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"arrangement": "chosen points"}, "chosen points are not given"),
        ({"kind": "bullions", "spacing": "1/8 in"}, "each is 3.5 mm long or thick"),
        ({"spacing": "1/16 in"}, "each is 1.8 mm long or thick"),
        ({"arrangement": "a grid", "run": "30 in", "height": "30 in"}, "more than 1500"),
        ({"needleful": "6 in", "fastening": "5 in", "wraps": 40}, "use at least 11 15/16 in"),
    ],
)
def test_what_cannot_be_worked_is_refused_with_the_way_out(written, sentence):
    assert sentence in refusal("knots", **written)
