"""Spread a drawing over several pages: overlapping windows, join lines, numbered diamonds, and the key.

Neighbouring windows share a band of OVERLAP. Its middle is the join line, on which both pages have the same
numbered diamonds: cut one page along the line, lay it on the other, and the halves meet.
"""

from __future__ import annotations

import cmath
import dataclasses
import math
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from quarterturn.geometry import (
    EPSILON,
    Bounds,
    Line,
    Path,
    Point,
    Region,
    Segment,
    keep_left,
    line_through,
    polygon,
    rectangle,
    shift,
)
from quarterturn.publish.lettering import text_width
from quarterturn.publish.paper import INK, SMALLEST
from quarterturn.publish.pens import moved
from quarterturn.publish.sheet import Area, Ink, Mark, Scale, Stroke, Text

OVERLAP = 10.0
"""Width of the band that neighbours share, in millimetres (usual for home printing, from memory)."""

JOIN = Ink(None, "#cfcfcd", 1.4)
"""Wide enough to be seen on both sides of a line of the drawing that runs along it."""
_DIAMOND = 3.2
_SHARES = (0.25, 0.3, 0.2, 0.35, 0.15, 0.4, 0.1, 0.45)
"""Where along a join line its first diamond may lie, the best place first; the second one from the other end."""
_CLEAR = 9.0
"""Millimetres from the middle of a diamond within which a line would run into it or its numbers."""
_PAPER_INK = Ink("#ffffff", INK, 0.2)
_SMALL = Ink(None, "#9a9a98", 0.2)
_HERE = Ink("#c9c9c7", INK, 0.15)


@dataclass(frozen=True, slots=True)
class Tile:
    """A window on the drawing, which becomes a page."""

    row: int
    column: int
    window: Bounds


@dataclass(frozen=True, slots=True)
class Tiling:
    """All windows of a drawing, row by row."""

    rows: int
    columns: int
    tiles: tuple[Tile, ...]

    def neighbour(self, tile: Tile, down: int, right: int) -> Tile | None:
        """Return the tile so many rows down and columns to the right, where there is one."""
        row, column = tile.row + down, tile.column + right
        if 0 <= row < self.rows and 0 <= column < self.columns:
            return self.tiles[row * self.columns + column]
        return None


def tiling(extent: tuple[float, float], room: tuple[float, float]) -> Tiling:
    """Return equal windows that cover a drawing about the origin, none larger than the room of a page."""
    across, down = (_stretches(size, space) for size, space in zip(extent, room, strict=True))
    tiles = tuple(
        Tile(row, column, Bounds(left, top, right, bottom))
        for row, (top, bottom) in enumerate(down)
        for column, (left, right) in enumerate(across)
    )
    return Tiling(len(down), len(across), tiles)


def _stretches(size: float, room: float) -> list[tuple[float, float]]:
    assert room > OVERLAP, "a page has room beyond the overlap"
    count = 1 if size <= room else math.ceil((size - OVERLAP) / (room - OVERLAP))
    length = (size + (count - 1) * OVERLAP) / count
    starts = [-size / 2 + k * (length - OVERLAP) for k in range(count)]
    return [(start, start + length) for start in starts]


def seen_through(window: Bounds, marks: Iterable[Mark]) -> Iterator[Mark]:
    """Return what a window shows: lines are cut at its edge, lettering shows wholly or not at all."""
    for mark in marks:
        match mark:
            case Area(region, ink):
                yield from _area_within(window, region, ink)
            case Stroke(segments, ink):
                yield from (Stroke((part,), ink) for s in segments for part in _line_within(window, s))
            case Text():
                if _holds_text(window, mark):
                    yield mark
            case _:
                raise AssertionError("symbols are not tiled")


def _area_within(window: Bounds, region: Region, ink: Ink) -> Iterator[Mark]:
    kept = region
    for a, b in _edges(window):
        kept = keep_left(kept, line_through(a, b))
    if kept.is_empty():
        return
    if ink.fill:
        yield Area(kept, dataclasses.replace(ink, stroke=None))
    if ink.stroke:
        outline = dataclasses.replace(ink, fill=None)
        yield from (Stroke(run, outline) for path in kept.paths for run in _runs(path, window))


def _edges(window: Bounds) -> list[tuple[Point, Point]]:
    corners = rectangle(window.left, window.top, window.right, window.bottom).corners()
    return list(zip(corners, (*corners[1:], corners[0]), strict=True))


def _runs(path: Path, window: Bounds) -> Iterator[tuple[Segment, ...]]:
    """Return the stretches of a cut path that are its own, not the window's edge."""
    own = [not _on_edge(s, window) for s in path.segments]
    if all(own):
        yield path.segments
        return
    first = own.index(False)
    run: list[Segment] = []
    for index in [*range(first, len(own)), *range(first)]:
        if own[index]:
            run.append(path.segments[index])
        elif run:
            yield tuple(run)
            run = []
    if run:
        yield tuple(run)


def _on_edge(segment: Segment, window: Bounds) -> bool:
    if not isinstance(segment, Line):
        return False
    a, b = segment.start, segment.end
    upright = any(max(abs(a.real - x), abs(b.real - x)) < 1e3 * EPSILON for x in (window.left, window.right))
    return upright or any(
        max(abs(a.imag - y), abs(b.imag - y)) < 1e3 * EPSILON for y in (window.top, window.bottom)
    )


def _line_within(window: Bounds, segment: Segment) -> Iterator[Line]:
    """Return the part of a straight segment in a window (by the method of Liang and Barsky)."""
    assert isinstance(segment, Line), "only straight strokes are tiled"
    near, far = 0.0, 1.0
    for a, b in _edges(window):
        inward = (b - a) / abs(b - a) * 1j
        start, end = (_dot(inward, p - a) for p in (segment.start, segment.end))
        if start < 0 and end < 0:
            return
        if start < 0 or end < 0:
            at = start / (start - end)
            near, far = (max(near, at), far) if start < 0 else (near, min(far, at))
    if near < far:
        yield segment.part(near, far)


def _dot(a: Point, b: Point) -> float:
    return a.real * b.real + a.imag * b.imag


def _holds_text(window: Bounds, text: Text) -> bool:
    """Tell whether a window holds a text wholly, whichever way it is turned and anchored."""
    width = text_width(text.text, text.size, bold=text.bold)
    ends = {"start": (0.0, width), "middle": (-width / 2, width / 2), "end": (-width, 0.0)}[text.anchor]
    turned = cmath.rect(1, math.radians(text.turn))
    corners = [text.at + turned * complex(x, y) for x in ends for y in (-text.size, text.size / 3)]
    return all(
        window.left <= c.real <= window.right and window.top <= c.imag <= window.bottom for c in corners
    )


def join_marks(tiles: Tiling, tile: Tile, drawn: Sequence[Point] = ()) -> Iterator[Mark]:
    """Return the join lines of a tile and the diamonds on them, clear of points of the drawing where they can be."""
    for down, right in ((-1, 0), (0, -1), (0, 1), (1, 0)):
        other = tiles.neighbour(tile, down, right)
        if other:
            first = min(tile, other, key=lambda t: (t.row, t.column))
            number = _first_number(tiles, first, upright=bool(right))
            yield from _join(_shared(tile.window, other.window), number, drawn, upright=bool(right))


def _shared(a: Bounds, b: Bounds) -> Bounds:
    """Return the band that two neighbours share."""
    return Bounds(max(a.left, b.left), max(a.top, b.top), min(a.right, b.right), min(a.bottom, b.bottom))


def _first_number(tiles: Tiling, tile: Tile, *, upright: bool) -> int:
    """Return the number of the first of two diamonds on the right (or lower) join line of a tile."""
    upright_joins = tiles.rows * (tiles.columns - 1)
    if upright:
        return 2 * (tile.row * (tiles.columns - 1) + tile.column) + 1
    return 2 * (upright_joins + tile.row * tiles.columns + tile.column) + 1


def _join(band: Bounds, number: int, drawn: Sequence[Point], *, upright: bool) -> Iterator[Mark]:
    half = complex(0, band.height / 2) if upright else complex(band.width / 2, 0)
    start, end = band.centre - half, band.centre + half
    near = [p for p in drawn if band.left <= p.real <= band.right and band.top <= p.imag <= band.bottom]
    yield Stroke((Line(start, end),), JOIN)
    for index, shares in enumerate((_SHARES, tuple(1 - share for share in _SHARES))):
        at = _clearest([start + (end - start) * share for share in shares], near)
        yield from _diamond(at, number + index, upright=upright)


def _clearest(places: Sequence[Point], near: Sequence[Point]) -> Point:
    """Return the first place that is clear of all points, or else the one that is furthest from them."""

    def room(place: Point) -> float:
        return min((abs(place - point) for point in near), default=_CLEAR)

    return next((place for place in places if room(place) >= _CLEAR), max(places, key=room))


def _diamond(at: Point, number: int, *, upright: bool) -> Iterator[Mark]:
    """Return a diamond cut in half by its join line, its number on both halves' sides."""
    corners = (at - _DIAMOND * 1j, at + _DIAMOND, at + _DIAMOND * 1j, at - _DIAMOND)
    yield Area(Region((polygon(corners),)), _PAPER_INK)
    line = (corners[0], corners[2]) if upright else (corners[3], corners[1])
    yield Stroke((Line(*line),), JOIN)
    places = (-2.7 - 3.4j, 2.7 - 3.4j) if upright else (5.4 - 1.3j, 5.4 + 3.2j)
    yield from (Text(at + place, str(number), SMALLEST + 0.1, "middle", bold=True) for place in places)


def key_marks(tiles: Tiling, here: Tile, outline: Path, box: Bounds, first_page: int) -> Iterator[Mark]:
    """Return a small map of the tiles in a box: which one this is, and on which page each is found."""
    whole = (tiles.tiles[0].window, tiles.tiles[-1].window)
    width, height = whole[1].right - whole[0].left, whole[1].bottom - whole[0].top
    factor = min(box.width / width, (box.height - 4.5) / height)
    yield Text(complex(box.left, box.top + 2.4), "this page is grey", SMALLEST)
    middle = complex(box.left + width * factor / 2, box.top + 4.5 + height * factor / 2)
    cells = [tuple(middle + factor * corner for corner in _cell(tiles, tile)) for tile in tiles.tiles]
    for tile, (low, high) in zip(tiles.tiles, cells, strict=True):
        path = rectangle(low.real, low.imag, high.real, high.imag)
        yield Area(Region((path,)), _HERE if tile is here else dataclasses.replace(_HERE, fill=None))
    yield Area(Scale(factor, middle).region(Region((outline,))), _SMALL)
    for page, (low, high) in enumerate(cells, first_page):
        if min((high - low).real, (high - low).imag) > 3.5:
            yield Text((low + high) / 2 + 0.9j, str(page), SMALLEST, "middle")


def _cell(tiles: Tiling, tile: Tile) -> tuple[Point, Point]:
    """Return the corners of a tile as cut along its join lines."""
    trims = (
        OVERLAP / 2 if tile.column else 0.0,
        OVERLAP / 2 if tile.row else 0.0,
        OVERLAP / 2 if tile.column < tiles.columns - 1 else 0.0,
        OVERLAP / 2 if tile.row < tiles.rows - 1 else 0.0,
    )
    window = tile.window
    low = complex(window.left + trims[0], window.top + trims[1])
    return low, complex(window.right - trims[2], window.bottom - trims[3])


def placed(tile: Tile, room: Bounds, marks: Sequence[Mark]) -> tuple[Mark, ...]:
    """Return a tile's marks laid in the middle of the room of a page."""
    motion = shift(room.centre - tile.window.centre)
    return tuple(moved(mark, motion) for mark in marks)
