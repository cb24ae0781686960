"""Makes small slips in the engine's arithmetic and sees whether the nearest tests find them.

    python tests/mutations.py                          300 slips, drawn with seed 1
    python tests/mutations.py --number 60 --seed 7 --jobs 2
    python tests/mutations.py --only tucking --kind comparison --kind min-max
    python tests/mutations.py --number 60 --json outcome.json

Half of the slips are drawn in what works values out, the rest in steps, charts and drawings; the
kinds (`mutating.KINDS`) take turns. Each is made in a copy of the tree, never in the tree itself,
and the tests nearest to it are run there until one fails: those that import what was changed, those
of the techniques that come by it soonest (its own module's, else up to three), and of these three
the tests that every technique has. No run takes longer than a time limit. A slip counts as found
only if the test that fails passes on the unchanged tree.

It is no part of the ordinary tests. A slip that no test finds is a test that is missing, unless it
changes nothing that can be seen.
"""

from __future__ import annotations

import argparse
import ast
import json
import os
import random
import shutil
import signal
import subprocess
import sys
import tempfile
import threading
from collections import Counter, defaultdict
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import asdict, dataclass
from itertools import cycle, islice
from pathlib import Path
from queue import SimpleQueue
from types import FrameType
from typing import Any

from checks import modules as modules_of_tests
from engine_source import KEYS, PACKAGE, ROOT, Named, Reach, Source, imports_of, read_engine
from kept_sheets import sheet
from mutating import CHARTS, DRAWINGS, KINDS, STEPS, VALUES, Change, changes, put

NUMBER, SEED = 300, 1
ROOMS = (VALUES, DRAWINGS, VALUES, STEPS, VALUES, DRAWINGS, VALUES, CHARTS)
"""The order in which slips are drawn: every second one is in values."""
TECHNIQUES = 3
"""So many of the techniques that reach a slip are tested."""
SHEETS = 12
"""The kept sheets of so many of them are looked at."""
DIRECT = 2
"""So many files of tests that import what was changed are run first; where no technique comes by
it, files that come by it over others."""
BEGIN_WITHIN, LIMIT = 15, 45
"""In seconds of the processor: after the first no further test is begun, after the second the run
is ended."""
WAIT, HOUR = 900, 3600
"""In seconds of the clock: what hangs without using the processor is ended after the first. The
second is for tests on the unchanged tree."""
PROFILE = "quick"

FIRST = (
    "engine/test_kept_sheets.py::test_a_sheet_is_as_it_was_looked_at",
    "engine/test_drawing_golden.py",
    "engine/techniques/test_every_technique.py::test_what_it_makes_of_its_defaults_holds",
    "engine/test_drawing_truth.py::test_every_arrow_is_as_long_as_it_says",
)  # fmt: skip
"""What every technique has, as it comes; then with measures drawn at random."""
LAST = (
    "engine/garments/test_every_garment.py",
    "engine/techniques/test_every_technique.py",
    "engine/test_drawing_truth.py",
    "engine/test_amounts.py",
)  # fmt: skip
KEPT_SHEETS = FIRST[0].partition("::")[0]
KEPT_FILES = (KEPT_SHEETS, FIRST[1])
"""What holds a sheet against itself; it is quick, and always run."""
WALKERS = tuple(dict.fromkeys(each.partition("::")[0] for each in (*FIRST, *LAST)))
NO_ARITHMETIC = ("'str'", "'list'", "'tuple'", "'Sentence'", "'dict'", "'set'")
"""What cannot be subtracted: a slip there is no slip that anybody could make."""

DIED, SURVIVED, UNDECIDED, NONE = "died", "survived", "undecided", "no slip"
KEPT_ALONE = "by what is kept"
"""Found by no test before a kept sheet or drawing, which are run after the technique's own."""


@dataclass
class Outcome:
    """What became of a slip."""

    module: str
    line: int
    room: str
    group: str
    kind: str
    function: str
    change: str
    techniques: list[str]
    tests: list[str]
    outcome: str = ""
    by: str = ""
    message: str = ""
    ran: int = 0
    seconds: float = 0.0

    @property
    def place(self) -> str:
        """`plugins/handout_engine/tucking.py:41`, as an editor opens it."""
        return f"{self.module}:{self.line}"

    def __str__(self) -> str:
        """One line: what was changed, and what found it."""
        found = f" by {self.by}" if self.by else f" all of {self.ran} tests"
        return (
            f"{self.outcome:9} {self.place} {self.function} [{self.room}] {self.change}\n"
            f"          {found} ({', '.join(self.techniques) or 'no technique'}; "
            f"{self.seconds:.0f} s)"
        )


class Nearness:
    """Which tests lie nearest to a place in the engine."""

    def __init__(self, reach: Reach) -> None:
        """Read the tests; none is run."""
        self.reach = reach
        self.about: dict[str, list[str]] = defaultdict(list)
        self.importing: dict[Named, list[tuple[int, int, str]]] = defaultdict(list)
        for module in modules_of_tests():
            where = module.path.relative_to(ROOT).as_posix()
            for test in module.tests():
                for key in module.techniques(test):
                    self.about[key].append(f"{where}::{test.name}")
        for path in sorted((ROOT / "tests" / "engine").rglob("test_*.py")):
            where = path.relative_to(ROOT / "tests").as_posix()
            if where not in WALKERS:
                self._read(path, f"tests/{where}")

    def _read(self, path: Path, where: str) -> None:
        """Note what of the engine a file of tests comes by, and over how many other names."""
        imported = imports_of(ast.parse(path.read_text(encoding="utf-8")))
        found = [each for each in imported.values() if each[0].startswith(PACKAGE)]
        named = filter(None, map(self.reach.resolved, found))
        for name, far in self.reach.starting(named).items():
            self.importing[name].append((far, len(found), where))

    def techniques(self, change: Change, executed: Callable[[str], bool]) -> list[str]:
        """Techniques that reach it, nearest first, those that run the line as they come before.

        What only pages reach, such as what lays a drawing out on paper, is run by any of them.
        """
        near = self.reach.nearest((change.module, change.top)) or filter(executed, KEYS)
        return sorted(near, key=lambda key: not executed(key))[:SHEETS]

    def tests(self, change: Change, techniques: Sequence[str]) -> list[str]:
        """The tests to run, nearest first."""
        importing = sorted(self.importing[change.module, change.top])
        near = self.reach.nearest((change.module, change.top))
        direct = [where for far, _, where in importing if not far or not near][:DIRECT]
        own = [test for key in techniques for test in self._own_first(key)] if near else []
        nearest = [test for test in own if test in self.about[techniques[0]]] if near else []
        first, last = ([f"tests/{each}" for each in walking] for walking in (FIRST, LAST))
        return list(dict.fromkeys([*direct, *nearest, *first, *own, *last]))

    def _own_first(self, key: str) -> list[str]:
        """The tests about a technique, those of the file named after it first."""
        own = f"test_{key.replace('-', '_')}.py"
        return sorted(self.about[key], key=lambda test: own not in test)


class LinesRun:
    """The lines of some files that each technique runs when its sheet is made as it comes."""

    def __init__(self, paths: Iterable[Path]) -> None:
        """Make the sheet of every technique once."""
        self.wanted = {str(path) for path in paths}
        self.of: dict[str, set[tuple[str, int]]] = {}
        for key in KEYS:
            self.seen = self.of[key] = set()
            sys.settrace(self._called)
            try:
                list(sheet(key, ()))
            finally:
                sys.settrace(None)

    def _called(self, frame: FrameType, event: str, _: object) -> Any:
        if frame.f_code.co_filename not in self.wanted:
            return None
        if event == "line":
            self.seen.add((frame.f_code.co_filename, frame.f_lineno))
        return self._called


def drawn(all_changes: Iterable[Change], seed: int) -> Iterator[Change]:
    """Slips in the order in which they are tried: rooms take turns, and in each room the kinds."""
    chance = random.Random(seed)
    waiting: dict[str, dict[str, list[Change]]] = defaultdict(lambda: defaultdict(list))
    for each in all_changes:
        waiting[each.room][each.kind].append(each)
    for kinds in waiting.values():
        for of_kind in kinds.values():
            chance.shuffle(of_kind)
    turns = {room: cycle(chance.sample(KINDS, len(KINDS))) for room in ROOMS}
    for room in cycle(ROOMS):
        if not any(left for kinds in waiting.values() for left in kinds.values()):
            return
        for kind in islice(turns[room], len(KINDS)):
            if waiting[room][kind]:
                yield waiting[room][kind].pop()
                break


class Copy:
    """A copy of the tree to make slips in."""

    def __init__(self, folder: Path) -> None:
        """Copy what git knows of, and what is new and not ignored."""
        self.root = folder
        listed = subprocess.run(
            ["git", "ls-files", "-z", "--cached", "--others", "--exclude-standard"],
            cwd=ROOT, capture_output=True, check=True,
        ).stdout.decode()  # fmt: skip
        for name in filter(None, listed.split("\0")):
            if (ROOT / name).is_file():
                (folder / name).parent.mkdir(parents=True, exist_ok=True)
                shutil.copy2(ROOT / name, folder / name)
        self._check()

    def _check(self) -> None:
        """Make certain that it is the copy's own engine that runs, and keep it compiled."""
        code = f"import {PACKAGE}; print({PACKAGE}.__file__)"
        told = subprocess.run(
            [sys.executable, "-c", code], env=self.environment, cwd=self.root,
            capture_output=True, check=True, text=True,
        ).stdout  # fmt: skip
        assert str(self.root.resolve()) in told, f"{told} is not in the copy"
        for folder in ("plugins", "tests"):
            subprocess.run(
                [sys.executable, "-m", "compileall", "-q", folder], cwd=self.root, check=True
            )

    @property
    def environment(self) -> dict[str, str]:
        """Where Python looks: in the copy, and nowhere it writes to."""
        kept = {name: text for name, text in os.environ.items() if name != "RENEW_DRAWINGS"}
        folders = (self.root / "plugins", self.root / "tests")
        return {
            **kept,
            "PYTHONPATH": os.pathsep.join(map(str, folders)),
            "PYTHONDONTWRITEBYTECODE": "1",
            "HYPOTHESIS_PROFILE": PROFILE,
        }

    def run(self, tests: Sequence[str], keys: Sequence[str], *, first: bool = True) -> dict:
        """Run tests there; the plugin's account of it, or none when it took too long."""
        account = self.root / "account.json"
        account.unlink(missing_ok=True)
        most = TECHNIQUES if first else len(keys)
        asked = {
            "walkers": {
                Path(each).name: list(keys if each == KEPT_SHEETS else keys[:most])
                for each in WALKERS
            },
            "always": [Path(each).name for each in KEPT_FILES],
            "seconds": BEGIN_WITHIN if first else HOUR,
            "limit": LIMIT if first else HOUR,
            "account": str(account),
        }
        words = ["-m", "pytest", "-p", "nearest_only", "-q", "-p", "no:cacheprovider"]
        process = subprocess.Popen(
            [sys.executable, *words, *(["-x"] if first else []), *tests],
            cwd=self.root, env={**self.environment, "NEAREST": json.dumps(asked)},
            stdout=subprocess.PIPE, stderr=subprocess.STDOUT, start_new_session=True, text=True,
        )  # fmt: skip
        try:
            said, _ = process.communicate(timeout=WAIT if first else None)
        except subprocess.TimeoutExpired:
            os.killpg(process.pid, signal.SIGKILL)
            process.wait()
            return {}
        if process.returncode in (-signal.SIGXCPU, -signal.SIGKILL):
            return {}
        if not account.exists():
            return {"failed": ["before any test"], "ran": 0, "message": said[-300:], "seconds": 0}
        told: dict = json.loads(account.read_text(encoding="utf-8"))
        return told

    def changed(self, source: Source, change: Change) -> Changed:
        """The copy with one slip in it, as long as the block lasts."""
        return Changed(self.root / source.path.relative_to(ROOT), source.text, change)


class Changed:
    """A file of the copy while a slip is in it."""

    def __init__(self, path: Path, text: str, change: Change) -> None:
        """Nothing is written yet."""
        self.path, self.text, self.change = path, text, change

    def __enter__(self) -> None:
        """Write the slip, and take away what was compiled before it."""
        for old in (self.path.parent / "__pycache__").glob(f"{self.path.stem}.*.pyc"):
            old.unlink()
        self.path.write_text(put(self.text, self.change.edits), encoding="utf-8")

    def __exit__(self, *_: object) -> None:
        """Write the text as it was."""
        self.path.write_text(self.text, encoding="utf-8")


class Trial:
    """Slips tried in copies of the tree, some at a time."""

    def __init__(self, sources: Mapping[str, Source], jobs: int, folder: Path) -> None:
        """Make a copy for each worker."""
        self.sources = sources
        self.jobs = jobs
        self.near = Nearness(Reach(sources))
        self.copies: SimpleQueue[Copy] = SimpleQueue()
        for number in range(jobs):
            self.copies.put(Copy(folder / str(number)))
        self.printing = threading.Lock()
        self.left_out: set[str] = set()

    def of(self, tried: Sequence[Change]) -> list[Outcome]:
        """What becomes of each slip, said as soon as it is known."""
        ran = LinesRun({self.sources[each.module].path for each in tried}).of
        outcomes = self._all(tried, ran)
        while failing := self._failing(outcomes) - self.left_out:
            self.left_out |= failing
            again = [number for number, each in enumerate(outcomes) if each.by in failing]
            for number, outcome in zip(
                again, self._all([tried[each] for each in again], ran), strict=True
            ):
                outcomes[number] = outcome
        return outcomes

    def _all(
        self, tried: Sequence[Change], ran: Mapping[str, set[tuple[str, int]]]
    ) -> list[Outcome]:
        with ThreadPoolExecutor(self.jobs) as workers:
            return list(workers.map(lambda each: self._try(each, ran), tried))

    def _run(self, copy: Copy, tests: Sequence[str], techniques: Sequence[str]) -> dict:
        """Run tests but those that fail without any slip."""
        return copy.run([*tests, *(f"--deselect={each}" for each in self.left_out)], techniques)

    def _failing(self, outcomes: Sequence[Outcome]) -> set[str]:
        """The tests that found a slip but fail on the unchanged tree too: they found none."""
        found = sorted({each.by for each in outcomes if each.outcome == DIED and "::" in each.by})
        if not found:
            return set()
        copy = self.copies.get()
        failing = copy.run(found, KEYS, first=False)["failed"]
        self.copies.put(copy)
        return set(failing)

    def _try(self, change: Change, ran: Mapping[str, set[tuple[str, int]]]) -> Outcome:
        source = self.sources[change.module]
        here = (str(source.path), change.line)
        techniques = self.near.techniques(change, lambda key: here in ran[key])
        tests = self.near.tests(change, techniques[:TECHNIQUES])
        where = source.path.relative_to(ROOT).as_posix()
        outcome = Outcome(where, change.line, change.room, change.group, change.kind,
                          change.function, f"{change}", techniques, tests)  # fmt: skip
        copy = self.copies.get()
        try:
            with copy.changed(source, change):
                told = self._run(copy, tests, techniques) if tests else {"failed": []}
            if not told:
                unchanged = self._run(copy, tests, techniques)
                told = {"failed": ["the time limit"] if unchanged else [], "ran": 0}
                told["late"] = not unchanged
        finally:
            self.copies.put(copy)
        _judge(outcome, told)
        with self.printing:
            print(outcome, flush=True)
        return outcome


def _judge(outcome: Outcome, told: dict) -> None:
    """Died, survived, or no slip at all."""
    outcome.ran, outcome.seconds = told.get("ran", 0), told.get("seconds", LIMIT)
    outcome.message = told.get("message", "")
    outcome.by = next(iter(told["failed"]), "")
    if "unsupported operand" in outcome.message and any(
        each in outcome.message for each in NO_ARITHMETIC
    ):
        outcome.outcome = NONE
    elif told.get("late"):
        outcome.outcome = UNDECIDED
    else:
        outcome.outcome = DIED if outcome.by else SURVIVED


def rates(outcomes: Iterable[Outcome]) -> Iterator[str]:
    """How many died: by group, by room and by kind."""
    counted: dict[tuple[str, str], Counter[str]] = defaultdict(Counter)
    for each in outcomes:
        for by, name in (("group", each.group), ("room", each.room), ("kind", each.kind)):
            counted[by, name][each.outcome] += 1
            if each.outcome == DIED and any(kept in each.by for kept in KEPT_FILES):
                counted[by, name][KEPT_ALONE] += 1
    for (by, name), counts in sorted(counted.items()):
        died, survived = counts[DIED], counts[SURVIVED]
        share = f"{died / (died + survived):.0%}" if died + survived else "-"
        kept = f", {counts[KEPT_ALONE]} of them by what is kept" if counts[KEPT_ALONE] else ""
        rest = f", {counts[UNDECIDED]} undecided" if counts[UNDECIDED] else ""
        yield f"{by:6} {name:26} {died:4} of {died + survived:4} died ({share}){kept}{rest}"


def asked() -> argparse.Namespace:
    """What is written on the command line."""
    parser = argparse.ArgumentParser(description=(__doc__ or "").split("\n\n")[0])
    parser.add_argument("--number", type=int, default=NUMBER, help="how many slips")
    parser.add_argument("--seed", type=int, default=SEED, help="how they are drawn")
    parser.add_argument("--only", action="append", metavar="PATH",
                        help="only in files whose path holds this")  # fmt: skip
    parser.add_argument("--kind", action="append", choices=KINDS, help="only of this kind")
    parser.add_argument("--room", action="append", choices=(VALUES, STEPS, CHARTS, DRAWINGS),
                        help="only in what makes these")  # fmt: skip
    parser.add_argument("--jobs", type=int, default=1, help="so many at a time")
    parser.add_argument("--json", type=Path, help="a file to keep the outcome in")
    parser.add_argument("--list", action="store_true", help="say what would be tried, and stop")
    return parser.parse_args()


def main() -> int:
    """Draw the slips, try them, say what became of each."""
    words = asked()
    sources = read_engine()
    possible = [
        change
        for source in sources.values()
        if not words.only or any(part in source.path.as_posix() for part in words.only)
        for change in changes(source)
        if (not words.kind or change.kind in words.kind)
        and (not words.room or change.room in words.room)
    ]
    order = drawn(possible, words.seed)
    if words.list:
        for each in islice(order, words.number):
            print(f"{each.module}:{each.line} {each.function} [{each.room}] {each}")
        return 0
    outcomes: list[Outcome] = []
    with tempfile.TemporaryDirectory(prefix="mutations-") as folder:
        trial = Trial(sources, words.jobs, Path(folder))
        while batch := list(islice(order, words.number - len(outcomes))):
            outcomes += [each for each in trial.of(batch) if each.outcome != NONE]
    survivors = [each for each in outcomes if each.outcome == SURVIVED]
    print(f"\n{len(outcomes)} of {len(possible)} slips, seed {words.seed}")
    print(*rates(outcomes), sep="\n")
    print("\nsurvived:", *survivors, sep="\n")
    if words.json:
        kept = [asdict(each) for each in outcomes]
        words.json.write_text(json.dumps(kept, indent=1, ensure_ascii=False), encoding="utf-8")
    return 0


if __name__ == "__main__":
    sys.exit(main())
