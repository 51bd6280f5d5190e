"""What cloth gives without a plan: squares from a length or a fat quarter, and lengths in yards and metres.

These are the charts that shops print. A chart counts whole squares in rows, so it can be reckoned: ⌊W/s⌋ · ⌊H/s⌋.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction

from quarterturn.measure import MM, YARD, Length, inches, round_nearest

FAT_QUARTER: tuple[Length, Length] = (inches(18), inches(22))
"""Half a yard by half a width of 44" (sew4home.com, quilterscache.com); 18" × 21" of cloth 42" wide
(allpeoplequilt.com)."""

CENTIMETRE: Length = 10 * MM


@dataclass(frozen=True, slots=True)
class ChartRow:
    """How many squares of a side a piece of cloth gives, and how long a cut gives a wanted number."""

    side: Length
    per_row: int
    rows: int

    @property
    def squares(self) -> int:
        """Return how many squares there are."""
        return self.per_row * self.rows


def squares_from(width: Length, length: Length, side: Length) -> ChartRow:
    """Return the squares in rows that a piece of cloth gives."""
    return ChartRow(side, width // side, length // side)


def chart(width: Length, length: Length, sides: Iterable[Length]) -> tuple[ChartRow, ...]:
    """Return a row for each side of square."""
    return tuple(squares_from(width, length, side) for side in sides)


def length_for_squares(count: int, side: Length, width: Length) -> Length:
    """Return the length of cloth for so many squares in rows across a width that holds one at least."""
    return math.ceil(Fraction(count, width // side)) * side


def fat_quarter(width: Length) -> tuple[Length, Length]:
    """Return the sides of a fat quarter of cloth so wide: half a yard by half the width."""
    return YARD / 2, width / 2


def fat_eighth(width: Length) -> tuple[Length, Length]:
    """Return the sides of a fat eighth of cloth so wide: a quarter of a yard by half the width."""
    return YARD / 4, width / 2


def in_metres(length: Length) -> Fraction:
    """Return a length as a table of conversion prints it: metres to the nearest hundredth."""
    return round_nearest(length, CENTIMETRE) / (100 * CENTIMETRE)
