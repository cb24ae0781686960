"""Angles in degrees, and the ratios that belong to them."""

from __future__ import annotations

from fractions import Fraction
from math import acos, asin, atan, cos, degrees, pi, radians, sin, tan
from typing import overload

from handout_engine.amounts.expressions import Closeness, Expression, called, joined, literal
from handout_engine.amounts.numbers import Plain, Pure, Ratio, expression_of, irrational, plain


class Angle(Pure[Fraction]):
    """An angle in degrees."""

    __slots__ = ()

    @property
    def radians(self) -> float:
        """The angle for the functions of `math`."""
        return radians(float(self.number))

    def __mul__(self, times: Plain) -> Angle:
        """The angle so many times."""
        if (number := plain(times)) is None:
            return NotImplemented
        made = joined(self.made, " × ", expression_of(times), Closeness.PRODUCT)
        return Angle(self.number * number, made)

    def __rmul__(self, times: Plain) -> Angle:
        """So many times the angle."""
        if (number := plain(times)) is None:
            return NotImplemented
        made = joined(expression_of(times), " × ", self.made, Closeness.PRODUCT)
        return Angle(self.number * number, made)

    @overload
    def __truediv__(self, other: Angle) -> Ratio: ...
    @overload
    def __truediv__(self, other: Plain) -> Angle: ...
    def __truediv__(self, other: Angle | Plain) -> Angle | Ratio:
        """The angle shared out, or how often another goes into it."""
        if isinstance(other, Angle):
            made = joined(self.made, " / ", other.made, Closeness.PRODUCT)
            return Ratio(self.number / other.number, made)
        if (number := plain(other)) is None:
            return NotImplemented
        made = joined(self.made, " / ", expression_of(other), Closeness.PRODUCT)
        return Angle(self.number / number, made)


PI = Ratio(irrational(pi), Expression(("π",)))


ROOT_OF_TWO = Ratio(Fraction(2), literal(2)).root()
"""From the grain to the bias: the diagonal of a square, for each length of its side."""


def arc(angle: Angle) -> Ratio:
    """How long the arc of an angle is, for each length of its radius: `π × angle / 180`."""
    made = joined(PI.made, " × ", angle.made, Closeness.PRODUCT)
    made = joined(made, " / ", literal(180), Closeness.PRODUCT)
    return Ratio(irrational(angle.radians), made)


def sine(angle: Angle) -> Ratio:
    """The sine of an angle."""
    return Ratio(irrational(sin(angle.radians)), called("sin", angle.made))


def cosine(angle: Angle) -> Ratio:
    """The cosine of an angle."""
    return Ratio(irrational(cos(angle.radians)), called("cos", angle.made))


def tangent(angle: Angle) -> Ratio:
    """The tangent of an angle."""
    return Ratio(irrational(tan(angle.radians)), called("tan", angle.made))


def angle_of_sine(ratio: Ratio) -> Angle:
    """The angle with that sine."""
    return Angle(irrational(degrees(asin(ratio.number))), called("arcsin", ratio.made))


def angle_of_cosine(ratio: Ratio) -> Angle:
    """The angle with that cosine."""
    return Angle(irrational(degrees(acos(ratio.number))), called("arccos", ratio.made))


def angle_of_tangent(ratio: Ratio) -> Angle:
    """The angle with that tangent."""
    return Angle(irrational(degrees(atan(ratio.number))), called("arctan", ratio.made))
