"""A continuous lap, its strip folded by `pleat_folding` and its seam walked along the slit."""

from fractions import Fraction
from itertools import pairwise
from math import hypot
from random import Random

import pytest

from handout_engine.amounts.lengths import Length, inches
from handout_engine.amounts.refusals import RefusalError
from pleat_folding import fold
from worked import length, refusal, said, steps, work

THIRTY_SECOND = Fraction(127, 160)


def test_a_slit_of_four_inches_by_hand():
    """2 × 4 in and 2 × 1/2 in make 9 in of strip; 2 × 1/2 in and two seams of 1/4 in, 1 1/2 in.

    The fold lies 3/4 in from the edge sewn on, the turned edge 1 1/4 in; 3 3/4 in stay open.
    """
    working = work("lap-placket", slit="4 in")
    names = ("strip_length", "strip_width", "fold_line", "turned_edge", "opening")
    assert [said(working, name) for name in names] == [
        "9 in", "1 1/2 in", "3/4 in", "1 1/4 in", "3 3/4 in",
    ]  # fmt: skip
    assert any("one line, 8 in long" in step for step in steps(working))


def walked(slit, seam, at_point, parts=400):
    """Sew from one end of the spread slit to the other: how long the seam is on the garment.

    The seam is straight on the strip; on the garment it runs from `seam` beside the slit at the raw
    edge to `at_point` at its point and out again.
    """
    beside = [seam + (at_point - seam) * part / parts for part in range(parts + 1)]
    half = [(slit * part / parts, beside[part]) for part in range(parts + 1)]
    return 2 * sum(hypot(x2 - x1, y2 - y1) for (x1, y1), (x2, y2) in pairwise(half))


def test_a_thousand_strips_fold_over_their_seam_and_are_long_enough_to_sew():
    random = Random(1921)
    worked = 0
    for _ in range(1000):
        written = {
            "slit": Length(random.randint(32, 700) * THIRTY_SECOND),
            "width": Length(random.randint(8, 64) * THIRTY_SECOND),
            "seam": Length(random.randint(4, 16) * THIRTY_SECOND),
            "at_point": Length(random.randint(1, 8) * THIRTY_SECOND),
            "end_allowance": Length(random.randint(4, 64) * THIRTY_SECOND),
            "edge_allowance": Length(random.randint(0, 28) * THIRTY_SECOND),
        }
        try:
            working = work("lap-placket", **written)
        except RefusalError:
            continue
        worked += 1
        seam, width = written["seam"].mm, length(working, "strip_width").mm
        at, turned_at = length(working, "fold_line").mm, length(working, "turned_edge").mm
        outer, inner, turned = fold(width - seam, [at - seam, turned_at - seam]).stretches
        assert outer == (0, written["width"].mm)
        assert inner[1] == 0, "the turned edge lies on the seam"
        assert turned == (0, seam)
        sewn = walked(*(float(written[name]) for name in ("slit", "seam", "at_point")))
        assert sewn <= float(length(working, "strip_length"))
        assert length(working, "opening") > written["width"]
    assert worked > 700


@pytest.mark.parametrize(
    ("head", "passes"), [("14 in", True), ("15 in", True), ("15 1/8 in", False)]
)
def test_a_head_passes_an_edge_that_opens_far_enough(head, passes):
    """A neck of 8 in opened 3 3/4 in deep is 15 1/2 in round; with 1/2 in of room 15 in pass."""
    written = {"slit": "4 in", "edge_girth": "8 in", "must_pass": head, "pass_ease": "1/2 in"}
    if passes:
        working = work("lap-placket", **written)
        assert length(working, "opened_girth") == inches("31/2")
    else:
        assert refusal("lap-placket", **written) == (
            "slit 4 in opens the edge to 15 1/2 in, and 15 5/8 in are needed to pass; use at least "
            "4 1/16 in (10.4 cm) of slit, or a wider edge"
        )
        assert work("lap-placket", **{**written, "slit": "4 1/16 in"})


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"slit": "2 in", "width": "1 3/4 in"}, "use less than 1 3/4 in (44 mm), or a deeper slit"),
        ({"at_point": "1/4 in", "seam": "1/8 in"}, "use at most 1/8 in (3 mm)"),
        ({"must_pass": "17 in"}, "write edge_girth and must_pass, or leave both out"),
    ],
)
def test_the_refusals_name_the_nearest_that_can_be_sewn(written, sentence):
    assert sentence in refusal("lap-placket", **written)


def test_a_slit_of_four_inches_opens_out_to_a_line_of_eight():
    assert said(work("lap-placket", slit="4 in"), "opened_slit") == "8 in"


def test_what_the_point_takes_is_less_by_what_runs_out():
    working = work("lap-placket", seam="1/4 in", at_point="1/16 in")
    assert said(working, "runs_out") == "3/16 in"
