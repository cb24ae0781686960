"""Set-in sleeves: a flat cap solved to the armhole, the length, the end; one symmetrical piece.

The highest point of the cap without gathers is the origin. How the sleeve is spread for fullness,
or tapered, is told in `spreading`.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from fractions import Fraction
from math import pi

from handout_engine.amounts.inputs import choice, length, length_by_choice, optional_ratio, ratio
from handout_engine.amounts.lengths import Length, from_float
from handout_engine.amounts.reading import read_length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Amount, Tape
from handout_engine.amounts.sources import DRAWN, PRACTICE
from handout_engine.amounts.ways_out import at_least, at_most, ways, would_be
from handout_engine.drafting.arms import ArmInputs, note_sleeve_edge, sleeve_trim
from handout_engine.drafting.body_block import BodyBlock
from handout_engine.drafting.curves import run
from handout_engine.drafting.drafts import Draft, Edge
from handout_engine.drafting.spreading import COARSE, FlatSleeve, SleeveHalf, share_for_width
from handout_engine.geometry.points import mirrored
from handout_engine.working.worksheet import Worksheet

TAPE = Tape(finest=32)
LONG, SHORT = "long", "short"
END_EASES = {LONG: "5 cm", SHORT: "3.5 cm"}
FULLNESS = ("1", "3")
"""The least and the most fullness at the end of a sleeve."""
LOWEST_CAP = 0.25
"""How low the cap of a stout arm may be for each unit of the sleeve's width: common practice."""
WHOLE_RISE_FROM = Fraction(1, 4)
"""By how much a head must be fuller than its armhole to rise all that it is to rise."""
MOST_LEAN, LEAST_SHARE = pi / 3, 0.1
"""How far the seam under the arm may lean, and how flat a cap may be, in a sleeve spread wide."""


class SleeveInputs(ArmInputs):
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
    sleeve_trim: Length = sleeve_trim()
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


def note_sleeve(sheet: Worksheet, garment: SleeveInputs, block: BodyBlock) -> Draft:
    """Note the sleeve's figures and draft it; raises RefusalError where it cannot be."""
    cap = run(block.armhole) + float(garment.cap_ease) / 2
    share = _cap_share(sheet, garment, cap)
    limb = sheet["wrist" if garment.sleeve == LONG else "upper_arm"]
    edge = note_sleeve_edge(sheet, limb).length
    rise = _note_rise(sheet, garment)
    least = sheet["least_sleeve_girth"].mm
    flat = FlatSleeve(cap, 0.0, float(garment.least_underarm), least, float(garment.sleeve_head),
                      rise)  # fmt: skip
    long = _note_length(sheet, garment, from_float(flat.height(share)))
    flat = replace(flat, reach=float(long))
    _refuse_no_underarm(garment, long - from_float(flat.height(share)))
    end = _note_end(sheet, garment, flat.straight(share), edge)
    half = flat.straight(share) if end is None else _spread(garment, (flat, share), end, edge)
    _note_cap(sheet, garment, half, (flat, share))
    return _draft(garment, half)


def _cap_share(sheet: Worksheet, garment: SleeveInputs, cap: float) -> float:
    """Height of the straight sleeve's cap for each unit of its width: less for a stout arm."""
    least = sheet.note("least_sleeve_girth", "sleeve round the upper arm, at least",
                       garment.upper_arm + garment.sleeve_ease,
                       "{upper_arm} + {sleeve_ease}").mm / 2  # fmt: skip
    flat, wanted = FlatSleeve(cap, 0.0), float(garment.cap_share)
    lowest = min(LOWEST_CAP, wanted)
    if flat.width(wanted) >= least:
        return wanted
    if flat.width(lowest) >= least:
        return share_for_width(cap, least)
    most = from_float(2 * flat.width(lowest)) - garment.upper_arm
    less = at_most(garment, "sleeve_ease", most, "a sleeve_ease of at most {}")
    way = ways(less, "more armhole_ease")
    raise RefusalError(
        f"the sleeve, {TAPE.both(from_float(2 * least))} round, leaves no cap for an armhole of "
        f"{TAPE.both(from_float(2 * cap) - garment.cap_ease)}; use {way}",
        "sleeve_ease" if less else "armhole_ease",
    )


def _note_rise(sheet: Worksheet, garment: SleeveInputs) -> float:
    """Note how much higher a gathered head is, the whole of it from a fullness of 1 1/4 on."""
    more = garment.sleeve_head - 1
    if not more:
        return 0.0
    label = "gathered head, higher than a plain cap by"
    if more >= WHOLE_RISE_FROM:
        return sheet.note("cap_rise", label, garment.head_rise, "{head_rise}").mm
    return sheet.note("cap_rise", label, garment.head_rise * more / WHOLE_RISE_FROM,
                      "{head_rise} × 4 × ({sleeve_head} - 1)").mm  # fmt: skip


def _note_length(sheet: Worksheet, garment: SleeveInputs, cap: Length) -> Length:
    """Note the sleeve's length; a short one leaves the least seam under the arm."""
    least = cap + garment.least_underarm + garment.sleeve_trim
    if garment.sleeve == LONG:
        amount, words = garment.arm_length, "{arm_length}"
    else:
        amount = garment.arm_length * garment.short_share + garment.short_more
        words = "{arm_length} × {short_share} + {short_more}"
        if amount < least:
            amount, words = least, "{cap} + {least_underarm} + {sleeve_trim}"
    long = sheet.note("sleeve_reach", "sleeve from the end of the shoulder to its finished end",
                      amount, words, basis=PRACTICE, cap=cap)  # fmt: skip
    return sheet.note("sleeve_cloth_reach", "sleeve without its trim",
                      long.length - garment.sleeve_trim,
                      "{sleeve_reach} - {sleeve_trim}").length  # fmt: skip


def _refuse_no_underarm(garment: SleeveInputs, under: Length) -> None:
    if under < garment.least_underarm:
        raise RefusalError(
            f"the seam under the arm {would_be(under, 'long')}, less than "
            f"{TAPE.both(garment.least_underarm)}; make sleeve_trim smaller, or cap_share less "
            "for a lower cap",
            "sleeve_trim",
        )


def _note_end(
    sheet: Worksheet, garment: SleeveInputs, straight: SleeveHalf, edge: Length
) -> float | None:
    """Note the end as it is cut; returns half of it, or None for that of the straight sleeve."""
    label = "end of the sleeve before it is drawn up"
    as_wide = from_float(2 * run(straight.end))
    if garment.sleeve_fullness is not None:
        return sheet.note("sleeve_end_width", label, edge * garment.sleeve_fullness,
                          "{sleeve_edge} × {sleeve_fullness}").mm / 2  # fmt: skip
    if as_wide < edge:
        return sheet.note("sleeve_end_width", label, edge, "{sleeve_edge}").mm / 2
    sheet.note("sleeve_end_width", label, as_wide, "", basis=DRAWN)
    return None


def _spread(
    garment: SleeveInputs, cut: tuple[FlatSleeve, float], end: float, edge: Length
) -> SleeveHalf:
    """The sleeve spread to its end; refuses an end so wide or so narrow that it is a ring.

    `cut` is the flat sleeve and the share of its cap, `end` half of its end as it is cut, `edge`
    the whole of that finished.
    """
    flat, share = cut
    half = flat.spread(share, end)
    if _wearable(half):
        return half
    good, bad = run(flat.straight(share).end), end
    for _ in range(COARSE):
        middle = (good + bad) / 2
        good, bad = (middle, bad) if _wearable(flat.spread(share, middle)) else (good, middle)
    raise _no_end(garment, flat, (end, good), edge)


def _no_end(
    garment: SleeveInputs, flat: FlatSleeve, ends: tuple[float, float], edge: Length
) -> RefusalError:
    """The refusal of an end; `ends` are half of it as cut, and the nearest that can be worn."""
    end, good = ends
    fullness, narrow = from_float(2 * good) / edge, end < good
    compared, word = (at_least, "at least") if narrow else (at_most, "at most")
    way = compared(garment, "sleeve_fullness", fullness, f"a sleeve_fullness of {word} {{}}")
    field = "sleeve_fullness"
    if not way:
        way, field = f"{'more' if narrow else 'less'} sleeve_end_ease", "sleeve_end_ease"
    other = "a longer sleeve"
    if narrow:
        other = "fewer gathers at the head" if flat.fullness > 1 else "more sleeve_end_ease"
    return RefusalError(
        f"the end of the sleeve, {TAPE.both(from_float(2 * end))} wide, is too "
        f"{'narrow' if narrow else 'wide'} for a sleeve of its length; use {ways(way, other)}",
        field,
    )


def _wearable(half: SleeveHalf) -> bool:
    return abs(half.lean) <= MOST_LEAN and half.share >= LEAST_SHARE


def _note_cap(
    sheet: Worksheet, garment: SleeveInputs, half: SleeveHalf, plain: tuple[FlatSleeve, float]
) -> None:
    """Note width and cap of the sleeve, without gathers at its head and with them."""
    flat, share = plain
    gathered = garment.sleeve_head != 1
    height, across = ((flat.height(share), 2 * flat.width(share)) if gathered
                      else (half.height, half.across))  # fmt: skip
    sheet.note("sleeve_girth", "sleeve across under the arm, without gathers at its head",
               from_float(across), "", basis=DRAWN)  # fmt: skip
    sheet.note("cap_height", "height of the sleeve's cap, without gathers",
               from_float(height), "", basis=DRAWN)  # fmt: skip
    if gathered:
        sheet.note("gathered_cap", "edge of the sleeve's cap before it is gathered",
                   (sheet["armhole_edge"].length + garment.cap_ease) * garment.sleeve_head,
                   "({armhole_edge} + {cap_ease}) × {sleeve_head}")  # fmt: skip
        number = half.cap.index(half.gathers)
        sheet.note("head_plain", "cap without gathers, from the seam under the arm upward",
                   from_float(run(half.cap[number:])), "", basis=DRAWN)  # fmt: skip


def _draft(garment: SleeveInputs, half: SleeveHalf) -> Draft:
    seam, cap, end = float(garment.seam_allowance), half.cap, half.end
    side = (cap[-1], end[-1])
    notches = [cap[0]]
    if garment.sleeve_head != 1:
        notches.extend((half.gathers, *mirrored((half.gathers,))))
    edges = (
        Edge("cap", (*mirrored(cap), *cap[1:]), seam),
        Edge("underarm", side, seam),
        Edge("end", (*reversed(end), *tuple(reversed(mirrored(end)))[1:]), seam),
        Edge("underarm, other side", mirrored(side), seam),
    )
    return Draft("sleeve", edges, notches=tuple(notches))
