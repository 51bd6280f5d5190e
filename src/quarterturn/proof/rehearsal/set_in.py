"""Carrying out the setting of triangles into inner corners.

The rows beside the corner were joined before: along its level side the allowance already lies behind the work, so that
the seam is found at the edge there, and a seam allowance inside the raw edge along the upright side.
"""

from __future__ import annotations

from itertools import pairwise

from quarterturn.geometry import Line, Path, Point, Segment, StraightLine, merged, shift
from quarterturn.proof.rehearsal.cloth import EQUAL, Patch, Scrap, SpoiledError, keep, kept_scrap
from quarterturn.proof.rehearsal.slanting import between
from quarterturn.proof.rehearsal.table import Table
from quarterturn.steps import SetIn, SetInPlace, Step


def set_in(table: Table, step: Step, action: SetIn) -> None:
    """Set triangles into inner corners."""
    (product,) = step.makes
    works, triangles = step.uses
    if works.count != product.count or triangles.count != len(action.places) * product.count:
        raise SpoiledError("The triangles taken are not those to be set in.")
    work, triangle = table.take_patch(works), table.take_patch(triangles)
    origin = complex(work.box.left, work.box.top)
    for place in action.places:
        work = _set_in(work, triangle.turned(place.turn), place, origin, float(action.seam))
    table.put(product, work)


def _set_in(work: Patch, triangle: Patch, place: SetInPlace, origin: Point, seam: float) -> Patch:
    """Sew a triangle along both sides of an inner corner: its right angle is at the top, and points into the work.

    `out` is 1 where the triangle lies to the left of its corner, −1 where to the right.
    """
    if place.turn not in (0, 1):
        raise SpoiledError("The right angle of a triangle that is set in lies at the top.")
    out = 1 if place.turn == 1 else -1
    at = origin + complex(float(place.x), float(place.y)) - complex(triangle.box.left, triangle.box.top)
    triangle = triangle.moved(shift(at))
    inner = complex(triangle.box.right if out == 1 else triangle.box.left, triangle.box.top)
    corner = inner + complex(-out * seam, seam)
    upright, level = _inner_corner(work.edge, corner - out * seam, out)
    low = max(upright.start.imag, upright.end.imag)
    if triangle.box.bottom < low + seam - EQUAL:
        raise SpoiledError("The triangle is shorter than the inner corner that it is set into.")
    seen = keep(between(triangle, 1j, corner.imag, low), StraightLine(corner, out * 1j))
    if seen is None:
        raise SpoiledError("The triangle is narrower than its seam allowance.")
    kept = (_beside(scrap, corner, out, seen) for scrap in work.scraps)
    scraps = tuple(scrap for scrap in kept if scrap)
    return Patch(_notched(work.edge, upright, level, seen, out), (*scraps, *seen.scraps))


def _inner_corner(edge: Path, corner: Point, out: int) -> tuple[Line, Line]:
    """Return the upright and the level raw edge that meet in an inner corner, the level one turned under."""
    for before, after in _neighbours(edge):
        upright, level = (before, after) if out == 1 else (after, before)
        if abs(before.end - corner) > EQUAL or not isinstance(upright, Line) or not isinstance(level, Line):
            continue
        if _faces(upright, -out) and _faces(level, 1j):
            return upright, level
    raise SpoiledError("There is no inner corner where the triangle is to be set in.")


def _neighbours(path: Path) -> list[tuple[Segment, Segment]]:
    return list(zip(path.segments, (*path.segments[1:], path.segments[0]), strict=True))


def _faces(edge: Line, way: Point) -> bool:
    return abs(-1j * (edge.end - edge.start) / edge.length() - way) < 1e-7


def _beside(scrap: Scrap, corner: Point, out: int, seen: Patch) -> Scrap | None:
    """Return what of a scrap is still seen beside the triangle: its allowance goes behind the work."""
    box, over = scrap.box, seen.box
    apart = box.left > over.right or box.right < over.left or box.top > over.bottom - EQUAL
    if apart or box.top < corner.imag - EQUAL:
        return scrap
    return kept_scrap(scrap, StraightLine(corner, out * -1j))


def _notched(edge: Path, upright: Line, level: Line, seen: Patch, out: int) -> Path:
    """Return the outline with the triangle in its inner corner."""
    box = seen.box
    tips = [p for segment in seen.edge.segments for p in (segment.start,)]
    high = min((p for p in tips if p.imag < box.top + EQUAL), key=lambda p: out * p.real)
    low = min((p for p in tips if p.imag > box.bottom - EQUAL), key=lambda p: out * p.real)
    way = [upright.start, low, high, level.end] if out == 1 else [level.start, high, low, upright.end]
    new = tuple(Line(a, b) for a, b in pairwise(way))
    first, second = (upright, level) if out == 1 else (level, upright)
    place = edge.segments.index(first)
    rest = (*edge.segments[place:], *edge.segments[:place])
    assert rest[1] == second, "the edges of an inner corner are neighbours"
    return merged(Path((*new, *rest[2:])))
