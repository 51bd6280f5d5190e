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


@dataclass(frozen=True, slots=True)
class Setting:
    """Units in place, borders in order of sewing, finished sizes, and every join between neighbours."""

    rows: int
    columns: int
    side: Length
    """Finished side of every unit."""
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
    tally: Mapping[str, int]
    """Units needed of each name (`a`, or `a-tl`), in the design's order; every name used at least once."""

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
