"""MkDocs hooks: each is one call to a plain function.

The flow of a build: `on_config` reads the scenario and puts the handouts into the menu;
`on_files` adds them to the site's files; `on_page_markdown` reads and works out a page's blocks;
while Markdown is made into HTML, the fence leaves a place and the inline pattern looks its value
up; `on_page_content` puts the results in their places, and adds the reader's form; `on_env`, before
anything is written, fails the build with the list of all slips; `on_post_build` writes the files
that the form runs.
"""

from __future__ import annotations

import logging
from collections.abc import Collection, Iterable
from pathlib import Path
from typing import Any, Literal
from xml.etree.ElementTree import Element

from markdown import Markdown
from mkdocs.config import config_options
from mkdocs.config.base import Config
from mkdocs.config.defaults import MkDocsConfig
from mkdocs.livereload import LiveReloadServer
from mkdocs.plugins import BasePlugin
from mkdocs.structure.files import File, Files
from mkdocs.structure.nav import Navigation
from mkdocs.structure.pages import Page

from handout_engine.made_to import made_to
from handout_engine.markup import element, html
from handout_site import checks, course_menu, library, pictures, practice, reference
from handout_site.closing import with_closing_parts
from handout_site.console import main
from handout_site.content_policy import write_headers
from handout_site.course_files import course_files
from handout_site.gallery import published_only
from handout_site.inline_values import InlineValues
from handout_site.links import published_links
from handout_site.menu import filled_menu
from handout_site.paper import Paper, for_paper
from handout_site.pdf import find_printer
from handout_site.placing import place, put_in
from handout_site.reader_form import with_form
from handout_site.reading import NO_TEXT, Handout, first_line, front_matter_slips, read_handout
from handout_site.runtime import MISSING, Runtime, find_runtime, publish
from handout_site.scenario import Scenario, load_scenario
from handout_site.sheets import MISSING as NO_PDF
from handout_site.sheets import Sheets, with_pdfs
from handout_site.size_pages import SizePage, size_pages
from handout_site.slips import Slip, SlipsError
from handout_site.source_files import is_text, shown_path
from handout_site.theme_names import with_names

log = logging.getLogger("mkdocs.plugins.handouts")

WAITING = "This block waits for another."
HANDOUTS_PLACE = "handouts/"


class HandoutsConfig(Config):
    """Where handouts and scenarios are, which is published, and what is made beside the pages.

    `pictures` are PNG and the sheets as PDF, `booklets` pages of many handouts, `pdf` a PDF of
    each page (a number, since HANDOUTS_PDF=1 gives one).
    """

    handouts = config_options.Dir(exists=True)
    scenarios = config_options.Dir(exists=True)
    scenario = config_options.Type(str, default="guild")
    pictures = config_options.Type(bool, default=False)
    booklets = config_options.Type(bool, default=False)
    pdf = config_options.Type(int, default=0)


class HandoutsPlugin(BasePlugin[HandoutsConfig]):
    """Computes the `calc` blocks of every page."""

    def __init__(self) -> None:
        """Start with nothing; a build fills in its own."""
        self.serving = False
        self.scenario = Scenario("")
        self.entries: tuple[library.Entry, ...] = ()
        self.missing: Collection[str] = ()
        self.slips: list[Slip] = []
        self.handout: Handout | None = None
        self.runtime: Runtime | None = None
        self.painter: pictures.Painter | None = None
        self.drawings: dict[str, str] = {}
        self.sized: dict[str, SizePage] = {}
        self.sheets = Sheets()
        self.pdfs: dict[str, str] = {}
        self.paper = Paper()

    def on_startup(self, *, command: Literal["build", "gh-deploy", "serve"], dirty: bool) -> None:
        """Remember whether an author is looking on."""
        del dirty
        self.serving = command == "serve"

    def on_config(self, config: MkDocsConfig) -> MkDocsConfig:
        """Read the scenario, add the handouts to the menu, and register fence and pattern."""
        self.slips, self.handout, self.sized = [], None, {}
        every = library.entries(Path(self.config.handouts))
        self.scenario = _scenario(self.config, library.handout_names(every))
        self.entries = library.published(every, self.scenario.handouts)
        self.missing = {entry.address for entry in every if entry not in self.entries}
        self.runtime = find_runtime(Path(config.config_file_path).parent)
        if self.runtime is None:
            log.info(MISSING)
        self.drawings = {}
        self.painter = pictures.find_painter() if self.config.pictures else None
        if self.config.pictures and self.painter is None:
            log.info(pictures.MISSING)
        self.sheets = Sheets(self.scenario.paper, find_printer() if self.config.pictures else None)
        if self.config.pictures and self.sheets.printer is None:
            log.info(NO_PDF)
        places = {HANDOUTS_PLACE: library.menu(self.entries), reference.FOLDER: reference.menu(),
                  **course_menu.sections(self.scenario.course)}  # fmt: skip
        config.nav = filled_menu(config.nav, places)
        config.extra["scenario"] = self.scenario
        wanted = bool(self.config.pdf) and not self.serving
        url = config.site_url or ""
        self.paper = for_paper(self.entries, self.scenario.course, url, pdf=wanted)
        config.markdown_extensions.append(InlineValues(self._inline))  # type: ignore[arg-type]
        fences = config.mdx_configs.setdefault("pymdownx.superfences", {})
        fences.setdefault("custom_fences", []).append(
            {"name": "calc", "class": "calc", "format": self._fence}
        )
        return config

    def on_files(self, files: Files, config: MkDocsConfig) -> Files:
        """Add the published handouts to the site's pages."""
        for entry in self.entries:
            files.append(File.generated(config, entry.address, abs_src_path=str(entry.path)))
            for file, address, sized in size_pages(entry, self.scenario.page_sizes, config):
                self.sized[address] = sized
                if file is not None:
                    files.append(file)
        if course_menu.has_place(config.nav):
            pages, wrong = course_files(config, self.scenario, self.entries, self.sized)
            self.slips.extend(wrong)
            for file in pages:
                files.append(file)
        if reference.FOLDER in str(config.nav):
            for address, text in reference.pages(main).items():
                files.append(File.generated(config, address, content=text))
        if practice.ADDRESS in str(config.nav):
            text = practice.by_practice(self.entries)
            files.append(File.generated(config, practice.ADDRESS, content=text))
        if checks.ADDRESS in str(config.nav):
            files.append(checks.file(config, self.entries))
        for file in files.documentation_pages():
            if not is_text(file):
                self.slips.append(Slip(shown_path(file, config), 1, NO_TEXT))
                file.content_string = ""
        return files

    def on_nav(self, nav: Navigation, config: MkDocsConfig, files: Files) -> Navigation:
        """Plan the booklets: they follow the order of the menu."""
        if self.config.booklets:
            self.paper.bindery.plan(nav, files, config)
        return nav

    def on_page_markdown(
        self, markdown: str, page: Page, config: MkDocsConfig, files: Files
    ) -> str:
        """Work out the page's blocks, and give it the closing parts it must have."""
        text = with_closing_parts(markdown)
        shown = shown_path(page.file, config)
        whole = page.file.content_string
        sized = self.sized.get(page.file.src_uri)
        terms = sized.terms(self.scenario.terms) if sized else self.scenario.terms
        self.handout = read_handout(text, shown, terms, first_line(whole, markdown))
        if sized:
            sized.mark(page)
            self.handout.sizes = sized.addresses
        made = made_to(self.handout.page)
        page.meta["size"] = made.words if made else ""
        self.handout.slips.extend(front_matter_slips(whole, shown))
        self.pdfs = self.sheets.add(self.handout.page, page.file, files, config)
        drawing = pictures.picture_of(self.handout.page) if self.painter else None
        if drawing is not None:
            page.meta["picture"] = pictures.address(drawing)
            self.drawings[page.meta["picture"]] = drawing
        return published_links(text, page.file.src_uri, self.missing)

    def on_page_content(self, html: str, page: Page, config: MkDocsConfig, files: Files) -> str:
        """Put the finished blocks in their places, and the reader's form where it can run."""
        del config, files
        if self.handout is None:
            return html
        sized = self.sized.get(page.file.src_uri)
        if sized and not sized.is_own and self.handout.page.problems:
            return sized.with_choice(sized.impossible(str(page.title), self.handout), None)
        found = put_in(html, self._made)
        shown = published_only(found.html, {entry.name for entry in self.entries})
        shown = with_pdfs(shown, self.pdfs)
        if not self.handout.slips:
            self.handout.slips.extend(self.handout.slips_of_places(found.numbers, found.left))
        self.slips.extend(self.handout.slips)
        if self.handout.slips:
            return _error_box(map(str, self.handout.slips)) + shown
        shown = self.paper.take(page, shown, computed=self.handout.has_blocks)
        if self.runtime is not None:
            shown = with_form(shown, self.handout, self.scenario, self.runtime, page.file.url)
        return sized.with_choice(shown, made_to(self.handout.page)) if sized else shown

    def on_env(self, env: Any, config: MkDocsConfig, files: Files) -> None:  # noqa: ANN401
        """Before anything is written: fail with all slips, or show them where they are."""
        del env, config
        if self.slips and not self.serving:
            raise SlipsError(self.slips)
        self.paper.bind(files)
        for slip in sorted(set(self.slips)):
            log.error(str(slip))

    def on_post_page(self, output: str, page: Page, config: MkDocsConfig) -> str:
        """Name the theme's regions."""
        del page, config
        return with_names(output)

    def on_post_template(self, output: str, /, *, template_name: str, config: MkDocsConfig) -> str:
        """Name the theme's regions on pages that are no handouts, too."""
        del config
        return with_names(output) if template_name.endswith(".html") else output

    def on_post_build(self, config: MkDocsConfig) -> None:
        """Write what the reader's browser runs, and the headers to publish the site with."""
        if self.runtime is not None:
            publish(self.runtime, Path(config.site_dir))
        kept = Path(config.config_file_path).parent / ".cache"
        self.sheets.write(Path(config.site_dir), kept)
        if self.painter is not None:
            pictures.write_pictures(self.drawings, Path(config.site_dir), kept, self.painter)
        self.paper.write(Path(config.site_dir), kept)
        write_headers(Path(config.site_dir))

    def on_serve(self, server: LiveReloadServer, config: MkDocsConfig, builder: Any) -> None:  # noqa: ANN401
        """Rebuild when a handout, a scenario or a file of the site changes."""
        del builder
        site = Path(config.config_file_path).resolve().parent
        for folder in (self.config.handouts, self.config.scenarios, site / "overrides"):
            if Path(folder).is_dir():
                server.watch(str(folder))

    def _fence(
        self,
        source: str,
        language: str,
        css_class: str,
        options: dict[str, str],
        md: Markdown,
        **kwargs: Any,  # noqa: ANN401
    ) -> str:
        """Leave a place for a fence's finished result; it was worked out with its page."""
        del language, css_class, options, md, kwargs
        return place(self.handout.next_number(source)) if self.handout else ""

    def _made(self, number: int) -> str:
        """The finished result of a fence, or what is wrong with it."""
        assert self.handout is not None
        return self.handout.fragment(number) or _error_box(self.handout.slips_at(number))

    def _inline(self, reference: str) -> Element | None:
        return self.handout.page.inline_element(reference) if self.handout else None


def _scenario(config: HandoutsConfig, known: tuple[str, ...]) -> Scenario:
    name = config.scenario
    folder = Path(config.scenarios)
    if Path(name).name != name or name.startswith("."):
        shown = f"{folder.name}/"
        raise SlipsError([Slip(shown, 1, f"{name!r} is not the name of a scenario in this folder")])
    return load_scenario(folder / f"{name}.yml", f"{folder.name}/{name}.yml", known)


def _error_box(sentences: Iterable[str]) -> str:
    """What an author sees in place of a block that cannot be worked out, and above its page."""
    items = [element("p", text) for text in sentences] or [element("p", WAITING)]
    title = element("p", "To mend", class_="admonition-title")
    return html(element("div", title, *items, class_="admonition failure"))
