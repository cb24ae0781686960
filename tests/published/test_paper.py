"""Sheets of paper against the standards that say how large they are."""

from io import BytesIO

import pypdf
import pytest

from handout_engine.amounts.saying import Tape
from handout_engine.paper.sheets import sheets
from handout_engine.paper.tiling import PAPERS
from printed import printer
from worked import work

POINT = 25.4 / 72


@pytest.mark.parametrize(
    ("paper", "size"),
    [
        # ISO 216: A4 is 210 × 297 mm
        ("a4", (210.0, 297.0)),
        # ANSI/ASME Y14.1 (the standard's number from memory): size A is 8 1/2 × 11 in
        ("letter", (215.9, 279.4)),
    ],
)
def test_the_pages_of_a_sheet_are_as_large_as_the_paper(paper, size):
    """Boxes of the PDF in points of 1/72 in, as ISO 32000 has them, to a tenth of a point."""
    assert PAPERS[paper] == size
    for key in ("lattice-panel", "spiral-flounce"):
        (sheet,) = sheets(work(key), Tape())
        made = printer()(sheet.title, sheet.pages(paper, Tape()))
        for page in pypdf.PdfReader(BytesIO(made)).pages:
            found = sorted((float(page.mediabox.width), float(page.mediabox.height)))
            assert found == pytest.approx([side / POINT for side in size], abs=0.1)
            assert page.cropbox == page.mediabox
