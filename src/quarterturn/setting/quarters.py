"""Does the map name a quarter where a master's units are of several kinds, and only there? And does all fit together?

Which quarters are equal, and how large every unit is, is found by cutting the master, so the reader of the design
cannot tell.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from types import MappingProxyType

from quarterturn.blocks import Blocks, Master
from quarterturn.design import QUARTERS, Cell, Design, Finding, Place, Severity, named_cells
from quarterturn.setting.building import build_top
from quarterturn.setting.misfits import FIT_CODES

MAP_CODES: Mapping[str, str] = MappingProxyType(
    {
        "quarter-missing": "a unit without a quarter, where those of its master differ",
        "quarter-unwanted": "a unit with a quarter that is no kind of its own",
        **FIT_CODES,
    }
)
"""Code -> meaning of what is found in the maps once the masters have been cut; all of it stops."""


def map_findings(design: Design, blocks: Blocks) -> tuple[Finding, ...]:
    """Return a finding that stops for each word that means no unit, at its first place; if none, for each misfit."""
    told: dict[str, Finding] = {}
    for named in named_cells(design):
        cell = named.cell
        if isinstance(cell, Cell) and cell.name not in told and (fault := _fault(design, blocks, cell)):
            place = Place(named.key, named.detail)
            told[cell.name] = Finding(fault[0], Severity.STOPS, place, fault[1], fault[2])
    return tuple(told.values()) or build_top(design, blocks)[1]


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
