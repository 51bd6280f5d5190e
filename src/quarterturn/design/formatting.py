"""Print a design as a complete file, every default written out."""

from __future__ import annotations

import re
import textwrap
from collections.abc import Iterator

from quarterturn.design.differing import size_name, size_tables
from quarterturn.design.keys import dotted
from quarterturn.design.migrations import newest
from quarterturn.design.model import (
    WHOLE_PHOTO,
    BindingKind,
    Design,
    EdgeStitch,
    Fabric,
    Fold,
    House,
    Making,
    Package,
    Photo,
)
from quarterturn.design.needle import write_needle
from quarterturn.design.parcel_tables import parcel_pairs
from quarterturn.design.recipe_writing import colourway_tables, recipe_tables
from quarterturn.design.recipes import OwnOutline
from quarterturn.design.section_tables import Pair, border_table, lines, section_tables, setting_table
from quarterturn.design.selling_writing import selling_tables, write_number
from quarterturn.design.text import quote_length, quote_lines, quote_long, quote_text
from quarterturn.measure import Length, Units


def format_design(design: Design) -> str:
    """Return the text of a file that reads back as the same design."""
    units = design.units
    tables = [
        _head(design),
        *(_fabric(fabric, design.making, units) for fabric in design.fabrics),
        *(_outline(outline, units) for outline in design.outlines),
        *(_table(header, *pairs) for header, pairs in recipe_tables(design)),
        *(_table(header, *pairs) for header, pairs in colourway_tables(design)),
        *(table for section in design.sections for table in section_tables(section, units)),
        setting_table(design.setting, "setting", units),
        *(border_table(border, "borders", units) for border in design.borders),
        _table("[binding]", *_binding(design)),
        _table("[backing]", ("fabric", quote_text(design.backing_fabric))),
        *_batting(design.packages, units),
        _making(design.making, units),
        _stitch(design.making.stitch, units),
        _house(design.house),
        *selling_tables(design.selling, units, [size.size for size in design.sizes]),
        *size_tables(design, format_design),
    ]
    return "\n\n".join(tables) + "\n"


def _long(value: Length, units: Units) -> str:
    return quote_length(value, units)


def _table(header: str, *pairs: Pair) -> str:
    return "\n".join([header, *lines(pairs)])


def _binding(design: Design) -> Iterator[Pair]:
    yield "fabric", quote_text(design.binding_fabric)
    if design.binding_kind is not BindingKind.STRAIGHT:
        yield "kind", quote_text(design.binding_kind.value)
    if design.binding_fold is not Fold.DOUBLE:
        yield "fold", quote_text(design.binding_fold.value)
    yield "width", _long(design.binding_width, design.units)


def _head(design: Design) -> str:
    texts = [
        (key, quote_text(text))
        for key in ("maker", "number", "version", "date", "contact")
        if (text := getattr(design, key))
    ]
    if size := size_name(design):
        texts.append(("size", quote_text(size)))
    pairs = [
        ("format", str(newest())),
        ("title", quote_text(design.title)),
        ("units", quote_text(design.units.value)),
        *texts,
    ]
    if design.about:
        pairs.append(("about", quote_lines(design.about)))
    return "\n".join(lines(pairs))


def _fabric(fabric: Fabric, making: Making, units: Units) -> str:
    pairs = [("name", quote_text(fabric.name))]
    if fabric.role:
        pairs.append(("role", quote_text(fabric.role)))
    pairs += [
        ("colour", quote_text(fabric.colour)),
        ("width", _long(fabric.width, units)),
        ("direction", quote_text(fabric.direction.value)),
        *([("upright", "true")] if fabric.upright else []),
        ("kind", quote_text(fabric.kind.value)),
    ]
    if fabric.price is not None:
        pairs.append(("price", repr(float(fabric.price))))
    for key in ("shrink_along", "shrink_across"):
        if share := getattr(fabric, key):
            pairs.append((key, write_number(share * 100)))
    if fabric.photo:
        pairs += _photo(fabric.photo, units)
    pairs += parcel_pairs(fabric, making, units)
    if fabric.strip_heights:
        heights = ", ".join(_long(height, units) for height in fabric.strip_heights)
        pairs.append(("strip_heights", f"[{heights}]"))
    key = dotted("fabrics", fabric.letter)
    return "\n\n".join([_table(f"[{key}]", *pairs), *_pinned(fabric, f"[[{key}.strips]]", units)])


def _pinned(fabric: Fabric, header: str, units: Units) -> Iterator[str]:
    for strips in fabric.strips:
        pairs = [("height", _long(strips.height, units))]
        if strips.count is not None:
            pairs.append(("count", str(strips.count)))
        if strips.pieces:
            pairs.append(("pieces", f"[{', '.join(map(quote_text, strips.pieces))}]"))
        yield _table(header, *pairs)


def _photo(photo: Photo, units: Units) -> list[tuple[str, str]]:
    pairs = [("photo", quote_text(photo.file))]
    if photo.width is not None:
        pairs.append(("photo_width", quote_length(photo.width, units)))
    if photo.crop != WHOLE_PHOTO:
        pairs.append(("photo_crop", f"[{', '.join(write_number(share) for share in photo.crop)}]"))
    return pairs


_PATH_WIDTH = 100


def _outline(outline: OwnOutline, units: Units) -> str:
    return outline_table(outline.name, outline.data, outline.width, units)


def outline_table(name: str, data: str, width: Length, units: Units) -> str:
    """Return the table of an outline of the designer's own, its path data over as many lines as it needs."""
    return _table(
        f"[{dotted('outlines', name)}]",
        ("path", quote_lines(path_lines(data))),
        ("width", _long(width, units)),
    )


def path_lines(data: str) -> str:
    """Return path data broken into lines: before a command where that does, at spaces in any case."""
    lines = [""]
    for command in re.split(r" (?=[A-Za-z])", data):
        if len(lines[-1]) + len(command) < _PATH_WIDTH:
            lines[-1] = f"{lines[-1]} {command}".strip()
        else:
            lines += textwrap.wrap(command, _PATH_WIDTH, break_long_words=False, break_on_hyphens=False)
    return "\n".join(line for line in lines if line)


def _batting(packages: tuple[Package, ...], units: Units) -> list[str]:
    if not packages:
        return []
    pairs = (
        f"{dotted(each.name)} = [{_long(each.short, units)}, {_long(each.long, units)}]" for each in packages
    )
    return [_table("[batting]", ("packages", f"{{ {', '.join(pairs)} }}"))]


_LENGTHS = (
    "seam", "usable_width", "ring_out", "ring_in", "tracing_gap", "cut_away", "web_width",
    "binding_extra", "overage", "backing_seam", "squaring", "piece_squaring", "slack",
)  # fmt: skip


def _making(making: Making, units: Units) -> str:
    return _table(
        "[making]",
        *((name, _long(getattr(making, name), units)) for name in _LENGTHS),
        *_web_sheet(making, units),
        ("spare_masters", str(making.spare_masters)),
        ("pressing", quote_text(making.pressing.value)),
        ("borders", quote_text(making.borders.value)),
        ("joins", quote_text(making.joins.value)),
        ("layers", str(making.layers)),
    )


def _web_sheet(making: Making, units: Units) -> list[tuple[str, str]]:
    if making.web_sheet is None:
        return []
    width, height = (_long(side, units) for side in making.web_sheet)
    return [("web_sheet", f"[{width}, {height}]")]


def _stitch(stitch: EdgeStitch, units: Units) -> str:
    return _table(
        "[making.stitch]",
        ("kind", quote_text(stitch.kind.value)),
        ("width", _long(stitch.width, units)),
        ("length", _long(stitch.length, units)),
        ("thread", quote_text(stitch.thread)),
        ("needle", quote_text(stitch.needle)),
        *([("repeat", quote_text(write_needle(stitch.repeat)))] if stitch.repeat else []),
        ("layers", str(stitch.layers)),
        ("bobbin", quote_long(stitch.bobbin, units)),
    )


def _house(house: House) -> str:
    return _table(
        "[house]",
        ("paper", quote_text(house.paper.value)),
        ("sixteenths", "true" if house.sixteenths else "false"),
        ("currency", quote_text(house.currency)),
        ("skill", quote_text(house.skill)),
    )
