"""Set-in sleeves: girth, a cap solved to the armhole, length and end; one symmetrical piece.

The highest point of the cap is the origin.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction

from handout_engine.drafting.arms import ArmInputs, note_sleeve_edge, sleeve_trim
from handout_engine.drafting.block import BodyBlock
from handout_engine.drafting.curves import Line, bend, run, solved
from handout_engine.drafting.drafts import Draft, Edge
from handout_engine.geometry.points import mirrored, snapped
from handout_engine.inputs import Asked, choice, length, length_by_choice, ratio
from handout_engine.lengths import Length, from_float
from handout_engine.reading import read_length
from handout_engine.refusals import RefusalError
from handout_engine.saying import Amount, Tape
from handout_engine.sources import DRAWN, PRACTICE
from handout_engine.ways_out import less_than, ways, would_be
from handout_engine.worksheet import Worksheet

TAPE = Tape(finest=32)
LONG, SHORT = "long", "short"
END_EASES = {LONG: "5 cm", SHORT: "3.5 cm"}


@dataclass(frozen=True, kw_only=True)
class SleeveInputs(ArmInputs):
    """The inputs of a garment with set-in sleeves."""

    sleeve: str = choice(Asked("sleeve", "Long to the wrist, or short."), LONG, SHORT)
    sleeve_ease: Length = length(
        Asked("sleeve ease", "Added to the upper arm.", basis=PRACTICE), "6 cm", ("1 cm", "20 cm")
    )
    cap_ease: Length = length(
        Asked("cap ease", "How much longer the cap is than the armhole.", basis=PRACTICE),
        "5 mm",
        ("0 mm", "3 cm"),
    )
    sleeve_head: Fraction = ratio(
        Asked("gathers at the head", "How often the cap goes into the armhole; 1 for no gathers.",
              basis=PRACTICE),
        "1",
        ("1", "2"),
    )  # fmt: skip
    sleeve_end_ease: Length = length_by_choice(
        Asked("ease at the sleeve end", "Added to the wrist, or to the arm for a short sleeve.",
              basis=PRACTICE),
        "5 cm for a long sleeve, 3.5 cm for a short one",
        ("0 cm", "20 cm"),
    )  # fmt: skip
    sleeve_fullness: Fraction = ratio(
        Asked("fullness at the sleeve end", "How often the cut sleeve goes into its end edge.",
              basis=PRACTICE),
        "1",
        ("1", "3"),
    )  # fmt: skip
    sleeve_trim: Length = sleeve_trim()
    short_share: Fraction = ratio(
        Asked("short sleeve share", "Length of a short sleeve for each unit of arm.",
              basis=PRACTICE),
        "0.35",
        ("0.1", "0.9"),
    )  # fmt: skip
    short_more: Length = length(
        Asked("short sleeve more", "Added to that share of the arm.", basis=PRACTICE),
        "2 cm",
        ("0 cm", "10 cm"),
    )
    least_underarm: Length = length(
        Asked("least seam under the arm", "A short sleeve is made longer where it would be less.",
              basis=PRACTICE),
        "2 cm",
        ("1 cm", "10 cm"),
    )  # fmt: skip

    @property
    def usual(self) -> Mapping[str, Amount]:
        """The block's, and the ease at the end of the chosen sleeve."""
        return {**super().usual, "sleeve_end_ease": read_length(END_EASES[self.sleeve])}


def note_sleeve(sheet: Worksheet, garment: SleeveInputs, block: BodyBlock) -> Draft:
    """Note the sleeve's figures and draft it; raises RefusalError where it cannot be."""
    girth = _note_girth(sheet, garment, block)
    cap = _note_cap(sheet, garment, block, girth)
    limb = sheet["wrist" if garment.sleeve == LONG else "upper_arm"]
    edge = note_sleeve_edge(sheet, limb).length
    wide = sheet.note(
        "sleeve_end_width",
        "end of the sleeve before it is drawn up",
        edge * garment.sleeve_fullness,
        "{sleeve_edge} × {sleeve_fullness}",
    )
    long = _note_length(sheet, garment, cap)
    under = long - cap
    if under < garment.least_underarm:
        raise RefusalError(
            f"the seam under the arm {would_be(under, 'long')}, less than "
            f"{TAPE.both(garment.least_underarm)}; make sleeve_trim smaller, or "
            "sleeve_ease more for a lower cap",
            "sleeve_trim",
        )
    return _draft(garment, girth, cap, wide.length, long)


def _note_girth(sheet: Worksheet, garment: SleeveInputs, block: BodyBlock) -> Length:
    plain = sheet.note("sleeve_girth", "sleeve round the upper arm",
                       garment.upper_arm + garment.sleeve_ease,
                       "{upper_arm} + {sleeve_ease}")  # fmt: skip
    armhole = from_float(2 * run(block.armhole))
    if plain.length >= armhole + garment.cap_ease:
        most = armhole + garment.cap_ease - garment.upper_arm
        narrower = less_than(garment, "sleeve_ease", most, "a sleeve_ease of less than {}")
        raise RefusalError(
            f"the sleeve, {TAPE.both(plain.length)} round, leaves no cap for an armhole of "
            f"{TAPE.both(armhole)}; use {ways(narrower, 'more armhole_ease')}",
            "sleeve_ease" if narrower else "armhole_ease",
        )
    return plain.length


def _note_cap(sheet: Worksheet, garment: SleeveInputs, block: BodyBlock, girth: Length) -> Length:
    """The height of the cap at which half of its curve is as long as its armhole with ease."""
    half = float(girth) / 2
    wanted = run(block.armhole) + float(garment.cap_ease) / 2
    height = solved(lambda cap: run(_cap(half, cap)), wanted, 0.0, 2 * wanted)
    cap = sheet.note("cap_height", "height of the sleeve's cap, without gathers",
                     from_float(height), "", basis=DRAWN)  # fmt: skip
    return cap.length


def _cap(half: float, height: float) -> Line:
    """Half of the cap, from its highest point to the underarm."""
    return bend((0.0, 0.0), (half * 0.45, 0.0), (half * 0.5, height), (half, height))


def _note_length(sheet: Worksheet, garment: SleeveInputs, cap: Length) -> Length:
    """Note the sleeve's length; a short one leaves the least seam under the arm."""
    least = cap + garment.least_underarm + garment.sleeve_trim
    if garment.sleeve == LONG:
        amount, words = garment.arm_length, "{arm_length}"
    else:
        amount = garment.arm_length * garment.short_share + garment.short_more
        words = "{arm_length} × {short_share} + {short_more}"
        if amount < least:
            amount, words = least, "{cap_height} + {least_underarm} + {sleeve_trim}"
    long = sheet.note("sleeve_reach", "sleeve from the end of the shoulder to its finished end",
                      amount, words, basis=PRACTICE)  # fmt: skip
    return sheet.note("sleeve_cloth_reach", "sleeve without its trim",
                      long.length - garment.sleeve_trim,
                      "{sleeve_reach} - {sleeve_trim}").length  # fmt: skip


def _draft(garment: SleeveInputs, girth: Length, cap: Length, end: Length, long: Length) -> Draft:
    more = float(garment.sleeve_head)
    half, height = float(girth) / 2 * more, float(cap) * more
    low, end_half = snapped(float(long) + height - float(cap)), float(end) / 2
    right = tuple((snapped(x * more), snapped(y * more)) for x, y in _cap(half / more, float(cap)))
    seam = float(garment.seam_allowance)
    corners = ((snapped(half), snapped(height)), (snapped(end_half), low))
    left = tuple((-x, y) for x, y in reversed(corners))
    edges = (
        Edge("cap", (*mirrored(right), *right[1:]), seam),
        Edge("underarm", corners, seam),
        Edge("end", (corners[1], left[0]), seam),
        Edge("underarm, other side", left, seam),
    )
    return Draft("sleeve", edges, notches=((0.0, 0.0),))
