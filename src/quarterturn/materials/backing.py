"""Backing from lengths of cloth sewn side by side, and batting from a package."""

from __future__ import annotations

import math
from collections.abc import Mapping

from quarterturn.materials.model import PanelGroup
from quarterturn.measure import Length, inches
from quarterturn.pieces import Piece

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
