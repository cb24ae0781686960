"""Blocks at another size: which follow the page's garment, and which keep their own."""

from handout_engine.pages.blocks import read_block
from handout_engine.pages.ordering import named
from handout_engine.pages.sized import fitted, following, sized

PAGE = (
    read_block({"garment": "day-gown", "size": "56", "head": "40 cm", "sizes": "50 to 62"}),
    read_block({"garment": "slip", "name": "under"}),
    read_block({"garment": "slip", "name": "toddler", "size": "92"}),
    read_block({"technique": "banded-ruffle", "edge": "garment.sleeve_edge"}),
)


def test_a_range_of_sizes_is_read_in_steps_of_six():
    assert PAGE[0].sizes == ("50", "56", "62")
    assert read_block({"garment": "slip", "sizes": ["74", "50"]}).sizes == ("50", "74")
    assert len(read_block({"garment": "slip", "sizes": "all"}).sizes) == 9


def test_a_garment_without_a_size_follows_the_first():
    named = [block.fields for block in following(PAGE)]
    assert named[1]["size"] == ".size" or named[1]["size"].endswith(".size")
    assert named[2]["size"] == "92"
    assert named[3] == PAGE[3].fields


def test_at_another_size_nothing_of_the_baby_is_kept():
    assert sized(PAGE, "74")[0].fields == {"size": "74"}
    assert sized(PAGE, "74")[1:] == list(PAGE[1:])


def test_a_babys_measures_take_the_place_of_the_pages():
    own = {"size": "68", "chest": "43 cm"}
    assert fitted(PAGE, own)[0].fields == own
    assert fitted(PAGE, {}) == list(PAGE)


def test_a_garment_that_follows_the_first_is_made_to_the_same_baby():
    own = {"size": "68", "chest": "43 cm", "head": "44 cm", "neck_ease": "1 cm"}
    known = {"day-gown": ("size", "chest", "neck_ease"), "slip": ("size", "head")}
    gown, under, toddler, _ = fitted(PAGE, own, known)
    assert gown.fields == {"size": "68", "chest": "43 cm", "neck_ease": "1 cm"}
    assert under.fields == {"head": "44 cm"}
    assert toddler == PAGE[2]
    followed = following(named([gown, under]))
    assert "head" in followed[1].fields
    assert set(sized(followed, "74")[1].fields) == {"size", "body_length"}
