"""Parallel outlines: the lines of a web ring, the line of a cut-away, the inset of a seam allowance."""

from __future__ import annotations

import math

from quarterturn.geometry.compare import FLATTENING, as_polygon, from_polygons
from quarterturn.geometry.cut import keep_left, line_through
from quarterturn.geometry.paths import Path, Region
from quarterturn.geometry.segments import EPSILON, Arc, Cubic, Line, Point, Segment, cross


def offset_path(path: Path, by: float) -> Region:
    """Return the region inside a positive path moved outwards by `by`, or inwards where `by` is below zero.

    Corners are rounded outwards. Exact where every segment has an exact parallel (lines and arcs) and no part
    swallows another; else the path is flattened to FLATTENING and offset as a polygon. May be empty.
    """
    if by == 0:
        return Region((path,))
    if by < 0 and path.is_straight() and _is_convex(path):
        return _inset_convex(path, -by)
    exact = _parallel(path, by)
    return Region((exact,)) if exact else _offset_polygon(path, by)


def _inset_convex(path: Path, by: float) -> Region:
    region = Region((path,))
    for segment in path.segments:
        region = keep_left(region, line_through(segment.start, segment.end).moved_left(by))
    return region


def _is_convex(path: Path) -> bool:
    ways = [s.tangent(0) for s in path.segments]
    return all(cross(a, b) >= 0 for a, b in zip(ways, (*ways[1:], ways[0]), strict=True))


def _parallel(path: Path, by: float) -> Path | None:
    """Return the exact parallel path, or None where some segment has none or the corners do not allow it."""
    moved = [_parallel_segment(s, by) for s in path.segments]
    parts: list[Segment] = []
    for index, segment in enumerate(moved):
        following = moved[(index + 1) % len(moved)]
        if segment is None or following is None:
            return None
        parts.append(segment)
        if abs(segment.end - following.start) < EPSILON:
            continue
        corner = path.segments[index].end
        joint = _rounded_corner(corner, segment.end, following.start, by)
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
    turn = cross(before - corner, after - corner)
    if turn * by <= 0:
        return None
    start, end = before - corner, after - corner
    sweep = math.atan2(turn, start.real * end.real + start.imag * end.imag)
    return Arc(corner, abs(by), math.atan2(start.imag, start.real), sweep)


def _offset_polygon(path: Path, by: float) -> Region:
    steps = max(8, math.ceil(math.pi / 4 / math.acos(1 - min(0.5, FLATTENING / abs(by)))))
    return from_polygons(as_polygon(Region((path,))).buffer(by, quad_segs=steps))
