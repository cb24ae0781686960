"""What a slip is sewn with, and how: slit, shoulders, sides, neck and armholes, hem."""

from __future__ import annotations

from fractions import Fraction

from handout_engine.drafting.garment_steps import (
    WHOLE,
    add_cloth_step,
    add_lower_edge_steps,
    add_shoulder_step,
    add_side_step,
    add_slit_step,
    add_stay_step,
)
from handout_engine.drafting.turned_hems import TurnedHemInputs, TurnedUpHem
from handout_engine.working.cautions import (
    BUTTONS_AS_SMALL_PARTS,
    GARMENT_IS_DAYWEAR,
    LONG_HEM,
    LOOPS_CATCH,
    MEASURE_THE_BABY,
    PINS_AND_IRON,
    THIN_COTTON,
)
from handout_engine.working.workings import BINDINGS, Supply
from handout_engine.working.worksheet import Worksheet

BOUND, TRIMMED = "bound", "trimmed"
PLAIN, WORKED = "plain", "worked"
TO_THE_FOOT = Fraction(3, 4)
"""Of her length, from the neck point to the sole of a baby's foot at the least; an estimate."""


def add_supplies(sheet: Worksheet) -> None:
    """Notions and cautions; without an opening nothing is buttoned."""
    where = "for the neck, {neck_edge}"
    if sheet["armholes"].amount == BOUND:
        where += ", and two armholes, {armhole_edge} each"
    sheet.supplies.append(Supply("bias binding", None, sheet.sentence(where), unless=BINDINGS))
    sheet.have("fine thread to match")
    sheet.cautions.extend((PINS_AND_IRON, GARMENT_IS_DAYWEAR, MEASURE_THE_BABY, THIN_COTTON))
    if sheet["opening"].length:
        sheet.have("one small flat button")
        sheet.cautions.extend((BUTTONS_AS_SMALL_PARTS, LOOPS_CATCH))
    if sheet["finished_length"].length > sheet["body_length"].length * TO_THE_FOOT:
        sheet.cautions.append(LONG_HEM)


BINDING = (
    "To bind, first trim the allowance of {seam_allowance} away, down to the seam line; to face, "
    "sew the facing on that line. In one of the two ways finish"
)
EDGES = "finished, the neck measures {neck_edge} and each armhole {armhole_edge}."


def add_steps(sheet: Worksheet, slip: TurnedHemInputs) -> None:
    """From the cloth to the button and its loop."""
    add_cloth_step(sheet)
    if sheet["front"].amount == WORKED:
        sheet.step(
            "Make up the cloth of the front first, at least {slip_front_across} wide and "
            "{slip_front_length} long, its middle marked; the fold line of the front lies there."
        )
    # A facing is sewn on along the raw edge, so there is no line to mark.
    marks_hem = slip.trimmed or isinstance(slip.lower_edge, TurnedUpHem)
    marked = ["the hem line {hem_depth} above the cut edge"] if marks_hem else []
    if sheet["opening"].length:
        marked.insert(0, "the centre back from the neck seam line down by {opening}")
    mark = f", and mark {' and '.join(marked)}" if marked else ""
    sheet.step(f"Cut front and back, each {WHOLE}. Snip the notches{mark}.")
    add_stay_step(sheet, "the neck and the armholes of front and back")
    add_slit_step(sheet)
    add_shoulder_step(sheet)
    add_side_step(sheet, "the hem line measures {hem_edge} once round.")
    if sheet["armholes"].amount == BOUND:
        sheet.step(f"{BINDING} the neck and both armholes.", EDGES)
    else:
        sheet.step("Sew their trim to both armholes, {armhole_edge} each.")
        sheet.step(f"{BINDING} the neck.", "finished, the neck measures {neck_edge}.")
    if slip.trimmed:
        sheet.step(
            "Sew the trim to the hem line, once round; it takes the allowance of {hem_depth}.",
            "with its trim the slip is {finished_length} from the neck point.",
        )
    else:
        add_lower_edge_steps(sheet, slip)
    if sheet["opening"].length:
        sheet.step(
            "At the top of the slit, where its edges meet, work a thread loop on one of them, just "
            "long enough for the button, and sew the button to the other.",
            "buttoned up, the neck measures {neck_edge}; open, {opened_neck}.",
        )
