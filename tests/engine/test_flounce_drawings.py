"""Drawings of flounces and bent ruffles, held against the measures that they stand for."""

from itertools import pairwise
from math import hypot, pi

import pytest

from handout_engine.drawing.scene import Area, Line, Scene, Stroke, Tone
from handout_engine.families.ruffles.flounces import arc
from worked import work


def cut_lines(scene: Scene) -> list[Stroke]:
    return [each for each in scene.shapes if isinstance(each, Stroke) and each.line is Line.CUT]


def faces(scene: Scene, tone: Tone) -> list[Area]:
    return [each for each in scene.shapes if isinstance(each, Area) and each.tone is tone]


@pytest.mark.parametrize("depth", ["1/2 in", "2 in", "6 in"])
def test_a_flounce_hangs_as_deep_as_it_is_and_as_long_as_its_edge(depth: str):
    flounce = work("circular-flounce", depth=depth, edge="12 in")
    hem = max(cut_lines(flounce.pictures[0].scene), key=lambda line: len(line.points))
    deep = flounce.named["depth"].mm
    assert all(0.8 * deep < y < 1.2 * deep for _, y in hem.points)
    xs = [x for x, _ in hem.points]
    assert xs == sorted(xs)


def test_a_fuller_hem_swings_more():
    def swing(turn: str) -> float:
        scene = work("circular-flounce", turn=turn).pictures[0].scene
        hem = max(cut_lines(scene), key=lambda line: len(line.points))
        heights = [y for _, y in hem.points]
        return max(heights) - min(heights)

    assert swing("360 deg") > swing("90 deg") > 0


def test_only_a_ring_that_is_cut_open_is_drawn_with_a_slit():
    open_ring, closed_ring = (
        work("circular-flounce", ends=ends).pictures[1].scene for ends in ("open", "closed")
    )
    assert faces(open_ring, Tone.GROUND) == []
    assert len(faces(closed_ring, Tone.GROUND)) == 1


@pytest.mark.parametrize("curve", ["convex", "hollow"])
def test_a_bent_ruffle_reaches_from_its_edge_to_its_hem(curve: str):
    ruffle = work("outline-ruffle", edge="30 in", depth="2 in", turning="300 deg", curve=curve)
    scene = ruffle.pictures[0].scene
    radius = ruffle.named["edge"].mm / (300 * pi / 180)
    deep = ruffle.named["depth"].mm
    way = 1 if curve == "convex" else -1
    cloth = faces(scene, Tone.RIGHT)[0].points
    reached = sorted(way * (hypot(*point) - radius) / deep for point in cloth)
    assert reached[0] == pytest.approx(0, abs=1e-6)
    assert 1.0 < reached[-1] < 1.2
    hem = max(cut_lines(scene), key=lambda line: len(line.points)).points
    way_round = sum(hypot(x2 - x1, y2 - y1) for (x1, y1), (x2, y2) in pairwise(hem))
    assert way_round >= 0.97 * ruffle.named["hem_line"].mm


def test_both_edges_of_a_ruffle_hemmed_twice_show_their_stitching():
    scene = work("centre-gathered-ruffle", edge="4 in").pictures[0].scene
    rows = [each for each in scene.shapes if isinstance(each, Stroke) and each.line is Line.STITCH]
    sides = {0 if abs(y) < 1e-6 else (1 if y > 0 else -1) for row in rows for _, y in row.points}
    assert sides == {-1, 0, 1}


@pytest.mark.parametrize("radius", [20.0, 146.0, 300.0, 770.0])
def test_a_large_arc_is_drawn_as_finely_as_it_is_cut(radius):
    """Printed at true scale, no straight step of it is a tenth of a millimetre beside the arc."""
    points = arc(radius, 250)
    lowest = min(hypot((x1 + x2) / 2, (y1 + y2) / 2) for (x1, y1), (x2, y2) in pairwise(points))
    assert radius - lowest < 0.06
