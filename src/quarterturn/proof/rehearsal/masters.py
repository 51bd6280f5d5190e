"""Carrying out the steps from ground and shapes to masters cut apart."""

from __future__ import annotations

import itertools
from collections.abc import Iterable, Sequence
from dataclasses import replace

from quarterturn.geometry import (
    Motion,
    Path,
    Point,
    Region,
    StraightLine,
    is_inside,
    line_through,
    path_bounds,
    path_crossings,
    same_outline,
    shared_area,
    uncovered_area,
)
from quarterturn.proof.rehearsal.cloth import (
    EQUAL,
    Fused,
    Marks,
    Patch,
    Scrap,
    SpoiledError,
    keep,
    same_cloth,
    with_shape,
)
from quarterturn.proof.rehearsal.shapes import SLIVER
from quarterturn.proof.rehearsal.table import Table, all_used
from quarterturn.steps import Crease, CutApart, FuseToGround, Place, Step, StitchEdge

CLEAR_OF_CUTS = 0.25
"""Stitching starts and ends at least so far from a cut, in inches (common practice: away from cuts)."""

AS_CLEAR = 0.5
"""On a shape too small for that, at least this share of as far as can be."""


def crease(table: Table, step: Step, action: Crease) -> None:
    """Crease pieces of ground through their middle, draw lines on them and mark points."""
    (pile,), (product,) = step.uses, step.makes
    all_used(pile.count, product.count)
    ground = table.take_patch(pile).lying(product.width, product.height)
    if not action.folds or any(abs(line.side(0j)) > EQUAL for line in action.folds):
        raise SpoiledError("A crease misses the middle of the square.")
    if not all(same_outline(_mirroring(line).path(ground.edge), ground.edge) for line in action.folds):
        raise SpoiledError("Folded there, the two halves of the ground do not lie on one another.")
    if any(keep(ground, way) is None for line in action.drawn for way in (line, line.reversed())):
        raise SpoiledError("A line to draw misses the ground.")
    if action.middles and not _cross(action.folds):
        raise SpoiledError("There are no two creases to measure from.")
    if not all(is_inside(point, Region((ground.edge,))) for point in action.middles):
        raise SpoiledError("A point to mark lies beside the ground.")
    middle = (0j,) if _cross(action.folds) else ()
    marks = Marks(action.folds, action.drawn, (*middle, *action.middles))
    table.put(product, replace(ground, marks=marks))


def _mirroring(line: StraightLine) -> Motion:
    factor = line.direction**2
    return Motion(factor, line.through - factor * line.through.conjugate(), mirrored=True)


def _cross(lines: Iterable[StraightLine]) -> bool:
    """Tell whether two of the lines cross."""
    pairs = itertools.combinations(lines, 2)
    return any(abs((a.direction.conjugate() * b.direction).imag) > EQUAL for a, b in pairs)


def fuse_to_ground(table: Table, step: Step, action: FuseToGround) -> None:
    """Fuse shapes to their marks on creased ground."""
    grounds, shapes = step.uses
    (product,) = step.makes
    if grounds.count != product.count or shapes.count != grounds.count * len(action.places):
        raise SpoiledError("Each square takes one shape for every place.")
    ground, shape = table.take_patch(grounds), table.take_patch(shapes)
    if not shape.fusible:
        raise SpoiledError("There is no web on the shape.")
    for place in action.places:
        ground = _laid_down(ground, shape, place)
    table.put(product, ground)


def _laid_down(ground: Patch, shape: Patch, place: Place) -> Patch:
    """Fuse one shape down, the middle of its box on a mark."""
    (cloth,) = shape.scraps
    if place.motion.mirrored:
        raise SpoiledError("A shape would be fused face down.")
    if not any(abs(place.motion(0j) - mark) < EQUAL for mark in ground.marks.points):
        raise SpoiledError("The ground has no mark to centre the shape on.")
    if any(lower.number == place.number for lower in ground.shapes):
        raise SpoiledError("A shape lies there already.")
    region = place.motion.region(cloth.region)
    if uncovered_area(Region(region.paths[:1]), [Region((ground.edge,))]) > SLIVER:
        raise SpoiledError("The shape is larger than its square.")
    for lower in ground.shapes:
        if not lower.stitched and shared_area(lower.region, region) > SLIVER:
            raise SpoiledError("The shape would lie on another whose edge has not been stitched.")
    fused = Fused(place.number, region, place.motion.region(shape.loose))
    return with_shape(ground, cloth.moved(place.motion), fused)


def stitch_edge(table: Table, step: Step, action: StitchEdge) -> None:
    """Stitch round fused shapes."""
    (pile,), (product,) = step.uses, step.makes
    all_used(pile.count, product.count)
    master = table.take_patch(pile)
    todo = [s for s in master.shapes if s.number in action.numbers and not s.stitched]
    if not todo or len(todo) != len(action.numbers):
        raise SpoiledError("There is no edge to stitch.")
    edge = sum(shape.region.perimeter() for shape in todo)
    if abs(edge - action.edge) > EQUAL:
        raise SpoiledError(f"The edge is {edge:.4f} inches long, not {action.edge:.4f}.")
    edges = [path for shape in todo for path in shape.region.paths]
    if len(edges) != len(action.starts):
        raise SpoiledError("Every closed edge needs one place to start stitching.")
    if not all(_is_on(start, path) for start, path in zip(action.starts, edges, strict=True)):
        raise SpoiledError("The stitching starts beside the edge.")
    if any(action.thread_fabric != _scrap_of(master, shape).fabric for shape in todo):
        raise SpoiledError("The thread matches another fabric than the shape's.")
    table.put(product, replace(master, shapes=tuple(_stitched(s, todo, action) for s in master.shapes)))


def _stitched(shape: Fused, todo: list[Fused], action: StitchEdge) -> Fused:
    if shape not in todo:
        return shape
    before = sum(len(other.region.paths) for other in todo[: todo.index(shape)])
    knots = action.starts[before : before + len(shape.region.paths)]
    return replace(shape, stitched=True, knots=knots, swing=float(action.stitch.width))


def _scrap_of(patch: Patch, shape: Fused) -> Scrap:
    return next(scrap for scrap in patch.scraps if scrap.number == shape.number)


def _is_on(point: Point, path: Path) -> bool:
    """Tell whether a point lies on a closed path: seen from the middle of its box, or square to that."""
    middle = path_bounds(path).centre
    if abs(point - middle) < EQUAL:
        return False
    across = point + 1j * (point - middle)
    found = [p for end in (middle, across) for p in path_crossings(path, line_through(point, end))]
    return any(abs(p - point) < EQUAL for p in (*found, *path.corners()))


def cut_apart(table: Table, step: Step, action: CutApart) -> None:
    """Cut masters along their creases and drawn lines. Of each cut the part on its positive side comes first."""
    (pile,) = step.uses
    master = table.take_patch(pile)
    if not all(shape.stitched for shape in master.shapes):
        raise SpoiledError("The edge has not been stitched.")
    shown = (*master.marks.creases, *master.marks.drawn)
    if any(not any(_same_line(line, mark) for mark in shown) for line in action.cuts):
        raise SpoiledError("A cut does not lie on a crease.")
    for shape in master.shapes:
        for knot, edge in zip(shape.knots, shape.region.paths, strict=True):
            if _off(knot, action.cuts) < CLEAR_OF_CUTS and not _is_as_clear(knot, edge, action.cuts):
                raise SpoiledError("A cut would go through the start of the stitching.")
    pieces = [replace(master, marks=replace(master.marks, cuts=action.cuts))]
    for line in action.cuts:
        pieces = [half for p in pieces for half in (keep(p, line), keep(p, line.reversed())) if half]
    if len(pieces) != len(action.parts):
        raise SpoiledError(f"The cuts leave {len(pieces)} pieces, not {len(action.parts)}.")
    _lay_parts(table, step, action, pieces)


def _off(point: Point, cuts: Sequence[StraightLine]) -> float:
    """Return how far a point lies from the nearest cut."""
    return min((abs(line.side(point)) for line in cuts), default=CLEAR_OF_CUTS)


def _is_as_clear(knot: Point, edge: Path, cuts: Sequence[StraightLine]) -> bool:
    """Tell whether a start on an edge lies about as far from all cuts as any can, where none lies far enough."""
    farthest = max(_off(segment.point(k / 32), cuts) for segment in edge.segments for k in range(33))
    return farthest < CLEAR_OF_CUTS and _off(knot, cuts) > AS_CLEAR * farthest


def _same_line(a: StraightLine, b: StraightLine) -> bool:
    return abs(b.side(a.through)) < EQUAL and abs(b.side(a.at(1.0))) < EQUAL


def _lay_parts(table: Table, step: Step, action: CutApart, pieces: list[Patch]) -> None:
    (pile,) = step.uses
    kinds: dict[str, Patch] = {}
    counts: dict[str, int] = {}
    for (label, motion), piece in zip(action.parts, pieces, strict=True):
        laid = piece.moved(motion)
        if not same_cloth(kinds.setdefault(label, laid), laid):
            raise SpoiledError(f"Not every '{label}' is the same.")
        counts[label] = counts.get(label, 0) + pile.count
    if counts != {product.label: product.count for product in step.makes}:
        raise SpoiledError("The units cut are not the units promised.")
    for product in step.makes:
        table.put(product, kinds[product.label])
