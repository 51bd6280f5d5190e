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
    BIAS = "bias binding"
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

    A BIAS piece is the sheet that a binding is cut from, round and round.
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
    """Those that the map takes, and the halves that are rejoined."""
    per_master: int
    """How many one master gives, or of rejoined units two masters."""
    surplus: int
    """Left over when all is sewn."""
    rejoined: int = 0
    """How many of those needed are halves to be rejoined to others."""

    @property
    def made(self) -> int:
        """Return how many all the masters give."""
        return self.needed + self.surplus

    @property
    def placed(self) -> int:
        """Return how many the map takes."""
        return self.needed - self.rejoined


@dataclass(frozen=True, slots=True)
class Blank:
    """The cloth for one of the shapes of a master: by what its template is called and which part it is."""

    shape: str
    part: str
    label: str
    """Of the piece that the shape is cut from."""
    each: int
    """How many a master takes."""


@dataclass(frozen=True, slots=True)
class MasterCount:
    """Masters to make of one colourway."""

    code: str
    recipe: str
    ground: str
    """Label of the ground piece."""
    blanks: tuple[Blank, ...]
    """In the order of fusing."""
    units: tuple[UnitCount, ...]
    """What becomes of them, in the order of the master's kinds."""
    needed: int
    """For the kind of which most are needed against what a master gives."""
    spare: int
    count: int
    """Needed and spare together."""

    @property
    def shape(self) -> str:
        """Return the label of the cloth blank for the only shape."""
        (blank,) = self.blanks
        return blank.label

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
class Join:
    """Equal blocks to rejoin: of which kind of unit, from which halves by their names as units, and how many."""

    unit: str
    halves: tuple[str, str]
    count: int


@dataclass(frozen=True, slots=True)
class RejoinCount:
    """Blocks to rejoin of one colourway, from halves of the masters of two others."""

    code: str
    recipe: str
    masters: tuple[str, str]
    """The colourways of the two masters."""
    joins: tuple[Join, ...]
    """First that of the first master's first half, then that of its second; what is not needed is left out."""

    def needed(self, unit: str) -> int:
        """Return how many blocks of one kind of unit are rejoined."""
        return sum(join.count for join in self.joins if join.unit == unit)


@dataclass(frozen=True, slots=True)
class Bill:
    """Masters and pieces. Pieces stand by fabric in the design's order, then by purpose, then large to small."""

    masters: tuple[MasterCount, ...]
    pieces: tuple[Piece, ...]
    motifs: tuple[MotifCount, ...] = ()
    rejoined: tuple[RejoinCount, ...] = ()

    def piece(self, label: str) -> Piece:
        """Return the piece with a label that the bill has."""
        return next(p for p in self.pieces if p.label == label)

    def find(
        self, fabric: str, purpose: Purpose, name: str, length: Length, width: Length, stands: bool = False
    ) -> Piece:
        """Return the piece of a fabric with this name and size that the bill has.

        Of two that differ by their grain alone the lengthwise one is that which stands.
        """
        wanted = (purpose, name, length, width)
        found = [p for p in self.of_fabric(fabric) if (p.purpose, p.name, p.length, p.width) == wanted]
        return next((p for p in found if (p.grain is Grain.LENGTHWISE) == stands), found[0])

    def of_fabric(self, letter: str) -> tuple[Piece, ...]:
        """Return the pieces cut from one fabric."""
        return tuple(p for p in self.pieces if p.fabric == letter)
