"""Affine maps, and ellipses, which stay ellipses under them."""

from __future__ import annotations

import cmath
import itertools
import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.geometry import Affine, Arc, Cubic, Oval, Path
from quarterturn.geometry.affine import LONGEST_PIECE, mapped

numbers = st.integers(-12, 12).map(lambda quarters: quarters / 4)
maps = st.builds(Affine, *[numbers] * 6)
places = st.builds(complex, numbers, numbers)
ovals = st.builds(Oval, places, places, places, st.floats(-3, 3), st.floats(-6, 6))


@given(maps, maps, places)
def test_one_map_after_another_is_their_product(second: Affine, first: Affine, place: complex) -> None:
    assert second.after(first)(place) == pytest.approx(second(first(place)))


@given(maps, ovals, st.floats(0, 6))
def test_a_mapped_ellipse_runs_through_the_mapped_places(to: Affine, oval: Oval, angle: float) -> None:
    moved = mapped(oval, to)
    assert isinstance(moved, Oval)
    assert moved.at(angle) == pytest.approx(to(oval.at(angle)))


@given(ovals)
def test_the_segments_of_an_ellipse_follow_one_another_from_its_start_to_its_end(oval: Oval) -> None:
    parts = oval.segments()
    assert parts[0].start == pytest.approx(oval.start)
    assert parts[-1].end == pytest.approx(oval.end)
    assert all(abs(a.end - b.start) < 1e-12 for a, b in itertools.pairwise(parts))


def test_the_cubics_of_an_ellipse_keep_to_it_within_the_error_that_is_stated() -> None:
    oval = Oval(0j, 1 + 0j, 0.999j, 0.2, math.tau)
    worst = 0.0
    for cubic in oval.segments():
        assert isinstance(cubic, Cubic)
        points = [cubic.point(k / 64) for k in range(65)]
        worst = max(worst, *(abs(abs(complex(p.real, p.imag / 0.999)) - 1) for p in points))
    assert worst < 4e-7
    assert math.degrees(LONGEST_PIECE) == pytest.approx(30)


def test_a_whole_ellipse_has_the_area_of_one() -> None:
    path = Path(Oval(3 + 1j, 2 + 1j, -0.5 + 1j, 0.3, math.tau).segments())
    assert path.area() == pytest.approx(math.pi * 2.5, rel=1e-6)


@pytest.mark.parametrize("way", [1, -1])
def test_an_even_ellipse_is_an_arc_also_when_it_was_mirrored(way: int) -> None:
    first = cmath.rect(2, 0.7)
    oval = Oval(1j, first, first * 1j * way, 0.4, 1.5)
    (arc,) = oval.segments()
    assert isinstance(arc, Arc)
    for t in (0.0, 0.3, 1.0):
        assert arc.point(t) == pytest.approx(oval.at(0.4 + 1.5 * t))


def test_a_circle_stretched_and_pressed_back_is_an_arc_again() -> None:
    oval = Oval(5 + 5j, 3 + 0j, 3j, 0.0, 2.0)
    there, back = Affine(a=4), Affine(a=0.25)
    (arc,) = (mapped(mapped(oval, there), back)).segments()  # type: ignore[union-attr]
    assert isinstance(arc, Arc)
    assert arc.radius == pytest.approx(3)
