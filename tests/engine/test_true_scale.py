"""Sheets at true scale, read back as a printer's program reads them."""

import re
from xml.etree.ElementTree import fromstring

import pytest

from handout_engine.amounts.lengths import millimetres
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.values import sentence
from handout_engine.drawing.markup import xml
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Grain,
    Line,
    Note,
    Scene,
    Side,
    Stroke,
    Tag,
    Tone,
    rectangle,
)
from handout_engine.paper.ink_svg import number
from handout_engine.paper.sheets import sheets
from handout_engine.paper.true_scale import PRINT_AT, true_scale
from worked import work

SVG = "{http://www.w3.org/2000/svg}"


def scene(*shapes):
    return Scene(sentence("A trial"), sentence("It shows a line."), shapes)


def document(*shapes, tape=None):
    return xml(true_scale(scene(*shapes), tape or Tape()))


def in_mm(length: str) -> float:
    assert length.endswith("mm")
    return float(length.removesuffix("mm"))


def unit(root) -> float:
    """How many mm one unit of the drawing is on paper, across and down alike."""
    _, _, wide, high = map(float, root.get("viewBox").split())
    across, down = in_mm(root.get("width")) / wide, in_mm(root.get("height")) / high
    assert across == pytest.approx(down, abs=1e-12)
    return across


def paths(root):
    """The corners of every path, in units of the drawing."""
    for path in root.iter(f"{SVG}path"):
        yield [
            tuple(map(float, pair)) for pair in re.findall(r"([-\d.]+) ([-\d.]+)", path.get("d"))
        ]


def test_a_line_of_100_mm_measures_100_mm_when_read_back():
    root = fromstring(document(Stroke(((3.0, 7.0), (103.0, 7.0)), Line.CUT)))
    (line,) = [points for points in paths(root) if len(points) == 2]
    assert (line[1][0] - line[0][0]) * unit(root) == pytest.approx(100, abs=1e-9)
    assert line[0][1] == line[1][1]


def test_the_squares_are_5_cm_and_2_in():
    root = fromstring(document(Stroke(((0.0, 0.0), (10.0, 0.0)), Line.CUT)))
    squares = [points for points in paths(root) if len(points) == 4]
    sides = [(four[1][0] - four[0][0], four[2][1] - four[1][1]) for four in squares]
    assert [(a * unit(root), b * unit(root)) for a, b in sides] == [
        pytest.approx((50, 50)), pytest.approx((50.8, 50.8))
    ]  # fmt: skip
    words = [text.text for text in root.iter(f"{SVG}text")]
    assert "this square is 5 cm" in words and "this square is 2 in" in words
    assert PRINT_AT in " ".join(words)


def test_everything_lies_on_the_sheet():
    root = fromstring(
        document(
            Area(rectangle(-500, -300, 700, 20), Tone.WRONG),
            Stroke(((-50.0, 900.0), (80.0, 900.0)), Line.FOLD),
            Note((-500.0, 0.0), sentence("a name"), anchor="end"),
        )
    )
    _, _, wide, high = map(float, root.get("viewBox").split())
    moved = root.find(f"{SVG}g").get("transform")
    across, down = map(float, re.findall(r"[-\d.]+", moved))
    for points in paths(root.find(f"{SVG}g")):
        for x, y in points:
            assert 0 <= x + across <= wide and 0 <= y + down <= high


def test_every_shape_is_drawn_in_plain_colours():
    length = millimetres(20)
    text = document(
        Area(rectangle(0, 0, 60, 40), Tone.SECOND),
        Area(rectangle(0, 0, 20, 10), Tone.WRONG, None),
        *(Dimension((0, 0), (60, 40), length, side) for side in Side),
        Tag((60, 10), length, Side.RIGHT),
        Note((30, 20), sentence("middle"), (10, 10)),
        Grain((30, 20), (0, 1)),
        *(Stroke(((0, 5 * at), (60, 5 * at)), line) for at, line in enumerate(Line)),
    )
    assert "var(" not in text and "class=" not in text
    assert text.count("13/16 in (20 mm)") == 5


def test_a_title_is_escaped():
    text = xml(true_scale(Scene(sentence("<b> & c"), sentence("d."), (
        Stroke(((0, 0), (1, 1)), Line.CUT),)), Tape()))  # fmt: skip
    assert "<b>" not in text and "&lt;b&gt; &amp; c" in text


@pytest.mark.parametrize(
    ("value", "written"),
    [(1.0, "1"), (0.5, "0.5"), (-0.0001, "0"), (10.0, "10"), (2.3456, "2.346")],
)
def test_numbers_are_written_to_a_thousandth(value, written):
    assert number(value) == written


def test_a_pdf_of_the_sheet_has_its_size():
    """72 points to the inch: the page is as wide in points as the sheet in mm, × 72 / 25.4."""
    cairosvg = pytest.importorskip("cairosvg", exc_type=OSError)
    pypdf = pytest.importorskip("pypdf")
    from io import BytesIO  # noqa: PLC0415 - only where a PDF can be made

    text = document(Stroke(((0.0, 0.0), (100.0, 0.0)), Line.CUT))
    page = pypdf.PdfReader(BytesIO(cairosvg.svg2pdf(bytestring=text.encode()))).pages[0]
    root = fromstring(text)
    assert float(page.mediabox.width) * 25.4 / 72 == pytest.approx(
        in_mm(root.get("width")), abs=0.01
    )
    assert float(page.mediabox.height) * 25.4 / 72 == pytest.approx(
        in_mm(root.get("height")), abs=0.01
    )


def test_the_outline_on_a_placement_sheet_is_as_wide_as_the_panel():
    working = work("lattice-panel", width="4 in", depth="2 1/2 in")
    (sheet,) = sheets(working, Tape())
    root = fromstring(xml(true_scale(sheet.drawings[0].scene, Tape())))
    four_cornered = [points for points in paths(root) if len(points) == 4]
    outline = max(four_cornered, key=lambda points: points[1][0] - points[0][0])
    xs, ys = zip(*outline, strict=True)
    assert (max(xs) - min(xs)) * unit(root) == pytest.approx(101.6, abs=1e-3)
    assert (max(ys) - min(ys)) * unit(root) == pytest.approx(63.5, abs=1e-3)


@pytest.mark.parametrize("line", Line)
def test_every_line_is_black_so_that_no_printer_makes_dots_of_it(line):
    root = fromstring(document(Stroke(((0.0, 0.0), (10.0, 0.0)), line)))
    strokes = {path.get("stroke") for path in root.iter(f"{SVG}path")} - {None}
    assert strokes == {"#000"}
