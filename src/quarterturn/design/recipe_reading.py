"""Read the recipes, of whatever kind."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import TYPE_CHECKING, TypeAlias

from quarterturn.design import limits
from quarterturn.design.cloth import check_count
from quarterturn.design.cut_recipes import check_keys, check_of, read_rejoined, read_shapes_cut
from quarterturn.design.keys import dotted
from quarterturn.design.notes import Notes
from quarterturn.design.recipes import (
    Curve,
    OwnOutline,
    Recipe,
    RecipeKind,
    Rejoined,
    one_shape_cut_both_ways,
)
from quarterturn.design.shapes import read_shape
from quarterturn.design.sums import check_shape, complete
from quarterturn.design.words import read_name
from quarterturn.measure import Length

if TYPE_CHECKING:
    from quarterturn.design.file_recipes import RecipeTable


Outlines: TypeAlias = Mapping[str, OwnOutline | None]
"""The outlines of the file, by name; None for those with a fault, which has been noted."""


def read_recipes(
    tables: Mapping[str, RecipeTable] | None, outlines: Outlines, seam: Length, notes: Notes
) -> tuple[tuple[Recipe, ...], tuple[Rejoined, ...]]:
    """Read the recipes that are whole, and those that rejoin halves; what the others lack is noted."""
    kept = dict(check_count(tables, "recipes", limits.MOST_RECIPES, notes))
    halving = {name: table for name, table in kept.items() if table.kind == RecipeKind.REJOINED.value}
    for name in kept:
        read_name(name, dotted("recipes", name), "Name it by a word, such as [recipes.lantern].", notes)
    read = (
        _recipe(name, table, outlines, seam, notes) for name, table in kept.items() if name not in halving
    )
    recipes = tuple(recipe for recipe in read if recipe)
    _check_names(recipes, notes)
    check_of(halving, {name: table.kind for name, table in kept.items()}, notes)
    return recipes, tuple(read_rejoined(halving, recipes, seam, notes))


def _check_names(recipes: Sequence[Recipe], notes: Notes) -> None:
    """Note a recipe that is called as a shape of another is: templates go by these names."""
    shapes = {
        f"{recipe.name} {part}": (part, recipe.name)
        for recipe in recipes
        if len(recipe.shapes) > 1
        for part in recipe.parts
    }
    for recipe in recipes:
        if found := shapes.get(recipe.name):
            sentence = f"`{recipe.name}` is also what the shape {found[0]} of {found[1]} is called."
            notes.add("bad-text", dotted("recipes", recipe.name), sentence, "Give the recipe another name.")


def _recipe(name: str, table: RecipeTable, outlines: Outlines, seam: Length, notes: Notes) -> Recipe | None:
    key = dotted("recipes", name)
    if table.kind == RecipeKind.SHAPES.value:
        return read_shapes_cut(name, table, outlines, seam, notes)
    if table.kind is None:
        notes.missing(
            f"{key}.kind",
            'Write kind = "circle cut both ways", "shape cut both ways", "shapes cut" or "halves rejoined".',
        )
    else:
        check_keys(table, RecipeKind(table.kind), key, notes)
    size = read_shape(table.shape, table.kind, f"{key}.shape", outlines, notes)
    finished = notes.length(table.finished, f"{key}.finished", limits.FINISHED)
    start = notes.length(table.start, f"{key}.start", limits.START)
    trim = notes.length(table.trim, f"{key}.trim", limits.TRIM)
    if any(notes.is_spoiled(f"{key}.{each}") for each in ("finished", "start", "trim")):
        return None
    sizes = complete(key, finished, start, trim, seam, notes)
    if sizes is None or size is None:
        return None
    curve = Curve(table.curve or "as drawn")
    check_shape(key, size, curve, sizes.finished, seam, notes)
    recipe = one_shape_cut_both_ways(name, sizes.finished, sizes.start, sizes.trim, size, curve)
    return replace(recipe, pieced=bool(table.pieced))
