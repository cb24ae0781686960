"""The cloths of heirloom sewing and what each asks of needle, thread, stitch and iron.

One reviewed table. Every cell holds its own basis: common practice unless it is published. They
are where to begin; a sample on the real cloth decides.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import Generic, TypeVar

from handout_engine.amounts.lengths import Length, millimetres
from handout_engine.amounts.sources import PRACTICE, Basis, published

T = TypeVar("T")

EXEMPT_WEIGHT = Fraction("88.2")
"""Plain cloth of so many g/m2 or more is exempt from testing how it burns (16 CFR 1610.1(d))."""

LITTLE, EASILY, BADLY, NOT = "little", "easily", "badly", "not at all"

NEEDLE_SIZES: Mapping[int, int] = {
    60: 8,
    65: 9,
    70: 10,
    75: 11,
    80: 12,
    90: 14,
    100: 16,
    110: 18,
    120: 19,
}
"""Machine needles as they are sold: metric number, and the old number beside it."""


@dataclass(frozen=True)
class Cell(Generic[T]):
    """One figure or word of the table, and what it rests on."""

    what: T
    basis: Basis = PRACTICE


@dataclass(frozen=True)
class Range:
    """From the least to the most that is usual."""

    least: Fraction
    most: Fraction


@dataclass(frozen=True)
class Material:
    """What one cloth asks for.

    `weight` is the usual one in g/m2, `thread` in tex, `shrinkage` the share of a length that the
    first washes take. A `raised` cloth has a nap or loops.
    """

    weight: Cell[int]
    needle: Cell[int]
    point: Cell[str]
    thread: Cell[Range]
    stitch: Cell[Length]
    fullness: Cell[Range]
    frays: Cell[str]
    shrinkage: Cell[Fraction]
    press: Cell[str]
    raised: bool = False

    @property
    def burns_fast(self) -> bool:
        """Whether it is usually lighter than what the rule exempts from testing."""
        return self.weight.what < EXEMPT_WEIGHT


def _range(least: str, most: str) -> Range:
    return Range(Fraction(least), Fraction(most))


HEIRLOOM = Cell(_range("12", "20"))
FINE = Cell(_range("15", "24"))
GENERAL = Cell(_range("20", "30"))
FIRM = Cell(_range("24", "35"))

LIGHT_CLOTH = Cell(_range("2", "3"), published("utah-ruffle"))
SHEER = Cell(_range("5/2", "3"))
MIDDLING = Cell(_range("7/4", "9/4"))
STANDS = Cell(_range("5/4", "7/4"))
HARDLY = Cell(_range("1", "5/4"))

SHARP, ROUND = "sharp", "round (for knits)"
COTTON = "hot and damp, from the wrong side"
CRISP = "hot and dry, through a cloth: steam and starch can cockle it, so try a scrap first"
SILK = "warm and dry, through a cloth: a drop of water leaves a mark, and steam dulls it"
DOWN = "hot, face down on a towel, so that its ribs or dots stay up"
LOFT = "lightly, without weight: a pressed nap or loop stays flat"


def _material(  # noqa: PLR0913, PLR0917 - one row of the table, in the order of its columns
    weight: int,
    needle: int,
    thread: Cell[Range],
    stitch: str,
    fullness: Cell[Range],
    frays: str,
    shrinkage: int,
    press: str,
    point: str = SHARP,
    raised: bool = False,
) -> Material:
    return Material(
        Cell(weight),
        Cell(needle),
        Cell(point),
        thread,
        Cell(millimetres(stitch)),
        fullness,
        Cell(frays),
        Cell(Fraction(shrinkage, 100)),
        Cell(press),
        raised,
    )


MATERIALS: Mapping[str, Material] = {
    "batiste": _material(70, 65, HEIRLOOM, "1.8", LIGHT_CLOTH, LITTLE, 3, COTTON),
    "lawn": _material(75, 70, FINE, "2", LIGHT_CLOTH, LITTLE, 3, COTTON),
    "nainsook": _material(80, 70, FINE, "2", LIGHT_CLOTH, LITTLE, 3, COTTON),
    "voile": _material(60, 65, HEIRLOOM, "1.8", LIGHT_CLOTH, EASILY, 4, COTTON),
    "dotted swiss": _material(70, 65, HEIRLOOM, "1.8", LIGHT_CLOTH, EASILY, 3, DOWN),
    "organdy": _material(50, 65, HEIRLOOM, "1.8", SHEER, EASILY, 2, CRISP),
    "net": _material(35, 65, HEIRLOOM, "2", SHEER, NOT, 3, CRISP),
    "dimity": _material(90, 70, FINE, "2", MIDDLING, LITTLE, 3, COTTON),
    "handkerchief linen": _material(105, 70, FINE, "2", MIDDLING, EASILY, 5, COTTON),
    "gingham": _material(120, 75, GENERAL, "2.2", MIDDLING, LITTLE, 4, COTTON),
    "broadcloth": _material(120, 75, GENERAL, "2.2", MIDDLING, LITTLE, 3, COTTON),
    "silk dupioni": _material(110, 75, GENERAL, "2.2", STANDS, BADLY, 3, SILK),
    "pique": _material(180, 80, FIRM, "2.5", STANDS, LITTLE, 5, DOWN),
    "fine corduroy": _material(200, 80, FIRM, "2.5", STANDS, EASILY, 5, LOFT, raised=True),
    "flannel": _material(150, 80, FIRM, "2.5", STANDS, LITTLE, 8, LOFT, raised=True),
    "double gauze": _material(120, 70, GENERAL, "2.5", MIDDLING, BADLY, 8, LOFT),
    "cotton knit": _material(160, 75, GENERAL, "2.5", STANDS, NOT, 6, LOFT, ROUND),
    "towelling": _material(350, 90, FIRM, "3", HARDLY, BADLY, 8, LOFT, raised=True),
}
