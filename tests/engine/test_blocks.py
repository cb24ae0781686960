import pytest
from hypothesis import given
from hypothesis import strategies as st

from handout_engine.amounts.refusals import RefusalsError
from handout_engine.pages.blocks import Block, read_block
from handout_engine.pages.fragments import LIBRARY_PARTS, ONLY_WHEN_ASKED, PAGE_PARTS, PARTS

SLEEVE = {"technique": "banded-ruffle", "name": "sleeve", "band": "1/4 in", "edge": "9 in"}


def refused(written):
    with pytest.raises(RefusalsError) as refusal:
        read_block(written)
    return [(each.field, each.message) for each in refusal.value.refusals]


def test_a_block_keeps_its_fields_apart_from_what_it_is():
    block = read_block(SLEEVE, line=14, lines={"band": 17})
    assert (block.technique, block.name, block.of) == ("banded-ruffle", "sleeve", "")
    assert block.fields == {"band": "1/4 in", "edge": "9 in"}
    assert (block.line, block.lines) == (14, {"band": 17})
    assert block.title == 'banded-ruffle "sleeve"'


def test_a_block_shows_everything_unless_it_is_told_what():
    assert read_block(SLEEVE).show == tuple(part for part in PARTS if part not in ONLY_WHEN_ASKED)
    assert read_block({**SLEEVE, "show": "cuts, steps"}).show == ("cuts", "steps")
    assert read_block({**SLEEVE, "show": ["cuts", "steps"]}).show == ("cuts", "steps")
    assert read_block({"of": "page"}).show == tuple(PAGE_PARTS)
    assert read_block({"of": "library"}).show == tuple(LIBRARY_PARTS)


def test_references_are_found_in_texts_and_in_lists():
    block = Block({"edge": "sleeve.edge", "depths": ["1 in", "hem.depth"], "band": "1.5 in"})
    found = [(name, match["block"], match["value"]) for name, match in block.references()]
    assert found == [("edge", "sleeve", "edge"), ("depths", "hem", "depth")]


@pytest.mark.parametrize(
    ("written", "field", "sentence"),
    [
        (
            {"band": "1 in"},
            "technique",
            "the block names no technique; write for instance technique: gathered-ruffle",
        ),
        (
            {**SLEEVE, "of": "hem", "name": ""},
            "of",
            "a block has a technique or is of another block, not both",
        ),
        ({**SLEEVE, "name": ["a", "b"]}, "name", "name: a list is not a name"),
        (
            {**SLEEVE, "show": "cuts, stepps"},
            "show",
            'show: there is no part "stepps"; did you mean "steps"?',
        ),
        (
            {"of": "sleeve", "name": "again"},
            "name",
            'name: a block of "sleeve" has no name of its own',
        ),
        (
            {"of": "sleeve", "band": "1 in"},
            "band",
            'band: a block of "sleeve" takes only of and show',
        ),
    ],
)
def test_what_no_block_may_say_is_refused_in_one_sentence(written, field, sentence):
    found = refused(written)
    assert (field, sentence) in found


@pytest.mark.parametrize("name", ["page", "garment", "library", "Sleeve", "a b", "-a", "a" * 41])
def test_names_that_cannot_be_referred_to_are_refused(name):
    ((field, sentence),) = refused({**SLEEVE, "name": name})
    assert field == "name"
    assert "cannot name a block; use small letters, digits and hyphens, but not" in sentence


def test_every_slip_of_a_block_is_told_at_once():
    found = refused({"of": "sleeve", "name": "x", "band": "1 in", "show": "stepps"})
    assert [field for field, _ in found] == ["show", "name", "band"]


written_values = st.text(max_size=30) | st.lists(st.text(max_size=12), max_size=3)
keys = st.sampled_from(["technique", "name", "of", "show", "edge", "band"]) | st.text(max_size=12)


@given(st.dictionaries(keys, written_values, max_size=6))
def test_no_mapping_of_texts_and_lists_does_worse_than_be_refused(written):
    try:
        block = read_block(written)
    except RefusalsError as several:
        assert all(each.message.isprintable() for each in several.refusals)
    else:
        assert block.technique or block.of
