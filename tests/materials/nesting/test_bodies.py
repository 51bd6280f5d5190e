"""Bodies cover what they stand for, and their parts are convex and together as large."""

from __future__ import annotations

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from quarterturn.geometry import Path, Region, as_polygon, circle, polygon, quarter_turns, rectangle
from quarterturn.materials.nesting import Shape
from quarterturn.materials.nesting.bodies import (
    NARROW,
    Catalogue,
    convex_parts,
    differing,
    grown_corners,
    shrunk_region,
)
from tests.materials.nesting.nesting_cases import corners, heart
from tests.strategies.outlines import outlines

L = polygon([0, 3 + 0j, 3 + 1j, 1 + 1j, 1 + 3j, 3j])


@given(corners())
@settings(max_examples=300)
def test_parts_are_convex_and_make_up_the_outline(outline: Path) -> None:
    area = as_polygon(Region((outline,)))
    parts = [shapely.Polygon(np.column_stack([p.real, p.imag])) for p in convex_parts(area)]
    assert all(part.convex_hull.area == pytest.approx(part.area) for part in parts)
    assert sum(part.area for part in parts) == pytest.approx(area.area)
    assert shapely.union_all(parts).symmetric_difference(area).area == pytest.approx(0, abs=1e-9)


def test_an_l_is_two_parts() -> None:
    assert len(convex_parts(as_polygon(Region((L,))))) == 2


@given(outlines(), st.sampled_from([0.0, 0.0625, 0.25]))
@settings(max_examples=150, deadline=None)
def test_a_grown_outline_covers_the_outline_and_all_within_reach(outline: Path, by: float) -> None:
    covered = as_polygon(Region((outline,)), 1e-4).buffer(by - 1e-4 - 2 * NARROW if by else -1e-4)
    assert grown_corners(outline, by).buffer(1e-9).covers(covered)


@given(outlines(), st.sampled_from([0.0, 0.25]))
@settings(max_examples=150, deadline=None)
def test_a_shrunk_region_stays_inside_and_away_from_the_edge(outline: Path, by: float) -> None:
    region = as_polygon(Region((outline,)), 1e-4)
    shrunk = shrunk_region(Region((outline,)), by)
    assert region.buffer(1e-4).covers(shrunk)
    assert shrunk.is_empty or region.boundary.distance(shrunk) >= by - 1e-4 - 2 * NARROW


@given(corners(), st.integers(0, 3))
def test_a_turned_body_is_the_body_of_the_turned_outline(outline: Path, turn: int) -> None:
    body = Catalogue([Shape("a", outline)], 0.25).body(0, turn)
    turned = grown_corners(quarter_turns(turn).path(outline), 0.125)
    parts = [shapely.Polygon(np.column_stack([p.real, p.imag])) for p in body.grown]
    assert shapely.union_all(parts).symmetric_difference(turned).area == pytest.approx(0, abs=1e-6)


def test_turns_that_change_nothing_are_left_out() -> None:
    turns = range(4)
    assert differing(circle(1), turns) == (0,)
    assert differing(rectangle(0, 0, 2, 3), turns) == (0, 1)
    assert differing(heart(2), turns) == (0, 1, 2, 3)
    assert differing(rectangle(0, 0, 2, 2), (2, 0)) == (2,)
