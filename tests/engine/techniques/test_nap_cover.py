"""Nap cover: worked example, then its top sewn together piece by piece, 1,000 random times.

Its binding is folded round a slab as thick as the three layers.
"""

from fractions import Fraction
from random import Random

from hypothesis import given
from hypothesis import strategies as st

from handout_engine.amounts.lengths import Length, inches
from handout_engine.amounts.refusals import RefusalError
from slabs import reach_round
from worked import INCHES, length, refusal, said, steps, work

SIXTEENTH = Fraction(127, 80)


def test_a_small_cover_by_hand():
    # 4 x 7 + 3 x 1 1/2 = 32 1/2; 5 x 7 + 4 x 1 1/2 = 41; + 2 x 3: 38 1/2 x 47; + 1/2: 39 x 47 1/2
    working = work("nap-cover")
    assert (said(working, "inner_width"), said(working, "inner_length")) == ("32 1/2 in", "41 in")
    assert (said(working, "raw_width"), said(working, "raw_length")) == ("39 in", "47 1/2 in")
    counts = {piece.name: piece.count for piece in working.pieces}
    assert counts["block"] == 20
    assert counts["short sash"] == 15 and counts["long sash"] == 4
    # 2 x (39 + 47 1/2) + 10 = 183 in of binding; folded 3 x 1/4 + 1/8 for the thickness, so 7/8
    assert said(working, "binding_length") == "183 in"
    assert said(working, "binding_folded") == "7/8 in"
    assert said(working, "binding_cut") == "1 3/4 in"


def test_without_sashing_and_border_there_is_no_cloth_for_them():
    working = work("nap-cover", sashing="0 in", border="0 in", binding="1/4 in")
    assert {piece.name for piece in working.pieces} == {
        "block", "batting", "backing panel", "binding strip",
    }  # fmt: skip
    assert not any("border" in step and "Sew on" in step for step in steps(working))


def test_a_binding_that_would_cover_the_blocks_is_refused_with_the_widest():
    assert refusal("nap-cover", border="1/4 in", binding="3/4 in") == (
        "binding 3/4 in would cover the border and some of the blocks; use at most 1/2 in "
        "(12 mm), or a wider border"
    )


def sewn(pieces: list[Fraction], allowance: Fraction) -> Fraction:
    """The raw length of pieces sewn end to end: every seam takes its allowance of both."""
    whole = pieces[0]
    for piece in pieces[1:]:
        whole = whole - allowance + piece - allowance
    return whole


def test_sewn_together_piece_by_piece_the_top_has_its_raw_size():
    random = Random(17)
    worked = joined = 0
    for _ in range(1000):
        across, down = random.randint(1, 8), random.randint(1, 8)
        written = {
            "blocks_across": across, "blocks_down": down,
            "block": Length(random.randint(32, 240) * SIXTEENTH),
            "sashing": Length(random.randint(1, 64) * SIXTEENTH),
            "border": Length(random.randint(8, 96) * SIXTEENTH),
            "seam_allowance": Length(random.randint(3, 8) * SIXTEENTH),
            "strip_allowance": Length(random.randint(2, 8) * SIXTEENTH),
        }  # fmt: skip
        try:
            working = work("nap-cover", **written)
        except RefusalError:
            continue
        worked += 1
        seam, join = written["seam_allowance"].mm, written["strip_allowance"].mm
        cut = {piece.name: piece for piece in working.pieces}
        block, sash = cut["block"].width.length.mm, length(working, "sashing_cut").mm
        border = length(working, "border_cut").mm
        row = sewn([block, *[sash, block] * (across - 1)], seam)
        column = sewn([block, *[sash, block] * (down - 1)], seam)
        assert sewn([border, row, border], seam) == length(working, "raw_width").mm
        assert sewn([border, column, border], seam) == length(working, "raw_length").mm
        for name, wanted, number in (
            ("long sash", row, down - 1), ("side border", column, 2),
            ("end border", length(working, "raw_width").mm, 2),
        ):  # fmt: skip
            if not number:
                assert name not in cut
                continue
            parts = cut[name].count // number
            joined += parts > 1
            assert sewn([cut[name].length.length.mm] * parts, join) == wanted
        panels = cut["backing panel"]
        across_back = sewn([panels.width.length.mm] * panels.count, join)
        assert across_back == length(working, "backing_width").mm
    assert worked > 700 and joined > 100


@given(st.integers(1, 10), st.integers(1, 10))
def test_blocks_down_and_across_change_places(one, other):
    first = work("nap-cover", blocks_across=one, blocks_down=other)
    second = work("nap-cover", blocks_across=other, blocks_down=one)
    assert length(first, "raw_width") == length(second, "raw_length")
    assert length(first, "binding_length") == length(second, "binding_length")


@given(st.integers(1, 8))
def test_a_wider_border_takes_eight_of_its_growth_more_binding(eighths):
    plain = work("nap-cover", border="2 in")
    wider = work("nap-cover", border=inches(2) + inches(Fraction(eighths, 8)))
    more = length(wider, "binding_length") - length(plain, "binding_length")
    assert more == inches(eighths)


eighths = st.integers(1, 8).map(lambda number: inches(Fraction(number, 8)))
sixteenths = st.integers(0, 16).map(lambda number: inches(Fraction(number, 16)))


@given(eighths, sixteenths)
def test_folded_round_layers_of_any_thickness_the_binding_reaches_its_stitching(binding, thick):
    working = work("nap-cover", binding=binding, turn_of_cloth=thick, border="3 in")
    folded = length(working, "binding_folded")
    assert 2 * folded == length(working, "binding_cut")
    left = float(folded - binding)  # what is sewn into the allowance, as wide as the binding
    assert left >= reach_round(float(thick), float(binding)) - 1e-9


def test_the_usual_binding_goes_round_three_layers_an_eighth_of_an_inch_thick():
    """Top, thin cotton batting and backing (common practice, no source)."""
    working = work("nap-cover")
    left = float(length(working, "binding_folded") - length(working, "binding"))
    assert left >= reach_round(25.4 / 8, 25.4 / 4) - 1e-9


def test_its_binding_is_tried_on_a_scrap_of_all_layers_first():
    bound = work("nap-cover").sample[-1]
    assert "batting" in bound.text.first(INCHES) and "1 3/4 in wide" in bound.text.first(INCHES)
    assert "reaches the stitching at the back" in bound.checkpoint.first(INCHES)


def test_the_folded_ends_are_opened_before_they_are_joined():
    (joining,) = [step for step in steps(work("nap-cover")) if "Leave off" in step]
    assert joining.index("open the fold of both ends") < joining.index("join them")


def test_a_tail_that_the_last_join_uses_up_is_refused():
    assert refusal("nap-cover", tail="1 in") == (
        "tail 1 in is used up where the ends are joined; use at least 1 3/4 in (45 mm)"
    )
