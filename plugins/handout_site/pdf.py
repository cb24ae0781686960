"""Pages at true scale as one PDF, made by CairoSVG where libcairo is.

All pages are drawn on one PDF surface of cairo, through the place that CairoSVG leaves for
surfaces of one's own: so each font is embedded once, and nothing has to be joined afterwards. The
date in the file is always the same, so that the same pages give the same bytes.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from io import BytesIO

DATE = "2000-01-01T00:00:00Z"
"""What the file says of when it was made: the clock would make every build another."""

Printer = Callable[[str, Sequence[str]], bytes]
"""Makes one PDF of a title and of pages that are SVG documents."""


def find_printer() -> Printer | None:
    """What turns pages into a PDF; None when libcairo cannot be loaded."""
    try:
        import cairocffi  # noqa: PLC0415 - loads libcairo, which may be missing
        from cairosvg.parser import Tree  # noqa: PLC0415
        from cairosvg.surface import Surface  # noqa: PLC0415
    except (ImportError, OSError):
        return None

    class Page(Surface):  # type: ignore[misc]
        """Draws an SVG document on a page of a PDF that is there already."""

        def _create_surface(self, width: float, height: float) -> tuple[object, float, float]:
            self.output.set_size(width, height)
            return self.output, width, height

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
