"""Stitch types of ISO 4915, and how much thread each takes for each length of seam.

The factors are common practice: how much it really is hangs on stitch length, cloth and tension.
For the lockstitch the path of the thread gives a figure to compare with.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction


@dataclass(frozen=True)
class StitchType:
    """One type: its number in the standard, the threads it is sewn with, and its factor."""

    number: int
    threads: int
    factor: Fraction
    use: str


LOCKSTITCH = "lockstitch"

STITCH_TYPES: Mapping[str, StitchType] = {
    LOCKSTITCH: StitchType(301, 2, Fraction(3), "seams; 2 1/2 to 3"),
    "zigzag lockstitch": StitchType(304, 2, Fraction(7), "lace, edges"),
    "chain stitch": StitchType(101, 1, Fraction(4), "basting"),
    "two-thread chain stitch": StitchType(401, 2, Fraction(11, 2), "stretch seams"),
    "two-thread overedge": StitchType(503, 2, Fraction(12), "edges"),
    "three-thread overedge": StitchType(504, 3, Fraction(14), "knits, edges"),
    "covering stitch": StitchType(602, 4, Fraction(25), "hems of knits"),
    "hand running stitch": StitchType(209, 1, Fraction(5, 4), "gathers, tucks"),
    "hand backstitch": StitchType(205, 1, Fraction(7, 2), "strong seams"),
}
