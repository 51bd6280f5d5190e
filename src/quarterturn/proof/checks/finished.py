"""The finished size of the quilt, added up from the design alone."""

from __future__ import annotations

from quarterturn.design import Design
from quarterturn.measure import Length


def centre_size(design: Design) -> tuple[Length, Length]:
    """Return width and height of the sewn units: their number times the finished side."""
    (rows, columns), side = design.setting.size, _side(design)
    return columns * side, rows * side


def finished_size(design: Design) -> tuple[Length, Length]:
    """Return width and height inside the binding: the centre and twice each border."""
    width, height = centre_size(design)
    margin = 2 * sum((border.width for border in design.borders), Length(0))
    return width + margin, height + margin


def _side(design: Design) -> Length:
    return design.recipe(design.colourway(design.setting.cells[0][0].code).recipe).finished
