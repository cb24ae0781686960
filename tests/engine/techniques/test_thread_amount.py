"""Thread for a seam: by hand, then both threads of a lockstitch walked stitch by stitch."""

from fractions import Fraction
from itertools import pairwise
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handout_engine.amounts.lengths import ZERO, inches, millimetres
from handout_engine.families.materials.thread_amount_drawing import STITCHES, thread_path
from worked import length, refusal, said, work

factors = st.fractions(1, 30, max_denominator=8)


def test_fourteen_seams_by_hand():
    """3 x 24 = 72 in and 4 tails of 4 in, 88 in; x 14 x 1.15 = 1416.8 in, 39.36 yd: one spool."""
    working = work("thread-amount", seam_length="24 in", seams="14")
    assert said(working, "in_seam") == "72 in"
    assert said(working, "tails") == "16 in"
    assert length(working, "thread") == inches(Fraction("1416.8"))
    assert said(working, "thread") == "39 3/8 yd"
    assert said(working, "spools") == "1"


def test_a_sample_goes_before_a_factor_and_a_factor_before_the_table():
    both = work("thread-amount", sample_seam="4 in", sample_thread="11 in", factor="6")
    assert said(both, "used_factor") == "2.75"
    assert said(work("thread-amount", factor="6"), "used_factor") == "6"
    assert said(work("thread-amount", stitch="zigzag lockstitch"), "used_factor") == "7"


@given(factors, st.integers(1, 300), st.integers(5, 500))
def test_the_spools_hold_the_thread_and_one_fewer_does_not(factor, seams, metres):
    spool = millimetres(1000 * metres)
    working = work("thread-amount", factor=factor, seams=seams, spool=spool)
    spools = working.named["spools"].whole
    assert spool * spools >= length(working, "thread") > spool * (spools - 1)


@given(factors, st.integers(1, 60), st.integers(1, 40))
def test_two_short_seams_take_two_tails_more_than_one_long_one(factor, long, tail):
    seam, left = inches(long), inches(Fraction(tail, 4))
    given_ = {"factor": factor, "tail": left, "spare": "0 %"}
    once = work("thread-amount", seam_length=2 * seam, seams=1, **given_)
    twice = work("thread-amount", seam_length=seam, seams=2, **given_)
    assert length(twice, "thread") - length(once, "thread") == 4 * left


def walked(stitch: Fraction, thick: Fraction, stitches: int) -> Fraction:
    """Both threads of a seam, corner by corner, from the first hole to the last."""
    total = Fraction(0)
    for face in (Fraction(0), thick):
        place = (Fraction(0), face)
        for hole in range(1, stitches + 1):
            for corner in ((hole * stitch, face), (hole * stitch, thick / 2),
                           (hole * stitch, face)):  # fmt: skip
                total += abs(corner[0] - place[0]) + abs(corner[1] - place[1])
                place = corner
    return total


def test_a_thousand_lockstitch_seams_take_what_their_threads_measure():
    chance = Random(301)
    for _ in range(1000):
        stitch, thick = (Fraction(chance.randint(low, high), 100) for low, high in
                         ((50, 600), (5, 1000)))  # fmt: skip
        stitches = chance.randint(1, 40)
        working = work("thread-amount", stitch_length=millimetres(stitch),
                       thickness=millimetres(thick))  # fmt: skip
        factor = working.named["path_factor"].amount
        assert factor * stitches * stitch == walked(stitch, thick, stitches)


def test_the_drawn_threads_go_to_the_middle_at_every_hole():
    points = list(thread_path(2.0, 0.0, 0.5))
    deep = sum(1 for before, after in pairwise(points) if before[1] == 0.0 and after[1] == 0.5)
    assert deep == STITCHES + 1


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"sample_thread": "3 in"}, "is shorter than its seam of 4 in"),
        ({"factor": "1/2"}, "too small; use at least 1"),
        ({"seams": "0"}, "too small"),
    ],
)
def test_what_cannot_be_sewn_is_refused(written, sentence):
    assert sentence in refusal("thread-amount", **written)


def test_without_tails_and_spare_it_is_the_seam_times_the_factor():
    working = work("thread-amount", tail=ZERO, spare="0 %", seams="1", seam_length="1 yd")
    assert length(working, "thread") == inches(108)
