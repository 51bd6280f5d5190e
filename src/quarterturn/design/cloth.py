"""Read what the quilt is made of: fabrics, recipes, and the recipes in cloth."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from typing import TYPE_CHECKING, TypeVar

from quarterturn.design import limits
from quarterturn.design.keys import dotted
from quarterturn.design.model import ClothKind, Colourway, Direction, Fabric
from quarterturn.design.notes import Notes
from quarterturn.design.recipes import SHAPE, Curve, Recipe, one_shape_cut_both_ways
from quarterturn.design.shapes import read_shape
from quarterturn.design.sums import check_shape, complete
from quarterturn.design.words import check_code, check_letter, read_colour, read_name, read_text, refer
from quarterturn.measure import Length

if TYPE_CHECKING:
    from quarterturn.design.file import ColourwayTable, FabricTable, RecipeTable

T = TypeVar("T")


def read_fabrics(
    tables: Mapping[str, FabricTable] | None, usable_width: Length, notes: Notes
) -> tuple[Fabric, ...]:
    """Read the fabrics, in the order of the file."""
    kept = check_count(tables, "fabrics", limits.MOST_FABRICS, notes)
    fabrics = tuple(_fabric(letter, table, usable_width, notes) for letter, table in kept)
    _check_names(fabrics, notes)
    return fabrics


def check_count(tables: Mapping[str, T] | None, key: str, most: int, notes: Notes) -> list[tuple[str, T]]:
    """Return as many tables of a kind as can be, and note it if there are more."""
    items = list((tables or {}).items())
    if len(items) > most:
        notes.add("too-many", key, f"There are {len(items)} {key}.", f"Keep to {most}.")
    return items[:most]


def _fabric(letter: str, table: FabricTable, usable_width: Length, notes: Notes) -> Fabric:
    key = dotted("fabrics", letter)
    check_letter(letter, key, notes)
    return Fabric(
        letter=letter,
        name=read_name(
            table.name, f"{key}.name", 'Give it a name that tells it apart: name = "oyster".', notes
        ),
        role=read_text(table.role, f"{key}.role", notes),
        colour=read_colour(table.colour, f"{key}.colour", notes),
        width=notes.length(table.width, f"{key}.width", limits.CLOTH_WIDTH) or usable_width,
        direction=Direction(table.direction or "none"),
        kind=ClothKind(table.kind or "cotton"),
        price=_price(table.price, f"{key}.price", notes),
    )


def _price(price: int | float | None, key: str, notes: Notes) -> Fraction | None:
    if price is None:
        return None
    if not 0 <= price <= limits.HIGHEST_PRICE:
        remedy = f"Give a price from 0 to {limits.HIGHEST_PRICE}, or leave it out."
        notes.add("count-out-of-range", key, "No cloth has this price.", remedy)
        return None
    return Fraction(repr(price))


def _check_names(fabrics: tuple[Fabric, ...], notes: Notes) -> None:
    first: dict[str, str] = {}
    for fabric in fabrics:
        if not fabric.name:
            continue
        other = first.setdefault(fabric.name.lower(), fabric.letter)
        if other != fabric.letter:
            notes.add(
                "name-twice",
                dotted("fabrics", fabric.letter, "name"),
                f"Fabrics {other} and {fabric.letter} are both called {fabric.name}.",
                "Give each its own name, so that nobody cuts the wrong one.",
            )


def read_recipes(tables: Mapping[str, RecipeTable] | None, seam: Length, notes: Notes) -> tuple[Recipe, ...]:
    """Read the recipes that are whole; what the others lack is noted."""
    kept = check_count(tables, "recipes", limits.MOST_RECIPES, notes)
    recipes = (_recipe(name, table, seam, notes) for name, table in kept)
    return tuple(recipe for recipe in recipes if recipe)


def _recipe(name: str, table: RecipeTable, seam: Length, notes: Notes) -> Recipe | None:
    key = dotted("recipes", name)
    read_name(name, key, "Name it by a word, such as [recipes.lantern].", notes)
    if table.kind is None:
        notes.missing(f"{key}.kind", 'Write kind = "circle cut both ways" or kind = "shape cut both ways".')
    size = read_shape(table.shape, table.kind, f"{key}.shape", notes)
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
    return one_shape_cut_both_ways(name, sizes.finished, sizes.start, sizes.trim, size, curve)


def read_colourways(
    tables: Mapping[str, ColourwayTable] | None, letters: list[str], recipes: list[str], notes: Notes
) -> tuple[Colourway, ...]:
    """Read the colourways, in the order of the file."""
    kept = check_count(tables, "colourways", limits.MOST_COLOURWAYS, notes)
    return tuple(_colourway(code, table, letters, recipes, notes) for code, table in kept)


def _colourway(
    code: str, table: ColourwayTable, letters: list[str], recipes: list[str], notes: Notes
) -> Colourway:
    key = dotted("colourways", code)
    check_code(code, key, notes)
    return Colourway(
        code=code,
        recipe=refer(table.recipe, f"{key}.recipe", "recipe", recipes, notes),
        ground=refer(table.ground, f"{key}.ground", "fabric", letters, notes),
        shapes=((SHAPE, refer(table.shape, f"{key}.shape", "fabric", letters, notes)),),
    )
