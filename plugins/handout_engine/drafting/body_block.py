"""The body block's corners, and the lines between them: necklines, armhole.

The centre is at x = 0 and the point where the neck meets the shoulder at y = 0.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from math import acos, atan, cos, fsum, hypot, pi, sin, tan

from handout_engine.drafting.curves import Line, bend, between, run, straight_and_arc
from handout_engine.geometry.points import Point, snapped

ROUND = 0.55
"""How far the guide of a curve reaches towards its corner: near to a quarter of an ellipse."""
UNDER = 0.85
"""The same, for the part of an armhole that lies under the arm, as a share of its width."""
TIGHTEST = 10.0
"""The radius in mm below which no back neck turns; a wide allowance asks for a larger one."""
FLAT_UP_TO = 0.7
"""The share of the deepest back neck that an arc can reach, up to which it is one."""


@dataclass(frozen=True)
class BodyBlock:
    """The corners of the block in mm; the lines between them are made from these.

    `tightest` is the radius that the back neck is not to fall below, `lean` how far the side leans
    outward below the underarm, as an angle.
    """

    quarter: float
    neck_half: float
    front_neck: float
    back_neck: float
    shoulder: Point
    depth: float
    tightest: float = TIGHTEST
    lean: float = 0.0

    @property
    def neck_point(self) -> Point:
        """Where the neck meets the shoulder."""
        return (self.neck_half, 0.0)

    @property
    def underarm(self) -> Point:
        """Where the armhole meets the side."""
        return (self.quarter, self.depth)

    @cached_property
    def front_neckline(self) -> Line:
        """From the centre front to the neck point."""
        return self._curved_neckline(self.front_neck)

    @cached_property
    def back_neckline(self) -> Line:
        """From the centre back to the neck point: nearly straight, with a round end.

        A shallow one is a level line and an arc, since a curve all the way would turn too tightly
        below the neck point. The deeper it is, the more it is curved like the front.
        """
        (half, _), (end, drop), depth = self.neck_point, self.shoulder, self.back_neck
        # By what angle a level line turns until it is square to the shoulder, and how deep the
        # arc that does so is if it begins at the fold.
        square = pi / 2 - atan(drop / (end - half))
        deepest = half * tan(square / 2)
        curved = min(1.0, max(0.0, (depth / deepest - FLAT_UP_TO) / (1 - FLAT_UP_TO)))
        if curved == 1:
            return self._curved_neckline(depth)
        turn = min(square, acos(1 - min(1.0, depth / self.tightest)))
        flat = straight_and_arc((0.0, depth), self.neck_point, turn)
        return between(flat, self._curved_neckline(depth), curved) if curved else flat

    def _curved_neckline(self, depth: float) -> Line:
        """Level at the fold and square to the shoulder, so that front and back join smoothly."""
        (half, _), (end, drop) = self.neck_point, self.shoulder
        along = hypot(end - half, drop)
        aside, down = -drop / along, (end - half) / along
        reach = ROUND * depth
        return bend(
            (0.0, depth),
            (ROUND * half, depth),
            (half + aside * reach, down * reach),
            self.neck_point,
        )

    @cached_property
    def armhole(self) -> Line:
        """From the end of the shoulder down to the underarm; square to both seams there."""
        (x, y), (side, low) = self.shoulder, self.underarm
        down = (low - y) * ROUND
        slope = y / (x - self.neck_half)
        towards = (x - slope * down, y + down)
        reach = (side - x) * UNDER
        onward = (side - reach * cos(self.lean), low + reach * sin(self.lean))
        return bend(self.shoulder, towards, onward, self.underarm)

    @property
    def neckline(self) -> float:
        """Once round the neck."""
        return snapped(2 * fsum((run(self.front_neckline), run(self.back_neckline))))
