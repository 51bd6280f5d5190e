"""Does the map name a quarter where a master's units are of several kinds, and only there? And does all fit together?

Which quarters are equal, and how large every unit is, is found by cutting the master, so the reader of the design cannot
tell.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from types import MappingProxyType

from quarterturn.blocks import Blocks, Master
from quarterturn.design import (
    QUARTERS,
    Cell,
    Design,
    Finding,
    LineSet,
    Map,
    OnPointSet,
    PiecedBorder,
    Place,
    SectionSet,
    Severity,
    StraightSet,
    dotted,
)
from quarterturn.setting.building import build_top
from quarterturn.setting.misfits import FIT_CODES, ROOT, border_key, section_key

MAP_CODES: Mapping[str, str] = MappingProxyType(
    {
        "quarter-missing": "a unit without a quarter, where those of its master differ",
        "quarter-unwanted": "a unit with a quarter that is no kind of its own",
        **FIT_CODES,
    }
)
"""Code -> meaning of what is found in the maps once the masters have been cut; all of it stops."""


def map_findings(design: Design, blocks: Blocks) -> tuple[Finding, ...]:
    """Return a finding that stops for each word of a map that means no unit, at its first place, and for each misfit."""
    told: dict[str, Finding] = {}
    for cell, place in _cells(design):
        if cell.name not in told and (fault := _fault(design, blocks, cell)):
            told[cell.name] = Finding(fault[0], Severity.STOPS, place, fault[1], fault[2])
    return tuple(told.values()) or build_top(design, blocks)[1]


def _cells(design: Design) -> Iterator[tuple[Cell, Place]]:
    """Return every unit that a map names, with its place in the file."""
    named = [(ROOT, design.setting, design.borders)]
    named += [(section.name, section.setting, section.setting.borders) for section in design.sections]
    for name, setting, borders in named:
        yield from _cells_of(name, setting)
        for number, border in enumerate(borders):
            if isinstance(border, PiecedBorder) and isinstance(border.corners, Cell):
                yield border.corners, Place(f"{border_key(name, number)}.corners")


def _cells_of(name: str, setting: SectionSet) -> Iterator[tuple[Cell, Place]]:
    if isinstance(setting, StraightSet | OnPointSet):
        yield from _cells_of_map(section_key(name, "map"), setting.cells)
    if isinstance(setting, OnPointSet):
        yield from _cells_of_map(section_key(name, "between"), setting.between)
    if isinstance(setting, LineSet):
        for number, part in enumerate(setting.parts):
            if isinstance(part, Cell):
                yield part, Place(section_key(name, "parts", number))


def _cells_of_map(key: str, cells: Map) -> Iterator[tuple[Cell, Place]]:
    for r, row in enumerate(cells):
        for c, cell in enumerate(row):
            if isinstance(cell, Cell):
                yield cell, Place(f"{key}.{dotted(r)}", f"row {r + 1}, unit {c + 1}")


def _fault(design: Design, blocks: Blocks, cell: Cell) -> tuple[str, str, str] | None:
    recipe = design.colourway(cell.code).recipe
    master = blocks.master(recipe)
    kinds = [unit.quarter for unit in master.units]
    if cell.quarter in kinds:
        return None
    if not cell.quarter:
        sentence = f"The quarters of {recipe} are of several kinds, and `{cell.code}` does not say which."
        return "quarter-missing", sentence, f"Write {_choices(cell.code, kinds)}."
    if kinds == [""]:
        sentence = f"The quarters of {recipe} are all equal, and `{cell.name}` names one of them."
        return "quarter-unwanted", sentence, f"Write {cell.code}, and turn it."
    same, turn = _equal(master, cell)
    sentence = f"The quarter {cell.quarter} of {recipe} is its quarter {same}, turned."
    return "quarter-unwanted", sentence, f"Write {cell.code}-{same}, turned by {turn} quarters more."


def _choices(code: str, kinds: list[str]) -> str:
    names = [f"{code}-{kind}" for kind in kinds]
    return f"{', '.join(names[:-1])} or {names[-1]}"


def _equal(master: Master, cell: Cell) -> tuple[str, int]:
    """Return the kind to which a quarter that is no kind of its own belongs, and its turn against it."""
    return next(_named(master, cell.quarter))


def _named(master: Master, quarter: str) -> Iterator[tuple[str, int]]:
    for part in master.parts:
        unit = master.units[part.unit]
        half = float(unit.side) / 2
        centre = part.motion.inverse()(complex(half, half))
        if f"{'b' if centre.imag > 0 else 't'}{'r' if centre.real > 0 else 'l'}" == quarter:
            yield unit.quarter, (QUARTERS.index(quarter) - QUARTERS.index(unit.quarter)) % 4
