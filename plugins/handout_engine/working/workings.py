"""What a technique works out: values, pieces, seams, steps, drawings, supplies, cautions."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import Enum
from functools import cached_property
from math import sqrt
from typing import ClassVar, Protocol

from handout_engine.amounts.lengths import Length, from_float
from handout_engine.amounts.saying import Amount
from handout_engine.amounts.sources import Source
from handout_engine.amounts.values import Sentence, Value
from handout_engine.drawing.scene import Point, Scene
from handout_engine.working.cautions import Caution
from handout_engine.working.layouts import Layout


class Grain(Enum):
    """How a piece lies on the cloth; the value is the word a cut list prints.

    The length is the second of the two figures there, whether it is the longer or not.
    """

    STRAIGHT = "length along the selvage"
    CROSS = "length across the cloth"
    BIAS = "on the bias"


@dataclass(frozen=True)
class Mark:
    """A line to mark on a piece: its distance from the top raw edge."""

    label: str
    distance: Length


def marked(*lines: Length) -> tuple[Mark, ...]:
    """Marks of named lengths, by the names they have."""
    return tuple(Mark(each.label, each) for each in lines)


@dataclass(frozen=True)
class Piece:
    """A piece to cut: `count` of them, `width` deep and `length` long.

    `outline`, for a piece that is no rectangle, is its closed outline in mm: x along its length,
    y along its width, inside that rectangle. A piece `on_fold` is half of what is cut: its long
    straight edge lies at the fold of the cloth. `seam_outline` is the line it is sewn on and
    `notches` are points of the seams that must meet, both in the outline's coordinates. A piece
    `worked` first is cut from cloth that another block makes up, so no cloth is bought for it. A
    `whole` ring is not slit: where its outline runs to its inner line and back, nothing is cut. Of
    a `pair` every second one is the mirror image of the outline. A `slit` runs from its open end
    to its closed one, in the same coordinates.
    """

    name: str
    cloth: str
    count: int
    width: Value
    length: Value
    grain: Grain
    marks: tuple[Mark, ...] = ()
    outline: tuple[Point, ...] = ()
    on_fold: bool = False
    seam_outline: tuple[Point, ...] = ()
    notches: tuple[Point, ...] = ()
    worked: bool = False
    whole: bool = False
    pair: bool = False
    slit: tuple[Point, ...] = ()

    @property
    def extents(self) -> tuple[Length, Length]:
        """What one piece takes across the cloth and along it, its grain respected."""
        width, length = self.width.length, self.length.length
        if self.grain is Grain.STRAIGHT:
            return width, length
        if self.grain is Grain.CROSS:
            return length, width
        diagonal = from_float(float(width + length) / sqrt(2))
        return diagonal, diagonal

    @property
    def lying(self) -> tuple[Point, ...]:
        """The outline as it lies on the cloth, x across it; empty for a rectangle or on bias."""
        if self.grain is Grain.STRAIGHT:
            return tuple((y, x) for x, y in self.outline)
        return self.outline if self.grain is Grain.CROSS else ()


Cell = Sentence | Value | Amount


@dataclass(frozen=True)
class Chart:
    """A table of its own, such as a marking chart; the first cell of each row names it."""

    caption: str
    headings: tuple[str, ...]
    rows: tuple[tuple[Cell, ...], ...]


@dataclass(frozen=True)
class Seam:
    """A seam and the allowance it consumes on each layer."""

    name: str
    allowance: Length


@dataclass(frozen=True)
class Step:
    """A numbered step in sewing order; `checkpoint` is what to measure before going on."""

    text: Sentence
    checkpoint: Sentence | None = None


BINDINGS = ("single-binding", "double-binding")
"""The techniques that make a binding, which is then not bought."""


@dataclass(frozen=True)
class Supply:
    """Something to buy or have at hand.

    `amount` is how much of it, a length or a count, or None for a plain notion; `size` is its size
    or number, as of a needle. It is not needed beside a block of one of the techniques named in
    `unless`, which makes it or says how much of it.
    """

    name: str
    amount: Value | None = None
    note: Sentence | None = None
    size: Value | None = None
    unless: tuple[str, ...] = ()


@dataclass(frozen=True)
class Picture:
    """A drawing and where it belongs: the finished thing, the pieces, or a detail of sewing.

    `sheet` is what is printed at true scale: the scene itself, or one with more on it.
    """

    name: str
    caption: Sentence
    scene: Scene
    finished: bool = False
    sheet: Scene | None = None


@dataclass
class Collected:
    """What a technique has put on its worksheet, each kind in the order in which it is read."""

    pieces: list[Piece] = field(default_factory=list)
    seams: list[Seam] = field(default_factory=list)
    sample: list[Step] = field(default_factory=list)
    steps: list[Step] = field(default_factory=list)
    pictures: list[Picture] = field(default_factory=list)
    supplies: list[Supply] = field(default_factory=list)
    cautions: list[Caution] = field(default_factory=list)
    charts: list[Chart] = field(default_factory=list)
    layouts: list[Layout] = field(default_factory=list)
    steps_put_by: int = 0


class Worked(Protocol):
    """What a working is read from: a technique, which works each part out when it is asked for."""

    title: ClassVar[str]

    @classmethod
    def key(cls) -> str:
        """The name authors write."""

    @property
    def inputs(self) -> Mapping[str, Value]:
        """Its inputs as named values."""

    @property
    def values(self) -> Mapping[str, Value]:
        """Its values by name."""

    @property
    def cutting(self) -> Collected:
        """What is cut."""

    @property
    def layouts(self) -> list[Layout]:
        """How the pieces lie on each cloth."""

    @property
    def supplies(self) -> list[Supply]:
        """What to buy and have ready."""

    @property
    def sewing(self) -> Collected:
        """What is sewn."""

    @property
    def drawing(self) -> Collected:
        """What is drawn."""


@dataclass(frozen=True)
class Working:
    """The whole result of one block, each part worked out when it is asked for.

    `graded` is the same at other sizes: the size, and the working or why there is none.
    """

    made: Worked
    graded: tuple[tuple[str, Working | str], ...] = ()

    @property
    def technique(self) -> str:
        """The name authors write."""
        return self.made.key()

    @property
    def title(self) -> str:
        """The title of the technique."""
        return self.made.title

    @property
    def inputs(self) -> Mapping[str, Value]:
        """Its inputs as named values."""
        return self.made.inputs

    @cached_property
    def values(self) -> Mapping[str, Value]:
        """Its values by name."""
        return self.made.values

    @property
    def pieces(self) -> tuple[Piece, ...]:
        """What is cut."""
        return tuple(self.made.cutting.pieces)

    @property
    def seams(self) -> tuple[Seam, ...]:
        """Its seams with what they take."""
        return tuple(self.made.cutting.seams)

    @property
    def sample(self) -> tuple[Step, ...]:
        """What to try first."""
        return tuple(self.made.sewing.sample)

    @property
    def steps(self) -> tuple[Step, ...]:
        """What to sew, in order."""
        return tuple(self.made.sewing.steps)

    @property
    def put_by(self) -> int:
        """After how many steps the work can be put by until it is called for; 0 for never."""
        return self.made.sewing.steps_put_by

    @property
    def supplies(self) -> tuple[Supply, ...]:
        """What to buy and have ready."""
        return tuple(self.made.supplies)

    @property
    def cautions(self) -> tuple[Caution, ...]:
        """What to take care of."""
        return tuple(dict.fromkeys(self.made.sewing.cautions))

    @property
    def charts(self) -> tuple[Chart, ...]:
        """Tables of its own."""
        return tuple(self.made.cutting.charts)

    @property
    def layouts(self) -> tuple[Layout, ...]:
        """How its pieces lie on their cloths."""
        return tuple(self.made.layouts)

    @property
    def pictures(self) -> tuple[Picture, ...]:
        """Its drawings."""
        return tuple(self.made.drawing.pictures)

    @property
    def named(self) -> Mapping[str, Value]:
        """Inputs and values together: what `{{ name.value }}` and references may speak of."""
        return {**self.inputs, **self.values}

    @property
    def sources(self) -> tuple[Source, ...]:
        """The sources its values and cautions rest on, each once, in order of first use."""
        of_values = [value.basis.source for value in self.named.values() if value.basis.source]
        of_cautions = [source for caution in self.cautions for source in caution.sources]
        return tuple(dict.fromkeys([*of_values, *of_cautions]))
