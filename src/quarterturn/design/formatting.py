"""Print a design as a complete file, every default written out."""

from __future__ import annotations

from collections.abc import Iterable

from quarterturn.design.keys import dotted
from quarterturn.design.migrations import newest
from quarterturn.design.model import Border, Design, EdgeStitch, Fabric, House, Making, StraightSet
from quarterturn.design.recipe_writing import Pair, colourway_tables, recipe_tables
from quarterturn.design.text import quote_length, quote_lines, quote_text
from quarterturn.measure import Length, Units


def format_design(design: Design) -> str:
    """Return the text of a file that reads back as the same design."""
    units = design.units
    tables = [
        _head(design),
        *(_fabric(fabric, units) for fabric in design.fabrics),
        *(_table(header, *pairs) for header, pairs in recipe_tables(design)),
        *(_table(header, *pairs) for header, pairs in colourway_tables(design)),
        _setting(design.setting),
        *(_border(border, units) for border in design.borders),
        _table(
            "[binding]",
            ("fabric", quote_text(design.binding_fabric)),
            ("width", _long(design.binding_width, units)),
        ),
        _table("[backing]", ("fabric", quote_text(design.backing_fabric))),
        _making(design.making, units),
        _stitch(design.making.stitch, units),
        _house(design.house),
    ]
    return "\n\n".join(tables) + "\n"


def _long(value: Length, units: Units) -> str:
    return quote_length(value, units)


def _table(header: str, *pairs: Pair) -> str:
    return "\n".join([header, *_lines(pairs)])


def _lines(pairs: Iterable[Pair]) -> list[str]:
    return [f"{key} = {value}" for key, value in pairs]


def _head(design: Design) -> str:
    texts = [
        (key, quote_text(text))
        for key in ("maker", "number", "version", "date", "contact")
        if (text := getattr(design, key))
    ]
    pairs = [
        ("format", str(newest())),
        ("title", quote_text(design.title)),
        ("units", quote_text(design.units.value)),
        *texts,
    ]
    if design.about:
        pairs.append(("about", quote_lines(design.about)))
    return "\n".join(_lines(pairs))


def _fabric(fabric: Fabric, units: Units) -> str:
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
    return _table(f"[{dotted('fabrics', fabric.letter)}]", *pairs)


def _setting(setting: StraightSet) -> str:
    wide = max(len(cell.name) for row in setting.cells for cell in row) + 1
    rows = (" ".join(f"{cell.name}{cell.turn}".ljust(wide) for cell in row).rstrip() for row in setting.cells)
    return _table(
        "[setting]",
        ("kind", '"straight"'),
        ("map", quote_lines("\n".join(rows))),
        ("symmetry", quote_text(setting.symmetry.value)),
        ("across", str(setting.across)),
        ("down", str(setting.down)),
    )


def _border(border: Border, units: Units) -> str:
    return _table(
        "[[borders]]",
        ("fabric", quote_text(border.fabric)),
        ("width", _long(border.width, units)),
        ("first", '"sides"' if border.sides_first else '"ends"'),
    )


_LENGTHS = (
    "seam", "usable_width", "ring_out", "ring_in", "tracing_gap", "cut_away", "web_width",
    "binding_extra", "overage", "backing_seam", "squaring", "slack",
)  # fmt: skip


def _making(making: Making, units: Units) -> str:
    return _table(
        "[making]",
        *((name, _long(getattr(making, name), units)) for name in _LENGTHS),
        ("spare_masters", str(making.spare_masters)),
        ("pressing", quote_text(making.pressing.value)),
    )


def _stitch(stitch: EdgeStitch, units: Units) -> str:
    return _table(
        "[making.stitch]",
        ("kind", quote_text(stitch.kind.value)),
        ("width", _long(stitch.width, units)),
        ("length", _long(stitch.length, units)),
        ("thread", quote_text(stitch.thread)),
        ("needle", quote_text(stitch.needle)),
    )


def _house(house: House) -> str:
    return _table(
        "[house]",
        ("paper", quote_text(house.paper.value)),
        ("sixteenths", "true" if house.sixteenths else "false"),
        ("currency", quote_text(house.currency)),
        ("skill", quote_text(house.skill)),
    )
