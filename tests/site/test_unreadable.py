"""Files that are no text: a slip with the file's name, never a traceback."""

from __future__ import annotations

from pathlib import Path

from click.testing import CliRunner

from handout_site.console import main
from small_sites import site_of, slips_of

LATIN = "# Caf\u00e9\n".encode("latin-1")


def test_a_handout_that_is_not_utf8_is_refused(tmp_path: Path):
    site = site_of(tmp_path, {"ruffles/try.md": LATIN, "ruffles/index.md": LATIN})
    assert slips_of(site) == [
        "handouts/ruffles/index.md:1: the file cannot be read as text",
        "handouts/ruffles/try.md:1: the file cannot be read as text",
    ]


def test_a_page_of_the_site_that_is_not_utf8_is_refused(tmp_path: Path):
    site = site_of(tmp_path, {})
    site.write("site_src/pages/index.md", LATIN)
    assert slips_of(site) == ["site_src/pages/index.md:1: the file cannot be read as text"]


def test_a_handout_whose_name_is_no_text_is_refused(tmp_path: Path):
    site = site_of(tmp_path, {"ruffles/caf\udce9.md": "# Caf\u00e9\n"})
    assert slips_of(site) == [
        "handouts/ruffles/caf?.md:1: the file's name cannot be read as text; name it in letters, "
        "digits and hyphens"
    ]


def test_check_refuses_it_too(tmp_path: Path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    Path("try.md").write_bytes(LATIN)
    result = CliRunner().invoke(main, ["check", "."])
    assert (result.exit_code, result.stderr) == (1, "try.md:1: the file cannot be read as text\n")


def test_a_folder_named_like_a_handout_is_none(tmp_path: Path):
    (tmp_path / "handouts" / "odd.md").mkdir(parents=True)
    result = CliRunner().invoke(main, ["check", str(tmp_path / "handouts")])
    assert (result.exit_code, result.output) == (0, "0 files checked, nothing to mend\n")
