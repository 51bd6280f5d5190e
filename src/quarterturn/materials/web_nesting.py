"""Nest the tracings of a quilt on its web: some in the centres of others; and tell which centres remain."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from functools import lru_cache
from typing import TYPE_CHECKING

from quarterturn.blocks import FusedShape
from quarterturn.geometry import Motion, Region, mirror_across_vertical, path_bounds, shift
from quarterturn.materials.model import WebRows
from quarterturn.materials.nested import NestedWeb, TracedPlace, WebCentre
from quarterturn.measure import MM, Length, Units

if TYPE_CHECKING:
    from quarterturn.materials.nesting import Centre, Nesting, Place, Shape

MOST = 120
"""Tracings: a plan of more single places is more work to follow than the web is worth (no source)."""

PLACINGS = 300
"""How many outermost tracings are laid in trying for a shorter plan: well under a second for so few."""

LEAST_CENTRE = 1.0
"""Across, in inches: of what a ring leaves, a smaller round is not worth keeping (no source)."""

MORE = "more "
"""Before the names of shapes that are asked about after all are placed."""


@dataclass(frozen=True, slots=True)
class Nested:
    """A nesting on the web, and the centres that it leaves."""

    web: NestedWeb
    centres: tuple[WebCentre, ...]


def drawn_motion(shape: FusedShape) -> Motion:
    """Return the motion from a shape in its master to how it is drawn on the paper: about its middle, mirrored.

    The web goes on the wrong side of the cloth: what is drawn comes out mirrored.
    """
    return shift(-path_bounds(shape.traced).centre).then(mirror_across_vertical())


def ruler_step(units: Units) -> Length:
    """Return the step of a ruler that places are measured to: 1/16\", or 1 mm."""
    return MM if units is Units.METRIC else Fraction(1, 16)


def tracing_kinds(rows: Iterable[WebRows], shapes: Mapping[str, FusedShape]) -> tuple[Shape, ...]:
    """Return the rings of rows as shapes to nest, as they are drawn on the paper."""
    return tuple(_kind(group, shapes[group.shape]) for group in rows)


def _kind(group: WebRows, shape: FusedShape) -> Shape:
    from quarterturn.materials.nesting import Shape

    way = drawn_motion(shape)
    out, hollow = way.region(shape.ring_out), way.region(shape.ring_in)
    outline = max(out.paths, key=lambda path: path.area())
    holes = (path.reversed() for path in out.paths if path.area() < 0)
    return Shape(group.shape, outline, Region((*hollow.paths, *holes)), group.count, (0, 1, 2, 3))


@lru_cache(maxsize=64)
def least_web(kinds: tuple[Shape, ...], gap: Length, width: Length, height: Length | None) -> Length:
    """Return a length of the roll, or where there is a height a number of sheets, that no way of laying is below."""
    from quarterturn.materials.nesting import lower_bound

    return lower_bound(kinds, float(gap), float(width), math.inf if height is None else float(height))


@lru_cache(maxsize=64)
def centres_left(kinds: tuple[Shape, ...], gap: Length, step: Length) -> tuple[WebCentre, ...]:
    """Return the centres worth keeping that rings in rows leave, and which of the quilt's shapes would fit."""
    from quarterturn.materials.nesting import whole_centres

    return _worth_keeping(kinds, whole_centres(kinds, float(gap), _further(kinds)), step)


def nest_web(kinds: Sequence[Shape], gap: Length, width: Length, step: Length) -> Nested | None:
    """Return places for all tracings; None where no ring lies in the centre of another, or there are more than MOST.

    Equal rings never lie in one another, so one shape stays in rows.
    """
    if len(kinds) < 2 or _are_many(kinds):
        return None
    return _on_roll(tuple(kinds), gap, width, step)


def nest_on_sheets(
    kinds: Sequence[Shape], gap: Length, width: Length, height: Length, step: Length
) -> Nested | None:
    """Return places for all tracings on sheets; None where there are more than MOST."""
    return None if _are_many(kinds) else _by_sheets(tuple(kinds), gap, width, height, step)


def _are_many(kinds: Iterable[Shape]) -> bool:
    return sum(kind.count for kind in kinds) > MOST


def _further(kinds: Iterable[Shape]) -> tuple[Shape, ...]:
    return tuple(replace(kind, name=MORE + kind.name, count=0) for kind in kinds)


def _with_room(gap: Length, step: Length) -> float:
    """Return a gap with room to bring every middle to the nearest step of a ruler."""
    return float(gap) + math.sqrt(2) * float(step)


@lru_cache(maxsize=64)
def _on_roll(kinds: tuple[Shape, ...], gap: Length, width: Length, step: Length) -> Nested | None:
    from quarterturn.materials.nesting import Effort, any_held, nest_roll

    wide, apart = float(width - step), _with_room(gap, step)
    if not any_held(kinds, apart, wide):
        return None
    nesting = nest_roll(kinds, apart, wide, further=_further(kinds), effort=Effort(PLACINGS))
    found = _measured(kinds, nesting, gap, (width, None), step)
    if found is None:
        return None
    return replace(found, web=replace(found.web, length=_reached(kinds, found.web.places, step)))


@lru_cache(maxsize=64)
def _by_sheets(
    kinds: tuple[Shape, ...], gap: Length, width: Length, height: Length, step: Length
) -> Nested | None:
    """Return the places on the fewest sheets: nested with room for the steps of a ruler, or rows that share sheets.

    Where tracings fill a sheet from edge to edge there is no such room; then rows alone may lie on those steps.
    """
    from quarterturn.materials.nesting import Effort, nest_sheets

    roomy = (_with_room(gap, step), float(width - step), float(height - step), Effort(PLACINGS))
    exact = (float(gap), float(width), float(height), Effort(0, shapes=0))
    found = []
    for apart, wide, high, effort in (roomy, exact):
        nesting = nest_sheets(kinds, apart, wide, high, further=_further(kinds), effort=effort)
        found.append(_measured(kinds, nesting, gap, (width, height), step))
    return min((each for each in found if each), key=lambda each: each.web.length, default=None)


def _measured(
    kinds: tuple[Shape, ...], nesting: Nesting, gap: Length, size: tuple[Length, Length | None], step: Length
) -> Nested | None:
    """Bring all middles to the steps of a ruler; None where a shape has no place, or loses its gap by that."""
    from quarterturn.materials.nesting import Checker

    places = tuple(_on_ruler(place, step) for place in nesting.places)
    high = math.inf if size[1] is None else float(size[1])
    if nesting.unplaced or Checker(kinds, float(gap)).faults(places, float(size[0]), high):
        return None
    web = NestedWeb(
        places=tuple(TracedPlace(place.shape, place.motion, place.within, place.number) for place in places),
        gap=gap,
        length=(size[1] or Length(0)) * nesting.length,
    )
    return Nested(web, _worth_keeping(kinds, nesting.centres, step))


def _on_ruler(place: Place, step: Length) -> Place:
    """Return a place with its middle on the nearest step, half a step from the edges of where it was nested."""
    half, at = float(step) / 2, place.motion.move
    near = complex(*(round((part + half) / float(step)) * float(step) for part in (at.real, at.imag)))
    return replace(place, motion=place.motion.then(shift(near - at)))


def _reached(kinds: Iterable[Shape], places: Iterable[TracedPlace], step: Length) -> Length:
    outlines = {kind.name: kind.outline for kind in kinds}
    low = max(path_bounds(place.motion.path(outlines[place.shape])).bottom for place in places)
    return math.ceil(low / float(step) - 1e-6) * step


def _worth_keeping(kinds: Iterable[Shape], centres: Iterable[Centre], step: Length) -> tuple[WebCentre, ...]:
    hollows = {kind.name: kind.hollow for kind in kinds}
    return tuple(
        _centre(centre, hollows[centre.owner], step) for centre in centres if centre.disc >= LEAST_CENTRE
    )


def _centre(centre: Centre, hollow: Region, step: Length) -> WebCentre:
    """Return a centre with the sides of its largest part: a band has a hollow besides what it surrounds."""
    box = path_bounds(max(hollow.paths, key=lambda path: path.area()))
    width, height = (round(side / float(step)) * step for side in (box.width, box.height))
    fits = tuple((name.removeprefix(MORE), most) for name, most in centre.fits)
    disc = math.floor(centre.disc / float(step) + 1e-6) * step
    return WebCentre(centre.owner, centre.count, width, height, centre.holds, disc, fits)
