"""Scenes laid out on the page: nothing beside it, no label on another."""

from itertools import combinations, pairwise
from math import hypot

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drawn import check_drawing, points, texts
from handout_engine import register
from handout_engine.amounts.lengths import Length, millimetres
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.values import sentence
from handout_engine.drawing.dimensions import STACK, spread
from handout_engine.drawing.layout import lay_out
from handout_engine.drawing.page import PAGE_WIDTH, Path, Text
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Line,
    Note,
    Scene,
    Side,
    Tag,
    Tone,
    rectangle,
)
from worked import INCHES, work


def scene(*shapes, title="Strip", description="A strip."):
    return Scene(sentence(title), sentence(description), shapes)


STRIP = Area(rectangle(0, 0, 100, 50))


def test_a_strip_is_drawn_in_one_scale_both_ways():
    page = lay_out(scene(STRIP), INCHES)
    outline = next(part for part in page.parts if isinstance(part, Path) and part.style == "cut")
    (left, top), (right, _), (_, bottom), _ = outline.points
    assert (right - left) / (bottom - top) == pytest.approx(2)
    assert left > 0 and right < PAGE_WIDTH


def test_a_dimension_says_what_the_cut_list_says_and_spans_what_it_measures():
    width = Dimension((0, 0), (100, 0), millimetres("50.8"), Side.ABOVE)
    page = lay_out(scene(STRIP, width), INCHES)
    (label,) = texts(page)
    assert label.words + label.beside == "2 in (51 mm)"
    outline = next(part for part in page.parts if isinstance(part, Path) and part.style == "cut")
    heads = [part.points[0][0] for part in page.parts
             if isinstance(part, Path) and part.style == "head"]  # fmt: skip
    assert sorted(heads) == pytest.approx([outline.points[0][0], outline.points[1][0]])
    assert label.at[1] < outline.points[0][1]


def test_only_a_wrong_side_is_hatched():
    for tone in Tone:
        parts = lay_out(scene(Area(rectangle(0, 0, 100, 50), tone)), INCHES).parts
        hatched = [part for part in parts if not isinstance(part, Path | Text)]
        assert bool(hatched) is (tone is Tone.WRONG)


def test_what_is_drawn_later_lies_on_top():
    back, front = (
        Area(rectangle(0, 0, 90, 40), Tone.RIGHT),
        Area(rectangle(5, 5, 9, 9), Tone.SECOND),
    )
    styles = [part.style for part in lay_out(scene(back, front), INCHES).parts
              if isinstance(part, Path)]  # fmt: skip
    assert styles.index("face-right") < styles.index("face-second")


def test_a_scene_without_any_extent_is_still_a_drawing():
    check_drawing(scene(Note((3, 4), sentence("knot"))), INCHES)


@given(st.lists(st.floats(-500, 500), max_size=12), st.floats(1, 40))
def test_labels_are_spread_apart_in_their_order_and_no_further_than_needed(wanted, apart):
    wanted = sorted(wanted)
    heights = spread(wanted, apart)
    gaps = [after - before for before, after in pairwise(heights)]
    assert all(gap >= apart - 1e-6 for gap in gaps)
    assert sum(heights) == pytest.approx(sum(wanted), abs=1e-6)
    if all(after - before >= apart for before, after in pairwise(wanted)):
        assert heights == pytest.approx(wanted)


places = st.integers(0, 50).map(float)
amounts = st.integers(1, 5000).map(lambda n: Length(millimetres(n).mm / 3))
upright = st.builds(
    lambda top, bottom, amount, side: Dimension((0.0, top), (0.0, bottom), amount, side),
    places, places, amounts, st.sampled_from([Side.LEFT, Side.RIGHT]),
)  # fmt: skip
level = st.builds(
    lambda left, right, amount, side: Dimension((2 * left, 0.0), (2 * right, 0.0), amount, side),
    places, places, amounts, st.sampled_from([Side.ABOVE, Side.BELOW]),
)  # fmt: skip
tags = st.builds(
    lambda height, amount, origin: Tag(
        (100.0, height), amount, Side.RIGHT, (100.0, 0.0) if origin else None
    ),
    places, amounts, st.booleans(),
)  # fmt: skip
tapes = st.sampled_from([Tape(), Tape("metric", 32)])


@given(st.lists(tags, max_size=8) | st.lists(upright, max_size=3) | st.lists(level, max_size=5),
       tapes)  # fmt: skip
def test_labels_at_one_side_never_lie_on_each_other(shapes, tape):
    page = lay_out(scene(STRIP, *shapes), tape)
    boxes = [(text.extent, text.reach) for text in texts(page)]
    for (across, down), (others_across, others_down) in combinations(boxes, 2):
        overlap_across = min(across[1], others_across[1]) - max(across[0], others_across[0])
        overlap_down = min(down[1], others_down[1]) - max(down[0], others_down[0])
        assert overlap_across <= 0.5 or overlap_down <= TEXT_SLACK


TEXT_SLACK = 14 - 11 + 11 / 3  # a line's reach counts its ascenders and descenders in full


@given(st.lists(tags, max_size=8) | st.lists(upright, max_size=2) | st.lists(level, max_size=5),
       tapes)  # fmt: skip
def test_words_and_lines_stay_on_the_page(shapes, tape):
    check_drawing(scene(STRIP, *shapes), tape)


@pytest.mark.parametrize("key", register.keys())
def test_the_hatching_and_the_faces_of_every_technique_are_numbers(key):
    for picture in work(key).pictures:
        for x, y in points(lay_out(picture.scene, Tape())):
            assert hypot(x, y) < 10_000


@given(st.floats(1, 10**5), st.floats(1, 10**5))
def test_any_size_of_cloth_fits_the_page(width, height):
    shape = Area(rectangle(-width / 3, 7.0, width, height), Tone.WRONG, Line.CUT)
    page = lay_out(scene(shape), Tape())
    assert all(0 <= x <= PAGE_WIDTH for x, _ in points(page))
    assert page.height <= 400
    assert STACK > 0
