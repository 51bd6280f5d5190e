"""The curves of a recipe, drafted anew from the design alone.

s is the seam allowance, u the finished side of a unit. A circle of radius r drawn as it is meets the sewn seam
at a = √(r²−s²) − s from the finished corner and peaks there by 2·asin(s/r). A circle sewn true with finished
radius R is traced as the sweep of its disc over a square of side 2s: it meets the seam at R and does not peak.
Other outlines have no closed forms: `outlined` measures them as polygons, and `laid` any shapes and cuts.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache

from quarterturn.design import (
    SHAPE,
    Colourway,
    Curve,
    Design,
    DrawnOutline,
    Recipe,
    RecipeKind,
    dotted,
)
from quarterturn.measure import Length
from quarterturn.proof.checks.laid import (
    Laid,
    LaidShape,
    drawn_radius,
    finished_radius,
    first_of,
    laid_out,
    piece_names,
    shape_measures,
)
from quarterturn.proof.checks.outlined import Meets, measured


@dataclass(frozen=True, slots=True)
class ShapeDraft:
    """Measures of a shape as traced, in inches."""

    part: str
    width: float
    height: float
    bend: float
    """The radius of its tightest curve."""
    room: float
    """The radius of the largest disc in it."""
    edge: float
    same_mirrored: bool
    reach: tuple[float, float]
    """How far it reaches from the middle of its master, horizontal and vertical."""


@dataclass(frozen=True, slots=True)
class Draft:
    """What a recipe's master comes to. Measures are in inches and degrees."""

    shapes: tuple[ShapeDraft, ...]
    """In the order of fusing."""
    kinds: Mapping[str, int]
    """The names of the kinds of unit, and how many of each a master gives; where there is one it has no name."""
    area_left: float
    """What the sewn units of a master show of its shapes, over what would be seen if no seam took its share."""
    crossing: float | None
    """From the finished corner to where the edge meets a seam, at the farthest; None unless it is a short form."""
    peak: float | None
    """The corner that the rejoined curve makes; None where there is no closed form."""
    meets: Meets
    """Of the short forms alone."""

    @property
    def pieces(self) -> int:
        """Return how many units of all kinds a master gives."""
        return sum(self.kinds.values())

    @property
    def shape(self) -> ShapeDraft:
        """Return the only shape."""
        (shape,) = self.shapes
        return shape


def draft_of(design: Design, recipe: Recipe) -> Draft:
    """Draft the master of a recipe."""
    seam = float(design.making.seam)
    if recipe.kind is RecipeKind.SHAPES:
        return _laid(recipe, design.making.seam)
    size = recipe.size
    if isinstance(size, DrawnOutline):
        return _outlined(size, recipe.curve, design.making.seam)
    if recipe.curve is Curve.SEWN_TRUE:
        return _sewn_true(finished_radius(size, recipe, seam), seam)
    return _as_drawn(drawn_radius(size, recipe, seam), seam)


def drafts_of(design: Design) -> list[tuple[Recipe, Draft]]:
    """Draft the masters of all recipes."""
    return [(recipe, draft_of(design, recipe)) for recipe in design.recipes]


def shapes_of(design: Design) -> Iterator[tuple[Recipe, ShapeDraft]]:
    """Draft the shapes of all recipes; those that are alike in all but their place are drafted once."""
    for recipe, draft in drafts_of(design):
        seen: set[tuple[str, float, float, float]] = set()
        for shape in draft.shapes:
            key = (shape.part, round(shape.width, 6), round(shape.height, 6), round(shape.edge, 6))
            if key not in seen:
                seen.add(key)
                yield recipe, shape


def called(recipe: Recipe, shape: ShapeDraft) -> str:
    """Return what a shape is called: by its recipe, and by its part where the recipe has several."""
    plain = recipe.kind is not RecipeKind.SHAPES or shape.part == recipe.name
    return recipe.name if plain else f"{recipe.name} ({shape.part})"


def shape_key(recipe: Recipe) -> str:
    """Return the key of the file under which a recipe's shapes stand."""
    return "shapes" if recipe.kind is RecipeKind.SHAPES else "shape"


def named_parts(design: Design, colourway: Colourway) -> tuple[tuple[str, str], ...]:
    """Return the key of each part besides the ground of a colourway of masters, and its fabric."""
    if design.recipe(colourway.recipe).kind is not RecipeKind.SHAPES:
        return (("shape", colourway.shape),)
    return tuple((dotted("shapes", part), letter) for part, letter in colourway.shapes)


@cache
def _laid(recipe: Recipe, seam: Length) -> Draft:
    laid = laid_out(recipe, seam)
    names = piece_names(recipe, laid)
    several = len(laid.kinds) > 1
    kinds = {first_of(names[k] for k in kind) if several else "": len(kind) for kind in laid.kinds}
    shapes = tuple(_laid_shape(shape) for shape in laid.shapes)
    return Draft(shapes, kinds, _area_left(laid), crossing=None, peak=None, meets={})


def _laid_shape(shape: LaidShape) -> ShapeDraft:
    found = shape_measures(shape)
    left, top, right, bottom = found.bounds
    return ShapeDraft(
        part=shape.on.part,
        width=right - left,
        height=bottom - top,
        bend=found.bend,
        room=found.room,
        edge=shape.edge,
        same_mirrored=found.same_mirrored,
        reach=(max(abs(left), abs(right)), max(abs(top), abs(bottom))),
    )


def _area_left(laid: Laid) -> float:
    """Compare what is sewn with all that the shapes cover, wherever one hides another."""
    import shapely

    whole = shapely.union_all([shape.whole for shape in laid.shapes])
    left = sum(whole.intersection(piece.sewn).area for piece in laid.pieces)
    return float(left / whole.area)


@cache
def _outlined(size: DrawnOutline, curve: Curve, seam: Length) -> Draft:
    found = measured(size, curve, seam)
    half = max(found.width, found.height) / 2
    shape = ShapeDraft(
        part=SHAPE,
        width=found.width,
        height=found.height,
        bend=found.bend,
        room=found.room,
        edge=found.edge,
        same_mirrored=found.same_mirrored,
        reach=(half, half),
    )
    crossing = max((at for places in found.meets.values() for at, _ in places), default=0.0)
    return Draft((shape,), found.kinds, found.area_left, crossing, None, found.meets)


def _sewn_true(radius: float, seam: float) -> Draft:
    traced = math.pi * radius**2 + 8 * radius * seam + 4 * seam**2
    left = math.pi * radius**2 / traced
    edge = 2 * math.pi * radius + 8 * seam
    return _circular(radius + seam, radius, crossing=radius, peak=0.0, edge=edge, area_left=left)


def _as_drawn(radius: float, seam: float) -> Draft:
    end = math.sqrt(radius**2 - seam**2)
    # The quarter disc beyond both seams: the sector between its two crossings, less the two triangles at its corner.
    angle = math.pi / 2 - 2 * math.asin(seam / radius)
    sewn = radius**2 * angle / 2 - seam * (end - seam)
    peak = math.degrees(2 * math.asin(seam / radius))
    left = sewn / (math.pi * radius**2 / 4)
    edge = 2 * math.pi * radius
    return _circular(radius, radius, crossing=end - seam, peak=peak, edge=edge, area_left=left)


def _circular(
    reach: float, bend: float, *, crossing: float, peak: float, edge: float, area_left: float
) -> Draft:
    across, meets = 2 * reach, ((crossing, True),)
    return Draft(
        shapes=(ShapeDraft(SHAPE, across, across, bend, reach, edge, True, (reach, reach)),),
        kinds={"": 4},
        area_left=area_left,
        crossing=crossing,
        peak=peak,
        meets={("", "horizontal"): meets, ("", "vertical"): meets},
    )
