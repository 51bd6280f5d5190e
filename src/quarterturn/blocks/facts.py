"""What the seams make of the curves, measured on the sewn units themselves. Tests compare with the closed forms."""

from __future__ import annotations

import cmath
import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import TypeAlias

from quarterturn.blocks.edges import side_spans
from quarterturn.blocks.model import GROUND, CurveFacts, FusedShape, Layer, Part, Unit
from quarterturn.design import QUARTERS
from quarterturn.geometry import (
    EPSILON,
    MOST_DIRECTIONS,
    Line,
    Path,
    Point,
    Region,
    Segment,
    StraightLine,
    as_polygon,
    directions_of,
    joined,
    keep_left,
    path_bounds,
    quarter_turns,
    region_bounds,
    seam_lines,
    shift,
)


def curve_facts(
    units: Sequence[Unit],
    parts: Sequence[Part],
    shapes: Sequence[FusedShape],
    cuts: Sequence[StraightLine],
    trimmed: Path,
) -> CurveFacts:
    """Return the facts of the shapes of a master that these cuts leave in these units.

    `trimmed` is the outline to which the whole master would be trimmed.
    """
    seam = float(units[0].seam)
    rejoined = meetings(shapes, cuts, seam)
    quartered = parts[0].name in QUARTERS and all(abs(cut.side(0j)) < EPSILON for cut in cuts)
    return CurveFacts(
        crossing=max(map(_crossing, units)) if quartered else 0.0,
        diagonal=_along_diagonal(units[0]) if quartered else 0.0,
        peak=max((join.peak for join in rejoined), default=0.0),
        step=max((join.step for join in rejoined), default=0.0),
        clearance=_clearance(shapes, trimmed),
        shape_area=sum(_area([each.region for each in _shapes(units[p.unit])]) for p in parts) / len(parts),
        wanted_area=_area([shape.region for shape in shapes]) / len(parts),
    )


def _clearance(shapes: Sequence[FusedShape], trimmed: Path) -> float:
    edge, bounds = path_bounds(trimmed), [path_bounds(shape.traced) for shape in shapes]
    return min(
        min(edge.right - box.right, edge.bottom - box.bottom, box.left - edge.left, box.top - edge.top)
        for box in bounds
    )


def _shapes(unit: Unit) -> list[Layer]:
    return [layer for layer in unit.sewn_layers if layer.part != GROUND]


def _area(regions: Sequence[Region]) -> float:
    """Return the area that regions cover together; to the last digit unless they overlap."""
    boxes = [region_bounds(region) for region in regions]
    apart = all(
        a.right <= b.left or b.right <= a.left or a.bottom <= b.top or b.bottom <= a.top
        for k, a in enumerate(boxes)
        for b in boxes[:k]
    )
    if apart:
        return sum(region.area() for region in regions)
    whole = as_polygon(Region(()))
    for region in regions:
        whole = joined(whole, as_polygon(region))
    return float(whole.area)


def _crossing(unit: Unit) -> float:
    """Return how far from the finished corner a shape's edge leaves a seam."""
    right, low = unit.quarter.endswith("l"), unit.quarter.startswith("t")
    spans = side_spans(unit, 0)
    ends = [
        length - span.start if from_end else span.end
        for name, from_end, length in (
            ("bottom" if low else "top", right, float(unit.width)),
            ("right" if right else "left", low, float(unit.height)),
        )
        for span in spans[name]
        if span.part != GROUND
    ]
    return max(ends, default=0.0)


def _along_diagonal(unit: Unit) -> float:
    """Return how far the shapes reach from the finished corner, square to both seams alike."""
    middle = complex(float(unit.width), float(unit.height)) / 2
    turns = {"": 0, "br": 0, "tr": 1, "tl": 2, "bl": 3}[unit.quarter]
    turn = quarter_turns(turns, middle)
    corner = turn(complex(*_corner(unit)))
    diagonal = StraightLine(corner, cmath.rect(1, math.pi / 4))
    kept = [keep_left(turn.region(layer.region), diagonal) for layer in _shapes(unit)]
    ends = [
        diagonal.along(p)
        for region in kept
        for s in region.segments()
        for p in (s.start, s.end)
        if abs(diagonal.side(p)) < 1e-7
    ]
    return max(ends, default=0.0)


def _corner(unit: Unit) -> tuple[float, float]:
    """Return the corner of a unit that came from the middle of the master."""
    x = float(unit.width) if unit.quarter.endswith("l") else 0.0
    y = float(unit.height) if unit.quarter.startswith("t") else 0.0
    return x, y


@dataclass(frozen=True, slots=True)
class Meeting:
    """A place where a curve is rejoined over a seam: how far its two ends miss, and the corner they make.

    `at` lies in the sewn plane of `geometry.spread`: all pieces sewn, about the middle of the master.
    """

    step: float
    peak: float
    at: Point


def meetings(shapes: Sequence[FusedShape], cuts: Sequence[StraightLine], seam: float) -> tuple[Meeting, ...]:
    """Return where the curves of a master are rejoined; none where its cuts run in more than two directions."""
    return tuple(join for shape in shapes for join in _rejoined(shape, cuts, seam))


@dataclass(frozen=True, slots=True)
class _End:
    """Where the curve runs off the cloth at a seam: its place along the seam, and the way it runs there."""

    at: float
    way: Point


def _rejoined(shape: FusedShape, cuts: Sequence[StraightLine], seam: float) -> Iterator[Meeting]:
    """Return where the curves of a shape are rejoined over the seams, seen in the sewn plane of `geometry.spread`.

    Cuts in more than two directions cannot all be rejoined, so nothing is said of them.
    """
    if len(directions_of(cuts)) > MOST_DIRECTIONS:
        return
    seams = seam_lines(cuts, seam)
    paths = [(shape.wanted, shape.traced)]
    if shape.hole and shape.wanted_hole:
        paths.append((shape.wanted_hole.reversed(), shape.hole.reversed()))
    for wanted, traced in paths:
        meant = _cells(wanted, [each.line for each in seams], 0.0)
        sewn = _cells(traced, cuts, seam)
        for signs, region in sewn.items():
            back = sum((each.move * sign for each, sign in zip(seams, signs, strict=True)), 0j)
            sewn[signs] = shift(-back).region(region)
        for number, each in enumerate(seams):
            yield from _compared(meant, sewn, number, each.line)


Signs: TypeAlias = tuple[int, ...]
"""For each cut 1 on its left, −1 on its right."""


def _cells(path: Path, lines: Sequence[StraightLine], inset: float) -> dict[Signs, Region]:
    """Return what of the inside of a path lies in each cell between lines, farther than `inset` from each."""
    cells: dict[Signs, Region] = {(): Region((path,))}
    for line in lines:
        halves = {
            (*signs, sign): keep_left(region, way.moved_left(inset))
            for signs, region in cells.items()
            for sign, way in ((1, line), (-1, line.reversed()))
        }
        cells = {signs: region for signs, region in halves.items() if not region.is_empty()}
    return cells


def _compared(
    meant: Mapping[Signs, Region], sewn: Mapping[Signs, Region], number: int, line: StraightLine
) -> Iterator[Meeting]:
    """Return the rejoined places along one seam: where as many curves cross it as are meant to."""
    for signs in sewn:
        other = (*signs[:number], -1, *signs[number + 1 :])
        if signs[number] == -1 or not all(
            each in cells for each in (signs, other) for cells in (meant, sewn)
        ):
            continue
        wanted = _turns(meant[signs], meant[other], line)
        found = _turns(sewn[signs], sewn[other], line)
        if len(wanted) == len(found):
            for (step, turn, at), (_, true, _) in zip(found, wanted, strict=True):
                yield Meeting(step, abs(math.degrees(cmath.phase(turn / true))), at)


def _turns(left: Region, right: Region, line: StraightLine) -> list[tuple[float, Point, Point]]:
    """Return step, turn and place wherever a curve passes from one side of a seam to the other, along it."""
    (left_ends, left_starts), (right_ends, right_starts) = (_ends(region, line) for region in (left, right))
    if (len(left_ends), len(left_starts)) != (len(right_starts), len(right_ends)):
        return []
    pairs = [*zip(left_ends, right_starts, strict=True), *zip(right_ends, left_starts, strict=True)]
    return [
        (abs(a.at - b.at), b.way / a.way, line.through + line.direction * (a.at + b.at) / 2) for a, b in pairs
    ]


def _ends(region: Region, line: StraightLine) -> tuple[list[_End], list[_End]]:
    """Return where the curves of a region run out to a line, and where they come from it, along it."""
    ends, starts = [], []
    for segment in region.segments():
        if _lies_on(segment, line):
            continue
        if abs(line.side(segment.end)) < 1e-7:
            ends.append(_End(line.along(segment.end), segment.tangent(1)))
        if abs(line.side(segment.start)) < 1e-7:
            starts.append(_End(line.along(segment.start), segment.tangent(0)))
    return sorted(ends, key=lambda end: end.at), sorted(starts, key=lambda end: end.at)


def _lies_on(segment: Segment, line: StraightLine) -> bool:
    ends = (segment.start, segment.end)
    return isinstance(segment, Line) and max(abs(line.side(p)) for p in ends) < 10 * EPSILON
