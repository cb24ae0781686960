"""What a page shows of a working, read back from its HTML."""

from xml.etree.ElementTree import Element, fromstring

import pytest

from drawn import check_fragment
from handout_engine import register
from handout_engine.amounts.saying import Tape
from handout_engine.drawing.markup import html
from handout_engine.pages.blocks import read_block
from handout_engine.pages.fragments import PAGE_PARTS, PARTS, block, page_parts
from handout_engine.pages.page import work_page
from worked import INCHES, work

SLEEVE = work("banded-ruffle", edge="9 in", make="2")


def words(tree: Element) -> str:
    """All text of a fragment, with blanks as blanks."""
    return " ".join(" ".join(tree.itertext()).replace("\u00a0", " ").split())


def rows(tree: Element) -> list[list[str]]:
    return [[words(cell) for cell in row] for row in tree.iter("tr")]


def shown(*parts: str, tape: Tape = INCHES) -> Element:
    return block(SLEEVE, parts, tape, "b0-sleeve", "sleeve")


def test_the_cut_list_of_a_pair_of_sleeves():
    assert rows(shown("cuts")) == [
        ["Piece", "Cut", "Wide × long"],
        [
            "front strip front cloth; length across the cloth", "2",
            "2 in × 14 in (51 mm × 35.6 cm)",
        ],
        [
            "facing strip facing cloth; length across the cloth", "2",
            "2 1/2 in × 14 in (64 mm × 35.6 cm)",
        ],
    ]  # fmt: skip


def test_the_cut_list_says_which_pieces_are_half_of_what_is_cut():
    gown = work("day-gown", size="62")
    listed = rows(block(gown, ("cuts",), INCHES, "b0-gown", "gown"))[1:]
    halves = {row[0] for row in listed if row[0].endswith("; half of it, to its fold line")}
    half = "cloth; length along the selvage; half of it, to its fold line"
    assert halves == {f"{name} {half}" for name in ("front yoke", "skirt front", "skirt back")}
    assert len(listed) > len(halves)


def test_a_metric_reader_sees_metric_first():
    made = rows(shown("cuts", tape=Tape("metric")))
    assert made[1][2] == "51 mm × 35.6 cm (2 in × 14 in)"


def test_each_row_of_a_table_has_a_head_and_each_column_too():
    for row in shown("cuts", "marks", "numbers", "measures").iter("tr"):
        scopes = {cell.get("scope") for cell in row if cell.tag == "th"}
        assert scopes in ({"col"}, {"row"})


def test_every_number_is_shown_with_its_formula_and_its_basis():
    made = {row[0]: row[1:] for row in rows(shown("numbers"))}
    assert made["facing strip, cut width"] == [
        "2 1/2 in (64 mm)",
        "front strip, cut width + 2 × band + turn of cloth "
        "2 in (51 mm) + 2 × 1/4 in (6 mm) + 0 in (0 mm) "
        "geometry: follows from folding and joining cloth",
    ]
    assert "published: Utah State" in made["distance between the gathering rows"][1]


def test_every_step_is_an_item_and_every_checkpoint_stands_out():
    tree = shown("steps")
    assert len(tree.findall(".//ol/li")) == len(SLEEVE.steps)
    checked = [step for step in SLEEVE.steps if step.checkpoint]
    assert len(tree.findall(".//p[@class='checkpoint']")) == len(checked) > 2


def test_parts_come_in_the_order_of_a_handout_whatever_is_written():
    made = shown("steps", "cuts", "measures")
    classes = [part.get("class") for part in made]
    assert classes == ["part part-measures", "part part-cuts", "part part-steps"]


def test_one_part_alone_has_no_title_and_several_have():
    assert shown("cuts").find(".//p[@class='part-title']") is None
    titles = [words(each) for each in shown("cuts", "steps").iterfind(".//p[@class='part-title']")]
    assert titles == ["Cut", "Sew"]


@pytest.mark.parametrize("key", register.keys())
def test_every_part_of_every_technique_is_well_formed(key):
    for tape in (Tape(), Tape("metric", 8)):
        check_fragment(block(work(key), PARTS, tape, "b0-x", "x"))


@pytest.mark.parametrize("key", register.keys())
def test_a_figure_is_a_drawing_and_its_caption_and_no_table_is_a_landmark(key):
    """As HTML has it: the caption first or last, and the link to print the sheet inside it."""
    made = block(work(key), PARTS, INCHES, "b0-it", "it")
    for figure in made.iter("figure"):
        assert [child.tag for child in figure] == ["svg", "figcaption"]
    assert [each.get("class") for each in made.iter() if each.get("role") == "region"] == []


def test_cautions_and_sources_of_a_page_stand_once():
    made = words(page_parts([SLEEVE, SLEEVE, work("gathered-ruffle")], PAGE_PARTS, INCHES))
    for caution in SLEEVE.cautions:
        assert made.count(caution.text) == 1
    for source in SLEEVE.sources:
        assert made.count(source.line) == 1


def test_ids_are_the_page_s_only_ones_even_for_parts_shown_twice():
    written = [
        {"technique": "banded-ruffle", "name": "sleeve"},
        {"technique": "gathered-ruffle", "name": "hem"},
        {"of": "sleeve"}, {"of": "sleeve"}, {"of": "page"},
    ]  # fmt: skip
    made = work_page([read_block(each) for each in written], INCHES)
    fragments = [made.fragment(number) for number in range(len(written))]
    assert all(fragments)
    check_fragment(fromstring(f"<main>{''.join(fragments)}</main>"))


def test_the_same_page_is_written_the_same():
    assert html(shown(*PARTS)) == html(
        block(work("banded-ruffle", edge="9 in", make="2"), PARTS, INCHES, "b0-sleeve", "sleeve")
    )


def test_the_steps_are_shown_in_two_parts_numbered_through():
    """A romper is cut and its front opened; then its bands are made; then it is sewn."""
    romper = work("romper")
    begun, finished = (block(romper, (part,), INCHES, "b0-x", "x") for part in ("begin", "finish"))
    (first,), (rest,) = begun.iter("ol"), finished.iter("ol")
    assert 0 < romper.put_by < len(romper.steps)
    assert len(first) == romper.put_by
    assert rest.get("start") == str(romper.put_by + 1)
    assert rest.get("style") == f"counter-reset: step {romper.put_by}"
    whole = block(romper, ("steps",), INCHES, "b0-x", "x")
    assert words(begun) + " " + words(finished) == words(whole)


def test_what_is_sewn_in_one_go_has_no_first_part():
    hem = work("hem")
    assert hem.put_by == 0
    assert words(block(hem, ("begin", "finish"), INCHES, "b0-x", "x")) == ""
