"""Titles and front matter as the theme's templates may print them: escaped, each exactly once.

MkDocs hands a title on as HTML where a heading says it, and as it is written where front matter or
the menu does; the theme prints both as they come. Until all pages are finished a title is plain
text here; then all of them become text that is marked as escaped, so that a template may escape it
or not.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from html import unescape

from markupsafe import Markup, escape
from mkdocs.config.defaults import MkDocsConfig
from mkdocs.structure import StructureItem
from mkdocs.structure.files import Files
from mkdocs.structure.nav import Navigation, Section
from mkdocs.structure.pages import Page

from handout_site.front_matter import OURS


def title_text(page: Page) -> str:
    """A page's title as plain text."""
    as_written = "title" in page.meta or "title" in vars(page)
    title = str(page.title or "")
    return title if as_written else unescape(title)


def escape_texts(config: MkDocsConfig, nav: Navigation | None, files: Files) -> None:
    """Escape what the site's templates print of its settings, its menu and its pages."""
    config.site_name = escape(config.site_name)
    for name in ("site_description", "site_author"):
        if config[name]:
            config[name] = escape(config[name])
    _escape_menu(nav.items if nav else ())
    for file in files.documentation_pages():
        if file.page is not None:
            page = file.page
            page.title = escape(title_text(page))
            page.meta = {
                name: value if name in OURS else _escaped(value)
                for name, value in page.meta.items()
            }


def _escape_menu(items: Iterable[StructureItem]) -> None:
    """Escape the titles of sections and links; those of pages are escaped with their pages."""
    for item in items:
        if not isinstance(item, Page) and item.title:
            item.title = escape(item.title)
        if isinstance(item, Section):
            _escape_menu(item.children)


def _escaped(value: object) -> object:
    """A value of front matter with all its texts escaped."""
    if isinstance(value, str):
        return value if isinstance(value, Markup) else escape(value)
    if isinstance(value, list | tuple):
        return type(value)(map(_escaped, value))
    if isinstance(value, Mapping):
        return {name: _escaped(each) for name, each in value.items()}
    return value
