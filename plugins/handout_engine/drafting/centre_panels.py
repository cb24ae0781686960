"""A panel on the middle of a front yoke, hollowed by the neck at its upper edge."""

from __future__ import annotations

from handout_engine.amounts.lengths import from_float
from handout_engine.amounts.sources import DRAWN
from handout_engine.drafting.body_block import BodyBlock
from handout_engine.drafting.curves import split_at_level
from handout_engine.working.worksheet import Worksheet


def note_centre_panel(sheet: Worksheet, block: BodyBlock) -> None:
    """Note its width and depth and the depth of its hollow.

    Speaks of the input `panel_share`: how far up the neck it reaches, for each unit of the neck's
    depth. Its sides are upright, its lower edge is the yoke seam.
    """
    hollow = sheet.note("centre_panel_hollow", "centre panel, depth of its hollow for the neck",
                        sheet["front_neck_depth"].length * sheet["panel_share"].ratio,
                        "{front_neck_depth} × {panel_share}")  # fmt: skip
    level = block.front_neck - hollow.mm
    beside = split_at_level(tuple(reversed(block.front_neckline)), level)[1][0]
    sheet.note("centre_panel_width", "centre panel, from side to side", from_float(2 * beside[0]),
               "", basis=DRAWN)  # fmt: skip
    sheet.note("centre_panel_depth", "centre panel at its sides, from the neck to the yoke seam",
               sheet["front_yoke_depth"].length + hollow.length,
               "{front_yoke_depth} + {centre_panel_hollow}")  # fmt: skip
