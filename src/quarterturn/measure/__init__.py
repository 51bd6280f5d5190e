"""Lengths: exact inches inside, units at the doors, rounding by named rules.

In:  text such as ``9 1/2"``, ``9½ in``, ``24 cm``.
Out: `Length` (an exact Fraction of inches) and, on the way back, trade-style text.
Promise: nothing is rounded but by one of the rules of `rounding`, each of which has a name.
"""

from quarterturn.measure.columns import aligned
from quarterturn.measure.lengths import (
    INCH,
    MM,
    ROOT_TWO,
    YARD,
    Length,
    LengthError,
    Units,
    inches,
    mm,
    parse_length,
)
from quarterturn.measure.printing import (
    show_area,
    show_cloth,
    show_count,
    show_exact,
    show_length,
    show_plain,
    show_rectangle,
    show_square,
)
from quarterturn.measure.rounding import (
    CUT_TOLERANCE,
    buy_up,
    cut_step,
    cut_up,
    is_on_ruler,
    quote,
    round_nearest,
    round_up,
)

__all__ = [
    "CUT_TOLERANCE",
    "INCH",
    "MM",
    "ROOT_TWO",
    "YARD",
    "Length",
    "LengthError",
    "Units",
    "aligned",
    "buy_up",
    "cut_step",
    "cut_up",
    "inches",
    "is_on_ruler",
    "mm",
    "parse_length",
    "quote",
    "round_nearest",
    "round_up",
    "show_area",
    "show_cloth",
    "show_count",
    "show_exact",
    "show_length",
    "show_plain",
    "show_rectangle",
    "show_square",
]
