"""Does every word of the maps mean a unit that can be laid there? And does all fit together?

Which pieces of a master are equal, and how large every unit is, is found by cutting the master, so the reader of the
design cannot tell.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from types import MappingProxyType

from quarterturn.blocks import Blocks, Unit, is_own_mirror_image
from quarterturn.design import (
    QUARTERS,
    ROOT,
    Cell,
    Design,
    Finding,
    NamedCell,
    Place,
    Severity,
    StraightSet,
    Symmetry,
    named_cells,
    section_key,
)
from quarterturn.setting.building import build_top
from quarterturn.setting.misfits import FIT_CODES
from quarterturn.setting.sideways import sideways
from quarterturn.setting.upright import laid_upright

MAP_CODES: Mapping[str, str] = MappingProxyType(
    {
        "quarter-missing": "a unit without a quarter, where those of its master differ",
        "quarter-unwanted": "a unit with a quarter that is no kind of its own",
        "unit-slanting": "a piece of a master that is no upright rectangle",
        "unit-mirrored": "a unit that is not its own mirror image in a map whose copies are mirrored",
        "print-sideways": "a unit that would lay a print that must stand upright on its side or its head",
        **FIT_CODES,
    }
)
"""Code -> meaning of what is found in the maps once the masters have been cut; all of it stops."""

Fault = tuple[str, str, str]
"""Code, sentence and remedy."""


def map_findings(design: Design, blocks: Blocks) -> tuple[Finding, ...]:
    """Return a finding that stops for each word that means no unit, at its first place.

    If there is none, then for each print that would not stand upright; if there is none, for each misfit.
    """
    found = tuple(_words_at_fault(design, blocks)) or tuple(sideways(design, blocks))
    return found or build_top(laid_upright(design, blocks), blocks)[1]


def _words_at_fault(design: Design, blocks: Blocks) -> Iterator[Finding]:
    mirrored, told, sound = tuple(_mirrored_maps(design)), set(), set()
    for named in named_cells(design):
        cell = named.cell
        if isinstance(cell, Cell) and cell.name not in told and (cell.name, _map_of(named)) not in sound:
            fault = _fault(design, blocks, cell) or _unlaid(design, blocks, named, cell, mirrored)
            if fault:
                told.add(cell.name)
                place = Place(named.key, named.detail)
                yield Finding(fault[0], Severity.STOPS, place, fault[1], fault[2])
            else:
                sound.add((cell.name, _map_of(named)))


def _map_of(named: NamedCell) -> str:
    """Return the key of the map in which a cell stands."""
    return named.key.rpartition(".")[0]


def _mirrored_maps(design: Design) -> Iterator[str]:
    """Return the keys of the maps whose copies are mirrored."""
    for name, setting in ((ROOT, design.setting), *((s.name, s.setting) for s in design.sections)):
        if isinstance(setting, StraightSet) and setting.symmetry is Symmetry.MIRROR:
            yield section_key(name, "map")


def _fault(design: Design, blocks: Blocks, cell: Cell) -> Fault | None:
    recipe = design.colourway(cell.code).recipe
    units, lies = blocks.units(recipe), blocks.lies(recipe)
    if any(each.quarter == cell.quarter for each in units):
        return None
    words = {lie.name: lie.word for lie in lies}
    kinds = list(dict.fromkeys(words.get(unit.quarter, unit.quarter) for unit in units))
    if cell.quarter in kinds:  # a copy of the recipe keeps its pieces apart
        return None
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


def _unlaid(
    design: Design, blocks: Blocks, named: NamedCell, cell: Cell, mirrored: tuple[str, ...]
) -> Fault | None:
    """Return why a unit that there is cannot be laid where it is named, if so."""
    recipe = design.colourway(cell.code).recipe
    units = blocks.units(recipe)
    unit: Unit = next((each for each in units if each.quarter == cell.quarter), units[0])
    if not unit.is_rectangle:
        remedy = (
            f'Rejoin halves of {recipe} by a recipe of the kind "halves rejoined", or cut it down and across.'
        )
        return (
            "unit-slanting",
            f"The pieces of {recipe} have slanting sides, and `{cell.name}` is one of them.",
            remedy,
        )
    if _map_of(named) in mirrored and not is_own_mirror_image(unit):
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
