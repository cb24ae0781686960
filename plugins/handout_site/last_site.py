"""What a build by MkDocs does with the last site: nothing, until the new one is whole."""

from __future__ import annotations

import logging
from pathlib import Path

from mkdocs.config.defaults import MkDocsConfig
from mkdocs.utils import CountHandler

from handout_site.standing_in import NewSite, begin

log = logging.getLogger("mkdocs.plugins.handouts")


class LastSite:
    """The last site during one build, and the new one that is to replace it, once it is begun."""

    def __init__(self) -> None:
        """Begin nothing yet."""
        self.new: NewSite | None = None

    def keep(self, config: MkDocsConfig) -> None:
        """Let MkDocs, and every plugin, build into another folder than the last site's."""
        if config.strict:
            _let_warnings_count()
        self.new = begin(Path(config.site_dir))
        config.site_dir = str(self.new.work)

    def replace(self, config: MkDocsConfig) -> None:
        """Put the new site in its place, unless MkDocs is about to refuse it for its warnings."""
        if self.new is None or _is_refused(config):
            return
        new, self.new = self.new, None
        config.site_dir = str(new.site)
        aside = new.put_in_place()
        log.info(f"The new site is whole, and stands in {new.site}")
        if aside is not None:
            log.info(f"Other files, which stood there, are now in {aside}")

    def leave(self) -> None:
        """Give up a new site that is not finished; the last one stays."""
        if self.new is None:
            return
        self.new.give_up()
        if self.new.site.is_dir():
            log.info(f"The last site, in {self.new.site}, is left as it was")
        self.new = None


def _let_warnings_count() -> None:
    """Let a strict build see its warnings, also where it was told to be quiet.

    MkDocs then drops them before it counts them, and publishes what it should refuse.
    """
    logger = logging.getLogger("mkdocs")
    logger.setLevel(min(logger.level, logging.WARNING))


def _is_refused(config: MkDocsConfig) -> bool:
    """Whether MkDocs fails a build for its warnings, which it does after all plugins."""
    handlers = logging.getLogger("mkdocs").handlers
    counters = [each for each in handlers if isinstance(each, CountHandler)]
    return config.strict and any(each.get_counts() for each in counters)
