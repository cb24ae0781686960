"""A bonnet of a straight piece and a small back, from a head measure or from a rectangle given."""

from __future__ import annotations

from dataclasses import replace

from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.lengths import Length, millimetres
from handout_engine.amounts.numbers import Ratio
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Saying
from handout_engine.amounts.values import sentence
from handout_engine.cloth.cloth import ClothBought
from handout_engine.drawing.scene import Line, Scene
from handout_engine.families.nursery.bonnet_backs import Circle, Horseshoe
from handout_engine.families.nursery.bonnet_drawing import Bonnet as Drawn
from handout_engine.families.nursery.bonnet_drawing import back_scene, side_scene
from handout_engine.families.nursery.bonnet_measures import CIRCLE, WORKED, BonnetInputs
from handout_engine.families.nursery.bonnet_steps import add_sample, add_steps, add_supplies
from handout_engine.shared.hems import Hem
from handout_engine.shared.strips_drawing import FlatStrip, Rule, flat_strips
from handout_engine.working.workings import Grain, Piece, Seam, marked
from handout_engine.working.worksheet import Worksheet

CLOTH = "cloth"
LEAST_CLOTH = millimetres(30)


class Bonnet(BonnetInputs):
    """A bonnet whose straight piece is gathered to a circle or let into a horseshoe."""

    title = "Bonnet"
    family = "nursery"
    summary = "A baby's bonnet from one straight piece and a small back, a circle or a horseshoe."

    @value("front edge, from the top of the head to the neck")
    def half_front(self) -> Length:
        """What is seen from one side."""
        return self.front_edge / 2

    @check
    def the_trim_leaves_cloth(self) -> None:
        """Refuse a trim that leaves next to nothing behind it."""
        most = self.depth_line - LEAST_CLOTH
        if self.front_trim > most:
            raise RefusalError(
                f"front_trim {TAPE.say(self.front_trim)} leaves less than {TAPE.both(LEAST_CLOTH)} "
                f"of cloth behind it; use at most {TAPE.no_more(most)}, or make the depth more",
                "front_trim",
            )

    @value("depth of the straight piece without its trim")
    def cloth_depth(self) -> Length:
        """The trim reaches beyond the cloth."""
        return self.depth_line - self.front_trim

    @group
    def front_hem(self) -> Hem:
        """The hem round the face."""
        return Hem(self, self.cloth_depth)

    @value("straight piece, cut along the front edge", saying=Saying.UP)
    def crown_length(self) -> Length:
        """Its ends are the neck edge, which is bound: nothing is added to them."""
        return self.front_edge

    @value("straight piece, cut from front to back", saying=Saying.UP)
    def crown_depth(self) -> Length:
        """Hemmed in front, seamed behind."""
        return self.cloth_depth + self.front_hem.hem_allowance + self.seam_allowance

    @value("straight piece, hemmed, from the front edge to its back raw edge")
    def hemmed_depth(self) -> Length:
        """To measure before the back is sewn in."""
        return self.cloth_depth + self.seam_allowance

    @value("seam line of the straight piece, from its front raw edge")
    def back_line(self) -> Length:
        """Where the back is sewn to it."""
        return self.crown_depth - self.seam_allowance

    @group
    def back_piece(self) -> Circle | Horseshoe:
        """By the choice."""
        return Circle(self) if self.back == CIRCLE else Horseshoe(self)

    @value("fullness of the back edge")
    def back_gathers(self) -> Ratio:
        """1 where it lies flat."""
        return self.front_edge / self.back_piece.back_seam

    @value("neck edge before it is gathered")
    def ungathered_neck(self) -> Length:
        """Both ends of the straight piece, and a nape that is flat."""
        return 2 * self.cloth_depth + self.back_piece.flat_nape

    @value("neck edge, drawn up")
    def neck_edge(self) -> Length:
        """Loose enough for the strap to be closed."""
        return self.neck + self.neck_ease

    @check
    def the_neck_edge_is_long_enough(self) -> None:
        """Refuse a neck edge that would have to be stretched."""
        if self.ungathered_neck < self.neck_edge:
            deeper = (self.neck_edge - self.back_piece.flat_nape) / 2 + self.front_trim
            raise RefusalError(
                f"the neck edge is only {TAPE.both(self.ungathered_neck)} and cannot be gathered "
                f"to {TAPE.both(self.neck_edge)}; make the depth at least {TAPE.no_less(deeper)}, "
                f"or the {'trim at the front or the ' if self.front_trim else ''}neck ease smaller",
                "depth",
            )

    @value("fullness of the neck edge")
    def neck_gathers(self) -> Ratio:
        """How closely it is drawn up."""
        return self.ungathered_neck / self.neck_edge

    @value("neck binding, cut width", saying=Saying.UP)
    def binding_cut(self) -> Length:
        """A single binding, folded in four."""
        return 4 * self.binding

    @value("neck binding, cut length", saying=Saying.UP, finishes="neck_edge")
    def binding_length(self) -> Length:
        """Its ends are turned in."""
        return self.neck_edge + 2 * self.seam_allowance

    @value("strap, cut width", saying=Saying.UP)
    def strap_cut_width(self) -> Length:
        """Folded along its length."""
        return 2 * self.strap_width + 2 * self.seam_allowance

    @value("strap, cut length", saying=Saying.UP)
    def strap_cut_length(self) -> Length:
        """One end is sewn shut, the other sewn in."""
        return self.strap_length + 2 * self.seam_allowance

    @group
    def cloth_bought(self) -> ClothBought:
        """All pieces are cut from one cloth."""
        return ClothBought(self, CLOTH)

    def cut(self, sheet: Worksheet) -> None:
        """Straight piece, back, binding and strap."""
        straight, back, *others = (
            Piece(name, CLOTH, self.make.number, sheet[width], sheet[length], grain)
            for name, width, length, grain in (
                ("straight piece", "crown_depth", "crown_length", Grain.CROSS),
                ("back", "back_cut_height", "back_cut_width", Grain.CROSS),
                ("neck binding", "binding_cut", "binding_length", Grain.BIAS),
                ("strap", "strap_cut_width", "strap_cut_length", Grain.STRAIGHT),
            )
        )
        lines = [line for line in (self.front_hem.hem_allowance, self.back_line) if line]
        straight = replace(straight, marks=marked(*lines), worked=self.crown == WORKED)
        drawn = self._drawn(sheet)
        back = replace(
            back,
            outline=drawn.back_outline(float(self.seam_allowance)),
            seam_outline=drawn.back_seam_outline,
            notches=drawn.back_notches,
        )
        sheet.pieces.extend((straight, back, *others))
        sheet.seams.append(Seam("back seam", self.seam_allowance))
        sheet.seams.append(Seam("neck edge, in its binding", self.binding))

    def sew(self, sheet: Worksheet) -> None:
        """From the cut pieces to the strap."""
        add_supplies(sheet)
        add_sample(sheet)
        add_steps(sheet, self)

    def draw(self, sheet: Worksheet) -> None:
        """The bonnet from its side, its straight piece and its back."""
        drawn = self._drawn(sheet)
        back = "The back to cut, its seam dashed; above, its finished width."
        sheet.show(
            "finished", "The finished bonnet from its side.", side_scene(drawn), finished=True
        )
        sheet.show(
            "straight",
            "The straight piece with its hem fold and back seam.",
            _straight_scene(sheet),
        )
        sheet.show("back", back, back_scene(drawn))

    def _drawn(self, sheet: Worksheet) -> Drawn:
        names = (
            "front_edge",
            "half_front",
            "depth_line",
            "back_width",
            "back_height",
            "back_seam",
            "back_cut_width",
            "back_cut_height",
            "binding",
            "hem_turn",
            "strap_length",
            "strap_width",
            "seam_allowance",
            "front_trim",
        )
        return Drawn({name: sheet[name] for name in names}, self.back == CIRCLE)


def _straight_scene(sheet: Worksheet) -> Scene:
    """The straight piece flat, its hem fold and its back seam on it."""
    deep, long = sheet["crown_depth"], sheet["crown_length"]
    rules = [Rule(Line.FOLD, sheet["hem_allowance"]), Rule(Line.STITCH, sheet["back_line"])]
    strip = FlatStrip(sentence("front edge"), deep, long, rules)
    return Scene(
        sentence("Straight piece laid flat"),
        sheet.sentence("{crown_length} along the front edge, {crown_depth} from front to back."),
        flat_strips([strip], 0.5 * deep.mm),
        tallest=170,
    )


GARMENT = Bonnet
