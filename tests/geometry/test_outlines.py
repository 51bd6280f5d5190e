"""Every outline is closed, positive, as wide as asked about its middle, and has its area in closed form."""

from __future__ import annotations

import math

import pytest

from quarterturn.geometry import (
    OUTLINES,
    Arc,
    Line,
    Path,
    Region,
    congruence,
    difference_area,
    mirror_across_vertical,
    outline_path,
    path_bounds,
    quarter_turns,
    same_outline,
)

HEART = 1 + math.sqrt(0.5)
"""Width of the heart round a square of side 1."""

AREAS = {
    "circle": math.pi / 4,
    "heart": (1 + math.pi / 4) / HEART**2,
    "leaf": 2 * (math.pi / 3 - math.sqrt(3) / 4),
    "petal": math.pi / 8 + math.pi / 3 - math.sqrt(3) / 4,
    "drop": math.sqrt(3) / 4 + math.pi / 6,
    "rounded square": 1 - (4 - math.pi) / 16,
}
HEIGHTS = {
    "heart": (1.5 * math.sqrt(0.5) + 0.5) / HEART,
    "leaf": math.sqrt(3),
    "petal": 0.5 + math.sqrt(3) / 2,
    "drop": 1.5,
}


def covers_itself(path: Path, moved: Path) -> bool:
    return difference_area(Region((path,)), Region((moved,))) < 1e-4


@pytest.mark.parametrize("name", OUTLINES)
def test_an_outline_is_closed_positive_and_as_wide_as_asked_about_its_middle(name: str) -> None:
    path = outline_path(name, 3.5)
    assert path.is_closed()
    assert path.area() > 0
    assert path_bounds(path).width == pytest.approx(3.5)
    assert abs(path_bounds(path).centre) < 1e-12


@pytest.mark.parametrize("name", AREAS)
def test_an_outline_has_its_area_in_closed_form(name: str) -> None:
    assert outline_path(name, 1).area() == pytest.approx(AREAS[name])
    assert outline_path(name, 3).area() == pytest.approx(9 * AREAS[name])


@pytest.mark.parametrize("name", HEIGHTS)
def test_an_outline_has_its_height(name: str) -> None:
    assert path_bounds(outline_path(name, 1)).height == pytest.approx(HEIGHTS[name])


@pytest.mark.parametrize("name", OUTLINES)
def test_an_outline_is_its_own_mirror_image(name: str) -> None:
    path = outline_path(name, 1)
    assert covers_itself(path, mirror_across_vertical().path(path))
    assert congruence(path, path, mirrored=True)


@pytest.mark.parametrize(
    ("name", "turns"),
    [
        ("circle", 1),
        ("rounded square", 1),
        ("scallop", 1),
        ("leaf", 2),
        ("heart", 4),
        ("petal", 4),
        ("drop", 4),
    ],
)
def test_an_outline_covers_itself_when_turned_as_often_as_stated(name: str, turns: int) -> None:
    path = outline_path(name, 1)
    covering = [k for k in range(1, 5) if covers_itself(path, quarter_turns(k).path(path))]
    assert covering == list(range(turns, 5, turns))


@pytest.mark.parametrize("lobes", [3, 4, 5, 6, 8, 12, 24])
def test_a_scallop_is_a_polygon_with_half_discs_on_its_sides(lobes: int) -> None:
    path = outline_path("scallop", 2, lobes=lobes)
    arcs = [s for s in path.segments if isinstance(s, Arc)]
    assert len(arcs) == len(path.segments) == lobes
    radius = arcs[0].radius
    polygon = lobes * radius**2 / math.tan(math.pi / lobes)
    assert path.is_closed()
    assert path.area() == pytest.approx(polygon + lobes * math.pi * radius**2 / 2)
    assert path_bounds(path).top == pytest.approx(min(a.centre.imag for a in arcs) - radius)


def test_the_point_of_a_heart_looks_down_and_its_dent_up() -> None:
    path = outline_path("heart", 2)
    lowest = max(path.corners(), key=lambda p: p.imag)
    assert lowest == pytest.approx(complex(0, path_bounds(path).bottom))
    straight = [s for s in path.segments if isinstance(s, Line)]
    assert len(straight) == 2
    assert all(s.length() == pytest.approx(2 / HEART) for s in straight)


def test_a_turn_brings_the_point_of_a_heart_from_below_to_the_left() -> None:
    left = min(outline_path("heart", 2, 1).corners(), key=lambda p: p.real)
    assert left.imag == pytest.approx(0)
    assert same_outline(outline_path("heart", 2, 4), outline_path("heart", 2))
