"""What a recipe comes to: the master to make, and the units that it falls into.

Two frames are used. The master's frame has its origin at the middle of the master. A unit's frame has its
origin at the top left corner of the upright box of its sewn outline, and is seen at turn 0. So the sewn outline of
a rectangle spans 0..width and 0..height, its cut outline −seam..width + seam and −seam..height + seam.

Turn 0 depends on how many kinds of unit a master gives. Where a master cut both ways gives one, the corner that
came from the middle of the master is the top left one. Where it gives several (of a heart no quarter is a turn of
another), each lies as it lies in the master, and is known by the piece that it comes from. Pieces that are equal
but for a turn are one kind, known by the first of them; a mirror image is another kind.

Names of pieces, in their order: tl tr br bl (quarters, clockwise from the top left); lh rh (left and right half);
th bh (top and bottom half); tt rt bt lt (triangles: top, right, bottom, left); of other cuts pa, pb … from the top
down and from left to right.
"""

from __future__ import annotations

from collections.abc import Container
from dataclasses import dataclass
from fractions import Fraction

from quarterturn.design import GROUND, HALF_MARK, SHAPE, Design, code_of_unit, quarter_of_unit
from quarterturn.geometry import STAY, Motion, Path, Region, StraightLine
from quarterturn.measure import Length

__all__ = ["GROUND", "SHAPE"]

_NONE = Fraction(0)


@dataclass(frozen=True, slots=True)
class FusedShape:
    """A shape to trace and fuse, at its place in the master's frame. The ring's paths are where the web is cut."""

    name: str
    """What its template is called. Shapes of one master and one name have the same outline, laid by `motion`."""
    wanted: Path
    """The outline that is meant: as traced, or where it is sewn true as it finishes."""
    traced: Path
    ring_out: Region
    ring_in: Region
    """The hollow of the ring; empty where the shape is too small to be hollowed out."""
    edge: float
    """Length of the edges to be stitched, in inches: that of its hole too."""
    width: float
    """Of the upright box of `traced`."""
    height: float
    part: str = SHAPE
    hole: Path | None = None
    """The round hole of a ring as traced, run the other way than `traced`."""
    wanted_hole: Path | None = None
    underlap: Length = _NONE
    """How much of what lies below stays inside its stitching when it is cut away."""
    motion: Motion = STAY
    """Lays the first shape of this name on this one, in the master's frame."""

    @property
    def region(self) -> Region:
        """Return what is cut out: inside `traced`, outside its hole."""
        return Region((self.traced, self.hole) if self.hole else (self.traced,))


@dataclass(frozen=True, slots=True)
class Layer:
    """One part as it lies in a unit, the later layer on top.

    `shape` is the place of its shape in `Master.shapes`; −1 for the ground.
    """

    part: str
    region: Region
    shape: int = -1


@dataclass(frozen=True, slots=True)
class Span:
    """A stretch of a unit's sewn side on which one part shows, measured left to right or top to bottom."""

    part: str
    start: float
    end: float


@dataclass(frozen=True, slots=True)
class Half:
    """One of the two pieces of a rejoined unit: which kind of unit of the master `of`, and how it lies.

    `part` is FIRST or SECOND: of which of the two masters. `motion` leads from the half's frame into the rejoined
    unit's; the layers' parts are those of the half with ``first/`` or ``second/`` before them.
    """

    part: str
    unit: int
    motion: Motion


@dataclass(frozen=True, slots=True)
class Unit:
    """A kind of unit. `width` and `height` are finished: of the upright box of `outline`, its sewn outline.

    `cut_layers` fill `cut_outline`, to which it is trimmed; `sewn_layers` are what stays seen.
    """

    width: Length
    height: Length
    seam: Length
    outline: Path
    cut_outline: Path
    cut_layers: tuple[Layer, ...]
    sewn_layers: tuple[Layer, ...]
    quarter: str = ""
    """The piece that it comes from, where the master gives several kinds; else empty."""
    mirror: int | None = None
    """The kind of the same master that is its mirror image (itself, where it is its own); None: no kind is."""
    halves: tuple[Half, ...] = ()
    """The two halves of a rejoined unit; none for others."""

    @property
    def is_rectangle(self) -> bool:
        """Tell whether it can be placed in a setting: its sewn outline is an upright rectangle."""
        box = float(self.width) * float(self.height)
        return len(self.outline.segments) == 4 and abs(self.outline.area() - box) < 1e-6

    @property
    def cut_width(self) -> Length:
        """Return the width of a rectangle as trimmed, seam allowances included."""
        return self.width + 2 * self.seam

    @property
    def cut_height(self) -> Length:
        """Return the height of a rectangle as trimmed, seam allowances included."""
        return self.height + 2 * self.seam

    @property
    def side(self) -> Length:
        """Return the finished side of a square unit."""
        assert self.width == self.height
        return self.width

    @property
    def cut_side(self) -> Length:
        """Return the side of a square unit as trimmed."""
        return self.side + 2 * self.seam


@dataclass(frozen=True, slots=True)
class Part:
    """One of the pieces that the cuts leave: which kind of unit it is, and the motion into that unit's frame."""

    unit: int
    motion: Motion
    name: str
    """Which piece of the master it is, whether or not its kind is called so."""
    outline: Path
    """As the cuts leave it, before it is trimmed, in the master's frame."""
    word: str = ""
    """What the map may call it besides: the kind of which it would be if prints could lie any way up."""
    turn: int = 0
    """By how many quarters clockwise that kind is turned where it lies as this piece lies in the master."""


@dataclass(frozen=True, slots=True)
class CurveFacts:
    """What the seams make of the curves, in inches and degrees, read off the sewn units."""

    crossing: float
    """From the finished corner to where the curve meets a seam, at the farthest; 0 unless cut both ways."""
    diagonal: float
    """From the finished corner to the curve, along the diagonal, in the first unit; 0 unless cut both ways."""
    peak: float
    """The corner that two rejoined parts of a curve make at a seam and the outline has not, in degrees."""
    step: float
    """How far the rejoined parts of a curve miss one another at a seam, at the farthest."""
    clearance: float
    """From the curves to the trimmed outer edge, at the nearest; below 0 where trimming cuts a shape off."""
    shape_area: float
    """Sewn area that shapes show in a unit, on average."""
    wanted_area: float
    """Area the traced shapes would show in a unit if no seam took its share, on average."""


@dataclass(frozen=True, slots=True)
class Master:
    """A square or rectangle of ground with its shapes, the cuts through it, and the kinds of unit they leave."""

    recipe: str
    width: Length
    """As cut."""
    height: Length
    trim_width: Length
    """What is trimmed off in all, half of it on each side."""
    trim_height: Length
    seam: Length
    shapes: tuple[FusedShape, ...]
    """In the order of fusing: the later on top."""
    cuts: tuple[StraightLine, ...]
    """In the order of cutting."""
    units: tuple[Unit, ...]
    parts: tuple[Part, ...]
    """In the order in which the cuts leave them: of each cut the part on its positive side comes first."""
    facts: CurveFacts

    @property
    def side(self) -> Length:
        """Return the side of a square master."""
        assert self.width == self.height
        return self.width

    @property
    def trim(self) -> Length:
        """Return what is trimmed off a master that loses as much both ways."""
        assert self.trim_width == self.trim_height
        return self.trim_width

    @property
    def shape(self) -> FusedShape:
        """Return the only shape."""
        (shape,) = self.shapes
        return shape

    @property
    def templates(self) -> tuple[tuple[FusedShape, int], ...]:
        """Return the shapes to trace, the first of each name, and how many of each a master takes."""
        names = [shape.name for shape in self.shapes]
        firsts = {shape.name: shape for shape in reversed(self.shapes)}
        return tuple((firsts[name], names.count(name)) for name in dict.fromkeys(names))

    @property
    def lies(self) -> tuple[Lie, ...]:
        """Return how the pieces lie."""
        return tuple(Lie(part.name, part.word, part.turn) for part in self.parts)

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
class Lie:
    """How a piece lies in its master, or a block as its halves lie in theirs: as `Part` has it."""

    name: str
    word: str
    turn: int


@dataclass(frozen=True, slots=True)
class Rejoining:
    """What two masters of one recipe, cut once, give when their halves change places: two blocks."""

    recipe: str
    of: str
    """The recipe of both masters."""
    cut: StraightLine
    """That of the masters, along which halves are joined, in the master's frame."""
    trim_width: Length
    """What is trimmed off a rejoined block in all, half of it on each side."""
    trim_height: Length
    raw_outline: Path
    """Of a block as joined, before it is trimmed, in the frame of a unit."""
    seam: Length
    units: tuple[Unit, ...]
    """One kind where the two blocks are the same but for a turn; else two."""
    blocks: tuple[int, int]
    """The kind of the block with the first master's first half, and of that with its second."""
    lies: tuple[Lie, Lie]
    """How those two blocks lie."""

    def per_pair(self, unit: int = 0) -> int:
        """Return how many units of a kind two masters give."""
        return self.blocks.count(unit)


@dataclass(frozen=True, slots=True)
class Blocks:
    """All masters, and all rejoined blocks, in the order of their recipes."""

    masters: tuple[Master, ...]
    rejoined: tuple[Rejoining, ...] = ()

    def master(self, recipe: str) -> Master:
        """Return the master of a recipe that is no rejoining."""
        return next(m for m in self.masters if m.recipe == recipe)

    def rejoining(self, recipe: str) -> Rejoining:
        """Return the rejoining of a recipe that is one."""
        return next(r for r in self.rejoined if r.recipe == recipe)

    def templates(self, recipes: Container[str] | None = None) -> tuple[tuple[Master, FusedShape], ...]:
        """Return every shape to trace once, with the first master that has it: of some recipes, or of all.

        A recipe and its copy for prints that stand upright share theirs.
        """
        firsts: dict[str, tuple[Master, FusedShape]] = {}
        for master in self.masters:
            if recipes is None or master.recipe in recipes:
                for shape, _ in master.templates:
                    firsts.setdefault(shape.name, (master, shape))
        return tuple(firsts.values())

    def units(self, recipe: str) -> tuple[Unit, ...]:
        """Return the kinds of unit of a recipe, whether of one master or rejoined from two."""
        found = {each.recipe: each.units for each in self.masters}
        return (found | {each.recipe: each.units for each in self.rejoined})[recipe]

    def lies(self, recipe: str) -> tuple[Lie, ...]:
        """Return how the pieces of a recipe lie, whether of one master or rejoined from two."""
        found = {each.recipe: each.lies for each in self.masters}
        return (found | {each.recipe: each.lies for each in self.rejoined})[recipe]

    def unit(self, design: Design, name: str) -> Unit:
        """Return the unit that a name of the map means: `a`, or `a-tl`."""
        kinds = self.units(design.colourway(code_of_unit(name)).recipe)
        return next(unit for unit in kinds if unit.quarter == quarter_of_unit(name))


def half_part(half: str, part: str) -> str:
    """Return what a part of the FIRST or SECOND master is called in a rejoined unit: ``first/ground``."""
    return f"{half}{HALF_MARK}{part}"
