"""PDF pages read back by an independent library, in millimetres: x to the right, y downward."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from io import BytesIO

import pytest
from pdfminer.converter import PDFPageAggregator
from pdfminer.layout import LTChar, LTCurve, LTItem, LTPage
from pdfminer.pdfinterp import PDFPageInterpreter, PDFResourceManager
from pdfminer.pdfpage import PDFPage

from handout_engine.drawing.scene import Point
from handout_site.pdf import Printer, find_printer

MM = 25.4 / 72
"""Millimetres of a point: 72 to the inch."""


@dataclass(frozen=True)
class Line:
    """A stroked or filled path: its corners, its width (0 when filled), its dashes."""

    points: tuple[Point, ...]
    width: float
    dashed: bool
    filled: bool


@dataclass(frozen=True)
class Letter:
    """One letter, and the box that it takes."""

    text: str
    left: float
    top: float
    right: float
    bottom: float


@dataclass(frozen=True)
class Printed:
    """One page as it is printed."""

    width: float
    height: float
    lines: tuple[Line, ...]
    letters: tuple[Letter, ...]

    @property
    def words(self) -> str:
        """All that is said on it, without spaces: a PDF may hold them or leave them out."""
        return "".join(each.text for each in self.letters if each.text.strip())


@cache
def printer() -> Printer:
    """What makes PDFs; the test is skipped where libcairo is not."""
    found = find_printer()
    if found is None:
        pytest.skip("libcairo is not installed")
    return found


def read_back(pages: list[str], title: str = "trial") -> list[Printed]:
    """SVG pages made into a PDF, and that read back."""
    return read(printer()(title, pages))


def read(pdf: bytes) -> list[Printed]:
    """The pages of a PDF; letters are in the order in which they were written."""
    with BytesIO(pdf) as file:
        return [_page(page) for page in _pages(file)]


def _pages(file: BytesIO) -> Iterator[LTPage]:
    """The pages without a guess at lines and paragraphs, which takes long."""
    manager = PDFResourceManager()
    device = PDFPageAggregator(manager, laparams=None)
    for page in PDFPage.get_pages(file):
        PDFPageInterpreter(manager, device).process_page(page)
        yield device.get_result()


def _page(page: LTPage) -> Printed:
    lines, letters = [], []
    for item in _items(page):
        if isinstance(item, LTCurve):
            points = tuple((x * MM, (page.height - y) * MM) for x, y in item.pts)
            dashes = item.dashing_style
            lines.append(
                Line(
                    points,
                    item.linewidth * MM if item.stroke else 0.0,
                    bool(dashes and dashes[0]),
                    bool(item.fill),
                )
            )
        if isinstance(item, LTChar):
            left, bottom, right, top = item.bbox
            box = (left * MM, (page.height - top) * MM, right * MM, (page.height - bottom) * MM)
            letters.append(Letter(item.get_text(), *box))
    return Printed(page.width * MM, page.height * MM, tuple(lines), tuple(letters))


def _items(holder: LTItem) -> Iterator[LTItem]:
    yield holder
    try:
        children = iter(holder)  # type: ignore[call-overload]
    except TypeError:
        return
    for child in children:
        yield from _items(child)
