"""Does every word of the map mean a unit that can be laid there?

Which pieces of a master are equal, and what they finish as, is found by cutting it, so the reader of the design cannot
tell.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from types import MappingProxyType

from quarterturn.blocks import Blocks, Part, Unit, is_own_mirror_image, turned_size
from quarterturn.design import (
    QUARTERS,
    Cell,
    Design,
    Finding,
    Place,
    Severity,
    Symmetry,
    dotted,
    misfit,
    told_misfit,
)
from quarterturn.geometry import EPSILON

MAP_CODES: Mapping[str, str] = MappingProxyType(
    {
        "quarter-missing": "a unit without a quarter, where those of its master differ",
        "quarter-unwanted": "a unit with a quarter that is no kind of its own",
        "unit-slanting": "a piece of a master that is no upright rectangle",
        "unit-mirrored": "a unit that is not its own mirror image in a map whose copies are mirrored",
        "units-misfit": "units in a row that differ in height, or in a column that differ in width",
    }
)
"""Code -> meaning of what is found in the map once the masters have been cut; all of it stops."""

Fault = tuple[str, str, str]
"""Code, sentence and remedy."""


def map_findings(design: Design, blocks: Blocks) -> tuple[Finding, ...]:
    """Return a finding that stops for each word of the map that means no unit, at its first place; then misfits."""
    told: dict[str, Finding] = {}
    for r, row in enumerate(design.setting.cells):
        for c, cell in enumerate(row):
            if cell.name not in told and (fault := _fault(design, blocks, cell)):
                place = Place(dotted("setting", "map", r), f"row {r + 1}, unit {c + 1}")
                told[cell.name] = Finding(fault[0], Severity.STOPS, place, fault[1], fault[2])
    return tuple(told.values()) or tuple(_misfits(design, blocks))


def _misfits(design: Design, blocks: Blocks) -> Iterator[Finding]:
    rows = design.setting.rows()
    names = [[f"{cell.name}{cell.turn}" for cell in row] for row in rows]
    sizes = [[turned_size(blocks.unit(design, cell.name), cell.turn) for cell in row] for row in rows]
    if found := misfit(names, sizes):
        yield Finding(
            "units-misfit",
            Severity.STOPS,
            Place("setting.map", found.line),
            *told_misfit(found, design.units),
        )


def _fault(design: Design, blocks: Blocks, cell: Cell) -> Fault | None:
    recipe = design.colourway(cell.code).recipe
    units = blocks.units(recipe)
    kinds = [unit.quarter for unit in units]
    if cell.quarter in kinds:
        return _unlaid(design, recipe, units[kinds.index(cell.quarter)], cell)
    what = "quarter" if set(kinds) <= {"", *QUARTERS} else "piece"
    if not cell.quarter:
        sentence = f"The {what}s of {recipe} are of several kinds, and `{cell.code}` does not say which."
        return "quarter-missing", sentence, f"Write {_choices(cell.code, kinds)}."
    if kinds == [""]:
        sentence = f"The {what}s of {recipe} are all equal, and `{cell.name}` names one of them."
        return "quarter-unwanted", sentence, f"Write {cell.code}, and turn it."
    same = next(_equal(design, blocks, recipe, cell), None)
    if same is None:
        sentence = f"{recipe} has no {what} `{cell.quarter}`."
        return "quarter-unwanted", sentence, f"Write {_choices(cell.code, kinds)}."
    sentence = f"The {what} {cell.quarter} of {recipe} is its {what} {same[0]}, turned."
    return "quarter-unwanted", sentence, f"Write {cell.code}-{same[0]}, turned by {same[1]} quarters more."


def _unlaid(design: Design, recipe: str, unit: Unit, cell: Cell) -> Fault | None:
    """Return why a unit that there is cannot be laid in a straight setting, if so."""
    if not unit.is_rectangle:
        remedy = (
            f'Rejoin halves of {recipe} by a recipe of the kind "halves rejoined", or cut it down and across.'
        )
        return (
            "unit-slanting",
            f"The pieces of {recipe} have slanting sides, and `{cell.name}` is one of them.",
            remedy,
        )
    if design.setting.symmetry is Symmetry.MIRROR and not is_own_mirror_image(unit):
        sentence = (
            f"The copies of the map are mirrored, and the mirror image of `{cell.name}` is another unit."
        )
        return (
            "unit-mirrored",
            sentence,
            'Write the whole map, or set symmetry to "slide", "turn" or "half turn".',
        )
    return None


def _choices(code: str, kinds: list[str]) -> str:
    names = [f"{code}-{kind}" for kind in kinds]
    return f"{', '.join(names[:-1])} or {names[-1]}" if len(names) > 1 else names[0]


def _equal(design: Design, blocks: Blocks, recipe: str, cell: Cell) -> Iterator[tuple[str, int]]:
    """Return the kind to which a piece that is no kind of its own belongs, and its turn against it."""
    if design.colourway(cell.code).is_rejoined:
        return
    master = blocks.master(recipe)
    for part in master.parts:
        if part.name == cell.quarter:
            yield master.units[part.unit].quarter, _turn_of(part)


def _turn_of(part: Part) -> int:
    """Return by how many quarters clockwise a kind is turned where it lies as this piece lay in the master."""
    ways = (1 + 0j, 1j, -1 + 0j, -1j)
    back = part.motion.inverse().factor
    return next((turn for turn, way in enumerate(ways) if abs(back - way) < EPSILON), 0)
