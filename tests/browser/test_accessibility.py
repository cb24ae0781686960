"""Pages held against the rules of an independent checker, and seen in forced colours.

The checker is axe-core (WCAG 2.2, A and AA, and its best practices), which npm fetches with the
browser's runtime. Without it these tests are skipped; with HANDOUTS_REQUIRE_BROWSER=1 they fail.
"""

from __future__ import annotations

import os
from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

import pytest
from playwright.sync_api import Browser, Page

from page_visits import NARROW, WIDE
from small_sites import REPOSITORY

CHECKER = REPOSITORY / "site_src" / "node_modules" / "axe-core" / "axe.min.js"
NO_CHECKER = "axe-core is not installed: npm ci --prefix site_src"
SAMPLE = (
    ("index.html", "light", WIDE),
    ("handouts/nursery/bib.html", "light", WIDE),
    ("handouts/nursery/bib.html", "dark", NARROW),
    ("author/handout.html", "dark", WIDE),
    ("author/scenario.html", "light", WIDE),
    ("404.html", "light", WIDE),
)
RUN = """async () => {
  const { violations } = await axe.run(document, { resultTypes: ["violations"] });
  return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
}"""
MASKED = """() => {
  const ground = getComputedStyle(document.body).backgroundColor;
  const marks = [];
  for (const each of document.querySelectorAll("*")) {
    for (const part of ["::before", "::after"]) {
      const style = getComputedStyle(each, part);
      if (style.content === "none" || style.maskImage === "none") continue;
      const name = `${each.localName}.${each.getAttribute("class")}${part}`;
      marks.push({ name, seen: style.backgroundColor !== ground });
    }
  }
  return marks;
}"""
"""Marks that are painted as a mask over a ground: they are seen if that is not the page's own."""


@contextmanager
def opened(browser: Browser, **how: Any) -> Iterator[Page]:
    """A page in a browser that knows nothing yet."""
    context = browser.new_context(**how)
    yield context.new_page()
    context.close()


@pytest.fixture(scope="module")
def checker() -> str:
    if not CHECKER.is_file():
        if os.environ.get("HANDOUTS_REQUIRE_BROWSER") == "1":
            pytest.fail(NO_CHECKER)
        pytest.skip(NO_CHECKER)
    return CHECKER.read_text(encoding="utf-8")


@pytest.mark.parametrize("sample", SAMPLE)
def test_the_checker_finds_nothing(
    browser: Browser, served_site: str, checker: str, sample: tuple[str, str, dict[str, int]]
) -> None:
    address, scheme, screen = sample
    with opened(browser, viewport=screen, color_scheme=scheme) as page:
        page.goto(f"{served_site}/{address}")
        page.add_style_tag(content="* { transition: none !important; }")
        page.evaluate(checker)
        assert page.evaluate(RUN) == []


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_no_mark_is_lost_in_forced_colours(browser: Browser, served_site: str, scheme: str) -> None:
    with opened(browser, viewport=WIDE, forced_colors="active", color_scheme=scheme) as page:
        for address in ("handouts/nursery/bib.html", "author/handout.html"):
            page.goto(f"{served_site}/{address}")
            marks = page.evaluate(MASKED)
            assert {each["name"] for each in marks if not each["seen"]} == set(), address
            assert any(each["name"].startswith("summary") for each in marks), address
