"""What the seams make of a curve, measured on the sewn units themselves. Tests compare with the closed forms."""

from __future__ import annotations

import cmath
import itertools
import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from quarterturn.blocks.edges import side_spans
from quarterturn.blocks.model import SHAPE, CurveFacts, FusedShape, Layer, Part, Unit
from quarterturn.geometry import (
    EPSILON,
    Line,
    Path,
    Point,
    Region,
    Segment,
    StraightLine,
    keep_left,
    path_bounds,
    quarter_turns,
)


def curve_facts(
    units: Sequence[Unit], parts: Sequence[Part], shape: FusedShape, cuts: Sequence[StraightLine]
) -> CurveFacts:
    """Return the facts of a shape about the middle of its master, cut through there into these units."""
    seam = float(units[0].seam)
    rejoined = [join for cut in cuts for join in _rejoined(shape, cut, cuts, seam)]
    bounds = path_bounds(shape.traced)
    return CurveFacts(
        crossing=max(map(_crossing, units)),
        diagonal=_along_diagonal(units[0], parts),
        peak=max((join.peak for join in rejoined), default=0.0),
        step=max((join.step for join in rejoined), default=0.0),
        clearance=float(units[0].cut_side) - max(bounds.right, bounds.bottom),
        shape_area=sum(_shape(units[p.unit].sewn_layers).area() for p in parts) / len(parts),
        wanted_area=shape.traced.area() / len(parts),
    )


def _shape(layers: tuple[Layer, ...]) -> Region:
    return Region(tuple(p for layer in layers if layer.part == SHAPE for p in layer.region.paths))


def _crossing(unit: Unit) -> float:
    """Return how far from the finished corner the shape's edge leaves a seam."""
    side, right, low = float(unit.side), unit.quarter.endswith("l"), unit.quarter.startswith("t")
    spans = side_spans(unit, 0)
    ends = [
        side - span.start if from_end else span.end
        for name, from_end in (("bottom" if low else "top", right), ("right" if right else "left", low))
        for span in spans[name]
        if span.part == SHAPE
    ]
    return max(ends, default=0.0)


def _along_diagonal(unit: Unit, parts: Sequence[Part]) -> float:
    """Return how far the shape reaches along the diagonal from the finished corner."""
    half = float(unit.side) / 2
    turns = {"": 0, "br": 0, "tr": 1, "tl": 2, "bl": 3}[unit.quarter]
    sewn = quarter_turns(turns, complex(half, half)).region(_shape(unit.sewn_layers))
    diagonal = StraightLine(0j, cmath.rect(1, math.pi / 4))
    kept = keep_left(sewn, diagonal)
    ends = [
        diagonal.along(p) for s in kept.segments() for p in (s.start, s.end) if abs(diagonal.side(p)) < 1e-7
    ]
    return max(ends, default=0.0)


@dataclass(frozen=True, slots=True)
class _Rejoined:
    """A place where the curve is rejoined over a seam: how far its two ends miss, and the corner they make."""

    step: float
    peak: float


@dataclass(frozen=True, slots=True)
class _End:
    """Where the curve runs off the cloth at a cut: its place along the cut, and the way it runs there."""

    at: float
    way: Point


def _rejoined(
    shape: FusedShape, cut: StraightLine, cuts: Sequence[StraightLine], seam: float
) -> Iterator[_Rejoined]:
    """Return where the curve is rejoined over the seam of one cut, seen in both halves of every other cut."""
    others = [c for c in cuts if c is not cut]
    for halves in itertools.product(*((c, c.reversed()) for c in others)):
        meant = _turns(shape.wanted, cut, halves, 0.0)
        sewn = _turns(shape.traced, cut, halves, seam)
        if len(meant) == len(sewn):
            for (step, turn), (_, wanted) in zip(sewn, meant, strict=True):
                yield _Rejoined(step, abs(math.degrees(cmath.phase(turn / wanted))))


def _turns(
    path: Path, cut: StraightLine, halves: Sequence[StraightLine], seam: float
) -> list[tuple[float, Point]]:
    """Return step and turn of each place where a curve passes from one side of a seam to the other, along it."""
    region = Region((path,))
    for half in halves:
        region = keep_left(region, half.moved_left(seam))
    (left_ends, left_starts), (right_ends, right_starts) = (
        _ends(region, cut, line.moved_left(seam)) for line in (cut, cut.reversed())
    )
    if (len(left_ends), len(left_starts)) != (len(right_starts), len(right_ends)):
        return []
    pairs = [*zip(left_ends, right_starts, strict=True), *zip(right_ends, left_starts, strict=True)]
    return [(abs(a.at - b.at), b.way / a.way) for a, b in pairs]


def _ends(region: Region, cut: StraightLine, line: StraightLine) -> tuple[list[_End], list[_End]]:
    """Return where the curves on the left of a line run out to it, and where they come from it, along the cut."""
    ends, starts = [], []
    for segment in keep_left(region, line).segments():
        if _lies_on(segment, line):
            continue
        if abs(line.side(segment.end)) < 1e-7:
            ends.append(_End(cut.along(segment.end), segment.tangent(1)))
        if abs(line.side(segment.start)) < 1e-7:
            starts.append(_End(cut.along(segment.start), segment.tangent(0)))
    return sorted(ends, key=lambda end: end.at), sorted(starts, key=lambda end: end.at)


def _lies_on(segment: Segment, line: StraightLine) -> bool:
    ends = (segment.start, segment.end)
    return isinstance(segment, Line) and max(abs(line.side(p)) for p in ends) < 10 * EPSILON
