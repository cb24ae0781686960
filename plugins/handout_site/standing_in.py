"""A new site is built beside the last one, and takes its place only when it is whole.

A build that is refused, killed, or finds the disk full leaves the last site as it was. What a
killed build leaves behind is a hidden folder beside the site, which the next build removes: it
carries the mark of builds, and nobody holds its lock any more.

Where a folder cannot take the place of another (a disk is mounted there, or nothing may be written
beside it), the new site is made whole within the last one, hidden, and its entries take the places
of the old ones: each in one step, but not all of them together.
"""

from __future__ import annotations

import shutil
import sys
from collections.abc import Iterator
from contextlib import suppress
from dataclasses import dataclass
from errno import ENOTDIR
from itertools import count
from pathlib import Path
from secrets import token_hex
from typing import TextIO

from mkdocs.exceptions import PluginError

from handout_site.exchange import exchange
from handout_site.own_folders import (
    MARK,
    copy_hidden,
    entries,
    is_marked,
    others_file,
    remove,
    write_mark,
)

if sys.platform != "win32":
    from fcntl import LOCK_EX, LOCK_NB, flock

BUILDING, LAST, ASIDE = "building", "last", "before"
"""Parts of the names of folders: of the new site, of the last one, of one that no build made."""


@dataclass
class NewSite:
    """A site that is built in `work`, to stand in `site`; `mark` is open, for it holds the lock."""

    site: Path
    work: Path
    mark: TextIO

    def put_in_place(self) -> Path | None:
        """Replace the last site, which is given up.

        A folder that no build made is set aside instead, and where it is now is given back.
        PluginError says why the new site cannot stand there; the last one is as it was.
        """
        try:
            write_mark(self.work, self.mark)
            return self._replace()
        except OSError as error:
            reason = error.strerror or error
            raise PluginError(f"the new site cannot be put into {self.site}: {reason}") from error
        finally:
            self.give_up()

    def give_up(self) -> None:
        """Remove what is left in the folder that was built in."""
        self.mark.close()
        remove(self.work)

    def _replace(self) -> Path | None:
        if self.work.parent != self.site:
            with suppress(OSError):
                return self._replace_whole()
        self._replace_each()
        return None

    def _replace_whole(self) -> Path | None:
        """Put the new folder in the place of the old one; OSError where the system cannot."""
        copy_hidden(self.site, self.work)
        ours = is_marked(self.site)
        if ours and exchange(self.work, self.site):
            return None
        if not ours and others_file(self.site) is None:
            self.work.rename(self.site)
            return None
        old = _beside(self.site, LAST) if ours else _set_aside(self.site)
        self.site.rename(old)
        try:
            self.work.rename(self.site)
        except OSError:
            old.rename(self.site)
            raise
        if ours:
            remove(old)
        return None if ours else old

    def _replace_each(self) -> None:
        """Put each entry of the new folder in the place of the old one of its name."""
        _refuse_unmarked(self.site)
        within, last = _beside(self.site, BUILDING, self.site), _beside(self.site, LAST, self.site)
        if self.work.parent == self.site:
            within = self.work
        try:
            for folder in {within, last} - {self.work}:
                folder.mkdir()
                shutil.copyfile(self.work / MARK, folder / MARK)
            if within != self.work:
                for path in entries(self.work):
                    shutil.move(path, within / path.name)
            for path in entries(self.site):
                shutil.move(path, last / path.name)
                if (within / path.name).exists():
                    shutil.move(within / path.name, path)
            for path in [*entries(within), within / MARK]:
                shutil.move(path, self.site / path.name)
        finally:
            remove(last)
            remove(within)


def begin(place: Path) -> NewSite:
    """A new folder for the site that is to stand in `place`.

    PluginError says where there can be none, and why.
    """
    site = place.resolve()
    try:
        if site.exists() and not site.is_dir():
            raise NotADirectoryError(ENOTDIR, "it is a file")
        site.parent.mkdir(parents=True, exist_ok=True)
        _clear_up(site)
        work = _new_folder(site)
        mark = (work / MARK).open("w", encoding="utf-8", errors="surrogateescape", newline="\n")
        _lock(mark)
        write_mark(work, mark)
    except OSError as error:
        raise PluginError(f"no site can be built in {place}: {error.strerror or error}") from error
    return NewSite(site, work, mark)


def refuse_others(folder: Path) -> None:
    """Leave a folder alone that holds what no build put there: PluginError says so."""
    other = others_file(folder)
    if other is not None:
        raise PluginError(
            f"{folder} holds other files, which a build would delete, such as {other}; "
            "give another folder, or an empty one"
        )


def _refuse_unmarked(folder: Path) -> None:
    """Leave a folder alone that no build made, unless there is nothing in it."""
    if not is_marked(folder):
        refuse_others(folder)


def _new_folder(site: Path) -> Path:
    """An empty folder beside a site; hidden within it where nothing may be written beside it."""
    work = _beside(site, BUILDING)
    try:
        work.mkdir()
    except OSError:
        if not site.is_dir():
            raise
        _refuse_unmarked(site)
        work = _beside(site, BUILDING, site)
        work.mkdir()
    if site.exists():
        shutil.copymode(site, work)
    return work


def _clear_up(site: Path) -> None:
    """Remove what killed builds left; a site that one of them was just replacing is put back."""
    for parent in (site.parent, site):
        for part in (LAST, BUILDING):
            for folder in list(_left(site, part, parent)):
                if part == LAST and not site.exists():
                    folder.rename(site)
                else:
                    remove(folder)


def _left(site: Path, part: str, parent: Path) -> Iterator[Path]:
    """Folders that builds of a site have left, and no build works in."""
    if not parent.is_dir():
        return
    for path in parent.iterdir():
        ours = path.name.startswith(f".{site.name}.{part}-") and not path.is_symlink()
        if ours and is_marked(path) and not _is_held(path / MARK):
            yield path


def _beside(site: Path, part: str, parent: Path | None = None) -> Path:
    """A new hidden name for a folder of a site: beside it, or in another folder."""
    return (parent or site.parent) / f".{site.name}.{part}-{token_hex(4)}"


def _set_aside(site: Path) -> Path:
    """A free name for a folder that stands where a site is to be."""
    free = site.with_name(f"{site.name}.{ASIDE}")
    for number in count(2):
        if not free.exists():
            break
        free = site.with_name(f"{site.name}.{ASIDE}-{number}")
    return free


def _lock(mark: TextIO) -> None:
    """Hold a mark as long as it is open and its process lives."""
    if sys.platform != "win32":
        flock(mark, LOCK_EX | LOCK_NB)


def _is_held(mark: Path) -> bool:
    """Whether a build that lives holds a mark."""
    if sys.platform == "win32":
        return False
    try:
        with mark.open() as opened:
            flock(opened, LOCK_EX | LOCK_NB)
    except OSError:
        return True
    return False
