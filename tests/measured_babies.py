"""Random measured babies: a body length of the table, each measure near the table's for it."""

from __future__ import annotations

from collections.abc import Mapping
from itertools import pairwise

from hypothesis import strategies as st
from shapely import LinearRing, Polygon

from handout_engine.amounts.inputs import declared_inputs
from handout_engine.amounts.kinds import Raw
from handout_engine.amounts.lengths import Length, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.bodies.measures import LENGTHS, MEASURES, figure
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Piece, Working
from worked import work

SIZES = tuple(LENGTHS)


def babies(garment: type[Technique], spread: int = 8) -> st.SearchStrategy[Mapping[str, Raw]]:
    """A body length in mm and the measures a garment asks for, each up to `spread` per cent off."""
    names = [each.name for each in declared_inputs(garment) if each.name in MEASURES]

    def measured(tall: int) -> st.SearchStrategy[Mapping[str, Raw]]:
        length = millimetres(tall)
        each = {name: _near(figure(name, length), spread) for name in names}
        return st.fixed_dictionaries({"body_length": st.just(length), **each})

    return st.integers(500, 980).flatmap(measured)


def _near(usual: Length, spread: int) -> st.SearchStrategy[Length]:
    low, high = (float(usual) * (1 + way * spread / 100) for way in (-1, 1))
    return st.integers(round(low), round(high)).map(millimetres)


def made_for(key: str, baby: Mapping[str, Raw]) -> Working | None:
    """A garment for a measured baby; None where it is refused, which names the field to change."""
    try:
        return work(key, **baby)
    except RefusalError as refused:
        assert refused.field, refused.message
        return None


def check_that_babies_near_the_table_get_one(key: str) -> None:
    """All measures a twentieth larger or smaller than the table's, at every size."""
    names = [each for each in MEASURES if each in work(key).inputs]
    for size in SIZES:
        for share in (95, 105):
            work(key, size=size,
                 **{name: figure(name, LENGTHS[size]) * share / 100 for name in names})  # fmt: skip


def check_outlines(working: Working) -> None:
    """No outline crosses itself, and each seam line lies inside its cut line."""
    for piece in working.pieces:
        if not piece.outline:
            continue
        cut = Polygon(piece.outline)
        assert LinearRing(piece.outline).is_simple, piece.name
        assert all(start != end for start, end in pairwise(piece.outline)), piece.name
        if piece.seam_outline:
            assert LinearRing(piece.seam_outline).is_simple, piece.name
            assert cut.buffer(1e-3).contains(Polygon(piece.seam_outline)), piece.name


def area(piece: Piece) -> float:
    """The area of a piece as it is cut, in square mm; half of it on the fold."""
    found: float = Polygon(piece.outline).area
    return found
