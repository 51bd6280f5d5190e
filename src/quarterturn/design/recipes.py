"""Recipes: what is fused on a master, how it is cut, and what its pieces finish as. All lengths are exact inches.

Points are measured from the middle of the master, x to the right and y down.
"""

from __future__ import annotations

import enum
from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction
from typing import TypeAlias, TypeVar

from quarterturn.geometry import Path
from quarterturn.measure import Length

GROUND = "ground"
"""The part that everything is fused on."""
SHAPE = "shape"
"""The part of a recipe with one shape that the file gives no name."""


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


class RecipeKind(enum.Enum):
    """What a recipe is called in the file. The first two are short forms of the third."""

    CIRCLE = "circle cut both ways"
    SHAPE = "shape cut both ways"
    SHAPES = "shapes cut"
    REJOINED = "halves rejoined"


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
    """An outline of `geometry.OUTLINES`, a ring, or one of the designer's own, turned by so many quarters clockwise.

    `width` is measured before it is turned: in a short form as traced (with its flats, where it is spread), in
    `RecipeKind.SHAPES` as it is meant. `turn` is 0 in `RecipeKind.SHAPES`, where `ShapeOn.degrees` turns. `lobes`
    counts those of a scallop; 0 for others. `inner` is the diameter of the hole of a ring; 0 for others. `own` is the
    designer's own outline, as `geometry.fitted` has it.
    """

    outline: str
    width: Length
    turn: int
    lobes: int
    inner: Length = Fraction(0)
    own: Path | None = None


ShapeSize: TypeAlias = DrawnDiameter | FinishedRadius | PathsFlow | DrawnOutline


@dataclass(frozen=True, slots=True)
class Cut:
    """A straight cut from edge to edge of the master, along the line through two points."""

    start_x: Length
    start_y: Length
    end_x: Length
    end_y: Length


@dataclass(frozen=True, slots=True)
class ShapeOn:
    """A shape fused on a master. Several shapes may be one `part`: they are one cloth.

    x and y are the middle of its upright box before it is turned; `degrees` turn it clockwise about that point.
    `underlap` is how much of what lies below stays inside its stitching when it is cut away; None: as in [making].
    """

    part: str
    size: ShapeSize
    x: Length = Fraction(0)
    y: Length = Fraction(0)
    degrees: Fraction = Fraction(0)
    underlap: Length | None = None


@dataclass(frozen=True, slots=True)
class Recipe:
    """A square or rectangle with shapes fused on in order, the later on top, and straight cuts through all.

    Where the master is cut down its middle, width = 2·(finished_width + 2·seam) + trim_width holds exactly; where no
    cut runs down, width = finished_width + 2·seam + trim_width; heights alike. Cuts of other kinds leave pieces
    that share no one finished size: there the finished size is that of the whole master as if it were not cut.
    """

    name: str
    width: Length
    """Of the master as cut."""
    height: Length
    finished_width: Length
    """Of a unit inside its seams."""
    finished_height: Length
    trim_width: Length
    """What is trimmed off the width of the master in all; half of it on each side."""
    trim_height: Length
    cuts: tuple[Cut, ...]
    """In the order of cutting."""
    shapes: tuple[ShapeOn, ...]
    """In the order of fusing: the later lie on top."""
    curve: Curve
    kind: RecipeKind = RecipeKind.SHAPES
    pieced: bool = False
    """Whether the pattern offers the quarter circle as two pieces sewn along the curve as well."""
    origin: Recipe | None = None
    """The recipe of the file of which this is a copy that keeps its pieces apart (see `upright`)."""

    @property
    def base(self) -> str:
        """Return the name of the recipe of which this is a copy; empty where it is none."""
        return self.origin.name if self.origin else ""

    @property
    def parts(self) -> tuple[str, ...]:
        """Return the parts that need a fabric besides the ground, in the order of fusing."""
        return tuple(dict.fromkeys(shape.part for shape in self.shapes))

    @property
    def finished(self) -> Length:
        """Return the side of a unit that is square."""
        assert self.finished_width == self.finished_height
        return self.finished_width

    @property
    def start(self) -> Length:
        """Return the side of a master that is square."""
        assert self.width == self.height
        return self.width

    @property
    def trim(self) -> Length:
        """Return what is trimmed off a master that loses as much both ways."""
        assert self.trim_width == self.trim_height
        return self.trim_width

    @property
    def size(self) -> ShapeSize:
        """Return the size of the only shape."""
        (shape,) = self.shapes
        return shape.size


@dataclass(frozen=True, slots=True)
class Rejoined:
    """Halves of two masters of the recipe `of`, which is cut once, joined along the cut: one of each master."""

    name: str
    of: str
    finished_width: Length
    """Of the block that two halves make; where it is irrational, good to 10⁻⁹ inch."""
    finished_height: Length
    trim_width: Length
    """What is trimmed off the width of the rejoined block in all; half of it on each side."""
    trim_height: Length
    origin: Rejoined | None = None
    """The recipe of the file of which this is a copy that keeps its pieces apart (see `upright`)."""

    @property
    def base(self) -> str:
        """Return the name of the recipe of which this is a copy; empty where it is none."""
        return self.origin.name if self.origin else ""


R = TypeVar("R", Recipe, Rejoined)


def recipes_of_file(recipes: Iterable[R]) -> tuple[R, ...]:
    """Return the recipes as the file has them, each once: copies that keep pieces apart are none of the file."""
    return tuple({each.base or each.name: each.origin or each for each in recipes}.values())


def one_shape_cut_both_ways(
    name: str, finished: Length, start: Length, trim: Length, size: ShapeSize, curve: Curve
) -> Recipe:
    """Return the recipe of a short form: one shape about the middle of a square that is cut both ways."""
    kind = RecipeKind.SHAPE if isinstance(size, DrawnOutline) else RecipeKind.CIRCLE
    down, across = (
        (Length(0), -start / 2, Length(0), start / 2),
        (start / 2, Length(0), -start / 2, Length(0)),
    )
    cuts, shapes = (Cut(*down), Cut(*across)), (ShapeOn(SHAPE, size),)
    return Recipe(name, start, start, finished, finished, trim, trim, cuts, shapes, curve, kind)
