"""The strict content policy that a built site works under, for publishers to set as a header.

Scripts run from the site itself and nowhere else. Those that the theme writes into its pages are
allowed one by one, by the hash of their text, so that no other inline script can run.
"""

from __future__ import annotations

import re
from base64 import b64encode
from hashlib import sha256
from html.parser import HTMLParser
from pathlib import Path

NAME = "content-policy.txt"
_SCRIPT = re.compile(r"<script\b.*?</script\s*>", re.DOTALL | re.IGNORECASE)
_RUNS = {"", "module", "text/javascript", "application/javascript"}


def content_policy(site_dir: Path) -> str:
    """The value of the `Content-Security-Policy` header for a built site."""
    scripts = {script for page in site_dir.rglob("*.html") for script in inline_scripts(page)}
    hashes = sorted(_hash(script) for script in scripts)
    rules = {
        "default-src": ["'self'"],
        "script-src": ["'self'", "'wasm-unsafe-eval'", *hashes],
        "style-src": ["'self'", "'unsafe-inline'"],
        "img-src": ["'self'", "data:"],
        "worker-src": ["'self'"],
        "connect-src": ["'self'"],
        "object-src": ["'none'"],
        "base-uri": ["'self'"],
        "form-action": ["'self'"],
        "frame-ancestors": ["'self'"],
    }
    return "; ".join(f"{name} {' '.join(allowed)}" for name, allowed in rules.items())


def headers(site_dir: Path) -> dict[str, str]:
    """All headers a publisher should send with every file of the site."""
    return {
        "Content-Security-Policy": content_policy(site_dir),
        "Referrer-Policy": "same-origin",
        "X-Content-Type-Options": "nosniff",
    }


def write_headers(site_dir: Path) -> None:
    """Write the headers into the site, one a line, for its publisher to copy."""
    lines = [f"{name}: {value}\n" for name, value in headers(site_dir).items()]
    (site_dir / NAME).write_text("".join(lines), encoding="utf-8")


def inline_scripts(page: Path) -> list[str]:
    """The scripts that run and that are written in a page itself."""
    finder = _ScriptFinder()
    # Parsing whole pages would cost a good part of the build, so only their scripts are parsed.
    finder.feed("".join(_SCRIPT.findall(page.read_text(encoding="utf-8"))))
    return finder.found


def _hash(script: str) -> str:
    return f"'sha256-{b64encode(sha256(script.encode()).digest()).decode()}'"


class _ScriptFinder(HTMLParser):
    """Collects the text of each inline script."""

    def __init__(self) -> None:
        super().__init__(convert_charrefs=False)
        self.found: list[str] = []
        self.inside = False

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        given = dict(attrs)
        kind = (given.get("type") or "").lower()
        self.inside = tag == "script" and "src" not in given and kind in _RUNS
        if self.inside:
            self.found.append("")

    def handle_endtag(self, tag: str) -> None:
        if tag == "script":
            self.inside = False

    def handle_data(self, data: str) -> None:
        if self.inside:
            self.found[-1] += data
