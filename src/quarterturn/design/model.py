"""The design: what the designer keeps, complete and checked for shape. All lengths are exact inches."""

from __future__ import annotations

import enum
from dataclasses import dataclass
from fractions import Fraction

from quarterturn.design.recipes import GROUND, Recipe, Rejoined
from quarterturn.measure import Length, Units

FIRST, SECOND = "first", "second"
HALF_MARK = "/"
"""Stands in the name of a part of a rejoined unit between the half and the part of its master."""


class Direction(enum.Enum):
    """How the print of a fabric runs: any way up, up or down alike (stripes), or one way only."""

    NONE = "none"
    TWO_WAY = "two-way"
    ONE_WAY = "one-way"


class ClothKind(enum.Enum):
    """What the cloth is made of, as far as the method cares."""

    COTTON = "cotton"
    FLANNEL = "flannel"
    WOOL = "wool"


@dataclass(frozen=True, slots=True)
class Fabric:
    """A fabric of the design, known by its letter. `width` is the usable width, selvages off."""

    letter: str
    name: str
    role: str
    colour: str
    width: Length
    direction: Direction
    kind: ClothKind
    price: Fraction | None
    """Price of a yard (inch patterns) or a metre, in the house's currency."""
    upright: bool = False
    """Whether its print, which has a direction, must stand upright in the quilt."""


@dataclass(frozen=True, slots=True)
class Colourway:
    """A recipe in cloth. `code` is what the map writes.

    Of a recipe that rejoins halves it names the colourways of the two masters, `first` and `second`, and no fabric.
    """

    code: str
    recipe: str
    ground: str
    """The letter of the fabric of the ground; empty where halves are rejoined."""
    shapes: tuple[tuple[str, str], ...]
    """Part and letter of its fabric, in the recipe's order; none where halves are rejoined."""
    first: str = ""
    second: str = ""

    def cloth(self, part: str) -> str:
        """Return the letter of the fabric of a part of the recipe: the ground, or what a shape is called."""
        return self.ground if part == GROUND else dict(self.shapes)[part]

    @property
    def letters(self) -> tuple[str, ...]:
        """Return the letters of its fabrics, the ground first, each once."""
        return tuple(dict.fromkeys((self.ground, *(letter for _, letter in self.shapes))))

    @property
    def is_rejoined(self) -> bool:
        """Tell whether its units are halves of two masters, rejoined."""
        return bool(self.first)

    @property
    def shape(self) -> str:
        """Return the letter of the fabric of the only part besides the ground."""
        ((_, letter),) = self.shapes
        return letter


@dataclass(frozen=True, slots=True)
class Cell:
    """One place of the map: a colourway and so many quarter turns clockwise, 0 to 3.

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


def code_of_unit(name: str) -> str:
    """Return the colourway of a unit from its name."""
    return name.partition("-")[0]


def quarter_of_unit(name: str) -> str:
    """Return the quarter of a unit from its name; empty where its master has one kind of unit."""
    return name.partition("-")[2]


class Symmetry(enum.Enum):
    """How each copy of the map is laid beside the one before it."""

    SLIDE = "slide"
    MIRROR = "mirror"
    TURN = "turn"
    HALF_TURN = "half turn"


@dataclass(frozen=True, slots=True)
class StraightSet:
    """Units in rows and columns: a rectangle of cells, laid `across` times side by side and `down` times below."""

    cells: tuple[tuple[Cell, ...], ...]
    """As written: under `Symmetry.TURN` a square, the upper left quarter of what is laid."""
    across: int
    down: int
    symmetry: Symmetry = Symmetry.SLIDE

    @property
    def size(self) -> tuple[int, int]:
        """Return how many rows and columns the whole map has."""
        parts = 2 if self.symmetry is Symmetry.TURN else 1
        columns = len(self.cells[0]) if self.cells else 0
        return parts * len(self.cells) * self.down, parts * columns * self.across

    def rows(self) -> tuple[tuple[Cell, ...], ...]:
        """Return the whole map, with its repeats laid out."""
        from quarterturn.design.repeats import laid

        return laid(self.cells, self.symmetry, self.across, self.down)


@dataclass(frozen=True, slots=True)
class Border:
    """A butted plain border of this finished width; `sides_first` tells which pair is sewn first."""

    fabric: str
    width: Length
    sides_first: bool


class EdgeStitchKind(enum.Enum):
    """The stitch that holds the edge of a fused shape."""

    ZIGZAG = "zigzag"
    SATIN = "satin"
    BLANKET = "blanket"
    STRAIGHT = "straight"


@dataclass(frozen=True, slots=True)
class EdgeStitch:
    """Starting values for the machine; the booklet says to test them on a scrap of the same layers."""

    kind: EdgeStitchKind
    width: Length
    length: Length
    thread: str
    needle: str


class Pressing(enum.Enum):
    """How joining seams are pressed: opposed at every crossing, or all open."""

    OPPOSED = "opposed"
    OPEN = "open"


@dataclass(frozen=True, slots=True)
class Making:
    """How the quilt is made: every allowance and default, each of which the file may set and the booklet prints."""

    seam: Length
    usable_width: Length
    """For fabrics that state none."""
    ring_out: Length
    """Web left outside the drawn line."""
    ring_in: Length
    """Web left inside the drawn line; the rest is hollowed out."""
    tracing_gap: Length
    """Between two drawn lines on the web."""
    cut_away: Length
    """Ground cloth left inside the stitching when the rest behind the shape is cut away."""
    web_width: Length
    binding_extra: Length
    """Binding beyond the perimeter, for joins, mitres and the overlap of its ends."""
    overage: Length
    """Backing and batting beyond the top, on each side."""
    backing_seam: Length
    """Allowance of each of the two edges in a backing seam."""
    squaring: Length
    """Lost when the cut end of a fabric is straightened."""
    slack: Length
    """Cloth bought beyond the cuts, squaring included, at least."""
    spare_masters: int
    """Masters made beyond need, of each colourway."""
    pressing: Pressing
    stitch: EdgeStitch


class Paper(enum.Enum):
    """The sheet that the booklet is printed on."""

    LETTER = "letter"
    A4 = "a4"


@dataclass(frozen=True, slots=True)
class House:
    """House style: how the pattern speaks and looks."""

    paper: Paper
    sixteenths: bool
    """Quote sizes to 1/16" where 1/8" would hide something."""
    currency: str
    skill: str


@dataclass(frozen=True, slots=True)
class Design:
    """Everything the designer decided, complete: defaults filled in, repeats kept as written."""

    title: str
    maker: str
    units: Units
    number: str
    version: str
    date: str
    contact: str
    about: str
    fabrics: tuple[Fabric, ...]
    recipes: tuple[Recipe, ...]
    colourways: tuple[Colourway, ...]
    setting: StraightSet
    borders: tuple[Border, ...]
    binding_fabric: str
    binding_width: Length
    """Width of the binding strip as cut; folded double."""
    backing_fabric: str
    making: Making
    house: House
    rejoined: tuple[Rejoined, ...] = ()
    """The recipes that rejoin halves of masters of another recipe."""

    def fabric(self, letter: str) -> Fabric:
        """Return the fabric with a letter that the design has."""
        return next(f for f in self.fabrics if f.letter == letter)

    def recipe(self, name: str) -> Recipe:
        """Return the recipe of a master with a name that the design has."""
        return next(r for r in self.recipes if r.name == name)

    def rejoined_recipe(self, name: str) -> Rejoined:
        """Return the recipe that rejoins halves, with a name that the design has."""
        return next(r for r in self.rejoined if r.name == name)

    def colourway(self, code: str) -> Colourway:
        """Return the colourway with a code that the design has."""
        return next(c for c in self.colourways if c.code == code)

    def masters_of(self, code: str) -> tuple[str, ...]:
        """Return the colourways of the masters that units of a colourway come from: itself, or first and second."""
        colourway = self.colourway(code)
        return (colourway.first, colourway.second) if colourway.is_rejoined else (code,)

    def cloth(self, name: str, part: str) -> str:
        """Return the letter of the fabric that a part of a unit (`a`, or `a-tl`) is made of.

        Parts of a rejoined unit say which master they come from: ``first/ground``, ``second/heart``.
        """
        colourway = self.colourway(code_of_unit(name))
        half, slash, inner = part.partition(HALF_MARK)
        if not slash:
            return colourway.cloth(part)
        return self.colourway(colourway.first if half == FIRST else colourway.second).cloth(inner)
