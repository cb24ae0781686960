"""Files that take long to make, kept between builds: named by what they are made of.

Each is kept with a seal behind its content, which readers of PDF and PNG pass over: the hash of
its name and its content. A file without its seal was cut short, or something else was put in its
place; it is made again, and never published.
"""

from __future__ import annotations

from collections.abc import Callable
from hashlib import sha256
from pathlib import Path
from tempfile import TemporaryDirectory

_SEAL = b"\n%%sealed %s\n"


def put(target: Path, store: Path, make: Callable[[], bytes]) -> None:
    """Write a file into the site: as it was kept, or made now and kept."""
    content = kept(store)
    if content is None:
        content = make()
        _keep(store, content)
    target.parent.mkdir(parents=True, exist_ok=True)
    target.write_bytes(content)


def kept(store: Path) -> bytes | None:
    """What is kept there; None where there is nothing, or not what was kept."""
    try:
        sealed = store.read_bytes()
    except OSError:
        return None
    content = sealed[: -len(_seal(store, b""))]
    return content if sealed == content + _seal(store, content) else None


def _keep(store: Path, content: bytes) -> None:
    """Keep a file whole or not at all: a build that is broken off leaves no half of one behind."""
    store.parent.mkdir(parents=True, exist_ok=True)
    with TemporaryDirectory(dir=store.parent) as folder:
        written = Path(folder) / store.name
        written.write_bytes(content + _seal(store, content))
        written.replace(store)


def _seal(store: Path, content: bytes) -> bytes:
    """What stands behind a kept file; the name in it tells it from any other that is kept."""
    return _SEAL % sha256(store.name.encode() + b"\0" + content).hexdigest().encode()
