"""The engine and the pure-Python packages it needs, in one archive for the reader's browser.

Built from the installed packages, the same bytes at every build of the same versions.
"""

from __future__ import annotations

from collections.abc import Iterator
from importlib.metadata import Distribution, distribution
from io import BytesIO
from pathlib import Path, PurePosixPath
from zipfile import ZIP_DEFLATED, ZipFile, ZipInfo

from packaging.requirements import Requirement

import handout_engine

NEEDED = "pint"
"""The one package that the engine imports; what that needs in turn, its own record says."""

COMPILED = {".so", ".pyd", ".dll", ".dylib"}
RECORDS = {"METADATA", "LICENSE", "LICENSE.txt", "AUTHORS", "COPYING"}
LEFT_OUT = {"__pycache__", "testsuite"}
EARLIEST = (1980, 1, 1, 0, 0, 0)


class NotPureError(Exception):
    """A package that the engine needs holds compiled code, which a browser cannot load."""


def engine_archive() -> bytes:
    """The archive as bytes; raises NotPureError when a package cannot run in a browser."""
    contents = dict(_engine_files())
    for package in _needed_packages(NEEDED):
        contents.update(_package_files(package))
    kept = BytesIO()
    with ZipFile(kept, "w") as archive:
        for name in sorted(contents):
            entry = ZipInfo(name, EARLIEST)
            entry.compress_type = ZIP_DEFLATED
            archive.writestr(entry, contents[name].read_bytes())
    return kept.getvalue()


def _engine_files() -> Iterator[tuple[str, Path]]:
    """The engine's modules, wherever it is installed or lies."""
    root = Path(handout_engine.__path__[0])
    for path in root.rglob("*.py"):
        yield str(PurePosixPath(root.name, *path.relative_to(root).parts)), path


def _needed_packages(name: str, found: dict[str, Distribution] | None = None) -> list[Distribution]:
    """A package and all that it needs, whatever needs it, each once."""
    found = {} if found is None else found
    if name not in found:
        found[name] = distribution(name)
        for line in found[name].requires or ():
            needed = Requirement(line)
            if needed.marker is None or needed.marker.evaluate({"extra": ""}):
                _needed_packages(needed.name.lower().replace("_", "-"), found)
    return list(found.values())


def _package_files(package: Distribution) -> Iterator[tuple[str, Path]]:
    """The files of a package that a browser needs, and those that say whose work it is."""
    for file in package.files or ():
        if ".." in file.parts or LEFT_OUT & set(file.parts):
            continue
        if file.suffix in COMPILED:
            raise NotPureError(f"{package.name}: {file} is compiled; a browser cannot load it")
        record = file.parts[0].endswith(".dist-info")
        if not record or file.name in RECORDS:
            yield file.as_posix(), Path(str(file.locate()))
