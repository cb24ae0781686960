"""Four handouts served strictly, with Python for the reader's browser, once for all tests."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

import pytest
from playwright.sync_api import Browser, BrowserContext

from browser_reader_sites import build_reader_site
from reader_page import OpenTabs, ReaderPage
from small_sites import Built
from strict_server import StrictServer, serve


@pytest.fixture(scope="session")
def reader_site(tmp_path_factory: pytest.TempPathFactory) -> Built:
    """A small site of three handouts with the runtime of the real one."""
    return build_reader_site(tmp_path_factory.mktemp("reader"), {})


@pytest.fixture
def strict(reader_site: Built) -> Iterator[StrictServer]:
    """The small site, served below a sub-path with its headers."""
    with serve(reader_site.folder) as server:
        yield server


@contextmanager
def telephone(browser: Browser) -> Iterator[BrowserContext]:
    """A browser as narrow as a telephone, with nothing kept yet."""
    context = browser.new_context(viewport={"width": 360, "height": 740})
    yield context
    context.close()


@pytest.fixture
def context(browser: Browser) -> Iterator[BrowserContext]:
    """A browser with nothing kept from another test."""
    with telephone(browser) as made:
        yield made


@pytest.fixture(scope="module")
def lasting_context(browser: Browser) -> Iterator[BrowserContext]:
    """A browser for the tabs that stay open from test to test."""
    with telephone(browser) as made:
        yield made


@pytest.fixture(scope="session")
def open_tabs(browser: Browser, reader_site: Built) -> Iterator[OpenTabs]:
    """Tabs of the small site that stay open as long as there are tests."""
    with telephone(browser) as made, serve(reader_site.folder) as server:
        yield OpenTabs(made, server)


@pytest.fixture
def tabs(open_tabs: OpenTabs) -> Iterator[OpenTabs]:
    """Tabs with the reader's form; at its end nothing must have been reported as wrong."""
    yield open_tabs
    open_tabs.check()


@pytest.fixture
def reader(context: BrowserContext, strict: StrictServer) -> Iterator[ReaderPage]:
    """A page with the reader's form; at its end nothing must have been reported as wrong."""
    page = ReaderPage(context, strict)
    yield page
    page.check()
