"""Cloth folded in the head along creases, with no formula of the engine.

A strip is walked from its left edge to its right one. It starts out to the right and turns about at
every crease, so that after all of them each stretch lies somewhere over the table, facing right or
left. What a tape would measure, and how many layers lie where, is read off the stretches.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from handout_engine.amounts.lengths import Length
from handout_engine.working.workings import Working

PASSED_OVER = "placement"


@dataclass(frozen=True)
class Folded:
    """Where each stretch of the strip lies, in order, each from its start to its end."""

    stretches: tuple[tuple[Fraction, Fraction], ...]

    @property
    def width(self) -> Fraction:
        """From the left raw edge to where the right raw edge has come to lie."""
        return self.stretches[-1][1] - self.stretches[0][0]

    @property
    def cloth(self) -> Fraction:
        """All the cloth that lies on the table, however often folded."""
        return sum((abs(end - start) for start, end in self.stretches), Fraction(0))

    @property
    def layers(self) -> int:
        """How many layers lie over one another where they are thickest."""
        places = sorted({place for stretch in self.stretches for place in stretch})
        return max(self.layers_at((left + right) / 2) for left, right in pairwise(places))

    def layers_at(self, place: Fraction) -> int:
        """How many layers lie over one place."""
        return sum(min(stretch) < place < max(stretch) for stretch in self.stretches)

    def clear_of(self, allowance: Fraction) -> bool:
        """Whether no crease lies beyond the seams, where it would be caught."""
        left, right = self.stretches[0][0] + allowance, self.stretches[-1][1] - allowance
        return all(left <= turned_at <= right for turned_at, _ in self.stretches[1:])


def fold(width: Fraction, creases: Iterable[Fraction]) -> Folded:
    """Fold a strip of that width along creases, each a distance along the flat strip."""
    stretches: list[tuple[Fraction, Fraction]] = []
    walked, place, way = Fraction(0), Fraction(0), 1
    for end in [*creases, width]:
        assert end >= walked, "the creases are not in order"
        stretches.append((place, place + way * (end - walked)))
        walked, place, way = end, stretches[-1][1], -way
    assert len(stretches) % 2, "the strip ends face down"
    return Folded(tuple(stretches))


def sewn_tucks(
    margin: Fraction,
    depths: Sequence[Fraction],
    gaps: Sequence[Fraction],
    last: Fraction,
    to_the_left: Sequence[bool],
) -> Folded:
    """Sew tucks one after another, as they come off the machine, and press each over.

    Pressed to the left, a tuck turns the cloth at its first stitching line and at its fold; pressed
    to the right, at its fold and at its second stitching line.
    """
    creases: list[Fraction] = []
    at = margin
    for depth, gap, left in zip(depths, [*gaps, last], to_the_left, strict=True):
        creases.extend((at, at + depth) if left else (at + depth, at + 2 * depth))
        at += 2 * depth + gap
    return fold(at, creases)


def charted(working: Working, caption: str) -> list[tuple[str, Fraction]]:
    """The lines of a working's marking chart: name and distance from the left edge."""
    (chart,) = [each for each in working.charts if each.caption.startswith(caption)]
    found: list[tuple[str, Fraction]] = []
    for name, distance, _ in chart.rows:
        assert isinstance(name, str) and isinstance(distance, Length)
        found.append((name, distance.mm))
    return found


def folded_by_chart(working: Working, width: str, to_the_left: Sequence[bool] = ()) -> Folded:
    """Fold the flat panel of a working along the lines of its own chart.

    A pleat is turned at its two folds and passes its placement line. Of a tuck's three lines two
    are turned at, depending on how it is pressed: `to_the_left` says so for each.
    """
    lines = charted(working, "Lines to mark")
    if to_the_left:
        rows = [lines[number : number + 3] for number in range(0, len(lines), 3)]
        kept = [row[:2] if left else row[1:] for row, left in zip(rows, to_the_left, strict=True)]
        creases = [distance for row in kept for _, distance in row]
    else:
        creases = [distance for name, distance in lines if PASSED_OVER not in name]
    return fold(working.named[width].length.mm, creases)
