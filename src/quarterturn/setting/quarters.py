"""Does every word of the map mean a unit that can be laid there?

Which pieces of a master are equal, and what they finish as, is found by cutting it, so the reader of the design cannot
tell.
"""

from __future__ import annotations

import itertools
from collections.abc import Iterator, Mapping
from dataclasses import replace
from types import MappingProxyType

from quarterturn.blocks import Blocks, Unit, is_own_mirror_image, turned_size
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
    upright_letters,
)
from quarterturn.measure import Length, show_count
from quarterturn.setting.upright import Serving, other_ways

MAP_CODES: Mapping[str, str] = MappingProxyType(
    {
        "quarter-missing": "a unit without a quarter, where those of its master differ",
        "quarter-unwanted": "a unit with a quarter that is no kind of its own",
        "unit-slanting": "a piece of a master that is no upright rectangle",
        "unit-mirrored": "a unit that is not its own mirror image in a map whose copies are mirrored",
        "print-sideways": "a unit that would lay a print that must stand upright on its side or its head",
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
    return tuple(told.values()) or (*_misfits(design, blocks), *_sideways(design, blocks))


def _sideways(design: Design, blocks: Blocks) -> Iterator[Finding]:
    """Tell once of each word whose print would lie on its side or stand on its head, wherever a copy is laid so."""
    serving, told = Serving(design, blocks), set()
    rows = design.setting.rows()
    whole = "" if all(map(serving.choices, itertools.chain(*rows))) else _whole_map(design, blocks)
    for r, row in enumerate(rows):
        for c, cell in enumerate(row):
            if serving.choices(cell) or cell in told:
                continue
            told.add(cell)
            letter = upright_letters(design, cell.code)[0]
            name = f"{cell.name}{cell.turn}"
            good = [f"{cell.name}{turn}" for turn in range(4) if serving.choices(replace(cell, turn=turn))]
            place = dotted("setting", "map", r) if r < len(design.setting.cells) else "setting.map"
            yield Finding(
                "print-sideways",
                Severity.STOPS,
                Place(place, f"row {r + 1}, unit {c + 1}"),
                f"As `{name}` lies there, the print of fabric {letter}, which must stand upright, would not.",
                f"Write {_listed(good)}, use another piece, or let fabric {letter} lie any way up.{whole}",
            )


def _whole_map(design: Design, blocks: Blocks) -> str:
    """Return how the whole map could be laid so that every print stands upright, if it can."""
    way = next(other_ways(design, blocks, design.setting.rows()), None)
    if way is None:
        return ""
    turned = f"turned clockwise by {show_count(way.quarters, 'quarter')}" if way.quarters else ""
    how = " and ".join(filter(None, ("mirrored" if way.is_mirrored else "", turned)))
    return f" Or lay the whole map {how}: so every print stands upright."


def _listed(names: list[str]) -> str:
    return " or ".join(names) if names else "another unit"


def _misfits(design: Design, blocks: Blocks) -> Iterator[Finding]:
    rows = design.setting.rows()
    names = [[f"{cell.name}{cell.turn}" for cell in row] for row in rows]
    serving = Serving(design, blocks)
    sizes = [[_size(design, blocks, serving, cell) for cell in row] for row in rows]
    if found := misfit(names, sizes):
        yield Finding(
            "units-misfit",
            Severity.STOPS,
            Place("setting.map", found.line),
            *told_misfit(found, design.units),
        )


def _size(design: Design, blocks: Blocks, serving: Serving, cell: Cell) -> tuple[Length, Length] | None:
    laid = next(iter(serving.choices(cell)), None)
    return turned_size(blocks.unit(design, laid.name), laid.turn) if laid else None


def _fault(design: Design, blocks: Blocks, cell: Cell) -> Fault | None:
    recipe = design.colourway(cell.code).recipe
    units, lies = blocks.units(recipe), blocks.lies(recipe)
    if unit := next((each for each in units if each.quarter == cell.quarter), None):
        return _unlaid(design, recipe, unit, cell)
    words = {lie.name: lie.word for lie in lies}
    kinds = list(dict.fromkeys(words.get(unit.quarter, unit.quarter) for unit in units))
    if cell.quarter in kinds:  # a copy of the recipe keeps its pieces apart
        return _unlaid(design, recipe, units[0], cell)
    what = "quarter" if set(kinds) <= {"", *QUARTERS} else "piece"
    if not cell.quarter:
        sentence = f"The {what}s of {recipe} are of several kinds, and `{cell.code}` does not say which."
        return "quarter-missing", sentence, f"Write {_choices(cell.code, kinds)}."
    if kinds == [""]:
        sentence = f"The {what}s of {recipe} are all equal, and `{cell.name}` names one of them."
        return "quarter-unwanted", sentence, f"Write {cell.code}, and turn it."
    same = next((lie for lie in lies if lie.name == cell.quarter), None)
    if same is None:
        sentence = f"{recipe} has no {what} `{cell.quarter}`."
        return "quarter-unwanted", sentence, f"Write {_choices(cell.code, kinds)}."
    sentence = f"The {what} {cell.quarter} of {recipe} is its {what} {same.word}, turned."
    return (
        "quarter-unwanted",
        sentence,
        f"Write {cell.code}-{same.word}, turned by {same.turn} quarters more.",
    )


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
