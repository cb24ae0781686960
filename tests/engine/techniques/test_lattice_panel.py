"""The lattice panel: a small one by hand, then what must hold of every one."""

from fractions import Fraction
from math import hypot, radians, sin, sqrt

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from handout_engine.amounts.lengths import inches
from handout_engine.amounts.sources import DRAWN, GIVEN, PRACTICE
from handout_engine.drawing.scene import Area, Line, Stroke, Tone
from handout_engine.families.lattice.panels import PanelInputs
from shapely_lattice import lattice_by_shapely
from worked import length, refusal, said, steps, work

ARCH = ((0, 0), (4, 0), (4, 3), (3, 3), (3, 1), (1, 1), (1, 3), (0, 3))
HOLLOW = "; ".join(f"{x} in, {y} in" for x, y in ARCH)


def lengths_by_name(working):
    """The cut length of every tube of the chart."""
    return {
        name: long.amount
        for names, count, long, _ in working.charts[0].rows
        for name in names.split(", ")
        if int(count) == len(names.split(", "))
    }


def test_six_tubes_in_a_small_square_worked_by_hand():
    """2 in square, 1/4 in tubes, 1 1/4 in gaps: one every 1 1/2 in, so at 45° the first lies from
    corner to corner, the next 1 1/2 in aside, beyond the corner at √2 in but with its edge 1 3/8 in
    aside: an edge only. Each diagonal tube is 2 √2 in and 2 × 1/2 in of margin; each edge piece
    2 (√2 - 1 3/8) in and the margins."""
    working = work("lattice-panel", width="2 in", depth="2 in", gap="1 1/4 in")
    assert said(working, "pitch") == "1 1/2 in"
    assert said(working, "crossing_spacing") == "1 1/2 in"
    assert working.values["tubes"].amount == 6
    assert working.values["edge_tubes"].amount == 4
    assert working.values["crossings"].amount == 1
    assert working.values["knot_count"].amount == 1
    longest = length(working, "longest_tube").mm
    assert float(longest) == pytest.approx(25.4 * (2 * sqrt(2) + 1), abs=1e-6)
    every = 25.4 * (2 * (2 * sqrt(2) + 1) + 4 * (2 * (sqrt(2) - 1.375) + 1))
    assert float(length(working, "tube_total")) == pytest.approx(every, abs=1e-6)


@pytest.mark.parametrize(
    ("tube", "allowance", "strip"),
    [("1/4 in", None, "1 in"), ("3/16 in", "1/8 in", "5/8 in"), ("3/8 in", None, "1 1/4 in")],
)
def test_a_strip_is_cut_twice_the_tube_and_twice_the_allowance(tube, allowance, strip):
    written = {"tube_width": tube} | ({"tube_allowance": allowance} if allowance else {})
    working = work("lattice-panel", **written)
    assert said(working, "strip_width") == strip
    basis = working.values["seam_in_tube"].basis
    assert basis == (GIVEN if allowance else PRACTICE)


def test_outlines_left_to_their_usual_measures_by_hand():
    """An inset 4 in wide and 2 1/2 in deep is hollowed over 2 in; its depth would be a quarter of
    2 1/2 in, but of 2 in is 1/2 in. A pocket top hangs 4 / 8 in below its sides; one of
    12 in would leave less than half of its depth, so it has half."""
    inset = work("lattice-panel", outline="yoke inset", lower_width="5 in")
    assert said(inset, "hollow_width") == "2 in" and said(inset, "hollow_depth") == "1/2 in"
    assert said(inset, "panel_width") == "5 in"
    pocket = work("lattice-panel", outline="pocket top")
    assert said(pocket, "depth_at_sides") == "2 in"
    wide = work("lattice-panel", outline="pocket top", width="12 in", gap="1 in")
    assert said(wide, "depth_at_sides") == "1 1/4 in"


def test_knots_come_at_all_at_every_second_or_at_no_crossing():
    every = work("lattice-panel", knots="every crossing", knot_clearance="0 in")
    second = work("lattice-panel", knots="alternate crossings", knot_clearance="0 in")
    none = work("lattice-panel", knots="none")
    assert every.values["knot_count"].amount == every.values["crossings"].amount
    assert 0 < second.values["knot_count"].amount < every.values["knot_count"].amount
    assert none.values["knot_count"].amount == 0
    assert any("Catch the tubes to each other" in step for step in steps(none))
    assert "knots-small-parts" in {each.key for each in every.cautions}
    assert "knots-small-parts" not in {each.key for each in none.cautions}


def test_no_knot_is_nearer_to_the_outline_than_asked():
    near = work("lattice-panel", knots="every crossing", knot_clearance="0 in")
    far = work("lattice-panel", knots="every crossing", knot_clearance="3/4 in")
    assert far.values["knot_count"].amount < near.values["knot_count"].amount
    chart = next(each for each in far.charts if "knots" in each.caption)
    downs = [row[0].amount for row in chart.rows]
    assert min(downs) >= inches("3/4")


def test_a_concave_outline_parts_tubes_and_names_the_parts():
    working = work("lattice-panel", outline="polygon", corners=HOLLOW, margin="1/8 in")
    names = list(lengths_by_name(working))
    assert len(names) == len(set(names)) == working.values["tubes"].amount
    assert any(name.endswith("a") for name in names) and any(name.endswith("b") for name in names)


def test_the_polygon_s_place_on_the_paper_does_not_matter():
    moved = "; ".join(f"{Fraction(x) + 3} in, {Fraction(y) + 2} in" for x, y in ARCH)
    one = work("lattice-panel", outline="polygon", corners=HOLLOW)
    other = work("lattice-panel", outline="polygon", corners=moved)
    assert {name: value.amount for name, value in one.values.items()} == {
        name: value.amount for name, value in other.values.items()
    }


def test_a_rectangle_is_the_same_by_its_corners():
    named = work("lattice-panel", width="5 in", depth="3 in")
    corners = work(
        "lattice-panel", outline="polygon", corners="0 in, 0 in; 5 in, 0 in; 5 in, 3 in; 0 in, 3 in"
    )
    assert {n: v.amount for n, v in named.values.items()} == {
        n: v.amount for n, v in corners.values.items()
    }


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        (
            {"gap": "0 in"},
            "gap: 0 in is too small; use at least 1/16 in (2 mm)",
        ),
        (
            {"outline": "polygon"},
            "a polygon needs its corners; write them in order, as in 0 in, 0 in; 4 in, 0 in; 2 in, "
            "3 in",
        ),
        (
            {"outline": "polygon", "corners": "0 in, 0 in; 3 in, 3 in; 3 in, 0 in; 0 in, 3 in"},
            "sides 1 and 3 of the outline cross or touch each other; write each corner once, in "
            "order round the outline",
        ),
        (
            {"outline": "polygon", "corners": "0 in, 0 in; 3 in, 0 in; 3 in, 3 in; 0 in, 0 in"},
            "corners 4 and 1 are the same point; write each corner once, in order round the "
            "outline",
        ),
        (
            {"rising_angle": "10", "falling_angle": "12"},
            "the two sets cross at 22°, too nearly parallel to weave: both angles together are "
            "30° to 150°; use at least 20°, or other angles",
        ),
        (
            {"tube_width": "1/8 in", "tube_allowance": "1/4 in"},
            "tube_allowance 1/4 in is wider than the tube and cannot lie flat in it; use at most "
            "1/8 in (3 mm), or trim it to that after sewing and write that",
        ),
        (
            {"outline": "yoke inset", "neck_width": "5 in"},
            "neck_width 5 in is wider than the inset; use at most its width, 4 in (10.1 cm)",
        ),
        (
            {"outline": "yoke inset", "neck_width": "2 in", "neck_depth": "1 1/2 in"},
            "neck_depth 1 1/2 in is more than a half circle; use at most half of the hollow's "
            "width, 1 in (25 mm)",
        ),
        (
            {"outline": "yoke inset", "depth": "1 in", "neck_width": "3 in", "neck_depth": "1 in"},
            "neck_depth 1 in cuts the inset in two; use less than its depth, 1 in (25 mm)",
        ),
        (
            # At the hollow's deepest level, halfway down, the sides are 8 - 6 / 2 = 5 in apart.
            {
                "outline": "yoke inset",
                "width": "8 in",
                "depth": "6 in",
                "lower_width": "2 in",
                "neck_width": "6 in",
                "neck_depth": "3 in",
            },
            "lower_width 2 in brings the sides into the hollow of the neck; use a neck_width of at "
            "most 5 in (12.7 cm), or a wider lower edge",
        ),
        (
            {"outline": "pocket top", "side_depth": "3 in"},
            "side_depth 3 in is deeper than the middle; use at most the depth, 2 1/2 in (63 mm)",
        ),
    ],
)
def test_what_cannot_be_is_refused_with_the_way_out(written, sentence):
    assert refusal("lattice-panel", **written) == sentence


def test_too_many_tubes_are_refused_with_a_gap_that_does():
    said_no = refusal("lattice-panel", width="16 in", depth="16 in", tube_width="1/8 in",
                      gap="1/16 in")  # fmt: skip
    assert "use a gap of at least" in said_no
    gap = said_no.split("use a gap of at least ")[1].split(" (")[0]
    assert work("lattice-panel", width="16 in", depth="16 in", tube_width="1/8 in", gap=gap)


def test_nothing_that_crosses_inside_is_no_lattice():
    corners = "0 in, 0 in; 4 in, 0 in; 4 in, 4 in; 3 3/4 in, 4 in; 3 3/4 in, 1/4 in; 0 in, 1/4 in"
    assert refusal("lattice-panel", outline="polygon", corners=corners, gap="3 in") == (
        "no two tubes cross inside the outline; make the gap smaller or the panel larger"
    )


sizes = st.integers(8, 48).map(lambda n: inches(Fraction(n, 8)))
angles = st.integers(20, 70).map(Fraction)
outlines = st.sampled_from(["rectangle", "yoke inset", "pocket top"])


slopes = st.tuples(angles, angles)
spacings = st.tuples(st.integers(2, 6), st.integers(6, 16))


@settings(max_examples=40)
@given(outlines, sizes, sizes, slopes, spacings)
def test_lengths_and_crossings_are_shapely_s(kind, width, depth, slope, spacing):
    assume(width.mm * depth.mm < 12 * 25.4**2)
    tube, gap = (inches(Fraction(each, 16)) for each in spacing)
    written = {
        "outline": kind, "width": width, "depth": depth, "rising_angle": slope[0],
        "falling_angle": slope[1], "tube_width": tube, "gap": gap, "margin": "1/2 in",
    }  # fmt: skip
    try:
        working = work("lattice-panel", **written)
    except ValueError:
        assume(False)
        return
    panel = _Asked(outline=kind, width=width, depth=depth)
    centre = float(panel.panel_width) / 2, float(panel.panel_depth) / 2
    theirs = lattice_by_shapely(
        panel.panel_shape, centre, [int(each) for each in slope],
        width=float(tube), gap=float(gap), margin=12.7,
    )  # fmt: skip
    assert working.values["tubes"].amount == len(theirs.lengths)
    assert float(length(working, "tube_total")) == pytest.approx(theirs.total, abs=1e-6)
    assert working.values["crossings"].amount == len(theirs.crossings)


class _Asked(PanelInputs):
    """The outline's inputs alone."""


@settings(max_examples=40)
@given(outlines, sizes, st.integers(2, 6), st.integers(4, 16))
def test_every_tube_is_cut_once_from_a_strip_that_holds_it(kind, width, tube, gap):
    tube_width = inches(Fraction(tube, 16))
    try:
        working = work("lattice-panel", outline=kind, width=width, tube_width=tube_width,
                       gap=inches(Fraction(gap, 16)))  # fmt: skip
    except ValueError:
        assume(False)
        return
    wanted = lengths_by_name(working)
    strips = working.charts[-1]
    cut = [name for row in strips.rows for name in row[2].split(", ")]
    assert sorted(cut) == sorted(wanted)
    for _, good, names, left in strips.rows:
        used = sum(wanted[name].mm for name in names.split(", "))
        assert float(good.amount.mm - used) == pytest.approx(float(left.amount.mm), abs=1e-5)
    area = sum(each.mm for each in wanted.values()) * length(working, "strip_width").mm
    assert area <= length(working, "across").mm * length(working, "along").mm


@given(sizes, angles, angles)
def test_the_spacing_is_the_pitch_over_the_sine(width, rising, falling):
    working = work("lattice-panel", width=width, depth="1 in", rising_angle=rising,
                   falling_angle=falling, gap="1/2 in")  # fmt: skip
    every = float(length(working, "pitch")) / sin(radians(float(rising + falling)))
    assert float(length(working, "crossing_spacing")) == pytest.approx(every, abs=1e-6)


def test_a_wider_gap_never_takes_more_crossings():
    counts = [
        work("lattice-panel", gap=inches(Fraction(n, 16))).values["crossings"].amount
        for n in range(3, 24)
    ]
    assert counts == sorted(counts, reverse=True)


def test_measured_values_say_that_they_were_measured():
    working = work("lattice-panel")
    assert working.values["tube_total"].formula is not None
    assert working.values["rising_total"].basis == DRAWN


def test_the_under_strand_is_interrupted_in_the_drawing():
    """In a panel of one crossing the falling tube lies under: two strokes along each of its edges,
    one along each of the rising tube's; and the outline."""
    working = work("lattice-panel", width="2 in", depth="2 in", gap="1 1/4 in", knots="none")
    shapes = working.pictures[0].scene.shapes
    strokes = [each.points for each in shapes if isinstance(each, Stroke)]
    pairs = [points for points in strokes if len(points) == 2]
    half = 3.175 * sqrt(2)
    rising = [pair for pair in pairs if all(abs(abs(x + y - 50.8) - half) < 1e-6 for x, y in pair)]
    falling = [pair for pair in pairs if all(abs(abs(x - y) - half) < 1e-6 for x, y in pair)]
    assert len(rising) == 2 and len(falling) == 4
    for (x1, y1), (x2, y2) in falling:
        assert max(x1 + y1, x2 + y2) <= 50.8 - half + 1e-6 or min(x1 + y1, x2 + y2) >= (
            50.8 + half - 1e-6
        ), "it runs on under the rising tube"
    faces = [each for each in shapes if isinstance(each, Area)]
    assert {each.tone for each in faces} == {Tone.SHADE, Tone.RIGHT, Tone.SECOND}


def test_a_strand_is_interrupted_exactly_by_the_edges_of_the_one_above():
    """At 60° and 35° every end of a tube's drawn edge lies on the outline or on an edge of a tube
    of the other set."""
    working = work("lattice-panel", rising_angle="60", falling_angle="35", knots="none")
    scene = working.pictures[0].scene
    edges = [each.points for each in scene.shapes
             if isinstance(each, Stroke) and each.line is Line.THIN]  # fmt: skip
    inside = 0
    for edge in edges:
        for end in edge:
            if min(end[0], 101.6 - end[0], end[1], 63.5 - end[1]) < 1e-6:
                continue
            inside += 1
            others = [each for each in edges if not all(on_line(at, each) for at in edge)]
            assert any(on_line(end, other) for other in others)
    assert inside > 40


def on_line(point, line):
    """Whether a point lies on the endless line through two others."""
    (x, y), ((x1, y1), (x2, y2)) = point, line
    across = (x2 - x1) * (y - y1) - (y2 - y1) * (x - x1)
    return abs(across) < 1e-6 * hypot(x2 - x1, y2 - y1)


def test_its_sheet_shows_every_tube_by_name():
    working = work("lattice-panel")
    sheet = next(each.sheet for each in working.pictures if each.sheet is not None)
    notes = {shape.text.template for shape in sheet.shapes if hasattr(shape, "target")}
    assert set(lengths_by_name(working)) <= notes


def test_the_example_that_a_refusal_gives_is_one():
    example = refusal("lattice-panel", outline="polygon").split("as in ")[1]
    assert work("lattice-panel", outline="polygon", corners=example).values["crossings"].amount


def test_tubes_of_one_length_stand_in_one_row():
    """A square panel woven at 45° looks the same from every side: R and F alike."""
    rows = work("lattice-panel", width="3 in", depth="3 in").charts[0].rows
    for names, count, _, _ in rows:
        letters = [name[0] for name in names.split(", ")]
        assert letters.count("R") == letters.count("F") == int(count) / 2
