"""What a recipe comes to: the master to make, and the units that it falls into.

Two frames are used. The master's frame has its origin at the middle of the square. A unit's frame has its
origin at the top left corner of its sewn outline, and is seen at turn 0. So the sewn outline spans 0..side, the
cut outline −seam..side + seam.

Turn 0 depends on how many kinds of unit a master gives. Where it gives one, the corner that came from the middle
of the master is the top left one. Where it gives several (of a heart no quarter is a turn of another), each lies
as it lies in the master, and is known by the quarter that it comes from: tl, tr, br or bl. Quarters that are equal
but for a turn are one kind, known by the first of them in this order.
"""

from __future__ import annotations

from dataclasses import dataclass

from quarterturn.design import Design, code_of_unit, quarter_of_unit
from quarterturn.geometry import Motion, Path, Region, StraightLine
from quarterturn.measure import Length

GROUND = "ground"
SHAPE = "shape"


@dataclass(frozen=True, slots=True)
class FusedShape:
    """A shape to trace and fuse, in the master's frame. The ring's paths are where the web is cut."""

    name: str
    wanted: Path
    """The outline that is meant: as traced, or where it is sewn true as it finishes."""
    traced: Path
    ring_out: Region
    ring_in: Region
    """The hollow of the ring; empty where the shape is too small to be hollowed out."""
    edge: float
    """Length of the edge to be stitched, in inches."""
    width: float
    height: float


@dataclass(frozen=True, slots=True)
class Layer:
    """One part as it lies in a unit: `GROUND` or `SHAPE`, the later layer on top."""

    part: str
    region: Region


@dataclass(frozen=True, slots=True)
class Span:
    """A stretch of a unit's sewn side on which one part shows, measured left to right or top to bottom."""

    part: str
    start: float
    end: float


@dataclass(frozen=True, slots=True)
class Unit:
    """A kind of unit. `side` is finished; `cut_layers` fill the trimmed outline, `sewn_layers` what stays seen."""

    side: Length
    seam: Length
    cut_layers: tuple[Layer, ...]
    sewn_layers: tuple[Layer, ...]
    quarter: str = ""
    """The quarter that it comes from, tl, tr, br or bl, where the master gives several kinds; else empty."""

    @property
    def cut_side(self) -> Length:
        """Return the side as trimmed, seam allowances included."""
        return self.side + 2 * self.seam

    @property
    def width(self) -> Length:
        """Return the finished width."""
        return self.side

    @property
    def height(self) -> Length:
        """Return the finished height."""
        return self.side


@dataclass(frozen=True, slots=True)
class Part:
    """One of the pieces that the cuts leave: which kind of unit it is, and the motion into that unit's frame."""

    unit: int
    motion: Motion


@dataclass(frozen=True, slots=True)
class CurveFacts:
    """What the seams make of the curve, in inches and degrees, read off the sewn units."""

    crossing: float
    """From the finished corner to where the curve meets a seam, at the farthest."""
    diagonal: float
    """From the finished corner to the curve, along the diagonal, in the first unit."""
    peak: float
    """The corner that two rejoined parts of the curve make at a seam and the outline has not, in degrees."""
    step: float
    """How far the rejoined parts of the curve miss one another at a seam, at the farthest."""
    clearance: float
    """From the curve to the unit's outer cut edge."""
    shape_area: float
    """Sewn area of the shape in a unit, on average."""
    wanted_area: float
    """Area the traced shape would have in a unit if no seam took its share, on average."""


@dataclass(frozen=True, slots=True)
class Master:
    """A square of ground with its shape, the cuts through it, and the kinds of unit they leave."""

    recipe: str
    side: Length
    trim: Length
    seam: Length
    shape: FusedShape
    cuts: tuple[StraightLine, ...]
    units: tuple[Unit, ...]
    parts: tuple[Part, ...]
    facts: CurveFacts

    def per_master(self, unit: int = 0) -> int:
        """Return how many units of a kind one master gives."""
        return sum(part.unit == unit for part in self.parts)

    def unit(self, quarter: str = "") -> Unit:
        """Return the kind of unit of a quarter that the master has."""
        return next(u for u in self.units if u.quarter == quarter)

    def part(self, quarter: str = "") -> Part:
        """Return the first of the pieces that are of a kind, in the order of cutting."""
        return next(p for p in self.parts if self.units[p.unit].quarter == quarter)


@dataclass(frozen=True, slots=True)
class Blocks:
    """All masters, in the order of the recipes."""

    masters: tuple[Master, ...]

    def master(self, recipe: str) -> Master:
        """Return the master of a recipe."""
        return next(m for m in self.masters if m.recipe == recipe)

    def unit(self, design: Design, name: str) -> Unit:
        """Return the unit that a name of the map means: `a`, or `a-tl`."""
        return self.master(design.colourway(code_of_unit(name)).recipe).unit(quarter_of_unit(name))
