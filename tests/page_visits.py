"""What is seen of a page in one visit: as it comes, narrow, dark and printed, without a reload.

Loading a page takes a browser longer than all that is looked at on it, so each page is loaded once
and every test reads from what was noted then.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any

from playwright.sync_api import Browser, BrowserContext, ConsoleMessage, Page, Response

NARROW = {"width": 360, "height": 740}
WIDE = {"width": 1440, "height": 900}

GROUND = "getComputedStyle(document.body).backgroundColor"
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
    lines: [...drawing.querySelectorAll(
      ".line-cut, .line-stitch, .line-fold, .line-thin, .line-break"
    )].map((line) => getComputedStyle(line).stroke),
    words: [...drawing.querySelectorAll("text")].map((text) => getComputedStyle(text).fill),
  }));
}"""
LOOK = f"""(scheme) => {{
  document.body.setAttribute("data-md-color-scheme", scheme);
  const turning = document.getAnimations().filter((each) => each instanceof CSSTransition);
  turning.forEach((each) => each.finish());
  return [{GROUND}, ({DRAWINGS})()];
}}"""
"""Turns a page light or dark as the theme's own switch does, and looks in the same moment: the
theme may set it back when its script is ready."""
TOO_WIDE = """() => {
  const root = document.documentElement;
  const past = (element) => element.getBoundingClientRect().right > root.clientWidth + 1;
  const scrolls = (element) => element.closest(".table-area, pre, .tabbed-labels");
  const names = [...document.querySelectorAll("article *")]
    .filter((element) => past(element) && !scrolls(element))
    .map((element) => element.tagName + "." + element.getAttribute("class"));
  return root.scrollWidth > root.clientWidth ? ["the page", ...names] : names;
}"""
REGIONS = """() => {
  const roles = { nav: "navigation", main: "main", aside: "complementary" };
  const text = (ids) => ids.split(" ").map((id) => document.getElementById(id)?.textContent ?? "");
  const seen = [...document.querySelectorAll(
    "nav, main, aside, [role=region], [role=navigation], [role=search], section[aria-label]"
  )].filter((each) => each.checkVisibility({ visibilityProperty: true }));
  const names = seen.map((each) => {
    const label = each.getAttribute("aria-label");
    const name = label ?? text(each.getAttribute("aria-labelledby") ?? "").join(" ");
    const role = each.getAttribute("role") ?? roles[each.localName] ?? "region";
    return `${role}: ${name.trim().replace(/\\s+/g, " ")}`;
  });
  return names.filter((name, number) => names.indexOf(name) !== number);
}"""
"""Landmarks in sight that have the role and the name of another."""
FIGURES = """() => [...document.querySelectorAll("figure")].flatMap((each) =>
  [...each.children]
    .filter((child) => child.localName !== "svg")
    .filter((child) => child.localName !== "figcaption" || child !== each.lastElementChild)
    .map((child) => child.outerHTML))"""
"""What stands in a figure and is neither its drawing nor the caption at its end."""
TO_PRINT = """() => [...document.querySelectorAll(
  ".part-cuts :is(th[scope=row], td), .cautions li"
)].map((element) => ({
  text: element.textContent,
  kind: element.closest(".cautions") ? "caution" : "cut",
  shown: element.checkVisibility({ opacityProperty: true, visibilityProperty: true }),
}))"""


@dataclass
class Visit:
    """What was noted of one page; `drawings` and `grounds` by the scheme of the reader's house."""

    address: str
    heading: bool
    asked: list[str] = field(default_factory=list)
    wrong: list[str] = field(default_factory=list)
    too_wide: dict[str, list[str]] = field(default_factory=dict)
    grounds: dict[str, str] = field(default_factory=dict)
    drawings: dict[str, list[dict[str, Any]]] = field(default_factory=dict)
    to_print: list[dict[str, Any]] = field(default_factory=list)
    regions: dict[str, list[str]] = field(default_factory=dict)
    figures: list[str] = field(default_factory=list)


class Visitor:
    """One tab that goes from page to page, and hears what each asks for and complains of."""

    def __init__(self, browser: Browser) -> None:
        """Open a tab in a browser that knows nothing yet."""
        self.context: BrowserContext = browser.new_context(viewport=WIDE, color_scheme="light")
        self.page: Page = self.context.new_page()
        self.asked: list[str] = []
        self.wrong: list[str] = []
        self.page.on("request", lambda request: self.asked.append(request.url))
        self.page.on("response", self._answered)
        self.page.on("console", self._said)
        self.page.on("pageerror", lambda error: self.wrong.append(str(error)))

    def _answered(self, answer: Response) -> None:
        if answer.status >= 400:
            self.wrong.append(f"{answer.status} {answer.url}")

    def _said(self, message: ConsoleMessage) -> None:
        if message.type in {"error", "warning"}:
            self.wrong.append(message.text)

    def visit(self, root: str, address: str) -> Visit:
        """Load a page and note all of it: wide and narrow, light and dark, and on paper."""
        page = self.page
        page.goto(f"{root}/{address}")
        noted = Visit(address, page.locator("h1").first.is_visible())
        for name, size in (("wide", WIDE), ("narrow", NARROW)):
            page.set_viewport_size(size)  # type: ignore[arg-type]
            noted.too_wide[name] = page.evaluate(TOO_WIDE)
            noted.regions[name] = page.evaluate(REGIONS)
        noted.figures = page.evaluate(FIGURES)
        page.set_viewport_size(WIDE)  # type: ignore[arg-type]
        for name, scheme in (("light", "default"), ("dark", "slate")):
            page.emulate_media(color_scheme=name)
            noted.grounds[name], noted.drawings[name] = page.evaluate(LOOK, scheme)
        page.emulate_media(media="print", color_scheme="light")
        noted.to_print = page.evaluate(TO_PRINT)
        page.emulate_media(media="screen")
        noted.asked, noted.wrong = self.read()
        return noted

    def read(self) -> tuple[list[str], list[str]]:
        """What was asked for since this was read last, and what went wrong."""
        asked, wrong = list(self.asked), list(self.wrong)
        self.asked.clear()
        self.wrong.clear()
        return asked, wrong
