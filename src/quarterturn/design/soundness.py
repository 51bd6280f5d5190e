"""Is a drawn line one that can be cut out of cloth: closed, in one part, never meeting itself, not too fine?"""

from __future__ import annotations

import math
import re
from collections.abc import Sequence

from quarterturn.design import limits
from quarterturn.geometry import (
    EPSILON,
    Affine,
    Arc,
    Bounds,
    Cubic,
    Line,
    Path,
    Segment,
    Subpath,
    fitted,
    flatten_path,
    merged,
    path_bounds,
    scaled,
)

GAP = 1e-4
"""Ends nearer than this share of the outline's larger side are meant to meet."""
CHORDS = 2e-4
"""An outline 1 wide is looked at through chords within this of it: lines that come nearer count as meeting."""
_PLACE = re.compile(r"\[(\S+) (\S+)\]")


class UnsoundError(ValueError):
    """A drawn line that is no outline to cut out. The message goes on from `it`: `is open`."""


def sound_path(subpaths: Sequence[Subpath], to: Affine | None = None) -> Path:
    """Return what is drawn, mapped, as one closed path. Raises UnsoundError where that is no outline to cut out."""
    if not subpaths:
        raise UnsoundError("draws nothing")
    if len(subpaths) > 1:
        raise UnsoundError(f"has {len(subpaths)} parts; an outline is one line without holes")
    if len(subpaths[0].drawn) > limits.MOST_SEGMENTS:
        raise UnsoundError(_too_fine(len(subpaths[0].drawn)))
    path = subpaths[0].path(to or Affine())
    box = _checked_box(path)
    unit = scaled(path, 1 / box.width)
    whole = _joined(_closed(unit, box.height / box.width))
    if len(whole.segments) > limits.MOST_SEGMENTS:
        raise UnsoundError(_too_fine(len(whole.segments)))
    _check_meeting(whole, box)
    if abs(whole.area()) < EPSILON:
        raise UnsoundError("encloses nothing")
    return scaled(whole, box.width)


def _too_fine(count: int) -> str:
    return f"has {count} segments; {limits.MOST_SEGMENTS} are the most"


def _checked_box(path: Path) -> Bounds:
    box = path_bounds(path)
    across, down = box.width, box.height
    if not all(map(math.isfinite, (box.left, box.top, across, down))):
        raise UnsoundError("is larger than numbers go")
    if min(across, down) <= EPSILON * max(across, down, EPSILON):
        raise UnsoundError("encloses nothing")
    if max(across, down) > limits.LONGEST_SIDE * min(across, down):
        raise UnsoundError(f"is over {limits.LONGEST_SIDE} times as long as wide")
    return box


def _closed(path: Path, height: float) -> Path:
    """Return a path 1 wide with its last gap closed, if that is so small that it was not meant."""
    end, start = path.segments[-1].end, path.segments[0].start
    gap = abs(end - start)
    if gap > GAP * max(1.0, height):
        raise UnsoundError(f"is open: its ends lie {gap:.1%} of its width apart; close it")
    return Path((*path.segments, Line(end, start))) if gap > EPSILON else path


def _joined(path: Path) -> Path:
    """Return the path without segments that are nothing, each starting just where the one before it ends."""
    parts = list(merged(path).segments)
    for index, segment in enumerate(parts):
        parts[index] = _started_at(segment, parts[index - 1])
    return Path(tuple(parts))


def _started_at(segment: Segment, before: Segment) -> Segment:
    match segment:
        case Line(_, end):
            return Line(before.end, end)
        case Cubic(_, control1, control2, end):
            return Cubic(before.end, control1, control2, end)
        case Arc():
            return segment


def _check_meeting(path: Path, box: Bounds) -> None:
    """Refuse a path, 1 wide, that crosses or touches itself, and say where in its box."""
    import shapely

    corners = flatten_path(path, CHORDS)
    if len(corners) < 3:
        raise UnsoundError("encloses nothing")
    verdict = shapely.is_valid_reason(shapely.Polygon([(p.real, p.imag) for p in corners]))
    if verdict == "Valid Geometry":
        return
    place = _PLACE.search(verdict)
    if not place:
        raise UnsoundError("crosses or touches itself")
    across = float(place[1]) - box.left / box.width
    down = (float(place[2]) - box.top / box.width) * box.width / box.height
    raise UnsoundError(
        f"crosses or touches itself {across:.0%} of its width from the left and {down:.0%} of its height from the top"
    )


def fitted_and_width(path: Path) -> tuple[Path, float]:
    """Return a sound path as outlines are kept, and how wide it was."""
    return fitted(path), path_bounds(path).width
