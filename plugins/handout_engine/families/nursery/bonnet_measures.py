"""What a bonnet is cut from: a straight piece round the face and a back, from head and neck."""

from __future__ import annotations

from fractions import Fraction
from math import pi

from handout_engine.amounts.inputs import SEWING, choice, count, length, optional_length, ratio
from handout_engine.amounts.lengths import ZERO, Length, from_float, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.sources import GIVEN, PRACTICE
from handout_engine.amounts.values import Value
from handout_engine.bodies.measures import measured
from handout_engine.drafting.garment import Garment
from handout_engine.shared.hems import DOUBLE, FINISHED, ROLLED, SINGLE, note_hem
from handout_engine.working.worksheet import Worksheet

CIRCLE, HORSESHOE = "drawn up to a circle", "horseshoe"
PLAIN, WORKED = "plain", "worked"
TAPE = Tape(finest=32)
LEAST_CLOTH = millimetres(30)


class BonnetInputs(Garment):
    """The inputs of a bonnet."""

    back = choice(
        "back",
        "The straight piece drawn up to a small circle, or let into a horseshoe.",
        CIRCLE,
        HORSESHOE,
    )
    head = measured("head")
    neck = measured("neck")
    front_share = ratio(
        "share for the front",
        "Front edge for each unit of head.",
        "0.85",
        ("0.5", "1.5"),
        basis=PRACTICE,
    )
    depth_share = ratio(
        "share for the depth",
        "Depth for each unit of head.",
        "0.34",
        ("0.15", "0.7"),
        basis=PRACTICE,
    )
    front = optional_length(
        "front edge",
        "Finished edge round the face, where a rectangle is given.",
        "the head and its share",
        ("8 in", "40 in"),
        in_use="front_edge",
    )
    depth = optional_length(
        "depth",
        "From front edge to back seam, where a rectangle is given.",
        "the head and its share",
        ("2 in", "16 in"),
        in_use="depth_line",
    )
    crown = choice(
        "straight piece",
        "Cut from plain cloth, or from cloth that is made up first, such "
        "as a band of lace and puffing.",
        PLAIN,
        WORKED,
    )
    front_trim = length(
        "trim at the front",
        "How far an edging will reach beyond the front edge of the "
        "cloth, which is cut so much shallower.",
        "0 cm",
        ("0 cm", "8 cm"),
    )
    circle = optional_length(
        "circle",
        "Diameter of the circle at the back.",
        "2.5 cm and a fourteenth of the head",
        ("1 in", "8 in"),
        basis=PRACTICE,
    )
    nape = optional_length(
        "nape",
        "Width of a horseshoe back, at its flat lower edge.",
        "a quarter of the head",
        ("1 in", "12 in"),
        basis=PRACTICE,
    )
    back_fullness = ratio(
        "fullness at a horseshoe",
        "1 lies flat round it, more is gathered to it.",
        "1",
        ("1", "2.5"),
        basis=PRACTICE,
    )
    neck_ease = length(
        "neck ease",
        "Added to the neck for the gathered neck edge.",
        "4 cm",
        ("0 cm", "12 cm"),
        basis=PRACTICE,
    )
    make = count("how many", "How many bonnets are made.", 1, 20)
    hem = choice(
        "front hem",
        "Double turned, single turned, rolled, or finished with lace.",
        DOUBLE,
        SINGLE,
        ROLLED,
        FINISHED,
        group=SEWING,
    )
    hem_depth = optional_length(
        "hem depth",
        "Depth of one turn of the hem.",
        "1/4 in, or 1/8 in for a rolled hem",
        ("1/16 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
        in_use="hem_turn",
    )
    seam_allowance = length(
        "seam allowance",
        "Of the back seam and the strap; the neck edge is bound and has none.",
        "1/4 in",
        ("1/8 in", "5/8 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    binding = length(
        "neck binding",
        "Finished width of the single binding at the neck.",
        "1/4 in",
        ("1/8 in", "3/4 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    strap_length = length(
        "strap",
        "Finished length of the strap under the chin.",
        "4 in",
        ("1 in", "10 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    strap_width = length(
        "strap width",
        "Finished width of that strap.",
        "3/4 in",
        ("1/4 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
    )


def note_crown(sheet: Worksheet, bonnet: BonnetInputs) -> None:
    """Note the straight piece; its neck edges are bound, so nothing is added to them."""
    front = _note_share(sheet, "front_edge", bonnet.front, "front edge, round the face")
    _note_share(sheet, "depth_line", bonnet.depth, "depth, from front to back seam")
    sheet.note("half_front", "front edge, from the top of the head to the neck",
               front.length / 2, "{front_edge} / 2")  # fmt: skip
    deep = _note_cloth_depth(sheet, bonnet)
    hem = note_hem(sheet, bonnet, deep)
    sheet.note("crown_length", "straight piece, cut along the front edge",
               front.length, "{front_edge}", saying=Saying.UP)  # fmt: skip
    sheet.note("crown_depth", "straight piece, cut from front to back",
               deep.length + hem.length + bonnet.seam_allowance,
               "{cloth_depth} + {hem_allowance} + {seam_allowance}", saying=Saying.UP)  # fmt: skip


def _note_cloth_depth(sheet: Worksheet, bonnet: BonnetInputs) -> Value:
    """Note what the trim leaves of the depth; refuses a trim that leaves next to nothing."""
    most = sheet["depth_line"].length - LEAST_CLOTH
    if bonnet.front_trim > most:
        raise RefusalError(
            f"front_trim {TAPE.say(bonnet.front_trim)} leaves less than {TAPE.both(LEAST_CLOTH)} "
            f"of cloth behind it; use at most {TAPE.no_more(most)}, or make the depth more",
            "front_trim",
        )
    return sheet.note("cloth_depth", "depth of the straight piece without its trim",
                      sheet["depth_line"].length - bonnet.front_trim,
                      "{depth_line} - {front_trim}")  # fmt: skip


def _note_share(sheet: Worksheet, name: str, given: Length | None, label: str) -> Value:
    """Note a measure that is given, or else a share of the head."""
    if given is not None:
        return sheet.note(name, label, given, "", basis=GIVEN)
    share = sheet[f"{name.partition('_')[0]}_share"]
    assert isinstance(share.amount, Fraction)
    return sheet.note(name, label, sheet["head"].length * share.amount,
                      "{head} × {share}", basis=PRACTICE, share=share)  # fmt: skip


def note_back(sheet: Worksheet, bonnet: BonnetInputs) -> None:
    """Note the back and its seam; raises RefusalError where the two seams cannot match."""
    if bonnet.back == CIRCLE:
        _note_circle(sheet, bonnet)
    else:
        _note_horseshoe(sheet, bonnet)
    front, seam = sheet["front_edge"].length, sheet["back_seam"].length
    sheet.note("back_gathers", "fullness of the back edge", front / seam,
               "{front_edge} / {back_seam}")  # fmt: skip


def _note_circle(sheet: Worksheet, bonnet: BonnetInputs) -> None:
    if bonnet.circle is None:
        least = sheet.note("circle_base", "part of the circle that does not grow with the head",
                           millimetres(25), "", basis=PRACTICE)  # fmt: skip
        across = sheet.note("back_width", "circle at the back, across",
                            least.length + bonnet.head / 14,
                            "{circle_base} + {head} / 14", basis=PRACTICE)  # fmt: skip
    else:
        across = sheet.note("back_width", "circle at the back, across", bonnet.circle, "",
                            basis=GIVEN)  # fmt: skip
    seam = sheet.note("back_seam", "back seam, once round the circle",
                      from_float(pi * float(across.length)), "π × {back_width}")  # fmt: skip
    front = sheet["front_edge"].length
    if seam.length > front:
        raise RefusalError(
            f"the circle is {TAPE.both(seam.length)} round, longer than the edge of "
            f"{TAPE.both(front)} that is gathered to it; use a circle of at most "
            f"{TAPE.no_more(from_float(float(front) / pi))} across",
            "circle",
        )
    sheet.note("back_height", "circle at the back, up and down", across.length, "{back_width}")
    sheet.note("flat_nape", "flat nape of a circle", ZERO, "", basis=GIVEN)


def _note_horseshoe(sheet: Worksheet, bonnet: BonnetInputs) -> None:
    """The arc of a horseshoe (a half circle and two straight sides) is what the back edge joins."""
    if bonnet.nape is None:
        wide = sheet.note("back_width", "horseshoe, across", bonnet.head / 4, "{head} / 4",
                          basis=PRACTICE)  # fmt: skip
    else:
        wide = sheet.note("back_width", "horseshoe, across", bonnet.nape, "", basis=GIVEN)
    seam = sheet.note("back_seam", "back seam, round the horseshoe from nape to nape",
                      sheet["front_edge"].length / bonnet.back_fullness,
                      "{front_edge} / {back_fullness}")  # fmt: skip
    half_circle = from_float(pi * float(wide.length) / 2)
    if half_circle > seam.length:
        widest = from_float(2 * float(seam.length) / pi)
        raise RefusalError(
            f"a horseshoe {TAPE.both(wide.length)} wide has a half circle of "
            f"{TAPE.both(half_circle)}, longer than the whole back seam, "
            f"{TAPE.both(seam.length)}; use a nape of at most {TAPE.no_more(widest)}, or less "
            "fullness",
            "nape",
        )
    sheet.note("back_height", "horseshoe, from nape to top",
               wide.length / 2 + (seam.length - half_circle) / 2,
               "{back_width} / 2 + ({back_seam} - π × {back_width} / 2) / 2")  # fmt: skip
    sheet.note("flat_nape", "flat nape of the horseshoe", wide.length, "{back_width}")


def note_neck(sheet: Worksheet, bonnet: BonnetInputs) -> None:
    """Note the neck edge, drawn up and bound, and the strap; refuses an edge that is too short."""
    edge = sheet.note("ungathered_neck", "neck edge before it is gathered",
                      2 * sheet["cloth_depth"].length + sheet["flat_nape"].length,
                      "2 × {cloth_depth} + {flat_nape}")  # fmt: skip
    drawn = sheet.note("neck_edge", "neck edge, drawn up", bonnet.neck + bonnet.neck_ease,
                       "{neck} + {neck_ease}")  # fmt: skip
    if edge.length < drawn.length:
        deeper = (drawn.length - sheet["flat_nape"].length) / 2 + bonnet.front_trim
        raise RefusalError(
            f"the neck edge is only {TAPE.both(edge.length)} and cannot be gathered to "
            f"{TAPE.both(drawn.length)}; make the depth at least {TAPE.no_less(deeper)}, or the "
            f"{'trim at the front or the ' if bonnet.front_trim else ''}neck ease smaller",
            "depth",
        )
    sheet.note("neck_gathers", "fullness of the neck edge", edge.length / drawn.length,
               "{ungathered_neck} / {neck_edge}")  # fmt: skip
    sheet.note("binding_cut", "neck binding, cut width", 4 * bonnet.binding, "4 × {binding}",
               saying=Saying.UP)  # fmt: skip
    sheet.note("binding_length", "neck binding, cut length",
               drawn.length + 2 * bonnet.seam_allowance,
               "{neck_edge} + 2 × {seam_allowance}", saying=Saying.UP,
               finishes="neck_edge")  # fmt: skip
    sheet.note("strap_cut_width", "strap, cut width",
               2 * bonnet.strap_width + 2 * bonnet.seam_allowance,
               "2 × {strap_width} + 2 × {seam_allowance}", saying=Saying.UP)  # fmt: skip
    sheet.note("strap_cut_length", "strap, cut length",
               bonnet.strap_length + 2 * bonnet.seam_allowance,
               "{strap_length} + 2 × {seam_allowance}", saying=Saying.UP)  # fmt: skip
