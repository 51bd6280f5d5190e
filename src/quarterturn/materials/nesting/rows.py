"""Shapes in rows: plain ones, as on paper; staggered ones for circles, whose rows reach into each other."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

from quarterturn.geometry import Arc, Path, Point, merged
from quarterturn.materials.nesting.bodies import Body, Catalogue
from quarterturn.materials.nesting.model import Shape
from quarterturn.materials.nesting.rooms import Laid

SLACK = 1e-9
"""A row that is too wide by no more than float noise fits."""


def first_fitting(catalogue: Catalogue, shape: int, width: float, height: float = math.inf) -> Body | None:
    """Return the first allowed turn of a shape in which it fits."""
    fitting = (
        body
        for body in catalogue.bodies(shape)
        if body.box.width <= width + SLACK and body.box.height <= height + SLACK
    )
    return next(fitting, None)


def plain_rows(
    catalogue: Catalogue, counts: Sequence[int], width: float, height: float = math.inf
) -> list[list[Laid]]:
    """Return rows of equal shapes, the tallest first, each from the left and level at its top, y from 0.

    Every shape must fit the width (and the height) in an allowed turn.
    """
    rows: list[list[Laid]] = []
    for shape, count in enumerate(counts):
        body = first_fitting(catalogue, shape, width, height)
        if count and body:
            per_row = int((width + catalogue.gap + SLACK) // (body.box.width + catalogue.gap))
            rows += [_row(body, min(per_row, count - n), catalogue.gap) for n in range(0, count, per_row)]
    return sorted(rows, key=lambda row: -row[0][0].box.height)


def _row(body: Body, count: int, gap: float) -> list[Laid]:
    step = body.box.width + gap
    corner = -complex(body.box.left, body.box.top)
    return [(body, corner + k * step) for k in range(count)]


def stacked(bands: Sequence[Sequence[Laid]], gap: float) -> list[Laid]:
    """Return bands below each other, a gap between every two."""
    found: list[Laid] = []
    y = 0.0
    for band in bands:
        found += [(body, at + 1j * y) for body, at in band]
        y += reach(band) + gap
    return found


def reach(laid: Sequence[Laid]) -> float:
    """Return how far bodies reach along the roll."""
    return max((at.imag + body.box.bottom for body, at in laid), default=0.0)


def diameter(shape: Shape) -> float | None:
    """Return the diameter of a circle; None of any other shape."""
    return circle_across(shape.outline)


def circle_across(path: Path) -> float | None:
    """Return the diameter of a path that is a circle; None of any other."""
    match merged(path).segments:
        case (Arc(_, radius, _, sweep),) if abs(abs(sweep) - math.tau) < 1e-9:
            return 2 * radius
    return None


def staggered(catalogue: Catalogue, shape: int, count: int, width: float) -> list[Laid]:
    """Return equal circles in as short a band as staggered rows make: columns that stand half a step lower in turn.

    With k columns across, neighbours are c = (width − d)/(k − 1) apart, and rows √(D² − c²) apart, D being the
    diameter d and the gap; never less than D/2 apart, since every second row stands in the same columns.
    """
    body = catalogue.body(shape, 0)
    apart = body.box.width + catalogue.gap
    spread = width - body.box.width
    most = 2 * int((width + catalogue.gap + SLACK) // apart) + 1
    bands = [
        list(_columns(body, count, spread, columns, apart))
        for columns in range(1, most + 1)
        if columns < 3 or 2 * spread / (columns - 1) >= apart - SLACK
    ]
    return min(bands, key=lambda band: (round(reach(band), 6), len({at.real for _, at in band})))


def _columns(body: Body, count: int, spread: float, columns: int, apart: float) -> Iterator[Laid]:
    """Lay circles row by row: the even columns in the even rows, the odd ones in the odd rows."""
    step = spread / max(1, columns - 1)
    rows = max(apart / 2, math.sqrt(max(0.0, apart**2 - step**2))) if columns > 1 else apart
    corner: Point = -complex(body.box.left, body.box.top)
    left, row = count, 0
    while left > 0:
        standing = range(row % 2 if columns > 1 else 0, columns, 2)[:left]
        yield from ((body, corner + complex(column * step, row * rows)) for column in standing)
        left, row = left - len(standing), row + 1


def sheets_of_rows(rows: Sequence[list[Laid]], gap: float, height: float) -> list[list[Laid]]:
    """Return rows, the highest first, each on the first sheet on which it has room below the others."""
    sheets: list[list[list[Laid]]] = []
    for row in rows:
        for sheet in sheets:
            if reach(stacked([*sheet, row], gap)) <= height + SLACK:
                sheet.append(row)
                break
        else:
            sheets.append([row])
    return [stacked(sheet, gap) for sheet in sheets]
