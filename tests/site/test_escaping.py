"""Whatever an author calls a thing: it is read as it was written, and is never taken for HTML."""

from __future__ import annotations

import json
import re
from html import unescape
from html.parser import HTMLParser
from pathlib import Path

import pytest

from handout_site.plain_text import plain
from small_sites import Built, site_of

WORD = "Ruffle"
NASTY = (
    "Lace </title></style><script>alert(1)</script> \"two\" 'one' &lt;b&gt; & <img src=x "
    "onerror=alert(1)> {{ 7 * 7 }} {% raw %} [a](javascript:b) *c* \\"
)
SCENARIO = """\
publisher: WORD
version: WORD
licence: WORD
handouts: all
sizes: 62 to 68
lessons:
  - title: WORD
    aim: WORD
    time: WORD
    handouts: [ruffles/slip, ruffles/try]
    bring: [WORD]
    order: [WORD]
    homework: WORD
    prepare: [WORD]
  - title: Another
    handouts: [ruffles/try]
seats:
  - name: WORD
    size: 62
    cloths: {cloth: WORD}
"""
FRONT = """\
---
title: WORD
summary: WORD
practice: WORD
time: WORD
description: WORD
author: WORD
subtitle: WORD
tags: [WORD]
more: {deep: [WORD]}
---
"""
RUFFLE = "\n```calc\ntechnique: gathered-ruffle\nedge: 9 in\nshow: [finished, cuts]\n```\n"
SLIP = "\n```calc\ngarment: slip\nsize: 62\nsizes: 62 to 68\nshow: [finished, cuts]\n```\n"
SETTINGS = """\
      booklets: true
      pictures: true
site_name: WORD
site_description: WORD
site_author: WORD
nav:
  - WORD: index.md
  - Course: course/
  - Handouts: handouts/
  - By practice: practice.md
"""


class Tags(HTMLParser):
    """The tags of a page with the names of their attributes, and what it says."""

    def __init__(self, page: str) -> None:
        super().__init__()
        self.found: list[tuple[str, ...]] = []
        self.said: list[str] = []
        self.told: list[str] = []
        self.feed(page)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.found.append((tag, *sorted(name for name, _ in attrs)))
        self.told.extend(value for _, value in attrs if value)

    def handle_endtag(self, tag: str) -> None:
        self.found.append((f"/{tag}",))

    def handle_data(self, data: str) -> None:
        self.said.append(data)


def built_with(folder: Path, word: str) -> Built:
    """A course whose every title and text is a word."""

    def written(text: str) -> str:
        return text.replace("WORD", json.dumps(word))

    heading = f"# {plain(word)}\n\n## {plain(word)}\n"
    handouts = {
        "ruffles/index.md": heading,
        "ruffles/try.md": f"{heading}{RUFFLE}",
        "ruffles/slip.md": f"{written(FRONT)}\nNo heading.\n{SLIP}",
        "ruffles/front.md": f"{written(FRONT)}{heading}{RUFFLE}",
    }
    site = site_of(folder, handouts, scenario=written(SCENARIO))
    settings = site.config_file.read_text(encoding="utf-8").partition("nav:")[0]
    plugins = site.config_file.read_text(encoding="utf-8").partition("extra_css")[2]
    added = written(SETTINGS)
    site.write("site_src/mkdocs.yml", f"{settings}extra_css{plugins}{added}")
    return site.build()


@pytest.fixture(scope="module")
def sites(tmp_path_factory: pytest.TempPathFactory) -> tuple[Built, Built]:
    return (
        built_with(tmp_path_factory.mktemp("word"), WORD),
        built_with(tmp_path_factory.mktemp("nasty"), NASTY),
    )


def test_no_page_has_another_tag_or_attribute_for_it(sites: tuple[Built, Built]):
    word, nasty = (each.pages() for each in sites)
    # The addresses of some booklets are made from titles.
    alike = word.keys() & nasty.keys()
    assert len(alike) > 15
    for address in alike:
        assert Tags(word[address]).found == Tags(nasty[address]).found, address
    others = [
        sorted(Tags(each[name]).found for name in each.keys() - alike) for each in (word, nasty)
    ]
    assert others[0] == others[1] != []


def test_it_is_said_as_it_was_written(sites: tuple[Built, Built]):
    _, nasty = sites
    told = " ".join(NASTY.split())
    for address in (
        "course/lesson-1.html",
        "course/kit-1.html",
        "course/index.html",
        "index.html",
        "handouts/ruffles/front.html",
        "handouts/ruffles/slip-size-68.html",
    ):
        page = Tags(nasty.page(address))
        assert told in " ".join("".join(page.said).split()), address
        assert "49" not in "".join(page.said).partition(told)[2][:200]
    assert NASTY in Tags(nasty.page("handouts/ruffles/front.html")).told


def test_a_booklet_names_its_lesson_so(sites: tuple[Built, Built]):
    booklets = [
        page for name, page in sites[1].pages().items() if name.startswith("booklet-lesson")
    ]
    told = " ".join(NASTY.split())
    said = [" ".join("".join(Tags(page).said).split()) for page in booklets]
    assert any(f"Lesson 1: {told} in one booklet" in each for each in said)
    contents = re.findall(r'<li><a href="#handout-\d+">(.*?)</a>', sites[1].page("booklet.html"))
    assert {unescape(each) for each in contents} == {
        f"Lesson 1: {told}",
        "Lesson 2: Another",
        told,
        NASTY,
    }


def test_the_running_title_on_paper_stays_inside_its_quotation_marks(sites: tuple[Built, Built]):
    for address, page in sites[1].pages().items():
        for styles in re.findall(r"<style>(.*?)</style>", page, re.DOTALL):
            bare = re.sub(r'"(?:[^"\\\n]|\\.)*"', "", styles)
            assert "alert" not in bare, address


def test_searching_finds_it_and_runs_nothing(sites: tuple[Built, Built]):
    index = json.loads((sites[1].folder / "search" / "search_index.json").read_text("utf-8"))
    found = [each for each in index["docs"] if "alert" in each["title"]]
    assert found
    assert not [each for each in index["docs"] if re.search(r"<(?:script|img)", each["title"])]
