"""Every amount that a working says of what is made: to see that none of them is below nothing."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from handout_engine.amounts.lengths import Length, NamedLength, Place
from handout_engine.amounts.saying import Amount
from handout_engine.amounts.values import Sentence, Value
from handout_engine.working.workings import Cell, Step, Working

Said = tuple[str, Amount | Value]


def below_nothing(working: Working) -> list[str]:
    """Where a working says less than nothing of something, and how much."""
    return [f"{where}: {part}" for where, part in said_of(working) if is_below_nothing(part)]


def is_below_nothing(part: Amount | Value) -> bool:
    """Whether an amount, or any part of it, is negative; a difference may be."""
    if isinstance(part, Value):
        return not part.difference and is_below_nothing(part.amount)
    return any(number < 0 for number in _numbers(part))


def _numbers(amount: Amount) -> Iterator[Fraction | int]:
    match amount:
        case tuple():
            for each in amount:
                yield from _numbers(each)
        case Place(across=across, down=down):
            yield from (across.mm, down.mm)
        case NamedLength(length=length):
            yield length.mm
        case Length():
            yield amount.mm
        case int() | Fraction():
            yield amount


def said_of(working: Working) -> Iterator[Said]:
    """All that is cut, sewn, bought, measured and marked."""
    yield from ((f"value {name}", value) for name, value in working.values.items())
    for piece in working.pieces:
        yield from (
            (f"piece {piece.name}", each) for each in (piece.count, piece.width, piece.length)
        )
        yield from ((f"mark {mark.label} on {piece.name}", mark.distance) for mark in piece.marks)
    yield from ((f"seam {seam.name}", seam.allowance) for seam in working.seams)
    for supply in working.supplies:
        yield from _cell(f"supply {supply.name}", supply.amount)
        yield from _cell(f"supply {supply.name}", supply.size)
        yield from _cell(f"supply {supply.name}", supply.note)
    for chart in working.charts:
        for row in chart.rows:
            for cell in row:
                yield from _cell(f"chart {chart.caption}", cell)
    for number, step in enumerate(working.sample, 1):
        yield from _step(f"sample {number}", step)
    for number, step in enumerate(working.steps, 1):
        yield from _step(f"step {number}", step)
    for picture in working.pictures:
        yield from _cell(f"picture {picture.name}", picture.caption)
        yield from _cell(f"picture {picture.name}", picture.scene.description)


def _step(where: str, step: Step) -> Iterator[Said]:
    yield from _cell(where, step.text)
    yield from _cell(f"{where}, checkpoint", step.checkpoint)


def _cell(where: str, cell: Cell | None) -> Iterator[Said]:
    if isinstance(cell, Sentence):
        yield from ((f"{where} ({name})", part) for name, part in cell.parts.items())
    else:
        yield where, cell
