"""The last good site stays, byte for byte, until a new one is whole."""

from __future__ import annotations

import errno
import logging
import os
import shutil
import signal
import subprocess
import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from itertools import count
from pathlib import Path
from shutil import copytree

import pytest
from mkdocs import utils
from mkdocs.exceptions import Abort

from handout_site import standing_in
from handout_site.own_folders import MARK
from handout_site.standing_in import NewSite, begin
from small_sites import SmallSite, build_with, site_of, slips_of
from written_pages import page, ruffle

GOOD = {
    "ruffles/one.md": page(ruffle("sleeve", "depth: 2 in")),
    "ruffles/two.md": page(ruffle("hem", "depth: 3 in")),
}
REFUSED = page(ruffle("sleeve", "depth: 2"))
CHANGED = page(ruffle("sleeve", "depth: 4 in"))


def contents(folder: Path) -> dict[str, bytes]:
    """All of a folder, hidden files too, by address."""
    files = (path for path in folder.rglob("*") if path.is_file())
    return {path.relative_to(folder).as_posix(): path.read_bytes() for path in files}


def beside(site: SmallSite) -> list[str]:
    """What lies beside the site's sources."""
    sources = {"handouts", "scenarios", "site_src"}
    return sorted(path.name for path in site.folder.iterdir() if path.name not in sources)


@contextmanager
def mounted(place: Path, options: str) -> Iterator[Path]:
    """A disk of its own, mounted for a test; skips it where that is not allowed."""
    place.mkdir(parents=True)
    words = ["mount", "-t", "tmpfs", "-o", options, "tmpfs", str(place)]
    try:
        subprocess.run(words, check=True, capture_output=True)
    except (OSError, subprocess.CalledProcessError):
        pytest.skip("no disk can be mounted here")
    try:
        yield place
    finally:
        subprocess.run(["umount", str(place)], check=True)


@pytest.fixture(scope="module")
def built_once(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("built")
    site_of(folder, GOOD).build()
    return folder


@pytest.fixture
def site(built_once: Path, tmp_path: Path) -> SmallSite:
    """A small site that is built and whole."""
    made = site_of(tmp_path, GOOD)
    copytree(built_once / "site", tmp_path / "site")
    return made


@pytest.fixture
def last(site: SmallSite) -> Iterator[dict[str, bytes]]:
    """What the last good site holds; it must hold the same afterwards, and nothing lie beside."""
    before = contents(site.folder / "site")
    assert "handouts/ruffles/one.html" in before
    yield before
    assert contents(site.folder / "site") == before
    assert beside(site) == ["site"]


@pytest.mark.usefixtures("last")
def test_a_refused_block_leaves_the_last_site(site: SmallSite):
    site.write("handouts/ruffles/two.md", REFUSED)
    with pytest.raises(Abort):
        site.build()


@pytest.mark.usefixtures("last")
def test_a_warning_leaves_the_last_site_when_it_fails_the_build(site: SmallSite):
    site.write("handouts/ruffles/two.md", "# Two\n\n![A ruffle](gone.png)\n")
    with pytest.raises(Abort, match="1 warnings in strict mode"):
        site.build()


@pytest.mark.usefixtures("last")
def test_a_strict_build_that_is_quiet_fails_for_a_warning_too(site: SmallSite):
    site.write("handouts/ruffles/two.md", "# Two\n\n![A ruffle](gone.png)\n")
    assert mkdocs(site, "--quiet") == 1


def test_a_warning_is_no_obstacle_where_the_build_is_not_strict(site: SmallSite):
    site.write("handouts/ruffles/two.md", "# Other\n\n![A ruffle](gone.png)\n")
    config = site.config()
    config.strict = False
    assert "Other" in build_with(config).page("handouts/ruffles/two.html")


@pytest.mark.usefixtures("last")
def test_a_scenario_that_cannot_be_read_leaves_the_last_site(site: SmallSite):
    site.write("scenarios/guild.yml", "paper: parchment\n")
    with pytest.raises(Abort):
        site.build()


@pytest.mark.parametrize("written", [0, 36])
@pytest.mark.usefixtures("last")
def test_a_full_disk_leaves_the_last_site(
    written: int, site: SmallSite, monkeypatch: pytest.MonkeyPatch
):
    """Full after so many files."""
    real, counted = utils.write_file, []

    def write_file(content: bytes, place: str) -> None:
        counted.append(place)
        if len(counted) > written:
            raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))
        real(content, place)

    def copy_file(source: str, place: str) -> None:
        write_file(Path(source).read_bytes(), place)

    monkeypatch.setattr(utils, "write_file", write_file)
    monkeypatch.setattr(utils, "copy_file", copy_file)
    with pytest.raises(Abort):
        site.build()


def test_a_disk_that_is_full_indeed_leaves_the_last_site(tmp_path: Path):
    with mounted(tmp_path / "disk", "size=8m") as disk:
        site = site_of(tmp_path / "sources", GOOD)
        place = disk / "www"
        config = site.config()
        config.site_dir = str(place)
        build_with(config)
        before = contents(place)
        filler = disk / "filler"
        with pytest.raises(OSError, match="No space left"), filler.open("wb") as opened:
            while True:
                opened.write(bytes(2**16))
        os.truncate(filler, filler.stat().st_size - 2**20)
        config = site.config()
        config.site_dir = str(place)
        with pytest.raises(Abort):
            build_with(config)
        assert contents(place) == before
        assert sorted(path.name for path in disk.iterdir()) == ["filler", "www"]


KILLED = """
import os, signal

def on_{event}(*args, **kwargs):
    os.kill(os.getpid(), signal.SIGKILL)
"""


def mkdocs(site: SmallSite, *options: str) -> int:
    command = [sys.executable, "-m", "mkdocs", "build", "--strict", "-f", str(site.config_file)]
    return subprocess.run([*command, *options], capture_output=True, check=False).returncode


@pytest.mark.parametrize("event", ["post_page", "post_build"])
def test_a_killed_build_leaves_the_last_site(event: str, site: SmallSite):
    before = contents(site.folder / "site")
    settings = site.config_file.read_text(encoding="utf-8")
    site.write("site_src/kill.py", KILLED.format(event=event))
    site.write("site_src/mkdocs.yml", settings + "hooks: [kill.py]\n")
    site.write("handouts/ruffles/two.md", CHANGED)
    assert mkdocs(site) == -signal.SIGKILL
    assert contents(site.folder / "site") == before
    assert len(beside(site)) == 2, "what the killed build has left"
    site.write("site_src/mkdocs.yml", settings)
    after = contents(site.build().folder)
    assert after.keys() == before.keys() and after != before
    assert beside(site) == ["site"], "the next build clears up"


def test_a_build_that_fails_first_leaves_no_site(tmp_path: Path):
    site = site_of(tmp_path, {"ruffles/one.md": REFUSED})
    assert slips_of(site)
    assert beside(site) == []


def test_a_new_site_has_no_page_of_the_last_one(site: SmallSite):
    (site.folder / "handouts/ruffles/two.md").unlink()
    built = site.build()
    assert "handouts/ruffles/one.html" in built.pages()
    assert "handouts/ruffles/two.html" not in built.pages()


def fill(place: Path, text: str) -> None:
    """A new site, to stand in a place."""
    new = begin(place)
    for name in ("index.html", f"{text}.html", "assets/style.css"):
        (new.work / name).parent.mkdir(exist_ok=True)
        (new.work / name).write_text(text)
    new.put_in_place()


def test_hidden_files_at_the_top_of_the_site_stay(tmp_path: Path):
    """MkDocs leaves them alone too: what a server or version control keeps there."""
    place = tmp_path / "site"
    fill(place, "first")
    (place / ".git").mkdir()
    (place / ".git" / "HEAD").write_text("ref")
    (place / ".htaccess").write_text("deny")
    fill(place, "second")
    assert (place / ".git" / "HEAD").read_text() == "ref"
    assert (place / ".htaccess").read_text() == "deny"
    assert (place / "index.html").read_text() == "second"


def test_the_folder_keeps_who_may_read_it(tmp_path: Path):
    fill(tmp_path / "site", "first")
    (tmp_path / "site").chmod(0o750)
    fill(tmp_path / "site", "second")
    assert (tmp_path / "site").stat().st_mode & 0o777 == 0o750


def test_a_site_behind_a_link_is_replaced_where_it_lies(tmp_path: Path):
    (tmp_path / "disk" / "www").mkdir(parents=True)
    (tmp_path / "site").symlink_to(tmp_path / "disk" / "www")
    for text in ("first", "second"):
        fill(tmp_path / "site", text)
        assert (tmp_path / "disk" / "www" / "index.html").read_text() == text
    assert (tmp_path / "site").is_symlink()
    assert [path.name for path in (tmp_path / "disk").iterdir()] == ["www"]


def test_a_folder_that_no_build_made_is_set_aside(site: SmallSite, caplog):
    (site.folder / "site" / MARK).unlink()
    before = contents(site.folder / "site")
    with caplog.at_level(logging.INFO, logger="mkdocs.plugins.handouts"):
        built = site.build()
    assert "index.html" in built.pages()
    assert beside(site) == ["site", "site.before"]
    assert contents(site.folder / "site.before") == before
    assert f"are now in {site.folder / 'site.before'}" in caplog.text
    (site.folder / "site" / MARK).unlink()
    site.build()
    assert beside(site) == ["site", "site.before", "site.before-2"]


def test_every_plugin_is_told_the_same_folder_and_the_settings_are_as_they_were(site: SmallSite):
    config = site.config()
    own = config.site_dir
    seen = []
    for event in ("files", "page_context", "post_build"):
        config.plugins.events[event].insert(
            0, lambda *_, config, **__: seen.append(config.site_dir)
        )
    build_with(config)
    assert len(set(seen)) == 1 and len(seen) > 3
    assert config.site_dir == own and own not in seen


def unsupported(*_: Path) -> bool:
    return False


def test_where_folders_cannot_be_exchanged_one_is_moved_after_the_other(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
):
    monkeypatch.setattr(standing_in, "exchange", unsupported)
    for text in ("first", "second"):
        fill(tmp_path / "site", text)
        assert (tmp_path / "site" / "index.html").read_text() == text
    assert [path.name for path in tmp_path.iterdir()] == ["site"]


@pytest.mark.usefixtures("last")
def test_a_site_that_was_just_being_replaced_is_put_back(site: SmallSite):
    (site.folder / "site").rename(site.folder / ".site.last-0")
    site.write("handouts/ruffles/two.md", REFUSED)
    with pytest.raises(Abort):
        site.build()


def test_only_what_carries_the_mark_is_cleared_up(tmp_path: Path):
    letter = tmp_path / ".site.building-mine" / "letter.txt"
    letter.parent.mkdir()
    letter.write_text("Dear guild")
    fill(tmp_path / "site", "first")
    assert letter.read_text() == "Dear guild"


def test_two_builds_at_once_do_not_clear_up_one_another(tmp_path: Path):
    first, second = begin(tmp_path / "site"), begin(tmp_path / "site")
    for number, new in enumerate((first, second), 1):
        (new.work / "index.html").write_text(f"site {number}")
    for number, new in enumerate((first, second), 1):
        new.put_in_place()
        assert (tmp_path / "site" / "index.html").read_text() == f"site {number}"
    assert [path.name for path in tmp_path.iterdir()] == ["site"]


def nothing_is_written_beside(monkeypatch: pytest.MonkeyPatch, site: Path) -> None:
    """Let nothing be written beside a site."""
    real = Path.mkdir

    def mkdir(path: Path, *args: object, **options: object) -> None:
        if path.parent == site.parent and path.name.startswith("."):
            raise PermissionError(errno.EACCES, os.strerror(errno.EACCES))
        real(path, *args, **options)

    monkeypatch.setattr(Path, "mkdir", mkdir)


def mount_point(folder: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    del monkeypatch
    return folder / "disk"


def nothing_beside(folder: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    place = folder / "disk" / "www"
    place.mkdir()
    nothing_is_written_beside(monkeypatch, place)
    return place


@pytest.mark.parametrize("where", [mount_point, nothing_beside])
def test_where_no_folder_can_take_the_place_its_entries_do(
    where: Callable[[Path, pytest.MonkeyPatch], Path], tmp_path: Path, monkeypatch
):
    with mounted(tmp_path / "disk", "size=1m"):
        place = where(tmp_path, monkeypatch)
        for text in ("first", "second"):
            fill(place, text)
            assert (place / "index.html").read_text() == text
            assert (place / "assets" / "style.css").read_text() == text
            names = sorted(path.name for path in place.iterdir())
            assert names == sorted([MARK, "assets", "index.html", f"{text}.html"])
        (place / "letter.txt").write_text("Dear guild")
        (place / MARK).unlink()
        with pytest.raises(standing_in.PluginError, match="holds other files"):
            fill(place, "third")
        assert (place / "letter.txt").read_text() == "Dear guild"
        assert (place / "index.html").read_text() == "second"
    assert [path.name for path in tmp_path.iterdir()] == ["disk"]


@pytest.mark.parametrize("failing", range(1, 11))
def test_where_an_entry_cannot_be_moved_all_that_were_moved_go_back(
    failing: int, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
):
    """Also what has no predecessor: it must not stay beside the pages of the last site."""
    place = tmp_path / "site"
    fill(place, "first")
    before = contents(place)
    new = begin(place)
    for name in ("about.html", "index.html", "zigzag.html"):
        (new.work / name).write_text("new")
    real, moves = shutil.move, count(1)

    def move(source: Path, target: Path) -> object:
        if next(moves) == failing:
            raise OSError(errno.EIO, os.strerror(errno.EIO))
        return real(source, target)

    def refused(_: NewSite) -> None:
        raise OSError(errno.EBUSY, os.strerror(errno.EBUSY))

    monkeypatch.setattr(NewSite, "_replace_whole", refused)
    monkeypatch.setattr(shutil, "move", move)
    with pytest.raises(standing_in.PluginError, match="cannot be put into"):
        new.put_in_place()
    assert contents(place) == before


def test_a_file_in_the_place_of_the_site_is_one_sentence(tmp_path: Path):
    (tmp_path / "site").write_text("Dear guild")
    with pytest.raises(standing_in.PluginError, match="it is a file"):
        begin(tmp_path / "site")
