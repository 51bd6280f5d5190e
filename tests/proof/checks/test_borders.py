"""Each check of the borders fires on its fault, and lets its near miss pass."""

from __future__ import annotations

from dataclasses import replace

import pytest

from quarterturn.measure import inches
from quarterturn.pieces import Purpose
from quarterturn.proof import Pattern
from quarterturn.proof.checks.sizing import Sizes
from quarterturn.setting import Framed
from quarterturn.steps import SewLine, Step, Steps
from tests.proof.checks.sound import Spoil, found, pieces, setting, sound, text
from tests.samples import pattern_of
from tests.section_texts import NESTED, PIECED

TOP = sound().setting.top
assert isinstance(TOP, Framed)
DIRECTED = 'colour = "#9c4a35"'


def corners_exchanged() -> Pattern:
    """Return a pattern whose top border has its two corners exchanged."""
    pattern = pattern_of(PIECED)

    def exchanged(step: Step) -> Step:
        if isinstance(step.action, SewLine) and step.makes[0].label == "top border 1, with corners":
            return replace(step, action=replace(step.action, parts=step.action.parts[::-1]))
        return step

    return replace(pattern, steps=Steps(tuple(map(exchanged, pattern.steps.steps))))


FIRES: dict[str, Spoil] = {
    "border-strips": pieces(Purpose.BORDER, length=inches(17)),
    "border-order": setting(top=replace(TOP, frames=(replace(TOP.frames[0], sides_first=False),))),
    "border-parts": corners_exchanged,
    "border-narrow": text(("width = '2\"'", "width = '3/8\"'")),
    "border-print-turns": text((DIRECTED, f'{DIRECTED}\ndirection = "two-way"')),
}
PASSES: dict[str, Spoil] = {
    "border-strips": text(("width = '2\"'", 'width = \'2"\'\nfirst = "ends"')),
    "border-order": text(("width = '2\"'", 'width = \'2"\'\nfirst = "ends"')),
    "border-parts": lambda: pattern_of(NESTED),
    "border-narrow": text(("width = '2\"'", "width = '1/2\"'")),
    "border-print-turns": text((DIRECTED, f'{DIRECTED}\ndirection = "two-way"\nupright = true')),
}


@pytest.mark.parametrize("code", FIRES)
def test_fires(code: str) -> None:
    assert found(code, FIRES[code]())


@pytest.mark.parametrize("code", PASSES)
def test_a_near_miss_passes(code: str) -> None:
    assert found(code, PASSES[code]()) == []


def test_corners_that_are_exchanged_are_told_with_what_should_be_there() -> None:
    assert found("border-parts", corners_exchanged()) == [
        "A border has a0 verge0 a1 at the top; the steps sew a1 verge0 a0 at the top."
    ]


COPED = 'kind = "coping"\nto = [{}, {}]'


@pytest.mark.parametrize(("larger", "turns"), [((0, 2), False), ((2, 0), False), ((2, 2), True)])
def test_a_print_turns_only_where_a_coping_has_a_corner(larger: tuple[int, int], turns: bool) -> None:
    inner = Sizes(sound().design).centre()
    to = COPED.format(*(float(side) + more for side, more in zip(inner, larger, strict=True)))
    spoilt = text((DIRECTED, f'{DIRECTED}\ndirection = "two-way"'), ("width = '2\"'", to))()
    assert bool(found("border-print-turns", spoilt)) == turns
