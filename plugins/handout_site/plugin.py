"""MkDocs hooks: each is one call to a plain function.

The flow of a build: `on_config` reads the scenario and puts the handouts into the menu;
`on_files` adds them to the site's files; `on_page_markdown` reads and works out a page's blocks;
while Markdown is made into HTML, the fence leaves a place and the inline pattern looks its value
up; `on_page_content` puts the results in their places, and adds the reader's form; `on_env`, before
anything is written, fails the build with the list of all slips; `on_post_build` writes the files
that the form runs. The whole is built beside the last site, from `on_pre_build` on, and takes its
place at the end of `on_post_build`.
"""

from __future__ import annotations

import logging
from collections.abc import Collection
from functools import partial
from pathlib import Path
from typing import Any, Literal
from xml.etree.ElementTree import Element

from jinja2 import Environment
from mkdocs.config.defaults import MkDocsConfig
from mkdocs.exceptions import Abort, MkDocsException
from mkdocs.livereload import LiveReloadServer
from mkdocs.plugins import BasePlugin, CombinedEvent, event_priority
from mkdocs.structure.files import File, Files
from mkdocs.structure.nav import Navigation
from mkdocs.structure.pages import Page
from mkdocs.utils.templates import TemplateContext

from handout_engine.pages.made_to import made_to
from handout_site import course_menu, library, reference
from handout_site.content_policy import known_scripts, write_headers
from handout_site.course_files import course_files
from handout_site.escaping import escape_texts, title_text
from handout_site.extras import Extras, find_extras
from handout_site.failures import Place, sentence_of, slip_of
from handout_site.front_matter import read_front_matter
from handout_site.gallery import published_only
from handout_site.generated_pages import generated_pages
from handout_site.inline_values import InlineValues
from handout_site.last_site import LastSite
from handout_site.links import published_links
from handout_site.menu import filled_menu
from handout_site.options import HandoutsConfig
from handout_site.paper import Paper, for_paper
from handout_site.placing import place, put_in
from handout_site.reader_form import with_form
from handout_site.reading import Handout, first_line, read_handout
from handout_site.scenario import Scenario
from handout_site.seat_pages import SeatPage
from handout_site.sheets import with_pdfs
from handout_site.size_pages import SizePage, every_size_page
from handout_site.slips import Slip, SlipsError, error_box
from handout_site.source_files import shown_path, unreadable
from handout_site.surroundings import (
    asks_for_pdf,
    chosen_scenario,
    lacks_template,
    refuse_environment,
    theme_has,
)
from handout_site.theme_names import with_names

log = logging.getLogger("mkdocs.plugins.handouts")

HANDOUTS_PLACE = "handouts/"


class HandoutsPlugin(BasePlugin[HandoutsConfig]):
    """Computes the `calc` blocks of every page."""

    def __init__(self) -> None:
        """Start with nothing; a build fills in its own."""
        self.serving = False
        self.in_place = False
        self.last_site = LastSite()
        self.scenario = Scenario("")
        self.entries: tuple[library.Entry, ...] = ()
        self.missing: Collection[str] = ()
        self.slips: list[Slip] = []
        self.handout: Handout | None = None
        self.sized: dict[str, SizePage | SeatPage] = {}
        self.extras = Extras()
        self.pdfs: dict[str, str] = {}
        self.paper = Paper()
        self.nav: Navigation | None = None
        self.scripts: frozenset[str] = frozenset()
        self.place = Place()

    def on_startup(self, *, command: Literal["build", "gh-deploy", "serve"], dirty: bool) -> None:
        """Remember whether an author is looking on, and whether only what changed is built."""
        self.serving = command == "serve"
        self.in_place = self.serving or dirty

    def on_config(self, config: MkDocsConfig) -> MkDocsConfig:
        """Read the scenario, add the handouts to the menu, and register fence and pattern."""
        self.slips, self.handout, self.sized, self.place = [], None, {}, Place()
        self.last_site = LastSite()
        refuse_environment()
        if self.config.booklets and (lacking := lacks_template(config)):
            raise SlipsError([lacking])
        every = library.entries(Path(self.config.handouts))
        self.scenario = chosen_scenario(self.config, library.handout_names(every))
        self.entries = library.published(every, self.scenario.handouts)
        self.missing = {entry.address for entry in every if entry not in self.entries}
        settings = Path(config.config_file_path).parent
        self.extras = find_extras(settings, self.scenario.paper, painted=self.config.pictures)
        places = {
            HANDOUTS_PLACE: library.menu(self.entries),
            reference.FOLDER: reference.menu(),
            **course_menu.sections(self.scenario.course),
        }
        config.nav = filled_menu(config.nav, places)
        config.extra["scenario"] = self.scenario
        wanted = asks_for_pdf(self.config.pdf) and not self.serving
        url = config.site_url or ""
        self.paper = for_paper(self.entries, self.scenario.course, url, pdf=wanted)
        config.markdown_extensions.append(InlineValues(self._inline))  # type: ignore[arg-type]
        fences = config.mdx_configs.setdefault("pymdownx.superfences", {})
        fences.setdefault("custom_fences", []).append(
            {"name": "calc", "class": "calc", "format": self._fence}
        )
        return config

    @event_priority(100)
    def on_pre_build(self, *, config: MkDocsConfig) -> None:
        """Let the site be built beside the last one, before MkDocs empties its folder."""
        if not self.in_place:
            self.last_site.keep(config)

    def on_files(self, files: Files, config: MkDocsConfig) -> Files:
        """Add the published handouts to the site's pages."""
        added = [
            File.generated(config, entry.address, abs_src_path=str(entry.path))
            for entry in self.entries
        ]
        pages = every_size_page(self.entries, self.scenario.page_sizes, config)
        self.sized.update(pages.sized)
        self.slips.extend(pages.slips)
        added.extend(pages.files)
        if course_menu.has_place(config.nav):
            course = course_files(config, self.scenario, self.entries, pages.sized)
            self.slips.extend(course.slips)
            self.sized.update(course.seats.added)
            self.paper.bindery.kits = course.seats.kits
            added.extend(course.files)
        for file in (*added, *generated_pages(config, self.entries)):
            files.append(file)
        self.slips.extend(unreadable(files, config))
        return files

    def on_nav(self, nav: Navigation, config: MkDocsConfig, files: Files) -> Navigation:
        """Plan the booklets: they follow the order of the menu."""
        self.nav = nav
        if self.config.booklets:
            self.paper.bindery.plan(nav, files, config)
        return nav

    def on_pre_page(self, page: Page, config: MkDocsConfig, files: Files) -> Page:
        """Remember which page is being made."""
        del files
        self.place = Place(shown_path(page.file, config))
        return page

    def on_page_markdown(
        self, markdown: str, page: Page, config: MkDocsConfig, files: Files
    ) -> str:
        """Work out the page's blocks, and give it the sections that its author left out."""
        shown = shown_path(page.file, config)
        whole = page.file.content_string
        sized = self.sized.get(page.file.src_uri)
        terms = sized.terms(self.scenario.terms) if sized else self.scenario.terms
        begins = first_line(whole, markdown)
        self.place = Place(shown, markdown, begins)
        self.handout = read_handout(markdown, shown, terms, begins)
        front = read_front_matter(whole, shown, partial(theme_has, config))
        page.meta = dict(front.fields)
        self.paper.bindery.entitle(page)
        if sized:
            sized.mark(page)
            self.handout.sizes = sized.addresses
        made = made_to(self.handout.page)
        page.meta["size"] = made.words if made else ""
        if sized is None or sized.is_own:
            self.handout.slips.extend(front.slips)
        self.pdfs = self.extras.sheets.add(self.handout.page, page.file, files, config)
        picture = self.extras.picture(self.handout.page)
        if picture is not None:
            page.meta["picture"] = picture
        return published_links(self.handout.markdown, page.file.src_uri, self.missing)

    def on_page_content(self, html: str, page: Page, config: MkDocsConfig, files: Files) -> str:
        """Put the finished blocks in their places, and the reader's form where it can run."""
        del config, files
        if self.handout is None:
            return html
        sized = self.sized.get(page.file.src_uri)
        if sized and not sized.is_own and self.handout.page.problems:
            return sized.with_choice(sized.impossible(title_text(page), self.handout), None)
        found = put_in(html, self._made)
        shown = published_only(found.html, {entry.name for entry in self.entries})
        shown = with_pdfs(shown, self.pdfs)
        if not self.handout.slips:
            self.handout.slips.extend(self.handout.slips_of_places(found.numbers, found.left))
        self.slips.extend(self.handout.slips)
        if self.handout.slips:
            return error_box(map(str, self.handout.slips)) + shown
        shown = self.paper.take(page, shown, computed=self.handout.has_blocks)
        if self.extras.runtime is not None:
            shown = with_form(
                shown, self.handout, self.scenario, self.extras.runtime, page.file.url
            )
        return sized.with_choice(shown, made_to(self.handout.page)) if sized else shown

    def on_env(self, env: Environment, config: MkDocsConfig, files: Files) -> None:
        """Before anything is written: fail with all slips, or show them where they are."""
        self.place = Place()
        if self.slips and not self.serving:
            raise SlipsError(self.slips)
        self.paper.bind(files)
        escape_texts(config, self.nav, files)
        self.scripts = known_scripts(env, config, files)
        for slip in sorted(set(self.slips)):
            log.error(str(slip))

    def on_page_context(
        self, context: TemplateContext, page: Page, config: MkDocsConfig, nav: Navigation
    ) -> TemplateContext:
        """Remember which page is put into its template."""
        del nav
        self.place = Place(shown_path(page.file, config))
        return context

    def on_post_page(self, output: str, page: Page, config: MkDocsConfig) -> str:
        """Name the theme's regions."""
        del page, config
        return with_names(output)

    def on_post_template(self, output: str, /, *, template_name: str, config: MkDocsConfig) -> str:
        """Name the theme's regions on pages that are no handouts, too."""
        del config
        return with_names(output) if template_name.endswith(".html") else output

    def _write(self, config: MkDocsConfig) -> None:
        """Write what the reader's browser runs, and the headers to publish the site with."""
        self.place = Place()
        site, kept = Path(config.site_dir), Path(config.config_file_path).parent / ".cache"
        self.extras.write(site, kept)
        self.paper.write(site, kept)
        write_headers(site, self.scripts)

    def on_build_error(self, error: Exception) -> None:
        """Leave the last site as it is, and say in a sentence what MkDocs would end in a traceback.

        Raises Abort.
        """
        self.last_site.leave()
        if isinstance(error, MkDocsException):
            return
        log.debug("where it failed:", exc_info=error)
        slip = slip_of(error, self.place)
        log.error(str(SlipsError([*self.slips, slip])) if slip else sentence_of(error))
        raise Abort("Aborted: the site could not be made") from None

    @event_priority(-100)
    def _replace_last(self, config: MkDocsConfig) -> None:
        """After all plugins: put the new site in the place of the last one."""
        self.last_site.replace(config)

    on_post_build = CombinedEvent(_write, _replace_last)

    def on_shutdown(self) -> None:
        """Leave the last site as it is, when a build was broken off."""
        self.last_site.leave()

    def on_serve(self, server: LiveReloadServer, config: MkDocsConfig, builder: Any) -> None:  # noqa: ANN401
        """Rebuild when a handout, a scenario or a file of the site changes."""
        del builder
        site = Path(config.config_file_path).resolve().parent
        for folder in (self.config.handouts, self.config.scenarios, site / "overrides"):
            if Path(folder).is_dir():
                server.watch(str(folder))

    def _fence(self, source: str, *_: object, **__: object) -> str:
        """Leave a place for a fence's finished result; it was worked out with its page."""
        return place(self.handout.next_number(source)) if self.handout else ""

    def _made(self, number: int) -> str:
        """The finished result of a fence, or what is wrong with it."""
        assert self.handout is not None
        return self.handout.fragment(number) or error_box(self.handout.slips_at(number))

    def _inline(self, reference: str) -> Element | None:
        return self.handout.page.inline_element(reference) if self.handout else None
