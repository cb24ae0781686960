"""The sizes of a pieced cover: its blocks, the strips between and round them, its layers.

Everything sewn into a seam is cut its finished size and two seam allowances. What is longer than
the cloth is wide is cut in equal parts and joined with straight seams.
"""

from __future__ import annotations

from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.inputs import CLOTH, SEWING, choice, count, length
from handout_engine.amounts.lengths import Length, inches
from handout_engine.amounts.naming import constant
from handout_engine.amounts.numbers import Count, whole
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Saying
from handout_engine.amounts.sources import PRACTICE, published
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.cloth.cloth import ClothInputs
from handout_engine.families.nursery.nap_cover_parts import Bar, Layer
from handout_engine.shared.strips import Joined, Strips

BLOCKS, FRAME, BACKING, BATTING, BINDING = (
    "block cloth",
    "sashing and border cloth",
    "backing cloth",
    "batting",
    "binding cloth",
)
DOWN, ACROSS = "down the back", "across the back"
YARD = constant("yard", inches(36), published("yard"))


class QuiltInputs(ClothInputs):
    """The inputs of a cover of equal blocks."""

    blocks_across = count("blocks across", "Blocks in a row.", 4, 12, basis=PRACTICE)
    blocks_down = count("blocks down", "Rows of blocks.", 5, 12, basis=PRACTICE)
    block = length(
        "block", "Finished side of a square block.", "7 in", ("1 in", "18 in"), basis=PRACTICE
    )
    sashing = length(
        "sashing",
        "Finished width of the strips between blocks.",
        "1 1/2 in",
        ("0 in", "6 in"),
        basis=PRACTICE,
    )
    border = length(
        "border",
        "Finished width of the border all round.",
        "3 in",
        ("0 in", "12 in"),
        basis=PRACTICE,
    )
    binding = length(
        "binding",
        "Finished width of the double binding.",
        "1/4 in",
        ("1/8 in", "1 in"),
        basis=PRACTICE,
    )
    seam_allowance = length(
        "seam allowance",
        "Of every seam in the top.",
        "1/4 in",
        ("1/8 in", "5/8 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    turn_of_cloth = length(
        "turn of cloth",
        "What the way round the three layers takes of the binding: about "
        "as much as they are thick.",
        "1/8 in",
        ("0 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    strip_allowance = length(
        "joining allowance",
        "Of seams that join strips, and of the backing.",
        "1/4 in",
        ("1/8 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    tail = length(
        "tail",
        "Extra length of binding to join its ends.",
        "10 in",
        ("1 in", "30 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    backing_margin = length(
        "backing margin",
        "Backing beyond the top on each side.",
        "3 in",
        ("0 in", "8 in"),
        group=CLOTH,
        basis=PRACTICE,
    )
    batting_margin = length(
        "batting margin",
        "Batting beyond the top on each side.",
        "2 in",
        ("0 in", "8 in"),
        group=CLOTH,
        basis=PRACTICE,
    )
    backing_seams = choice(
        "backing seams",
        "Which way a seam runs where the backing is joined.",
        DOWN,
        ACROSS,
        group=CLOTH,
    )

    @value("blocks and sashing, across")
    def inner_width(self) -> Length:
        """A sash between every two blocks."""
        return self.blocks_across * self.block + (self.blocks_across - 1) * self.sashing

    @value("blocks and sashing, down")
    def inner_length(self) -> Length:
        """A sash between every two rows."""
        return self.blocks_down * self.block + (self.blocks_down - 1) * self.sashing

    @value("top with its border, finished, across")
    def top_width(self) -> Length:
        """Border at both sides."""
        return self.inner_width + 2 * self.border

    @value("top from raw edge to raw edge, across")
    def raw_width(self) -> Length:
        """What the binding is sewn to."""
        return self.top_width + 2 * self.seam_allowance

    @value("top with its border, finished, down")
    def top_length(self) -> Length:
        """Border at both ends."""
        return self.inner_length + 2 * self.border

    @value("top from raw edge to raw edge, down")
    def raw_length(self) -> Length:
        """What the binding is sewn to."""
        return self.top_length + 2 * self.seam_allowance

    @check
    def the_binding_leaves_the_blocks_alone(self) -> None:
        """Refuse a binding that would cover more than the border."""
        most = self.border + self.seam_allowance
        if self.binding > most:
            raise RefusalError(
                f"binding {TAPE.say(self.binding)} would cover the border and some of the blocks; "
                f"use {ways(at_most(self, 'binding', most), 'a wider border')}",
                "binding",
            )

    @value("border that shows beside the binding")
    def border_shown(self) -> Length:
        """The binding covers the seam allowance and then the border."""
        return self.border + self.seam_allowance - self.binding

    @value("a row of blocks, raw edge to raw edge")
    def row_sewn(self) -> Length:
        """What is measured when the row is sewn."""
        return self.inner_width + 2 * self.seam_allowance

    @value("all rows, raw edge to raw edge")
    def rows_sewn(self) -> Length:
        """What is measured when the rows are sewn together."""
        return self.inner_length + 2 * self.seam_allowance

    @value("blocks")
    def blocks(self) -> Count:
        """All rows."""
        return self.blocks_across * self.blocks_down

    @value("block, cut side")
    def block_cut(self) -> Length:
        """With its seams."""
        return self.block + 2 * self.seam_allowance

    @value("blocks side by side on the cloth")
    def squares_in_a_row(self) -> Count:
        """Whole ones."""
        return (self.usable_width / self.block_cut).rounded_down()

    @value("one yard")
    def yard(self) -> Length:
        """As cloth is sold."""
        return YARD

    @value("rows of blocks in a yard")
    def rows_in_a_yard(self) -> Count:
        """Whole ones."""
        return (self.yard / self.block_cut).rounded_down()

    @value("blocks from one yard of the cloth")
    def squares_in_a_yard(self) -> Count:
        """To buy by, where every block is of another cloth."""
        return self.squares_in_a_row * self.rows_in_a_yard

    @value("sashing, cut width")
    def sashing_cut(self) -> Length | None:
        """With its seams; None without sashing."""
        return self.sashing + 2 * self.seam_allowance if self.sashing else None

    @value("short sashes, between the blocks of a row")
    def short_sashes(self) -> Count | None:
        """None in a row of one block."""
        if not self.sashing or self.blocks_across.number == 1:
            return None
        return (self.blocks_across - 1) * self.blocks_down

    @value("long sashes, between the rows")
    def long_sashes(self) -> Count | None:
        """None of one row."""
        return self.blocks_down - 1 if self.sashing and self.blocks_down.number > 1 else None

    @value("border, cut width")
    def border_cut(self) -> Length | None:
        """With its seams; None without a border."""
        return self.border + 2 * self.seam_allowance if self.border else None

    @group
    def bars(self) -> tuple[Bar, ...]:
        """The strips of the top: sashes, then borders."""
        found = []
        if self.sashing_cut is not None and self.short_sashes is not None:
            found.append(Bar(self, "short_sash_", self.block, self.short_sashes))
        if self.sashing_cut is not None and self.long_sashes is not None:
            found.append(Bar(self, "long_sash_", self.inner_width, self.long_sashes))
        if self.border_cut is not None:
            found.append(Bar(self, "side_border_", self.inner_length, whole(2)))
            found.append(Bar(self, "end_border_", self.top_width, whole(2)))
        return tuple(found)

    @group
    def bar_strips(self) -> tuple[Strips, ...]:
        """The parts that those strips are joined from."""
        return tuple(bar.parts for bar in self.bars)

    @group
    def layers(self) -> tuple[Layer, ...]:
        """Backing and batting, larger than the top."""
        return (
            Layer(self, "backing_", self.backing_margin),
            Layer(self, "batting_", self.batting_margin),
        )

    @property
    def backing_panel(self) -> tuple[str, str]:
        """The side that is joined of panels, and the side along them."""
        sides = "backing_width", "backing_length"
        return sides if self.backing_seams == DOWN else sides[::-1]

    @group
    def backing_strips(self) -> Strips:
        """Panels of the backing run along the cloth; their seams run down or across the back."""
        backing = self.layers[0]
        joined, along = backing.width, backing.length
        if self.backing_seams != DOWN:
            joined, along = along, joined
        return Strips(joined, along, self.usable_width, Joined(self.strip_allowance), "backing_")

    @value("binding, folded in half", saying=Saying.UP)
    def binding_folded(self) -> Length:
        """The allowance, the front, the way round the thickness of the layers, and the back."""
        return 3 * self.binding + self.turn_of_cloth

    @value("binding, cut width", saying=Saying.UP)
    def binding_cut(self) -> Length:
        """Double."""
        return 2 * self.binding_folded

    @value("once round the raw edge")
    def around(self) -> Length:
        """All four sides."""
        return 2 * (self.raw_width + self.raw_length)

    @value("binding needed", finishes="around")
    def binding_length(self) -> Length:
        """With what the join of its ends needs."""
        return self.around + self.tail

    @group
    def binding_strips(self) -> Strips:
        """Strips of the binding, joined on the diagonal."""
        joined = Joined(self.strip_allowance, diagonal=True)
        return Strips(self.binding_length, self.binding_cut, self.usable_width, joined, "binding_")
