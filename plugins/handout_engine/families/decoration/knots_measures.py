"""Worked knots and bullions: where they lie, and the thread that they take."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise
from math import hypot, pi

from handout_engine.amounts.lengths import ZERO, Length, Place, from_float, total
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.sources import DRAWN, GIVEN, PRACTICE
from handout_engine.amounts.values import Value
from handout_engine.amounts.ways_out import at_least, ways
from handout_engine.working.worksheet import Worksheet

KNOTS, BULLIONS = "knots", "bullions"
LINE, GRID, STAGGERED, POINTS = "a line", "a grid", "a staggered grid", "chosen points"
MOST_KNOTS = 1500
USUAL_WRAPS = {KNOTS: 2, BULLIONS: 7}
HALF = Fraction(1, 2)
TAPE = Tape(finest=32)


@dataclass(frozen=True)
class Laid:
    """Where the knots lie: how many, the places, and the thread that runs between them."""

    count: Value
    places: tuple[Place, ...]
    travel: Value


def note_wraps(sheet: Worksheet, kind: str, wraps: int | None) -> Value:
    """How many wraps each takes, chosen or usual."""
    basis = PRACTICE if wraps is None else GIVEN
    return sheet.note("turns", "wraps round the needle", wraps or USUAL_WRAPS[kind], "",
                      basis=basis)  # fmt: skip


def note_size(sheet: Worksheet, kind: str) -> Value:
    """How long a bullion is, or how thick a knot, so that neighbours have room."""
    needle, thread = sheet["needle"].length, sheet["thread"].length
    if kind == BULLIONS:
        return sheet.note("size", "length of a bullion", thread * sheet["turns"].whole,
                          "{turns} × {thread}", saying=Saying.FINE)  # fmt: skip
    return sheet.note("size", "thickness of a knot, about", needle + 2 * thread,
                      "{needle} + 2 × {thread}", saying=Saying.FINE)  # fmt: skip


def lay_knots(sheet: Worksheet, arrangement: str, points: tuple[Place, ...] | None) -> Laid:
    """Count the knots and find their places. Raises RefusalError."""
    if arrangement == POINTS:
        return _lay_points(sheet, points)
    spaces = _note_spaces(sheet, "run", "")
    step = sheet.note("true_spacing", "from knot to knot", sheet["run"].length / spaces.whole,
                      "{run} / {spaces}")  # fmt: skip
    _check_room(sheet, step.length, "spacing")
    across = sheet.note("columns", "knots in a line", spaces.whole + 1, "{spaces} + 1")
    if arrangement == LINE:
        count = sheet.note("knots", "knots", across.whole, "{columns}")
        places = tuple(Place(step.length * each, ZERO) for each in range(across.whole))
        _check_most(count.whole)
        return Laid(count, places, sheet.note("travel", "thread from knot to knot",
                                              sheet["run"].length, "{run}"))  # fmt: skip
    return _lay_grid(sheet, across.whole, arrangement == STAGGERED)


def _note_spaces(sheet: Worksheet, name: str, prefix: str) -> Value:
    number = max(1, int(sheet[name].length / sheet["spacing"].length + HALF))
    if number > MOST_KNOTS:
        raise RefusalError(
            f"{name} {TAPE.both(sheet[name].length)} takes more than {MOST_KNOTS} knots; set them "
            f"at least {TAPE.no_less(sheet[name].length / MOST_KNOTS)} apart",
            "spacing",
        )
    return sheet.note(f"{prefix}spaces", f"spaces {'down' if prefix else 'along a line'}", number,
                      f"{{{name}}} / {{spacing}} + 1 / 2, rounded down, at least 1")  # fmt: skip


def _lay_grid(sheet: Worksheet, across: int, staggered: bool) -> Laid:
    """Rows of knots; staggered, every second row lies between and has one knot fewer."""
    spaces = _note_spaces(sheet, "height", "row_")
    rows = sheet.note("rows", "rows", spaces.whole + 1, "{row_spaces} + 1")
    down = sheet.note("true_row_spacing", "from row to row", sheet["height"].length / spaces.whole,
                      "{height} / {row_spaces}").length  # fmt: skip
    if not staggered:
        _check_room(sheet, down, "spacing")
    step = sheet["true_spacing"].length
    _check_most(across * rows.whole)
    if staggered:
        short = sheet.note(
            "short_rows", "shorter rows", rows.whole // 2, "{rows} / 2, rounded down"
        )
        count = sheet.note("knots", "knots", across * rows.whole - short.whole,
                           "{columns} × {rows} - {short_rows}")  # fmt: skip
    else:
        count = sheet.note("knots", "knots", across * rows.whole, "{columns} × {rows}")
    places = []
    for row in range(rows.whole):
        shifted = staggered and row % 2
        for column in range(across - (1 if shifted else 0)):
            shift = step / 2 if shifted else ZERO
            places.append(Place(step * column + shift, down * row))
    travel = sheet.note("travel", "thread from knot to knot, at most",
                        sheet["run"].length * rows.whole + sheet["height"].length,
                        "{rows} × {run} + {height}")  # fmt: skip
    return Laid(count, tuple(places), travel)


def _lay_points(sheet: Worksheet, points: tuple[Place, ...] | None) -> Laid:
    if points is None:
        raise RefusalError(
            "chosen points are not given; write them as across, down; across, down", "points"
        )
    gaps = [_apart(one, other) for place, one in enumerate(points) for other in points[:place]]
    if gaps and min(gaps) < sheet["size"].length:
        _check_room(sheet, min(gaps), "points")
    count = sheet.note("knots", "knots", len(points), "", basis=GIVEN)
    walked = total(_apart(one, other) for one, other in pairwise(points))
    travel = sheet.note("travel", "thread from point to point, in their order", walked, "",
                        basis=DRAWN)  # fmt: skip
    return Laid(count, points, travel)


def _apart(one: Place, other: Place) -> Length:
    return from_float(hypot(float(one.across - other.across), float(one.down - other.down)))


def _check_room(sheet: Worksheet, apart: Length, field: str) -> None:
    size = sheet["size"].length
    if apart < size:
        raise RefusalError(
            f"{field} brings two of them {TAPE.say(apart, Saying.FINE)} apart, and each is "
            f"{TAPE.say(size, Saying.FINE)} long or thick; set them at least so far apart, or use "
            "finer thread or fewer wraps",
            field,
        )


def _check_most(count: int) -> None:
    if count > MOST_KNOTS:
        raise RefusalError(
            f"{count} knots are more than {MOST_KNOTS}; set them further apart, or work the area "
            "in parts",
            "spacing",
        )


def note_thread(sheet: Worksheet, knots: Value, travel: Value, sample: bool) -> Value:
    """Thread for all, in needlefuls: from a sample, or by the wraps. Raises RefusalError."""
    if sample:
        each = sheet.note("knot_thread", "thread for one, from the sample",
                          sheet["sample_thread"].length / sheet["sample_knots"].whole,
                          "{sample_thread} / {sample_knots}")  # fmt: skip
        needed = sheet.note("thread_used", "thread worked up", each.length * knots.whole,
                            "{knots} × {knot_thread}")  # fmt: skip
    else:
        round_once = pi * float(sheet["needle"].length + sheet["thread"].length)
        turns = from_float(sheet["turns"].whole * round_once)
        each = sheet.note("knot_thread", "thread for one, an estimate",
                          turns + sheet["passing"].length,
                          "{turns} × π × ({needle} + {thread}) + {passing}")  # fmt: skip
        needed = sheet.note("thread_used", "thread worked up", each.length * knots.whole
                            + travel.length, "{knots} × {knot_thread} + {travel}")  # fmt: skip
    useful = sheet.note("useful", "of each needleful, worked up",
                        sheet["needleful"].length - sheet["fastening"].length,
                        "{needleful} - {fastening}")  # fmt: skip
    least = each.length + sheet["fastening"].length
    if useful.length < each.length:
        raise RefusalError(
            f"needleful {TAPE.both(sheet['needleful'].length)} does not last for one; use "
            f"{ways(at_least(sheet.technique, 'needleful', least), 'fewer wraps')}",
            "needleful",
        )
    fills = sheet.note("needlefuls", "needlefuls", -int(-needed.length.mm // useful.length.mm),
                       "{thread_used} / {useful}, rounded up")  # fmt: skip
    return sheet.note("thread_total", "thread to have ready",
                      sheet["needleful"].length * fills.whole, "{needlefuls} × {needleful}",
                      saying=Saying.UP)  # fmt: skip
