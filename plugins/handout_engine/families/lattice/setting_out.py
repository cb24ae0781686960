"""A lattice set out in its panel: how the tubes are spaced, named, crossed and knotted."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from itertools import groupby
from math import ceil

from handout_engine.amounts.angles import Angle, sine
from handout_engine.amounts.declaring import check, drafted, value
from handout_engine.amounts.inputs import SEWING, angle, choice, length
from handout_engine.amounts.lengths import Length, from_float, total
from handout_engine.amounts.numbers import Count
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.sources import DRAWN, PRACTICE
from handout_engine.amounts.values import Value, sentence
from handout_engine.amounts.ways_out import at_least, at_most, ways
from handout_engine.families.lattice.panels import PanelInputs
from handout_engine.families.lattice.tube_strips import NamedTube
from handout_engine.families.lattice.weave import (
    FALLING,
    RISING,
    Crossing,
    Tube,
    Weave,
    band_numbers,
    crossings,
    named,
    tubes,
)
from handout_engine.geometry import points
from handout_engine.geometry.polygons import area, distance_to_outline
from handout_engine.working.workings import Cell, Chart

ALTERNATE, EVERY, NONE = "alternate crossings", "every crossing", "none"
MOST_TUBES = 160
MOST_CROSSINGS = 700
LEAST_ANGLE, MOST_ANGLE = 30, 150


class WeaveInputs(PanelInputs):
    """How the tubes of a lattice lie in its outline, one crossing at its centre."""

    gap = length(
        "gap",
        "Opening between two tubes of one set, measured square to them.",
        "3/8 in",
        ("1/16 in", "3 in"),
        basis=PRACTICE,
    )
    rising_angle = angle(
        "rising angle",
        "Slope of the tubes that rise to the right, from the level.",
        "45",
        ("0", "90"),
        basis=PRACTICE,
    )
    falling_angle = angle(
        "falling angle",
        "Slope of the tubes that fall to the right, from the level.",
        "45",
        ("0", "90"),
        basis=PRACTICE,
    )
    margin = length(
        "margin",
        "What each tube has beyond the outline at both ends.",
        "1/2 in",
        ("1/8 in", "3 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    knots = choice(
        "knots",
        "Where the tubes are knotted to each other.",
        ALTERNATE,
        EVERY,
        NONE,
        group=SEWING,
        basis=PRACTICE,
    )
    knot_clearance = length(
        "knot clearance",
        "No knot nearer to the outline than this.",
        "1/8 in",
        ("0 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    tube_width: Length
    """The finished width of what is woven."""

    @value("from tube to tube of one set, square to them")
    def pitch(self) -> Length:
        """One tube and the gap beside it."""
        return self.tube_width + self.gap

    @value("angle between the two sets")
    def crossing_angle(self) -> Angle:
        """One set leans one way from the level, the other the other way."""
        return self.rising_angle + self.falling_angle

    @check
    def the_sets_cross(self) -> None:
        """Refuse two sets that are too nearly parallel to be woven."""
        if LEAST_ANGLE <= self.crossing_angle <= MOST_ANGLE:
            return
        wide = self.rising_angle >= self.falling_angle
        field, beside = (
            ("rising_angle", self.falling_angle) if wide else ("falling_angle", self.rising_angle)
        )
        way = ways(
            at_least(self, field, LEAST_ANGLE - beside)
            if self.crossing_angle < LEAST_ANGLE
            else at_most(self, field, MOST_ANGLE - beside),
            "other angles",
        )
        said = Tape().say(self.crossing_angle, Saying.DEGREES)
        raise RefusalError(
            f"the two sets cross at {said}, too nearly parallel to weave: both angles together "
            f"are {LEAST_ANGLE}° to {MOST_ANGLE}°; use {way}",
            field,
        )

    @value("from crossing to crossing, along a tube")
    def crossing_spacing(self) -> Length:
        """The next tube of the other set lies aslant."""
        self.the_sets_cross()
        return self.pitch / sine(self.crossing_angle)

    @value("side of an opening, along a tube")
    def opening_side(self) -> Length:
        """The gap, measured aslant."""
        self.the_sets_cross()
        return self.gap / sine(self.crossing_angle)

    @drafted
    def weave(self) -> Weave:
        """How both sets lie, in mm."""
        self.the_sets_cross()
        rise, fall = self.rising_angle, self.falling_angle
        return Weave(
            rising=(points.cosine(rise), -points.sine(rise)),
            falling=(points.cosine(fall), points.sine(fall)),
            centre=(float(self.centre_across), float(self.centre_down)),
            width=float(self.tube_width),
            pitch=float(self.pitch),
            margin=float(self.margin),
        )

    @check
    def the_panel_can_be_shown(self) -> None:
        """Refuse before anything is clipped, so that no measures can keep a reader waiting."""
        (ax, ay), (bx, by) = self.weave.rising, self.weave.falling
        cell = self.weave.pitch * self.weave.pitch / abs(ax * by - ay * bx)
        crossing_count = area(self.panel_shape) / cell
        tube_count = sum(
            len(band_numbers(self.panel_shape, self.weave, name)) for name in (RISING, FALLING)
        )
        over = max(crossing_count / MOST_CROSSINGS, (tube_count / MOST_TUBES) ** 2)
        if over > 1:
            pitch = Length(Fraction(ceil(self.weave.pitch * over**0.5 + 1)))
            wider = at_least(self, "gap", pitch - self.tube_width, "a gap of at least {}")
            raise RefusalError(
                f"about {tube_count} tubes with {ceil(crossing_count)} crossings are more than one "
                f"panel can show ({MOST_TUBES} and {MOST_CROSSINGS}); use "
                f"{ways(wider, 'wider tubes')}, or a smaller panel",
                "gap",
            )

    @drafted
    def named(self) -> tuple[tuple[str, Tube], ...]:
        """Each tube with its name."""
        self.the_panel_can_be_shown()
        return tuple(
            pair
            for name in (RISING, FALLING)
            for pair in named(tubes(self.panel_shape, self.weave, name))
        )

    @property
    def tubes_to_cut(self) -> tuple[NamedTube, ...]:
        """Their names and lengths."""
        return tuple(NamedTube(name, from_float(tube.length)) for name, tube in self.named)

    @drafted
    def crossed(self) -> tuple[Crossing, ...]:
        """The crossings inside the outline; raises RefusalError where there is none."""
        self.the_panel_can_be_shown()
        found = tuple(crossings(self.panel_shape, self.weave))
        if not found:
            raise RefusalError(
                "no two tubes cross inside the outline; make the gap smaller or the panel larger",
                "gap",
            )
        return found

    @drafted
    def knotted(self) -> tuple[Crossing, ...]:
        """The crossings that are knotted: none too near to the outline."""
        return tuple(
            each
            for each in self.crossed
            if self.knots == EVERY or (self.knots == ALTERNATE and each.rising_is_over)
            if distance_to_outline(self.panel_shape, each.at) >= float(self.knot_clearance)
        )

    @value("rising tubes, pieces", basis=DRAWN)
    def rising_tubes(self) -> Count:
        """Counted on the placement sheet."""
        return Count(len(self._of(RISING)))

    @value("rising tubes, all lengths with margins", basis=DRAWN)
    def rising_total(self) -> Length:
        """Measured on the placement sheet."""
        return total(from_float(tube.length) for tube in self._of(RISING))

    @value("falling tubes, pieces", basis=DRAWN)
    def falling_tubes(self) -> Count:
        """Counted on the placement sheet."""
        return Count(len(self._of(FALLING)))

    @value("falling tubes, all lengths with margins", basis=DRAWN)
    def falling_total(self) -> Length:
        """Measured on the placement sheet."""
        return total(from_float(tube.length) for tube in self._of(FALLING))

    @value("tubes to cut")
    def tubes(self) -> Count:
        """Those of both sets."""
        return self.rising_tubes + self.falling_tubes

    @value("tube in all", saying=Saying.UP)
    def tube_total(self) -> Length:
        """What has to be sewn and turned."""
        return self.rising_total + self.falling_total

    @value("longest tube", basis=DRAWN)
    def longest_tube(self) -> Length:
        """No strip for it may be shorter."""
        return from_float(max(tube.length for _, tube in self.named))

    @value("tubes that enter by an edge only", basis=DRAWN)
    def edge_tubes(self) -> Count:
        """Their centre lines stay outside, so they may be left out."""
        return Count(sum(tube.edge_only for _, tube in self.named))

    @value("crossings inside the outline", basis=DRAWN)
    def crossings(self) -> Count:
        """Counted where the centre lines cross."""
        return Count(len(self.crossed))

    @value("knots", basis=DRAWN)
    def knot_count(self) -> Count:
        """How many are tied."""
        return Count(len(self.knotted))

    def _of(self, set_name: str) -> list[Tube]:
        return [tube for _, tube in self.named if tube.set_name == set_name]

    def tube_chart(self) -> Chart:
        """Tubes of one length in one row, in the order in which they lie."""
        alike: dict[tuple[float, str], list[NamedTube]] = {}
        for wanted, (_, tube) in zip(self.tubes_to_cut, self.named, strict=True):
            alike.setdefault((round(tube.length, 6), _remark(tube)), []).append(wanted)
        rows = tuple(
            (", ".join(tube.name for tube in same), str(len(same)), _longest(same), remark)
            for (_, remark), same in alike.items()
        )
        caption = "Tubes to cut, margins included: R rises to the right, F falls"
        return Chart(caption, ("Tubes", "Cut", "Length", "Remark"), rows)

    def knot_chart(self) -> Chart:
        """The knots in rows: how far down each row lies, how far across its knots."""
        rows: list[tuple[Cell, ...]] = []
        places = (each.at for each in self.knotted)
        for down, row in groupby(places, key=lambda at: round(at[1], 6)):
            across = {
                f"at{place}": from_float(x) for place, x in enumerate(sorted(x for x, _ in row))
            }
            every = sentence(" ".join(f"{{{name}}}" for name in across), **across)
            rows.append((Value("down", "down", from_float(down), DRAWN), every))
        headings = ("Down from the top", "Across from the left")
        return Chart("Where the knots come, measured in the outline's box", headings, tuple(rows))


def _longest(alike: Sequence[NamedTube]) -> Value:
    longest = max(each.length for each in alike)
    return Value("tube", "tube, cut length", longest, DRAWN, saying=Saying.UP)


def _remark(tube: Tube) -> str:
    if tube.edge_only:
        return "enters by an edge only"
    if len(tube.shapes) > 1:
        return "runs on over a gap in the outline"
    return "through the centre" if tube.number == 0 else ""
