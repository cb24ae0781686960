"""Packing boxes into a strip of fixed width, as low as can be found, without turning them.

Boxes are set one by one on the skyline of those already set: first by taking the best fitting
box for the lowest place, then in several orders, then with pairs of the best order exchanged.
The search is of a fixed length and uses no chance, so the same boxes always lie the same way.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field

EXCHANGES = 240
EFFORT = 6000
"""The most boxes that are set while pairs are exchanged, over all exchanges."""


@dataclass(frozen=True)
class Box:
    """A box `across` wide and `along` high, in whole units; `at_edge` keeps it at the left edge."""

    across: int
    along: int
    at_edge: bool = False


@dataclass(frozen=True)
class Packed:
    """Where each box lies (left, top), in the order given, and how much of the strip is used."""

    places: tuple[tuple[int, int], ...]
    height: int


def pack(boxes: Sequence[Box], width: int) -> Packed:
    """Pack boxes, none wider than the strip, none over another."""
    if not boxes:
        return Packed((), 0)
    least = lower_bound(boxes, width)
    best: tuple[int, list[int], dict[int, tuple[int, int]]] | None = None
    for order in _orders(boxes):
        places, height = _in_order(boxes, order, width)
        if best is None or height < best[0]:
            best = (height, order, places)
        if height <= least:
            break
    assert best is not None
    fitted = None if any(box.at_edge for box in boxes) else _best_fitting(boxes, width)
    if fitted is not None and fitted[1] < best[0]:
        best = (fitted[1], sorted(range(len(boxes)), key=lambda n: fitted[0][n][1]), fitted[0])
    height, order, places = best
    if height > least:
        places, height = _exchanged(boxes, width, order, places, height, least)
    return Packed(tuple(places[number] for number in range(len(boxes))), height)


def lower_bound(boxes: Sequence[Box], width: int) -> int:
    """What no layout can go below: the area over the width, the highest box, and the boxes that
    are too wide to lie beside each other, one above another."""
    area = sum(box.across * box.along for box in boxes)
    highest = max(box.along for box in boxes)
    stacked = sum(box.along for box in boxes if 2 * box.across > width)
    return max(-(-area // width), highest, stacked)


def _orders(boxes: Sequence[Box]) -> Iterator[list[int]]:
    """Orders to try: the largest first by several measures, those at the edge before all."""
    measures: tuple[Callable[[Box], tuple[int, int]], ...] = (
        lambda box: (box.along, box.across),
        lambda box: (box.across, box.along),
        lambda box: (box.across * box.along, box.along),
        lambda box: (box.across + box.along, box.along),
    )
    for measure in measures:
        yield sorted(
            range(len(boxes)),
            key=lambda n: (not boxes[n].at_edge, *(-size for size in measure(boxes[n])), n),
        )


@dataclass
class _Skyline:
    """The lower edge of what is packed: stretches of (left, depth), left to right."""

    width: int
    lefts: list[int] = field(default_factory=lambda: [0])
    depths: list[int] = field(default_factory=lambda: [0])

    def right(self, index: int) -> int:
        return self.lefts[index + 1] if index + 1 < len(self.lefts) else self.width

    def depth_over(self, index: int, across: int) -> int | None:
        """How deep a box lies whose left edge is at a stretch; None if it leaves the strip."""
        end = self.lefts[index] + across
        if end > self.width:
            return None
        depth = 0
        while index < len(self.lefts) and self.lefts[index] < end:
            depth = max(depth, self.depths[index])
            index += 1
        return depth

    def highest(self, box: Box) -> tuple[int, int]:
        """Where a box comes highest (left, depth), leftmost of equals."""
        best: tuple[int, int] | None = None
        for index in range(1 if box.at_edge else len(self.lefts)):
            if best is not None and self.depths[index] >= best[1]:
                continue  # a box lies no higher than the stretch at its left
            depth = self.depth_over(index, box.across)
            if depth is not None and (best is None or depth < best[1]):
                best = (self.lefts[index], depth)
        if best is None:
            raise ValueError("the box is wider than the strip")
        return best

    def cover(self, left: int, across: int, depth: int) -> None:
        """Lower the edge to `depth` over a stretch."""
        end = left + across
        first, after = bisect_left(self.lefts, left), bisect_left(self.lefts, end)
        lefts, depths = [left], [depth]
        if end < self.right(after - 1):
            lefts.append(end)
            depths.append(self.depths[after - 1])
        self.lefts[first:after], self.depths[first:after] = lefts, depths
        self._join(first + len(lefts))
        self._join(first)

    def _join(self, index: int) -> None:
        """Make one of a stretch and the one before it where both are as deep."""
        if 0 < index < len(self.lefts) and self.depths[index] == self.depths[index - 1]:
            del self.lefts[index], self.depths[index]


def _in_order(
    boxes: Sequence[Box], order: Sequence[int], width: int, allowed: int | None = None
) -> tuple[dict[int, tuple[int, int]], int]:
    """Set boxes in an order, each where its lower edge comes highest, leftmost of equals.

    Given up as soon as a box comes lower than is `allowed`; the height is then too much.
    """
    skyline = _Skyline(width)
    places: dict[int, tuple[int, int]] = {}
    for number in order:
        box = boxes[number]
        left, depth = skyline.highest(box)
        places[number] = (left, depth)
        if allowed is not None and depth + box.along > allowed:
            return places, depth + box.along
        skyline.cover(left, box.across, depth + box.along)
    return places, max(skyline.depths)


def _best_fitting(boxes: Sequence[Box], width: int) -> tuple[dict[int, tuple[int, int]], int]:
    """Fill the topmost gap each time with the widest box that fits, the highest of equals."""
    skyline = _Skyline(width)
    places: dict[int, tuple[int, int]] = {}
    waiting = sorted(range(len(boxes)), key=lambda n: (-boxes[n].across, -boxes[n].along, n))
    while waiting:
        index = min(range(len(skyline.lefts)), key=lambda n: (skyline.depths[n], n))
        left, room = skyline.lefts[index], skyline.right(index) - skyline.lefts[index]
        number = next((n for n in waiting if boxes[n].across <= room), None)
        if number is None:
            beside = [
                skyline.depths[n] for n in (index - 1, index + 1) if 0 <= n < len(skyline.depths)
            ]
            skyline.cover(left, room, min(beside))
            continue
        waiting.remove(number)
        box = boxes[number]
        if index and skyline.depths[index - 1] < _depth(skyline, index + 1):
            left += room - box.across
        places[number] = (left, skyline.depths[index])
        skyline.cover(left, box.across, skyline.depths[index] + box.along)
    return places, max(skyline.depths)


def _depth(skyline: _Skyline, index: int) -> int:
    return skyline.depths[index] if index < len(skyline.depths) else 0


def _exchanged(  # noqa: PLR0913, PLR0917 - the state of one search
    boxes: Sequence[Box],
    width: int,
    order: Sequence[int],
    places: dict[int, tuple[int, int]],
    height: int,
    least: int,
) -> tuple[dict[int, tuple[int, int]], int]:
    """Exchange pairs of the order, keeping each exchange that does not make it worse.

    Few boxes have few orders, which come up again and again: each is set once, of boxes that are
    alike whichever it is.
    """
    current, current_height = list(order), _in_order(boxes, order, width)[1]
    kinds = [boxes.index(box) for box in boxes]
    tried: dict[tuple[int, ...], tuple[list[tuple[int, int]], int]] = {}
    state = 12345
    for _ in range(min(EXCHANGES, EFFORT // len(boxes))):
        state = (1103515245 * state + 12345) % 2**31
        first, second = (state >> 8) % len(boxes), (state >> 18) % len(boxes)
        if kinds[current[first]] == kinds[current[second]]:
            continue
        trial = list(current)
        trial[first], trial[second] = trial[second], trial[first]
        alike = tuple(kinds[number] for number in trial)
        if alike not in tried:
            set_there, found_height = _in_order(boxes, trial, width, current_height)
            tried[alike] = list(set_there.values()), found_height
        found, found_height = tried[alike]
        if found_height <= current_height:
            current, current_height = trial, found_height
            if found_height < height:
                places, height = dict(zip(trial, found, strict=True)), found_height
        if height <= least:
            break
    return places, height
