"""Tucks side by side in a panel: their room, the lines to mark, and the sample sewn first."""

from __future__ import annotations

from abc import abstractmethod
from collections.abc import Sequence

from handout_engine.amounts.declaring import Worked, check, drafted, value
from handout_engine.amounts.inputs import SEWING, choice
from handout_engine.amounts.lengths import ZERO, Length
from handout_engine.amounts.naming import constant
from handout_engine.amounts.numbers import Count, whole
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.sources import PRACTICE, published
from handout_engine.amounts.ways_out import at_least, ways
from handout_engine.families.tucks.tucking import SpareInputs, TuckedPanel, add_panel
from handout_engine.shared.folds import Fold, FoldedPanel, Lie
from handout_engine.shared.marking import marking_chart
from handout_engine.working.worksheet import Worksheet

REFUSED, ALLOWED = "refused", "allowed"
RIGHT, LEFT = "to the right", "to the left"
AWAY, TOWARDS = "away from the centre", "towards the centre"
SAMPLE_TUCKS = constant("tucks on the sample", whole(3), PRACTICE)


class TuckInputs(TuckedPanel):
    """Tucks that are drawn side by side, with what they need of room, and their sample."""

    overlap = choice(
        "overlap",
        "Whether tucks may lie over one another: refused, unless you want them to.",
        REFUSED,
        ALLOWED,
        group=SEWING,
    )
    span: Worked[Length]
    margin: Worked[Length]
    panel_name = "panel for tucks"

    @property
    @abstractmethod
    def folds(self) -> Sequence[Fold]:
        """The tucks from left to right."""

    @drafted
    def folded(self) -> FoldedPanel:
        """The tucks on the panel as it is worked."""
        return FoldedPanel(self.worked, tuple(self.folds))

    @property
    def centred(self) -> bool:
        """Whether both margins are alike, whatever the width of the panel."""
        return True

    @property
    def gap_input(self) -> str:
        """The input that sets the gaps."""
        return "spacing"

    @property
    @abstractmethod
    def trial(self) -> tuple[Length, Length]:
        """The depth of the tucks on the sample, and from stitching to stitching."""

    @check
    def tucks_have_gaps(self) -> None:
        """Refuse tucks that lie over one another without having been asked to."""
        field, gaps = self.gap_input, self.folded.gaps()[1:-1]
        least = max((gap.covered for gap in gaps), default=ZERO)
        for gap in gaps:
            if gap.length <= ZERO:
                raise RefusalError(f"{field} leaves two tucks on one line; give them a gap", field)
            if gap.crowded and self.overlap == REFUSED:
                way = ways(
                    at_least(self, field, least, f"a {field} of at least {{}}"),
                    f"shallower tucks, or write overlap: {ALLOWED}",
                )
                raise RefusalError(
                    f"tucks {gap.before} and {gap.before + 1} stand {TAPE.say(gap.length)} apart, "
                    f"and {TAPE.say(gap.covered)} of tuck would lie over that gap; use {way}",
                    field,
                )

    @check
    def tucks_clear_the_seams(self) -> None:
        """Refuse outermost tucks that would be caught in the side seams."""
        gaps = self.folded.gaps(self.seam_line)
        left, right = gaps[0], gaps[-1]
        if left.crowded and not self.centred:
            way = at_least(self, "first_margin", left.covered, "a first_margin of at least {}")
            raise RefusalError(
                f"the margin at the left is {TAPE.say(left.length)}, and the tuck that lies over "
                f"it would be caught in the seam; use {ways(way, 'tucks pressed the other way')}",
                "first_margin",
            )
        crowded, side = (left, "left") if self.centred and left.crowded else (right, "right")
        if not crowded.crowded:
            return
        beside = (left, right) if self.centred else (right,)
        lacking = max(gap.covered - gap.length for gap in beside)
        wider = self.wider_by(lacking * len(beside))
        found = (
            f"the tucks leave a margin of {TAPE.say(crowded.length)} at the {side}, and the last "
            "one would be caught in the seam"
            if crowded.length >= ZERO
            else "the tucks stand over more than the finished width"
        )
        raise RefusalError(
            f"{found}; use {ways(wider, 'fewer, shallower or closer tucks')}", "finished_width"
        )

    @value("first line, from the left raw edge")
    def first_line(self) -> Length:
        """Where the marking begins."""
        return self.seam_line + self.margin

    @value("last line, from the left raw edge")
    def last_line(self) -> Length:
        """Where the marking ends, with all the tucks lying flat before it."""
        return self.first_line + self.span + self.take_up

    @value("last line, from the right raw edge")
    def after_last_line(self) -> Length:
        """What is measured to see that no error has added up."""
        return self.panel_cut_width - self.last_line

    @value("sample, cut width")
    def sample_before(self) -> Length:
        """The tucks of the sample, with three spaces more than they need."""
        depth, spacing = self.trial
        return (SAMPLE_TUCKS + 3) * spacing + 2 * SAMPLE_TUCKS * depth

    @value("sample, width when it is tucked")
    def sample_after(self) -> Length:
        """What is measured before the good cloth is cut."""
        return self.sample_before - 2 * SAMPLE_TUCKS * self.trial[0]

    def cut(self, sheet: Worksheet) -> None:
        """The panel, and its marking chart."""
        add_panel(sheet, self, self.panel_name)
        names = [
            (f"{number}, left stitch", f"{number}, fold", f"{number}, right stitch")
            for number in range(1, len(self.folded.folds) + 1)
        ]
        caption = "Lines to mark on the flat panel, tuck by tuck"
        sheet.charts.append(marking_chart(self.folded, caption, names))


class EqualTucks(TuckInputs):
    """Equal tucks side by side."""

    press: str
    tuck_spacing: Worked[Length]

    @property
    @abstractmethod
    def tucks_and_depth(self) -> tuple[Count, Length]:
        """How many tucks, and how deep each."""

    @property
    def trial(self) -> tuple[Length, Length]:
        """The tucks themselves."""
        return self.tucks_and_depth[1], self.tuck_spacing

    @value("cloth taken by the tucks", basis=published("baldt-1916"))
    def take_up(self) -> Length:
        """A tuck takes its depth forth and back."""
        tucks, depth = self.tucks_and_depth
        return 2 * depth * tucks

    @value("from the first stitching to the last")
    def span(self) -> Length:
        """There is one space less than tucks."""
        return self.tuck_spacing * (self.tucks_and_depth[0] - 1)

    @value("from each tuck's first line to the next one's, flat")
    def flat_step(self) -> Length:
        """What every line of a tuck is moved by for the next."""
        return self.tuck_spacing + 2 * self.tucks_and_depth[1]

    @property
    def folds(self) -> Sequence[Fold]:
        """The tucks from left to right."""
        tucks, depth = self.tucks_and_depth
        first, spacing, many = self.first_line, self.tuck_spacing, tucks.number
        return [
            Fold(depth, first + spacing * number, lies(self.press, number, many))
            for number in range(many)
        ]


class TucksSewnThrough(SpareInputs, TuckInputs):
    """Tucks sewn from end to end of a panel with a spare."""

    @property
    def first_depth(self) -> Length:
        """The depth of the tuck that is sewn first: of equal ones that of the sample."""
        return self.trial[0]

    @value("cloth taken by the first tuck")
    def first_takes(self) -> Length:
        """By so much the panel has become narrower when it is sewn."""
        return 2 * self.first_depth

    @value("panel when its first tuck is sewn, raw edge to raw edge")
    def first_sewn(self) -> Length:
        """What is measured before the next is folded."""
        return self.panel_cut_width - self.first_takes


def lies(press: str, number: int, count: int) -> Lie:
    """How the tuck of that number (from 0) lies; a middle one goes with the right half."""
    if press in (RIGHT, LEFT):
        return Lie.RIGHT if press == RIGHT else Lie.LEFT
    on_the_left = number < count // 2
    return Lie.LEFT if on_the_left == (press == AWAY) else Lie.RIGHT
