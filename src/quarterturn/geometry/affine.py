"""Maps that may stretch and skew, and the elliptical arc, which stays one under them."""

from __future__ import annotations

import cmath
import math
from dataclasses import dataclass
from typing import TypeAlias

from quarterturn.geometry.segments import Arc, Cubic, Line, Point, Segment, cross, dot

LONGEST_PIECE = math.pi / 6
"""One cubic stands for so much of an ellipse, by angle. It keeps within 4e-7 of the larger radius: 2.73e-4 of it
for a quarter, falling with the sixth power of the angle (a known property, from memory; tests measure it)."""

ROUND = 1e-9
"""An ellipse whose radii differ by less than this share of them is a circle."""


@dataclass(frozen=True, slots=True)
class Affine:
    """The map x → a·x + c·y + e, y → b·x + d·y + f: the six numbers of SVG's matrix, in its order."""

    a: float = 1.0
    b: float = 0.0
    c: float = 0.0
    d: float = 1.0
    e: float = 0.0
    f: float = 0.0

    def __call__(self, point: Point) -> Point:
        """Map a point."""
        return self.way(point) + complex(self.e, self.f)

    def way(self, vector: Point) -> Point:
        """Map a direction, which no shift changes."""
        x, y = vector.real, vector.imag
        return complex(self.a * x + self.c * y, self.b * x + self.d * y)

    def after(self, first: Affine) -> Affine:
        """Return the map that does `first` and then this one: the product of the two matrices."""
        across, down, move = (
            self.way(complex(first.a, first.b)),
            self.way(complex(first.c, first.d)),
            first.move,
        )
        moved = self(move)
        return Affine(across.real, across.imag, down.real, down.imag, moved.real, moved.imag)

    @property
    def move(self) -> Point:
        """Return where 0 goes."""
        return complex(self.e, self.f)


@dataclass(frozen=True, slots=True)
class Oval:
    """An elliptical arc: centre + first·cos θ + second·sin θ, θ from `start_angle` on through `sweep`.

    `first` and `second` are conjugate radii, which every affine map keeps.
    """

    centre: Point
    first: Point
    second: Point
    start_angle: float
    sweep: float

    def at(self, angle: float) -> Point:
        """Return the point at an angle θ."""
        return self.centre + self.first * math.cos(angle) + self.second * math.sin(angle)

    @property
    def start(self) -> Point:
        """Return the first point."""
        return self.at(self.start_angle)

    @property
    def end(self) -> Point:
        """Return the last point."""
        return self.at(self.start_angle + self.sweep)

    def segments(self) -> tuple[Arc | Cubic, ...]:
        """Return one arc where the ellipse is a circle, and else cubics, each of LONGEST_PIECE at most."""
        size = max(abs(self.first), abs(self.second))
        even = abs(abs(self.first) - abs(self.second)) <= ROUND * size
        if even and abs(dot(self.first, self.second)) <= ROUND * size * size:
            return (self._arc(),)
        count = max(1, math.ceil(abs(self.sweep) / LONGEST_PIECE - ROUND))
        step = self.sweep / count
        return tuple(self._cubic(self.start_angle + step * k, step) for k in range(count))

    def _arc(self) -> Arc:
        radius = (abs(self.first) + abs(self.second)) / 2
        way = 1 if cross(self.first, self.second) > 0 else -1
        return Arc(self.centre, radius, cmath.phase(self.first) + way * self.start_angle, way * self.sweep)

    def _cubic(self, angle: float, step: float) -> Cubic:
        handle = 4 / 3 * math.tan(step / 4)
        start, end = self.at(angle), self.at(angle + step)
        leaves, arrives = self.at(angle + math.pi / 2), self.at(angle + step + math.pi / 2)
        return Cubic(
            start, start + handle * (leaves - self.centre), end - handle * (arrives - self.centre), end
        )


Drawn: TypeAlias = Line | Cubic | Oval
"""What path data draws: every affine map makes the like of it."""


def mapped(drawn: Drawn, to: Affine) -> Drawn:
    """Map a line, a cubic or an elliptical arc."""
    match drawn:
        case Line(start, end):
            return Line(to(start), to(end))
        case Cubic(start, control1, control2, end):
            return Cubic(to(start), to(control1), to(control2), to(end))
        case Oval(centre, first, second, start_angle, sweep):
            return Oval(to(centre), to.way(first), to.way(second), start_angle, sweep)


def as_segments(drawn: Drawn) -> tuple[Segment, ...]:
    """Return the segments for what path data drew."""
    return drawn.segments() if isinstance(drawn, Oval) else (drawn,)
