"""Whatever the recipe, all stages agree, the rehearsal makes the picture, and every figure can be drawn."""

from __future__ import annotations

from dataclasses import replace

from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st

from quarterturn.blocks import Unit, draft_blocks
from quarterturn.design import Cell, Colourway, Design, Paper, Recipe, Rejoined, Severity, StraightSet
from quarterturn.design.cut_recipes import rejoined_size
from quarterturn.pipeline import make_pattern
from quarterturn.proof import ACCEPTED, Pattern, check_pattern, prove
from quarterturn.proof.checks.fault import REBUILD
from quarterturn.publish.booklet import assemble
from tests.samples import ROUNDS, design_of
from tests.strategies.recipes import SEAM, recipes

ANY = settings(max_examples=5, deadline=None, suppress_health_check=list(HealthCheck))
PARTS = {"petal": "B", "moon": "C"}
OTHER = {"petal": "C", "moon": "A"}


def way_of(code: str, recipe: Recipe, ground: str, cloth: dict[str, str]) -> Colourway:
    return Colourway(code, recipe.name, ground, tuple((part, cloth[part]) for part in recipe.parts))


def design_with(recipe: Recipe, *ways: Colourway, rejoined: tuple[Rejoined, ...] = ()) -> Design:
    return replace(design_of(ROUNDS), recipes=(recipe,), colourways=ways, rejoined=rejoined)


def laid(design: Design, code: str, units: tuple[Unit, ...], turns: list[int]) -> Pattern:
    """Return the pattern of a row of all units that are rectangles as high as the first, each turned as it may be."""
    kinds = [unit for unit in units if unit.is_rectangle]
    assume(kinds)
    row = [unit for unit in kinds if unit.height == kinds[0].height]
    cells = tuple(Cell(code, 2 * turn, row[k % len(row)].quarter) for k, turn in enumerate(turns))
    return make_pattern(replace(design, setting=StraightSet((cells,), 1, 2), borders=()))


def agrees(pattern: Pattern) -> None:
    """Hold every stage against the others, the rehearsal against the picture, and draw the booklet."""
    findings = check_pattern(pattern)
    assert [(f.code, f.sentence) for f in findings if f.remedy == REBUILD] == []
    for finding in findings:
        assert finding.sentence.isprintable()
        assert len(finding.sentence) < 400
    if not any(finding.severity is Severity.STOPS for finding in findings):
        proof = prove(pattern)
        assert proof.findings == ()
        assert proof.share <= ACCEPTED
    assert assemble(pattern, Paper.A4).blocks


turns = st.lists(st.integers(0, 1), min_size=2, max_size=5)


@given(recipes(), turns)
@ANY
def test_all_stages_agree_on_any_recipe(recipe: Recipe, turns: list[int]) -> None:
    design = design_with(recipe, way_of("a", recipe, "A", PARTS))
    agrees(laid(design, "a", draft_blocks(design).units(recipe.name), turns))


@given(recipes(halved=True), turns)
@ANY
def test_all_stages_agree_on_halves_rejoined(recipe: Recipe, turns: list[int]) -> None:
    width, height = (side.limit_denominator(10**9) for side in rejoined_size(recipe, SEAM))
    assume(min(width, height) >= 1)
    block = Rejoined("block", recipe.name, width - width % 1, height - height % 1, width % 1, height % 1)
    ways = (
        way_of("a", recipe, "A", PARTS),
        way_of("b", recipe, "B", OTHER),
        Colourway("g", "block", "", (), "a", "b"),
    )
    design = design_with(recipe, *ways, rejoined=(block,))
    agrees(laid(design, "g", draft_blocks(design).units("block"), turns))
