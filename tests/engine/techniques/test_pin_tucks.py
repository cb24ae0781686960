"""Twin-needle pin tucks: what each takes comes from a sample."""

from fractions import Fraction
from itertools import pairwise
from random import Random

import pytest

from handout_engine.amounts.lengths import Length, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.sources import GEOMETRY, PRACTICE
from worked import length, refusal, said, steps, work

SIXTEENTH = Fraction(127, 80)


def test_a_measured_sample_by_hand():
    """A sample 4 in wide becomes 3 3/4 in with 10 pin tucks: 1/4 in / 10 = 0.635 mm each.

    20 of them take 1/2 in, so a panel of 6 in between its seams is cut 6 + 1/2 + 1/2 = 7 in.
    """
    working = work("pin-tucks", tucks=20, sample_before="4 in", sample_after="3 3/4 in",
                   sample_tucks=10, finished_width="6 in")  # fmt: skip
    assert length(working, "take_up_each") == millimetres("0.635")
    assert said(working, "take_up") == "1/2 in"
    assert said(working, "panel_cut_width") == "7 1/2 in"
    assert working.values["take_up_each"].basis == GEOMETRY


def test_the_panel_is_measured_against_its_spare_only_where_it_has_one():
    (bare,) = [step for step in steps(work("pin-tucks", spare_width="0 in")) if "towel" in step]
    assert "If it is narrower, the rows drew up more than the sample did." in bare
    assert "at least" not in bare
    (spared,) = [step for step in steps(work("pin-tucks")) if "towel" in step]
    assert "less what the rows drew up more than the sample did, and at least" in spared
    assert "If it is narrower than that, the rows drew up more than the spare makes" in spared


def test_without_a_sample_the_take_up_is_an_estimate_and_says_so():
    working = work("pin-tucks")
    assert working.values["take_up_each"].basis == PRACTICE
    assert "an estimate" in working.values["take_up_each"].label
    assert working.sample


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"sample_before": "4 in"}, "sample_after is missing"),
        ({"sample_after": "4 in"}, "sample_before is missing"),
        ({"sample_before": "4 in", "sample_after": "4 in"}, "no narrower than sample_before"),
        ({"spacing": "1/16 in"}, "use at least 3/32 in (2 mm)"),
        ({"tucks": 30}, "use a finished_width of at least 7 11/32 in"),
    ],
)
def test_samples_and_rows_that_cannot_be_are_refused(written, sentence):
    assert sentence in refusal("pin-tucks", **written)


def test_the_outermost_rows_may_lie_as_near_the_seam_as_half_the_needles_reach():
    """Nine rows 1/4 in apart stand over 50.8 mm; needles 2 mm apart reach 1 mm to each side."""
    assert work("pin-tucks", finished_width="52.8 mm", needle_spacing="2 mm")
    assert "too much" in refusal("pin-tucks", finished_width="52.7 mm", needle_spacing="2 mm")


def drawn_up(working) -> list[Fraction]:
    """Where the ridges come to lie when each row draws up its share of the cloth at its place."""
    each = length(working, "take_up_each").mm
    (chart,) = working.charts
    flat = [row[1].mm for row in chart.rows]
    return [place - each * number - each / 2 for number, place in enumerate(flat)]


def test_a_thousand_panels_draw_up_to_what_the_page_says():
    random = Random(80)
    worked = 0
    for _ in range(1000):
        before = random.randint(40, 160)
        try:
            working = work(
                "pin-tucks", tucks=random.randint(1, 40), cloth_width="120 in",
                spacing=Length(random.randint(2, 16) * SIXTEENTH),
                finished_width=Length(random.randint(20, 600) * SIXTEENTH),
                sample_before=Length(before * SIXTEENTH),
                sample_after=Length((before - random.randint(1, 20)) * SIXTEENTH),
                sample_tucks=random.randint(1, 30),
            )  # fmt: skip
        except RefusalError:
            continue
        worked += 1
        ridges = drawn_up(working)
        edge, margin = length(working, "edge_to_seam").mm, length(working, "margin").mm
        spacing, width = length(working, "spacing").mm, length(working, "worked_width").mm
        assert ridges[0] == edge + margin
        assert {after - before for before, after in pairwise(ridges)} <= {spacing}
        assert width - ridges[-1] == edge + margin
        taken = length(working, "take_up_each").mm * len(ridges)
        assert length(working, "panel_cut_width").mm - taken == width
    assert worked > 400
