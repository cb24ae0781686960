"""The project's own site: nothing logged, nothing from elsewhere, the same at every build."""

from __future__ import annotations

import os
import re
import subprocess
import sys
from pathlib import Path

import pytest

from shared_site import BUILT_AT, shared_site
from small_sites import REPOSITORY, SETTINGS, Built
from thoroughness import SEARCHING

SCENARIOS = sorted(path.stem for path in (REPOSITORY / "scenarios").glob("*.yml"))
NAMESPACE = "http://www.w3.org/2000/svg"


@pytest.fixture(scope="module", params=SCENARIOS)
def site(request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory) -> Built:
    return shared_site(tmp_path_factory, request.param)


def test_a_strict_build_logs_no_warning(site: Built):
    assert site.warnings == []
    assert "index.html" in site.pages()


def test_no_page_names_another_origin(site: Built):
    for address, html in site.pages().items():
        named = set(re.findall(r"(?:https?:)?//[\w-]+(?:\.[\w-]+)+[^\s\"'<]*", html))
        assert named <= {NAMESPACE}, address


def test_no_style_or_script_of_ours_names_another_origin(site: Built):
    ours = [path for path in (site.folder / "assets").glob("*") if path.suffix in {".css", ".js"}]
    assert ours
    for path in ours:
        assert "//" not in re.sub(r"/\*.*?\*/|^\s*//.*?$", "", path.read_text(encoding="utf-8"),
                                  flags=re.DOTALL | re.MULTILINE), path.name  # fmt: skip


def test_every_id_is_the_only_one_on_its_page(site: Built):
    for address, html in site.pages().items():
        found = re.findall(r'\sid="([^"]*)"', html)
        assert [each for each in set(found) if found.count(each) > 1] == [], address


def test_every_name_that_a_drawing_refers_to_is_on_its_page(site: Built):
    drawings = 0
    for address, html in site.pages().items():
        found = set(re.findall(r'\sid="([^"]*)"', html))
        for names in re.findall(r'<svg[^>]*aria-labelledby="([^"]*)"', html):
            drawings += 1
            assert set(names.split()) <= found, address
    assert drawings


def test_every_place_of_a_block_was_filled(site: Built):
    for address, html in site.pages().items():
        assert "data-handout-place" not in html, address
        assert "To mend" not in html, address


def contents(folder: Path) -> dict[str, bytes]:
    files = (path for path in sorted(folder.rglob("*")) if path.is_file())
    return {path.relative_to(folder).as_posix(): path.read_bytes() for path in files}


@pytest.mark.parametrize("scenario", SCENARIOS if SEARCHING else ["baby"])
def test_two_builds_are_the_same_byte_for_byte(
    scenario: str, tmp_path: Path, tmp_path_factory: pytest.TempPathFactory
):
    """That of these tests, and one by the command with names in another order in memory."""
    seed = "2" if os.environ.get("PYTHONHASHSEED") == "1" else "1"
    environment = {**os.environ, "NO_MKDOCS_2_WARNING": "1", "PYTHONHASHSEED": seed,
                   "SOURCE_DATE_EPOCH": str(BUILT_AT)}  # fmt: skip
    command = [sys.executable, "-c", "from handout_site.console import main; main()",
               "build", scenario, "--settings", str(SETTINGS), "--into", str(tmp_path)]  # fmt: skip
    subprocess.run(command, check=True, env=environment, capture_output=True)
    first, second = contents(shared_site(tmp_path_factory, scenario).folder), contents(tmp_path)
    assert first.keys() == second.keys()
    assert [name for name in first if first[name] != second[name]] == []
    assert int.from_bytes(first["sitemap.xml.gz"][4:8], "little") == BUILT_AT
