"""A baby's jacket whose sleeves are cut in one with the body, open in front and faced."""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, length, optional_length, ratio
from handout_engine.amounts.lengths import Length, from_float, inches, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.sources import DRAWN, GIVEN, PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.amounts.ways_out import at_least, at_most, ways
from handout_engine.bodies.measures import measured
from handout_engine.cloth.cloth import note_cloth
from handout_engine.drafting.block import note_block
from handout_engine.drafting.body_block import BodyBlock
from handout_engine.drafting.curves import Line, run
from handout_engine.drafting.cut_on_sleeves import (
    CutOnSleeve,
    CutOnSleeveInputs,
    note_cut_on_sleeve,
    note_underarm,
)
from handout_engine.drafting.drafts import FOLD, Draft, Edge
from handout_engine.drafting.front_facings import (
    FacingInputs,
    FrontEdge,
    back_facing,
    front_facing,
)
from handout_engine.drafting.pieces import Cutting, note_piece
from handout_engine.drafting.skirts import flared_side
from handout_engine.drafting.turned_hems import (
    Half,
    LowerEdge,
    TurnedHemInputs,
    deepest,
    note_lower_edge,
)
from handout_engine.families.garments.baby_jacket_drawing import Jacket as Drawn
from handout_engine.families.garments.baby_jacket_drawing import finished_scene
from handout_engine.families.garments.baby_jacket_steps import add_steps, add_supplies
from handout_engine.geometry.points import snapped
from handout_engine.shared.buttons import ButtonInputs, note_extension
from handout_engine.working.workings import Picture, Seam
from handout_engine.working.worksheet import Worksheet

CLOTH = "cloth"
TAPE = Tape(finest=32)
LEAST_BESIDE = millimetres(5)
"""What is left at least of each half of the neck beside the overlap."""


class BabyJacket(ButtonInputs, FacingInputs, CutOnSleeveInputs, TurnedHemInputs):
    """A jacket for over a dress or romper, from flannel, pique or other firm cloth."""

    title: ClassVar[str] = "Baby jacket"
    family: ClassVar[str] = "garments"
    summary: ClassVar[str] = (
        "A jacket to the hip with its sleeves cut on, buttoned and faced in front, from flannel "
        "or pique."
    )
    eases: ClassVar[tuple[str, str]] = ("14 cm", "12 cm")
    usual_hem: ClassVar[Length] = inches(1)

    crown_rump = measured("crown_rump")
    hip_share = ratio(
        "share of the length",
        "From the neck point to the hem at the hip, for each unit from crown to rump.",
        "0.65",
        ("0.4", "0.9"),
        basis=PRACTICE,
    )
    reach = optional_length(
        "length",
        "From the neck point to the finished hem.",
        "the share from crown to rump",
        ("15 cm", "60 cm"),
        in_use="finished_length",
    )
    flare = length(
        "flare",
        "How much wider each half of front and back is at the hem than under the arm.",
        "1 cm",
        ("0 cm", "15 cm"),
        basis=PRACTICE,
    )
    sleeve_hem = length(
        "sleeve hem",
        "Turned up at the sleeve's end, its turning under included.",
        "3/4 in",
        ("1/4 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
    )

    def whole(self) -> Worksheet:
        """Outlines, edges, pieces, cloth and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        block = note_block(sheet, self)
        low = _note_reach(sheet, self)
        side, hem = _note_side(sheet, self, block, low)
        sleeve = note_cut_on_sleeve(sheet, self, block, side)
        _note_front(sheet, self, hem)
        half = Half(sleeve.side, hem)
        lower = note_lower_edge(sheet, self, (half, half), trimmed=False)
        if lower.faced:
            _refuse_facing(sheet, self, half)
        beyond = float(sheet["beyond_centre"].length)
        front = _draft(self, (block, sleeve, half), lower, beyond)
        note_piece(sheet, front, Cutting(CLOTH, 2))
        note_piece(sheet, _draft(self, (block, sleeve, half), lower, None), Cutting(CLOTH))
        edge = FrontEdge(beyond, low, float(self.seam_allowance))
        note_piece(sheet, front_facing(self, block, edge), Cutting(CLOTH, 2))
        note_piece(sheet, back_facing(self, block, edge.seam), Cutting(CLOTH))
        note_cloth(sheet, CLOTH, self.cloth())
        sheet.seams.append(Seam("over the arms, under them and at the sides", self.seam_allowance))
        add_supplies(sheet)
        add_steps(sheet)
        sheet.pictures.insert(0, _finished(sheet, front, block))
        return sheet


def _note_reach(sheet: Worksheet, jacket: BabyJacket) -> float:
    label = "jacket from the neck point to the hem"
    if jacket.reach is not None:
        return sheet.note("finished_length", label, jacket.reach, "", basis=GIVEN).mm
    return sheet.note("finished_length", label, jacket.crown_rump * jacket.hip_share,
                      "{crown_rump} × {hip_share}", basis=PRACTICE).mm  # fmt: skip


def _note_side(
    sheet: Worksheet, jacket: BabyJacket, block: BodyBlock, low: float
) -> tuple[Line, Line]:
    """The side from the corner under the arm, and the hem to the centre."""
    corner = note_underarm(sheet, jacket, block)
    least = jacket.underarm_curve * 2
    if low - corner[1] < float(least):
        needed = from_float(corner[1]) + least
        raise RefusalError(
            f"a jacket {TAPE.both(from_float(low))} long leaves no side below the arm; give reach "
            f"at least {TAPE.no_less(needed)}, or underarm_curve or sleeve_ease less",
            "reach",
        )
    return flared_side(corner, low, float(jacket.flare))


def _note_front(sheet: Worksheet, jacket: BabyJacket, hem: Line) -> None:
    """Note the open edges: the fronts, the neck with them, and the hem from front to front."""
    beyond = note_extension(sheet, jacket)
    overlap = sheet.note("front_overlap", "what the fronts overlap", 2 * beyond.length,
                         "2 × {beyond_centre}")  # fmt: skip
    if jacket.facing < overlap.length:
        raise RefusalError(
            f"facing {TAPE.say(jacket.facing)} is narrower than the overlap, "
            f"{TAPE.both(overlap.length)}, so that holes and buttons would stand partly in one "
            f"layer; use {ways(at_least(jacket, 'facing', overlap.length), 'a smaller button')}",
            "facing",
        )
    half = sheet["neck_half_width"].length
    if beyond.length > half - LEAST_BESIDE:
        raise RefusalError(
            f"fronts that overlap by {TAPE.both(overlap.length)} take the whole front of the neck, "
            f"{TAPE.both(2 * half)}; use a smaller button, or less clearance or extension",
            "button",
        )
    sheet.note("chest_across", "across the chest, buttoned and laid flat",
               sheet["finished_chest"].length / 2, "{finished_chest} / 2")  # fmt: skip
    sheet.note("front_edge", "one front edge, from the neck to the hem",
               sheet["finished_length"].length - sheet["front_neck_depth"].length,
               "{finished_length} - {front_neck_depth}")  # fmt: skip
    sheet.note("neck_with_fronts", "neck edge from front edge to front edge, open",
               sheet["neck_edge"].length + overlap.length,
               "{neck_edge} + {front_overlap}")  # fmt: skip
    corner_x, _ = hem[0]
    label = "straight across the hem, buttoned and laid flat"
    sheet.note("hem_across", label, from_float(2 * corner_x), "", basis=DRAWN)
    sheet.note("hem_edge", "hem from front edge to front edge, open",
               from_float(4 * run(hem)) + overlap.length, "", basis=DRAWN)  # fmt: skip


def _refuse_facing(sheet: Worksheet, jacket: BabyJacket, half: Half) -> None:
    """Refuse a lower edge that cannot be turned up: the front facings leave a facing no place."""
    hem = sheet["hem_depth"].length
    most = deepest((half, half), hem, jacket.hem_easing.number)
    less = at_most(jacket, "hem", most, "hem at most {}")
    raise RefusalError(
        f"the lower edge curves too much for a hem {TAPE.both(hem)} deep, whose raw edge could not "
        f"be eased in; give {ways(less, 'flare less')}",
        "hem" if less and jacket.hem else "flare",
    )


def _draft(
    jacket: BabyJacket,
    parts: tuple[BodyBlock, CutOnSleeve, Half],
    lower: LowerEdge,
    beyond: float | None,
) -> Draft:
    """A front, reaching beyond its centre, or with `beyond` None half of the back to its fold."""
    block, sleeve, hem = parts[0], parts[1], parts[2].hem
    seam = float(jacket.seam_allowance)
    edges = (
        Edge("over the arm", sleeve.over, seam),
        Edge("sleeve end", sleeve.end, float(jacket.sleeve_hem), turned_up=True),
        Edge("under the arm", sleeve.under, seam),
        Edge("side", sleeve.side, seam),
    )
    notches = (block.shoulder, sleeve.side[0])
    if beyond is None:
        neck = block.back_neckline
        fold = Edge(FOLD, (hem[-1], neck[0]))
        whole = (Edge("neck", neck, seam), *edges, lower.edge(hem), fold)
        return Draft("jacket back", whole, notches)
    centre, out = block.front_neckline[0], snapped(-beyond)
    neck = ((out, centre[1]), *block.front_neckline)
    corner = (out, hem[-1][1])
    around = (
        Edge("neck", neck, seam),
        *edges,
        lower.edge(hem),
        Edge("hem beyond the centre", (hem[-1], corner), lower.allowance, turned_up=True),
        Edge("front", (corner, neck[0]), seam),
    )
    return Draft("jacket front", around, (*notches, centre, hem[-1]))


def _finished(sheet: Worksheet, front: Draft, block: BodyBlock) -> Picture:
    drawn = Drawn(
        front,
        block.back_neckline,
        {"long": sheet["finished_length"], "across": sheet["hem_across"],
         "beyond": sheet["beyond_centre"], "button": sheet["button"]},
    )  # fmt: skip
    caption = sentence("The jacket from the front, arms spread; each sleeve measures {sleeve_edge} "
                       "round its end.", sleeve_edge=sheet["sleeve_edge"])  # fmt: skip
    return Picture("finished", caption, finished_scene(drawn), finished=True)


GARMENT = BabyJacket
