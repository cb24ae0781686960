"""The theme's pages and ours work under the policy that the build writes for publishers."""

from __future__ import annotations

from playwright.sync_api import expect

from reader_page import PATIENCE, SLEEVE, ReaderPage


def test_every_page_opens_without_a_word_from_the_browser(reader: ReaderPage) -> None:
    # The theme's 404 page names its files from the host's root, since it may stand in for any.
    pages = sorted(set(reader.strict.folder.rglob("*.html")) - {reader.strict.folder / "404.html"})
    assert len(pages) > 3
    for page in pages:
        reader.page.goto(reader.strict.address + page.relative_to(reader.strict.folder).as_posix())
        expect(reader.page.locator("h1, svg text").first).to_be_visible()


def test_search_and_the_dark_page_work(reader: ReaderPage) -> None:
    reader.page.set_viewport_size({"width": 1280, "height": 800})
    reader.page.goto(reader.strict.address + SLEEVE)
    reader.page.locator("label[for='__palette_1']").click()
    expect(reader.page.locator("body")).to_have_attribute("data-md-color-scheme", "slate")
    reader.page.locator(".md-search__input").click()
    reader.page.keyboard.type("headed")
    found = reader.page.locator(".md-search-result__item").first
    expect(found).to_contain_text("Headed ruffle", timeout=PATIENCE)


def test_inline_scripts_and_evaluated_text_are_refused(reader: ReaderPage) -> None:
    reader.open()
    ran = reader.page.evaluate(
        """() => {
            const script = document.createElement("script");
            script.textContent = "window.ran = true";
            document.body.append(script);
            document.body.insertAdjacentHTML("beforeend", '<img src="x" onerror="window.ran=1">');
            return window.ran === true;
        }"""
    )
    reader.page.wait_for_timeout(300)
    assert not ran
    assert not reader.page.evaluate("window.ran === 1")
    assert any("Content Security Policy" in each for each in reader.complaints)
    reader.complaints.clear()


def test_the_policy_allows_nothing_from_elsewhere(reader: ReaderPage) -> None:
    policy = dict(reader.strict.headers())["Content-Security-Policy"]
    rules = {rule.split()[0]: rule.split()[1:] for rule in policy.split("; ")}
    scripts = [each for each in rules["script-src"] if not each.startswith("'sha256-")]
    assert scripts == ["'self'", "'wasm-unsafe-eval'"]
    allowed = {each for rule in rules.values() for each in rule if not each.startswith("'sha256-")}
    assert allowed == {
        "'self'", "'none'", "'wasm-unsafe-eval'", "'unsafe-inline'", "data:"
    }  # fmt: skip
    assert [name for name, rule in rules.items() if "'unsafe-inline'" in rule] == ["style-src"]
