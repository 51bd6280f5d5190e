"""The sizes that a new recipe begins with: its units lie beside those that the quilt has."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass

from quarterturn.design import Design
from quarterturn.design.defaults import default_trim
from quarterturn.design.text import quote_length
from quarterturn.measure import INCH, MM, Length, Units
from quarterturn.measure.rounding import round_nearest

_UNIT = {Units.INCH: 4 * INCH, Units.METRIC: 100 * MM}
"""Where no unit stands yet."""
_STEP = {Units.INCH: INCH / 8, Units.METRIC: 1 * MM}


@dataclass(frozen=True, slots=True)
class FirstSizes:
    """The finished side of a unit, and the allowance of a seam."""

    unit: Length
    seam: Length
    units: Units

    def start(self, cuts: str) -> Length:
        """Return the side of a square that is cut into units; two halves across make two units but for a hair."""
        if cuts == "one diagonal":
            return 2 * self.unit + 3 * self.seam
        untrimmed = (self.unit + 2 * self.seam) * (1 if cuts == "none" else 2)
        return untrimmed + default_trim(untrimmed, self.units)

    def of(self, length: Length) -> str:
        """Return a length as the file writes it: one of the unit as it is, others at a mark of the ruler."""
        exact = {self.unit, self.start("none"), self.start("both ways")}
        return quote_length(
            length if length in exact else round_nearest(length, _STEP[self.units]), self.units
        )


def first_sizes(design: Design) -> FirstSizes:
    """Return the sizes that fit the square units of most recipes."""
    sides = Counter(
        recipe.finished_width for recipe in design.recipes if recipe.finished_width == recipe.finished_height
    )
    most = sides.most_common(1)
    return FirstSizes(most[0][0] if most else _UNIT[design.units], design.making.seam, design.units)
