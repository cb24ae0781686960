"""What the reader's browser needs to run the engine: Python for the browser, and one archive.

Python for the browser is fetched by npm into `site_src/node_modules`. It is optional: without it
the site is whole and static, and has no form.
"""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

NEEDED = "pint"
"""The one package that the engine imports; what it needs in turn is found from its own record."""

PYTHON_FILES = (
    "pyodide.mjs",
    "pyodide.asm.mjs",
    "pyodide.asm.wasm",
    "python_stdlib.zip",
)
MISSING = (
    "the reader's form is left out: Python for the browser is not installed "
    "(to have it: npm ci --prefix site_src)"
)
ASSETS = Path(__file__).parent / "assets"
READER_FILES = ("reader.css",)
COMPILED = {".so", ".pyd", ".dll", ".dylib"}
EARLIEST = (1980, 1, 1, 0, 0, 0)


class NotPureError(Exception):
    """A package that the engine needs holds compiled code, which a browser cannot load."""


@dataclass(frozen=True)
class Runtime:
    """Where the files for the browser lie in the site, from its root; folders end in `/`."""

    python: str
    archive: str
    reader: str
    version: str
