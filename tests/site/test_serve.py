"""While an author writes: errors stand in the page, and every change is seen."""

from __future__ import annotations

import os
import socket
import subprocess
import sys
from collections.abc import Callable, Iterator
from pathlib import Path
from time import monotonic, sleep
from urllib.error import URLError
from urllib.request import urlopen

import pytest

from small_sites import Built, SmallSite, build_with, small_site
from written_pages import calc, page, ruffle

ADDRESS = "http://127.0.0.1:9/"
PATIENCE = 30.0


def served_once(site: SmallSite) -> Built:
    """Build as `mkdocs serve` does for each change: settings anew, the plugin kept."""
    config = site.config()
    config.strict = False
    return build_with(config, serve_url=ADDRESS)


def start_serving(site: SmallSite) -> None:
    site.config().plugins.on_startup(command="serve", dirty=False)


def test_errors_are_shown_in_place_and_above_the_page_and_logged(tmp_path: Path):
    right, wrong = ruffle("right", "show: cuts"), ruffle("wrong", "depth: 2")
    waiting = calc("technique: gathered-ruffle", "edge: wrong.edge")
    site = small_site(
        tmp_path, page(right, wrong, "Between.\n", waiting, "Cut {{ wrong.edge }}.\n")
    )
    start_serving(site)
    built = served_once(site)
    sentence = 'gathered-ruffle "wrong": depth: "2" has no unit; write 2 in, 2 cm or 2 mm'
    words = built.words()
    below = words.rpartition("To mend")[2]
    assert "Cut list" in words
    assert words.index(f"handouts/ruffles/try.md:14: {sentence}") < words.index("A page")
    assert words.index("Cut list") < words.rindex(sentence) < words.index("Between.")
    assert "This block waits for another." in below
    assert built.warnings == [f"handouts/ruffles/try.md:14: {sentence}"]


def test_a_block_that_cannot_be_read_is_shown_in_place(tmp_path: Path):
    site = small_site(tmp_path, page("Above.\n", calc("technique: [a", "edge: 9 in"), "Below.\n"))
    start_serving(site)
    words = served_once(site).words()
    middle = words.split("Above.")[1].split("Below.")[0]
    assert "the [ is not closed" in middle


def test_a_mended_page_has_no_errors_left(tmp_path: Path):
    site = small_site(tmp_path, page(ruffle("sleeve", "depth: 2")))
    start_serving(site)
    assert "To mend" in served_once(site).words()
    site.write("handouts/ruffles/try.md", page(ruffle("sleeve", "depth: 2 in")))
    built = served_once(site)
    assert "To mend" not in built.words()
    assert built.warnings == []


def test_a_change_of_handout_or_scenario_changes_the_page(tmp_path: Path):
    site = small_site(tmp_path, page(ruffle("sleeve", "depth: 2 in"), "{{ sleeve.depth }}\n"))
    start_serving(site)
    assert "2 in (51 mm)" in served_once(site).words()
    site.write("handouts/ruffles/try.md", page(ruffle("sleeve", "depth: 3 in"),
                                               "{{ sleeve.depth }}\n"))  # fmt: skip
    assert "3 in (76 mm)" in served_once(site).words()
    site.write("scenarios/guild.yml", "units: metric\n")
    assert "76 mm (3 in)" in served_once(site).words()
    site.write("handouts/ruffles/new.md", "# New\n")
    assert "New" in served_once(site).page("handouts/ruffles/new.html")


def test_handouts_scenarios_and_overrides_are_watched(tmp_path: Path):
    site = small_site(tmp_path, page("Words.\n"))
    (site.folder / "site_src" / "overrides").mkdir()
    config = site.config()
    watched: list[Path] = []

    class Server:
        def watch(self, path: str) -> None:
            watched.append(Path(path).resolve())

    config.plugins["handouts"].on_serve(Server(), config=config, builder=None)
    folders = ("handouts", "scenarios", "site_src/overrides")
    assert watched == [(site.folder / name).resolve() for name in folders]


@pytest.fixture
def served(tmp_path: Path) -> Iterator[tuple[SmallSite, str]]:
    """A small site under `mkdocs serve`, and its address."""
    site = small_site(tmp_path, page(ruffle("sleeve", "depth: 2 in"), "{{ sleeve.depth }}\n"))
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        address = f"127.0.0.1:{free.getsockname()[1]}"
    command = [sys.executable, "-m", "mkdocs", "serve", "--livereload", "-a", address,
               "-f", str(site.config_file)]  # fmt: skip
    environment = {**os.environ, "NO_MKDOCS_2_WARNING": "1"}
    with subprocess.Popen(
        command, env=environment, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL
    ) as server:
        yield site, f"http://{address}/handouts/ruffles/try.html"
        server.terminate()


def wait_for(address: str, text: str, change: Callable[[], object] = lambda: None) -> None:
    """Make a change, then wait until the page holds the text."""
    change()
    last, end = "", monotonic() + PATIENCE
    while monotonic() < end:
        try:
            with urlopen(address) as answer:
                last = answer.read().decode().replace("\u00a0", " ")
        except URLError:
            last = "no answer"
        if text in last:
            return
        sleep(0.2)
    raise AssertionError(f"{text!r} did not come: {last[-2000:]}")


def test_mkdocs_serve_reloads_on_every_change(served: tuple[SmallSite, str]):
    site, address = served
    text = page(ruffle("sleeve", "depth: 3"), "{{ sleeve.depth }}\n")
    wait_for(address, "2 in <span")
    wait_for(address, "has no unit", lambda: site.write("handouts/ruffles/try.md", text))
    mended = text.replace("depth: 3", "depth: 3 in")
    wait_for(address, "3 in <span", lambda: site.write("handouts/ruffles/try.md", mended))
    wait_for(address, "76 mm <span", lambda: site.write("scenarios/guild.yml", "units: metric\n"))
