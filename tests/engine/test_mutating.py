"""The slips that `mutations.py` makes: each is one small mistake, and moves no other line."""

import ast
from pathlib import Path

import pytest

from engine_source import Source, read_engine
from mutating import CHARTS, DRAWINGS, KINDS, STEPS, VALUES, Change, changes, put

FORMULA = '''
from handout_engine.amounts.values import sentence

SPARE = inches("1/4")


def note_width(sheet, edge: Length, seam: Length):
    """At least 1."""
    sheet.note("width", "width", edge + 2 * seam, "{edge} + 2 × {seam}")
    sheet.note("least", "least", min(edge, -seam), "", finest=FINEST)
    if edge < seam:
        rest = edge - seam
        raise RefusalError(f"{rest + 1} is too narrow")
    return laid(edge,
                seam)


def add_steps(sheet):
    sheet.step("Cut it " + words, left=sheet["width"].length / 2)
    return Chart("Rows", ("Row",), tuple((str(n), n * 2) for n in ("a", "b")))
'''


def source(text: str, name: str = "handout_engine.shared.hems") -> Source:
    return Source(Path("hems.py"), name, text)


def found(text: str, name: str = "handout_engine.shared.hems") -> list[Change]:
    return list(changes(source(text, name)))


def said(room: str) -> set[str]:
    return {str(each) for each in found(FORMULA) if each.room == room}


def test_the_slips_of_a_formula():
    assert said(VALUES) == {
        "constant: '1/4' -> '3/8'",
        "constant: 2 -> 3",
        "times-divide: 2 * seam -> 2 / seam",
        "plus-minus: edge + 2 * seam -> edge - 2 * seam",
        "min-max: min -> max",
        "sign: -seam -> seam",
        "comparison: edge < seam -> edge <= seam",
        "comparison: edge < seam -> edge > seam",
        "sides: edge ... seam -> seam ... edge",
    }


def test_the_slips_of_a_step_and_of_a_chart():
    assert said(STEPS) == {
        "constant: 2 -> 3",
        "times-divide: sheet['width'].length / 2 -> sheet['width'].length * 2",
        "sides: sheet['width'].length / 2 -> 2 / sheet['width'].length",
    }
    assert said(CHARTS) == {"constant: 2 -> 3", "times-divide: n * 2 -> n / 2"}


@pytest.mark.parametrize(
    ("name", "room"),
    [
        ("handout_engine.families.hems.hems_drawing", DRAWINGS),
        ("handout_engine.families.hems.hem_pictures", DRAWINGS),
        ("handout_engine.drawing.hems", DRAWINGS),
        ("handout_engine.families.hems.hem_steps", STEPS),
        ("handout_engine.families.hems.hems", VALUES),
    ],
)
def test_a_module_that_draws_is_known_by_its_name(name, room):
    (change,) = found("def corner(x, y):\n    return x + y\n", name)
    assert change.room == room


def test_a_value_is_a_value_wherever_it_stands():
    """A method that is declared as one, even beside steps."""
    code = (
        "class Hem:\n    @value('depth')\n    def depth(self):\n"
        "        return self.hem + self.turn\n"
        "    def sew(self, sheet):\n        sheet.step('Turn {it}.', it=self.hem + self.turn)\n"
    )
    assert [change.room for change in found(code)] == [VALUES, STEPS]


def test_what_reads_and_refuses_has_none():
    assert found("def least(a, b):\n    return a + b\n", "handout_engine.amounts.refusals") == []


def test_every_slip_leaves_the_other_lines_where_they_are():
    kinds = set()
    for each in found(FORMULA):
        changed = put(FORMULA, each.edits)
        assert changed != FORMULA
        assert ast.dump(ast.parse(changed)) != ast.dump(ast.parse(FORMULA))
        before, after = (text.splitlines() for text in (FORMULA, changed))
        assert len(before) == len(after)
        differing = [n for n, lines in enumerate(zip(before, after, strict=True), 1)
                     if lines[0] != lines[1]]  # fmt: skip
        assert each.line == min(differing)
        kinds.add(each.kind)
    assert kinds == set(KINDS)


def test_the_engine_has_slips_of_every_kind():
    engine = read_engine()
    shared = [source for source in engine.values() if source.path.stem in ("gathering", "scene")]
    assert len(shared) == 2
    assert {each.kind for source in shared for each in changes(source)} >= {
        "constant", "plus-minus", "times-divide", "min-max", "comparison",
    }  # fmt: skip
