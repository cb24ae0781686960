"""A baby's jacket whose sleeves are cut in one with the body, open in front and faced."""

from __future__ import annotations

from handout_engine.amounts.declaring import check, drafted, group, value
from handout_engine.amounts.inputs import SEWING, length, optional_length, ratio
from handout_engine.amounts.lengths import Length, from_float, inches
from handout_engine.amounts.naming import constant
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.sources import DRAWN, PRACTICE
from handout_engine.amounts.ways_out import at_least, at_most, ways
from handout_engine.bodies.measures import measured
from handout_engine.drafting.curves import Line, run
from handout_engine.drafting.cut_on_sleeves import CutOnSleeveInputs
from handout_engine.drafting.drafts import FOLD, Draft, Edge
from handout_engine.drafting.front_facings import (
    FacingInputs,
    FrontEdge,
    back_facing,
    front_facing,
)
from handout_engine.drafting.pieces import CutPiece, HalfPiece
from handout_engine.drafting.skirts import flared_side
from handout_engine.drafting.turned_hems import Half, TurnedHemInputs, TurnedUpHem
from handout_engine.families.garments.baby_jacket_drawing import Jacket as Drawn
from handout_engine.families.garments.baby_jacket_drawing import finished_scene
from handout_engine.families.garments.baby_jacket_steps import add_steps, add_supplies
from handout_engine.families.garments.front_overlaps import FrontOverlap
from handout_engine.geometry.points import Point, snapped
from handout_engine.working.workings import Picture, Seam
from handout_engine.working.worksheet import Worksheet


class BabyJacket(FrontOverlap, FacingInputs, CutOnSleeveInputs, TurnedHemInputs):
    """A jacket for over a dress or romper, from flannel, pique or other firm cloth."""

    title = "Baby jacket"
    family = "garments"
    summary = (
        "A jacket to the hip with its sleeves cut on, buttoned and faced in front, from flannel "
        "or pique."
    )
    eases = ("14 cm", "12 cm")
    usual_hem = constant("usual hem", inches(1), PRACTICE)

    crown_rump = measured("crown_rump")
    hip_share = ratio(
        "share of the length",
        "From the neck point to the hem at the hip, for each unit from crown to rump.",
        "0.65",
        ("0.4", "0.9"),
        basis=PRACTICE,
    )
    reach = optional_length(
        "length",
        "From the neck point to the finished hem.",
        "the share from crown to rump",
        ("15 cm", "60 cm"),
        in_use="finished_length",
    )
    flare = length(
        "flare",
        "How much wider each half of front and back is at the hem than under the arm.",
        "1 cm",
        ("0 cm", "15 cm"),
        basis=PRACTICE,
    )
    sleeve_hem = length(
        "sleeve hem",
        "Turned up at the sleeve's end, its turning under included.",
        "3/4 in",
        ("1/4 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
    )

    @value("jacket from the neck point to the hem", basis=PRACTICE)
    def finished_length(self) -> Length:
        """As asked for, or to the hip."""
        return self.crown_rump * self.hip_share if self.reach is None else self.reach

    @check
    def a_side_is_left_below_the_arm(self) -> None:
        """Refuse a jacket that ends in the curve under the arm."""
        _, corner = self.underarm
        least = self.underarm_curve * 2
        if float(self.finished_length) - corner < float(least):
            needed = from_float(corner) + least
            raise RefusalError(
                f"a jacket {TAPE.both(self.finished_length)} long leaves no side below the arm; "
                f"give reach at least {TAPE.no_less(needed)}, or underarm_curve or sleeve_ease "
                "less",
                "reach",
            )

    @drafted
    def side_and_hem(self) -> tuple[Line, Line]:
        """The side from the corner under the arm, and the hem from there to the centre."""
        self.a_side_is_left_below_the_arm()
        return flared_side(self.underarm, float(self.finished_length), float(self.flare))

    @drafted
    def side(self) -> Line:
        """The side, which the curve under the arm goes over into."""
        return self.side_and_hem[0]

    @drafted
    def halves(self) -> tuple[Half, Half]:
        """Side and hem, of the front as of the back."""
        half = Half(self.cut_on_sleeve.side, self.side_and_hem[1])
        return half, half

    @check
    def the_hem_is_turned_up(self) -> None:
        """Refuse an edge that would have to be faced: the front facings leave that no place."""
        if isinstance(self.lower_edge, TurnedUpHem):
            return
        less = at_most(self, "hem", self.deepest_hem, "hem at most {}")
        raise RefusalError(
            f"the lower edge curves too much for a hem {TAPE.both(self.wanted_hem)} deep, whose "
            f"raw edge could not be eased in; give {ways(less, 'flare less')}",
            "hem" if less and self.hem else "flare",
        )

    @value("what the fronts overlap")
    def front_overlap(self) -> Length:
        """They lie on one another, centre on centre."""
        return 2 * self.beyond_centre

    @check
    def the_facing_reaches_under_holes_and_buttons(self) -> None:
        """Refuse a facing that is narrower than the overlap."""
        if self.facing < self.front_overlap:
            wider = at_least(self, "facing", self.front_overlap)
            raise RefusalError(
                f"facing {TAPE.say(self.facing)} is narrower than the overlap, "
                f"{TAPE.both(self.front_overlap)}, so that holes and buttons would stand partly in "
                f"one layer; use {ways(wider, 'a smaller button')}",
                "facing",
            )

    @check
    def the_fronts_leave_some_of_the_neck(self) -> None:
        """Refuse fronts that overlap by as much as the front of the neck is wide."""
        self.refuse_fronts_as_wide_as_the_neck(
            f"fronts that overlap by {TAPE.both(self.front_overlap)}"
        )

    @value("across the chest, buttoned and laid flat")
    def chest_across(self) -> Length:
        """What is measured when it is done."""
        return self.finished_chest / 2

    @value("one front edge, from the neck to the hem")
    def front_edge(self) -> Length:
        """What the neck leaves of the length."""
        return self.finished_length - self.front_neck_depth

    @value("neck edge from front edge to front edge, open")
    def neck_with_fronts(self) -> Length:
        """What the facing is sewn to."""
        return self.neck_edge + self.front_overlap

    @value("from the centre front to the cut edge")
    def cut_beyond(self) -> Length:
        """How far from the cut edge the centre is marked."""
        return self.beyond_centre + self.seam_allowance

    @value("straight across the hem, buttoned and laid flat", basis=DRAWN)
    def hem_across(self) -> Length:
        """From side to side, where the hem curves up to them."""
        (corner, _), *_ = self.side_and_hem[1]
        return from_float(2 * corner)

    @value("hem from front edge to front edge, open", basis=DRAWN)
    def hem_edge(self) -> Length:
        """Along its curve, with what the fronts overlap."""
        return from_float(4 * run(self.side_and_hem[1])) + self.front_overlap

    @drafted
    def drafted_front(self) -> Draft:
        """A front, reaching beyond its centre."""
        neck, hem, out = self.block.front_neckline, self.halves[0].hem, -float(self.beyond_centre)
        centre, edge = neck[0], snapped(out)
        top, corner = (edge, centre[1]), (edge, hem[-1][1])
        allowance = float(self.lower_edge.allowance)
        around = (
            *self._edges((top, *neck)),
            Edge("hem beyond the centre", (hem[-1], corner), allowance, turned_up=True),
            Edge("front", (corner, top), float(self.seam_allowance)),
        )
        return Draft("jacket front", around, (*self._notches, centre, hem[-1]))

    @drafted
    def drafted_back(self) -> Draft:
        """Half of the back, to its fold."""
        neck, hem = self.block.back_neckline, self.halves[0].hem
        fold = Edge(FOLD, (hem[-1], neck[0]))
        return Draft("jacket back", (*self._edges(neck), fold), self._notches)

    def _edges(self, neck: Line) -> tuple[Edge, ...]:
        """The edges of front and back, from the neck round to the centre of the hem."""
        sleeve, seam = self.cut_on_sleeve, float(self.seam_allowance)
        return (
            Edge("neck", neck, seam),
            Edge("over the arm", sleeve.over, seam),
            Edge("sleeve end", sleeve.end, float(self.sleeve_hem), turned_up=True),
            Edge("under the arm", sleeve.under, seam),
            Edge("side", sleeve.side, seam),
            self.lower_edge.edge(self.halves[0].hem),
        )

    @property
    def _notches(self) -> tuple[Point, Point]:
        return self.block.shoulder, self.cut_on_sleeve.side[0]

    @group
    def drafts(self) -> tuple[CutPiece, ...]:
        """Fronts, back, and the facings of both."""
        edge = FrontEdge(
            float(self.beyond_centre), float(self.finished_length), float(self.seam_allowance)
        )
        return (
            CutPiece(self.drafted_front, 2),
            HalfPiece(self.drafted_back),
            CutPiece(front_facing(self, self.block, edge), 2),
            HalfPiece(back_facing(self, self.block, edge.seam)),
        )

    def cut(self, sheet: Worksheet) -> None:
        """Fronts, back and facings."""
        super().cut(sheet)
        sheet.seams.append(Seam("over the arms, under them and at the sides", self.seam_allowance))

    def sew(self, sheet: Worksheet) -> None:
        """From the seams over the arms to the last button."""
        add_supplies(sheet)
        add_steps(sheet, self.lower_edge)

    def draw(self, sheet: Worksheet) -> None:
        """The jacket from the front, then each piece."""
        drawn = Drawn(
            self.drafted_front,
            self.block.back_neckline,
            {
                "long": sheet["finished_length"],
                "across": sheet["hem_across"],
                "beyond": sheet["beyond_centre"],
                "button": sheet["button"],
            },
        )
        caption = sheet.sentence(
            "The jacket from the front, arms spread; each sleeve measures {sleeve_edge} round its "
            "end."
        )
        sheet.pictures.append(Picture("finished", caption, finished_scene(drawn), finished=True))
        super().draw(sheet)


GARMENT = BabyJacket
