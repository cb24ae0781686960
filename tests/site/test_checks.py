"""The page of checks says what the tests say, and every technique has the checks it must have."""

from __future__ import annotations

import ast
import re
from dataclasses import asdict

import pytest

import checks as read
from handout_engine.register import find, keys
from handout_site import checks
from handout_site.plain_text import plain

FOUND = read.checks()

SIMULATED_FAMILIES = {"tucks", "pleats"}
SIMULATED = {
    "banded-ruffle", "puffing-strip", "insertion-band", "bias-strips", "continuous-bias",
    "lattice-panel", "spiral-flounce", "mitred-corner", "hemstitched-edge", "scallop-edge",
}  # fmt: skip
"""What must stand against an independent model: folds, joins, bias, lattice, repeats, scallops."""

NOTHING_TO_SIMULATE = {"twin-needle-clearance"}


def kinds(key: str) -> set[str]:
    return {each.kind for each in FOUND[key]}


def test_what_is_kept_is_what_the_tests_say():
    """`python tests/checks.py` writes it again."""
    assert checks.KEPT.read_text(encoding="utf-8") == read.written()


@pytest.mark.parametrize("key", keys())
def test_every_technique_has_a_worked_example(key):
    assert "worked example" in kinds(key) or any("by hand" in each.what for each in FOUND[key])


@pytest.mark.parametrize("key", keys())
def test_every_technique_has_what_holds_for_any_measures(key):
    """A property, or a simulation, which is one for a thousand measures."""
    assert kinds(key) & {"property", "simulation"}


@pytest.mark.parametrize("key", keys())
def test_folded_joined_and_clipped_cloth_is_simulated(key):
    wanted = key in SIMULATED or find(key).family in SIMULATED_FAMILIES
    if wanted and key not in NOTHING_TO_SIMULATE:
        assert "simulation" in kinds(key)


@pytest.mark.parametrize("kind", [each for each in checks.KINDS if each != "other"])
def test_each_kind_is_met(kind):
    assert any(kind in kinds(key) for key in keys())


def test_every_kind_is_explained():
    assert {each for key in keys() for each in kinds(key)} <= checks.KINDS.keys()


def test_every_published_check_names_its_source():
    """In its docstring or in a comment; what names none is a property of ours, and no more."""
    without = {
        module.kind(test)
        for module in read.modules()
        if module.path.parent.name == "published"
        for test in module.tests()
        if not module.stands_on(test)
    }
    assert without <= {"property", "other"}


EVERY = [*read.shared(), *(check for found in FOUND.values() for check in found)]
PRINTS = re.compile(
    r"\b1[89]\d\d|CFR|ISO|4-H|Extension|ICAR|WHO|Institute|Home and School|NBS|NIST"
)
ELSEWHERE = re.compile(r"no known origin|^common practice|from memory|without authority|^pint")


def test_only_what_rests_on_a_print_stands_under_print():
    under_print = [each for each in EVERY if each.kind == "published"]
    assert len({each.what for each in under_print}) > 30
    for each in under_print:
        assert PRINTS.search(each.against), each
        assert not ELSEWHERE.search(each.against.lower()), each


@pytest.mark.parametrize(
    ("told", "kind"),
    [
        ("no known origin", "unknown origin"),
        ("Common practice, no source", "common practice"),
        ("from memory", "from memory"),
        ("pint, ", "library"),
    ],
)
def test_what_says_that_it_has_no_print_stands_where_it_belongs(told, kind):
    said = [each for each in EVERY if each.where.startswith("tests/published/")]
    found = {
        each.kind for each in said if told in each.against and "Dressmaker" not in each.against
    }
    assert found == {kind}


def test_the_page_puts_each_check_under_the_heading_of_its_kind(monkeypatch):
    told = {key: [asdict(each) for each in found] for key, found in FOUND.items()}
    shared = [asdict(each) for each in read.shared()]
    monkeypatch.setattr(checks, "kept", lambda: {"every": [], "shared": shared, "techniques": told})
    kinds = {words.partition(":")[0]: kind for kind, words in checks.KINDS.items()}
    under: set[tuple[str, str]] = set()
    kind = ""
    for line in checks.checks(()).splitlines():
        if line.startswith("**"):
            kind = kinds[line.strip("*")]
        elif line.startswith("#"):
            kind = ""
        elif line.startswith("- ") and kind:
            under.add((kind, line))
    assert under == {
        (each.kind, f"- {plain(f'{each.what}: {each.against}'.removesuffix(': '))}")
        for each in EVERY
    }


def test_the_page_names_every_technique_and_every_check():
    page = checks.checks(())
    assert page.startswith("# What is checked, and against what\n")
    for key in keys():
        assert f"(`{key}`)" in page
    listed = page.split(" techniques\n", 1)[1].count("\n- ")
    assert listed == sum(map(len, FOUND.values()))


def test_a_test_is_read_as_it_is_written(tmp_path):
    file = tmp_path / "test_small.py"
    file.write_text(
        'TECHNIQUES = ("tuck-set",)\n'
        "def helper():\n    return work('hem')\n"
        "def test_a_hem_s_depth():\n    # somebody, somewhere\n    assert said(helper(), 'a')\n"
        "@given(x)\ndef test_any(x):\n    assert x\n"
        "def test_a_thousand_folds():\n    '''Folded.'''\n    work('piping')\n"
        "def test_no():\n    assert refusal('bias-tube')\n",
        encoding="utf-8",
    )
    module = read.Module(file)
    depth, drawn, folds, no = module.tests()
    assert isinstance(depth, ast.FunctionDef)
    assert [module.kind(each) for each in (depth, drawn, folds, no)] == [
        "worked example", "property", "simulation", "refusal",
    ]  # fmt: skip
    assert [module.techniques(each) for each in (depth, drawn, folds, no)] == [
        {"hem"}, {"tuck-set"}, {"piping"}, {"bias-tube"},
    ]  # fmt: skip
    assert [module.against(each) for each in (depth, folds)] == ["somebody, somewhere", "Folded."]
