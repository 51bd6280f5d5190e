"""Turn curves into chords, for the libraries and pens that need polygons. The tolerance is the largest
distance between a chord and its curve, in inches."""

from __future__ import annotations

import math

from quarterturn.geometry.paths import Path
from quarterturn.geometry.segments import Arc, Line, Point, Segment


def flatten_segment(segment: Segment, tolerance: float) -> list[Point]:
    """Return points along a segment, its start included and its end left out."""
    steps = _step_count(segment, tolerance)
    return [segment.point(i / steps) for i in range(steps)]


def flatten_path(path: Path, tolerance: float) -> list[Point]:
    """Return the corners of a polygon that keeps within `tolerance` of the path."""
    return [p for s in path.segments for p in flatten_segment(s, tolerance)]


def _step_count(segment: Segment, tolerance: float) -> int:
    if isinstance(segment, Line):
        return 1
    if isinstance(segment, Arc):
        if segment.radius <= tolerance:
            return 3
        return max(1, math.ceil(abs(segment.sweep) / (2 * math.acos(1 - tolerance / segment.radius))))
    # A chord over a step h is off by at most h²/8 of the largest second derivative, 6·max|second difference|.
    second = max(
        abs(segment.start - 2 * segment.control1 + segment.control2),
        abs(segment.control1 - 2 * segment.control2 + segment.end),
    )
    return max(1, math.ceil(math.sqrt(6 * second / (8 * tolerance))))
