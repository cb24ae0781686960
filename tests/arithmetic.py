"""Works out the formulas that a page prints, to see whether they are true.

A formula is taken as it stands in the template. Every name in braces is replaced by its exact
amount with its dimension (0 for a plain number, 1 for a length in mm), so that a formula that adds
a ratio to a length fails, and a small evaluator does the rest: + - × / ( ) and the endings that the
trade writes behind a comma.
"""

from __future__ import annotations

import ast
from dataclasses import dataclass
from fractions import Fraction
from math import ceil, floor

from handout_engine.lengths import Length
from handout_engine.values import Sentence, Value, template_runs

ROUNDED_UP_TO = "rounded up to the next "


@dataclass(frozen=True)
class Exact:
    """An exact number and its dimension: 0 plain, 1 a length in mm, 2 an area."""

    number: Fraction
    power: int = 0

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
        return Exact(Fraction(amount))
    raise ValueError(f"{amount!r} cannot stand in a formula")


def work_out(formula: Sentence) -> Exact:
    """The exact result of a printed formula."""
    expression, *endings = _with_names(formula).split(", ")
    parts = {f"part{number}": exact(formula.parts[name]) for number, name in _names(formula)}
    result = _node(ast.parse(expression, mode="eval").body, parts)
    for ending in endings:
        result = _ended(result, ending, parts)
    return result


def _names(formula: Sentence) -> list[tuple[int, str]]:
    return list(enumerate(name for _, name in template_runs(formula.template) if name))


def _with_names(formula: Sentence) -> str:
    """The template as an expression, each part by a name of its own."""
    text, number = "", 0
    for words, name in template_runs(formula.template):
        text += words.replace("×", "*")
        if name:
            text += f"part{number}"
            number += 1
    return text


def _node(node: ast.expr, parts: dict[str, Exact]) -> Exact:
    match node:
        case ast.Name(id=name):
            return parts[name]
        case ast.Constant(value=int(number)):
            return Exact(Fraction(number))
        case ast.BinOp(left=left, op=operator, right=right):
            return _together(_node(left, parts), operator, _node(right, parts))
        case _:
            raise ValueError(f"{ast.dump(node)} is not in the language of formulas")


def _together(left: Exact, operator: ast.operator, right: Exact) -> Exact:
    match operator:
        case ast.Add():
            left.alike(right)
            return Exact(left.number + right.number, left.power)
        case ast.Sub():
            left.alike(right)
            return Exact(left.number - right.number, left.power)
        case ast.Mult():
            return Exact(left.number * right.number, left.power + right.power)
        case ast.Div():
            return Exact(left.number / right.number, left.power - right.power)
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
        least.alike(result)
        return Exact(max(result.number, least.number), result.power)
    if ending.startswith(ROUNDED_UP_TO):
        step = parts[ending.removeprefix(ROUNDED_UP_TO)]
        step.alike(result)
        return Exact(ceil(result.number / step.number) * step.number, result.power)
    raise ValueError(f"{ending!r} is not an ending of a formula")
