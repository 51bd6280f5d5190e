"""The sewn top taken apart again, section by section and row by row, and held against the maps."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from typing import TypeAlias

from quarterturn.design import (
    Cell,
    ClothCell,
    Design,
    LineSet,
    MapCell,
    OnPointSet,
    PanelSet,
    SectionCell,
    SectionSet,
    StraightSet,
    Strip,
    dotted,
)
from quarterturn.pieces import Purpose
from quarterturn.proof.checks.fault import REBUILD, Fault
from quarterturn.proof.checks.laying import ROOT, slanting
from quarterturn.proof.checks.ledger import names_of_units
from quarterturn.proof.checks.mapping import map_of
from quarterturn.proof.model import Pattern
from quarterturn.setting import Side
from quarterturn.steps import (
    AddCorners,
    AddTriangles,
    JoinRows,
    LayOut,
    SetIn,
    SewLine,
    SquareUp,
    Step,
    labels,
)

Word: TypeAlias = str
"""A unit or a section with its turn, `a2` or `wreath1`; the letter of plain cloth."""

SASHING = (Purpose.SASH, Purpose.CORNERSTONE)


def tops_taken_apart(pattern: Pattern) -> Iterator[Fault]:
    """Take every sewn section, and the quilt centre, apart down to its parts, and hold the rows against the map."""
    apart = TakenApart(pattern)
    settings = {section.name: section.setting for section in pattern.design.sections}
    for name, setting in (*settings.items(), (ROOT, pattern.design.setting)):
        label = labels.TOP if name == ROOT else name
        wanted = rows_of(pattern.design, setting)
        if wanted is None or (name != ROOT and label not in apart.sewn):
            continue
        key = "setting.map" if name == ROOT else dotted("sections", name)
        if label not in apart.sewn:
            yield Fault(key, "No step sews the rows to one another.", REBUILD)
            continue
        action = apart.sewn[label].action
        if name == ROOT and len(wanted) > 1 and isinstance(action, SewLine) and action.way is Side.RIGHT:
            yield Fault(key, "No step sews the rows to one another.", REBUILD)
            continue
        found = apart.rows(label, isinstance(setting, OnPointSet))
        yield from _differing(wanted, found, key, f"{name} as sewn by step {apart.sewn[label].number}")


def laid_out(pattern: Pattern) -> Iterator[Fault]:
    """Hold the rows in which the quilt centre is laid out against its map."""
    apart, setting = TakenApart(pattern), pattern.design.setting
    wanted = rows_of(pattern.design, setting)
    for step in pattern.steps.steps:
        if isinstance(step.action, LayOut) and wanted is not None:
            on_point = isinstance(setting, OnPointSet)
            rows = [
                [apart.word(Lain(part.label, part.turn), on_point) for part in row]
                for row in step.action.rows
            ]
            yield from _differing(wanted, rows, "setting.map", f"step {step.number}")


def _differing(wanted: list[list[Word]], found: list[list[Word]], key: str, where: str) -> Iterator[Fault]:
    """Tell of the first part that differs; the rest most likely follows from it."""
    if [len(row) for row in found] != [len(row) for row in wanted]:
        sentence = (
            f"The map has {len(wanted)} rows, {sum(map(len, wanted))} parts in all; {where} has {len(found)} rows, "
            f"{sum(map(len, found))} parts."
        )
        yield Fault(key, sentence, REBUILD, where)
        return
    for r, (row, other) in enumerate(zip(wanted, found, strict=True)):
        for c, (want, is_) in enumerate(zip(row, other, strict=True)):
            if want != is_:
                sentence = f"The map has {want} in row {r + 1}, place {c + 1}; {where} has {is_}."
                yield Fault(key, sentence, REBUILD, f"row {r + 1}, place {c + 1}")
                return


def rows_of(design: Design, setting: SectionSet) -> list[list[Word]] | None:
    """Return the words of the rows of a section as they are sewn, sashing on point aside; None for a panel."""
    if isinstance(setting, PanelSet):
        return None
    if isinstance(setting, OnPointSet):
        return _slanting_rows(design, setting)
    if isinstance(setting, LineSet):
        words = [part.fabric if isinstance(part, Strip) else word_of(design, part) for part in setting.parts]
        return [[word] for word in words] if setting.below else [words]
    rows = [[word_of(design, cell) for cell in row] for row in map_of(setting)]
    return _sashed(rows, setting) if setting.sashing else rows


def _slanting_rows(design: Design, setting: OnPointSet) -> list[list[Word]]:
    """Return the rows from the upper right to the lower left, each from its upper left end."""
    rows: dict[int, dict[int, Word]] = {}
    for (along, down), (cell, *_) in slanting(setting):
        rows.setdefault(down, {})[along] = word_of(design, cell)
    return [[words[along] for along in sorted(words)] for _, words in sorted(rows.items())]


def _sashed(rows: list[list[Word]], setting: StraightSet) -> list[list[Word]]:
    sash = setting.sashing
    assert sash is not None
    between = [_between(row, sash.fabric, sash.outer) for row in rows]
    level = (
        _between([sash.fabric] * len(rows[0]), sash.cornerstone, sash.outer)
        if sash.cornerstone
        else [sash.fabric]
    )
    spaced = [each for row in between for each in (level, row)]
    return [*spaced, level] if sash.outer else spaced[1:]


def _between(row: list[Word], word: Word, outer: bool) -> list[Word]:
    spaced = [each for item in row for each in (word, item)]
    return [*spaced, word] if outer else spaced[1:]


def word_of(design: Design, cell: MapCell) -> Word:
    """Return what a place is sewn of; a section of one part alone is that part, turned further."""
    if isinstance(cell, ClothCell):
        return cell.fabric
    if isinstance(cell, Cell):
        return f"{cell.name}{cell.turn}"
    setting = next(section.setting for section in design.sections if section.name == cell.section)
    only = _only_part(setting)
    if isinstance(only, ClothCell):
        return only.fabric
    if isinstance(only, Cell):
        return f"{only.name}{(only.turn + cell.turn) % 4}"
    if isinstance(only, SectionCell):
        return word_of(design, SectionCell(only.section, (only.turn + cell.turn) % 4))
    return f"{cell.section}{cell.turn}"


def _only_part(setting: SectionSet) -> MapCell | None:
    """Return the one part of a section that needs no sewing; None where there are more, or borders."""
    if setting.borders:
        return None
    if isinstance(setting, PanelSet) and not setting.motifs:
        return ClothCell(setting.fabric)
    if isinstance(setting, StraightSet) and not (setting.sashing and setting.sashing.outer):
        rows = map_of(setting)
        return rows[0][0] if len(rows) == len(rows[0]) == 1 else None
    if isinstance(setting, LineSet) and len(setting.parts) == 1:
        part = setting.parts[0]
        return ClothCell(part.fabric) if isinstance(part, Strip) else part
    return None


@dataclass(frozen=True, slots=True)
class Lain:
    """Something on the table, with the quarter turns with which it is laid."""

    label: str
    turn: int


def _section_of(label: str) -> str:
    """Return a label without the number that tells it from others of its name: `wreath` for `wreath (2)`."""
    return re.sub(r" \(\d+\)$", "", label)


class TakenApart:
    """What every label is sewn of."""

    def __init__(self, pattern: Pattern) -> None:
        self.pattern = pattern
        self.names = names_of_units(pattern)
        self.fabrics = {piece.label: piece for piece in pattern.bill.pieces}
        self.sewn: dict[str, Step] = {}
        kinds = SewLine | JoinRows | AddTriangles | AddCorners | SetIn | SquareUp
        for step in pattern.steps.steps:
            if isinstance(step.action, kinds) and step.makes:
                self.sewn.setdefault(step.makes[0].label, step)

    def rows(self, label: str, on_point: bool) -> list[list[Word]]:
        """Return the words of the rows of a section; on point without its sashing."""
        action = self.sewn[label].action
        if isinstance(action, SquareUp | AddCorners | SetIn):
            turn = action.turn if isinstance(action, AddCorners) else 0
            inner = self.sewn[label].uses[0].label
            if inner not in self.sewn or self._is_section(inner):
                return [self.line(Lain(inner, turn), on_point)]
            return self.rows(inner, on_point)
        if isinstance(action, JoinRows) or (isinstance(action, SewLine) and action.way is Side.BOTTOM):
            lines = [self.line(Lain(part.label, part.turn), on_point) for part in action.parts]
            return [line for line in lines if line]
        assert isinstance(action, SewLine)
        return [[word for each in action.parts for word in self.line(Lain(each.label, each.turn), on_point)]]

    def line(self, part: Lain, on_point: bool) -> list[Word]:
        """Return the words of a line, from left to right."""
        step = self.sewn.get(part.label)
        if step is None or part.turn or self._is_section(part.label):
            word = self.word(part, on_point)
            return [word] if word else []
        action = step.action
        if isinstance(action, AddTriangles):
            return self.line(Lain(step.uses[0].label, action.turn), on_point)
        assert isinstance(action, SewLine | JoinRows)
        return [word for each in action.parts for word in self.line(Lain(each.label, each.turn), on_point)]

    def _is_section(self, label: str) -> bool:
        return any(section.name == _section_of(label) for section in self.pattern.design.sections)

    def word(self, part: Lain, on_point: bool) -> Word:
        """Return what a map writes for something on the table; nothing for sashing on point."""
        if part.label in self.names:
            return f"{self.names[part.label]}{part.turn}"
        piece = self.fabrics.get(part.label.partition(", trimmed")[0])
        if piece is None:
            return f"{_section_of(part.label)}{part.turn}"
        return "" if on_point and piece.purpose in SASHING else piece.fabric
