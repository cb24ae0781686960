"""The seam that joins a ruffle to its edge: any of the fine seams, sewn to gathers."""

from __future__ import annotations

from collections.abc import Mapping

from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.inputs import SEWING, choice, length_by_choice
from handout_engine.amounts.lengths import Length, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Amount
from handout_engine.amounts.sources import PRACTICE
from handout_engine.shared.seams import FLAT_FELL, FRENCH, ON_AN_EDGE, PIN_STITCH, PLAIN, ROLLED
from handout_engine.working.cautions import WING_NEEDLE
from handout_engine.working.technique import Technique
from handout_engine.working.worksheet import Worksheet

THICKEST_ROLL = millimetres(6)


class EdgeSeamInputs(Technique):
    """The inputs of a ruffle that is caught in a seam along its edge."""

    edge_seam = choice(
        "edge seam",
        "The seam that joins ruffle and edge.",
        PLAIN,
        FRENCH,
        FLAT_FELL,
        ROLLED,
        PIN_STITCH,
        group=SEWING,
    )
    edge_allowance = length_by_choice(
        "edge allowance",
        "What the seam takes of the ruffle along its edge.",
        "as the seam needs: 1/4 in, French 3/8 in, flat fell 1/2 in, rolled and whipped 3 mm",
        ("1/16 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
    )

    @property
    def usual(self) -> Mapping[str, Amount]:
        """The allowance that the chosen seam usually takes."""
        return {"edge_allowance": ON_AN_EDGE[self.edge_seam]}

    @value("first edge seam, from the raw edges", basis=PRACTICE)
    def edge_first_seam(self) -> Length | None:
        """A French seam is sewn twice, the first time with two thirds of its allowance."""
        return 2 * self.edge_allowance / 3 if self.edge_seam == FRENCH else None

    @value("second edge seam, from the fold")
    def edge_second_seam(self) -> Length | None:
        """The rest of its allowance."""
        first = self.edge_first_seam
        return None if first is None else self.edge_allowance - first

    @property
    def edge_line(self) -> Length:
        """The line along which the gathers are first sewn."""
        first = self.edge_first_seam
        return self.edge_allowance if first is None else first

    @check
    def the_edge_can_be_rolled(self) -> None:
        """Refuse a roll that would be too thick."""
        if self.edge_seam == ROLLED and self.edge_allowance > THICKEST_ROLL:
            raise RefusalError(
                f"edge_allowance {TAPE.say(self.edge_allowance)} is too much to roll; use at most "
                f"{TAPE.no_more(THICKEST_ROLL)}, or another edge_seam",
                "edge_allowance",
            )


def add_edge_seam_steps(
    sheet: Worksheet, checkpoint: str, grading: str = "", what: str = "ruffle"
) -> None:
    """Sewing the gathered edge on, with its caution; `checkpoint` measures what was sewn.

    `grading` is a word about several layers that is put in before a plain seam is finished, `what`
    names what is gathered.
    """
    steps = [text.replace("ruffle", what) for text in _STEPS[str(sheet["edge_seam"].amount)]]
    for text in steps[:-1]:
        sheet.step(text)
    sheet.step(steps[-1].replace("; GRADING", grading), checkpoint)
    if sheet["edge_seam"].amount == PIN_STITCH:
        sheet.cautions.append(WING_NEEDLE)


_STEPS: Mapping[str, tuple[str, ...]] = {
    PLAIN: (
        "Sew ruffle and edge right sides together, {edge_allowance} from the raw edges, between "
        "the gathering rows. Draw out the row that shows; GRADING, and finish the seam.",
    ),
    FRENCH: (
        "Sew ruffle and edge WRONG sides together, {edge_first_seam} from the raw edges, between "
        "the gathering rows. Draw out both rows, and trim the allowances to less than "
        "{edge_second_seam}.",
        "Turn right sides together, with the seam on the fold, and sew again {edge_second_seam} "
        "from the fold, so that no raw edge is left outside. Press the ridge toward the garment.",
    ),
    FLAT_FELL: (
        "Sew ruffle and edge right sides together, {edge_allowance} from the raw edges, between "
        "the gathering rows. Draw out the row that shows.",
        "Trim the ruffle's allowance to a third. Fold the garment's allowance in half over it, lay "
        "both flat on the garment and stitch along the fold.",
    ),
    ROLLED: (
        "Trim the gathered edge even. Roll {edge_allowance} of it under and whip over the roll, "
        "the needle under it, one stitch to each gather; do the same to the garment's edge.",
        "Lay the two rolls side by side, right sides up, and whip them together. Draw out the row "
        "that shows.",
    ),
    PIN_STITCH: (
        "Turn the garment's edge under and press. Lay the fold over the gathered edge so that "
        "{edge_allowance} of the ruffle lies beneath it, the fold between the gathering rows.",
        "Pin stitch along the fold with a wing needle, draw out the row that shows, and trim what "
        "lies beneath to the stitching.",
    ),
}
