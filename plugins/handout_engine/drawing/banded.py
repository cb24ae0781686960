"""The cross-section of a banded ruffle, before and after the fold."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

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
from handout_engine.drawing.sections import fold, layer
from handout_engine.values import Value, sentence


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
    def seam_at(self) -> float:
        """Where the seam lies, in mm below the front's raw edge."""
        return self.front.mm - self.seam.mm


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
    end = seam + section.facing.mm - section.seam.mm
    thick = end * 0.012
    allowance = section.seam.mm if section.into_band else -section.seam.mm
    lifts = (1.3 * thick, 2.6 * thick)
    front_end = ((seam, 0.0), (seam, -lifts[0]), (seam + allowance, -lifts[0]))
    facing_end = ((seam, 0.0), (seam, -lifts[1]), (seam + allowance, -lifts[1]))
    folded_at = seam + section.band.mm
    return (
        layer(((0, 0), *front_end), thick, Tone.RIGHT),
        layer(((end, 0), *facing_end), thick, Tone.SECOND),
        Stroke(((folded_at, -6 * thick), (folded_at, 3 * thick)), Line.FOLD),
        Stroke(((seam, -4 * thick), (seam, 2 * thick)), Line.STITCH),
        Note((seam / 2, -3 * thick), sentence("front")),
        Note(((folded_at + end) / 2, -3 * thick), sentence("facing")),
        Note((folded_at, -9 * thick), sentence("fold")),
        Dimension((0, 0), (seam, 0), _difference(section.front, section.seam), Side.BELOW),
        Dimension((seam, 0), (folded_at, 0), section.band, Side.BELOW, 2),
        Dimension((folded_at, 0), (end, 0), section.finished, Side.BELOW),
    )


def _difference(whole: Value, part: Value) -> Value:
    return Value(whole.name, whole.label, whole.length - part.length, whole.basis)


def _folded(section: BandSection) -> tuple[Shape, ...]:
    """The ruffle folded: the facing comes round the fold, the allowance fills the band."""
    depth, seam = section.finished.mm, section.seam_at
    thick = min(depth * 0.02, section.band.mm * 0.12)
    half = max(depth * 0.06, 3.5 * thick)
    round_off = min(half, section.band.mm * 0.25)
    turn = fold((0.0, depth - round_off), half, round_off)
    front, facing = _meeting(section, half, thick)
    return (
        layer((*facing, *turn, (half, 0.0)), thick, Tone.SECOND),
        layer(((-half, 0.0), *front), thick, Tone.RIGHT),
        Stroke(((-half - 2 * thick, seam), (-half + 5 * thick, seam)), Line.STITCH),
        *_words(section, half),
    )


def _meeting(section: BandSection, half: float, thick: float) -> tuple[list[Point], list[Point]]:
    """The ends of front and facing at their seam, with both allowances on the inside.

    Pressed into the band, the facing folds at the seam and the front runs on straight; pressed
    away, it is the other way round.
    """
    seam = section.seam_at
    allowance = min(section.seam.mm, section.finished.mm - seam - 1.6 * thick)
    near, far = -half + 1.5 * thick, -half + 3 * thick
    if section.into_band:
        front = [(-half, seam - 3 * thick), (far, seam), (far, seam + allowance)]
        facing = [(near, seam + allowance), (near, seam), (-half, seam)]
        return front, facing
    front = [(-half, seam), (near, seam), (near, seam - allowance)]
    facing = [(far, seam - allowance), (far, seam), (-half, seam + 3 * thick)]
    return front, facing


def _words(section: BandSection, half: float) -> Iterable[Shape]:
    depth, seam = section.finished.mm, section.seam_at
    yield Dimension((half, 0), (half, depth), section.finished, Side.RIGHT)
    yield Dimension((-half, seam), (-half, depth), section.band, Side.LEFT)
    yield Dimension((-half, 0), (-half, seam), _difference(section.front, section.seam), Side.LEFT)
    yield Note((-3.2 * half, -0.08 * depth), sentence("front"), (-half, 0.0))
    yield Note((3.2 * half, -0.08 * depth), sentence("facing"), (half, 0.0))
