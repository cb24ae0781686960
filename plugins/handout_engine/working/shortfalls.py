"""What cannot be made: less than nothing of anything, or a strip shorter than its edge.

A technique refuses in words of its own what it knows cannot be sewn. This is the net below all of
them: whatever is noted, cut, sewn, bought, marked or measured is held against nothing, so that no
sheet says a negative length, count or share. A difference may be negative; it is noted as one.
The worksheet casts it (`check_noted`, `finish`).
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from handout_engine.amounts.lengths import Length, NamedLength, Place
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Amount
from handout_engine.amounts.values import Sentence, Value
from handout_engine.working.workings import Cell, Piece, Step, Working

MOST_NAMED = 4
"""A refusal names so many inputs at most; more would be no help."""


def is_below_nothing(amount: Amount) -> bool:
    """Whether an amount, or one of several, is negative."""
    match amount:
        case tuple():
            return any(map(is_below_nothing, amount))
        case Place():
            return is_below_nothing(amount.across) or is_below_nothing(amount.down)
        case NamedLength():
            return is_below_nothing(amount.length)
        case Length():
            return amount.mm < 0
        case int() | Fraction():
            return amount < 0
    return False


def refuse_less_than_nothing(value: Value, written: Sequence[str]) -> None:
    """Refuse a value below zero, save a difference; `written` are the inputs that were given.

    Raises RefusalError with the formula in words, and the inputs it goes back to.
    """
    if value.difference or not is_below_nothing(value.amount):
        return
    words = f", since it is {value.formula.words()}" if value.formula else ""
    _refuse(f"{value.label} would be {_said(value)} below zero{words}", [value], written)


def refuse_too_short(strip: Value, edge: Value, written: Sequence[str]) -> None:
    """Refuse a strip that does not reach along the edge it finishes. Raises RefusalError."""
    if strip.length < edge.length:
        _refuse(
            f"{strip.label} {TAPE.both(strip.length)} would be shorter than {edge.label} "
            f"{TAPE.both(edge.length)}, which it is to finish",
            [strip, edge],
            written,
        )


def check_all_said(working: Working, written: Sequence[str]) -> None:
    """Hold all that a working says against nothing, and its pieces against no size at all.

    Raises RefusalError.
    """
    for piece in working.pieces:
        refuse_no_size(piece, written)
    for where, cell in _said_of(working):
        for part in cell.parts.values() if isinstance(cell, Sentence) else (cell,):
            if isinstance(part, Value):
                refuse_less_than_nothing(part, written)
            elif not isinstance(part, Sentence) and is_below_nothing(part):
                _refuse(f"{where} would say {_positive(part)} below zero", [], written)


def refuse_no_size(piece: Piece, written: Sequence[str]) -> None:
    """Refuse a piece whose width or length is below nothing or comes to nothing."""
    for side in (piece.width, piece.length):
        refuse_less_than_nothing(side, written)
        if not side.length.mm > 0:
            _refuse(
                f"{piece.name} would have no size: its {side.label} comes to nothing",
                [side],
                written,
            )


def _said_of(working: Working) -> Iterator[tuple[str, Cell]]:
    """Every amount and sentence of a working, with the place where it is said."""
    for piece in working.pieces:
        yield from _said_of_piece(piece)
    for seam in working.seams:
        yield f'the seam "{seam.name}"', seam.allowance
    for supply in working.supplies:
        for cell in (supply.amount, supply.size, supply.note):
            if cell is not None:
                yield f"what to have ready of {supply.name}", cell
    for chart in working.charts:
        for row in chart.rows:
            yield from ((f'the chart "{chart.caption}"', cell) for cell in row)
    for name, steps in (("the sample", working.sample), ("step", working.steps)):
        yield from _said_of_steps(name, steps)


def _said_of_piece(piece: Piece) -> Iterator[tuple[str, Cell]]:
    yield from (
        (f"the cut list of {piece.name}", cell) for cell in (piece.count, piece.width, piece.length)
    )
    yield from ((f'the mark "{mark.label}"', mark.distance) for mark in piece.marks)


def _said_of_steps(name: str, steps: Sequence[Step]) -> Iterator[tuple[str, Cell]]:
    for number, step in enumerate(steps, 1):
        yield f"{name} {number}", step.text
        if step.checkpoint is not None:
            yield f"the checkpoint of {name} {number}", step.checkpoint


def _refuse(message: str, values: Sequence[Value], written: Sequence[str]) -> None:
    """Raise the refusal, with what to change; its field is the first of these."""
    behind = dict.fromkeys(name for value in values for name in _inputs_behind(value))
    named = [name for name in behind if name in written] or [*written, *behind]
    change = " or ".join(list(dict.fromkeys(named))[:MOST_NAMED])
    raise RefusalError(
        message + (f"; change {change}" if change else ""), named[0] if named else None
    )


def _inputs_behind(value: Value) -> Iterator[str]:
    """The inputs that a value goes back to by its formula, and theirs; nearest first."""
    if value.formula is None:
        return
    parts = [part for part in value.formula.parts.values() if isinstance(part, Value)]
    yield from (part.name for part in parts if part.group)
    for part in parts:
        yield from _inputs_behind(part)


def _said(value: Value) -> str:
    if isinstance(value.amount, Fraction):
        return TAPE.say(-value.amount, value.saying)
    return _positive(value.amount)


def _positive(amount: Amount) -> str:
    """How far an amount lies below zero; of several, the one that lies furthest."""
    match amount:
        case Length() | int() | Fraction():
            return TAPE.both(-amount)
        case NamedLength():
            return _positive(amount.length)
        case Place():
            return _positive(min(amount.across, amount.down))
        case tuple() if amount:
            return _positive(min(amount, key=_least))
    return ""


def _least(amount: Amount) -> Fraction:
    """An amount as a plain number, to find the least of several."""
    match amount:
        case Length():
            return amount.mm
        case NamedLength():
            return amount.length.mm
        case Place():
            return min(amount.across, amount.down).mm
        case int() | Fraction():
            return Fraction(amount)
    return Fraction(0)
