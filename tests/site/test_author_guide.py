"""The author's guide: its examples are taken from its pages, put together, worked out and built.

A fence with a file's name as its title is a piece of that file; the pieces of one file follow each
other as they stand on the pages.
"""

from __future__ import annotations

import re
import shlex
from functools import cache
from pathlib import Path

import pytest
from click.testing import CliRunner

from handout_engine.register import keys
from handout_site.console import main
from handout_site.fences import scan
from handout_site.front_matter import front_matter_slips
from handout_site.reading import Terms, read_handout
from handout_site.scenario import load_scenario
from handout_site.slips import SlipsError
from small_sites import REPOSITORY, Built, SmallSite, site_of

PAGES = [
    REPOSITORY / "site_src" / "pages" / "author" / f"{name}.md"
    for name in ("index", "handout", "project", "scenario")
]
PIECE = re.compile(r'^(`{4,})\w+ title="([^"]+)"\n(.*?)^\1$', re.MULTILINE | re.DOTALL)
COMMANDS = re.compile(r"^```sh\n(.*?)^```$", re.MULTILINE | re.DOTALL)
SAID = re.compile(r"^```text\n(.*?)\n```$", re.MULTILINE | re.DOTALL)
SECTIONS = "  - Course: course/\n  - Wardrobe: wardrobe/\n"
WITHOUT_A_SITE = ("list", "compute", "new", "check")


@cache
def examples() -> dict[str, str]:
    found: dict[str, str] = {}
    for page in PAGES:
        for piece in PIECE.finditer(page.read_text(encoding="utf-8")):
            found[piece[2]] = found.get(piece[2], "") + piece[3]
    return found


HANDOUTS = [name for name in examples() if name.startswith("handouts/")]
SCENARIOS = [Path(name).stem for name in examples() if name.startswith("scenarios/")]
KNOWN = tuple(name.removeprefix("handouts/").removesuffix(".md") for name in HANDOUTS)


def commands() -> list[str]:
    found = []
    for page in PAGES:
        for block in COMMANDS.findall(page.read_text(encoding="utf-8")):
            found += block.splitlines()
    return found


def slips(name: str, text: str) -> list[str]:
    handout = read_handout(text, name, Terms())
    return [str(slip) for slip in (*front_matter_slips(text, name), *handout.slips)]


def site(folder: Path, scenario: str) -> SmallSite:
    """A site of the guide's own files, published by one of its scenarios."""
    made = site_of(folder, {})
    for name, text in examples().items():
        made.write(name, text)
    settings = made.config_file.read_text(encoding="utf-8")
    settings = settings.replace("scenario: guild", f"scenario: {scenario}")
    line = "  - Handouts: handouts/"
    made.write("site_src/mkdocs.yml", settings.replace(line, f"{SECTIONS}{line}"))
    return made


def test_every_page_of_the_guide_is_looked_at_and_there_are_examples():
    assert sorted(PAGES) == sorted(PAGES[0].parent.glob("*.md"))
    assert len(HANDOUTS) == 2 and len(SCENARIOS) == 3


@pytest.mark.parametrize("name", HANDOUTS)
def test_a_handout_put_together_has_nothing_to_mend(name):
    text = examples()[name]
    assert slips(name, text) == []
    handout = read_handout(text, name, Terms())
    assert len(handout.fences) >= 8 and handout.inlines
    for number in range(len(handout.fences)):
        shown = re.sub("<[^>]*>", "", handout.fragment(number)).strip()
        assert shown, f"block {number + 1} shows nothing"


@pytest.mark.parametrize("name", HANDOUTS)
def test_each_piece_can_be_added_to_those_before_it(name):
    """So a reader who builds after every step finds nothing to mend."""
    whole = ""
    for page in PAGES:
        for piece in PIECE.finditer(page.read_text(encoding="utf-8")):
            if piece[2] == name:
                whole += piece[3]
                assert slips(name, whole) == []


@pytest.mark.parametrize("scenario", SCENARIOS)
def test_the_site_of_each_scenario_builds_strictly(tmp_path, scenario):
    built: Built = site(tmp_path, scenario).build()
    assert built.warnings == []
    assert (built.folder / "handouts" / "gowns" / "ruffled-slip.html").is_file()
    assert (built.folder / "course").is_dir() == (scenario == "slip-course")
    assert (built.folder / "wardrobe").is_dir() == (scenario == "our-baby")


def fields(text: str) -> set[str]:
    """The blocks of a page without what they show."""
    return {re.sub(r"\nshow: .*", "", fence.body) for fence in scan(text).fences}


def test_a_block_that_the_guide_works_out_is_the_one_that_it_shows():
    """All but what it shows: at the top of a page that need not be said."""
    live = [fields(page.read_text(encoding="utf-8")) for page in PAGES]
    shown = [fields(examples()[name]) for name in HANDOUTS]
    assert any(live)
    assert set().union(*live) <= set().union(*shown)


def test_the_slip_of_a_handout_is_said_as_it_is():
    (name,) = (each for each in HANDOUTS if "hem-ruffle" in each)
    (said,) = SAID.findall(PAGES[1].read_text(encoding="utf-8"))
    assert "`depth: 50 in`" in PAGES[1].read_text(encoding="utf-8")
    assert said in slips(name, examples()[name].replace("depth: 2 in", "depth: 50 in"))


def test_the_slip_of_a_scenario_is_said_as_it_is(tmp_path):
    (said,) = SAID.findall(PAGES[3].read_text(encoding="utf-8"))
    name = "scenarios/sewing-room.yml"
    file = tmp_path / "sewing-room.yml"
    text = examples()[name].replace("ruffles/hem-ruffle", "ruffles/hem-rufle")
    file.write_text(text, encoding="utf-8")
    with pytest.raises(SlipsError) as several:
        load_scenario(file, name, KNOWN)
    assert said in str(several.value)


@pytest.mark.parametrize("line", commands())
def test_every_command_can_be_given(tmp_path, monkeypatch, line):
    program, command, *words = shlex.split(line)
    assert program == "handouts" and command in main.commands
    if command not in WITHOUT_A_SITE:
        assert words[0] in SCENARIOS
        return
    site(tmp_path, SCENARIOS[0])
    monkeypatch.chdir(tmp_path)
    if command == "new":
        assert f"handouts/{words[0]}.md" in HANDOUTS
        Path(f"handouts/{words[0]}.md").unlink()
    result = CliRunner().invoke(main, [command, *words])
    assert result.exit_code == 0, result.stderr


@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.stem)
def test_what_is_called_a_field_or_a_value_is_one(page):
    """`hem_trim` and the like, said in running text, are written in the example or are fields."""
    text = re.sub(r"^(`{3,}).*?^\1$", "", page.read_text(encoding="utf-8"), flags=re.M | re.S)
    written = " ".join(examples().values())
    for name in re.findall(r"`([a-z]+_[a-z_]+)`", text):
        assert f"{name}:" in written, name
    for reference in re.findall(r"`technique: ([a-z-]+)`|--technique ([a-z-]+)", text):
        assert "".join(reference) in keys()
