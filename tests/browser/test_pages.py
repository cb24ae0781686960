"""Every page of the real site in a browser: narrow and wide, light and dark, and on paper."""

from __future__ import annotations

import re
from collections.abc import Iterator
from contextlib import contextmanager
from io import BytesIO
from typing import Any
from unicodedata import normalize

import pytest
from playwright.sync_api import Browser, ConsoleMessage, Page, Response
from pypdf import PdfReader

from small_sites import Built

SIZES = {"narrow": (360, 740), "wide": (1440, 900)}
LEAST_CONTRAST = 3.0
"""What WCAG asks of a drawing's parts against what lies beside them."""

DRAWINGS = """() => {
  const ground = (element) => {
    for (let each = element; each; each = each.parentElement) {
      const colour = getComputedStyle(each).backgroundColor;
      if (!/^rgba\\(.*, 0\\)$|^transparent$/.test(colour)) return colour;
    }
    return "rgb(255, 255, 255)";
  };
  const seen = (drawing) => drawing.getClientRects().length > 0;
  return [...document.querySelectorAll("svg.drawing")].filter(seen).map((drawing) => ({
    title: drawing.querySelector("title").textContent,
    ground: ground(drawing),
    width: drawing.getBoundingClientRect().width,
    height: drawing.getBoundingClientRect().height,
    lines: [...drawing.querySelectorAll(".line-cut, .line-stitch, .line-fold, .line-thin")]
      .map((line) => getComputedStyle(line).stroke),
    words: [...drawing.querySelectorAll("text")].map((text) => getComputedStyle(text).fill),
  }));
}"""
TOO_WIDE = """() => {
  const root = document.documentElement;
  const past = (element) => element.getBoundingClientRect().right > root.clientWidth + 1;
  const scrolls = (element) => element.closest(".table-area, pre, .tabbed-labels");
  const names = [...document.querySelectorAll("article *")]
    .filter((element) => past(element) && !scrolls(element))
    .map((element) => element.tagName + "." + element.getAttribute("class"));
  return root.scrollWidth > root.clientWidth ? ["the page", ...names] : names;
}"""


@contextmanager
def opened(browser: Browser, size: str = "wide", scheme: str = "light") -> Iterator[Page]:
    """A page of that size in a browser that knows nothing yet."""
    width, height = SIZES[size]
    context = browser.new_context(
        viewport={"width": width, "height": height},
        color_scheme=scheme,  # type: ignore[arg-type]
    )
    yield context.new_page()
    context.close()


class Record:
    """What a page asked for since it was last read, and what went wrong."""

    def __init__(self, page: Page) -> None:
        self.asked: list[str] = []
        self.wrong: list[str] = []
        page.on("request", lambda request: self.asked.append(request.url))
        page.on("response", self._answered)
        page.on("console", self._said)
        page.on("pageerror", lambda error: self.wrong.append(str(error)))

    def _answered(self, answer: Response) -> None:
        if answer.status >= 400:
            self.wrong.append(f"{answer.status} {answer.url}")

    def _said(self, message: ConsoleMessage) -> None:
        if message.type in {"error", "warning"}:
            self.wrong.append(message.text)

    def read(self) -> tuple[list[str], list[str]]:
        asked, wrong = list(self.asked), list(self.wrong)
        self.asked.clear()
        self.wrong.clear()
        return asked, wrong


def addresses(site: Built) -> list[str]:
    """All pages but the booklets, which hold the same handouts once more."""
    return [each for each in site.pages() if each != "404.html" and not each.startswith("booklet")]


def with_blocks(site: Built) -> list[str]:
    """The pages of handouts that have a cut list."""
    return [address for address in addresses(site) if "part-cuts" in site.article(address)]


@pytest.mark.parametrize("size", SIZES)
def test_a_page_comes_whole_from_its_own_site_and_fits_the_screen(
    size: str, browser: Browser, built_site: Built, served_site: str
):
    own = (f"{served_site}/", "data:", f"blob:{served_site}/")
    with opened(browser, size) as page:
        record = Record(page)
        for address in addresses(built_site):
            page.goto(f"{served_site}/{address}")
            asked, wrong = record.read()
            assert wrong == [], address
            assert f"{served_site}/{address}" in asked
            assert [url for url in asked if not url.startswith(own)] == [], address
            assert page.locator("h1").first.is_visible(), address
            assert page.evaluate(TOO_WIDE) == [], address
        page.wait_for_load_state("networkidle")
        late, wrong = record.read()
        assert wrong == []
        assert [url for url in late if not url.startswith(own)] == []


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_drawings_are_seen_on_their_ground(
    scheme: str, browser: Browser, built_site: Built, served_site: str
):
    seen = 0
    with opened(browser, "wide", scheme) as page:
        for address in with_blocks(built_site):
            page.goto(f"{served_site}/{address}")
            ground = page.evaluate("getComputedStyle(document.body).backgroundColor")
            assert (luminance(ground) < 0.2) == (scheme == "dark"), address
            drawings = page.evaluate(DRAWINGS)
            assert any(drawing["words"] for drawing in drawings), address
            for drawing in drawings:
                seen += 1
                check_drawing(drawing, f"{address}: {drawing['title']}")
    assert seen


def check_drawing(drawing: dict[str, Any], name: str) -> None:
    assert drawing["width"] > 200, name
    assert drawing["height"] > 20, name
    assert drawing["lines"], name
    for colour in {*drawing["lines"], *drawing["words"]}:
        assert contrast(colour, drawing["ground"]) >= LEAST_CONTRAST, (name, colour)


def test_paper_is_light_in_a_dark_house(browser: Browser, built_site: Built, served_site: str):
    address = with_blocks(built_site)[0]
    with opened(browser, "wide", "dark") as page:
        page.goto(f"{served_site}/{address}")
        page.emulate_media(media="print", color_scheme="dark")
        for drawing in page.evaluate(DRAWINGS):
            check_drawing(drawing | {"ground": "rgb(255, 255, 255)"}, drawing["title"])


def test_a_printed_page_holds_its_cut_list_and_its_cautions(
    browser: Browser, built_site: Built, served_site: str
):
    assert with_blocks(built_site)
    with opened(browser) as page:
        for address in with_blocks(built_site):
            page.goto(f"{served_site}/{address}")
            cuts = page.locator(".part-cuts :is(th[scope=row], td)").all_text_contents()
            cautions = page.locator(".cautions li").all_text_contents()
            printed = words_of(page.pdf(format="Letter"))
            assert cuts and cautions, address
            assert [text for text in [*cuts, *cautions] if plain(text) not in printed] == [], (
                address
            )


def words_of(pdf: bytes) -> str:
    return plain(" ".join(each.extract_text() for each in PdfReader(BytesIO(pdf)).pages))


def plain(text: str) -> str:
    """Letters and figures only: a PDF breaks its lines and joins its letters as it likes."""
    return re.sub(r"[^0-9a-z/×]", "", normalize("NFKC", text).lower())


def luminance(colour: str) -> float:
    """The relative luminance of a computed colour, as WCAG defines it."""
    shares = [float(number) / 255 for number in re.findall(r"[\d.]+", colour)[:3]]
    assert len(shares) == 3, colour
    red, green, blue = (
        share / 12.92 if share <= 0.04045 else ((share + 0.055) / 1.055) ** 2.4 for share in shares
    )
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one: str, other: str) -> float:
    """The contrast ratio of two colours, from 1 to 21, as WCAG defines it."""
    light, dark = sorted((luminance(one), luminance(other)), reverse=True)
    return (light + 0.05) / (dark + 0.05)
