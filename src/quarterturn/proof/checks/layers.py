"""Layers of cloth in the seam allowances of units, counted on polygons: what is fused, less what is cut away behind.

Along a seam lie the allowances of two units on one another. How many layers meet there decides how bulky it is.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, TypeAlias

from quarterturn.design import Curve, Design, Making, Recipe, code_of_unit, quarter_of_unit, unit_name
from quarterturn.measure import Length
from quarterturn.proof.checks.laid import Laid, LaidPiece, laid_out, line_of_cut, piece_names
from quarterturn.proof.checks.ledger import names_of_units
from quarterturn.proof.checks.rings import LEAST_HOLLOW
from quarterturn.proof.checks.sides import kind_name, piece_number, spans_on
from quarterturn.proof.model import Pattern
from quarterturn.setting import Side
from quarterturn.steps import Behind, CutAway

if TYPE_CHECKING:
    from shapely.geometry.base import BaseGeometry

GROUND_LAYER = -1
LEAST_OPENED = 1e-3
"""Less, in square inches, is not asked to be cut away."""
Count: TypeAlias = tuple[float, float, int]
"""A stretch along a seam, from its top or left end, and the layers of cloth there."""


@dataclass(frozen=True, slots=True)
class SeamLayers:
    """The layers in the allowance along each side of a unit, and in both allowances of its inner seam if it has one."""

    sides: Mapping[Side, tuple[Count, ...]]
    inner: tuple[Count, ...] = ()

    @property
    def most(self) -> int:
        """Return the most layers that lie in the allowance of any side."""
        return max((count for counts in self.sides.values() for _, _, count in counts), default=1)


def cut_away_of(pattern: Pattern) -> dict[str, tuple[Behind, ...]]:
    """Return what is cut away behind the shapes of each unit, by what the map or the rejoining calls it."""
    names = names_of_units(pattern)
    return {
        names[pile.label]: step.action.behind
        for step in pattern.steps.steps
        if isinstance(step.action, CutAway)
        for pile in step.uses
        if pile.label in names
    }


def to_open(recipe: Recipe, quarter: str, making: Making) -> Iterator[str]:
    """Return the parts of a unit that show farther inside their stitching than their underlap, and have hollow rings.

    Behind these the ground can be cut away. A ring that is spread is measured where its band is narrowest.
    """
    import shapely

    laid = laid_out(recipe, making.seam)
    piece = laid.pieces[piece_number(recipe, laid, quarter)].sewn
    for number, shape in enumerate(laid.shapes):
        above = shapely.union_all([other.whole for other in laid.shapes[number + 1 :]])
        underlap = making.cut_away if shape.on.underlap is None else shape.on.underlap
        shown = (
            shape.whole.intersection(piece).difference(above).buffer(-float(making.stitch.width + underlap))
        )
        stretch = making.seam / 2 if shape.hole and recipe.curve is Curve.SEWN_TRUE else Length(0)
        hollow = shape.whole.buffer(-float(making.ring_in + stretch) - LEAST_HOLLOW / 2)
        if shown.area > LEAST_OPENED and not hollow.is_empty:
            yield shape.on.part


def seam_layers(pattern: Pattern, name: str, away: Mapping[str, tuple[Behind, ...]]) -> SeamLayers:
    """Count the layers in the seam allowances of a unit at turn 0."""
    design = pattern.design
    if design.colourway(code_of_unit(name)).is_rejoined:
        return _of_block(design, name, away)
    recipe = design.recipe(design.colourway(code_of_unit(name)).recipe)
    laid = laid_out(recipe, design.making.seam)
    piece = laid.pieces[piece_number(recipe, laid, quarter_of_unit(name))]
    layers = _layers(laid, piece, away.get(name, ()))
    return SeamLayers(_sides(layers, piece.sewn.bounds, float(design.making.seam)))


def _layers(laid: Laid, piece: LaidPiece, behind: Iterable[Behind]) -> list[BaseGeometry]:
    """Return the ground of a piece and every shape on it, each without what is cut away of it."""
    layers = {GROUND_LAYER: piece.trimmed}
    layers |= {k: shape.whole.intersection(piece.trimmed) for k, shape in enumerate(laid.shapes)}
    for each in behind:
        hollow = _hollow(laid, each)
        for number in each.layers:
            layers[number] = layers[number].difference(hollow)
    return [layer for layer in layers.values() if not layer.is_empty]


def _hollow(laid: Laid, behind: Behind) -> BaseGeometry:
    """Return where layers are cut away behind a shape: inside its stitching, and clear of that of higher shapes."""
    inside = float(behind.inside)
    hollow = laid.shapes[behind.number].whole.buffer(-inside)
    for upper in laid.shapes[behind.number + 1 :]:
        hollow = hollow.difference(upper.whole.boundary.buffer(inside))
    return hollow


def _sides(
    layers: Sequence[BaseGeometry], box: tuple[float, float, float, float], seam: float
) -> dict[Side, tuple[Count, ...]]:
    """Count along the middle of the allowance of each side of an upright box."""
    left, top, right, bottom = box
    off = seam / 2
    lines = {
        Side.TOP: ((left, top - off), (right, top - off)),
        Side.RIGHT: ((right + off, top), (right + off, bottom)),
        Side.BOTTOM: ((left, bottom + off), (right, bottom + off)),
        Side.LEFT: ((left - off, top), (left - off, bottom)),
    }
    return {side: tuple(_counts(layers, *line)) for side, line in lines.items()}


def _counts(
    layers: Iterable[BaseGeometry], start: tuple[float, float], end: tuple[float, float]
) -> Iterator[Count]:
    """Return the stretches of a line on which equally many layers lie."""
    changes: list[tuple[float, int]] = []
    for layer in layers:
        for low, high, _ in spans_on(layer, start, end):
            changes += [(low, 1), (high, -1)]
    count, at = 0, 0.0
    for place, change in sorted(changes, key=lambda one: (round(one[0], 6), one[1])):
        if place - at > 1e-4 and count:
            yield at, place, count
        count, at = count + change, place


def _of_block(design: Design, name: str, away: Mapping[str, tuple[Behind, ...]]) -> SeamLayers:
    """Count along the sides of a rejoined block, and along the seam within it."""
    from shapely.affinity import translate

    way = design.colourway(code_of_unit(name))
    block, seam = design.rejoined_recipe(way.recipe), float(design.making.seam)
    recipe = design.recipe(block.of)
    laid = laid_out(recipe, design.making.seam)
    first = _first_half(recipe, laid, quarter_of_unit(name))
    off = line_of_cut(recipe.cuts[0]).direction * 1j * seam
    layers: list[BaseGeometry] = []
    for code, number in ((way.first, first), (way.second, 1 - first)):
        by = -off if number == 0 else off
        half = _half_layers(recipe, laid, number, code, away)
        layers += [translate(layer, by.real, by.imag) for layer in half]
    width, height = float(block.finished_width) / 2, float(block.finished_height) / 2
    sides = _sides(layers, (-width, -height, width, height), seam)
    return SeamLayers(sides, tuple(_inner(layers, recipe, width, height)))


def _first_half(recipe: Recipe, laid: Laid, quarter: str) -> int:
    names = piece_names(recipe, laid)
    return names.index(quarter) if quarter in names else 0


def _half_layers(
    recipe: Recipe, laid: Laid, number: int, code: str, away: Mapping[str, tuple[Behind, ...]]
) -> list[BaseGeometry]:
    """Return the layers of a half as it lies in its master.

    What is cut away is told of the piece that stands for its kind; of another piece of that kind it is the same.
    """
    kind = kind_name(laid, piece_names(recipe, laid), number)
    behind = away.get(unit_name(code, kind), ())
    insides = {each.part: each.inside for each in behind}
    alike = (
        Behind(k, shape.on.part, insides[shape.on.part], (GROUND_LAYER, *range(k)))
        for k, shape in enumerate(laid.shapes)
        if shape.on.part in insides
    )
    return _layers(laid, laid.pieces[number], alike)


def _inner(layers: Sequence[BaseGeometry], recipe: Recipe, width: float, height: float) -> Iterator[Count]:
    """Count along the seam of a block inside its sides, where both halves lie on one another."""
    import shapely

    line = line_of_cut(recipe.cuts[0])
    ends = shapely.LineString([(p.real, p.imag) for p in (line.at(-1e3), line.at(1e3))])
    inside = ends.intersection(shapely.box(-width, -height, width, height))
    (a, b) = sorted(inside.coords, key=lambda p: (round(p[1], 6), p[0]))
    yield from _counts(layers, a, b)
