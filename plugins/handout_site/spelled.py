"""A working spelled out for the console: as JSON-ready data, or as plain text."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction
from typing import Any

from handout_engine.amounts.lengths import Length, NamedLength, Place
from handout_engine.amounts.saying import Amount, Saying, Tape
from handout_engine.amounts.values import Value
from handout_engine.working.workings import Piece, Step, Working


def as_json(working: Working, tape: Tape) -> dict[str, Any]:
    """Technique, inputs, values, pieces, steps, cautions and sources as plain data.

    A length is `{"mm": number, "text": "2 1/4 in"}`, with a name where it is a named one; a place
    is one length across and one down; other amounts are plain numbers or text.
    """
    return {
        "technique": working.technique,
        "inputs": {name: _plain(value, tape) for name, value in working.inputs.items()},
        "values": {name: _plain(value, tape) for name, value in working.values.items()},
        "pieces": [_piece(piece, tape) for piece in working.pieces],
        "steps": [_step(step, tape) for step in working.steps],
        "cautions": [caution.text for caution in working.cautions],
        "sources": [source.line for source in working.sources],
    }


def _plain(value: Value, tape: Tape) -> Any:  # noqa: ANN401 - JSON is made of many types
    return _amount(value.amount, value.saying, tape)


def _amount(amount: Amount, saying: Saying, tape: Tape) -> Any:  # noqa: ANN401
    match amount:
        case tuple():
            return [_amount(each, saying, tape) for each in amount]
        case Length():
            return {"mm": _number(amount.mm), "text": tape.say(amount, saying)}
        case Place():
            return {
                "across": _amount(amount.across, saying, tape),
                "down": _amount(amount.down, saying, tape),
            }
        case NamedLength():
            return {"name": amount.name, **_amount(amount.length, saying, tape)}
        case Fraction():
            return _number(amount)
    return amount


def _number(number: Fraction) -> int | float:
    return number.numerator if number.denominator == 1 else float(number)


def _piece(piece: Piece, tape: Tape) -> dict[str, Any]:
    return {
        "name": piece.name,
        "cloth": piece.cloth,
        "count": piece.count,
        "width": _plain(piece.width, tape),
        "length": _plain(piece.length, tape),
        "grain": piece.grain.value,
        "marks": [
            {"label": mark.label, "distance": _amount(mark.distance, Saying.NEAREST, tape)}
            for mark in piece.marks
        ],
    }


def _step(step: Step, tape: Tape) -> dict[str, str]:
    spelled = {"text": step.text.text(tape)}
    if step.checkpoint is not None:
        spelled["measure"] = step.checkpoint.text(tape)
    return spelled


def as_text(working: Working, tape: Tape) -> str:
    """The working as a reader at a terminal wants it."""
    return "\n".join(_lines(working, tape))


def _lines(working: Working, tape: Tape) -> Iterable[str]:
    yield working.title
    yield from ("", "Cut")
    for piece in working.pieces:
        size = f"{_both(piece.width, tape)} × {_both(piece.length, tape)}"
        yield f"  {piece.count} × {piece.name}, {size}, {piece.cloth}, {piece.grain.value}"
    yield from ("", "To buy and have ready")
    for supply in working.supplies:
        told = supply.amount or supply.size
        yield f"  {supply.name}" + (f": {_both(told, tape)}" if told else "")
    yield from ("", "Sew a sample first")
    yield from _steps(working.sample, tape)
    yield from ("", "Sew")
    yield from _steps(working.steps, tape)
    yield from ("", "Values")
    for value in working.values.values():
        how = f" = {value.formula.first(tape)}" if value.how and value.formula else ""
        yield f"  {value.name}: {_both(value, tape)}{how} [{value.basis.text}]"
    yield from ("", "Cautions")
    yield from (f"  {caution.text}" for caution in working.cautions)


def _steps(steps: Iterable[Step], tape: Tape) -> Iterable[str]:
    for number, step in enumerate(steps, 1):
        yield f"  {number}. {step.text.text(tape)}"
        if step.checkpoint is not None:
            yield f"     Measure now: {step.checkpoint.text(tape)}"


def _both(value: Value, tape: Tape) -> str:
    return tape.both(value.amount, value.saying)
