"""A recipe of any shapes and cuts, laid out as polygons from the design alone: another way than the stages take.

The master is a rectangle about 0. Shapes lie on it in their order, the later on top; straight cuts part it; its outer
edges are trimmed by half of what is trimmed in all; a seam takes its allowance off every edge of a piece.
"""

from __future__ import annotations

import cmath
import math
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from functools import cache
from itertools import pairwise
from typing import TYPE_CHECKING

from quarterturn.design import (
    GROUND,
    Curve,
    Cut,
    DrawnDiameter,
    DrawnOutline,
    FinishedRadius,
    PathsFlow,
    Recipe,
    RecipeKind,
    ShapeOn,
    wanted_outline,
)
from quarterturn.geometry import (
    Path,
    Region,
    StraightLine,
    as_polygon,
    circle,
    line_through,
    outline_path,
    shift,
    spread,
    turn_about,
)
from quarterturn.measure import Length
from quarterturn.proof.checks.outlined import bends

if TYPE_CHECKING:
    from shapely.geometry.base import BaseGeometry

CHORDS = 1e-5
"""Chords are within this of their curves, in inches."""
GRID = 1e-9
"""Corners lie on a grid this fine, in inches, where areas are compared, so that slivers do not break shapely."""
NOISE = 1e-3
"""Areas below this share of a shape, or of a square inch, are the noise of chords."""
FAR = 1000.0


@dataclass(frozen=True, slots=True)
class LaidShape:
    """A shape as it lies on its master, in the master's frame."""

    on: ShapeOn
    outline: Path
    hole: Path | None
    whole: BaseGeometry

    @property
    def edge(self) -> float:
        """Return the length of all its edges to be stitched."""
        return self.outline.length() + (self.hole.length() if self.hole else 0.0)


@dataclass(frozen=True, slots=True)
class ShapeMeasures:
    """What a polygon tells of a shape; see `drafting.ShapeDraft`."""

    bounds: tuple[float, float, float, float]
    bend: float
    room: float
    same_mirrored: bool


def shape_measures(shape: LaidShape) -> ShapeMeasures:
    """Measure a shape as it lies."""
    import shapely

    paths = (shape.outline, *((shape.hole,) if shape.hole else ()))
    return ShapeMeasures(
        bounds=shape.whole.bounds,
        bend=min((bend for path in paths for bend in bends(path)), default=FAR),
        room=float(shapely.maximum_inscribed_circle(shape.whole, 1e-4).length),
        same_mirrored=_same_mirrored(shape),
    )


def _same_mirrored(shape: LaidShape) -> bool:
    """Tell whether a shape is its own mirror image across a vertical line, by which it is laid."""
    from shapely.affinity import scale, translate

    middle = shape.whole.centroid
    laid = translate(shape.whole, -middle.x, -middle.y)
    return _same(laid, scale(laid, xfact=-1, origin=(0, 0)))


@dataclass(frozen=True, slots=True)
class LaidPiece:
    """A piece that the cuts leave, in the master's frame: as cut, trimmed, and inside its seams."""

    raw: BaseGeometry
    trimmed: BaseGeometry
    sewn: BaseGeometry


@dataclass(frozen=True, slots=True)
class Laid:
    """A master with all its shapes, and the pieces into which it falls."""

    shapes: tuple[LaidShape, ...]
    pieces: tuple[LaidPiece, ...]
    kinds: tuple[tuple[int, ...], ...]
    """Pieces that are equal when turned, by their numbers."""

    def seen(self, piece: LaidPiece) -> Mapping[str, BaseGeometry]:
        """Return what is seen of each part in a piece once it is sewn."""
        return _seen(self.shapes, piece.sewn)


@cache
def laid_out(recipe: Recipe, seam: Length) -> Laid:
    """Lay a recipe out with a seam allowance."""
    shapes = tuple(_laid_shape(recipe, on, seam) for on in recipe.shapes)
    pieces = tuple(_pieces(recipe, float(seam)))
    apart = tuple((number,) for number in range(len(pieces)))
    return Laid(shapes, pieces, apart if recipe.origin else _kinds(shapes, pieces))


def line_of_cut(cut: Cut) -> StraightLine:
    """Return a cut as a line from its start on."""
    return line_through(
        complex(float(cut.start_x), float(cut.start_y)), complex(float(cut.end_x), float(cut.end_y))
    )


def _laid_shape(recipe: Recipe, on: ShapeOn, seam: Length) -> LaidShape:
    paths = [_placed(path, on) for path in _outlines(recipe, on, seam)]
    if recipe.curve is Curve.SEWN_TRUE:
        paths = [_spread(path, recipe, float(seam)) for path in paths]
    outline, *holes = paths
    region = Region((outline, *(hole.reversed() for hole in holes)))
    whole = as_polygon(region, CHORDS)
    return LaidShape(on, outline, holes[0] if holes else None, whole)


def _outlines(recipe: Recipe, on: ShapeOn, seam: Length) -> Iterator[Path]:
    """Return the outline of a shape as it is meant, about 0, and its hole if it has one."""
    size = on.size
    if not isinstance(size, DrawnOutline):
        radius = finished_radius if recipe.curve is Curve.SEWN_TRUE else drawn_radius
        yield circle(radius(size, recipe, float(seam)))
    elif recipe.kind is not RecipeKind.SHAPES:
        yield wanted_outline(size, recipe.curve, seam)
    else:
        ring = size.outline == "ring"
        yield outline_path(
            "circle" if ring else size.own or size.outline, float(size.width), size.turn, size.lobes
        )
        if ring:
            yield outline_path("circle", float(size.inner))


Round = DrawnDiameter | FinishedRadius | PathsFlow


def finished_radius(size: Round, recipe: Recipe, seam: float) -> float:
    """Return the radius of a circle sewn true as it finishes."""
    if isinstance(size, DrawnDiameter):
        return float(size.diameter) / 2 - seam
    return _meeting_place(size, recipe)


def drawn_radius(size: Round, recipe: Recipe, seam: float) -> float:
    """Return the radius of a circle that is traced as drawn."""
    if isinstance(size, DrawnDiameter):
        return float(size.diameter) / 2
    return math.hypot(_meeting_place(size, recipe) + seam, seam)


def _meeting_place(size: FinishedRadius | PathsFlow, recipe: Recipe) -> float:
    if isinstance(size, FinishedRadius):
        return float(size.radius)
    return float(recipe.finished_width) / 2


def _placed(path: Path, on: ShapeOn) -> Path:
    turned = turn_about(cmath.rect(1, math.radians(float(on.degrees))), 0j).path(path)
    return shift(complex(float(on.x), float(on.y))).path(turned)


def _spread(path: Path, recipe: Recipe, seam: float) -> Path:
    return spread(path, [line_of_cut(cut) for cut in recipe.cuts], seam)


def _pieces(recipe: Recipe, seam: float) -> Iterator[LaidPiece]:
    """Return the pieces: each cut parts what is there, the side that is on its left first."""
    parts = [_box(recipe.width, recipe.height)]
    for cut in recipe.cuts:
        line = line_of_cut(cut)
        halves = (_half_plane(line), _half_plane(line.reversed()))
        parts = [
            piece
            for part in parts
            for half in halves
            if (piece := part.intersection(half)).area > NOISE * part.area
        ]
    trimmed = _box(recipe.width - recipe.trim_width, recipe.height - recipe.trim_height)
    for part in parts:
        kept = part.intersection(trimmed)
        yield LaidPiece(part, kept, kept.buffer(-seam, join_style="mitre"))


def _box(width: Length, height: Length) -> BaseGeometry:
    import shapely

    across, down = float(width) / 2, float(height) / 2
    return shapely.box(-across, -down, across, down)


QUARTERS = ("tl", "tr", "br", "bl")
HALVES = ("lh", "rh", "th", "bh")
TRIANGLES = ("tt", "rt", "bt", "lt")
"""Names of pieces in their order; see `blocks.model`."""


def piece_names(recipe: Recipe, laid: Laid) -> tuple[str, ...]:
    """Return what each piece is called by its place on the master."""
    middles = [_middle(piece.raw) for piece in laid.pieces]
    if len(middles) == 1:
        return ("",)
    if len(middles) == 2:
        return _names_of_halves(*middles)
    lines = [line_of_cut(cut) for cut in recipe.cuts]
    if len(middles) == 4 and len(lines) == 2:
        middle = _crossing(*lines)
        return _names_round([each - middle for each in middles], upright=all(map(_is_upright, lines)))
    order = sorted(range(len(middles)), key=lambda k: (round(middles[k].imag, 6), middles[k].real))
    return tuple(f"p{chr(97 + order.index(k))}" for k in range(len(middles)))


def _middle(area: BaseGeometry) -> complex:
    """Return the middle of the corners, of which those that all but touch are one."""
    ring = [complex(x, y) for x, y in area.exterior.coords]
    corners = [corner for before, corner in pairwise(ring) if abs(corner - before) > CHORDS]
    return sum(corners, 0j) / len(corners)


def _crossing(one: StraightLine, other: StraightLine) -> complex:
    slant = (one.direction.conjugate() * other.direction).imag
    return one.at(other.side(one.through) / slant)


def _names_of_halves(first: complex, second: complex) -> tuple[str, str]:
    """Return left and right, unless they lie more above one another than beside."""
    way = second - first
    level = abs(way.real) > abs(way.imag) - CHORDS
    names = HALVES[:2] if level else HALVES[2:]
    ahead = way.real > 0 if level else way.imag > 0
    return (names[0], names[1]) if ahead else (names[1], names[0])


def _is_upright(line: StraightLine) -> bool:
    return min(abs(line.direction.real), abs(line.direction.imag)) < CHORDS


def _names_round(off: list[complex], *, upright: bool) -> tuple[str, ...]:
    """Name four pieces round a crossing: by their corners where it is upright, else by sides, from the top on."""
    if upright:
        return tuple(("t" if p.imag < 0 else "b") + ("l" if p.real < 0 else "r") for p in off)
    top = min(off, key=lambda p: round(p.imag / abs(p), 6))
    round_it = sorted(off, key=lambda p: round(cmath.phase(p / top) % math.tau, 6) % round(math.tau, 6))
    return tuple(TRIANGLES[round_it.index(p)] for p in off)


def first_of(names: Iterable[str]) -> str:
    """Return that of several names of pieces which stands for their kind: the first in the order of the pieces."""
    order = (*QUARTERS, *HALVES, *TRIANGLES)
    return min(names, key=lambda name: (order.index(name) if name in order else len(order), name))


def _half_plane(line: StraightLine) -> BaseGeometry:
    """Return what lies on the positive side of a line, as far as matters."""
    import shapely

    corners = (
        line.at(-FAR),
        line.at(FAR),
        line.at(FAR) + line.direction * 1j * FAR,
        line.at(-FAR) + line.direction * 1j * FAR,
    )
    return shapely.Polygon([(p.real, p.imag) for p in corners])


def _seen(shapes: tuple[LaidShape, ...], within: BaseGeometry) -> dict[str, BaseGeometry]:
    """Return what is seen of each part within an outline: each shape hides what lies below it."""
    seen = {GROUND: within}
    for shape in shapes:
        mine = shape.whole.intersection(within)
        seen = {part: area.difference(mine) for part, area in seen.items()}
        part = shape.on.part
        seen[part] = seen[part].union(mine) if part in seen else mine
    return seen


def _kinds(shapes: tuple[LaidShape, ...], pieces: tuple[LaidPiece, ...]) -> tuple[tuple[int, ...], ...]:
    """Sort pieces by what they become when turned by any number of quarters."""
    kinds: list[list[int]] = []
    layers = [_layers(shapes, piece) for piece in pieces]
    for number in range(len(pieces)):
        kind = next((k for k in kinds if _equal(layers[k[0]], layers[number])), None)
        if kind is None:
            kinds.append([number])
        else:
            kind.append(number)
    return tuple(tuple(kind) for kind in kinds)


def _layers(shapes: tuple[LaidShape, ...], piece: LaidPiece) -> list[tuple[str, BaseGeometry]]:
    """Return the outline of a piece, all the cloth of each part on it, and what is seen of each, about its middle."""
    from shapely.affinity import translate

    middle = piece.trimmed.centroid
    laid = {GROUND: piece.trimmed}
    for shape in shapes:
        mine = shape.whole.intersection(piece.trimmed)
        if mine.area > NOISE:
            laid[shape.on.part] = laid[shape.on.part].union(mine) if shape.on.part in laid else mine
    seen = _seen(shapes, piece.trimmed)
    layers = [("as cut", piece.raw), *laid.items(), *((f"{part} seen", seen[part]) for part in laid)]
    return [
        (part, translate(area, -middle.x, -middle.y)) for part, area in sorted(layers, key=lambda one: one[0])
    ]


def _equal(a: list[tuple[str, BaseGeometry]], b: list[tuple[str, BaseGeometry]]) -> bool:
    from shapely.affinity import rotate

    if [part for part, _ in a] != [part for part, _ in b]:
        return False
    return any(
        all(
            _same(rotate(one, 90 * turn, origin=(0, 0)), other)
            for (_, one), (_, other) in zip(a, b, strict=True)
        )
        for turn in range(4)
    )


def _same(a: BaseGeometry, b: BaseGeometry) -> bool:
    return same_area(a, b, NOISE * max(a.area, b.area))


def same_area(a: BaseGeometry, b: BaseGeometry, noise: float) -> bool:
    """Tell whether areas are equal but for so many square inches."""
    import shapely

    one, other = (area.buffer(0) for area in (a, b))
    return float(shapely.symmetric_difference(one, other, grid_size=GRID).area) <= noise
