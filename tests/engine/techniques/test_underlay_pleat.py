"""A pleat over a contrast underlay, its three pieces sewn and folded point by point."""

from dataclasses import dataclass
from fractions import Fraction
from random import Random

import pytest

from folding import mirrored
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from worked import length, refusal, said, steps, work

SIXTEENTH = Fraction(127, 80)


def test_a_closed_pleat_by_hand():
    """10 in wide, 2 in deep, seams of 3/8 in to the underlay, 1/4 in at the sides.

    Underlay 2 x 2 + 2 x 3/8 = 4 3/4 in. Each main piece 5 in, and beyond its fold 2 + 3/8 in, and
    1/4 in at the side: 7 5/8 in. At rest nothing of the underlay shows, opened 4 in.
    """
    working = work("underlay-pleat", finished_width="10 in", depth="2 in", underlay_seam="3/8 in")
    assert said(working, "underlay_cut_width") == "4 3/4 in"
    assert said(working, "extension") == said(working, "fold_line") == "2 3/8 in"
    assert said(working, "main_cut_width") == "7 5/8 in"
    assert said(working, "shows_open") == "4 in"
    assert said(working, "opened_width") == "18 in"
    assert said(working, "spread_width") == "18 1/2 in"
    assert said(working, "rest_width") == "10 1/2 in"
    assert said(working, "hemmed_length") == "12 1/4 in"
    assert [piece.count for piece in working.pieces] == [2, 1]
    assert {piece.cloth for piece in working.pieces} == {"main cloth", "underlay cloth"}


def test_with_a_gap_the_folds_are_turned_back_by_less():
    working = work("underlay-pleat", finished_width="10 in", depth="2 in", gap="1 in")
    assert said(working, "main_shows") == "4 1/2 in"
    assert said(working, "turned_back") == "1 1/2 in"
    assert said(working, "underlay_cut_width") == "4 3/4 in"
    assert any("until they stand 1 in apart" in step for step in steps(working))


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"gap": "4 in"}, "use a gap of less than 4 in (10.1 cm), or a depth of more than 2 in"),
        ({"depth": "6 in"}, "use a depth of at most 5 in (12.7 cm)"),
    ],
)
def test_a_pleat_that_cannot_open_or_reaches_the_sides_is_refused(written, sentence):
    assert sentence in refusal("underlay-pleat", **written)


@dataclass(frozen=True)
class Sewn:
    whole: Fraction
    gap: Fraction
    opened: Fraction


def sew(main: Fraction, under: Fraction, seam: Fraction, fold_line: Fraction) -> Sewn:
    """Lay the left main piece from 0, fold it back, sew the underlay on, and mirror the right half.

    Sewn right sides together, both inner raw edges lie level and point away from the pleat; the
    underlay then runs on under the folds to the other main piece.
    """
    fold_at = main - fold_line
    seam_at = mirrored(main - seam, fold_at)
    other_seam = seam_at + (under - 2 * seam)
    other_fold = other_seam - (fold_at - seam_at)
    whole = other_fold + fold_at
    opened = 2 * (main - seam) + under - 2 * seam
    return Sewn(whole, other_fold - fold_at, opened)


def test_a_thousand_pleats_lie_as_the_page_says():
    random = Random(5)
    worked = 0
    for _ in range(1000):
        written = {
            "finished_width": Length(random.randint(96, 500) * SIXTEENTH),
            "depth": Length(random.randint(16, 96) * SIXTEENTH),
            "gap": Length(random.choice([0, random.randint(0, 60)]) * SIXTEENTH),
            "underlay_seam": Length(random.randint(2, 12) * SIXTEENTH),
            "side_allowance": Length(random.randint(0, 8) * SIXTEENTH),
        }
        try:
            working = work("underlay-pleat", **written)
        except RefusalError:
            continue
        worked += 1
        names = ("main_cut_width", "underlay_cut_width", "underlay_seam", "fold_line")
        pieces = [length(working, name).mm for name in names]
        sewn, sides = sew(*pieces), 2 * written["side_allowance"].mm
        assert sewn.whole - sides == written["finished_width"].mm
        assert sewn.gap == written["gap"].mm
        assert sewn.opened - sides == length(working, "opened_width").mm
        assert length(working, "shows_open") == 2 * written["depth"]
    assert worked > 400
