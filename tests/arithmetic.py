"""Works out the formulas that a page prints, to see whether they are true.

A formula is taken as it stands in the template. Every name in braces is replaced by its exact
amount with its dimension (0 for a plain number, 1 for a length in mm), so that a formula that adds
a ratio to a length fails, and a small evaluator does the rest: + - × / ( ), √( ), π, sin, cos and
tan of degrees and back, and the endings that the trade writes behind a comma. A result that went
through one of the irrational functions, or is made of a ratio that did, is compared to a millionth
of a millimetre.
"""

from __future__ import annotations

import ast
from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction
from math import acos, asin, atan, ceil, cos, degrees, floor, pi, radians, sin, sqrt, tan

from handout_engine.amounts.lengths import Length
from handout_engine.amounts.naming import LONGEST_PART
from handout_engine.amounts.values import Sentence, Value, template_runs

ROUNDED_UP_TO = "rounded up to the next "
NEAR = Fraction(1, 10**6)

PLAIN_FUNCTIONS: dict[str, Callable[[float], float]] = {
    "sin": lambda turn: sin(radians(turn)),
    "cos": lambda turn: cos(radians(turn)),
    "tan": lambda turn: tan(radians(turn)),
    "arcsin": lambda ratio: degrees(asin(ratio)),
    "arccos": lambda ratio: degrees(acos(ratio)),
    "arctan": lambda ratio: degrees(atan(ratio)),
}


@dataclass(frozen=True, eq=False)
class Exact:
    """An exact number and its dimension: 0 plain, 1 a length in mm, 2 an area.

    An `irrational` one is exact to no more than `NEAR`, and is compared so.
    """

    number: Fraction
    power: int = 0
    irrational: bool = False

    def __eq__(self, other: object) -> bool:
        if not isinstance(other, Exact) or self.power != other.power:
            return False
        allowed = NEAR if self.irrational or other.irrational else 0
        return abs(self.number - other.number) <= allowed

    __hash__ = None  # type: ignore[assignment]

    def alike(self, other: Exact) -> None:
        if self.power != other.power:
            raise ValueError(f"{self} and {other} cannot be added: one of them is no length")


def exact(amount: object) -> Exact:
    """The amount of a part with its dimension."""
    if isinstance(amount, Value):
        return exact(amount.amount)
    if isinstance(amount, Length):
        return Exact(amount.mm, 1)
    if isinstance(amount, int | Fraction) and not isinstance(amount, bool):
        return Exact(Fraction(amount), irrational=amount.denominator > LONGEST_PART)
    raise ValueError(f"{amount!r} cannot stand in a formula")


def work_out(formula: Sentence) -> Exact:
    """The exact result of a printed formula."""
    expression, *endings = _with_names(formula).split(", ")
    parts = {f"part{number}": exact(formula.parts[name]) for number, name in _names(formula)}
    result = _node(ast.parse(expression, mode="eval").body, parts)
    for ending in endings:
        result = _ended(result, ending, parts)
    return result


RELATIONS: dict[str, Callable[[Fraction, Fraction], bool]] = {
    " is at most ": lambda left, right: left <= right + NEAR,
    " is at least ": lambda left, right: left >= right - NEAR,
    " is less than ": lambda left, right: left < right + NEAR,
    " is more than ": lambda left, right: left > right - NEAR,
}


def is_true(since: Sentence) -> bool:
    """Whether what is printed as the reason of a formula holds; raises ValueError where unread."""
    return all(_clause(clause, since) for clause in since.template.split(", and "))


def _clause(clause: str, since: Sentence) -> bool:
    if clause.startswith("“"):
        return clause.endswith("”") and "” is “" in clause
    for relation, holds in RELATIONS.items():
        left, found, right = clause.partition(relation)
        if found:
            sides = [work_out(Sentence(side, since.parts)) for side in (left, right)]
            if sides[1].number:
                sides[0].alike(sides[1])
            return holds(sides[0].number, sides[1].number)
    raise ValueError(f"{clause!r} is no reason")


def _names(formula: Sentence) -> list[tuple[int, str]]:
    return list(enumerate(name for _, name in template_runs(formula.template) if name))


def _with_names(formula: Sentence) -> str:
    """The template as an expression, each part by a name of its own."""
    text, number = "", 0
    for words, name in template_runs(formula.template):
        text += words.replace("×", "*").replace("√", "sqrt")
        if name:
            text += f"part{number}"
            number += 1
    return text


def _node(node: ast.expr, parts: dict[str, Exact]) -> Exact:
    match node:
        case ast.Name(id="π"):
            return Exact(Fraction(pi), irrational=True)
        case ast.Name(id=name):
            return parts[name]
        case ast.Constant(value=int(number)):
            return Exact(Fraction(number))
        case ast.Call(func=ast.Name(id=function), args=[argument], keywords=[]):
            return _function(function, _node(argument, parts))
        case ast.BinOp(left=left, op=operator, right=right):
            return _together(_node(left, parts), operator, _node(right, parts))
        case _:
            raise ValueError(f"{ast.dump(node)} is not in the language of formulas")


def _function(name: str, argument: Exact) -> Exact:
    """A square root of an area or a number, or an angle function of a plain number."""
    if name == "sqrt":
        assert argument.power % 2 == 0, "the root of a length is no length"
        return Exact(Fraction(sqrt(argument.number)), argument.power // 2, irrational=True)
    if name not in PLAIN_FUNCTIONS:
        raise ValueError(f"{name} is not in the language of formulas")
    assert argument.power == 0, "an angle is a plain number of degrees"
    return Exact(Fraction(PLAIN_FUNCTIONS[name](float(argument.number))), irrational=True)


def _together(left: Exact, operator: ast.operator, right: Exact) -> Exact:
    rough = left.irrational or right.irrational
    match operator:
        case ast.Add():
            left.alike(right)
            return Exact(left.number + right.number, left.power, rough)
        case ast.Sub():
            left.alike(right)
            return Exact(left.number - right.number, left.power, rough)
        case ast.Mult():
            return Exact(left.number * right.number, left.power + right.power, rough)
        case ast.Div():
            return Exact(left.number / right.number, left.power - right.power, rough)
        case _:
            raise ValueError(f"{operator} is not in the language of formulas")


def _ended(result: Exact, ending: str, parts: dict[str, Exact]) -> Exact:
    if ending == "rounded up":
        assert result.power == 0, "a length is not rounded to a whole number"
        return Exact(Fraction(ceil(result.number)))
    if ending == "rounded down":
        assert result.power == 0, "a length is not rounded to a whole number"
        return Exact(Fraction(floor(result.number)))
    if ending.startswith("at least "):
        least = _node(ast.parse(ending.removeprefix("at least "), mode="eval").body, parts)
        if least.number:  # nothing is nothing, whatever it is measured in
            least.alike(result)
        return Exact(max(result.number, least.number), result.power, result.irrational)
    if ending.startswith("at most "):
        most = _node(ast.parse(ending.removeprefix("at most "), mode="eval").body, parts)
        most.alike(result)
        return Exact(min(result.number, most.number), result.power, result.irrational)
    if ending.startswith(ROUNDED_UP_TO):
        step = parts[ending.removeprefix(ROUNDED_UP_TO)]
        step.alike(result)
        return Exact(ceil(result.number / step.number) * step.number, result.power)
    raise ValueError(f"{ending!r} is not an ending of a formula")
