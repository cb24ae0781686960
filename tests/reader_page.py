"""A handout in a browser, as a reader uses it; and everything the browser had to object to."""

from __future__ import annotations

import re
from urllib.parse import urlsplit

from playwright.sync_api import BrowserContext, Locator, expect

from strict_server import StrictServer

PATIENCE = 90_000
SLEEVE = "handouts/ruffles/sleeve.html"
PAIR = "handouts/ruffles/pair.html"
HEADED = "handouts/ruffles/headed.html"
CORNER = "handouts/lace/corner.html"
RUNTIME = re.compile(r"/assets/(runtime|engine)-")
SETTLED = {"ready", "shown", "mend"}
"""The states of a form that waits for its reader."""


class ReaderPage:
    """One tab."""

    def __init__(self, context: BrowserContext, strict: StrictServer) -> None:
        self.page = context.new_page()
        self.strict = strict
        self.complaints: list[str] = []
        self.requests: list[str] = []
        self.page.on("pageerror", lambda error: self.complaints.append(str(error)))
        self.page.on("console", lambda said: self._heard(said.type, said.text))
        self.page.on("request", lambda request: self.requests.append(request.url))
        self.page.on("dialog", lambda dialog: self._alarm(dialog.message))
        self.form = self.page.locator("#handout-form")

    def _heard(self, kind: str, text: str) -> None:
        if kind in {"error", "warning"}:
            self.complaints.append(text)

    def _alarm(self, text: str) -> None:
        raise AssertionError(f"something ran: {text}")

    def check(self) -> None:
        """Nothing was objected to, and every request went to the site itself."""
        assert not self.complaints
        foreign = [url for url in self.requests if not url.startswith(self.strict.address)]
        assert not foreign

    def open(self, address: str = SLEEVE, query: str = "") -> ReaderPage:
        """Open a handout and unfold its form; with a query, wait until it is worked out."""
        self.page.goto(self.strict.address + address + query)
        if query:
            self.settled("shown")
        self.unfold()
        return self

    def unfold(self) -> None:
        """Unfold the form with all its parts."""
        self.page.evaluate(
            "document.querySelectorAll('#handout-form details').forEach(e => e.open = true)"
        )

    def field(self, name: str) -> Locator:
        """The control of an input."""
        return self.form.locator(f'[name="{name}"]')

    def error(self, name: str) -> Locator:
        """The error beside a control."""
        return self.page.locator(f"#my-{name.replace('.', '-')}-error")

    def write(self, name: str, text: str, state: str = "shown") -> None:
        """Write into a field, press Enter, and wait until the page is in a state."""
        self.mark()
        self.field(name).fill(text)
        self.field(name).press("Enter")
        self.settled(state)

    def choose(self, name: str, choice: str) -> None:
        """Choose from a list, and wait for the page."""
        self.mark()
        self.field(name).select_option(choice)
        self.settled("shown")

    def mark(self) -> None:
        """Forget the form's state, so that the next one is seen to be new."""
        self.form.evaluate("form => { form.dataset.state = 'waiting' }")

    def settled(self, state: str) -> None:
        """Wait until the form is in a state."""
        expect(self.form).to_have_attribute("data-state", state, timeout=PATIENCE)

    def value(self, reference: str) -> str:
        """An inline value in the first system."""
        words = self.page.locator(f'[data-value="{reference}"] > .amount').first
        text: str = words.evaluate("e => e.firstChild.textContent")
        return text.replace("\u00a0", " ").strip()

    def article(self) -> str:
        """The page's own text and drawings as the browser has them, without form and theme."""
        inside: str = self.page.evaluate(
            """() => {
                const places = document.querySelectorAll("[data-place], [data-value]");
                return [...places].map((place) => place.outerHTML).join("\\n");
            }"""
        )
        return inside

    def put_back(self, address: str) -> None:
        """Show a handout as it was built, its form unfolded, in the tab that it is open in.

        Python goes on running, unless the tab was left elsewhere or in the middle of an answer.
        """
        self.complaints.clear()
        self.requests.clear()
        state = self.form.get_attribute("data-state") if self.form.count() else None
        if self.page.url.partition("?")[0] != self.strict.address + address or state not in SETTLED:
            self.open(address)
            return
        self.unfold()
        if self.query or state == "mend":
            self.undo()
            # An address that was opened and refused stays when its choices are undone.
            self.page.evaluate("history.replaceState(null, '', location.pathname)")

    def undo(self) -> None:
        """Undo all changes by the form's own button."""
        self.mark()
        self.form.get_by_role("button", name="Undo all changes").click()
        self.settled("shown")

    @property
    def query(self) -> str:
        """The address from `?` on."""
        return urlsplit(self.page.url).query

    @property
    def chosen(self) -> str:
        """The line that says whose measures the page shows."""
        return self.page.locator(".handout-chosen").inner_text()

    def runtime_requests(self) -> list[str]:
        """What was fetched of Python and the engine."""
        return [url for url in self.requests if RUNTIME.search(url)]


class OpenTabs:
    """Tabs that stay open from test to test, one for each handout.

    Python starts anew in every new tab, which takes a browser longer than all that a test does in
    it. Who wants to know how a page comes, or what is kept of it, opens one of her own.
    """

    def __init__(self, context: BrowserContext, strict: StrictServer) -> None:
        self.context = context
        self.strict = strict
        self.tabs: dict[str, ReaderPage] = {}
        self.used: list[ReaderPage] = []

    def open(self, address: str = SLEEVE) -> ReaderPage:
        """A handout as it was built, its form unfolded."""
        if address in self.tabs:
            self.tabs[address].put_back(address)
        else:
            self.tabs[address] = ReaderPage(self.context, self.strict).open(address)
        self.used.append(self.tabs[address])
        return self.tabs[address]

    def check(self) -> None:
        """Nothing was objected to in the tabs that were used since this was asked last."""
        used, self.used = self.used, []
        for tab in used:
            tab.check()
