"""The pieces of curve in a unit: what of its shape's edge lies inside, read off the sewn outlines."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cache

from quarterturn.blocks import SHAPE, Blocks, Unit, turned_about_centre
from quarterturn.design import Design, code_of_unit
from quarterturn.geometry import EPSILON, Arc, Line, Path, Point, Segment
from quarterturn.setting.joins import pair_up
from quarterturn.setting.model import Side

Turned = tuple[str, int]
"""The name of a unit, and its turn."""

Link = tuple[int, int, float]
"""Two ends that are paired at a seam, each by its number in its unit, and their distance."""

NEAR = 10 * EPSILON
"""Points nearer to a side than this, in inches, lie on it."""


@dataclass(frozen=True, slots=True)
class CurvePiece:
    """An edge of a shape from one side of a unit to another, in the unit's frame.

    `ends` are its first and last point; there are none where it closes inside the unit. `circular` tells whether it is
    one arc about the corner between its two sides, which seams may have drawn away from the arc's centre.
    """

    ends: tuple[Point, ...]
    length: float
    circular: bool


def curve_pieces(unit: Unit) -> tuple[CurvePiece, ...]:
    """Return the pieces of a unit at turn 0, in the order of its outlines."""
    shapes = [layer.region for layer in unit.sewn_layers if layer.part == SHAPE]
    return tuple(_piece(unit, run) for shape in shapes for path in shape.paths for run in _runs(unit, path))


def _runs(unit: Unit, path: Path) -> Iterator[tuple[Segment, ...]]:
    """Return the runs of segments between those that lie along the unit's sides."""
    side, segments = float(unit.side), path.segments
    along = [_lies_along(segment, side) for segment in segments]
    if not any(along):
        yield segments
        return
    first = along.index(True)
    run: list[Segment] = []
    for k in range(first + 1, first + 1 + len(segments)):
        if not along[k % len(segments)]:
            run.append(segments[k % len(segments)])
        elif run:
            yield tuple(run)
            run = []


def _lies_along(segment: Segment, side: float) -> bool:
    a, b = segment.start, segment.end
    return isinstance(segment, Line) and any(
        max(abs(p - line), abs(q - line)) < NEAR
        for p, q in ((a.real, b.real), (a.imag, b.imag))
        for line in (0.0, side)
    )


def _piece(unit: Unit, run: tuple[Segment, ...]) -> CurvePiece:
    start, end = run[0].start, run[-1].end
    closed = abs(start - end) < NEAR
    length = sum(segment.length() for segment in run)
    return CurvePiece(() if closed else (start, end), length, _is_quarter_circle(unit, run))


def _is_quarter_circle(unit: Unit, run: tuple[Segment, ...]) -> bool:
    """Tell whether a run is an arc about a corner; the seams of a circle as drawn take s both ways off its centre."""
    (arc, *others), side = run, float(unit.side)
    if others or not isinstance(arc, Arc) or len({*_sides(arc.start, side), *_sides(arc.end, side)}) != 2:
        return False
    off = min(abs(arc.centre - complex(x, y)) for x in (0.0, side) for y in (0.0, side))
    return off <= abs(complex(1, 1)) * float(unit.seam) + NEAR


def _sides(point: Point, side: float) -> list[Side]:
    """Return the sides on which a point lies: two in a corner."""
    off = {
        Side.TOP: point.imag,
        Side.RIGHT: point.real - side,
        Side.BOTTOM: point.imag - side,
        Side.LEFT: point.real,
    }
    return [name for name, distance in off.items() if abs(distance) < NEAR]


@dataclass(frozen=True, slots=True)
class End:
    """An end of a piece: the side on which it lies (none in a corner), and how far from that side's top or left."""

    side: Side | None
    at: float


class Curves:
    """The pieces of every kind of unit in every turn, and how their ends are paired; each is worked out once."""

    def __init__(self, design: Design, blocks: Blocks) -> None:
        self._design, self._blocks = design, blocks
        self.side = float(blocks.masters[0].units[0].side)
        self.pieces = cache(self._pieces)
        self.ends = cache(self._ends)
        self.links = cache(self._links)

    def _pieces(self, name: str) -> tuple[CurvePiece, ...]:
        """Return the pieces of a unit at turn 0; where ground and shape are one fabric nobody sees any."""
        way = self._design.colourway(code_of_unit(name))
        return () if way.ground == way.shape else curve_pieces(self._blocks.unit(self._design, name))

    def _ends(self, turned: Turned) -> tuple[End, ...]:
        """Return the ends of a unit's pieces, in the order of the pieces: as many for each turn of it."""
        name, turn = turned
        motion = turned_about_centre(self._blocks.unit(self._design, name), turn)
        return tuple(self._end(motion(point)) for piece in self.pieces(name) for point in piece.ends)

    def _end(self, point: Point) -> End:
        sides = _sides(point, self.side)
        if len(sides) != 1:
            return End(None, 0.0)
        return End(sides[0], point.real if sides[0] in (Side.TOP, Side.BOTTOM) else point.imag)

    def _links(self, first: Turned, second: Turned, side: Side) -> tuple[Link, ...]:
        """Return which ends are paired where the second unit lies at a side, RIGHT or BOTTOM, of the first."""
        facing = Side.LEFT if side is Side.RIGHT else Side.TOP
        here, there = (_on(self.ends(unit), where) for unit, where in ((first, side), (second, facing)))
        pairs = pair_up([at for at, _ in here], [at for at, _ in there], self.side)
        return tuple((here[i][1], there[j][1], distance) for i, j, distance in pairs)


def _on(ends: Sequence[End], side: Side) -> list[tuple[float, int]]:
    """Return place and number of the ends on a side, in order along it."""
    return sorted((end.at, number) for number, end in enumerate(ends) if end.side is side)
