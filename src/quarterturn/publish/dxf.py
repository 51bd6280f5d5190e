"""Sheet -> DXF R2010 in millimetres, for cutting machines: arcs stay arcs, and every line lies on a layer.

DXF counts y upwards, so a sheet is turned over: its bottom left corner is the origin, and what looks
clockwise still does. Layers are told by what a mark is for: CUT holds solid outlines, RING dashed ones (web
lines), FOLD other dashed lines, MARK open solid lines, and TEXT lettering, which a cutter should leave out.
An arc that stands alone becomes an ARC, or a CIRCLE where it is whole, other outlines polylines with bulges;
cubics, which polylines cannot hold, are flattened to within 0.01 mm. Fills are left out, symbols are laid out in place.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import replace
from io import StringIO
from typing import TYPE_CHECKING

from quarterturn.geometry import Arc, Cubic, Line, Motion, Point, Region, Segment, flatten_segment
from quarterturn.publish.pens import laid_out, lay
from quarterturn.publish.sheet import Ink, Mark, Sheet, Text

if TYPE_CHECKING:
    from ezdxf.document import Drawing
    from ezdxf.layouts.layout import Modelspace

FLATTENING = 0.01
"""Chords are within this many millimetres of a cubic."""

CUT, RING, FOLD, MARK, LETTERING = "CUT", "RING", "FOLD", "MARK", "TEXT"
LAYERS = {CUT: 1, RING: 5, FOLD: 3, MARK: 8, LETTERING: 7}
"""Each layer with its colour in AutoCAD's index: red, blue, green, grey, black."""


def sheet_dxf(sheet: Sheet) -> str:
    """Return the text of a DXF file; equal sheets give equal texts."""
    with _fixed_dates():
        document = _empty_document()
        lay(laid_out(sheet), DxfPen(document.modelspace(), sheet.height))
        text = StringIO()
        document.write(text)
    return text.getvalue()


def _empty_document() -> Drawing:
    from ezdxf import units
    from ezdxf.filemanagement import new

    document = new("R2010", units=units.MM)
    document.header["$MEASUREMENT"] = 1
    for name, index in LAYERS.items():
        document.layers.add(name, color=index)
    return document


@contextmanager
def _fixed_dates() -> Iterator[None]:
    """Have fixed dates and identifiers written in place of today's."""
    from ezdxf._options import options  # the same as ezdxf.options, which is not exported to type checkers

    before = options.write_fixed_meta_data_for_testing
    options.write_fixed_meta_data_for_testing = True
    try:
        yield
    finally:
        options.write_fixed_meta_data_for_testing = before


class DxfPen:
    """The pen that adds entities to a model space. It is told no symbols: they are laid out before."""

    def __init__(self, space: Modelspace, height: float) -> None:
        self._space = space
        self._height = height

    def symbol(self, name: str, marks: Sequence[Mark]) -> None:
        """Refuse: symbols are laid out before."""
        raise AssertionError(f"the symbol {name} was not laid out")

    def use(self, symbol: str, motion: Motion) -> None:
        """Refuse: symbols are laid out before."""
        raise AssertionError(f"the symbol {symbol} was not laid out")

    def area(self, region: Region, ink: Ink) -> None:
        """Add the closed outlines of a region."""
        layer = RING if ink.dash else CUT
        for path in region.paths:
            if isinstance(path.segments[0], Arc) and len(path.segments) == 1:
                self._arc(path.segments[0], layer)
            else:
                self._polyline(path.segments, layer, closed=True)

    def stroke(self, segments: Sequence[Segment], ink: Ink) -> None:
        """Add an open run: an arc alone as an ARC, else a polyline."""
        layer = FOLD if ink.dash else MARK
        if len(segments) == 1 and isinstance(segments[0], Arc):
            self._arc(segments[0], layer)
        else:
            self._polyline(segments, layer, closed=False)

    def text(self, text: Text) -> None:
        """Add a line of text of the same size (as height of its capitals: 0.66 of it)."""
        from ezdxf.enums import TextEntityAlignment

        places = {
            "start": TextEntityAlignment.LEFT,
            "middle": TextEntityAlignment.CENTER,
            "end": TextEntityAlignment.RIGHT,
        }
        entity = self._space.add_text(text.text, height=round(text.size * 0.66, 4), rotation=-text.turn)
        entity.dxf.layer = LETTERING
        entity.set_placement(self._place(text.at), align=places[text.anchor])

    def _arc(self, arc: Arc, layer: str) -> None:
        centre = self._place(arc.centre)
        ends = [-math.degrees(a) for a in (arc.start_angle, arc.start_angle + arc.sweep)]
        if arc.sweep > 0:
            ends.reverse()  # an ARC runs anticlockwise, and a positive sweep looks clockwise
        attributes = {"layer": layer}
        if abs(arc.sweep) > math.tau - 1e-9:
            self._space.add_circle(centre, arc.radius, dxfattribs=attributes)
        else:
            self._space.add_arc(centre, arc.radius, ends[0], ends[1], dxfattribs=attributes)

    def _polyline(self, segments: Sequence[Segment], layer: str, *, closed: bool) -> None:
        corners = [(*self._place(point), bulge) for point, bulge in _corners(segments)]
        if not closed:
            corners.append((*self._place(segments[-1].end), 0.0))
        self._space.add_lwpolyline(corners, format="xyb", close=closed, dxfattribs={"layer": layer})

    def _place(self, point: Point) -> tuple[float, float]:
        return point.real, self._height - point.imag


def _corners(segments: Iterable[Segment]) -> Iterator[tuple[Point, float]]:
    """Return each corner with the bulge of the side that starts there.

    A bulge is the tangent of a quarter of the side's turn, below 0 where it runs clockwise.
    """
    for segment in segments:
        match segment:
            case Line(start):
                yield start, 0.0
            case Arc():
                yield from _bulged(segment)
            case Cubic():
                yield from ((point, 0.0) for point in flatten_segment(segment, FLATTENING))


def _bulged(arc: Arc) -> Iterator[tuple[Point, float]]:
    pieces = max(1, math.ceil(abs(arc.sweep) / math.pi - 1e-9))
    part = replace(arc, sweep=arc.sweep / pieces)
    bulge = -math.tan(part.sweep / 4)  # turned over, a positive sweep runs clockwise
    for k in range(pieces):
        yield replace(part, start_angle=arc.start_angle + k * part.sweep).start, bulge
