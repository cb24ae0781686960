"""Smocking drawn: the dots on flat cloth, the pleats cut through, the dot sheet."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.breaks import freehand, left_out, measured
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Dots,
    Grain,
    Line,
    Note,
    Point,
    Scene,
    Shape,
    Side,
    Stroke,
    Tone,
    rectangle,
)

MOST_COLUMNS = 16
MOST_ROWS = 9
MOST_NAMES = 9
"""So many columns, rows and names of rows are drawn on the page; the rest is left out."""
LAST_COLUMNS, GAP = 2, 1.4
"""So many columns are drawn beyond the rest that is left out, and how many dots apart from it."""
PLEATS_CUT = 8


@dataclass(frozen=True)
class DotSheet:
    """Dots to print: spaces between its columns, rows in all, rows that hold at either end."""

    spaces: int
    rows: int
    holding: int
    dot_spacing: Value
    row_spacing: Value


def dot_sheet(drawn: DotSheet, every_name: bool) -> Scene:
    """All dots of the sheet with its first and last column ruled; names of all rows, or some."""
    across, down = drawn.dot_spacing.mm, drawn.row_spacing.mm
    width, height = drawn.spaces * across, (drawn.rows - 1) * down
    shapes: list[Shape] = [
        Dots(tuple(_field(drawn.spaces + 1, drawn.rows, (across, down), (0.0, 0.0))))
    ]
    reach = min(across, down) * 0.5
    for x in (0.0, width):
        shapes.append(Stroke(((x, -reach), (x, height + reach)), Line.THIN))
    step = 1 if every_name else max(1, -(-drawn.rows // MOST_NAMES))
    for row in range(0, drawn.rows, step):
        held = row < drawn.holding or row >= drawn.rows - drawn.holding
        name = "H" if held else str(row - drawn.holding + 1)
        shapes.append(Note((width + 1.6 * reach, row * down), sentence(name), anchor="start"))
    middle = drawn.spaces // 2 * across
    shapes.append(Dimension((middle, 0), (middle + across, 0), drawn.dot_spacing, Side.ABOVE))
    if not every_name:  # at its true scale the sheet would grow wider than the paper
        shapes.append(Dimension((0, 0), (0, down), drawn.row_spacing, Side.LEFT))
    return Scene(
        sentence("Dot sheet for smocking"),
        sentence(
            "Dots {dot} apart in rows {row} apart. Trace them on the wrong side; to go on along "
            "the rows, lay the first ruled column on the last one you traced.",
            dot=drawn.dot_spacing,
            row=drawn.row_spacing,
        ),
        tuple(shapes),
        tallest=240.0,
    )


def _field(columns: int, rows: int, steps: Point, at: Point) -> Iterable[Point]:
    for row in range(rows):
        for column in range(columns):
            yield at[0] + column * steps[0], at[1] + row * steps[1]


@dataclass(frozen=True)
class FlatSmocking:
    """The cloth before it is gathered: where its dots begin, how many, and how wide it is."""

    sheet: DotSheet
    side: Value
    top: Value
    cut: Value


def flat_smocking(flat: FlatSmocking) -> tuple[Shape, ...]:
    """The upper part of the cloth, with break lines where columns are left out and it goes on."""
    across, down = flat.sheet.dot_spacing.mm, flat.sheet.row_spacing.mm
    side, top = flat.side.mm, flat.top.mm
    rows = min(flat.sheet.rows, MOST_ROWS)
    broken = flat.sheet.spaces + 1 > MOST_COLUMNS
    columns = MOST_COLUMNS - LAST_COLUMNS if broken else flat.sheet.spaces + 1
    last = side + (columns - 1) * across
    far = last + GAP * across
    right = side + (far + (LAST_COLUMNS - 1) * across if broken else last)
    bottom = top + (rows - 1) * down + max(1.5 * down, 0.16 * right)
    middle = side + columns // 2 * across
    shapes: list[Shape] = [
        Area(rectangle(0, 0, right, bottom), Tone.WRONG, outline=None),
        Stroke(((0, bottom), (0, 0), (right, 0)), Line.CUT),
        Stroke(freehand((0, bottom), (right, bottom)), Line.BREAK),
        Stroke(((right, 0), (right, bottom)), Line.CUT),
        Dots(tuple(_field(columns, rows, (across, down), (side, top)))),
        measured((0, bottom), (right, bottom), flat.cut, Side.BELOW),
        Dimension((middle, 0), (middle + across, 0), flat.sheet.dot_spacing, Side.ABOVE),
        Grain((right / 2, (top + (rows - 1) * down + bottom) / 2), (0, 1)),
        Dimension((right, top), (right, top + down), flat.sheet.row_spacing, Side.RIGHT),
    ]
    if broken:
        shapes.append(Dots(tuple(_field(LAST_COLUMNS, rows, (across, down), (far, top)))))
        middle, out = (last + far) / 2, 0.02 * bottom
        gap = ((middle - 0.2 * across, -out), (middle + 0.2 * across, bottom + out))
        shapes.extend(left_out(gap, down=True))
    if side:
        shapes.append(Dimension((0, 0), (side, 0), flat.side, Side.ABOVE))
    if top:
        shapes.append(Dimension((0, 0), (0, top), flat.top, Side.LEFT))
    return tuple(shapes)


@dataclass(frozen=True)
class CutThrough:
    """A few pleats cut through: dot spacing, depth of a pleat, width of ten drawn up."""

    dot_spacing: Value
    depth: Value
    pitch: float


def pleats_section(cut: CutThrough) -> Scene:
    """A row of dots on flat cloth, and the same cloth drawn up, seen at its cut end."""
    return Scene(
        sentence("Dots, and the pleats they make"),
        sentence(
            "Dots {dot} apart; drawn up, the cloth between two dots stands as a pleat {depth} "
            "deep.",
            dot=cut.dot_spacing,
            depth=cut.depth,
        ),
        tuple(_section(cut)),
        tallest=170.0,
    )


def _section(cut: CutThrough) -> Iterable[Shape]:
    step, deep = cut.dot_spacing.mm, cut.depth.mm
    flat = PLEATS_CUT * step
    places = [number * step for number in range(PLEATS_CUT + 1)]
    yield Stroke(((-0.4 * step, 0), (flat + 0.4 * step, 0)), Line.CUT)
    for x in places:
        yield Stroke(((x, -0.09 * step), (x, 0.09 * step)), Line.THIN)
    yield Dimension((0, 0), (step, 0), cut.dot_spacing, Side.ABOVE)
    low = 1.1 * step + deep
    drawn = PLEATS_CUT * cut.pitch
    left = (flat - drawn) / 2
    points: list[Point] = [(left - 0.4 * step, low)]
    for number in range(PLEATS_CUT):
        x = left + number * cut.pitch
        points.append((x, low))
        points.extend(_pleat(x, low, cut.pitch, deep))
    points.extend(((left + drawn, low), (left + drawn + 0.4 * step, low)))
    yield Stroke(tuple(points), Line.CUT)
    yield Stroke(((left - 0.8 * step, low), (left + drawn + 0.8 * step, low)), Line.GATHER)
    yield Dimension((left + drawn, low - deep), (left + drawn, low), cut.depth, Side.RIGHT)
    yield Note((flat, 0), sentence("flat"), anchor="end", above=True)
    yield Note((0, low), sentence("drawn up"), anchor="start")


def _pleat(x: float, low: float, pitch: float, deep: float) -> Iterable[Point]:
    """The rounded top of one pleat standing on two dots."""
    for across, up in ((0.12, 0.55), (0.2, 0.88), (0.5, 1.0), (0.8, 0.88), (0.88, 0.55)):
        yield x + across * pitch, low - up * deep


@dataclass(frozen=True)
class Smocked:
    """A finished panel: its width and height, its pleats and rows."""

    width: Value
    height: Value
    pleats: int
    rows: int
    row_spacing: float


MOST_LINES, MOST_WORKED = 70, 11
"""So many pleats and rows are drawn at most."""


def smocked(panel: Smocked) -> tuple[Shape, ...]:
    """The panel from its right side; below its last row the pleats open into the cloth."""
    wide, high = panel.width.mm, panel.height.mm
    ease = max(panel.row_spacing, 0.12 * high, 0.05 * wide)
    foot, flare = high + ease + 0.25 * wide, 0.12 * wide
    outline = (
        (0.0, -ease),
        (wide, -ease),
        (wide, high + ease),
        (wide + flare, foot),
        (-flare, foot),
        (0.0, high + ease),
    )
    shapes: list[Shape] = [Area(outline, Tone.RIGHT, outline=None)]
    lines = min(panel.pleats, MOST_LINES)
    for number in range(1, lines):
        x = wide * number / lines
        out = x + (2 * x / wide - 1) * flare * 0.8
        reach = high + ease + (foot - high - ease) * (0.75 if number % 2 else 0.5)
        shapes.append(Stroke(((x, -ease), (x, high + ease), (out, reach)), Line.THIN))
    shapes.extend(_rows(panel, lines))
    shapes.append(Stroke((outline[5], outline[0], outline[1], outline[2]), Line.CUT))
    shapes.append(Stroke((outline[2], outline[3]), Line.CUT))
    shapes.append(Stroke((outline[5], outline[4]), Line.CUT))
    shapes.append(Stroke(freehand(outline[4], outline[3]), Line.BREAK))
    shapes.append(Dimension((0, -ease), (wide, -ease), panel.width, Side.ABOVE))
    shapes.append(Dimension((wide, 0), (wide, high), panel.height, Side.RIGHT))
    return tuple(shapes)


def _rows(panel: Smocked, lines: int) -> Iterable[Shape]:
    """Cable rows straight, and between every other two of them a wave; of many rows some."""
    wide = panel.width.mm
    every = -(-panel.rows // MOST_WORKED)
    apart = panel.row_spacing * every
    drawn = (panel.rows - 1) // every + 1
    waves = 2 * max(2, min(lines // 4, round(wide / (2 * apart))))
    for row in range(drawn):
        y = row * apart
        yield Stroke(((0, y), (wide, y)), Line.STITCH)
        if row % 2 and row + 1 < drawn:
            crests = (y + 0.12 * apart, y + 0.88 * apart)
            yield Stroke(
                tuple((wide * n / waves, crests[n % 2]) for n in range(waves + 1)), Line.CUT
            )
