"""Shadow work, against a needle that follows the steps and a thread measured hole by hole."""

from fractions import Fraction
from itertools import pairwise
from math import hypot
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.families.smocking.shadow_work_drawing import entries
from worked import length, refusal, said, steps, work

INCH = 25.4
HALF = Fraction(1, 2)


def test_a_collar_edge_by_hand():
    """12 in less 2 x 1/2 in is 279.4 mm: 139.7 stitches of 2 mm, so 140 of 1.99571 mm.

    A channel of 3/16 in is 4.7625 mm wide: over it and one stitch on are 5.1638 mm, over it and
    two stitches on 6.2139 mm. In front lie 2 x 279.4 mm, behind 140 x 5.1638 and 139 x 6.2139 mm:
    2145.5 mm together, 2360.0 mm with a tenth for take-up. Of each 18 in 14 in (355.6 mm) are
    worked up: 7 needlefuls, 126 in.
    """
    working = work("shadow-work")
    assert said(working, "row_edge") == "11 in"
    assert said(working, "repeats_edge") == "140"
    assert said(working, "holes") == "141"
    assert float(length(working, "repeat_edge")) == pytest.approx(1.99571, abs=1e-5)
    assert float(length(working, "crossing_over")) == pytest.approx(5.1638, abs=1e-4)
    assert float(length(working, "crossing_back")) == pytest.approx(6.2139, abs=1e-4)
    assert float(length(working, "thread_front")) == pytest.approx(558.8)
    assert float(length(working, "thread_laid")) == pytest.approx(2145.5, abs=0.05)
    assert float(length(working, "thread_used")) == pytest.approx(2360.0, abs=0.1)
    assert said(working, "needlefuls") == "7"
    assert said(working, "thread") == "126 in"
    assert [row[1].mm for row in working.charts[0].rows] == [Fraction("12.7"), Fraction("17.4625")]


class Needle:
    """A needle on the wrong side that knows two rows of holes and how much thread ran through.

    It is told no more than the steps tell: now the one line, now the other; in at the next free
    hole, out at the hole behind it.
    """

    def __init__(self, holes, step, gap):
        self.places = [[(number * step, line * gap) for number in range(holes)]
                       for line in (0, 1)]  # fmt: skip
        self.free = [1, 1]
        self.at = None
        self.front, self.crossed = [], []
        self.covered = [[0] * (holes - 1), [0] * (holes - 1)]

    def stitch(self, line):
        ahead = self.free[line]
        into, out = self.places[line][ahead], self.places[line][ahead - 1]
        self.cross_to(into)
        self.front.append(apart(into, out))
        self.covered[line][ahead - 1] += 1
        self.free[line], self.at = ahead + 1, out

    def cross_to(self, place):
        if self.at is not None:
            self.crossed.append(apart(self.at, place))

    def work(self, ring):
        line = 0
        while self.free[line] < len(self.places[line]):
            self.stitch(line)
            line = 1 - line
        if ring:  # once more over, to the hole that lies one stitch beyond where the ring closes
            step = self.places[0][1][0]
            self.cross_to((self.places[0][-1][0] + step, 0))
        return self


def apart(one, other):
    return hypot(one[0] - other[0], one[1] - other[1])


def measured(run, repeat):
    """Lay stitches along the run until the next one would end nearer beyond it than before it."""
    at, count = Fraction(0), 0
    while at + repeat - run <= run - at:
        at, count = at + repeat, count + 1
    return max(1, count)


def test_a_thousand_bands_take_the_thread_that_the_needle_took():
    random = Random(1905)
    made = 0
    for _ in range(1000):
        ring = random.random() < 0.4
        edge, margin = Fraction(random.randint(60, 900)), Fraction(random.randint(0, 40), 2)
        gap, repeat = Fraction(random.randint(8, 70), 10), Fraction(random.randint(10, 45), 10)
        gap = max(gap, Fraction("1.6"))
        rows, take_up = random.randint(1, 4), Fraction(random.randint(0, 30), 100)
        longest = Fraction(random.randint(50, 150), 10)
        run = edge if ring else edge - 2 * margin
        count = measured(run, repeat)
        step = run / count
        try:
            working = work(
                "shadow-work", form="round a ring" if ring else "along an edge",
                edge=Length(edge), margin=Length(margin), gap=Length(gap), repeat=Length(repeat),
                rows=rows, take_up=take_up, longest_crossing=Length(longest),
            )  # fmt: skip
        except RefusalError:
            over = hypot(float(gap), 2 * float(step)) > float(longest) - 1e-9
            assert over or abs(step / repeat - 1) > Fraction(1, 20)
            continue
        made += 1
        assert working.values["repeats_edge"].amount == count
        assert length(working, "repeat_edge").mm == step
        needle = Needle(count + 1, float(step), float(gap)).work(ring)
        assert needle.covered == [[1] * count, [1] * count], "every stitch once, none twice"
        assert float(length(working, "thread_front")) == pytest.approx(sum(needle.front))
        assert float(length(working, "thread_behind")) == pytest.approx(sum(needle.crossed))
        assert float(length(working, "crossing_back")) == pytest.approx(max(needle.crossed))
        assert max(needle.crossed) <= float(longest) + 1e-6
        used = (sum(needle.front) + sum(needle.crossed)) * (1 + float(take_up))
        assert float(length(working, "thread_used")) == pytest.approx(used)
        fills = working.values["needlefuls"].amount
        assert (fills - 1) * 14 * INCH < used + 1e-6 and used <= fills * 14 * INCH + 1e-6
        assert length(working, "thread").mm == fills * rows * 18 * Fraction(127, 5)
        holes = {place for line in needle.places for place in line}
        distinct = len(holes) - (2 if ring else 0)  # the last holes of a ring are its first
        assert 2 * working.values["holes"].amount == distinct
    assert made > 550


def test_the_drawing_shows_the_way_of_the_needle():
    needle = Needle(6, 2.0, 5.0).work(ring=False)
    drawn = entries(5, 5.0, 2.0)
    # the drawing has the near line below, the needle at nought
    in_and_out = [(x, 5.0 - y) for x, y in drawn]
    walked = [apart(a, b) for a, b in pairwise(in_and_out)]
    assert walked[0::2] == needle.front
    assert walked[1::2] == needle.crossed


@given(st.integers(60, 2000), st.integers(0, 25), st.fractions(1, 4, max_denominator=20))
def test_the_stitches_fill_what_the_margins_leave(edge, margin, repeat):
    written = {"edge": Length(Fraction(edge)), "margin": Length(Fraction(margin)),
               "repeat": Length(repeat), "tolerance": Fraction(3, 10)}  # fmt: skip
    working = work("shadow-work", **written)
    step, count = length(working, "repeat_edge"), working.values["repeats_edge"].amount
    assert step * count + 2 * Length(Fraction(margin)) == Length(Fraction(edge))
    assert abs(count - length(working, "row_edge").mm / repeat) <= HALF


@given(st.fractions(2, 8, max_denominator=16), st.fractions(2, 8, max_denominator=16))
def test_a_wider_channel_takes_more_thread_behind_and_no_more_in_front(one, other):
    narrow, wide = (
        work("shadow-work", gap=Length(gap), longest_crossing="25 mm")
        for gap in sorted((one, other))
    )
    assert length(narrow, "thread_front") == length(wide, "thread_front")
    if one != other:
        assert length(narrow, "thread_behind") < length(wide, "thread_behind")


def test_rows_lie_one_behind_the_other():
    """1/2 in, then 1/8 in and 3/8 in by turns: 1/2, 5/8, 1, 1 1/8, 1 1/2, 1 5/8 in."""
    working = work("shadow-work", rows=3, gap="1/8 in", between="3/8 in")
    inches = [row[1].mm / Fraction(127, 5) for row in working.charts[0].rows]
    assert inches == [Fraction(eighths, 8) for eighths in (4, 5, 8, 9, 12, 13)]
    assert said(working, "reach") == "1 5/8 in"
    assert any("each with thread of its own" in each for each in steps(working))
    assert not any("each with thread of its own" in each for each in steps(work("shadow-work")))


def test_a_ring_has_no_margin_and_a_hole_less():
    working = work("shadow-work", form="round a ring", edge="8 in", margin="1 in")
    assert said(working, "row_edge") == "8 in"
    assert working.values["holes"].amount == working.values["repeats_edge"].amount == 102
    assert "one stitch from the first" in "".join(steps(working))


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"edge": "2 in", "margin": "1 in"},
         "use margins of less than 1 in (25 mm)"),
        ({"gap": "1/2 in"},
         "more than 10 mm catches; use a gap of at most 11/32 in (9 mm), or shorter stitches, or"),
        ({"form": "round a ring", "edge": "1 in", "repeat": "6 mm"},
         "use 1 3/16 in (30 mm), which needs no adjustment"),
        ({"repeat": "6 mm"}, "use much shorter stitches, or several narrow rows"),
        ({"edge": "1 in", "margin": "3/8 in", "repeat": "5 mm", "tolerance": "30 %"},
         "no more than one stitch on each"),
        ({"edge": "1 in", "margin": "1/4 in", "repeat": "5 mm"},
         "use 1 3/32 in (28 mm), which needs no adjustment"),
    ],
)  # fmt: skip
def test_what_cannot_be_worked_is_refused_with_the_way_out(written, sentence):
    assert sentence in refusal("shadow-work", **written)


def test_the_channel_that_a_refusal_names_is_taken():
    """Stitches of 2 mm, threads of 10 mm at most: 11/32 in still does, 3/8 in does not."""
    assert work("shadow-work", gap="11/32 in")
    assert "at most 11/32 in" in refusal("shadow-work", gap="3/8 in")
