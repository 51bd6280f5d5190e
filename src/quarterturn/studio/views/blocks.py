"""The drafting table: each recipe by its numbers, its master, its pieces apart, and what the seams leave of them."""

from __future__ import annotations

import tomllib
from collections.abc import Iterator
from typing import Any

from quarterturn.blocks import Master, Rejoining
from quarterturn.design import (
    GROUND,
    Curve,
    Design,
    DrawnDiameter,
    DrawnOutline,
    FinishedRadius,
    Recipe,
    RecipeKind,
    Rejoined,
    dotted,
    recipes_of_file,
    write_design,
    write_length,
    written_name,
)
from quarterturn.geometry import StraightLine, path_bounds, rectangle
from quarterturn.measure import Length, show_length
from quarterturn.publish.wording.places import ends_on_edges
from quarterturn.studio.stages import Made, OneSize
from quarterturn.studio.views.model import View, inches_of, path_data
from quarterturn.studio.views.sewn import (
    DraftUnit,
    SewnView,
    draft_unit,
    mirror_of,
    rejoined_meetings,
    sewn_view,
    shown_share,
)

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
    inner: str
    """What the hole of a ring measures across; nothing of others."""
    lobes: int | None
    """Of a scallop."""
    underlap: str
    """What stays of the cloth below, where the file says it for this shape; else nothing."""
    at: tuple[str, str]
    degrees: float
    middle: Point
    wanted: str
    traced: str
    hole: str
    ring_out: str
    ring_in: str
    own: bool


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
    halves: tuple[str, ...]
    """Of halves rejoined: the recipes whose halves they could be."""
    pieced: bool | None
    """Whether the way of sewing the curve is shown; None of recipes that have none."""
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
    """Return the drafting table. Raises UnmadeError where the text is no design.

    Under the name that the file gives a recipe there is always a master: its own, or that of the copy in its place.
    """
    size, design = made.size(), made.design
    drafts = [_of_master(made, size, recipe) for recipe in recipes_of_file(design.recipes)]
    drafts += [_of_halves(made, size, recipe) for recipe in recipes_of_file(design.rejoined)]
    return BlocksView(revision=revision, drafts=tuple(drafts))


def _ways(design: Design, name: str) -> tuple[str, ...]:
    return tuple(way.code for way in design.colourways if written_name(design, way.recipe) == name)


def _of_master(made: Made, size: OneSize, recipe: Recipe) -> DraftView:
    design, master = size.design, size.as_written.master(recipe.name)
    return DraftView(
        name=recipe.name,
        key=dotted("recipes", recipe.name),
        kind=recipe.kind.value,
        of="",
        halves=(),
        pieced=recipe.pieced if recipe.kind is RecipeKind.CIRCLE else None,
        curve=recipe.curve.value,
        cuts=_cuts_word(design, recipe),
        parts=(GROUND, *dict.fromkeys(shape.part for shape in recipe.shapes)),
        numbers=tuple(_numbers(made, recipe)),
        master=_master(master, recipe, design),
        sewn=sewn_view(master, recipe.curve, design),
        other=_other(made, recipe),
        colourways=_ways(design, recipe.name),
    )


def _other(made: Made, recipe: Recipe) -> SewnView | None:
    """Return the recipe with the other curve: the file with that one value changed, drafted like any."""
    curve = Curve.SEWN_TRUE if recipe.curve is Curve.AS_DRAWN else Curve.AS_DRAWN
    text = write_design(made.text, {dotted("recipes", recipe.name, "curve"): curve.value})
    design = made.stages.at(text).reading.design
    if design is None:
        return None
    size = made.stages.at(text).size()
    return sewn_view(size.as_written.master(recipe.name), curve, design)


def _of_halves(made: Made, size: OneSize, recipe: Rejoined) -> DraftView:
    design, rejoining = size.design, size.as_written.rejoining(recipe.name)
    master = size.as_written.master(recipe.of)
    original = design.recipe(recipe.of)
    return DraftView(
        name=recipe.name,
        key=dotted("recipes", recipe.name),
        kind="halves rejoined",
        of=recipe.of,
        halves=tuple(each.name for each in recipes_of_file(design.recipes) if len(each.cuts) == 1),
        pieced=None,
        curve=original.curve.value,
        cuts="",
        parts=tuple(dict.fromkeys(layer.part for unit in rejoining.units for layer in unit.sewn_layers)),
        numbers=tuple(_numbers_of_halves(made, recipe)),
        master=None,
        sewn=SewnView(
            curve=original.curve.value,
            units=_rejoined_units(rejoining, design),
            pieces=(),
            meetings=rejoined_meetings(master, rejoining.units[0]),
            peak=round(master.facts.peak, 2),
            step=inches_of(master.facts.step),
            step_said=show_length(master.facts.step, design.units),
            clearance=show_length(master.facts.clearance, design.units),
            shown=shown_share(master),
        ),
        other=None,
        colourways=_ways(design, recipe.name),
    )


def _table(made: Made, recipe: str) -> dict[str, Any]:
    """Return the table of a recipe as the file has it."""
    found: dict[str, Any] = tomllib.loads(made.text.removeprefix("\ufeff")).get("recipes", {}).get(recipe, {})
    return found


def _numbers_of_halves(made: Made, recipe: Rejoined) -> Iterator[NumberView]:
    table, units = _table(made, recipe.name), made.design.units
    for key, value in (("finished", recipe.finished_width), ("trim", recipe.trim_width)):
        said = write_length if key in table else show_length  # what follows is seldom a mark of a ruler
        yield NumberView(
            key=dotted("recipes", recipe.name, key), value=said(value, units), stated=key in table
        )


def _numbers(made: Made, recipe: Recipe) -> Iterator[NumberView]:
    """Yield the numbers of a recipe with the keys by which they are set, stated in the file or following."""
    table, units = _table(made, recipe.name), made.design.units
    square = not table.keys() & {"width", "height", "finished_width", "finished_height"}
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
        drawn = size if isinstance(size, DrawnOutline) else None
        outline = drawn.outline if drawn else "circle"
        width = drawn.width if drawn else Length(round(shape.width * 64), 64)
        where = ("shapes", number) if many else ("shape",)
        yield ShapeView(
            key=dotted("recipes", recipe.name, *where),
            name=shape.name,
            part=shape.part,
            outline=outline,
            width=write_length(width, design.units),
            inner=write_length(drawn.inner, design.units) if drawn and drawn.inner else "",
            lobes=(drawn.lobes or None) if drawn else None,
            underlap="" if on.underlap is None else write_length(on.underlap, design.units),
            at=(_signed(on.x, design), _signed(on.y, design)),
            degrees=float(on.degrees) + 90 * (drawn.turn if drawn else 0),
            middle=(inches_of(middle.real), inches_of(middle.imag)),
            wanted=path_data(shape.wanted),
            traced=path_data(shape.traced),
            hole=path_data(shape.hole) if shape.hole else "",
            ring_out=path_data(shape.ring_out),
            ring_in=path_data(shape.ring_in),
            own=drawn is not None and drawn.own is not None,
        )


def _signed(value: Length, design: Design) -> str:
    return f"-{write_length(-value, design.units)}" if value < 0 else write_length(value, design.units)


def _through(master: Master, cut: StraightLine) -> tuple[float, float, float, float]:
    """Return where a cut runs over the edges of its master."""
    one, other = ends_on_edges(master, cut)
    a, b, c, d = (inches_of(each) for each in (one.real, one.imag, other.real, other.imag))
    return a, b, c, d


def _rejoined_units(rejoining: Rejoining, design: Design) -> tuple[DraftUnit, ...]:
    return tuple(
        draft_unit(unit, rejoining.per_pair(k), mirror_of(unit, rejoining.units), design)
        for k, unit in enumerate(rejoining.units)
    )
