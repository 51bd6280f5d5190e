"""Sections: the parts of a top, each sewn by itself, that may hold one another.

A section is a rectangle once it is sewn. The root of a design is a section too: its `setting`.
"""

from __future__ import annotations

import enum
from dataclasses import dataclass
from typing import TypeAlias

from quarterturn.measure import Length


class Symmetry(enum.Enum):
    """How each copy of the map is laid beside the one before it."""

    SLIDE = "slide"
    MIRROR = "mirror"
    TURN = "turn"
    HALF_TURN = "half turn"


@dataclass(frozen=True, slots=True)
class Cell:
    """One place of a map: a colourway and so many quarter turns clockwise, 0 to 3.

    `quarter` is that of the master, tl, tr, br or bl, where its quarters are of several kinds; else empty.
    """

    code: str
    turn: int
    quarter: str = ""

    @property
    def name(self) -> str:
        """Return the name of the unit: `a`, or `a-tl`."""
        return unit_name(self.code, self.quarter)


def unit_name(code: str, quarter: str) -> str:
    """Return what a unit is called: by its colourway, and by its quarter where there are several kinds."""
    return f"{code}-{quarter}" if quarter else code


@dataclass(frozen=True, slots=True)
class ClothCell:
    """One place of a map that a plain piece of a fabric fills, as large as the place: written `A`."""

    fabric: str


@dataclass(frozen=True, slots=True)
class SectionCell:
    """One place of a map that another section fills, turned by so many quarters clockwise: written `wreath1`."""

    section: str
    turn: int


MapCell: TypeAlias = Cell | ClothCell | SectionCell
"""The words of a map: `a2` or `a-tl2`, `A`, `wreath1` (three small letters or more)."""

Map: TypeAlias = tuple[tuple[MapCell, ...], ...]
"""Rows of cells, all as long."""


@dataclass(frozen=True, slots=True)
class Sashing:
    """Strips of this finished width between the cells of a map, and round them all where `outer` is true.

    `cornerstone` is the fabric of the squares where strips cross; empty where the strips between the rows run
    through from side to side instead.
    """

    fabric: str
    width: Length
    cornerstone: str
    outer: bool


class Corner(enum.Enum):
    """What becomes of the corners of a border: one pair runs through, the strips are mitred, or squares are set in."""

    BUTTED = "butted"
    MITRED = "mitred"
    CORNERSTONES = "cornerstones"


@dataclass(frozen=True, slots=True)
class Border:
    """A plain border of this finished width; `sides_first` tells which pair is sewn first."""

    fabric: str
    width: Length
    sides_first: bool = True
    corner: Corner = Corner.BUTTED
    cornerstone: str = ""
    """Fabric of the squares in the corners, where they are cornerstones of plain cloth."""


@dataclass(frozen=True, slots=True)
class PiecedBorder:
    """A border whose strips are sections, each as long as the edge it is sewn to and all as deep.

    `sides` is sewn to the left edge as it is and to the right edge turned by a half; `ends` to the top as it is and to
    the bottom turned by a half. `corners` (a map word: unit, fabric or section) fills the four corners, each turned a
    quarter further clockwise from the top left; None where the pair sewn second runs through.
    """

    sides: SectionCell
    ends: SectionCell
    corners: MapCell | None
    sides_first: bool = True


@dataclass(frozen=True, slots=True)
class Coping:
    """Plain strips that bring a section to a wanted finished size: half of what is missing on each side."""

    fabric: str
    width: Length
    """Finished width of the section with its coping."""
    height: Length
    sides_first: bool = True


AnyBorder: TypeAlias = Border | PiecedBorder | Coping


@dataclass(frozen=True, slots=True)
class StraightSet:
    """Cells in rows and columns: a rectangle of cells, laid `across` times side by side and `down` times below."""

    cells: Map
    """As written: under `Symmetry.TURN` a square, the upper left quarter of what is laid."""
    across: int
    down: int
    symmetry: Symmetry = Symmetry.SLIDE
    sashing: Sashing | None = None
    borders: tuple[AnyBorder, ...] = ()
    """Round a section; those round the root are `Design.borders`."""

    @property
    def size(self) -> tuple[int, int]:
        """Return how many rows and columns the whole map has."""
        parts = 2 if self.symmetry is Symmetry.TURN else 1
        columns = len(self.cells[0]) if self.cells else 0
        return parts * len(self.cells) * self.down, parts * columns * self.across

    def rows(self) -> Map:
        """Return the whole map, with its repeats laid out."""
        from quarterturn.design.repeats import laid

        return laid(self.cells, self.symmetry, self.across, self.down)


class TriangleFit(enum.Enum):
    """How large the squares are that setting triangles are cut from.

    Exact: finished + s(2+√2) or 2s(1+√2), to the ruler's next mark. Handbook: finished + 7/8" or 1¼" (for another seam
    than ¼", the exact addition to the next ⅛"). Oversized: larger by a stated margin, trimmed when the top is sewn.
    """

    EXACT = "exact"
    HANDBOOK = "handbook"
    OVERSIZED = "oversized"


@dataclass(frozen=True, slots=True)
class OnPointSet:
    """Square cells standing on a corner, in rows × columns, with (rows − 1) × (columns − 1) more between them.

    A cell with turn 0 has its top left corner at the top. Side triangles and corner triangles fill the edge, with the
    straight grain along it.
    """

    cells: Map
    between: Map
    side_fabric: str
    corner_fabric: str
    fit: TriangleFit
    float: Length
    """Finished width by which the triangles stand out beyond the corners of the cells; 0 unless oversized."""
    sashing: Sashing | None = None
    """Round every cell; `outer` is always true on point, and so there are always cornerstones."""
    side_square: Length | None = None
    """Side of the square cut into four side triangles, as the file states it; None where the fit tells it."""
    corner_square: Length | None = None
    """Side of the square cut into two corner triangles, likewise."""
    borders: tuple[AnyBorder, ...] = ()


@dataclass(frozen=True, slots=True)
class Strip:
    """A plain or printed strip of this finished width in a line of sections."""

    fabric: str
    width: Length


@dataclass(frozen=True, slots=True)
class LineSet:
    """Sections, units and plain strips side by side (`columns`), or one below another (`rows`)."""

    parts: tuple[MapCell | Strip, ...]
    below: bool
    """True where each part lies below the one before it."""
    borders: tuple[AnyBorder, ...] = ()


@dataclass(frozen=True, slots=True)
class PanelMotif:
    """A shape fused on a panel: the shape of a recipe's master alone (`recipe`), its middle at x, y from the panel's
    finished top left corner, turned by so many degrees clockwise."""

    recipe: str
    fabric: str
    x: Length
    y: Length
    degrees: int


@dataclass(frozen=True, slots=True)
class PanelSet:
    """A plain piece of cloth with motifs fused and stitched on it, the later on top."""

    fabric: str
    width: Length
    height: Length
    motifs: tuple[PanelMotif, ...]
    borders: tuple[AnyBorder, ...] = ()


SectionSet: TypeAlias = StraightSet | OnPointSet | LineSet | PanelSet


@dataclass(frozen=True, slots=True)
class Section:
    """A section with the name by which maps call it: three to twenty small letters."""

    name: str
    setting: SectionSet
