"""Read the recipes in cloth: a fabric for the ground and each part, or the two masters whose halves are rejoined."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from quarterturn.design import limits
from quarterturn.design.cloth import check_count
from quarterturn.design.keys import dotted
from quarterturn.design.model import Colourway
from quarterturn.design.notes import Notes, did_you_mean, quoted
from quarterturn.design.recipes import SHAPE, Recipe, RecipeKind, Rejoined
from quarterturn.design.words import check_code, refer

if TYPE_CHECKING:
    from quarterturn.design.file_recipes import ColourwayTable


@dataclass(frozen=True, slots=True)
class Known:
    """What colourways may name: letters, names of recipes and codes as they are written, and recipes that are whole."""

    letters: list[str]
    names: list[str]
    codes: list[str]
    recipes: Mapping[str, Recipe]
    rejoined: Mapping[str, Rejoined]


def known(
    written: tuple[list[str], list[str], list[str]], recipes: Sequence[Recipe], rejoined: Sequence[Rejoined]
) -> Known:
    """Return what colourways may name, from the letters, names and codes that the file writes."""
    return Known(*written, {each.name: each for each in recipes}, {each.name: each for each in rejoined})


def read_colourways(
    tables: Mapping[str, ColourwayTable] | None, known: Known, notes: Notes
) -> tuple[Colourway, ...]:
    """Read the colourways, in the order of the file."""
    kept = check_count(tables, "colourways", limits.MOST_COLOURWAYS, notes)
    colourways = tuple(_colourway(code, table, known, notes) for code, table in kept)
    by_code = {colourway.code: colourway for colourway in colourways}
    for colourway in colourways:
        if colourway.is_rejoined and colourway.recipe in known.rejoined:
            _check_halves(colourway, by_code, known.rejoined[colourway.recipe], notes)
    return colourways


def _colourway(code: str, table: ColourwayTable, known: Known, notes: Notes) -> Colourway:
    key = dotted("colourways", code)
    check_code(code, key, notes)
    recipe = refer(table.recipe, f"{key}.recipe", "recipe", known.names, notes)
    if recipe in known.rejoined or (recipe not in known.recipes and (table.first or table.second)):
        _check_keys(table, key, ("first", "second"), "joins halves of two masters", notes)
        first, second = (
            refer(getattr(table, half), f"{key}.{half}", "colourway", known.codes, notes)
            for half in ("first", "second")
        )
        return Colourway(code, recipe, "", (), first, second)
    ground = refer(table.ground, f"{key}.ground", "fabric", known.letters, notes)
    if recipe in known.recipes and known.recipes[recipe].kind is RecipeKind.SHAPES:
        _check_keys(table, key, ("ground", "shapes"), "has parts with names of their own", notes)
        return Colourway(code, recipe, ground, _read_parts(table, key, known.recipes[recipe], known, notes))
    if recipe not in known.recipes and table.shapes is not None:
        return Colourway(code, recipe, ground, tuple(table.shapes.items()))
    _check_keys(table, key, ("ground", "shape"), "has one shape", notes)
    shape = refer(table.shape, f"{key}.shape", "fabric", known.letters, notes)
    return Colourway(code, recipe, ground, ((SHAPE, shape),))


def _check_keys(table: ColourwayTable, key: str, names: tuple[str, str], why: str, notes: Notes) -> None:
    for name in ("ground", "shape", "shapes", "first", "second"):
        if name not in names and getattr(table, name) is not None:
            sentence = f"The recipe {quoted(table.recipe or '')} {why}, and `{name}` is none of its keys."
            notes.add("key-unfit", f"{key}.{name}", sentence, f"Give {names[0]} and {names[1]} instead.")


def _read_parts(
    table: ColourwayTable, key: str, recipe: Recipe, known: Known, notes: Notes
) -> tuple[tuple[str, str], ...]:
    """Return the fabric of each part, in the recipe's order."""
    given = table.shapes or {}
    example = ", ".join(
        f'{dotted(part)} = "{letter}"' for part, letter in zip(recipe.parts, "BCDEFGH", strict=False)
    )
    if table.shapes is None:
        if table.shape is None:
            notes.missing(f"{key}.shapes", f"Give each part a fabric: shapes = {{ {example} }}.")
        return ()
    for part in given:
        if part not in recipe.parts:
            sentence = f"The recipe {recipe.name} has no part {quoted(part)}."
            notes.add(
                "part-unknown", f"{key}.shapes.{dotted(part)}", sentence, did_you_mean(part, recipe.parts)
            )
    for part in recipe.parts:
        place = f"{key}.shapes.{dotted(part)}"
        if part not in given and not notes.is_spoiled(place):
            sentence = f"The part {quoted(part)} of {recipe.name} has no fabric."
            notes.add("missing-key", place, sentence, f"Write shapes = {{ {example} }}.")
    return tuple(
        (part, refer(given[part], f"{key}.shapes.{dotted(part)}", "fabric", known.letters, notes))
        for part in recipe.parts
        if part in given
    )


def _check_halves(
    colourway: Colourway, by_code: Mapping[str, Colourway], recipe: Rejoined, notes: Notes
) -> None:
    """Note halves of masters of another recipe, and two halves of one colourway."""
    key = dotted("colourways", colourway.code)
    for half, code in (("first", colourway.first), ("second", colourway.second)):
        if code in by_code and by_code[code].recipe != recipe.of:
            named = by_code[code].recipe or "no recipe"
            sentence = f"{recipe.name} rejoins halves of {recipe.of}, and the colourway {code} is of {named}."
            notes.add("not-halved", f"{key}.{half}", sentence, f"Name a colourway of {recipe.of}.")
    if colourway.first and colourway.first == colourway.second:
        notes.add(
            "self-rejoined",
            f"{key}.second",
            f"Both halves are of the colourway {colourway.first}, so that joining them gives its master back.",
            f"Name two colourways of {recipe.of}, such as one in the opposite colours of the other.",
        )
