"""What an author can get wrong, and the sentence she is given for it, with file and line.

Each file in `slips/` is named after what is wrong in it: the page, then, after a line
`%% expected`, the messages. All of them stand in one site, and one failing build lists them all.
"""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest
from click.testing import CliRunner

from handout_site.console import main
from small_sites import SmallSite, site_of, slips_of

GOLDEN = sorted((Path(__file__).parent / "slips").glob("*.md"))
NEEDS_THE_BUILD = {
    "closed-at-another-indent",
    "comment-across-paragraphs",
    "indented-as-code",
    "mention-in-raw-html",
    "options-behind-calc",
}
"""Slips that show only when Markdown has become HTML, so that `handouts check` cannot see them."""


def read_golden(path: Path) -> tuple[str, list[str]]:
    page, _, expected = path.read_text(encoding="utf-8").partition("%% expected\n")
    return page, expected.splitlines()


def site_of_slips(folder: Path) -> SmallSite:
    return site_of(folder, {f"slips/{path.name}": read_golden(path)[0] for path in GOLDEN})


@pytest.fixture(scope="module")
def said(tmp_path_factory: pytest.TempPathFactory) -> list[str]:
    return slips_of(site_of_slips(tmp_path_factory.mktemp("slips")))


@pytest.mark.parametrize("path", GOLDEN, ids=lambda path: path.stem)
def test_a_slip_has_its_sentence(path: Path, said: list[str]):
    _, expected = read_golden(path)
    assert expected
    assert [line for line in said if line.startswith(f"handouts/slips/{path.name}:")] == expected


def test_one_failure_lists_the_slips_of_all_pages_and_nothing_else(said: list[str]):
    assert sorted(said) == sorted(line for path in GOLDEN for line in read_golden(path)[1])


@pytest.mark.parametrize("path", GOLDEN, ids=lambda path: path.stem)
def test_check_says_the_same_without_building(path: Path, tmp_path: Path, monkeypatch):
    page, expected = read_golden(path)
    (tmp_path / "handouts" / "slips").mkdir(parents=True)
    (tmp_path / "handouts" / "slips" / path.name).write_text(page, encoding="utf-8")
    monkeypatch.chdir(tmp_path)
    result = CliRunner().invoke(main, ["check", f"handouts/slips/{path.name}"])
    if path.stem in NEEDS_THE_BUILD:
        assert result.exit_code == 0
    else:
        assert result.stderr.splitlines() == expected
        assert result.exit_code == 1


def test_the_command_fails_without_a_traceback_and_publishes_nothing(tmp_path: Path):
    site = site_of_slips(tmp_path)
    command = [sys.executable, "-m", "mkdocs", "build", "--strict", "-f", str(site.config_file)]
    environment = {**os.environ, "NO_MKDOCS_2_WARNING": "1"}
    ran = subprocess.run(command, capture_output=True, text=True, env=environment, check=False)
    assert ran.returncode == 1
    assert "Traceback" not in ran.stderr + ran.stdout
    for path in GOLDEN:
        assert all(line in ran.stderr for line in read_golden(path)[1])
    assert not [path for path in (tmp_path / "site").rglob("*") if path.is_file()]
