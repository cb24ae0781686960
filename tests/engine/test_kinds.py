import re
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handout_engine import register
from handout_engine.amounts.inputs import declared_inputs
from handout_engine.amounts.kinds import (
    AngleKind,
    ChoiceKind,
    CountKind,
    LengthKind,
    PercentageKind,
    RatioKind,
    ReelKind,
    ThreadCountKind,
    YardageKind,
)
from handout_engine.amounts.lengths import NamedLength, Place, inches, millimetres
from handout_engine.amounts.list_kinds import ListKind, NamedLengthsKind, PlacesKind
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from written_inputs import amounts

BAND = LengthKind(inches("1/16"), inches(6))
FULLNESS = RatioKind(Fraction(1), Fraction(6))
SHRINKAGE = PercentageKind(Fraction(0), Fraction(1, 4))
MAKE = CountKind(1, 200)
ENDS = ChoiceKind(("open", "ring"))
DEPTHS = ListKind(LengthKind(inches("1/4"), inches(40)), 1, 3)
TURN = AngleKind(Fraction(15), Fraction(75))
SIDES = LengthKind(inches(0), inches(40))
CORNERS = PlacesKind(SIDES, 3, 5)
STRIPS = NamedLengthsKind(LengthKind(inches("1/8"), inches(6)), 1, 4, ("lace", "beading"))
STEP = YardageKind(millimetres(10), inches(72))
THREAD = ThreadCountKind(Fraction(5), Fraction(120))
SPOOL = ReelKind(millimetres(5000), inches(360000))
KINDS = [
    BAND, FULLNESS, SHRINKAGE, MAKE, ENDS, DEPTHS, STEP, TURN, CORNERS, STRIPS, THREAD, SPOOL,
]  # fmt: skip


TRIANGLE = tuple(Place(inches(across), inches(down)) for across, down in ((0, 0), (4, 0), (0, 3)))
BAND_OF_TWO = (NamedLength("lace", inches("5/8")), NamedLength("beading", inches("1/2")))


def refused(kind, raw):
    with pytest.raises(RefusalError) as refusal:
        kind.read(raw)
    return refusal.value.message


@pytest.mark.parametrize(
    ("kind", "raw", "amount"),
    [
        (BAND, "1/2 in", inches("1/2")),
        (BAND, "1/16 in", inches("1/16")),
        (BAND, inches(6), inches(6)),
        (FULLNESS, "2:1", Fraction(2)),
        (FULLNESS, 3, Fraction(3)),
        (SHRINKAGE, "5 %", Fraction(1, 20)),
        (MAKE, "2", 2),
        (ENDS, "ring", "ring"),
        (DEPTHS, "1 in; 2 in", (inches(1), inches(2))),
        (DEPTHS, "1 in, 2 in", (inches(1), inches(2))),
        (DEPTHS, "1,5 cm, 2,5 cm", (millimetres(15), millimetres(25))),
        (DEPTHS, ["1 in", inches(2)], (inches(1), inches(2))),
        (TURN, "45", Fraction(45)),
        (TURN, "22,5°", Fraction(45, 2)),
        (TURN, "60 deg", Fraction(60)),
        (CORNERS, "0 in, 0 in; 4 in, 0 in; 0 in, 3 in", TRIANGLE),
        (CORNERS, ["0 in, 0 in", TRIANGLE[1], "0 in, 3 in"], TRIANGLE),
        (CORNERS, TRIANGLE, TRIANGLE),
        (STRIPS, "lace 5/8 in; beading 1/2 in", BAND_OF_TWO),
        (STRIPS, ["lace 5/8 in", BAND_OF_TWO[1]], BAND_OF_TWO),
    ],
)
def test_what_is_written_or_referred_to_is_read(kind, raw, amount):
    assert kind.read(raw) == amount


def test_a_ratio_that_was_referred_to_as_a_whole_number_becomes_a_ratio():
    assert type(FULLNESS.read(3)) is Fraction


@pytest.mark.parametrize(
    ("kind", "raw", "sentence"),
    [
        (BAND, "7 in", "7 in is too large; use at most 6 in (15.2 cm)"),
        (BAND, "1 mm", "1 mm is too small; use at least 1/16 in (2 mm)"),
        (BAND, inches(7), "7 in (17.8 cm) is too large; use at most 6 in (15.2 cm)"),
        (BAND, Fraction(1, 2), "0.5 is not a length"),
        (BAND, ["1 in"], "a list is not a length"),
        (BAND, (inches(1),), "a list is not a length"),
        (BAND, None, "nothing is not a length"),
        (FULLNESS, "0.5", "0.5 is too small; use at least 1"),
        (FULLNESS, inches(2), "2 in (51 mm) is not a ratio"),
        (SHRINKAGE, "30 %", "30 % is too large; use at most 25 %"),
        (MAKE, "0", "0 is too small; use at least 1"),
        (MAKE, "201", "201 is too large; use at most 200"),
        (MAKE, True, "True is not a whole number"),
        (MAKE, Fraction(3, 2), "1.5 is not a whole number"),
        (ENDS, "rings", '"rings" is not one of open, ring; did you mean "ring"?'),
        (ENDS, "flat", '"flat" is not one of open, ring'),
        (ENDS, 3, "3 is not one of open, ring"),
        (ENDS, ["ring"], "a list is not one of open, ring"),
        (DEPTHS, "", "0 given; write from 1 to 3 of them"),
        (DEPTHS, ["1 in"] * 4, "4 given; write from 1 to 3 of them"),
        (DEPTHS, inches(2), "2 in (51 mm) is not a list of lengths"),
        (DEPTHS, ["1 in", ["2 in"]], "a list is not a length"),
        (DEPTHS, "1 in; 50 in", "50 in is too large; use at most 40 in (101.6 cm)"),
        (TURN, "45 in", '"45 in" is not an angle; write 45 deg'),
        (TURN, "80", "80 is too large; use at most 75°"),
        (CORNERS, "0 in, 0 in", "1 given; write from 3 to 5 of them"),
        (CORNERS, ["1 in"] * 3, '"1 in" is not a point; write across, down as in 2 in, 3 in'),
        (
            CORNERS,
            [Place(inches(0), inches(41)), *TRIANGLE[1:]],
            "41 in (104.1 cm) is too large; use at most 40 in (101.6 cm)",
        ),
        (STRIPS, "lace", '"lace" has no name and width; write lace 1/2 in'),
        (STRIPS, "lase 1 in", 'there is no strip called "lase"; did you mean "lace"?'),
        (STRIPS, "lace 9 in", "9 in is too large; use at most 6 in (15.2 cm)"),
        (
            STRIPS,
            [NamedLength("lace", inches(9))],
            "9 in (22.9 cm) is too large; use at most 6 in (15.2 cm)",
        ),
        (
            STRIPS,
            [NamedLength("braid", inches(1))],
            'there is no strip called "braid"; known: beading, lace',
        ),
        (STEP, "5 yd", "5 yd is too large; use at most 2 yd (182.8 cm)"),
        (STEP, "1 mm", "1 mm is too small; use at least 13/32 in (10 mm)"),
    ],
)
def test_what_cannot_be_used_is_refused_in_one_sentence(kind, raw, sentence):
    assert refused(kind, raw) == sentence


def test_a_long_stretch_of_blanks_is_refused_at_once():
    assert "has no name and width" in refused(STRIPS, "lace" + " " * 200_000 + "lace")


def test_bounds_are_said_for_help():
    assert BAND.bounds(Tape()) == "from 1/16 in to 6 in"
    assert BAND.bounds(Tape("metric")) == "from 2 mm to 15.2 cm"
    assert SHRINKAGE.bounds(Tape()) == "from 0 % to 25 %"
    assert ENDS.bounds(Tape()) == "one of open, ring"
    assert TURN.bounds(Tape()) == "from 15° to 75°"
    assert STRIPS.bounds(Tape()) == "1 to 4 of lace, beading, each from 1/8 in to 6 in"
    assert CORNERS.bounds(Tape()) == "3 to 5 points (across, down), each from 0 in to 40 in"
    assert DEPTHS.bounds(Tape()) == "1 to 3 lengths, each from 1/4 in to 40 in"


anything = st.recursive(
    st.none() | st.booleans() | st.integers() | st.text(max_size=20) | st.fractions(),
    lambda inner: st.lists(inner, max_size=3),
    max_leaves=4,
)


@given(st.sampled_from(KINDS), anything)
def test_nothing_does_worse_than_be_refused(kind, raw):
    try:
        kind.read(raw)
    except RefusalError as refusal:
        assert refusal.message.isprintable()


@given(st.data(), st.sampled_from(KINDS))
def test_what_lies_within_the_bounds_is_accepted_as_it_is(data, kind):
    amount = data.draw(amounts(kind))
    assert kind.read(amount) == amount


NAMED = re.compile(r"\b(?:instead of|worked out from|same as|unless|what) (\w+)\b")
"""Words behind which a help would name another input, without an article."""


@pytest.mark.parametrize("key", register.keys())
def test_help_speaks_in_labels_and_not_in_the_names_that_authors_write(key):
    """The form shows the help to a reader, who sees no field names."""
    declared = declared_inputs(register.find(key))
    names = {each.name for each in declared if each.name != each.label}
    for each in declared:
        for text in (each.help, each.otherwise):
            assert "_" not in text, f"{each.name}: {text}"
            assert names.isdisjoint(NAMED.findall(text)), f"{each.name}: {text}"


@pytest.mark.parametrize("key", register.keys())
def test_every_declared_default_is_accepted_and_helped(key):
    for each in declared_inputs(register.find(key)):
        assert each.help.endswith("."), each.name
        assert each.label == each.label.strip() != ""
        assert each.kind.bounds(Tape())
        if each.default is None:
            assert each.otherwise, f"{each.name} may be left out, but nothing says what then"
        else:
            assert each.kind.read(each.default) is not None
