"""The finished size of the quilt, added up from the design alone."""

from __future__ import annotations

from quarterturn.design import Design, RecipeKind, code_of_unit, quarter_of_unit
from quarterturn.measure import Length
from quarterturn.proof.checks.mapping import map_of
from quarterturn.proof.checks.sides import laid_size


def centre_size(design: Design) -> tuple[Length, Length]:
    """Return width and height of the sewn units: the widths along the first row, the heights down the first column."""
    rows = map_of(design)
    across = (unit_size(design, *unit)[0] for unit in rows[0])
    down = (unit_size(design, *row[0])[1] for row in rows)
    return sum(across, Length(0)), sum(down, Length(0))


def finished_size(design: Design) -> tuple[Length, Length]:
    """Return width and height inside the binding: the centre and twice each border."""
    width, height = centre_size(design)
    margin = 2 * sum((border.width for border in design.borders), Length(0))
    return width + margin, height + margin


def unit_size(design: Design, name: str, turn: int) -> tuple[Length, Length]:
    """Return finished width and height of a unit as it lies: a quarter turn exchanges them."""
    colourway = design.colourway(code_of_unit(name))
    if colourway.is_rejoined:
        block = design.rejoined_recipe(colourway.recipe)
        size = (block.finished_width, block.finished_height)
    else:
        recipe = design.recipe(colourway.recipe)
        size = (recipe.finished_width, recipe.finished_height)
        if recipe.kind is RecipeKind.SHAPES:
            size = laid_size(recipe, quarter_of_unit(name), design.making.seam)
    return size if turn % 2 == 0 else size[::-1]
