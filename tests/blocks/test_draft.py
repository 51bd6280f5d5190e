"""Masters are cut into the units that the method gives."""

from __future__ import annotations

import math
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.blocks import GROUND, SHAPE, Master, draft_master, side_spans
from quarterturn.design import (
    Curve,
    DrawnDiameter,
    FinishedRadius,
    PathsFlow,
    ShapeSize,
    default_making,
    one_shape_cut_both_ways,
)
from quarterturn.geometry import disc, region_bounds, same_region
from quarterturn.measure import Length, Units, inches, mm

MAKING = default_making(Units.INCH)
S = 0.25


def master(
    finished: Length, size: ShapeSize, curve: Curve = Curve.AS_DRAWN, trim: Length = Fraction(0)
) -> Master:
    """Draft a recipe from its numbers."""
    start = 2 * (finished + 2 * MAKING.seam) + trim
    return draft_master(one_shape_cut_both_ways("round", finished, start, trim, size, curve), MAKING)


def test_a_nine_and_a_half_inch_square_with_a_seven_inch_circle() -> None:
    """Check value 14.1 (common practice, no source): the square, cut both ways at 4 3/4"."""
    made = master(inches(4, 1, 4), DrawnDiameter(inches(7)))
    assert made.side == inches(9, 1, 2)
    assert made.per_master() == 4
    assert made.units[0].cut_side == inches(4, 3, 4)
    assert made.facts.clearance == pytest.approx(1.25)
    assert made.facts.crossing == pytest.approx(3.2411, abs=5e-5)
    assert made.facts.diagonal == pytest.approx(3.1464, abs=5e-5)
    assert made.facts.peak == pytest.approx(8.19, abs=5e-3)


def test_a_six_inch_square_gives_units_trimmed_to_two_and_a_half() -> None:
    """Check value 14.2 (common practice, no source)."""
    made = master(inches(2), DrawnDiameter(inches(2, 1, 2)), trim=inches(1))
    assert (made.side, made.units[0].cut_side, made.units[0].side) == (inches(6), inches(2, 1, 2), inches(2))


def test_a_twelve_inch_square_trimmed_on_the_outer_sides_only() -> None:
    """Twelve-inch square with a centred 6" circle, quartered, trimmed to 5 1/2" (QUILTsocial, Fall 2014, p. 15)."""
    made = master(inches(5), DrawnDiameter(inches(6)), trim=inches(1))
    assert made.side == inches(12)
    assert made.units[0].cut_side == inches(5, 1, 2)
    shape = next(layer for layer in made.units[0].cut_layers if layer.part == SHAPE)
    box = region_bounds(shape.region)
    assert (box.left, box.right) == pytest.approx((-0.25, 2.75))


def test_circles_of_a_published_circle_quilt() -> None:
    """5 3/4" circle quartered for 6" cut units: "Circle Fun" (pastimesquiltdesign.blogspot.com, 16 March 2012)."""
    made = master(inches(5, 1, 2), DrawnDiameter(inches(5, 3, 4)), trim=inches(0, 1, 2))
    assert made.units[0].cut_side == 6
    assert made.facts.crossing == pytest.approx(2.6141, abs=5e-5)


@pytest.mark.parametrize(
    ("diameter", "across", "diagonal", "peak"),
    [
        ("2", 1.44, 1.29, 29),
        ("3", 2.46, 2.29, 19),
        ("4", 3.47, 3.29, 14),
        ("8", 7.48, 7.29, 7.2),
        ("10", 9.49, 9.29, 5.7),
    ],
)
def test_seams_eat_the_curve(diameter: str, across: float, diagonal: float, peak: float) -> None:
    """The closed forms, tabled for s = 1/4": a = √(r²−s²) − s, d = r − s√2, peak 2·asin(s/r)."""
    facts = master(inches(6), DrawnDiameter(inches(diameter))).facts
    assert 2 * facts.crossing == pytest.approx(across, abs=6e-3)
    assert 2 * facts.diagonal == pytest.approx(diagonal, abs=6e-3)
    assert facts.peak == pytest.approx(peak, abs=0.5)


@pytest.mark.parametrize(
    ("finished", "diameter"),
    [("2", 2.55), ("5/2", 3.04), ("3", 3.54), ("7/2", 4.03), ("4", 4.53), ("5", 5.52), ("6", 6.52)],
)
def test_paths_that_flow_meet_the_middle_of_the_side(finished: str, diameter: float) -> None:
    """r = hypot(u/2 + s, s), tabled for s = 1/4" (own arithmetic)."""
    made = master(inches(finished), PathsFlow())
    assert made.shape.width == pytest.approx(diameter, abs=6e-3)
    assert made.facts.crossing == pytest.approx(float(inches(finished)) / 2)


def test_metric_paths_that_flow() -> None:
    """8 cm units with 0.75 cm seams want a circle of 9.62 cm (own arithmetic)."""
    making = default_making(Units.METRIC)
    recipe = one_shape_cut_both_ways("round", mm(80), mm(190), mm(0), PathsFlow(), Curve.AS_DRAWN)
    width = draft_master(recipe, making).shape.width * 25.4
    assert width == pytest.approx(96.2, abs=0.05)


SIZES = st.fractions(min_value=1, max_value=8, max_denominator=8)


@given(SIZES, st.floats(0.2, 1.0))
def test_sewn_true_gives_the_finished_circle(finished: Length, share: float) -> None:
    """The sewn unit shows a true quarter disc: same outline, so no area differs; and there is no peak."""
    radius = Fraction(round(float(finished) * share * 64) + 8, 64)
    if radius > finished:
        return
    made = master(finished, FinishedRadius(radius), Curve.SEWN_TRUE)
    shape = next(layer.region for layer in made.units[0].sewn_layers if layer.part == SHAPE)
    whole = disc(float(radius)).paths[0]
    assert shape.area() == pytest.approx(math.pi * float(radius) ** 2 / 4, abs=1e-9)
    assert made.facts.peak == pytest.approx(0, abs=1e-5)
    assert made.facts.crossing == pytest.approx(float(radius))
    assert whole.area() / 4 == pytest.approx(shape.area())


@given(SIZES, st.fractions(min_value=1, max_value=4, max_denominator=8), st.sampled_from(Curve))
def test_units_and_trimmings_add_up_to_the_master(finished: Length, diameter: Length, curve: Curve) -> None:
    if diameter / 2 > finished + MAKING.seam:
        return
    made = master(finished, DrawnDiameter(diameter), curve, trim=inches(0, 1, 2))
    ground = next(layer for layer in made.units[0].cut_layers if layer.part == GROUND).region
    trimmed = (float(made.side) / 2) ** 2 - float(made.units[0].cut_side) ** 2
    assert 4 * (ground.area() + trimmed) == pytest.approx(float(made.side) ** 2)
    shape = next(layer for layer in made.units[0].cut_layers if layer.part == SHAPE).region
    assert 4 * shape.area() == pytest.approx(made.shape.traced.area(), rel=1e-9)


def test_one_square_gives_four_equal_units_by_congruence() -> None:
    made = master(inches(3), DrawnDiameter(inches(4)))
    assert [part.unit for part in made.parts] == [0, 0, 0, 0]
    quarters = {round(part.motion.factor.real) + 1j * round(part.motion.factor.imag) for part in made.parts}
    assert quarters == {1, 1j, -1, -1j}


def test_sides_of_a_turned_unit_turn_with_it() -> None:
    unit = master(inches(4), PathsFlow()).units[0]
    straight, turned = side_spans(unit, 0), side_spans(unit, 1)
    assert [s.part for s in straight["top"]] == [SHAPE, GROUND]
    assert [s.part for s in turned["top"]] == [GROUND, SHAPE]
    assert [s.part for s in turned["right"]] == [SHAPE, GROUND]
    assert [s.part for s in turned["bottom"]] == [GROUND]


def test_a_small_shape_is_not_hollowed() -> None:
    assert master(inches(2), DrawnDiameter(inches(0, 7, 8))).shape.ring_in.is_empty()
    assert not master(inches(2), DrawnDiameter(inches(2))).shape.ring_in.is_empty()


def test_the_ring_of_a_seven_inch_circle() -> None:
    """Check value 14.5 (common practice, no source): ring 1/2" wide, the saved centre 6 1/2" across."""
    shape = master(inches(4, 1, 4), DrawnDiameter(inches(7))).shape
    assert same_region(shape.ring_out, disc(3.75))
    assert same_region(shape.ring_in, disc(3.25))
