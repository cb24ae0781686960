"""The strict content policy that a built site works under, for publishers to set as a header.

Scripts run from the site itself and nowhere else. Those that the theme writes into its pages are
allowed one by one, by the hash of their text, so that no other inline script can run. They are read
from pages that hold nothing but the theme: whatever an author could get into a page of the site,
by a title or by a line of its text, is not among them.
"""

from __future__ import annotations

import re
from base64 import b64encode
from collections.abc import Iterable
from hashlib import sha256
from html.parser import HTMLParser
from pathlib import Path
from urllib.parse import urlsplit

from jinja2 import Environment
from mkdocs.commands.build import get_context
from mkdocs.config.defaults import MkDocsConfig
from mkdocs.structure.files import File, Files
from mkdocs.structure.nav import Navigation
from mkdocs.structure.pages import Page
from mkdocs.utils import get_relative_url, is_error_template

NAME = "content-policy.txt"
_SCRIPT = re.compile(r"<script\b.*?</script\s*>", re.DOTALL | re.IGNORECASE)
_RUNS = {"", "module", "text/javascript", "application/javascript"}
_PAGE = "main.html"


def known_scripts(env: Environment, config: MkDocsConfig, files: Files) -> frozenset[str]:
    """The texts of the scripts that the theme itself, and what is put over it, writes into pages.

    A page's scripts hang on its template and on how deep it lies, and on nothing else.
    """
    found: set[str] = set()
    pages = [file.page for file in files.documentation_pages() if file.page is not None]
    kinds = {
        (str(page.meta.get("template", _PAGE)), get_relative_url(".", page.url)): page
        for page in pages
    }
    for (template, _), page in kinds.items():
        found.update(inline_scripts(_empty_page(env, template, config, page.file.src_uri)))
    for template in sorted(config.theme.static_templates):
        if template.endswith(".html"):
            found.update(inline_scripts(_empty_template(env, template, config)))
    return frozenset(found)


def _empty_page(env: Environment, template: str, config: MkDocsConfig, address: str) -> str:
    """What the theme makes of a page that says nothing, in a site that has no other."""
    page = Page("", File.generated(config, address, content=""), config)
    page.content, page.markdown = "", ""
    context = get_context(Navigation([], [page]), Files([]), config, page)
    return env.get_template(template).render(context)


def _empty_template(env: Environment, template: str, config: MkDocsConfig) -> str:
    """What the theme makes of one of its own pages, such as that of a missing address."""
    at_root = urlsplit(config.site_url or "/").path
    base = at_root if is_error_template(template) else get_relative_url(".", template)
    context = get_context(Navigation([], []), Files([]), config, base_url=base)
    return env.get_template(template).render(context)


def content_policy(scripts: Iterable[str]) -> str:
    """The value of the `Content-Security-Policy` header that lets these inline scripts run."""
    hashes = sorted(map(_hash, set(scripts)))
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


def headers(scripts: Iterable[str]) -> dict[str, str]:
    """All headers a publisher should send with every file of the site."""
    return {
        "Content-Security-Policy": content_policy(scripts),
        "Referrer-Policy": "same-origin",
        "X-Content-Type-Options": "nosniff",
    }


def write_headers(site_dir: Path, scripts: Iterable[str]) -> None:
    """Write the headers into the site, one a line, for its publisher to copy."""
    lines = [f"{name}: {value}\n" for name, value in headers(scripts).items()]
    (site_dir / NAME).write_text("".join(lines), encoding="utf-8")


def inline_scripts(page: str) -> list[str]:
    """The scripts that run and that are written in a page itself."""
    finder = _ScriptFinder()
    # Parsing whole pages would cost a good part of the build, so only their scripts are parsed.
    finder.feed("".join(_SCRIPT.findall(page)))
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
