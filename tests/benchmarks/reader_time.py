"""How long a reader waits, and how much her browser fetches. Prints; asserts nothing.

    python tests/benchmarks/reader_time.py

Times are those of a page in Chromium, from a change in the form to the page that shows it.
"""

from __future__ import annotations

import gzip
import shutil
import sys
import tempfile
from pathlib import Path
from statistics import median, quantiles

from playwright.sync_api import Browser, BrowserContext, Page, sync_playwright

sys.path.insert(0, str(Path(__file__).parent.parent))

from browser_reader_sites import build_reader_site
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.reading import read_length
from handout_engine.amounts.refusals import RefusalError
from reader_page import HEADED, PAIR, PATIENCE, RUNTIME, SLEEVE
from small_sites import build_real_site
from strict_server import serve

COLD_STARTS = 5
CHANGES = 60
LONGEST = 8
FIELDS = {SLEEVE: "sleeve.edge", PAIR: "sleeve.edge", HEADED: "headed-ruffle.edge"}

# Writes a value as a reader does, and resolves to the milliseconds until the page shows it and
# the browser has drawn it.
CHANGE = """([name, text]) => new Promise((resolve) => {
    const form = document.getElementById("handout-form");
    const control = form.elements.namedItem(name);
    const begun = performance.now();
    const watch = new MutationObserver(() => {
        if (form.dataset.state === "working") return;
        watch.disconnect();
        requestAnimationFrame(() => setTimeout(() => {
            resolve([form.dataset.state, performance.now() - begun]);
        }));
    });
    watch.observe(form, { attributes: true, attributeFilter: ["data-state"] });
    control.value = text;
    control.dispatchEvent(new Event("change", { bubbles: true }));
})"""


FIELDS_OF_A_PAGE = """() => [...document.querySelectorAll("#handout-form input")].map(
    ({ name, value }) => [name, value])"""


def change(page: Page, name: str, text: str) -> float:
    """Milliseconds of one change; the page must show it."""
    state, waited = page.evaluate(CHANGE, [name, text])
    assert state == "shown", f"{name}={text}: {state}"
    return float(waited)


def opened(context: BrowserContext, address: str) -> Page:
    """A page whose form is ready."""
    page = context.new_page()
    page.set_default_timeout(PATIENCE)
    page.goto(address, wait_until="networkidle")
    page.locator("#handout-form[data-state=ready]").wait_for(state="attached")
    return page


def cold(browser: Browser, root: str) -> list[float]:
    """Milliseconds of the first change, each time in a browser that has nothing yet."""
    waits = []
    for _ in range(COLD_STARTS):
        context = browser.new_context()
        waits.append(change(opened(context, root + SLEEVE), FIELDS[SLEEVE], "10 in"))
        context.close()
    return waits


def warm(browser: Browser, root: str, address: str) -> list[float]:
    """Milliseconds of each further change of a page."""
    context = browser.new_context()
    page = opened(context, root + address)
    waits = [change(page, FIELDS[address], f"{5 + n}/4 in") for n in range(CHANGES + 4)]
    context.close()
    return waits[4:]


def longest_handouts(browser: Browser, root: str, folder: Path) -> dict[str, list[float]]:
    """Milliseconds of a few further changes of the longest handouts: a length a little longer."""
    waits: dict[str, list[float]] = {}
    context = browser.new_context()
    paths = sorted(folder.glob("handouts/*/*.html"), key=lambda path: -path.stat().st_size)
    for path in paths[:LONGEST]:
        address = path.relative_to(folder).as_posix()
        page = context.new_page()
        page.goto(root + address)
        fields = page.evaluate(FIELDS_OF_A_PAGE)
        lengths = [(name, found) for name, text in fields if (found := _length(text))]
        if lengths:
            name, length = lengths[0]
            texts = [f"{float(length.mm) * (1 + n / 50):.1f} mm" for n in range(1, 8)]
            told = [page.evaluate(CHANGE, [name, text]) for text in texts]
            waits[address] = [waited for state, waited in told[1:] if state == "shown"]
        page.close()
    context.close()
    return waits


def _length(text: str) -> Length | None:
    try:
        return read_length(text)
    except RefusalError:
        return None


def fetched(browser: Browser, root: str, folder: Path) -> dict[str, tuple[int, int]]:
    """Bytes of a visit before and after the first change: as they are, and compressed."""
    context = browser.new_context()
    asked: list[str] = []
    context.on("request", lambda request: asked.append(request.url.partition("?")[0]))
    page = opened(context, root + SLEEVE)
    before = set(asked)
    change(page, FIELDS[SLEEVE], "10 in")
    page.wait_for_timeout(2000)
    after = {url for url in asked if RUNTIME.search(url)}
    context.close()
    paths = {"the page": before, "the runtime, at the first change": after}
    return {what: _bytes(folder, root, urls) for what, urls in paths.items()}


def _bytes(folder: Path, root: str, urls: set[str]) -> tuple[int, int]:
    contents = [(folder / url.removeprefix(root)).read_bytes() for url in urls]
    return sum(map(len, contents)), sum(len(gzip.compress(each)) for each in contents)


def main() -> None:
    """Build a small site, serve it strictly, measure, print."""
    program = shutil.which("chromium") or shutil.which("google-chrome")
    if program is None:
        sys.exit("there is no Chromium on this machine")
    with tempfile.TemporaryDirectory() as folder, sync_playwright() as playwright:
        site = build_reader_site(Path(folder), {}).folder
        browser = playwright.chromium.launch(executable_path=program, args=["--no-sandbox"])
        with serve(site) as strict:
            for what, (plain, packed) in fetched(browser, strict.address, site).items():
                print(f"{what}: {plain / 1e6:.2f} MB, {packed / 1e6:.2f} MB compressed")
            first = cold(browser, strict.address)
            each = ", ".join(f"{waited:.0f}" for waited in first)
            print(f"first change, nothing kept yet: median {median(first):.0f} ms of {each}")
            for address in FIELDS:
                waits = warm(browser, strict.address, address)
                last = quantiles(waits, n=20)[-1]
                print(f"further change of {address}: median {median(waits):.0f} ms, "
                      f"95 of 100 within {last:.0f} ms")  # fmt: skip
        real = build_real_site(Path(folder) / "real").folder
        with serve(real) as strict:
            for address, waits in longest_handouts(browser, strict.address, real).items():
                every = ", ".join(f"{waited:.0f}" for waited in waits)
                print(f"further changes of {address}: median {median(waits):.0f} ms of {every}")
        browser.close()


if __name__ == "__main__":
    main()
