"""The check of the units of measure fires on sizes of the other system, both ways."""

from __future__ import annotations

import pytest

from tests.proof.checks.sound import Spoil, found, recipe, text

METRIC = ('units = "inch"', 'units = "metric"')
ROUND = recipe("finished = '10 cm'\nshape = { flow = true }")
FIRES: dict[str, Spoil] = {"units-mixed": text(("width = '2\"'", "width = '5 cm'"))}
PASSES: dict[str, Spoil] = {"units-mixed": text(METRIC, ROUND, ("width = '2\"'", "width = '5 cm'"))}


@pytest.mark.parametrize("code", FIRES)
def test_fires(code: str) -> None:
    assert found(code, FIRES[code]())


@pytest.mark.parametrize("code", PASSES)
def test_a_near_miss_passes(code: str) -> None:
    assert found(code, PASSES[code]()) == []


def test_an_inch_size_in_a_metric_pattern_is_told_with_the_nearest_metric_one() -> None:
    (sentence,) = found("units-mixed", text(METRIC, ROUND)())
    assert sentence.startswith('borders.0.width is drafted in inches, 2"; in this pattern that is 50.8 mm')
