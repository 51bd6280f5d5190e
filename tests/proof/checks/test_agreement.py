"""Each check that what is told twice agrees fires on its fault."""

from __future__ import annotations

from dataclasses import replace

import pytest

from quarterturn.measure import inches
from quarterturn.steps import Behind, Bind, CutAway, StitchEdge, Subcut
from tests.proof.checks.sound import (
    EIGHTH,
    Spoil,
    action,
    found,
    making,
    materials,
    setting,
    sound,
    steps,
    text,
)

SHOPPING = sound().materials.shopping
SPARE_FABRIC = (
    "[recipes.pool]",
    '[fabrics.D]\nname = "foam"\nrole = "nothing"\ncolour = "#ffffff"\n\n[recipes.pool]',
)
FIRES: dict[str, Spoil] = {
    "finished-size": setting(width=sound().setting.width + EIGHTH),
    "steps-misnumbered": steps(lambda all_: all_[1:]),
    "settings-differ": action(CutAway, behind=(Behind(0, "shape", EIGHTH, (-1,)),)),
    "material-missing": materials(shopping=SHOPPING[1:]),
    "material-unneeded": lambda: replace(
        text(SPARE_FABRIC)(),
        materials=materials(shopping=(*SHOPPING, replace(SHOPPING[0], key="D")))().materials,
    ),
    "fabric-unused": text(SPARE_FABRIC),
    "colourway-unused": text(
        ("[setting]", '[colourways.c]\nrecipe = "pool"\nground = "A"\nshape = "C"\n\n[setting]')
    ),
}
PASSES: dict[str, Spoil] = {
    "fabric-unused": text(SPARE_FABRIC, ('[backing]\nfabric = "A"', '[backing]\nfabric = "D"')),
    "settings-differ": text(making("seam = '3/8\"'\ncut_away = '3/16\"'\noverage = '3\"'")),
}


@pytest.mark.parametrize("code", FIRES)
def test_fires(code: str) -> None:
    assert found(code, FIRES[code]())


@pytest.mark.parametrize("code", PASSES)
def test_a_near_miss_passes(code: str) -> None:
    assert found(code, PASSES[code]()) == []


def test_a_missing_sundry_is_told() -> None:
    spoilt = materials(shopping=tuple(line for line in SHOPPING if line.key != "web"))
    assert found("material-missing", spoilt()) == [
        "The quilt needs web, and the shopping list does not have it."
    ]


def test_a_step_of_an_earlier_chapter_among_later_ones_is_found() -> None:
    spoilt = steps(
        lambda all_: tuple(replace(s, number=n) for n, s in enumerate((all_[-1], *all_[:-1]), start=1))
    )
    assert found("steps-misnumbered", spoilt()) == ["Step 2 is of cutting, after a later chapter."]


def test_each_allowance_that_a_step_states_is_held_against_the_design() -> None:
    stitch = replace(sound().design.making.stitch, width=inches(0, 1, 4))
    assert found("settings-differ", action(StitchEdge, stitch=stitch)())
    assert found("settings-differ", action(Bind, strip_width=inches(2))())
    assert found("settings-differ", action(Subcut, layers=5)()) != []


def test_a_recipe_that_no_unit_of_the_map_uses_is_told() -> None:
    more = '[recipes.puddle]\nkind = "circle cut both ways"\nfinished = \'4"\'\nshape = { flow = true }\n\n[setting]'
    assert found("colourway-unused", text(("[setting]", more))()) == ["The map has no unit of recipe puddle."]
