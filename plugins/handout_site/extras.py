"""What a build makes beside its pages: pictures, true-scale sheets, and Python for the browser.

Each needs a part of the system that may be missing; the build says so once, and goes on without.
"""

from __future__ import annotations

import logging
from dataclasses import dataclass, field
from pathlib import Path

from handout_engine.pages.page import Page
from handout_site import pictures, runtime, sheets
from handout_site.pdf import find_printer

log = logging.getLogger("mkdocs.plugins.handouts")


@dataclass
class Extras:
    """The extras of one build; `drawings` are the pictures to be made, by their address."""

    runtime: runtime.Runtime | None = None
    painter: pictures.Painter | None = None
    sheets: sheets.Sheets = field(default_factory=sheets.Sheets)
    drawings: dict[str, str] = field(default_factory=dict)

    def picture(self, page: Page) -> str | None:
        """The address of the picture that stands for a page; None where none can be made."""
        drawing = pictures.picture_of(page) if self.painter else None
        if drawing is None:
            return None
        address = pictures.address(drawing)
        self.drawings[address] = drawing
        return address

    def write(self, site: Path, kept: Path) -> None:
        """Write all of them into the site; `kept` is the folder of what was made before."""
        if self.runtime is not None:
            runtime.publish(self.runtime, site)
        self.sheets.write(site, kept)
        if self.painter is not None:
            pictures.write_pictures(self.drawings, site, kept, self.painter)


def find_extras(settings: Path, paper: str, *, painted: bool) -> Extras:
    """What can be made beside the pages of a site, whose mkdocs.yml lies in `settings`.

    `painted` asks for pictures as PNG and sheets as PDF; without it neither is missed.
    """
    printer = find_printer() if painted else None
    found = Extras(
        runtime.find_runtime(settings),
        pictures.find_painter() if painted else None,
        sheets.Sheets(paper, printer),
    )
    if found.runtime is None:
        log.info(runtime.MISSING)
    if painted and found.painter is None:
        log.info(pictures.MISSING)
    if painted and printer is None:
        log.info(sheets.MISSING)
    return found
