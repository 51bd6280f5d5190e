"""The design: what the designer keeps, complete and checked for shape. All lengths are exact inches."""

from __future__ import annotations

import enum
from dataclasses import dataclass
from fractions import Fraction
from typing import TypeAlias

from quarterturn.design.sections import AnyBorder, Section, SectionSet
from quarterturn.design.selling import NOTHING_SOLD, Selling
from quarterturn.geometry import Path
from quarterturn.measure import YARD, Length, Units


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
    shrink_along: Fraction = Fraction(0)
    """The share of its length that the wash takes before it is cut; 0 where it is not washed."""
    shrink_across: Fraction = Fraction(0)


@dataclass(frozen=True, slots=True)
class OwnOutline:
    """An outline of the designer's own: its path data, which holds for the file's units, y down.

    `width` is what it truly measures across; `path` is the outline as `geometry.fitted` has it.
    """

    name: str
    data: str
    width: Length
    path: Path


class Curve(enum.Enum):
    """Whether the shape is traced as it is, or slashed and spread so that it is true after the seams."""

    AS_DRAWN = "as drawn"
    SEWN_TRUE = "sewn true"


@dataclass(frozen=True, slots=True)
class DrawnDiameter:
    """The shape as traced measures this across (with its flats, where it is spread)."""

    diameter: Length


@dataclass(frozen=True, slots=True)
class FinishedRadius:
    """The curve meets the sewn seam this far from the finished corner."""

    radius: Length


@dataclass(frozen=True, slots=True)
class PathsFlow:
    """The curve meets the sewn seam at the middle of the unit's side, so that it runs on into a turned neighbour."""


@dataclass(frozen=True, slots=True)
class DrawnOutline:
    """An outline of `geometry.OUTLINES` other than a circle, or one of the designer's own, turned clockwise.

    `width` is measured before it is turned by so many quarters, as traced (with its flats, where it is spread).
    `lobes` counts those of a scallop; 0 for others. `own` is the designer's own outline, as `geometry.fitted` has it.
    """

    outline: str
    width: Length
    turn: int
    lobes: int
    own: Path | None = None


ShapeSize: TypeAlias = DrawnDiameter | FinishedRadius | PathsFlow | DrawnOutline


@dataclass(frozen=True, slots=True)
class Recipe:
    """A shape on a square, cut both ways. start = 2·(finished + 2·seam) + trim holds exactly."""

    name: str
    finished: Length
    """Side of the unit inside its seams."""
    start: Length
    """Side of the master square as cut."""
    trim: Length
    """What is trimmed off the master in all; half of it from each unit's two outer edges' side."""
    size: ShapeSize
    curve: Curve


@dataclass(frozen=True, slots=True)
class Colourway:
    """A recipe in cloth: the letters of the fabrics for ground and shape. `code` is what the map writes."""

    code: str
    recipe: str
    ground: str
    shape: str

    def cloth(self, part: str) -> str:
        """Return the letter of the fabric of a part of the recipe: ground or shape."""
        return self.ground if part == "ground" else self.shape


def code_of_unit(name: str) -> str:
    """Return the colourway of a unit from its name."""
    return name.partition("-")[0]


def quarter_of_unit(name: str) -> str:
    """Return the quarter of a unit from its name; empty where its master has one kind of unit."""
    return name.partition("-")[2]


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
    repeat: tuple[complex, ...] = ()
    """The way of the needle through one repeat in inches, x into the shape and y along the edge; none: by its kind."""
    layers: int = 2
    """Of cloth that it goes through."""
    bobbin: Length = 60 * YARD
    """Thread on a full bobbin."""


class Pressing(enum.Enum):
    """How joining seams are pressed: opposed at every crossing, or all open."""

    OPPOSED = "opposed"
    OPEN = "open"


class LongCut(enum.Enum):
    """How borders and strips that are longer than the cloth is wide are cut."""

    CHEAPEST = "cheapest"
    """Whichever of the two takes less to buy; joined, where that is equal."""
    LENGTHWISE = "lengthwise"
    """Along the cloth, in one piece each."""
    CROSSWISE = "crosswise"
    """From strips across the cloth, joined."""


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
    borders: LongCut = LongCut.CHEAPEST


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
class Package:
    """A size in which batting is sold."""

    name: str
    short: Length
    long: Length


class UnknownSizeError(LookupError):
    """A design has no size of a name. The message is a sentence without a full stop."""


@dataclass(frozen=True, slots=True)
class Bed:
    """What a size is meant to cover: a mattress, how far the quilt hangs down, and a tuck behind the pillows.

    `name` is that of a known mattress, or empty. The drop hangs on both sides and at the foot.
    """

    name: str
    width: Length
    length: Length
    drop: Length
    tuck: Length
    within: Length
    """How far the quilt may be from the size that is wanted, either way."""

    @property
    def wanted(self) -> tuple[Length, Length]:
        """Return the wanted width and length: width + 2 · drop, length + drop + tuck (common practice; the charts
        of drops published at ciaspalette.com and quiltersreview.com follow it)."""
        return self.width + 2 * self.drop, self.length + self.drop + self.tuck


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
    sections: tuple[Section, ...]
    """Those that maps may call by name, in the order of the file."""
    setting: SectionSet
    """The root of the tree; its borders are `borders`."""
    borders: tuple[AnyBorder, ...]
    binding_fabric: str
    binding_width: Length
    """Width of the binding strip as cut; folded double."""
    backing_fabric: str
    making: Making
    house: House
    outlines: tuple[OwnOutline, ...] = ()
    size: str = "original"
    """What this size of the quilt is called."""
    bed: Bed | None = None
    sizes: tuple[Design, ...] = ()
    """The design in its other sizes, each complete and without sizes of its own."""
    packages: tuple[Package, ...] = ()
    """Packaged batting, smallest first; none: that of most shops."""
    selling: Selling = NOTHING_SOLD
    """What the quilt costs, and how it is sold and taught."""

    def in_size(self, name: str) -> Design:
        """Return the design in the size of a name, itself included. Raises UnknownSizeError where there is none."""
        for design in (self, *self.sizes):
            if design.size == name:
                return design
        names = ", ".join(design.size for design in (self, *self.sizes))
        raise UnknownSizeError(f"there is no size {name!r}; the design has {names}")

    def fabric(self, letter: str) -> Fabric:
        """Return the fabric with a letter that the design has."""
        return next(f for f in self.fabrics if f.letter == letter)

    def recipe(self, name: str) -> Recipe:
        """Return the recipe with a name that the design has."""
        return next(r for r in self.recipes if r.name == name)

    def colourway(self, code: str) -> Colourway:
        """Return the colourway with a code that the design has."""
        return next(c for c in self.colourways if c.code == code)

    def cloth(self, name: str, part: str) -> str:
        """Return the letter of the fabric that a part of a unit (`a`, or `a-tl`) is made of."""
        return self.colourway(code_of_unit(name)).cloth(part)
