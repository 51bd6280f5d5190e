"""Backing from lengths of cloth sewn side by side, or in one piece from wide cloth, and batting from a package."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass

from quarterturn.materials.model import PanelGroup
from quarterturn.measure import Length, Units, buy_up, inches
from quarterturn.pieces import Piece

WIDE: Length = inches(108)
"""The width of cloth sold for backings (nominal; the free pattern that prints 108" = 2.74 m calls it so)."""

PACKAGES = {
    "crib": (inches(45), inches(60)),
    "twin": (inches(72), inches(90)),
    "full": (inches(81), inches(96)),
    "queen": (inches(90), inches(108)),
    "king": (inches(120), inches(120)),
}
"""Packaged batting, nominal size, smallest first: two shops' tables agree (honeybegood.com 2012,
stitchingtimes.blogspot.com 2011)."""


Packages = Mapping[str, tuple[Length, Length]]
"""What batting is sold in: short and long side by name, in the order in which they are tried."""


def package_for(width: Length, height: Length, packages: Packages = PACKAGES) -> str:
    """Return the smallest packaged batting that holds a size either way round; empty where none does."""
    small, large = sorted((width, height))
    fitting = (name for name, (short, long) in packages.items() if small <= short and large <= long)
    return next(fitting, "")


@dataclass(frozen=True, slots=True)
class BackingWay:
    """One way to make a backing: from which cloth, in how many lengths, and which way these run."""

    cloth_width: Length
    panels: int
    cut_length: Length
    runs_down: bool
    bought: Length

    @property
    def seams(self) -> int:
        """Return how many seams the back has."""
        return self.panels - 1


def with_overage(width: Length, height: Length, overage: Length) -> tuple[Length, Length]:
    """Return the size of a backing or batting that stands out so far on each side.

    Sources say 2" to 6" for a side, most of them 4".
    """
    return width + 2 * overage, height + 2 * overage


def backing_ways(
    width: Length, height: Length, widths: tuple[Length, ...], seam: Length, units: Units
) -> tuple[BackingWay, ...]:
    """Return every way to make a backing of a size, both seam directions on cloth of each width, cheapest first.

    That is the one with the least area bought; of equal ones that with the fewest seams, then with upright ones.
    """
    ways = [
        BackingWay(cloth, panels, along, down, buy_up(panels * along, units))
        for cloth in widths
        for across, along, down in ((width, height, True), (height, width, False))
        if (panels := panels_across(across, cloth, seam)) is not None
    ]
    return tuple(sorted(ways, key=lambda way: (way.bought * way.cloth_width, way.panels, not way.runs_down)))


def panels_across(across: Length, usable: Length, seam: Length) -> int | None:
    """Return how many full widths reach across; each after the first loses a seam allowance on both edges.

    None where a seam takes as much as a width gives.
    """
    if across <= usable:
        return 1
    gain = usable - 2 * seam
    return math.ceil((across - 2 * seam) / gain) if gain > 0 else None


def backing_panels(piece: Piece, usable: Length, seam: Length, turnable: bool) -> PanelGroup | None:
    """Return the cheaper way to make a sheet of the piece's length × width, which are its width × height.

    Panels run down the quilt or, where the print allows, across it; at equal cost their seams are upright.
    None where no number of panels makes the sheet.
    """
    ways = [(piece.length, piece.width, True)]
    if turnable:
        ways.append((piece.width, piece.length, False))
    groups = [
        PanelGroup(piece.label, panels, along, seam, runs_down)
        for across, along, runs_down in ways
        if (panels := panels_across(across, usable, seam)) is not None
    ]
    return min(groups, key=lambda group: group.panels * group.cut_length, default=None)
