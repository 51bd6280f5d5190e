"""Each check of the joins fires on its fault, and lets its near miss pass."""

from __future__ import annotations

import pytest

from quarterturn.proof.checks.joins import seams_of
from quarterturn.setting import Side
from tests.proof.checks.sound import Spoil, found, recipe, setting, sound, text

TURNED = ("a1 a0 b1 b0\n", "a1 a0 b1 b3\n")
PLAIN = recipe("finished = '4\"'\nshape = { radius = '1 3/4\"' }\ncurve = \"sewn true\"")
FIRES: dict[str, Spoil] = {
    "edges-step": text(PLAIN, ("a2 a3 b2 b3", "a2 a0 b2 b3")),
    "seam-peaks": text(recipe("finished = '4\"'\nshape = { flow = true }")),
    "joins-miscounted": setting(joins=sound().setting.joins[1:]),
}
PASSES: dict[str, Spoil] = {
    "edges-step": text(TURNED),
    "seam-peaks": text(recipe("finished = '4\"'\nshape = { diameter = '6\"' }")),
    "joins-miscounted": text(PLAIN, ("a2 a3 b2 b3", "a2 a0 b2 b3")),
}


@pytest.mark.parametrize("code", FIRES)
def test_fires(code: str) -> None:
    assert found(code, FIRES[code]())


@pytest.mark.parametrize("code", PASSES)
def test_a_near_miss_passes(code: str) -> None:
    assert found(code, PASSES[code]()) == []


def test_a_path_flows_on_into_a_turned_neighbour_only_where_it_meets_the_middle_of_the_side() -> None:
    pair = (("a", 2), ("a", 0), Side.RIGHT)
    flowing, plain = (seams_of(text(change, ("a2 a3 b2", "a2 a0 b2"))().design) for change in (TURNED, PLAIN))
    assert flowing[pair].seam.matches == 1
    assert not flowing[pair].seam.rejoined
    assert plain[pair].seam.distance == pytest.approx(0.5)
