"""Front bands, folded on a table by `pleat_folding` and measured there."""

from fractions import Fraction
from random import Random

import pytest

from handout_engine.amounts.lengths import Length, inches
from handout_engine.amounts.refusals import RefusalError
from pleat_folding import fold
from worked import length, refusal, said, steps, work

SIXTEENTH = Fraction(127, 80)


def test_a_folded_strip_by_hand():
    """A button of 1/2 in asks for 1/4 + 1/4 = 1/2 in beyond the centre line, a band of 1 in.

    Twice that and two seams of 1/4 in are 2 1/2 in; folded 1 + 1/4 in from the edge that is sewn
    on. The strip for 9 in, with 1/4 in at both ends, is 9 1/2 in long.
    """
    working = work("front-band", opening="9 in", button="1/2 in")
    assert said(working, "band_width") == "1 in"
    assert said(working, "strip_width") == "2 1/2 in"
    assert said(working, "fold_line") == "1 1/4 in"
    assert said(working, "turned_edge") == "2 1/4 in"
    (piece,) = working.pieces
    assert (piece.count, piece.length.length) == (2, inches("19/2"))


def test_two_cloths_by_hand():
    """Band 1 in, edge 1/4 in filled by its seam: the outer strip shows 3/4 in, cut 3/4 + 1/4 + 1/4;
    the facing 1/2 in wider, 1 3/4 in; joined and open 1 1/4 + 1 3/4 - 1/2 = 2 1/2 in, as before."""
    working = work("front-band", button="1/2 in", made="two cloths", edge="1/4 in")
    assert said(working, "outer_shows") == "3/4 in"
    assert said(working, "outer_width") == "1 1/4 in"
    assert said(working, "facing_width") == "1 3/4 in"
    assert said(working, "strip_width") == "2 1/2 in"


def test_cut_on_by_hand():
    """Turn 1/4 in, facing 1 in, extension 1/2 in: 1 3/4 in beyond the centre line, no strip."""
    working = work("front-band", button="1/2 in", made="cut on with its facing")
    assert said(working, "cut_beyond") == "1 3/4 in"
    assert said(working, "fold_line") == "1 1/4 in"
    assert working.pieces == ()
    assert not any("strip" in step for step in steps(working))


def random_bands(made, seed):
    """A thousand bands of one kind, as written and as worked; those that are refused are left."""
    random = Random(seed)
    for _ in range(1000):
        written = {
            "made": made,
            "button": Length(random.randint(3, 24) * SIXTEENTH),
            "clearance": Length(random.randint(0, 8) * SIXTEENTH),
            "seam": Length(random.randint(1, 12) * SIXTEENTH),
            "edge": Length(random.randint(1, 12) * SIXTEENTH),
            "edge_seam": Length(random.randint(1, 8) * SIXTEENTH),
            "facing_turn": Length(random.randint(1, 8) * SIXTEENTH),
        }
        try:
            yield work("front-band", **written)
        except RefusalError:
            continue


def test_a_thousand_folded_strips_are_as_wide_as_the_button_asks_and_close_over_their_seam():
    worked = 0
    for working in random_bands("a folded strip", 576):
        worked += 1
        strip_is_a_band(working, length(working, "fold_line"))
    assert worked > 800


def strip_is_a_band(working, at):
    """From the seam line: outer half, inner half, and what is turned under, folded in order."""
    seam, width = length(working, "seam").mm, length(working, "strip_width").mm
    outer, inner, turned = fold(width - seam, [at.mm - seam, width - 2 * seam]).stretches
    wide = 2 * (working.named["button"].length / 2 + working.named["clearance"].length).mm
    assert outer == (0, wide)
    assert inner[1] == outer[0], "the turned edge lies on the seam"
    assert turned == (0, seam), "as much is turned under as the seam takes"
    assert seam <= wide


def test_a_thousand_bands_of_two_cloths_show_the_edge_and_no_more():
    """Both strips are joined on a table: from where the cloth changes to the fold is the edge."""
    worked = 0
    for working in random_bands("two cloths", 1965):
        worked += 1
        joining = length(working, "joining")
        changes = length(working, "outer_width") - joining
        joined = changes + length(working, "facing_width") - joining
        assert joined == length(working, "strip_width")
        at = changes + length(working, "fold_line") - joining
        assert at - changes == length(working, "edge")
        assert changes - length(working, "seam") == length(working, "outer_shows")
        assert joining <= length(working, "edge"), "the allowance lies inside the edge"
        strip_is_a_band(working, at)
    assert worked > 300


def test_a_thousand_fronts_folded_back_cover_their_holes():
    worked = 0
    for working in random_bands("cut on with its facing", 3):
        worked += 1
        turn, at = length(working, "facing_turn").mm, length(working, "fold_line").mm
        beyond, cut = length(working, "beyond_centre").mm, length(working, "cut_beyond").mm
        folded = fold(cut + beyond, [turn, at])
        front = folded.stretches[2]
        assert cut - at == beyond
        assert abs(front[1] - front[0]) == 2 * beyond
        low, high = sorted(folded.stretches[1])
        assert low <= min(front) and max(front) <= high, "the facing lies under the whole band"
    assert worked == 1000


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"extension": "3/8 in", "button": "1/2 in"}, "use at least 1/2 in (13 mm)"),
        ({"button": "1/2 in", "clearance": "0 in", "seam": "3/4 in"}, "at most 1/2 in (12 mm)"),
        ({"made": "two cloths", "button": "1/4 in", "clearance": "0 in", "edge": "1/4 in",
          "seam": "1/4 in"}, "use less than 1/4 in (6 mm), or a wider extension"),
        ({"made": "two cloths", "edge": "1/8 in", "edge_seam": "1/4 in"},
         "use at most 1/8 in (3 mm), trimmed"),
        ({"made": "cut on with its facing", "button": "1/2 in", "facing": "3/4 in"},
         "use at least 1 in (26 mm)"),
    ],
)  # fmt: skip
def test_the_refusals_name_the_nearest_that_can_be_sewn(written, sentence):
    assert sentence in refusal("front-band", **written)


def test_without_end_allowance_no_end_is_sewn_across():
    written = {"end_allowance": "0 in"}
    for made in ("a folded strip", "two cloths", "cut on with its facing"):
        assert not any("ends," in step for step in steps(work("front-band", made=made, **written)))


def test_a_band_set_into_a_cut_opening_keeps_raw_ends_and_cuts_no_front():
    open_front, opening = (
        " ".join(steps(work("front-band", onto=onto)))
        for onto in ("a front edge", "an opening cut into the front")
    )
    assert "sew across both ends" in open_front and "On the front draw" in open_front
    assert "sew across both ends" not in opening and "On the front draw" not in opening
    assert "Both its ends stay raw" in opening
    assert length(work("front-band", onto="an opening cut into the front"), "band_length") == (
        length(work("front-band"), "band_length")
    )


def test_a_band_cut_on_has_no_opening_to_go_into():
    assert "set it onto a front edge" in refusal(
        "front-band", made="cut on with its facing", onto="an opening cut into the front"
    )


def test_of_two_cloths_the_far_edge_of_the_facing_is_turned_under():
    """A band of 1 in with an edge of 1/8 in: both strips are twice 1 1/4 in when opened flat."""
    working = work("front-band", made="two cloths", extension="1/2 in")
    assert said(working, "strip_width") == "2 1/2 in"
    assert said(working, "turned_edge") == "2 1/4 in"
