"""Scallops, against a walk round the circle and against arcs halved without any angle."""

from fractions import Fraction
from math import cos, hypot, sin, sqrt
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handout_engine.amounts.lengths import Length, inches, total
from handout_engine.amounts.refusals import RefusalError
from worked import length, refusal, said, steps, work

SIXTEENTH = Fraction(127, 80)


def test_eight_half_circles_by_hand():
    """24 in in 8: chords of 3 in; 1 1/2 in deep they are half circles, 3/2 × π = 4.712 in each."""
    working = work("scallop-edge", edge="24 in", scallops=8, rise="1 1/2 in",
                   finish="satin stitched")  # fmt: skip
    assert said(working, "chord") == "3 in"
    assert said(working, "radius") == "1 1/2 in"
    assert abs(length(working, "arc").mm - inches(Fraction(4712389, 10**6)).mm) < 1e-4
    assert working.named["between"].amount == 0, "a slit of no width"


def test_the_usual_rise_and_facing_by_hand():
    """Chord 3 in, rise 0.9 in: radius (9/4 + 0.81) / 1.8 = 1.7 in.

    The edge takes 0.9 + 1/4 = 1.15 in, and the facing reaches 1 1/2 in above: 2.65 in wide; 24 in
    and two ends of 1/2 in: one strip of 25 in.
    """
    working = work("scallop-edge", edge="24 in", scallops=8)
    assert length(working, "scallop_rise") == inches("9/10")
    assert length(working, "radius") == inches("17/10")
    assert length(working, "facing_cut_width") == inches("53/20")
    (piece,) = working.pieces
    assert (piece.count, piece.length.length) == (1, inches(25))


def walked(chord: float, rise: float) -> float:
    """The length of the circle through both feet and the lowest point, walked in small turns.

    The centre is where the perpendicular bisectors meet; each step turns a point about it, and
    the steps are added up until the other foot is reached.
    """
    x = chord / 2
    # on the middle line, as far from the foot (0, 0) as from the lowest point (x, rise)
    centre = (x, rise - (x * x + rise * rise) / (2 * rise))
    radius = hypot(*centre)
    turn = -0.0004
    place = (-centre[0], -centre[1])
    walked_length, before = 0.0, place
    target = (chord - centre[0], -centre[1])
    step_x, step_y = cos(turn), sin(turn)
    passed_lowest = False
    while True:
        place = (before[0] * step_x - before[1] * step_y, before[0] * step_y + before[1] * step_x)
        passed_lowest = passed_lowest or (place[0] > 0 and place[1] > 0)
        beyond = place[0] * target[1] - place[1] * target[0]
        if passed_lowest and beyond >= 0 and place[0] * target[0] + place[1] * target[1] > 0:
            return walked_length + hypot(target[0] - before[0], target[1] - before[1])
        walked_length += hypot(place[0] - before[0], place[1] - before[1])
        before = place
        assert walked_length < 7 * radius


def halved(chord: float, rise: float) -> float:
    """The arc as many small chords: each halving uses only right-angled triangles."""
    slope, pieces = 2 * rise / chord, 1
    while pieces < 2**20:
        chord = sqrt(chord * chord / 4 + (slope * chord / 2) ** 2)
        slope = slope / (sqrt(1 + slope * slope) + 1)
        pieces *= 2
    return pieces * chord


def test_a_thousand_scallops_have_the_length_of_their_walk():
    random = Random(83)
    deep = 0
    for number in range(1000):
        chord = random.randint(8, 160) * SIXTEENTH
        rise = max(SIXTEENTH, chord * Fraction(random.randint(3, 110), 100))
        count = random.randint(1, 40)
        wide = 2 * rise > chord
        bulge = 2 * ((chord * chord / 4 + rise * rise) / (2 * rise)) - chord if wide else 0
        gap = max(bulge, random.randint(0, 8) * SIXTEENTH)
        count = max(1, min(count, inches(360).mm // (chord + gap)))
        edge = max(inches(1).mm, (chord + gap) * count)
        gap = edge / count - chord
        working = work(
            "scallop-edge", edge=Length(edge), scallops=count, rise=Length(rise), gap=Length(gap),
            finish="satin stitched",
        )  # fmt: skip
        deep += wide
        arc = float(length(working, "arc"))
        assert length(working, "chord").mm == chord
        assert abs(arc - halved(float(chord), float(rise))) < 1e-5 * arc
        if number % 5 == 0:
            assert abs(arc - walked(float(chord), float(rise))) < 1e-5 * arc
    assert deep > 200


def test_the_rows_of_the_chart_fill_the_edge():
    working = work("scallop-edge", edge="20 in", scallops=5, gap="1/2 in")
    (chart,) = working.charts
    chords = total(ends - begins for _, begins, _, ends in chart.rows)
    assert chords + 5 * inches("1/2") == inches(20)
    for _, begins, lowest, ends in chart.rows:
        assert lowest - begins == ends - lowest
    assert chart.rows[0][1] == inches(20) - chart.rows[-1][3], "the same at both ends"


@given(st.integers(2, 60), st.integers(1, 60))
def test_deeper_scallops_are_longer_round_their_edge(rise, more):
    made = {"edge": "24 in", "scallops": 2, "finish": "satin stitched"}
    shallow = work("scallop-edge", rise=f"{rise} mm", **made)
    deep = work("scallop-edge", rise=f"{rise + more} mm", **made)
    assert length(deep, "outline") > length(shallow, "outline") > inches(24)


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        (
            {"rise": "1 1/4 in"},
            "use at most 1 1/32 in (26 mm), or a gap of at least 1/8 in (4 mm), or satin",
        ),
        (
            {"rise": "2 in", "finish": "satin stitched"},
            "bulges over its neighbour; use at most 1 1/2 in (38 mm)",
        ),
        ({"gap": "3 in"}, "gap 3 in leaves nothing of the 3 in"),
        ({"trim": "1/2 in"}, "use at most 1/4 in (6 mm)"),
    ],
)
def test_scallops_that_cannot_be_turned_are_refused(written, sentence):
    assert sentence in refusal("scallop-edge", **written)


def test_a_gap_lets_deeper_scallops_be_faced():
    with pytest.raises(RefusalError):
        work("scallop-edge", rise="1 1/4 in")
    working = work("scallop-edge", rise="1 1/4 in", gap="1/4 in")
    assert said(working, "chord") == "2 3/4 in"


def test_a_ring_has_no_end_allowances():
    working = work("scallop-edge", form="round a hem", edge="60 in", scallops=20)
    assert said(working, "facing_length") == "60 in"
    assert "into a ring" in " ".join(steps(working))


def test_the_template_is_printed_at_true_scale():
    (template,) = [each for each in work("scallop-edge").pictures if each.name == "template"]
    assert template.sheet is template.scene
