"""A sleeve's outline, and its fullness: slit from cap to end, and the slices laid apart.

Half of the sleeve, in mm: the middle at x = 0, the highest point of a cap without gathers at
y = 0. Before it is spread the sleeve is straight: cap and end are level where they meet the seam
under the arm, which is upright. Its slices are many, and none changes its shape: where they lie
apart at the end, the sleeve flares and its cap is flatter; where they overlap there, it tapers and
the cap is higher. So the corners stay square, the cap keeps its length, and so does the middle.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from itertools import pairwise
from math import cos, fsum, hypot, pi, sin

from handout_engine.drafting.curves import Line, bend, run, solved
from handout_engine.drafting.drafts import Draft, Edge
from handout_engine.geometry.points import Point, mirrored, snapped

CAP = bend((0.0, 0.0), (0.45, 0.0), (0.5, 1.0), (1.0, 1.0))
"""Half of a straight sleeve's cap, for a width and a height of 1."""
PLAIN = 1 / 3
"""The share of a cap, next to the seam under the arm, that takes no gathers."""
FLATTEST, STEEPEST = 0.01, 1 / 3
"""The height of a cap before the sleeve is spread, for each unit of its width."""
SHORTEST = 1e-6
"""What is not longer than this, in mm, is nothing."""
MOST_LEAN, LEAST_SHARE = pi / 3, 0.1
"""How far the seam under the arm may lean, and how flat a cap may be, in a sleeve spread wide."""
HALVINGS = 24
"""How often the way to an end that can be worn is halved, to name it in a refusal."""


@dataclass(frozen=True)
class SleeveHalf:
    """Half of a sleeve: its cap and its end, each from the middle to the seam under the arm.

    `gathers` is the point of the cap up to which it is gathered, `lean` the angle by which the
    seam leans outward.
    """

    cap: Line
    end: Line
    gathers: Point
    lean: float

    @property
    def across(self) -> float:
        """The whole sleeve, from corner to corner under the arm."""
        return 2 * self.cap[-1][0]

    @property
    def height(self) -> float:
        """From the corners under the arm to the highest point of the cap."""
        return self.cap[-1][1] - self.cap[0][1]

    @property
    def share(self) -> float:
        """Height of the cap for each unit of the sleeve's width."""
        return self.height / self.across

    @property
    def underarm(self) -> float:
        """The seam under the arm."""
        return run((self.cap[-1], self.end[-1]))

    @property
    def is_wearable(self) -> bool:
        """Whether it is a sleeve still, and no ring."""
        return abs(self.lean) <= MOST_LEAN and self.share >= LEAST_SHARE


@dataclass(frozen=True)
class FlatSleeve:
    """What half of a sleeve is to be before it is drawn.

    `cap` is the length of half its cap without gathers, `reach` its length along the middle
    without what a gathered head rises; `side` is the least seam under the arm and `girth` the least
    that the whole sleeve is wide there. `fullness` says how often the cap goes into the armhole and
    `rise` how far its top is raised for that.
    """

    cap: float
    reach: float
    side: float = 0.0
    girth: float = 0.0
    fullness: float = 1.0
    rise: float = 0.0

    def width(self, share: float) -> float:
        """Half of the straight sleeve whose cap is so high for each unit of its width."""
        return self.cap / _run_of_cap(share)

    def height(self, share: float) -> float:
        """The height of that cap."""
        return 2 * share * self.width(share)

    def straight(self, share: float) -> SleeveHalf:
        """The sleeve whose end is as wide as its body, of a cap so high before it is spread."""
        return self._slit(share, self.rise).spread(0.0)

    def spread(self, share: float, end: float) -> SleeveHalf:
        """The sleeve whose half end is so long.

        Without gathers its cap is then `share` of its width high, or less where the end is so wide
        that it would be too steep before, or the sleeve too narrow. With gathers it is as much
        higher as it is to rise.
        """
        height = self.height(share) + self.rise
        highest = max(share, self._steepest)

        def reached(before: float) -> float:
            half = self._to_end(before, self.rise, end)
            if self.fullness != 1:
                return half.height - height
            return max(half.share - share, self.girth / half.across - 1)

        if reached(highest) <= 0:
            return self._to_end(highest, self.rise, end)
        if reached(FLATTEST) < 0:
            before = solved(reached, 0.0, FLATTEST, highest)
            return self._to_end(before, self.rise, end)
        # Drawn in so far, the cap rises by itself.
        return self._to_end(FLATTEST, self._least_rise(end, height), end)

    def nearest_end(self, share: float, end: float) -> float:
        """The half end nearest to that one with which the sleeve can be worn."""
        good, bad = run(self.straight(share).end), end
        for _ in range(HALVINGS):
            middle = (good + bad) / 2
            wearable = self.spread(share, middle).is_wearable
            good, bad = (middle, bad) if wearable else (good, middle)
        return good

    @property
    def _steepest(self) -> float:
        """The cap that leaves the least seam under it before the sleeve is spread."""
        room = self.reach - self.side
        if self.height(STEEPEST) <= room or self.height(FLATTEST) >= room:
            return STEEPEST
        return solved(self.height, room, FLATTEST, STEEPEST)

    def _least_rise(self, end: float, height: float) -> float:
        """What is left for the top to be raised where slices that overlap raise the cap as well."""

        def reached(rise: float) -> float:
            return self._to_end(FLATTEST, rise, end).height

        if self.rise == 0 or reached(0.0) >= height:
            return 0.0
        return solved(reached, height, 0.0, self.rise)

    def _to_end(self, share: float, rise: float, end: float) -> SleeveHalf:
        slit = self._slit(share, rise)
        return slit.spread(end - slit.end)

    def _slit(self, share: float, rise: float) -> _Slit:
        width, height = self.width(share), self.height(share)
        plain = tuple((x * width, y * height) for x, y in CAP)
        return _Slit(plain, self.reach, self.fullness * self.cap, rise)


@dataclass(frozen=True)
class _Slit:
    """Half of a straight sleeve, slit between the points of its `plain` cap.

    `wanted` is how long the cap becomes by laying its upper slices apart, its top raised by `rise`.
    """

    plain: Line
    reach: float
    wanted: float
    rise: float

    @cached_property
    def gathered(self) -> int:
        """The number of slices, from the middle, that are laid apart for gathers."""
        whole = run(self.plain)
        if self.wanted <= whole + SHORTEST:
            return 0
        return next(n for n in range(1, len(self.plain))
                    if run(self.plain[: n + 1]) >= whole * (1 - PLAIN))  # fmt: skip

    @cached_property
    def raised(self) -> Line:
        """The cap with its top raised, smoothly from where the gathers end."""
        number = self.gathered
        if not number:
            return self.plain
        far = self.plain[number][0]
        return tuple(
            (x, y - (self.rise * (1 + cos(pi * x / far)) / 2 if x < far else 0.0))
            for x, y in self.plain
        )

    @cached_property
    def steps(self) -> Line:
        """How far each slice reaches across and down along the cap."""
        return tuple((far - x, low - y) for (x, y), (far, low) in pairwise(self.raised))

    @cached_property
    def gaps(self) -> tuple[float, ...]:
        """How far beyond each slice the next one lies for the gathers: none where they end."""
        if not self.gathered:
            return (0.0,) * len(self.steps)
        apart = solved(self._run, max(self.wanted, self._run(0.0)), 0.0, 4 * self.wanted)
        return tuple(apart * gap for gap in self._gaps_of_1)

    @cached_property
    def _gaps_of_1(self) -> tuple[float, ...]:
        """The gaps where those in the middle are as wide as their slices.

        They lessen towards the end of the gathers, so that the cap runs on without a corner.
        """
        far = self.plain[self.gathered][0]
        return tuple(
            (wide * (1 - ((x + wide / 2) / far) ** 4) if number < self.gathered else 0.0)
            for number, ((wide, _), (x, _)) in enumerate(zip(self.steps, self.plain, strict=False))
        )

    def _run(self, apart: float) -> float:
        return fsum(
            hypot(wide + apart * gap, down)
            for (wide, down), gap in zip(self.steps, self._gaps_of_1, strict=True)
        )

    @property
    def end(self) -> float:
        """Half of the end when the slices of a gathered head lie apart at the end as well."""
        return self.plain[-1][0] + fsum(self.gaps)

    def spread(self, more: float) -> SleeveHalf:
        """The slices laid apart for the gathers, and at the end by so much more besides."""
        each = more / self.end
        cap, end, lean = [self.raised[0]], [(0.0, self.reach)], 0.0
        for (wide, down), gap, (_, top) in zip(self.steps, self.gaps, self.raised, strict=False):
            across = wide + gap
            turned = across * each / (self.reach - top - down / 2)
            along, aside = cos(lean + turned / 2), sin(lean + turned / 2)
            x, y = cap[-1]
            cap.append((x + across * along + down * aside, y - across * aside + down * along))
            (x, y), across = end[-1], across * (1 + each)
            end.append((x + across * along, y - across * aside))
            lean += turned
        cap, end = ([(snapped(x), snapped(y)) for x, y in line] for line in (cap, end))
        return SleeveHalf(tuple(cap), tuple(end), cap[self.gathered], lean)


def share_for_width(cap: float, half: float) -> float:
    """How high a cap of half that length is for each unit of the width of its straight sleeve.

    Raises ValueError where half the sleeve is as wide as the cap is long, and leaves no cap.
    """
    return solved(_run_of_cap, cap / half, 0.0, cap / half)


def _run_of_cap(share: float) -> float:
    """How long half of a cap is, for each unit of half of its width."""
    return run(tuple((x, 2 * share * y) for x, y in CAP))


def sleeve_draft(half: SleeveHalf, seam: float, *, gathered: bool) -> Draft:
    """The whole sleeve, every edge with the same allowance; with notches where gathers begin."""
    cap, end = half.cap, half.end
    side = (cap[-1], end[-1])
    gathers = (half.gathers, *mirrored((half.gathers,))) if gathered else ()
    edges = (
        Edge("cap", (*mirrored(cap), *cap[1:]), seam),
        Edge("underarm", side, seam),
        Edge("end", (*reversed(end), *tuple(reversed(mirrored(end)))[1:]), seam),
        Edge("underarm, other side", mirrored(side), seam),
    )
    return Draft("sleeve", edges, notches=(cap[0], *gathers))
