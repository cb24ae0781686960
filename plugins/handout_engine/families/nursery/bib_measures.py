"""What a bib is drawn from: body measures, and the shares of them that the trade goes by."""

from __future__ import annotations

from fractions import Fraction
from math import asin, pi

from handout_engine.amounts.inputs import SEWING, choice, count, length, optional_length, ratio
from handout_engine.amounts.lengths import ZERO, Length, from_float
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.sources import GIVEN, PRACTICE
from handout_engine.amounts.values import Value
from handout_engine.bodies.measures import measured
from handout_engine.drafting.garment import Garment
from handout_engine.families.nursery.bib_outlines import BibShape
from handout_engine.working.worksheet import Worksheet

BOUND, TURNED = "bound", "turned"
TAPE = Tape(finest=32)


class BibInputs(Garment):
    """The inputs of a bib."""

    neck = measured("neck")
    chest = measured("chest")
    neck_ease = length(
        "neck ease",
        "Added to the neck for the circle of the bib.",
        "8 cm",
        ("1 cm", "20 cm"),
        basis=PRACTICE,
    )
    width_share = ratio(
        "share for the width",
        "Width of the bib for each unit of chest.",
        "0.45",
        ("0.2", "0.9"),
        basis=PRACTICE,
    )
    drop_share = ratio(
        "share for the drop",
        "Drop of the bib for each unit of chest.",
        "0.4",
        ("0.1", "0.9"),
        basis=PRACTICE,
    )
    width = optional_length(
        "width",
        "Finished width across the front.",
        "the chest and its share",
        ("3 in", "24 in"),
        in_use="bib_width",
    )
    drop = optional_length(
        "drop",
        "From the front of the neck to the lower edge.",
        "the chest and its share",
        ("2 in", "24 in"),
        in_use="bib_drop",
    )
    strap = length(
        "strap", "Width of the two ends round the neck.", "3 cm", ("1 cm", "10 cm"), basis=PRACTICE
    )
    corner = length(
        "rounding", "Radius of the lower corners.", "5 cm", ("0 cm", "25 cm"), basis=PRACTICE
    )
    overlap = length(
        "overlap",
        "How far one end laps over the other.",
        "2 cm",
        ("0.5 cm", "6 cm"),
        group=SEWING,
        basis=PRACTICE,
    )
    gap = length(
        "opening",
        "Between the two ends while the bib lies flat.",
        "1.5 cm",
        ("1 mm", "6 cm"),
        group=SEWING,
        basis=PRACTICE,
    )
    edge = choice(
        "edge",
        "Bound all round, or two layers sewn together and turned.",
        BOUND,
        TURNED,
        group=SEWING,
    )
    seam_allowance = length(
        "seam allowance",
        "Round a turned bib; a bound one has none.",
        "1/4 in",
        ("1/8 in", "5/8 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    make = count("how many", "How many bibs are made.", 1, 24)

    @property
    def allowance(self) -> Length:
        """What is cut beyond the finished outline."""
        return self.seam_allowance if self.edge == TURNED else ZERO


def note_shape(sheet: Worksheet, bib: BibInputs) -> BibShape:
    """Note every size of the outline; raises RefusalError where there can be none."""
    circle = sheet.note("neck_circle", "circle of the neck, flat", bib.neck + bib.neck_ease,
                        "{neck} + {neck_ease}")  # fmt: skip
    radius = sheet.note("neck_radius", "radius of the neck",
                        from_float(float(circle.length) / (2 * pi)),
                        "{neck_circle} / (2 × π)")  # fmt: skip
    outer = sheet.note("strap_radius", "radius of the straps' outer edge",
                       radius.length + bib.strap, "{neck_radius} + {strap}")  # fmt: skip
    wide = _note_share(sheet, "width", bib.width, "across the front")
    drop = _note_share(sheet, "drop", bib.drop, "from the neck down")
    _check(bib, radius.length, outer.length, wide.length, drop.length)
    _note_neck_line(sheet, bib, radius.length)
    return BibShape(
        radius.mm, outer.mm, wide.mm / 2, radius.mm + drop.mm, float(bib.corner), float(bib.gap)
    )


def _note_share(sheet: Worksheet, name: str, given: Length | None, label: str) -> Value:
    """Note a size that is given, or else a share of the chest."""
    if given is not None:
        return sheet.note(f"bib_{name}", f"bib, {label}", given, "", basis=GIVEN)
    chest, share = sheet["chest"].length, sheet[f"{name}_share"].amount
    assert isinstance(share, Fraction)
    return sheet.note(f"bib_{name}", f"bib, {label}", chest * share, "{chest} × {share}",
                      basis=PRACTICE, share=sheet[f"{name}_share"])  # fmt: skip


def _check(bib: BibInputs, radius: Length, outer: Length, wide: Length, drop: Length) -> None:
    if wide <= 2 * outer:
        raise RefusalError(
            f"the front, {TAPE.both(wide)}, would be no wider than the neck with its straps; use a "
            f"width of more than {TAPE.no_less(2 * outer)}, or narrower straps",
            "width",
        )
    if bib.corner > min(wide / 2, drop):
        raise RefusalError(
            f"corner {TAPE.say(bib.corner)} rounds more than the front allows; use at most "
            f"{TAPE.no_more(min(wide / 2, drop))}",
            "corner",
        )
    if 2 * bib.allowance >= radius:
        raise RefusalError(
            f"seam_allowance {TAPE.say(bib.allowance)} fills the neck, whose radius is "
            f"{TAPE.both(radius)}; use less than {TAPE.no_more(radius / 2)}",
            "seam_allowance",
        )
    if bib.gap < 2 * bib.allowance:
        raise RefusalError(
            f"gap {TAPE.say(bib.gap)} leaves no room for the allowances of both ends; use at least "
            f"{TAPE.no_less(2 * bib.allowance)}, or bind the edge",
            "gap",
        )
    if bib.gap > radius:
        raise RefusalError(
            f"gap {TAPE.say(bib.gap)} opens more of the neck than a strap can bridge; use at most "
            f"{TAPE.no_more(radius)}",
            "gap",
        )


def _note_neck_line(sheet: Worksheet, bib: BibInputs, radius: Length) -> None:
    """Note the neck edge, flat and closed; refuses one that does not go round the neck."""
    mm = float(radius)
    along = sheet.note("neck_edge", "neck edge from end to end",
                       from_float(2 * mm * (pi - asin(float(bib.gap) / 2 / mm))),
                       "2 × {neck_radius} × π × (180 - arcsin({gap} / (2 × {neck_radius}))) "
                       "/ 180")  # fmt: skip
    closed = sheet.note("closed_neck", "neck edge when it is closed", along.length - bib.overlap,
                        "{neck_edge} - {overlap}")  # fmt: skip
    if closed.length <= bib.neck:
        lacking = bib.neck - closed.length
        raise RefusalError(
            f"closed, the neck would measure {TAPE.both(closed.length)}, not more than the baby's "
            f"own {TAPE.both(bib.neck)}; make neck_ease more than "
            f"{TAPE.no_less(bib.neck_ease + lacking)}, or overlap and opening smaller",
            "neck_ease",
        )
    sheet.note("neck_room", "room between neck and bib", closed.length - bib.neck,
               "{closed_neck} - {neck}")  # fmt: skip
