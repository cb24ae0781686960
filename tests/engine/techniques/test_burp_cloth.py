"""Burp cloth: worked example, then its trim cloth folded in the head, 1,000 random times."""

from fractions import Fraction
from random import Random

from hypothesis import given
from hypothesis import strategies as st

from folding import mirrored
from handout_engine.amounts.lengths import Length, inches
from handout_engine.amounts.refusals import RefusalError
from worked import length, refusal, said, steps, work

SIXTEENTH = Fraction(127, 80)


def test_one_band_of_two_inches_by_hand():
    # 19 1/2 + 2 x 1/4 + 2 x 2 = 24 in; its seam 1/4 + 2 in from the raw edge, its fold 2 in on
    working = work("burp-cloth")
    assert said(working, "extra_for_a_band") == "4 in"
    assert (said(working, "trim_width"), said(working, "trim_length")) == ("14 in", "24 in")
    lines = ("pleat_seam", "pleat_fold", "pleat_back")
    assert [said(working, name) for name in lines] == ["2 1/4 in", "4 1/4 in", "6 1/4 in"]


def test_two_bands_on_a_ready_made_pad_cut_no_pad():
    working = work("burp-cloth", pad="ready made", bands="2", band="1 in")
    assert [piece.name for piece in working.pieces] == ["trim"]
    assert said(working, "trim_length") == "24 in"
    assert any("both ends" in step for step in steps(working))
    assert any(supply.name.startswith("ready-made pad") for supply in working.supplies)


def test_bands_that_would_cover_more_than_the_pad_are_refused_with_the_widest_one():
    assert refusal("burp-cloth", bands="2", pad_length="6 in", band="4 in") == (
        "the two bands would cover more than the pad, 6 in (15.2 cm) long; use a band of at most "
        "3 in (76 mm), or a longer pad"
    )


def folded(flat: Fraction, first: Fraction, fold: Fraction) -> tuple[Fraction, Fraction]:
    """A tuck folded on `fold` and laid toward the edge at 0: where fold and far edge come to lie.

    The cloth beyond the fold is turned back over it, so its point over the first line is the
    second line of stitching; from there on the cloth runs on away from the edge.
    """
    second = 2 * fold - first
    return mirrored(fold, first), flat - (second - first)


def test_folded_in_the_head_the_trim_covers_the_pad_and_the_band_ends_at_its_end():
    random = Random(5)
    worked = 0
    for _ in range(1000):
        bands = random.randint(1, 2)
        written = {
            "pad_length": Length(random.randint(96, 900) * SIXTEENTH),
            "pad_width": Length(random.randint(64, 600) * SIXTEENTH),
            "band": Length(random.randint(8, 128) * SIXTEENTH),
            "bands": bands,
            "make": 1,
            "seam_allowance": Length(random.randint(2, 16) * SIXTEENTH),
        }
        try:
            working = work("burp-cloth", **written)
        except RefusalError:
            continue
        worked += 1
        allowance = written["seam_allowance"].mm
        left = length(working, "trim_length").mm
        for _ in range(bands):
            fold_at, left = folded(
                left, length(working, "pleat_seam").mm, length(working, "pleat_fold").mm
            )
            assert fold_at == allowance
        assert left - 2 * allowance == written["pad_length"].mm
    assert worked > 500


@given(st.integers(1, 16), st.integers(1, 2))
def test_a_wider_band_takes_twice_its_width_more(quarters, bands):
    narrow = work("burp-cloth", band=inches(Fraction(quarters, 4) + 1), bands=bands)
    wide = work("burp-cloth", band=inches(Fraction(quarters, 4) + 2), bands=bands)
    more = length(wide, "trim_length") - length(narrow, "trim_length")
    assert more == inches(2) * bands
