"""Growth tucks drawn: the skirt now and let out, and its lower end cut through."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from handout_engine.amounts.values import Sentence, Value, sentence
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Line,
    Note,
    Point,
    Scene,
    Shape,
    Side,
    Stroke,
    Tone,
    rectangle,
)
from handout_engine.shared.gathering_pictures import strips_picture
from handout_engine.shared.strips_drawing import FlatStrip, Rule
from handout_engine.working.workings import Picture
from handout_engine.working.worksheet import Worksheet


def add_growth_pictures(sheet: Worksheet, tucks: int, inside: bool, rules: Sequence[Rule]) -> None:
    """Now and let out, its lower end cut through, and the flat panel with its lines."""
    length, grown, depth = sheet["panel_length"], sheet["grown_length"], sheet["depth"]
    spacing, height = sheet["tuck_spacing"], sheet["tuck_height"]
    drawn = GrowthTucks(length, grown, depth, spacing, height, tucks, inside)
    words = sheet.sentence(
        "{panel_length} long with its tucks sewn, {grown_length} when they are let out."
    )
    lowest = sheet.sentence(
        "The lowest stitching is {tuck_height} above the edge, each tuck {depth} deep."
    )
    now = sentence("The panel now, and when its tucks are let out.")
    end = sentence("The lower end cut through, enlarged; the cloth's right side is at the right.")
    width = sheet["panel_cut_width"]
    flat = FlatStrip(sentence("panel"), sheet["panel_cut_length"], width, rules)
    finished = growth_scene(drawn, sentence("Growth tucks"), words)
    section = lower_end_scene(drawn, sentence("Growth tucks, cut through"), lowest)
    sheet.pictures.append(Picture("finished", now, finished, True))
    sheet.pictures.append(Picture("section", end, section))
    sheet.pictures.append(strips_picture([flat], "The flat panel, with the lines to mark."))


@dataclass(frozen=True)
class GrowthTucks:
    """A skirt with tucks above its hem: how long it is now, and once they are let out.

    `above` is the height of the lowest stitching over the finished edge; `inside` is set when the
    tucks lie on the wrong side.
    """

    now: Value
    grown: Value
    depth: Value
    spacing: Value
    above: Value
    tucks: int
    inside: bool

    @property
    def places(self) -> list[float]:
        """Each stitching line from the top of the skirt as it is now, the highest first."""
        lowest = self.now.mm - self.above.mm
        return [lowest - number * self.spacing.mm for number in reversed(range(self.tucks))]


def growth_scene(tucks: GrowthTucks, title: Sentence, words: Sentence) -> Scene:
    """The skirt from its right side, tucks sewn, and beside it with all of them let out."""
    return Scene(title, words, tuple(_both(tucks)))


def _both(tucks: GrowthTucks) -> Iterable[Shape]:
    wide = 0.45 * tucks.grown.mm
    apart = wide * 1.25
    yield Area(rectangle(0, 0, wide, tucks.now.mm), Tone.RIGHT)
    yield Area(rectangle(apart, 0, wide, tucks.grown.mm), Tone.RIGHT)
    for place in tucks.places:
        fold = place + tucks.depth.mm
        if not tucks.inside:
            yield Area(rectangle(0, place, wide, tucks.depth.mm), Tone.SHADE, outline=None)
        yield Stroke(((0, place), (wide, place)), Line.STITCH)
        yield Stroke(((0, fold), (wide, fold)), Line.HIDDEN if tucks.inside else Line.THIN)
    yield Note((wide / 2, 0), sentence("now"), above=True)
    yield Note((apart + wide / 2, 0), sentence("let out"), above=True)
    yield Dimension((0, 0), (0, tucks.now.mm), tucks.now, Side.LEFT)
    right = apart + wide
    yield Dimension((right, 0), (right, tucks.grown.mm), tucks.grown, Side.RIGHT)


def lower_end_scene(tucks: GrowthTucks, title: Sentence, words: Sentence) -> Scene:
    """The lower end of the skirt cut through, the right side of the cloth at the right."""
    return Scene(title, words, tuple(_lower_end(tucks)))


def _lower_end(tucks: GrowthTucks) -> Iterable[Shape]:
    foot, deep = tucks.now.mm, tucks.depth.mm
    top = max(0.0, tucks.places[0] - 1.5 * deep)
    way = -1 if tucks.inside else 1
    out = way * 0.3 * deep
    points: list[Point] = [(0.0, top)]
    for place in tucks.places:
        points.extend(
            (
                (0.0, place - 0.02 * deep),
                (1.3 * out, place + deep),
                (out, place + deep),
                (0.0, place + 0.06 * deep),
            )
        )
        yield Stroke(((-0.5 * deep, place), (0.5 * deep, place)), Line.STITCH)
    yield Stroke((*points, (0.0, foot)), Line.CUT)
    lowest = tucks.places[-1]
    yield Dimension((0, lowest), (0, lowest + deep), tucks.depth, Side.RIGHT)
    yield Dimension((0, lowest), (0, foot), tucks.above, Side.LEFT)
    if tucks.tucks > 1:
        yield Dimension((0, tucks.places[-2]), (0, lowest), tucks.spacing, Side.LEFT)
