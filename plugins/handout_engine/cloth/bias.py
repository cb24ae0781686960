"""Strips cut on the true bias, at 45 degrees to the grain: their geometry on flat cloth.

A rectangle of cloth lies with its corner at 0, `across` to the right and `along` downward. Its
bands lie between the lines x + y = constant, the first one in that corner. Along either edge a
band takes its width times the square root of 2.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from math import floor, fsum, sqrt

from handout_engine.amounts.lengths import ZERO, Length, from_float, inches, total
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape

Point = tuple[float, float]

MOST_BANDS = 400
LONGEST_CLOTH = inches(20 * 36)
"""No piece of cloth longer than 20 yards is cut into bias strips."""
SURE = 1e-6
"""By so many mm a search goes beyond what is asked for, so that no rounding undercuts it."""


def diagonal(length: Length) -> Length:
    """A length times the square root of 2: from the grain to the bias."""
    return from_float(float(length) * sqrt(2))


@dataclass(frozen=True)
class Band:
    """One band of a rectangle: where it lies, and how long it is.

    `begins` and `ends` are measured along the edges from the first corner. `centre` is its centre
    line; `usable` what is left of that with both ends trimmed to the grain, where one of the
    cloth's corners falls into the band and leaves it pointed.
    """

    number: int
    begins: Length
    ends: Length
    centre: Length
    usable: Length
    shape: str
    outline: tuple[Point, ...]


def band_count(across: Length, along: Length, width: Length) -> int:
    """How many whole bands lie side by side; raises RefusalError when they are too many."""
    count = floor((across + along) / diagonal(width))
    if count > MOST_BANDS:
        raise RefusalError(
            f"{count} strips would be cut, more than {MOST_BANDS}; use wider strips or less cloth"
        )
    return count


def bands(across: Length, along: Length, width: Length) -> tuple[Band, ...]:
    """Every whole band of a rectangle, from its first corner on; raises RefusalError."""
    step = diagonal(width)
    return tuple(
        _band(number, across, along, step)
        for number in range(1, band_count(across, along, width) + 1)
    )


def _band(number: int, across: Length, along: Length, step: Length) -> Band:
    begins, ends = step * (number - 1), step * number
    middle = (begins + ends) / 2
    centre = min(middle, across, along, across + along - middle)
    pointed = [corner for corner in (across, along) if begins < corner < ends]
    trimmed = total(min(ends - corner, corner - begins) for corner in pointed)
    return Band(
        number,
        begins,
        ends,
        diagonal(centre),
        diagonal(max(ZERO, centre - trimmed)),
        _shape(number, middle, across, along, bool(pointed)),
        _outline(float(begins), float(ends), float(across), float(along)),
    )


def _shape(number: int, middle: Length, across: Length, along: Length, pointed: bool) -> str:
    """What the band is once its ends lie on the grain.

    Ends on two parallel edges of the cloth are parallel; on two that meet they are not.
    """
    if number == 1 and not pointed:
        return "triangle"
    return "trapezoid" if (middle <= across) == (middle <= along) else "parallelogram"


def _outline(begins: float, ends: float, across: float, along: float) -> tuple[Point, ...]:
    """The corners of the band inside the cloth, in order round it."""
    points = [
        _upper(begins, across),
        _upper(ends, across),
        _lower(ends, along),
        _lower(begins, along),
    ]
    if begins < across < ends:
        points.insert(1, (across, 0.0))
    if begins < along < ends:
        points.insert(len(points) - 1, (0.0, along))
    return tuple(dict.fromkeys(points))


def _upper(sum_: float, across: float) -> Point:
    """Where the line x + y = sum meets the upper or the right edge."""
    return min(sum_, across), max(0.0, sum_ - across)


def _lower(sum_: float, along: float) -> Point:
    """Where that line meets the left or the lower edge."""
    return max(0.0, sum_ - along), min(sum_, along)


def usable_lengths(across: Length, along: Length, width: Length) -> list[float]:
    """What `bands` says of each band's useful length, in mm, without all the rest: for searches."""
    step, a, c = float(diagonal(width)), float(across), float(along)
    lengths = []
    for number in range(band_count(across, along, width)):
        begins, ends = step * number, step * (number + 1)
        middle = (begins + ends) / 2
        centre = min(middle, a, c, a + c - middle)
        trimmed = fsum(
            min(ends - corner, corner - begins) for corner in (a, c) if begins < corner < ends
        )
        lengths.append(max(0.0, centre - trimmed) * sqrt(2))
    return lengths


Enough = Callable[[Sequence[float]], bool]


def smallest_cloth(
    usable: Length, width: Length, step: Length, enough: Callable[[Sequence[Band]], bool]
) -> tuple[Length, Length]:
    """The least length of cloth of that usable width whose bands are enough, then the least width.

    Both sides are whole steps, save the usable width itself. More cloth never gives less, so each
    is found by halving. Raises RefusalError when even 20 yards are not enough.
    """
    return _smallest(usable, step, lambda across, along: enough(bands(across, along, width)))


def smallest_cloth_by_length(
    usable: Length, width: Length, step: Length, enough: Enough
) -> tuple[Length, Length]:
    """The same where the useful lengths of all bands are enough to judge by: much quicker."""
    return _smallest(
        usable, step, lambda across, along: enough(usable_lengths(across, along, width))
    )


def _smallest(
    usable: Length, step: Length, gives: Callable[[Length, Length], bool]
) -> tuple[Length, Length]:
    rows = _least(floor(LONGEST_CLOTH / step), lambda count: gives(usable, step * count))
    if rows is None:
        raise RefusalError(
            f"more than {Tape().both(LONGEST_CLOTH)} of cloth would be needed for one piece; use "
            "wider cloth, or make the strips in parts",
            "cloth_width",
        )
    along = step * rows
    columns = _least(floor(usable / step), lambda count: gives(step * count, along))
    return (usable if columns is None else step * columns), along


def _least(most: int, enough: Callable[[int], bool]) -> int | None:
    """The least whole number up to `most` that is enough; None when none is.

    It is looked for among small numbers first, since large cloth takes long to cut up.
    """
    if most < 1:
        return None
    high = 1
    while not enough(high):
        if high >= most:
            return None
        high = min(2 * high, most)
    low = high // 2
    while high - low > 1:
        middle = (low + high) // 2
        low, high = (low, middle) if enough(middle) else (middle, high)
    return high


def joins_into(usable: Sequence[float], least: Length, wanted: Length, take_up: Length) -> bool:
    """Whether strips of these lengths, those of at least `least`, join into the wanted length."""
    reached = 0.0
    for length in sorted(usable, reverse=True):
        if length < float(least):
            return False
        reached += length
        if reached >= float(wanted) + 2 * SURE:
            return True
        reached -= float(take_up)
    return False


@dataclass(frozen=True)
class Pieces:
    """Pieces cut from strips without a join: how many, how long each, and of how wide a strip.

    Strips shorter than `least` are not used. Cutting a strip's slanting ends square takes its
    width of its length.
    """

    count: int
    each: Length
    width: Length
    least: Length

    def of(self, band: Band) -> int:
        """How many pieces a band gives."""
        return max(0, floor((self.squared(band) - from_float(SURE)) / self.each))

    def squared(self, band: Band) -> Length:
        """The length of a band with its ends cut square."""
        return max(ZERO, band.usable - self.width)


def gives_whole(usable: Sequence[float], wanted: Pieces) -> bool:
    """Whether strips of these lengths give so many whole pieces."""
    least, width, each = float(wanted.least), float(wanted.width), float(wanted.each)
    useful = (length for length in usable if length >= least and length > width + 2 * SURE)
    return sum(floor((length - width - 2 * SURE) / each) for length in useful) >= wanted.count


def fewest_joined(cut: Sequence[Band], wanted: Length, take_up: Length) -> tuple[Band, ...]:
    """The longest bands, as few as join into the wanted length; all when that is not enough."""
    chosen: list[Band] = []
    reached = ZERO
    for band in _longest_first(cut):
        reached += band.usable - (take_up if chosen else ZERO)
        chosen.append(band)
        if float(reached - wanted) >= SURE:
            break
    return _in_order(chosen)


def fewest_whole(cut: Sequence[Band], wanted: Pieces) -> tuple[Band, ...]:
    """The longest bands, as few as give the whole pieces; all when that is not enough."""
    chosen: list[Band] = []
    found = 0
    for band in _longest_first(cut):
        chosen.append(band)
        found += wanted.of(band)
        if found >= wanted.count:
            break
    return _in_order(chosen)


def _longest_first(cut: Sequence[Band]) -> list[Band]:
    return sorted(cut, key=lambda band: (-band.usable.mm, band.number))


def _in_order(chosen: Sequence[Band]) -> tuple[Band, ...]:
    return tuple(sorted(chosen, key=lambda band: band.number))
