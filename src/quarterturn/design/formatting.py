"""Print a design as a complete file, every default written out."""

from __future__ import annotations

from collections.abc import Iterable

from quarterturn.design.keys import dotted
from quarterturn.design.migrations import newest
from quarterturn.design.model import Border, Colourway, Design, EdgeStitch, Fabric, House, Making, StraightSet
from quarterturn.design.recipes import DrawnDiameter, DrawnOutline, FinishedRadius, Recipe, ShapeSize
from quarterturn.design.text import quote_length, quote_lines, quote_text, write_length
from quarterturn.measure import Length, Units


def format_design(design: Design) -> str:
    """Return the text of a file that reads back as the same design."""
    units = design.units
    tables = [
        _head(design),
        *(_fabric(fabric, units) for fabric in design.fabrics),
        *(_recipe(recipe, units) for recipe in design.recipes),
        *(_colourway(colourway) for colourway in design.colourways),
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


Pair = tuple[str, str]


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
        ("kind", quote_text(fabric.kind.value)),
    ]
    if fabric.price is not None:
        pairs.append(("price", repr(float(fabric.price))))
    return _table(f"[{dotted('fabrics', fabric.letter)}]", *pairs)


def _recipe(recipe: Recipe, units: Units) -> str:
    trims = f" # trims {write_length(recipe.trim, units)}" if recipe.trim else " # nothing to trim"
    return _table(
        f"[{dotted('recipes', recipe.name)}]",
        ("kind", quote_text(_kind(recipe.size))),
        ("finished", _long(recipe.finished, units)),
        ("start", _long(recipe.start, units) + trims),
        ("shape", f"{{ {_size(recipe.size, units)} }}"),
        ("curve", quote_text(recipe.curve.value)),
    )


def _kind(size: ShapeSize) -> str:
    return "shape cut both ways" if isinstance(size, DrawnOutline) else "circle cut both ways"


def _size(size: ShapeSize, units: Units) -> str:
    if isinstance(size, DrawnOutline):
        pairs = [("outline", quote_text(size.outline)), ("width", _long(size.width, units))]
        pairs += [("turn", str(size.turn)), *([("lobes", str(size.lobes))] if size.lobes else [])]
        return ", ".join(_lines(pairs))
    if isinstance(size, DrawnDiameter):
        return f"diameter = {_long(size.diameter, units)}"
    if isinstance(size, FinishedRadius):
        return f"radius = {_long(size.radius, units)}"
    return "flow = true"


def _colourway(colourway: Colourway) -> str:
    cloths = (("ground", colourway.ground), *colourway.shapes)
    pairs = ((key, quote_text(text)) for key, text in (("recipe", colourway.recipe), *cloths))
    return _table(f"[{dotted('colourways', colourway.code)}]", *pairs)


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
