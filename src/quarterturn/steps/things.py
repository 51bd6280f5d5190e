"""What steps handle: labelled pieces, counted and sized, and how they are laid and pressed."""

from __future__ import annotations

import enum
from dataclasses import dataclass
from typing import TypeAlias

from quarterturn.measure import Length
from quarterturn.setting import Side


@dataclass(frozen=True, slots=True)
class Pile:
    """So many equal pieces of one label."""

    label: str
    count: int


@dataclass(frozen=True, slots=True)
class Product:
    """Equal pieces that a step makes, with their size as they then are (unfinished): exact inches."""

    label: str
    count: int
    width: Length
    height: Length


@dataclass(frozen=True, slots=True)
class Placed:
    """A piece laid down with so many clockwise quarter turns."""

    label: str
    turn: int


class Towards(enum.Enum):
    """What the allowances of a seam are pressed to, where that is no one side of the line."""

    SASHING = "sashing"
    """Sashing strips, away from squares and cornerstones."""
    STRIPS = "strips"
    """Strips, away from the sections between them and from the corners of a border."""


Press: TypeAlias = Side | Towards | None
"""To where allowances are pressed; None is open."""
