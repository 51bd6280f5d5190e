"""A length below which no nesting can stay, by weighted lines along the roll.

Shapes grown by half the gap do not overlap, and lie in a roll grown by as much. So for any weights of lines along the
roll, 1 in all, the length and the gap are together at least the sum, over the shapes, of the least that the lines cut
out of the grown shape, wherever it lies across the roll. Even weights come near the bound by area; the best ones are
found by a linear programme, and the bound is then summed up from the weights themselves, whatever found them.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING

import numpy as np
import numpy.typing as npt

from quarterturn.geometry import Path, flatten_path, quarter_turns
from quarterturn.materials.nesting.bodies import Body, Catalogue

if TYPE_CHECKING:
    from shapely.geometry.base import BaseGeometry

Floats = npt.NDArray[np.float64]

LINES = 48
"""Along the roll, at even distances; most get no weight."""

CELLS = 48
"""Into so many parts the places of a shape across the roll are divided."""

FINE = 1e-4
"""Grown shapes are flattened so that what is measured lies inside them, within this, in inches."""


def line_bound(catalogue: Catalogue, counts: Mapping[int, int], width: float) -> float:
    """Return the bound by the best weights found, for shapes that lie outermost, by their number."""
    if not counts:
        return 0.0
    lines = (np.arange(LINES) + 0.5) * width / LINES
    cut = [_cut_out(catalogue, shape, lines, width) for shape in counts]
    wanted = np.array(list(counts.values()), dtype=float)
    weights = _weights(cut, wanted)
    least = np.array([float((rows @ weights).min()) for rows in cut])
    return max(0.0, float(wanted @ least) - catalogue.gap)


def _cut_out(catalogue: Catalogue, shape: int, lines: Floats, width: float) -> Floats:
    """Return what each line cuts out of a shape at least: a row for each turn and each part of its places."""
    bodies = [body for body in catalogue.bodies(shape) if body.box.width <= width + 1e-9]
    outline = catalogue.shapes[shape].outline
    rows = [
        least_chords(inner_polygon(quarter_turns(b.turn).path(outline), catalogue.gap / 2), b, lines, width)
        for b in bodies
    ]
    return np.unique(np.round(np.concatenate(rows) - 5e-10, 9), axis=0)


def inner_polygon(path: Path, by: float) -> BaseGeometry:
    """Return a polygon inside a path moved outwards by `by`."""
    import shapely

    inwards = 0.0 if path.is_straight() else FINE
    polygon = shapely.Polygon([(p.real, p.imag) for p in flatten_path(path, FINE)])
    return polygon.buffer(by - inwards) if by != inwards else polygon


def least_chords(area: BaseGeometry, body: Body, lines: Floats, width: float) -> Floats:
    """Return, for each part of the places across the roll (rows), the least length that each line cuts out."""
    ends = np.linspace(-body.box.left, max(-body.box.left, width - body.box.right), CELLS + 1)
    low, high = lines[None, :] - ends[1:, None], lines[None, :] - ends[:-1, None]
    places, before, behind = _profile(area)
    at_places = np.minimum(
        np.concatenate([[0.0], before]),  # from the left, nothing lies before the first
        np.concatenate([behind, [0.0]]),
    )
    least = np.minimum(_chord(low, places, behind, before), _chord(high, places, behind, before))
    between = (places >= low[..., None]) & (places <= high[..., None])
    found: Floats = np.minimum(least, np.where(between, at_places, np.inf).min(axis=-1))
    return found


def _profile(area: BaseGeometry) -> tuple[Floats, Floats, Floats]:
    """Return the places x where the chord's slope changes, and, between every two, its length at the end and start."""
    starts, ends = _edges(area)
    places = np.unique(np.concatenate([starts[:, 0], ends[:, 0]]))
    middle = (places[:-1] + places[1:]) / 2
    quarter = (places[:-1] + middle) / 2
    at_middle, at_quarter = (_lengths(x, starts, ends) for x in (middle, quarter))
    slope = 2 * (at_middle - at_quarter)
    return places, np.maximum(0.0, at_middle + slope), np.maximum(0.0, at_middle - slope)


def _edges(area: BaseGeometry) -> tuple[Floats, Floats]:
    """Return the starts and the ends of all edges, the area on one side of each."""
    import shapely

    starts, ends = [], []
    for polygon in shapely.get_parts(area):
        for ring in shapely.get_rings(shapely.orient_polygons(polygon)):
            corners = shapely.get_coordinates(ring)
            starts.append(corners[:-1])
            ends.append(corners[1:])
    return np.concatenate(starts), np.concatenate(ends)


def _lengths(x: Floats, starts: Floats, ends: Floats) -> Floats:
    """Return how much of the vertical line at each x lies in the area."""
    across = ends[:, 0] - starts[:, 0]
    share = (x[:, None] - starts[:, 0]) / np.where(across == 0, np.inf, across)
    crossed = (np.minimum(starts[:, 0], ends[:, 0]) < x[:, None]) & (
        x[:, None] < np.maximum(starts[:, 0], ends[:, 0])
    )
    heights = (starts[:, 1] + share * (ends[:, 1] - starts[:, 1])) * np.sign(across)
    found: Floats = np.abs(np.where(crossed, heights, 0.0).sum(axis=1))
    return found


def _chord(x: Floats, places: Floats, behind: Floats, before: Floats) -> Floats:
    """Return the chord at each x: 0 outside, and linear between places."""
    number = np.clip(np.searchsorted(places, x, side="right") - 1, 0, len(places) - 2)
    start, end = places[number], places[number + 1]
    share = np.clip((x - start) / (end - start), 0.0, 1.0)
    found = behind[number] + share * (before[number] - behind[number])
    outside = (x < places[0]) | (x > places[-1])
    return np.where(outside, 0.0, found)


def _weights(cut: Sequence[Floats], wanted: Floats) -> Floats:
    """Return weights of lines, 1 in all, with which the bound is as large as a linear programme makes it."""
    from quarterturn.materials.strips.master import solver_with_options

    lines, kinds = cut[0].shape[1], len(cut)
    solver = solver_with_options()
    for count in wanted:
        solver.addVar(0.0, solver.inf)
        solver.changeColCost(solver.getNumCol() - 1, -float(count))
    for _ in range(lines):
        solver.addVar(0.0, 1.0)
    columns = list(range(kinds, kinds + lines))
    solver.addRow(1.0, 1.0, lines, columns, [1.0] * lines)
    for kind, rows in enumerate(cut):
        for row in rows:
            solver.addRow(0.0, solver.inf, lines + 1, [kind, *columns], [-1.0, *row.tolist()])
    solver.run()
    found = np.maximum(0.0, np.array(solver.getSolution().col_value[kinds:]))
    return found / found.sum() if found.sum() > 0.5 else np.full(lines, 1 / lines)
