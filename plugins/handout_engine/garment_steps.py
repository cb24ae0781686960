"""Steps that most garments share, each with what to measure."""

from __future__ import annotations

from handout_engine.worksheet import Worksheet


def add_slit_step(sheet: Worksheet) -> None:
    """The slit at the centre back; without an opening there is none."""
    if sheet["opening"].length:
        sheet.step(
            "Slash the centre back from the neck down by {opening}, and finish the slit with a "
            "lap placket or a facing.",
            "the slit is {opening} long, and lies flat.",
        )


def add_shoulder_step(sheet: Worksheet) -> None:
    """The shoulder seams."""
    sheet.step(
        "Sew the shoulder seams, {seam_allowance} from the edge, and finish them; a French seam "
        "suits sheer cloth.",
        "each shoulder seam is {shoulder_seam} long.",
    )


def add_side_step(sheet: Worksheet, checkpoint: str = "") -> None:
    """The side seams."""
    sheet.step("Sew the side seams, {seam_allowance} from the edge, and finish them.", checkpoint)
