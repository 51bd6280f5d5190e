"""Carrying out the steps that finish units: cutting away, trimming, rejoining halves."""

from __future__ import annotations

import cmath
import math
from collections.abc import Iterator, Sequence
from dataclasses import replace

from quarterturn.geometry import (
    Line,
    Point,
    Region,
    StraightLine,
    as_polygon,
    from_polygons,
    keep_left,
    line_through,
    offset_region,
    shared_area,
    uncovered_area,
    without,
)
from quarterturn.measure import MM
from quarterturn.proof.rehearsal.cloth import (
    EQUAL,
    GROUND,
    CutOff,
    Fused,
    Marks,
    Patch,
    Scrap,
    SpoiledError,
    facing,
    keep,
    sew,
)
from quarterturn.proof.rehearsal.shapes import SLIVER
from quarterturn.proof.rehearsal.table import Table, all_used
from quarterturn.steps import Behind, CutAway, Pile, Reference, Rejoin, Step, Trim, TrimLine

NEAREST_CUT = 2 * MM
"""Cutting away nearer than this to stitches cuts them, in inches (common practice)."""


def cut_away(table: Table, step: Step, action: CutAway) -> None:
    """Cut away what lies behind the shapes of units."""
    (pile,), (product,) = step.uses, step.makes
    all_used(pile.count, product.count)
    unit = table.take_patch(pile)
    there = {scrap.number for scrap in unit.scraps} - {GROUND}
    named = [behind.number for behind in (*action.behind, *action.narrow)]
    if sorted(named) != sorted(there):
        raise SpoiledError("The step does not say what to do behind every shape.")
    before = {scrap.number: scrap for scrap in unit.scraps}
    for behind in (*action.behind, *action.narrow):
        unit = _cut_behind(unit, behind)
    table.fallen += fallen_off([(before[scrap.number], scrap) for scrap in unit.scraps], product.count)
    table.put(product, unit)


def fallen_off(layers: Sequence[tuple[Scrap, Scrap]], count: int) -> Iterator[CutOff]:
    """Return the pieces that fell off layers, each given as it was before and after, of so many equal units."""
    for before, after in layers:
        taken = Region(after.hollow.paths[len(before.hollow.paths) :])
        if taken.is_empty():
            continue
        cloth = without(as_polygon(before.region), as_polygon(before.hollow))
        for path in from_polygons(cloth.intersection(as_polygon(taken))).paths:
            if path.area() > 0:
                yield CutOff(before.fabric, Region((path,)), count)


def _cut_behind(unit: Patch, behind: Behind) -> Patch:
    shape = next((s for s in unit.shapes if s.number == behind.number and s.stitched), None)
    numbers = [scrap.number for scrap in unit.scraps]
    if shape is None or behind.number not in numbers:
        raise SpoiledError("There is no stitched shape to cut away behind.")
    if behind.inside < NEAREST_CUT:
        raise SpoiledError("Cutting so near would cut the stitches.")
    above = numbers.index(behind.number)
    hollow = _hollow(unit, shape, float(behind.inside))
    within = _hollow(unit, shape, float(behind.inside) + shape.swing)
    if behind.layers and uncovered_area(within, [shape.loose]) > SLIVER:
        raise SpoiledError("What is to be cut away is glued down.")
    lower = [s for s in unit.scraps[:above] if not shape.loose.is_empty() and _is_cloth_at(s, hollow)]
    if [s.number for s in lower] != list(behind.layers):
        raise SpoiledError("What lies behind the shape is not what the step cuts away.")
    return replace(unit, scraps=tuple(_hollowed(s, hollow) if s in lower else s for s in unit.scraps))


def _hollow(unit: Patch, shape: Fused, inside: float) -> Region:
    """Return what lies so far inside the edge of a shape, and so far outside any that is stitched through it."""
    hollow = offset_region(shape.region, -inside)
    for segment in unit.edge.segments:
        hollow = keep_left(hollow, line_through(segment.start, segment.end))
    for upper in unit.shapes[unit.shapes.index(shape) + 1 :]:
        held = offset_region(upper.region, inside)
        if not hollow.is_empty() and shared_area(hollow, held) > SLIVER:
            hollow = from_polygons(without(as_polygon(hollow), as_polygon(held)))
    return hollow


def _is_cloth_at(scrap: Scrap, place: Region) -> bool:
    return not place.is_empty() and shared_area(place, scrap.region) > SLIVER


def _hollowed(scrap: Scrap, place: Region) -> Scrap:
    """Cut a place out of a layer; places behind different shapes lie apart."""
    return replace(scrap, hollow=Region((*scrap.hollow.paths, *place.paths)))


def trim(table: Table, step: Step, action: Trim) -> None:
    """Trim outer edges, each measured from its reference."""
    (pile,), (product,) = step.uses, step.makes
    all_used(pile.count, product.count)
    piece = table.take_patch(pile)
    if not action.lines:
        raise SpoiledError("There is nothing to trim.")
    for line in action.lines:
        piece = _trimmed(piece, line)
    table.put(product, piece)


def _trimmed(piece: Patch, trim: TrimLine) -> Patch:
    if abs(trim.line.side(_reference(piece, trim)) - trim.distance) > EQUAL:
        raise SpoiledError("The trim is not as far from its reference as the step says.")
    sides = [trim.line.side(corner) for corner in piece.edge.corners()]
    if min(sides) > EQUAL:
        raise SpoiledError("The piece does not reach the line on which it is to be trimmed.")
    trimmed = keep(piece, trim.line)
    if trimmed is None:
        raise SpoiledError("Nothing is left after trimming.")
    return trimmed


def _reference(piece: Patch, trim: TrimLine) -> Point:
    """Return a point to measure from, after checking that what the trim is measured from shows on the piece."""
    marks = piece.marks
    if trim.kind is Reference.SEAM:
        if marks.seam is None or not _lies_along(trim.reference, line_through(*marks.seam)):
            raise SpoiledError("There is no seam to measure the trim from.")
        return (marks.seam[0] + marks.seam[1]) / 2
    if abs((trim.line.direction.conjugate() * trim.reference.direction).imag) > EQUAL:
        raise SpoiledError("The trim does not run along with what it is measured from.")
    shows = _is_cut_edge if trim.kind is Reference.CUT else _is_crease
    if not shows(piece, trim.reference):
        raise SpoiledError(f"There is no {trim.kind.value} to measure the trim from.")
    return trim.reference.through


def _is_cut_edge(piece: Patch, line: StraightLine) -> bool:
    edges = (line_through(s.start, s.end) for s in piece.edge.segments if isinstance(s, Line))
    cut = any(_lies_along(line, other) for other in piece.marks.cuts)
    return cut and any(_lies_along(line, edge) for edge in edges)


def _is_crease(piece: Patch, line: StraightLine) -> bool:
    """Tell whether a crease runs over the piece."""
    sides = [line.side(corner) for corner in piece.edge.corners()]
    runs_over = min(sides) < -EQUAL and max(sides) > EQUAL
    return runs_over and any(_lies_along(line, crease) for crease in piece.marks.creases)


def _lies_along(a: StraightLine, b: StraightLine) -> bool:
    return abs(b.side(a.through)) < EQUAL and abs(b.side(a.at(1.0))) < EQUAL


def rejoin(table: Table, step: Step, action: Rejoin) -> None:
    """Sew two halves together along their cut edges and trim the ears."""
    (product,) = step.makes
    if step.uses != tuple(Pile(label, product.count) for label, _ in action.halves):
        raise SpoiledError("The halves to join are not the pieces taken.")
    if action.press_to not in (None, 0, 1):
        raise SpoiledError("The allowances cannot be pressed to a half that is not there.")
    halves = [
        table.take_patch(pile).moved(motion)
        for pile, (_, motion) in zip(step.uses, action.halves, strict=True)
    ]
    edges = [facing(half, way) for half, way in zip(halves, (action.way, -action.way), strict=True)]
    for half, edge in zip(halves, edges, strict=True):
        if not _is_cut_edge(half, line_through(edge.start, edge.end)):
            raise SpoiledError("Halves are joined along the edges where they were cut.")
    ears = _ears(halves, edges)
    if ears != action.ears:
        raise SpoiledError(f"Ears stand out at {ears} ends of the seam, not at {action.ears}.")
    joined = sew(halves[0], halves[1], action.way, action.seam)
    inside = action.way * float(action.seam)
    seam = (edges[0].start - inside, edges[0].end - inside)
    table.put(product, replace(joined, marks=Marks(seam=seam)))


def _ears(halves: list[Patch], edges: list[Line]) -> int:
    """Count the ends of a seam beyond which a folded allowance stands out: where its half is sharp there."""
    starts, ends = zip(*(_sharp(half, edge) for half, edge in zip(halves, edges, strict=True)), strict=True)
    return int(starts[0] or ends[1]) + int(ends[0] or starts[1])


def _sharp(half: Patch, edge: Line) -> tuple[bool, bool]:
    """Tell whether the corner at the start of an edge, and that at its end, is below a right angle."""
    sides = half.edge.segments
    before = next(s for s in sides if abs(s.end - edge.start) < EQUAL)
    after = next(s for s in sides if abs(s.start - edge.end) < EQUAL)
    way = edge.end - edge.start
    turns = (cmath.phase(way / before.tangent(1)), cmath.phase(after.tangent(0) / way))
    return turns[0] > math.pi / 2 + EQUAL, turns[1] > math.pi / 2 + EQUAL
