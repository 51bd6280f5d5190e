"""Rigid motions: turning, shifting, mirroring. Quarter turns are exact."""

from __future__ import annotations

import cmath
from dataclasses import dataclass

from quarterturn.geometry.paths import Path, Region
from quarterturn.geometry.segments import Arc, Cubic, Line, Point, Segment

_QUARTERS = (1 + 0j, 1j, -1 + 0j, -1j)


@dataclass(frozen=True, slots=True)
class Motion:
    """A rigid motion z → factor·z + move, or factor·conj(z) + move where mirrored. `factor` has length 1."""

    factor: Point = 1 + 0j
    move: Point = 0j
    mirrored: bool = False

    def __call__(self, point: Point) -> Point:
        """Move a point."""
        return self.factor * (point.conjugate() if self.mirrored else point) + self.move

    def then(self, after: Motion) -> Motion:
        """Return the motion that does this one first and `after` second."""
        factor = self.factor.conjugate() if after.mirrored else self.factor
        return Motion(after.factor * factor, after(self.move), self.mirrored != after.mirrored)

    def inverse(self) -> Motion:
        """Return the motion that undoes this one."""
        back = self.factor if self.mirrored else self.factor.conjugate()
        plain = Motion(back, 0j, self.mirrored)
        return Motion(back, -plain(self.move), self.mirrored)

    def segment(self, segment: Segment) -> Segment:
        """Move a segment; an arc stays an arc."""
        match segment:
            case Line(start, end):
                return Line(self(start), self(end))
            case Cubic(start, control1, control2, end):
                return Cubic(self(start), self(control1), self(control2), self(end))
            case Arc():
                return self._arc(segment)

    def _arc(self, arc: Arc) -> Arc:
        sign = -1 if self.mirrored else 1
        angle = sign * arc.start_angle + cmath.phase(self.factor)
        return Arc(self(arc.centre), arc.radius, angle, sign * arc.sweep)

    def path(self, path: Path) -> Path:
        """Move a path; a mirrored path is turned round so that its sign stays."""
        moved = Path(tuple(self.segment(s) for s in path.segments))
        return moved.reversed() if self.mirrored else moved

    def region(self, region: Region) -> Region:
        """Move a region."""
        return Region(tuple(self.path(p) for p in region.paths))


STAY = Motion()


def quarter_turns(count: int, about: Point = 0j) -> Motion:
    """Return a clockwise turn (as seen) by so many quarters about a point; exact for exact coordinates."""
    return turn_about(_QUARTERS[count % 4], about)


def turn_about(factor: Point, about: Point) -> Motion:
    """Return the turn that multiplies directions by `factor` (of length 1) about a point."""
    return Motion(factor, about - factor * about)


def shift(by: Point) -> Motion:
    """Return a shift."""
    return Motion(move=by)


def mirror_across_vertical(x: float = 0.0) -> Motion:
    """Return the mirroring that swaps left and right across the vertical line at `x`."""
    return Motion(-1 + 0j, complex(2 * x, 0), mirrored=True)
