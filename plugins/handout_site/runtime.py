"""What the reader's browser needs to run the engine: Python for the browser, and one archive.

Python for the browser is fetched by npm into `site_src/node_modules`. It is optional: without it
the site is whole and static, and has no form.
"""

from __future__ import annotations

import json
import shutil
from dataclasses import dataclass
from hashlib import sha256
from pathlib import Path

from handout_site.engine_archive import engine_archive

PACKAGE = Path("node_modules", "pyodide")
PYTHON_FILES = (
    "pyodide.mjs",
    "pyodide.asm.mjs",
    "pyodide.asm.wasm",
    "python_stdlib.zip",
    "package.json",  # says whose work this is, its licence, and where its source lies
)
MISSING = (
    "the reader's form is left out, since Python for the browser is not installed; "
    "to have it: npm ci --prefix site_src"
)
CATALOGUE = "pyodide-lock.json"
ASSETS = Path(__file__).parent / "assets"
READER_FILES = (
    "reader.css",
    "reader.js",
    "address.js",
    "engine.js",
    "keep.js",
    "naming.js",
    "sheet.js",
    "true_scale.js",
    "worker.js",
)
OFFLINE = "offline.js"
NOT_KEPT = "offline.html"
"""What the service worker shows without a network where it has not kept a page."""


@dataclass(frozen=True)
class Runtime:
    """The files for the browser: where they come from, and where they lie in the site.

    `python`, `archive` and `reader` are addresses from the site's root; the first and the last
    are folders. Each has a hash of its content in its name, so that it never changes.
    """

    source: Path
    engine: bytes
    python: str
    archive: str
    reader: str

    @property
    def python_files(self) -> list[str]:
        """The addresses of what a recalculation fetches, from the site's root."""
        fetched = (name for name in PYTHON_FILES if name != "package.json")
        return [self.archive, *(self.python + name for name in (CATALOGUE, *fetched))]

    @property
    def reader_files(self) -> list[str]:
        """The addresses of the page's own scripts and styles, from the site's root."""
        return [self.reader + name for name in READER_FILES]


def find_runtime(site_src: Path) -> Runtime | None:
    """The runtime in `site_src/node_modules`; None when npm has not fetched it."""
    source = site_src / PACKAGE
    if not all((source / name).is_file() for name in (CATALOGUE, *PYTHON_FILES)):
        return None
    version = json.loads((source / "package.json").read_text(encoding="utf-8"))["version"]
    engine = engine_archive()
    return Runtime(
        source=source,
        engine=engine,
        python=f"assets/runtime-{version}-{_hash_of_files(source, PYTHON_FILES)}/",
        archive=f"assets/engine-{_hash(engine)}.zip",
        reader=f"assets/reader-{_hash_of_files(ASSETS, READER_FILES)}/",
    )


def publish(runtime: Runtime, site_dir: Path) -> None:
    """Write the runtime's files into a built site."""
    _copy(runtime.source, PYTHON_FILES, site_dir / runtime.python)
    (site_dir / runtime.python / CATALOGUE).write_text(_empty_catalogue(runtime), encoding="utf-8")
    _copy(ASSETS, READER_FILES, site_dir / runtime.reader)
    (site_dir / runtime.archive).write_bytes(runtime.engine)
    (site_dir / OFFLINE).write_text(_offline_script(runtime), encoding="utf-8")


def _empty_catalogue(runtime: Runtime) -> str:
    """The catalogue of packages without any: all that the engine needs is in its archive."""
    catalogue = json.loads((runtime.source / CATALOGUE).read_text(encoding="utf-8"))
    return json.dumps({"info": catalogue["info"], "packages": {}}, sort_keys=True)


def _offline_script(runtime: Runtime) -> str:
    """The service worker, opened by what it is given: the list of what it keeps is its version."""
    kept = runtime.reader_files + runtime.python_files
    version = _hash("\n".join(kept).encode())
    script = (ASSETS / OFFLINE).read_text(encoding="utf-8")
    given = {
        "VERSION": version,
        "KEPT": kept,
        "NOT_KEPT": (ASSETS / NOT_KEPT).read_text(encoding="utf-8"),
    }
    lines = (f"const {name} = {json.dumps(value)};\n" for name, value in given.items())
    return "".join(lines) + script


def _copy(source: Path, names: tuple[str, ...], target: Path) -> None:
    target.mkdir(parents=True, exist_ok=True)
    for name in names:
        shutil.copyfile(source / name, target / name)


def _hash_of_files(folder: Path, names: tuple[str, ...]) -> str:
    return _hash(b"".join(_hash((folder / name).read_bytes()).encode() for name in names))


def _hash(content: bytes) -> str:
    return sha256(content).hexdigest()[:12]
