"""A measured baby's values typed into three project pages give what the console script gives."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext

from browser_reader_sites import build_reader_site
from console_values import compute
from reader_page import ReaderPage
from small_sites import REPOSITORY
from strict_server import StrictServer, serve
from thoroughness import SEARCHING

PROJECTS = REPOSITORY / "handouts" / "projects"
BABY = {"body_length": "70.5 cm", "chest": "44.2 cm", "neck": "21.3 cm", "head": "44.6 cm"}
"""An invented baby between two sizes."""
ASKED = {
    "tucked-day-gown": ("neck_edge", "sleeve_edge", "hem_edge", "yoke_edge", "finished_chest"),
    "tucked-summer-dress": ("neck_edge", "armhole_edge", "hem_edge", "yoke_edge", "finished_chest"),
    "ruffled-romper": ("neck_edge", "front_edge", "leg_edge", "finished_chest"),
}
TRIED = tuple(ASKED) if SEARCHING else ("tucked-day-gown",)
"""One project in the ordinary run, since Python starts anew on each page."""


def text_of(name: str) -> str:
    """A project's handout, its links to other handouts left out, with values to read at its end."""
    text = re.sub(r"\[([^]]*)\]\([^)]*\)", r"\1", (PROJECTS / f"{name}.md").read_text("utf-8"))
    asked = "; ".join(f"{{{{ garment.{each} }}}}" for each in ASKED[name])
    return f"{text}\n\nTo compare: {asked}.\n"


def garment_of(name: str) -> tuple[str, list[str]]:
    """The garment of a project, and the inputs its handout writes."""
    block = re.search(r"```calc\n(garment: .*?)```", text_of(name), re.DOTALL)
    assert block
    fields = dict(line.split(": ", 1) for line in block[1].splitlines())
    own = [f"{key}={value}" for key, value in fields.items()
           if key not in {"garment", "show", "sizes", *BABY}]  # fmt: skip
    return fields["garment"], own


@pytest.fixture(scope="module")
def projects_site(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A site with the projects that are tried."""
    pages = {f"projects/{name}.md": text_of(name) for name in TRIED}
    return build_reader_site(tmp_path_factory.mktemp("projects"), pages).folder


@pytest.fixture
def projects_server(projects_site: Path) -> Iterator[StrictServer]:
    """The projects, served strictly."""
    with serve(projects_site) as server:
        yield server


@pytest.mark.parametrize("name", TRIED)
def test_a_measured_babys_values_give_what_the_console_gives(
    name: str, context: BrowserContext, projects_server: StrictServer
) -> None:
    garment, own = garment_of(name)
    reader = ReaderPage(context, projects_server).open(f"handouts/projects/{name}.html")
    before = {value: reader.value(f"garment.{value}") for value in ASKED[name]}
    for measure, text in BABY.items():
        if reader.field(f"garment.{measure}").count():
            reader.write(f"garment.{measure}", text)
    typed = [f"{measure}={text}" for measure, text in BABY.items()
             if reader.field(f"garment.{measure}").count()]  # fmt: skip
    told = compute(garment, *own, *typed)
    shown = {value: reader.value(f"garment.{value}") for value in ASKED[name]}
    assert shown == {value: told[value] for value in ASKED[name]}
    assert shown != before
    reader.check()
