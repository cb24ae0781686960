"""What all pleated panels share: their inputs, what is cut for them, the room of their folds."""

from __future__ import annotations

from abc import abstractmethod
from collections.abc import Sequence

from handout_engine.amounts.declaring import Worked, check, drafted, group, value
from handout_engine.amounts.inputs import SEWING, choice, count, length
from handout_engine.amounts.lengths import ZERO, Length, inches
from handout_engine.amounts.naming import constant
from handout_engine.amounts.numbers import Count, larger, whole
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Saying
from handout_engine.amounts.sources import GEOMETRY, PRACTICE
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.cloth.cloth import ClothBought, ClothInputs
from handout_engine.shared.folds import Fold, FoldedPanel, Lie
from handout_engine.shared.hems import DOUBLE, FINISHED, ROLLED, SINGLE, Hem, HemInputs
from handout_engine.shared.marking import marking_chart
from handout_engine.shared.strips import plan_strips
from handout_engine.working.workings import Grain, Piece, Seam
from handout_engine.working.worksheet import Worksheet

OPEN, RING = "open", "ring"
REFUSED, ALLOWED = "refused", "allowed"
USUAL_MARGIN = constant("usual margin", inches("1/4"), PRACTICE)
NO_MARGIN = constant("no margin", ZERO, PRACTICE)
NO_ALLOWANCE = constant("no allowance", ZERO, GEOMETRY)
LINE_NAMES = {
    Lie.LEFT: ("fold", "inner fold", "placement line"),
    Lie.RIGHT: ("placement line", "inner fold", "fold"),
}


class PleatedInputs(HemInputs, ClothInputs):
    """The inputs of every pleated piece: its finished width, its length, its edges."""

    finished_width = length(
        "finished width",
        "Width once pleated, between the seams, or all round in a ring.",
        "20 in",
        ("4 in", "5 yd"),
    )
    pleated_length = length(
        "finished length",
        "From the seam that holds the pleats to the finished hem.",
        "12 in",
        ("1 in", "60 in"),
    )
    hem = choice(
        "hem",
        "Double turned, single turned, rolled, or finished already.",
        DOUBLE,
        SINGLE,
        ROLLED,
        FINISHED,
        group=SEWING,
    )
    top_allowance = length(
        "top allowance",
        "Allowance of the seam that holds the pleats.",
        "1/4 in",
        ("0 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    side_allowance = length(
        "side allowance",
        "Allowance at each open side edge.",
        "1/4 in",
        ("0 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    make = count("how many", "How many such pieces are made.", 1, 50)

    @group
    def hemmed(self) -> Hem:
        """The hem at the foot."""
        return Hem(self, self.pleated_length)

    @value("cut length")
    def panel_cut_length(self) -> Length:
        """With the seam at the top and the hem at the foot."""
        return self.pleated_length + self.top_allowance + self.hemmed.hem_allowance

    @value("from the upper raw edge to the finished hem")
    def hemmed_length(self) -> Length:
        """What is measured before pleating."""
        return self.pleated_length + self.top_allowance


class PleatInputs(PleatedInputs):
    """Pleats that are folded from one width of joined cloth."""

    ends = choice(
        "ends",
        "Open when the sides are sewn into seams, ring when they join in a round.",
        OPEN,
        RING,
    )
    join_allowance = length(
        "join allowance",
        "Allowance of a seam between widths of cloth.",
        "1/4 in",
        ("1/16 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    overlap = choice(
        "overlap",
        "Whether the folded cloth of one pleat may lie over that of the next: refused, unless "
        "you want it to.",
        REFUSED,
        ALLOWED,
        group=SEWING,
    )
    pleats: Count
    pleat_depth: Worked[Length]
    one_is = "pleat"

    @property
    def doubled(self) -> Count:
        """How often the cloth is doubled: once in a knife pleat, twice in a box pleat."""
        return self.pleats

    @property
    @abstractmethod
    def shown(self) -> Length:
        """What shows of each pleat."""

    @property
    def folds_each(self) -> int:
        """How many folds one pleat has."""
        return 2

    @property
    @abstractmethod
    def lying(self) -> Sequence[Fold]:
        """The folds from left to right."""

    @drafted
    def panel(self) -> FoldedPanel:
        """The pleated panel."""
        return FoldedPanel(self.pleated_width, tuple(self.lying))

    @value("cloth taken by the pleats")
    def take_up(self) -> Length:
        """Each fold takes its depth forth and back."""
        return 2 * self.pleat_depth * self.doubled

    @value("allowance at each end of the joined cloth")
    def edge(self) -> Length:
        """A ring has no ends."""
        return self.side_allowance if self.ends == OPEN else NO_ALLOWANCE

    @value("pleated width with its end allowances")
    def pleated_width(self) -> Length:
        """What is measured once it is pleated."""
        return self.finished_width + 2 * self.edge

    @value("joined cloth before pleating")
    def flat_width(self) -> Length:
        """What the pleats take is joined to the finished width."""
        return self.finished_width + self.take_up + 2 * self.edge

    @value("width taken by each joining seam")
    def join_takes(self) -> Length:
        """A straight seam takes its allowance twice."""
        return 2 * self.join_allowance

    @check
    def folds_have_room(self) -> None:
        """Refuse pleats whose folded cloth has no room behind the pleats beside them."""
        gaps = self.panel.gaps(self.edge)[1:-1]
        fitting = [gap.length / self._lying_over(gap.before) for gap in gaps if gap.covered]
        for gap in gaps:
            if gap.crowded and self.overlap == REFUSED:
                lying = ("one depth lies", "two depths lie")[self._lying_over(gap.before) - 1]
                shallow = at_most(self, "depth", min(fitting), "a depth of at most {}")
                raise RefusalError(
                    f"{lying} behind {TAPE.say(gap.length)} of pleat, {TAPE.say(gap.covered)} in "
                    "all, so the folds would overlap; use "
                    f"{ways(shallow, f'overlap: {ALLOWED}')}",
                    "depth",
                )

    def _lying_over(self, before: int) -> int:
        """How many of the folds at both sides of a gap lie over it, where one does."""
        first, second = self.panel.folds[before - 1 : before + 1]
        return 2 if first.lies is Lie.RIGHT and second.lies is Lie.LEFT else 1

    @check
    def folds_clear_the_seams(self) -> None:
        """Refuse outermost pleats whose folded cloth would be caught in a seam."""
        gaps = self.panel.gaps(self.edge)
        for gap in (gaps[0], gaps[-1]):
            if gap.crowded:
                shallow = at_most(self, "depth", gap.length, "a depth of at most {}")
                raise RefusalError(
                    f"the outermost pleat has {TAPE.say(gap.length)} to the seam and lies "
                    f"{TAPE.say(gap.covered)} behind it, so it would be caught in the seam; use "
                    f"{ways(shallow, 'a wider panel')}",
                    "depth",
                )

    @check
    def widths_of_cloth_join(self) -> None:
        """Refuse joins that take a whole width, and more widths than anyone joins."""
        plan_strips(self.flat_width, self.usable_width, self.join_takes, self.ends == RING)

    @value("widths of cloth for one")
    def panels(self) -> Count:
        """A row of widths has one join less than widths, a ring as many."""
        self.widths_of_cloth_join()
        each = self.usable_width - self.join_takes
        if self.ends == RING:
            return (self.flat_width / each).rounded_up()
        return larger(((self.flat_width - self.join_takes) / each).rounded_up(), whole(1))

    @value("each width, cut", saying=Saying.UP)
    def panel_cut_width(self) -> Length:
        """An equal share of the joined cloth and of what all joins take."""
        if self.ends == RING:
            return self.flat_width / self.panels + self.join_takes
        return (self.flat_width + self.join_takes * (self.panels - 1)) / self.panels

    @value("sample, cut width")
    def sample_before(self) -> Length:
        """One pleat, with as much plain cloth at each side as it shows."""
        return 3 * self.shown + 2 * self.folds_each * self.pleat_depth

    @value("sample, width when it is pleated")
    def sample_after(self) -> Length:
        """What is measured before the good cloth is cut."""
        return 3 * self.shown

    @group
    def bought(self) -> ClothBought:
        """The cloth of the widths."""
        return ClothBought(self, "cloth")

    def cut(self, sheet: Worksheet) -> None:
        """The widths of cloth, their seams, and the marking chart."""
        count, what = self.panels.number * self.make.number, self.one_is
        width, length = sheet["panel_cut_width"], sheet["panel_cut_length"]
        piece = Piece("width for pleats", "cloth", count, width, length, Grain.STRAIGHT)
        sheet.pieces.append(piece)
        sheet.seams.append(Seam("between widths of cloth", self.join_allowance))
        sheet.seams.append(Seam("seam that holds the pleats", self.top_allowance))
        names = [
            [f"{what} {number // self.folds_each + 1}, {line}" for line in LINE_NAMES[fold.lies]]
            for number, fold in enumerate(self.panel.folds)
        ]
        sheet.charts.append(marking_chart(self.panel, "Lines to mark on the joined cloth", names))


class MarginInputs(PleatInputs):
    """Pleats with a plain margin at each side."""

    margin: Length | None

    @property
    def usual_margin(self) -> Length:
        """The margin that is asked for, or that is usual."""
        if self.margin is not None:
            return self.margin
        return USUAL_MARGIN if self.ends == OPEN else NO_MARGIN

    @check
    def margins_leave_some_to_pleat(self) -> None:
        """Refuse margins that take the whole width."""
        if 2 * self.usual_margin >= self.finished_width:
            raise RefusalError(
                f"margins of {TAPE.say(self.usual_margin)} leave nothing to pleat; use less than "
                f"{TAPE.no_more(self.finished_width / 2)}",
                "margin",
            )
