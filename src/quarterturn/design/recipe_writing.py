"""Print recipes and colourways as tables of a complete file."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from quarterturn.design.cuts import pieces_of, word_of_cuts
from quarterturn.design.keys import dotted
from quarterturn.design.model import Colourway, Design
from quarterturn.design.recipes import (
    Cut,
    DrawnDiameter,
    DrawnOutline,
    FinishedRadius,
    Recipe,
    RecipeKind,
    Rejoined,
    ShapeOn,
    ShapeSize,
    recipes_of_file,
)
from quarterturn.design.text import quote_length, quote_text, write_length
from quarterturn.design.upright import written_name
from quarterturn.measure import Length, LengthError, Units, parse_length

Pair = tuple[str, str]
Table = tuple[str, list[Pair]]
"""A header in its brackets, and what stands below it."""


def recipe_tables(design: Design) -> Iterator[Table]:
    """Return the tables of all recipes of the file, those that rejoin halves last."""
    units = design.units
    for recipe in recipes_of_file(design.recipes):
        header = f"[{dotted('recipes', recipe.name)}]"
        if recipe.kind is RecipeKind.SHAPES:
            yield header, _shapes_cut(recipe, units)
            for shape in recipe.shapes:
                yield f"[[{dotted('recipes', recipe.name, 'shapes')}]]", _shape_on(shape, units)
        else:
            yield header, _short(recipe, units)
    for rejoined in recipes_of_file(design.rejoined):
        yield f"[{dotted('recipes', rejoined.name)}]", _rejoined(rejoined, units)


def colourway_tables(design: Design) -> Iterator[Table]:
    """Return the tables of all colourways."""
    recipes = {recipe.name: recipe.origin or recipe for recipe in design.recipes}
    for colourway in design.colourways:
        recipe = recipes.get(colourway.recipe)
        is_short = recipe is not None and recipe.kind is not RecipeKind.SHAPES
        named = replace(colourway, recipe=written_name(design, colourway.recipe))
        yield f"[{dotted('colourways', colourway.code)}]", _colourway(named, is_short=is_short)


def _short(recipe: Recipe, units: Units) -> list[Pair]:
    trim = recipe.trim_width
    trims = f" # trims {write_length(trim, units)}" if trim else " # nothing to trim"
    return [
        ("kind", quote_text(recipe.kind.value)),
        ("finished", quote_length(recipe.finished_width, units)),
        ("start", quote_length(recipe.width, units) + trims),
        ("shape", f"{{ {_size(recipe.shapes[0].size, units)} }}"),
        ("curve", quote_text(recipe.curve.value)),
        *([("pieced", "true")] if recipe.pieced else []),
    ]


def _size(size: ShapeSize, units: Units) -> str:
    if isinstance(size, DrawnOutline):
        pairs = [("outline", quote_text(size.outline)), ("width", quote_length(size.width, units))]
        pairs += [("turn", str(size.turn)), *([("lobes", str(size.lobes))] if size.lobes else [])]
        return ", ".join(f"{key} = {value}" for key, value in pairs)
    if isinstance(size, DrawnDiameter):
        return f"diameter = {quote_length(size.diameter, units)}"
    if isinstance(size, FinishedRadius):
        return f"radius = {quote_length(size.radius, units)}"
    return "flow = true"


def _shapes_cut(recipe: Recipe, units: Units) -> list[Pair]:
    """Return the sizes that say all: finished and start where units finish alike, else start and trim."""
    word = word_of_cuts(recipe.cuts, recipe.width, recipe.height)
    start = _both(("start", "width", "height"), (recipe.width, recipe.height), units)
    if pieces_of(recipe.cuts):
        finished = (recipe.finished_width, recipe.finished_height)
        sizes = [*_both(("finished", "finished_width", "finished_height"), finished, units), *start]
    else:
        sizes = [*start, ("trim", quote_length(recipe.trim_width, units))]
    cuts = quote_text(word) if word else _lines(recipe.cuts, units)
    return [
        ("kind", quote_text(recipe.kind.value)),
        *sizes,
        ("cuts", cuts),
        ("curve", quote_text(recipe.curve.value)),
    ]


def _both(names: tuple[str, str, str], size: tuple[Length, Length], units: Units) -> list[Pair]:
    side, width, height = names
    if size[0] == size[1]:
        return [(side, quote_length(size[0], units))]
    return [(width, quote_length(size[0], units)), (height, quote_length(size[1], units))]


def _lines(cuts: tuple[Cut, ...], units: Units) -> str:
    lines = (
        f"[{_point(cut.start_x, cut.start_y, units)}, {_point(cut.end_x, cut.end_y, units)}]" for cut in cuts
    )
    return f"[{', '.join(lines)}]"


def _point(x: Length, y: Length, units: Units) -> str:
    return f"[{_signed(x, units)}, {_signed(y, units)}]"


def _signed(value: Length, units: Units) -> str:
    return quote_text(f"-{write_length(-value, units)}") if value < 0 else quote_length(value, units)


def _shape_on(shape: ShapeOn, units: Units) -> list[Pair]:
    size, degrees = shape.size, shape.degrees
    assert isinstance(size, DrawnOutline)
    return [
        ("name", quote_text(shape.part)),
        ("outline", quote_text(size.outline)),
        ("width", quote_length(size.width, units)),
        *([("inner", quote_length(size.inner, units))] if size.inner else []),
        *([("lobes", str(size.lobes))] if size.lobes else []),
        ("at", _point(shape.x, shape.y, units)),
        ("turn", str(degrees) if degrees.denominator == 1 else repr(float(degrees))),
        *([] if shape.underlap is None else [("underlap", quote_length(shape.underlap, units))]),
    ]


def _rejoined(recipe: Rejoined, units: Units) -> list[Pair]:
    pairs = [("kind", quote_text(RecipeKind.REJOINED.value)), ("of", quote_text(recipe.of))]
    trim = recipe.trim_width
    if trim == recipe.trim_height and _reads_back(trim, units):
        return [*pairs, ("trim", quote_length(trim, units))]
    finished = (recipe.finished_width, recipe.finished_height)
    return [*pairs, *_both(("finished", "finished_width", "finished_height"), finished, units)]


def _reads_back(value: Length, units: Units) -> bool:
    try:
        return parse_length(write_length(value, units), units) == value
    except LengthError:
        return False


def _colourway(colourway: Colourway, *, is_short: bool) -> list[Pair]:
    pairs = [("recipe", quote_text(colourway.recipe))]
    if colourway.is_rejoined:
        return [*pairs, ("first", quote_text(colourway.first)), ("second", quote_text(colourway.second))]
    pairs.append(("ground", quote_text(colourway.ground)))
    if is_short:
        return [*pairs, *((part, quote_text(letter)) for part, letter in colourway.shapes)]
    parts = ", ".join(f"{dotted(part)} = {quote_text(letter)}" for part, letter in colourway.shapes)
    return [*pairs, ("shapes", f"{{ {parts} }}")]
