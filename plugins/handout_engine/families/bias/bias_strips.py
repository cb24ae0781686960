"""Bias strips cut from a rectangle at 45 degrees to its edges and joined end to end."""

from __future__ import annotations

from collections.abc import Sequence
from functools import cached_property

from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.inputs import CLOTH, length, optional_length
from handout_engine.amounts.lengths import Length, inches
from handout_engine.amounts.naming import constant
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.cloth.bias import Band, diagonal
from handout_engine.cloth.bias_cloth import BiasInputs, JoinedStrips, StripsForLength, useful
from handout_engine.families.bias.bias_drawing import joined_strip
from handout_engine.families.bias.bias_pictures import cloth_picture
from handout_engine.families.bias.binding_steps import chosen_strips
from handout_engine.working.cautions import PINS_AND_IRON
from handout_engine.working.workings import Picture, Seam, Supply
from handout_engine.working.worksheet import Worksheet

USUAL_ACROSS = constant("usual width", inches(18), PRACTICE)
USUAL_ALONG = constant("usual length", inches(22), PRACTICE)


class BiasStrips(BiasInputs):
    """Strips cut one by one from a rectangle, each listed with its length."""

    title = "Bias strips, cut and joined"
    family = "bias"
    summary = (
        "Strips cut from a rectangle at 45 degrees, each with its length, joined on the grain."
    )
    known_by = "cloth"

    width = length("strip width", "Cut width of the strips.", "1 1/4 in", ("1/4 in", "12 in"))
    cloth_across = optional_length(
        "cloth at hand, across",
        "Width of the rectangle, square to the selvage.",
        "18 in, or as little as gives the wanted length",
        ("1 in", "120 in"),
        in_use="across",
    )
    cloth_along = optional_length(
        "cloth at hand, along",
        "Length of the rectangle, along the selvage.",
        "22 in, or as little as gives the wanted length",
        ("1 in", "20 yd"),
        in_use="along",
    )
    wanted = optional_length(
        "length wanted",
        "Length of the joined strip, instead of the size of the cloth.",
        "what the cloth at hand gives",
        ("1 in", "100 yd"),
    )
    least_strip = length(
        "least useful strip",
        "Shorter strips are left as scraps.",
        "6 in",
        ("1/2 in", "60 in"),
        group=CLOTH,
        basis=PRACTICE,
    )

    @check
    def the_length_or_the_cloth_is_given(self) -> None:
        """Refuse a wanted length beside a size of the cloth."""
        if self.wanted and (self.cloth_across or self.cloth_along):
            raise RefusalError(
                "wanted and the cloth at hand exclude each other; write the length wanted, or the "
                "size of the cloth",
                "wanted",
            )

    @group
    def strips(self) -> JoinedStrips:
        """Those of the cloth at hand, or as many as give the wanted length."""
        if self.wanted is None:
            return StripsAtHand(self, self.width)
        return StripsForLength(self, self.width, self.wanted)

    @value("trial strip, about")
    def trial(self) -> Length:
        """Long enough to pull."""
        return 8 * self.width

    @value("from the corner to the tenth line, along either edge")
    def tenth_line(self) -> Length:
        """A line that is easily measured again."""
        return 10 * self.strips.edge_step

    def cut(self, sheet: Worksheet) -> None:
        """The strips and how they are joined."""
        self.strips.cut(sheet)
        sheet.seams.append(Seam("strip to strip", self.strip_allowance))

    def sew(self, sheet: Worksheet) -> None:
        """The cloth ruled and cut, the strips joined."""
        sheet.have("a long ruler with a 45-degree line", "a removable marker tried on a scrap")
        sheet.supplies.append(Supply("sharp shears, or a rotary cutter on its mat"))
        sheet.cautions.append(PINS_AND_IRON)
        _add_sample(sheet)
        used = self.strips.used
        sheet.step(
            "Press the cloth and straighten it on a thread, so that its corners are square. Cut "
            "the piece {across} across and {along} along the selvage."
        )
        sheet.step(
            "From one corner measure {edge_step} along both edges and rule a line between the two "
            "marks: it lies at 45 degrees, on the true bias. Rule on, each line {width} from the "
            "last, measured square to it, until there are {bands} strips.",
            "from the corner to the tenth line it is {tenth_line} along either edge, if the edge "
            "reaches so far; if the two edges differ, the lines have left the true bias.",
        )
        sheet.step(
            "Number the strips on the right side from that corner, mark the corner of each that is "
            "nearest the selvage, and cut along the lines. Keep "
            f"{chosen_strips(sheet)}; trim an end that comes to a point along a thread of the "
            f"cloth."
        )
        if len(used) > 1:
            sheet.step(
                "Join the strips whose ends slant alike first. Lay two ends right sides together "
                "so that the strips cross at a right angle, their ends level and each tip standing "
                "out by {tip}, measured along the ends; sew {strip_allowance} from the ends, from "
                "notch to notch."
                + (
                    " Where the ends slant against each other, turn every other strip end for end, "
                    "right side up, so that the slants match."
                    if any(band.shape != "parallelogram" for band in used)
                    else ""
                ),
                "the edges of the strip run on in one line across each seam; if they step, the "
                "tips stood out unevenly.",
            )
            sheet.step(
                "Press the seams open with an up and down movement, and snip off the tips.",
                "joined end to end it is {joined_length} along the middle.",
            )

    def draw(self, sheet: Worksheet) -> None:
        """The joined strip, and the strips on the cloth."""
        joined = joined_strip(sheet["width"], sheet["joined_length"], sheet["strip_allowance"])
        caption = sentence("The strip, joined on the grain.")
        sheet.pictures.append(Picture("finished", caption, joined, finished=True))
        sheet.pictures.append(cloth_picture(sheet, self.strips))


class StripsAtHand(JoinedStrips):
    """The strips of a given rectangle, all of them in the chart."""

    technique: BiasStrips

    def label_of(self, label: str) -> str:
        """The cloth is there before the strips are."""
        return label.replace(" for the strips", "").removesuffix(" the selvage")

    @property
    def sides(self) -> tuple[Length, Length]:
        """As given, or as is usual."""
        asked = self.technique
        return asked.cloth_across or USUAL_ACROSS, asked.cloth_along or USUAL_ALONG

    @property
    def listed(self) -> Sequence[Band]:
        """Scraps too."""
        return self.every

    @cached_property
    def longest(self) -> Length | None:
        """The longest strip; None where there is no whole one."""
        usable = [band.usable for band in self.every if band.usable.mm > 0]
        return max(usable, default=None)

    @check
    def one_strip_is_useful(self) -> None:
        """Refuse a cloth without a useful strip."""
        asked, longest = self.technique, self.longest
        if longest is None:
            raise RefusalError(
                f"width {TAPE.say(asked.width)} gives no whole strip in this cloth; use narrower "
                "strips or more cloth",
                "width",
            )
        if longest < asked.least_strip:
            most = diagonal(min(self.across, self.along))
            raise RefusalError(
                f"the longest strip is {TAPE.both(longest)}, shorter than the least useful strip "
                f"{TAPE.say(asked.least_strip)}, and no strip of this cloth can be longer than "
                f"{TAPE.no_more(most)}; use a shorter least_strip, narrower strips, or more cloth",
                "width",
            )

    def chosen(self, cut: Sequence[Band]) -> Sequence[Band]:
        """All that are long enough."""
        return useful(cut, self.technique.least_strip)


def _add_sample(sheet: Worksheet) -> None:
    """Bias gives: how wide a strip is while it is pulled is worth knowing before cutting."""
    sheet.trial(
        "Cut one strip {width} wide and about {trial} long, press it with a little "
        "steam, pulling gently, and let it cool.",
        "its width at the middle. If it is less than {width} by more than you can spare, "
        "cut the strips wider by that much; soft and loosely woven cloth gives most.",
    )


TECHNIQUE = BiasStrips
