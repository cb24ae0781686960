import re
from xml.etree.ElementTree import fromstring

import pytest

from drawn import check_fragment
from handout_engine import register
from handout_engine.amounts.lengths import inches
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.values import sentence
from handout_engine.drawing.markup import html, xml
from handout_engine.drawing.scene import Area, Line, Note, Scene, Stroke, Tone, rectangle
from handout_engine.drawing.svg import PAPER, _number, paper_sheet, svg
from worked import INCHES, work

SVG = "{http://www.w3.org/2000/svg}"
STRIP = Scene(
    sentence("Strip"),
    sentence("A strip {width} wide.", width=inches("9/4")),
    (Area(rectangle(0, 0, 100, 50), Tone.WRONG), Note((50, 25), sentence("front"))),
)


def test_a_drawing_is_named_and_described_with_its_values():
    made = fromstring(xml(svg(STRIP, INCHES, "b0-strip")))
    title, description = made.find(f"{SVG}title"), made.find(f"{SVG}desc")
    assert title is not None and title.text == "Strip"
    assert description is not None and description.text == "A strip 2 1/4 in wide."
    assert made.get("role") == "img"
    assert made.get("aria-labelledby") == f"{title.get('id')} {description.get('id')}"


def test_in_metric_the_description_is_metric():
    made = fromstring(xml(svg(STRIP, Tape("metric"), "b0-strip")))
    assert made.findtext(f"{SVG}desc") == "A strip 57 mm wide."


def test_hostile_words_are_words():
    hostile = "</svg><script>alert(1)</script>&\"'"
    scene = Scene(
        sentence("{t}", t=hostile),
        sentence("{t}", t=hostile),
        (STRIP.shapes[0], Note((0, 0), sentence("{t}", t=hostile))),
    )
    text = xml(svg(scene, INCHES, "b0-x"))
    assert "<script" not in text
    made = fromstring(text)
    assert made.findtext(f"{SVG}title") == hostile
    assert hostile in [each.text for each in made.iter(f"{SVG}text")]


def test_on_the_screen_colours_are_the_page_s_and_on_paper_they_are_plain():
    screen, paper = (html(svg(STRIP, INCHES, "b0-x", medium)) for medium in ("screen", "paper"))
    assert "fill=" not in screen and "stroke=" not in screen and 'class="line-cut"' in screen
    assert "var(" not in paper and "line-" not in paper
    assert "url(" not in paper and "<pattern" not in paper


def test_every_style_has_its_plain_form():
    assert {line.value for line in Line} | {f"face-{tone.value}" for tone in Tone} <= PAPER.keys()


def test_lines_keep_two_to_one_of_thick_to_thin():
    """ISO 128 has thick lines twice as wide as thin ones (from memory of the standard)."""
    assert PAPER["cut"][0] == 2 * PAPER["stitch"][0] == 2 * PAPER["fold"][0]


def test_each_kind_of_line_is_told_from_the_others_without_colour():
    """A break is told from other thin lines by its form: freehand, or with a zigzag."""
    looks = [PAPER[line.value][:2] for line in Line if line is not Line.BREAK]
    assert len(set(looks)) == len(looks)


def test_coordinates_are_whole_tenths():
    scene = Scene(sentence("x"), sentence("x"), (Stroke(((0, 0), (1 / 3, 2 / 7)), Line.CUT),))
    path = fromstring(xml(svg(scene, INCHES, "b0-x"))).find(f"{SVG}path")
    assert path is not None
    assert re.fullmatch(r"M(-?\d+(\.\d)?[ L]?)+", path.get("d", ""))


@pytest.mark.parametrize("key", register.keys())
def test_every_drawing_is_well_formed_on_screen_and_on_paper(key):
    working = work(key)
    for picture in working.pictures:
        for medium in ("screen", "paper"):
            made = svg(picture.scene, INCHES, f"b0-{picture.name}", medium)
            check_fragment(made)
            text = xml(made)
            assert "nan" not in text.lower().replace("nance", "")
            assert text == xml(svg(picture.scene, INCHES, f"b0-{picture.name}", medium))
            if medium == "paper":
                assert "var(" not in text


@pytest.mark.parametrize("key", register.keys())
def test_every_sheet_can_be_printed(key):
    """The PDF maker needs a library of the machine, which may be missing."""
    cairosvg = pytest.importorskip("cairosvg", exc_type=OSError)
    scenes = [picture.scene for picture in work(key).pictures]
    made = cairosvg.svg2pdf(bytestring=xml(paper_sheet(scenes, INCHES, "sheet")).encode())
    assert made.startswith(b"%PDF")


@pytest.mark.parametrize("tie", [-52.25, 0.05, 0.35, 7.15, 123.45])
def test_the_last_bits_of_a_sum_never_show(tie):
    """Python 3.12 and later add floats more exactly than 3.11: both must write the same."""
    written = {_number(tie + noise) for noise in (-2e-9, -7e-15, 0.0, 7e-15, 2e-9)}
    assert len(written) == 1
