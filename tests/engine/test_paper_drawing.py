"""Drawings on paper: every text stands by itself, and the sheet is white to its edges."""

from xml.etree.ElementTree import Element

import pytest

from handout_engine.drawing.page import CHARACTER
from handout_engine.drawing.svg import paper_sheet, svg
from worked import INCHES, work

PUFFING = work("puffing-strip")
SCENES = [picture.scene for picture in PUFFING.pictures]


def texts(drawing: Element) -> list[str]:
    return [text.text or "" for text in drawing.iter("text")]


def test_amounts_side_by_side_are_one_run_and_amounts_in_two_lines_are_two():
    said = texts(svg(SCENES[0], INCHES, "p", "paper"))
    assert "12 in (30.5 cm)" in [each.replace("\u00a0", " ") for each in said]
    assert {"1 in", "(25 mm)"} <= {each.replace("\u00a0", " ") for each in said}


@pytest.mark.parametrize("scene", SCENES)
def test_paper_has_no_span_and_says_what_the_screen_says(scene):
    paper, screen = (svg(scene, INCHES, "p", medium) for medium in ("paper", "screen"))
    assert list(paper.iter("tspan")) == []
    assert "".join(texts(paper)) == "".join(
        "".join(text.itertext()) for text in screen.iter("text")
    )


def test_the_one_run_takes_no_more_room_than_the_layout_left_it():
    for scene in SCENES:
        screen = svg(scene, INCHES, "p", "screen")
        room = {
            "".join(text.itertext()): CHARACTER * (
                len(text.text or "") * float(text.get("font-size", "0"))
                + sum(len(span.text or "") * float(span.get("font-size", "0")) for span in text)
            )
            for text in screen.iter("text")
        }  # fmt: skip
        for text in svg(scene, INCHES, "p", "paper").iter("text"):
            if text.text in room:
                taken = CHARACTER * len(text.text) * float(text.get("font-size", "0"))
                assert taken <= room[text.text] + CHARACTER * len(text.text) * 0.05


def test_a_sheet_is_white_from_edge_to_edge():
    sheet = paper_sheet(SCENES, INCHES, "sheet")
    ground = sheet[0]
    assert (ground.tag, ground.get("fill")) == ("rect", "#fff")
    assert [ground.get(name) for name in ("x", "y", "width", "height")] == (
        sheet.get("viewBox", "").split()
    )
