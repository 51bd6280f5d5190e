"""The three kinds of segment, and what can be said of each without flattening it.

All parameters run from 0 at the start of a segment to 1 at its end.
"""

from __future__ import annotations

import cmath
import itertools
import math
from dataclasses import dataclass
from typing import TypeAlias

Point: TypeAlias = complex

EPSILON = 1e-9
"""Points nearer than this, in inches, are one point: far below a thread, far above float noise."""


def dot(a: Point, b: Point) -> float:
    """Return the scalar product of two vectors."""
    return a.real * b.real + a.imag * b.imag


def cross(a: Point, b: Point) -> float:
    """Return the vector product of two vectors."""
    return a.real * b.imag - a.imag * b.real


@dataclass(frozen=True, slots=True)
class Line:
    """A straight segment."""

    start: Point
    end: Point

    def point(self, t: float) -> Point:
        """Return the point at parameter t."""
        return self.end if t == 1 else self.start + (self.end - self.start) * t

    def tangent(self, t: float) -> Point:
        """Return a vector along the direction of travel."""
        return self.end - self.start

    def length(self) -> float:
        """Return the length."""
        return abs(self.end - self.start)

    def area(self) -> float:
        """Return the share of the area in Green's theorem: half the integral of x dy − y dx."""
        return cross(self.start, self.end) / 2

    def reversed(self) -> Line:
        """Return the same segment travelled the other way."""
        return Line(self.end, self.start)

    def part(self, t0: float, t1: float) -> Line:
        """Return the piece between two parameters."""
        return Line(self.point(t0), self.point(t1))

    def extremes(self) -> tuple[Point, ...]:
        """Return points among which the extreme coordinates are found."""
        return (self.start, self.end)


@dataclass(frozen=True, slots=True)
class Arc:
    """A circular arc, given by its centre; a sweep of ±2π is a whole circle. Angles are in radians."""

    centre: Point
    radius: float
    start_angle: float
    sweep: float

    @property
    def start(self) -> Point:
        """Return the first point."""
        return self.centre + _on_circle(self.radius, self.start_angle)

    @property
    def end(self) -> Point:
        """Return the last point."""
        return self.centre + _on_circle(self.radius, self.start_angle + self.sweep)

    def point(self, t: float) -> Point:
        """Return the point at parameter t."""
        return self.centre + _on_circle(self.radius, self.start_angle + self.sweep * t)

    def tangent(self, t: float) -> Point:
        """Return a vector along the direction of travel."""
        return _on_circle(self.radius * self.sweep, self.start_angle + self.sweep * t) * 1j

    def length(self) -> float:
        """Return the length of the arc."""
        return self.radius * abs(self.sweep)

    def area(self) -> float:
        """Return the share of the area in Green's theorem."""
        return (self.radius**2 * self.sweep + cross(self.centre, self.end - self.start)) / 2

    def reversed(self) -> Arc:
        """Return the same arc travelled the other way."""
        return Arc(self.centre, self.radius, self.start_angle + self.sweep, -self.sweep)

    def part(self, t0: float, t1: float) -> Arc:
        """Return the piece between two parameters."""
        return Arc(self.centre, self.radius, self.start_angle + self.sweep * t0, self.sweep * (t1 - t0))

    def parameter_at_angle(self, angle: float) -> float:
        """Return the parameter at which the arc has this angle; outside 0..1 where it never has it."""
        turned = (angle - self.start_angle) * math.copysign(1, self.sweep) % math.tau
        slack = EPSILON / self.radius
        if turned > math.tau - slack:
            turned -= math.tau
        return turned / abs(self.sweep)

    def extremes(self) -> tuple[Point, ...]:
        """Return points among which the extreme coordinates are found: the ends and the four quadrant points."""
        quadrants = (self.parameter_at_angle(k * math.pi / 2) for k in range(4))
        return (self.start, self.end, *(self.point(t) for t in quadrants if 0 < t < 1))


@dataclass(frozen=True, slots=True)
class Cubic:
    """A cubic Bézier segment."""

    start: Point
    control1: Point
    control2: Point
    end: Point

    def point(self, t: float) -> Point:
        """Return the point at parameter t, by de Casteljau's construction."""
        a, b, c = (
            _mix(self.start, self.control1, t),
            _mix(self.control1, self.control2, t),
            _mix(self.control2, self.end, t),
        )
        return _mix(_mix(a, b, t), _mix(b, c, t), t)

    def tangent(self, t: float) -> Point:
        """Return a vector along the direction of travel, also where a control point lies on an end."""
        d0, d1, d2 = self.control1 - self.start, self.control2 - self.control1, self.end - self.control2
        derivative = _mix(_mix(d0, d1, t), _mix(d1, d2, t), t)
        if abs(derivative) > EPSILON:
            return derivative
        across = (self.control2 - self.start) if t < 0.5 else (self.end - self.control1)
        return across if abs(across) > EPSILON else self.end - self.start

    def length(self) -> float:
        """Return the length, by Gauss-Legendre quadrature between turning points, halved until it no longer changes."""
        marks = (0.0, *sorted(self._turning_points()), 1.0)
        return sum(_cubic_length(self.part(a, b), 0) for a, b in itertools.pairwise(marks) if b > a)

    def area(self) -> float:
        """Return the share of the area in Green's theorem; exact for a cubic."""
        p, a, b, q = self.start, self.control1, self.control2, self.end
        return (
            6 * cross(p, a)
            + 3 * cross(p, b)
            + cross(p, q)
            + 3 * cross(a, b)
            + 3 * cross(a, q)
            + 6 * cross(b, q)
        ) / 20

    def reversed(self) -> Cubic:
        """Return the same segment travelled the other way."""
        return Cubic(self.end, self.control2, self.control1, self.start)

    def part(self, t0: float, t1: float) -> Cubic:
        """Return the piece between two parameters."""
        right = self if t0 == 0 else _halves(self, t0)[1]
        return right if t1 == 1 else _halves(right, (t1 - t0) / (1 - t0))[0]

    def extremes(self) -> tuple[Point, ...]:
        """Return points among which the extreme coordinates are found: ends and turning points."""
        return (self.start, self.end, *map(self.point, self._turning_points()))

    def _turning_points(self) -> tuple[float, ...]:
        """Return the inner parameters at which the way is straight across or down, or turns back in a cusp."""
        d = (self.control1 - self.start, self.control2 - self.control1, self.end - self.control2)
        a, b, c = d[0] - 2 * d[1] + d[2], 2 * (d[1] - d[0]), d[0]
        roots = (*quadratic_roots(a.real, b.real, c.real), *quadratic_roots(a.imag, b.imag, c.imag))
        return tuple(t for t in roots if 0 < t < 1)


Segment: TypeAlias = Line | Arc | Cubic


def quadratic_roots(a: float, b: float, c: float) -> tuple[float, ...]:
    """Return the real roots of a t² + b t + c, without cancellation."""
    scale = max(abs(a), abs(b), abs(c))
    if scale == 0 or abs(a) < 1e-13 * scale:
        return () if scale == 0 or abs(b) < 1e-13 * scale else (-c / b,)
    discriminant = b * b - 4 * a * c
    if discriminant < 0:
        return ()
    q = -(b + math.copysign(math.sqrt(discriminant), b)) / 2
    return (q / a, c / q) if q else (0.0,)


def _on_circle(radius: float, angle: float) -> Point:
    return cmath.rect(radius, angle)


def _mix(a: Point, b: Point, t: float) -> Point:
    return a + (b - a) * t


def _halves(curve: Cubic, t: float) -> tuple[Cubic, Cubic]:
    p, a, b, q = curve.start, curve.control1, curve.control2, curve.end
    pa, ab, bq = _mix(p, a, t), _mix(a, b, t), _mix(b, q, t)
    pab, abq = _mix(pa, ab, t), _mix(ab, bq, t)
    middle = _mix(pab, abq, t)
    return Cubic(p, pa, pab, middle), Cubic(middle, abq, bq, q)


_GAUSS = (
    (0.0, 128 / 225),
    (0.5384693101056831, 0.47862867049936647),
    (0.906179845938664, 0.23692688505618908),
)
"""Abscissae and weights of the five-point Gauss-Legendre rule on −1..1 (mirrored)."""


def _cubic_length(curve: Cubic, depth: int) -> float:
    left, right = _halves(curve, 0.5)
    whole, halves = _gauss_length(curve), _gauss_length(left) + _gauss_length(right)
    if abs(whole - halves) < 1e-12 * (1 + halves) or depth > 20:
        return halves
    return _cubic_length(left, depth + 1) + _cubic_length(right, depth + 1)


def _gauss_length(curve: Cubic) -> float:
    d0, d1, d2 = curve.control1 - curve.start, curve.control2 - curve.control1, curve.end - curve.control2
    total = 0.0
    for place, weight in _GAUSS:
        for t in {(1 + place) / 2, (1 - place) / 2}:
            total += weight * abs(_mix(_mix(d0, d1, t), _mix(d1, d2, t), t))
    return 1.5 * total
