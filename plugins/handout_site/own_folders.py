"""Folders that builds made: known by a mark that lists what was put into each.

What a folder holds beside that belongs to somebody else, and no build may delete it. Hidden files
at its top (of version control, of a server) are nobody's business here and stay, as with MkDocs.
"""

from __future__ import annotations

import os
import shutil
import sys
from collections.abc import Iterator
from contextlib import suppress
from pathlib import Path
from typing import TextIO

if sys.platform != "win32":
    from fcntl import LOCK_EX, LOCK_NB, flock

MARK = ".handouts-site"
_FIRST_LINE = "The next build of these handouts replaces this folder. What was put into it:\n"


def is_marked(folder: Path) -> bool:
    """Whether a build made this folder."""
    return bool(_lines(folder))


def others_file(folder: Path) -> str | None:
    """A file in a folder that no build put there, by its path from the folder; None if none is."""
    own = set(_lines(folder))
    return next((name for name in _files(folder) if name not in own), None)


def new_mark(folder: Path) -> TextIO:
    """The mark of a folder, written, held, and open to be written again."""
    mark = (folder / MARK).open("w", encoding="utf-8", errors="surrogateescape", newline="\n")
    try:
        _lock(mark)
        write_mark(folder, mark)
    except OSError:
        mark.close()
        raise
    return mark


def write_mark(folder: Path, mark: TextIO) -> None:
    """Write the mark of a folder, opened as `mark`, with the list of all that is in it."""
    mark.seek(0)
    mark.write(_FIRST_LINE)
    mark.writelines(f"{name}\n" for name in sorted(_files(folder)))
    mark.truncate()
    mark.flush()


def is_held(mark: Path) -> bool:
    """Whether a build that lives holds a mark."""
    if sys.platform == "win32":
        return False
    try:
        with mark.open() as opened:
            flock(opened, LOCK_EX | LOCK_NB)
    except OSError:
        return True
    return False


def entries(folder: Path) -> list[Path]:
    """What stands at the top of a folder, save what is hidden."""
    return sorted(path for path in folder.iterdir() if not path.name.startswith("."))


def copy_hidden(source: Path, target: Path) -> None:
    """Copy what is hidden at the top of a folder into another, save the mark and what is there."""
    for path in source.glob(".*"):
        place = target / path.name
        if path.name == MARK or place.exists():
            continue
        if path.is_dir() and not path.is_symlink():
            shutil.copytree(path, place, symlinks=True)
        else:
            shutil.copy2(path, place, follow_symlinks=False)


def remove(folder: Path) -> None:
    """Remove a folder as far as that can be done."""
    shutil.rmtree(folder, ignore_errors=True)


def _lock(mark: TextIO) -> None:
    """Hold a mark as long as it is open and its process lives, where the disk knows of locks."""
    if sys.platform != "win32":
        with suppress(OSError):
            flock(mark, LOCK_EX | LOCK_NB)


def _lines(folder: Path) -> list[str]:
    """The lines of a folder's mark, its first one first; none where there is no mark."""
    try:
        text = (folder / MARK).read_text(encoding="utf-8", errors="surrogateescape")
    except OSError:
        return []
    return text.split("\n") if text.startswith(_FIRST_LINE) else []


def _files(folder: Path) -> Iterator[str]:
    """All files of a folder, by their paths from there, without what is hidden at its top."""
    for place, folders, files in os.walk(folder):
        here = Path(place)
        if here == folder:
            folders[:] = [name for name in folders if not name.startswith(".")]
        linked = [name for name in folders if (here / name).is_symlink()]
        paths = ((here / name).relative_to(folder).as_posix() for name in [*files, *linked])
        yield from (path for path in paths if not path.startswith("."))
