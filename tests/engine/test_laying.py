"""Pieces on cloth: a layout by hand, then what every layout keeps, then known best ones."""

from dataclasses import replace
from itertools import combinations
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely.geometry import box

from handout_engine.amounts.lengths import ZERO, Length, inches, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.cloth.laying import MOST_ITEMS, lay, together
from handout_engine.cloth.packing import Box, lower_bound, pack
from handout_engine.working.layouts import Item, Order

ORDER = Order(ZERO, inches(0).mm, inches("9/2"))
WIDTH = inches(44)

sizes = st.integers(1, 400).map(lambda eighths: inches(eighths) / 10)
items = st.lists(
    st.builds(Item, st.sampled_from(["front", "facing", "sleeve"]), sizes, sizes),
    min_size=1,
    max_size=14,
)


def test_three_strips_and_a_yoke_by_hand():
    # 20 + 24 in fill the width in one row 3 in deep; the 40 in strip needs a row of its own, 2 in
    # deep: 5 in, and no layout can be shorter, since 40 in and 20 in never lie side by side
    strips = [("a", 20, 3), ("b", 24, 3), ("c", 40, 2)]
    layout = lay("lawn", WIDTH, [Item(n, inches(w), inches(d)) for n, w, d in strips], ORDER)
    assert layout.used == inches(5)
    assert layout.order.to_buy(layout.used) == inches(9)


def test_a_piece_on_the_fold_lies_at_the_fold_and_others_are_cut_two_at_a_time():
    # folded, 22 in lie open: the half yoke 8 in wide at the fold, the pair of sleeves beside it
    pieces = [Item("yoke", inches(8), inches(6), 1, on_fold=True)]
    pieces += [Item("sleeve", inches(12), inches(6), 2)] * 2
    layout = lay("lawn", WIDTH, pieces, ORDER)
    assert layout.folded
    assert layout.width == inches(22)
    assert [laid.left for laid in layout.laid if laid.item.on_fold] == [ZERO]
    assert len(layout.laid) == 2, "one of the two sleeves is cut through both layers"
    assert layout.used == inches(6)


def test_a_piece_wider_than_the_cloth_is_refused_with_both_widths():
    with pytest.raises(RefusalError) as refused:
        lay("lawn", WIDTH, [Item("band", inches(50), inches(2))], ORDER)
    assert refused.value.message.startswith(
        "band takes 50 in (127 cm) across the cloth, which is only 44 in (111.8 cm) wide there"
    )


def test_pieces_beyond_counting_are_refused():
    with pytest.raises(RefusalError, match="too many to lay out"):
        lay("lawn", WIDTH, [Item("dot", inches(1), inches(1))] * (MOST_ITEMS + 1), ORDER)


@given(items)
def test_no_piece_lies_over_another_or_off_the_cloth(pieces):
    layout = lay("lawn", WIDTH, pieces, ORDER)
    assert sorted(repr(laid.item) for laid in layout.laid) == sorted(map(repr, pieces))
    shapes = [
        box(*map(float, (laid.left, laid.top, laid.left + laid.item.across,
                         laid.top + laid.item.along)))
        for laid in layout.laid
    ]  # fmt: skip
    cloth = box(0, 0, float(WIDTH), float(layout.used))
    assert all(cloth.buffer(1e-6).covers(shape) for shape in shapes)
    assert all(one.intersection(other).area < 1e-6 for one, other in combinations(shapes, 2))


@given(items)
def test_the_length_used_is_never_below_what_the_pieces_need(pieces):
    used = lay("lawn", WIDTH, pieces, ORDER).used
    assert used.mm * WIDTH.mm >= sum(each.across.mm * each.along.mm for each in pieces)
    assert used >= max(each.along for each in pieces)
    assert used <= sum((each.along for each in pieces), ZERO), "one above another always works"


@given(items)
def test_the_same_pieces_always_lie_the_same_way(pieces):
    assert lay("lawn", WIDTH, pieces, ORDER) == lay("lawn", WIDTH, pieces, ORDER)


@given(items, items)
def test_pieces_of_one_cloth_are_laid_together_and_counted_once(first, second):
    apart = [lay("lawn", WIDTH, each, ORDER) for each in (first, second)]
    other = lay("silk", WIDTH, first, ORDER)
    lawn, silk = together([*apart, other])
    assert (lawn.cloth, silk.cloth) == ("lawn", "silk")
    assert len(lawn.laid) == len(first) + len(second)
    assert len(silk.laid) == len(first)


def cut_at_random(width: int, height: int, count: int, chance: Random) -> list[Box]:
    """A rectangle cut into `count` boxes by straight cuts, so that its height is the best."""
    boxes = [(width, height)]
    while len(boxes) < count:
        largest = max(range(len(boxes)), key=lambda n: boxes[n][0] * boxes[n][1] * chance.random())
        across, along = boxes.pop(largest)
        if (across > along) == (chance.random() < 0.8):
            cut = round(across * chance.uniform(0.2, 0.8))
            boxes += [(cut, along), (across - cut, along)]
        else:
            cut = round(along * chance.uniform(0.2, 0.8))
            boxes += [(across, cut), (across, along - cut)]
    chance.shuffle(boxes)
    return [Box(*each) for each in boxes]


def test_layouts_whose_best_is_known_stay_within_fifteen_per_cent():
    # checked against construction: the pieces are cut from a rectangle of known length
    chance = Random(20)
    excess = []
    for _ in range(200):
        height = chance.randint(300_000, 2_000_000)
        boxes = cut_at_random(1_000_000, height, 20, chance)
        assert lower_bound(boxes, 1_000_000) <= height
        excess.append(pack(boxes, 1_000_000).height / height - 1)
    assert min(excess) >= 0
    assert sum(excess) / len(excess) <= 0.15


def test_nothing_to_lay_uses_nothing():
    assert lay("lawn", millimetres(900), [], ORDER).used == Length(inches(0).mm)


def test_pieces_on_the_fold_are_cut_whole_where_that_takes_less_cloth():
    # two halves 7 in wide at the fold lie one below the other, 30 in; whole, 14 in wide each, they
    # lie side by side in 44 in, 15 in
    pieces = [Item("front", inches(7), inches(15), 1, on_fold=True),
              Item("back", inches(7), inches(15), 2, on_fold=True)]  # fmt: skip
    layout = lay("cloth", inches(44), pieces, ORDER)
    assert not layout.folded
    assert layout.used == inches(15)
    assert [laid.item.across for laid in layout.laid] == [inches(14)] * 2


def test_an_outline_is_opened_out_and_closed_again():
    half = Item("front", inches(4), inches(4), 1, on_fold=True,
                outline=((0.0, 0.0), (50.0, 0.0), (101.6, 101.6), (0.0, 101.6)))  # fmt: skip
    other = replace(half, name="back", number=2)
    layout = lay("cloth", inches(20), [half, other], ORDER)
    whole = layout.laid[0].item
    assert whole.opened
    assert min(x for x, _ in whole.outline) == 0
    assert max(x for x, _ in whole.outline) == 203.2
    assert [laid.item for laid in together([layout])[0].laid] == [
        laid.item for laid in lay("cloth", inches(20), [half, other], ORDER).laid
    ]


def test_a_piece_too_wide_for_folded_cloth_is_laid_on_a_single_layer():
    pieces = [Item("front", inches(7), inches(15), 1, on_fold=True),
              Item("skirt", inches(40), inches(10), 2)]  # fmt: skip
    assert lay("cloth", inches(44), pieces, ORDER).used == inches(25)


LEFT_FRONT = ((0.0, 0.0), (100.0, 0.0), (60.0, 80.0), (0.0, 80.0))
RIGHT_FRONT = ((100.0, 0.0), (0.0, 0.0), (40.0, 80.0), (100.0, 80.0))


def front(**fields):
    return Item("front", millimetres(100), millimetres(80), 1, outline=LEFT_FRONT, **fields)


def test_of_a_pair_on_a_single_layer_one_is_turned_over():
    layout = lay("cloth", WIDTH, [front(pair=True)] * 2, ORDER)
    assert [laid.item.outline for laid in layout.laid] == [LEFT_FRONT, RIGHT_FRONT]
    assert [laid.item.turned_over for laid in layout.laid] == [False, True]


def test_what_is_no_pair_is_cut_alike():
    layout = lay("cloth", WIDTH, [front()] * 3, ORDER)
    assert {laid.item.outline for laid in layout.laid} == {LEFT_FRONT}


def test_a_pair_cut_through_two_layers_needs_no_turning():
    back = Item("back", inches(18), inches(6), 2, on_fold=True)
    layout = lay("cloth", WIDTH, [back, back, front(pair=True), front(pair=True)], ORDER)
    assert layout.folded
    assert [laid.item.outline for laid in layout.laid if laid.item.name == "front"] == [LEFT_FRONT]


@given(st.integers(1, 6), st.integers(1, 6))
def test_pairs_of_several_blocks_laid_together_are_pairs_again(first, second):
    apart = [lay("cloth", WIDTH, [front(pair=True)] * 2 * each, ORDER) for each in (first, second)]
    (layout,) = together(apart)
    turned = [laid.item.turned_over for laid in layout.laid]
    assert sum(turned) * 2 == len(turned) == 2 * (first + second)
    assert {laid.item.number for laid in layout.laid} == {1}
