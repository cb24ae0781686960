"""Where each value is computed: whether its name leads to the one method that works it out.

    python tests/values_found.py

prints for each family, and for all, how many of the values of its techniques and garments (worked
out as they come) `grep -rn "def NAME"` finds exactly once, and that as a value:

- **room**: in the folder of the technique's family;
- **own file**: several times in that folder, and once in the technique's own file;
- **shared**: once in a folder below the families;
- **group**: by its name without the prefix of a group (`front_strips` is `strips` of a group), once
  in the room or below it, in a class that derives from `Group`;
- **nowhere**, or in several places.

"In room" is the share of the first with the room's own groups, "found" that of all but the second
and the last. What was found of each family is kept in `tests/engine/values_found.json`; a test
fails when a share falls, `RENEW_LISTS=1` writes it anew.
"""

from __future__ import annotations

import ast
import sys
from collections import Counter, defaultdict
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path

from engine_source import KEYS, ROOT, Function, Source, read_engine
from handout_engine import register

KEPT = ROOT / "tests" / "engine" / "values_found.json"
ROOM, GROUP_OF_ROOM, OWN, SHARED, GROUP, NOWHERE = COLUMNS = (
    "room", "group of the room", "own file", "shared", "group below", "nowhere",
)  # fmt: skip
IN_ROOM = (ROOM, GROUP_OF_ROOM)
FOUND = (*IN_ROOM, SHARED, GROUP)
GROUP_CLASS = "Group"
"""What groups of values that are noted under a prefix derive from."""
VALUE = "value"
"""What a method is decorated with that works a value out."""


@dataclass(frozen=True)
class Method:
    """A function or method: where it stands, and whether it works out a value of a group."""

    path: Path
    value: bool
    of_group: bool


def methods(sources: Mapping[str, Source]) -> dict[str, list[Method]]:
    """Every function and method of the engine by its name, as `grep` finds it."""
    bases = {
        name: [ast.unparse(base).rpartition(".")[2].partition("[")[0] for base in node.bases]
        for source in sources.values()
        for name, node in source.tops.items()
        if isinstance(node, ast.ClassDef)
    }
    found: dict[str, list[Method]] = defaultdict(list)
    for source in sources.values():
        held = {id(each): name for name, each in source.functions()}
        for node in ast.walk(source.tree):
            if isinstance(node, Function):
                group = derives(held.get(id(node), ""), bases)
                found[node.name].append(Method(source.path, is_value(node), group))
    return found


def is_value(node: Function) -> bool:
    """Whether a method is declared as a value."""
    named = [each.func if isinstance(each, ast.Call) else each for each in node.decorator_list]
    return any(isinstance(each, ast.Name) and each.id == VALUE for each in named)


def derives(name: str, bases: Mapping[str, list[str]], seen: frozenset[str] = frozenset()) -> bool:
    """Whether a class of the engine derives from that of groups."""
    above = [base for base in bases.get(name, ()) if base not in seen]
    return GROUP_CLASS in above or any(derives(base, bases, seen | {name}) for base in above)


def where(name: str, home: Path, known: Mapping[str, list[Method]], rooms: frozenset[Path]) -> str:
    """In which column a value belongs; `home` is its technique's module, `rooms` are all rooms."""
    here, below = near(known.get(name, ()), home, rooms)
    if len(here) == 1 and here[0].value:
        return ROOM
    if [each.value for each in here if each.path == home] == [True]:
        return OWN
    if not here and len(below) == 1 and below[0].value:
        return SHARED
    for bare in without_prefix(name):
        groups = [each for each in known.get(bare, ()) if each.value and each.of_group]
        here, below = near(groups, home, rooms)
        if len(here) == 1:
            return GROUP_OF_ROOM
        if not here and len(below) == 1:
            return GROUP
    return NOWHERE


def near(
    found: Iterable[Method], home: Path, rooms: frozenset[Path]
) -> tuple[list[Method], list[Method]]:
    """Of some methods those in the room of a technique, and those in no room of a family."""
    each_in = [(method, rooms & set(method.path.parents)) for method in found]
    here = [method for method, inside in each_in if home.parent in inside]
    return here, [method for method, inside in each_in if not inside]


def without_prefix(name: str) -> Iterator[str]:
    """The name without its first word, without its first two, and so on."""
    words = name.split("_")
    yield from ("_".join(words[number:]) for number in range(1, len(words)))


def counted() -> dict[str, Counter[str]]:
    """For each family how many values are found where."""
    sources = read_engine()
    known = methods(sources)
    found: dict[str, Counter[str]] = defaultdict(Counter)
    techniques = [register.find(key) for key in KEYS]
    homes = {each: sources[each.__module__].path for each in techniques}
    rooms = frozenset(home.parent for home in homes.values())
    for technique, home in homes.items():
        for name in technique().work().values:
            found[technique.family][where(name, home, known, rooms)] += 1
    return found


def share(counts: Counter[str], columns: Iterable[str]) -> float:
    """The share of some columns; cut off, never rounded up."""
    return int(1000 * sum(counts[each] for each in columns) / counts.total()) / 1000


def with_all(found: Mapping[str, Counter[str]]) -> dict[str, Counter[str]]:
    """The families in order, and all of them together."""
    return {**dict(sorted(found.items())), "all": sum(found.values(), Counter())}


def shares(found: Mapping[str, Counter[str]]) -> dict[str, float]:
    """The share of values that are found, for each family and for all."""
    return {family: share(counts, FOUND) for family, counts in with_all(found).items()}


def table(found: Mapping[str, Counter[str]]) -> Iterator[str]:
    """The counts in columns, after the shares of each family."""
    yield f"{'':12} {'values':>7} {'in room':>7} {'found':>6}  " + "  ".join(COLUMNS)
    for family, counts in with_all(found).items():
        cells = "  ".join(f"{counts[each]:{len(each)}}" for each in COLUMNS)
        percent = f"{share(counts, IN_ROOM):7.1%} {share(counts, FOUND):6.1%}"
        yield f"{family:12} {counts.total():7} {percent}  {cells}"


if __name__ == "__main__":
    print(*table(counted()), sep="\n")
    sys.exit(0)
