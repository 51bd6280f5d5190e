"""Carrying out the steps from web and cloth blanks to shapes ready to fuse."""

from __future__ import annotations

from dataclasses import replace

from quarterturn.geometry import (
    Path,
    Region,
    is_same_mirrored,
    mirror_across_vertical,
    offset_region,
    region_bounds,
    same_region,
    uncovered_area,
)
from quarterturn.measure import MM
from quarterturn.proof.rehearsal.cloth import EQUAL, Ring, SpoiledError, cut_to
from quarterturn.proof.rehearsal.table import Table, all_used
from quarterturn.steps import CutOut, FuseRings, Step, TraceRings, Tracing

NARROWEST_RING = float(2 * MM)
"""Web must reach this far either side of the drawn line, in inches: less does not hold under the stitching."""

SLIVER = 1e-4
"""Areas below this, in square inches, are the noise of flattening curves."""


def ring_of(tracing: TraceRings | Tracing) -> Ring:
    """Return the ring that a tracing is cut out to. Raises SpoiledError where it would not hold, or lie right."""
    drawn = _drawn(tracing.traced, tracing.hole)
    _check_ring(drawn, tracing)
    if tracing.same_mirrored and not is_same_mirrored(tracing.traced, upright=True):
        raise SpoiledError("Traced as it comes, and laid by its vertical line, the shape would lie mirrored.")
    return Ring(drawn, tracing.ring_out, tracing.ring_in)


def _drawn(outline: Path, hole: Path | None) -> Region:
    return Region((outline, hole) if hole else (outline,))


def _check_ring(drawn: Region, action: TraceRings | Tracing) -> None:
    hollow = action.ring_in
    if uncovered_area(offset_region(drawn, NARROWEST_RING), [action.ring_out]) > SLIVER:
        raise SpoiledError("The ring does not reach beyond the drawn line.")
    if hollow.is_empty():
        return
    if uncovered_area(hollow, [offset_region(drawn, -NARROWEST_RING)]) > SLIVER:
        raise SpoiledError("The hollow leaves no web inside the drawn line.")


def fuse_rings(table: Table, step: Step, action: FuseRings) -> None:
    """Fuse rings to the wrong side of cloth blanks."""
    rings, blanks = step.uses
    (product,) = step.makes
    if not rings.count == blanks.count == product.count:
        raise SpoiledError("Each blank takes one ring.")
    ring, blank = table.take_ring(rings), table.take_patch(blanks).lying(product.width, product.height)
    web, box = region_bounds(ring.out), blank.box
    if web.width > box.width + EQUAL or web.height > box.height + EQUAL:
        raise SpoiledError("The ring is larger than its cloth.")
    table.put(product, replace(blank, backing=ring))


def cut_out(table: Table, step: Step, action: CutOut) -> None:
    """Cut shapes out on the line. Drawn on the paper side, they are seen mirrored from the right side."""
    (pile,), (product,) = step.uses, step.makes
    all_used(pile.count, product.count)
    blank = table.take_patch(pile)
    lines = _drawn(action.traced, action.hole)
    if blank.backing is None or not same_region(blank.backing.drawn, lines):
        raise SpoiledError("The line to cut on is not the line drawn on the web.")
    (cloth,), over = blank.scraps, mirror_across_vertical()
    shape = cut_to(cloth.fabric, over.region(lines), cloth.print)
    table.put(product, replace(shape, fusible=True, loose=over.region(blank.backing.hollow)))
