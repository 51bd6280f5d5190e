"""Which section holds which: none may hold itself, nor be nested too deeply, and one that nothing holds is told."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from quarterturn.design import limits
from quarterturn.design.keys import dotted
from quarterturn.design.model import Design
from quarterturn.design.notes import Notes
from quarterturn.design.sections import (
    AnyBorder,
    Cell,
    LineSet,
    Map,
    MapCell,
    OnPointSet,
    PiecedBorder,
    SectionCell,
    SectionSet,
    StraightSet,
    Strip,
)

ROOT = "centre"
"""What the root is called, where other sections are called by their names."""
TOP = "top"
"""What the root is called with its borders."""


@dataclass(frozen=True, slots=True)
class NamedCell:
    """A word of the design that names what fills a place: its dotted key, and where in a map it stands."""

    key: str
    detail: str
    cell: MapCell


def section_key(name: str, *parts: str | int) -> str:
    """Return the dotted key of a section, or of something in it."""
    return dotted("setting", *parts) if name == ROOT else dotted("sections", name, *parts)


def border_key(name: str, number: int) -> str:
    """Return the dotted key of a border round a section, counted from 0."""
    return dotted("borders", number) if name == ROOT else dotted("sections", name, "borders", number)


def named_cells(design: Design) -> Iterator[NamedCell]:
    """Return all words for places in the setting, its borders and every section."""
    yield from cells_of(ROOT, design.setting, design.borders)
    for section in design.sections:
        yield from cells_of(section.name, section.setting, section.setting.borders)


def cells_of(name: str, setting: SectionSet, borders: Sequence[AnyBorder]) -> Iterator[NamedCell]:
    """Return the words for places of one section and of the borders round it."""
    if isinstance(setting, StraightSet | OnPointSet):
        yield from _of_map(section_key(name, "map"), setting.cells)
    if isinstance(setting, OnPointSet):
        yield from _of_map(section_key(name, "between"), setting.between)
    if isinstance(setting, LineSet):
        for number, part in enumerate(setting.parts):
            if not isinstance(part, Strip):
                yield NamedCell(section_key(name, "parts", number), f"part {number + 1}", part)
    for number, border in enumerate(borders):
        if isinstance(border, PiecedBorder):
            key = border_key(name, number)
            yield NamedCell(f"{key}.sides", "", border.sides)
            yield NamedCell(f"{key}.ends", "", border.ends)
            if border.corners is not None:
                yield NamedCell(f"{key}.corners", "", border.corners)


def _of_map(key: str, cells: Map) -> Iterator[NamedCell]:
    for r, row in enumerate(cells):
        for c, cell in enumerate(row):
            yield NamedCell(f"{key}.{r}", f"row {r + 1}, unit {c + 1}", cell)


def codes_in(design: Design) -> set[str]:
    """Return the codes of the colourways that stand in the quilt."""
    return {named.cell.code for named in named_cells(design) if isinstance(named.cell, Cell)}


def check_nesting(design: Design, notes: Notes) -> None:
    """Note sections that hold themselves, are nested too deeply, make too many places, or are not used."""
    held = {each.name: _held(each.name, each.setting, each.setting.borders) for each in design.sections}
    root = _held(ROOT, design.setting, design.borders)
    for name in held:
        if way := _way_back(name, held):
            chain = " holds ".join(f"`{each}`" for each in way)
            remedy = f"Take `{way[1]}` out of `{name}`, or write its units there."
            notes.add("section-in-itself", dotted("sections", name), f"{chain}.", remedy)
    if not notes.stops():
        _check_depth(1 + max((_depth(name, held) for name in root), default=0), notes)
    if not notes.stops():
        _check_count(design, notes)
        _check_use(root, held, notes)


def _check_depth(depth: int, notes: Notes) -> None:
    if depth > limits.DEEPEST_SECTIONS:
        sentence = f"Sections stand in sections, more than {limits.DEEPEST_SECTIONS} deep."
        notes.add("sections-too-deep", "setting", sentence, f"Keep to {limits.DEEPEST_SECTIONS}.")


def _check_use(root: Sequence[str], held: dict[str, list[str]], notes: Notes) -> None:
    used = _reached(root, held)
    for name in held:
        if name not in used:
            sentence = f"No map calls section `{name}`, so that it is nowhere in the quilt."
            notes.add(
                "section-unused", dotted("sections", name), sentence, "Put it into a map, or take it out."
            )


def _held(name: str, setting: SectionSet, borders: Sequence[AnyBorder]) -> list[str]:
    cells = (named.cell for named in cells_of(name, setting, borders))
    return list(dict.fromkeys(cell.section for cell in cells if isinstance(cell, SectionCell)))


def _way_back(name: str, held: dict[str, list[str]]) -> list[str]:
    """Return a shortest way from a section to itself; empty where there is none."""
    ways = [[name]]
    seen: set[str] = set()
    for way in ways:
        for inner in held.get(way[-1], ()):
            if inner == name:
                return [*way, name]
            if inner not in seen:
                seen.add(inner)
                ways.append([*way, inner])
    return []


def _depth(name: str, held: dict[str, list[str]]) -> int:
    """Return how deep a section is nested, itself included; beyond the limit only that it is too deep."""
    level, depth = {name}, 0
    while level and depth <= limits.DEEPEST_SECTIONS:
        depth += 1
        level = {inner for each in level for inner in held[each]}
    return depth


def _reached(names: Sequence[str], held: dict[str, list[str]]) -> set[str]:
    reached: set[str] = set()
    waiting = list(names)
    while waiting:
        name = waiting.pop()
        if name not in reached:
            reached.add(name)
            waiting += held[name]
    return reached


def places_of(design: Design) -> int:
    """Return how many places the quilt has, with all its sections laid out."""
    settings = {section.name: section.setting for section in design.sections}
    counts: dict[str, int] = {}

    def places(setting: SectionSet, borders: Sequence[AnyBorder]) -> int:
        rows = setting.rows() if isinstance(setting, StraightSet) else ()
        laid = [cell for row in rows for cell in row]
        if not isinstance(setting, StraightSet):
            laid = [named.cell for named in cells_of(ROOT, setting, ())]
        for border in borders:
            if isinstance(border, PiecedBorder):
                laid += [border.sides, border.ends] * 2
                laid += [border.corners] * 4 if border.corners else []
        return sum(of_section(cell.section) if isinstance(cell, SectionCell) else 1 for cell in laid)

    def of_section(name: str) -> int:
        if name not in counts:
            counts[name] = places(settings[name], settings[name].borders)
        return counts[name]

    return places(design.setting, design.borders)


def _check_count(design: Design, notes: Notes) -> None:
    """Note a quilt of more places than can be."""
    total = places_of(design)
    if total > limits.MOST_PLACES:
        sentence = f"With all its sections laid out the quilt has {total:,} places."
        notes.add("map-too-large", "setting", sentence, f"Keep to {limits.MOST_PLACES:,}.")
