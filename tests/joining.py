"""Strips joined one by one, as at the machine, with no formula of the engine.

A straight join lays two ends on each other and sews `allowance` from them; a diagonal one crosses
the ends at a right angle and sews from corner to corner, which is found here by turning the cloth.
"""

from __future__ import annotations

from fractions import Fraction
from itertools import count

Corner = tuple[Fraction, Fraction]


def straight_take_up(allowance: Fraction) -> Fraction:
    """How much shorter two strips are than their sum once they are sewn and pressed open."""
    first, second = Fraction(1000), Fraction(1000)
    needle_on_first = first - allowance  # measured from the far end of each strip
    needle_on_second = second - allowance
    return first + second - (needle_on_first + needle_on_second)


def diagonal_take_up(width: Fraction) -> Fraction:
    """The same for ends crossed at a right angle, measured along the strip's centre line.

    The first strip lies along x with its end at x = 0 and y from 0 to `width`. The second lies on
    it along y, its end at y = 0, covering the same square. The seam runs from corner to corner of
    the square, (0, width) to (-width, 0) seen on the first strip; opening the second mirrors it in
    that line. Its centre line must then run on in the first strip's.
    """
    far = Fraction(1000)
    half = width / 2
    start_of_first = (-far, half)
    # The second strip is laid so that its length runs up from the square; it is face down.
    end_of_second = (-half, far)
    opened = _mirrored_in_seam(end_of_second, width)
    assert opened[1] == half, "the strips do not run on in one line"
    length_of_first, length_of_second = far, far
    return length_of_first + length_of_second - (opened[0] - start_of_first[0])


def _mirrored_in_seam(point: Corner, width: Fraction) -> Corner:
    """A point mirrored in the line through (-width, 0) and (0, width): y = x + width."""
    x, y = point
    return y - width, x + width


def joined(strips: int, each: Fraction, take_up: Fraction, ring: bool) -> Fraction:
    """Sew strips together one after another; a ring is closed at the end."""
    length = each
    for _ in range(strips - 1):
        length = length + each - take_up
    return length - take_up if ring else length


def fewest_strips(wanted: Fraction, usable: Fraction, take_up: Fraction, ring: bool) -> int:
    """Sew full strips together until they reach the wanted length; how many that took."""
    return next(n for n in count(1) if joined(n, usable, take_up, ring) >= wanted)
