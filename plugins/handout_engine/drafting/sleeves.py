"""Set-in sleeves: a flat cap solved to the armhole, the length, the end; one symmetrical piece.

The highest point of the cap without gathers is the origin. How the sleeve is spread for fullness,
or tapered, is told in `spreading`.
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from handout_engine.amounts.declaring import check, drafted, group, value
from handout_engine.amounts.inputs import choice, length, length_by_choice, optional_ratio, ratio
from handout_engine.amounts.lengths import Length, from_float, least, most
from handout_engine.amounts.reading import read_length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Amount
from handout_engine.amounts.sources import DRAWN, PRACTICE
from handout_engine.amounts.ways_out import at_least, at_most, ways, would_be
from handout_engine.drafting.armholes import Armholes, FrenchSeams
from handout_engine.drafting.arms import ArmInputs
from handout_engine.drafting.curves import run
from handout_engine.drafting.pieces import CutPiece
from handout_engine.drafting.spreading import FlatSleeve, SleeveHalf, share_for_width, sleeve_draft

LONG, SHORT = "long", "short"
END_EASES = {LONG: "5 cm", SHORT: "3.5 cm"}
FULLNESS = ("1", "3")
"""The least and the most fullness at the end of a sleeve."""
LOWEST_CAP = 0.25
"""How low the cap of a stout arm may be for each unit of the sleeve's width: common practice."""
RISES = 4
"""How much of its rise a head has for each unit by which it is fuller than its armhole: the whole
from a quarter on, by common practice."""


class SleeveInputs(ArmInputs, Armholes, FrenchSeams):
    """The inputs of a garment with set-in sleeves."""

    sleeve = choice("sleeve", "Long to the wrist, or short.", LONG, SHORT)
    sleeve_ease = length(
        "sleeve ease",
        "Added to the upper arm at least; the armhole mostly asks for more.",
        "6 cm",
        ("1 cm", "20 cm"),
        basis=PRACTICE,
    )
    cap_share = ratio(
        "cap share",
        "Height of the cap for each unit of the sleeve's width: a baby's is low "
        "and lets the arm move; a stout arm makes it lower, down to 0.25.",
        "0.3",
        ("0.2", "0.4"),
        basis=PRACTICE,
    )
    cap_ease = length(
        "cap ease",
        "How much longer the cap is than the armhole.",
        "5 mm",
        ("0 mm", "1 cm"),
        basis=PRACTICE,
    )
    sleeve_head = ratio(
        "gathers at the head",
        "How often the cap goes into the armhole; 1 for no gathers.",
        "1",
        ("1", "2"),
        basis=PRACTICE,
    )
    head_rise = length(
        "rise of a gathered head",
        "How much higher than a plain cap, for the gathers to stand up.",
        "1.5 cm",
        ("0 cm", "3 cm"),
        basis=PRACTICE,
    )
    sleeve_end_ease = length_by_choice(
        "ease at the sleeve end",
        "Added to the wrist, or to the arm for a short sleeve.",
        "5 cm for a long sleeve, 3.5 cm for a short one",
        ("0 cm", "20 cm"),
        basis=PRACTICE,
    )
    sleeve_fullness = optional_ratio(
        "fullness at the sleeve end",
        "How often the cut sleeve goes into its end edge.",
        "1 for a long sleeve; a short one is cut straight and drawn up to its end",
        FULLNESS,
        basis=PRACTICE,
    )
    short_share = ratio(
        "short sleeve share",
        "Length of a short sleeve for each unit of arm.",
        "0.35",
        ("0.1", "0.9"),
        basis=PRACTICE,
    )
    short_more = length(
        "short sleeve more",
        "Added to that share of the arm.",
        "2 cm",
        ("0 cm", "10 cm"),
        basis=PRACTICE,
    )
    least_underarm = length(
        "least seam under the arm",
        "A short sleeve is made longer where it would be less.",
        "2 cm",
        ("1 cm", "10 cm"),
        basis=PRACTICE,
    )

    @property
    def usual(self) -> Mapping[str, Amount]:
        """The block's, and the ease and fullness at the end of the chosen sleeve."""
        fullness: Mapping[str, Amount] = (
            {"sleeve_fullness": Fraction(1)} if self.sleeve == LONG else {}
        )
        ease = read_length(END_EASES[self.sleeve])
        return {**super().usual, **fullness, "sleeve_end_ease": ease}

    @property
    def limb(self) -> Length:
        """A short sleeve ends on the upper arm."""
        return self.wrist if self.sleeve == LONG else self.upper_arm

    @property
    def gathered(self) -> bool:
        """Whether its head is gathered."""
        return self.sleeve_head != 1

    @value("sleeve round the upper arm, at least")
    def least_sleeve_girth(self) -> Length:
        """The armhole mostly asks for more."""
        return self.upper_arm + self.sleeve_ease

    @property
    def half_cap(self) -> float:
        """Half of the cap without gathers: half the armhole, and half of what is eased in."""
        return run(self.block.armhole) + float(self.cap_ease) / 2

    @drafted
    def straight_share(self) -> float:
        """Height of the straight sleeve's cap for each unit of its width: less for a stout arm."""
        cap, half = self.half_cap, float(self.least_sleeve_girth) / 2
        flat, wanted = FlatSleeve(cap, 0.0), float(self.cap_share)
        widest = flat.width(min(LOWEST_CAP, wanted))
        if flat.width(wanted) >= half:
            return wanted
        if widest >= half:
            return share_for_width(cap, half)
        less = at_most(
            self,
            "sleeve_ease",
            from_float(2 * widest) - self.upper_arm,
            "a sleeve_ease of at most {}",
        )
        raise RefusalError(
            f"the sleeve, {TAPE.both(self.least_sleeve_girth)} round, leaves no cap for an armhole "
            f"of {TAPE.both(from_float(2 * cap) - self.cap_ease)}; use "
            f"{ways(less, 'more armhole_ease')}",
            "sleeve_ease" if less else "armhole_ease",
        )

    @value("gathered head, higher than a plain cap by")
    def cap_rise(self) -> Length | None:
        """The whole of it from a fullness of 1 1/4 on."""
        if not self.gathered:
            return None
        return least(self.head_rise * RISES * (self.sleeve_head - 1), self.head_rise)

    @value("cap of the straight sleeve, before it is spread", basis=DRAWN)
    def straight_cap(self) -> Length:
        """So high a cap as goes into the armhole."""
        flat = FlatSleeve(self.half_cap, 0.0)
        return from_float(flat.height(self.straight_share))

    @value("sleeve from the end of the shoulder to its finished end", basis=PRACTICE)
    def sleeve_reach(self) -> Length:
        """To the wrist; a short one is a share of the arm, and leaves a seam under it."""
        if self.sleeve == LONG:
            return self.arm_length
        shortest = self.straight_cap + self.least_underarm + self.sleeve_trim
        return most(self.arm_length * self.short_share + self.short_more, shortest)

    @value("sleeve without its trim")
    def sleeve_cloth_reach(self) -> Length:
        """It is cut so much shorter."""
        return self.sleeve_reach - self.sleeve_trim

    @check
    def a_seam_is_left_under_the_arm(self) -> None:
        """Refuse a cap or a trim that takes the whole length of the sleeve."""
        under = self.sleeve_cloth_reach - self.straight_cap
        if under < self.least_underarm:
            raise RefusalError(
                f"the seam under the arm {would_be(under, 'long')}, less than "
                f"{TAPE.both(self.least_underarm)}; make sleeve_trim smaller, or cap_share less "
                "for a lower cap",
                "sleeve_trim",
            )

    @drafted
    def flat_sleeve(self) -> FlatSleeve:
        """What the sleeve is to be before it is drawn."""
        self.the_hand_passes_the_sleeve()
        self.a_seam_is_left_under_the_arm()
        return FlatSleeve(
            self.half_cap,
            float(self.sleeve_cloth_reach),
            float(self.least_underarm),
            float(self.least_sleeve_girth),
            float(self.sleeve_head),
            0.0 if self.cap_rise is None else float(self.cap_rise),
        )

    @drafted
    def straight_sleeve(self) -> SleeveHalf:
        """Half of the sleeve as it is before it is spread."""
        return self.flat_sleeve.straight(self.straight_share)

    @value("end of the straight sleeve", basis=DRAWN)
    def straight_end(self) -> Length | None:
        """As wide as its body; not asked for where its fullness is given."""
        if self.sleeve_fullness is not None:
            return None
        return from_float(2 * run(self.straight_sleeve.end))

    @value("end of the sleeve before it is drawn up")
    def sleeve_end_width(self) -> Length:
        """So full as is asked for; or cut straight, where that goes round the arm."""
        if self.sleeve_fullness is not None:
            return self.sleeve_edge * self.sleeve_fullness
        assert self.straight_end is not None
        return most(self.straight_end, self.sleeve_edge)

    @drafted
    def half_sleeve(self) -> SleeveHalf:
        """Half of it, spread or drawn in to its end; raises RefusalError."""
        if self.straight_end is not None and self.straight_end >= self.sleeve_edge:
            return self.straight_sleeve
        end = float(self.sleeve_end_width) / 2
        half = self.flat_sleeve.spread(self.straight_share, end)
        if not half.is_wearable:
            raise _no_end(self, end)
        return half

    @value("sleeve across under the arm, without gathers at its head", basis=DRAWN)
    def sleeve_girth(self) -> Length:
        """Its widest, where it is measured on the paper."""
        if self.gathered:
            return from_float(2 * self.flat_sleeve.width(self.straight_share))
        return from_float(self.half_sleeve.across)

    @value("height of the sleeve's cap, without gathers", basis=DRAWN)
    def cap_height(self) -> Length:
        """From the corners under the arm to the top of the cap."""
        return self.straight_cap if self.gathered else from_float(self.half_sleeve.height)

    @value("edge of the sleeve's cap before it is gathered")
    def gathered_cap(self) -> Length | None:
        """So many times the armhole and what is eased in."""
        if not self.gathered:
            return None
        return (self.armhole_edge + self.cap_ease) * self.sleeve_head

    @value("cap without gathers, from the seam under the arm upward", basis=DRAWN)
    def head_plain(self) -> Length | None:
        """Gathers under the arm would be in its way."""
        if not self.gathered:
            return None
        half = self.half_sleeve
        return from_float(run(half.cap[half.cap.index(half.gathers) :]))

    @group
    def sleeve_piece(self) -> CutPiece:
        """Two sleeves, the left like the right."""
        seam = float(self.seam_allowance)
        return CutPiece(sleeve_draft(self.half_sleeve, seam, gathered=self.gathered), 2)


def _no_end(garment: SleeveInputs, end: float) -> RefusalError:
    """The refusal of half an end that makes a ring of the sleeve, so wide or so narrow is it."""
    good = garment.flat_sleeve.nearest_end(garment.straight_share, end)
    fullness, narrow = from_float(2 * good) / garment.sleeve_edge, end < good
    compared, word = (at_least, "at least") if narrow else (at_most, "at most")
    way = compared(garment, "sleeve_fullness", fullness, f"a sleeve_fullness of {word} {{}}")
    field = "sleeve_fullness"
    if not way:
        way, field = f"{'more' if narrow else 'less'} sleeve_end_ease", "sleeve_end_ease"
    other = "a longer sleeve"
    if narrow:
        other = "fewer gathers at the head" if garment.gathered else "more sleeve_end_ease"
    return RefusalError(
        f"the end of the sleeve, {TAPE.both(from_float(2 * end))} wide, is too "
        f"{'narrow' if narrow else 'wide'} for a sleeve of its length; use {ways(way, other)}",
        field,
    )
