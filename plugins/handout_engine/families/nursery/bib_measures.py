"""What a bib is drawn from: body measures, and the shares of them that the trade goes by."""

from __future__ import annotations

from handout_engine.amounts.angles import PI, Angle, angle_of_sine, arc
from handout_engine.amounts.declaring import check, drafted, value
from handout_engine.amounts.inputs import SEWING, choice, count, length, optional_length, ratio
from handout_engine.amounts.lengths import ZERO, Length, from_float, least
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.sources import DRAWN, PRACTICE
from handout_engine.bodies.measures import measured
from handout_engine.drafting.garment import Garment
from handout_engine.families.nursery.bib_outlines import BibShape
from handout_engine.geometry.polygons import Polygon, extents, perimeter

BOUND, TURNED = "bound", "turned"


class BibInputs(Garment):
    """The inputs of a bib, its sizes, its neck and its outline."""

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

    @value("circle of the neck, flat")
    def neck_circle(self) -> Length:
        """With room for a neck that turns."""
        return self.neck + self.neck_ease

    @value("radius of the neck")
    def neck_radius(self) -> Length:
        """What the compasses are set to."""
        return self.neck_circle / (2 * PI)

    @value("radius of the straps' outer edge")
    def strap_radius(self) -> Length:
        """From the same centre."""
        return self.neck_radius + self.strap

    @value("bib, across the front", basis=PRACTICE)
    def bib_width(self) -> Length:
        """As asked for, or a share of the chest."""
        return self.chest * self.width_share if self.width is None else self.width

    @value("bib, from the neck down", basis=PRACTICE)
    def bib_drop(self) -> Length:
        """As asked for, or a share of the chest."""
        return self.chest * self.drop_share if self.drop is None else self.drop

    @check
    def the_front_is_wider_than_the_neck(self) -> None:
        """Refuse a front that the straps would reach beyond."""
        if self.bib_width <= 2 * self.strap_radius:
            raise RefusalError(
                f"the front, {TAPE.both(self.bib_width)}, would be no wider than the neck with its "
                f"straps; use a width of more than {TAPE.no_less(2 * self.strap_radius)}, or "
                "narrower straps",
                "width",
            )

    @check
    def the_corners_can_be_rounded(self) -> None:
        """Refuse a rounding that takes more than half of the front, or all of its drop."""
        most = least(self.bib_width / 2, self.bib_drop)
        if self.corner > most:
            raise RefusalError(
                f"corner {TAPE.say(self.corner)} rounds more than the front allows; use at most "
                f"{TAPE.no_more(most)}",
                "corner",
            )

    @check
    def the_allowance_leaves_a_neck(self) -> None:
        """Refuse an allowance that fills the neck."""
        if 2 * self.allowance >= self.neck_radius:
            raise RefusalError(
                f"seam_allowance {TAPE.say(self.allowance)} fills the neck, whose radius is "
                f"{TAPE.both(self.neck_radius)}; use less than "
                f"{TAPE.no_more(self.neck_radius / 2)}",
                "seam_allowance",
            )

    @check
    def the_opening_holds_its_allowances(self) -> None:
        """Refuse ends so near to each other that they cannot be cut apart."""
        if self.gap < 2 * self.allowance:
            raise RefusalError(
                f"gap {TAPE.say(self.gap)} leaves no room for the allowances of both ends; use at "
                f"least {TAPE.no_less(2 * self.allowance)}, or bind the edge",
                "gap",
            )

    @check
    def the_straps_meet(self) -> None:
        """Refuse an opening that is wide beside the neck."""
        if self.gap > self.neck_radius:
            raise RefusalError(
                f"gap {TAPE.say(self.gap)} opens more of the neck than a strap can bridge; use at "
                f"most {TAPE.no_more(self.neck_radius)}",
                "gap",
            )

    @value("angle of the opening")
    def opening_angle(self) -> Angle:
        """Seen from the centre of the neck, so much of the circle is missing."""
        self.the_straps_meet()
        return 2 * angle_of_sine(self.gap / (2 * self.neck_radius))

    @value("neck edge from end to end")
    def neck_edge(self) -> Length:
        """The rest of the circle."""
        return self.neck_radius * arc(360 - self.opening_angle)

    @value("neck edge when it is closed")
    def closed_neck(self) -> Length:
        """The ends lap."""
        return self.neck_edge - self.overlap

    @check
    def it_goes_round_the_neck(self) -> None:
        """Refuse a bib that would choke."""
        if self.closed_neck <= self.neck:
            lacking = self.neck - self.closed_neck
            raise RefusalError(
                f"closed, the neck would measure {TAPE.both(self.closed_neck)}, not more than the "
                f"baby's own {TAPE.both(self.neck)}; make neck_ease more than "
                f"{TAPE.no_less(self.neck_ease + lacking)}, or overlap and opening smaller",
                "neck_ease",
            )

    @value("room between neck and bib")
    def neck_room(self) -> Length:
        """For two fingers."""
        return self.closed_neck - self.neck

    @drafted
    def shape(self) -> BibShape:
        """The finished sizes that the outline is drawn with."""
        self.the_front_is_wider_than_the_neck()
        return BibShape(
            float(self.neck_radius),
            float(self.strap_radius),
            float(self.bib_width) / 2,
            float(self.neck_radius) + float(self.bib_drop),
            float(self.corner),
            float(self.gap),
        )

    @drafted
    def cut_outline(self) -> Polygon:
        """The outline to cut."""
        return self.shape.outline(float(self.allowance))

    @value("once round the finished bib, neck and straps included", basis=DRAWN)
    def edge_length(self) -> Length:
        """What a binding goes round."""
        return from_float(perimeter(self.shape.outline()))

    @value("bib, cut across", basis=DRAWN)
    def cut_width(self) -> Length:
        """The box of the outline."""
        (left, _), (right, _) = extents(self.cut_outline)
        return from_float(right - left)

    @value("bib, cut from strap to lower edge", basis=DRAWN)
    def cut_height(self) -> Length:
        """The box of the outline."""
        (_, top), (_, bottom) = extents(self.cut_outline)
        return from_float(bottom - top)
