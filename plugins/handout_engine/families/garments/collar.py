"""A flat round collar on the block of any garment: in one piece, or in two that meet."""

from __future__ import annotations

from fractions import Fraction

from handout_engine.amounts.declaring import check, drafted, group, value
from handout_engine.amounts.inputs import SEWING, choice, length, optional_length, ratio
from handout_engine.amounts.lengths import ZERO, Length, from_float, least, millimetres
from handout_engine.amounts.naming import constant
from handout_engine.amounts.numbers import Ratio
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.sources import DRAWN, PRACTICE, published
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.bodies.measures import LENGTHS
from handout_engine.drafting.armholes import Armholes
from handout_engine.drafting.body_block import BodyBlock
from handout_engine.drafting.collars import JoinedNeck, collar_draft, sewn_edge
from handout_engine.drafting.curves import Line, run
from handout_engine.drafting.drafts import FOLD, Draft
from handout_engine.drafting.pieces import CutPiece, HalfPiece
from handout_engine.families.garments.collar_drawing import DrawnCollar, drafting_scene, flat_scene
from handout_engine.families.garments.collar_steps import add_sample, add_steps, add_supplies
from handout_engine.working.workings import Picture, Seam
from handout_engine.working.worksheet import Worksheet

ONE, TWO = "one piece", "two pieces"
ROUND, SQUARE = "rounded", "square"
PLAIN, WORKED = "plain", "worked"
SMALLEST = constant("body length of size 50", LENGTHS["50"], published("en-13402"))
USUAL_DEPTH = constant("usual depth at size 50", millimetres(35), PRACTICE)
GROWTH = constant("share of the growth", Ratio(Fraction(15, 480)), PRACTICE)


class Collar(Armholes):
    """A flat collar for a garment drafted on the block; its neck follows the same inputs."""

    title = "Flat collar"
    family = "garments"
    summary = (
        "A flat round collar, in one piece for a back opening or in two that meet, drafted to fit "
        "the neck of any garment of these pages."
    )

    form = choice(
        "form",
        "Two pieces that meet at front and back, or one piece that opens at the back.",
        TWO,
        ONE,
    )
    depth = optional_length(
        "depth",
        "From the neck seam to the outer edge, the same all round.",
        "3.5 cm at size 50 to 5 cm at size 98, where the shoulder is long enough",
        ("1 cm", "12 cm"),
        in_use="collar_depth",
    )
    depth_share = ratio(
        "most depth",
        "What the collar may cover of the shoulder seam.",
        "0.8",
        ("0.3", "0.95"),
        basis=PRACTICE,
    )
    upper = choice(
        "upper collar",
        "Plain, or cut from cloth that is worked first: tucked, laced, embroidered.",
        PLAIN,
        WORKED,
    )
    overlap = length(
        "overlap at the shoulder",
        "How far front and back overlap at the end of the "
        "shoulder while the collar is drawn; more makes it roll.",
        "8 mm",
        ("0 mm", "2 cm"),
        basis=PRACTICE,
    )
    corners = choice("corners", "At the ends that meet.", ROUND, SQUARE)
    rounding = optional_length(
        "rounding",
        "How far from a corner its curve begins.",
        "three quarters of the depth",
        ("3 mm", "12 cm"),
        in_use="corner_rounding",
    )
    roll = length(
        "under collar smaller",
        "How much less deep the under collar is, so that its seam rolls out of sight.",
        "1.5 mm",
        ("0 mm", "4 mm"),
        group=SEWING,
        basis=PRACTICE,
    )

    @value("depth of the collar", basis=PRACTICE)
    def collar_depth(self) -> Length:
        """As asked for, or as usual where the shoulder is long enough."""
        if self.depth is not None:
            return self.depth
        grown = self.body_length - SMALLEST
        return least(USUAL_DEPTH + grown * GROWTH, self.shoulder_seam * self.depth_share)

    @check
    def the_collar_leaves_some_of_the_shoulder(self) -> None:
        """Refuse a depth that covers too much of the shoulder seam."""
        most = self.shoulder_seam * self.depth_share
        if self.depth is not None and self.depth > most:
            raise RefusalError(
                f"depth {TAPE.both(self.depth)} covers more than {TAPE.say(self.depth_share)} "
                f"of the shoulder seam, {TAPE.both(self.shoulder_seam)}; use "
                f"{ways(at_most(self, 'depth', most), 'more depth_share')}",
                "depth",
            )

    @value("rounding of the corners", basis=PRACTICE)
    def corner_rounding(self) -> Length | None:
        """As asked for, or a good part of the depth; square corners have none."""
        if self.noted("corners") == SQUARE:
            return None
        return self.collar_depth * 3 / 4 if self.rounding is None else self.rounding

    @check
    def the_rounding_is_no_more_than_the_depth(self) -> None:
        """Refuse a rounding for which the collar is not deep enough."""
        if self.corner_rounding is not None and self.corner_rounding > self.collar_depth:
            raise RefusalError(
                f"rounding {TAPE.say(self.corner_rounding)} is more than the collar is deep; use "
                f"at most {TAPE.no_more(self.collar_depth)}",
                "rounding",
            )

    @drafted
    def neck_line(self) -> JoinedNeck:
        """The neck that it is sewn to, front and back joined; raises RefusalError."""
        self.the_collar_leaves_some_of_the_shoulder()
        self.the_rounding_is_no_more_than_the_depth()
        neck = JoinedNeck(self.block, float(self.overlap))
        try:
            _ = neck.curve
        except ValueError:
            raise RefusalError(
                f"with {TAPE.both(self.overlap)} of overlap on a shoulder seam of "
                f"{TAPE.both(self.shoulder_seam)} no smooth neck edge can be drawn; give "
                "overlap less",
                "overlap",
            ) from None
        return neck

    @value("neck edge of the collar, measured on its curve", basis=DRAWN)
    def collar_neck(self) -> Length:
        """As long as that of the garment."""
        return from_float(2 * run(self.neck_line.curve))

    @value("neck edge from the centre front to the shoulder", basis=DRAWN)
    def front_to_shoulder(self) -> Length:
        """Where its notch comes to lie."""
        return from_float(run(self.block.front_neckline))

    @value("depth of the under collar")
    def under_depth(self) -> Length:
        """So much less that its seam rolls out of sight."""
        return self.collar_depth - self.roll

    @drafted
    def upper_draft(self) -> Draft:
        """Half of the upper collar."""
        return self._drafted("upper collar", self.collar_depth)

    @drafted
    def under_draft(self) -> Draft:
        """Half of the under collar."""
        return self._drafted("under collar", self.under_depth)

    def _drafted(self, name: str, depth: Length) -> Draft:
        rounding = ZERO if self.corner_rounding is None else self.corner_rounding
        return collar_draft(
            name,
            self.neck_line,
            float(depth),
            rounding=min(float(rounding), float(depth)),
            seam=float(self.seam_allowance),
            on_fold=self.form == ONE,
        )

    @value("outer edge of the whole collar, its open ends included", basis=DRAWN)
    def collar_edge(self) -> Length:
        """What an edging or a ruffle goes round."""
        return from_float(2 * sewn_edge(self.upper_draft))

    @property
    def pieces_of_each(self) -> int:
        """Of the upper collar, and of the under collar."""
        return 1 if self.form == ONE else 2

    @value("outer edge of one piece, from neck to neck")
    def piece_edge(self) -> Length:
        """Where there are two, each has half of it."""
        return self.collar_edge / self.pieces_of_each

    @value("outer edge of the whole under collar", basis=DRAWN)
    def under_edge(self) -> Length:
        """It is shorter, since it lies inside."""
        return from_float(2 * sewn_edge(self.under_draft))

    @value("eased in at the outer edge, upper collar to under collar")
    def collar_ease(self) -> Length:
        """By so much the upper one curves over the under one."""
        return self.collar_edge - self.under_edge

    @group
    def drafts(self) -> tuple[CutPiece, ...]:
        """Upper and under collar."""
        kind, count = (HalfPiece, 1) if self.form == ONE else (CutPiece, 2)
        upper = kind(self.upper_draft, count, worked=self.upper == WORKED)
        return upper, kind(self.under_draft, count)

    def cut(self, sheet: Worksheet) -> None:
        """Upper and under collar."""
        super().cut(sheet)
        sheet.seams.append(Seam("outer edge, and neck", self.seam_allowance))

    def sew(self, sheet: Worksheet) -> None:
        """From the cut pieces to the collar in the neck of its garment."""
        add_supplies(sheet)
        add_sample(sheet)
        add_steps(sheet)

    def draw(self, sheet: Worksheet) -> None:
        """The collar laid flat, how it is drafted, then each piece."""
        drawn = _drawn(sheet, self)
        flat = sheet.sentence("The collar laid flat; {collar_edge} once round its outer edge.")
        how = sheet.sentence(
            "Half of the collar as it is drawn, on front and back joined at the shoulder, "
            "overlapping there by {overlap}."
        )
        sheet.pictures.append(Picture("finished", flat, flat_scene(drawn), finished=True))
        sheet.pictures.append(Picture("drafting", how, drafting_scene(drawn)))
        super().draw(sheet)


def _drawn(sheet: Worksheet, collar: Collar) -> DrawnCollar:
    neck, block, upper = collar.neck_line, collar.block, collar.upper_draft
    mark, border = neck.shoulder_mark, upper.edge("outer edge").points
    return DrawnCollar(
        tuple(point for each in upper.edges if each.name != FOLD for point in each.points),
        upper.edge("neck").points,
        _bodice(block, block.front_neckline),
        neck.laid_back(_bodice(block, block.back_neckline)),
        (mark, min(border, key=lambda point: _across(point, mark, block))),
        upper.on_fold,
        sheet["collar_depth"],
        sheet["overlap"],
        sheet["collar_edge"],
    )


def _bodice(block: BodyBlock, neckline: Line) -> Line:
    """Half of a front or back down to the underarm."""
    return (*neckline, *block.armhole, (0.0, block.depth))


def _across(point: tuple[float, float], mark: tuple[float, float], block: BodyBlock) -> float:
    """How far a point lies from the line of the front's shoulder seam, which runs outward."""
    (x, y), (end, low), half = point, block.shoulder, block.neck_half
    return abs((x - mark[0]) * low - (y - mark[1]) * (end - half))


GARMENT = Collar
