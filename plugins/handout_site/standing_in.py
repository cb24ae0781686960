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
    is_held,
    is_marked,
    new_mark,
    others_file,
    remove,
    write_mark,
)

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
        last = _beside(self.site, LAST, self.site)
        new = self.work
        try:
            if self.work.parent != self.site:
                new = _beside(self.site, BUILDING, self.site)
                _new_marked(new, self.work / MARK)
                _move_all(self.work, new)
            _new_marked(last, self.work / MARK)
            self._exchange_each(new, last)
        finally:
            remove(last)
            remove(new)

    def _exchange_each(self, new: Path, last: Path) -> None:
        """Move all entries of the site into `last`, and those of `new` into the site.

        Where one cannot be moved, all that were moved before are moved back.
        """
        moved: list[tuple[Path, Path]] = []

        def move(source: Path, target: Path) -> None:
            shutil.move(source, target)
            moved.append((source, target))

        try:
            for path in entries(self.site):
                move(path, last / path.name)
                if (new / path.name).exists():
                    move(new / path.name, path)
            for path in entries(new):
                move(path, self.site / path.name)
            shutil.move(new / MARK, self.site / MARK)
        except OSError:
            for source, target in reversed(moved):
                shutil.move(target, source)
            raise


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
        try:
            mark = new_mark(work)
        except OSError:
            remove(work)
            raise
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


def _new_marked(folder: Path, mark: Path) -> None:
    """A new folder with a copy of a mark."""
    folder.mkdir()
    shutil.copyfile(mark, folder / MARK)


def _move_all(source: Path, target: Path) -> None:
    for path in entries(source):
        shutil.move(path, target / path.name)


def _clear_up(site: Path) -> None:
    """Remove what killed builds left; a site that one of them was just replacing is put back."""
    for parent in (site.parent, site):
        for part in (LAST, BUILDING):
            for folder in _left(site, part, parent):
                if part == LAST and not site.exists():
                    folder.rename(site)
                else:
                    remove(folder)


def _left(site: Path, part: str, parent: Path) -> Iterator[Path]:
    """Folders that builds of a site have left, and no build works in."""
    try:
        every = list(parent.iterdir())
    except OSError:
        return
    for path in every:
        ours = path.name.startswith(f".{site.name}.{part}-") and not path.is_symlink()
        if ours and is_marked(path) and not is_held(path / MARK):
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
