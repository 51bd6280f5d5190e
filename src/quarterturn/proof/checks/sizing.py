"""The finished size of the quilt and of each of its sections, added up from the design alone.

On point a square of side b measures b·√2 from corner to corner: so the sizes of a top on point are no fractions.
They are reckoned with `measure.ROOT_TWO`, and held against others by `same`.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import TypeAlias

from quarterturn.design import (
    AnyBorder,
    Border,
    Cell,
    Coping,
    Design,
    LineSet,
    Map,
    MapCell,
    OnPointSet,
    PanelSet,
    RecipeKind,
    SectionCell,
    SectionSet,
    StraightSet,
    Strip,
    code_of_unit,
    quarter_of_unit,
)
from quarterturn.measure import ROOT_TWO, Length, Units, cut_step, round_up
from quarterturn.proof.checks.sides import laid_size

Size: TypeAlias = tuple[Length, Length]
"""Width and height."""

CLOSE = Length(1, 10**9)
"""Two lengths that differ by less, in inches, are one: √2 is known to fewer places than they have."""

NOTHING: Size = (Length(0), Length(0))


def same(one: Length, other: Length) -> bool:
    """Tell whether two lengths are one."""
    return abs(one - other) < CLOSE


MEASURABLE = 10**5
"""A length with a larger denominator has √2 in it: no mark of a ruler is there."""


def to_cut(size: Length, units: Units) -> Length:
    """Return a size to cut: as it is, or up to the ruler's next mark where √2 is in it."""
    return size if size.denominator <= MEASURABLE else round_up(size, cut_step(units))


class Sizes:
    """The sizes of a design: each section is added up once."""

    def __init__(self, design: Design) -> None:
        self.design = design
        self.settings = {section.name: section.setting for section in design.sections}
        self._sections: dict[str, Size] = {}

    def centre(self) -> Size:
        """Return the size of the quilt inside its borders."""
        return self.inside(self.design.setting)

    def quilt(self) -> Size:
        """Return the size inside the binding."""
        return self.bordered(self.centre(), self.design.borders)

    def section(self, name: str) -> Size:
        """Return the size of a section with its borders."""
        if name not in self._sections:
            setting = self.settings[name]
            self._sections[name] = self.bordered(self.inside(setting), setting.borders)
        return self._sections[name]

    def bordered(self, size: Size, borders: Iterable[AnyBorder]) -> Size:
        """Return the size of something with borders round it."""
        for border in borders:
            side, end = self.depths(size, border)
            size = size[0] + 2 * side, size[1] + 2 * end
        return size

    def depths(self, size: Size, border: AnyBorder) -> Size:
        """Return how much a border adds on the left and on the right, and how much at the top and at the bottom."""
        if isinstance(border, Border):
            return border.width, border.width
        if isinstance(border, Coping):
            return (border.width - size[0]) / 2, (border.height - size[1]) / 2
        return self.cell(border.sides)[0], self.cell(border.ends)[1]

    def cell(self, cell: MapCell) -> Size:
        """Return the size of what fills a place, as it lies; nothing for plain cloth, which takes any size."""
        if isinstance(cell, Cell):
            return turned(unit_size(self.design, cell.name), cell.turn)
        if isinstance(cell, SectionCell):
            return turned(self.section(cell.section), cell.turn)
        return NOTHING

    def inside(self, setting: SectionSet) -> Size:
        """Return the size of a section without its borders."""
        if isinstance(setting, PanelSet):
            return setting.width, setting.height
        if isinstance(setting, LineSet):
            return self._line(setting)
        if isinstance(setting, OnPointSet):
            diagonal = self.pitch(setting) * ROOT_TWO
            more = sash_width(setting) * ROOT_TWO + 2 * setting.float
            return len(setting.cells[0]) * diagonal + more, len(setting.cells) * diagonal + more
        columns, rows = self.places(setting.rows())
        if setting.sashing:
            columns, rows = (_sashed(each, setting) for each in (columns, rows))
        return sum(columns, Length(0)), sum(rows, Length(0))

    def places(self, rows: Map) -> tuple[list[Length], list[Length]]:
        """Return the widths of the columns and the heights of the rows of a map."""
        sizes = {cell: self.cell(cell) for cell in set().union(*rows)}
        heights = [max(sizes[cell][1] for cell in row) for row in rows]
        widths = [max(sizes[cell][0] for cell in column) for column in zip(*rows, strict=True)]
        return widths, heights

    def across(self, setting: LineSet) -> Length:
        """Return the side that all parts of a line have: their height in columns, their width in rows."""
        sizes = [self.cell(part) for part in setting.parts if not isinstance(part, Strip)]
        return max(size[0 if setting.below else 1] for size in sizes)

    def along(self, setting: LineSet) -> list[Length]:
        """Return how much each part of a line takes."""
        way = 1 if setting.below else 0
        return [part.width if isinstance(part, Strip) else self.cell(part)[way] for part in setting.parts]

    def _line(self, setting: LineSet) -> Size:
        along, across = sum(self.along(setting), Length(0)), self.across(setting)
        return (across, along) if setting.below else (along, across)

    def side(self, setting: OnPointSet) -> Length:
        """Return the side of the cells of a setting on point."""
        return max(self.cell(cell)[0] for row in (*setting.cells, *setting.between) for cell in row)

    def pitch(self, setting: OnPointSet) -> Length:
        """Return the side of a cell on point and the sashing that goes with it."""
        return self.side(setting) + sash_width(setting)


def _sashed(places: list[Length], setting: StraightSet) -> list[Length]:
    """Return the sizes of places with those of the sashing between them, and round them where it goes."""
    assert setting.sashing is not None
    sash = setting.sashing.width
    between = [size for place in places for size in (sash, place)]
    return [*between, sash] if setting.sashing.outer else between[1:]


def turned(size: Size, turn: int) -> Size:
    """Return a size as it lies: a quarter turn exchanges width and height."""
    return size[::-1] if turn % 2 else size


def unit_size(design: Design, name: str) -> Size:
    """Return the finished size of a unit at turn 0."""
    colourway = design.colourway(code_of_unit(name))
    if colourway.is_rejoined:
        block = design.rejoined_recipe(colourway.recipe)
        return block.finished_width, block.finished_height
    recipe = design.recipe(colourway.recipe)
    if recipe.kind is RecipeKind.SHAPES:
        return laid_size(recipe, quarter_of_unit(name), design.making.seam)
    return recipe.finished_width, recipe.finished_height


def sash_width(setting: OnPointSet) -> Length:
    """Return the width of the sashing; 0 where there is none."""
    return setting.sashing.width if setting.sashing else Length(0)


def centre_size(design: Design) -> Size:
    """Return width and height of the quilt inside its borders."""
    return Sizes(design).centre()


def finished_size(design: Design) -> Size:
    """Return width and height inside the binding: the centre and its borders."""
    return Sizes(design).quilt()
