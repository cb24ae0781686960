"""A hem on a curved lower edge: how much too long its inner edge is, eased in or faced."""

from __future__ import annotations

from handout_engine.amounts.angles import arc
from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.inputs import SEWING, angle, choice, length, percentage
from handout_engine.amounts.lengths import Length, inches
from handout_engine.amounts.numbers import Ratio
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Saying
from handout_engine.amounts.sources import PRACTICE, published
from handout_engine.amounts.values import sentence
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.amounts.working_out import Group
from handout_engine.drawing.scene import Scene
from handout_engine.families.edges.curved_hem_drawing import CurvedHem as Drawn
from handout_engine.families.edges.curved_hem_drawing import flat_curve, turned_curve
from handout_engine.families.edges.curved_hem_steps import add_sample, add_steps
from handout_engine.working.cautions import LONG_HEM, PINS_AND_IRON
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Cell, Chart, Seam, Supply
from handout_engine.working.worksheet import Worksheet

EASED, FACED = "eased", "faced"
CHARTED = tuple(inches(depth) for depth in ("1/4", "1/2", "1", "3/2", "2"))


class Eased(Group):
    """What a turned-up hem has too much of, and loses by easing."""

    def __init__(self, curve: CurvedHem) -> None:
        """Take the hem."""
        super().__init__()
        self.curve = curve

    @value("hem's inner edge, before it is turned up")
    def inner_fold(self) -> Length:
        """It lies outside the finished edge, on a larger circle."""
        return self.curve.edge + self.curve.for_the_depth

    @value("excess to ease in")
    def excess(self) -> Length:
        """Turned up, the larger circle lies on a smaller one."""
        return self.inner_fold - self.curve.line_lies

    @value("excess in each quarter")
    def quarter_excess(self) -> Length:
        """What lies between two quarter marks."""
        return self.excess / 4

    @value("share that is eased in", saying=Saying.PERCENT)
    def ease_share(self) -> Ratio:
        """What is held against the most that the cloth takes."""
        return self.excess / self.curve.line_lies

    @check
    def the_cloth_takes_it(self) -> None:
        """Refuse more than goes in without pleats."""
        curve, most = self.curve, self.curve.most_ease
        if self.ease_share <= most:
            return
        deepest = most * curve.edge / (curve.edge_of_radius * (2 + most))
        shallower = at_most(curve, "hem_depth", deepest, "a hem of at most {}")
        raise RefusalError(
            f"hem_depth {TAPE.say(curve.hem_depth)} on this curve leaves "
            f"{TAPE.say(self.ease_share, Saying.PERCENT)} to ease in, more than most_ease "
            f"{TAPE.say(most, Saying.PERCENT)}; use "
            f"{ways(shallower, 'a faced hem', 'a rolled one')}",
            "hem_depth",
        )


class BiasFacing(Group):
    """What the upper edge of a bias strip has too much of, and loses under the iron."""

    def __init__(self, curve: CurvedHem) -> None:
        """Take the hem."""
        super().__init__()
        self.curve = curve

    @value("what the strip's upper edge must lose")
    def excess(self) -> Length:
        """The strip is as long as the finished edge, and lies on a smaller circle."""
        return self.curve.for_the_depth

    @value("loss in each quarter")
    def quarter_excess(self) -> Length:
        """What lies between two quarter marks."""
        return self.excess / 4

    @value("share that the strip's upper edge loses", saying=Saying.PERCENT)
    def ease_share(self) -> Ratio:
        """Bias takes more of it than straight cloth does."""
        return self.excess / self.curve.line_lies


class CurvedHem(Technique):
    """A hem round a flared or circular skirt."""

    title = "Curved hem"
    family = "edges"
    summary = (
        "How much longer the raw edge of a flared or circular hem is than the line it lies on, and "
        "whether it can be eased in or wants a facing."
    )

    edge = length("hem edge", "The finished lower edge, once round.", "100 in", ("4 in", "30 yd"))
    turning = angle(
        "turning",
        "How far the lower edge turns on the flat pattern, all pieces together: a "
        "full circle 360, a half circle 180, a slight flare 20 to 60.",
        "360",
        ("1", "1080"),
    )
    finish = choice(
        "finish",
        "Turned up with its fullness eased in, or faced with a bias strip.",
        EASED,
        FACED,
        group=SEWING,
    )
    hem_depth = length(
        "hem depth",
        "From the finished edge to the hem's inner edge.",
        "1/4 in",
        ("1/16 in", "20 in"),
        group=SEWING,
        basis=published("oregon-l87"),
    )
    turn = length(
        "turned under",
        "Raw edge turned under; 0 for one that is overcast.",
        "1/4 in",
        ("0 in", "2 in"),
        group=SEWING,
        basis=published("oregon-l87"),
    )
    most_ease = percentage(
        "most ease",
        "Greatest share that shrinks or gathers in without pleats; wool takes "
        "more, firm cotton less.",
        "6 %",
        40,
        group=SEWING,
        basis=PRACTICE,
    )
    facing_seam = length(
        "facing seam",
        "Allowance of the seam along the edge.",
        "1/4 in",
        ("1/8 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    facing_overlap = length(
        "overlap",
        "Added to the length of the bias strip to join its ends.",
        "1 in",
        ("0 in", "6 in"),
        group=SEWING,
        basis=PRACTICE,
    )

    @property
    def faced(self) -> bool:
        """Whether a bias strip is sewn on."""
        return self.finish != EASED

    @value("edge for each length of its radius")
    def edge_of_radius(self) -> Ratio:
        """That of an arc as wide as the edge turns."""
        return arc(self.turning)

    @value("radius of the curve at the finished edge")
    def radius(self) -> Length:
        """That of a circle with such an edge; several pieces lie on it one after the other."""
        return self.edge / self.edge_of_radius

    @check
    def the_hem_lies_on_its_curve(self) -> None:
        """Refuse a hem that comes near the centre of its circle."""
        if 2 * self.hem_depth > self.radius:
            most = at_most(self, "hem_depth", self.radius / 2)
            raise RefusalError(
                f"hem_depth {TAPE.say(self.hem_depth)} is more than half of the radius of the "
                f"curve, {TAPE.say(self.radius)}; use {ways(most, 'a wider curve')}",
                "hem_depth",
            )

    @check
    def the_turn_lies_in_the_hem(self) -> None:
        """Refuse a turn deeper than the hem it lies in."""
        if self.turn > self.hem_depth:
            raise RefusalError(
                f"turn {TAPE.say(self.turn)} is deeper than the hem, {TAPE.say(self.hem_depth)}; "
                f"use {ways(at_most(self, 'turn', self.hem_depth), 'a deeper hem')}",
                "turn",
            )

    @value("change of length over the depth of the hem")
    def for_the_depth(self) -> Length:
        """An edge so much nearer to the centre is so much shorter."""
        return self.hem_depth * self.edge_of_radius

    @value("line on which the hem's inner edge lies")
    def line_lies(self) -> Length:
        """It lies inside the finished edge, on a smaller circle."""
        return self.edge - self.for_the_depth

    @value("hem allowance")
    def hem_allowance(self) -> Length:
        """What is left below the finished edge: of a faced one, its seam."""
        return self.facing_seam if self.faced else self.hem_depth + self.turn

    @value("bias strip, cut width")
    def facing_width(self) -> Length | None:
        """Its seam, what it covers, and its upper edge turned under."""
        return self.facing_seam + self.hem_depth + self.turn if self.faced else None

    @value("bias strip, joined length", saying=Saying.UP, finishes="edge")
    def facing_length(self) -> Length | None:
        """Once round, and what joins its ends."""
        return self.edge + self.facing_overlap if self.faced else None

    @group
    def loses(self) -> Eased | BiasFacing:
        """What goes in, of the hem itself or of its facing."""
        return BiasFacing(self) if self.faced else Eased(self)

    def cut(self, sheet: Worksheet) -> None:
        """The seam, and what hems of other depths would leave to ease in."""
        name = "facing of the lower edge" if self.faced else "hem of the lower edge"
        sheet.seams.append(Seam(name, self.hem_allowance))
        rows = [self._charted(each) for each in CHARTED if self._loses(each) < self.edge]
        if not rows:
            rows.append((self.hem_depth, self._loses(self.hem_depth), sentence("too much")))
        headings = ("Depth", "Excess", "Share")
        sheet.charts.append(Chart("Turned-up hems on this edge", headings, tuple(rows)))

    def _loses(self, depth: Length) -> Length:
        """What the inner edge of a turned-up hem of that depth has too much of."""
        return 2 * depth * self.edge_of_radius

    def _charted(self, depth: Length) -> tuple[Cell, ...]:
        excess = self._loses(depth)
        share = 100 * (excess / (self.edge - excess / 2))
        return depth, excess, sentence("{share} %", share=share)

    def sew(self, sheet: Worksheet) -> None:
        """From the hanging skirt to the pressed hem."""
        sheet.have("fine thread to match", "a fine needle for the cloth", "a hem gauge")
        if self.faced:
            sheet.supplies.append(Supply("bias strip", sheet["facing_length"]))
        sheet.cautions.extend((PINS_AND_IRON, LONG_HEM))
        add_sample(sheet)
        add_steps(sheet, self.faced)

    def draw(self, sheet: Worksheet) -> None:
        """A part of the hem finished, and the same part flat."""
        turn = sheet["turn"] if self.turn and not self.faced else None
        turning, takes = float(self.turning), float(self.hem_allowance)
        hem = Drawn(sheet["radius"], sheet["hem_depth"], turn, turning, takes, self.faced)
        finished = Scene(
            sentence("A part of the finished hem"),
            sheet.sentence("Hem {hem_depth} deep on a curve of radius {radius}."),
            turned_curve(hem),
            tallest=200.0,
        )
        how = "; the facing is tinted." if self.faced else ", with its fullness eased in."
        caption = "A part of the finished hem, wrong side up" + how
        sheet.show("finished", caption, finished, finished=True)
        flat = Scene(
            sentence("The same part, flat"),
            sheet.sentence(
                "The facing's upper edge has to lose {excess}."
                if self.faced
                else "The hem's inner edge is {excess} longer than the line it will lie on."
            ),
            flat_curve(hem, sheet["excess"]),
            tallest=200.0,
        )
        caption = (
            "The flat edge, wrong side up: the seam line dashed, and in thin dashes the line on "
            "which its upper edge will lie."
            if self.faced
            else "The same part before it is turned up, wrong side up: folds dash-dotted, and in "
            "thin dashes the line on which the hem's edge will lie."
        )
        sheet.show("flat", caption, flat)


TECHNIQUE = CurvedHem
