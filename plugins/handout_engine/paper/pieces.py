"""A piece to cut at true scale: cut and seam line, fold, notches, grain, and its name on it."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from functools import lru_cache
from itertools import product
from math import sqrt

from handout_engine.amounts.values import sentence
from handout_engine.drawing.scene import Area, Line, Note, Point, Shape, Stroke, Tone
from handout_engine.drawing.slits import slit_shapes
from handout_engine.geometry.points import snapped
from handout_engine.geometry.polygons import contains, distance_to_outline, extents, sides
from handout_engine.paper.ink import TEXT
from handout_engine.paper.lettering import width, wrapped
from handout_engine.working.workings import Grain, Piece

LONGEST_GRAIN = 120.0
HEAD = 3.0
"""How long the head of the grain arrow is, in mm."""
TICK = 5.0
"""How long a notch is that lies on the cut line itself."""
NEAR = 0.5
"""Nearer to the cut line than this a notch lies on it."""
PLACES = 12
"""In so many steps each way a place for the words is looked for."""
MOST_CORNERS = 120
"""So many corners of an outline are looked at for that."""
LINE_HEIGHT = 5.0
WORDS_IN_ROOM, NARROWEST, ARROW_ROOM = 1.4, 12.0, 3.0
"""How wide words are for each mm of room round them, how wide at least, and from the arrow."""
SMALL_PAIR, SMALL_GAP = 16.0, 2.0
"""How large the two of a pair are drawn in small, at most, and how far from their middle, in mm."""
FAR = 20.0
"""So far apart, words on a piece cannot meet."""
SAME = 1e-6
ROOT = sqrt(0.5)


def on_paper(piece: Piece, points: Sequence[Point]) -> tuple[Point, ...]:
    """A piece's points with the lengthwise grain upright on the paper.

    An outline runs along the piece's length; where that lies along the selvage, it goes downward.
    """
    if piece.grain is Grain.STRAIGHT:
        return tuple((y, x) for x, y in points)
    return tuple(points)


def piece_shapes(piece: Piece, words: Sequence[str]) -> tuple[Shape, ...]:
    """A piece as it is cut out of paper, lengthwise grain upright, on the bias slanting.

    `words` are written on it, one below the other.
    """
    outline, seam = on_paper(piece, piece.outline), on_paper(piece, piece.seam_outline)
    fold = _fold(piece, outline)
    shapes: list[Shape] = [Area(outline, outline=None)]
    shapes += _lines(outline, _left_out(piece, outline, fold), Line.CUT)
    if seam:
        shapes += _lines(seam, _left_out(piece, seam, fold), Line.STITCH)
    place = _roomiest(seam or outline)
    if fold is not None:
        shapes += _on_fold(outline, fold, place[0])
    shapes += [_notch(outline, notch) for notch in on_paper(piece, piece.notches)]
    if piece.slit:
        shapes += slit_shapes(on_paper(piece, piece.slit), TICK, (TICK, LINE_HEIGHT))
    if piece.pair:
        shapes += _in_small(outline, place, words)
    return (*shapes, *_words_and_grain(piece, place, words))


def _fold(piece: Piece, outline: Sequence[Point]) -> tuple[int, float] | None:
    """The line of a piece's fold: which coordinate is the same all along it, and its amount.

    The fold is the longest straight edge along the piece's length, at one side of it.
    """
    if not piece.on_fold:
        return None
    axis = 0 if piece.grain is Grain.STRAIGHT else 1
    lengths: dict[float, float] = {}
    for start, end in sides(outline):
        if abs(start[axis] - end[axis]) < SAME:
            level = snapped(start[axis])
            lengths[level] = lengths.get(level, 0.0) + abs(end[1 - axis] - start[1 - axis])
    return (axis, max(lengths, key=lambda level: lengths[level])) if lengths else None


def _lies_on(fold: tuple[int, float] | None, start: Point, end: Point) -> bool:
    if fold is None:
        return False
    axis, level = fold
    return abs(start[axis] - level) < SAME and abs(end[axis] - level) < SAME


def _left_out(piece: Piece, outline: Sequence[Point], fold: tuple[int, float] | None) -> set[int]:
    """The numbers of the sides that are no line of their own: on the fold, or not cut at all."""
    around = sides(outline)
    found = {number for number, side in enumerate(around) if _lies_on(fold, *side)}
    if piece.whole:
        every = {_rounded(*side) for side in around}
        found |= {
            number for number, (start, end) in enumerate(around) if _rounded(end, start) in every
        }
    return found


def _rounded(start: Point, end: Point) -> tuple[float, ...]:
    return tuple(round(number, 6) + 0.0 for point in (start, end) for number in point)


def _lines(outline: Sequence[Point], left_out: set[int], line: Line) -> Iterable[Stroke]:
    """A closed line, without the sides with these numbers."""
    around = list(enumerate(sides(outline)))
    if not left_out:
        yield Stroke((*outline, outline[0]), line)
        return
    first = min(left_out)
    run: list[Point] = []
    for number, (_, end) in [*around[first:], *around[:first]]:
        if number not in left_out:
            run.append(end)
            continue
        if len(run) > 1:
            yield Stroke(tuple(run), line)
        run = [end]
    if len(run) > 1:
        yield Stroke(tuple(run), line)


def _on_fold(outline: Sequence[Point], fold: tuple[int, float], words: Point) -> Iterable[Shape]:
    """The fold line, and what it is: beside it, where the piece's own words are far."""
    axis, level = fold
    along = [point[1 - axis] for side in sides(outline) if _lies_on(fold, *side) for point in side]
    low, high = min(along), max(along)
    places = [low + share * (high - low) for share in (0.5, 0.2, 0.8)]
    middle = max(places, key=lambda place: min(FAR, abs(place - words[1 - axis])))
    (left, top), (right, bottom) = extents(outline)
    if axis == 0:
        yield Stroke(((level, low), (level, high)), Line.FOLD)
        inward = level <= (left + right) / 2
        at, anchor = (level + (2 if inward else -2), middle), "start" if inward else "end"
    else:
        yield Stroke(((low, level), (high, level)), Line.FOLD)
        inward = level <= (top + bottom) / 2
        at, anchor = (middle, level + (4 if inward else -2)), "middle"
    yield Note(at, sentence("fold line"), anchor=anchor)


def _notch(outline: Sequence[Point], notch: Point) -> Stroke:
    """A short line across the allowance, from the cut line to the seam."""
    start, end = min(sides(outline), key=lambda side: distance_to_outline(side, notch))
    foot = _foot(notch, start, end)
    if _apart(foot, notch) > NEAR:
        return Stroke((foot, notch), Line.CUT)
    length = _apart(start, end)
    across, down = (end[0] - start[0]) / length, (end[1] - start[1]) / length
    inner = [(foot[0] - way * TICK * down, foot[1] + way * TICK * across) for way in (1, -1)]
    inside = next((each for each in inner if contains(outline, each)), inner[0])
    return Stroke((foot, inside), Line.CUT)


def _foot(point: Point, start: Point, end: Point) -> Point:
    """The place on a straight side that is nearest to a point."""
    across, down = end[0] - start[0], end[1] - start[1]
    squared = across * across + down * down
    share = ((point[0] - start[0]) * across + (point[1] - start[1]) * down) / squared
    share = max(0.0, min(1.0, share))
    return snapped(start[0] + share * across), snapped(start[1] + share * down)


def _apart(one: Point, other: Point) -> float:
    across, down = other[0] - one[0], other[1] - one[1]
    return sqrt(across * across + down * down)


def _lines_of(words: Sequence[str], room: float) -> list[str]:
    """The words on a piece, broken to fit in."""
    across = max(NARROWEST, WORDS_IN_ROOM * room)
    return [line for text in words for line in wrapped(text, across, TEXT)]


def _in_small(
    outline: Sequence[Point], place: tuple[Point, float], words: Sequence[str]
) -> Iterable[Shape]:
    """Both pieces of a pair below the words: the one printed, and its mirror image, hatched."""
    (x, y), room = place
    (left, top), (right, bottom) = extents(outline)
    down = y + (len(_lines_of(words, room)) + 1) / 2 * LINE_HEIGHT
    scale = min(SMALL_PAIR, room) / max(bottom - top, right - left)
    if y + room < down + scale * (bottom - top):
        return
    for way, tone in ((-1, Tone.RIGHT), (1, Tone.WRONG)):
        small = tuple(
            (x + way * (SMALL_GAP + scale * (right - across)), down + scale * (level - top))
            for across, level in outline
        )
        yield Area(small, tone, Line.THIN)


def _words_and_grain(
    piece: Piece, place: tuple[Point, float], words: Sequence[str]
) -> Iterable[Shape]:
    """The grain arrow where there is most room, and beside it the words."""
    (x, y), room = place
    lines = _lines_of(words, room)
    left = x - (max(width(line, TEXT) for line in lines) + ARROW_ROOM) / 2
    along = (ROOT, ROOT) if piece.grain is Grain.BIAS else (0.0, 1.0)
    half = max(2 * HEAD, min(LONGEST_GRAIN / 2, 0.8 * room))
    yield from _grain((left, y), along, half)
    for number, text in enumerate(lines):
        at = (left + ARROW_ROOM, y + (number - (len(lines) - 1) / 2) * LINE_HEIGHT)
        yield Note(at, sentence(text.replace("{", "{{").replace("}", "}}")), anchor="start")


def _grain(at: Point, along: Point, half: float) -> Iterable[Stroke]:
    """An arrow with an open head at both ends."""
    (x, y), (dx, dy) = at, along
    ends = [(x - half * dx, y - half * dy), (x + half * dx, y + half * dy)]
    yield Stroke((ends[0], ends[1]), Line.THIN)
    for (end_x, end_y), way in zip(ends, (-1, 1), strict=True):
        back_x, back_y = end_x - way * HEAD * dx, end_y - way * HEAD * dy
        yield Stroke(
            ((back_x - dy, back_y + dx), (end_x, end_y), (back_x + dy, back_y - dx)), Line.THIN
        )


def _roomiest(outline: Sequence[Point]) -> tuple[Point, float]:
    """The place inside an outline that is farthest from it, roughly, and how far that is."""
    coarse = outline[:: max(1, len(outline) // MOST_CORNERS)]
    return _roomiest_of(tuple(coarse), extents(outline))


@lru_cache(maxsize=500)
def _roomiest_of(coarse: Sequence[Point], box: tuple[Point, Point]) -> tuple[Point, float]:
    """The roomiest of many places in a box; kept, since a piece is drawn on several sheets."""
    (left, top), (right, bottom) = box
    best, room = ((left + right) / 2, (top + bottom) / 2), 0.0
    for across, down in product(range(1, PLACES), repeat=2):
        x, y = left + across / PLACES * (right - left), top + down / PLACES * (bottom - top)
        if min(x - left, right - x, y - top, bottom - y) <= room:
            continue  # no place has more room than there is to the sides of the box
        if contains(coarse, (x, y)):
            distance = distance_to_outline(coarse, (x, y))
            if distance > room + SAME:
                best, room = (x, y), distance
    return best, room
