"""What a drawing holds: the outlines that can be taken into a design, and what was refused with the reason."""

from __future__ import annotations

from quarterturn.design.drawings import read_drawing, suggested_names
from quarterturn.geometry import path_bounds, write_path_data
from quarterturn.measure import Units, show_length
from quarterturn.studio.views.model import View


class OutlineView(View):
    """A closed shape: the name suggested for it, its true size, and its path data in inches for `take-outline`."""

    name: str
    element: str
    line: int
    width: str
    height: str
    path: str


class RefusedView(View):
    """A shape that cannot be cut out of cloth."""

    element: str
    line: int
    reason: str


class OutlinesView(View):
    """What a drawing holds. `states_size` is false where its units are taken for 1/96 inch."""

    states_size: bool
    outlines: tuple[OutlineView, ...]
    refused: tuple[RefusedView, ...]


def outlines_view(drawing: bytes, units: Units) -> OutlinesView:
    """Return what a drawing in SVG holds. Raises DrawingError where it cannot be read."""
    read = read_drawing(drawing)
    names = suggested_names(found.identity for found in read.outlines)
    outlines = []
    for name, found in zip(names, read.outlines, strict=True):
        box = path_bounds(found.path)
        outlines.append(
            OutlineView(
                name=name,
                element=found.name,
                line=found.line,
                width=show_length(box.width, units),
                height=show_length(box.height, units),
                path=write_path_data(found.path, 9),
            )
        )
    refused = (RefusedView(element=each.name, line=each.line, reason=each.reason) for each in read.refused)
    return OutlinesView(states_size=read.states_size, outlines=tuple(outlines), refused=tuple(refused))
