"""How long a site takes to build, beside the same site with its blocks already worked out.

    python tests/benchmarks/build_time.py [--handouts N] [--rounds N]

Generates handouts of four blocks each and builds them (a) with the plugin and (b) as plain pages
in which each block and value has been replaced by its own HTML. Each build runs in a process of
its own, (a) and (b) in turn. Prints both times, their ratio, the time a page and the peak memory.
Times are the processor's, so that other work on the machine does not count.
"""

from __future__ import annotations

import argparse
import json
import resource
import subprocess
import sys
from collections.abc import Iterator
from fractions import Fraction
from itertools import cycle, islice
from pathlib import Path
from statistics import median
from tempfile import TemporaryDirectory
from time import process_time

sys.path.insert(0, str(Path(__file__).parent.parent))

import yaml
from mkdocs.config import load_config

from handout_engine.amounts.inputs import declared_inputs
from handout_engine.amounts.kinds import LengthKind
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError, RefusalsError
from handout_engine.register import find, technique_keys
from handout_engine.working.technique import make
from handout_site.fences import scan
from handout_site.paper import with_notes
from handout_site.reading import Terms, read_handout
from small_sites import GUILD, Built, SmallSite, build_with
from written_pages import calc

BLOCKS = 4
MOST_RATIO = 1.25
MOST_MEMORY = 1.3
TEXT = "Cut with the grain, press each seam before the next, and measure before you sew on.\n"


def main() -> None:
    """Read the options, and build or compare."""
    options = argparse.ArgumentParser(description=__doc__.partition("\n")[0])
    options.add_argument("--handouts", type=int, default=100, help="how many are generated")
    options.add_argument("--rounds", type=int, default=3, help="how often each site is built")
    options.add_argument("--build", help=argparse.SUPPRESS)
    asked = options.parse_args()
    if asked.build:
        print(json.dumps(timed_build(asked.build)))
        return
    with TemporaryDirectory() as folder:
        compare(Path(folder), asked.handouts, asked.rounds)


def compare(folder: Path, handouts: int, rounds: int) -> None:
    """Build both sites in turn and print what they took."""
    sites = two_sites(folder, handouts)
    took: dict[str, list[float]] = {name: [] for name in sites}
    memory: dict[str, list[float]] = {name: [] for name in sites}
    for _ in range(rounds):
        for name, site in sites.items():
            command = [sys.executable, __file__, "--build", str(site.config_file)]
            ran = subprocess.run(command, check=True, capture_output=True, text=True)
            seconds, megabytes = json.loads(ran.stdout)
            took[name].append(seconds)
            memory[name].append(megabytes)
    refuse_other_words(sites)
    for name in sites:
        seconds = median(took[name])
        print(
            f"{name:10} {seconds:6.2f} s, {seconds / handouts * 1000:5.1f} ms a page, "
            f"{max(memory[name]):5.0f} MB"
        )
    plugin, plain = sites
    ratio = median(took[plugin]) / median(took[plain])
    more = max(memory[plugin]) / max(memory[plain])
    print(f"time       {ratio:.2f} times plain pages (wanted: at most {MOST_RATIO})")
    print(f"memory     {more:.2f} times plain pages (wanted: at most {MOST_MEMORY})")


def timed_build(config_file: str) -> tuple[float, float]:
    """Build a site; the seconds it took and the most memory the process held, in MB."""
    start = process_time()
    config = load_config(config_file, strict=True)
    config.plugins.on_startup(command="build", dirty=False)
    built = build_with(config)
    assert built.warnings == []
    seconds = process_time() - start
    return seconds, resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024


def two_sites(folder: Path, handouts: int) -> dict[str, SmallSite]:
    """The same pages twice: with blocks, and with their HTML in place of them."""
    plugin, plain = SmallSite(folder / "plugin"), SmallSite(folder / "plain")
    plain_settings(plain, handouts)
    blocks = varied_blocks()
    for number in range(1, handouts + 1):
        text = page(number, list(islice(blocks, BLOCKS)))
        plugin.write(address(number), text)
        plain.write(f"site_src/pages/{address(number)}", worked_out(text))
    return {"plugin": plugin, "plain": plain}


def address(number: int) -> str:
    """Where a handout lies."""
    return f"handouts/made/handout-{number:04}.md"


def plain_settings(site: SmallSite, handouts: int) -> None:
    """The same settings without the plugin: what it adds to them is written out."""
    settings = yaml.safe_load(site.config_file.read_text(encoding="utf-8"))
    settings["plugins"] = ["search"]
    menu = [address(number) for number in range(1, handouts + 1)]
    settings["nav"] = ["index.md", {"Handouts": [{"Made": menu}]}]
    settings["extra"] = {"scenario": {"name": "guild", **yaml.safe_load(GUILD)}}
    site.write("site_src/mkdocs.yml", yaml.safe_dump(settings))


def page(number: int, blocks: list[tuple[str, dict[str, str]]]) -> str:
    """A handout of some text and four blocks, with a value in the text beside each."""
    parts = [f"# Handout {number}\n", TEXT]
    for place, (key, measures) in enumerate(blocks, 1):
        name = f"part-{place}"
        lines = [f"{field}: {text}" for field, text in measures.items()]
        parts += [f"## Part {place}\n", TEXT, calc(f"technique: {key}", f"name: {name}", *lines)]
        parts += [f"It is {{{{ {name}.{field} }}}}.\n" for field in islice(measures, 1)]
    return "\n".join(parts)


def varied_blocks() -> Iterator[tuple[str, dict[str, str]]]:
    """Every technique in turn, without end, with measures that are seldom the same."""
    for turn, key in enumerate(cycle(technique_keys())):
        yield key, varied(key, turn)


def varied(key: str, turn: int) -> dict[str, str]:
    """Other measures than the usual; the usual ones where those could not be sewn."""
    found: dict[str, str] = {}
    for each in declared_inputs(find(key)):
        if isinstance(each.kind, LengthKind) and each.default is not None:
            usual = each.kind.read(each.default)
            changed = Length(usual.mm * (1 + Fraction(turn % 89, 400)))
            tried = found | {each.name: f"{float(changed):.3f} mm"}
            if can_be_sewn(key, tried):
                found = tried
    return found


def can_be_sewn(key: str, measures: dict[str, str]) -> bool:
    """Whether a technique takes these measures."""
    try:
        make(find(key), measures).work()
    except (RefusalError, RefusalsError):
        return False
    return True


def worked_out(text: str) -> str:
    """A page with each block and value replaced by its own HTML."""
    handout = read_handout(text, "page.md", Terms())
    assert handout.slips == [], handout.slips
    lines: list[str | None] = list(handout.markdown.split("\n"))
    for number, fence in enumerate(scan(handout.markdown).fences):
        start, length = fence.line - 1, fence.body.count("\n") + 3
        lines[start : start + length] = [handout.fragment(number), *[None] * (length - 1)]
    plain = "\n".join(line for line in lines if line is not None)
    for inline in handout.inlines:
        plain = plain.replace(
            f"{{{{ {inline.reference} }}}}", handout.page.inline(inline.reference)
        )
    return f"{plain}\n\n{with_notes('')}"


def refuse_other_words(sites: dict[str, SmallSite]) -> None:
    """The comparison is honest only if both sites say the same."""
    plugin, plain = (Built(site.folder / "site") for site in sites.values())
    for name in plugin.pages():
        assert name == "404.html" or plugin.words(name) == plain.words(name), name


if __name__ == "__main__":
    main()
