"""Repeated motifs, against motifs laid down one after another with a tape."""

from fractions import Fraction
from random import Random

import pytest

from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from worked import INCHES, length, refusal, said, steps, work

SIXTEENTH = Fraction(127, 80)
CORNERS = "round four corners"


def test_seven_motifs_by_hand():
    """20 in less 2 x 1/2 in are 19 in. (19 + 3/4) / (1 1/2 + 3/4) is 8.8: eight would fit.

    With one at the centre seven are worked: 19 - 7 x 1 1/2 = 8 1/2 in in six gaps, 1 5/12 in each.
    """
    working = work("repeated-motif", edge="20 in", motif="1 1/2 in", least_gap="3/4 in")
    assert said(working, "fitting") == "8"
    assert said(working, "number") == "7"
    assert length(working, "gap").mm == Fraction(17, 12) * Fraction(127, 5)
    assert said(working, "first_centre") == "1 1/4 in"


def test_round_by_hand():
    """44 in hold 12 times 2 + 1 1/2 in; 44 / 12 - 2 = 1 2/3 in of gap."""
    working = work("repeated-motif", layout="round", edge="44 in", motif="2 in",
                   least_gap="1 1/2 in")  # fmt: skip
    assert said(working, "number") == "12"
    assert length(working, "gap").mm == Fraction(5, 3) * Fraction(127, 5)


def laid_straight(clear, motif, gap, number):
    """Put down motif after motif from the left: where each is centred, and where the last ends."""
    at, centres = clear, []
    for place in range(number):
        at += gap if place else 0
        centres.append(at + motif / 2)
        at += motif
    return centres, at


def most_that_fit(layout, room, motif, least, centre):
    """Add motif after motif with the least gap until they no longer fit; an odd or even number."""
    number, fitting = 0, 0
    while number < 1000:
        number += 1
        gaps = {CORNERS: number + 1, "round": number}.get(layout, number - 1)
        if number * motif + gaps * least > room:
            break
        if layout == "round" or centre == "either" or number % 2 == (centre == "a motif"):
            fitting = number
    return fitting


def charted(working, chart=0):
    return [row[1].mm for row in working.charts[chart].rows]


@pytest.mark.parametrize("layout", ["straight edge", "round", CORNERS])
def test_on_a_thousand_edges_the_motifs_laid_down_end_where_they_should(layout):
    random = Random(layout)
    worked = 0
    for _ in range(334):
        edge, motif = random.randint(80, 1600), random.randint(2, 60)
        least, margin, corner = random.randint(0, 40), random.randint(0, 24), random.randint(40, 60)
        centre = random.choice(["a motif", "a gap", "either"])
        written = {
            "layout": layout, "edge": edge, "motif": motif, "least_gap": least, "margin": margin,
            "corner": corner, "motif_height": 8, "above": 8,
        }  # fmt: skip
        lengths = {
            name: Length(value * SIXTEENTH) if isinstance(value, int) else value
            for name, value in written.items()
        }
        try:
            working = work("repeated-motif", centre=centre, **lengths)
        except RefusalError:
            continue
        worked += 1
        whole, wide = edge * SIXTEENTH, motif * SIXTEENTH
        prefix = "first_" if layout == CORNERS else ""
        number = working.values[f"{prefix}number"].amount
        if f"{prefix}gap" not in working.values:
            assert charted(working) == [whole / 2]
            continue
        gap = length(working, f"{prefix}gap").mm
        assert gap >= least * SIXTEENTH
        if layout == CORNERS:
            inner = corner * SIXTEENTH
            centres, end = laid_straight(inner + gap, wide, gap, number)
            assert (end + gap if number else inner + gap) + inner == whole
        elif layout == "round":
            start = (gap if centre == "a gap" else -wide) / 2
            centres, end = laid_straight(start, wide, gap, number)
            assert end + gap - start == whole
        else:
            centres, end = laid_straight(margin * SIXTEENTH, wide, gap, number)
            assert end == whole - margin * SIXTEENTH
        if centres:
            assert charted(working) == centres
        if layout != "round" and centre == "a motif":
            assert whole / 2 in centres
        if layout != "round" and centre == "a gap":
            assert not any(abs(at - whole / 2) < wide / 2 for at in centres)
        clear = {CORNERS: 2 * corner, "round": 0}.get(layout, 2 * margin)
        assert number == most_that_fit(layout, edge - clear, motif, least, centre)
    assert worked > 200


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"edge": "2 in", "motif": "2 in"}, "use at least 3 in (77 mm)"),
        ({"edge": "4 in", "centre": "a gap", "motif": "2 in"}, "use at least 5 3/4 in (14.7 cm)"),
        ({"motifs": 12}, "use 7, or a smaller gap"),
        ({"motifs": 6}, "use 7, or a smaller gap"),
        ({"layout": "round", "edge": "2 in"}, "use at least 2 1/4 in (58 mm)"),
        ({"layout": "round", "motifs": 9}, "use at most 8, or a smaller gap"),
        ({"layout": CORNERS, "motifs": 4}, "cannot be counted for four sides"),
        ({"layout": CORNERS, "above": "1 in"}, "use a larger corner"),
        ({"layout": CORNERS, "edge": "5 in"}, "use at least 6 in (15.3 cm)"),
        ({"edge": "200 in", "motif": "1/8 in", "least_gap": "1/8 in"}, "more than 300"),
    ],
)
def test_what_cannot_be_laid_is_refused_with_the_way_out(written, sentence):
    assert sentence in refusal("repeated-motif", **written)


def test_the_shortest_edges_that_refusals_name_hold_their_motifs():
    assert said(work("repeated-motif", edge="3 in", motif="2 in"), "number") == "1"
    working = work("repeated-motif", edge="5 3/4 in", centre="a gap", motif="2 in")
    assert said(working, "number") == "2"
    assert said(work("repeated-motif", layout=CORNERS, edge="6 in"), "first_number") == "1"


def test_on_a_raw_edge_all_distances_count_from_it_by_hand():
    """1/4 in of allowance: the first centre of 1 1/4 in lies at 1 1/2, the line of 1/2 at 3/4."""
    working = work("repeated-motif", edge="20 in", allowance="1/4 in")
    assert said(working, "first_centre") == "1 1/2 in"
    (chart,) = working.charts
    assert chart.headings[1] == "From the left raw end"
    assert INCHES.say(chart.rows[0][1]) == "1 1/2 in"
    (base,) = [step for step in steps(working) if "Baste a line" in step]
    assert "3/4 in from the raw edge" in base and "1 1/4 in from the raw edge" in base


@pytest.mark.parametrize("layout", ["straight edge", CORNERS])
@pytest.mark.parametrize("sixteenths", [0, 4, 10])
def test_trimmed_to_its_finished_size_the_motifs_lie_where_they_would_without(layout, sixteenths):
    """Marked on the raw cloth; then the allowance is taken off both ends."""
    allowance = sixteenths * SIXTEENTH
    raw = work("repeated-motif", layout=layout, allowance=Length(allowance))
    finished = work("repeated-motif", layout=layout)
    trimmed = [centre - allowance for centre in charted(raw)]
    assert trimmed == charted(finished)
    assert [row[2] for row in raw.charts[0].rows] == [row[2] for row in finished.charts[0].rows]
    whole = length(raw, "edge").mm + 2 * allowance
    assert charted(raw)[0] == whole - charted(raw)[-1]
