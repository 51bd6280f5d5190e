"""Drawings spread over pages."""

from __future__ import annotations

import math
from collections.abc import Sequence

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.geometry import Bounds, Line, disc, rectangle
from quarterturn.geometry import Region as Cloth
from quarterturn.publish import Area, Ink, Stroke, Text
from quarterturn.publish.tiles import OVERLAP, Tiling, join_marks, seen_through, tiling

SOLID = Ink(None, "#000000", 0.25)
WINDOW = Bounds(0, 0, 100, 80)

sizes = st.floats(min_value=1, max_value=3000)
rooms = st.floats(min_value=60, max_value=260)


def seen_length(window: Bounds, *marks: Area | Stroke) -> float:
    strokes = (mark for mark in seen_through(window, marks) if isinstance(mark, Stroke))
    return sum(segment.length() for stroke in strokes for segment in stroke.segments)


@given(width=sizes, height=sizes, across=rooms, down=rooms)
def test_windows_cover_the_drawing_overlap_by_a_band_and_fit_the_page(
    width: float, height: float, across: float, down: float
) -> None:
    tiles = tiling((width, height), (across, down))
    first, last = tiles.tiles[0].window, tiles.tiles[-1].window
    assert (first.left, first.top) == pytest.approx((-width / 2, -height / 2))
    assert (last.right, last.bottom) == pytest.approx((width / 2, height / 2))
    for tile in tiles.tiles:
        assert tile.window.width <= across + 1e-6
        assert tile.window.height <= down + 1e-6
        right = tiles.neighbour(tile, 0, 1)
        if right:
            assert tile.window.right - right.window.left == pytest.approx(OVERLAP)


def test_no_more_pages_than_needed() -> None:
    assert len(tiling((190, 190), (190, 195)).tiles) == 1
    assert len(tiling((368.8, 368.8), (190, 195)).tiles) == 4
    assert len(tiling((371, 368.8), (190, 195)).tiles) == 6


def test_an_outline_is_cut_at_the_window_and_the_windows_edge_is_not_drawn() -> None:
    region = Cloth((rectangle(50, 40, 150, 120),))
    assert seen_length(WINDOW, Area(region, SOLID)) == pytest.approx(50 + 40)


def test_the_parts_of_a_circle_seen_through_windows_add_up_to_the_whole() -> None:
    radius = 177.8
    tiles = tiling((2 * radius, 2 * radius), (190, 195))
    circle = Area(disc(radius), SOLID)
    seen = sum(seen_length(tile.window, circle) for tile in tiles.tiles)
    twice = 4 * 2 * math.asin(OVERLAP / 2 / radius) * radius
    assert seen == pytest.approx(math.tau * radius + twice)


def test_a_whole_outline_stays_whole() -> None:
    [mark] = seen_through(WINDOW, [Area(disc(10, 50 + 40j), SOLID)])
    assert isinstance(mark, Stroke)
    assert mark.segments == disc(10, 50 + 40j).paths[0].segments


def test_a_fill_is_cut_with_its_outline() -> None:
    marks = list(
        seen_through(WINDOW, [Area(Cloth((rectangle(90, 70, 110, 90),)), Ink("#000000", "#000000"))])
    )
    assert isinstance(marks[0], Area)
    assert marks[0].region.area() == pytest.approx(100)
    assert marks[0].ink.stroke is None


@pytest.mark.parametrize(
    ("line", "length"),
    [
        (Line(-50 + 40j, 150 + 40j), 100),
        (Line(50 + 100j, 50 - 100j), 80),
        (Line(10 + 10j, 20 + 10j), 10),
        (Line(-10 - 10j, 10 + 10j), math.hypot(10, 10)),
        (Line(-10 + 10j, -5 + 70j), 0),
        (Line(-30 + 10j, 10 - 30j), 0),
    ],
)
def test_a_stroke_is_cut_at_the_window(line: Line, length: float) -> None:
    assert seen_length(WINDOW, Stroke((line,), SOLID)) == pytest.approx(length)


@pytest.mark.parametrize(
    ("text", "seen"),
    [
        (Text(50 + 40j, "moon", 4, "middle"), True),
        (Text(1 + 40j, "moon", 4, "middle"), False),
        (Text(1 + 40j, "moon", 4), True),
        (Text(99 + 40j, "moon", 4), False),
        (Text(99 + 40j, "moon", 4, "end"), True),
        (Text(5 + 76j, "moon", 4, turn=90), False),
        (Text(50 + 1j, "moon", 4), False),
    ],
)
def test_lettering_shows_wholly_or_not_at_all(text: Text, seen: bool) -> None:
    assert list(seen_through(WINDOW, [text])) == ([text] if seen else [])


def diamonds(tiles: Tiling, index: int, drawn: Sequence[complex] = ()) -> dict[str, complex]:
    """Return the middles of a tile's diamonds by number."""
    marks = list(join_marks(tiles, tiles.tiles[index], drawn))
    numbers = [mark.text for mark in marks if isinstance(mark, Text)][::2]
    middles = [sum(m.region.paths[0].corners()) / 4 for m in marks if isinstance(m, Area)]
    return dict(zip(numbers, middles, strict=True))


def test_neighbours_have_the_same_diamonds_at_the_same_places() -> None:
    tiles = tiling((500, 500), (190, 195))
    assert (tiles.rows, tiles.columns) == (3, 3)
    found = [diamonds(tiles, index) for index in range(9)]
    for number in map(str, range(1, 25)):
        places = [each[number] for each in found if number in each]
        assert len(places) == 2
        assert places[0] == pytest.approx(places[1])
    assert {number for each in found for number in each} == set(map(str, range(1, 25)))


def test_each_diamond_lies_in_the_overlap_of_its_two_pages() -> None:
    tiles = tiling((500, 500), (190, 195))
    for index, tile in enumerate(tiles.tiles):
        for middle in diamonds(tiles, index).values():
            assert tile.window.left + 4.9 < middle.real < tile.window.right - 4.9
            assert tile.window.top + 4.9 < middle.imag < tile.window.bottom - 4.9


def test_a_diamond_gives_way_to_the_drawing_on_both_pages_alike() -> None:
    tiles = tiling((370, 100), (190, 195))
    plain = diamonds(tiles, 0)
    line = [plain["1"] + 2, plain["2"]]
    moved = [diamonds(tiles, index, line) for index in (0, 1)]
    assert moved[0] == pytest.approx(moved[1])
    assert min(abs(place - point) for place in moved[0].values() for point in line) >= 9


def test_where_no_place_is_clear_the_clearest_is_taken() -> None:
    tiles = tiling((370, 100), (190, 195))
    crowd = [complex(0, y) for y in range(-50, 51)]
    assert set(diamonds(tiles, 0, crowd)) == {"1", "2"}


def test_a_single_page_has_no_joins() -> None:
    tiles = tiling((100, 100), (190, 195))
    assert list(join_marks(tiles, tiles.tiles[0])) == []
