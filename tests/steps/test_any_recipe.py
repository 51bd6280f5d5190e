"""Whatever the recipe, its steps can be carried out and make its units, and of halves the blocks that are drawn."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from fractions import Fraction

from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st

from quarterturn.blocks import Blocks, draft_blocks
from quarterturn.design import Colourway, Design, Recipe, Rejoined, unit_name
from quarterturn.design.cut_recipes import rejoined_size
from quarterturn.materials import plan_materials
from quarterturn.pieces import Purpose, bill_of_pieces
from quarterturn.proof.rehearsal import DOINGS, Bolt, Supplies, area_of_difference
from quarterturn.proof.rehearsal.cloth import Patch, plain
from quarterturn.proof.rehearsal.table import Table
from quarterturn.setting import Face, arrange
from quarterturn.steps import Chapter, Pile, Product, build_steps
from tests.samples import ROUNDS, design_of
from tests.strategies.recipes import SEAM, recipes

ROLL = Bolt(Fraction(1000), Fraction(100000))
PARTS = ("petal", "moon")
NOISE = 1e-6
"""Square inches."""
ANY = settings(max_examples=12, deadline=None, suppress_health_check=list(HealthCheck))


def design_with(recipe: Recipe, *ways: Colourway, rejoined: tuple[Rejoined, ...] = ()) -> Design:
    """Return the sample design with other recipes and colourways; its map is not used."""
    return replace(design_of(ROUNDS), recipes=(recipe,), colourways=ways, rejoined=rejoined)


def way_of(code: str, recipe: Recipe, ground: str, *cloth: str) -> Colourway:
    """Return a colourway of a recipe of the strategies."""
    parts = dict(zip(PARTS, cloth, strict=True))
    return Colourway(code, recipe.name, ground, tuple((part, parts[part]) for part in recipe.parts))


def made_units(design: Design, blocks: Blocks, tally: Mapping[str, int]) -> dict[str, Patch]:
    """Carry out all steps from cut pieces to stacks; return a unit from each stack."""
    sample = design_of(ROUNDS)
    arranged = arrange(sample, draft_blocks(sample))
    setting = replace(arranged, top=arranged.centre, tally=tally)
    bill = bill_of_pieces(design, blocks, setting)
    materials = plan_materials(design, blocks, setting, bill)
    table = Table(Supplies({}, ROLL, ROLL))
    for piece in bill.pieces:
        if piece.purpose in (Purpose.GROUND, Purpose.SHAPE):
            made = Product(piece.label, piece.count, piece.length, piece.width)
            table.put(made, plain(piece.fabric, piece.length, piece.width))
    steps = build_steps(design, blocks, setting, bill, materials)
    for chapter in (Chapter.SHAPES, Chapter.FUSING, Chapter.STITCHING, Chapter.UNITS):
        for step in steps.of(chapter):
            DOINGS[type(step.action)](table, step, step.action)
    units = {name: table.take_patch(Pile(f"unit {name}", count)) for name, count in tally.items()}
    assert table.left() == {}
    return units


def difference(design: Design, blocks: Blocks, name: str, made: Patch) -> float:
    """Return the area on which a unit that was made differs from the one that was drawn, as trimmed."""
    drawn = [
        Face(design.cloth(name, layer.part), layer.region) for layer in blocks.unit(design, name).cut_layers
    ]
    return area_of_difference(made.scraps, drawn)


@given(recipes(), st.lists(st.integers(0, 3), min_size=8, max_size=8))
@ANY
def test_the_steps_make_the_units_of_any_recipe(recipe: Recipe, needs: list[int]) -> None:
    design = design_with(recipe, way_of("a", recipe, "A", "B", "C"))
    blocks = draft_blocks(design)
    (master,) = blocks.masters
    names = [unit_name("a", unit.quarter) for unit in master.units]
    tally = {name: need for name, need in zip(names, needs, strict=False) if need}
    assume(tally)
    for name, made in made_units(design, blocks, tally).items():
        laid = made if master.cuts else made.moved(master.parts[0].motion)
        assert difference(design, blocks, name, laid) < NOISE


@given(recipes(halved=True), st.integers(1, 3), st.integers(0, 3))
@ANY
def test_rejoined_halves_of_any_recipe_make_the_blocks_drawn(recipe: Recipe, first: int, second: int) -> None:
    """What is seen of a block: the allowances of its seam are behind it."""
    whole = rejoined_size(recipe, SEAM)
    design = design_with(
        recipe,
        way_of("a", recipe, "A", "B", "C"),
        way_of("b", recipe, "C", "A", "B"),
        Colourway("g", "block", "", (), "a", "b"),
        rejoined=(Rejoined("block", recipe.name, *whole, Fraction(0), Fraction(0)),),
    )
    blocks = draft_blocks(design)
    names = [unit_name("g", unit.quarter) for unit in blocks.rejoined[0].units]
    tally = {name: need for name, need in zip(names, (first, second), strict=False) if need}
    for name, made in made_units(design, blocks, tally).items():
        assert difference(design, blocks, name, made) < NOISE
