"""The quilt top as it will be sewn. Its frame has the origin at the top left corner inside the binding."""

from __future__ import annotations

import enum
from collections.abc import Mapping
from dataclasses import dataclass

from quarterturn.design import code_of_unit, unit_name
from quarterturn.geometry import Region
from quarterturn.measure import Length


@dataclass(frozen=True, slots=True)
class PlacedUnit:
    """A unit at its place: row and column count from 0 at the top left, `turn` in clockwise quarters.

    `quarter` is that of the master, where its units are of several kinds.
    """

    row: int
    column: int
    code: str
    turn: int
    quarter: str = ""

    @property
    def name(self) -> str:
        """Return the name of the unit: `a`, or `a-tl`."""
        return unit_name(self.code, self.quarter)


class Side(enum.Enum):
    """A side of the quilt or of a unit."""

    TOP = "top"
    RIGHT = "right"
    BOTTOM = "bottom"
    LEFT = "left"


@dataclass(frozen=True, slots=True)
class BorderStrip:
    """One finished border strip. `ring` counts from 0 at the inside; strips stand in the order of sewing."""

    ring: int
    side: Side
    fabric: str
    left: Length
    top: Length
    width: Length
    height: Length

    @property
    def length(self) -> Length:
        """Return the finished length along the edge it is sewn to."""
        return self.height if self.side in (Side.LEFT, Side.RIGHT) else self.width

    @property
    def depth(self) -> Length:
        """Return the finished width of the border."""
        return self.width if self.side in (Side.LEFT, Side.RIGHT) else self.height


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
    """The seam between a unit and its right or lower neighbour."""

    row: int
    column: int
    side: Side
    """RIGHT or BOTTOM of the unit at row, column."""
    marks: tuple[JoinMark, ...]


class Stop(enum.Enum):
    """Where a curve that does not close comes to its end."""

    EDGE = "edge"
    """At the edge of the quilt centre, by the border."""
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
    """The seam at the RIGHT or BOTTOM of the unit at row, column, where two curves miss one another the most."""

    row: int
    column: int
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
    """Units in place, borders in order of sewing, finished sizes, and every join between neighbours."""

    rows: int
    columns: int
    widths: tuple[Length, ...]
    """Finished width of each column."""
    heights: tuple[Length, ...]
    """Finished height of each row."""
    units: tuple[PlacedUnit, ...]
    """Row by row."""
    borders: tuple[BorderStrip, ...]
    centre_width: Length
    centre_height: Length
    centre_left: Length
    centre_top: Length
    width: Length
    height: Length
    joins: tuple[Join, ...]
    flow: Flow
    tally: Mapping[str, int]
    """Units needed of each name (`a`, or `a-tl`), in the design's order; every name used at least once."""

    @property
    def side(self) -> Length:
        """Return the finished side of every unit, where all are one square."""
        (side,) = {*self.widths, *self.heights}
        return side

    def corner(self, row: int, column: int) -> tuple[Length, Length]:
        """Return how far the top left corner of a place lies from that of the quilt centre: right of it and below."""
        return sum(self.widths[:column], Length(0)), sum(self.heights[:row], Length(0))

    @property
    def codes(self) -> tuple[str, ...]:
        """Return the colourways that are used, in the design's order."""
        return tuple(dict.fromkeys(map(code_of_unit, self.tally)))

    def row(self, index: int) -> tuple[PlacedUnit, ...]:
        """Return the units of a row."""
        return self.units[index * self.columns : (index + 1) * self.columns]


@dataclass(frozen=True, slots=True)
class Face:
    """Cloth that shows in the sewn top: the letter of its fabric, and where."""

    fabric: str
    region: Region
