"""Reads the tests and says which checks each technique has, and against what.

    python tests/checks.py

writes `plugins/handout_site/assets/checks.json`, from which the site makes its page of checks; a
test holds the file against the tests, so that it cannot drift. Tests need no mark of their own,
they are read as they are written:

- a test is about the techniques that it, or a helper that it uses, works out by name; else about
  the technique its file is named after; `TECHNIQUES = (...)` in a module names them where no test
  does;
- it is a **simulation** when it measures with one of the independent models beside this file or
  with a polygon library, or when it is made with a thousand random cases; a **property** when
  hypothesis draws its measures; a **refusal** when it asks for what cannot be sewn; a **worked
  example** when it says figures found by hand;
- in tests/published/ it is what it says that it stands on: a print, a print from memory, a general
  library, an example or a table **of unknown origin**, **common practice**; one that says none of
  these is of the kinds above, like any other;
- what holds is its name; against what is its docstring, or the comment at its beginning, or the one
  above the figures that it reads.
"""

from __future__ import annotations

import ast
import json
import re
from collections.abc import Iterable, Iterator
from dataclasses import asdict, dataclass
from functools import cached_property
from pathlib import Path

from handout_engine.register import keys

TESTS = Path(__file__).parent
KEPT = TESTS.parent / "plugins" / "handout_site" / "assets" / "checks.json"
FOLDERS = ("engine/techniques", "engine/garments", "published", "engine", "engine/geometry")
GENERIC = {
    "techniques/test_every_technique.py": "",
    "garments/test_every_garment.py": "Of every garment, at each size and for measured babies: ",
}
"""The tests that walk the register, and what opens the sentences of their checks."""
WORKED_OUT_BY = {"work", "refusal", "find", "make"}
MODELS = (
    "bias_cutting", "folding", "joining", "lace_geometry", "pleat_folding", "shapely_lattice",
    "stitching",
)  # fmt: skip
POLYGONS = "shapely, a library of polygons"
MANY = re.compile(r"thousand|1,?000\b|integral")

STANDS_ON = {
    "common practice": re.compile(r"^(?:common practice|(?:the )?trade\b)", re.IGNORECASE),
    "unknown origin": re.compile(r"no known origin"),
    "from memory": re.compile(r"from memory"),
    "library": re.compile(r"^(?:pint|numpy)\b"),
    "published": re.compile(
        r"\b(?:ISO|CFR|ASTM|ANSI|NBS|NIST|WHO|ICAR|4-H|Extension|Institute|Snyder|Baldt|"
        r"Dressmaker|Home and School)\b"
    ),
}
"""What a check in tests/published/ stands on, by what it says of it; the first that fits. Only the
last is a print; what is meant as one names it so that it can be found."""

Function = ast.FunctionDef


@dataclass(frozen=True)
class Check:
    """One test of a technique: its kind, what holds, and against what."""

    kind: str
    what: str
    against: str
    where: str


class Module:
    """A file of tests, taken apart."""

    def __init__(self, path: Path) -> None:
        """Read it; nothing in it is run."""
        self.path = path
        self.lines = path.read_text(encoding="utf-8").splitlines()
        self.tree = ast.parse("\n".join(self.lines))

    @cached_property
    def named(self) -> dict[str, ast.stmt]:
        """Its helpers and constants by name."""
        found: dict[str, ast.stmt] = {}
        for node in self.tree.body:
            if isinstance(node, ast.FunctionDef | ast.ClassDef):
                found[node.name] = node
            if isinstance(node, ast.Assign):
                found |= {each.id: node for each in node.targets if isinstance(each, ast.Name)}
        return found

    @cached_property
    def models(self) -> dict[str, str]:
        """The names that come from an independent model, and what that is."""
        found = {}
        for node in self.tree.body:
            if isinstance(node, ast.ImportFrom) and node.module:
                told = _model(node.module)
                found |= {each.asname or each.name: told for each in node.names if told}
        return found

    def tests(self) -> Iterator[Function]:
        """Its tests in order."""
        for node in self.tree.body:
            if isinstance(node, Function) and node.name.startswith("test_"):
                yield node

    def reach(self, test: Function) -> list[ast.AST]:
        """A test with every helper and constant of its module that it uses, near ones first."""
        reached, queue = {test.name}, [test]
        found: list[ast.AST] = []
        while queue:
            node = queue.pop(0)
            found.append(node)
            for name in sorted(_names(node) & self.named.keys() - reached):
                reached.add(name)
                queue.append(self.named[name])  # type: ignore[arg-type]
        return found

    def techniques(self, test: Function) -> set[str]:
        """The techniques that a test is about."""
        own = self.path.stem.removeprefix("test_").replace("_", "-")
        found = {key for node in self.reach(test) for key in _keys(node)}
        if own in keys() and self.path.parent.name in {"techniques", "garments"}:
            found.add(own)
        return found or self._declared()

    def _declared(self) -> set[str]:
        node = self.named.get("TECHNIQUES")
        value = node.value if isinstance(node, ast.Assign) else None
        return set(ast.literal_eval(value)) if value else set()

    def check(self, test: Function) -> Check:
        """What a test checks."""
        where = self.path.relative_to(TESTS.parent).as_posix()
        return Check(self.kind(test), _sentence(test.name), self.against(test), where)

    def kind(self, test: Function) -> str:
        """The kind of a test, the strongest that fits."""
        text = f"{test.name} {ast.get_docstring(test) or ''}"
        called = {name for node in self.reach(test) for name in _names(node)}
        stands_on = self.stands_on(test)
        if stands_on:
            return stands_on
        if called & self.models.keys() or "Random" in called or MANY.search(text):
            return "simulation"
        if any("given" in _names(each) for each in test.decorator_list):
            return "property"
        if called & {"refusal", "RefusalError"}:
            return "refusal"
        return "worked example" if "by_hand" in test.name or called & {"said"} else "other"

    def stands_on(self, test: Function) -> str:
        """What a check in tests/published/ stands on, if it says so; elsewhere nothing."""
        if self.path.parent.name != "published":
            return ""
        told = " ".join(self._told(test).split())
        return next((kind for kind, says in STANDS_ON.items() if says.search(told)), "")

    def against(self, test: Function) -> str:
        """What it says that it stands against, and the model that it measures with."""
        told = self._told(test)
        called = {name for node in self.reach(test) for name in _names(node)}
        models = dict.fromkeys(self.models[name] for name in sorted(called & self.models.keys()))
        if not told and not models and self.kind(test) == "simulation":
            told = (ast.get_docstring(self.tree) or "").split("\n\n")[0]
        measured = f"Measured with: {'; '.join(models)}." if models else ""
        return " ".join(f"{told} {measured}".split())

    def _told(self, test: Function) -> str:
        """Its docstring, the comment at its beginning, or the one above figures that it reads."""
        own = (ast.get_docstring(test) or "").split("\n\n")[0] or self._comment(test)
        return own or next(filter(None, map(self._comment_above, self._read_by(test))), "")

    def _read_by(self, test: Function) -> Iterator[ast.Assign]:
        """The figures of its module that a test reads, also those that it is made with."""
        for name in sorted(_names(test)):
            node = self.named.get(name)
            if isinstance(node, ast.Assign):
                yield node

    def _comment(self, test: Function) -> str:
        """The comment lines between a test's first line and its first statement."""
        return _of_comments(self.lines[test.lineno : test.body[0].lineno - 1])

    def _comment_above(self, node: ast.Assign) -> str:
        """The comment lines that end right above a statement."""
        first = node.lineno - 1
        while first and self.lines[first - 1].startswith("#"):
            first -= 1
        return _of_comments(self.lines[first : node.lineno - 1])


def _of_comments(lines: Iterable[str]) -> str:
    return " ".join(each.strip(" #") for each in lines if each.strip().startswith("#"))


def _model(module: str) -> str:
    """What a module measures with, where it is an independent model; else nothing."""
    if module.split(".", maxsplit=1)[0] == "shapely":
        return POLYGONS
    if module not in MODELS:
        return ""
    tree = ast.parse((TESTS / f"{module}.py").read_text(encoding="utf-8"))
    return (ast.get_docstring(tree) or module).split("\n")[0].rstrip(".")


def _names(node: ast.AST) -> set[str]:
    return {each.id for each in ast.walk(node) if isinstance(each, ast.Name)}


def _keys(node: ast.AST) -> Iterator[str]:
    """Techniques that are named: worked out by name, or by a name that can be nothing else."""
    for each in ast.walk(node):
        match each:
            case ast.Call(func=ast.Name(id=name), args=[ast.Constant(value=str(text)), *_]):
                if name in WORKED_OUT_BY and text in keys():
                    yield text
            case ast.Constant(value=str(text)):
                if "-" in text and text in keys():
                    yield text


def _sentence(name: str) -> str:
    words = name.removeprefix("test_").replace("_", " ")
    words = re.sub(r"\b(\d+) (\d{3,})\b", r"\1.\2", words)
    return re.sub(r"\b(\w+) s\b", r"\1's", words[:1].upper() + words[1:])


def modules() -> Iterable[Module]:
    """Every file of tests that may be about techniques."""
    for folder in FOLDERS:
        for path in sorted((TESTS / folder).glob("test_*.py")):
            if f"{path.parent.name}/{path.name}" not in GENERIC:
                yield Module(path)


def checks() -> dict[str, list[Check]]:
    """The checks of each technique, in the order of their files."""
    found: dict[str, list[Check]] = {key: [] for key in keys()}
    for module in modules():
        for test in module.tests():
            for key in module.techniques(test):
                found[key].append(module.check(test))
    return found


def shared() -> list[Check]:
    """The checks in tests/published/ of what all techniques share: units, bodies, cloth, paper."""
    return [
        module.check(test)
        for module in modules()
        if module.path.parent.name == "published"
        for test in module.tests()
        if not module.techniques(test)
    ]


def every() -> list[str]:
    """What is checked of every technique, and of every garment besides."""
    return [f"{opening}{each}" for name, opening in GENERIC.items() for each in _checks_of(name)]


def _checks_of(name: str) -> Iterator[str]:
    """The checks of a test that walks the register."""
    module = Module(TESTS / "engine" / name)
    node = module.named["CHECKS"]
    assert isinstance(node, ast.Assign)
    listed = [each.id for each in ast.walk(node.value) if isinstance(each, ast.Name)]
    for function in (module.named[each] for each in listed):
        if isinstance(function, Function):
            told = (ast.get_docstring(function) or "").split(chr(10))[0]
            yield f"{_sentence(function.name)}: {told}"


def written() -> str:
    """The file that the site reads."""
    told = {key: [asdict(each) for each in found] for key, found in checks().items()}
    whole = {"every": every(), "shared": [asdict(each) for each in shared()], "techniques": told}
    return json.dumps(whole, indent=1, ensure_ascii=False) + "\n"


if __name__ == "__main__":
    KEPT.write_text(written(), encoding="utf-8")
