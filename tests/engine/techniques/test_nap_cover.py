"""Nap cover: worked example, then its top sewn together piece by piece, 1,000 random times."""

from fractions import Fraction
from random import Random

from hypothesis import given
from hypothesis import strategies as st

from handout_engine.lengths import Length, inches
from handout_engine.refusals import RefusalError
from worked import length, refusal, said, steps, work

SIXTEENTH = Fraction(127, 80)


def test_a_small_cover_by_hand():
    # 4 x 7 + 3 x 1 1/2 = 32 1/2; 5 x 7 + 4 x 1 1/2 = 41; + 2 x 3: 38 1/2 x 47; + 1/2: 39 x 47 1/2
    working = work("nap-cover")
    assert (said(working, "inner_width"), said(working, "inner_length")) == ("32 1/2 in", "41 in")
    assert (said(working, "raw_width"), said(working, "raw_length")) == ("39 in", "47 1/2 in")
    counts = {piece.name: piece.count for piece in working.pieces}
    assert counts["block"] == 20
    assert counts["short sash"] == 15 and counts["long sash"] == 4
    # 2 x (39 + 47 1/2) + 10 = 183 in of binding, 6 x 1/4 wide
    assert said(working, "binding_length") == "183 in"
    assert said(working, "binding_cut") == "1 1/2 in"


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
