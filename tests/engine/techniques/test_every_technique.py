"""What holds for every technique in the register, whatever is made with it.

A new technique is taken in by these tests without being named here.
"""

from collections import defaultdict
from collections.abc import Iterator
from fractions import Fraction

import pytest
from hypothesis import Phase, given, settings
from hypothesis import strategies as st

from arithmetic import exact, is_true, work_out
from drawn import check_drawing, check_fragment
from handout_engine import register
from handout_engine.amounts.lengths import ZERO, Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Amount, Tape
from handout_engine.amounts.sources import Ground
from handout_engine.amounts.values import Sentence
from handout_engine.pages.fragments import PARTS, block
from handout_engine.working.technique import Technique, make
from handout_engine.working.workings import Grain, Working
from thoroughness import SEARCHING
from ways_out import check_way_out
from worked import work
from written_inputs import inputs_of

KEYS = register.keys()
TAPES = [Tape("inches", 16), Tape("metric", 8)]
EXAMPLES = settings.default.max_examples // 4
TRIALS = settings.default.max_examples
"""Of so many random inputs, the first so many that can be sewn are looked at closely."""
LEAST_SEWN = Fraction(1, 10) if SEARCHING else Fraction(1, TRIALS)
"""The share that must be made. Draws that follow each other are much alike: where a third of a
thousand is made, it may be two of the first twenty-five."""
WITHOUT_FORMULA = {
    Ground.GIVEN, Ground.PRACTICE, Ground.PUBLISHED, Ground.LAYOUT, Ground.DRAWN,
}  # fmt: skip

every_technique = pytest.mark.parametrize("key", KEYS)
random_inputs = st.data()


def worked_at_random(data: st.DataObject, key: str) -> Working | None:
    """The technique with random inputs; None when they cannot be sewn, which it says itself."""
    technique = register.find(key)
    written = data.draw(inputs_of(technique))
    try:
        return make(technique, written).work()
    except RefusalError as refusal:
        assert refusal.message.isprintable()
        assert not refusal.message.endswith("."), "a refusal follows the place in the file"
        check_way_out(technique, written, refusal)
        return None


def sentences(working: Working) -> Iterator[Sentence]:
    """Every sentence a page prints of a working."""
    for step in (*working.sample, *working.steps):
        yield step.text
        if step.checkpoint is not None:
            yield step.checkpoint
    for picture in working.pictures:
        yield from (picture.caption, picture.scene.title, picture.scene.description)
    for value in working.values.values():
        if value.formula is not None:
            yield value.formula


def test_the_register_names_each_module_and_finds_it():
    assert tuple(sorted(KEYS)) == KEYS
    for key in KEYS:
        assert register.find(key).key() == key


@pytest.mark.parametrize(
    ("name", "sentence"),
    [
        ("banded-rufle", 'there is no technique "banded-rufle"; did you mean "banded-ruffle"?'),
        ("../os", 'there is no technique "../os"; known: '),
        ("__init__", 'there is no technique "__init__"; known: '),
        ("gathered_ruffle", 'there is no technique "gathered_ruffle"; did you mean'),
    ],
)
def test_an_unknown_technique_is_refused_with_the_nearest_name(name, sentence):
    with pytest.raises(RefusalError) as refused:
        register.find(name)
    assert refused.value.message.startswith(sentence)


@every_technique
def test_it_says_what_it_is(key):
    technique = register.find(key)
    assert issubclass(technique, Technique)
    assert technique.title and technique.family
    assert technique.summary.endswith(".")
    assert technique.__doc__


@every_technique
def test_with_nothing_written_it_works_and_has_all_that_a_handout_shows(key):
    working = work(key)
    assert working.technique == key
    assert working.steps and working.values and working.pictures
    assert len({picture.name for picture in working.pictures}) == len(working.pictures)
    assert len({piece.name for piece in working.pieces}) == len(working.pieces)


@every_technique
def test_two_workings_of_the_same_are_the_same(key):
    assert work(key) == work(key)


@every_technique
def test_what_it_makes_of_its_defaults_holds(key):
    working = work(key)
    for check in CHECKS:
        check(working)


@every_technique
def test_what_it_makes_of_any_measures_holds(key):
    """Random inputs make a handout or are refused; some are made, of many at least a tenth."""
    outcomes: list[bool] = []

    @settings(max_examples=TRIALS, phases=[Phase.generate])  # shrinking takes minutes here
    @given(random_inputs)
    def work_and_look(data: st.DataObject) -> None:
        working = worked_at_random(data, key)
        outcomes.append(working is not None)
        for check in CHECKS if working and sum(outcomes) <= EXAMPLES else ():
            check(working)

    work_and_look()
    assert sum(outcomes) >= LEAST_SEWN * len(outcomes), (
        f"only {sum(outcomes)} of {len(outcomes)} are made"
    )


def every_printed_formula_is_true(working: Working) -> None:
    """Worked out from its parts it gives the amount exactly; what has none says what it rests on.

    An irrational step (bias, circles) is compared to a millionth of a millimetre.
    """
    for value in working.values.values():
        if value.formula is None:
            assert value.basis.ground in WITHOUT_FORMULA, f"{value.name}: no formula, no ground"
            continue
        words = value.formula.words()
        assert "Length(" not in words and "Fraction(" not in words, words
        assert work_out(value.formula) == exact(value.amount), f"{value.name} = {words}"
        assert value.since is None or is_true(value.since), value.how


def every_sentence_can_be_said_on_every_tape(working: Working) -> None:
    """In both systems, with nothing of the code showing through."""
    for each in sentences(working):
        for tape in TAPES:
            for said in (each.first(tape), each.text(tape)):
                assert said.strip() == said != "", each.template
                assert not any(odd in said for odd in ("{", "}", "None", "Fraction", "Length("))
                assert "  " not in said and " ." not in said and " ," not in said, said


def what_is_cut_is_something(working: Working) -> None:
    """Pieces have a size, and their marks and outlines lie on them."""
    for piece in working.pieces:
        assert piece.count >= 1
        assert piece.width.length > ZERO and piece.length.length > ZERO, piece.name
        for mark in piece.marks:
            assert ZERO <= mark.distance <= max(piece.width.length, piece.length.length), mark
        for x, y in piece.outline:
            assert -1e-6 <= x <= piece.length.mm + 1e-6
            assert -1e-6 <= y <= piece.width.mm + 1e-6


def no_piece_is_wider_than_its_cloth(working: Working) -> None:
    """Neither in the layout nor by the usable width that the page names."""
    for layout in working.layouts:
        for laid in layout.laid:
            assert laid.left + laid.item.across <= layout.width, laid.item.name
            assert laid.top + laid.item.along <= layout.used, laid.item.name
    usable = [v.length for name, v in working.values.items() if name.endswith("usable_width")]
    for piece in working.pieces if usable else ():
        if piece.grain is Grain.CROSS:
            assert piece.extents[0] <= max(usable), piece.name


def what_is_bought_holds_what_is_cut(working: Working) -> None:
    """By area, cloth by cloth, and by the length that is used of it."""
    for layout in working.layouts:
        whole = layout.width * (2 if layout.folded else 1)
        area = sum(
            (piece.width.length.mm * piece.length.length.mm * piece.count * (1 + piece.on_fold))
            for piece in working.pieces
            if piece.cloth == layout.cloth and not piece.outline
        )
        bought = layout.order.to_buy(layout.used)
        assert bought.mm * whole.mm >= area, layout.cloth
    for name, value in working.values.items():
        if name.endswith("cloth_to_buy"):
            assert value.length >= working.values[name.replace("to_buy", "used")].length


def each_cloth_of_the_cut_list_is_bought(working: Working) -> None:
    """No piece is cut from a cloth that is not among what to have ready."""
    named = {supply.name for supply in working.supplies}
    assert {piece.cloth for piece in working.pieces} <= named


def a_name_means_one_thing(working: Working) -> None:
    """No value hides an input of the same name, and no two values that differ share a label."""
    for name in working.inputs.keys() & working.values.keys():
        assert working.inputs[name].amount == working.values[name].amount, name
    amounts: dict[str, list[Amount]] = defaultdict(list)
    for value in working.values.values():
        amounts[value.label].append(value.amount)
    assert {label: found for label, found in amounts.items() if len(set(found)) > 1} == {}


def no_amount_is_inexact(working: Working) -> None:
    """Amounts are fractions; floats are for drawings."""
    for value in working.named.values():
        assert not isinstance(value.amount, float), value.name
        if isinstance(value.amount, Length):
            assert type(value.amount.mm) is Fraction, value.name


def every_part_can_be_shown(working: Working) -> None:
    """Each part of the handout, and each drawing, is well-formed and within its page."""
    for tape in TAPES:
        tree = block(working, PARTS, tape, "b0-made", "made")
        check_fragment(tree)
        for picture in working.pictures:
            check_drawing(picture.scene, tape)


CHECKS = (
    every_printed_formula_is_true,
    every_sentence_can_be_said_on_every_tape,
    what_is_cut_is_something,
    no_piece_is_wider_than_its_cloth,
    what_is_bought_holds_what_is_cut,
    each_cloth_of_the_cut_list_is_bought,
    a_name_means_one_thing,
    no_amount_is_inexact,
    every_part_can_be_shown,
)
