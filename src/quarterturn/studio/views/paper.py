"""The paper that the design is written on: its text, what it names, and what can be changed where."""

from __future__ import annotations

import tomllib

from pydantic import JsonValue

from quarterturn.blocks import Blocks, Unit, mirror_turn
from quarterturn.design import (
    GROUND,
    Colourway,
    Design,
    Fabric,
    Photo,
    dotted,
    recipes_of_file,
    unit_name,
    write_length,
    written_name,
)
from quarterturn.design.sizes import changes_written
from quarterturn.studio.stages import Made, OneSize
from quarterturn.studio.views.model import FindingView, View, finding_view
from quarterturn.studio.views.sections import SectionView, section_views
from quarterturn.studio.views.spoken import spoken_unit


class PhotoView(View):
    """A photo beside the design: `width` is what it shows across; `crop` is left, top, width, height as shares."""

    file: str
    width: str | None
    inches: float | None
    crop: tuple[float, float, float, float]


class FabricView(View):
    """A fabric, its lengths as text of the file's units."""

    letter: str
    name: str
    role: str
    colour: str
    price: float | None
    width: str
    direction: str
    upright: bool
    kind: str
    shrink_along: float
    shrink_across: float
    photo: PhotoView | None


class RecipeName(View):
    """A recipe by name and kind, and the parts that its colourways give cloth."""

    name: str
    kind: str
    parts: tuple[str, ...]
    fits_motif: bool


class KindView(View):
    """A unit by the name that maps write, and whether maps can hold it and be mirrored."""

    name: str
    spoken: str
    fits_map: bool
    mirror: str | None
    """What is its mirror image, left for right, when that is turned by `mirror_turn` less the unit's own turn."""
    mirror_turn: int


class ColourwayView(View):
    """A recipe in cloth; `cloths` are part and letter."""

    code: str
    recipe: str
    spoken: str
    ground: str
    cloths: dict[str, str]
    first: str
    second: str
    kinds: tuple[KindView, ...]


class ChangeName(View):
    """A value that differs in a size: the key of the change, that of what it changes, and the value in this size."""

    at: str
    key: str
    value: JsonValue


class SizeName(View):
    """A size by name, and whether it is the file's own."""

    name: str
    own: bool
    bed: str
    stated: dict[str, JsonValue]
    """What its table says of its bed, as the file writes it: `bed`, `mattress`, `drop`, `tuck`, `within`."""
    changes: tuple[ChangeName, ...]


class PaperFacts(View):
    """All that a text says of itself. The desk adds what it knows of the file."""

    title: str
    units: str
    text: str
    findings_stop: tuple[FindingView, ...]
    fabrics: tuple[FabricView, ...]
    recipes: tuple[RecipeName, ...]
    colourways: tuple[ColourwayView, ...]
    sections: tuple[SectionView, ...]
    sizes: tuple[SizeName, ...]
    binding: str
    backing: str
    currency: str
    outlines: tuple[str, ...]


def paper_facts(made: Made) -> PaperFacts:
    """Return what the text says; of a text that is no design only what stops it."""
    design = made.reading.design
    if design is None:
        return _nothing(made)
    size = made.size()
    return PaperFacts(
        title=design.title,
        units=design.units.value,
        text=made.text,
        findings_stop=tuple(map(finding_view, made.stops)),
        fabrics=tuple(_fabric(fabric, design) for fabric in design.fabrics),
        recipes=_recipes(design),
        colourways=tuple(_colourway(way, size) for way in design.colourways),
        sections=section_views(design),
        sizes=_sizes(made, design),
        binding=design.binding_fabric,
        backing=design.backing_fabric,
        currency=design.house.currency,
        outlines=tuple(outline.name for outline in design.outlines),
    )


def _sizes(made: Made, design: Design) -> tuple[SizeName, ...]:
    tables = tomllib.loads(made.text.removeprefix("\ufeff")).get("sizes", {})
    return tuple(
        SizeName(
            name=each.size,
            own=each is design,
            bed=each.bed.name if each.bed else "",
            stated={key: value for key, value in tables.get(each.size, {}).items() if key != "changes"},
            changes=tuple(
                ChangeName(at=change.key, key=dotted(*change.parts), value=change.value)
                for change in changes_written(each.size, tables.get(each.size, {}).get("changes", {}))
            ),
        )
        for each in (design, *design.sizes)
    )


def _nothing(made: Made) -> PaperFacts:
    return PaperFacts(
        title="",
        units="inch",
        text=made.text,
        findings_stop=tuple(map(finding_view, made.reading.findings)),
        fabrics=(),
        recipes=(),
        colourways=(),
        sections=(),
        sizes=(),
        binding="",
        backing="",
        currency="",
        outlines=(),
    )


def _fabric(fabric: Fabric, design: Design) -> FabricView:
    return FabricView(
        letter=fabric.letter,
        name=fabric.name,
        role=fabric.role,
        colour=fabric.colour,
        price=None if fabric.price is None else float(fabric.price),
        width=write_length(fabric.width, design.units),
        direction=fabric.direction.value,
        upright=fabric.upright,
        kind=fabric.kind.value,
        shrink_along=float(fabric.shrink_along * 100),
        shrink_across=float(fabric.shrink_across * 100),
        photo=_photo(fabric.photo, design) if fabric.photo else None,
    )


def _photo(photo: Photo, design: Design) -> PhotoView:
    left, top, width, height = map(float, photo.crop)
    return PhotoView(
        file=photo.file,
        width=None if photo.width is None else write_length(photo.width, design.units),
        inches=None if photo.width is None else float(photo.width),
        crop=(left, top, width, height),
    )


def _recipes(design: Design) -> tuple[RecipeName, ...]:
    made, rejoined = recipes_of_file(design.recipes), recipes_of_file(design.rejoined)
    return (
        *(
            RecipeName(
                name=recipe.name,
                kind=recipe.kind.value,
                parts=(GROUND, *dict.fromkeys(shape.part for shape in recipe.shapes)),
                fits_motif=len(recipe.shapes) == 1,
            )
            for recipe in made
        ),
        *(RecipeName(name=r.name, kind="halves rejoined", parts=(), fits_motif=False) for r in rejoined),
    )


def _colourway(way: Colourway, size: OneSize) -> ColourwayView:
    design, blocks = size.design, size.as_written
    kinds = kinds_of(design, blocks, way)
    return ColourwayView(
        code=way.code,
        recipe=written_name(design, way.recipe),
        spoken=kinds[0].spoken.split(", ")[0],
        ground=way.ground,
        cloths={} if way.is_rejoined else {GROUND: way.ground, **dict(way.shapes)},
        first=way.first,
        second=way.second,
        kinds=kinds,
    )


def kinds_of(design: Design, blocks: Blocks, way: Colourway) -> tuple[KindView, ...]:
    """Return the units of a colourway by the names that maps write."""
    units = _written_units(blocks, way)
    found = []
    for quarter, unit in units.items():
        mirrors = ((other, mirror_turn(unit, each)) for other, each in units.items())
        mirror, turn = next(((other, k) for other, k in mirrors if k is not None), (None, 0))
        found.append(
            KindView(
                name=unit_name(way.code, quarter),
                spoken=spoken_unit(design, blocks, unit_name(way.code, unit.quarter), quarter),
                fits_map=unit.is_rectangle,
                mirror=None if mirror is None else unit_name(way.code, mirror),
                mirror_turn=turn,
            )
        )
    return tuple(found)


def _written_units(blocks: Blocks, way: Colourway) -> dict[str, Unit]:
    """Return the kinds by the words that maps write; of pieces that are kept apart one stands for those alike."""
    units = {unit.quarter: unit for unit in blocks.units(way.recipe)}
    lies = blocks.lies(way.recipe)
    first = {lie.word: lie.name for lie in reversed(lies) if lie.turn == 0}
    kept_apart = len(units) > len(first)
    return {word: units[first[word]] for word in sorted(first)} if kept_apart and first else units
