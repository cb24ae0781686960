"""Files that take long to make, kept between builds: named by their content, so made but once."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path


def put(target: Path, store: Path, make: Callable[[], bytes]) -> None:
    """Write a file into the site: as it was kept, or made now and kept."""
    if not store.is_file():
        store.parent.mkdir(parents=True, exist_ok=True)
        store.write_bytes(make())
    target.parent.mkdir(parents=True, exist_ok=True)
    target.write_bytes(store.read_bytes())
