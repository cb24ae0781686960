"""Whole motifs with equal gaps: along a straight edge, round a ring, and between four corners."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from handout_engine.amounts.lengths import ZERO, Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.sources import GIVEN
from handout_engine.amounts.values import Value
from handout_engine.amounts.ways_out import at_least, more_than, ways
from handout_engine.shared.marking import from_centre
from handout_engine.working.workings import Cell, Chart
from handout_engine.working.worksheet import Worksheet

STRAIGHT, ROUND, CORNERS = "straight edge", "round", "round four corners"
MOTIF, GAP, EITHER = "a motif", "a gap", "either"
MOST_MOTIFS = 300
TAPE = Tape(finest=32)


@dataclass(frozen=True)
class Row:
    """Motifs in a row on one side: the side, how many, the gap, and the centre of each."""

    side: Value
    motifs: Value
    gap: Value | None
    centres: tuple[Length, ...]


@dataclass(frozen=True)
class RowWanted:
    """A row to divide: its side, the motif, the least gap, what stands at its centre.

    `clear` is what is left free at each end; with `corners` there is a gap beside it too. `given`
    is how many motifs are asked for, where that is said. `prefix` opens the names of its values.
    """

    side: Value
    motif: Length
    least: Length
    centre: str
    clear: Value
    corners: bool = False
    given: int | None = None
    prefix: str = ""
    words: str = ""

    @property
    def between(self) -> Length:
        """What is to be divided into motifs and gaps."""
        return self.side.length - 2 * self.clear.length


def note_row(sheet: Worksheet, row: RowWanted) -> Row:
    """Divide a straight side into whole motifs and equal gaps. Raises RefusalError.

    Between corner motifs there is one gap more than motifs; on an open edge one less.
    """
    more = row.least if not row.corners else -row.least
    most = max(0, int((row.between + more) / (row.motif + row.least))) if row.between else 0
    _check_row(sheet, row, most)
    sheet.note(f"{row.prefix}between", f"{row.words}to divide", row.between, "{side} - 2 × {clear}",
               side=row.side, clear=row.clear)  # fmt: skip
    fitting = sheet.note(
        f"{row.prefix}fitting", f"{row.words}motifs that fit", most,
        f"({{between}} {'-' if row.corners else '+'} {{least_gap}}) / ({{motif}} + {{least_gap}}), "
        "rounded down", between=sheet[f"{row.prefix}between"],
    )  # fmt: skip
    number = _note_number(sheet, row, fitting)
    gaps = number.whole + (1 if row.corners else -1)
    gap = None
    if gaps:
        gap = sheet.note(
            f"{row.prefix}gap", f"{row.words}gap", (row.between - row.motif * number.whole) / gaps,
            "({between} - {number} × {motif}) / ({number} " + ("+ 1)" if row.corners else "- 1)"),
            between=sheet[f"{row.prefix}between"], number=number,
        )  # fmt: skip
    return Row(row.side, number, gap, _centres(row, number.whole, gap))


def _check_row(sheet: Worksheet, row: RowWanted, most: int) -> None:
    gaps = 2 if row.corners else 0
    if row.between.mm <= 0 or (row.corners and row.between < row.least):
        shortest = 2 * row.clear.length + (row.least if row.corners else row.motif)
        raise RefusalError(
            f"{row.side.name} {TAPE.both(row.side.length)} leaves no room between its ends; use "
            f"{ways(more_than(sheet.technique, row.side.name, shortest), 'smaller ends')}",
            row.side.name,
        )
    wanted = {MOTIF: 1, GAP: 0 if row.corners else 2, EITHER: 0 if row.corners else 1}[row.centre]
    if most < wanted:
        shortest = 2 * row.clear.length + wanted * row.motif + (wanted - 1 + gaps) * row.least
        longer = at_least(sheet.technique, row.side.name, shortest)
        raise RefusalError(
            f"{row.side.name} {TAPE.both(row.side.length)} holds too few motifs "
            f"{TAPE.both(row.motif)} wide for {row.centre} at its centre; use "
            f"{ways(longer, 'a smaller gap or a smaller motif')}",
            row.side.name,
        )
    _check_most(most)


def _check_most(most: int) -> None:
    if most > MOST_MOTIFS:
        raise RefusalError(
            f"{most} motifs would fit, more than {MOST_MOTIFS}; use larger motifs or gaps, or "
            "give the edge in parts",
            "least_gap",
        )


def _note_number(sheet: Worksheet, row: RowWanted, fitting: Value) -> Value:
    """How many: what fits, one less where the centre asks for it, or what was asked for."""
    wrong = {MOTIF: 0, GAP: 1, EITHER: -1}[row.centre]
    if row.given is not None:
        if row.given > fitting.whole or row.given % 2 == wrong:
            best = fitting.whole - (1 if fitting.whole % 2 == wrong else 0)
            raise RefusalError(
                f"motifs {row.given} cannot be laid with {row.centre} at the centre and gaps of at "
                f"least {TAPE.no_less(row.least)}; use {best}, or a smaller gap",
                "motifs",
            )
        return sheet.note(f"{row.prefix}number", f"{row.words}motifs", row.given, "", basis=GIVEN)
    less = fitting.whole % 2 == wrong
    return sheet.note(f"{row.prefix}number", f"{row.words}motifs", fitting.whole - less,
                      "{fitting} - 1" if less else "{fitting}", fitting=fitting)  # fmt: skip


def _centres(row: RowWanted, number: int, gap: Value | None) -> tuple[Length, ...]:
    if gap is None:
        return (row.side.length / 2,)
    first = row.clear.length + row.motif / 2 + (gap.length if row.corners else gap.length * 0)
    return tuple(first + (row.motif + gap.length) * place for place in range(number))


def note_ring(sheet: Worksheet, side: Value, wanted: RowWanted) -> Row:
    """Divide a ring into whole motifs and as many equal gaps. Raises RefusalError."""
    most = int(side.length / (wanted.motif + wanted.least))
    if most < 1:
        raise RefusalError(
            f"{side.name} {TAPE.both(side.length)} does not hold one motif and its gap; use at "
            f"least {TAPE.no_less(wanted.motif + wanted.least)}",
            side.name,
        )
    _check_most(most)
    fitting = sheet.note("fitting", "motifs that fit", most,
                         "{side} / ({motif} + {least_gap}), rounded down", side=side)  # fmt: skip
    if wanted.given is not None and wanted.given > most:
        raise RefusalError(
            f"motifs {wanted.given} leave gaps under {TAPE.both(wanted.least)}; use at most "
            f"{most}, or a smaller gap",
            "motifs",
        )
    if wanted.given is not None:
        number = sheet.note("number", "motifs", wanted.given, "", basis=GIVEN)
    else:
        number = sheet.note("number", "motifs", most, "{fitting}", fitting=fitting)
    step = sheet.note("step", "from motif to motif", side.length / number.whole,
                      "{side} / {number}", side=side)  # fmt: skip
    gap = sheet.note("gap", "gap", step.length - wanted.motif, "{step} - {motif}")
    first = step.length / 2 if wanted.centre == GAP else step.length * 0
    centres = tuple(first + step.length * place for place in range(number.whole))
    return Row(side, number, gap, centres)


def row_chart(row: Row, words: str, from_where: str, allowance: Length = ZERO) -> Chart:
    """Every motif's centre from one end, and from the centre of the side.

    `allowance` is the cloth beyond the side's ends from which is measured.
    """
    half = row.side.length / 2
    rows: tuple[tuple[Cell, ...], ...] = tuple(
        (f"motif {place}", centre + allowance, from_centre(centre - half))
        for place, centre in enumerate(row.centres, 1)
    )
    return Chart(f"Centres of the motifs{words}", ("Motif", from_where, "From the centre"), rows)


def ring_chart(row: Row) -> Chart:
    """Every motif's centre on the way round from the centre front, and the shorter way to it."""
    rows: list[tuple[Cell, ...]] = []
    whole = row.side.length
    for place, centre in enumerate(row.centres, 1):
        other = min(centre, whole - centre)
        side = "on either way" if other == whole * Fraction(1, 2) else (
            "to the right" if centre < whole / 2 else "to the left")  # fmt: skip
        rows.append((f"motif {place}", centre, other, side if centre else "at the centre front"))
    headings = ("Motif", "Going round from the centre front", "The shorter way", "Where")
    return Chart("Centres of the motifs", headings, tuple(rows))
