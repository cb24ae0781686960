"""True-scale sheets of a reader's own measures: drawn in her browser, on her paper."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext, Page

from browser_reader_sites import build_reader_site
from handout_engine.amounts.saying import Tape
from handout_engine.pages.blocks import read_block
from handout_engine.pages.page import work_page
from handout_site.pdf import find_printer
from printed import read
from reader_page import CORNER, OpenTabs, ReaderPage
from strict_server import serve

LINK = "a.sheet-link"


def opened(reader: ReaderPage) -> Page:
    """The window that the page's first link to a sheet opens."""
    with reader.page.context.expect_page() as begun:
        reader.page.locator(LINK).first.click()
    sheet = begun.value
    sheet.locator("svg").first.wait_for()
    return sheet


def words(markup: str) -> list[str]:
    """What is said in a sheet's drawings, run by run."""
    return re.findall(r"<text[^>]*>([^<]*)</text>", markup)


def test_the_sheet_is_that_of_the_chosen_measures_on_the_chosen_paper(tabs: OpenTabs) -> None:
    reader = tabs.open(CORNER)
    usual = reader.field("corner.lace_width").input_value()
    for width, paper in (("7/8 in", "a4"), ("7/8 in", "letter"), (usual, "letter")):
        if reader.field("paper").input_value() != paper:
            reader.choose("paper", paper)
        if reader.field("corner.lace_width").input_value() != width:
            reader.write("corner.lace_width", width)
        block = read_block({"technique": "mitred-lace", "name": "corner", "lace_width": width})
        (here,) = work_page([block], Tape()).sheets().values()
        sheet = opened(reader)
        assert words(sheet.content()) == words(here.document(paper, Tape()))
        assert sheet.title() == here.title
        sheet.close()


def test_before_a_change_the_link_leads_to_the_site_s_own_sheet(reader: ReaderPage) -> None:
    reader.open(CORNER)
    assert reader.page.locator(LINK).first.get_attribute("href").endswith(".html")
    reader.page.locator(LINK).first.click()
    reader.page.wait_for_url("**/sheets/*.html")
    assert reader.page.locator("svg").count() >= 1


def test_a_printed_sheet_is_at_true_scale(tabs: OpenTabs) -> None:
    """The browser prints each page of the sheet on one page, its squares as large as they say."""
    reader = tabs.open(CORNER)
    reader.write("corner.lace_width", "7/8 in")
    sheet = opened(reader)
    pages = read(sheet.pdf(prefer_css_page_size=True))
    assert len(pages) == sheet.locator("svg").count()
    for page in pages:
        sides = {round(line.points[1][0] - line.points[0][0], 1) for line in page.lines
                 if len(line.points) >= 4 and not line.filled}  # fmt: skip
        assert {50.0, 50.8} <= sides
        assert sorted((round(page.width), round(page.height))) == [210, 297]


def test_the_site_s_pdf_stays_linked_for_its_own_measures_and_paper(
    context: BrowserContext, tmp_path: Path
) -> None:
    if find_printer() is None:
        pytest.skip("libcairo is not installed")
    with serve(build_reader_site(tmp_path, {}, pictures=True).folder) as strict:
        reader = ReaderPage(context, strict).open(CORNER)
        link = reader.page.locator(LINK).first
        pdf = link.get_attribute("href")
        assert re.fullmatch(r"sheets/mitred-lace-finished-[0-9a-f]{16}\.pdf", pdf)
        usual = reader.field("corner.lace_width").input_value()
        reader.write("corner.lace_width", "7/8 in")
        assert link.get_attribute("href").endswith(".html")
        reader.write("corner.lace_width", usual)
        assert link.get_attribute("href") == pdf
        reader.choose("paper", "letter")
        assert link.get_attribute("href").endswith(".html")
        assert words(opened(reader).content())
        reader.check()
