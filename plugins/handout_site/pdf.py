"""Pages at true scale as one PDF, made by CairoSVG where libcairo is.

All pages are drawn on one PDF surface of cairo, through the place that CairoSVG leaves for
surfaces of one's own: so each font is embedded once, and nothing has to be joined afterwards. The
date in the file is always the same, so that the same pages give the same bytes.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import cache
from io import BytesIO
from typing import Any

MADE = "words in one run"
"""How PDFs are made; changed with it, so that those kept from before are made anew."""
DATE = "2000-01-01T00:00:00Z"
"""What the file says of when it was made: the clock would make every build another."""

Printer = Callable[[str, Sequence[str]], bytes]
"""Makes one PDF of a title and of pages that are SVG documents."""


def find_printer() -> Printer | None:
    """What turns pages into a PDF; None when libcairo cannot be loaded."""
    try:
        import cairocffi  # noqa: PLC0415 - loads libcairo, which may be missing
        from cairosvg.colors import color  # noqa: PLC0415
        from cairosvg.helpers import transform  # noqa: PLC0415
        from cairosvg.parser import Tree  # noqa: PLC0415
        from cairosvg.surface import Surface  # noqa: PLC0415
    except (ImportError, OSError):
        return None

    @cache
    def font(family: str, weight: int) -> object:
        """A font, asked for as a picture asks for it before a PDF does.

        Cairo keeps a font as it was first asked for, and a PDF asks for letters that are not
        fitted to pixels: every picture painted after it would have other letters.
        """
        face = cairocffi.ToyFontFace(family, cairocffi.FONT_SLANT_NORMAL, weight)
        cairocffi.ScaledFont(face)
        return face

    class Page(Surface):  # type: ignore[misc]
        """Draws an SVG document on a page of a PDF that is there already."""

        def _create_surface(self, width: float, height: float) -> tuple[object, float, float]:
            self.output.set_size(width, height)
            return self.output, width, height

        def draw(self, node: Any) -> None:  # noqa: ANN401
            """Draw an element; words in one run, not letter by letter, which takes most time."""
            if node.tag == "text":
                self._write(node)
            else:
                super().draw(node)

        def _write(self, node: Any) -> None:  # noqa: ANN401
            context = self.context
            context.save()
            transform(self, node.get("transform"))
            weight = f"FONT_WEIGHT_{node.get('font-weight', 'normal')}".upper()
            family = node["font-family"].partition(",")[0]
            context.set_font_face(font(family, getattr(cairocffi, weight)))
            context.set_font_size(float(node["font-size"]))
            context.set_source_rgba(*color(node["fill"]))
            left, _, width, *_ = context.text_extents(node.text)
            aside = {"start": 0.0, "middle": left + width / 2, "end": left + width}
            context.move_to(float(node["x"]) - aside[node["text-anchor"]], float(node["y"]))
            context.show_text(node.text)
            context.restore()

    def print_pages(title: str, pages: Sequence[str]) -> bytes:
        written = BytesIO()
        pdf = cairocffi.PDFSurface(written, 1, 1)
        pdf.set_metadata(cairocffi.PDF_METADATA_TITLE, title)
        pdf.set_metadata(cairocffi.PDF_METADATA_CREATE_DATE, DATE)
        for page in pages:
            Page(Tree(bytestring=page.encode()), pdf, 96)
            pdf.show_page()
        pdf.finish()
        return written.getvalue()

    return print_pages
