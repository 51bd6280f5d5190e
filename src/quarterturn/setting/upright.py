"""Which piece of a master serves each place of the map, where prints must stand upright.

A piece that lies in its master as a kind turned by r serves a place that wants the kind turned by t when it is turned
by t − r more: not at all for a print that runs one way, by a half turn as well for one that runs up and down alike.
"""

from __future__ import annotations

import math
from collections import Counter, defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from functools import cache

from quarterturn.blocks import Blocks, is_own_mirror_image
from quarterturn.design import Cell, Design, StraightSet, Symmetry, allowed_turns, mirrored, turned

Rows = Sequence[Sequence[Cell]]


class Serving:
    """What can serve each word of the map, worked out once for each."""

    def __init__(self, design: Design, blocks: Blocks) -> None:
        self.design, self.blocks = design, blocks
        self.choices = cache(self._choices)
        self.keeps_apart = cache(self._keeps_apart)

    def _keeps_apart(self, code: str) -> bool:
        recipe = self.design.colourway(code).recipe
        copies = {each.name for each in self.design.recipes if each.origin}
        copies |= {each.name for each in self.design.rejoined if each.origin}
        return recipe in copies

    def _choices(self, cell: Cell) -> tuple[Cell, ...]:
        """Return the pieces that serve a place, as cells; the place itself where prints may lie any way up."""
        if not self.keeps_apart(cell.code):
            return (cell,)
        allowed = allowed_turns(self.design, cell.code)
        found = []
        for lie in self.blocks.lies(self.design.colourway(cell.code).recipe):
            turn = (cell.turn - lie.turn) % 4 if lie.word == cell.quarter else cell.turn
            if cell.quarter in (lie.word, lie.name) and turn in allowed:
                found.append(Cell(cell.code, turn, lie.name))
        return tuple(found)


def laid_upright(design: Design, blocks: Blocks) -> Design:
    """Return the design with every word of the map that of the piece that serves it; the map must have no faults.

    Of several pieces that would do the one used least so far is taken, so that few masters are made. A map whose
    copies are turned or mirrored is written out, for their prints are not turned with them.
    """
    serving = Serving(design, blocks)
    if not any(map(serving.keeps_apart, {cell.code for row in design.setting.cells for cell in row})):
        return design
    setting = design.setting
    if setting.symmetry is not Symmetry.SLIDE:
        setting = StraightSet(setting.rows(), 1, 1)
    served = _served(serving, setting.cells)
    assert served is not None, "every place is served"
    return replace(design, setting=replace(setting, cells=served))


def _served(serving: Serving, rows: Rows) -> tuple[tuple[Cell, ...], ...] | None:
    used: Counter[tuple[str, str]] = Counter()
    laid = []
    for row in rows:
        line = []
        for cell in row:
            choices = serving.choices(cell)
            if not choices:
                return None
            best = min(choices, key=lambda choice: used[choice.code, choice.quarter])
            used[best.code, best.quarter] += 1
            line.append(best)
        laid.append(tuple(line))
    return tuple(laid)


def masters_for(design: Design, blocks: Blocks, rows: Rows) -> int | None:
    """Return how many masters a map needs, spares left out; None where some place cannot be served upright."""
    served = _served(Serving(design, blocks), rows)
    if served is None:
        return None
    counts = Counter((cell.code, cell.quarter) for row in served for cell in row)
    needed: dict[str, int] = defaultdict(int)
    for (code, quarter), count in counts.items():
        pieces = _pieces_each(design, blocks, code, quarter)
        for master in design.masters_of(code):
            needed[f"{code}/{master}"] = max(needed[f"{code}/{master}"], math.ceil(count / pieces))
    return sum(needed.values())


def _pieces_each(design: Design, blocks: Blocks, code: str, quarter: str) -> int:
    recipe = design.colourway(code).recipe
    units = blocks.units(recipe)
    kind = next(k for k, unit in enumerate(units) if unit.quarter == quarter)
    if design.colourway(code).is_rejoined:
        return blocks.rejoining(recipe).per_pair(kind)
    return blocks.master(recipe).per_master(kind)


@dataclass(frozen=True, slots=True)
class Saving:
    """A way to lay the whole map that saves masters: turned clockwise by so many quarters, mirrored before or not."""

    quarters: int
    is_mirrored: bool
    masters: int
    """That it needs."""


def other_ways(design: Design, blocks: Blocks, rows: tuple[tuple[Cell, ...], ...]) -> Iterator[Saving]:
    """Return every other way to lay the whole map in which all prints stand upright, and the masters it needs."""
    for is_mirrored in (False, True):
        if is_mirrored and not _can_be_mirrored(design, blocks, rows):
            continue
        block = mirrored(rows) if is_mirrored else rows
        for quarters in range(4):
            if (quarters or is_mirrored) and (need := masters_for(design, blocks, turned(block, quarters))):
                yield Saving(quarters, is_mirrored, need)


def _can_be_mirrored(design: Design, blocks: Blocks, rows: Rows) -> bool:
    """Tell whether every unit is its own mirror image, and is known in the map by its colourway alone."""
    codes = {(cell.code, cell.quarter) for row in rows for cell in row}
    units = [(quarter, blocks.units(design.colourway(code).recipe)[0]) for code, quarter in codes]
    return all(not quarter and is_own_mirror_image(unit) for quarter, unit in units)
