"""The bill of pieces: all that must exist before sewing starts, exactly sized and counted."""

from __future__ import annotations

import enum
from dataclasses import dataclass

from quarterturn.measure import Length


class Purpose(enum.Enum):
    """What a piece is for, in the order in which a pattern lists the cutting: long pieces first."""

    BORDER = "border"
    COPING = "coping"
    PANEL = "panel"
    STRIP = "strip"
    SASH = "sashing"
    SIDE_TRIANGLES = "side triangles"
    CORNER_TRIANGLES = "corner triangles"
    SQUARE = "plain square"
    CORNERSTONE = "cornerstone"
    GROUND = "ground"
    SHAPE = "shape"
    BINDING = "binding"
    BACKING = "backing"


class Grain(enum.Enum):
    """How the length of a piece must lie on the cloth.

    Squares for setting triangles lie square to the cloth as all pieces do: so quarters have the straight grain on the
    long edge and halves on the short ones, which come to the outer edge of what they are set into.
    """

    ANY = "any"
    LENGTHWISE = "lengthwise"
    CROSSWISE = "crosswise"


@dataclass(frozen=True, slots=True)
class Piece:
    """Equal pieces of one fabric. `length` lies along the strip it is cut from, `width` across it.

    BINDING and BACKING pieces are totals still to be made up from strips and panels: a binding's length is
    the whole run, a backing's size is that of the finished sheet.
    """

    label: str
    """Fabric letter and a number: A1, A2, B1."""
    name: str
    fabric: str
    purpose: Purpose
    length: Length
    width: Length
    count: int
    """Needed, spares included."""
    spare: int
    grain: Grain
    used_for: str
    """Whom it serves, in words: `colourways a and b`, `left and right of the inner border`."""


@dataclass(frozen=True, slots=True)
class UnitCount:
    """Units of one kind of one colourway. `name` is what the map calls them: `a`, or `a-tl`."""

    name: str
    needed: int
    per_master: int
    surplus: int
    """Left over when all is sewn."""

    @property
    def made(self) -> int:
        """Return how many all the masters give."""
        return self.needed + self.surplus


@dataclass(frozen=True, slots=True)
class MasterCount:
    """Masters to make of one colourway."""

    code: str
    recipe: str
    ground: str
    """Label of the ground piece."""
    shape: str
    """Label of the cloth blank for the shape."""
    units: tuple[UnitCount, ...]
    """What becomes of them, in the order of the master's kinds."""
    needed: int
    """For the kind of which most are needed against what a master gives."""
    spare: int
    count: int
    """Needed and spare together."""

    @property
    def units_needed(self) -> int:
        """Return the units that the quilt takes, of all kinds."""
        return sum(unit.needed for unit in self.units)

    @property
    def per_master(self) -> int:
        """Return the units that a master gives, of all kinds."""
        return sum(unit.per_master for unit in self.units)

    @property
    def surplus_units(self) -> int:
        """Return the units left over when all is sewn, of all kinds."""
        return sum(unit.surplus for unit in self.units)


@dataclass(frozen=True, slots=True)
class MotifCount:
    """Shapes of one recipe and fabric to fuse on panels."""

    recipe: str
    fabric: str
    shape: str
    """Label of the cloth blank."""
    count: int


@dataclass(frozen=True, slots=True)
class Bill:
    """Masters and pieces. Pieces stand by fabric in the design's order, then by purpose, then large to small."""

    masters: tuple[MasterCount, ...]
    pieces: tuple[Piece, ...]
    motifs: tuple[MotifCount, ...] = ()

    def piece(self, label: str) -> Piece:
        """Return the piece with a label that the bill has."""
        return next(p for p in self.pieces if p.label == label)

    def find(self, fabric: str, purpose: Purpose, name: str, length: Length, width: Length) -> Piece:
        """Return the piece of a fabric with this name and size that the bill has."""
        wanted = (purpose, name, length, width)
        return next(p for p in self.of_fabric(fabric) if (p.purpose, p.name, p.length, p.width) == wanted)

    def of_fabric(self, letter: str) -> tuple[Piece, ...]:
        """Return the pieces cut from one fabric."""
        return tuple(p for p in self.pieces if p.fabric == letter)
