"""The numbers of a woven lattice: how it is set out, its tubes, its crossings and its knots."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import groupby
from math import ceil

from handout_engine.amounts.inputs import SEWING, angle, choice, length
from handout_engine.amounts.lengths import Length, from_float, total
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.sources import DRAWN, PRACTICE
from handout_engine.amounts.values import Value, sentence
from handout_engine.amounts.ways_out import at_least, at_most, ways
from handout_engine.families.lattice.lattice_panel_cloth import NamedTube
from handout_engine.families.lattice.panels import Panel
from handout_engine.families.lattice.weave import (
    FALLING,
    RISING,
    Crossing,
    Tube,
    Weave,
    band_numbers,
    crossings,
    tubes,
)
from handout_engine.families.lattice.weave_drawing import Woven
from handout_engine.geometry.points import cosine, sine
from handout_engine.geometry.polygons import area, distance_to_outline, perimeter
from handout_engine.working.workings import Cell, Chart
from handout_engine.working.worksheet import Worksheet

ALTERNATE, EVERY, NONE = "alternate crossings", "every crossing", "none"
MOST_TUBES = 160
MOST_CROSSINGS = 700
LEAST_ANGLE, MOST_ANGLE = 30, 150
LETTERS = {RISING: "R", FALLING: "F"}


class WeaveInputs:
    """How the tubes of a lattice are set out."""

    gap = length(
        "gap",
        "Opening between two tubes of one set, measured square to them.",
        "3/8 in",
        ("1/16 in", "3 in"),
        basis=PRACTICE,
    )
    rising_angle = angle(
        "rising angle",
        "Slope of the tubes that rise to the right, from the level.",
        "45",
        ("0", "90"),
        basis=PRACTICE,
    )
    falling_angle = angle(
        "falling angle",
        "Slope of the tubes that fall to the right, from the level.",
        "45",
        ("0", "90"),
        basis=PRACTICE,
    )
    margin = length(
        "margin",
        "What each tube has beyond the outline at both ends.",
        "1/2 in",
        ("1/8 in", "3 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    knots = choice(
        "knots",
        "Where the tubes are knotted to each other.",
        ALTERNATE,
        EVERY,
        NONE,
        group=SEWING,
        basis=PRACTICE,
    )
    knot_clearance = length(
        "knot clearance",
        "No knot nearer to the outline than this.",
        "1/8 in",
        ("0 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )


@dataclass(frozen=True)
class Lattice:
    """A lattice worked out: what is drawn, its tubes by name, its crossings and knots."""

    woven: Woven
    named: tuple[tuple[str, Tube], ...]
    crossings: tuple[Crossing, ...]
    knots: tuple[Crossing, ...]

    @property
    def wanted(self) -> tuple[NamedTube, ...]:
        """The tubes to cut."""
        return tuple(NamedTube(name, from_float(tube.length)) for name, tube in self.named)


def set_out(panel: Panel, tube_width: Length, asked: WeaveInputs) -> Lattice:
    """Weave the panel, a crossing at its centre; raises RefusalError."""
    weave = _weave(panel, tube_width, asked)
    _refuse_too_many(panel, weave, asked)
    found = [*tubes(panel.shape, weave, RISING), *tubes(panel.shape, weave, FALLING)]
    crossed = tuple(crossings(panel.shape, weave))
    if not crossed:
        raise RefusalError(
            "no two tubes cross inside the outline; make the gap smaller or the panel larger", "gap"
        )
    knotted = tuple(
        each
        for each in crossed
        if asked.knots == EVERY or (asked.knots == ALTERNATE and each.rising_is_over)
        if distance_to_outline(panel.shape, each.at) >= float(asked.knot_clearance)
    )
    woven = Woven(panel.shape, weave, tuple(found))
    return Lattice(woven, tuple(_named(found)), crossed, knotted)


def _weave(panel: Panel, tube_width: Length, asked: WeaveInputs) -> Weave:
    together = asked.rising_angle + asked.falling_angle
    if not LEAST_ANGLE <= together <= MOST_ANGLE:
        wide = asked.rising_angle >= asked.falling_angle
        field, other = ("rising_angle", "falling_angle")[:: 1 if wide else -1]
        beside = getattr(asked, other)
        way = ways(
            at_least(asked, field, LEAST_ANGLE - beside)
            if together < LEAST_ANGLE
            else at_most(asked, field, MOST_ANGLE - beside),
            "other angles",
        )
        raise RefusalError(
            f"the two sets cross at {Tape().say(together, Saying.DEGREES)}, too nearly parallel to "
            f"weave: both angles together are {LEAST_ANGLE}° to {MOST_ANGLE}°; use {way}",
            field,
        )
    rise, fall = asked.rising_angle, asked.falling_angle
    return Weave(
        rising=(cosine(rise), -sine(rise)),
        falling=(cosine(fall), sine(fall)),
        centre=(float(panel.width / 2), float(panel.depth / 2)),
        width=float(tube_width),
        pitch=float(tube_width + asked.gap),
        margin=float(asked.margin),
    )


def _refuse_too_many(panel: Panel, weave: Weave, asked: WeaveInputs) -> None:
    """Refuse before anything is clipped, so that no measures can keep a reader waiting."""
    (ax, ay), (bx, by) = weave.rising, weave.falling
    cell = weave.pitch * weave.pitch / abs(ax * by - ay * bx)
    crossing_count = area(panel.shape) / cell
    tube_count = sum(len(band_numbers(panel.shape, weave, name)) for name in (RISING, FALLING))
    over = max(crossing_count / MOST_CROSSINGS, (tube_count / MOST_TUBES) ** 2)
    if over > 1:
        pitch = Length(Fraction(ceil(weave.pitch * over**0.5 + 1)))
        gap = pitch - Length(Fraction(weave.width))
        raise RefusalError(
            f"about {tube_count} tubes with {ceil(crossing_count)} crossings are more than one "
            f"panel can show ({MOST_TUBES} and {MOST_CROSSINGS}); use "
            f"{ways(at_least(asked, 'gap', gap, 'a gap of at least {}'), 'wider tubes')}, or a "
            "smaller panel",
            "gap",
        )


def _named(found: Sequence[Tube]) -> list[tuple[str, Tube]]:
    """Each tube with its name: R or F, the number of its band, and a letter for several pieces."""
    named = []
    for set_name, letter in LETTERS.items():
        own = [tube for tube in found if tube.set_name == set_name]
        for place, (_, pieces) in enumerate(groupby(own, key=lambda tube: tube.number), 1):
            parts = list(pieces)
            for number, tube in enumerate(parts):
                named.append(
                    (f"{letter}{place}" + (chr(97 + number) if len(parts) > 1 else ""), tube)
                )
    return named


def note_setting_out(sheet: Worksheet, panel: Panel) -> None:
    """Note the outline's own measures and how the tubes are spaced."""
    sheet.note("panel_width", "panel, finished width", panel.width, "", basis=DRAWN)
    sheet.note("panel_depth", "panel, finished depth", panel.depth, "", basis=DRAWN)
    sheet.note("edge_length", "finished edge, once round", from_float(perimeter(panel.shape)), "",
               basis=DRAWN)  # fmt: skip
    sheet.note("centre_across", "centre of the panel, from its left", panel.width / 2,
               "{panel_width} / 2")  # fmt: skip
    sheet.note("centre_down", "centre of the panel, from its top", panel.depth / 2,
               "{panel_depth} / 2")  # fmt: skip
    pitch = sheet.note("pitch", "from tube to tube of one set, square to them",
                       sheet["tube_width"].length + sheet["gap"].length,
                       "{tube_width} + {gap}")  # fmt: skip
    crossing = sheet["rising_angle"].amount, sheet["falling_angle"].amount
    assert isinstance(crossing[0], Fraction) and isinstance(crossing[1], Fraction)
    together = crossing[0] + crossing[1]
    sheet.note("crossing_angle", "angle between the two sets", together,
               "{rising_angle} + {falling_angle}", saying=Saying.DEGREES)  # fmt: skip
    sheet.note("crossing_spacing", "from crossing to crossing, along a tube",
               from_float(pitch.mm / sine(together)),
               "{pitch} / sin({crossing_angle})")  # fmt: skip
    sheet.note("opening_side", "side of an opening, along a tube",
               from_float(sheet["gap"].mm / sine(together)),
               "{gap} / sin({crossing_angle})")  # fmt: skip


def note_tubes(sheet: Worksheet, lattice: Lattice) -> None:
    """Note how many tubes there are, how long, and their crossings and knots."""
    for name in (RISING, FALLING):
        own = [tube for _, tube in lattice.named if tube.set_name == name]
        sheet.note(f"{name}_tubes", f"{name} tubes, pieces", len(own), "", basis=DRAWN)
        sheet.note(f"{name}_total", f"{name} tubes, all lengths with margins",
                   total(from_float(tube.length) for tube in own), "", basis=DRAWN)  # fmt: skip
    both = sheet["rising_total"].length + sheet["falling_total"].length
    sheet.note("tubes", "tubes to cut", len(lattice.named), "{rising_tubes} + {falling_tubes}")
    sheet.note("tube_total", "tube in all", both, "{rising_total} + {falling_total}",
               saying=Saying.UP)  # fmt: skip
    longest = max(tube.length for _, tube in lattice.named)
    sheet.note("longest_tube", "longest tube", from_float(longest), "", basis=DRAWN)
    edge_only = sum(tube.edge_only for _, tube in lattice.named)
    sheet.note("edge_tubes", "tubes that enter by an edge only", edge_only, "", basis=DRAWN)
    sheet.note("crossings", "crossings inside the outline", len(lattice.crossings), "",
               basis=DRAWN)  # fmt: skip
    sheet.note("knot_count", "knots", len(lattice.knots), "", basis=DRAWN)
    sheet.charts.append(_tube_chart(lattice))
    if lattice.knots:
        sheet.charts.append(_knot_chart(lattice.knots))


def _tube_chart(lattice: Lattice) -> Chart:
    """Tubes of one length in one row, in the order in which they lie."""
    alike: dict[tuple[float, str], list[NamedTube]] = {}
    for wanted, (_, tube) in zip(lattice.wanted, lattice.named, strict=True):
        alike.setdefault((round(tube.length, 6), _remark(tube)), []).append(wanted)
    rows: list[tuple[Cell, ...]] = [
        (
            ", ".join(tube.name for tube in same),
            str(len(same)),
            Value(
                "tube",
                "tube, cut length",
                max(each.length for each in same),
                DRAWN,
                saying=Saying.UP,
            ),
            remark,
        )
        for (_, remark), same in alike.items()
    ]
    caption = "Tubes to cut, margins included: R rises to the right, F falls"
    return Chart(caption, ("Tubes", "Cut", "Length", "Remark"), tuple(rows))


def _remark(tube: Tube) -> str:
    if tube.edge_only:
        return "enters by an edge only"
    if len(tube.shapes) > 1:
        return "runs on over a gap in the outline"
    return "through the centre" if tube.number == 0 else ""


def _knot_chart(knots: Sequence[Crossing]) -> Chart:
    """The knots in rows: how far down each row lies, how far across its knots."""
    rows: list[tuple[Cell, ...]] = []
    for down, row in groupby((each.at for each in knots), key=lambda at: round(at[1], 6)):
        across = {f"at{place}": from_float(x) for place, x in enumerate(sorted(x for x, _ in row))}
        places = sentence(" ".join(f"{{{name}}}" for name in across), **across)
        rows.append((Value("down", "down", from_float(down), DRAWN), places))
    headings = ("Down from the top", "Across from the left")
    return Chart("Where the knots come, measured in the outline's box", headings, tuple(rows))
