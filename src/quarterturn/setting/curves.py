"""The pieces of curve in a unit: what of its shape's edge lies inside, read off the sewn outlines."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cache

from quarterturn.blocks import Blocks, Layer, Unit
from quarterturn.design import Design
from quarterturn.geometry import EPSILON, Arc, Line, Path, Point, Segment, StraightLine
from quarterturn.setting.joins import Turned, pair_up, side_length
from quarterturn.setting.model import Side
from quarterturn.setting.neighbours import Size
from quarterturn.setting.placing import turned_in_place
from quarterturn.setting.visible import Run, inner_seam, seen_edges

Link = tuple[int, int, float]
"""Two ends that are paired at a seam, each by its number in its unit, and their distance."""

NEAR = 10 * EPSILON
"""Points nearer to a side than this, in inches, lie on it."""


@dataclass(frozen=True, slots=True)
class CurvePiece:
    """An edge of a shape from one side of a unit to another, in the unit's frame.

    `ends` are its first and last point; there are none where it closes inside the unit. `circular` tells whether it is
    one arc about the corner between its two sides, which seams may have drawn away from the arc's centre. `drawn` is
    what a drawing shows of it.
    """

    ends: tuple[Point, ...]
    length: float
    circular: bool
    drawn: tuple[Run, ...]


def curve_pieces(unit: Unit) -> tuple[CurvePiece, ...]:
    """Return the pieces of a unit at turn 0 that can be seen, in the order of its layers and their outlines."""
    seam = inner_seam(unit)

    def runs(layer: Layer) -> Iterator[Run]:
        return (run for path in layer.region.paths for run in _runs(unit, path, seam))

    return tuple(
        CurvePiece(edge.ends, edge.length, bool(edge.run) and _is_quarter_circle(unit, edge.run), edge.drawn)
        for edge in seen_edges(unit, runs)
    )


def _runs(unit: Unit, path: Path, seam: StraightLine | None) -> Iterator[Run]:
    """Return the runs of segments between those that lie along the unit's sides, or along a seam inside it."""
    segments = path.segments
    along = [_lies_along(segment, unit, seam) for segment in segments]
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


def _lies_along(segment: Segment, unit: Unit, seam: StraightLine | None) -> bool:
    a, b = segment.start, segment.end
    if not isinstance(segment, Line):
        return False
    if seam and max(abs(seam.side(a)), abs(seam.side(b))) < NEAR:
        return True
    return any(
        max(abs(p - line), abs(q - line)) < NEAR
        for p, q, far in ((a.real, b.real, unit.width), (a.imag, b.imag, unit.height))
        for line in (0.0, float(far))
    )


def _is_quarter_circle(unit: Unit, run: Run) -> bool:
    """Tell whether a run is an arc about a corner; the seams of a circle as drawn take s both ways off its centre."""
    (arc, *others), size = run, (float(unit.width), float(unit.height))
    if others or not isinstance(arc, Arc) or len({*_sides(arc.start, size), *_sides(arc.end, size)}) != 2:
        return False
    off = min(abs(arc.centre - complex(x, y)) for x in (0.0, size[0]) for y in (0.0, size[1]))
    return off <= abs(complex(1, 1)) * float(unit.seam) + NEAR


def _sides(point: Point, size: Size) -> list[Side]:
    """Return the sides of a unit of a width and height on which a point lies: two in a corner."""
    off = {
        Side.TOP: point.imag,
        Side.RIGHT: point.real - size[0],
        Side.BOTTOM: point.imag - size[1],
        Side.LEFT: point.real,
    }
    return [name for name, distance in off.items() if abs(distance) < NEAR]


@dataclass(frozen=True, slots=True)
class End:
    """An end of a piece: the side on which it lies (none in a corner), and how far from that side's top or left.

    `inside` tells of an end that lies on no side, where the edge goes under another shape.
    """

    side: Side | None
    at: float
    inside: bool = False


class Curves:
    """The pieces of every kind of unit in every turn, and how their ends are paired; each is worked out once."""

    def __init__(self, design: Design, blocks: Blocks) -> None:
        self._design, self._blocks = design, blocks
        self.pieces = cache(self._pieces)
        self.ends = cache(self._ends)
        self.links = cache(self._links)

    def is_square(self, name: str) -> bool:
        """Tell whether a unit finds room in its place whichever way it is turned."""
        unit = self._blocks.unit(self._design, name)
        return unit.width == unit.height

    def _pieces(self, name: str) -> tuple[CurvePiece, ...]:
        """Return the pieces of a unit at turn 0; where all its parts are one fabric nobody sees any."""
        unit = self._blocks.unit(self._design, name)
        cloths = {self._design.cloth(name, layer.part) for layer in unit.sewn_layers}
        return curve_pieces(unit) if len(cloths) > 1 else ()

    def _ends(self, turned: Turned) -> tuple[End, ...]:
        """Return the ends of a unit's pieces, in the order of the pieces: as many for each turn of it."""
        name, turn = turned
        unit = self._blocks.unit(self._design, name)
        width, height = float(unit.width), float(unit.height)
        motion = turned_in_place(width, height, turn)
        size = (height, width) if turn % 2 else (width, height)
        return tuple(_end(motion(point), size) for piece in self.pieces(name) for point in piece.ends)

    def _links(
        self, first: Turned, side: Side, second: Turned, facing: Side, flipped: bool
    ) -> tuple[Link, ...]:
        """Return which ends are paired where the `facing` side of the second unit is sewn to a side of the first."""
        length = side_length(self._blocks.unit(self._design, first[0]), first[1], side)
        here, there = _on(self.ends(first), side), _on(self.ends(second), facing)
        far = [length - at if flipped else at for at, _ in there]
        pairs = pair_up([at for at, _ in here], far, length)
        return tuple((here[i][1], there[j][1], distance) for i, j, distance in pairs)


def _end(point: Point, size: Size) -> End:
    sides = _sides(point, size)
    if len(sides) != 1:
        return End(None, 0.0, inside=not sides)
    return End(sides[0], point.real if sides[0] in (Side.TOP, Side.BOTTOM) else point.imag)


def _on(ends: Sequence[End], side: Side) -> list[tuple[float, int]]:
    """Return place and number of the ends on a side, in order along it."""
    return sorted((end.at, number) for number, end in enumerate(ends) if end.side is side)
