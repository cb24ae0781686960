"""Where the engine's arithmetic can be made wrong, and how.

A change is one small slip in a formula: a constant, a sign, + for -, × for /, the smaller for the
larger, < for <=, two sides that change places. Only the expression that is changed is written
anew, on as many lines as before, so that every other line keeps its number.
"""

from __future__ import annotations

import ast
import re
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, field
from fractions import Fraction
from itertools import pairwise

from engine_source import Function, Source

VALUES, STEPS, CHARTS, DRAWINGS = "values", "steps", "charts", "drawings"
SHOWN = (STEPS, CHARTS, DRAWINGS)

NOTES = {"note", "note_difference"}
"""The methods of a worksheet that note an amount."""
SAYS = {"step", "sentence", "Step", "Sentence", "checkpoint", "caption"}
"""What makes a sentence of amounts."""
TABLES = {"Chart", "chart"}
DRAWN_IN = re.compile(r"(?:^|[._])(?:drawings?|drawn|pictures?|scenes?|views?)(?=$|[._])")
"""A folder or file whose name says that it draws."""
SHAPES_FROM = re.compile(r"(?:^|\.)(?:scene|drawing)(?:$|\.)")
NO_SHAPES = {"Point"}
"""What geometry takes from the drawings' vocabulary without drawing anything."""
NO_AMOUNTS = {
    "fragments", "markup", "authored", "questions", "browser", "kept", "problems", "register",
    "refusals", "ways_out", "reading", "units", "inputs", "kinds", "list_kinds", "sources",
    "cautions", "blocks", "shortfalls", "sized", "ordering", "made_to",
}  # fmt: skip
"""Folders and files that read, refuse or write words, and work no amount of a sheet out."""

QUANTITIES = {"inches", "millimetres", "Fraction"}
"""Functions whose argument may be a number in quotation marks."""
UNTOUCHED_CALLS = {"Tape", "replace", "isinstance", "getattr", "TypeVar", "cast", "split", "join"}
HOLDERS = {"self", "cls", "sheet", "tape", "scene", "page", "working", "technique", "key", "name"}
"""Names that are no amounts, so that changing their places would only be a mistake of kind."""
ENDS = (("min", "max"), ("most", "least"), ("larger", "smaller"))
PAIRS = (
    ("width", "length"), ("across", "down"), ("across", "along"), ("left", "right"),
    ("top", "bottom"), ("start", "end"), ("above", "below"), ("upper", "lower"),
)  # fmt: skip
COMPARED: dict[type[ast.cmpop], tuple[tuple[str, type[ast.cmpop]], ...]] = {
    ast.Lt: (("boundary", ast.LtE), ("turned", ast.Gt)),
    ast.LtE: (("boundary", ast.Lt), ("turned", ast.GtE)),
    ast.Gt: (("boundary", ast.GtE), ("turned", ast.Lt)),
    ast.GtE: (("boundary", ast.Gt), ("turned", ast.LtE)),
    ast.Eq: (("turned", ast.NotEq),),
    ast.NotEq: (("turned", ast.Eq),),
}
KINDS = (
    "constant", "sign", "plus-minus", "times-divide", "min-max", "comparison", "sides",
)  # fmt: skip

Edit = tuple[ast.expr, str]


@dataclass(frozen=True)
class Change:
    """One slip: where it is, what it belongs to, and the text that it makes of the module."""

    module: str
    line: int
    room: str
    kind: str
    top: str
    function: str
    was: str
    now: str
    edits: tuple[Edit, ...] = field(repr=False, compare=False)

    @property
    def group(self) -> str:
        """Whether it makes a value wrong, or what is shown of it."""
        return "values" if self.room == VALUES else "steps, charts, drawings"

    def __str__(self) -> str:
        """`kind: was -> now`."""
        return f"{self.kind}: {self.was} -> {self.now}"


def changes(source: Source) -> Iterator[Change]:
    """Every slip that can be made in the functions and constants of a module."""
    if NO_AMOUNTS & set(source.name.split(".")):
        return
    seen: set[int] = set()
    rooms = Rooms(source)
    for top, function in source.functions():
        kinds = _annotated(function)
        for each in _in(source, top, function.name, function.body, rooms.of(function)):
            if not _of_unlike_kinds(each, kinds):
                yield each
        seen.add(id(source.tops[top]))
    for top, node in source.tops.items():
        if id(node) in seen or not isinstance(node, ast.Assign | ast.AnnAssign):
            continue
        room = DRAWINGS if rooms.draws else VALUES
        yield from _in(source, top, top, [node], lambda _, room=room: room)


def _annotated(function: Function) -> dict[str, str]:
    """The parameters of a function and the kind that each is declared as."""
    asked = (*function.args.posonlyargs, *function.args.args, *function.args.kwonlyargs)
    return {each.arg: ast.unparse(each.annotation) for each in asked if each.annotation}


def _of_unlike_kinds(change: Change, kinds: dict[str, str]) -> bool:
    """Whether two names change places that are declared as different things."""
    declared = [kinds.get(each.id) for each, _ in change.edits if isinstance(each, ast.Name)]
    return len(declared) == 2 and declared[0] != declared[1]


class Rooms:
    """What the code of a module makes: values, steps, charts or drawings."""

    def __init__(self, source: Source) -> None:
        """Look at the module's name and at what it imports."""
        shapes = {
            name
            for name, (module, _) in source.imports.items()
            if (SHAPES_FROM.search(module) or DRAWN_IN.search(module)) and name not in NO_SHAPES
        }
        self.shapes = shapes | {"Picture"}
        of_scene = {n for n, (module, _) in source.imports.items() if module.endswith(".scene")}
        notes = any(_called(each) in NOTES for each in ast.walk(source.tree))
        self.draws = bool(DRAWN_IN.search(source.name)) or (
            bool(of_scene - NO_SHAPES) and not notes and "work" not in _methods(source.tree)
        )
        self.writes = bool(re.search(r"(?:^|[._])steps?(?=$|[._])", source.name))

    def of(self, function: Function) -> Callable[[list[ast.AST]], str]:
        """Tells for a place in a function, by the nodes around it, what is made there."""
        whole = self._whole(function)

        def room(around: list[ast.AST]) -> str:
            called = {_called(each) for each in around}
            if called & TABLES:
                return CHARTS
            if called & SAYS:
                return STEPS
            return whole

        return room

    def _whole(self, function: Function) -> str:
        decorated = {_called(each) or _name(each) for each in function.decorator_list}
        inside = list(ast.walk(function))
        called = {_called(each) for each in inside}
        names = {each.id for each in inside if isinstance(each, ast.Name)}
        rooms = {
            VALUES: "value" in decorated or (called & NOTES and not self.draws),
            DRAWINGS: self.draws or names & self.shapes,
            CHARTS: called & TABLES or "chart" in function.name,
            STEPS: called & SAYS or self.writes or "step" in function.name,
        }
        return next((room for room, is_so in rooms.items() if is_so), VALUES)


def _methods(tree: ast.Module) -> set[str]:
    return {each.name for each in ast.walk(tree) if isinstance(each, Function)}


def _name(node: ast.AST) -> str:
    match node:
        case ast.Name(id=name) | ast.Attribute(attr=name):
            return name
        case _:
            return ""


def _called(node: ast.AST) -> str:
    """The last name of what a call calls; empty for anything else."""
    return _name(node.func) if isinstance(node, ast.Call) else ""


def _in(
    source: Source,
    top: str,
    function: str,
    body: list[ast.stmt],
    room: Callable[[list[ast.AST]], str],
) -> Iterator[Change]:
    for statement in body:
        for node, around in _walk(statement, []):
            for kind, edits in _slips(node, around):
                yield Change(
                    source.name,
                    min(each.lineno for each, _ in edits),
                    room([*around, node]),
                    kind,
                    top,
                    function,
                    " ... ".join(_flat(ast.unparse(each)) for each, _ in edits),
                    " ... ".join(_flat(new) for _, new in edits),
                    tuple(edits),
                )


def _walk(node: ast.AST, around: list[ast.AST]) -> Iterator[tuple[ast.AST, list[ast.AST]]]:
    """Every node that may be changed, with those around it; labels are left out, and refusals with
    what is worked out for their words."""
    if isinstance(node, ast.JoinedStr | ast.Raise | ast.Assert):
        return
    if _called(node) in UNTOUCHED_CALLS:
        return
    yield node, around
    inside = [*around, node]
    for name, value in ast.iter_fields(node):
        if name in ("annotation", "returns", "decorator_list", "slice", "args") and not isinstance(
            node, ast.Call
        ):
            continue
        several = value if isinstance(value, list) else [value]
        if several and isinstance(several[-1], ast.Raise):
            continue
        for each in several:
            if isinstance(each, ast.AST):
                yield from _walk(each, inside)


def _slips(node: ast.AST, around: list[ast.AST]) -> Iterator[tuple[str, list[Edit]]]:
    match node:
        case ast.Constant():
            yield from _constant(node, around)
        case ast.UnaryOp(op=ast.USub(), operand=operand):
            yield "sign", [(node, ast.unparse(operand))]
        case ast.BinOp():
            yield from _operator(node)
        case ast.Compare():
            yield from _comparison(node)
        case ast.Call():
            yield from _end(node)
            yield from _arguments(node)
        case ast.Tuple(elts=[left, right]) if isinstance(node.ctx, ast.Load):
            if _alike(left, right):
                yield "sides", _exchanged(left, right)
        case ast.Attribute(ctx=ast.Load()):
            yield from _side(node)


def _constant(node: ast.Constant, around: list[ast.AST]) -> Iterator[tuple[str, list[Edit]]]:
    number = node.value
    if isinstance(number, bool):
        return
    if isinstance(number, int):
        yield "constant", [(node, str(number + 1))]
    elif isinstance(number, float):
        yield "constant", [(node, repr(number * 1.25 if number else 1.0))]
    elif isinstance(number, str) and _called(around[-1] if around else node) in QUANTITIES:
        try:
            changed = Fraction(number) * Fraction(3, 2) or Fraction(1)
        except ValueError:
            return
        yield "constant", [(node, repr(str(changed)))]


def _operator(node: ast.BinOp) -> Iterator[tuple[str, list[Edit]]]:
    if any(_is_words(each) for each in (node.left, node.right)):
        return
    swapped = {ast.Add: ast.Sub, ast.Sub: ast.Add, ast.Mult: ast.Div, ast.Div: ast.Mult}
    other = swapped.get(type(node.op))
    if other is None:
        return
    kind = "plus-minus" if isinstance(node.op, ast.Add | ast.Sub) else "times-divide"
    yield kind, [(node, ast.unparse(ast.BinOp(node.left, other(), node.right)))]
    if isinstance(node.op, ast.Sub | ast.Div) and _written(node.left) != _written(node.right):
        yield "sides", [(node, ast.unparse(ast.BinOp(node.right, node.op, node.left)))]


def _is_words(node: ast.expr) -> bool:
    """Whether it is a text or a list for certain, which nobody adds up."""
    if isinstance(node, ast.BinOp):
        return _is_words(node.left) or _is_words(node.right)
    if isinstance(node, ast.Constant):
        return not isinstance(node.value, int | float)
    lists = ast.JoinedStr | ast.List | ast.Tuple | ast.Set | ast.ListComp | ast.Dict
    return isinstance(node, lists) or _called(node) in {"tuple", "list", "str", "join", "sorted"}


def _comparison(node: ast.Compare) -> Iterator[tuple[str, list[Edit]]]:
    for place, operator in enumerate(node.ops):
        for _, other in COMPARED.get(type(operator), ()):
            operators = [*node.ops[:place], other(), *node.ops[place + 1 :]]
            changed = ast.Compare(node.left, operators, node.comparators)
            yield "comparison", [(node, ast.unparse(changed))]


def _end(node: ast.Call) -> Iterator[tuple[str, list[Edit]]]:
    """The larger for the smaller, and what is rounded up cut off."""
    if not isinstance(node.func, ast.Name):
        return
    for pair in ENDS:
        if node.func.id in pair:
            other = pair[1 - pair.index(node.func.id)]
            yield "min-max", [(node.func, other)]
    if node.func.id == "ceil":
        yield "min-max", [(node.func, "int")]


def _arguments(node: ast.Call) -> Iterator[tuple[str, list[Edit]]]:
    """Two arguments next to each other that are amounts of one kind change places."""
    if _called(node) in {"min", "max", "most", "least", *SAYS, *NOTES}:
        return
    for left, right in pairwise(node.args):
        if _alike(left, right):
            yield "sides", _exchanged(left, right)
    named = {each.arg: each.value for each in node.keywords if each.arg}
    for one, other in PAIRS:
        if one in named and other in named and _alike(named[one], named[other]):
            yield "sides", _exchanged(named[one], named[other])


def _exchanged(left: ast.expr, right: ast.expr) -> list[Edit]:
    return [(left, ast.unparse(right)), (right, ast.unparse(left))]


def _alike(left: ast.expr, right: ast.expr) -> bool:
    """Whether two expressions are amounts of one kind as far as can be seen, and differ."""
    if _written(left) == _written(right):
        return False
    for each in (left, right):
        if isinstance(each, ast.Constant) and not isinstance(each.value, int | float):
            return False
        if isinstance(each, ast.Name) and (each.id in HOLDERS or each.id[0].isupper()):
            return False
        if not isinstance(each, ast.Name | ast.Attribute | ast.BinOp | ast.UnaryOp | ast.Constant):
            return False
    if isinstance(left, ast.Attribute) and isinstance(right, ast.Attribute):
        return (left.attr == right.attr) or any({left.attr, right.attr} == set(p) for p in PAIRS)
    return type(left) is type(right) or any(
        isinstance(each, ast.BinOp | ast.UnaryOp | ast.Constant) for each in (left, right)
    )


def _side(node: ast.Attribute) -> Iterator[tuple[str, list[Edit]]]:
    for one, other in PAIRS[1:]:  # `.length` of a value is its amount, and has no other side
        if node.attr in (one, other) and not (node.attr == "across" and other == "along"):
            changed = other if node.attr == one else one
            yield "sides", [(node, ast.unparse(ast.Attribute(node.value, changed)))]


def _written(node: ast.expr) -> str:
    return ast.unparse(node)


def _flat(text: str) -> str:
    """A text on one line, and not too long to print."""
    flat = " ".join(text.split())
    return flat if len(flat) <= 100 else f"{flat[:97]}..."


def put(text: str, edits: Iterable[Edit]) -> str:
    """The module's text with expressions put in place of others, on as many lines as before."""
    raw = text.encode()
    starts = [0]
    for line in raw.splitlines(keepends=True):
        starts.append(starts[-1] + len(line))
    for node, new in sorted(edits, key=lambda edit: (-edit[0].lineno, -edit[0].col_offset)):
        assert node.end_lineno is not None and node.end_col_offset is not None
        begin = starts[node.lineno - 1] + node.col_offset
        end = starts[node.end_lineno - 1] + node.end_col_offset
        lines = raw[begin:end].count(b"\n") - new.count("\n")
        bare = isinstance(node, ast.Constant | ast.Name) and not lines and new.isidentifier()
        written = new if bare else f"({new}{chr(10) * lines})"
        raw = raw[:begin] + written.encode() + raw[end:]
    return raw.decode()
