"""The sums of a recipe: start = 2·(finished + 2·seam) + trim, and whether the shape can be seen once sewn."""

from __future__ import annotations

import math
from dataclasses import dataclass

from quarterturn.design.defaults import LARGE_MASTER, LARGE_TRIM, SMALL_TRIM, default_trim
from quarterturn.design.notes import Notes
from quarterturn.design.outlined import outline_reach, runs_through_corner, shows_in_every_quarter
from quarterturn.design.recipes import (
    Curve,
    DrawnDiameter,
    DrawnOutline,
    FinishedRadius,
    PathsFlow,
    ShapeSize,
)
from quarterturn.measure import Length


@dataclass(frozen=True, slots=True)
class Sizes:
    """Side of the finished unit, side of the master as cut, and what is trimmed off it in all."""

    finished: Length
    start: Length
    trim: Length


def complete(
    key: str, finished: Length | None, start: Length | None, trim: Length | None, seam: Length, notes: Notes
) -> Sizes | None:
    """Find the sizes that the file leaves out; None where they cannot be, which is noted."""
    if finished is None and start is None:
        notes.add(
            "sums-missing",
            key,
            "The recipe says neither how large a unit is finished nor how large its master starts.",
            "Give finished or start.",
        )
        return None
    if finished is None:
        assert start is not None
        return _from_start(key, start, trim, seam, notes)
    untrimmed = 2 * (finished + 2 * seam)
    if start is None:
        trim = default_trim(untrimmed, notes.units) if trim is None else trim
        return Sizes(finished, untrimmed + trim, trim)
    return _compared(key, finished, start, trim, untrimmed, notes)


def _from_start(key: str, start: Length, trim: Length | None, seam: Length, notes: Notes) -> Sizes | None:
    if trim is None:
        small = start <= LARGE_MASTER[notes.units]
        trim = (SMALL_TRIM if small else LARGE_TRIM)[notes.units]
    finished = (start - trim) / 2 - 2 * seam
    if finished > 0:
        return Sizes(finished, start, trim)
    show = notes.show
    notes.add(
        "start-too-small",
        f"{key}.start",
        f"A master of {show(start)} leaves nothing of its units: the seams take {show(4 * seam)} "
        f"and trimming {show(trim)}.",
        f"Start with more than {show(4 * seam + trim)}.",
    )
    return None


def _compared(
    key: str, finished: Length, start: Length, trim: Length | None, untrimmed: Length, notes: Notes
) -> Sizes | None:
    show = notes.show
    if start < untrimmed:
        notes.add(
            "start-too-small",
            f"{key}.start",
            f"Four units that finish {show(finished)} need a master of {show(untrimmed)} before any trimming; "
            f"start is {show(start)}.",
            f"Start with {show(untrimmed + (trim or 0))} or more, or give start or finished alone.",
        )
        return None
    if trim is not None and start != untrimmed + trim:
        notes.add(
            "sums-disagree",
            f"{key}.start",
            f"start is {show(start)}, but finished {show(finished)} and trim {show(trim)} "
            f"make {show(untrimmed + trim)}.",
            f"Give two of finished, start and trim, or set start to {show(untrimmed + trim)}.",
        )
        return None
    return Sizes(finished, start, start - untrimmed)


def check_shape(
    key: str, size: ShapeSize, curve: Curve, finished: Length, seam: Length, notes: Notes
) -> None:
    """Note a shape that disappears in the seams, or that the outer seams would cut off.

    The curve meets the seam at the distance a from the finished corner: √(r²−s²) − s for a circle of radius r
    drawn as it is, r − s for one that is spread (whose traced half width is r). It reaches r from the cut corner.
    """
    place = f"{key}.shape"
    if isinstance(size, DrawnOutline):
        _check_outline(place, size, curve, finished, seam, notes)
        return
    reach, meets = extents(size, curve, finished, seam)
    if meets <= 0:
        notes.add(
            "shape-vanishes",
            place,
            "The shape disappears in the seams: nothing of it shows along the seam once the unit is sewn.",
            f"Make its diameter as traced more than {notes.show(least_diameter(curve, seam))}.",
        )
    elif reach > finished + seam:
        widest = 2 * (finished + seam)
        notes.add(
            "shape-too-large",
            place,
            f"The shape reaches {notes.show(reach)} from the middle of the master, and a unit with its seam "
            f"{notes.show(finished + seam)}; the outer seams would cut it off.",
            f"Keep its diameter as traced to {notes.show(widest)}, or make the unit larger.",
        )


def _check_outline(
    place: str, size: DrawnOutline, curve: Curve, finished: Length, seam: Length, notes: Notes
) -> None:
    reach, room = outline_reach(size, curve, seam), finished + seam
    if reach > float(room) + 1e-9:
        widest = (size.width * Length(float(room) / reach)).limit_denominator(10**6)
        notes.add(
            "shape-too-large",
            place,
            f"The {size.outline} reaches {notes.show(_rounded(reach))} from the middle of the master, and a unit with "
            f"its seam {notes.show(room)}; the outer seams would cut it off.",
            f"Keep its width to about {notes.show(widest)}, or make the unit larger.",
        )
    elif not shows_in_every_quarter(size, curve, seam):
        notes.add(
            "shape-vanishes",
            place,
            f"The {size.outline} disappears in the seams: of some quarter nothing shows once it is sewn.",
            "Make it wider; an outline of your own must reach into all four quarters of its box.",
        )
    elif size.own and runs_through_corner(size, curve, seam):
        notes.add(
            "shape-through-corner",
            place,
            f"The edge of the {size.outline} runs just through the place where the seams cross.",
            "Make it a little wider or narrower, or draw it so that its edge passes beside the middle of its box.",
        )


def extents(
    size: DrawnDiameter | FinishedRadius | PathsFlow, curve: Curve, finished: Length, seam: Length
) -> tuple[Length, Length]:
    """Return how far the traced shape reaches from its centre, and where its curve meets the finished seam.

    Both are good to 10⁻⁹ inch; a shape drawn as it is gives square roots.
    """
    if isinstance(size, DrawnDiameter):
        reach = size.diameter / 2
        if curve is Curve.SEWN_TRUE:
            return reach, reach - seam
        if reach <= seam:
            return reach, -seam
        return reach, _rounded(math.sqrt(reach**2 - seam**2)) - seam
    meets = size.radius if isinstance(size, FinishedRadius) else finished / 2
    if curve is Curve.SEWN_TRUE:
        return meets + seam, meets
    return _rounded(math.hypot(meets + seam, seam)), meets


def least_diameter(curve: Curve, seam: Length) -> Length:
    """Return the diameter as traced at which a shape disappears in the seams."""
    return 2 * seam if curve is Curve.SEWN_TRUE else _rounded(2 * math.sqrt(2) * float(seam))


def _rounded(value: float) -> Length:
    return Length(round(value * 10**9), 10**9)
