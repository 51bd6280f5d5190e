"""What of the edges in a unit can be seen and followed: not under another shape, and across a seam inside the unit."""

from __future__ import annotations

import itertools
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass

from quarterturn.blocks import GROUND, Layer, Unit
from quarterturn.design import HALF_MARK
from quarterturn.geometry import (
    EPSILON,
    Bounds,
    Line,
    Path,
    Point,
    Region,
    Segment,
    StraightLine,
    as_polygon,
    flatten_segment,
    line_through,
    path_bounds,
    region_bounds,
)

Run = tuple[Segment, ...]

_FINE = 1e-4
"""Edges are hidden to within this, in inches."""
_DRAWN = 2e-3
"""How far a stretch that is drawn may lie off the true one, in inches."""
MEETS_WITHIN = 1 / 32
"""Edges nearer than this at a seam inside the unit go on as one (as at the seams between units)."""


@dataclass(frozen=True, slots=True)
class Edge:
    """A stretch of an edge that can be seen: its ends (none where it closes), its length, and its segments.

    `run` is empty where only a part of the edge is seen, or where it goes on across a seam.
    """

    ends: tuple[Point, ...]
    length: float
    run: Run
    drawn: tuple[Run, ...]
    """What is seen of it, for a drawing: stretches of which only a part is seen are chords as close as `_DRAWN`."""


def is_ground(layer: Layer) -> bool:
    """Tell whether a layer is the ground of its master, or of a half."""
    return layer.part.rpartition(HALF_MARK)[2] == GROUND


def inner_seam(unit: Unit) -> StraightLine | None:
    """Return the line along which the halves of a rejoined unit meet; None for other units."""
    if not unit.halves:
        return None
    grounds = [layer.region for layer in unit.sewn_layers if is_ground(layer)]
    for one, other in itertools.product(grounds[0].segments(), grounds[1].segments()):
        if isinstance(one, Line) and isinstance(other, Line):
            line = line_through(one.start, one.end)
            if max(abs(line.side(other.start)), abs(line.side(other.end))) < 1e-6:
                return line
    return None


def seen_edges(unit: Unit, runs: Callable[[Layer], Iterator[Run]]) -> list[Edge]:
    """Return the visible stretches of the runs of all shapes; those that meet at an inner seam made one."""
    layers = unit.sewn_layers
    found = [
        edge
        for k, layer in enumerate(layers)
        if not is_ground(layer)
        for run in runs(layer)
        for edge in _seen(run, [above.region for above in layers[k + 1 :] if not is_ground(above)])
    ]
    seam = inner_seam(unit)
    return _joined(found, seam) if seam else found


def _seen(run: Run, above: Sequence[Region]) -> Iterator[Edge]:
    import shapely

    start, end = run[0].start, run[-1].end
    length = sum(segment.length() for segment in run)
    box = path_bounds(Path(run))
    over = [region for region in above if _overlap(box, region_bounds(region))]
    whole = Edge(() if abs(start - end) < 10 * EPSILON else (start, end), length, run, (run,))
    if not over:
        yield whole
        return
    points = [p for segment in run for p in flatten_segment(segment, _FINE / 10)] + [end]
    line = shapely.LineString([(p.real, p.imag) for p in points])
    rest = line.difference(shapely.union_all([as_polygon(region) for region in over]))
    if rest.length > line.length - _FINE:
        yield whole
        return
    for part in shapely.get_parts(shapely.line_merge(rest)):
        if part.length > _FINE:
            first, last = (_snapped(complex(*part.coords[k]), (start, end)) for k in (0, -1))
            ends = () if abs(first - last) < EPSILON else (first, last)
            yield Edge(ends, float(part.length), (), (_chords(part.simplify(_DRAWN).coords),))


def _chords(points: Sequence[Sequence[float]]) -> Run:
    corners = [complex(x, y) for x, y in points]
    return tuple(Line(a, b) for a, b in itertools.pairwise(corners))


def _overlap(a: Bounds, b: Bounds) -> bool:
    return a.left < b.right and b.left < a.right and a.top < b.bottom and b.top < a.bottom


def _snapped(point: Point, ends: Sequence[Point]) -> Point:
    return next((end for end in ends if abs(end - point) < _FINE), point)


def _joined(edges: list[Edge], seam: StraightLine) -> list[Edge]:
    """Let edges go on into one another where their ends meet on an inner seam, the nearest first."""
    left = list(edges)
    while pair := _nearest(left, seam):
        (i, at), (j, other) = pair
        one = left[i]
        if i == j:
            left[i] = Edge((), one.length, (), one.drawn)
            continue
        rest = (*(p for p in one.ends if p != at), *(p for p in left[j].ends if p != other))
        left[i] = Edge(rest, one.length + left[j].length, (), one.drawn + left[j].drawn)
        del left[j]
    return left


def _nearest(edges: Sequence[Edge], seam: StraightLine) -> tuple[tuple[int, Point], tuple[int, Point]] | None:
    ends = [(k, p) for k, edge in enumerate(edges) for p in edge.ends if abs(seam.side(p)) < 1e-6]
    pairs = ((abs(a[1] - b[1]), n, a, b) for n, (a, b) in enumerate(itertools.combinations(ends, 2)))
    near = [pair for pair in pairs if pair[0] < MEETS_WITHIN]
    return min(near, key=lambda pair: pair[:2])[2:] if near else None
