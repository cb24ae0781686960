"""Cross-sections of the fine seams, stage by stage; thicknesses are much enlarged.

Right side of the finished cloth is up. Widths are to scale, so that a French seam whose trimmed
edge nearly fills the second seam looks as tight as it is.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass
from math import cos, pi, sin

from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.scene import (
    Dimension,
    Line,
    Note,
    Point,
    Shape,
    Side,
    Stroke,
    Tone,
)
from handout_engine.drawing.sections import layer

Stage = tuple[str, tuple[Shape, ...]]
"""A caption and what is drawn."""


@dataclass(frozen=True)
class SeamSizes:
    """The named lengths of a seam, as the working notes them."""

    parts: Mapping[str, Value]

    def __getitem__(self, name: str) -> Value:
        """The value of that name."""
        return self.parts[name]

    @property
    def reach(self) -> float:
        """How much of each layer is drawn beyond the seam line."""
        return 1.8 * max(self.parts["first_takes"].mm, self.parts["second_takes"].mm)

    @property
    def thick(self) -> float:
        """Thickness at which a layer is drawn."""
        return max(self.reach * 0.012, min(self.reach * 0.03, self.parts["ridge"].mm * 0.09))

    @property
    def step(self) -> float:
        """From one layer to the next, with air between."""
        return self.thick * 1.9


def seam_stages(kind: str, sizes: SeamSizes) -> tuple[Stage, ...]:
    """The stages of a seam of that kind, in sewing order."""
    return tuple(_STAGES[kind](sizes))


def _needle(x: float, top: float, bottom: float, room: float) -> Stroke:
    return Stroke(((x, top - room), (x, bottom + room)), Line.STITCH)


def _two(sizes: SeamSizes, first: Sequence[Point], second: Sequence[Point]) -> tuple[Shape, ...]:
    """Both layers, the second tinted so that each can be followed."""
    return (
        layer(second, sizes.thick, Tone.SECOND),
        layer(first, sizes.thick, Tone.RIGHT),
    )


def _together(sizes: SeamSizes, at: str, trim: str = "") -> tuple[Shape, ...]:
    """Two layers one on the other, raw edges level at the right, sewn `at` from them."""
    step, line = sizes.step, -sizes[at].mm
    made: list[Shape] = [
        *_two(sizes, ((-sizes.reach, 0), (0, 0)), ((-sizes.reach, step), (0, step))),
        _needle(line, 0, step, 1.5 * step),
        Dimension((line, step), (0, step), sizes[at], Side.BELOW),
    ]
    if trim:
        cut = line + sizes[trim].mm
        made.append(Stroke(((cut, -0.8 * step), (cut, 1.8 * step)), Line.CUT))
        made.append(Dimension((line, 0), (cut, 0), sizes[trim], Side.ABOVE))
    return tuple(made)


def _plain(sizes: SeamSizes) -> Iterable[Stage]:
    allowance, reach, step = sizes["first_takes"].mm, sizes.reach, sizes.step
    yield "Right sides together, sewn.", _together(sizes, "first_takes")
    yield (
        "Pressed open.",
        (
            *_two(
                sizes,
                ((-reach, 0), (-step / 3, 0), (-step / 3, step), (-allowance, step)),
                ((reach, 0), (step / 3, 0), (step / 3, step), (allowance, step)),
            ),
            _needle(0, 0, step, 0),
            Dimension((-allowance, step), (allowance, step), sizes["ridge"], Side.BELOW),
        ),
    )


def _french(sizes: SeamSizes) -> Iterable[Stage]:
    trim, second = sizes["trimmed"].mm, sizes["french_second"].mm
    reach, step = sizes.reach, sizes.step
    yield (
        "Wrong sides together, sewn; the allowances are trimmed on the thick line.",
        _together(sizes, "french_first", "trimmed"),
    )
    yield (
        "Turned right sides together, the first seam on the fold, and sewn again.",
        (
            *_two(
                sizes,
                ((-reach, 0), (0, 0), (0, step), (-trim, step)),
                ((-reach, 3 * step), (0, 3 * step), (0, 2 * step), (-trim, 2 * step)),
            ),
            _needle(-second, 0, 3 * step, 1.5 * step),
            Dimension((-second, 3 * step), (0, 3 * step), sizes["french_second"], Side.BELOW),
        ),
    )
    yield (
        "Opened flat, the closed ridge pressed to one side.",
        (
            *_two(
                sizes,
                (
                    (-reach, 0),
                    (0, 0),
                    (0, 4 * step),
                    (second, 4 * step),
                    (second, 3 * step),
                    (second - trim, 3 * step),
                ),
                (
                    (reach, 0),
                    (step, 0),
                    (step, step),
                    (second, step),
                    (second, 2 * step),
                    (second - trim, 2 * step),
                ),
            ),
            Dimension((0, 4 * step), (second, 4 * step), sizes["french_second"], Side.BELOW),
        ),
    )


def _fell(sizes: SeamSizes) -> Iterable[Stage]:
    width, turn = sizes["fell_width"].mm, sizes["turned"].mm
    reach, step = sizes.reach, sizes.step
    yield (
        "Sewn; one allowance will be trimmed, the other folded in.",
        (
            *_together(sizes, "first_takes"),
            Note(
                (-sizes["first_takes"].mm + width / 2, -2.6 * step),
                sentence("trim here"),
                (-sizes["first_takes"].mm + width / 2, 0),
            ),
        ),
    )
    yield (
        "Opened flat, the folded allowance over the trimmed one, stitched down.",
        (
            *_two(
                sizes,
                (
                    (-reach, 0),
                    (0, 0),
                    (0, 3 * step),
                    (width, 3 * step),
                    (width, 2 * step),
                    (width - turn + step / 2, 2 * step),
                ),
                ((reach, 0), (step, 0), (step, step), (width / 2, step)),
            ),
            _needle(width - step, 0, 3 * step, step / 2),
            _needle(step / 2, 0, 2 * step, step / 2),
            Dimension((0, 3 * step), (width, 3 * step), sizes["fell_width"], Side.BELOW),
        ),
    )


def _rolled(sizes: SeamSizes) -> Iterable[Stage]:
    taken, reach, step = sizes["roll"].mm, sizes.reach, sizes.step
    yield (
        "One edge: the roll takes this much of the cloth.",
        (
            layer(((-reach, 0), (0, 0)), sizes.thick, Tone.RIGHT),
            _needle(-taken, 0, 0, 1.5 * step),
            Dimension((-taken, 0), (0, 0), sizes["roll"], Side.BELOW),
        ),
    )
    radius = taken / 4
    yield (
        "Two rolled edges whipped together, side by side.",
        (
            layer(_curl(-reach, radius, -1), sizes.thick, Tone.RIGHT),
            layer(_curl(reach, radius, 1), sizes.thick, Tone.SECOND),
            Stroke(((-radius, 2 * radius + step), (radius, -step)), Line.STITCH),
            Stroke(((radius, 2 * radius + step), (-radius, -step)), Line.STITCH),
            Dimension(
                (-2 * radius, 2 * radius), (2 * radius, 2 * radius), sizes["ridge"], Side.BELOW
            ),
        ),
    )


def _curl(start: float, radius: float, way: int) -> list[Point]:
    """A layer that comes in from `start` and rolls under itself once round."""
    turns = [pi * 2 * part / 24 for part in range(23)]
    centre = way * radius
    return [
        (start, 0.0),
        *(
            (
                centre - way * radius * (1 - turn / 25) * sin(turn),
                radius - radius * (1 - turn / 25) * cos(turn),
            )
            for turn in turns
        ),
    ]


def _pin(sizes: SeamSizes) -> Iterable[Stage]:
    turn, lap = sizes["pin_turn"].mm, sizes["pin_lap"].mm
    reach, step = sizes.reach, sizes.step
    path = ((-reach, 0), (0, 0), (0, step), (-turn, step))
    shared: tuple[Shape, ...] = (
        *_two(sizes, path, ((-lap, 2 * step), (reach, 2 * step))),
        Dimension((-lap, 2 * step), (0, 2 * step), sizes["pin_lap"], Side.BELOW),
        Dimension((-turn, 0), (0, 0), sizes["pin_turn"], Side.ABOVE),
    )
    yield "The folded edge laid over the lower layer.", shared
    left = -1.5 * step
    yield (
        "Pin stitched along the fold and trimmed beneath.",
        (
            *_two(
                sizes,
                ((-reach, 0), (0, 0), (0, step), (left, step)),
                ((left, 2 * step), (reach, 2 * step)),
            ),
            _needle(step / 2, step, 2 * step, step),
            _needle(-step, 0, 2 * step, step),
        ),
    )


_STAGES: Mapping[str, Callable[[SeamSizes], Iterable[Stage]]] = {
    "plain": _plain,
    "French": _french,
    "flat fell": _fell,
    "rolled and whipped": _rolled,
    "rolled and whipped gathers": _rolled,
    "pin stitch": _pin,
}
