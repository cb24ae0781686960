"""Lines and faces clipped to windows, by hand and against another library."""

from itertools import pairwise
from math import hypot
from random import Random

import pytest
from shapely import LineString, Polygon, box
from shapely.ops import unary_union

from handout_engine.geometry.windows import Window, around, face_inside, runs_inside
from random_outlines import outline

WINDOW = Window(0, 0, 100, 50)


def test_a_line_that_passes_through_by_hand():
    """From 20 mm left of the window to 20 mm right of it: it comes in after 20 mm."""
    (run,) = runs_inside(((-20, 10), (120, 10)), WINDOW)
    assert run.points == ((0, 10), (100, 10)) and run.start == 20


def test_a_line_that_leaves_and_comes_back_by_hand():
    """Down over the lower edge at (30, 50), back over it at (60, 50): 40 + 10 + 30 + 10 mm on."""
    line = ((30.0, 10.0), (30.0, 60.0), (60.0, 60.0), (60.0, 20.0))
    first, second = runs_inside(line, WINDOW)
    assert first.points == ((30, 10), (30, 50)) and first.start == 0
    assert second.points == ((60, 50), (60, 20)) and second.start == 40 + 10 + 30 + 10


def test_a_line_inside_is_left_as_it_is():
    line = ((0.0, 0.0), (100.0, 50.0), (10.0, 5.0))
    (run,) = runs_inside(line, WINDOW)
    assert run.points == line and run.start == 0


def test_a_line_outside_leaves_nothing():
    assert runs_inside(((-5, -5), (-5, 60), (120, 60)), WINDOW) == []


def test_a_window_around_points_and_what_it_holds():
    window = around(((3, 4), (-1, 9)))
    assert window == Window(-1, 4, 3, 9)
    assert (window.width, window.height) == (4, 5)
    assert window.covers(window) and window.meets(window.moved(4, 0))
    assert not window.meets(window.moved(4.1, 0)) and not window.covers(window.moved(0.1, 0))


@pytest.mark.parametrize("seed", range(150))
def test_runs_and_faces_against_another_library(seed):
    random = Random(seed)
    points = outline(random)
    while not Polygon(points).is_valid:
        points = outline(random)
    left, top = random.uniform(-30, 150), random.uniform(-30, 150)
    window = Window(left, top, left + random.uniform(5, 150), top + random.uniform(5, 150))
    frame = box(window.left, window.top, window.right, window.bottom)
    line = LineString((*points, points[0]))
    runs = runs_inside((*points, points[0]), window)
    length = sum(hypot(b[0] - a[0], b[1] - a[1]) for run in runs for a, b in pairwise(run.points))
    assert length == pytest.approx(line.intersection(frame).length, abs=1e-6)
    for run in runs:
        assert all(frame.buffer(1e-6).contains(LineString([p, p])) for p in run.points)
        there = line.interpolate(run.start)
        assert hypot(there.x - run.points[0][0], there.y - run.points[0][1]) < 1e-6
    parts = [Polygon(part) for part in face_inside(points, window)]
    wanted = Polygon(points).intersection(frame)
    assert sum(part.area for part in parts) == pytest.approx(wanted.area, abs=1e-4)
    if parts:
        together = unary_union([part.buffer(0) for part in parts])
        assert together.symmetric_difference(wanted).area < 1e-4
