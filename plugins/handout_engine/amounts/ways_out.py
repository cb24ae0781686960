"""The ways out of a refusal: figures that can be written where they are said, and no others.

A refusal names what would do. What an input does not reach, by its own bounds, is no way out; nor
is a metric figure beside inches that its rounding takes outside them. A way that is closed is an
empty string, which `ways` leaves out, so that a sentence ends with something that can be done:

    f"...; use {ways(at_most(cover, 'corner', most), 'a larger pillow')}"
"""

from __future__ import annotations

from collections.abc import Callable, Hashable, Iterator
from dataclasses import dataclass
from fractions import Fraction
from math import ceil, floor

from handout_engine.amounts.angles import Angle
from handout_engine.amounts.inputs import declared_inputs
from handout_engine.amounts.kinds import CountKind, Kind, LengthKind, Quantity
from handout_engine.amounts.lengths import MILLIMETRES_PER_INCH, Length
from handout_engine.amounts.numbers import Count, Ratio
from handout_engine.amounts.saying import TAPE, Amount, Rounding, Saying, System, Tape, nearest

Figure = Length | Fraction | int | Ratio | Count | Angle
MARKS: dict[System, Fraction] = {"inches": MILLIMETRES_PER_INCH / 32, "metric": Fraction(1)}
"""One mark of each tape in mm: as far beyond a limit as anyone measures."""
HUNDREDTH = Fraction(1, 100)
"""The least change worth writing of what is neither counted nor measured by a tape: 0.01 of a
ratio, 1 % of a share, 0.01 mm of what is measured more finely."""


def ways(*found: str) -> str:
    """The ways that are open, in a row: `at most 1/4 in (6 mm), or wider cloth`."""
    return ", or ".join(way for way in found if way)


def at_most(asked: Hashable, name: str, most: Figure, words: str = "at most {}") -> str:
    """So much or less of an input of `asked`; `words` say it, `{}` being the figure."""
    return _said(asked, name, most, words, _Way(floor))


def at_least(asked: Hashable, name: str, least: Figure, words: str = "at least {}") -> str:
    """So much or more of an input."""
    return _said(asked, name, least, words, _Way(ceil))


def less_than(asked: Hashable, name: str, limit: Figure, words: str = "less than {}") -> str:
    """Less than so much of an input, where a mark of the tape less can still be written."""
    return _said(asked, name, limit, words, _Way(floor, -1))


def more_than(asked: Hashable, name: str, limit: Figure, words: str = "more than {}") -> str:
    """More than so much of an input, where a mark of the tape more can still be written."""
    return _said(asked, name, limit, words, _Way(ceil, 1))


def just(asked: Hashable, name: str, length: Length, does: Callable[[Length], bool]) -> str:
    """So much of an input and no other, in those systems in which what is said still does."""
    return _said(asked, name, length, "{}", _Way(nearest, does=lambda mm: does(Length(mm))))


def would_be(length: Length, what: str) -> str:
    """What is left of a length that is too short: rounded down, and never a negative one."""
    return f"would be {TAPE.no_more(length)} {what}" if length.mm > 0 else "would vanish"


@dataclass(frozen=True)
class _Way:
    """How a figure is rounded, which way beyond it one must go, and whether it does."""

    rounding: Rounding
    beyond: int = 0
    does: Callable[[Fraction], bool] = lambda _: True


def _said(asked: Hashable, name: str, amount: Figure, words: str, way: _Way) -> str:
    figures = list(dict.fromkeys(_figures(asked, name, amount, way)))
    if not figures:
        return ""
    return words.format(figures[0] if len(figures) == 1 else f"{figures[0]} ({figures[1]})")


def _figures(asked: Hashable, name: str, amount: Figure, way: _Way) -> Iterator[str]:
    """The figure by a fine tape of each system in which it can be written."""
    (kind,) = [each.kind for each in declared_inputs(type(asked)) if each.name == name]
    assert isinstance(kind, Quantity)
    least, most = _plain(kind.least), _plain(kind.most)
    for system in MARKS:
        if not least <= _plain(amount) <= most:
            return
        said = Tape(system, 32).say(amount, kind.saying, way.rounding)
        found = _plain(kind.parse(said))
        step = _step(kind, system) * way.beyond
        if least <= found + step <= most and way.does(found):
            yield said


def _plain(amount: Amount) -> Fraction:
    """An amount as a number, a length in mm."""
    if isinstance(amount, Length):
        return amount.mm
    if isinstance(amount, Ratio | Count | Angle):
        return Fraction(amount.number)
    assert isinstance(amount, Fraction | int)
    return Fraction(amount)


def _step(kind: Kind, system: System) -> Fraction:
    """The smallest change of such an amount that is worth writing."""
    if isinstance(kind, LengthKind) and kind.saying is not Saying.FINE:
        return MARKS[system]
    return Fraction(1) if isinstance(kind, CountKind) else HUNDREDTH
