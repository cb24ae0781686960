"""A finished gown or dress with a yoke, from the front: gathers or tucks, sleeves, measures."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import hypot

from handout_engine.amounts.values import sentence
from handout_engine.drafting.curves import Line as Points
from handout_engine.drafting.curves import bend
from handout_engine.drafting.gathered_skirts import TUCKED, SkirtInputs
from handout_engine.drawing.scene import Dimension, Line, Point, Side
from handout_engine.families.garments.garment_drawing import View, scene
from handout_engine.geometry.points import snapped
from handout_engine.working.workings import Picture
from handout_engine.working.worksheet import Worksheet

REACHES = (0.34, 0.2, 0.44, 0.26, 0.38, 0.18, 0.3)
"""How far gathers reach down the skirt, by turns: they are never quite even."""
GATHER = 9.0
"""About so far apart gathers are drawn, in mm."""


def finished_picture(
    sheet: Worksheet, name: str, garment: SkirtInputs, sleeves: Sequence[Points] = ()
) -> Picture:
    """The garment from the front, with its length and the depth of its yoke.

    `name` is the word for it, `sleeves` its right sleeve and what is trimmed of it.
    """
    block, end = garment.block, garment.yoke.end
    level, long = end[1], float(garment.finished_length)
    hem = _hem(garment)
    seams = [(end, (0.0, level)), *_falls(garment, hem)]
    if garment.trimmed:
        seams.append(_trim_seam(garment, hem))
    neck = (block.back_neckline[0], *block.back_neckline, (0.0, long))
    top = (*block.front_neckline, *block.armhole)
    right = max(x for each in (top, *sleeves) for x, _ in each)
    left = -max(hem[0][0], right)
    view = View(
        (*top, *hem),
        lines=[(each, Line.THIN) for each in seams],
        behind=[*sleeves, neck],
        dimensions=[
            Dimension((left, 0.0), (left, long), sheet["finished_length"], Side.LEFT),
            Dimension((right, 0.0), (right, level), sheet["yoke_depth"], Side.RIGHT),
        ],
    )
    caption = sheet.sentence(
        f"The {name} from the front; once round its hem it measures {{hem_edge}}."
    )
    words = sheet.sentence(
        "{finished_length} long from the neck point, its yoke {yoke_depth} deep, {finished_chest} "
        "round the chest."
    )
    title = sentence(f"{name.capitalize()}, finished")
    return Picture("finished", caption, scene(title, words, view), finished=True)


def _hem(garment: SkirtInputs) -> Points:
    """The lower edge as it hangs, from the side to the centre, with its trim."""
    across, low = garment.drafted_skirt.front.edge("hem").points[0]
    lowest = (snapped(across), snapped(low + float(garment.hem_trim)))
    long = float(garment.finished_length)
    return bend(lowest, (across * 2 / 3, long), (across / 3, long), (0.0, long))


def _trim_seam(garment: SkirtInputs, hem: Points) -> Points:
    """Where the trim of the hem begins: the hem moved up, between the sides."""
    (under, depth), (across, low), trim = garment.block.underarm, hem[0], float(garment.hem_trim)
    narrower = (under + (across - under) * (1 - trim / (low - depth))) / across
    return tuple((snapped(x * narrower), snapped(y - trim)) for x, y in hem)


def _falls(garment: SkirtInputs, hem: Points) -> Iterator[Points]:
    """Tucks or gathers below the yoke seam, spreading with the skirt."""
    (end, level), (across, low) = garment.yoke.end, hem[0]
    if garment.taken_in == TUCKED:
        stitched = float(garment.tuck_length) - float(garment.seam_allowance)
        for place in _tucks(garment):
            yield (place, level), (place, snapped(level + stitched))
        return
    number = max(3, round(end / GATHER))
    for each in range(1, number + 1):
        place = end * (each - 0.5) / number
        reach = REACHES[each % len(REACHES)] * (low - level)
        aside = (across - end) * place / end * reach / (low - level)
        yield (snapped(place), level), (snapped(place + aside), snapped(level + reach))


def _tucks(garment: SkirtInputs) -> Iterator[float]:
    """Where the tucks of the right half are stitched."""
    number, apart = garment.tucks.number, float(garment.tuck_spacing)
    first = apart / 2 if number % 2 == 0 else 0.0
    return (snapped(first + apart * each) for each in range((number + 1) // 2))


def trimmed_sleeve(sleeve: Points, trim: float) -> tuple[Points, ...]:
    """A sleeve from shoulder and tip to its inner end and the underarm, and over it its trim."""
    shoulder, tip, inner, underarm = sleeve
    if not trim:
        return (sleeve,)
    return sleeve, (_back(tip, shoulder, trim), tip, inner, _back(inner, underarm, trim))


def _back(end: Point, start: Point, by: float) -> Point:
    """The point so far from the end of a straight side towards its start."""
    share = min(1.0, by / hypot(end[0] - start[0], end[1] - start[1]))
    return (
        snapped(end[0] + (start[0] - end[0]) * share),
        snapped(end[1] + (start[1] - end[1]) * share),
    )
