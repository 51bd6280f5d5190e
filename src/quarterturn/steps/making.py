"""What is done to make units from ground, cloth blanks and web: actions, as in `steps.model`."""

from __future__ import annotations

import enum
from dataclasses import dataclass

from quarterturn.design import EdgeStitch
from quarterturn.geometry import Motion, Path, Point, Region, StraightLine
from quarterturn.materials import Stagger
from quarterturn.measure import Length


@dataclass(frozen=True, slots=True)
class TraceRings:
    """Trace a shape on the paper side of the web, in rows; cut the ring out between `ring_out` and `ring_in`.

    `shape` is what the template is called. It is traced about the middle of its upright box, and mirrored, since
    the web goes on the wrong side; `same_mirrored` says that this makes no difference. `hole` is the inner edge of
    a shape that has one, run the other way than `traced`. Each tracing has a room of width × height, rooms in a
    row `gap` apart, rows too; where rows are staggered, `stagger` says where each lies, on so much web as `length`.
    On sheets, the rows begin anew after every `rows_on_sheet`.
    """

    recipe: str
    shape: str
    traced: Path
    hole: Path | None
    ring_out: Region
    ring_in: Region
    same_mirrored: bool
    room_width: Length
    room_height: Length
    gap: Length
    per_row: int
    length: Length
    stagger: Stagger | None = None
    rows_on_sheet: int = 0


@dataclass(frozen=True, slots=True)
class FuseRings:
    """Fuse a ring to the wrong side of each cloth blank; let it cool."""

    recipe: str
    shape: str


@dataclass(frozen=True, slots=True)
class CutOut:
    """Cut each shape out of its backed blank on the drawn lines, and peel off the paper."""

    recipe: str
    shape: str
    traced: Path
    hole: Path | None


@dataclass(frozen=True, slots=True)
class Crease:
    """Fold each piece of ground through its middle and crease it; draw the cuts that no fold shows.

    `folds` lay one half on the other: in half with the edges matched, or corner to corner. `drawn` are cuts that
    no fold makes, drawn with a ruler from edge to edge. `middles` are where the middles of shapes will lie that
    are not on the middle of the ground: marked by measuring from the creases. All are in the master's frame.
    """

    recipe: str
    folds: tuple[StraightLine, ...]
    drawn: tuple[StraightLine, ...]
    middles: tuple[Point, ...]


@dataclass(frozen=True, slots=True)
class Place:
    """Where a shape is laid: its number among the shapes of the master, and how it lies.

    `motion` leads from the shape as the template shows it, the middle of its upright box at 0, to its place in the
    master's frame; so it moves 0 to the mark for its middle. It turns and shifts, and never mirrors.
    """

    number: int
    motion: Motion


@dataclass(frozen=True, slots=True)
class FuseToGround:
    """Lay equal shapes on their marks, each turned as it should be, and fuse them down.

    A shape that lies partly or wholly on another is fused when that one has been stitched.
    """

    code: str
    recipe: str
    shape: str
    part: str
    places: tuple[Place, ...]


@dataclass(frozen=True, slots=True)
class StitchEdge:
    """Stitch once round every closed edge of the shapes, thread to match `thread_fabric`.

    `edge` is the length of all the edges together. `starts` are where to begin and end, in the master's frame: one
    for each shape, and one more for its hole if it has one; each as far from every cut as can be, so that no cut
    goes through the knot.
    """

    code: str
    recipe: str
    shape: str
    part: str
    numbers: tuple[int, ...]
    stitch: EdgeStitch
    edge: float
    starts: tuple[Point, ...]
    thread_fabric: str


@dataclass(frozen=True, slots=True)
class CutApart:
    """Cut the master along each line in turn without moving the pieces; each part is laid by its motion."""

    code: str
    recipe: str
    cuts: tuple[StraightLine, ...]
    parts: tuple[tuple[str, Motion], ...]
    """Label and motion (master's frame to unit's frame) of each piece that the cuts leave."""


@dataclass(frozen=True, slots=True)
class Behind:
    """What is cut away behind one shape: of each of the `layers` below it, what lies more than `inside` within.

    `number` is that of the shape in the master. Layers are numbered as shapes are, from the lowest up; −1 is the
    ground. Where a higher shape is stitched through them, `inside` is left round its stitching too.
    """

    number: int
    part: str
    inside: Length
    layers: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class CutAway:
    """Cut away, from the wrong side, what lies behind the shapes of a unit; behind the lowest shape first.

    `narrow` are shapes behind which nothing lies far enough inside the stitching: there nothing is cut away.
    """

    code: str
    recipe: str
    behind: tuple[Behind, ...]
    narrow: tuple[Behind, ...] = ()


class Reference(enum.Enum):
    """What a trim is measured from."""

    CUT = "cut edge"
    CREASE = "crease"
    SEAM = "seam"


@dataclass(frozen=True, slots=True)
class TrimLine:
    """One straight trim: what lies on the positive side of `line` stays. In the frame in which the piece lies.

    It is measured `distance` from the `reference`, which runs along with it: an edge where the master was cut, or a
    crease; of halves rejoined on a slant, from the middle of their seam.
    """

    line: StraightLine
    reference: StraightLine
    kind: Reference
    distance: Length


@dataclass(frozen=True, slots=True)
class Trim:
    """Trim the outer edges of each piece: of a unit, of a master before it is cut on a slant, of rejoined halves."""

    code: str
    recipe: str
    lines: tuple[TrimLine, ...]


@dataclass(frozen=True, slots=True)
class Rejoin:
    """Sew two halves together along the edges where their masters were cut, raw edges together; trim the ears.

    Each half, by its label, is laid by its motion, from its own frame to that of the rejoined unit; `way` points
    from the first to the second, square to the seam. `press_to` is the half to which the allowances are pressed,
    0 or 1; None is open. At `ears` of the two ends of the seam the allowances stand out beyond the sides.
    """

    code: str
    recipe: str
    halves: tuple[tuple[str, Motion], tuple[str, Motion]]
    way: Point
    seam: Length
    press_to: int | None
    ears: int
