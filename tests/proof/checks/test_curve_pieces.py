"""Each check of the curve that may be sewn fires on its fault, and lets its near miss pass."""

from __future__ import annotations

from dataclasses import replace
from functools import cache

import pytest

from quarterturn.blocks import pieced_pair
from quarterturn.geometry import Arc, Region, as_polygon
from quarterturn.pieces import curve_bill
from quarterturn.proof import Pattern
from tests.proof.checks.sound import Spoil, found, recipe, text

FLOWING = recipe('finished = \'4"\'\nshape = { flow = true }\ncurve = "sewn true"\npieced = true')


@cache
def pieced() -> Pattern:
    return text(FLOWING)()


def with_shape(size: str, curve: str = "as drawn") -> Spoil:
    return text(recipe(f'finished = \'4"\'\nshape = {{ {size} }}\ncurve = "{curve}"\npieced = true'))


def a_larger_unit() -> Pattern:
    """Return the pattern with a unit whose shape is drafted with another radius than the design has."""
    blocks = with_shape("radius = '2 1/4\"'", "sewn true")().blocks
    return replace(pieced(), blocks=blocks)


def one_unit_fewer() -> Pattern:
    first, *others = pieced().bill.masters
    units = tuple(replace(unit, needed=unit.needed - 1) for unit in first.units)
    masters = (replace(first, units=units), *others)
    return replace(pieced(), bill=replace(pieced().bill, masters=masters))


FIRES: dict[str, Spoil] = {
    "curve-unsewable": with_shape("diameter = '3/4\"'"),
    "curve-pieces-wrong": a_larger_unit,
    "curve-arms-narrow": with_shape("radius = '3 5/8\"'", "sewn true"),
    "curves-miscounted": one_unit_fewer,
}
PASSES: dict[str, Spoil] = {
    "curve-unsewable": with_shape("diameter = '2\"'"),
    "curve-pieces-wrong": with_shape("diameter = '6\"'"),
    "curve-arms-narrow": with_shape("radius = '3 1/2\"'", "sewn true"),
    "curves-miscounted": pieced,
}


@pytest.mark.parametrize("code", FIRES)
def test_fires(code: str) -> None:
    assert found(code, FIRES[code]())


@pytest.mark.parametrize("code", PASSES)
def test_a_near_miss_passes(code: str) -> None:
    assert found(code, PASSES[code]()) == []


@pytest.mark.parametrize("curve", ["as drawn", "sewn true"])
def test_the_two_cutting_arcs_differ_by_two_seams_about_one_centre(curve: str) -> None:
    """Published: finished radius + 1/4" and − 1/4", so 1/2" apart (a maker's page of 14 October 2020)."""
    pair = pieced_pair(with_shape("diameter = '6\"'", curve)().blocks.masters[0])
    assert pair
    assert pair.disc_radius - pair.surround_radius == pytest.approx(0.5)
    assert pair.disc_radius - pair.seam_arc.radius == pytest.approx(0.25)
    centres = {
        complex(round(s.centre.real, 9), round(s.centre.imag, 9))
        for path in (pair.disc, pair.surround)
        for s in path.segments
        if isinstance(s, Arc)
    }
    assert len(centres) == 1


def test_three_inches_of_radius_in_a_four_inch_block_are_cut_from_the_traditional_squares() -> None:
    """A 3" quarter disc in a 4" block: squares of 3 1/4" and 4 1/2" as cut (a tool maker pairs 3 1/2" and 4 1/2")."""
    pattern = with_shape("radius = '3\"'", "sewn true")()
    curves = curve_bill(pattern.design, pattern.blocks, pattern.bill)
    assert curves
    first = curves.counts[0]
    assert float(curves.piece(first.surround).length) == 4.5
    assert float(curves.piece(first.disc).length) == 3.5
    pair = pieced_pair(pattern.blocks.masters[0])
    assert pair
    assert pair.disc_radius == pytest.approx(3.25)


def test_disc_and_surround_inside_their_seams_fill_the_unit() -> None:
    pair = pieced_pair(pieced().blocks.masters[0])
    assert pair
    areas = [
        as_polygon(Region((path,))).buffer(-0.25, join_style="mitre", quad_segs=200).area
        for path in (pair.disc, pair.surround)
    ]
    assert sum(areas) == pytest.approx(16.0, abs=1e-3)
