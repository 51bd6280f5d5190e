"""The drafting table: each recipe by its numbers, its master, its pieces apart, and what the seams leave of them."""

from __future__ import annotations

from collections.abc import Iterator

from quarterturn.blocks import Layer, Master, Part, Rejoining, Unit
from quarterturn.design import (
    GROUND,
    Curve,
    Design,
    DrawnDiameter,
    DrawnOutline,
    FinishedRadius,
    Recipe,
    Rejoined,
    dotted,
    write_design,
    write_length,
)
from quarterturn.geometry import Path, StraightLine, path_bounds, rectangle, shift
from quarterturn.measure import Length, show_length
from quarterturn.publish.wording.places import ends_on_edges
from quarterturn.studio.stages import Made, OneSize
from quarterturn.studio.views.model import Matrix, View, inches_of, matrix, path_data

Point = tuple[float, float]


class NumberView(View):
    """A number of a recipe that can be set: its dotted key, its value as written, and whether the file states it."""

    key: str
    value: str
    stated: bool


class ShapeView(View):
    """A fused shape in the master's frame, whose origin is its middle. `key` is that of its table."""

    key: str
    name: str
    part: str
    outline: str
    width: str
    at: tuple[str, str]
    degrees: float
    middle: Point
    wanted: str
    traced: str
    hole: str
    ring_out: str
    ring_in: str
    own: bool


class PartFace(View):
    """What shows of a part of the recipe: the ground, or a shape's part; in a rejoined unit `first/ground`."""

    part: str
    path: str


class PieceView(View):
    """A piece as the cuts leave it. `cut_at` lays its unit's own frame where it lay in the master.

    `sewn_at` lays it so that sewn edges meet along the cuts; `apart` is which way it goes when all are pulled apart.
    """

    name: str
    unit: int
    outline: str
    cut_at: Matrix
    sewn_at: Matrix
    apart: Point


class DraftUnit(View):
    """A kind of unit in its own frame: as trimmed and as sewn."""

    quarter: str
    width: float
    height: float
    size: tuple[str, str]
    cut_outline: str
    outline: str
    cut: tuple[PartFace, ...]
    sewn: tuple[PartFace, ...]
    each: int
    """How many one master gives, or of rejoined blocks two masters."""
    mirror: str | None


class SewnView(View):
    """What the seams leave, and its facts: the corner that curves make at a seam, in degrees, and how far they miss."""

    curve: str
    units: tuple[DraftUnit, ...]
    pieces: tuple[PieceView, ...]
    peak: float
    step: float
    step_said: str
    clearance: str
    shown: float
    """The share of the wanted area that is seen."""


class MasterView(View):
    """A master as cut, about its middle."""

    width: float
    height: float
    size: tuple[str, str]
    trim: tuple[float, float]
    trimmed: str
    shapes: tuple[ShapeView, ...]
    cuts: tuple[tuple[float, float, float, float], ...]


class DraftView(View):
    """A recipe on the drafting table. `other` is the same with the other curve, where it can be drafted."""

    name: str
    key: str
    kind: str
    of: str
    curve: str
    cuts: str
    parts: tuple[str, ...]
    numbers: tuple[NumberView, ...]
    master: MasterView | None
    sewn: SewnView
    other: SewnView | None
    colourways: tuple[str, ...]


class BlocksView(View):
    """All recipes of the file."""

    revision: int
    drafts: tuple[DraftView, ...]


def blocks_view(revision: int, made: Made) -> BlocksView:
    """Return the drafting table. Raises UnmadeError where the text is no design."""
    size, design = made.size(), made.design
    drafts = [_of_master(made, size, recipe) for recipe in design.recipes]
    drafts += [_of_halves(size, recipe) for recipe in design.rejoined]
    return BlocksView(revision=revision, drafts=tuple(drafts))


def _of_master(made: Made, size: OneSize, recipe: Recipe) -> DraftView:
    design, master = size.design, size.as_written.master(recipe.name)
    written = recipe.origin or recipe
    return DraftView(
        name=written.name,
        key=dotted("recipes", written.name),
        kind=written.kind.value,
        of="",
        curve=written.curve.value,
        cuts=_cuts_word(design, written),
        parts=(GROUND, *dict.fromkeys(shape.part for shape in written.shapes)),
        numbers=tuple(_numbers(made, written)),
        master=_master(master, written, design),
        sewn=_sewn(master, written.curve, design),
        other=_other(made, written),
        colourways=tuple(way.code for way in design.colourways if way.recipe == recipe.name),
    )


def _other(made: Made, recipe: Recipe) -> SewnView | None:
    """Return the recipe with the other curve: the file with that one value changed, drafted like any."""
    curve = Curve.SEWN_TRUE if recipe.curve is Curve.AS_DRAWN else Curve.AS_DRAWN
    text = write_design(made.text, {dotted("recipes", recipe.name, "curve"): curve.value})
    design = made.stages.at(text).reading.design
    if design is None:
        return None
    size = made.stages.at(text).size()
    found = next(each for each in design.recipes if (each.origin or each).name == recipe.name)
    return _sewn(size.as_written.master(found.name), curve, design)


def _of_halves(size: OneSize, recipe: Rejoined) -> DraftView:
    design, rejoining = size.design, size.as_written.rejoining(recipe.name)
    name = recipe.base or recipe.name
    master = size.as_written.master(recipe.of)
    original = design.recipe(recipe.of)
    return DraftView(
        name=name,
        key=dotted("recipes", name),
        kind="halves rejoined",
        of=original.base or recipe.of,
        curve=original.curve.value,
        cuts="",
        parts=tuple(dict.fromkeys(layer.part for unit in rejoining.units for layer in unit.sewn_layers)),
        numbers=(
            NumberView(
                key=dotted("recipes", name, "finished"),
                value=write_length(recipe.finished_width, design.units),
                stated=True,
            ),
        ),
        master=None,
        sewn=SewnView(
            curve=original.curve.value,
            units=_rejoined_units(rejoining, design),
            pieces=(),
            peak=round(master.facts.peak, 2),
            step=inches_of(master.facts.step),
            step_said=show_length(master.facts.step, design.units),
            clearance=show_length(master.facts.clearance, design.units),
            shown=_shown(master),
        ),
        other=None,
        colourways=tuple(way.code for way in design.colourways if way.recipe == recipe.name),
    )


def _numbers(made: Made, recipe: Recipe) -> Iterator[NumberView]:
    """Yield the numbers of a recipe with the keys by which they are set, stated in the file or following."""
    import tomllib

    table = tomllib.loads(made.text).get("recipes", {}).get(recipe.name, {})
    units = made.design.units
    square = recipe.width == recipe.height
    values = {"finished": recipe.finished_width, "start": recipe.width, "trim": recipe.trim_width}
    if not square:
        values = {
            "finished_width": recipe.finished_width,
            "finished_height": recipe.finished_height,
            "width": recipe.width,
            "height": recipe.height,
            "trim": recipe.trim_width,
        }
    for name, value in values.items():
        key = dotted("recipes", recipe.name, name)
        yield NumberView(key=key, value=write_length(value, units), stated=name in table)
    if "shape" in table:
        yield from _shape_numbers(recipe, made.design)


def _shape_numbers(recipe: Recipe, design: Design) -> Iterator[NumberView]:
    size, key = recipe.shapes[0].size, dotted("recipes", recipe.name, "shape")
    named: dict[str, Length] = {}
    if isinstance(size, DrawnDiameter):
        named = {"diameter": size.diameter}
    elif isinstance(size, FinishedRadius):
        named = {"radius": size.radius}
    elif isinstance(size, DrawnOutline):
        named = {"width": size.width}
    for name, value in named.items():
        yield NumberView(key=f"{key}.{name}", value=write_length(value, design.units), stated=True)


def _cuts_word(design: Design, recipe: Recipe) -> str:
    from quarterturn.design.cuts import word_of_cuts

    return word_of_cuts(recipe.cuts, recipe.width, recipe.height) or ""


def _master(master: Master, recipe: Recipe, design: Design) -> MasterView:
    width, height = float(master.width), float(master.height)
    across, down = (width - float(master.trim_width)) / 2, (height - float(master.trim_height)) / 2
    return MasterView(
        width=inches_of(width),
        height=inches_of(height),
        size=(show_length(master.width, design.units), show_length(master.height, design.units)),
        trim=(inches_of(master.trim_width), inches_of(master.trim_height)),
        trimmed=path_data(rectangle(-across, -down, across, down)),
        shapes=tuple(_shapes(master, recipe, design)),
        cuts=tuple(_through(master, cut) for cut in master.cuts),
    )


def _shapes(master: Master, recipe: Recipe, design: Design) -> Iterator[ShapeView]:
    many = recipe.kind.value == "shapes cut"
    for number, (shape, on) in enumerate(zip(master.shapes, recipe.shapes, strict=True)):
        middle = path_bounds(shape.traced).centre
        size = on.size
        outline = size.outline if isinstance(size, DrawnOutline) else "circle"
        width = size.width if isinstance(size, DrawnOutline) else Length(round(shape.width * 64), 64)
        where = ("shapes", number) if many else ("shape",)
        yield ShapeView(
            key=dotted("recipes", recipe.name, *where),
            name=shape.name,
            part=shape.part,
            outline=outline,
            width=write_length(width, design.units),
            at=(_signed(on.x, design), _signed(on.y, design)),
            degrees=float(on.degrees),
            middle=(inches_of(middle.real), inches_of(middle.imag)),
            wanted=path_data(shape.wanted),
            traced=path_data(shape.traced),
            hole=path_data(shape.hole) if shape.hole else "",
            ring_out=path_data(shape.ring_out),
            ring_in=path_data(shape.ring_in),
            own=isinstance(size, DrawnOutline) and size.own is not None,
        )


def _signed(value: Length, design: Design) -> str:
    return f"-{write_length(-value, design.units)}" if value < 0 else write_length(value, design.units)


def _through(master: Master, cut: StraightLine) -> tuple[float, float, float, float]:
    """Return where a cut runs over the edges of its master."""
    one, other = ends_on_edges(master, cut)
    a, b, c, d = (inches_of(each) for each in (one.real, one.imag, other.real, other.imag))
    return a, b, c, d


def _sewn(master: Master, curve: Curve, design: Design) -> SewnView:
    facts = master.facts
    return SewnView(
        curve=curve.value,
        units=tuple(
            _unit(unit, master.per_master(k), _mirror(unit, master.units), design)
            for k, unit in enumerate(master.units)
        ),
        pieces=tuple(_piece(master, part) for part in master.parts),
        peak=round(facts.peak, 2),
        step=inches_of(facts.step),
        step_said=show_length(facts.step, design.units),
        clearance=show_length(facts.clearance, design.units),
        shown=_shown(master),
    )


def _shown(master: Master) -> float:
    wanted = master.facts.wanted_area
    return round(master.facts.shape_area / wanted, 4) if wanted else 1.0


def _rejoined_units(rejoining: Rejoining, design: Design) -> tuple[DraftUnit, ...]:
    return tuple(
        _unit(unit, rejoining.per_pair(k), _mirror(unit, rejoining.units), design)
        for k, unit in enumerate(rejoining.units)
    )


def _mirror(unit: Unit, units: tuple[Unit, ...]) -> str | None:
    return None if unit.mirror is None else units[unit.mirror].quarter


def _unit(unit: Unit, each: int, mirror: str | None, design: Design) -> DraftUnit:
    return DraftUnit(
        quarter=unit.quarter,
        width=inches_of(unit.width),
        height=inches_of(unit.height),
        size=(show_length(unit.width, design.units), show_length(unit.height, design.units)),
        cut_outline=path_data(unit.cut_outline),
        outline=path_data(unit.outline),
        cut=_faces(unit.cut_layers),
        sewn=_faces(unit.sewn_layers),
        each=each,
        mirror=mirror,
    )


def _faces(layers: tuple[Layer, ...]) -> tuple[PartFace, ...]:
    return tuple(PartFace(part=layer.part, path=path_data(layer.region)) for layer in layers)


def _piece(master: Master, part: Part) -> PieceView:
    cut_at = part.motion.inverse()
    middle = _middle(part.outline)
    taken = sum((_taken_up(cut, part.outline, float(master.seam)) for cut in master.cuts), 0j)
    return PieceView(
        name=part.name,
        unit=part.unit,
        outline=path_data(part.outline),
        cut_at=matrix(cut_at),
        sewn_at=matrix(cut_at.then(shift(taken))),
        apart=(inches_of(middle.real), inches_of(middle.imag)),
    )


def _taken_up(cut: StraightLine, outline: Path, seam: float) -> complex:
    """Return how far a piece moves towards a cut when the seam along it has taken an allowance of each side."""
    normal = cut.direction * 1j
    return -normal * seam if cut.side(_middle(outline)) > 0 else normal * seam


def _middle(outline: Path) -> complex:
    """Return a point inside a piece, which the cuts leave without hollows: the mean of its corners."""
    corners = outline.corners()
    return sum(corners, 0j) / len(corners)
