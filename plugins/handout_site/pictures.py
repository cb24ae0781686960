"""A PNG of each handout's finished thing, for link previews; made by CairoSVG where libcairo is.

Pictures are named by their content and kept between builds, so an unchanged rebuild paints none.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from hashlib import sha256
from pathlib import Path
from xml.etree.ElementTree import Element

from handout_engine.drawing.markup import element, xml
from handout_engine.drawing.svg import svg
from handout_engine.pages.page import Page
from handout_site.kept_files import put

FOLDER = "pictures"
WIDTH, HEIGHT = 1200, 630
"""Of each picture: the shape that previews of links have, so that none is cut at its sides."""
BORDER = 40
MISSING = (
    "pictures of the handouts for link previews are left out, since libcairo is not installed; "
    "on Debian: apt-get install libcairo2"
)
Painter = Callable[[str], bytes]


def find_painter() -> Painter | None:
    """What turns a drawing into PNG; None when libcairo cannot be loaded."""
    try:
        from cairosvg import svg2png  # noqa: PLC0415 - loads libcairo, which may be missing
    except (ImportError, OSError):
        return None

    def paint(drawing: str) -> bytes:
        painted: bytes = svg2png(drawing.encode(), output_width=WIDTH)
        return painted

    return paint


def picture_of(page: Page) -> str | None:
    """The paper drawing of the first finished thing on a page."""
    for block in page.blocks:
        working = page.workings.get(block.name)
        for picture in working.pictures if working else ():
            if picture.finished:
                return xml(card(svg(picture.scene, page.tape, "picture", "paper")))
    return None


def card(drawing: Element) -> Element:
    """A paper drawing on a white card of a picture's shape, as large as it can be."""
    box = {"x": BORDER, "y": BORDER, "width": WIDTH - 2 * BORDER, "height": HEIGHT - 2 * BORDER}
    for name, value in box.items():
        drawing.set(name, str(value))
    return element(
        "svg",
        element("rect", width=str(WIDTH), height=str(HEIGHT), fill="#fff"),
        drawing,
        xmlns="http://www.w3.org/2000/svg",
        viewBox=f"0 0 {WIDTH} {HEIGHT}",
        width=str(WIDTH),
        height=str(HEIGHT),
    )


def address(drawing: str) -> str:
    """Where a drawing's picture lies in the site, named by its content."""
    return f"{FOLDER}/{sha256(drawing.encode()).hexdigest()[:16]}.png"


def write_pictures(drawings: dict[str, str], site: Path, kept: Path, paint: Painter) -> None:
    """Write the picture of each drawing into the site, painting those that are not kept yet."""
    for place, drawing in drawings.items():
        put(site / place, kept / place, partial(paint, drawing))
