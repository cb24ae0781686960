"""What a sentence or a chart says is a value: nothing is worked out where it is said.

An amount that a step, a checkpoint, a caption or a chart works out for itself has no name, no
formula and no basis, and no test finds it wrong. So inside what is given to a sentence or a chart,
and in the local names that it is given, there is no sum, no product and no typed length.

The same is looked at from outside: of every technique as it comes, each amount that a step, a
checkpoint, a caption, a description or a chart speaks of is an input or a value of its sheet.

What is still otherwise is listed: in `amounts_in_sentences.txt` a line for each function and the
number of times, in `amounts_without_name.txt` one for each amount, or each chart that has such. The
lists may only become shorter: after mending, or after moving a module,

    RENEW_LISTS=1 python -m pytest tests/engine/test_amounts_in_sentences.py

writes them anew, unless they have grown.
"""

import ast
import os
from collections import Counter
from collections.abc import Iterator
from pathlib import Path

import pytest

from engine_source import KEYS, read_engine
from handout_engine.amounts.values import Sentence, Value
from handout_engine.working.workings import Working
from worked import work

WORKED_OUT_INSIDE = Path(__file__).parent / "amounts_in_sentences.txt"
WITHOUT_NAME = Path(__file__).parent / "amounts_without_name.txt"
SENTENCES = {"step", "sentence", "Step", "checkpoint"}
CHARTS = {"Chart", "chart"}
SAYING = {"say"}
"""As a plain function it makes a sentence; as a method it is that of a tape."""
TYPED = {"inches", "millimetres", "Length", "yards", "centimetres"}
WORKED_OUT = ast.Add | ast.Sub | ast.Mult | ast.Div | ast.FloorDiv


def makes_a_sentence(node: ast.AST) -> bool:
    """Whether it is a call that puts amounts into words or into a chart."""
    match node:
        case ast.Call(func=ast.Attribute(attr=name)):
            return name in SENTENCES | CHARTS
        case ast.Call(func=ast.Name(id=name)):
            return name in SENTENCES | CHARTS | SAYING
        case _:
            return False


def worked_out(node: ast.AST) -> Iterator[ast.AST]:
    """Each sum, product or typed length in an expression; places in lists and texts are none."""
    match node:
        case ast.Subscript(value=value):
            yield from worked_out(value)
            return
        case ast.BinOp(op=operator) if isinstance(operator, WORKED_OUT) and not of_text(node):
            yield node
            return
        case ast.Call(func=ast.Name(id=name)) if name in TYPED:
            yield node
            return
    for each in ast.iter_child_nodes(node):
        yield from worked_out(each)


def of_text(node: ast.AST) -> bool:
    """Whether it puts texts or lists together."""
    match node:
        case ast.BinOp(left=left, right=right):
            return of_text(left) or of_text(right)
        case ast.Constant(value=value):
            return isinstance(value, str)
        case ast.IfExp(body=body, orelse=other):
            return of_text(body) or of_text(other)
        case ast.Call(func=ast.Attribute(attr="join")):
            return True
        case _:
            return isinstance(node, ast.JoinedStr | ast.List | ast.Tuple | ast.ListComp)


def local_names(function: ast.AST) -> dict[str, list[ast.expr]]:
    """What a function's own names stand for: what is assigned to them, or put into them."""
    found: dict[str, list[ast.expr]] = {}
    for node in ast.walk(function):
        match node:
            case ast.Assign(targets=[ast.Tuple(elts=names)], value=ast.Tuple(elts=given)):
                for name, each in zip(names, given, strict=False):
                    if isinstance(name, ast.Name):
                        found.setdefault(name.id, []).append(each)
            case ast.Assign(targets=[ast.Name(id=name)], value=value):
                found.setdefault(name, []).append(value)
            case ast.AnnAssign(target=ast.Name(id=name), value=ast.expr() as value):
                found.setdefault(name, []).append(value)
            case ast.AugAssign(target=ast.Name(id=name), value=value):
                found.setdefault(name, []).append(value)
            case ast.NamedExpr(target=ast.Name(id=name), value=value):
                found.setdefault(name, []).append(value)
            case ast.Call(
                func=ast.Attribute(value=ast.Name(id=name), attr="append" | "extend" | "insert")
            ):
                found.setdefault(name, []).extend(node.args)
    return found


def in_sentences(function: ast.AST) -> list[ast.AST]:
    """What a function works out inside the sentences and charts that it makes."""
    named = local_names(function)
    found: dict[int, ast.AST] = {}
    for call in filter(makes_a_sentence, ast.walk(function)):
        assert isinstance(call, ast.Call)
        for given in [*call.args, *(each.value for each in call.keywords)]:
            used = [each.id for each in ast.walk(given) if isinstance(each, ast.Name)]
            behind = [each for name in used for each in named.get(name, ())]
            for part in (given, *behind):
                found |= {id(each): each for each in worked_out(part)}
    return list(found.values())


def of_text_alone(source: str) -> int:
    """How often the function in a text works something out in a sentence."""
    return len(in_sentences(ast.parse(source)))


def today() -> Counter[str]:
    """Each function of the engine that does so, and how often."""
    found = Counter[str]()
    for source in read_engine().values():
        for top, function in source.functions():
            called = f"{top}.{function.name}" if top != function.name else top
            times = len(in_sentences(function))
            if times:
                found[f"{source.path.stem} {called}"] += times
    return found


def without_name(working: Working) -> Iterator[str]:
    """Where a working says an amount that is none of its inputs and values."""
    named = working.named

    def unnamed(part: object) -> bool:
        if isinstance(part, Value):
            return named.get(part.name) != part
        return not isinstance(part, str)

    said = [
        *(("sample", step) for step in working.sample),
        *(("step", step) for step in working.steps),
    ]
    sentences = [
        *((where, step.text) for where, step in said),
        *((f"{where}, checkpoint", step.checkpoint) for where, step in said if step.checkpoint),
        *((f"caption {picture.name}", picture.caption) for picture in working.pictures),
        *((f"picture {picture.name}", picture.scene.description) for picture in working.pictures),
    ]
    for where, sentence in sentences:
        yield from (f"{where}: {name}" for name, each in sentence.parts.items() if unnamed(each))
    for chart in working.charts:
        cells = [cell for row in chart.rows for cell in row]
        parts = [
            each for cell in cells if isinstance(cell, Sentence) for each in cell.parts.values()
        ]
        plain = [cell for cell in cells if not isinstance(cell, Sentence)]
        if any(map(unnamed, (*parts, *plain))):
            yield f"chart {chart.caption}"


def listed(path: Path) -> Counter[str]:
    """A list that is kept: what is still so, and how often."""
    lines = path.read_text(encoding="utf-8").splitlines() if path.exists() else []
    parts = (each.rpartition(" ") for each in lines)
    return Counter({name: int(times) for name, _, times in parts})


def hold(now: Counter[str], path: Path) -> None:
    """Hold what is so now against the list, which may only become shorter."""
    kept = listed(path)
    if os.environ.get("RENEW_LISTS") and (now.total() <= kept.total() or not kept):
        lines = [f"{name} {times}" for name, times in sorted(now.items())]
        path.write_text("".join(f"{each}\n" for each in lines), encoding="utf-8")
        kept = now
    assert now - kept == Counter(), "make it a value, and let the sentence say that"
    assert kept - now == Counter(), "that is mended: RENEW_LISTS=1 takes it off the list"


def test_no_sentence_works_anything_out_but_what_is_listed():
    hold(today(), WORKED_OUT_INSIDE)


def test_every_amount_that_is_said_is_an_input_or_a_value_but_what_is_listed():
    hold(Counter(f"{key} {each}" for key in KEYS for each in without_name(work(key))), WITHOUT_NAME)


@pytest.mark.parametrize(
    "code",
    [
        "def f(sheet): sheet.step('Cut {a}.', a=sheet['b'].length - sheet['c'].length)",
        "def f(sheet): sheet.step('Cut {a}.', 'it is {b}.', b=inches('1/4'))",
        "def f(a, b): return Step(sentence('Cut {c}.', c=2 * a))",
        "def f(sheet, a):\n    rest = a / 2\n    sheet.step('Cut {rest}.', rest=rest)",
        "def f(a): return Chart('Lines', ('Line', 'At'), tuple((str(n), a * n) for n in range(3)))",
        "def f(a):\n    rows = []\n    for n in (1, 2): rows.append((n, a + a))\n"
        "    return Chart('Lines', ('Line', 'At'), tuple(rows))",
        "def f(a): return sentence(f'Cut {a + 1} times.')",
    ],
)
def test_what_is_worked_out_in_a_sentence_is_found(code):
    assert of_text_alone(code) == 1


@pytest.mark.parametrize(
    "code",
    [
        "def f(sheet): sheet.step('Cut {a}.', a=sheet['b'])",
        "def f(sheet, words): sheet.step('Cut ' + words, 'it is {a}.')",
        "def f(self): return sentence('Cut {a}.', a=self.marks[self.number - 1])",
        "def f(sheet, a):\n    rest = a / 2\n    sheet.note('rest', 'rest', rest, '{a} / 2')",
        "def f(tape, a): raise RefusalError(tape.say(a / 2))",
    ],
)
def test_what_says_a_value_is_left_alone(code):
    assert of_text_alone(code) == 0
