"""Cells in rows and columns, with sashing or without, and sections in a line: all are grids."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, TypeVar

from quarterturn.design import (
    Cell,
    ClothCell,
    LineSet,
    MapCell,
    Sashing,
    SectionCell,
    StraightSet,
    Strip,
    section_key,
)
from quarterturn.measure import Length
from quarterturn.setting.remedies import remedy_for
from quarterturn.setting.tree import Child, ClothUse, Grid, PlainCloth

if TYPE_CHECKING:
    from quarterturn.setting.building import Builder

NOTHING = Length(0)
Item = TypeVar("Item")


def straight_grid(builder: Builder, name: str, setting: StraightSet) -> Grid:
    """Return the grid of a straight setting, all its repeats laid out."""
    cells = setting.rows()
    heights = [
        _fitted(builder, name, row, "height", f"row {r + 1}", _map_key(name, r, setting))
        for r, row in enumerate(cells)
    ]
    widths = [
        _fitted(builder, name, column, "width", f"column {c + 1}", section_key(name, "map"))
        for c, column in enumerate(zip(*cells, strict=True))
    ]
    filled = _Filled(builder)
    rows = tuple(
        tuple(filled.child(cell, width, height) for cell, width in zip(row, widths, strict=True))
        for row, height in zip(cells, heights, strict=True)
    )
    if setting.sashing:
        return _sashed(name, rows, widths, heights, setting.sashing)
    return Grid(name, rows, sum(widths, NOTHING), sum(heights, NOTHING))


class _Filled:
    """What fills the places of a map, each made once."""

    def __init__(self, builder: Builder) -> None:
        self._builder = builder
        self._sized: dict[MapCell, Child] = {}
        self._plain: dict[tuple[str, Length, Length], Child] = {}

    def child(self, cell: MapCell, width: Length, height: Length) -> Child:
        """Return what fills a place of this width and height."""
        if isinstance(cell, ClothCell):
            size = (cell.fabric, width, height)
            if size not in self._plain:
                self._plain[size] = Child(PlainCloth(ClothUse.SQUARE, *size))
            return self._plain[size]
        if cell not in self._sized:
            child = self._builder.sized(cell)
            assert child is not None, "only plain cloth has no size of its own"
            self._sized[cell] = child
        return self._sized[cell]


def _map_key(name: str, row: int, setting: StraightSet) -> str:
    return section_key(name, "map", row) if row < len(setting.cells) else section_key(name, "map")


def _fitted(
    builder: Builder, name: str, cells: Sequence[MapCell], measure: str, where: str, key: str
) -> Length:
    """Return the one width or height of the places of a row or column, noting those that differ."""
    sizes: dict[Length, MapCell] = {}
    for cell in dict.fromkeys(cells):
        if child := builder.sized(cell):
            sizes.setdefault(child.width if measure == "width" else child.height, cell)
    if len(sizes) == 1:
        return next(iter(sizes))
    if not sizes:
        sentence = f"In {where} of {_told(name)} there is plain cloth alone, and nothing tells its {measure}."
        builder.notes.add("size-open", key, sentence, "Put a unit or a section into it.", where)
        return Length(1)
    small, large = min(sizes), max(sizes)
    note_misfit(builder, key, where, measure, (sizes[small], small), (sizes[large], large))
    return large


def note_misfit(
    builder: Builder,
    key: str,
    where: str,
    measure: str,
    small: tuple[MapCell, Length],
    large: tuple[MapCell, Length],
) -> None:
    """Note two things that should have one width or height, and have not."""
    show, names = builder.notes.show, [_name(each) for each, _ in (small, large)]
    if names[0] == names[1]:
        names[1] = f"{names[1]} turned"
    word = "wide" if measure == "width" else "high"
    sentence = (
        f"In {where}, {names[0]} is {show(small[1])} {word} and {names[1]} {show(large[1])}: "
        f"they differ by {show(large[1] - small[1])}."
    )
    remedy = remedy_for(builder, small[0], measure, small[1], large[1])
    builder.notes.add("edges-misfit", key, sentence, remedy, where)


def _name(cell: MapCell) -> str:
    word = cell.name if isinstance(cell, Cell) else cell.section if isinstance(cell, SectionCell) else "cloth"
    return f"`{word}`"


def _told(name: str) -> str:
    return "the setting" if name == "centre" else f"`{name}`"


def _sashed(
    name: str,
    rows: tuple[tuple[Child, ...], ...],
    widths: Sequence[Length],
    heights: Sequence[Length],
    sashing: Sashing,
) -> Grid:
    """Put strips between the columns and the rows, and round them all where the sashing is an outer one too."""
    tracks = _between(widths, sashing.width, sashing.outer)
    whole = sum(tracks, NOTHING)
    level = _horizontal_sash(tracks, whole, sashing)
    laid = [_upright_sashes(row, height, sashing) for row, height in zip(rows, heights, strict=True)]
    levels = _between(laid, level, sashing.outer)
    down = _between(heights, sashing.width, sashing.outer)
    return Grid(name, tuple(levels), whole, sum(down, NOTHING))


def _upright_sashes(row: tuple[Child, ...], height: Length, sashing: Sashing) -> tuple[Child, ...]:
    sash = Child(PlainCloth(ClothUse.SASH, sashing.fabric, sashing.width, height))
    return tuple(_between(row, sash, sashing.outer))


def _horizontal_sash(tracks: Sequence[Length], whole: Length, sashing: Sashing) -> tuple[Child, ...]:
    """Return a row of sashing: strips and cornerstones, or one strip that runs through."""
    if not sashing.cornerstone:
        return (Child(PlainCloth(ClothUse.SASH, sashing.fabric, whole, sashing.width)),)
    stone = Child(PlainCloth(ClothUse.CORNERSTONE, sashing.cornerstone, sashing.width, sashing.width))
    first = 1 if sashing.outer else 0
    return tuple(
        Child(PlainCloth(ClothUse.SASH, sashing.fabric, track, sashing.width)) if i % 2 == first else stone
        for i, track in enumerate(tracks)
    )


def _between(items: Sequence[Item], one: Item, outer: bool) -> list[Item]:
    """Return items with another between every two of them, and before and behind them all if `outer`."""
    spaced = [each for item in items for each in (one, item)]
    return [*spaced, one] if outer else spaced[1:]


def line_grid(builder: Builder, name: str, setting: LineSet) -> Grid:
    """Return sections, units and strips side by side, or one below another."""
    measure = "width" if setting.below else "height"
    cells = [part for part in setting.parts if not isinstance(part, Strip | ClothCell)]
    across = _fitted(builder, name, cells, measure, "the line", section_key(name, "parts"))
    parts = tuple(_part(builder, part, across, setting.below) for part in setting.parts)
    if setting.below:
        long = sum((part.height for part in parts), NOTHING)
        return Grid(name, tuple((part,) for part in parts), across, long)
    return Grid(name, (parts,), sum((part.width for part in parts), NOTHING), across)


def _part(builder: Builder, part: MapCell | Strip, across: Length, below: bool) -> Child:
    if isinstance(part, Strip):
        size = (across, part.width) if below else (part.width, across)
        return Child(PlainCloth(ClothUse.STRIP, part.fabric, *size))
    child = builder.sized(part)
    assert child is not None, "cloth in a line says its width"
    return child
