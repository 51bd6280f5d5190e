"""The rounding rules of the trade. Each has a name, and every rounded number went through exactly one.

Sizes to cut round up, sizes to quote round to the nearest, cloth to buy rounds up. Published cutting
tables show that a cut size is rounded up to 1/8" while an excess below about 0.005" is ignored: a strict
ceiling would give 24" for a 16" block on point where the tables print 23 7/8".
"""

from __future__ import annotations

import math
from fractions import Fraction

from quarterturn.measure.lengths import INCH, MM, YARD, Length, Units

CUT_TOLERANCE: Length = Fraction(5, 1000)
"""An excess below this, in inches, is not worth the next eighth."""

_CUT_STEP = {Units.INCH: INCH / 8, Units.METRIC: 5 * MM}
_QUOTE_STEP = {Units.INCH: INCH / 8, Units.METRIC: MM}
_BUY_STEP = {Units.INCH: YARD / 8, Units.METRIC: 100 * MM}


def round_up(value: Length | float, step: Length, ignoring: Length = Fraction(0)) -> Length:
    """Return the smallest multiple of `step` that is not less than `value` − `ignoring`."""
    return math.ceil((Fraction(value) - ignoring) / step) * step


def round_nearest(value: Length | float, step: Length) -> Length:
    """Return the nearest multiple of `step`; a tie goes up, also one that a float misses by its own noise."""
    exact = Fraction(value).limit_denominator(10**9) if isinstance(value, float) else value
    return math.floor(exact / step + Fraction(1, 2)) * step


def cut_step(units: Units) -> Length:
    """Return the finest mark to which a piece is cut: 1/8" or 5 mm."""
    return _CUT_STEP[units]


def cut_up(value: Length | float, units: Units) -> Length:
    """Round a size to cut up to the ruler's mark, ignoring an excess below CUT_TOLERANCE."""
    return round_up(value, _CUT_STEP[units], CUT_TOLERANCE)


def is_on_ruler(value: Length, units: Units) -> bool:
    """Tell whether a length can be read off a ruler: a multiple of 1/8" or of 2.5 mm (trade check 42)."""
    step = _CUT_STEP[units] if units is Units.INCH else 5 * MM / 2
    return value % step == 0


def quote(value: Length | float, units: Units) -> Length:
    """Round a size that is only quoted, not cut, to the nearest 1/8" or millimetre."""
    return round_nearest(value, _QUOTE_STEP[units])


def buy_up(value: Length, units: Units) -> Length:
    """Round a length of cloth up to what a shop cuts: 1/8 yard or 10 cm."""
    return round_up(value, _BUY_STEP[units])
