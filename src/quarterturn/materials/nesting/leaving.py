"""The hollows and scraps that remain after a nesting, by what they are and hold, and what would still fit."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from quarterturn.geometry import Region, as_polygon, from_polygons, region_bounds, roomiest_point, without
from quarterturn.materials.nesting.bodies import Catalogue
from quarterturn.materials.nesting.holding import Held, Holes, State
from quarterturn.materials.nesting.model import Centre
from quarterturn.materials.nesting.rows import circle_across
from quarterturn.materials.nesting.telling import motion

FLAT = 1e-3
"""What remains of a hollow that holds something is told with chords within this of the curves, in inches."""


def centres_of(catalogue: Catalogue, holes: Holes, held: Held, further: Sequence[int]) -> tuple[Centre, ...]:
    """Return equal hollows and scraps together, those with the most room first."""
    states = Counter(hole.state for hole in held.holes)
    found = [_centre(catalogue, holes, state, count, further) for state, count in states.items()]
    return tuple(sorted(found, key=lambda centre: (-centre.region.area(), centre.owner)))


def _centre(catalogue: Catalogue, holes: Holes, state: State, count: int, further: Sequence[int]) -> Centre:
    source, contents = state
    whole = holes.region(source)
    owners = holes.scraps if source.is_scrap else catalogue.shapes
    box = region_bounds(whole)
    region = remaining(catalogue, whole, state) if contents else whole
    fits = ((catalogue.shapes[shape].name, holes.most(state, shape)) for shape in further)
    return Centre(
        owner=owners[source.number].name,
        count=count,
        width=box.width,
        height=box.height,
        holds=tuple(catalogue.shapes[shape].name for shape, _, _ in contents),
        region=region,
        disc=_disc(region),
        fits=tuple((name, most) for name, most in fits if most),
    )


def _disc(region: Region) -> float:
    """Return the diameter of the largest disc in a region: exactly for a circle, else to a fiftieth inch, or below."""
    if region.is_empty():
        return 0.0
    whole = circle_across(region.paths[0]) if len(region.paths) == 1 else None
    return 2 * roomiest_point(region)[1] if whole is None else whole


def remaining(catalogue: Catalogue, whole: Region, state: State) -> Region:
    """Return a region less what lies in it and the gap round that."""
    left = as_polygon(whole, FLAT)
    for shape, turn, at in state[1]:
        outline = motion(turn, at).path(catalogue.shapes[shape].outline)
        left = without(left, as_polygon(Region((outline,)), FLAT).buffer(catalogue.gap))
    return from_polygons(left)
