"""The tree of the quilt top: what is sewn by itself, exactly sized, each node holding others.

Every node is a rectangle once it is sewn; sizes are finished. Nodes are values: equal nodes are made alike and
together, so that steps and pieces are counted per distinct node. Turning is a matter of the place (`Child.turn`), never
of the node. Sizes on point rest on √2, which `measure.ROOT_TWO` gives as a Fraction good to 10⁻¹⁵.
"""

from __future__ import annotations

import enum
from dataclasses import dataclass
from typing import TypeAlias

from quarterturn.design import Corner, TriangleFit
from quarterturn.geometry import Path
from quarterturn.measure import Length


class ClothUse(enum.Enum):
    """What a plain piece of cloth is in the top; the pieces' `Purpose` follows from it."""

    SQUARE = "plain square"
    """In a place of a map, in the stead of a unit or section."""
    SASH = "sashing strip"
    CORNERSTONE = "cornerstone"
    STRIP = "strip"
    """In a line of sections."""
    BORDER = "border strip"
    COPING = "coping strip"
    PANEL = "panel"


@dataclass(frozen=True, slots=True)
class OneUnit:
    """A unit, by its name (`a`, or `a-tl`)."""

    name: str
    width: Length
    height: Length


@dataclass(frozen=True, slots=True)
class PlainCloth:
    """A rectangle of one fabric; its cut size is a seam larger on every side."""

    use: ClothUse
    fabric: str
    width: Length
    height: Length


@dataclass(frozen=True, slots=True)
class Motif:
    """A shape fused on a panel: the traced outline of a recipe's shape, where it lies on the finished panel."""

    recipe: str
    fabric: str
    outline: Path


@dataclass(frozen=True, slots=True)
class Panel:
    """A plain piece of cloth with motifs fused and stitched on it, the later on top."""

    name: str
    fabric: str
    width: Length
    height: Length
    motifs: tuple[Motif, ...]

    def __hash__(self) -> int:
        """Return a hash of what is at hand: all that a node holds, which equality compares, may be thousands."""
        return hash((self.name, self.width, self.height))


@dataclass(frozen=True, slots=True)
class Child:
    """A node at a place, turned by so many quarters clockwise."""

    node: Node
    turn: int = 0

    @property
    def width(self) -> Length:
        """Return the width as it lies."""
        return self.node.height if self.turn % 2 else self.node.width

    @property
    def height(self) -> Length:
        """Return the height as it lies."""
        return self.node.width if self.turn % 2 else self.node.height


@dataclass(frozen=True, slots=True)
class Grid:
    """Rows of children, all of one row as high and all of one column as wide: sewn into rows, and the rows joined.

    Straight settings, sashed ones (strips and cornerstones are children in rows and columns of their own), lines of
    sections (one row, or one column) are all grids. Where sashing runs through, `rows` hold one long strip: so rows may
    differ in their number of children, but not in their width.
    """

    name: str
    """The section's name; `centre` for the root."""
    rows: tuple[tuple[Child, ...], ...]
    width: Length
    height: Length

    def __hash__(self) -> int:
        """Return a hash of what is at hand: all that a node holds, which equality compares, may be thousands."""
        return hash((self.name, self.width, self.height))


@dataclass(frozen=True, slots=True)
class OnPoint:
    """Square children standing on a corner, sewn in slanting rows that end in setting triangles.

    The slanting rows run from the upper left to the lower right (each child is turned by an eighth clockwise besides
    its own turn, so that the left to right of a row is the down-right of the top); they are listed from the upper right
    to the lower left. With sashing, rows of sashes and cornerstones stand between (and outside) the rows of children.
    """

    name: str
    cells: tuple[tuple[Child, ...], ...]
    """Rows × columns, upright as the map shows them."""
    between: tuple[tuple[Child, ...], ...]
    side: Length
    """Finished side of every child."""
    sash: Length
    """Finished width of the sashing; 0 where there is none."""
    sash_fabric: str
    cornerstone_fabric: str
    side_fabric: str
    corner_fabric: str
    fit: TriangleFit
    side_square: Length
    """Side of the square, as cut, that gives four side triangles."""
    corner_square: Length
    """Side of the square, as cut, that gives two corner triangles."""
    float: Length
    width: Length
    height: Length

    def __hash__(self) -> int:
        """Return a hash of what is at hand: all that a node holds, which equality compares, may be thousands."""
        return hash((self.name, self.width, self.height))


@dataclass(frozen=True, slots=True)
class Frame:
    """One border round a centre, inside out: four strips in the order left, right, top, bottom, and perhaps corners.

    `side_depth` is the finished width of the left and right strips, `end_depth` that of the other two. A mitred strip
    is as long as the outer edge; its ends are cut off at 45°. Where coping is needed one way only, the other pair has a
    depth of 0: its strips are not there, and are passed over.
    """

    corner: Corner
    sides_first: bool
    strips: tuple[Child, Child, Child, Child]
    corners: tuple[Child, ...]
    """Top left, top right, bottom right, bottom left; empty unless squares are set in."""
    side_depth: Length
    end_depth: Length


@dataclass(frozen=True, slots=True)
class Framed:
    """A centre with borders round it, from the inside outwards."""

    name: str
    """That of the centre's section; `top` for the root."""
    centre: Child
    frames: tuple[Frame, ...]
    width: Length
    height: Length

    def __hash__(self) -> int:
        """Return a hash of what is at hand: all that a node holds, which equality compares, may be thousands."""
        return hash((self.name, self.width, self.height))


Node: TypeAlias = OneUnit | PlainCloth | Panel | Grid | OnPoint | Framed
