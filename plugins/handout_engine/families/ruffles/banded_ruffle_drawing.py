"""The cross-section of a banded ruffle, before and after the fold.

The band is what matters here: what is long beside it is shortened at break lines, and the
thickness of the cloth is enlarged.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.breaks import measured
from handout_engine.drawing.scene import (
    Dimension,
    Line,
    Note,
    Point,
    Scene,
    Shape,
    Side,
    Stroke,
    Tone,
)
from handout_engine.drawing.sections import broken, fold, layer

LONGEST = 3.2
"""What is longer than so many times the band (or the seam allowance) is drawn broken."""


@dataclass(frozen=True)
class BandSection:
    """The lengths of the section, each the value that the cut list names."""

    front: Value
    facing: Value
    seam: Value
    band: Value
    finished: Value
    into_band: bool

    @property
    def above(self) -> Value:
        """From the front's raw edge to the seam."""
        return Value("above", "", self.front.length - self.seam.length, self.front.basis)

    @property
    def longest(self) -> float:
        """The longest stretch that is drawn whole, in mm."""
        return LONGEST * max(self.band.mm, self.seam.mm)

    @property
    def seam_at(self) -> float:
        """Where the seam is drawn below the front's raw edge, in mm."""
        return min(self.above.mm, self.longest)

    @property
    def shortened(self) -> bool:
        """Whether the drawing after the fold is broken."""
        return self.seam_at < self.above.mm


def before_the_fold(section: BandSection) -> Scene:
    """Front and facing sewn together and opened flat."""
    return Scene(
        sentence("Cross-section before the fold"),
        sentence(
            "Front and facing sewn together and opened flat; the fold comes {band} beyond "
            "the seam.",
            band=section.band,
        ),
        _opened(section),
    )


def after_the_fold(section: BandSection) -> Scene:
    """The ruffle folded, with its band."""
    lies = "inside the band" if section.into_band else "above the band"
    return Scene(
        sentence("Cross-section after the fold"),
        sentence(
            "{finished} from raw edges to fold; the band shows {band}; the allowance of {seam} "
            "lies {place}.",
            place=lies,
            finished=section.finished,
            band=section.band,
            seam=section.seam,
        ),
        _folded(section),
    )


def _opened(section: BandSection) -> tuple[Shape, ...]:
    """Front and facing sewn together and opened flat, seen at their ends, fold line marked."""
    seam = section.seam_at
    folded_at = seam + section.band.mm
    rest = min(section.finished.mm, section.longest + section.band.mm)
    end = folded_at + rest
    thick = end * 0.013
    allowance = section.seam.mm if section.into_band else -section.seam.mm
    lifts = (1.7 * thick, 3.4 * thick)
    front_end = ((seam, 0.0), (seam, -lifts[0]), (seam + allowance, -lifts[0]))
    facing_end = ((seam, 0.0), (seam, -lifts[1]), (seam + allowance, -lifts[1]))
    front = layer(((0, 0), *front_end), thick, Tone.RIGHT)
    facing = layer(((end, 0), *facing_end), thick, Tone.SECOND)
    shapes: list[Shape] = [front, facing]
    if seam < section.above.mm:
        shapes.extend(broken((seam * 0.45, 0), thick, down=False))
    if rest < section.finished.mm:
        shapes.extend(broken((end - rest * 0.45, 0), thick, down=False))
    return (
        *shapes,
        Stroke(((folded_at, -9 * thick), (folded_at, 3 * thick)), Line.FOLD),
        Stroke(((seam, -5.5 * thick), (seam, 3 * thick)), Line.STITCH),
        Note((0, -1.5 * thick), sentence("front"), anchor="start", above=True),
        Note((end, -1.5 * thick), sentence("facing"), anchor="end", above=True),
        Note((folded_at, -9 * thick), sentence("fold"), above=True),
        measured((0, 0), (seam, 0), section.above, Side.BELOW),
        Dimension((seam, 0), (folded_at, 0), section.band, Side.BELOW),
        measured((folded_at, 0), (end, 0), section.finished, Side.BELOW),
    )


def _folded(section: BandSection) -> tuple[Shape, ...]:
    """The ruffle folded: the facing comes round the fold, the allowance fills the band."""
    seam = section.seam_at
    depth = seam + section.band.mm
    thick = min(depth * 0.022, section.band.mm * 0.12)
    half = max(depth * 0.05, 3.5 * thick)
    round_off = min(half, section.band.mm * 0.25)
    turn = fold((0.0, depth - round_off), half, round_off)
    front, facing = _meeting(section, half, thick)
    shapes: list[Shape] = [
        layer((*facing, *turn, (half, 0.0)), thick, Tone.SECOND),
        layer(((-half, 0.0), *front), thick, Tone.RIGHT),
    ]
    if section.shortened:
        high = (seam - (0.0 if section.into_band else section.seam.mm)) * 0.45
        for x in (-half, half):
            shapes.extend(broken((x, high), thick, down=True))
    return (
        *shapes,
        Stroke(((-half - 2 * thick, seam), (-half + 5 * thick, seam)), Line.STITCH),
        measured((half, 0), (half, depth), section.finished, Side.RIGHT),
        Dimension((-half, seam), (-half, depth), section.band, Side.LEFT),
        measured((-half, 0), (-half, seam), section.above, Side.LEFT),
        *_words(half, depth),
    )


def _meeting(section: BandSection, half: float, thick: float) -> tuple[list[Point], list[Point]]:
    """The ends of front and facing at their seam, with both allowances on the inside.

    Pressed into the band, the facing folds at the seam and the front runs on straight; pressed
    away, it is the other way round.
    """
    seam = section.seam_at
    allowance = min(section.seam.mm, section.band.mm - 1.6 * thick)
    near, far = -half + 1.5 * thick, -half + 3 * thick
    if section.into_band:
        front = [(-half, seam - 3 * thick), (far, seam), (far, seam + allowance)]
        facing = [(near, seam + allowance), (near, seam), (-half, seam)]
        return front, facing
    allowance = section.seam.mm
    front = [(-half, seam), (near, seam), (near, seam - allowance)]
    facing = [(far, seam - allowance), (far, seam), (-half, seam + 3 * thick)]
    return front, facing


def _words(half: float, depth: float) -> Iterable[Shape]:
    yield Note((-3 * half, -0.09 * depth), sentence("front"), (-half, 0.0), "end")
    yield Note((3 * half, -0.09 * depth), sentence("facing"), (half, 0.0), "start")
