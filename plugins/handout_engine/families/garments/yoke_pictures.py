"""The picture of a finished gown or dress with a yoke, from its drafted parts."""

from __future__ import annotations

from collections.abc import Sequence

from handout_engine.amounts.values import sentence
from handout_engine.drafting.curves import bend
from handout_engine.drafting.gathered_skirts import TUCKED, SkirtInputs
from handout_engine.drawing.scene import Point
from handout_engine.families.garments.garment_drawing import scene
from handout_engine.families.garments.yoke_drawing import YokeView
from handout_engine.geometry.points import snapped
from handout_engine.working.workings import Picture
from handout_engine.working.worksheet import Worksheet


def finished_picture(
    sheet: Worksheet, name: str, garment: SkirtInputs, sleeve: Sequence[Point] = ()
) -> Picture:
    """The garment from the front, with its length and the depth of its yoke.

    `name` is the word for it, `sleeve` its right sleeve.
    """
    block, trim, long = garment.block, float(garment.hem_trim), sheet["finished_length"].mm
    across, low = garment.drafted_skirt.front.edge("hem").points[0]
    lowest = (snapped(across), snapped(low + trim))
    view = YokeView(
        top=(*block.front_neckline, *block.armhole),
        back=block.back_neckline,
        end=garment.yoke.end,
        hem=bend(lowest, (across * 2 / 3, long), (across / 3, long), (0.0, long)),
        length=sheet["finished_length"],
        yoke=sheet["yoke_depth"],
        sleeve=sleeve,
        tucks=_tucks(garment),
        trim=trim,
        sleeve_trim=sheet["sleeve_trim"].mm if sleeve else 0.0,
    )
    caption = sheet.sentence(
        f"The {name} from the front; once round its hem it measures {{hem_edge}}."
    )
    words = sheet.sentence(
        "{finished_length} long from the neck point, its yoke {yoke_depth} deep, {finished_chest} "
        "round the chest."
    )
    title = sentence(f"{name.capitalize()}, finished")
    return Picture("finished", caption, scene(title, words, view.view()), finished=True)


def _tucks(garment: SkirtInputs) -> tuple[tuple[float, ...], float]:
    """Where the tucks of the right half are stitched, and how far down."""
    if garment.taken_in != TUCKED:
        return (), 0.0
    number, apart = garment.tucks.number, float(garment.tuck_spacing)
    first = apart / 2 if number % 2 == 0 else 0.0
    places = (first + apart * each for each in range((number + 1) // 2))
    stitched = float(garment.tuck_length) - float(garment.seam_allowance)
    return tuple(snapped(place) for place in places), stitched
