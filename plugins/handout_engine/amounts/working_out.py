"""Values worked out when they are asked for, and once: what each needed, and what it rests on.

A reference to a value, or a table of sizes, costs no more than what that value hangs on; values
that need each other are refused with the way round.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, field
from typing import Any, ClassVar, cast

from handout_engine.amounts.angles import Angle
from handout_engine.amounts.declaring import DRAFT, Grouped, Refusing, Worked
from handout_engine.amounts.expressions import Because, Expression, listening, unheard
from handout_engine.amounts.naming import as_said, named, spoken
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying
from handout_engine.amounts.sources import GEOMETRY, Ground
from handout_engine.amounts.values import Value

OF_NO_FORMULA = {Ground.GIVEN, Ground.LAYOUT, Ground.DRAWN}
"""What a value rests on that has no formula; with one, it is that which it rests on."""


@dataclass(frozen=True)
class Result:
    """A value worked out: how it is said, the named amount that is read, and what it needed."""

    value: Value | None
    amount: object
    needs: tuple[tuple[Holder, str], ...]


@dataclass
class AtWork:
    """A value that is being worked out, and what it has needed so far."""

    holder: Holder
    name: str
    needs: list[tuple[Holder, str]] = field(default_factory=list)

    @property
    def title(self) -> str:
        """How a ring names it: `sleeve.facing_cut_width`."""
        block = f"{self.holder.called}." if self.holder.called else ""
        return block + self.holder.whole_name(self.name)


_at_work: list[AtWork] = []


class RingError(RefusalError):
    """Values that need each other, so that none of them can be worked out; `ring` names them."""

    def __init__(self, way: Sequence[str]) -> None:
        """Take the way round, the first value named again at its end."""
        start, *others = way
        needs = ", which needs ".join(others)
        super().__init__(f"{start} needs {needs}; write one of them as a measure")
        self.ring = frozenset(way)


@contextmanager
def at_work(here: AtWork) -> Iterator[AtWork]:
    """Work something out; raises RingError where that is being worked out already."""
    for place, each in enumerate(_at_work):
        if each.holder is here.holder and each.name == here.name:
            raise RingError([each.title for each in [*_at_work[place:], here]])
    _at_work.append(here)
    try:
        yield here
    finally:
        _at_work.pop()


class Holder:
    """What values are declared in: a technique, or a group of values."""

    prefix: str = ""
    suffix: str = ""
    called: str = ""
    declared: ClassVar[Mapping[str, Worked[Any]]] = {}
    groups: ClassVar[tuple[Grouped[Any], ...]] = ()
    checks: ClassVar[tuple[Refusing, ...]] = ()

    def __init_subclass__(cls) -> None:
        """Know the declared values, groups and checks, its own before those of its bases."""
        super().__init_subclass__()
        every: dict[str, object] = {}
        for each in cls.__mro__:
            for name, held in vars(each).items():
                every.setdefault(name, held)
        cls.declared = {name: held for name, held in every.items() if isinstance(held, Worked)}
        cls.groups = tuple(held for held in every.values() if isinstance(held, Grouped))
        cls.checks = tuple(held for held in every.values() if isinstance(held, Refusing))

    def __init__(self) -> None:
        """Begin with nothing worked out."""
        self._results: dict[str, Result] = {}
        self.groups_made: dict[str, object] = {}

    def result(self, asked: Worked[Any]) -> Result:
        """A value worked out, now or before; raises RefusalError."""
        if _at_work:
            _at_work[-1].needs.append((self, asked.name))
        if asked.name not in self._results:
            self._results[asked.name] = self._work_out(asked)
        return self._results[asked.name]

    def _work_out(self, asked: Worked[Any]) -> Result:
        with at_work(AtWork(self, asked.name)) as here, listening() as heard:
            amount = asked.work(self)
        if amount is None or asked.told is DRAFT:
            return Result(None, amount, tuple(here.needs))
        with unheard():
            found = self._value(asked, amount, heard)
        return Result(found, named(found.amount, found), tuple(here.needs))

    def _value(self, asked: Worked[Any], amount: object, heard: list[Because]) -> Value:
        told, made = asked.told, cast("Expression | None", getattr(amount, "made", None))
        basis = told.basis
        if made is not None and basis.ground in OF_NO_FORMULA:
            basis = GEOMETRY
        only = made.only if made is not None else None
        # What was chosen among several, or set equal to what was worked out before, rests on the
        # reason for doing so; what is handed on as it is rests on what that rests on.
        if isinstance(only, Value) and (basis == GEOMETRY or not (heard or only.formula)):
            basis = only.basis
        since = [word for because in heard for word in (", and ", *because.words)][1:]
        return Value(
            self.whole_name(asked.name),
            self.label_of(told.label),
            as_said(amount),
            basis,
            spoken(made.words) if made else None,
            told.saying or _usual_saying(amount),
            difference=told.difference,
            since=spoken(tuple(since)) if since and made else None,
        )

    def whole_name(self, name: str) -> str:
        """The whole name of one of its values."""
        return self.prefix + name + self.suffix

    def label_of(self, label: str) -> str:
        """A label as this holder says it."""
        return label

    def look(self) -> None:
        """Look for what cannot be sewn, by its own checks and its groups'; raises RefusalError."""
        for each in self.checks:
            each.__get__(self, type(self))()
        for made in self.made_groups():
            made.look()

    def made_groups(self) -> Iterator[Group]:
        """Its groups of values, in order."""
        for each in self.groups:
            yield from _several(each.__get__(self, type(self)))

    def find(self, name: str) -> Value | None:
        """A value by its whole name, worked out; None where there is none of that name."""
        found = self.declaration(name)
        return None if found is None else found[0].result(found[1]).value

    def declaration(self, name: str) -> tuple[Holder, Worked[Any]] | None:
        """What declares a value of that whole name, itself or a group of its own, and the method.

        None where there is no such value.
        """
        own = self.declared.get(name)
        if own is not None and self.result(own).value is not None:
            return self, own
        for held in self.made_groups():
            if name.startswith(held.prefix) and name.endswith(held.suffix):
                inside = held.declaration(name.removeprefix(held.prefix).removesuffix(held.suffix))
                if inside is not None:
                    return inside
        return None

    @property
    def values(self) -> Mapping[str, Value]:
        """All values by name: in the order of declaration, what each needs before it.

        Raises RefusalError.
        """
        found: dict[str, Value] = {}
        own = {id(each) for each in self._holders()}
        for holder, name in self._in_order(set()):
            each = holder.result(holder.declared[name]).value
            if each is not None and id(holder) in own:
                found[each.name] = each
        return found

    def _holders(self) -> Iterator[Holder]:
        """Itself and its groups; what is made on the way, for a chart, is none of them."""
        yield self
        for held in self.made_groups():
            yield from held._holders()

    def _in_order(self, seen: set[tuple[int, str]]) -> Iterator[tuple[Holder, str]]:
        for name in self.declared:
            yield from _after_needs(self, name, seen)
        for held in self.made_groups():
            yield from held._in_order(seen)

    def finishing(self) -> Iterator[tuple[Value, Value]]:
        """Strips with the edge that each finishes."""
        for each in self.declared.values():
            strip = self.result(each).value
            if each.told.finishes and strip is not None:
                yield strip, self.finished_edge(each.told.finishes)

    def finished_edge(self, name: str) -> Value:
        """The value of that name which a strip finishes."""
        found = self.find(name)
        assert found is not None
        return found


def _after_needs(
    holder: Holder, name: str, seen: set[tuple[int, str]]
) -> Iterator[tuple[Holder, str]]:
    if (id(holder), name) in seen:
        return
    seen.add((id(holder), name))
    result = holder.result(holder.declared[name])
    for needed, its_name in result.needs:
        yield from _after_needs(needed, its_name, seen)
    yield holder, name


def _several(made: Group | tuple[Group, ...]) -> tuple[Group, ...]:
    return made if isinstance(made, tuple) else (made,)


class Group(Holder):
    """Values that several techniques work out alike, under a prefix of each technique's own.

    `prefix` opens their names (`front_` makes `front_strips` of `strips`), and opens the labels;
    `suffix` closes the names of one of many (`_2` makes `fold_2` of `fold`).
    """

    def __init__(self, prefix: str = "", suffix: str = "") -> None:
        """Begin with nothing worked out."""
        super().__init__()
        self.prefix, self.suffix = prefix, suffix

    @property
    def words(self) -> str:
        """The prefix as words, or the number that closes its names."""
        return self.prefix.replace("_", " ") + self.suffix.replace("_", " ").strip()

    def label_of(self, label: str) -> str:
        """The label with the prefix as words in it or before it."""
        return label.replace("{}", self.words) if "{}" in label else self.words + label


def _usual_saying(amount: object) -> Saying:
    return Saying.DEGREES if isinstance(amount, Angle) else Saying.NEAREST
