"""No sheet says less than nothing: what a worksheet refuses, and every technique at its bounds.

A sample of each technique and garment is drawn at every run; `HYPOTHESIS_PROFILE=search` draws a
thousand. What is drawn is made or refused in a sentence; nothing else may happen.
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

import pytest
from hypothesis import Phase, given, settings
from hypothesis import strategies as st

from amounts_said import below_nothing
from handout_engine import register
from handout_engine.amounts.declaring import value
from handout_engine.amounts.inputs import count, declared_inputs, length
from handout_engine.amounts.kinds import ChoiceKind, Kind, Quantity, Raw
from handout_engine.amounts.lengths import Length, NamedLength, Place, inches
from handout_engine.amounts.list_kinds import ListKind, NamedLengthsKind, PlacesKind
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Amount
from handout_engine.amounts.sources import GIVEN
from handout_engine.amounts.values import Value, sentence
from handout_engine.families.ruffles.gathered_ruffle import GatheredRuffle as Gathered
from handout_engine.working.technique import Technique, make
from handout_engine.working.workings import Chart, Grain, Mark, Piece, Seam, Step, Supply
from handout_engine.working.worksheet import Worksheet
from worked import work
from written_inputs import amounts, inputs_of

SEARCHED = settings.default.max_examples > 100
DRAWS = 1000 if SEARCHED else 4
FINISHING = {
    "banded-ruffle": ("ruffle_length", "edge"),
    "bonnet": ("binding_length", "neck_edge"),
    "centre-gathered-ruffle": ("ruffle_length", "edge"),
    "double-binding": ("strip_length", "bound_edge"),
    "entredeux-join": ("entredeux_length", "edge"),
    "front-band": ("band_length", "opening"),
    "fullness-sample": ("strip_length", "edge"),
    "gathered-edging": ("lace_length", "edge"),
    "gathered-ruffle": ("ruffle_length", "edge"),
    "headed-ruffle": ("ruffle_length", "edge"),
    "lap-placket": ("strip_length", "slit"),
    "layered-ruffle": ("ruffle_length", "edge"),
    "nap-cover": ("binding_length", "around"),
    "outline-ruffle": ("ruffle_length", "edge"),
    "piping": ("piping_length", "seam_length"),
    "puffing-strip": ("ruffle_length", "edge"),
    "single-binding": ("strip_length", "bound_edge"),
}
"""The strip of a technique and the edge that it finishes."""

every_technique = pytest.mark.parametrize("key", register.keys())


class Ribbon(Technique):
    """A technique of three inputs, to work out what cannot be."""

    title, family, summary = "Ribbon", "edges", "A ribbon."

    edge = length("edge", "Its length.", "10 in", ("0 in", "60 in"))
    taken = length("taken off", "At its end.", "1 in", ("0 in", "60 in"))
    bows = count("bows", "How many.", 3, 9)


def refused(technique: type[Technique], **written: Raw) -> RefusalError:
    with pytest.raises(RefusalError) as caught:
        make(technique, written).work()
    return caught.value


class Cut(Ribbon):
    """What is left of it."""

    @value("ribbon that is left")
    def left(self) -> Length:
        return self.edge - self.taken


def test_a_length_below_zero_is_refused_with_its_formula_and_what_to_change():
    assert make(Cut, {}).work().values["left"].length == inches(9)
    refusal = refused(Cut, taken="13 in")
    assert refusal.message == (
        "ribbon that is left would be 3 in (76 mm) below zero, since it is edge - taken off; "
        "change taken"
    )
    assert refusal.field == "taken"


class Bows(Ribbon):
    """What is left when bows are cut from it."""

    @value("for one bow")
    def each(self) -> Length:
        return self.taken + self.taken

    @value("for all bows")
    def all_bows(self) -> Length:
        return self.bows * self.each

    @value("left")
    def left(self) -> Length:
        return self.edge - self.all_bows


def test_what_to_change_is_found_through_the_values_between():
    refusal = refused(Bows, taken="6 in", bows="2")
    assert refusal.message.endswith("since it is edge - for all bows; change bows or taken")


@pytest.mark.parametrize(
    ("amount", "words"),
    [
        (-2, "would be 2 below zero"),
        (Fraction(-1, 4), "would be 0.25 below zero"),
        ((inches(2), inches(-1)), "would be 1 in (25 mm) below zero"),
        (NamedLength("lace", inches(-1)), "would be 1 in (25 mm) below zero"),
        ((Place(inches(1), inches(-2)),), "would be 2 in (51 mm) below zero"),
    ],
)
def test_counts_shares_lists_and_places_are_held_too(amount: Amount, words: str):
    class Odd(Ribbon):
        @value("it", basis=GIVEN)
        def it(self) -> Amount:
            return amount

    assert words in refused(Odd).message


def test_what_is_below_nothing_is_refused_before_cloth_is_laid_out():
    class Narrow(Gathered):
        @value("width", basis=GIVEN)
        def wide(self) -> Length:
            return inches(-1)

        @value("strip, cut width")
        def cut_width(self) -> Length:
            return self.wide

    assert "width would be 1 in" in refused(Narrow, edge="12 in").message


def test_a_difference_may_be_below_zero_and_says_so_by_its_name():
    class Changed(Ribbon):
        @value("change", difference=True)
        def change(self) -> Length:
            return self.taken - self.taken - self.taken

        def sew(self, sheet: Worksheet) -> None:
            sheet.step("Change it by {change}.")

    made = make(Changed, {}).work()
    assert made.values["change"].length == inches(-1)
    assert made.values["change"].difference
    assert made.steps


def test_a_strip_shorter_than_its_edge_is_refused():
    class Strip(Ribbon):
        @value("strip", finishes="edge")
        def strip(self) -> Length:
            return self.edge - self.taken

    assert make(Strip, {"edge": "20 in", "taken": "0 in"}).work().values["strip"].amount == inches(
        20
    )
    assert refused(Strip, edge="20 in").message == (
        "strip 19 in (48.3 cm) would be shorter than edge 20 in (50.8 cm), which it is to finish; "
        "change edge"
    )


SHORT, WIDE = (Value("side", "width", inches(number), GIVEN) for number in (-1, 1))


def put(sheet: Worksheet, what: object) -> None:
    """One thing on the list of its kind."""
    lists = {
        Piece: sheet.pieces,
        Seam: sheet.seams,
        Supply: sheet.supplies,
        Chart: sheet.charts,
        Step: sheet.steps,
    }
    lists[type(what)].append(what)


@pytest.mark.parametrize(
    "what",
    [
        Piece("ribbon", "satin", 1, SHORT, WIDE, Grain.STRAIGHT),
        Piece("ribbon", "satin", 1, WIDE, Value("side", "width", inches(0), GIVEN), Grain.BIAS),
        Piece("ribbon", "satin", -1, WIDE, WIDE, Grain.CROSS),
        Piece("ribbon", "satin", 1, WIDE, WIDE, Grain.CROSS, (Mark("fold", inches(-1)),)),
        Seam("end", inches(-1)),
        Supply("ribbon", SHORT),
        Supply("ribbon", None, sentence("{short} of it", short=inches(-1))),
        Chart("Bows", ("Bow", "From the end"), (("1", inches(-1)),)),
        Step(sentence("Cut {short}.", short=inches(-1))),
        Step(sentence("Cut."), sentence("it measures {short}.", short=inches(-1))),
    ],
)
def test_all_that_is_cut_sewn_bought_marked_and_measured_is_held(what: object):
    class Wrong(Ribbon):
        def cut(self, sheet: Worksheet) -> None:
            if not isinstance(what, Supply | Step):
                put(sheet, what)

        def sew(self, sheet: Worksheet) -> None:
            if isinstance(what, Supply | Step):
                put(sheet, what)

    message = refused(Wrong, taken="2 in").message
    assert message.endswith("; change taken")
    assert "below zero" in message or "would have no size" in message


def at_bounds(kind: Kind) -> st.SearchStrategy[Raw]:
    """An input at its least or its most; of a list, each item."""
    match kind:
        case ChoiceKind(choices=choices):
            return st.sampled_from(choices)
        case Quantity(least=least, most=most):
            return st.sampled_from([least, most])
        case ListKind(each=each, fewest=fewest, most=most):
            return several(at_bounds(each), fewest, most)
        case PlacesKind(each=each, fewest=fewest, most=most):
            place = st.builds(Place, at_bounds(each), at_bounds(each))
            return several(place, fewest, most)
        case NamedLengthsKind(each=each, fewest=fewest, most=most, names=names):
            strip = st.builds(NamedLength, st.sampled_from(names), at_bounds(each))
            return several(strip, fewest, most)
        case _:
            raise ValueError(f"no bounds are known for {type(kind).__name__}")


def several(each: st.SearchStrategy[Raw], fewest: int, most: int) -> st.SearchStrategy[Raw]:
    return st.lists(each, min_size=fewest, max_size=min(most, 8)).map(tuple)


def drawn(technique: type[Technique]) -> st.SearchStrategy[Mapping[str, Raw]]:
    """Inputs anywhere within their bounds, all at their bounds, or a few of either."""
    kinds = {each.name: each.kind for each in declared_inputs(technique)}
    ends = st.fixed_dictionaries({}, optional={name: at_bounds(kinds[name]) for name in kinds})
    few = st.lists(st.sampled_from(sorted(kinds)), min_size=1, max_size=4, unique=True).flatmap(
        lambda names: st.fixed_dictionaries(
            {name: at_bounds(kinds[name]) | amounts(kinds[name]) for name in names}
        )
    )
    return inputs_of(technique) | ends | few


def check_made_or_refused(key: str, written: Mapping[str, Raw]) -> None:
    """What is drawn says nothing below zero, and its strip reaches along its edge."""
    try:
        working = make(register.find(key), written).work()
    except RefusalError as refusal:
        assert refusal.message.isprintable() and not refusal.message.endswith(".")
        return
    assert below_nothing(working) == []
    if key in FINISHING:
        strip, edge = FINISHING[key]
        assert working.named[strip].length >= working.named[edge].length


@every_technique
@settings(max_examples=DRAWS, phases=[Phase.generate])  # shrinking takes minutes here
@given(data=st.data())
def test_any_draw_is_made_or_refused_and_says_nothing_below_zero(key: str, data: st.DataObject):
    check_made_or_refused(key, data.draw(drawn(register.find(key))))


@every_technique
def test_every_choice_is_made_or_refused_with_the_rest_as_usual_or_at_a_bound(key: str):
    inputs = declared_inputs(register.find(key))
    kinds = {each.name: each.kind for each in inputs if isinstance(each.kind, Quantity)}
    least, most = (
        {name: getattr(kind, end) for name, kind in kinds.items()} for end in ("least", "most")
    )
    choices = [
        (each.name, choice)
        for each in inputs
        if isinstance(each.kind, ChoiceKind)
        for choice in each.kind.choices
    ]
    for number, (name, choice) in enumerate(choices):
        every = ({}, least, most) if SEARCHED else ({}, (least, most)[number % 2])
        for rest in every:
            check_made_or_refused(key, {**rest, name: choice})


def test_the_sheet_that_named_a_strip_of_less_than_nothing_is_refused():
    """Thirteen corners with an allowance of 1 1/2 in need 39 in; the edge has 20."""
    with pytest.raises(RefusalError, match=r"corners 13 .* nothing is left to sew"):
        work(
            "single-binding",
            edge="20 in",
            corners="13",
            seam_allowance="3/2 in",
            after="trimmed to the binding",
        )
