"""The engine's source as a graph: what each function uses, and which techniques reach it.

Everything is read from the syntax trees and from the register, so that a module may be moved or
renamed without a word here. A node of the graph is what stands at a module's top: a function, a
class, a constant. It uses another node where its body names it.
"""

from __future__ import annotations

import ast
from collections import deque
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from functools import cache, cached_property
from pathlib import Path

from handout_engine import register

ROOT = Path(__file__).parents[1]
PACKAGE = "handout_engine"
ENGINE = ROOT / "plugins" / PACKAGE

KEYS = register.keys()

Named = tuple[str, str]
"""A module's full name, and a name at its top."""
Function = ast.FunctionDef


@dataclass(frozen=True)
class Source:
    """A module of the engine, read and taken apart."""

    path: Path
    name: str
    text: str

    @cached_property
    def tree(self) -> ast.Module:
        """Its syntax tree."""
        return ast.parse(self.text)

    @cached_property
    def imports(self) -> dict[str, Named]:
        """Each imported name as it is written here: the module, and the name there."""
        return imports_of(self.tree)

    @cached_property
    def tops(self) -> dict[str, ast.stmt]:
        """What stands at the module's top, by name."""
        found: dict[str, ast.stmt] = {}
        for node in self.tree.body:
            for name in declared_by(node):
                found[name] = node
        return found

    def functions(self) -> Iterator[tuple[str, Function]]:
        """Its functions and methods, each with the name at the top that it belongs to."""
        for name, node in self.tops.items():
            if isinstance(node, Function):
                yield name, node
            if isinstance(node, ast.ClassDef):
                yield from ((name, each) for each in node.body if isinstance(each, Function))

    def top_at(self, line: int) -> str:
        """The name at the top that a line belongs to; empty where there is none."""
        for name, node in self.tops.items():
            if node.lineno <= line <= (node.end_lineno or node.lineno):
                return name
        return ""


def declared_by(node: ast.stmt) -> list[str]:
    """The names that a statement at a module's top declares."""
    match node:
        case ast.FunctionDef(name=name) | ast.ClassDef(name=name):
            return [name]
        case ast.Assign(targets=targets):
            return [each.id for t in targets for each in ast.walk(t) if isinstance(each, ast.Name)]
        case ast.AnnAssign(target=ast.Name(id=name)):
            return [name]
        case _:
            return []


def imports_of(tree: ast.AST) -> dict[str, Named]:
    """Each name that a module imports from another: where from, and its name there."""
    found: dict[str, Named] = {}
    for node in ast.walk(tree):
        if isinstance(node, ast.ImportFrom) and node.module:
            for each in node.names:
                found[each.asname or each.name] = (node.module, each.name)
        if isinstance(node, ast.Import):
            for each in node.names:
                found[each.asname or each.name.partition(".")[0]] = (each.name, "")
    return found


@cache
def read_engine() -> Mapping[str, Source]:
    """Every module of the engine by its full name; read once."""
    found = {}
    for path in sorted(ENGINE.rglob("*.py")):
        parts = path.relative_to(ENGINE.parent).with_suffix("").parts
        name = ".".join(parts[:-1] if parts[-1] == "__init__" else parts)
        found[name] = Source(path, name, path.read_text(encoding="utf-8"))
    return found


class Reach:
    """Which techniques reach a name of the engine, and over how many others."""

    def __init__(self, sources: Mapping[str, Source]) -> None:
        """Draw the graph; nothing of the engine is worked out."""
        self.sources = sources
        self.uses = {
            (source.name, name): self._used(source, node)
            for source in sources.values()
            for name, node in source.tops.items()
        }
        self.far = {key: self._from(key) for key in KEYS}

    def resolved(self, named: Named) -> Named | None:
        """Where a name is declared that may be handed on by the module it is imported from."""
        for _ in range(4):
            module, name = named
            if f"{module}.{name}" in self.sources:
                return (f"{module}.{name}", "")
            source = self.sources.get(module)
            if source is None or name in source.tops or not name:
                return named if source else None
            if name not in source.imports:
                return None
            named = source.imports[name]
        return None

    def _used(self, source: Source, node: ast.AST) -> set[Named]:
        """The names at modules' tops that a piece of code speaks of."""
        found: set[Named] = set()
        for each in ast.walk(node):
            match each:
                case ast.Attribute(value=ast.Name(id=module), attr=name) if (
                    module in source.imports
                ):
                    holder = self.resolved(source.imports[module])
                    if holder and not holder[1]:
                        found.add((holder[0], name))
                case ast.Name(id=name) if name in source.tops:
                    found.add((source.name, name))
                case ast.Name(id=name) if name in source.imports:
                    declared = self.resolved(source.imports[name])
                    found |= {declared} if declared and declared[1] else set()
        return found

    def _from(self, key: str) -> dict[Named, int]:
        """How far each name lies from a technique; 0 for its own module."""
        home = register.find(key).__module__
        return self.starting((home, name) for name in self.sources[home].tops)

    def starting(self, names: Iterable[Named]) -> dict[Named, int]:
        """How far each name lies from the nearest of some others."""
        far = dict.fromkeys(names, 0)
        queue = deque(far)
        while queue:
            near = queue.popleft()
            for named in self.uses.get(near, ()):
                if named not in far and named in self.uses:
                    far[named] = far[near] + 1
                    queue.append(named)
        return far

    def nearest(self, named: Named) -> list[str]:
        """The techniques that reach a name, nearest and smallest first."""
        found = [(far[named], len(far), key) for key, far in self.far.items() if named in far]
        return [key for _, _, key in sorted(found)]
