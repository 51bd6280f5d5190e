"""Are two outlines the same, or the same when moved? Decided on the segments, without flattening them."""

from __future__ import annotations

import math
from collections.abc import Sequence

from quarterturn.geometry.motion import Motion
from quarterturn.geometry.paths import Path, Region, path_bounds
from quarterturn.geometry.segments import EPSILON, Arc, Cubic, Line, Point, Segment, cross, dot

SAME = 1e-7
"""Outlines within this of one another, in inches, are the same cloth."""


def merged(path: Path) -> Path:
    """Return the same path with neighbouring segments of one line or one circle made one.

    Segments that are no longer than EPSILON go; a whole circle starts on its right.
    """
    parts: list[Segment] = []
    for segment in path.segments:
        if all(abs(p - segment.start) <= EPSILON for p in segment.extremes()):
            continue
        joined = _join(parts[-1], segment) if parts else None
        if joined:
            parts[-1] = joined
        else:
            parts.append(segment)
    while len(parts) > 1 and (joined := _join(parts[-1], parts[0])):
        parts = [joined, *parts[1:-1]]
    return Path(tuple(_from_its_right(s) for s in parts) if len(parts) == 1 else tuple(parts))


def _join(a: Segment, b: Segment) -> Segment | None:
    if isinstance(a, Line) and isinstance(b, Line):
        first, second, way = a.end - a.start, b.end - b.start, b.end - a.start
        if dot(first, second) > 0 and abs(cross(way, first)) < EPSILON * abs(way):
            return Line(a.start, b.end)
    if isinstance(a, Arc) and isinstance(b, Arc) and _are_on_one_circle(a, b):
        return Arc(a.centre, a.radius, a.start_angle, a.sweep + b.sweep)
    return None


def _are_on_one_circle(a: Arc, b: Arc) -> bool:
    """Tell whether two arcs that follow one another turn about one centre in one sense."""
    near = abs(a.centre - b.centre) < EPSILON and abs(a.radius - b.radius) < EPSILON
    return near and a.sweep * b.sweep > 0


def _from_its_right(segment: Segment) -> Segment:
    if isinstance(segment, Arc):
        return Arc(segment.centre, segment.radius, 0.0, math.copysign(math.tau, segment.sweep))
    return segment


def same_outline(a: Path, b: Path, tolerance: float = SAME) -> bool:
    """Tell whether two paths run through the same points in the same sense, wherever they start."""
    a, b = merged(a), merged(b)
    return any(_matches(a.segments, _started_at(b, k), tolerance) for k in range(len(b.segments)))


def is_same_mirrored(path: Path, *, upright: bool = False) -> bool:
    """Tell whether a path is its own mirror image, turned as it may be; `upright`: left for right, not turned."""
    if not upright:
        return bool(congruence(path, path, mirrored=True))
    middle = path_bounds(path).centre.real
    return same_outline(Motion(-1 + 0j, complex(2 * middle, 0), mirrored=True).path(path), path)


def is_same_turned(path: Path) -> bool:
    """Tell whether a path is the same after a quarter turn about the middle of its upright box."""
    centre = path_bounds(path).centre
    return same_outline(Motion(1j, centre - 1j * centre).path(path), path)


def congruence(a: Path, b: Path, *, mirrored: bool = False, tolerance: float = SAME) -> tuple[Motion, ...]:
    """Return every rigid motion that lays `a` on `b`: turns and shifts, or the mirrored ones where asked.

    For whole circles only one of the endless turns is returned.
    """
    a, b = merged(a), merged(b)
    if len(a.segments) != len(b.segments):
        return ()
    source = _started_at_longest(Motion(mirrored=True).path(a) if mirrored else a)
    found = []
    for k in range(len(b.segments)):
        target = _started_at(b, k)
        motion = _laying(source[0], target[0])
        if _matches([motion.segment(s) for s in source], target, tolerance):
            found.append(Motion(mirrored=True).then(motion) if mirrored else motion)
    return tuple(found)


def _laying(a: Segment, b: Segment) -> Motion:
    factor = b.tangent(0) / a.tangent(0)
    factor = _snapped(factor / abs(factor))
    return Motion(factor, b.start - factor * a.start)


def _snapped(factor: Point) -> Point:
    """Return the exact quarter turn where the factor is one but for float noise."""
    near = complex(round(factor.real), round(factor.imag))
    return near if abs(factor - near) < EPSILON else factor


def _started_at(path: Path, k: int) -> list[Segment]:
    return [*path.segments[k:], *path.segments[:k]]


def _started_at_longest(path: Path) -> list[Segment]:
    """Return the segments from the longest on: what is laid along it is turned most exactly."""
    lengths = [s.length() for s in path.segments]
    return _started_at(path, lengths.index(max(lengths, default=0.0))) if lengths else []


def _matches(a: Sequence[Segment], b: Sequence[Segment], tolerance: float) -> bool:
    return len(a) == len(b) and all(_same_segment(p, q, tolerance) for p, q in zip(a, b, strict=True))


def _same_segment(a: Segment, b: Segment, tolerance: float) -> bool:
    if type(a) is not type(b) or abs(a.start - b.start) > tolerance or abs(a.end - b.end) > tolerance:
        return False
    if isinstance(a, Cubic) and isinstance(b, Cubic):
        return abs(a.control1 - b.control1) <= tolerance and abs(a.control2 - b.control2) <= tolerance
    return abs(a.point(0.5) - b.point(0.5)) <= tolerance


def same_region(a: Region, b: Region) -> bool:
    """Tell whether two regions have the same outlines, in any order."""
    left = list(b.paths)
    for path in a.paths:
        twin = next((p for p in left if same_outline(path, p)), None)
        if twin is None:
            return False
        left.remove(twin)
    return not left
