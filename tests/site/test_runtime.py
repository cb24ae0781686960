"""What is bundled for the reader's browser, and a site without it."""

from __future__ import annotations

import json
import logging
import re
import sys
from io import BytesIO
from pathlib import Path
from zipfile import ZipFile

import pytest

from handout_engine import register
from handout_site import runtime
from handout_site.engine_archive import engine_archive
from small_sites import REPOSITORY, small_site

TEXT = "# Try\n\nOne sentence.\n\n```calc\ntechnique: gathered-ruffle\n```\n"


@pytest.fixture
def fetched(tmp_path: Path) -> Path:
    """A `site_src` folder in which npm has put Python for the browser, or what looks like it."""
    package = tmp_path / "site_src" / runtime.PACKAGE
    package.mkdir(parents=True)
    for name in runtime.PYTHON_FILES:
        (package / name).write_text(name)
    (package / "package.json").write_text('{"version": "1.2.3"}')
    catalogue = {"info": {"version": "1.2.3"}, "packages": {"numpy": {}}}
    (package / runtime.CATALOGUE).write_text(json.dumps(catalogue))
    return tmp_path / "site_src"


def test_the_archive_is_the_same_at_every_build() -> None:
    assert engine_archive() == engine_archive()


def test_the_archive_holds_the_engine_and_what_it_needs_and_nothing_of_this_machine() -> None:
    archive = ZipFile(BytesIO(engine_archive()))
    names = archive.namelist()
    for technique in map(register.find, register.keys()):
        assert f"{technique.__module__.replace('.', '/')}.py" in names
    packages = {name.split("/")[0] for name in names}
    assert {"pint", "flexcache", "flexparser", "platformdirs", "typing_extensions.py"} <= packages
    assert "mkdocs" not in packages
    assert "pint/default_en.txt" in names
    assert any(re.fullmatch(r"pint-.*LICENSE", name) for name in names)
    assert not [name for name in names if ".." in name or "__pycache__" in name]
    for name in names:
        text = archive.read(name)
        assert str(REPOSITORY).encode() not in text
        assert sys.prefix.encode() not in text


def test_the_engine_runs_from_the_archive_alone(tmp_path: Path) -> None:
    import subprocess  # noqa: PLC0415

    ZipFile(BytesIO(engine_archive())).extractall(tmp_path)
    script = (
        "from handout_engine.amounts.reading import read_length; "
        "import handout_engine.pages.browser, pint; "
        "print(read_length('1 point').mm, pint.__file__)"
    )
    told = subprocess.run(
        [sys.executable, "-I", "-S", "-c", f"import sys; sys.path.insert(0, '.'); {script}"],
        capture_output=True, text=True, check=True, cwd=tmp_path,
    ).stdout  # fmt: skip
    assert told.startswith("127/360 ")


def test_all_names_hold_a_hash_that_changes_with_the_content(fetched: Path) -> None:
    before = runtime.find_runtime(fetched)
    assert before is not None
    for address in (before.python, before.archive, before.reader):
        assert re.search(r"-[0-9a-f]{12}(/|\.zip)$", address)
    (fetched / runtime.PACKAGE / "pyodide.mjs").write_text("changed")
    after = runtime.find_runtime(fetched)
    assert after is not None
    assert after.python != before.python
    assert (after.archive, after.reader) == (before.archive, before.reader)


def test_all_that_the_service_worker_keeps_is_published(fetched: Path, tmp_path: Path) -> None:
    found = runtime.find_runtime(fetched)
    assert found is not None
    site = tmp_path / "site"
    runtime.publish(found, site)
    script = (site / runtime.OFFLINE).read_text("utf-8")
    kept = json.loads(re.search(r"const KEPT = (\[.*?\]);", script)[1])  # type: ignore[index]
    assert kept
    for address in kept:
        assert (site / address).is_file(), address
    assert json.loads((site / found.python / runtime.CATALOGUE).read_text())["packages"] == {}


@pytest.mark.parametrize("missing", [runtime.CATALOGUE, *runtime.PYTHON_FILES])
def test_half_of_a_runtime_is_none(fetched: Path, missing: str) -> None:
    (fetched / runtime.PACKAGE / missing).unlink()
    assert runtime.find_runtime(fetched) is None


def test_without_a_runtime_the_site_is_whole_and_says_so_once(
    tmp_path: Path, caplog: pytest.LogCaptureFixture
) -> None:
    site = small_site(tmp_path, TEXT)
    with caplog.at_level(logging.INFO, logger="mkdocs"):
        built = site.build()
    assert not built.warnings
    assert [each.getMessage() for each in caplog.records].count(runtime.MISSING) == 1
    assert "Cut list" in built.article()
    assert "handout-form" not in built.page()
    assert not (built.folder / runtime.OFFLINE).exists()


def test_with_a_runtime_only_pages_that_work_something_out_have_a_form(
    tmp_path: Path, fetched: Path
) -> None:
    del fetched
    site = small_site(tmp_path, TEXT)
    site.write("handouts/ruffles/index.md", "# Ruffles\n\nWhat they are.\n")
    built = site.build()
    article = built.article()
    assert (
        article.index("One sentence.") < article.index("handout-form") < article.index("Cut list")
    )
    assert 'data-root="../../"' in article
    assert "handout-form" not in built.page("handouts/ruffles/index.html")


def test_the_lock_file_pins_the_runtime_and_names_no_registry() -> None:
    lock = (REPOSITORY / "site_src" / "package-lock.json").read_text("utf-8")
    wanted = json.loads((REPOSITORY / "site_src" / "package.json").read_text("utf-8"))
    pinned = json.loads(lock)["packages"]["node_modules/pyodide"]
    assert wanted["dependencies"] == {"pyodide": pinned["version"]}
    assert pinned["integrity"].startswith("sha512-")
    assert "://" not in lock
    assert '"resolved"' not in lock
