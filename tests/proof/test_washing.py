"""Cloth that is washed before it is cut: more is bought, and what is left is enough."""

from __future__ import annotations

import pytest

from quarterturn.proof import check_pattern, prove, supplies_of
from quarterturn.publish.wording.requirements import cloth_needs
from tests.samples import ROUNDS, Changed, pattern_of

DRY = pattern_of(ROUNDS)


def washed(percent: float) -> str:
    """Return a design whose fabric A loses so much of its length."""
    return Changed(ROUNDS).with_('role = "background"', f'role = "background"\nshrink_along = {percent}').text


@pytest.mark.parametrize("percent", [1, 3.5, 10, 30])
def test_what_is_left_of_washed_cloth_covers_the_cuts(percent: float) -> None:
    pattern = pattern_of(washed(percent))
    plan, dry = pattern.materials.plan("A"), DRY.materials.plan("A")
    assert plan.bought >= dry.bought
    assert supplies_of(pattern).cloth["A"].length >= plan.cut_length + plan.squaring
    assert check_pattern(pattern) == check_pattern(DRY)
    assert prove(pattern).holds


def test_only_washed_cloth_is_bought_for_the_wash() -> None:
    assert pattern_of(washed(30)).materials.plan("B") == DRY.materials.plan("B")


def test_the_list_says_to_wash_the_cloth_first() -> None:
    notes = [need.note for need in cloth_needs(pattern_of(washed(3.5)))]
    assert "wash it first, it is taken to lose 3.5 % of its length" in notes[0]
    assert "wash" not in notes[1]
