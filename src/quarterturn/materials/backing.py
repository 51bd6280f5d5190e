"""Backing from lengths of cloth sewn side by side, and batting from a package."""

from __future__ import annotations

import math
from collections.abc import Mapping

from quarterturn.materials.model import PanelGroup
from quarterturn.measure import Length, Units, inches, mm
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

WIDE = {Units.INCH: inches(108), Units.METRIC: mm(2700)}
"""Cloth made for backings is sold so wide (common practice, no source)."""

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


def backing_ways(piece: Piece, usable: Length, seam: Length, turnable: bool) -> tuple[PanelGroup, ...]:
    """Return the ways to make a sheet of the piece's length × width, which are its width × height, the cheapest first.

    Panels run down the quilt or, where the print allows, across it; at equal cost vertical seams come first.
    """
    ways = [(piece.length, piece.width, True)]
    if turnable:
        ways.append((piece.width, piece.length, False))
    groups = [
        PanelGroup(piece.label, panels, along, seam, runs_down)
        for across, along, runs_down in ways
        if (panels := panels_across(across, usable, seam)) is not None
    ]
    return tuple(sorted(groups, key=panels_length))


def panels_length(group: PanelGroup) -> Length:
    """Return the length of cloth that panels take."""
    return group.panels * group.cut_length


def backing_panels(piece: Piece, usable: Length, seam: Length, turnable: bool) -> PanelGroup | None:
    """Return the cheaper way to make a sheet; None where no number of panels makes it."""
    return next(iter(backing_ways(piece, usable, seam, turnable)), None)


def in_one_width(piece: Piece, units: Units, turnable: bool) -> Length | None:
    """Return the least length of cloth as wide as backings are sold that makes a sheet without a seam, if any does."""
    sides = [(piece.length, piece.width)] + ([(piece.width, piece.length)] if turnable else [])
    return min((along for across, along in sides if across <= WIDE[units]), default=None)
