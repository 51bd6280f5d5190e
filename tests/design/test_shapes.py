"""Outlines in a recipe, and whether they find room in their units."""

from __future__ import annotations

from typing import get_args

import pytest

from quarterturn.design import Curve, DrawnDiameter, DrawnOutline, ShapeSize, read_design
from quarterturn.design.file_recipes import ShapeTable
from quarterturn.design.outlined import outline_reach, shows_in_every_quarter
from quarterturn.geometry import OUTLINES
from quarterturn.measure import inches
from tests.design.broken_cases import GOOD

SEAM = inches(0, 1, 4)


def read_size(shape: str) -> ShapeSize:
    text = GOOD.replace("circle cut both ways", "shape cut both ways").replace("diameter = '7\"'", shape)
    reading = read_design(text)
    assert reading.design is not None, reading.findings
    return reading.design.recipes[0].size


def test_the_outlines_of_the_file_are_those_of_the_geometry() -> None:
    words = get_args(get_args(ShapeTable.model_fields["outline"].annotation)[0])
    assert list(words) == list(OUTLINES)


@pytest.mark.parametrize(
    ("shape", "size"),
    [
        ("diameter = 7", DrawnDiameter(inches(7))),
        ("width = 7", DrawnDiameter(inches(7))),
        ('outline = "circle", width = 7', DrawnDiameter(inches(7))),
        ('outline = "heart", width = 5', DrawnOutline("heart", inches(5), 0, 0)),
        ('outline = "petal", width = 3, turn = 3', DrawnOutline("petal", inches(3), 3, 0)),
        ('outline = "scallop", width = 6', DrawnOutline("scallop", inches(6), 0, 8)),
        ('outline = "scallop", width = 6, lobes = 5', DrawnOutline("scallop", inches(6), 0, 5)),
    ],
)
def test_a_shape_is_read(shape: str, size: ShapeSize) -> None:
    assert read_size(shape) == size


def test_the_reach_of_a_leaf_is_half_its_height_and_a_turn_does_not_change_it() -> None:
    for turn in range(4):
        leaf = DrawnOutline("leaf", inches(3), turn, 0)
        assert outline_reach(leaf, Curve.AS_DRAWN, SEAM) == pytest.approx(3**1.5 / 2)
        spread = DrawnOutline("leaf", inches(3, 1, 2), turn, 0)
        assert outline_reach(spread, Curve.SEWN_TRUE, SEAM) == pytest.approx(3**1.5 / 2 + 0.25)


@pytest.mark.parametrize("name", [name for name in OUTLINES if name != "circle"])
def test_a_wide_outline_shows_in_every_quarter_and_one_of_a_seam_in_none(name: str) -> None:
    for curve in Curve:
        assert shows_in_every_quarter(DrawnOutline(name, inches(4), 0, 8), curve, SEAM)
        assert not shows_in_every_quarter(DrawnOutline(name, inches(0, 1, 4), 0, 8), curve, SEAM)
