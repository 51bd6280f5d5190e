"""What is creased and drawn on the ground, and the order in which shapes are fused and stitched on it."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from quarterturn.blocks import FusedShape, Master
from quarterturn.geometry import (
    EPSILON,
    Motion,
    Path,
    Point,
    StraightLine,
    path_crossings,
    rectangle,
    same_outline,
    shared_area,
)
from quarterturn.steps.making import Crease, Place
from quarterturn.steps.shapes import about_its_middle

IN_HALF = (StraightLine(0j, 1j), StraightLine(0j, -1 + 0j))
"""The two folds that lay edge on edge: down the ground first, then across."""

OVERLAP = 1e-4
"""Shapes that share less than this, in square inches, only touch."""


def crease_of(master: Master) -> Crease:
    """Return how the ground of a master is marked: where it will be cut, and where the middles of shapes will lie.

    It is folded in half both ways in any case, for the middle; a cut from corner to corner of a square is one more
    fold. Cuts that no fold shows are drawn.
    """
    cuts = tuple(cut for cut in master.cuts if folds(master, cut))
    folded = (*cuts, *(fold for fold in IN_HALF if not any(same_line(fold, cut) for cut in cuts)))
    drawn = tuple(cut for cut in master.cuts if not folds(master, cut))
    marks = (place_of(master, number).motion(0j) for number in range(len(master.shapes)))
    middles = tuple(mark for mark in marks if abs(mark) > EPSILON)
    return Crease(master.recipe, folded, drawn, middles)


def folds(master: Master, line: StraightLine) -> bool:
    """Tell whether the ground can be folded along a line through its middle, one half on the other."""
    if abs(line.side(0j)) > EPSILON:
        return False
    ground = ground_of(master)
    return same_outline(mirroring(line).path(ground), ground)


def ground_of(master: Master) -> Path:
    """Return the outline of a master as its ground is cut."""
    across, down = float(master.width / 2), float(master.height / 2)
    return rectangle(-across, -down, across, down)


def mirroring(line: StraightLine) -> Motion:
    """Return the motion that lays what is on one side of a line on the other."""
    factor = line.direction**2
    return Motion(factor, line.through - factor * line.through.conjugate(), mirrored=True)


def same_line(a: StraightLine, b: StraightLine) -> bool:
    """Tell whether two lines are one, whichever way they run."""
    return abs(a.side(b.through)) < EPSILON and abs(a.side(b.at(1.0))) < EPSILON


def place_of(master: Master, number: int) -> Place:
    """Return how a shape lies, from its template with the middle of its box at 0."""
    shape = master.shapes[number]
    template = next(first for first, _ in master.templates if first.name == shape.name)
    return Place(number, about_its_middle(template).inverse().then(shape.motion))


@dataclass(frozen=True, slots=True)
class Kind:
    """Equal shapes of one cloth that are fused in one go, and stitched in another."""

    level: int
    shape: str
    part: str
    numbers: tuple[int, ...]


def kinds_of(master: Master) -> tuple[Kind, ...]:
    """Return the shapes of a master as they are fused, in order.

    Shapes that lie beside one another are fused together and then stitched. A shape that lies on another waits
    until that one is stitched: so every edge is stitched once all round, lying on what holds it (the way of this
    program; both ways are common practice). Level 0 lies on the ground alone.
    """
    levels: list[int] = []
    for number, shape in enumerate(master.shapes):
        under = [levels[k] + 1 for k in range(number) if lie_on(master.shapes[k], shape)]
        levels.append(max(under, default=0))
    found: dict[tuple[int, str, str], list[int]] = {}
    for number, (level, shape) in enumerate(zip(levels, master.shapes, strict=True)):
        found.setdefault((level, shape.name, shape.part), []).append(number)
    return tuple(
        Kind(*key, tuple(numbers)) for key, numbers in sorted(found.items(), key=lambda one: one[0][0])
    )


def lie_on(lower: FusedShape, upper: FusedShape) -> bool:
    """Tell whether two shapes overlap."""
    return shared_area(lower.region, upper.region) > OVERLAP


def starts_on(shape: FusedShape, cuts: Sequence[StraightLine]) -> tuple[Point, ...]:
    """Return where to start stitching on the edge of a shape, and on that of its hole."""
    edges = (shape.traced, shape.hole) if shape.hole else (shape.traced,)
    return tuple(clear_of(edge, cuts) for edge in edges)


def clear_of(edge: Path, cuts: Sequence[StraightLine]) -> Point:
    """Return the point of an edge midway between two cuts, or else as far from all cuts as can be."""
    found = [
        p for line in _midway(cuts) for p in sorted(path_crossings(edge, line), key=line.along, reverse=True)
    ]
    marks = [segment.point(k / 16) for segment in edge.segments for k in range(1, 16)]

    def off(point: Point) -> float:
        return round(min((abs(cut.side(point)) for cut in cuts), default=0.0), 9)

    return max((*found, *marks), key=off)


def _midway(cuts: Sequence[StraightLine]) -> Iterable[StraightLine]:
    """Return the lines midway between every two cuts that cross."""
    for index, first in enumerate(cuts):
        for second in cuts[index + 1 :]:
            crossing = _crossing(first, second)
            if crossing is not None:
                for way in (first.direction - second.direction, first.direction + second.direction):
                    yield StraightLine(crossing, way / abs(way))


def _crossing(a: StraightLine, b: StraightLine) -> Point | None:
    slant = (a.direction.conjugate() * b.direction).imag
    if abs(slant) < EPSILON:
        return None
    return a.at(b.side(a.through) / slant)
