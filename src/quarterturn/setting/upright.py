"""Which piece of a master serves each place of the top, where prints must stand upright.

A piece that lies in its master as a kind turned by r serves a place that wants the kind turned by t when it is turned
by t − r more: not at all for a print that runs one way, by a half turn as well for one that runs up and down alike.
A place is turned with the section that holds it, so that a section that lies in several turns is made of other pieces
in each.
"""

from __future__ import annotations

import math
from collections import Counter, defaultdict
from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import cache

from quarterturn.blocks import Blocks, is_own_mirror_image
from quarterturn.design import (
    AnyBorder,
    Cell,
    Design,
    LineSet,
    Map,
    MapCell,
    OnPointSet,
    PiecedBorder,
    Section,
    SectionCell,
    SectionSet,
    StraightSet,
    Strip,
    Symmetry,
    allowed_turns,
    mirrored,
    turned,
)

Used = Counter[tuple[str, str]]
"""How often each piece has been taken, by colourway and name."""


class Serving:
    """What can serve each word of a map, worked out once for each."""

    def __init__(self, design: Design, blocks: Blocks) -> None:
        self.design, self.blocks = design, blocks
        self.settings = {section.name: section.setting for section in design.sections}
        self.choices = cache(self._choices)
        self.keeps_apart = cache(self._keeps_apart)
        self.period = cache(self._period)

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

    def serve(self, cell: Cell, turn: int, used: Used) -> Cell | None:
        """Return the piece for a place of a section that lies turned, that used least so far; None where there is none.

        The piece is told as the section's map would tell it.
        """
        choices = self.choices(replace(cell, turn=(cell.turn + turn) % 4))
        if not choices:
            return None
        best = min(choices, key=lambda choice: used[choice.code, choice.quarter])
        used[best.code, best.quarter] += 1
        return replace(best, turn=(best.turn - turn) % 4)

    def _period(self, word: MapCell) -> int:
        """Return by how many quarters what fills a place may be turned with its prints upright: 1, 2 or 4 (none)."""
        if isinstance(word, Cell):
            return 4 // len(allowed_turns(self.design, word.code))
        if isinstance(word, SectionCell):
            setting = self.settings[word.section]
            words = (
                *words_of(setting),
                *(each for border in setting.borders for each in words_round(border)),
            )
            return max(map(self.period, words), default=1)
        return 1


def words_of(setting: SectionSet) -> tuple[MapCell, ...]:
    """Return the words that fill a section without its borders, each once."""
    if isinstance(setting, StraightSet):
        return _words(setting.rows())
    if isinstance(setting, OnPointSet):
        return _words((*setting.cells, *setting.between))
    if isinstance(setting, LineSet):
        return tuple(dict.fromkeys(part for part in setting.parts if not isinstance(part, Strip)))
    return ()


def _words(rows: Map) -> tuple[MapCell, ...]:
    return tuple(dict.fromkeys(cell for row in rows for cell in row))


def words_round(border: AnyBorder) -> tuple[MapCell, ...]:
    """Return the words of a border."""
    if not isinstance(border, PiecedBorder):
        return ()
    return border.sides, border.ends, *((border.corners,) if border.corners is not None else ())


def laid_upright(design: Design, blocks: Blocks) -> Design:
    """Return the design with every word for a unit that of the piece that serves it; no word may be at fault.

    Of several pieces that would do the one used least so far is taken, so that few masters are made. A map whose
    copies are turned or mirrored is written out, for their prints are not turned with them; a section that lies in
    several turns becomes several, called `wreath`, `wreath 2` …
    """
    serving = Serving(design, blocks)
    if not any(serving.keeps_apart(colourway.code) for colourway in design.colourways):
        return design
    return _Laying(serving).design()


class _Laying:
    def __init__(self, serving: Serving) -> None:
        self.serving = serving
        self.used: Used = Counter()
        self.names: dict[tuple[str, int], str] = {}
        """What each section is called in each turn in which it lies."""
        self.made: dict[str, list[Section]] = {name: [] for name in serving.settings}

    def design(self) -> Design:
        design = self.serving.design
        setting, borders = self._setting(design.setting, 0), self._borders(design.borders, 0)
        for name, made in self.made.items():
            if not made:  # it lies nowhere
                self._section(name, 0)
        sections = tuple(section for made in self.made.values() for section in made)
        return replace(design, setting=setting, borders=borders, sections=sections)

    def _section(self, name: str, turn: int) -> str:
        """Return what a section that lies turned is called, making it the first time."""
        turn %= self.serving.period(SectionCell(name, 0))
        if (name, turn) not in self.names:
            number = len(self.made[name]) + 1
            called = self.names[name, turn] = name if number == 1 else f"{name} {number}"
            before = self.serving.settings[name]
            setting = replace(self._setting(before, turn), borders=self._borders(before.borders, turn))
            self.made[name].append(Section(called, setting))
        return self.names[name, turn]

    def _setting(self, setting: SectionSet, turn: int) -> SectionSet:
        if isinstance(setting, StraightSet):
            plain = setting.symmetry is Symmetry.SLIDE
            if not plain and any(self.serving.period(word) > 1 for word in words_of(setting)):
                setting = replace(setting, cells=setting.rows(), across=1, down=1, symmetry=Symmetry.SLIDE)
            return replace(setting, cells=self._map(setting.cells, turn))
        if isinstance(setting, OnPointSet):
            cells, between = (self._map(rows, turn) for rows in (setting.cells, setting.between))
            return replace(setting, cells=cells, between=between)
        if isinstance(setting, LineSet):
            parts = (part if isinstance(part, Strip) else self._word(part, turn) for part in setting.parts)
            return replace(setting, parts=tuple(parts))
        return setting

    def _map(self, rows: Map, turn: int) -> Map:
        return tuple(tuple(self._word(cell, turn) for cell in row) for row in rows)

    def _word(self, word: MapCell, turn: int) -> MapCell:
        if isinstance(word, SectionCell):
            return self._called(word, turn)
        if isinstance(word, Cell):
            served = self.serving.serve(word, turn, self.used)
            assert served is not None, "every place is served"
            return served
        return word

    def _called(self, word: SectionCell, turn: int) -> SectionCell:
        return replace(word, section=self._section(word.section, (word.turn + turn) % 4))

    def _borders(self, borders: tuple[AnyBorder, ...], turn: int) -> tuple[AnyBorder, ...]:
        return tuple(
            self._border(border, turn) if isinstance(border, PiecedBorder) else border for border in borders
        )

    def _border(self, border: PiecedBorder, turn: int) -> PiecedBorder:
        sides, ends = (self._called(each, turn) for each in (border.sides, border.ends))
        corners = None if border.corners is None else self._word(border.corners, turn)
        return replace(border, sides=sides, ends=ends, corners=corners)


def masters_for(design: Design, blocks: Blocks, rows: Map) -> int | None:
    """Return how many masters a map of units and plain cloth needs, spares left out.

    None where some place cannot be served upright.
    """
    serving, used = Serving(design, blocks), Counter[tuple[str, str]]()
    units = [cell for row in rows for cell in row if isinstance(cell, Cell)]
    if not all(serving.serve(cell, 0, used) for cell in units):
        return None
    needed: dict[str, int] = defaultdict(int)
    for (code, quarter), count in used.items():
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


def other_ways(design: Design, blocks: Blocks, rows: Map) -> Iterator[Saving]:
    """Return every other way to lay a map of units and plain cloth in which all prints stand upright.

    Each is told with the masters that it needs.
    """
    for is_mirrored in (False, True):
        if is_mirrored and not _can_be_mirrored(design, blocks, rows):
            continue
        block = mirrored(rows) if is_mirrored else rows
        for quarters in range(4):
            if (quarters or is_mirrored) and (need := masters_for(design, blocks, turned(block, quarters))):
                yield Saving(quarters, is_mirrored, need)


def _can_be_mirrored(design: Design, blocks: Blocks, rows: Map) -> bool:
    """Tell whether every unit is its own mirror image, and is known in the map by its colourway alone."""
    codes = {(cell.code, cell.quarter) for row in rows for cell in row if isinstance(cell, Cell)}
    units = [(quarter, blocks.units(design.colourway(code).recipe)[0]) for code, quarter in codes]
    return all(not quarter and is_own_mirror_image(unit) for quarter, unit in units)
