"""Inverted pleats, against cloth folded crease by crease in `pleat_folding`."""

from fractions import Fraction
from random import Random

from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from pleat_folding import charted, fold, folded_by_chart
from worked import length, refusal, said, work

SIXTEENTH = Fraction(127, 80)


def test_one_pleat_at_the_centre_by_hand():
    """Depth 1 1/2 in: the pleat takes 4 x 1 1/2 = 6 in, so 20 in are cut 26 1/2 in wide.

    The folds lie 3 in to each side of the centre of the flat cloth, the meeting line on it.
    """
    working = work("inverted-pleat", finished_width="20 in", depth="1 1/2 in")
    assert said(working, "take_up") == said(working, "opens") == "6 in"
    assert said(working, "flat_width") == "26 1/2 in"
    lines = [Length(distance) for _, distance in charted(working, "Lines")]
    half = length(working, "flat_width") / 2
    assert lines[2] == lines[3] == half
    assert half - lines[0] == lines[5] - half == 2 * length(working, "depth")


def test_pleats_nearer_than_two_depths_are_refused():
    assert "use a depth of at most 2 1/2 in (63 mm)" in refusal(
        "inverted-pleat", finished_width="20 in", pleats=4, depth="3 in"
    )
    assert work("inverted-pleat", finished_width="20 in", pleats=4, depth="2 1/2 in")


def test_a_pleat_that_reaches_the_seam_is_refused():
    assert "would be caught in the seam" in refusal(
        "inverted-pleat", finished_width="5 in", depth="3 in"
    )


def by_hand(edge, apart, depth, pleats):
    at, creases = edge + apart / 2, []
    for _ in range(pleats):
        creases += [at, at + depth, at + 3 * depth, at + 4 * depth]
        at += 4 * depth + apart
    return fold(2 * edge + pleats * (apart + 4 * depth), creases)


def test_a_thousand_rows_fold_to_what_the_page_says_or_are_refused_for_a_reason():
    random = Random(4)
    worked = 0
    for _ in range(1000):
        pleats, apart, depth = random.randint(1, 8), random.randint(64, 160), random.randint(2, 90)
        folded = by_hand(*(n * SIXTEENTH for n in (4, apart, depth)), pleats)
        possible = folded.layers <= 3 and folded.clear_of(4 * SIXTEENTH)
        try:
            working = work(
                "inverted-pleat", pleats=pleats, depth=Length(depth * SIXTEENTH),
                finished_width=Length(pleats * apart * SIXTEENTH),
            )  # fmt: skip
        except RefusalError:
            assert not possible
            continue
        assert possible
        worked += 1
        charted_fold = folded_by_chart(working, "flat_width")
        assert charted_fold == folded
        assert charted_fold.width == length(working, "pleated_width").mm
        assert charted_fold.cloth == length(working, "flat_width").mm
    assert 200 < worked < 900
