"""Print sections, the setting and borders as tables of a complete file."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from quarterturn.design.keys import dotted
from quarterturn.design.sections import (
    AnyBorder,
    Border,
    Cell,
    ClothCell,
    Coping,
    LineSet,
    Map,
    MapCell,
    OnPointSet,
    PanelSet,
    PiecedBorder,
    Sashing,
    Section,
    SectionSet,
    StraightSet,
    Strip,
    TriangleFit,
)
from quarterturn.design.text import quote_length, quote_lines, quote_text
from quarterturn.measure import Units

Pair = tuple[str, str]


def section_tables(section: Section, units: Units) -> Iterator[str]:
    """Return the table of a named section, and one for each of its borders."""
    key = dotted("sections", section.name)
    yield setting_table(section.setting, key, units)
    for border in section.setting.borders:
        yield border_table(border, f"{key}.borders", units)


def setting_table(setting: SectionSet, key: str, units: Units) -> str:
    """Return the table of a setting under a dotted key."""
    return "\n".join([f"[{key}]", *lines(_pairs(setting, units))])


def border_table(border: AnyBorder, key: str, units: Units) -> str:
    """Return the table of a border in a list of them."""
    return "\n".join([f"[[{key}]]", *lines(_border(border, units))])


def lines(pairs: Iterable[Pair]) -> list[str]:
    """Return `key = value` lines."""
    return [f"{key} = {value}" for key, value in pairs]


def map_word(cell: MapCell) -> str:
    """Return a cell as a map writes it."""
    if isinstance(cell, ClothCell):
        return cell.fabric
    return f"{cell.name if isinstance(cell, Cell) else cell.section}{cell.turn}"


def _pairs(setting: SectionSet, units: Units) -> Iterator[Pair]:
    if isinstance(setting, StraightSet):
        yield from _straight(setting, units)
    elif isinstance(setting, OnPointSet):
        yield from _on_point(setting, units)
    elif isinstance(setting, LineSet):
        yield "kind", '"rows"' if setting.below else '"columns"'
        yield "parts", list_lines(_part(part, units) for part in setting.parts)
    else:
        yield from _panel(setting, units)


def _straight(setting: StraightSet, units: Units) -> Iterator[Pair]:
    yield "kind", '"straight"'
    yield "map", _map(setting.cells)
    yield "symmetry", quote_text(setting.symmetry.value)
    yield "across", str(setting.across)
    yield "down", str(setting.down)
    if setting.sashing:
        yield "sashing", _sashing(setting.sashing, units)


def _on_point(setting: OnPointSet, units: Units) -> Iterator[Pair]:
    yield "kind", '"on point"'
    yield "map", _map(setting.cells)
    if setting.between and setting.between[0]:
        yield "between", _map(setting.between)
    yield "triangles", quote_text(setting.side_fabric)
    yield "corners", quote_text(setting.corner_fabric)
    yield "fit", quote_text(setting.fit.value)
    if setting.fit is TriangleFit.OVERSIZED:
        yield "float", quote_length(setting.float, units)
    for key in ("side_square", "corner_square"):
        if (stated := getattr(setting, key)) is not None:
            yield key, quote_length(stated, units)
    if setting.sashing:
        yield "sashing", _sashing(setting.sashing, units)


def _panel(setting: PanelSet, units: Units) -> Iterator[Pair]:
    yield "kind", '"panel"'
    yield "fabric", quote_text(setting.fabric)
    yield "width", quote_length(setting.width, units)
    yield "height", quote_length(setting.height, units)
    if setting.motifs:
        yield (
            "motifs",
            list_lines(
                inline_table(
                    ("recipe", quote_text(motif.recipe)),
                    ("fabric", quote_text(motif.fabric)),
                    ("at", f"[{quote_length(motif.x, units)}, {quote_length(motif.y, units)}]"),
                    ("turn", str(motif.degrees)),
                )
                for motif in setting.motifs
            ),
        )


def _map(cells: Map) -> str:
    wide = max(len(map_word(cell)) for row in cells for cell in row)
    return quote_lines(
        "\n".join(" ".join(map_word(cell).ljust(wide) for cell in row).rstrip() for row in cells)
    )


def _sashing(sashing: Sashing, units: Units) -> str:
    pairs = [("fabric", quote_text(sashing.fabric)), ("width", quote_length(sashing.width, units))]
    if sashing.cornerstone:
        pairs.append(("cornerstone", quote_text(sashing.cornerstone)))
    return inline_table(*pairs, ("outer", "true" if sashing.outer else "false"))


def _part(part: MapCell | Strip, units: Units) -> str:
    if isinstance(part, Strip):
        return inline_table(("fabric", quote_text(part.fabric)), ("width", quote_length(part.width, units)))
    return quote_text(map_word(part))


def inline_table(*pairs: Pair) -> str:
    """Return a table within a line."""
    return f"{{ {', '.join(lines(pairs))} }}"


def list_lines(items: Iterable[str]) -> str:
    """Return a list with a line for each of its items."""
    return "[\n" + "".join(f"  {item},\n" for item in items) + "]"


def _border(border: AnyBorder, units: Units) -> Iterator[Pair]:
    if isinstance(border, Border):
        yield "fabric", quote_text(border.fabric)
        yield "width", quote_length(border.width, units)
        if border.corner.value != "butted":
            yield "corners", quote_text(border.corner.value)
        if border.cornerstone:
            yield "cornerstone", quote_text(border.cornerstone)
    elif isinstance(border, PiecedBorder):
        yield "kind", '"pieced"'
        yield "sides", quote_text(map_word(border.sides))
        yield "ends", quote_text(map_word(border.ends))
        if border.corners is not None:
            yield "corners", quote_text(map_word(border.corners))
    elif isinstance(border, Coping):
        yield "kind", '"coping"'
        yield "fabric", quote_text(border.fabric)
        yield "to", f"[{quote_length(border.width, units)}, {quote_length(border.height, units)}]"
    yield "first", '"sides"' if border.sides_first else '"ends"'
