"""Carrying out the steps from web and squares to units."""

from __future__ import annotations

import math
from dataclasses import replace

from quarterturn.geometry import (
    Point,
    Region,
    StraightLine,
    keep_left,
    line_through,
    mirror_across_vertical,
    offset_path,
    path_bounds,
    path_crossings,
    rectangle,
    region_bounds,
    same_outline,
    shift,
    uncovered_area,
)
from quarterturn.measure import MM
from quarterturn.proof.rehearsal.cloth import (
    EQUAL,
    Patch,
    Ring,
    SpoiledError,
    cut_to,
    keep,
    same_cloth,
    with_scrap,
)
from quarterturn.proof.rehearsal.table import Table
from quarterturn.steps import (
    Crease,
    CutApart,
    CutAway,
    CutOut,
    FuseRings,
    FuseToGround,
    Step,
    StitchEdge,
    TraceRings,
    Trim,
)

NARROWEST_RING = float(2 * MM)
"""Web must reach this far either side of the drawn line, in inches: less does not hold under the stitching."""

CLEAR_OF_CUTS = 0.25
"""Stitching starts and ends at least so far from a cut to come, in inches (common practice: away from cuts)."""

SLIVER = 1e-4
"""Areas below this, in square inches, are the noise of flattening curves."""


def trace_rings(table: Table, step: Step, action: TraceRings) -> None:
    """Trace shapes on the web in rows, and cut the rings out."""
    (product,) = step.makes
    ring = region_bounds(action.ring_out)
    if ring.width > action.room_width + EQUAL or ring.height > action.room_height + EQUAL:
        raise SpoiledError("A ring is larger than the room it is given on the web.")
    row = action.per_row * (action.room_width + action.gap) - action.gap
    if action.per_row < 1 or row > table.supplies.web.width or action.gap < 0:
        raise SpoiledError(f"{action.per_row} rings do not fit across the web.")
    rows = math.ceil(product.count / action.per_row)
    table.unroll(rows * (action.room_height + action.gap) - action.gap, action.gap)
    _check_ring(action)
    table.put(product, Ring(action.traced, action.ring_out))


def _check_ring(action: TraceRings) -> None:
    hollow = action.ring_in
    wide_enough = offset_path(action.traced, NARROWEST_RING)
    if uncovered_area(wide_enough, [action.ring_out]) > SLIVER:
        raise SpoiledError("The ring does not reach beyond the drawn line.")
    if (
        not hollow.is_empty()
        and uncovered_area(hollow, [offset_path(action.traced, -NARROWEST_RING)]) > SLIVER
    ):
        raise SpoiledError("The hollow leaves no web inside the drawn line.")


def fuse_rings(table: Table, step: Step, action: FuseRings) -> None:
    """Fuse rings to the wrong side of cloth blanks."""
    rings, blanks = step.uses
    (product,) = step.makes
    if not rings.count == blanks.count == product.count:
        raise SpoiledError("Each blank takes one ring.")
    ring, blank = table.take_ring(rings), table.take_patch(blanks).centred()
    web, box = region_bounds(ring.out), blank.box
    if web.width > box.width + EQUAL or web.height > box.height + EQUAL:
        raise SpoiledError("The ring is larger than its cloth.")
    table.put(product, replace(blank, backing=ring))


def cut_out(table: Table, step: Step, action: CutOut) -> None:
    """Cut shapes out on the line. Drawn on the paper side, they are seen mirrored from the right side."""
    (pile,), (product,) = step.uses, step.makes
    _all_used(pile.count, product.count)
    blank = table.take_patch(pile)
    if blank.backing is None or not same_outline(blank.backing.traced, action.traced):
        raise SpoiledError("The line to cut on is not the line drawn on the web.")
    right_side = mirror_across_vertical().path(action.traced)
    table.put(product, replace(cut_to(blank.scraps[0].fabric, right_side), fusible=True))


def crease(table: Table, step: Step, action: Crease) -> None:
    """Crease squares through their middle."""
    (pile,), (product,) = step.uses, step.makes
    _all_used(pile.count, product.count)
    square = table.take_patch(pile).centred()
    if not action.cuts or any(abs(line.side(0j)) > EQUAL for line in action.cuts):
        raise SpoiledError("A crease misses the middle of the square.")
    table.put(product, replace(square, middle=0j, creases=action.cuts))


def fuse_to_ground(table: Table, step: Step, action: FuseToGround) -> None:
    """Fuse a shape to the middle of a creased square."""
    squares, shapes = step.uses
    (product,) = step.makes
    if not squares.count == shapes.count == product.count:
        raise SpoiledError("Each square takes one shape.")
    square, shape = table.take_patch(squares), table.take_patch(shapes)
    if square.middle is None or not square.creases:
        raise SpoiledError("The square has no creases to centre the shape on.")
    if not shape.fusible:
        raise SpoiledError("There is no web on the shape.")
    outline = shift(square.middle - path_bounds(shape.edge).centre).path(shape.edge)
    if uncovered_area(Region((outline,)), [Region((square.edge,))]) > SLIVER:
        raise SpoiledError("The shape is larger than its square.")
    fused = with_scrap(square, shape.scraps[0].fabric, Region((outline,)))
    table.put(product, replace(fused, shape=outline))


def stitch_edge(table: Table, step: Step, action: StitchEdge) -> None:
    """Stitch round a fused shape."""
    (pile,), (product,) = step.uses, step.makes
    _all_used(pile.count, product.count)
    master = table.take_patch(pile)
    if master.shape is None:
        raise SpoiledError("There is no edge to stitch.")
    if abs(master.shape.length() - action.edge) > EQUAL:
        raise SpoiledError(f"The edge is {master.shape.length():.4f} inches long, not {action.edge:.4f}.")
    if not _is_on_edge(action.start, master):
        raise SpoiledError("The stitching starts beside the edge.")
    if any(abs(line.side(action.start)) < CLEAR_OF_CUTS for line in master.creases):
        raise SpoiledError("A cut would go through the start of the stitching.")
    if action.thread_fabric != master.scraps[-1].fabric:
        raise SpoiledError("The thread matches another fabric than the shape's.")
    table.put(product, replace(master, stitched=True))


def _is_on_edge(start: Point, master: Patch) -> bool:
    if master.shape is None or master.middle is None or start == master.middle:
        return False
    crossings = path_crossings(master.shape, line_through(master.middle, start))
    return any(abs(point - start) < EQUAL for point in (*crossings, *master.shape.corners()))


def cut_apart(table: Table, step: Step, action: CutApart) -> None:
    """Cut masters along their creases. Of each cut the part on its positive side comes first."""
    (pile,) = step.uses
    master = table.take_patch(pile)
    if not master.stitched:
        raise SpoiledError("The edge has not been stitched.")
    if any(not _along_crease(line, master) for line in action.cuts):
        raise SpoiledError("A cut does not lie on a crease.")
    pieces = [master]
    for line in action.cuts:
        pieces = [half for p in pieces for half in (keep(p, line), keep(p, line.reversed())) if half]
    if len(pieces) != len(action.parts):
        raise SpoiledError(f"The cuts leave {len(pieces)} pieces, not {len(action.parts)}.")
    _lay_parts(table, step, action, pieces)


def _along_crease(line: StraightLine, master: Patch) -> bool:
    return any(
        abs(c.side(line.through)) < EQUAL and abs(c.side(line.at(1.0))) < EQUAL for c in master.creases
    )


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


def cut_away(table: Table, step: Step, action: CutAway) -> None:
    """Cut the ground away behind the shape."""
    (pile,), (product,) = step.uses, step.makes
    _all_used(pile.count, product.count)
    unit = table.take_patch(pile)
    if unit.shape is None or not unit.stitched:
        raise SpoiledError("There is no stitched shape to cut away behind.")
    if action.inside < 2 * MM:
        raise SpoiledError("Cutting so near would cut the stitches.")
    hollow = offset_path(unit.shape, -float(action.inside))
    if unit.middle is not None:
        hollow = _within(hollow, unit)
    ground = replace(unit.scraps[0], hollow=hollow)
    if uncovered_area(hollow, [unit.scraps[-1].region]) > SLIVER:
        raise SpoiledError("More would be cut away than the shape covers.")
    table.put(product, replace(unit, scraps=(ground, *unit.scraps[1:])))


def _within(hollow: Region, unit: Patch) -> Region:
    for segment in unit.edge.segments:
        along = segment.tangent(0)
        hollow = keep_left(hollow, StraightLine(segment.start, along / abs(along)))
    return hollow


def trim(table: Table, step: Step, action: Trim) -> None:
    """Trim units to a square, measured from the two edges that were cut through the middle."""
    (pile,), (product,) = step.uses, step.makes
    _all_used(pile.count, product.count)
    unit, side = table.take_patch(pile), float(action.side)
    box = unit.box
    if unit.middle is None:
        raise SpoiledError("The unit has no centre-cut edges to measure from.")
    if side > box.width + EQUAL or side > box.height + EQUAL:
        raise SpoiledError(
            f"The unit measures {box.width:.4f} by {box.height:.4f} inches: less than {side:.4f}."
        )
    towards = box.centre - unit.middle
    across, down = math.copysign(side, towards.real), math.copysign(side, towards.imag)
    left, right = sorted((unit.middle.real, unit.middle.real + across))
    top, bottom = sorted((unit.middle.imag, unit.middle.imag + down))
    trimmed: Patch | None = unit
    for edge in rectangle(left, top, right, bottom).segments:
        way = edge.tangent(0)
        trimmed = keep(trimmed, StraightLine(edge.start, way / abs(way))) if trimmed else None
    if trimmed is None:
        raise SpoiledError("Nothing is left after trimming.")
    table.put(product, trimmed)


def _all_used(used: int, made: int) -> None:
    if used != made:
        raise SpoiledError(f"{used} pieces go in and {made} come out.")
