"""A slip cut in one from shoulder to hem, widening towards the hem, with a slit at the back."""

from __future__ import annotations

from dataclasses import replace

from handout_engine.amounts.declaring import check, drafted, group, value
from handout_engine.amounts.inputs import SEWING, choice, length, optional_length, ratio
from handout_engine.amounts.lengths import Length, from_float, inches, millimetres
from handout_engine.amounts.naming import constant
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.sources import DRAWN, PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.amounts.ways_out import at_least, ways
from handout_engine.bodies.measures import measured
from handout_engine.drafting.armholes import SleevelessInputs
from handout_engine.drafting.clearances import HeadOpening
from handout_engine.drafting.curves import Line, run, shifted
from handout_engine.drafting.drafts import FOLD, Draft, Edge
from handout_engine.drafting.pieces import CLOTH, HalfPiece
from handout_engine.drafting.skirts import flared_side, side_notch
from handout_engine.drafting.turned_hems import Half, TurnedHemInputs
from handout_engine.drawing.scene import Dimension, Side
from handout_engine.drawing.scene import Line as Kind
from handout_engine.families.garments.garment_drawing import View, scene
from handout_engine.families.garments.slip_steps import (
    BOUND,
    PLAIN,
    TRIMMED,
    WORKED,
    add_steps,
    add_supplies,
)
from handout_engine.geometry.points import Point, snapped
from handout_engine.working.workings import Grain, Picture, Piece, Seam
from handout_engine.working.worksheet import Worksheet

LEAST_SIDE = millimetres(30)
SLIT_FACING = constant("usual width of a slit's facing", millimetres(60), PRACTICE)
BELOW_SLIT = constant("usual facing below a slit", millimetres(30), PRACTICE)


class Slip(SleevelessInputs, HeadOpening, TurnedHemInputs):
    """A slip to wear under a dress or gown."""

    title = "Slip"
    family = "garments"
    summary = "A sleeveless slip widening to the hem, for under a dress or a christening gown."
    eases = ("8 cm", "6 cm")
    usual_hem = constant("usual hem", inches("5/4"), PRACTICE)

    back_waist = measured("back_waist")
    knee_share = ratio(
        "share below the waist",
        "From the waist down, for each unit of body length.",
        "0.3",
        ("0.1", "1.5"),
        basis=PRACTICE,
    )
    shorter = length(
        "shorter",
        "How much shorter than the dress over it.",
        "2 cm",
        ("0 cm", "20 cm"),
        basis=PRACTICE,
    )
    reach = optional_length(
        "length",
        "From the neck point to the finished hem.",
        "the waist and its share of the body length",
        ("20 cm", "140 cm"),
        in_use="finished_length",
    )
    hem_trim = length(
        "trim at the hem",
        "How far a band, an edging or a ruffle will reach beyond the hem "
        "of the cloth, which is cut so much shorter.",
        "0 cm",
        ("0 cm", "40 cm"),
    )
    front = choice(
        "front", "Cut from plain cloth, or from cloth that is tucked or laced first.", PLAIN, WORKED
    )
    armholes = choice(
        "armholes",
        "Bound like the neck, or finished with a trim of their own.",
        BOUND,
        TRIMMED,
        group=SEWING,
    )
    flare = length(
        "flare",
        "How much wider each half of front and back is at the hem than under the arm.",
        "5 cm",
        ("0 cm", "30 cm"),
        basis=PRACTICE,
    )

    @property
    def trimmed(self) -> bool:
        """Whether a trim is sewn to the hem."""
        return bool(self.hem_trim)

    @value("slip from the neck point to the hem", basis=PRACTICE)
    def finished_length(self) -> Length:
        """As asked for, or a little shorter than a dress to the knee."""
        if self.reach is not None:
            return self.reach
        return self.back_waist + self.body_length * self.knee_share - self.shorter

    @value("slip without its trim, from the neck point")
    def cloth_length(self) -> Length:
        """It is cut so much shorter."""
        return self.finished_length - self.hem_trim

    @check
    def the_cloth_ends_below_the_arms(self) -> None:
        """Refuse a slip that leaves next to no side."""
        least = self.armhole_depth + LEAST_SIDE
        if self.cloth_length < least:
            longer = at_least(self, "reach", least + self.hem_trim, "a reach of at least {}")
            raise RefusalError(
                f"the cloth would end less than {TAPE.both(LEAST_SIDE)} below the arms; use "
                f"{ways(longer, 'a narrower trim or a longer slip')}",
                "reach",
            )

    @property
    def side_below(self) -> Point:
        """The flare, down to the hem."""
        return float(self.flare), float(self.cloth_length) - float(self.armhole_depth)

    @drafted
    def halves(self) -> tuple[Half, Half]:
        """Side and hem, of the front as of the back."""
        self.the_head_passes()
        self.the_cloth_ends_below_the_arms()
        hem = float(self.cloth_length)
        half = Half(*flared_side(self.block.underarm, hem, float(self.flare)))
        return half, half

    @drafted
    def drafted_front(self) -> Draft:
        """Half of the front."""
        return self._drafted("slip front", self.block.front_neckline)

    @drafted
    def drafted_back(self) -> Draft:
        """Half of the back, slit where there is an opening."""
        neck = self.block.back_neckline
        back, (x, top) = self._drafted("slip back", neck), neck[0]
        if not self.opening:
            return back
        slit = (
            (x, snapped(top - float(self.seam_allowance))),
            (x, snapped(top + float(self.opening))),
        )
        return replace(back, slit=slit)

    def _drafted(self, name: str, neckline: Line) -> Draft:
        """Front or back, half of it, from its neckline round to the fold."""
        block, half, seam = self.block, self.halves[0], float(self.seam_allowance)
        edges = (
            Edge("neck", neckline, seam),
            Edge("shoulder", (block.neck_point, block.shoulder), seam),
            Edge("armhole", block.armhole, seam),
            Edge("side", half.side, seam),
            self.lower_edge.edge(half.hem),
            Edge(FOLD, (half.hem[-1], neckline[0])),
        )
        return Draft(name, edges, (side_notch(half.side),), self.lower_edge.remark)

    @value("once round the finished hem", basis=DRAWN)
    def hem_edge(self) -> Length:
        """Front and back, on the line that is folded or sewn."""
        return from_float(4 * run(self.halves[0].hem))

    @value("facing of the slit, cut width", basis=PRACTICE)
    def slit_facing_width(self) -> Length | None:
        """Wide enough to lie flat on both sides of the slit."""
        return SLIT_FACING if self.opening else None

    @value("facing of the slit, below its end", basis=PRACTICE)
    def slit_facing_below(self) -> Length | None:
        """What holds where the slit ends."""
        return BELOW_SLIT if self.opening else None

    @value("facing of the slit, cut length")
    def slit_facing_length(self) -> Length | None:
        """From the raw edge of the neck to below the slit."""
        below = self.slit_facing_below
        return None if below is None else self.seam_allowance + self.opening + below

    @group
    def drafts(self) -> tuple[HalfPiece, ...]:
        """Front and back, and the facings of a hem that is faced."""
        front = HalfPiece(self.drafted_front, worked=self.front == WORKED)
        return front, HalfPiece(self.drafted_back), *self.lower_edge.facings()

    def cut(self, sheet: Worksheet) -> None:
        """Front and back, and a rectangle to face the slit, so that its edges meet."""
        super().cut(sheet)
        if self.opening:
            size = sheet["slit_facing_width"], sheet["slit_facing_length"]
            sheet.pieces.append(Piece("slit facing", CLOTH, 1, *size, Grain.STRAIGHT))
        sheet.seams.append(Seam("shoulders and sides", self.seam_allowance))

    def sew(self, sheet: Worksheet) -> None:
        """From the slit to the button and its loop."""
        add_supplies(sheet)
        add_steps(sheet, self)

    def draw(self, sheet: Worksheet) -> None:
        """The slip from the front, then each piece."""
        sheet.pictures.append(_finished(sheet, self))
        super().draw(sheet)


def _finished(sheet: Worksheet, slip: Slip) -> Picture:
    front, block = slip.drafted_front, slip.block
    body = tuple(point for edge in front.edges[:-2] for point in edge.points)
    hem, reach = front.edge("hem").points, sheet["finished_length"]
    low = hem[0]
    view = View(
        (*body, *shifted(hem, down=float(slip.hem_trim))),
        lines=[(hem, Kind.THIN)],
        behind=[((0.0, block.back_neck), *block.back_neckline, block.neck_point, (0.0, low[1]))],
        dimensions=[Dimension((-low[0], 0.0), (-low[0], reach.mm), reach, Side.LEFT)],
    )
    caption = sheet.sentence("The slip from the front; once round its hem it measures {hem_edge}.")
    words = sheet.sentence("{finished_length} long, {finished_chest} round the chest.")
    return Picture(
        "finished", caption, scene(sentence("Slip, finished"), words, view), finished=True
    )


GARMENT = Slip
