"""Handouts and booklets as Chromium prints them, on both papers, read back by another library."""

from __future__ import annotations

import re
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from typing import Any
from unicodedata import normalize

import pytest
from playwright.sync_api import Browser

from handout_site.ready_pdfs import NOWHERE, Printing, find_program, opened, printable
from printed import Letter, Printed, read
from small_sites import Built
from thoroughness import SEARCHING

SAMPLE = ("ruffles/banded-ruffle", "lattice/lattice-panel", "pleats/knife-pleats")
LOOKED_AT = SAMPLE if SEARCHING else SAMPLE[:2]
PAPERS = {"A4": (210.0, 297.0), "Letter": (215.9, 279.4)}
BOOKLET = "booklet-fine-seams"
MARGIN, FOOT = 15.0, 18.0
"""Of each page in mm, as overrides/main.html sets them."""
ROUNDED = 0.6
"""How far a browser's pages and hairlines may be off, in mm."""
MORE_BELOW = 5.0
"""A heading with lines this far below it, such as those for notes, does not end a page, in mm."""

CHOOSE = """(paper) => {
  delete document.documentElement.dataset.paper;  // the reader's own choice, where she has a form
  const style = document.createElement("style");
  style.textContent = `@page { size: ${paper}; }`;
  document.head.append(style);
}"""
SAID = """() => {
  const words = (choice) => [...document.querySelectorAll(`article ${choice}`)].map((each) => {
    each = each.cloneNode(true);
    each.querySelectorAll(".headerlink, .sheet").forEach((link) => link.remove());
    return each.textContent;
  });
  return {
    title: words("h1")[0],
    block: words(".print-head p"),
    cautions: words(".cautions li"),
    steps: words("ol.steps > li"),
    cells: words(":is(.part-cuts, .part-numbers, .part-chart) :is(th[scope=row], td)"),
    sources: words(".sources li"),
    heads: words(":is(h1, h2, h3, h4, .part-title, caption, thead tr)"),
    drawings: [...document.querySelectorAll("article .handout-block svg.drawing")].map((each) =>
      [...each.querySelectorAll("text")].map((text) => text.textContent).join("")),
  };
}"""


@dataclass(frozen=True)
class OnPaper:
    """A page of the site: what it says, and the sheets it is printed on."""

    said: dict[str, Any]
    sheets: list[Printed]

    @property
    def words(self) -> list[str]:
        return [plain(each.words) for each in self.sheets]


def plain(text: str) -> str:
    """Letters and figures only: a PDF breaks its lines and joins its letters as it likes."""
    return re.sub(r"[^0-9a-z/×]", "", normalize("NFKC", text).lower())


@pytest.fixture(scope="module", params=LOOKED_AT)
def on_paper(
    request: pytest.FixtureRequest, browser: Browser, served_site: str
) -> dict[str, OnPaper]:
    context = browser.new_context()
    page = context.new_page()
    page.goto(f"{served_site}/handouts/{request.param}.html")
    said = page.evaluate(SAID)
    printed = {}
    for paper in PAPERS:
        page.evaluate(CHOOSE, paper)
        printed[paper] = OnPaper(said, read(page.pdf(prefer_css_page_size=True)))
    context.close()
    return printed


def test_the_sheets_are_of_the_paper_and_none_is_empty(on_paper: dict[str, OnPaper]):
    for paper, printed in on_paper.items():
        for sheet in printed.sheets:
            assert (sheet.width, sheet.height) == pytest.approx(PAPERS[paper], abs=ROUNDED)
            assert len(body(sheet)) > 100


def test_what_matters_is_printed(on_paper: dict[str, OnPaper]):
    for printed in on_paper.values():
        words = "".join(printed.words)
        for part in ("block", "cautions", "steps", "cells", "sources"):
            assert printed.said[part], part
            missing = [each for each in printed.said[part] if plain(each) not in words]
            assert missing == [], part


def test_the_title_block_heads_the_first_sheet(on_paper: dict[str, OnPaper]):
    for printed in on_paper.values():
        head = min(letter.top for letter in body(printed.sheets[0]))
        assert head < MARGIN + 5
        words, title = printed.words[0], plain(printed.said["title"])
        block = [words.index(plain(each)) for each in printed.said["block"]]
        assert len(block) == 3 and printed.said["block"][-1] == "first edition"
        assert max(block) < words.index(title, max(block))


def test_what_only_a_screen_can_use_is_not_printed(on_paper: dict[str, OnPaper]):
    for printed in on_paper.values():
        words = "".join(printed.words)
        for each in ("Skip to content", "Work this page out", "in one booklet", ".html", "http"):
            assert each.replace(" ", "").lower() not in words


def test_each_drawing_is_whole_on_one_sheet(on_paper: dict[str, OnPaper]):
    for printed in on_paper.values():
        assert printed.said["drawings"]
        for drawing in printed.said["drawings"]:
            assert any(plain(drawing) in words for words in printed.words), drawing


def test_nothing_is_drawn_or_written_beyond_the_margins(on_paper: dict[str, OnPaper]):
    for printed in on_paper.values():
        for sheet in printed.sheets:
            left, right = MARGIN - ROUNDED, sheet.width - MARGIN + ROUNDED
            across = [x for line in sheet.lines for x, _ in line.points]
            assert min(across) >= left and max(across) <= right
            assert min(letter.left for letter in sheet.letters) >= left
            assert max(letter.right for letter in sheet.letters) <= right
            down = [y for line in sheet.lines for _, y in line.points]
            assert min(down) >= MARGIN - ROUNDED


def test_no_heading_and_no_table_header_ends_a_sheet(on_paper: dict[str, OnPaper]):
    for printed in on_paper.values():
        heads = {plain(each) for each in printed.said["heads"]} - {""}
        for sheet in printed.sheets:
            assert plain(last_row(sheet)) not in heads


def test_a_long_table_repeats_its_head(browser: Browser, served_site: str):
    page = browser.new_page()
    page.goto(f"{served_site}/handouts/tucks/tuck-set.html")
    page.evaluate("""() => {
      const rows = document.querySelector(".part-chart tbody, .part-marks tbody, .part-cuts tbody");
      for (let number = 0; number < 90; number++) rows.append(rows.firstChild.cloneNode(true));
      rows.closest("table").querySelector("thead th").textContent = "Heading of the long one";
    }""")
    sheets = read(page.pdf(prefer_css_page_size=True))
    page.close()
    named = [number for number, each in enumerate(sheets)
             if "headingofthelongone" in plain(each.words)]  # fmt: skip
    assert len(named) >= 2


def body(sheet: Printed) -> list[Letter]:
    """The letters of a sheet without those at its foot."""
    return [each for each in sheet.letters if each.bottom < sheet.height - FOOT + ROUNDED]


def last_row(sheet: Printed) -> str:
    """What is written lowest on a sheet; nothing where lines stand well below it."""
    letters = body(sheet)
    bottom = max(letter.bottom for letter in letters)
    drawn = [y for line in sheet.lines for _, y in line.points if y < sheet.height - FOOT]
    if max(drawn, default=0.0) > bottom + MORE_BELOW:
        return ""
    return "".join(letter.text for letter in letters if letter.bottom > bottom - 1.5)


def test_a_booklet_begins_each_handout_on_a_sheet_of_its_own(browser: Browser, served_site: str):
    page = browser.new_page()
    page.goto(f"{served_site}/{BOOKLET}.html")
    titles = page.locator(".bound h1").evaluate_all(
        "all => all.map((each) => each.firstChild.textContent)"
    )
    sheets = read(page.pdf(prefer_css_page_size=True))
    page.close()
    assert len(titles) >= 2
    begun = [plain("".join(each.text for each in body(sheet))) for sheet in sheets]
    for number, title in enumerate(titles, 1):
        heads = [words for words in begun if f"handout{number}firstedition" in words]
        assert len(heads) == 1, title
        assert plain(title) in heads[0]
    for title in titles:
        assert plain(title) in begun[0]


@pytest.fixture(scope="module")
def ready(built_site: Built) -> list[list[bytes]]:
    """A handout's and a booklet's PDF, made twice, each time by a browser of its own."""
    program, missing = find_program()
    if program is None:
        pytest.skip(missing)

    def made() -> list[bytes]:
        with opened(built_site.folder, program, NOWHERE) as press:
            return [
                Printing(press, each, printable(built_site.page(each), keep_links=False)).pdf()
                for each in (f"handouts/{SAMPLE[0]}.html", f"{BOOKLET}.html")
            ]

    # The browser of the other tests has its own loop in this thread.
    with ThreadPoolExecutor(1) as thread:
        return [thread.submit(made).result() for _ in range(2)]


def test_the_same_page_gives_the_same_pdf(ready: list[list[bytes]]):
    assert ready[0] == ready[1]


def test_a_ready_pdf_is_what_the_page_prints_as(
    ready: list[list[bytes]], browser: Browser, served_site: str
):
    page = browser.new_page()
    page.goto(f"{served_site}/handouts/{SAMPLE[0]}.html")
    printed = read(page.pdf(prefer_css_page_size=True))
    page.close()
    assert [each.words for each in read(ready[0][0])] == [each.words for each in printed]


def test_a_ready_pdf_leads_nowhere_and_names_no_file(ready: list[list[bytes]]):
    for pdf in ready[0]:
        assert b"file:" not in pdf and b".invalid" not in pdf


def test_the_contents_say_on_which_page_each_handout_begins(ready: list[list[bytes]]):
    sheets = [plain("".join(each.text for each in body(sheet))) for sheet in read(ready[0][1])]
    # The numbers stand at the right, and are written before the rest.
    numbered = re.match(r"(\d)(\d)\D", sheets[0])
    assert numbered, sheets[0]
    for number, page in enumerate(numbered.groups(), 1):
        assert f"handout{number}firstedition" in sheets[int(page) - 1]
