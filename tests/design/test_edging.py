"""The binding by its finished width, and packages of batting."""

from __future__ import annotations

import pytest

from quarterturn.design import Package, format_design
from quarterturn.measure import Units, inches, mm
from tests.design.broken_cases import GOOD
from tests.samples import ROUNDS, design_of, pattern_of

BINDING = '[binding]\nfabric = "B"\n'


@pytest.mark.parametrize(("finished", "strip"), [("1/4", (1, 5, 8)), ("3/8", (2, 3, 8)), ("5/16", (2, 0, 1))])
def test_the_strip_follows_from_the_finished_width(finished: str, strip: tuple[int, int, int]) -> None:
    """6·w + ⅛″: 1⅝″ for ¼″ (ctpub.com)."""
    design = design_of(GOOD.replace(BINDING, f"{BINDING}finished = '{finished}\"'\n"))
    assert design.binding_width == inches(*strip)


def test_a_strip_that_follows_lies_on_a_metric_ruler() -> None:
    text = GOOD.replace(BINDING, f"{BINDING}finished = '8 mm'\n").replace("inch", Units.METRIC.value)
    assert design_of(text.replace("trim = '0\"'\n", "")).binding_width == mm(55)


def test_packages_of_the_file_stand_in_for_those_of_most_shops() -> None:
    """Craft and throw are sold too (from memory)."""
    text = f"""{ROUNDS}
[batting]
packages = {{ "wide roll" = ['60"', '96"'], craft = ['45"', '36"'] }}
"""
    pattern = pattern_of(text)
    craft, roll = pattern.design.packages
    assert craft == Package("craft", inches(36), inches(45))
    assert pattern.materials.batting_package == "craft"
    assert roll.name == "wide roll"
    assert pattern_of(ROUNDS).materials.batting_package == "crib"
    assert design_of(format_design(pattern.design)) == pattern.design
