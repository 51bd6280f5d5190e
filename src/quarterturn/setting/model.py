"""The quilt top as it will be sewn. Its frame has the origin at the top left corner inside the binding."""

from __future__ import annotations

import enum
from collections.abc import Mapping
from dataclasses import dataclass

from quarterturn.design import code_of_unit, unit_name
from quarterturn.geometry import Motion, Region
from quarterturn.measure import Length
from quarterturn.setting.tree import Framed, Node


@dataclass(frozen=True, slots=True)
class PlacedUnit:
    """A unit at its place in the top.

    `section` is the section whose map it stands in (`centre` for the root), row and column count there from 0 as they
    are laid, and `copy` counts the places where that section lies, from 0. On point even rows are those of the map, and
    odd ones those between. What fills a corner of a border stands in `border 1 of wreath`, counted from the inside.
    `motion` brings the unit's frame (turn 0, see `blocks.model`) into the top's frame, all turns included; `turn` is
    its own turn in its map.
    """

    section: str
    copy: int
    row: int
    column: int
    code: str
    turn: int
    quarter: str
    motion: Motion

    @property
    def name(self) -> str:
        """Return the name of the unit: `a`, or `a-tl`."""
        return unit_name(self.code, self.quarter)


@dataclass(frozen=True, slots=True)
class PlacedCloth:
    """Cloth other than a unit's that shows in the top: where it lies, finished. Later ones lie on top (motifs)."""

    what: str
    """A `ClothUse` value, or side triangle, corner triangle, motif."""
    section: str
    fabric: str
    region: Region


class NodeKind(enum.Enum):
    """What fills a place whole and is no unit."""

    SECTION = "section"
    FRAMED = "section with borders"
    BORDER = "border"
    """Its ring: the outer edge, with how deep its strips are."""
    PANEL = "panel"
    SQUARE = "plain square"


@dataclass(frozen=True, slots=True)
class PlacedNode:
    """A part of the tree that is no unit, where it lies in the top: a section, a ring of borders, a plain square.

    `name` is the section's (`centre` or `top` for the root), `border 1 of wreath`, or the letter of the fabric. It
    stands in the map of `holder` at a row and column, counted as those of `PlacedUnit`; −1 where it stands in no map.
    Its own frame has its top left corner at the origin; `motion` brings that into the top's frame.
    """

    kind: NodeKind
    name: str
    copy: int
    holder: str
    holder_copy: int
    row: int
    column: int
    turn: int
    width: Length
    height: Length
    motion: Motion
    side_depth: Length
    """Of the strips of a border; 0 of all else."""
    end_depth: Length


class Side(enum.Enum):
    """A side of the quilt or of a unit."""

    # Members are single objects; Enum would hash their names, for every seam of a quilt.
    __hash__ = object.__hash__

    TOP = "top"
    RIGHT = "right"
    BOTTOM = "bottom"
    LEFT = "left"


WAYS = {Side.TOP: -1j, Side.RIGHT: 1 + 0j, Side.BOTTOM: 1j, Side.LEFT: -1 + 0j}
"""The way of length 1 that goes out on each side."""


class Meeting(enum.Enum):
    """What a fabric edge finds on the other side of a seam."""

    MATCH = "match"
    STEP = "step"
    END = "end"


@dataclass(frozen=True, slots=True)
class JoinMark:
    """A fabric edge at a seam: where along it (inches from its top or left end), what it meets, how far off."""

    at: float
    meeting: Meeting
    distance: float


@dataclass(frozen=True, slots=True)
class Join:
    """The seam between two units that share a whole side: places in `Setting.units`, the first the earlier.

    `side` is the side of the first unit, as its section's map shows it, on which the second one lies. Marks are
    measured from that side's left or top end.
    """

    first: int
    second: int
    side: Side
    marks: tuple[JoinMark, ...]


class Stop(enum.Enum):
    """Where a curve that does not close comes to its end."""

    EDGE = "edge"
    """Where no unit shares the side: by a border, a triangle, sashing or plain cloth."""
    SEAM = "seam"
    """At a seam, where the neighbour has nothing to go on with."""
    STEP = "step"
    """At a seam, where the neighbour's curve begins a little apart."""
    CORNER = "corner"
    """In the corner of a unit, where as many as four curves may meet, so that none goes on as another."""
    UNDER = "under"
    """Inside a unit, where it goes under another shape or ends at a seam between two halves."""


@dataclass(frozen=True, slots=True)
class Trail:
    """A curve followed through the top: a round that closes, or a path with two stops."""

    units: tuple[int, ...]
    """Places in `Setting.units`, one for each piece, in the order in which they are passed."""
    numbers: tuple[int, ...]
    """Which of its unit's pieces each is."""
    length: float
    """As sewn, in inches."""
    stops: tuple[Stop, ...]
    """Those of its first and of its last piece; none where it closes."""
    circle: bool
    """Whether it is four quarter circles about one corner."""

    @property
    def pieces(self) -> int:
        """Return through how many pieces it runs."""
        return len(self.units)


@dataclass(frozen=True, slots=True)
class WidestStep:
    """The seam at a side of the unit (its place in `Setting.units`) where two curves miss one another the most."""

    unit: int
    side: Side
    distance: float


@dataclass(frozen=True, slots=True)
class Flow:
    """The curves of all units, followed wherever the ends of two match at a seam.

    An end lies on one side of one unit, and every side has one neighbour at most; so an end has one end at most that
    it goes on into, and every piece belongs to one round or to one path.
    """

    rounds: tuple[Trail, ...]
    """In the order of their first units."""
    paths: tuple[Trail, ...]
    """In the order of the first of their stops."""
    steps: int
    widest: WidestStep | None
    """The first of the widest steps; None where there is none."""

    @property
    def circles(self) -> int:
        """Return how many of the rounds are circles."""
        return sum(trail.circle for trail in self.rounds)

    @property
    def pieces(self) -> int:
        """Return how many pieces of curve all units have."""
        return sum(trail.pieces for trail in (*self.rounds, *self.paths))


@dataclass(frozen=True, slots=True)
class Setting:
    """The quilt top: the tree of what is sewn, all that lies where, every join and the curves that flow.

    `units` and `cloths` are the leaves of the tree, in the top's frame.
    """

    top: Node
    """The whole top, borders included."""
    width: Length
    height: Length
    units: tuple[PlacedUnit, ...]
    cloths: tuple[PlacedCloth, ...]
    joins: tuple[Join, ...]
    flow: Flow
    tally: Mapping[str, int]
    """Units needed of each name (`a`, or `a-tl`), in the design's order; every name used at least once."""

    @property
    def codes(self) -> tuple[str, ...]:
        """Return the colourways that are used, in the design's order."""
        return tuple(dict.fromkeys(map(code_of_unit, self.tally)))

    @property
    def centre(self) -> Node:
        """Return the root inside its borders."""
        return self.top.centre.node if isinstance(self.top, Framed) else self.top


@dataclass(frozen=True, slots=True)
class Face:
    """Cloth that shows in the sewn top: the letter of its fabric, and where."""

    fabric: str
    region: Region
