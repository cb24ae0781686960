"""Skirts sewn to a yoke: wider than it at the centre, gathered or tucked in, the side flared."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace

from handout_engine.amounts.declaring import Worked, check, drafted, group, value
from handout_engine.amounts.inputs import choice, count, length, length_by_choice, ratio
from handout_engine.amounts.lengths import Length, from_float, inches, millimetres
from handout_engine.amounts.naming import constant
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Amount
from handout_engine.amounts.sources import DRAWN, PRACTICE
from handout_engine.amounts.ways_out import would_be
from handout_engine.drafting.curves import shifted
from handout_engine.drafting.drafts import FOLD, Draft, Edge
from handout_engine.drafting.pieces import HalfPiece
from handout_engine.drafting.skirts import flared_side, side_notch
from handout_engine.drafting.turned_hems import Half, TurnedHemInputs
from handout_engine.drafting.yokes import PLAIN, WORKED, YokeInputs
from handout_engine.geometry.points import Point, snapped

GATHERED, TUCKED = "gathered", "tucked"
FRONT_WORKED = "front worked"
LEAST_SIDE = millimetres(50)


class SkirtInputs(YokeInputs, TurnedHemInputs):
    """The inputs of a garment whose skirt is sewn to its yoke; it says how long it is."""

    usual_hem = constant("usual hem", inches(2), PRACTICE)
    finished_length: Worked[Length]

    skirt_fullness = ratio(
        "skirt fullness",
        "Width of the skirt's top for each length of yoke seam.",
        "2",
        ("1", "3.5"),
        basis=PRACTICE,
    )
    taken_in = choice(
        "taken in",
        "How the skirt front goes into the yoke: gathered, or by tucks that "
        "take the place of its fullness. The back is gathered.",
        GATHERED,
        TUCKED,
    )
    tucks = count(
        "tucks", "How many take in the skirt front, if it is tucked.", 8, 40, basis=PRACTICE
    )
    tuck_depth = length(
        "depth of a tuck",
        "From its stitching to its fold, if the skirt is tucked.",
        "1/4 in",
        ("1/16 in", "1 in"),
        basis=PRACTICE,
    )
    tuck_spacing = length_by_choice(
        "spacing of the tucks",
        "From stitching to stitching, finished.",
        "one and a half times their depth",
        ("1/16 in", "3 in"),
        basis=PRACTICE,
    )
    tuck_length = length(
        "length of the tucks",
        "Stitched down from the raw edge at the yoke.",
        "2 1/2 in",
        ("1/2 in", "12 in"),
        basis=PRACTICE,
    )
    skirt = choice(
        "skirt",
        "Plain, or its front, or front and back, cut from cloth that is worked first.",
        PLAIN,
        FRONT_WORKED,
        WORKED,
    )
    flare = length(
        "flare",
        "How much wider each half of front and back is at the hem than under the arm.",
        "3 cm",
        ("0 cm", "20 cm"),
        basis=PRACTICE,
    )
    hem_trim = length(
        "trim at the hem",
        "How far a ruffle or band will reach beyond the skirt, which is cut so much shorter.",
        "0 cm",
        ("0 cm", "30 cm"),
    )

    @property
    def usual(self) -> Mapping[str, Amount]:
        """The usual figures of what comes with the skirt, and the spacing of its tucks."""
        return {**super().usual, "tuck_spacing": self.tuck_depth * 3 / 2}

    @property
    def trimmed(self) -> bool:
        """Whether a ruffle or band is sewn to the hem."""
        return bool(self.hem_trim)

    @value("skirt from the yoke seam to the finished hem")
    def skirt_reach(self) -> Length:
        """What the yoke leaves of the garment."""
        return self.finished_length - self.yoke_depth

    @check
    def the_skirt_has_a_side(self) -> None:
        """Refuse a skirt too short to be one."""
        side = self.finished_length - self.hem_trim - self.armhole_depth
        if side < LEAST_SIDE:
            raise RefusalError(
                f"the skirt's side seam {would_be(side, 'long')}, less than "
                f"{TAPE.both(LEAST_SIDE)}; make the garment longer, or hem_trim smaller",
                "hem_trim",
            )

    @property
    def hem_level(self) -> float:
        """Where the cloth of the skirt ends, in mm below the neck point."""
        return float(self.finished_length - self.hem_trim)

    @property
    def side_below(self) -> Point:
        """The flare of the skirt, down to its hem."""
        return float(self.flare), self.hem_level - float(self.armhole_depth)

    @value("from the first tuck's stitching to the last one's")
    def tuck_span(self) -> Length | None:
        """They take so much of the yoke seam, and a tuck's depth on both sides."""
        if self.taken_in != TUCKED:
            return None
        return self.tuck_spacing * (self.tucks - 1)

    @check
    def the_tucks_lie_in_the_yoke_seam(self) -> None:
        """Refuse tucks for which the yoke seam has no room, or the skirt no length."""
        if self.tuck_span is None:
            return
        if self.tuck_spacing < self.tuck_depth:
            raise RefusalError(
                f"tuck_spacing {TAPE.say(self.tuck_spacing)} lays each tuck over the next one's "
                f"stitching; use at least {TAPE.no_less(self.tuck_depth)}, their depth",
                "tuck_spacing",
            )
        over = self.tuck_span + 2 * self.tuck_depth
        if over > self.yoke_edge:
            raise RefusalError(
                f"the tucks stand over {TAPE.no_less(over)} and the yoke seam is only "
                f"{TAPE.no_more(self.yoke_edge)} long; make fewer, or give tuck_spacing less",
                "tucks",
            )
        reach = self.skirt_reach - self.hem_trim
        if self.tuck_length >= reach:
            raise RefusalError(
                f"tuck_length {TAPE.say(self.tuck_length)} is as long as the skirt; use at most "
                f"{TAPE.no_more(reach / 2)}",
                "tuck_length",
            )

    @value("top of the skirt front, from armhole to armhole, before it is taken in")
    def skirt_top(self) -> Length:
        """As full as its gathers, or the yoke seam and what the tucks take."""
        if self.taken_in == TUCKED:
            return self.yoke_edge + 2 * self.tuck_depth * self.tucks
        return self.yoke_edge * self.skirt_fullness

    @value("top of the skirt back, from armhole to armhole, before it is taken in")
    def skirt_back_top(self) -> Length:
        """It is gathered, also where the front is tucked."""
        return self.yoke_edge * self.skirt_fullness

    @value("placket, beside the centre of the skirt back")
    def slit_aside(self) -> Length:
        """So the half that lies on top reaches to the fold of its facing."""
        return self.beyond_centre * self.skirt_fullness

    @drafted
    def halves(self) -> tuple[Half, Half]:
        """Side and hem of front and back."""
        self.the_skirt_has_a_side()
        self.the_tucks_lie_in_the_yoke_seam()
        return self._half(self.skirt_top), self._half(self.skirt_back_top)

    def _half(self, top: Length) -> Half:
        """Side and hem below the armhole, which is moved out with the top's width."""
        underarm = shifted(self.yoke.below, float(top) / 2 - self.yoke.end[0])[-1]
        return Half(*flared_side(underarm, self.hem_level, float(self.flare)))

    @drafted
    def drafted_skirt(self) -> Skirt:
        """Front and back, the back with its slit; raises RefusalError."""
        front, back = self.halves
        return Skirt(
            _draft(self, "skirt front", self.skirt_top, front),
            _with_slit(self, _draft(self, "skirt back", self.skirt_back_top, back)),
        )

    @value("once round the hem", basis=DRAWN)
    def hem_edge(self) -> Length:
        """Front and back, on the line that is folded or sewn."""
        skirt = self.drafted_skirt
        return from_float(2 * (skirt.front.edge("hem").length + skirt.back.edge("hem").length))

    @group
    def skirt_pieces(self) -> tuple[HalfPiece, ...]:
        """Front, back, and the facings of a hem that is faced."""
        skirt = self.drafted_skirt
        return (
            HalfPiece(skirt.front, worked=self.skirt != PLAIN),
            HalfPiece(skirt.back, worked=self.skirt == WORKED),
            *self.lower_edge.facings(),
        )

    @value("panel for the skirt front, its tucks stitched")
    def skirt_panel_width(self) -> Length | None:
        """The tucks are stitched in its cloth before the front is cut out."""
        if self.taken_in != TUCKED:
            return None
        front, *_ = self.skirt_pieces
        return front.across - 2 * self.tuck_depth * self.tucks


@dataclass(frozen=True)
class Skirt:
    """The drafted skirt."""

    front: Draft
    back: Draft


def _draft(garment: SkirtInputs, name: str, top_width: Length, sewn: Half) -> Draft:
    """Half of front or back, from the width of its whole top, and its side and hem."""
    wide, yoke, lower = float(top_width) / 2, garment.yoke, garment.lower_edge
    level = yoke.end[1]
    armhole = shifted(yoke.below, wide - yoke.end[0])
    seam, top = float(garment.seam_allowance), (0.0, level)
    edges = (
        Edge("top", (top, armhole[0]), seam),
        Edge("armhole", armhole, seam),
        Edge("side", sewn.side, seam),
        lower.edge(sewn.hem),
        Edge(FOLD, (sewn.hem[-1], top)),
    )
    return Draft(
        name,
        edges,
        notches=((snapped(wide / 2), level), side_notch(sewn.side)),
        remark=lower.remark,
    )


def _with_slit(garment: SkirtInputs, back: Draft) -> Draft:
    """The skirt back with the slit for its placket, which lies in one half of it."""
    across, raw = float(garment.slit_aside), garment.yoke.level - float(garment.seam_allowance)
    slit = ((across, snapped(raw)), (across, snapped(raw + float(garment.placket_slit))))
    only = "The slit for the placket is cut in one half only, the one that will lie beneath."
    return replace(back, slit=slit, remark=" ".join(filter(None, (back.remark, only))))
