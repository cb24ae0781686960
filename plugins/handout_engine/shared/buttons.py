"""What every buttoned closing asks for: the button, its hole, and the overlap it needs."""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.angles import PI
from handout_engine.amounts.declaring import Worked, check, value
from handout_engine.amounts.inputs import SEWING, choice, count, length, optional_length
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.numbers import Count
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Saying
from handout_engine.amounts.sources import PRACTICE, published
from handout_engine.working.technique import Technique

FINE, BULKY = "thin", "bulky"
BY_THICKNESS, FLAT = "diameter and thickness", "flat button"


class ButtonInputs(Technique):
    """The button, and how far the cloth reaches beyond it."""

    button = length(
        "button",
        "Its diameter; lines may be written too, 16 lines are 2/5 in (10 mm).",
        "16 lines",
        ("1/8 in", "2 in"),
    )
    clearance = length(
        "clearance",
        "Least cloth between the button and the finished edge.",
        "1/4 in",
        ("0 in", "1 in"),
        group=SEWING,
        basis=published("extension-576"),
    )
    extension = optional_length(
        "extension",
        "From the centre line to the finished edge of the front.",
        "half the button and the clearance",
        ("1/8 in", "3 in"),
        in_use="beyond_centre",
    )

    @value("least extension for this button", basis=published("extension-576"))
    def least_extension(self) -> Length:
        """Half the button lies beyond the centre line, and some cloth beyond that."""
        return self.button / 2 + self.clearance

    @check
    def the_button_lies_on_the_extension(self) -> None:
        """Refuse too little cloth beyond the centre line."""
        if self.extension is not None and self.extension < self.least_extension:
            raise RefusalError(
                f"extension {TAPE.say(self.extension)} is too little for a button of "
                f"{TAPE.say(self.button)}, which would stand within {TAPE.say(self.clearance)} of "
                f"the edge; use at least {TAPE.no_less(self.least_extension)}, a smaller button or "
                "less clearance",
                "extension",
            )

    @value("front, from the centre line to its edge")
    def beyond_centre(self) -> Length:
        """As asked for, or as little as the button needs."""
        return self.least_extension if self.extension is None else self.extension


class HoleInputs(ButtonInputs):
    """How long a buttonhole is."""

    button_thickness = length(
        "button thickness",
        "How thick it is; of a ball button, its diameter.",
        "1/8 in",
        ("1/32 in", "1 in"),
    )
    rule = choice(
        "length of the hole",
        "Worked out from diameter and thickness, or as for a flat button from its diameter alone.",
        BY_THICKNESS,
        FLAT,
        group=SEWING,
    )
    cloth = choice(
        "cloth",
        "Bulky cloth, such as flannel or quilted cotton, takes a longer hole.",
        FINE,
        BULKY,
        group=SEWING,
    )
    bulk = length(
        "for bulk",
        "Added to the hole in bulky cloth.",
        "1/8 in",
        ("0 in", "1/2 in"),
        group=SEWING,
        basis=published("extension-576"),
    )
    flat_extra = length(
        "for a flat button",
        "Added to the diameter of a flat button.",
        "3 mm",
        ("0 mm", "12 mm"),
        group=SEWING,
        basis=published("tanzania-2022"),
    )

    @value("hole by diameter and thickness", basis=published("extension-576"))
    def hole_by_thickness(self) -> Length:
        """The button passes on edge."""
        return self._with_bulk(self.button + self.button_thickness)

    @value("hole of a flat button", basis=published("tanzania-2022"))
    def hole_of_flat_button(self) -> Length:
        """By the diameter alone."""
        return self._with_bulk(self.button + self.flat_extra)

    def _with_bulk(self, hole: Length) -> Length:
        return hole + self.bulk if self.cloth == BULKY else hole

    def label_of(self, label: str) -> str:
        """Name the rule by which the hole is not made."""
        return label.replace("{}", FLAT if self.rule == BY_THICKNESS else BY_THICKNESS)

    @value("buttonhole, from end to end")
    def buttonhole(self) -> Length:
        """By the chosen rule."""
        return self.hole_by_thickness if self.rule == BY_THICKNESS else self.hole_of_flat_button

    @value("buttonhole by the other rule ({}), to compare")
    def buttonhole_compared(self) -> Length:
        """By the rule that was not chosen."""
        return self.hole_of_flat_button if self.rule == BY_THICKNESS else self.hole_by_thickness


class ShankInputs(HoleInputs):
    """How a button is sewn on: its shank, and the thread that all buttons take."""

    all_buttons: ClassVar[Worked[Count]]

    edge_thickness = length(
        "thickness of the edge",
        "All layers of the buttonholed edge, pressed together.",
        "1/16 in",
        ("1/64 in", "1/2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    stitches = count(
        "stitches", "Up and down again through one button.", 4, 20, group=SEWING, basis=PRACTICE
    )
    strands = count("strands", "Two for doubled thread.", 2, 4, group=SEWING, basis=PRACTICE)
    across_holes = length(
        "across the holes",
        "From one hole of the button to the next.",
        "2 mm",
        ("1 mm", "12 mm"),
        group=SEWING,
        basis=PRACTICE,
    )
    wraps = count(
        "turns round the shank", "How often it is wound round.", 5, 20, group=SEWING, basis=PRACTICE
    )
    shank_width = length(
        "width of the shank",
        "Across the stitches under the button.",
        "2 mm",
        ("1 mm", "12 mm"),
        group=SEWING,
        basis=PRACTICE,
    )
    thread_ends = length(
        "thread ends",
        "For each strand, to begin, to fasten off and to hold.",
        "8 in",
        ("2 in", "36 in"),
        group=SEWING,
        basis=PRACTICE,
    )

    @value("shank between button and cloth")
    def shank(self) -> Length:
        """The buttonholed edge lies under the button."""
        return self.edge_thickness

    @value("thread in one stitch, up and down again")
    def stitch_takes(self) -> Length:
        """Through cloth, shank and button, and across."""
        once = self.edge_thickness + self.shank + self.button_thickness + self.across_holes
        return 2 * once

    @value("thread for one button, all strands", saying=Saying.UP)
    def thread_for_one(self) -> Length:
        """The stitches, the turns round the shank, and the ends."""
        round_shank = self.wraps * PI * self.shank_width
        strand = self.stitches * self.stitch_takes + round_shank + self.thread_ends
        return self.strands * strand

    @value("thread for all buttons", saying=Saying.YARDAGE)
    def thread_for_all(self) -> Length:
        """As much for each."""
        return self.all_buttons * self.thread_for_one
