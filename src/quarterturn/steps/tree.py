"""The steps from loose units, pieces and panels to a top: every section inside out, the root last."""

from __future__ import annotations

from collections.abc import Iterator

from quarterturn.measure import ROOT_TWO, Length
from quarterturn.pieces import QUARTERS, TriangleCount, slanting_rows, triangle_counts
from quarterturn.setting import Framed, Grid, Node, OneUnit, OnPoint
from quarterturn.steps import labels
from quarterturn.steps.assembly import later_piles, unit_rows_steps
from quarterturn.steps.draft import Draft, draft
from quarterturn.steps.framing import Framing
from quarterturn.steps.grids import grid_steps
from quarterturn.steps.model import Chapter, LayOut, SetAside
from quarterturn.steps.naming import Names
from quarterturn.steps.on_point import OnPointSewing
from quarterturn.steps.sections import CutTriangles
from quarterturn.steps.things import Pile, Placed, Product

SURPLUS = "triangles beyond the quilt's need"


def triangle_steps(names: Names) -> Iterator[Draft]:
    """Return cutting all squares for setting triangles, and setting aside what is over."""
    for triangles in triangle_counts(names.made):
        square = names.find(triangles.piece)
        label = labels.triangle(square.label)
        made = Product(label, triangles.squares * triangles.each, *_triangle_size(triangles))
        action = CutTriangles(triangles.each // 2)
        yield draft(Chapter.CUTTING, action, (Pile(square.label, triangles.squares),), (made,))
        if triangles.surplus:
            yield draft(Chapter.CUTTING, SetAside(SURPLUS), (Pile(label, triangles.surplus),))


def _triangle_size(triangles: TriangleCount) -> tuple[Length, Length]:
    """Return the box of a triangle as it lies: see `CutTriangles`."""
    side = triangles.piece.width
    short = side * ROOT_TWO / 2
    return (short, short) if triangles.each == QUARTERS else (side * ROOT_TWO, short)


def top_steps(names: Names) -> Iterator[Draft]:
    """Return the sewing of all sections and the root, and the borders of each; the root's borders last."""
    root = names.setting.centre
    yield from names.trimmed_cloth()
    inner = [node for node in names.made if node not in (root, names.setting.top)]
    for node in inner:
        yield from _node_steps(names, node)
    yield from _root_steps(names, root)
    if isinstance(names.setting.top, Framed):
        yield from Framing(names, names.setting.top).steps()


def _node_steps(names: Names, node: Node) -> Iterator[Draft]:
    if isinstance(node, Grid):
        yield from grid_steps(names, node)
    elif isinstance(node, OnPoint):
        yield from OnPointSewing(names, node).steps()
    elif isinstance(node, Framed):
        yield from Framing(names, node).steps()


def _root_steps(names: Names, root: Node) -> Iterator[Draft]:
    if isinstance(root, Grid) and is_map_of_units(root):
        yield from unit_rows_steps(names, root)
        names.put(root, Placed(labels.TOP, 0))
    elif isinstance(root, Grid):
        yield _layout(names, tuple(tuple(map(names.placed, row)) for row in root.rows))
        yield from grid_steps(names, root, labels.TOP)
    elif isinstance(root, OnPoint):
        rows = tuple(tuple(map(names.placed, row.squares)) for row in slanting_rows(root))
        yield _layout(names, rows, slanting=True)
        yield from OnPointSewing(names, root, labels.TOP).steps()


def is_map_of_units(grid: Grid) -> bool:
    """Tell whether a grid holds units alone."""
    return all(isinstance(child.node, OneUnit) for row in grid.rows for child in row)


def _layout(names: Names, rows: tuple[tuple[Placed, ...], ...], *, slanting: bool = False) -> Draft:
    return draft(Chapter.ASSEMBLY, LayOut(rows, slanting, later_piles(names, rows)))
