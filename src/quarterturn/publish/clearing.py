"""Is there room for lettering: does it lie clear of the lines of a drawing, and inside an area?"""

from __future__ import annotations

import cmath
import math
from collections.abc import Iterable
from typing import TYPE_CHECKING

from quarterturn.geometry import Line, Point, Region, as_polygon, flatten_path
from quarterturn.publish.lettering import text_width
from quarterturn.publish.sheet import Mark, Stroke, Text

if TYPE_CHECKING:
    from shapely.geometry.base import BaseGeometry

CHORDS = 0.02
"""Curves are looked at through chords within this many millimetres of them."""
_RISE, _FALL = 0.7, 0.1
"""How far letters rise above their line and mostly stay above its lower side, in sizes (measured on the face)."""
_SHIFT = {"start": 0.0, "middle": -0.5, "end": -1.0}


def text_box(text: Text) -> tuple[Point, ...]:
    """Return the corners of the box that a text fills, turned as it is."""
    wide = text_width(text.text, text.size, bold=text.bold)
    left, way = _SHIFT[text.anchor] * wide, cmath.rect(1, math.radians(text.turn))
    top, bottom = -_RISE * text.size, _FALL * text.size
    corners = ((left, top), (left + wide, top), (left + wide, bottom), (left, bottom))
    return tuple(text.at + complex(*corner) * way for corner in corners)


def lines_of(regions: Iterable[Region], more: Iterable[Line] = ()) -> BaseGeometry:
    """Return the edges of some regions, and more straight lines, in millimetres."""
    import shapely

    rings = [flatten_path(path, CHORDS) for region in regions for path in region.paths]
    lines = [*((*ring, ring[0]) for ring in rings), *((line.start, line.end) for line in more)]
    return shapely.MultiLineString([[(p.real, p.imag) for p in line] for line in lines])


def is_clear(text: Text, lines: BaseGeometry) -> bool:
    """Tell whether no line runs through a text."""
    return not _box(text).intersects(lines)


def are_inside(marks: Iterable[Mark], region: Region) -> bool:
    """Tell whether texts and strokes lie inside a region in millimetres; areas are not asked about."""
    import shapely

    room = as_polygon(region, CHORDS)
    for mark in marks:
        if isinstance(mark, Text) and not room.covers(_box(mark)):
            return False
        if isinstance(mark, Stroke):
            places = [p for segment in mark.segments for p in (segment.start, segment.end)]
            if not room.covers(shapely.MultiPoint([(p.real, p.imag) for p in places])):
                return False
    return True


def _box(text: Text) -> BaseGeometry:
    import shapely

    return shapely.Polygon([(p.real, p.imag) for p in text_box(text)])
