"""Which cell of which map fills a place of the top: the way back from what lies there to what is written."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache

from quarterturn.design import (
    ROOT,
    TOP,
    AnyBorder,
    Design,
    LineSet,
    OnPointSet,
    PanelSet,
    PiecedBorder,
    SectionSet,
    Source,
    StraightSet,
    sources,
)
from quarterturn.pieces import held_by
from quarterturn.setting import Framed, Node, frames_of

_BORDER = re.compile(r"border (\d+) of (.+)")


@dataclass(frozen=True, slots=True)
class Spot:
    """A cell of a map as written, and how its turn is seen at the place: a row and a column that count from 0.

    On point even rows are those of the map, odd ones those between. A line of sections has one row, or one column. What
    fills the corners of a border is its cell 0, 0.
    """

    section: str
    row: int
    column: int
    source: Source


class Places:
    """The maps of a design as its file writes them."""

    def __init__(self, design: Design, top: Node | None = None) -> None:
        self.design = design
        self._framed = framed_sections(top) if top else {}
        self._settings = {section.name: section.setting for section in design.sections}
        self._sources = cache(self._laid)

    def setting(self, section: str) -> SectionSet:
        """Return how a section is laid; `centre` and `top` are the root."""
        return self.design.setting if section in (ROOT, TOP) else self._settings[written_name(section)]

    def borders(self, section: str) -> tuple[AnyBorder, ...]:
        """Return the borders round a section."""
        return self.design.borders if section in (ROOT, TOP) else self.setting(section).borders

    def spot(self, section: str, row: int, column: int) -> Spot | None:
        """Return what fills a place, as `PlacedUnit` has it; None where nothing is written for it alone."""
        if row < 0:
            return None
        if found := _BORDER.fullmatch(section):
            return self._corner(int(found[1]), found[2], column)
        setting = self.setting(section)
        name = ROOT if section == TOP else written_name(section)
        if isinstance(setting, StraightSet):
            source = self._sources(name)[row][column]
            return Spot(name, source.row, source.column, source)
        if isinstance(setting, OnPointSet | LineSet):
            return Spot(name, row, column, Source(row, column, 0))
        return None

    def border(self, ring: str) -> str | None:
        """Return how a cell's address names a border by its ring, `border 1 of top`; None for what is none."""
        found = _BORDER.fullmatch(ring)
        if found is None:
            return None
        section = found[2]
        named = ROOT if section == TOP else written_name(section)
        return border_name(named, self._border_index(int(found[1]), section))

    def _border_index(self, number: int, section: str) -> int:
        """Return which border of the file the nth ring from the inside is, from 0.

        A coping that has nothing to bring has no ring, which only the tree of the top tells.
        """
        framed, borders = self._framed.get(section), self.borders(section)
        if framed is None or len(framed.frames) == len(borders):
            return number - 1
        try:
            frames = frames_of(framed, borders)
        except StopIteration:  # parts do not fit, and a coping that would be too narrow has no ring either
            return number - 1
        return [index for index, frame in enumerate(frames) if frame is not None][number - 1]

    def _laid(self, name: str) -> tuple[tuple[Source, ...], ...]:
        setting = self.setting(name)
        assert isinstance(setting, StraightSet)
        rows, columns = len(setting.cells), len(setting.cells[0])
        return sources(rows, columns, setting.symmetry, setting.across, setting.down)

    def _corner(self, number: int, section: str, column: int) -> Spot | None:
        named = ROOT if section == TOP else written_name(section)
        index = self._border_index(number, section)
        if not isinstance(self.borders(section)[index], PiecedBorder):
            return None
        return Spot(border_name(named, index), 0, 0, Source(0, 0, column % 4))


def border_name(section: str, index: int) -> str:
    """Return how a cell's address names a border of a section, counted from 0: ``border 1 of centre``."""
    return f"border {index + 1} of {section}"


def framed_sections(top: Node) -> dict[str, Framed]:
    """Return each section that has borders, by its name in the tree."""
    found: dict[str, Framed] = {}
    waiting, seen = [top], set[int]()
    while waiting:
        node = waiting.pop()
        if id(node) in seen:
            continue
        seen.add(id(node))
        if isinstance(node, Framed):
            found[node.name] = node
        waiting += held_by(node)
    return found


def written_name(section: str) -> str:
    """Return what the file calls a section, whichever of its upright versions lies there."""
    return section.partition(" ")[0]


def kind_of(setting: SectionSet) -> str:
    """Return what the file calls a kind of setting."""
    if isinstance(setting, StraightSet):
        return "straight"
    if isinstance(setting, OnPointSet):
        return "on point"
    if isinstance(setting, PanelSet):
        return "panel"
    return "rows" if setting.below else "columns"
