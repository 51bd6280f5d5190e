"""Prints that must stand upright: whose pieces may then no longer be exchanged for one another, turned.

A colourway with such a fabric follows a copy of its recipe that keeps its pieces apart. The copy is made when the file
is read, and left out when it is written.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import replace
from typing import TypeVar

from quarterturn.design.model import Colourway, Design, Direction
from quarterturn.design.recipes import (
    Curve,
    DrawnDiameter,
    DrawnOutline,
    FinishedRadius,
    Recipe,
    RecipeKind,
    Rejoined,
    ShapeSize,
)
from quarterturn.measure import Length

R = TypeVar("R", Recipe, Rejoined)

ANY_WAY = (0, 1, 2, 3)
UP_OR_DOWN = (0, 2)
ONLY_UP = (0,)


def upright_letters(design: Design, code: str) -> tuple[str, ...]:
    """Return the fabrics of a colourway, of both its masters where halves are rejoined, that must stand upright."""
    letters = dict.fromkeys(
        letter for master in design.masters_of(code) for letter in design.colourway(master).letters
    )
    return tuple(letter for letter in letters if design.fabric(letter).upright)


def written_name(design: Design, recipe: str) -> str:
    """Return what the file calls a recipe of which the reader may have made a copy."""
    bases = {each.name: each.base for each in design.recipes}
    bases |= {each.name: each.base for each in design.rejoined}
    return bases.get(recipe, "") or recipe


def allowed_turns(design: Design, code: str) -> tuple[int, ...]:
    """Return by how many quarters a piece of a colourway may be turned from how it lies in its upright master."""
    ways = {design.fabric(letter).direction for letter in upright_letters(design, code)}
    if Direction.ONE_WAY in ways:
        return ONLY_UP
    return UP_OR_DOWN if ways else ANY_WAY


def with_pieces_apart(design: Design) -> Design:
    """Return the design with copies of recipes for colourways whose prints must stand upright."""
    apart = _codes_apart(design)
    if not apart:
        return design
    recipes, of_masters = _copies(design.recipes, design.colourways, apart)
    rejoined, of_blocks = _copies(design.rejoined, design.colourways, apart)
    recipes = tuple(in_full(r, design.making.seam) if r.origin else r for r in recipes)
    renamed = of_masters | of_blocks
    return replace(
        design,
        recipes=recipes,
        rejoined=tuple(replace(r, of=of_masters.get(r.of, r.of)) if r.origin else r for r in rejoined),
        colourways=tuple(
            replace(c, recipe=renamed.get(c.recipe, c.recipe)) if c.code in apart else c
            for c in design.colourways
        ),
    )


def _codes_apart(design: Design) -> set[str]:
    """Return the colourways with such prints, and those that change halves with one of them."""
    apart = {c.code for c in design.colourways if upright_letters(design, c.code)}
    while True:
        found = {
            code
            for c in design.colourways
            if c.code in apart or set(design.masters_of(c.code)) & apart
            for code in (c.code, *design.masters_of(c.code))
        }
        if found == apart:
            return apart
        apart = found


def _copies(
    recipes: Sequence[R], colourways: Iterable[Colourway], apart: set[str]
) -> tuple[tuple[R, ...], dict[str, str]]:
    """Return the recipes with copies behind those that need one, and what each copy is called.

    A recipe that only such colourways follow is its own copy.
    """
    users = [(c.recipe, c.code in apart) for c in colourways]
    taken = {recipe.name for recipe in recipes}
    found: list[R] = []
    renamed: dict[str, str] = {}
    for recipe in recipes:
        needs = {is_apart for name, is_apart in users if name == recipe.name}
        if needs != {True}:
            found.append(recipe)
        if True in needs:
            name = recipe.name if needs == {True} else _free(recipe.name, taken)
            renamed[recipe.name] = name
            found.append(replace(recipe, name=name, origin=recipe))
    return tuple(found), renamed


def in_full(recipe: Recipe, seam: Length) -> Recipe:
    """Return a recipe of a short form as one of shapes cut; irrational widths are good to 10⁻⁹ inch."""
    if recipe.kind is RecipeKind.SHAPES:
        return recipe
    (shape,) = recipe.shapes
    size = _in_full(shape.size, recipe, seam)
    return replace(recipe, shapes=(replace(shape, size=size),), kind=RecipeKind.SHAPES)


def _in_full(size: ShapeSize, recipe: Recipe, seam: Length) -> DrawnOutline:
    true = recipe.curve is Curve.SEWN_TRUE
    if isinstance(size, DrawnOutline):
        return replace(size, width=size.width - 2 * seam if true else size.width)
    if isinstance(size, DrawnDiameter):
        width = size.diameter - 2 * seam if true else size.diameter
    else:
        meets = size.radius if isinstance(size, FinishedRadius) else recipe.finished_width / 2
        drawn = Length(math.hypot(meets + seam, seam)).limit_denominator(10**9)
        width = 2 * (meets if true else drawn)
    return DrawnOutline("circle", width, 0, 0)


def _free(name: str, taken: set[str]) -> str:
    name = f"{name} upright"
    while name in taken:
        name += " again"
    return name
