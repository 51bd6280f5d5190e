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
    seam_lines,
    shift,
    spread,
    spread_circle,
)
from tests.strategies.outlines import outlines

DOWN, ACROSS = StraightLine(0j, 1j), StraightLine(0j, -1 + 0j)
SLANTING = StraightLine(0j, cmath.rect(1, math.pi / 4))

RISING = StraightLine(0j, cmath.rect(1, -math.pi / 4))
OBLIQUE = StraightLine(0.5 + 0.25j, 0.6 + 0.8j)
BESIDE = StraightLine(1.25 + 0j, -1j)

seams = st.sampled_from([0.25, 0.5, 7.5 / 25.4]) | st.floats(0.01, 0.5)
cuttings = st.sampled_from(
    [
        (DOWN,),
        (ACROSS,),
        (SLANTING,),
        (OBLIQUE,),
        (DOWN, ACROSS),
        (SLANTING, RISING),
        (DOWN, SLANTING),
        (ACROSS, OBLIQUE),
        (DOWN, BESIDE),
        (BESIDE, ACROSS, DOWN),
    ]
)
places = st.sampled_from([0j, 1 + 0j, -2 + 1.5j, 4 - 3j]) | st.builds(
    complex, st.floats(-4, 4), st.floats(-4, 4)
)
"""Where the middle of an outline lies: on the crossing, on one cut, or beside all of them."""


def parts(outline: Path, cuts: tuple[StraightLine, ...], seam: float) -> list[Region]:
    """Cut an outline, take a seam off along every cut, and bring each part back to where it was drawn."""
    pieces: list[tuple[Region, tuple[int, ...]]] = [(Region((outline,)), ())]
    for cut in cuts:
        pieces = [
            (keep_left(region, line.moved_left(seam)), (*signs, sign))
            for region, signs in pieces
            for line, sign in ((cut, 1), (cut.reversed(), -1))
        ]
    moves = [each.move for each in seam_lines(cuts, seam)] if seam else [0j] * len(cuts)
    return [
        shift(-sum((move * sign for move, sign in zip(moves, signs, strict=True)), 0j)).region(region)
        for region, signs in pieces
    ]


def assert_law(wanted: Path, cuts: tuple[StraightLine, ...], seam: float) -> None:
    traced = spread(wanted, cuts, seam)
    assert traced.is_closed()
    meant = tuple(each.line for each in seam_lines(cuts, seam))
    for sewn, true in zip(parts(traced, cuts, seam), parts(wanted, meant, 0.0), strict=True):
        assert difference_area(sewn, true) == pytest.approx(0, abs=1e-9)


@given(outlines(), places, cuttings, seams)
def test_any_outline_anywhere_spread_cut_seamed_and_rejoined_is_itself(
    wanted: Path, place: complex, cuts: tuple[StraightLine, ...], seam: float
) -> None:
    assert_law(shift(place).path(wanted), cuts, seam)


@given(outlines(), cuttings, seams)
def test_what_lies_beside_every_cut_keeps_its_outline_and_moves_off(
    wanted: Path, cuts: tuple[StraightLine, ...], seam: float
) -> None:
    far = shift(40 + 170j).path(wanted)
    moved = spread(far, cuts, seam)
    off = moved.segments[0].start - far.segments[0].start
    assert same_outline(shift(off).path(far), moved)


def test_a_seam_takes_two_allowances_of_what_lies_between_it_and_the_next() -> None:
    """Two cuts 5" apart leave 4 1/2" between their seams of 1/4"."""
    cuts = (StraightLine(-2 + 0j, 1j), StraightLine(3 + 0j, -1j))
    left, right = (each.line.through.real for each in seam_lines(cuts, 0.25))
    assert (left, right) == pytest.approx((-1.75, 2.75))


def test_cuts_in_three_directions_cannot_be_spread_along() -> None:
    with pytest.raises(ValueError, match="two directions"):
        spread(circle(2), (DOWN, ACROSS, SLANTING), 0.25)


@pytest.mark.parametrize("turn", range(4))
@pytest.mark.parametrize("name", OUTLINES)
def test_every_outline_of_the_trade_keeps_the_law(name: str, turn: int) -> None:
    for cuts in ((DOWN,), (ACROSS,), (DOWN, ACROSS)):
        assert_law(outline_path(name, 4, turn, lobes=7), cuts, 0.25)


@given(outlines(), cuttings, seams)
def test_flats_and_area_are_those_of_the_strips_between_the_parts(
    wanted: Path, cuts: tuple[StraightLine, ...], seam: float
) -> None:
    whole = Region((wanted,))
    crossed = any(
        not keep_left(whole, each.line).is_empty() and not keep_left(whole, each.line.reversed()).is_empty()
        for each in seam_lines(cuts, seam)
    )
    grows = spread(wanted, cuts, seam)
    assert grows.area() > wanted.area() if crossed else grows.area() == pytest.approx(wanted.area())
    assert grows.length() > wanted.length() if crossed else grows.length() == pytest.approx(wanted.length())


@given(st.floats(0.8, 10), seams)
def test_a_circle_spread_both_ways_is_the_sweep_of_its_disc_over_a_square(radius: float, seam: float) -> None:
    assert same_outline(spread(circle(radius), (DOWN, ACROSS), seam), spread_circle(radius, seam))


@pytest.mark.parametrize("name", OUTLINES)
def test_a_spread_outline_is_two_seams_wider_and_higher_and_its_middle_stays(name: str) -> None:
    before, after = outline_path(name, 4), spread(outline_path(name, 4), (DOWN, ACROSS), 0.25)
    assert path_bounds(after).width == pytest.approx(path_bounds(before).width + 0.5)
    assert path_bounds(after).height == pytest.approx(path_bounds(before).height + 0.5)
    assert abs(path_bounds(after).centre) < 1e-9
