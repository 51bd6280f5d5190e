"""The quilt as it is sewn: every unit once, as a symbol, and all that lies where.

In:  a design in one size.
Out: a `QuiltView` in inches, x to the right and y down, the origin inside the binding at the top left.
"""

from __future__ import annotations

from quarterturn.design import code_of_unit, quarter_of_unit
from quarterturn.setting import (
    Meeting,
    NodeKind,
    PlacedNode,
    PlacedUnit,
    Setting,
    place_nodes,
    turned_in_place,
)
from quarterturn.studio.stages import OneSize
from quarterturn.studio.views.model import Matrix, View, inches_of, matrix, path_data
from quarterturn.studio.views.places import Places
from quarterturn.studio.views.spoken import spoken_unit


class FaceView(View):
    """Cloth that shows in a unit: the letter of its fabric, and where, in the unit's own frame."""

    fabric: str
    path: str


class UnitView(View):
    """A kind of unit at turn 0; `spoken` says what it looks like."""

    code: str
    quarter: str
    width: float
    height: float
    faces: tuple[FaceView, ...]
    spoken: str


class PlacedView(View):
    """A unit at its place. `cell` is the row and column of the map of `written` that fills it.

    `lie` says how a turn in the map is seen there: turned by so many quarters further where it is 0 to 3, and of what
    is mirrored (4 to 7) by lie − 4 less the turn in the map.
    """

    unit: str
    section: str
    copy_number: int
    row: int
    column: int
    cell: tuple[int, int] | None
    written: str
    lie: int
    turn: int
    at: Matrix


class ClothView(View):
    """Cloth other than a unit's, later ones on top."""

    what: str
    section: str
    fabric: str
    path: str


class BoxView(View):
    """A part of the top that is no unit, in its own frame from 0, 0 to width, height: a section, border, square.

    `holder` is the section in whose map it stands, at `cell`; `inset` how deep the strips of a border are.
    """

    kind: str
    name: str
    copy_number: int
    holder: str
    cell: tuple[int, int] | None
    lie: int
    turn: int
    width: float
    height: float
    inset: tuple[float, float]
    at: Matrix


class BindingView(View):
    """The binding that shows round the top."""

    fabric: str
    depth: float


class JoinView(View):
    """Where an edge of cloth meets a seam, and what it finds there; a level or upright mark, in the top's frame."""

    at: tuple[float, float, float, float]
    meeting: str
    distance: float


class QuiltView(View):
    """All that is drawn of the quilt."""

    revision: int
    width: float
    height: float
    seam: float
    units: dict[str, UnitView]
    placed: tuple[PlacedView, ...]
    cloths: tuple[ClothView, ...]
    boxes: tuple[BoxView, ...]
    binding: BindingView
    joins: tuple[JoinView, ...]


def quilt_view(revision: int, size: OneSize) -> QuiltView:
    """Return the quilt. Raises UnmadeError where something does not fit."""
    setting, design = size.setting, size.laid_design
    places = Places(size.design)
    return QuiltView(
        revision=revision,
        width=inches_of(setting.width),
        height=inches_of(setting.height),
        seam=inches_of(design.making.seam),
        units={name: unit_view(size, name) for name in dict.fromkeys(unit.name for unit in setting.units)},
        placed=tuple(_placed(unit, places) for unit in setting.units),
        cloths=tuple(
            ClothView(what=c.what, section=c.section, fabric=c.fabric, path=path_data(c.region))
            for c in setting.cloths
        ),
        boxes=tuple(_box(node, places) for node in place_nodes(setting.top)),
        binding=BindingView(fabric=design.binding_fabric, depth=inches_of(design.making.seam)),
        joins=join_views(size),
    )


def unit_view(size: OneSize, name: str) -> UnitView:
    """Return a kind of unit that the design has."""
    design, unit = size.laid_design, size.blocks.unit(size.laid_design, name)
    faces = tuple(
        FaceView(fabric=design.cloth(name, layer.part), path=path_data(layer.region))
        for layer in unit.sewn_layers
    )
    return UnitView(
        code=code_of_unit(name),
        quarter=quarter_of_unit(name),
        width=inches_of(unit.width),
        height=inches_of(unit.height),
        faces=faces,
        spoken=spoken_unit(design, size.blocks, name),
    )


def _placed(unit: PlacedUnit, places: Places) -> PlacedView:
    spot = places.spot(unit.section, unit.row, unit.column)
    return PlacedView.model_construct(
        unit=unit.name,
        section=unit.section,
        copy_number=unit.copy,
        row=unit.row,
        column=unit.column,
        cell=(spot.row, spot.column) if spot else None,
        written=spot.section if spot else "",
        lie=spot.source.turn + 4 * spot.source.is_mirrored if spot else 0,
        turn=unit.turn,
        at=matrix(unit.motion),
    )


def _box(node: PlacedNode, places: Places) -> BoxView:
    held = node.kind is not NodeKind.BORDER and node.holder
    spot = places.spot(node.holder, node.row, node.column) if held else None
    return BoxView(
        kind=node.kind.value,
        name=node.name,
        copy_number=node.copy,
        holder=spot.section if spot else node.holder,
        cell=(spot.row, spot.column) if spot else None,
        lie=spot.source.turn + 4 * spot.source.is_mirrored if spot else 0,
        turn=node.turn,
        width=inches_of(node.width),
        height=inches_of(node.height),
        inset=(inches_of(node.side_depth), inches_of(node.end_depth)),
        at=matrix(node.motion),
    )


def join_views(size: OneSize) -> tuple[JoinView, ...]:
    """Return the edges that step at a seam, which the quilt shows as it is designed; those that match are many."""
    return tuple(
        view
        for view in size.once("joins", lambda: marks_at_seams(size))
        if view.meeting == Meeting.STEP.value
    )


def marks_at_seams(size: OneSize) -> tuple[JoinView, ...]:
    """Return every edge of cloth that comes to a seam between two units."""
    setting, design, blocks = size.setting, size.laid_design, size.blocks
    found = []
    for join in setting.joins:
        first = setting.units[join.first]
        unit = blocks.unit(design, first.name)
        start, way = _side(setting, join.first, join.side.value, float(unit.width), float(unit.height))
        for mark in join.marks:
            middle = start + way * mark.at
            half = max(mark.distance / 2, 0.0)
            ends = (middle - way * half, middle + way * half)
            numbers = (ends[0].real, ends[0].imag, ends[1].real, ends[1].imag)
            a, b, c, d = (inches_of(number) for number in numbers)
            apart = inches_of(mark.distance)
            found.append(JoinView(at=(a, b, c, d), meeting=mark.meeting.value, distance=apart))
    return tuple(found)


def _side(setting: Setting, index: int, side: str, width: float, height: float) -> tuple[complex, complex]:
    """Return where a side of a unit, as its map shows it, begins in the top, and which way it runs.

    Marks are measured along it from its left or top end.
    """
    unit = setting.units[index]
    wide, high = (height, width) if unit.turn % 2 else (width, height)
    seen = turned_in_place(width, height, unit.turn).inverse().then(unit.motion)
    starts = {"top": 0j, "left": 0j, "right": complex(wide, 0), "bottom": complex(0, high)}
    way = 1 + 0j if side in ("top", "bottom") else 1j
    start = seen(starts[side])
    return start, seen(starts[side] + way) - start
