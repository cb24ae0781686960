"""Steps that most garments share, each with what to measure."""

from __future__ import annotations

from handout_engine.amounts.lengths import millimetres
from handout_engine.drafting.turned_hems import TURN, LowerEdge, TurnedHemInputs, TurnedUpHem
from handout_engine.working.worksheet import Worksheet

WHOLE = "whole, its fold line in the middle"
"""How a piece is cut of which half is drawn, however the cloth lies: its layout says that."""
OVERCAST = "overcast the two edges together, by hand or with a zigzag stitch"
BESIDE_SLIT = millimetres(2)
"""From the line of a slit to the stitching of its facing, at the neck, so that what is slashed
between two rows holds: common practice, no source."""


def add_cloth_step(sheet: Worksheet) -> None:
    """The cloth made ready: washed, straightened and pressed before anything is cut."""
    sheet.step(
        "Wash and dry the cloth as the garment will be washed. Straighten it: draw a thread across "
        "near both cut ends, cut along it, and where the ends are not square pull the cloth on the "
        "bias until they are. Press it along the threads.",
        "at both cut ends one thread runs from selvage to selvage, square to them.",
    )


def add_stay_step(sheet: Worksheet, where: str) -> None:
    """Stay-stitching; `where` names the curved edges, which stretch while they are handled."""
    sheet.step(
        f"Stay-stitch {where}: one row of short stitches through one layer, a thread's width "
        "outside the seam line, from the upper end of each curve down.",
        "laid on its paper again, each edge is as long as it was cut.",
    )


def add_slit_step(sheet: Worksheet) -> None:
    """The slit at the centre back, faced so that its edges meet; without an opening there is none.

    Speaks of the facing's `slit_facing_width` and `slit_facing_length`.
    """
    if sheet["opening"].length:
        sheet.step(
            "Overcast the long edges and the lower end of the slit facing, {slit_facing_width} by "
            "{slit_facing_length}. Lay it on the centre back, right sides together, upper edges "
            "level, and draw the slit on it, {opening} from the neck seam line down. Stitch beside "
            "that line, {beside} from it at the neck and running to a point at its lower end, with "
            "short stitches and one across the point; slash to a thread before it.",
            beside=BESIDE_SLIT,
        )
        sheet.step(
            "Turn the facing in, press it, and catch its edges down.",
            "the slit is {opening} long below the neck seam line, lies flat, and its edges meet.",
        )


def add_shoulder_step(sheet: Worksheet) -> None:
    """The shoulder seams."""
    sheet.step(
        f"Sew the shoulder seams, {{seam_allowance}} from the edge, and {OVERCAST}. In sheer cloth "
        "make French seams of them: wrong sides together {half_allowance} from the edge, trimmed "
        "and turned, then right sides together {half_allowance} from the fold.",
        "each shoulder seam is {shoulder_seam} long.",
    )


def add_side_step(sheet: Worksheet, checkpoint: str = "") -> None:
    """The side seams."""
    sheet.step(
        "Sew the side seams, {seam_allowance} from the edge, notch on notch, and finish them as "
        "the shoulders: edges overcast together, or as French seams.",
        checkpoint,
    )


def add_lower_edge_steps(sheet: Worksheet, garment: TurnedHemInputs) -> None:
    """A lower edge without a trim: a hem turned up, its raw edge eased in, or a facing."""
    measured = "it is {hem_edge} once round, and from the neck point to the hem {finished_length}."
    if isinstance(garment.lower_edge, TurnedUpHem):
        sheet.step(
            f"{easing(sheet, garment.lower_edge)}Turn the hem up by {{hem_depth}} at the lower "
            "edge, side seams on one another, its raw edge turned under, and sew it by hand.",
            measured,
        )
        return
    sheet.step(
        "Join the front and back hem facings at their sides, {seam_allowance} from the edge, "
        "and press these seams open. Turn {turn} under along the upper edge and stitch it.",
        turn=TURN,
    )
    sheet.step(
        "Sew the facing to the lower edge, right sides together, side seams on one another, "
        "{seam_allowance} from the edges. Trim the seam, turn the facing up inside, press, and "
        "sew its upper edge down by hand.",
        f"the facing is {{hem_depth}} deep; {measured}",
    )


def easing(sheet: Worksheet, hem: LowerEdge) -> str:
    """How the raw edge of a hem is eased in, speaking of `hem_ease`; a sentence, or nothing."""
    if not isinstance(hem, TurnedUpHem) or hem.lies_flat:
        return ""
    how = (
        "run a row of long stitches along it, draw it up by so much in all, and press the fullness "
        "out with steam"
        if hem.is_drawn_up(sheet["hem_edge"].length)
        else "ease that in"
    )
    return (
        f"The raw lower edge is {{hem_ease}} longer, once round, than where it will land: {how}. "
    )
