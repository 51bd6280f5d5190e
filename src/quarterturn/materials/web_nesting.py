"""Nest the tracings of a quilt on its web, where some lie in the centres of others and less web is bought for it."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace
from fractions import Fraction
from functools import lru_cache
from typing import TYPE_CHECKING

from quarterturn.blocks import FusedShape
from quarterturn.geometry import Motion, Region, mirror_across_vertical, path_bounds, shift
from quarterturn.materials.model import WebRows
from quarterturn.materials.nested import NestedWeb, TracedPlace, WebCentre
from quarterturn.measure import MM, Length, Units

if TYPE_CHECKING:
    from quarterturn.materials.nesting import Centre, Place, Shape

MOST = 120
"""Tracings: a plan of more single places is more work to follow than the web is worth (no source)."""

PLACINGS = 300
"""How many outermost tracings are laid in trying for a shorter plan: well under a second for so few."""

LEAST_CENTRE = 1.0
"""Across, in inches: of what a ring leaves, a smaller round is not worth keeping (no source)."""

MORE = "more "
"""Before the names of shapes that are asked about after all are placed."""


def drawn_motion(shape: FusedShape) -> Motion:
    """Return the motion from a shape in its master to how it is drawn on the paper: about its middle, mirrored.

    The web goes on the wrong side of the cloth: what is drawn comes out mirrored.
    """
    return shift(-path_bounds(shape.traced).centre).then(mirror_across_vertical())


def ruler_step(units: Units) -> Length:
    """Return the step of a ruler that places are measured to: 1/16\", or 1 mm."""
    return MM if units is Units.METRIC else Fraction(1, 16)


def nest_web(
    rows: Sequence[WebRows],
    shapes: Mapping[str, FusedShape],
    width: Length,
    rows_length: Length,
    units: Units,
) -> NestedWeb | None:
    """Return places for the tracings that are given as rows; None where no ring lies in the centre of another.

    Also None where there are more than MOST. Equal rings never lie in one another, so one shape stays in rows.
    """
    if len(rows) < 2 or sum(group.count for group in rows) > MOST:
        return None
    kinds = tuple(_kind(group, shapes[group.shape]) for group in rows)
    return _nested(kinds, rows[0].gap, width, rows_length, ruler_step(units))


def _kind(group: WebRows, shape: FusedShape) -> Shape:
    from quarterturn.materials.nesting import Shape

    way = drawn_motion(shape)
    out, hollow = way.region(shape.ring_out), way.region(shape.ring_in)
    outline = max(out.paths, key=lambda path: path.area())
    holes = (path.reversed() for path in out.paths if path.area() < 0)
    return Shape(group.shape, outline, Region((*hollow.paths, *holes)), group.count, (0, 1, 2, 3))


@lru_cache(maxsize=64)
def _nested(
    kinds: tuple[Shape, ...], gap: Length, width: Length, rows_length: Length, step: Length
) -> NestedWeb | None:
    """Nest with room to bring every middle to the nearest step of a ruler, and hold what comes of it to the gap."""
    from quarterturn.materials.nesting import Checker, Effort, any_held, lower_bound, nest_roll

    wide, apart = float(width - step), float(gap) + math.sqrt(2) * float(step)
    if not any_held(kinds, apart, wide):
        return None
    further = tuple(replace(kind, name=MORE + kind.name, count=0) for kind in kinds)
    nesting = nest_roll(kinds, apart, wide, further=further, effort=Effort(PLACINGS))
    places = tuple(_on_ruler(place, step) for place in nesting.places)
    if nesting.unplaced or Checker(kinds, float(gap)).faults(places, float(width), math.inf):
        return None
    return NestedWeb(
        places=tuple(TracedPlace(place.shape, place.motion, place.within) for place in places),
        gap=gap,
        length=_reached(kinds, places, step),
        bound=lower_bound(kinds, float(gap), float(width)),
        rows_length=rows_length,
        centres=tuple(_centre(centre, step) for centre in nesting.centres if centre.disc >= LEAST_CENTRE),
    )


def _on_ruler(place: Place, step: Length) -> Place:
    """Return a place with its middle on the nearest step, half a step from the edges of where it was nested."""
    half, at = float(step) / 2, place.motion.move
    near = complex(*(round((part + half) / float(step)) * float(step) for part in (at.real, at.imag)))
    return replace(place, motion=place.motion.then(shift(near - at)))


def _reached(kinds: Iterable[Shape], places: Iterable[Place], step: Length) -> Length:
    outlines = {kind.name: kind.outline for kind in kinds}
    low = max(path_bounds(place.motion.path(outlines[place.shape])).bottom for place in places)
    return math.ceil(low / float(step) - 1e-6) * step


def _centre(centre: Centre, step: Length) -> WebCentre:
    width, height = (round(side / float(step)) * step for side in (centre.width, centre.height))
    fits = tuple((name.removeprefix(MORE), most) for name, most in centre.fits)
    return WebCentre(centre.owner, centre.count, width, height, centre.holds, fits)
