"""What holds for every garment in the register, at every size and for any measured baby.

A new garment is taken in by these tests without being named here. Its outlines are held against
shapely, an independent library of polygons.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Mapping, Sequence
from functools import cache
from itertools import combinations, pairwise
from unittest.mock import patch

import pytest
from hypothesis import Phase, given, settings
from hypothesis import strategies as st
from shapely import LinearRing, LineString, Point, Polygon, box
from shapely.affinity import scale

from drafted import drafted
from handout_engine import register
from handout_engine.amounts.inputs import BODY, declared_inputs
from handout_engine.amounts.kinds import Raw
from handout_engine.amounts.lengths import ZERO, Length, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.bodies.measures import LENGTHS, MEASURES
from handout_engine.cloth import laying
from handout_engine.drafting import drafts
from handout_engine.drafting.block import BlockInputs
from handout_engine.drafting.drafts import Draft
from handout_engine.drafting.garment import Garment
from handout_engine.pages.blocks import read_block
from handout_engine.pages.fragments import block
from handout_engine.pages.page import work_page
from handout_engine.paper.sheets import pieces_sheet
from handout_engine.working.layouts import Laid, Layout
from handout_engine.working.technique import make
from handout_engine.working.workings import Piece, Working
from measured_babies import babies
from thoroughness import SEARCHING
from worked import steps
from written_inputs import amounts

KEYS = register.garment_keys()
SIZES = tuple(LENGTHS)
SIZES_IN_MM = [int(size) * 10 for size in SIZES]
SLACK = 1e-3
"""So many mm, or square mm, coordinates may be off, which are kept to a millionth of a mm."""

BY_LEFTOVER = {"placket_edge"}
"""What an opening in steps of 5 mm leaves below a yoke: it neither grows nor shrinks with size."""
SHORTER_FROM = {("day-gown", "finished_length"): "80"}
"""A gown reaches beyond the feet until she walks; from that size on it ends at her ankles."""

SIDED = {
    "slip": ("slip front", "slip back"),
    "romper": ("romper front", "romper back"),
    "summer-dress": ("skirt front", "skirt back"),
    "day-gown": ("skirt front", "skirt back"),
    "baby-jacket": ("jacket front", "jacket back"),
}
"""The garments with side seams: their front and their back."""
FINISHES = ("vercast", "French seam", "fell it down", "Bind the edge")

every_garment = pytest.mark.parametrize("key", KEYS)
at_four_sizes = pytest.mark.parametrize("size", ["50", "62", "74", "98"])
at_every_size = pytest.mark.parametrize("size", SIZES)


@cache
def sized(key: str, size: str) -> Working:
    return make(register.find_garment(key), {"size": size}).work()


def polygon(piece: Piece) -> Polygon:
    """A piece as it is cut: its outline, or its rectangle."""
    return Polygon(piece.outline) if piece.outline else room(piece)


def room(piece: Piece) -> Polygon:
    """The rectangle that the cut list gives."""
    return box(0, 0, float(piece.length.length), float(piece.width.length))


def every_piece_is_sewn_inside_the_line_it_is_cut_on(working: Working) -> None:
    """No outline crosses itself, notches lie on the seam, the fold is straight; by shapely."""
    for piece in working.pieces:
        assert piece.count >= 1 and piece.width.length > ZERO and piece.length.length > ZERO
        cut = polygon(piece)
        assert cut.is_valid and cut.area > 0, piece.name
        assert room(piece).buffer(SLACK).contains(cut), piece.name
        if piece.seam_outline:
            seam = Polygon(piece.seam_outline)
            assert LinearRing(piece.seam_outline).is_simple and seam.area > 0, piece.name
            assert cut.buffer(SLACK).contains(seam), piece.name
            assert all(a != b for a, b in pairwise((*piece.seam_outline, piece.seam_outline[0])))
            for notch in piece.notches:
                assert seam.exterior.distance(Point(notch)) < SLACK, piece.name
        if piece.outline and piece.on_fold:
            assert straight_at_fold(piece), f"{piece.name} has no straight edge for the fold"


def straight_at_fold(piece: Piece) -> bool:
    """Whether one straight edge of the outline lies at the fold, which is at y = 0."""
    around = (*piece.outline, piece.outline[0])
    return any(abs(y1) < SLACK and abs(y2) < SLACK and x1 != x2
               for (x1, y1), (x2, y2) in pairwise(around))  # fmt: skip


def the_cloth_holds_every_piece_whole(working: Working) -> None:
    """As many as are cut, none over another or over the selvage; by shapely."""
    for layout in working.layouts:
        shapes = [shape(laid) for laid in layout.laid]
        cloth = box(0, 0, float(layout.width), float(layout.used)).buffer(SLACK)
        for laid, each in zip(layout.laid, shapes, strict=True):
            assert cloth.contains(each), f"{laid.item.name} hangs over the cloth"
        for one, other in combinations(shapes, 2):
            assert one.intersection(other).area < SLACK, "two pieces lie over each other"
        check_all_are_laid(working, layout)


def shape(laid: Laid) -> Polygon:
    left, top = float(laid.left), float(laid.top)
    if laid.item.outline:
        return Polygon([(left + x, top + y) for x, y in laid.item.outline])
    return box(left, top, left + float(laid.item.across), top + float(laid.item.along))


def check_all_are_laid(working: Working, layout: Layout) -> None:
    """As many of each as are cut, and of the same area; an odd one is cut through two layers."""
    laid: Counter[str] = Counter()
    for each in layout.laid:
        laid[each.item.name] += 1 if each.item.on_fold or not layout.folded else 2
    for piece in working.pieces:
        if piece.cloth != layout.cloth or piece.worked:
            continue
        assert laid[piece.name] in {piece.count, piece.count + 1}, piece.name
        if not piece.outline:
            continue
        for each in layout.laid:
            if each.item.name == piece.name:
                whole = polygon(piece).area * (2 if each.item.opened else 1)
                assert shape(each).area == pytest.approx(whole, abs=1.0)


def one_of_each_pair_lies_turned_over(working: Working) -> None:
    """On single cloth two of a pair lie as mirror images, which their signed areas tell."""
    pairs = {piece.name: piece for piece in working.pieces if piece.pair}
    for layout in working.layouts:
        for name in pairs:
            laid = [each.item.outline for each in layout.laid if each.item.name == name]
            ways = [LinearRing(outline).is_ccw for outline in laid]
            assert layout.folded or ways.count(True) == ways.count(False), name
    for piece in working.pieces:
        alone = piece.count == 1 or piece.pair or not piece.outline
        assert alone or lies_alike_turned_over(piece), f"{piece.name} has no left and right"


def lies_alike_turned_over(piece: Piece) -> bool:
    """Whether an outline is its own mirror image, so that it needs no turning."""
    one = polygon(piece)
    middle = piece.width.length.mm / 2
    other = scale(one, 1, -1, origin=(0, float(middle)))
    return bool(one.symmetric_difference(other).area < 0.001 * one.area)


def every_cloth_that_is_cut_is_laid_out(working: Working) -> None:
    """Unless all that is cut from it is worked first."""
    cut = {piece.cloth for piece in working.pieces if not piece.worked}
    assert cut == {layout.cloth for layout in working.layouts if layout.laid}


CHECKS = (
    every_piece_is_sewn_inside_the_line_it_is_cut_on,
    the_cloth_holds_every_piece_whole,
    every_cloth_that_is_cut_is_laid_out,
    one_of_each_pair_lies_turned_over,
)


@every_garment
def test_it_is_a_garment_and_asks_for_a_baby(key):
    garment = register.find_garment(key)
    assert issubclass(garment, Garment)
    asked = {each.name for each in declared_inputs(garment) if each.group == BODY}
    assert {"size", "body_length"} < asked
    assert asked - {"size", "body_length"} <= set(MEASURES)


@every_garment
@at_every_size
def test_at_every_size_it_can_be_made_with_its_defaults(key, size):
    working = sized(key, size)
    assert working.pieces and working.steps and working.layouts
    for check in CHECKS:
        check(working)


@every_garment
@at_every_size
def test_at_every_size_its_measures_are_the_table_s(key, size):
    working = sized(key, size)
    for name in MEASURES:
        if name in working.inputs:
            assert working.inputs[name].amount == register.find_garment(key)(size=size).usual[name]


@every_garment
def test_no_edge_shrinks_as_the_size_grows(key):
    names = {
        name
        for size in SIZES
        for name in sized(key, size).values
        if name.endswith("_edge") or name.startswith("finished_")
    }
    assert names, "a garment has edges that techniques refer to"
    for name in names - BY_LEFTOVER:
        for small, large in pairwise(SIZES):
            if SHORTER_FROM.get((key, name)) == large:
                continue
            before, after = (sized(key, size).values.get(name) for size in (small, large))
            if before is not None and after is not None:
                assert before.length <= after.length, f"{name} from {small} to {large}"


@every_garment
def test_no_finished_measure_falls_as_the_body_grows(key):
    """By steps of 1 mm round every size, and from size to size; all of 1 mm in the long search."""
    beside = {at + each for at in SIZES_IN_MM for each in (-1, 0, 1)}
    some = sorted(beside & set(range(500, 981)))
    made = {tall: finished(key, tall) for tall in (range(500, 981) if SEARCHING else some)}
    for small, large in pairwise(made):
        for name in made[small].keys() & made[large].keys() - BY_LEFTOVER:
            walks = SHORTER_FROM.get((key, name))
            if walks is None or not small < int(walks) * 10 <= large:
                assert made[small][name] <= made[large][name], f"{name} from {small} to {large} mm"


def finished(key: str, tall: int) -> Mapping[str, Length]:
    """What a garment measures when it is made, for a body length in mm.

    No finished measure hangs on allowances or on how pieces lie, which take the most time.
    """
    with (
        patch.object(drafts, "outside", lambda outline, *_: outline),
        patch.object(laying, "_laid", nothing_laid),
    ):
        working = make(register.find_garment(key), {"body_length": millimetres(tall)}).work()
    return {name: value.length for name, value in working.values.items()
            if name.endswith("_edge") or name.startswith("finished_")}  # fmt: skip


def nothing_laid(
    cloth: str, width: Length, _: Sequence[laying.Item], order: laying.Order, *, folded: bool
) -> Layout:
    return Layout(cloth, width, ZERO, (), order, folded)


@pytest.mark.parametrize(
    "key", [each for each in KEYS if issubclass(register.find_garment(each), BlockInputs)]
)
def test_the_chest_of_no_garment_falls_by_any_millimetre(key):
    """Every body length there is: its ease is taken off evenly, and never faster than she grows."""
    chests = [
        garment.chest + garment.chest_ease
        for garment in (make(register.find_garment(key), {"body_length": millimetres(tall)})
                        for tall in range(500, 981))
    ]  # fmt: skip
    assert all(small <= large for small, large in pairwise(chests))


@every_garment
def test_a_larger_baby_takes_no_less_cloth(key):
    """By the area of what is cut; how it lies on the cloth may be luckier in a larger size."""
    areas = [
        sum(polygon(piece).area * piece.count * (1 + piece.on_fold) for piece in working.pieces)
        for working in (sized(key, size) for size in SIZES)
    ]
    for (_, large), (before, after) in zip(pairwise(SIZES), pairwise(areas), strict=True):
        if large not in {at for (name, _), at in SHORTER_FROM.items() if name == key}:
            assert before <= after, large


@every_garment
def test_any_measured_baby_is_fitted_or_refused_with_the_field_to_change(key):
    garment = register.find_garment(key)
    outcomes: list[bool] = []

    @settings(
        max_examples=settings.default.max_examples // 2, phases=[Phase.generate]
    )  # shrinking takes minutes here
    @given(babies(garment))
    def work_and_look(baby: Mapping[str, Raw]) -> None:
        working = worked_or_refused(garment, baby)
        outcomes.append(working is not None)
        for check in CHECKS if working else ():
            check(working)

    work_and_look()
    assert sum(outcomes) * 2 >= len(outcomes), f"only {sum(outcomes)} of {len(outcomes)} are fitted"


def worked_or_refused(garment: type[Garment], baby: Mapping[str, Raw]) -> Working | None:
    try:
        return make(garment, baby).work()
    except RefusalError as refusal:
        assert refusal.field in {each.name for each in declared_inputs(garment)}, refusal.message
        assert refusal.message.isprintable() and not refusal.message.endswith(".")
        return None


@every_garment
@settings(max_examples=6)
@given(data=st.data())
def test_a_measure_of_the_table_typed_by_hand_changes_nothing(key, data):
    """Written out, the table's own figures give the very same garment."""
    size = data.draw(st.sampled_from(SIZES))
    garment = register.find_garment(key)
    usual = garment(size=size).usual
    typed = {name: amount for name, amount in usual.items() if name in MEASURES}
    assert all(isinstance(amount, Length) for amount in typed.values())
    assert make(garment, {"size": size, **typed}).work() == sized(key, size)


@every_garment
def test_its_edges_can_be_taken_by_a_technique_at_every_size(key):
    """By reference, as a page does it: a ruffle on the first edge that is long enough for one."""
    edges = [name for name, value in sized(key, "62").values.items()
             if name.endswith("_edge") and value.length > Length(60)]  # fmt: skip
    assert edges
    for size in SIZES:
        page = work_page(
            [
                read_block({"garment": key, "size": size}),
                *(
                    read_block({"technique": "gathered-ruffle", "name": each.replace("_", "-"),
                                "edge": f"garment.{each}"})
                    for each in edges
                ),
            ],
            Tape(),
        )  # fmt: skip
        assert [problem.text for problem in page.problems] == []
        for name in edges:
            taken = page.workings[name.replace("_", "-")].inputs["edge"].amount
            assert taken == sized(key, size).values[name].amount


def few_inputs(key: str) -> st.SearchStrategy[Mapping[str, Raw]]:
    """One to four of a garment's inputs, each anywhere within its bounds; the rest as usual."""
    kinds = {each.name: each.kind for each in declared_inputs(register.find_garment(key))}
    return st.lists(st.sampled_from(sorted(kinds)), min_size=1, max_size=4, unique=True).flatmap(
        lambda names: st.fixed_dictionaries({name: amounts(kinds[name]) for name in names})
    )


@every_garment
@given(data=st.data())
def test_a_few_inputs_at_their_bounds_are_drafted_or_refused(key: str, data: st.DataObject):
    try:
        working = make(register.find_garment(key), data.draw(few_inputs(key))).work()
    except RefusalError as refusal:
        assert refusal.message
        return
    every_piece_is_sewn_inside_the_line_it_is_cut_on(working)
    below = [name for name, value in working.values.items()
             if isinstance(value.amount, Length) and value.amount < ZERO]  # fmt: skip
    assert not below


@cache
def page_of(key: str, size: str) -> str:
    """All that a page says of a garment, as one text."""
    parts = ("cuts", "layout", "drawing", "finished", "steps", "supplies", "sample", "numbers")
    return " ".join(block(sized(key, size), parts, Tape(), "b0", key).itertext())


@every_garment
@at_four_sizes
def test_no_page_cuts_on_the_fold_what_lies_on_a_single_layer(key, size):
    """Only the layout knows how the cloth lies; all else speaks of the fold line of a piece."""
    said = page_of(key, size)
    sheet = pieces_sheet(sized(key, size), Tape())
    labels = [line for each in sheet.drawings for line in each.label.lines] if sheet else []
    assert "Length(" not in said, "a figure is printed that nobody has named"
    assert not ("single layer" in said and "on the fold" in " ".join((said, *labels)))


@every_garment
@at_four_sizes
def test_pairs_are_called_mirrored_in_cut_list_layout_and_sheet(key, size):
    working = sized(key, size)
    pairs = [piece for piece in working.pieces if piece.pair]
    said = page_of(key, size)
    assert said.count("a pair, one the mirror image of the other") >= len(pairs)
    if pairs and not any(layout.folded for layout in working.layouts):
        assert "the mirror image that makes its pair" in said
    for piece in pairs:
        sheet = pieces_sheet(working, Tape())
        assert sheet is not None
        (label,) = [each.label for each in sheet.drawings if piece.name in each.label.heading]
        assert "one the mirror image of the other" in " ".join(label.lines)


@every_garment
@at_four_sizes
def test_cloth_is_made_ready_edges_are_stayed_and_seams_finished_by_name(key, size):
    first, *others = steps(sized(key, size))
    assert all(word in first for word in ("Wash", "Straighten", "Press"))
    assert any(step.startswith("Stay-stitch") for step in others)
    assert any(word in step for step in others for word in FINISHES)
    for step in others:
        assert not re.search(r"finish (them|the seam|it)\b(?! as)", step), step


@pytest.mark.parametrize("key", SIDED)
@at_four_sizes
def test_side_seams_have_notches_that_meet(key, size):
    """Front and back have a notch as far from the lower end of the side, on the seam."""
    drafts = {draft.name: draft for draft in drafted(key, size=size)[1]}
    front, back = (notches_of_the_side(drafts[name]) for name in SIDED[key])
    assert front == back and front


def notches_of_the_side(draft: Draft) -> list[float]:
    """How far down the side seam each of its notches lies."""
    side = LineString(draft.edge("side").points)
    on_it = [Point(notch) for notch in draft.notches if side.distance(Point(notch)) < SLACK]
    return [round(side.project(notch), 2) for notch in on_it]


@pytest.mark.parametrize("key", ["day-gown", "summer-dress"])
@at_four_sizes
def test_skirt_front_and_back_have_a_sheet_each_and_the_back_its_slit(key, size):
    working = sized(key, size)
    sheet = pieces_sheet(working, Tape())
    assert sheet is not None
    headings = [each.label.heading for each in sheet.drawings]
    assert {"skirt front", "skirt back"} <= {each.split(": ")[-1] for each in headings}
    front, back = (next(piece for piece in working.pieces if piece.name == name)
                   for name in ("skirt front", "skirt back"))  # fmt: skip
    assert front.slit == ()
    (top, aside), (low, same) = back.slit
    assert aside == same == pytest.approx(working.values["slit_aside"].mm)
    assert (top, low) == (0, pytest.approx(working.values["placket_slit"].mm))


@every_garment
@at_four_sizes
def test_a_thread_loop_closes_only_edges_that_meet(key, size):
    """What laps has a button and its hole, or a press fastener."""
    said = " ".join(steps(sized(key, size)))
    if "thread loop" in said:
        assert "edges meet" in said and "placket" not in said and "lap" not in said.split()
