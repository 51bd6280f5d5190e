"""Units as sewn, laid out as polygons from the design alone, and what shows along their sides."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache
from itertools import pairwise
from typing import TYPE_CHECKING

from quarterturn.design import (
    FIRST,
    GROUND,
    HALF_MARK,
    SECOND,
    Design,
    Recipe,
    Rejoined,
    code_of_unit,
    quarter_of_unit,
    unit_name,
)
from quarterturn.measure import Length
from quarterturn.proof.checks.laid import (
    QUARTERS,
    Laid,
    LaidPiece,
    first_of,
    laid_out,
    line_of_cut,
    piece_names,
    same_area,
)
from quarterturn.setting import Side

if TYPE_CHECKING:
    from shapely.geometry.base import BaseGeometry

INSIDE = 1e-6
"""Sides are looked at this far inside, in inches, where no rounding takes them off the cloth."""
SHORTEST = 1e-4
"""Shorter stretches, in inches, are noise."""
SLIGHT = 0.05
"""On shorter stretches a curve all but touches a side; whether it does depends on the last digits."""


@dataclass(frozen=True, slots=True)
class LaidUnit:
    """A unit at turn 0 with the top left corner of its sewn outline at 0: what is seen of each part, lowest first."""

    width: float
    height: float
    seen: Mapping[str, BaseGeometry]


@dataclass(frozen=True, slots=True)
class Change:
    """A place along a side, from its top or left end, with the parts before and behind it."""

    at: float
    near: str
    far: str


def laid_unit(design: Design, name: str) -> LaidUnit:
    """Lay out the unit that a name of the map means."""
    colourway, seam = design.colourway(code_of_unit(name)), design.making.seam
    if colourway.is_rejoined:
        rejoined = design.rejoined_recipe(colourway.recipe)
        recipe = design.recipe(rejoined.of)
        first = piece_names(recipe, laid_out(recipe, seam))[0]
        return laid_blocks(rejoined, recipe, seam)[0 if quarter_of_unit(name) in ("", first) else 1]
    return _unit_of(design.recipe(colourway.recipe), quarter_of_unit(name), seam)


def laid_size(recipe: Recipe, quarter: str, seam: Length) -> tuple[Length, Length]:
    """Return finished width and height of a unit, measured on its polygon."""
    unit = _unit_of(recipe, quarter, seam)
    width, height = (Length(side).limit_denominator(10**6) for side in (unit.width, unit.height))
    return width, height


@cache
def _unit_of(recipe: Recipe, quarter: str, seam: Length) -> LaidUnit:
    laid = laid_out(recipe, seam)
    piece = laid.pieces[piece_number(recipe, laid, quarter)]
    return _in_its_corner(laid.seen(piece), piece.sewn)


def piece_number(recipe: Recipe, laid: Laid, quarter: str) -> int:
    """Return the number of the piece as which a kind of unit lies at turn 0.

    Of four equal quarters that is the lower right one, which has the middle of its master at its top left corner.
    """
    names = piece_names(recipe, laid)
    if quarter in names:
        return names.index(quarter)
    return names.index("br" if set(names) == set(QUARTERS) else first_of(names))


def _in_its_corner(seen: Mapping[str, BaseGeometry], outline: BaseGeometry) -> LaidUnit:
    from shapely.affinity import translate

    left, top, right, bottom = outline.bounds
    moved = {part: translate(area, -left, -top) for part, area in seen.items()}
    return LaidUnit(right - left, bottom - top, moved)


@cache
def laid_blocks(rejoined: Rejoined, recipe: Recipe, seam: Length) -> tuple[LaidUnit, LaidUnit]:
    """Lay out the two blocks that halves of two masters make when they change places.

    Each half moves by one allowance towards the other, so that both are sewn where the master was cut.
    """
    laid, (cut,) = laid_out(recipe, seam), recipe.cuts
    towards = line_of_cut(cut).direction * 1j * float(seam)
    width, height = float(rejoined.finished_width) / 2, float(rejoined.finished_height) / 2
    positive, negative = laid.pieces
    one, other = (
        [(FIRST, positive, -towards), (SECOND, negative, towards)],
        [(FIRST, negative, towards), (SECOND, positive, -towards)],
    )
    return _block(laid, one, width, height), _block(laid, other, width, height)


def halves_of(design: Design, name: str) -> tuple[str, str]:
    """Return the halves of which a rejoined unit is made, by what they are called as units of their masters."""
    colourway = design.colourway(code_of_unit(name))
    recipe = design.recipe(design.rejoined_recipe(colourway.recipe).of)
    laid = laid_out(recipe, design.making.seam)
    names = piece_names(recipe, laid)
    first = names.index(quarter_of_unit(name)) if quarter_of_unit(name) else 0
    pieces = ((colourway.first, first), (colourway.second, 1 - first))
    one, other = (unit_name(code, kind_name(laid, names, piece)) for code, piece in pieces)
    return one, other


def kind_name(laid: Laid, names: tuple[str, ...], piece: int) -> str:
    """Return by which name the kind of a piece is known; none where all pieces are of one kind."""
    kind = next(kind for kind in laid.kinds if piece in kind)
    return first_of(names[k] for k in kind) if len(laid.kinds) > 1 else ""


def _block(laid: Laid, halves: list[tuple[str, LaidPiece, complex]], width: float, height: float) -> LaidUnit:
    import shapely
    from shapely.affinity import translate

    box = shapely.box(-width, -height, width, height)
    seen = {
        f"{half}{HALF_MARK}{part}": translate(area, by.real, by.imag).intersection(box)
        for half, piece, by in halves
        for part, area in laid.seen(piece).items()
    }
    return _in_its_corner(seen, box)


def same_blocks(blocks: tuple[LaidUnit, LaidUnit]) -> bool:
    """Tell whether one of two rejoined blocks is the other, turned by any number of quarters."""
    from shapely.affinity import rotate, translate

    one, other = (
        {part: translate(area, -unit.width / 2, -unit.height / 2) for part, area in unit.seen.items()}
        for unit in blocks
    )
    return any(
        all(same_area(rotate(one[part], 90 * turn, origin=(0, 0)), other[part], 1e-3) for part in one)
        for turn in range(4)
    )


def changes(unit: LaidUnit) -> dict[Side, tuple[Change, ...]]:
    """Return for each side of a unit at turn 0 where one part gives way to another, from its top or left end."""
    x, y = unit.width - INSIDE, unit.height - INSIDE
    return {
        Side.TOP: tuple(_changes(unit, (0, INSIDE), (unit.width, INSIDE))),
        Side.RIGHT: tuple(_changes(unit, (x, 0), (x, unit.height))),
        Side.BOTTOM: tuple(_changes(unit, (0, y), (unit.width, y))),
        Side.LEFT: tuple(_changes(unit, (INSIDE, 0), (INSIDE, unit.height))),
    }


def is_slight(unit: LaidUnit, side: Side) -> bool:
    """Tell whether a part shows on a side only on a stretch so short that another way of measuring may miss it."""
    places = [0.0, *(change.at for change in changes(unit)[side])]
    return any(b - a < SLIGHT for a, b in pairwise(places))


def _changes(unit: LaidUnit, start: tuple[float, float], end: tuple[float, float]) -> Iterator[Change]:
    spans = sorted(span for part, area in unit.seen.items() for span in spans_on(area, start, end, part))
    for (_, before, near), (_, _, far) in pairwise(spans):
        if near != far:
            yield Change(before, near, far)


def spans_on(
    area: BaseGeometry, start: tuple[float, float], end: tuple[float, float], part: str = GROUND
) -> Iterator[tuple[float, float, str]]:
    """Return the stretches of a line on which an area lies, from the line's start, and what it is called."""
    import shapely

    line = shapely.LineString([start, end])
    for stretch in shapely.get_parts(area.intersection(line)):
        if stretch.length > SHORTEST:
            low, high = sorted(
                line.project(shapely.Point(p)) for p in (stretch.coords[0], stretch.coords[-1])
            )
            yield low, high, part
