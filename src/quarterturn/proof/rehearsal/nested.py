"""Carrying out the tracing of rings in the centres of others: no two rings may take the same web."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from typing import TYPE_CHECKING

from quarterturn.geometry import Region, as_polygon, region_bounds, uncovered_area
from quarterturn.materials import TracedPlace
from quarterturn.proof.rehearsal.cloth import EQUAL, Ring, SpoiledError
from quarterturn.proof.rehearsal.shapes import ring_of
from quarterturn.proof.rehearsal.table import Table
from quarterturn.steps import Step, TraceNested

if TYPE_CHECKING:
    from shapely.geometry.base import BaseGeometry

OVERLAP = 1e-3
"""Web that two rings share, in square inches, below which they only touch: curves are flattened for this."""

NEAR = 1e-3
"""Inches that two rings may be nearer than their gap, likewise."""


def trace_nested(table: Table, step: Step, action: TraceNested) -> None:
    """Trace every shape at its place on one length of web, and cut the rings out."""
    rings = {tracing.shape: ring_of(tracing) for tracing in action.tracings}
    counted = Counter(place.shape for place in action.places)
    promised = list(zip(rings, step.makes, strict=False))
    if len(rings) != len(step.makes) or counted != Counter({name: made.count for name, made in promised}):
        raise SpoiledError("The places on the web are not as many as the rings that are promised.")
    table.unroll(action.length, action.gap)
    for place in action.places:
        _check_on_web(table, action, place, rings[place.shape])
        if place.within is not None:
            owner = action.places[place.within % len(action.places)]
            _check_in_centre(place, rings[place.shape], owner, rings[owner.shape])
    _check_apart([_web(place, rings[place.shape]) for place in action.places], float(action.gap))
    for name, product in promised:
        table.put(product, rings[name])


def _check_on_web(table: Table, action: TraceNested, place: TracedPlace, ring: Ring) -> None:
    """Raise SpoiledError where a ring is flipped over or reaches beyond the web."""
    if place.motion.mirrored:
        raise SpoiledError("A template is printed on one side only: it cannot be flipped over.")
    box = region_bounds(place.motion.region(ring.out))
    over = float(table.supplies.web.width) - box.right, float(action.length) - box.bottom
    if min(box.left, box.top, *over) < -EQUAL:
        raise SpoiledError(f"A ring of {place.shape} reaches over the edge of the web.")


def _check_in_centre(place: TracedPlace, ring: Ring, owner: TracedPlace, around: Ring) -> None:
    """Raise SpoiledError unless what is cut out of one ring holds the other, whole."""
    whole = max(ring.out.paths, key=lambda path: path.area())
    holes = (path.reversed() for path in around.out.paths if path.area() < 0)
    centre = owner.motion.region(Region((*around.hollow.paths, *holes)))
    if uncovered_area(Region((place.motion.path(whole),)), [centre]) > OVERLAP:
        raise SpoiledError(f"A ring of {place.shape} does not lie in the centre of a {owner.shape} ring.")


def _web(place: TracedPlace, ring: Ring) -> BaseGeometry:
    """Return the web that a ring takes: its hollow is left for others."""
    band = Region((*ring.out.paths, *(path.reversed() for path in ring.hollow.paths)))
    return as_polygon(place.motion.region(band))


def _check_apart(bands: Sequence[BaseGeometry], gap: float) -> None:
    import shapely

    tree = shapely.STRtree(bands)
    for one, other in zip(*tree.query(bands, "dwithin", max(gap - NEAR, 0.0)), strict=True):
        if one < other and (gap > NEAR or bands[one].intersection(bands[other]).area > OVERLAP):
            raise SpoiledError("Rings would be drawn over one another on the web.")
