"""Clips lines and faces to an upright window, as a large drawing is cut into pages."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import sqrt

from handout_engine.geometry.clipping import clip_turned
from handout_engine.geometry.points import Point, snapped
from handout_engine.geometry.polygons import Polygon


@dataclass(frozen=True)
class Window:
    """An upright rectangle in mm, its edges belonging to it."""

    left: float
    top: float
    right: float
    bottom: float

    @property
    def width(self) -> float:
        """How wide it is."""
        return snapped(self.right - self.left)

    @property
    def height(self) -> float:
        """How high it is."""
        return snapped(self.bottom - self.top)

    @property
    def corners(self) -> Polygon:
        """Its corners, clockwise from the upper left one."""
        return (
            (self.left, self.top),
            (self.right, self.top),
            (self.right, self.bottom),
            (self.left, self.bottom),
        )

    def holds(self, point: Point) -> bool:
        """Whether a point lies in it or on its edge."""
        return self.left <= point[0] <= self.right and self.top <= point[1] <= self.bottom

    def covers(self, other: Window) -> bool:
        """Whether another window lies wholly in it."""
        return self.holds((other.left, other.top)) and self.holds((other.right, other.bottom))

    def meets(self, other: Window) -> bool:
        """Whether the two have a point in common."""
        return (
            self.left <= other.right
            and other.left <= self.right
            and self.top <= other.bottom
            and other.top <= self.bottom
        )

    def shrunk(self, by: float) -> Window:
        """The window with so much taken off at each edge."""
        return Window(self.left + by, self.top + by, self.right - by, self.bottom - by)

    def moved(self, across: float, down: float) -> Window:
        """The window in another place."""
        return Window(
            snapped(self.left + across),
            snapped(self.top + down),
            snapped(self.right + across),
            snapped(self.bottom + down),
        )


@dataclass(frozen=True)
class Run:
    """A stretch of a line inside a window, and how far along the line it begins, in mm."""

    points: tuple[Point, ...]
    start: float


def around(points: Sequence[Point]) -> Window:
    """The smallest window that holds all points."""
    xs, ys = zip(*points, strict=True)
    return Window(min(xs), min(ys), max(xs), max(ys))


def runs_inside(points: Sequence[Point], window: Window) -> list[Run]:
    """The stretches of an open line inside a window, in order along the line.

    A line without length (a dot) is a run of its own where the window holds it.
    """
    runs: list[Run] = []
    open_run: list[Point] = []
    begun = gone = 0.0
    for start, end in pairwise(points):
        length = _length(start, end)
        shares = _shares(start, end, window)
        if shares is not None:
            first, last = shares
            if not open_run or first > 0:
                runs.extend(_closed(open_run, begun))
                open_run, begun = [_between(start, end, first)], gone + first * length
            open_run.append(_between(start, end, last))
        if shares is None or shares[1] < 1:
            runs.extend(_closed(open_run, begun))
            open_run = []
        gone += length
    return [*runs, *_closed(open_run, begun)]


def crosses(start: Point, end: Point, window: Window) -> bool:
    """Whether a straight line has a point in the window."""
    return _shares(start, end, window) is not None


def face_inside(outline: Sequence[Point], window: Window) -> list[Polygon]:
    """The parts of a face inside a window."""
    level = clip_turned(outline, window.top, window.bottom)
    upright = [tuple((y, x) for x, y in part) for part in level]
    parts = [each for part in upright for each in clip_turned(part, window.left, window.right)]
    return [tuple((x, y) for y, x in part) for part in parts]


def _closed(points: Sequence[Point], start: float) -> list[Run]:
    return [Run(tuple(points), snapped(start))] if points else []


def _shares(start: Point, end: Point, window: Window) -> tuple[float, float] | None:
    """From which to which share of a straight line it lies inside; None when it does not.

    Each edge of the window bounds the shares, from below where the line runs inward over it, from
    above where it runs outward.
    """
    first, last = 0.0, 1.0
    across, down = end[0] - start[0], end[1] - start[1]
    for step, room in (
        (-across, start[0] - window.left),
        (across, window.right - start[0]),
        (-down, start[1] - window.top),
        (down, window.bottom - start[1]),
    ):
        if step == 0:
            if room < 0:
                return None
        elif step < 0:
            first = max(first, room / step)
        else:
            last = min(last, room / step)
    return (first, last) if first <= last else None


def _between(start: Point, end: Point, share: float) -> Point:
    if share in {0, 1}:
        return start if share == 0 else end
    return (
        snapped(start[0] + share * (end[0] - start[0])),
        snapped(start[1] + share * (end[1] - start[1])),
    )


def _length(start: Point, end: Point) -> float:
    across, down = end[0] - start[0], end[1] - start[1]
    return sqrt(across * across + down * down)
