"""Cloth folded over itself along a line: where every line lies, flat and finished.

Tucks and pleats are the same to the tape. At some place of the finished width the cloth goes
forth and back by a depth, on the right side (a tuck) or behind (a pleat), and lies to the left or
to the right of that place. On flat cloth that is three lines: a first one, the fold a depth
further, a second one a depth further again.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from handout_engine.amounts.lengths import ZERO, Length, total


class Lie(Enum):
    """To which side of its place folded cloth lies, seen from the right side of the panel."""

    LEFT = -1
    RIGHT = 1


@dataclass(frozen=True)
class Fold:
    """Cloth doubled by `depth` at a place, `at` from the left edge of the finished panel."""

    depth: Length
    at: Length
    lies: Lie


@dataclass(frozen=True)
class FoldLines:
    """The three lines of one fold on flat cloth, each from the left edge."""

    first: Length
    fold: Length
    second: Length

    @property
    def all(self) -> tuple[Length, Length, Length]:
        """The lines from left to right."""
        return self.first, self.fold, self.second


@dataclass(frozen=True)
class Gap:
    """What lies between two folds, or between an edge and a fold, and how much lies over it.

    `before` is the number of the fold before it, 0 at the left edge.
    """

    before: int
    length: Length
    covered: Length

    @property
    def crowded(self) -> bool:
        """Whether what lies over it is wider than the gap itself."""
        return self.covered > self.length


@dataclass(frozen=True)
class FoldedPanel:
    """A panel with its folds in order from left to right; `finished` is its width once folded."""

    finished: Length
    folds: tuple[Fold, ...]

    @property
    def take_up(self) -> Length:
        """How much narrower the folds make the panel."""
        return 2 * total(fold.depth for fold in self.folds)

    @property
    def flat(self) -> Length:
        """The width of the panel before it is folded."""
        return self.finished + self.take_up

    def lines(self) -> tuple[FoldLines, ...]:
        """The lines of every fold on the flat panel."""
        found: list[FoldLines] = []
        taken = ZERO
        for fold in self.folds:
            first = fold.at + taken
            found.append(FoldLines(first, first + fold.depth, first + 2 * fold.depth))
            taken += 2 * fold.depth
        return tuple(found)

    def gaps(self, allowance: Length = ZERO) -> tuple[Gap, ...]:
        """Every gap from the left seam to the right one, `allowance` inside each edge."""
        places = [allowance, *(fold.at for fold in self.folds), self.finished - allowance]
        return tuple(
            Gap(number, places[number + 1] - places[number], self._over(number))
            for number in range(len(self.folds) + 1)
        )

    def _over(self, number: int) -> Length:
        """What lies over the gap behind the fold of that number."""
        over = ZERO
        if number > 0 and self.folds[number - 1].lies is Lie.RIGHT:
            over += self.folds[number - 1].depth
        if number < len(self.folds) and self.folds[number].lies is Lie.LEFT:
            over += self.folds[number].depth
        return over
