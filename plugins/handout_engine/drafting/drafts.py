"""A drafted piece: its edges in order round it, each with its name and its allowance.

The edges together are the line the piece is sewn on; the line it is cut on lies outside it by each
edge's allowance. All is in mm, x to the right and y downward, the lengthwise grain upright.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property
from itertools import pairwise

from handout_engine.drafting.allowances import TurnedUp, outside
from handout_engine.drafting.curves import Line, run
from handout_engine.geometry.points import Point
from handout_engine.geometry.polygons import Polygon

FOLD = "fold"


@dataclass(frozen=True)
class Edge:
    """One edge of a piece, from corner to corner; `allowance` is what is cut beyond it, in mm.

    What is cut beyond an edge that is `turned_up` comes to lie on the piece.
    """

    name: str
    points: Line
    allowance: float = 0.0
    turned_up: bool = False

    @property
    def length(self) -> float:
        """How long it is on the line that is sewn."""
        return run(self.points)


@dataclass(frozen=True)
class Draft:
    """A piece as it is drafted; where it has an edge called fold, it is half of what is cut.

    Each edge begins where the one before it ends. `notches` lie on edges that must meet others;
    `remark` is a sentence that is said beneath its drawing. A `slit` runs from the raw edge to its
    closed end.
    """

    name: str
    edges: tuple[Edge, ...]
    notches: tuple[Point, ...] = ()
    remark: str = ""
    slit: Line = ()

    @property
    def on_fold(self) -> bool:
        """Whether it is cut on the fold."""
        return any(edge.name == FOLD for edge in self.edges)

    def edge(self, name: str) -> Edge:
        """The edge of that name; raises KeyError when there is none."""
        for edge in self.edges:
            if edge.name == name:
                return edge
        raise KeyError(name)

    @cached_property
    def seam_outline(self) -> Polygon:
        """The closed line it is sewn on."""
        return tuple(point for edge in self.edges for point in edge.points[:-1])

    @cached_property
    def cut_outline(self) -> Polygon:
        """The closed line it is cut on."""
        allowances = [edge.allowance for edge in self.edges for _ in pairwise(edge.points)]
        return outside(self.seam_outline, allowances, tuple(self._turned_up()))

    def _turned_up(self) -> Iterator[TurnedUp]:
        """The edges that are turned up; at a fold, or beside each other, no cut line turns."""
        first = 0
        for number, edge in enumerate(self.edges):
            after = first + len(edge.points) - 1
            if edge.turned_up:
                before, behind = self.edges[number - 1], self.edges[(number + 1) % len(self.edges)]
                yield TurnedUp(first, after, (_turns(before), _turns(behind)))
            first = after


def _turns(neighbour: Edge) -> bool:
    return neighbour.name != FOLD and not neighbour.turned_up
