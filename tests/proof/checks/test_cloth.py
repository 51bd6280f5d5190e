"""Each check of what is bought fires on its fault, and lets its near miss pass."""

from __future__ import annotations

from dataclasses import replace

import pytest

from quarterturn.materials import ClothPlan
from quarterturn.measure import YARD, inches
from tests.proof.checks.sound import Spoil, found, making, materials, plan, sound, text

MADE = sound().materials


def with_panels(**values: object) -> Spoil:
    """Return the sound pattern with its backing panels changed."""

    def changed(whole: ClothPlan) -> ClothPlan:
        return replace(whole, panels=tuple(replace(group, **values) for group in whole.panels))  # type: ignore[arg-type]

    return plan("A", changed)


def one_strip_less(whole: ClothPlan) -> ClothPlan:
    """Let the binding have a strip less."""
    return replace(whole, runs=tuple(replace(run, strips=run.strips - 1) for run in whole.runs))


FIRES: dict[str, Spoil] = {
    "yardage-short": plan("B", lambda whole: replace(whole, bought=whole.cut_length)),
    "yardage-rounding": plan("B", lambda whole: replace(whole, bought=whole.bought + YARD / 4)),
    "no-slack": text(making("slack = '1\"'")),
    "width-differs": plan("B", lambda whole: replace(whole, usable_width=inches(42))),
    "binding-short": plan("C", one_strip_less),
    "binding-tight": text(making("binding_extra = '6\"'")),
    "binding-narrow": text(("[binding]", "[binding]\nwidth = '1 1/2\"'")),
    "backing-short": with_panels(cut_length=inches(20)),
    "backing-dear": with_panels(panels=4),
    "batting-small": materials(batting_width=inches(20)),
    "batting-unsold": text(('kind = "straight"', 'kind = "straight"\nacross = 8')),
    "overage-small": text(making("overage = '1\"'")),
    "thread-miscounted": materials(stitching=MADE.stitching[:1]),
}
PASSES: dict[str, Spoil] = {
    "no-slack": text(making("slack = '1 1/2\"'")),
    "binding-tight": text(making("binding_extra = '8\"'")),
    "binding-narrow": text(("[binding]", "[binding]\nwidth = '1 3/4\"'")),
    "batting-unsold": text(('kind = "straight"', 'kind = "straight"\nacross = 6')),
    "overage-small": text(making("overage = '2\"'")),
    "backing-dear": text(('kind = "straight"', 'kind = "straight"\nacross = 3')),
    "backing-short": text(('kind = "straight"', 'kind = "straight"\ndown = 3')),
}


def test_where_no_slack_is_asked_for_what_is_left_for_a_miscut_is_told() -> None:
    (sentence,) = found("no-slack", text(making("slack = '0\"'"))())
    assert sentence.endswith('For a miscut there is 0" of fabric C, ⅝" of the web.'), sentence


@pytest.mark.parametrize("code", FIRES)
def test_fires(code: str) -> None:
    assert found(code, FIRES[code]())


@pytest.mark.parametrize("code", PASSES)
def test_a_near_miss_passes(code: str) -> None:
    assert found(code, PASSES[code]()) == []
