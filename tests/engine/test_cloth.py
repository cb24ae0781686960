from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handout_engine.amounts.lengths import ZERO, Length, inches, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape, yards
from handout_engine.cloth.cloth import Cloth
from worked import length, refusal, said, work

BATISTE = Cloth(
    width=inches(45),
    selvage=inches("1/2"),
    shrinkage_length=Fraction(0),
    shrinkage_width=Fraction(0),
    spare=ZERO,
    order_step=inches("9/2"),
)

lengths = st.fractions(0, 10**4, max_denominator=64).map(Length)
shares = st.integers(0, 25).map(lambda n: Fraction(n, 100))
steps = st.sampled_from([inches("9/2"), inches(9), inches(18), millimetres(10), millimetres(100)])
cloths = st.builds(
    Cloth,
    width=st.integers(20, 70).map(inches),
    selvage=st.sampled_from([ZERO, inches("1/2"), inches(1)]),
    shrinkage_length=shares,
    shrinkage_width=shares,
    spare=lengths,
    order_step=steps,
)


def test_selvages_are_cut_off_both_edges():
    assert BATISTE.usable == inches(44)


def test_cloth_is_narrower_once_washed():
    assert replace(BATISTE, shrinkage_width=Fraction(1, 10)).usable == inches("79/2")


def test_two_yards_wanted_of_cloth_that_loses_a_twentieth():
    # 2 yd / 0.95 = 2.105 yd, ordered as 2 1/8
    cloth = replace(BATISTE, shrinkage_length=Fraction(1, 20))
    assert cloth.order.to_buy(inches(72)) == inches(36) * Fraction(17, 8)
    assert yards(cloth.order.to_buy(inches(72))) == "2 1/8 yd"


def test_what_is_ordered_exactly_is_not_ordered_twice():
    assert BATISTE.order.to_buy(inches(36)) == inches(36)
    assert BATISTE.order.to_buy(inches(36) + millimetres("1/1000")) == inches("81/2")
    assert replace(BATISTE, order_step=millimetres(100)).order.to_buy(millimetres(301)).mm == 400


def test_selvages_that_leave_nothing_are_refused():
    with pytest.raises(RefusalError) as refused:
        _ = replace(BATISTE, width=inches(1)).usable
    assert refused.value.message == "the selvages take the whole cloth; give its full width"
    assert refused.value.field == "selvage"
    assert refusal("gathered-ruffle", cloth_width="5 in", selvage="3 in") == refused.value.message


@given(cloths, lengths)
def test_after_washing_and_straightening_the_bought_cloth_is_long_enough(cloth, used):
    bought = cloth.order.to_buy(used)
    washed = bought.mm - bought.mm * cloth.shrinkage_length
    assert washed - cloth.spare.mm >= used.mm
    one_step_less = bought.mm - cloth.order_step.mm
    assert one_step_less * (1 - cloth.shrinkage_length) - cloth.spare.mm < used.mm


@given(cloths, lengths)
def test_an_order_is_whole_steps(cloth, used):
    assert (cloth.order.to_buy(used) / cloth.order_step).number.denominator == 1


@given(cloths, lengths, lengths)
def test_more_is_never_had_for_less(cloth, used, more):
    assert cloth.order.to_buy(used + more) >= cloth.order.to_buy(used)
    assert replace(cloth, spare=cloth.spare + more).order.to_buy(used) >= cloth.order.to_buy(used)


@given(cloths, lengths, shares)
def test_cloth_that_shrinks_more_is_bought_longer(cloth, used, share):
    worse = replace(cloth, shrinkage_length=max(share, cloth.shrinkage_length))
    assert worse.order.to_buy(used) >= cloth.order.to_buy(used)
    assert replace(cloth, shrinkage_width=Fraction(1, 4)).usable <= cloth.usable


@given(cloths)
def test_the_usable_width_is_what_the_knife_leaves(cloth):
    washed = cloth.width.mm - cloth.width.mm * cloth.shrinkage_width
    assert (cloth.usable + cloth.selvage + cloth.selvage).mm == washed


def test_the_whole_order_of_a_ruffle_by_hand():
    # 3 rows of 2 3/4 in = 8 1/4 in, 1 in spare, a twentieth lost: 9 1/4 / 0.95 = 9.74 in,
    # which is 3 eighths of a yard
    working = work("gathered-ruffle", edge="44 in", fullness="2", shrinkage_length="5 %")
    assert length(working, "cloth_used") == inches("33/4")
    assert said(working, "cloth_to_buy") == "3/8 yd"


def test_an_order_in_steps_of_ten_centimetres_says_ten_centimetres():
    working = work("gathered-ruffle", order_step="10 cm")
    formula = working.values["cloth_to_buy"].formula
    assert formula is not None
    assert formula.first(Tape("metric")).endswith("rounded up to the next 10 cm")


def test_washing_comes_first_where_the_cloth_is_said_to_shrink():
    steps = work("gathered-ruffle", shrinkage_width="3 %").steps
    assert steps[0].text.template.startswith("Wash, dry and press")
    assert not work("gathered-ruffle").steps[0].text.template.startswith("Wash")
