"""Pieces laid out on their cloth, to scale: the cloth's length runs down the page."""

from __future__ import annotations

from collections.abc import Iterable

from handout_engine.amounts.values import sentence
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Grain,
    Line,
    Note,
    Scene,
    Shape,
    Side,
    Stroke,
    Tone,
    rectangle,
)
from handout_engine.working.layouts import Laid, Layout


def layout_scene(layout: Layout) -> Scene:
    """The cloth with all its pieces, each with its number in the cut list."""
    how = "folded lengthwise, the fold at the left" if layout.folded else "in a single layer"
    single = len(layout.laid) == 1
    counted, uses = ("One piece", "it uses") if single else ("{count} pieces", "they use")
    return Scene(
        sentence(f"Layout on the {layout.cloth}"),
        sentence(
            f"{counted} laid on cloth {{width}} wide between its selvages, {how}; {uses} "
            "{used} of its length.",
            count=len(layout.laid),
            width=layout.width,
            used=layout.used,
        ),
        tuple(_shapes(layout)),
    )


def _shapes(layout: Layout) -> Iterable[Shape]:
    width, used = float(layout.width), float(layout.used)
    yield Area(rectangle(0, 0, width, used), Tone.RIGHT, outline=None)
    for laid in layout.laid:
        yield from _piece(laid, small=float(laid.item.along) < used * 0.04)
    yield Stroke(((0, 0), (width, 0)), Line.THIN)
    yield Stroke(((0, used), (width, used)), Line.THIN)
    yield Stroke(((width, 0), (width, used)), Line.THIN)
    yield Stroke(((0, 0), (0, used)), Line.FOLD if layout.folded else Line.THIN)
    yield Dimension((0, 0), (width, 0), layout.width, Side.ABOVE)
    yield Dimension((0, 0), (0, used), layout.used, Side.LEFT)
    yield Grain((width, used / 2), (0.0, 1.0))


def _piece(laid: Laid, small: bool) -> Iterable[Shape]:
    left, top = float(laid.left), float(laid.top)
    across, along = float(laid.item.across), float(laid.item.along)
    shape = tuple((left + x, top + y) for x, y in laid.item.outline)
    tone = Tone.WRONG if laid.item.turned_over else Tone.SECOND
    yield Area(shape or rectangle(left, top, across, along), tone)
    if laid.item.opened:
        middle = left + across / 2
        yield Stroke(((middle, top), (middle, top + along)), Line.FOLD)
    if not small:
        aside = across / 4 if laid.item.opened else across / 2
        yield Note((left + aside, top + along / 2), sentence(str(laid.item.number)))
