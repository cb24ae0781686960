"""How a technique declares what it works out: values, groups of values, and checks.

The body of a method under `@value` is a formula:

    @value("facing strip, cut width")
    def facing_cut_width(self) -> Length:
        return self.front_cut_width + 2 * self.band + self.turn_of_cloth

What it returns remembers what it was made of, so the printed formula cannot say anything else.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any, Generic, Self, TypeVar, cast, overload

from handout_engine.amounts.expressions import unheard
from handout_engine.amounts.saying import Saying
from handout_engine.amounts.sources import GEOMETRY, Basis

if TYPE_CHECKING:
    from handout_engine.amounts.working_out import Group, Holder

A = TypeVar("A")


@dataclass(frozen=True)
class Told:
    """What a value is declared with, beside its formula."""

    label: str
    basis: Basis = GEOMETRY
    saying: Saying | None = None
    finishes: str = ""
    difference: bool = False


class Worked(Generic[A]):
    """A declared value or draft: reading it from a technique works it out."""

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


DRAFT = Told("")


def drafted(work: Callable[[Any], A]) -> Worked[A]:
    """Declare what is drawn from values and is none itself, such as an outline: made once.

    What a value reads from it hangs on what the draft was made from.
    """
    return Worked(work, DRAFT)


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
            # Whoever asks first makes it, so what is compared on the way is nobody's reason.
            with unheard():
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
