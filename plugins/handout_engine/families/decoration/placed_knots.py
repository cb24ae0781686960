"""Knots and bullions in their places: on a line, on a grid, or at chosen points."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from itertools import pairwise
from math import hypot

from handout_engine.amounts.declaring import check, drafted, value
from handout_engine.amounts.expressions import unheard
from handout_engine.amounts.inputs import (
    SEWING,
    choice,
    fine_length,
    length,
    optional_count,
    optional_length,
    optional_places,
)
from handout_engine.amounts.lengths import ZERO, Length, Place, from_float, total
from handout_engine.amounts.naming import constant
from handout_engine.amounts.numbers import Count, larger, whole
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Saying
from handout_engine.amounts.sources import DRAWN, GIVEN, PRACTICE
from handout_engine.working.technique import Technique

KNOTS, BULLIONS = "knots", "bullions"
LINE, GRID, STAGGERED, POINTS = "a line", "a grid", "a staggered grid", "chosen points"
MOST_POINTS, MOST_KNOTS = 60, 1500
USUAL_WRAPS = {
    KNOTS: constant("usual wraps of a knot", Count(2), PRACTICE),
    BULLIONS: constant("usual wraps of a bullion", Count(7), PRACTICE),
}


class PlacedKnots(Technique):
    """Where knots lie, and the thread that runs between them."""

    kind = choice("kind", "Round knots, or longer bullions.", KNOTS, BULLIONS)
    arrangement = choice("arrangement", "How they lie.", LINE, GRID, STAGGERED, POINTS)
    run = length(
        "length", "From the first knot of a line to its last.", "6 in", ("1/4 in", "60 in")
    )
    height = length(
        "height", "On a grid, from the first line to the last.", "2 in", ("1/4 in", "60 in")
    )
    spacing = length(
        "spacing",
        "From knot to knot; changed a little so that it comes out whole.",
        "1/2 in",
        ("1/16 in", "20 in"),
        basis=PRACTICE,
    )
    points = optional_places(
        "points",
        "Chosen points, each as across, down, in the order of working.",
        "a line or a grid is worked",
        ("0 in", "30 in"),
        (1, MOST_POINTS),
    )
    wraps = optional_count(
        "wraps",
        "How often the thread goes round the needle.",
        "2 for a knot, 7 for a bullion, common practice",
        40,
        group=SEWING,
        in_use="turns",
    )
    needle = fine_length(
        "needle",
        "Its thickness where the thread is wrapped.",
        "0.8 mm",
        ("0.3 mm", "3 mm"),
        group=SEWING,
        basis=PRACTICE,
    )
    thread = fine_length(
        "thread",
        "Its thickness as it is worked, all strands together.",
        "0.5 mm",
        ("0.1 mm", "3 mm"),
        group=SEWING,
        basis=PRACTICE,
    )
    sample_thread = optional_length(
        "sample, thread",
        "How much thread the sample took, with the way between.",
        "the thread is reckoned from the wraps",
        ("1/2 in", "10 yd"),
        group=SEWING,
    )

    def label_of(self, label: str) -> str:
        """A label as it is for this kind and arrangement."""
        chosen = self.arrangement == POINTS
        between = "from point to point, in their order" if chosen else "from knot to knot"
        return label.format(
            size="length of a bullion" if self.kind == BULLIONS else "thickness of a knot, about",
            between=between + (", at most" if self.on_a_grid else ""),
            found="from the sample" if self.sample_thread is not None else "an estimate",
        )

    @value("wraps round the needle")
    def turns(self) -> Count:
        """As asked for, or as is usual for the kind."""
        return USUAL_WRAPS[self.kind] if self.wraps is None else self.wraps

    @value("{size}", saying=Saying.FINE)
    def size(self) -> Length:
        """A bullion lies along its wraps; a knot is the needle's hole with thread on both sides."""
        if self.kind == BULLIONS:
            return self.turns * self.thread
        return self.needle + 2 * self.thread

    @value("spaces along a line")
    def spaces(self) -> Count | None:
        """The whole number of spaces that comes nearest to what was asked for."""
        return None if self.arrangement == POINTS else self._spaces(self.run, "run")

    def _spaces(self, along: Length, field: str) -> Count:
        with unheard():
            if along / self.spacing > MOST_KNOTS:
                raise RefusalError(
                    f"{field} {TAPE.both(along)} takes more than {MOST_KNOTS} knots; set them at "
                    f"least {TAPE.no_less(along / MOST_KNOTS)} apart",
                    "spacing",
                )
        nearest = (along / self.spacing + Fraction(1, 2)).rounded_down()
        return larger(nearest, whole(1))

    @value("from knot to knot")
    def true_spacing(self) -> Length | None:
        """The spacing that comes out whole."""
        return None if self.spaces is None else self.run / self.spaces

    @value("knots in a line")
    def columns(self) -> Count | None:
        """One more than spaces."""
        return None if self.spaces is None else self.spaces + 1

    @value("spaces down")
    def row_spaces(self) -> Count | None:
        """As along a line."""
        return self._spaces(self.height, "height") if self.on_a_grid else None

    @property
    def on_a_grid(self) -> bool:
        """Whether they lie in rows."""
        with unheard():
            return self.arrangement in {GRID, STAGGERED}

    @value("rows")
    def rows(self) -> Count | None:
        """One more than spaces."""
        return None if self.row_spaces is None else self.row_spaces + 1

    @value("from row to row")
    def true_row_spacing(self) -> Length | None:
        """The spacing of the rows that comes out whole."""
        return None if self.row_spaces is None else self.height / self.row_spaces

    @value("shorter rows")
    def short_rows(self) -> Count | None:
        """Staggered, every second row lies between and has one knot fewer."""
        if self.rows is None or self.arrangement != STAGGERED:
            return None
        return (self.rows / 2).rounded_down()

    @value("knots", basis=GIVEN)
    def knots(self) -> Count:
        """The points that are given, or what the lines hold."""
        if self.columns is None:
            return Count(len(self._given_points))
        if self.rows is None:
            return self.columns
        every = self.columns * self.rows
        return every if self.short_rows is None else every - self.short_rows

    @property
    def _given_points(self) -> tuple[Place, ...]:
        if self.points is None:
            raise RefusalError(
                "chosen points are not given; write them as across, down; across, down", "points"
            )
        return self.points

    @check
    def there_is_room_for_each(self) -> None:
        """Refuse neighbours that would lie on one another."""
        for apart, field in self._nearest():
            if apart < self.size:
                raise RefusalError(
                    f"{field} brings two of them {TAPE.say(apart, Saying.FINE)} apart, and each is "
                    f"{TAPE.say(self.size, Saying.FINE)} long or thick; set them at least so far "
                    "apart, or use finer thread or fewer wraps",
                    field,
                )

    def _nearest(self) -> Iterator[tuple[Length, str]]:
        """How far neighbours lie apart, with the input that decides it."""
        if self.true_spacing is None:
            points = self._given_points
            yield from (
                (_apart(one, other), "points")
                for place, one in enumerate(points)
                for other in points[:place]
            )
            return
        yield self.true_spacing, "spacing"
        if self.true_row_spacing is not None and self.arrangement == GRID:
            yield self.true_row_spacing, "spacing"

    @check
    def they_can_be_counted(self) -> None:
        """Refuse more knots than anyone works in one go."""
        every = self.columns * (self.rows or 1) if self.columns is not None else self.knots
        if every > MOST_KNOTS:
            raise RefusalError(
                f"{every} knots are more than {MOST_KNOTS}; set them further apart, or work the "
                "area in parts",
                "spacing",
            )

    @drafted
    def laid(self) -> tuple[Place, ...]:
        """Where they lie, in the order of working."""
        if self.true_spacing is None or self.columns is None:
            return self._given_points
        if self.rows is None or self.true_row_spacing is None:
            return tuple(Place(self.true_spacing * each, ZERO) for each in range(self.columns))
        places: list[Place] = []
        for row in range(self.rows):
            shifted = self.short_rows is not None and row % 2
            start = self.true_spacing / 2 if shifted else ZERO
            places.extend(
                Place(self.true_spacing * column + start, self.true_row_spacing * row)
                for column in range(self.columns - (1 if shifted else 0))
            )
        return tuple(places)

    @value("thread {between}", basis=DRAWN)
    def travel(self) -> Length:
        """Along every line, or from point to point in their order."""
        if self.spaces is None:
            return total(_apart(one, other) for one, other in pairwise(self.laid))
        return self.run if self.rows is None else self.rows * self.run + self.height


def _apart(one: Place, other: Place) -> Length:
    return from_float(hypot(float(one.across - other.across), float(one.down - other.down)))
