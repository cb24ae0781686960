"""After one visit with the engine in use a handout works without network, and is kept in step."""

from __future__ import annotations

from pathlib import Path

from playwright.sync_api import expect

from browser_reader_sites import SLEEVE_TEXT, build_reader_site
from handout_site.engine_archive import engine_archive
from reader_page import PAIR, SLEEVE, ReaderPage

KEPT = """async () => {
    const names = (await caches.keys()).filter((name) => name.startsWith("handouts-"));
    const keys = await Promise.all(names.map(async (name) => (await caches.open(name)).keys()));
    return [names.length, keys.flat().map(({ url }) => url)];
}"""


def kept(reader: ReaderPage) -> tuple[int, list[str]]:
    """How many versions are kept, and all addresses in them."""
    number, addresses = reader.page.evaluate(KEPT)
    return number, addresses


def wait_until_kept(reader: ReaderPage, address: str) -> None:
    """Wait until the page's own address is kept, which comes last."""
    for _ in range(300):
        if reader.strict.address + address in kept(reader)[1]:
            reader.page.wait_for_timeout(500)
            return
        reader.page.wait_for_timeout(100)
    raise AssertionError(f"{address} is not kept: {kept(reader)}")


def wait_until_a_version_waits(reader: ReaderPage) -> None:
    """Wait until the new version is fetched whole; it waits for the old page to be left."""
    ask = "navigator.serviceWorker.getRegistration().then(async (it) => (await it.update(), it))"
    for _ in range(60):
        if reader.page.evaluate(f"{ask}.then((it) => it.waiting !== null)"):
            return
        reader.page.wait_for_timeout(500)
    raise AssertionError("the new version is not fetched")


def wait_until_only_one_version_is_kept(reader: ReaderPage) -> None:
    """Wait until the new version has taken over."""
    for _ in range(200):
        if kept(reader)[0] == 1:
            return
        reader.page.wait_for_timeout(100)
    raise AssertionError(f"{kept(reader)}")


def test_a_handout_works_without_network_after_one_visit(reader: ReaderPage) -> None:
    reader.open()
    reader.write("sleeve.band", "3/8 in")
    wait_until_kept(reader, SLEEVE)
    shown = reader.article()
    reader.page.context.set_offline(True)
    reader.open(query="?sleeve.band=1/2+in")
    expect(reader.page.locator(".handout-chosen")).to_contain_text("band 1/2 in")
    reader.write("sleeve.band", "3/8 in")
    assert reader.article() == shown
    assert reader.query == "sleeve.band=3/8+in"
    background = "getComputedStyle(document.querySelector('.md-header')).position"
    assert reader.page.evaluate(background) == "sticky"
    # A page that was never opened: what is kept can be reached from it.
    reader.page.goto(reader.strict.address + PAIR + "?sleeve.edge=10+in")
    expect(reader.page.locator("h1")).to_have_text("No network")
    kept_pages = reader.page.locator("li a")
    expect(kept_pages).to_have_text(["Sleeve ruffle - Heirloom sewing handouts"])
    assert reader.page.evaluate("getComputedStyle(document.body).maxWidth") != "none"
    kept_pages.click()
    expect(reader.page.locator("h1")).to_contain_text("Sleeve ruffle")
    reader.page.go_back()
    reader.page.context.set_offline(False)
    reader.page.get_by_role("link", name="Try again").click()
    expect(reader.page.locator("h1")).to_contain_text("Two ruffles")
    assert reader.query == "sleeve.edge=10+in"
    reader.complaints.clear()  # the browser reports each request that found no network


def test_what_a_reader_writes_is_not_sent_once_the_page_is_kept(reader: ReaderPage) -> None:
    reader.open()
    reader.write("sleeve.band", "3/8 in")
    wait_until_kept(reader, SLEEVE)
    reader.strict.asked.clear()
    reader.page.reload()
    reader.open(query="?sleeve.edge=10+in")
    assert any(path.endswith(SLEEVE) for path in reader.strict.asked)
    assert not [path for path in reader.strict.asked if "?" in path]
    assert not [url for url in kept(reader)[1] if "?" in url]
    assert reader.page.evaluate("[document.cookie, Object.keys(localStorage).join()]")[0] == ""


def test_a_new_version_is_taken_whole_or_not_at_all(reader: ReaderPage, tmp_path: Path) -> None:
    reader.open()
    reader.write("sleeve.band", "3/8 in")
    wait_until_kept(reader, SLEEVE)
    newer = build_reader_site(
        tmp_path, {"ruffles/sleeve.md": SLEEVE_TEXT.replace("# Sleeve ruffle", "# New sleeve")}
    ).folder
    script = newer / "offline.js"
    script.write_text(script.read_text("utf-8").replace('VERSION = "', 'VERSION = "new-'), "utf-8")
    archive = next((newer / "assets").glob("engine-*.zip"))
    renamed = archive.with_name("engine-0123456789ab.zip")
    for page in [*newer.rglob("*.html"), script]:
        page.write_text(page.read_text("utf-8").replace(archive.name, renamed.name), "utf-8")
    reader.strict.folder = newer
    # The new engine is not there yet: the new version must not be taken.
    archive.unlink()
    update = "navigator.serviceWorker.getRegistration().then((it) => it.update())"
    reader.page.evaluate(update)
    reader.page.wait_for_timeout(1500)
    assert reader.page.evaluate("navigator.serviceWorker.controller?.state") == "activated"
    reader.page.context.set_offline(True)
    reader.page.reload()
    reader.settled("shown")
    assert reader.page.locator("h1").inner_text().startswith("Sleeve ruffle")
    # Now it is there. The page that is open goes on; the next one is new, and works offline.
    reader.page.context.set_offline(False)
    renamed.write_bytes(engine_archive())
    wait_until_a_version_waits(reader)
    reader.page.goto("about:blank")
    reader.open(query="?sleeve.band=1/2+in")
    assert reader.page.locator("h1").inner_text().startswith("New sleeve")
    wait_until_only_one_version_is_kept(reader)
    assert reader.strict.address + "assets/" + renamed.name in kept(reader)[1]
    reader.page.context.set_offline(True)
    reader.page.reload()
    reader.settled("shown")
    assert reader.page.locator("h1").inner_text().startswith("New sleeve")
    reader.complaints.clear()


def test_a_reader_who_only_reads_has_nothing_kept(reader: ReaderPage) -> None:
    for address in (SLEEVE, PAIR):
        reader.open(address)
    reader.page.wait_for_timeout(500)
    assert kept(reader) == (0, [])
