"""A hem on a curved lower edge: how much too long its inner edge is, eased in or faced."""

from __future__ import annotations

from fractions import Fraction
from math import pi
from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, angle, choice, length, percentage
from handout_engine.amounts.lengths import from_float, inches
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.sources import PRACTICE, published
from handout_engine.amounts.values import Value, sentence
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.drawing.scene import Scene
from handout_engine.families.edges.curved_hem_drawing import CurvedHem as Drawn
from handout_engine.families.edges.curved_hem_drawing import flat_curve, turned_curve
from handout_engine.families.edges.curved_hem_steps import add_sample, add_steps
from handout_engine.working.cautions import LONG_HEM, PINS_AND_IRON
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Chart, Picture, Seam, Supply
from handout_engine.working.worksheet import Worksheet

EASED, FACED = "eased", "faced"
TAPE = Tape(finest=32)
CHARTED = ("1/4", "1/2", "1", "3/2", "2")


class CurvedHem(Technique):
    """A hem round a flared or circular skirt."""

    title: ClassVar[str] = "Curved hem"
    family: ClassVar[str] = "edges"
    summary: ClassVar[str] = (
        "How much longer the raw edge of a flared or circular hem is than the line it lies on, and "
        "whether it can be eased in or wants a facing."
    )

    edge = length("hem edge", "The finished lower edge, once round.", "100 in", ("4 in", "30 yd"))
    turning = angle(
        "turning",
        "How far the lower edge turns on the flat pattern, all pieces together: a "
        "full circle 360, a half circle 180, a slight flare 20 to 60.",
        "360",
        ("1", "1080"),
    )
    finish = choice(
        "finish",
        "Turned up with its fullness eased in, or faced with a bias strip.",
        EASED,
        FACED,
        group=SEWING,
    )
    hem_depth = length(
        "hem depth",
        "From the finished edge to the hem's inner edge.",
        "1/4 in",
        ("1/16 in", "20 in"),
        group=SEWING,
        basis=published("oregon-l87"),
    )
    turn = length(
        "turned under",
        "Raw edge turned under; 0 for one that is overcast.",
        "1/4 in",
        ("0 in", "2 in"),
        group=SEWING,
        basis=published("oregon-l87"),
    )
    most_ease = percentage(
        "most ease",
        "Greatest share that shrinks or gathers in without pleats; wool takes "
        "more, firm cotton less.",
        "6 %",
        40,
        group=SEWING,
        basis=PRACTICE,
    )
    facing_seam = length(
        "facing seam",
        "Allowance of the seam along the edge.",
        "1/4 in",
        ("1/8 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    facing_overlap = length(
        "overlap",
        "Added to the length of the bias strip to join its ends.",
        "1 in",
        ("0 in", "6 in"),
        group=SEWING,
        basis=PRACTICE,
    )

    def whole(self) -> Worksheet:
        """Lengths of all lines, the excess, and how it goes in; raises RefusalError."""
        sheet = Worksheet(technique=self)
        _check_depth(sheet, self)
        _note_lines(sheet, self)
        if self.finish == FACED:
            _note_facing(sheet, self)
        else:
            _note_excess(sheet, self)
        sheet.charts.append(_chart(self))
        sheet.have("fine thread to match", "a fine needle for the cloth", "a hem gauge")
        if self.finish == FACED:
            sheet.supplies.append(Supply("bias strip", sheet["facing_length"]))
        sheet.cautions.extend((PINS_AND_IRON, LONG_HEM))
        add_sample(sheet)
        add_steps(sheet, self.finish == FACED)
        _draw(sheet, self)
        return sheet


def _turned(curve: CurvedHem) -> float:
    """The turning as the length of an arc of radius 1."""
    return float(curve.turning) * pi / 180


def _check_depth(sheet: Worksheet, curve: CurvedHem) -> None:
    """Note the radius; refuse a hem that reaches past the centre of its circle."""
    radius = sheet.note("radius", "radius of the curve at the finished edge",
                        from_float(float(curve.edge) / _turned(curve)),
                        "{edge} × 180 / ({turning} × π)")  # fmt: skip
    if curve.hem_depth * 2 > radius.length:
        raise RefusalError(
            f"hem_depth {TAPE.say(curve.hem_depth)} is more than half of the radius of the curve, "
            f"{TAPE.say(radius.amount)}; use "
            f"{ways(at_most(curve, 'hem_depth', radius.length / 2), 'a wider curve')}",
            "hem_depth",
        )
    if curve.turn > curve.hem_depth:
        raise RefusalError(
            f"turn {TAPE.say(curve.turn)} is deeper than the hem, {TAPE.say(curve.hem_depth)}; use "
            f"{ways(at_most(curve, 'turn', curve.hem_depth), 'a deeper hem')}",
            "turn",
        )


def _note_lines(sheet: Worksheet, curve: CurvedHem) -> None:
    by = sheet.note("for_the_depth", "change of length over the depth of the hem",
                    from_float(float(curve.hem_depth) * _turned(curve)),
                    "{hem_depth} × π × {turning} / 180")  # fmt: skip
    sheet.note("line_lies", "line on which the hem's inner edge lies", curve.edge - by.length,
               "{edge} - {for_the_depth}")  # fmt: skip


def _note_excess(sheet: Worksheet, curve: CurvedHem) -> None:
    """Note the hem's own edge and its excess; raises RefusalError when it cannot be eased in."""
    by = sheet["for_the_depth"].length
    inner = sheet.note("inner_fold", "hem's inner edge, before it is turned up", curve.edge + by,
                       "{edge} + {for_the_depth}")  # fmt: skip
    takes = sheet.note("hem_allowance", "hem allowance", curve.hem_depth + curve.turn,
                       "{hem_depth} + {turn}" if curve.turn else "{hem_depth}")  # fmt: skip
    excess = sheet.note("excess", "excess to ease in", inner.length - sheet["line_lies"].length,
                        "{inner_fold} - {line_lies}")  # fmt: skip
    sheet.note("quarter_excess", "excess in each quarter", excess.length / 4, "{excess} / 4")
    share = sheet.note("ease_share", "share that is eased in",
                       excess.length / sheet["line_lies"].length, "{excess} / {line_lies}",
                       saying=Saying.PERCENT)  # fmt: skip
    sheet.seams.append(Seam("hem of the lower edge", takes.length))
    assert isinstance(share.amount, Fraction)
    if share.amount > curve.most_ease:
        _refuse(curve, share.amount)


def _refuse(curve: CurvedHem, share: Fraction) -> None:
    turned = _turned(curve)
    most = from_float(
        float(curve.most_ease * curve.edge.mm) / (turned * float(2 + curve.most_ease))
    )
    shallower = at_most(curve, "hem_depth", most, "a hem of at most {}")
    raise RefusalError(
        f"hem_depth {TAPE.say(curve.hem_depth)} on this curve leaves "
        f"{TAPE.say(share, Saying.PERCENT)} to ease in, more than most_ease "
        f"{TAPE.say(curve.most_ease, Saying.PERCENT)}; use "
        f"{ways(shallower, 'a faced hem', 'a rolled one')}",
        "hem_depth",
    )


def _note_facing(sheet: Worksheet, curve: CurvedHem) -> None:
    """Note the bias strip, and what its upper edge loses."""
    sheet.note("facing_width", "bias strip, cut width",
               curve.facing_seam + curve.hem_depth + curve.turn,
               "{facing_seam} + {hem_depth} + {turn}")  # fmt: skip
    sheet.note("facing_length", "bias strip, joined length", curve.edge + curve.facing_overlap,
               "{edge} + {facing_overlap}", saying=Saying.UP, finishes="edge")  # fmt: skip
    by = sheet["for_the_depth"]
    sheet.note("excess", "what the strip's upper edge must lose", by.length, "{for_the_depth}")
    sheet.note("quarter_excess", "loss in each quarter", by.length / 4, "{excess} / 4")
    sheet.note("ease_share", "share that the strip's upper edge loses",
               by.length / sheet["line_lies"].length, "{excess} / {line_lies}",
               saying=Saying.PERCENT)  # fmt: skip
    sheet.note("hem_allowance", "hem allowance", curve.facing_seam, "{facing_seam}")
    sheet.seams.append(Seam("facing of the lower edge", curve.facing_seam))


def _chart(curve: CurvedHem) -> Chart:
    """What hems of other depths would leave to ease in on this edge."""
    rows = []
    for words in CHARTED:
        by = float(inches(words)) * _turned(curve)
        if 2 * by >= float(curve.edge):
            continue
        left = from_float(2 * by)
        share = from_float(200 * by / (float(curve.edge) - by)).mm
        rows.append((inches(words), left, sentence("{share} %", share=share)))
    if not rows:
        rows.append((curve.hem_depth, from_float(2 * float(curve.hem_depth) * _turned(curve)),
                     sentence("too much")))  # fmt: skip
    return Chart("Turned-up hems on this edge", ("Depth", "Excess", "Share"), tuple(rows))


def _draw(sheet: Worksheet, curve: CurvedHem) -> None:
    eased = curve.finish == EASED
    turn: Value | None = sheet["turn"] if curve.turn and eased else None
    hem = Drawn(sheet["radius"], sheet["hem_depth"], turn, float(curve.turning),
                sheet["hem_allowance"].mm, not eased)  # fmt: skip
    finished = Scene(
        sentence("A part of the finished hem"),
        sentence("Hem {depth} deep on a curve of radius {radius}.", depth=sheet["hem_depth"],
                 radius=sheet["radius"]),
        turned_curve(hem),
        tallest=200.0,
    )  # fmt: skip
    sheet.pictures.append(
        Picture("finished", sentence("A part of the finished hem, wrong side up" + (
            ", with its fullness eased in." if eased else "; the facing is tinted.")), finished,
            True)
    )  # fmt: skip
    flat = Scene(
        sentence("The same part, flat"),
        sentence("The hem's inner edge is {excess} longer than the line it will lie on."
                 if eased else "The facing's upper edge has to lose {excess}.",
                 excess=sheet["excess"]),
        flat_curve(hem, sheet["excess"]),
        tallest=200.0,
    )  # fmt: skip
    words = (
        "The same part before it is turned up, wrong side up: folds dash-dotted, and in thin "
        "dashes the line on which the hem's edge will lie."
        if eased
        else "The flat edge, wrong side up: the seam line dashed, and in thin dashes the line on "
        "which its upper edge will lie."
    )
    sheet.pictures.append(Picture("flat", sentence(words), flat))


TECHNIQUE = CurvedHem
