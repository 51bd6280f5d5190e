"""Carrying out the tracing of rings in the centres of others: no two rings may take the same web."""

from __future__ import annotations

from collections import Counter

from quarterturn.geometry import Region, as_polygon, region_bounds, uncovered_area
from quarterturn.materials import TracedPlace
from quarterturn.proof.rehearsal.apart import OVERLAP, check_apart, laid
from quarterturn.proof.rehearsal.cloth import EQUAL, Ring, SpoiledError
from quarterturn.proof.rehearsal.shapes import ring_of
from quarterturn.proof.rehearsal.table import Table
from quarterturn.steps import Step, TraceNested


def trace_nested(table: Table, step: Step, action: TraceNested) -> None:
    """Trace every shape at its place on one length of web, and cut the rings out."""
    rings = {tracing.shape: ring_of(tracing) for tracing in action.tracings}
    counted = Counter(place.shape for place in action.places)
    promised = list(zip(rings, step.makes, strict=False))
    if len(rings) != len(step.makes) or counted != Counter({name: made.count for name, made in promised}):
        raise SpoiledError("The places on the web are not as many as the rings that are promised.")
    sheets = _take_web(table, action)
    for place in action.places:
        _check_on_web(table, action, place, rings[place.shape])
        if place.within is not None:
            owner = action.places[place.within % len(action.places)]
            _check_in_centre(place, rings[place.shape], owner, rings[owner.shape])
    bands = {name: as_polygon(_band(ring)) for name, ring in rings.items()}
    for sheet in range(sheets):
        there = (place for place in action.places if place.sheet == sheet)
        check_apart([laid(bands[place.shape], place.motion) for place in there], float(action.gap))
    for name, product in promised:
        table.put(product, rings[name])


def _take_web(table: Table, action: TraceNested) -> int:
    """Take the length off the roll, or the sheets; return how many sheets there are, a roll being one."""
    if table.supplies.web.sheet is None:
        table.unroll(action.length, action.gap)
        return 1
    sheets = max((place.sheet for place in action.places), default=-1) + 1
    table.take_sheets(sheets)
    return sheets


def _band(ring: Ring) -> Region:
    """Return the web that a ring takes: its hollow is left for others."""
    return Region((*ring.out.paths, *(path.reversed() for path in ring.hollow.paths)))


def _check_on_web(table: Table, action: TraceNested, place: TracedPlace, ring: Ring) -> None:
    """Raise SpoiledError where a ring is flipped over or reaches beyond the web."""
    if place.motion.mirrored:
        raise SpoiledError("A template is printed on one side only: it cannot be flipped over.")
    box = region_bounds(place.motion.region(ring.out))
    web = table.supplies.web
    length = action.length if web.sheet is None else web.sheet
    over = float(web.width) - box.right, float(length) - box.bottom
    off_sheets = place.sheet < 0 or (web.sheet is None and place.sheet > 0)
    if off_sheets or min(box.left, box.top, *over) < -EQUAL:
        raise SpoiledError(f"A ring of {place.shape} reaches over the edge of the web.")


def _check_in_centre(place: TracedPlace, ring: Ring, owner: TracedPlace, around: Ring) -> None:
    """Raise SpoiledError unless what is cut out of one ring holds the other, whole."""
    if place.sheet != owner.sheet:
        raise SpoiledError(f"A ring of {place.shape} lies on another sheet than the ring around it.")
    whole = max(ring.out.paths, key=lambda path: path.area())
    holes = (path.reversed() for path in around.out.paths if path.area() < 0)
    centre = owner.motion.region(Region((*around.hollow.paths, *holes)))
    if uncovered_area(Region((place.motion.path(whole),)), [centre]) > OVERLAP:
        raise SpoiledError(f"A ring of {place.shape} does not lie in the centre of a {owner.shape} ring.")
