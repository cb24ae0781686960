"""The picture of a finished gown or dress with a yoke, from its drafted parts."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from handout_engine.amounts.values import sentence
from handout_engine.drafting.body_block import BodyBlock
from handout_engine.drafting.curves import bend
from handout_engine.drafting.gathered_skirts import TUCKED, Skirt
from handout_engine.drafting.yokes import Yoke
from handout_engine.drawing.scene import Point
from handout_engine.families.garments.garment_drawing import scene
from handout_engine.families.garments.yoke_drawing import YokeView
from handout_engine.geometry.points import snapped
from handout_engine.working.workings import Picture
from handout_engine.working.worksheet import Worksheet


@dataclass(frozen=True)
class Parts:
    """What the garment is drawn from; `name` is the word for it, `sleeve` its right sleeve."""

    name: str
    block: BodyBlock
    yoke: Yoke
    skirt: Skirt
    sleeve: Sequence[Point] = ()


def finished_picture(sheet: Worksheet, parts: Parts) -> Picture:
    """The garment from the front, with its length and the depth of its yoke."""
    block, trim, long = parts.block, sheet["hem_trim"].mm, sheet["finished_length"].mm
    across, low = parts.skirt.front.edge("hem").points[0]
    lowest = (snapped(across), snapped(low + trim))
    view = YokeView(
        top=(*block.front_neckline, *block.armhole),
        back=block.back_neckline,
        end=parts.yoke.end,
        hem=bend(lowest, (across * 2 / 3, long), (across / 3, long), (0.0, long)),
        length=sheet["finished_length"],
        yoke=sheet["yoke_depth"],
        sleeve=parts.sleeve,
        tucks=_tucks(sheet),
        trim=trim,
        sleeve_trim=sheet["sleeve_trim"].mm if parts.sleeve else 0.0,
    )
    caption = sentence(
        f"The {parts.name} from the front; once round its hem it measures {{hem_edge}}.",
        hem_edge=sheet["hem_edge"],
    )
    words = sentence(
        "{long} long from the neck point, its yoke {yoke} deep, {chest} round the chest.",
        long=sheet["finished_length"], yoke=sheet["yoke_depth"], chest=sheet["finished_chest"],
    )  # fmt: skip
    title = sentence(f"{parts.name.capitalize()}, finished")
    return Picture("finished", caption, scene(title, words, view.view()), finished=True)


def _tucks(sheet: Worksheet) -> tuple[tuple[float, ...], float]:
    """Where the tucks of the right half are stitched, and how far down."""
    if sheet["taken_in"].amount != TUCKED:
        return (), 0.0
    number, apart = sheet["tucks"].whole, sheet["tuck_spacing"].mm
    first = apart / 2 if number % 2 == 0 else 0.0
    places = (first + apart * each for each in range((number + 1) // 2))
    stitched = sheet["tuck_length"].mm - sheet["seam_allowance"].mm
    return tuple(snapped(place) for place in places), stitched
