"""A real browser on the real site, once for all tests of a run.

Without a browser these tests are skipped; with HANDOUTS_REQUIRE_BROWSER=1 they fail instead.
"""

from __future__ import annotations

import os
import shutil
from collections.abc import Iterator
from functools import partial
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from threading import Thread

import pytest
from playwright.sync_api import Browser, sync_playwright

from shared_site import shared_site
from small_sites import Built

NAMES = ("chromium", "chromium-browser", "google-chrome")
NO_BROWSER = "there is no Chromium on this machine; README says how to get one"


@pytest.fixture(scope="session")
def built_site(tmp_path_factory: pytest.TempPathFactory) -> Built:
    """The project's own site."""
    return shared_site(tmp_path_factory)


@pytest.fixture(scope="session")
def served_site(built_site: Built) -> Iterator[str]:
    """The address at which the built site is served, without a `/` at its end."""
    with ThreadingHTTPServer(
        ("127.0.0.1", 0), partial(_Quiet, directory=str(built_site.folder))
    ) as it:
        thread = Thread(target=it.serve_forever, daemon=True)
        thread.start()
        yield f"http://127.0.0.1:{it.server_port}"
        it.shutdown()
        thread.join()


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    """Chromium, as the system has it."""
    program = next(filter(None, map(shutil.which, NAMES)), None)
    if program is None:
        if os.environ.get("HANDOUTS_REQUIRE_BROWSER") == "1":
            pytest.fail(NO_BROWSER)
        pytest.skip(NO_BROWSER)
    with sync_playwright() as playwright:
        found = playwright.chromium.launch(executable_path=program, args=["--no-sandbox"])
        yield found
        found.close()


class _Quiet(SimpleHTTPRequestHandler):
    def log_message(self, format: str, *args: object) -> None:
        """Say nothing; the tests look at the browser's own record."""
