"""Squares standing on a corner: the finished sizes, and the squares from which setting triangles are cut.

With D = (side + sash)·√2, rows and columns of such squares are columns·D wide and rows·D high, sashing adds sash·√2
and a float twice its width. The quarter of a square that fills the edge has D as its long edge, the half that fills a
corner (side + 2·sash)/√2 as its short ones. Seams s wide add 2s(1+√2) and s(2+√2) to the squares they are cut from; the
handbook rules are + 1¼" and + ⅞" (K. Combs, Formulas for Quilters, 2002; the exact additions are computed).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import TYPE_CHECKING

from quarterturn.design import ClothCell, Map, MapCell, OnPointSet, TriangleFit, section_key
from quarterturn.measure import CUT_TOLERANCE, INCH, ROOT_TWO, Length, Units, cut_up, inches
from quarterturn.setting.tree import Child, ClothUse, OnPoint, PlainCloth

if TYPE_CHECKING:
    from quarterturn.setting.building import Builder

HANDBOOK_SEAM = INCH / 4
HANDBOOK_SIDE, HANDBOOK_CORNER = inches(1, 1, 4), inches(0, 7, 8)


def on_point(builder: Builder, name: str, setting: OnPointSet) -> OnPoint:
    """Return the node of a setting on point; every place must be a square of one size."""
    side = _side(builder, name, setting)
    sash = setting.sashing.width if setting.sashing else Length(0)
    rows, columns = len(setting.cells), len(setting.cells[0])
    pitch, beyond = (side + sash) * ROOT_TWO, sash * ROOT_TWO + 2 * setting.float
    node = OnPoint(
        name=name,
        cells=_children(builder, setting.cells, side),
        between=_children(builder, setting.between, side),
        side=side,
        sash=sash,
        sash_fabric=setting.sashing.fabric if setting.sashing else "",
        cornerstone_fabric=setting.sashing.cornerstone if setting.sashing else "",
        side_fabric=setting.side_fabric,
        corner_fabric=setting.corner_fabric,
        fit=setting.fit,
        side_square=Length(0),
        corner_square=Length(0),
        float=setting.float,
        width=columns * pitch + beyond,
        height=rows * pitch + beyond,
    )
    return _with_squares(builder, setting, node)


def _children(builder: Builder, cells: Map, side: Length) -> tuple[tuple[Child, ...], ...]:
    held = {cell: _child(builder, cell, side) for row in cells for cell in row}
    return tuple(tuple(held[cell] for cell in row) for row in cells)


def _child(builder: Builder, cell: MapCell, side: Length) -> Child:
    if isinstance(cell, ClothCell):
        return Child(PlainCloth(ClothUse.SQUARE, cell.fabric, side, side))
    child = builder.sized(cell)
    assert child is not None, "only plain cloth has no size of its own"
    return child


def _side(builder: Builder, name: str, setting: OnPointSet) -> Length:
    """Return the common side of all places, noting those that are not squares of it."""
    told = [("map", setting.cells), ("between", setting.between)]
    cells = {cell: key for key, rows in told for row in rows for cell in row}
    sized = [(cell, child) for cell in cells if (child := builder.sized(cell))]
    if not sized:
        sentence = "All places are plain cloth, and nothing tells how large they are."
        builder.notes.add(
            "size-open", section_key(name, "map"), sentence, "Put a unit or a section into the map."
        )
        return Length(1)
    side: Length = sized[0][1].width
    for cell, child in sized:
        if (child.width, child.height) != (side, side):
            _note_square(builder, section_key(name, cells[cell]), child, side)
    return side


def _note_square(builder: Builder, key: str, child: Child, side: Length) -> None:
    show = builder.notes.show
    name = getattr(child.node, "name", "cloth")
    size = f"{show(child.width)} × {show(child.height)}"
    sentence = f"`{name}` is {size}, and every place of a setting on point is a square of {show(side)}."
    bigger = max(child.width, child.height, side)
    remedy = f'Let all finish alike, or bring them to {show(bigger)} each way with a border of kind "coping".'
    builder.notes.add("cells-not-square", key, sentence, remedy)


def side_long_edge(node: OnPoint) -> Length:
    """Return the finished long edge of a side triangle, its float included."""
    return (node.side + node.sash) * ROOT_TWO + 2 * node.float


def corner_leg(node: OnPoint) -> Length:
    """Return the finished short edge of a corner triangle, its float included."""
    return (node.side + 2 * node.sash) * ROOT_TWO / 2 + 2 * node.float


def exact_additions(seam: Length) -> tuple[Length, Length]:
    """Return what seams add to the finished long edge of a quarter and to the short edge of a half of a square."""
    return 2 * seam * (1 + ROOT_TWO), seam * (2 + ROOT_TWO)


def handbook_additions(seam: Length, units: Units) -> tuple[Length, Length]:
    """Return + 1¼" and + ⅞" for seams of ¼"; for others the exact additions, up to the ruler's next mark."""
    if seam == HANDBOOK_SEAM and units is Units.INCH:
        return HANDBOOK_SIDE, HANDBOOK_CORNER
    side, corner = exact_additions(seam)
    return cut_up(side, units), cut_up(corner, units)


def _with_squares(builder: Builder, setting: OnPointSet, node: OnPoint) -> OnPoint:
    seam, units = builder.design.making.seam, builder.design.units
    exact, added = exact_additions(seam), handbook_additions(seam, units)
    if setting.fit is TriangleFit.EXACT:
        added = exact
    finished = side_long_edge(node), corner_leg(node)
    stated: Sequence[Length | None] = setting.side_square, setting.corner_square
    squares = []
    for k, key in enumerate(("side_square", "corner_square")):
        given, least = stated[k], finished[k] + exact[k]
        if given is not None and given < least - CUT_TOLERANCE:
            _note_small(builder, section_key(node.name, key), given, least)
        squares.append(cut_up(finished[k] + added[k], units) if given is None else given)
    return replace(node, side_square=squares[0], corner_square=squares[1])


def _note_small(builder: Builder, key: str, given: Length, least: Length) -> None:
    show, units = builder.notes.show, builder.design.units
    sentence = f"A square of {show(given)} is too small: the triangles need {show(least)}."
    remedy = f"State at least {show(cut_up(least, units))}, or leave it out."
    builder.notes.add("triangles-too-small", key, sentence, remedy)
