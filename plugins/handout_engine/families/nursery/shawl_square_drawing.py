"""A hemmed square with mitred corners: the whole, a flat corner to mark, and a sewn one."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Line,
    Point,
    Scene,
    Shape,
    Side,
    Stroke,
    Tag,
    Tone,
    rectangle,
)


@dataclass(frozen=True)
class Shawl:
    """The named values of a hemmed square, and the width of its lace where it has any."""

    named: Mapping[str, Value]
    lace: Value | None

    def mm(self, name: str) -> float:
        """A named length in mm."""
        return self.named[name].mm


def finished_scene(shawl: Shawl) -> Scene:
    """The square from its right side; the hem behind it is a row of stitches."""
    return Scene(
        sentence("Shawl square, finished"),
        sentence(
            "{side} on each side, with a hem of {hem}.",
            side=shawl.named["finished"],
            hem=shawl.named["hem"],
        ),
        tuple(_finished(shawl)),
    )


def _finished(shawl: Shawl) -> Iterable[Shape]:
    side, hem = shawl.mm("finished"), shawl.mm("hem")
    out = 0.0
    if shawl.lace is not None:
        out = shawl.lace.mm
        yield Area(rectangle(-out, -out, side + 2 * out, side + 2 * out), Tone.SECOND)
        for corner in _corners(0, side):
            away = tuple(-out if at == 0 else side + out for at in corner)
            yield Stroke((corner, (away[0], away[1])), Line.FOLD)
        yield Dimension((side, -out), (side + out, -out), shawl.lace, Side.ABOVE)
    yield Area(rectangle(0, 0, side, side), Tone.RIGHT)
    inner = _corners(hem, side - hem)
    yield Stroke((*inner, inner[0]), Line.STITCH)
    for corner, inside in zip(_corners(0, side), inner, strict=True):
        yield Stroke((corner, inside), Line.HIDDEN)
    yield Dimension((0, side + out), (side, side + out), shawl.named["finished"], Side.BELOW)
    yield Dimension((-out, 0), (-out, hem), shawl.named["hem"], Side.LEFT)


def _corners(low: float, high: float) -> list[Point]:
    return [(low, low), (high, low), (high, high), (low, high)]


def corner_scene(shawl: Shawl) -> Scene:
    """A raw corner laid flat with its lines, to mark by or to lay under."""
    return Scene(
        sentence("Mitred corner, flat"),
        sentence(
            "The mitre crosses the raw edges {at} from the raw corner, the trimming line "
            "{trim}; the hem folds at {hem}.",
            at=shawl.named["mitre_at"],
            trim=shawl.named["mitre_trim"],
            hem=shawl.named["hem_takes"],
        ),
        tuple(_corner(shawl)),
    )


def _corner(shawl: Shawl) -> Iterable[Shape]:
    at, takes, turn = (shawl.mm(name) for name in ("mitre_at", "hem_takes", "turn"))
    size = at * 1.45
    trim = shawl.mm("mitre_trim")
    yield Area(rectangle(0, 0, size, size), Tone.WRONG, outline=None)
    yield Stroke(((0, 0), (size, 0), (size, size)), Line.CUT)
    for place in (turn, takes):
        yield Stroke(((0, place), (size, place)), Line.FOLD)
        yield Stroke(((size - place, 0), (size - place, size)), Line.FOLD)
    yield Stroke(((size - at, 0), (size, at)), Line.STITCH)
    yield Stroke(((size - trim, 0), (size, trim)), Line.CUT)
    yield Dimension((size - at, 0), (size, 0), shawl.named["mitre_at"], Side.ABOVE)
    yield Dimension((size - takes, size), (size, size), shawl.named["hem_takes"], Side.BELOW)
    yield Tag((0, turn), shawl.named["turn"], Side.LEFT, origin=(0, 0))
    yield Dimension((size, 0), (size, trim), shawl.named["mitre_trim"], Side.RIGHT)


def sewn_scene(shawl: Shawl) -> Scene:
    """A sewn corner from its wrong side, its point at the upper left."""
    return Scene(
        sentence("Mitred corner, sewn"),
        sentence("The hem is {hem} deep on both sides of the mitre.", hem=shawl.named["hem"]),
        tuple(_sewn(shawl)),
        tallest=180,
    )


def _sewn(shawl: Shawl) -> Iterable[Shape]:
    hem = shawl.mm("hem")
    size = 3.4 * hem
    edge = 0.06 * hem
    yield Area(((0, 0), (size, 0), (size, size), (0, size)), Tone.WRONG, outline=None)
    yield Area(((0, 0), (size, 0), (size, hem), (hem, hem)), Tone.RIGHT, outline=None)
    yield Area(((0, 0), (hem, hem), (hem, size), (0, size)), Tone.RIGHT, outline=None)
    yield Stroke(((size, 0), (0, 0), (0, size)), Line.CUT)
    yield Stroke(((size, hem), (hem, hem), (hem, size)), Line.CUT)
    yield Stroke(((0, 0), (hem, hem)), Line.CUT)
    inner = hem - edge
    yield Stroke(((size, inner), (inner, inner), (inner, size)), Line.STITCH)
    yield Dimension((size, 0), (size, hem), shawl.named["hem"], Side.RIGHT)
