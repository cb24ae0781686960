"""What a page, a seat or a class must buy: each thing once, and a class the sum of its kits."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as some

from handout_engine.amounts.lengths import Length, inches
from handout_engine.amounts.saying import Tape
from handout_engine.drawing.markup import html
from handout_engine.pages.fragments.shopping import shopping_list
from handout_engine.pages.kits import Kit, Line, Need, Spares, kit, kit_of_pages, total
from handout_engine.register import keys
from handout_engine.working.workings import Supply
from worked import changed, work

EIGHTH = inches(Fraction(9, 2))
LACES = some.integers(2, 40).map(lambda edge: work("gathered-edging", edge=f"{edge} in"))
SLIPS = some.sampled_from(["50", "62", "74"]).map(lambda size: work("slip", size=size))
RUFFLES = some.integers(4, 40).map(lambda edge: work("gathered-ruffle", edge=f"{edge} in"))
BUTTONS = some.just(work("button-spacing"))
KITS = some.lists(some.one_of(LACES, SLIPS, RUFFLES, BUTTONS), max_size=3).map(
    lambda workings: kit(workings, "inches")
)
SHARES = some.fractions(0, 1, max_denominator=100)
GROUPS = ("cloths", "lengths", "counts")


def words(kit_of: list[str]) -> str:
    workings = [work(each) for each in kit_of]
    return html(shopping_list(workings, Tape()))


def test_a_page_buys_lace_and_buttons_too():
    """Twice the lace of one edging: 2 × 1 1/4 yd as its page says."""
    text = words(["gathered-edging", "gathered-edging", "button-spacing"])
    assert text.count("lace: ") == 1
    assert "2 1/2 yd" in text.replace("\u00a0", " ")
    assert 'buttons: <span class="amount">5</span>' in text
    assert text.count("fine thread to match") == 1


def test_a_cloth_is_laid_out_once_for_all_blocks():
    """Two ruffles share strips of one cloth, so they need less than twice what one is sold."""
    one, two = (kit([work("gathered-ruffle")] * times, "inches") for times in (1, 2))
    assert [need.name for need in two.cloths] == ["ruffle cloth"]
    assert one.cloths[0].steps <= two.cloths[0].steps <= 2 * one.cloths[0].steps


def test_two_cloths_of_one_name_become_one():
    front = {"front cloth": "white lawn", "facing cloth": "white lawn"}
    (only,) = kit([work("banded-ruffle")], "inches", front).cloths
    assert only.name == "white lawn"


def test_a_size_is_not_summed_and_stays_a_notion():
    needed = kit([work("twin-needle-clearance")] * 2, "inches")
    assert not needed.lengths
    assert [each.name for each in needed.notions].count("the twin needle") == 1
    assert needed.notions[0].size is not None


def test_the_same_thing_of_another_kind_is_bought_apart():
    narrow, wide = (
        work("elastic-casing", elastic="1/4 in"),
        work("elastic-casing", elastic="1/2 in"),
    )
    assert len(kit([narrow, wide], "inches").lengths) == 2
    assert len(kit([narrow, narrow], "inches").lengths) == 1


def test_lengths_are_summed_before_they_are_rounded_up():
    """Two pieces of 26 in cord are 52 in, which is 12 eighths of a yard (54 in), not 2 × 6."""
    piping = work("piping", seam_length="24 in", overlap="2 in", make="1")
    assert piping.named["length_for_all"].length == inches(26)
    (both,) = kit([piping] * 2, "inches").lengths
    assert both.amount == inches(54)


def test_a_class_by_hand():
    """8 seats of 3 buttons and 5 eighths of lace; a tenth to spare is 2.4 and 4, so 3 and 4."""
    seat = Kit(lengths=(Need("lace", 5, EIGHTH),), counts=(Need("buttons", 3),))
    found = total([seat] * 8, Spares(lengths=Fraction(1, 10), counts=Fraction(1, 10)))
    assert found.counts == (Line(Need("buttons", 24), 8, Need("buttons", 3)),)
    assert found.lengths == (Line(Need("lace", 40, EIGHTH), 8, Need("lace", 4, EIGHTH)),)
    assert found.lengths[0].to_buy.amount == EIGHTH * 44


@given(some.lists(KITS, max_size=4), SHARES)
def test_a_class_needs_the_sum_of_its_kits_and_spares_on_top(kits: list[Kit], share: Fraction):
    found = total(kits, Spares(share, share, share))
    for group in GROUPS:
        lines: tuple[Line, ...] = getattr(found, group)
        every = [need for each in kits for need in getattr(each, group)]
        assert {line.need.kind for line in lines} == {need.kind for need in every}
        for line in lines:
            mine = [need.steps for need in every if need.kind == line.need.kind]
            assert (line.need.steps, line.kits) == (sum(mine), len(mine))
            assert 0 <= line.spare.steps - line.need.steps * share < 1
    for notion, wanted in found.notions:
        assert wanted == sum(notion.kind in {each.kind for each in one.notions} for one in kits)


@given(some.lists(KITS, min_size=1, max_size=4), KITS, some.data())
def test_one_kit_in_another_place_moves_the_total_by_their_difference(
    kits: list[Kit], other: Kit, data: some.DataObject
):
    place = data.draw(some.integers(0, len(kits) - 1))
    changed = [*kits[:place], other, *kits[place + 1 :]]
    for group in GROUPS:
        before, after, gone, come = (
            {line.need.kind: line.need.steps for line in getattr(total(each), group)}
            for each in (kits, changed, [kits[place]], [other])
        )
        for kind in {*before, *after}:
            moved = after.get(kind, 0) - before.get(kind, 0)
            assert moved == come.get(kind, 0) - gone.get(kind, 0)


@pytest.mark.parametrize("key", keys())
def test_what_is_bought_is_a_length_or_a_count(key: str):
    working = work(key)
    for supply in working.supplies:
        assert supply.amount is None or isinstance(supply.amount.amount, Length | int), supply.name
    named = {need.name for need in kit([working], "metric").cloths}
    assert named == {layout.cloth for layout in working.layouts}
    assert all(need.steps > 0 for need in kit([working], "metric").cloths)


def test_what_another_block_makes_is_not_bought():
    binding = Supply("bias binding", unless=("single-binding",))
    bare = changed(work("bib"), supplies=(binding,))
    assert [each.name for each in kit([bare], "inches").notions] == ["bias binding"]
    both = kit([bare, work("single-binding")], "inches")
    assert "bias binding" not in {each.name for each in both.notions}


@pytest.mark.parametrize("key", keys())
def test_only_what_there_is_makes_a_supply_needless(key: str):
    assert {name for supply in work(key).supplies for name in supply.unless} <= set(keys())


def test_what_one_page_makes_is_still_bought_for_another():
    """A binding cut for the bib leaves the gown's binding to be bought."""
    binding = Supply("bias binding", unless=("single-binding",))
    gown = changed(work("bib"), supplies=(binding,))
    own = kit_of_pages([[gown], [gown, work("single-binding")]], "inches")
    assert "bias binding" in {each.name for each in own.notions}
