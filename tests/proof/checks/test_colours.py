"""Each check of the colours fires on its fault, and lets its near miss pass."""

from __future__ import annotations

import pytest

from tests.proof.checks.sound import Spoil, found, text

INK = "#22304a"
FIRES: dict[str, Spoil] = {
    "fabrics-alike": text((INK, "#f2eadd")),
    "greys-alike": text((INK, "#c9f0c0")),
    "shape-unseen": text(('shape = "B"', 'shape = "A"')),
}
PASSES: dict[str, Spoil] = {
    "fabrics-alike": text((INK, "#d8c9ac")),
    "greys-alike": text((INK, "#8fb487")),
}


@pytest.mark.parametrize("code", FIRES)
def test_fires(code: str) -> None:
    assert found(code, FIRES[code]())


@pytest.mark.parametrize("code", PASSES)
def test_a_near_miss_passes(code: str) -> None:
    assert found(code, PASSES[code]()) == []


def test_each_pair_of_fabrics_is_told_once() -> None:
    assert len(found("fabrics-alike", text((INK, "#f2eadd"))())) == 1


def test_border_on_border_counts_as_meeting() -> None:
    second = '[[borders]]\nfabric = "C"\nwidth = \'2"\'\n\n[[borders]]\nfabric = "D"\nwidth = \'3"\''
    clay = '[fabrics.D]\nname = "clay"\nrole = "outer border"\ncolour = "#9a4833"\n\n[recipes.pool]'
    spoilt = text(('[[borders]]\nfabric = "C"\nwidth = \'2"\'', second), ("[recipes.pool]", clay))
    assert "C, brick, and D, clay" in found("fabrics-alike", spoilt())[0]
