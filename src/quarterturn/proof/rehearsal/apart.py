"""Whether rings that are traced on one web keep apart: each is flattened once, and laid at its places."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from quarterturn.geometry import Motion
from quarterturn.proof.rehearsal.cloth import SpoiledError

if TYPE_CHECKING:
    from shapely.geometry.base import BaseGeometry

OVERLAP = 1e-3
"""Web that two rings share, in square inches, below which they only touch: curves are flattened for this."""

NEAR = 1e-3
"""Inches that two rings may be nearer than their gap, likewise."""


def laid(band: BaseGeometry, motion: Motion) -> BaseGeometry:
    """Return a flattened ring at a place to which it is not mirrored."""
    from shapely.affinity import affine_transform

    across, along, at = motion.factor.real, motion.factor.imag, motion.move
    moved: BaseGeometry = affine_transform(band, [across, -along, along, across, at.real, at.imag])
    return moved


def check_apart(bands: Sequence[BaseGeometry], gap: float) -> None:
    """Raise SpoiledError where two of what is laid on one web are nearer than the gap, or share web."""
    import shapely

    tree = shapely.STRtree(bands)
    for one, other in zip(*tree.query(bands, "dwithin", max(gap - NEAR, 0.0)), strict=True):
        if one < other and (gap > NEAR or bands[one].intersection(bands[other]).area > OVERLAP):
            raise SpoiledError("Rings would be drawn over one another on the web.")
