"""The quilt as it is sewn: every unit once, as a symbol, and all that lies where.

In:  a design in one size.
Out: a `QuiltView` in inches, x to the right and y down, the origin inside the binding at the top left.
"""

from __future__ import annotations

from collections.abc import Container

from quarterturn.blocks import Blocks
from quarterturn.design import Design, code_of_unit, quarter_of_unit, unit_name
from quarterturn.setting import NodeKind, PlacedNode, PlacedUnit, place_nodes
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


class QuiltView(View):
    """All that is drawn of the quilt."""

    revision: int
    fits: bool
    """False where parts do not fit together, and their sizes are guesses."""
    width: float
    height: float
    seam: float
    units: dict[str, UnitView]
    placed: tuple[PlacedView, ...]
    cloths: tuple[ClothView, ...]
    boxes: tuple[BoxView, ...]
    binding: BindingView


def quilt_view(revision: int, size: OneSize) -> QuiltView:
    """Return the quilt. Raises UnmadeError where a word of a map means nothing that can be laid."""
    drawn = size.drawn
    places = Places(size.design, drawn.top)
    laid = dict.fromkeys(unit.name for unit in drawn.units)
    return QuiltView(
        revision=revision,
        fits=drawn.fits,
        width=inches_of(drawn.top.width),
        height=inches_of(drawn.top.height),
        seam=inches_of(drawn.design.making.seam),
        units=_unlaid(size, laid) | {name: unit_view(drawn.design, drawn.blocks, name) for name in laid},
        placed=tuple(_placed(unit, places) for unit in drawn.units),
        cloths=tuple(
            ClothView(what=c.what, section=c.section, fabric=c.fabric, path=path_data(c.region))
            for c in drawn.cloths
        ),
        boxes=tuple(_box(node, places) for node in place_nodes(drawn.top)),
        binding=BindingView(fabric=drawn.design.binding_fabric, depth=inches_of(drawn.design.making.seam)),
    )


def _unlaid(size: OneSize, laid: Container[str]) -> dict[str, UnitView]:
    """Return the units that a map could hold and that do not lie in the top, so that they can be painted."""
    design, blocks = size.design, size.as_written
    names = (
        unit_name(way.code, unit.quarter)
        for way in design.colourways
        for unit in blocks.units(way.recipe)
        if unit.is_rectangle
    )
    return {name: unit_view(design, blocks, name) for name in names if name not in laid}


def unit_view(design: Design, blocks: Blocks, name: str) -> UnitView:
    """Return a kind of unit that the design has."""
    unit = blocks.unit(design, name)
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
        spoken=spoken_unit(design, blocks, name),
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
        name=places.border(node.name) or node.name,
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
