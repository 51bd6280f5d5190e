"""The actions that only sections other than straight rows need: on point, mitred, panels, strips trimmed to fit."""

from __future__ import annotations

from dataclasses import dataclass

from quarterturn.design import EdgeStitch
from quarterturn.geometry import Motion
from quarterturn.measure import Length
from quarterturn.setting import Side
from quarterturn.steps.things import Placed, Press


@dataclass(frozen=True, slots=True)
class AddMitred:
    """Sew a strip to each side, middle on middle, every seam stopping `seam` from both raw corners; then mitre.

    At each corner the ends of two strips are folded to 45° and sewn from the end of the seams outwards, and what
    stands beyond the allowance is cut off. Border seams are pressed to the border, mitres open. `depth` is finished.
    """

    sides: str
    """Label of the strips for the left and right side."""
    ends: str
    depth: Length
    seam: Length
    laid: int = 0
    """Quarter turns with which the work itself is laid: it may be a single piece."""


@dataclass(frozen=True, slots=True)
class TrimToFit:
    """Measure what is called `fits` through its middle, and trim plain pieces to it.

    Its measure is on no ruler, so they were cut a little larger. `length` × `width` is what it should come to.
    """

    fits: str
    length: Length
    width: Length


@dataclass(frozen=True, slots=True)
class CutTriangles:
    """Cut squares corner to corner: once into halves, or twice into quarters.

    Halves come to lie with the long edge at the bottom; quarters with the right angle at the top left. The long edge
    of a quarter and the short edges of a half have the straight grain.
    """

    cuts: int
    """1 or 2."""


@dataclass(frozen=True, slots=True)
class EndTriangle:
    """A side triangle at one end of a slanting row, its right angle level with the row's top or bottom edge."""

    label: str
    turn: int
    level: Side
    """Side.TOP or Side.BOTTOM."""


@dataclass(frozen=True, slots=True)
class AddTriangles:
    """Sew side triangles to the ends of slanting rows, and trim their points level with the row's other edge."""

    left: EndTriangle | None
    right: EndTriangle | None
    seam: Length
    press: Press
    turn: int = 0
    """Quarter turns with which a row is laid that is a single square."""


@dataclass(frozen=True, slots=True)
class JoinRows:
    """Sew slanting rows one below another with their seams matched, though their ends do not lie level.

    `offsets` tells how far the left end of each part (of its box) lies to the right of that of the first; points
    count as ends.
    """

    parts: tuple[Placed, ...]
    offsets: tuple[Length, ...]
    seam: Length
    press: Press


@dataclass(frozen=True, slots=True)
class SetInPlace:
    """A triangle that is set into an inner corner: its box lies at x, y from the top left of the work's box."""

    turn: int
    x: Length
    y: Length


@dataclass(frozen=True, slots=True)
class SetIn:
    """Set side triangles into inner corners: sew one short edge up to the seam, pivot, and sew the other."""

    places: tuple[SetInPlace, ...]
    seam: Length


@dataclass(frozen=True, slots=True)
class CornerPlace:
    """A corner triangle, its long edge on a side of the slanting work.

    Its middle lies on the middle of the bare edge there: `middle` from the left (or top) raw end of the levelled work.
    """

    side: Side
    middle: Length


@dataclass(frozen=True, slots=True)
class AddCorners:
    """Sew corner triangles to the joined rows in this order, once all points are trimmed level; press to the triangles.

    Points that stand out at the left and right are trimmed level with the bare ends of the rows: the left one lies
    `level` inside the box of the joined rows, the right one `across` further. Points of the triangles go likewise.
    """

    corners: tuple[CornerPlace, ...]
    level: Length
    across: Length
    seam: Length
    turn: int = 0
    """Quarter turns with which the work is laid where it is a single square."""


@dataclass(frozen=True, slots=True)
class SquareUp:
    """Turn slanting work upright, by an eighth clockwise, and trim it to its size with square corners.

    Each edge is cut `beyond` outside the outermost points of the squares (or of the sashing round them).
    """

    beyond: Length


@dataclass(frozen=True, slots=True)
class PlacedMotif:
    """A shape on a panel. `motion` brings the shape, seen from the right side, into the panel's raw frame.

    The frame of a shape has its origin in the middle of its upright box, that of the panel at its raw top left corner.
    `shape` is what its template is called.
    """

    label: str
    recipe: str
    shape: str
    motion: Motion


@dataclass(frozen=True, slots=True)
class FuseToPanel:
    """Lay shapes on a panel, the later on top, and fuse them down."""

    panel: str
    motifs: tuple[PlacedMotif, ...]
    turn: int = 0
    """Quarter turns with which the piece is laid: 1 where the panel stands upright."""


@dataclass(frozen=True, slots=True)
class MotifEdge:
    """Edges to stitch in one colour of thread: of so many motifs, so long in all."""

    thread_fabric: str
    motifs: int
    edge: float


@dataclass(frozen=True, slots=True)
class StitchMotifs:
    """Stitch once round the closed edge of each motif of each panel; `edges` are those of one panel."""

    stitch: EdgeStitch
    edges: tuple[MotifEdge, ...]


@dataclass(frozen=True, slots=True)
class CutAwayBehind:
    """Cut the panel away behind the motifs, leaving `inside` of it inside the stitching."""

    inside: Length
