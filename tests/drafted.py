"""Drafts of a garment as it cuts them, and its corners as they are when the seam is sewn."""

from __future__ import annotations

from collections.abc import Iterator
from math import atan2, degrees

from handout_engine.amounts.kinds import Raw
from handout_engine.drafting.drafts import FOLD, Draft, Edge
from handout_engine.drafting.pieces import DraftedGarment
from handout_engine.register import find_garment
from handout_engine.working.technique import make
from handout_engine.working.workings import Working

SEAMS = {
    "shoulder", "side", "underarm", "underarm, other side", "over the arm", "under the arm",
}  # fmt: skip
"""The edges that are sewn to their like, so that what meets them there becomes one edge."""
INSIDE = {"inner edge"}
"""An edge of a facing that lies free inside the garment: where its halves join is not seen."""


def drafted(key: str, **written: Raw) -> tuple[Working, tuple[Draft, ...]]:
    """A garment's working and every piece that it drafted for it."""
    garment = make(find_garment(key), written)
    working = garment.work()
    pieces = garment.drafts if isinstance(garment, DraftedGarment) else ()
    return working, tuple(each.draft for each in pieces)


def corners_at_seams(draft: Draft) -> Iterator[tuple[str, float]]:
    """Each corner between a seam and an edge that crosses it, with its angle inside, degrees."""
    around = (*draft.edges, draft.edges[0])
    for edge, after in zip(draft.edges, around[1:], strict=True):
        sewn = edge.name in SEAMS, after.name in SEAMS
        if any(sewn) and not all(sewn) and not {FOLD, *INSIDE} & {edge.name, after.name}:
            yield f"{draft.name}, {edge.name} and {after.name}", corner(edge, after)


def corner(edge: Edge, after: Edge) -> float:
    """The angle inside a piece where one edge, drawn clockwise, goes over into the next."""
    (x1, y1), (x, y) = edge.points[-2:]
    x2, y2 = after.points[1]
    back, on = (x1 - x, y1 - y), (x2 - x, y2 - y)
    turn = degrees(atan2(on[0] * back[1] - on[1] * back[0], on[0] * back[0] + on[1] * back[1]))
    return turn % 360
