"""Values worked out from a technique's inputs: each a method, done when it is asked for and once.

The body of the method is the formula:

    @value("facing strip, cut width")
    def facing_cut_width(self) -> Length:
        return self.front_cut_width + 2 * self.band + self.turn_of_cloth

What it returns remembers what it was made of, so the printed formula, what decided between two
ways of making it, the basis of what is only another name for something, what hangs on what, and a
ring that cannot be worked out all come from the computation itself.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field
from fractions import Fraction
from typing import Any, ClassVar, Generic, Self, TypeVar, cast, overload

from handout_engine.amounts.expressions import (
    Because,
    Expression,
    Word,
    listening,
    of,
    tell,
    unheard,
)
from handout_engine.amounts.lengths import Area, Length, from_float
from handout_engine.amounts.numbers import Angle, Count, Ratio
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Amount, Saying
from handout_engine.amounts.sources import GEOMETRY, GIVEN, Basis
from handout_engine.amounts.values import Sentence, Value

A = TypeVar("A")
LONGEST_PART = 2**40
"""Fractions of a millimetre with longer denominators than this come from roots and angles."""


class Choice(str):
    """A choice that was made, which tells when a formula was decided by it."""

    __slots__ = ("asked",)
    asked: str

    def __eq__(self, other: object) -> bool:
        """Equal words are equal choices."""
        tell(lambda: (f"“{self.asked}” is “{self}”",))
        return str.__eq__(self, other)

    __hash__ = str.__hash__


def named(amount: Amount, value: Value) -> Any:  # noqa: ANN401 - of the kind that the amount is
    """An amount that knows its name, for the formulas in which it stands."""
    match amount:
        case Length():
            return Length(amount.mm, of(value))
        case Fraction():
            kind = Angle if value.saying is Saying.DEGREES else Ratio
            return kind(amount, of(value))
        case int():
            return Count(amount, of(value))
        case str():
            choice = Choice(amount)
            choice.asked = value.label
            return choice
        case (Length(), *_):
            return tuple(
                named(each, Value(f"{value.name}{place}", f"{value.label} {place}", each, GIVEN))
                for place, each in enumerate(cast("tuple[Amount, ...]", amount), 1)
            )
    return amount


def as_said(amount: object) -> Amount:
    """An amount as it is kept and said: exact, without its history.

    Lengths that went through a root or an angle are kept to a billionth of a millimetre. Raises
    TypeError for what is no amount.
    """
    match amount:
        case Length():
            long = amount.mm.denominator > LONGEST_PART
            return from_float(float(amount.mm)) if long else Length(amount.mm)
        case Count() | Ratio() | Angle():
            return amount.number
        case Choice():
            return str(amount)
        case tuple():
            return cast(Amount, tuple(as_said(each) for each in amount))
        case Area():
            raise TypeError("an area is no value by itself; say it as a length or a ratio")
    return cast(Amount, amount)


K = TypeVar("K", Length, Count, Ratio, Angle)


def constant(label: str, amount: K, basis: Basis) -> K:
    """A figure of the trade that formulas speak of by its label."""
    said = as_said(amount)
    return cast(K, named(said, Value(label.replace(" ", "_"), label, said, basis)))


def spoken(words: tuple[Word, ...]) -> Sentence:
    """The words of an expression as a sentence; things of one name are kept apart."""
    template, parts = "", dict[str, Amount | Value]()
    for word in words:
        if isinstance(word, str):
            template += word.replace("{", "{{").replace("}", "}}")
            continue
        assert isinstance(word, Value)
        name = word.name
        while name in parts and parts[name] is not word and parts[name] != word:
            name += "_"
        parts[name] = word
        template += f"{{{name}}}"
    return Sentence(template, parts)


@dataclass(frozen=True)
class Told:
    """What a value is declared with, beside its formula."""

    label: str
    basis: Basis = GEOMETRY
    saying: Saying | None = None
    finishes: str = ""
    difference: bool = False


class Worked(Generic[A]):
    """A declared value: reading it from a technique works it out."""

    def __init__(self, work: Callable[[Any], A], told: Told) -> None:
        """Keep the formula and what it is told with."""
        self.work = work
        self.told = told
        self.__doc__ = work.__doc__
        self.name = ""

    def __set_name__(self, owner: type, name: str) -> None:
        """Know the name of the method."""
        self.name = name

    @overload
    def __get__(self, holder: None, owner: type) -> Self: ...
    @overload
    def __get__(self, holder: Holder, owner: type) -> A: ...
    def __get__(self, holder: Holder | None, owner: type) -> Self | A:
        """The amount, named; the declaration itself where a class is asked."""
        if holder is None:
            return self
        return cast(A, holder.result(self).amount)


def value(
    label: str,
    *,
    basis: Basis = GEOMETRY,
    saying: Saying | None = None,
    finishes: str = "",
    difference: bool = False,
) -> Callable[[Callable[[Any], A]], Worked[A]]:
    """Declare a value with its label; the decorated method is its formula.

    In the label `{}` stands for what its group is called. `basis` is what it rests on where that
    is more than the formula says; what is only another name for one thing rests on what that does.
    Of a strip, `finishes` names the input or value that is its edge: a shorter one is refused. Only
    a `difference` may be less than nothing. A method may return None: there is no such value then.
    """
    told = Told(label, basis, saying, finishes, difference)
    return lambda work: Worked(work, told)


G = TypeVar("G", bound="Group | tuple[Group, ...]")


class Grouped(Generic[G]):
    """A declared group of values, or several."""

    def __init__(self, work: Callable[[Any], G]) -> None:
        """Keep how the group is made."""
        self.work = work
        self.__doc__ = work.__doc__
        self.name = ""

    def __set_name__(self, owner: type, name: str) -> None:
        """Know the name of the method."""
        self.name = name

    @overload
    def __get__(self, holder: None, owner: type) -> Self: ...
    @overload
    def __get__(self, holder: Holder, owner: type) -> G: ...
    def __get__(self, holder: Holder | None, owner: type) -> Self | G:
        """The group of a technique, made once."""
        if holder is None:
            return self
        if self.name not in holder.groups_made:
            holder.groups_made[self.name] = self.work(holder)
        return cast(G, holder.groups_made[self.name])


def group(work: Callable[[Any], G]) -> Grouped[G]:
    """Declare a group of values (or a tuple of groups) that several techniques share."""
    return Grouped(work)


Check = Callable[[Any], None]


class Refusing:
    """A declared check: a technique refuses there what cannot be sewn."""

    def __init__(self, look: Check) -> None:
        """Keep the check."""
        self.look = look
        self.__doc__ = look.__doc__

    @overload
    def __get__(self, holder: None, owner: type) -> Self: ...
    @overload
    def __get__(self, holder: Holder, owner: type) -> Callable[[], None]: ...
    def __get__(self, holder: Holder | None, owner: type) -> Self | Callable[[], None]:
        """The check of a technique; what it compares is no part of a formula that calls it."""
        return self if holder is None else lambda: self._look(holder)

    def _look(self, holder: Holder) -> None:
        with unheard():
            self.look(holder)


def check(look: Check) -> Refusing:
    """Declare a method that raises RefusalError where the measures cannot be sewn."""
    return Refusing(look)


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
        """How a ring names it."""
        return self.holder.prefix + self.name


_at_work: list[AtWork] = []


class RingError(RefusalError):
    """Values that need each other, so that none of them can be worked out."""


def _refuse_ring(again: AtWork) -> None:
    for place, each in enumerate(_at_work):
        if each.holder is again.holder and each.name == again.name:
            ring = [*_at_work[place:], again]
            start, *others = [
                f"{each.holder.called} needs {each.title}" if each.holder.called else each.title
                for each in ring
            ]
            raise RingError(f"{start}, which needs {', which needs '.join(others)}")


class Holder:
    """What values are declared in: a technique, or a group of values."""

    prefix: str = ""
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
        here = AtWork(self, asked.name)
        _refuse_ring(here)
        _at_work.append(here)
        try:
            with listening() as heard:
                amount = asked.work(self)
        finally:
            _at_work.pop()
        if amount is None:
            return Result(None, None, tuple(here.needs))
        found = self._value(asked, amount, heard)
        return Result(found, named(found.amount, found), tuple(here.needs))

    def _value(self, asked: Worked[Any], amount: object, heard: list[Because]) -> Value:
        told, made = asked.told, cast("Expression | None", getattr(amount, "made", None))
        basis = told.basis
        # What was chosen by the technique among several rests on the reason for choosing so.
        chosen = bool(heard) and basis != GEOMETRY
        if made is not None and isinstance(made.only, Value) and not chosen:
            basis = made.only.basis
        since = [word for because in heard for word in (", and ", *because.words)][1:]
        return Value(
            self.prefix + asked.name,
            self.label_of(told.label),
            as_said(amount),
            basis,
            spoken(made.words) if made else None,
            told.saying or _usual_saying(amount),
            difference=told.difference,
            since=spoken(tuple(since)) if since and made else None,
        )

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
        if name in self.declared:
            return self.result(self.declared[name]).value
        for held in self.made_groups():
            inside = name.startswith(held.prefix) and held.find(name.removeprefix(held.prefix))
            if inside:
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

    `prefix` opens their names (`front_` makes `front_strips` of `strips`), and opens the labels.
    """

    def __init__(self, prefix: str = "") -> None:
        """Begin with nothing worked out."""
        super().__init__()
        self.prefix = prefix

    @property
    def words(self) -> str:
        """The prefix as words."""
        return self.prefix.replace("_", " ")

    def label_of(self, label: str) -> str:
        """The label with the prefix as words in it or before it."""
        return label.replace("{}", self.words) if "{}" in label else self.words + label


def _usual_saying(amount: object) -> Saying:
    return Saying.DEGREES if isinstance(amount, Angle) else Saying.NEAREST
