"""Parallel outlines: the lines of a web ring, the line of a cut-away, the inset of a seam allowance."""

from __future__ import annotations

import cmath
import math
from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING, TypeVar

from quarterturn.geometry.compare import merged
from quarterturn.geometry.cut import keep_left, line_through
from quarterturn.geometry.flatten import flatten_path
from quarterturn.geometry.paths import Path, Region
from quarterturn.geometry.polygons import FLATTENING, as_polygon, from_polygons, uncovered_area, without
from quarterturn.geometry.segments import EPSILON, Arc, Cubic, Line, Point, Segment, cross

if TYPE_CHECKING:
    from shapely.geometry.base import BaseGeometry

_S = TypeVar("_S")


def offset_path(path: Path, by: float) -> Region:
    """Return the region inside a positive path moved outwards by `by`, or inwards where `by` is below zero.

    Corners are rounded outwards. Exact where every segment has an exact parallel (lines and arcs) and no part
    swallows another; else the path is flattened to FLATTENING and offset as a polygon. May be empty.
    """
    if by == 0:
        return Region((path,))
    path = merged(path)
    convex = _is_convex(path)
    if by < 0 and convex and path.is_straight():
        return _inset_convex(path, -by)
    exact = _parallel(path, by)
    if exact and (convex or _is_outline(exact, path, by)):
        return Region((exact,))
    return from_polygons(_buffered(path, by))


def offset_region(region: Region, by: float) -> Region:
    """Return a region of one outline, with or without holes, widened by `by` all round, or narrowed below zero.

    Its outline moves outwards and its holes inwards. Exact as `offset_path` is; where a hole then reaches the
    outline, what is left is flattened. May be empty.
    """
    (outline,) = (p for p in region.paths if p.area() > 0)
    whole = offset_path(outline, by)
    holes = [path for p in region.paths if p.area() < 0 for path in offset_path(p.reversed(), -by).paths]
    inside = Region(tuple(holes))
    if not holes or whole.is_empty():
        return whole
    if uncovered_area(inside, [whole]) < FLATTENING:
        return Region((*whole.paths, *(path.reversed() for path in holes)))
    return from_polygons(without(as_polygon(whole), as_polygon(inside)))


def _inset_convex(path: Path, by: float) -> Region:
    region = Region((path,))
    for segment in path.segments:
        region = keep_left(region, line_through(segment.start, segment.end).moved_left(by))
    return region


def _is_convex(path: Path) -> bool:
    """Tell whether a path never turns to the other side, and turns once in all.

    Then its parallel is sound as far as every arc has one: outside always, and inside up to the smallest
    radius where it has no corners (Blaschke's rolling theorem).
    """
    turns: list[float] = []
    for segment, following in _neighbours(path.segments):
        if isinstance(segment, Cubic):
            return False
        turns.append(cmath.phase(following.tangent(0) / segment.tangent(1)))
        if isinstance(segment, Arc):
            turns.append(segment.sweep)
    return min(turns, default=-1.0) > -EPSILON and sum(turns) < math.tau + EPSILON * len(turns)


def _is_outline(exact: Path, path: Path, by: float) -> bool:
    """Tell whether an exact parallel neither crosses itself nor comes too near to another part of the path."""
    import shapely

    ring = shapely.Polygon([(p.real, p.imag) for p in flatten_path(exact, FLATTENING)])
    if not ring.is_valid:
        return False
    moved, slack = _buffered(path, by), FLATTENING * (path.length() + exact.length())
    return bool(max(without(ring, moved).area, without(moved, ring).area) < slack)


def _neighbours(segments: Sequence[_S]) -> Iterator[tuple[_S, _S]]:
    """Return each segment with the one behind it, once round."""
    return zip(segments, (*segments[1:], *segments[:1]), strict=True)


def _parallel(path: Path, by: float) -> Path | None:
    """Return the exact parallel path, or None where some segment has none or the corners do not allow it."""
    moved = [_parallel_segment(s, by) for s in path.segments]
    parts: list[Segment] = []
    for index, (segment, following) in enumerate(_neighbours(moved)):
        if segment is None or following is None:
            return None
        parts.append(segment)
        if abs(segment.end - following.start) < EPSILON:
            continue
        joint = _rounded_corner(path.segments[index].end, segment.end, following.start, by)
        if joint is None:
            return None
        parts.append(joint)
    return Path(tuple(parts))


def _parallel_segment(segment: Segment, by: float) -> Segment | None:
    match segment:
        case Line(start, end):
            out = -1j * (end - start) / abs(end - start) * by
            return Line(start + out, end + out)
        case Arc(centre, radius, start_angle, sweep):
            grown = radius + (by if sweep > 0 else -by)
            return Arc(centre, grown, start_angle, sweep) if grown > EPSILON else None
        case Cubic():
            return None


def _rounded_corner(corner: Point, before: Point, after: Point, by: float) -> Arc | None:
    """Return the arc round a corner that opens when moved; None where the two parallels cross instead."""
    start, end = before - corner, after - corner
    if cross(start, end) * by <= 0:
        return None
    return Arc(corner, abs(by), cmath.phase(start), cmath.phase(end / start))


def _buffered(path: Path, by: float) -> BaseGeometry:
    """Return the flattened path moved, as a shapely geometry, with corners as round as FLATTENING asks."""
    steps = max(8, math.ceil(math.pi / 4 / math.acos(1 - min(0.5, FLATTENING / abs(by)))))
    return as_polygon(Region((path,))).buffer(by, quad_segs=steps)
