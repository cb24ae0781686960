from fractions import Fraction

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from handout_engine import register
from handout_engine.amounts.lengths import inches
from handout_engine.amounts.sources import GIVEN, PRACTICE, published
from handout_engine.drawing.scene import Area, Line, Stroke
from worked import length, refusal, said, steps, work

edges = st.fractions(1, 200, max_denominator=16).map(inches)
fullnesses = st.fractions(1, 6, max_denominator=12)


def test_a_cuff_of_nine_inches_gathered_two_to_one():
    open_ends = work("gathered-ruffle", edge="9 in", fullness="2", end_allowance="1/2 in")
    assert said(open_ends, "ruffle_length") == "19 in"
    ring = work("gathered-ruffle", edge="9 in", fullness="2", end_allowance="1/2 in", ends="ring")
    assert said(ring, "ruffle_length") == "18 in"
    assert said(ring, "strip_length") == "18 1/2 in"


@given(edges, fullnesses, st.sampled_from(["open", "ring"]))
def test_drawn_up_the_strip_is_as_long_as_its_edge(edge, fullness, ends):
    working = work("gathered-ruffle", edge=edge, fullness=fullness, ends=ends)
    strip = length(working, "ruffle_length")
    seamed_ends = 2 * inches("1/4") if ends == "open" else inches(0)
    assert (strip - seamed_ends) / edge == fullness


@given(edges, fullnesses)
def test_a_sample_is_drawn_up_in_the_same_ratio(edge, fullness):
    working = work("gathered-ruffle", edge=edge, fullness=fullness, sample_length="10 in")
    assert length(working, "sample_drawn_up") * fullness == inches(10)


def test_two_rows_stand_half_their_distance_from_the_seam_line():
    working = work("gathered-ruffle", edge_allowance="5/8 in")
    assert said(working, "rows_distance") == "1/4 in"
    assert said(working, "first_row") == "1/2 in"
    assert said(working, "second_row") == "3/4 in"
    assert working.values["rows_distance"].basis == published("utah-ruffle")


def test_rows_draw_together_where_the_allowance_is_narrow():
    working = work("gathered-ruffle", edge_allowance="1/8 in")
    assert said(working, "rows_distance") == "1/8 in"
    assert said(working, "first_row") == "1/16 in"
    assert said(working, "second_row") == "3/16 in"


def test_a_row_off_the_edge_is_refused():
    assert refusal("gathered-ruffle", rows_apart="1/2 in") == (
        "rows_apart 1/2 in puts one row off the edge; use less than 1/2 in (12 mm), or more edge "
        "allowance"
    )
    assert said(work("gathered-ruffle", rows_apart="7/16 in"), "first_row") == "1/32 in"


@given(
    st.fractions(Fraction(1, 16), 2, max_denominator=16).map(inches),
    st.fractions(Fraction(1, 16), 1, max_denominator=16).map(inches),
)
def test_rows_lie_on_the_cloth_with_the_seam_between_them(allowance, apart):
    assume(apart < 2 * allowance)
    working = work("gathered-ruffle", edge_allowance=allowance, rows_apart=apart)
    first, second = length(working, "first_row"), length(working, "second_row")
    assert inches(0) < first < allowance < second
    assert second - first == apart
    assert first + second == 2 * allowance


def test_a_default_rests_on_practice_and_what_is_written_on_the_page():
    assert work("gathered-ruffle").inputs["fullness"].basis == PRACTICE
    assert work("gathered-ruffle", fullness="2.5").inputs["fullness"].basis == GIVEN


def test_each_quarter_is_a_fourth_of_the_edge():
    (spread,) = [step for step in steps(work("gathered-ruffle", edge="10 in")) if "spread" in step]
    assert spread.endswith("> the gathered part is 10 in long, and each quarter of it 2 1/2 in.")


@pytest.mark.parametrize(
    ("written", "words"),
    [
        ({"edge": "12 in"}, None),
        ({"edge": "12 in", "ends": "ring"}, "Join the ends of the ruffle strip into a ring"),
        ({"edge": "60 in"}, "Join the ruffle strips end to end"),
        ({"edge": "60 in", "ends": "ring"}, "Join the ruffle strips into a ring"),
    ],
)
def test_strips_are_joined_only_where_there_is_something_to_join(written, words):
    joins = [step for step in steps(work("gathered-ruffle", **written)) if step.startswith("Join")]
    assert len(joins) == (words is not None)
    assert all(step.startswith(words) for step in joins)


def gathering_rows(picture):
    """How far down its strip each row lies, as a share of the strip's width, from the drawing."""
    strip = max(
        (each for each in picture.scene.shapes if isinstance(each, Area)),
        key=lambda area: max(x for x, _ in area.points) - min(x for x, _ in area.points),
    )
    top, foot = (of(y for _, y in strip.points) for of in (min, max))
    rows = [each for each in picture.scene.shapes
            if isinstance(each, Stroke) and each.line is Line.GATHER]  # fmt: skip
    return sorted({(y - top) / (foot - top) for row in rows for _, y in row.points})


@pytest.mark.parametrize("key", register.keys())
def test_the_map_of_the_gathers_has_its_rows_where_the_strip_is_gathered(key):
    """Compared with the strip as it is marked: as many rows, each in the same part of its width."""
    pictures = {picture.name: picture for picture in work(key).pictures}
    if not {"quarters", "strips"} <= set(pictures):
        return
    on_map = gathering_rows(pictures["quarters"])
    marked = [row for row in gathering_rows(pictures["strips"]) if 0 < row < 1]
    lines = len(on_map) // 2
    assert lines in (1, 2)
    for number in range(lines):
        drawn = sum(on_map[2 * number : 2 * number + 2]) / 2
        middle = sum(marked[2 * number : 2 * number + 2]) / 2
        assert abs(drawn - middle) < 0.3, key
        assert (drawn - 0.5) * (middle - 0.5) >= 0 or abs(middle - 0.5) < 0.1


def test_a_heading_moves_the_rows_of_the_map_down_its_strip():
    def middle(**measures):
        (found,) = [each for each in work("headed-ruffle", **measures).pictures
                    if each.name == "quarters"]  # fmt: skip
        rows = gathering_rows(found)
        return sum(rows) / len(rows)

    assert middle(heading="1 in", depth="1 in") == pytest.approx(0.5)
    assert middle(heading="1/2 in", depth="3 in") < 0.5 < middle(heading="3 in", depth="2 in")
