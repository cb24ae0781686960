"""The project's own site: nothing logged, nothing from elsewhere, the same at every build."""

from __future__ import annotations

import os
import re
import subprocess
import sys
from collections import Counter
from pathlib import Path

import pytest

from small_sites import REPOSITORY, SETTINGS, Built, build_real_site

SCENARIOS = sorted(path.stem for path in (REPOSITORY / "scenarios").glob("*.yml"))
BUILT_AT = 1_699_920_000
NAMESPACE = "http://www.w3.org/2000/svg"


@pytest.fixture(scope="module", params=SCENARIOS)
def site(request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory) -> Built:
    folder = tmp_path_factory.mktemp(request.param)
    with pytest.MonkeyPatch.context() as patch:
        patch.setenv("HANDOUTS_SCENARIO", request.param)
        return build_real_site(folder)


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
        found = Counter(re.findall(r'\sid="([^"]*)"', html))
        assert [each for each, times in found.items() if times > 1] == [], address


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


def test_two_builds_are_the_same_byte_for_byte(tmp_path: Path):
    built = []
    for seed in ("1", "2"):
        environment = {**os.environ, "NO_MKDOCS_2_WARNING": "1", "PYTHONHASHSEED": seed,
                       "SOURCE_DATE_EPOCH": str(BUILT_AT)}  # fmt: skip
        command = [sys.executable, "-m", "mkdocs", "build", "--strict", "--quiet",
                   "-f", str(SETTINGS), "-d", str(tmp_path / seed)]  # fmt: skip
        subprocess.run(command, check=True, env=environment, capture_output=True)
        built.append(contents(tmp_path / seed))
    first, second = built
    assert first.keys() == second.keys()
    assert [name for name in first if first[name] != second[name]] == []
    assert int.from_bytes(first["sitemap.xml.gz"][4:8], "little") == BUILT_AT
