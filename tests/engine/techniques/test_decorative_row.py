"""Decorative rows: repeats set one behind another until they meet the end."""

from fractions import Fraction
from random import Random

import pytest

from handout_engine.amounts.lengths import ZERO, Length, inches
from handout_engine.amounts.refusals import RefusalError
from worked import length, refusal, said, steps, work

SIXTEENTH = Fraction(127, 80)


def test_twenty_inches_by_hand():
    """20 in of 3/8 in repeats: 20 / 0.375 = 53.33, so 53 of 20/53 in, 0.6 % longer."""
    working = work("decorative-row", edge="20 in", repeat="3/8 in")
    assert working.named["repeats_edge"].whole == 53
    assert length(working, "repeat_edge") == inches(Fraction(20, 53))
    assert said(working, "change_edge") == "0.6 %"


def test_kept_repeats_are_centred_by_hand():
    """53 repeats of 3/8 in are 19 7/8 in; of 20 in 1/16 in is left at each end."""
    working = work("decorative-row", edge="20 in", repeat="3/8 in", fit="keep the repeat")
    assert working.named["repeats_edge"].whole == 53
    assert said(working, "left_at_ends") == "1/16 in"
    assert said(working, "row_sewn") == "19 7/8 in"
    assert "1/16 in from it" in " ".join(steps(working))


def test_a_thousand_rows_come_out_even_or_are_refused():
    """Walking the repeats from the start ends exactly at the other end, or is out of tolerance."""
    random = Random(67)
    fitted = 0
    for _ in range(1000):
        edge = random.randint(16, 1200) * SIXTEENTH
        repeat = random.choice([Fraction(random.randint(2, 60)), random.randint(2, 60) * SIXTEENTH])
        ring, keep = random.random() < 0.5, random.random() < 0.4
        margin = random.randint(0, 7) * SIXTEENTH
        tolerance = Fraction(random.randint(0, 8), 100)
        written = {
            "edge": Length(edge), "repeat": Length(repeat), "margin": Length(margin),
            "tolerance": tolerance, "form": "round a ring" if ring else "along an edge",
            "fit": "keep the repeat" if keep else "stretch the repeat",
        }  # fmt: skip
        room = edge if ring else edge - 2 * margin
        try:
            working = work("decorative-row", **written)
        except RefusalError as no:
            whole = room // repeat
            if keep:
                assert whole == 0 or (ring and whole * repeat != room)
            else:
                assert all(abs(room / n / repeat - 1) > tolerance for n in (whole, whole + 1) if n)
            assert no.field == "edge"
            continue
        fitted += 1
        place = ZERO.mm if ring else margin
        each = repeat if keep else length(working, "repeat_edge").mm
        if keep and not ring:
            place = length(working, "left_at_ends").mm
            assert margin <= place < margin + repeat
        begin = place
        for _ in range(working.named["repeats_edge"].whole):
            place += each
        assert place == edge - begin, "the row ends as far from its end as it began"
        assert abs(each - repeat) <= tolerance * repeat
        last = working.charts[-1].rows[-1]
        assert last[0] == str(working.named["repeats_edge"].whole)
        assert last[1] == Length(place - begin)
    assert fitted > 400


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"edge": "4 in", "margin": "2 in"}, "use margins of less than 2 in (50 mm)"),
        (
            {"edge": "10 in", "repeat": "3 in", "fit": "keep the repeat", "form": "round a ring"},
            "use 9 in or 12 in, which needs no change, or a stretched repeat",
        ),
        ({"edge": "10 in", "repeat": "3 in"}, "use 9 in (22.9 cm) or 12 in (30.5 cm)"),
    ],
)
def test_what_does_not_come_out_names_what_would(written, sentence):
    assert sentence in refusal("decorative-row", **written)


def test_a_ring_has_no_margins():
    working = work("decorative-row", form="round a ring", margin="1 in", edge="8 in")
    assert said(working, "row_edge") == "8 in"
    assert "once round the line is 8 in" in " ".join(steps(working))
