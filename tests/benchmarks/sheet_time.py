"""How long true-scale sheets take: pages a second, and a site's build with and without their PDFs.

    python tests/benchmarks/sheet_time.py [--rounds N] [--real]

Draws every sheet that a technique or garment has with its usual measures, on both papers, and makes
PDFs of them. Then builds a site with one handout for each of these (or, with `--real`, the
project's own) three times over: without PDF and PNG, with them for the first time, and again. Times
are the processor's, so that other work on the machine does not count.
"""

from __future__ import annotations

import argparse
import sys
from collections.abc import Callable, Iterable
from pathlib import Path
from shutil import copytree, ignore_patterns
from statistics import median
from tempfile import TemporaryDirectory
from time import process_time

sys.path.insert(0, str(Path(__file__).parent.parent))

from mkdocs.config import load_config

from handout_engine import register
from handout_engine.amounts.saying import Tape
from handout_engine.paper.sheets import Sheet, sheets
from handout_engine.paper.tiling import PAPERS
from handout_engine.register import find, keys
from handout_engine.working.technique import make
from handout_site.pdf import find_printer
from small_sites import REPOSITORY, build_with, site_of
from written_pages import calc

BUILDS = (("without PDF and PNG", False, True), ("with them, first", True, True),
          ("with them, again", True, False))  # fmt: skip


def main() -> None:
    """Read the options, time the pages, and then the builds."""
    options = argparse.ArgumentParser(description=__doc__.partition("\n")[0])
    options.add_argument("--rounds", type=int, default=3, help="how often each thing is timed")
    options.add_argument("--real", action="store_true", help="build the project's own site")
    asked = options.parse_args()
    every = all_sheets()
    pages_a_second(every, asked.rounds)
    with TemporaryDirectory() as folder:
        site = real_site if asked.real else made_site
        config_file = site(Path(folder), sorted(every))
        builds(config_file, asked.rounds)


def all_sheets() -> dict[str, list[Sheet]]:
    """The sheets of every technique and garment that has some."""
    found = {key: sheets(make(find(key), {}).work(), Tape()) for key in keys()}
    return {key: several for key, several in found.items() if several}


def pages_a_second(every: dict[str, list[Sheet]], rounds: int) -> None:
    """Draw all pages, then make PDFs of them, and say how fast each was."""
    whole = [(sheet, paper) for several in every.values() for sheet in several for paper in PAPERS]
    drawn = [(sheet.title, sheet.pages(paper, Tape())) for sheet, paper in whole]
    count = sum(len(pages) for _, pages in drawn)
    print(f"{len(whole)} sheets, {count} pages")
    took = timed(lambda: [sheet.pages(paper, Tape()) for sheet, paper in whole], rounds)
    print(f"drawn   {len(whole) / took:6.1f} sheets a second, {count / took:6.1f} pages a second")
    printer = find_printer()
    if printer is None:
        print("libcairo is not installed: no PDF is timed")
        return
    took = timed(lambda: [printer(title, pages) for title, pages in drawn], rounds)
    print(f"as PDF  {len(whole) / took:6.1f} sheets a second, {count / took:6.1f} pages a second")


def timed(work: Callable[[], object], rounds: int) -> float:
    """Seconds of the processor for one round, the median of several."""
    took = []
    for _ in range(rounds):
        start = process_time()
        work()
        took.append(process_time() - start)
    return median(took)


def made_site(folder: Path, names: Iterable[str]) -> Path:
    """A site with one handout for each technique or garment."""
    handouts = {f"made/{name}.md": f"# {name}\n\n{block(name)}" for name in names}
    return site_of(folder, handouts).config_file


def block(name: str) -> str:
    """A block of a technique or garment, all its parts shown."""
    word = "garment" if name in set(register.garment_keys()) else "technique"
    return calc(f"{word}: {name}", "name: it")


def real_site(folder: Path, names: Iterable[str]) -> Path:
    """The project's own sources, without what earlier builds have kept."""
    del names
    for part in ("handouts", "scenarios", "site_src"):
        copytree(REPOSITORY / part, folder / part, ignore=ignore_patterns(".cache", "node_modules"))
    return folder / "site_src" / "mkdocs.yml"


def builds(config_file: Path, rounds: int) -> None:
    """Time each kind of build, and say what PDF and PNG add to one without them."""
    took: dict[str, list[float]] = {name: [] for name, *_ in BUILDS}
    for _ in range(rounds):
        for name, pictures, anew in BUILDS:
            kept = config_file.parent / ".cache"
            if anew and kept.is_dir():
                kept.rename(config_file.parent / f"cache-{len(took[name])}-{pictures}")
            took[name].append(timed(lambda on=pictures: build(config_file, on), 1))
    least = median(took[BUILDS[0][0]])
    for name, seconds in took.items():
        print(f"build {name:20} {median(seconds):6.2f} s, {median(seconds) - least:+6.2f} s")


def build(config_file: Path, pictures: bool) -> None:
    """Build the site once."""
    config = load_config(str(config_file), strict=True)
    config.plugins["handouts"].config["pictures"] = pictures
    config.plugins.on_startup(command="build", dirty=False)
    assert build_with(config).warnings == []


if __name__ == "__main__":
    main()
