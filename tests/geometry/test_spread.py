"""The law of slash and spread: what is traced so, cut, seamed and rejoined, is the wanted outline exactly."""

from __future__ import annotations

import cmath
import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.geometry import (
    OUTLINES,
    Path,
    Region,
    StraightLine,
    circle,
    difference_area,
    keep_left,
    outline_path,
    path_bounds,
    same_outline,
    shift,
    spread,
    spread_circle,
)
from tests.strategies.outlines import outlines

DOWN, ACROSS = StraightLine(0j, 1j), StraightLine(0j, -1 + 0j)
SLANTING = StraightLine(0j, cmath.rect(1, math.pi / 4))

seams = st.sampled_from([0.25, 0.5, 7.5 / 25.4]) | st.floats(0.01, 0.5)
cuttings = st.sampled_from([(DOWN,), (ACROSS,), (SLANTING,), (DOWN, ACROSS)])


def parts(outline: Path, cuts: tuple[StraightLine, ...], seam: float) -> list[Region]:
    """Cut an outline, take a seam off along every cut, and bring each part back to where it was drawn."""
    pieces = [(Region((outline,)), 0j)]
    for cut in cuts:
        pieces = [
            (keep_left(region, line.moved_left(seam)), back - line.direction * 1j * seam)
            for region, back in pieces
            for line in (cut, cut.reversed())
        ]
    return [shift(back).region(region) for region, back in pieces]


def assert_law(wanted: Path, cuts: tuple[StraightLine, ...], seam: float) -> None:
    traced = spread(wanted, cuts, seam)
    assert traced.is_closed()
    for sewn, true in zip(parts(traced, cuts, seam), parts(wanted, cuts, 0.0), strict=True):
        assert difference_area(sewn, true) == pytest.approx(0, abs=1e-9)


@given(outlines(), cuttings, seams)
def test_any_outline_spread_cut_seamed_and_rejoined_is_itself(
    wanted: Path, cuts: tuple[StraightLine, ...], seam: float
) -> None:
    assert_law(wanted, cuts, seam)


@pytest.mark.parametrize("turn", range(4))
@pytest.mark.parametrize("name", OUTLINES)
def test_every_outline_of_the_trade_keeps_the_law(name: str, turn: int) -> None:
    for cuts in ((DOWN,), (ACROSS,), (DOWN, ACROSS)):
        assert_law(outline_path(name, 4, turn, lobes=7), cuts, 0.25)


@given(outlines(), cuttings, seams)
def test_flats_and_area_are_those_of_the_strips_between_the_parts(
    wanted: Path, cuts: tuple[StraightLine, ...], seam: float
) -> None:
    assert spread(wanted, cuts, seam).area() > wanted.area()
    assert spread(wanted, cuts, seam).length() > wanted.length()


@given(st.floats(0.8, 10), seams)
def test_a_circle_spread_both_ways_is_the_sweep_of_its_disc_over_a_square(radius: float, seam: float) -> None:
    assert same_outline(spread(circle(radius), (DOWN, ACROSS), seam), spread_circle(radius, seam))


@pytest.mark.parametrize("name", OUTLINES)
def test_a_spread_outline_is_two_seams_wider_and_higher_and_its_middle_stays(name: str) -> None:
    before, after = outline_path(name, 4), spread(outline_path(name, 4), (DOWN, ACROSS), 0.25)
    assert path_bounds(after).width == pytest.approx(path_bounds(before).width + 0.5)
    assert path_bounds(after).height == pytest.approx(path_bounds(before).height + 0.5)
    assert abs(path_bounds(after).centre) < 1e-9
