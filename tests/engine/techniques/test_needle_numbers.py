"""Needle numbers: packages read by hand, then the blades moved apart and measured."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handout_engine.amounts.lengths import millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.families.materials.materials import NEEDLE_SIZES
from handout_engine.families.materials.needle_numbers import SIZES
from worked import length, refusal, said, work


def test_an_eighty_by_hand():
    """80 hundredths of a millimetre; (12 - 8) x 5 + 60 = 80."""
    working = work("needle-numbers")
    assert said(working, "blade") == "0.8 mm"
    assert said(working, "from_old") == said(working, "metric") == "80"
    assert said(working, "code") == "80/12"


def test_a_twin_needle_by_hand():
    """2 mm apart and 0.8 mm thick: 2.8 mm across both, 1.2 mm clear between."""
    working = work("needle-numbers", kind="twin")
    assert said(working, "code") == "2.0/80"
    assert said(working, "across") == "2.8 mm"
    assert said(working, "between") == "1.2 mm"
    assert said(work("needle-numbers", kind="twin", spacing="2.5 mm", size="75/11"),
                "code") == "2.5/75"  # fmt: skip


@given(st.sampled_from(SIZES), st.integers(10, 80))
def test_two_blades_set_side_by_side_measure_what_the_page_says(size, tenths):
    """Left and right edge of each blade, from a point midway between them."""
    number, apart = int(size.split("/")[0]), millimetres(f"{tenths}/10")
    try:
        working = work("needle-numbers", kind="twin", size=size, spacing=apart)
    except RefusalError as refused:
        assert "cannot stand" in refused.message
        assert tenths * 10 <= number
        return
    edges = [side * tenths * 10 + half * number for side in (-1, 1) for half in (-1, 1)]
    assert length(working, "across") == millimetres(f"{max(edges) - min(edges)}/200")
    assert length(working, "between") == millimetres(f"{edges[2] - edges[1]}/200")


@pytest.mark.parametrize("size", SIZES)
def test_every_size_stands_in_the_chart_once(size):
    (chart,) = work("needle-numbers", size=size).charts
    assert [row[0] for row in chart.rows].count(size) == 1
    assert len(chart.rows) == len(NEEDLE_SIZES)


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"kind": "wing"}, "wing needles are numbered 100 and 120, not 80"),
        ({"spacing": "2 mm"}, "only a twin needle has two blades; leave spacing out"),
        ({"kind": "twin", "size": "120/19", "spacing": "1.2 mm"}, "use more than 1.2 mm"),
        ({"size": "85/13"}, "is not one of"),
    ],
)
def test_needles_that_are_not_made_are_refused(written, sentence):
    assert sentence in refusal("needle-numbers", **written)


@pytest.mark.parametrize(
    ("written", "key"),
    [
        ({"kind": "twin"}, "needle-breaks"),
        ({"kind": "wing", "size": "100/16"}, "wing-needle"),
    ],
)
def test_needles_that_strike_carry_their_caution(written, key):
    assert key in {caution.key for caution in work("needle-numbers", **written).cautions}
    assert key not in {caution.key for caution in work("needle-numbers").cautions}
