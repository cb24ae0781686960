"""Files that take long to make, kept between builds: named by their content, so made but once."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from tempfile import TemporaryDirectory


def put(target: Path, store: Path, make: Callable[[], bytes]) -> None:
    """Write a file into the site: as it was kept, or made now and kept."""
    if not store.is_file():
        _keep(store, make())
    target.parent.mkdir(parents=True, exist_ok=True)
    target.write_bytes(store.read_bytes())


def _keep(store: Path, content: bytes) -> None:
    """Keep a file whole or not at all: a build that is broken off leaves no half of one behind."""
    store.parent.mkdir(parents=True, exist_ok=True)
    with TemporaryDirectory(dir=store.parent) as folder:
        written = Path(folder) / store.name
        written.write_bytes(content)
        written.replace(store)
