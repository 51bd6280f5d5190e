"""Each check of motifs on panels fires on its fault, and lets its near miss pass."""

from __future__ import annotations

from dataclasses import replace

import pytest

from quarterturn.geometry import shift
from quarterturn.proof import Pattern
from quarterturn.steps import FuseToPanel, Step, Steps
from tests.proof.checks.sound import Spoil, found
from tests.proof.checks.test_plain import changed
from tests.samples import pattern_of
from tests.section_texts import PANELS


def moved(by: complex) -> Spoil:
    """Return the pattern whose steps lay the first motif of each panel elsewhere."""

    def first_moved(step: Step) -> Step:
        if not isinstance(step.action, FuseToPanel):
            return step
        first, *rest = step.action.motifs
        motifs = (replace(first, motion=first.motion.then(shift(by))), *rest)
        return replace(step, action=replace(step.action, motifs=motifs))

    def spoil() -> Pattern:
        pattern = pattern_of(PANELS)
        return replace(pattern, steps=Steps(tuple(map(first_moved, pattern.steps.steps))))

    return spoil


AT = "at = ['5\"', '9\"']"
FIRES: dict[str, Spoil] = {
    "motif-misplaced": moved(0.25),
    "motif-near-seam": changed(PANELS, (AT, "at = ['5\"', '10 5/8\"']")),
}
PASSES: dict[str, Spoil] = {
    "motif-misplaced": moved(1e-9),
    "motif-near-seam": changed(PANELS, (AT, "at = ['5\"', '10 1/2\"']")),
}


@pytest.mark.parametrize("code", FIRES)
def test_fires(code: str) -> None:
    assert found(code, FIRES[code]())


@pytest.mark.parametrize("code", PASSES)
def test_a_near_miss_passes(code: str) -> None:
    assert found(code, PASSES[code]()) == []


def test_a_motif_is_told_by_its_number_and_its_room() -> None:
    (sentence,) = found("motif-near-seam", FIRES["motif-near-seam"]())
    assert sentence.startswith('Motif 3, the round, comes within ⅛" of the seam round its panel')


LEANING = (
    PANELS
    + """
[recipes.beat]
kind = "shapes cut"
start = '9 1/2"'
cuts = "none"
[[recipes.beat.shapes]]
name = "heart"
outline = "heart"
width = '3"'
at = ['1"', '1/2"']
turn = 30
"""
)


def test_a_motif_is_held_by_the_middle_of_its_shape_wherever_its_recipe_lays_it() -> None:
    pattern = pattern_of(LEANING.replace('{ recipe = "round"', '{ recipe = "beat"'))
    laid = [
        m.recipe for s in pattern.steps.steps if isinstance(s.action, FuseToPanel) for m in s.action.motifs
    ]
    assert "beat" in laid
    assert found("motif-misplaced", pattern) == []
