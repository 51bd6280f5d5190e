"""The straight cut: a region and a line in, the cloth on either side out, curves kept as curves.

Every segment is split where it crosses the line; the parts on one side are chained, and each place where a
chain runs off the line is joined along it to the next place where one comes back. Touching is not crossing:
tangents, corners on the line and edges along it leave no slivers.
"""

from __future__ import annotations

import cmath
import itertools
import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import TypeAlias

from quarterturn.geometry.paths import Path, Region
from quarterturn.geometry.segments import (
    EPSILON,
    Arc,
    Cubic,
    Line,
    Point,
    Segment,
    cross,
    dot,
    quadratic_roots,
)

_Sided: TypeAlias = tuple[Segment, int]
"""A segment that does not cross the line, and the side on which it lies."""


@dataclass(frozen=True, slots=True)
class StraightLine:
    """An endless line through a point, with a direction of length 1. Left of it is the positive side."""

    through: Point
    direction: Point

    def side(self, point: Point) -> float:
        """Return the signed distance of a point: above zero on the left (where y down: on the right as seen)."""
        return cross(self.direction, point - self.through)

    def along(self, point: Point) -> float:
        """Return the place of a point's foot along the line."""
        return dot(self.direction, point - self.through)

    def at(self, place: float) -> Point:
        """Return the point at a place along the line."""
        return self.through + self.direction * place

    def reversed(self) -> StraightLine:
        """Return the same line run the other way, so that its sides change places."""
        return StraightLine(self.through, -self.direction)

    def moved_left(self, by: float) -> StraightLine:
        """Return the parallel line at a distance on the positive side."""
        return StraightLine(self.through + self.direction * 1j * by, self.direction)


def line_through(a: Point, b: Point) -> StraightLine:
    """Return the line from a towards b; the points must differ."""
    return StraightLine(a, (b - a) / abs(b - a))


def cut(region: Region, line: StraightLine) -> tuple[Region, Region]:
    """Cut a region along a line; return the part on the positive side and the part on the other.

    A region that lies on one side comes back as it is, beside one without cloth.
    """
    reach = list(_farthest_sides(region, line))
    if max(reach, default=0.0) <= EPSILON:
        return Region(()), region
    if min(reach) >= -EPSILON:
        return region, Region(())
    sided = [
        [(s, side_of_segment(s, line)) for whole in path.segments for s in split_at(whole, line)]
        for path in region.paths
    ]
    return _gather(sided, line, 1), _gather(sided, line.reversed(), -1)


def keep_left(region: Region, line: StraightLine) -> Region:
    """Return the part of a region on the positive side of a line."""
    return cut(region, line)[0]


def path_crossings(path: Path, line: StraightLine) -> tuple[Point, ...]:
    """Return the points at which a path crosses a line inside its segments, in the order of travel."""
    return tuple(s.point(t) for s in path.segments for t in _inner_crossings(s, line))


def _farthest_sides(region: Region, line: StraightLine) -> Iterator[float]:
    """Return signed distances between which all of a region lies; an arc counts as its whole circle."""
    for segment in region.segments():
        match segment:
            case Line(start, end):
                yield from (line.side(start), line.side(end))
            case Cubic(start, control1, control2, end):
                yield from map(line.side, (start, control1, control2, end))
            case Arc(centre, radius):
                yield from (line.side(centre) - radius, line.side(centre) + radius)


def _gather(paths: Sequence[Sequence[_Sided]], line: StraightLine, wanted: int) -> Region:
    """Return what is bounded by the segments on the wanted side, which must be the left of the line, and the line."""
    whole: list[Path] = []
    chains: list[list[Segment]] = []
    for path in paths:
        if all(side == wanted for _, side in path):
            whole.append(Path(tuple(segment for segment, _ in path)))
        else:
            chains.extend(_chains(path, wanted))
    return Region((*whole, *(path for path in _close(chains, line) if not _is_crumb(path, line))))


def _is_crumb(path: Path, line: StraightLine) -> bool:
    """Tell whether a part is no cloth: two edges back to back, or nowhere farther from the cut than 2 EPSILON."""
    if len(path.segments) < 3 and path.is_straight():
        return True
    return all(line.side(s.point(t)) <= 2 * EPSILON for s in path.segments for t in (0, 0.5))


def _chains(path: Sequence[_Sided], wanted: int) -> list[list[Segment]]:
    """Return the runs of segments on the wanted side; the run that spans the end of the path is one."""
    first_other = next(i for i, (_, side) in enumerate(path) if side != wanted)
    runs = itertools.groupby((*path[first_other:], *path[:first_other]), key=lambda sided: sided[1] == wanted)
    return [[segment for segment, _ in run] for is_wanted, run in runs if is_wanted]


def _close(chains: list[list[Segment]], line: StraightLine) -> Iterator[Path]:
    """Join the ends of chains along the line, each to the next beginning in the line's direction."""
    follows = _pair_ends(chains, line)
    left = set(range(len(chains)))
    while left:
        start = index = min(left)
        segments: list[Segment] = []
        while index in left:
            left.remove(index)
            segments.extend(chains[index])
            index = follows[index]
            bridge = Line(segments[-1].end, chains[index][0].start)
            if bridge.length() > EPSILON:
                segments.append(bridge)
        assert index == start, "the ends of a cut did not pair"
        yield Path(tuple(segments))


def _pair_ends(chains: list[list[Segment]], line: StraightLine) -> dict[int, int]:
    """Map each chain to the one that begins next along the line. Inside cloth, ends and beginnings alternate."""
    ends = sorted((line.along(chain[-1].end), i) for i, chain in enumerate(chains))
    beginnings = sorted((line.along(chain[0].start), i) for i, chain in enumerate(chains))
    # Sorted along the line, the k-th end lies before the k-th beginning, at most EPSILON behind it where
    # two parts touch in a point; so the k-th pair is the k-th stretch of cloth along the line.
    return {end: beginning for (_, end), (_, beginning) in zip(ends, beginnings, strict=True)}


def side_of_segment(segment: Segment, line: StraightLine) -> int:
    """Tell on which side a segment that does not cross the line lies: 1, −1, or 0 where it lies along it."""
    marks = (0, 1) if isinstance(segment, Line) else (0.25, 0.5, 0.75)
    farthest = max((line.side(segment.point(t)) for t in marks), key=abs)
    return 0 if abs(farthest) <= EPSILON else 1 if farthest > 0 else -1


def split_at(segment: Segment, line: StraightLine) -> list[Segment]:
    """Split a segment at its inner crossings with the line."""
    marks = _inner_crossings(segment, line)
    if not marks:
        return [segment]
    return [segment.part(a, b) for a, b in itertools.pairwise((0.0, *marks, 1.0))]


def _inner_crossings(segment: Segment, line: StraightLine) -> list[float]:
    return sorted(t for t in _crossings(segment, line) if _is_inner(segment, t))


def _is_inner(segment: Segment, t: float) -> bool:
    """Tell whether a parameter lies inside the segment; a crossing at an end is that end."""
    step = EPSILON / max(abs(segment.tangent(t)), EPSILON)
    return step < t < 1 - step


def _crossings(segment: Segment, line: StraightLine) -> tuple[float, ...]:
    """Return the parameters at which a segment crosses a line; those outside 0..1 mean nothing."""
    if isinstance(segment, Line):
        return _line_crossing(segment, line)
    if isinstance(segment, Arc):
        return _arc_crossings(segment, line)
    return _cubic_crossings(segment, line)


def _line_crossing(segment: Line, line: StraightLine) -> tuple[float, ...]:
    a, b = line.side(segment.start), line.side(segment.end)
    if (a > EPSILON and b < -EPSILON) or (a < -EPSILON and b > EPSILON):
        return (a / (a - b),)
    return ()


def _arc_crossings(arc: Arc, line: StraightLine) -> tuple[float, ...]:
    distance = line.side(arc.centre)
    if abs(distance) >= arc.radius - EPSILON:
        return ()  # passes by, or only touches
    reach = math.sqrt((arc.radius - distance) * (arc.radius + distance))
    feet = (line.direction * complex(way, -distance) for way in (reach, -reach))
    return tuple(arc.parameter_at_angle(cmath.phase(foot)) for foot in feet)


def _cubic_crossings(curve: Cubic, line: StraightLine) -> tuple[float, ...]:
    """Return the parameters at which the signed distance, a cubic in Bernstein form, changes its sign.

    Between two turning points it rises or falls throughout. Those that lie on the line are passed over, so
    that a curve which crosses the line while touching it crosses once.
    """
    d = [line.side(p) for p in (curve.start, curve.control1, curve.control2, curve.end)]
    a, b, c = d[1] - d[0], d[2] - d[1], d[3] - d[2]
    turns = sorted(t for t in quadratic_roots(a - 2 * b + c, 2 * (b - a), a) if 0 < t < 1)
    off = [t for t in (0.0, *turns, 1.0) if abs(_bernstein(d, t)) > EPSILON]
    return tuple(_bisect(d, lo, hi) for lo, hi in itertools.pairwise(off) if _changes(d, lo, hi))


def _bernstein(d: Sequence[float], t: float) -> float:
    u = 1 - t
    return u * u * u * d[0] + 3 * u * u * t * d[1] + 3 * u * t * t * d[2] + t * t * t * d[3]


def _changes(d: Sequence[float], lo: float, hi: float) -> bool:
    return (_bernstein(d, lo) > 0) != (_bernstein(d, hi) > 0)


def _bisect(d: Sequence[float], lo: float, hi: float) -> float:
    rising = _bernstein(d, hi) > _bernstein(d, lo)
    for _ in range(60):
        middle = (lo + hi) / 2
        if (_bernstein(d, middle) > 0) == rising:
            hi = middle
        else:
            lo = middle
    return (lo + hi) / 2
