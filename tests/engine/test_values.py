import pytest

from handout_engine.amounts.lengths import inches
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.sources import GEOMETRY, GIVEN, PRACTICE, SOURCES, published
from handout_engine.amounts.values import Value, said, sentence

TAPE = Tape()
FRONT = Value("front", "front strip", inches(2), GIVEN)
BAND = Value("band", "band", inches("1/2"), GIVEN)
FORMULA = sentence("{front} + 2 × {band}", front=FRONT, band=BAND)
FACING = Value("facing", "facing strip", inches(3), GEOMETRY, FORMULA)


def test_a_formula_in_words_and_with_its_numbers_put_in():
    assert FORMULA.words() == "front strip + 2 × band"
    assert FORMULA.first(TAPE) == "2 in + 2 × 1/2 in"
    assert FORMULA.first(Tape("metric")) == "51 mm + 2 × 13 mm"
    assert FORMULA.text(TAPE) == "2 in (51 mm) + 2 × 1/2 in (13 mm)"


def test_a_sentence_that_names_what_is_not_given_is_a_mistake_of_the_technique():
    with pytest.raises(KeyError, match="cuff"):
        sentence("{front} + {cuff}", front=FRONT)


def test_the_runs_of_a_sentence_keep_words_and_amounts_apart():
    runs = list(sentence("Cut {front} wide.", front=FRONT).runs(TAPE))
    assert runs == ["Cut ", said(FRONT, TAPE), " wide."]
    assert said(FRONT, TAPE).both == "2 in (51 mm)"


def test_braces_in_an_amount_are_not_read_as_a_part():
    assert sentence("Use {cloth}.", cloth="{front}").text(TAPE) == "Use {front}."


def test_a_value_is_said_in_the_way_it_wants():
    order = Value("buy", "cloth to buy", inches(37), GEOMETRY, saying=Saying.YARDAGE)
    assert said(order, TAPE).both == "1 1/8 yd (94 cm)"


def test_a_value_gives_its_amount_only_as_what_it_is():
    count = Value("strips", "strips", 3, GEOMETRY)
    assert count.whole == 3
    assert FACING.length == inches(3)
    assert FACING.mm == pytest.approx(76.2)
    with pytest.raises(TypeError, match="strips is not a length"):
        _ = count.length
    with pytest.raises(TypeError, match="front is not a whole number"):
        _ = FRONT.whole


def test_a_basis_in_words():
    assert PRACTICE.text == "common practice, no source"
    assert published("utah-ruffle").text == (
        "published: Utah State University Extension, Clothing construction: Straight ruffle"
    )


def test_every_source_stands_under_its_own_key_and_says_where_to_look():
    for key, source in SOURCES.items():
        assert source.key == key
        assert source.author and source.title and source.detail.endswith(".")
