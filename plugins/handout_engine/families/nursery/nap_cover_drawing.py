"""A pieced cover drawn: the whole top, and one corner of it."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Line,
    Scene,
    Shape,
    Side,
    Stroke,
    Tone,
    rectangle,
)


@dataclass(frozen=True)
class Quilt:
    """The named values of a pieced cover."""

    named: Mapping[str, Value]

    def mm(self, name: str) -> float:
        """A named length in mm."""
        return self.named[name].mm

    def number(self, name: str) -> int:
        """A named count."""
        return self.named[name].whole


def top_scene(quilt: Quilt) -> Scene:
    """The finished cover from above, its binding as a narrow frame."""
    return Scene(
        sentence("Nap cover, finished"),
        sentence(
            "{across} by {down} blocks, {width} by {length} with its border.",
            across=quilt.named["blocks_across"],
            down=quilt.named["blocks_down"],
            width=quilt.named["top_width"],
            length=quilt.named["top_length"],
        ),
        tuple(_top(quilt)),
        tallest=330,
    )


def _top(quilt: Quilt) -> Iterable[Shape]:
    """The border's finished edge is the origin; the binding lies half on it, half beyond."""
    wide, long = quilt.mm("top_width"), quilt.mm("top_length")
    border, block = quilt.mm("border"), quilt.mm("block")
    step = block + quilt.mm("sashing")
    out = quilt.mm("seam_allowance")
    binding = quilt.mm("binding")
    yield Area(rectangle(-out, -out, wide + 2 * out, long + 2 * out), Tone.SHADE)
    inside = binding - out
    yield Area(rectangle(inside, inside, wide - 2 * inside, long - 2 * inside), Tone.SECOND)
    for row in range(quilt.number("blocks_down")):
        for place in range(quilt.number("blocks_across")):
            left, top = border + place * step, border + row * step
            yield Area(rectangle(left, top, block, block), Tone.RIGHT, Line.THIN)
    yield Dimension((0, long), (wide, long), quilt.named["top_width"], Side.BELOW)
    yield Dimension((0, 0), (0, long), quilt.named["top_length"], Side.LEFT)


def corner_scene(quilt: Quilt) -> Scene:
    """The upper left corner, large enough to measure: border, block, sashing, block."""
    return Scene(
        sentence("Corner of the nap cover"),
        sentence(
            "Border {border}, block {block}, sashing {sashing}.",
            border=quilt.named["border"],
            block=quilt.named["block"],
            sashing=quilt.named["sashing"],
        ),
        tuple(_corner(quilt)),
    )


def _corner(quilt: Quilt) -> Iterable[Shape]:
    border, block, sashing = (quilt.mm(name) for name in ("border", "block", "sashing"))
    step = block + sashing
    size = border + block + sashing + 0.4 * block
    yield Area(rectangle(0, 0, size, size), Tone.SECOND, outline=None)
    yield Stroke(((size, 0), (0, 0), (0, size)), Line.CUT)
    for left in (border, border + step):
        for top in (border, border + step):
            across, down = min(block, size - left), min(block, size - top)
            yield Area(rectangle(left, top, across, down), Tone.RIGHT, outline=None)
    for at in (border, border + block, border + step):
        yield Stroke(((border, at), (size, at)), Line.THIN)
        yield Stroke(((at, border), (at, size if at == border else border + block)), Line.THIN)
        yield Stroke(((at, border + step), (at, size)), Line.THIN)
    yield Dimension((border, 0), (border + block, 0), quilt.named["block"], Side.ABOVE)
    if border:
        yield Dimension((0, 0), (0, border), quilt.named["border"], Side.LEFT)
    if sashing:
        low, high = border + block, border + step
        yield Dimension((size, low), (size, high), quilt.named["sashing"], Side.RIGHT)
