"""Arrows point one way, the engine stays pure, and every module stays readable."""

import ast
from pathlib import Path

import pytest

PLUGINS = Path(__file__).parents[2] / "plugins"
ENGINE = PLUGINS / "handout_engine"
LONGEST = 300
PURE = {
    "__future__", "abc", "ast", "bisect", "collections", "dataclasses", "decimal", "difflib",
    "enum", "fractions", "functools", "graphlib", "heapq", "importlib", "itertools", "json", "math",
    "numbers", "operator", "pkgutil", "re", "string", "textwrap", "types", "typing", "unicodedata",
    "xml",
}  # fmt: skip
BEYOND = {"units.py": {"pint"}}
ONE_PLACE = {
    # finds the technique modules beside itself, by name
    "importlib": {"techniques/__init__.py", "garments/__init__.py"},
    "pkgutil": {"techniques/__init__.py", "garments/__init__.py"},
}


def modules(folder: Path) -> list[Path]:
    return sorted(folder.rglob("*.py"))


def imported(path: Path) -> set[str]:
    """The full names of all modules that a module imports, wherever in it."""
    found = set()
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            found |= {alias.name for alias in node.names}
        if isinstance(node, ast.ImportFrom):
            assert node.level == 0, f"{path.name}: name the whole module"
            assert node.module is not None
            found |= {node.module} | {f"{node.module}.{alias.name}" for alias in node.names}
    return found


def named(path: Path) -> str:
    return path.relative_to(PLUGINS).as_posix()


@pytest.mark.parametrize("path", modules(ENGINE), ids=named)
def test_the_engine_imports_nothing_but_itself_pint_and_what_is_pure(path):
    own = path.relative_to(ENGINE).as_posix()
    roots = {name.partition(".")[0] for name in imported(path)} - {"handout_engine"}
    assert roots <= PURE | BEYOND.get(own, set())
    for name, places in ONE_PLACE.items():
        assert name not in roots or own in places


@pytest.mark.parametrize("path", modules(ENGINE), ids=named)
def test_the_engine_opens_no_file_and_evaluates_no_text(path):
    calls = {
        node.func.id
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8")))
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Name)
    }
    assert calls.isdisjoint({"open", "eval", "exec", "compile", "__import__", "print", "input"})


@pytest.mark.parametrize("family", ["techniques", "garments"])
def test_techniques_and_garments_do_not_look_into_each_other(family):
    folder = ENGINE / family
    for path in modules(folder) if folder.is_dir() else ():
        if path.name == "__init__.py":
            continue
        inside = {name for name in imported(path) if name.startswith(f"handout_engine.{family}")}
        assert inside == set(), named(path)


LOOKS_UP = ("pages.py", "authored.py", "questions.py", "browser.py",
            "fragments/gallery.py", "fragments/library.py", "fragments/form.py")  # fmt: skip


def importing(*wanted: str) -> set[str]:
    """The engine's modules outside both registers that import one of these, or what is in it."""
    return {
        path.relative_to(ENGINE).as_posix()
        for path in modules(ENGINE)
        if not {"techniques", "garments"} & set(path.parts)
        and any(f"{name}.".startswith(f"{each}.") for name in imported(path) for each in wanted)
    }


def test_the_vocabulary_does_not_know_the_techniques_and_garments():
    """Only the register does, and only what looks one up by name asks the register."""
    registers = ("handout_engine.techniques", "handout_engine.garments")
    assert importing(*registers) == {"register.py"}
    assert importing("handout_engine.register") <= set(LOOKS_UP)


@pytest.mark.parametrize("path", modules(PLUGINS), ids=named)
def test_a_module_is_short_enough_to_read(path):
    assert len(path.read_text(encoding="utf-8").splitlines()) <= LONGEST


@pytest.mark.parametrize("path", modules(PLUGINS), ids=named)
def test_every_module_and_everything_public_in_it_says_what_it_is(path):
    tree = ast.parse(path.read_text(encoding="utf-8"))
    assert ast.get_docstring(tree), "the module has no docstring"
    kinds = (ast.FunctionDef, ast.AsyncFunctionDef, ast.ClassDef)
    public = [tree, *(node for node in tree.body if isinstance(node, ast.ClassDef)
                      and not node.name.startswith("_"))]  # fmt: skip
    silent = [
        node.name
        for holder in public
        for node in holder.body
        if isinstance(node, kinds)
        and not node.name.startswith("_")
        and not ast.get_docstring(node)
        and not any(getattr(each, "id", "") == "overload" for each in node.decorator_list)
    ]
    assert silent == []


def test_the_walk_sees_an_import_inside_a_function():
    assert "handout_engine.amounts.units" in imported(ENGINE / "reading.py")
    assert "pint" in imported(ENGINE / "units.py")


def test_nothing_of_the_engine_is_run_by_tests_alone():
    """A function that only a test calls would be checked in place of what the pages are made of."""
    trees = [ast.parse(path.read_text(encoding="utf-8")) for path in PLUGINS.rglob("*.py")]
    used = {each.id for tree in trees for each in ast.walk(tree) if isinstance(each, ast.Name)}
    used |= {
        each.attr for tree in trees for each in ast.walk(tree) if isinstance(each, ast.Attribute)
    }
    declared = {
        node.name
        for path in (PLUGINS / "handout_engine").rglob("*.py")
        for node in ast.parse(path.read_text(encoding="utf-8")).body
        if isinstance(node, ast.FunctionDef | ast.ClassDef)
    }
    assert declared - used == set()
