"""Each check of the borders fires on its fault, and lets its near miss pass."""

from __future__ import annotations

from dataclasses import replace

import pytest

from quarterturn.measure import inches
from quarterturn.pieces import Purpose
from quarterturn.setting import Framed
from tests.proof.checks.sound import Spoil, found, pieces, setting, sound, text

TOP = sound().setting.top
assert isinstance(TOP, Framed)
DIRECTED = 'colour = "#9c4a35"'
FIRES: dict[str, Spoil] = {
    "border-strips": pieces(Purpose.BORDER, length=inches(17)),
    "border-order": setting(top=replace(TOP, frames=(replace(TOP.frames[0], sides_first=False),))),
    "border-narrow": text(("width = '2\"'", "width = '3/8\"'")),
    "border-print-turns": text((DIRECTED, f'{DIRECTED}\ndirection = "two-way"')),
}
PASSES: dict[str, Spoil] = {
    "border-strips": text(("width = '2\"'", 'width = \'2"\'\nfirst = "ends"')),
    "border-order": text(("width = '2\"'", 'width = \'2"\'\nfirst = "ends"')),
    "border-narrow": text(("width = '2\"'", "width = '1/2\"'")),
}


@pytest.mark.parametrize("code", FIRES)
def test_fires(code: str) -> None:
    assert found(code, FIRES[code]())


@pytest.mark.parametrize("code", PASSES)
def test_a_near_miss_passes(code: str) -> None:
    assert found(code, PASSES[code]()) == []
