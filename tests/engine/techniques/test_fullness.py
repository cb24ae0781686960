"""Fullness: from a sample, and as advice."""

from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from handout_engine.amounts.lengths import inches
from handout_engine.amounts.sources import PRACTICE
from handout_engine.families.ruffles.fullness_advice import ADVICE
from worked import length, refusal, said, work


def test_a_sample_by_hand():
    # 12 in that draw up to 5 in are gathered 2.4 to 1; an edge of 20 in takes 48 in and two ends
    working = work("fullness-sample", before="12 in", after="5 in", edge="20 in")
    assert working.values["fullness"].amount == Fraction(12, 5)
    assert said(working, "strip_length") == "48 1/2 in"


@given(st.integers(1, 5), st.integers(5, 60), st.integers(1, 100))
def test_gathering_the_strip_at_the_samples_fullness_gives_the_edge_back(after, before, edge):
    working = work("fullness-sample", before=inches(before), after=inches(after),
                   edge=inches(edge), end_allowance=inches(0))  # fmt: skip
    assert length(working, "strip_length") * Fraction(after, before) == inches(edge)


def test_a_sample_that_grew_is_refused():
    assert refusal("fullness-sample", before="6 in", after="12 in") == (
        "after 12 in is longer than before 6 in; gathering only shortens a strip, so the two may "
        "be exchanged"
    )


def test_a_ruffle_of_batiste_by_hand():
    """2 to 2 1/2 times 18 in: from 36 in to 45 in, begun between them at 40 1/2 in."""
    working = work("fullness-advice", gathered="light cotton", edge="18 in")
    strips = [said(working, f"{name}_strip") for name in ("least", "begin", "most")]
    assert strips == ["36 in", "40 1/2 in", "45 in"]


@given(st.sampled_from(list(ADVICE)), st.integers(1, 700))
def test_advised_strips_draw_up_to_their_edge_and_none_is_shorter_than_it(gathered, edge):
    working = work("fullness-advice", gathered=gathered, edge=inches(edge))
    for name in ("least", "begin", "most"):
        full = working.named[f"{name}_fullness"].amount
        assert (
            length(working, f"{name}_strip") / full
            == inches(edge)
            <= length(working, f"{name}_strip")
        )


def test_advice_says_that_it_has_no_source_and_stays_in_its_own_bounds():
    for kind, advice in ADVICE.items():
        working = work("fullness-advice", gathered=kind, edge="10 in")
        assert advice.least <= advice.begin <= advice.most
        assert working.values["begin_fullness"].basis == PRACTICE
        assert length(working, "begin_strip") == inches(10) * advice.begin
