"""Sites built for tests: small ones from a few lines of Markdown, and the project's own.

A small site inherits the settings of `site_src/mkdocs.yml`, so that its pages are made with the
very extensions, theme and checks of the real site.
"""

from __future__ import annotations

import logging
import os
import re
from collections.abc import Mapping
from dataclasses import dataclass, field
from html import unescape
from pathlib import Path

from mkdocs.commands.build import build
from mkdocs.config import load_config
from mkdocs.config.defaults import MkDocsConfig
from mkdocs.exceptions import Abort

os.environ["NO_MKDOCS_2_WARNING"] = "1"

REPOSITORY = Path(__file__).parent.parent
SETTINGS = REPOSITORY / "site_src" / "mkdocs.yml"
GUILD = "publisher: The needlework guild\n"
PAGE = "handouts/ruffles/try.html"

_MKDOCS_YML = """\
INHERIT: {settings}
docs_dir: pages
site_dir: ../site
theme:
  custom_dir: {overrides}
nav:
  - Home: index.md
  - Course: course/
  - Wardrobe: wardrobe/
  - Handouts: handouts/
extra_css: []
plugins:
  - search
  - handouts:
      handouts: ../handouts
      scenarios: ../scenarios
      scenario: {scenario}
"""


@dataclass
class Built:
    """What a build left behind: the site's folder, and every warning that was logged."""

    folder: Path
    warnings: list[str] = field(default_factory=list)

    def page(self, address: str = PAGE) -> str:
        """The HTML of a page."""
        return (self.folder / address).read_text(encoding="utf-8")

    def article(self, address: str = PAGE) -> str:
        """The HTML of a page's own text, without the theme around it."""
        start = self.page(address).split("<article", 1)[1]
        return start.partition(">")[2].split("</article>", 1)[0]

    def words(self, address: str = PAGE) -> str:
        """What is read in a page's own text: no tags, every space a plain one."""
        return " ".join(unescape(re.sub("<[^>]*>", " ", self.article(address))).split())

    def pages(self) -> dict[str, str]:
        """The HTML of every page, by its address; true-scale sheets are no pages of the site."""
        found = sorted(each for each in self.folder.rglob("*.html") if each.parent.name != "sheets")
        return {path.relative_to(self.folder).as_posix(): self.page(str(path)) for path in found}


class SmallSite:
    """A site's sources in a temporary folder."""

    def __init__(self, folder: Path, scenario: str = "guild") -> None:
        self.folder = folder
        self.config_file = folder / "site_src" / "mkdocs.yml"
        self.write(
            "site_src/mkdocs.yml",
            _MKDOCS_YML.format(
                settings=SETTINGS, overrides=SETTINGS.parent / "overrides", scenario=scenario
            ),
        )
        self.write("site_src/pages/index.md", "# Home\n")
        self.write("scenarios/guild.yml", GUILD)
        (folder / "handouts").mkdir()

    def write(self, name: str, text: str | bytes) -> Path:
        """Write one source file."""
        path = self.folder / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(text if isinstance(text, bytes) else text.encode())
        return path

    def config(self) -> MkDocsConfig:
        """The site's settings, strict, its plugins new."""
        return load_config(str(self.config_file), strict=True)

    def build(self, built: Built | None = None) -> Built:
        """Build the site strictly."""
        config = self.config()
        config.plugins.on_startup(command="build", dirty=False)
        return build_with(config, built)


def small_site(folder: Path, text: str | bytes, *, scenario: str = GUILD) -> SmallSite:
    """A site with one handout, `handouts/ruffles/try.md`."""
    return site_of(folder, {"ruffles/try.md": text}, scenario=scenario)


def site_of(
    folder: Path, handouts: Mapping[str, str | bytes], *, scenario: str = GUILD
) -> SmallSite:
    """A site with several handouts, each named by its path below `handouts/`."""
    site = SmallSite(folder)
    site.write("scenarios/guild.yml", scenario)
    for name, text in handouts.items():
        site.write(f"handouts/{name}", text)
    return site


def slips_of(site: SmallSite) -> list[str]:
    """The messages with which the build fails; it must fail, and publish no page."""
    built = Built(site.folder / "site")
    try:
        built = site.build(built)
    except Abort:
        assert not built.pages(), "something was published"
        heading, *listed = "\n".join(built.warnings).splitlines()
        assert heading.startswith("nothing is published; ")
        return [line.strip() for line in listed]
    raise AssertionError(f"the site was built; {built.warnings}")


def build_with(
    config: MkDocsConfig, built: Built | None = None, serve_url: str | None = None
) -> Built:
    """Run one build, and keep what it logged as a warning or worse."""
    built = built or Built(Path(config.site_dir))
    keeper = _Keeper(built.warnings)
    logger = logging.getLogger("mkdocs")
    logger.addHandler(keeper)
    try:
        build(config, serve_url=serve_url)
    finally:
        logger.removeHandler(keeper)
    return built


def build_real_site(folder: Path) -> Built:
    """Build the project's own site, strictly, into a folder."""
    config = load_config(str(SETTINGS), strict=True, site_dir=str(folder))
    config.plugins.on_startup(command="build", dirty=False)
    return build_with(config)


class _Keeper(logging.Handler):
    def __init__(self, kept: list[str]) -> None:
        super().__init__(logging.WARNING)
        self.kept = kept

    def emit(self, record: logging.LogRecord) -> None:
        self.kept.append(record.getMessage())
