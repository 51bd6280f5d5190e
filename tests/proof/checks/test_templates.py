"""Each check of the templates fires on its fault, and lets its near miss pass."""

from __future__ import annotations

import pytest

from quarterturn.geometry import circle
from quarterturn.steps import CutOut, TraceRings
from tests.proof.checks.sound import Spoil, action, found, recipe, text


def across(diameter: str) -> tuple[str, str]:
    """Return the change to a plain circle of a diameter."""
    return recipe(f"finished = '5\"'\nshape = {{ diameter = '{diameter}\"' }}")


FIRES: dict[str, Spoil] = {
    "template-size": action(CutOut, traced=circle(2.0)),
    "template-mirrored": action(TraceRings, same_mirrored=False),
    "template-over-page": text(across("8 1/8")),
    "template-over-other": text(across("7 3/4")),
}
PASSES: dict[str, Spoil] = {
    "template-size": text(across("4")),
    "template-over-page": text(across("8")),
    "template-over-other": text(across("7 3/8")),
}


@pytest.mark.parametrize("code", FIRES)
def test_fires(code: str) -> None:
    assert found(code, FIRES[code]())


@pytest.mark.parametrize("code", PASSES)
def test_a_near_miss_passes(code: str) -> None:
    assert found(code, PASSES[code]()) == []


def test_a_shape_too_large_for_either_paper_is_told_once() -> None:
    large = text(across("9"))()
    assert found("template-over-page", large)
    assert found("template-over-other", large) == []
