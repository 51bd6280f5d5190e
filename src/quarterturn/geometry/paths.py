"""Closed paths and the regions they bound."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from quarterturn.geometry.segments import EPSILON, Line, Point, Segment


@dataclass(frozen=True, slots=True)
class Bounds:
    """An upright box."""

    left: float
    top: float
    right: float
    bottom: float

    @property
    def width(self) -> float:
        """Return right − left."""
        return self.right - self.left

    @property
    def height(self) -> float:
        """Return bottom − top."""
        return self.bottom - self.top

    @property
    def centre(self) -> Point:
        """Return the middle of the box."""
        return complex((self.left + self.right) / 2, (self.top + self.bottom) / 2)

    def grown(self, by: float) -> Bounds:
        """Return the box with every side moved outwards."""
        return Bounds(self.left - by, self.top - by, self.right + by, self.bottom + by)


@dataclass(frozen=True, slots=True)
class Path:
    """A closed path: each segment starts where the one before it ends, the first where the last ends."""

    segments: tuple[Segment, ...]

    def area(self) -> float:
        """Return the signed area: above zero for an outline, below for a hole."""
        return sum((s.area() for s in self.segments), 0.0)

    def length(self) -> float:
        """Return the length once round."""
        return sum((s.length() for s in self.segments), 0.0)

    def reversed(self) -> Path:
        """Return the path travelled the other way."""
        return Path(tuple(s.reversed() for s in reversed(self.segments)))

    def corners(self) -> tuple[Point, ...]:
        """Return the starts of all segments."""
        return tuple(s.start for s in self.segments)

    def is_closed(self) -> bool:
        """Tell whether every segment starts where the one before it ends."""
        ends = (self.segments[-1], *self.segments[:-1])
        return all(abs(a.end - b.start) < EPSILON for a, b in zip(ends, self.segments, strict=True))

    def is_straight(self) -> bool:
        """Tell whether the path has straight segments only."""
        return all(isinstance(s, Line) for s in self.segments)


@dataclass(frozen=True, slots=True)
class Region:
    """A part of the plane bounded by outlines (positive) and holes (negative); no paths is no cloth."""

    paths: tuple[Path, ...]

    def area(self) -> float:
        """Return the area."""
        return sum((p.area() for p in self.paths), 0.0)

    def perimeter(self) -> float:
        """Return the length of all its paths."""
        return sum((p.length() for p in self.paths), 0.0)

    def is_empty(self) -> bool:
        """Tell whether nothing is left."""
        return not self.paths

    def segments(self) -> Iterator[Segment]:
        """Return all segments in turn."""
        return (s for p in self.paths for s in p.segments)


def path_bounds(path: Path) -> Bounds:
    """Return the exact upright box of a path."""
    return _box(p for s in path.segments for p in s.extremes())


def region_bounds(region: Region) -> Bounds:
    """Return the exact upright box of a region that is not empty."""
    return _box(p for s in region.segments() for p in s.extremes())


def _box(points: Iterable[Point]) -> Bounds:
    found = list(points)
    across, down = [p.real for p in found], [p.imag for p in found]
    return Bounds(min(across), min(down), max(across), max(down))
