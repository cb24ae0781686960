"""Arrows point one way, the engine stays pure, and every module stays readable."""

import ast
from graphlib import TopologicalSorter
from pathlib import Path

import pytest

from handout_engine.register import find, keys

PLUGINS = Path(__file__).parents[2] / "plugins"
ENGINE = PLUGINS / "handout_engine"
LONGEST = 300
PURE = {
    "__future__",
    "abc",
    "ast",
    "bisect",
    "collections",
    "contextlib",
    "dataclasses",
    "decimal",
    "difflib",
    "enum",
    "fractions",
    "functools",
    "graphlib",
    "heapq",
    "importlib",
    "itertools",
    "json",
    "math",
    "numbers",
    "operator",
    "pkgutil",
    "re",
    "string",
    "textwrap",
    "types",
    "typing",
    "unicodedata",
    "xml",
}
BEYOND = {"amounts/units.py": {"pint"}}
ONE_PLACE = {
    # finds the technique modules in the rooms of their families, by name
    "importlib": {"register.py"},
    "pkgutil": {"register.py"},
}
BELOW = {
    "amounts": "",
    "geometry": "amounts",
    "drawing": "amounts geometry",
    "working": "amounts geometry drawing",
    "cloth": "amounts geometry drawing working",
    "shared": "amounts geometry drawing working cloth",
    "bodies": "amounts",
    "drafting": "amounts geometry drawing working cloth bodies",
    "families": "amounts geometry drawing working cloth shared bodies drafting",
    "register": "amounts working drafting families",
    "paper": "amounts geometry drawing working bodies",
    "pages": "amounts geometry drawing working cloth bodies paper register",
}
"""The rooms of the engine, and into which of them each may look besides itself."""
DRAFTED = {"garments", "nursery"}
"""The families that are sized to a baby: no other looks at bodies and drafts."""
FAMILIES = sorted(path.parent for path in (ENGINE / "families").glob("*/__init__.py"))


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


def room_of(name: str) -> str:
    """The room of a module by its full name; of the families each is a room of its own."""
    first, *rest = name.split(".")[1:] or [""]
    return f"{first}/{rest[0]}" if first == "families" and rest else first


def seen_from(path: Path) -> set[str]:
    """The rooms besides its own into which a module of the engine looks."""
    own = room_of(".".join(path.relative_to(PLUGINS).with_suffix("").parts))
    names = {name for name in imported(path) if name.startswith("handout_engine.")}
    return {room_of(name) for name in names} - {own}


@pytest.mark.parametrize("room", sorted(BELOW))
def test_arrows_between_rooms_point_one_way(room):
    folder = ENGINE / room
    for path in modules(folder) if folder.is_dir() else [ENGINE / f"{room}.py"]:
        assert seen_from(path) <= set(BELOW[room].split()), named(path)


def test_the_table_of_arrows_knows_every_room_and_makes_no_ring():
    rooms = {path.relative_to(ENGINE).with_suffix("").parts[0] for path in modules(ENGINE)}
    assert rooms - {"__init__"} == set(BELOW)
    arrows = {room: set(below.split()) for room, below in BELOW.items()}
    assert set(TopologicalSorter(arrows).static_order()) == set(BELOW)


@pytest.mark.parametrize("family", FAMILIES, ids=lambda path: path.name)
def test_only_what_is_sized_to_a_baby_looks_at_bodies_and_drafts(family):
    looks = {room for path in modules(family) for room in seen_from(path)}
    assert looks.isdisjoint({"bodies", "drafting"}) or family.name in DRAFTED


@pytest.mark.parametrize("family", FAMILIES, ids=lambda path: path.name)
def test_a_family_opens_with_a_list_of_its_techniques_and_nothing_else(family):
    tree = ast.parse((family / "__init__.py").read_text(encoding="utf-8"))
    assert len(tree.body) == 1
    about, _, listed = (ast.get_docstring(tree) or "").partition("\n\n")
    assert about
    members = [find(key) for key in keys() if find(key).family == family.name]
    assert " ".join(listed.split()) == " ".join(f"- {m.key()}: {m.summary}" for m in members)
    assert {member.__module__.split(".")[2] for member in members} == {family.name}


LOOKS_UP = {
    "page.py", "authored.py", "questions.py",
    "fragments/gallery.py", "fragments/library.py",
}  # fmt: skip


def test_only_what_looks_a_technique_up_by_name_asks_the_register():
    asking = {path for path in modules(ENGINE) if "register" in seen_from(path)}
    assert {path.relative_to(ENGINE / "pages").as_posix() for path in asking} == LOOKS_UP


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
    assert "handout_engine.amounts.units" in imported(ENGINE / "amounts/reading.py")
    assert "pint" in imported(ENGINE / "amounts/units.py")


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
