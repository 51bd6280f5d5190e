"""The design: what the designer keeps, complete and checked for shape. All lengths are exact inches."""

from __future__ import annotations

import enum
from dataclasses import dataclass
from fractions import Fraction

from quarterturn.design.parcels import Parcel
from quarterturn.design.recipes import GROUND, OwnOutline, Recipe, Rejoined
from quarterturn.design.sections import AnyBorder, Section, SectionSet
from quarterturn.design.selling import NOTHING_SOLD, Selling
from quarterturn.measure import INCH, YARD, Length, Units

FIRST, SECOND = "first", "second"
HALF_MARK = "/"
"""Stands in the name of a part of a rejoined unit between the half and the part of its master."""


WHOLE_PHOTO = (Fraction(0), Fraction(0), Fraction(1), Fraction(1))


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
class Photo:
    """A photo of a fabric, for the screen alone: a file beside the design.

    `width` is what it shows across in truth, as cropped; None where nobody has measured it. `crop` is what is shown of
    it: left, top, width and height, as shares of the whole.
    """

    file: str
    width: Length | None = None
    crop: tuple[Fraction, Fraction, Fraction, Fraction] = WHOLE_PHOTO


@dataclass(frozen=True, slots=True)
class PinnedStrips:
    """Strips of a fabric that the designer has decided on, by their height.

    With a `count`, so many are cut, for the named pieces as far as they hold them, then for whatever else fits.
    Without one, all of the named pieces are cut from strips of this height, as many as that takes.
    """

    height: Length
    count: int | None
    pieces: tuple[str, ...]
    """Labels of pieces, as the booklet prints them."""


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
    """Price of a yard (inch patterns), of a metre, or of a piece where it is bought so, in the house's currency."""
    shrink_along: Fraction = Fraction(0)
    """The share of its length that the wash takes before it is cut; 0 where it is not washed."""
    shrink_across: Fraction = Fraction(0)
    upright: bool = False
    """Whether its print, which has a direction, must stand upright in the quilt."""
    photo: Photo | None = None
    on_hand: tuple[Parcel, ...] = ()
    """Pieces of it that lie on the shelf, which are used first."""
    bought_as: Parcel | None = None
    """The pieces in which it is bought; None where it comes off the bolt."""
    strips: tuple[PinnedStrips, ...] = ()
    strip_heights: tuple[Length, ...] = ()
    """Heights that its strips may have, low to high, but for strips to be joined and bands; any where there is none."""


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


class BindingKind(enum.Enum):
    """How a binding lies on the cloth it is cut from."""

    STRAIGHT = "straight"
    BIAS = "bias"


class Fold(enum.Enum):
    """How a binding strip is folded: doubled, or its raw edges in."""

    DOUBLE = "double"
    SINGLE = "single"


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


class Joins(enum.Enum):
    """How the ends of strips are joined for borders and strips longer than the cloth is wide."""

    CHEAPEST = "cheapest"
    """Whichever of the two takes less to buy; straight, where that is equal."""
    STRAIGHT = "straight"
    """Square across: two seam allowances go in each join."""
    DIAGONAL = "diagonal"
    """At 45°: the width of the strip goes in each join."""


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
    web_sheet: tuple[Length, Length] | None = None
    """Width and height of a sheet of web; None where it is sold by the length, `web_width` wide."""
    piece_squaring: Length = INCH
    """Taken off the width and off the height of a piece of cloth to square it up, where it states no other."""
    joins: Joins = Joins.CHEAPEST
    layers: int = 4
    """Layers of cloth cut at once with a rotary cutter, at most (four is common practice, no source)."""


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

    def hangs(self, width: Length, height: Length) -> tuple[Length, Length, Length]:
        """Return how far a finished quilt hangs down at each side and at the foot, and what is left for the pillows.

        Where a tuck is wanted it takes what is off the wanted length, since it lies hidden; else the foot does.
        """
        beyond = height - self.length
        foot = min(self.drop, beyond) if self.tuck else beyond
        return (width - self.width) / 2, foot, beyond - foot


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
    """Width of the binding strip as cut."""
    backing_fabric: str
    making: Making
    house: House
    rejoined: tuple[Rejoined, ...] = ()
    """The recipes that rejoin halves of masters of another recipe."""
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
    binding_kind: BindingKind = BindingKind.STRAIGHT
    binding_fold: Fold = Fold.DOUBLE

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
