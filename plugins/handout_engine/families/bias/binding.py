"""What single and double bindings share: inputs, length, strips and the order of sewing.

A binding wraps a raw edge: sewn on at one side, brought round the edge and fastened at the other.
Its length is that of the raw edge; a mitred square corner then costs nothing extra, as long as the
allowance is as wide as the binding (what the corner's fold takes, the seam line lacks).
"""

from __future__ import annotations

from math import ceil
from typing import ClassVar

from handout_engine.amounts.declaring import Worked, check, group, value
from handout_engine.amounts.inputs import (
    CLOTH,
    SEWING,
    choice,
    count,
    length,
    optional_count,
    optional_length,
)
from handout_engine.amounts.lengths import Length, most
from handout_engine.amounts.naming import NOTHING
from handout_engine.amounts.numbers import Count
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Saying
from handout_engine.amounts.sources import GIVEN, PRACTICE
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.amounts.working_out import Group
from handout_engine.cloth.bias_cloth import BiasInputs, StripsForLength
from handout_engine.shared.binding import check_tail
from handout_engine.shared.strips import Joined, Strips
from handout_engine.working.workings import Grain, Piece, Seam
from handout_engine.working.worksheet import Worksheet

ROUND, OPEN = "round", "open"
BIAS, ACROSS = "bias", "across"
FILLED, TRIMMED = "left as sewn", "trimmed to the binding"


class BindingInputs(BiasInputs):
    """The inputs of every binding; how wide its strip is cut, each kind works out."""

    cloth_name = "binding cloth"
    strip_width: ClassVar[Worked[Length]]

    edge = length(
        "raw edge to bind",
        "Length of the raw edge, all the way round or end to end.",
        "24 in",
        ("1 in", "60 yd"),
    )
    binding = length(
        "binding", "Finished width of the binding on each side.", "1/4 in", ("1/8 in", "2 in")
    )
    ends = choice(
        "ends",
        "Round when the binding meets itself, open when its ends are turned in.",
        ROUND,
        OPEN,
    )
    corners = optional_count(
        "square corners", "Outside corners of 90 degrees, each mitred.", "none", 40
    )
    make = count("how many", "How many such edges are bound.", 1, 40)
    seam_allowance = optional_length(
        "seam allowance",
        "From the raw edges to the first stitching.",
        "as wide as the binding, so that the edge fills it",
        ("1/16 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
        in_use="seam",
    )
    after = choice(
        "allowance",
        "Left as sewn, or trimmed to the binding after sewing.",
        FILLED,
        TRIMMED,
        group=SEWING,
    )
    end_turn = length(
        "end turning",
        "Turned in at each end of an open binding.",
        "1/2 in",
        ("0 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    turn_of_cloth = length(
        "turn of cloth",
        "What the way round thick layers takes of the strip: as much as a "
        "sample falls short at the back.",
        "0 in",
        ("0 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    tail = length(
        "tail",
        "Extra length to join the ends of a round binding.",
        "3 in",
        ("1 in", "20 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    grain = choice(
        "grain of strips",
        "On the bias for curves; across the cloth for straight edges.",
        BIAS,
        ACROSS,
        group=CLOTH,
    )

    @value("allowance of the first seam", basis=PRACTICE)
    def seam(self) -> Length:
        """As wide as the binding, which its edge then fills."""
        return self.binding if self.seam_allowance is None else self.seam_allowance

    @check
    def the_edge_lies_in_the_binding(self) -> None:
        """Refuse an allowance that is wider than the binding which is to hold it."""
        if self.seam > self.binding and self.after == FILLED:
            binding, widest = TAPE.say(self.binding), TAPE.say(self.binding, Saying.DOWN)
            raise RefusalError(
                f"seam_allowance {TAPE.say(self.seam)} is wider than binding {binding}; the edge "
                f"cannot lie inside it (use at most {widest}, or trim it after sewing: after: "
                f'"{TRIMMED}")',
                "seam_allowance",
            )

    @value("where the strip goes round the edge, from its sewn edge")
    def edge_fold(self) -> Length:
        """The front of the binding lies between the first seam and the edge."""
        return self.seam + self.binding

    @value("square corners mitred", basis=GIVEN)
    def corners_mitred(self) -> Count:
        """None, where none are written."""
        return Count(0) if self.corners is None else self.corners

    @check
    def something_is_left_between_the_corners(self) -> None:
        """Refuse corners whose stitching, its allowance before and beyond each, takes the edge."""
        taken = 2 * self.corners_mitred * self.seam
        if taken < self.edge:
            return
        fitting = ceil(self.edge / (2 * self.seam)) - 1
        fewer = at_most(self, "corners", fitting, "use at most {}") or "leave it out"
        raise RefusalError(
            f"corners {self.corners_mitred} with an allowance of {TAPE.both(self.seam)} on both "
            f"sides of each take {TAPE.both(taken)} of edge {TAPE.both(self.edge)}, and nothing is "
            f"left to sew between them; {ways(fewer, 'a narrower allowance')}",
            "corners",
        )

    @value("taken by the mitres beyond the raw edge")
    def corners_take(self) -> Length | None:
        """A mitre takes of the strip what the binding is wider than its allowance."""
        if not self.corners_mitred:
            return None
        return most(2 * self.corners_mitred * (self.binding - self.seam), NOTHING)

    @value("spared where the corners are trimmed off")
    def corners_spare(self) -> Length | None:
        """Corners that are cut off with a wider allowance are not bound."""
        if not self.corners_mitred or self.seam <= self.binding:
            return None
        return 2 * self.corners_mitred * (self.seam - self.binding)

    @value("edge as it is bound")
    def bound_edge(self) -> Length:
        """The raw edge, with what mitres add to it or spare of it."""
        if self.corners_spare is not None:
            return self.edge - self.corners_spare
        return self.edge if self.corners_take is None else self.edge + self.corners_take

    @check
    def the_tail_joins_the_ends(self) -> None:
        """Refuse a tail that is used up where the ends are joined."""
        if self.ends == ROUND:
            check_tail(self, self.inputs["tail"], self.join_takes)

    @value("strip needed for one edge", finishes="bound_edge")
    def strip_length(self) -> Length:
        """The bound edge, and what its ends need."""
        return self.bound_edge + (2 * self.end_turn if self.ends == OPEN else self.tail)

    @value("strip needed in all")
    def length_for_all(self) -> Length | None:
        """Of bias the strips for all edges are joined into one; those across are not."""
        return self.make * self.strip_length if self.grain == BIAS else None

    @group
    def strips(self) -> StripsForLength | StripsAcross:
        """The strips, on the bias or across the cloth."""
        if self.length_for_all is None:
            return StripsAcross(self)
        return StripsForLength(self, self.strip_width, self.length_for_all)

    def cut(self, sheet: Worksheet) -> None:
        """The strips and their seams."""
        self.strips.cut(sheet)
        sheet.seams.append(Seam("binding to edge", self.seam))
        sheet.seams.append(Seam("strip to strip", self.strip_allowance))


class StripsAcross(Group):
    """The strips of straight bindings, joined for each edge by itself."""

    def __init__(self, binding: BindingInputs) -> None:
        """Take the binding that they make."""
        super().__init__()
        self.binding = binding

    @group
    def of_one_edge(self) -> Strips:
        """The strips that join into one binding."""
        asked = self.binding
        joined = Joined(asked.strip_allowance, diagonal=True)
        return Strips(asked.strip_length, asked.strip_width, asked.usable_width, joined, "binding_")

    @value("strips for all edges")
    def strips_used(self) -> Count:
        """As many for each edge."""
        return self.binding.make * self.of_one_edge.strips

    def cut(self, sheet: Worksheet) -> None:
        """Put them on the worksheet."""
        name, count = self.binding.cloth_name, self.strips_used.number
        width, long = sheet["strip_width"], sheet["binding_strip_length"]
        sheet.pieces.append(Piece("binding strip", name, count, width, long, Grain.CROSS))
