"""Prints that must stand upright, and would not where they come to lie: on their side, on their head, or slanting."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from quarterturn.blocks import Blocks
from quarterturn.design import (
    ROOT,
    AnyBorder,
    Cell,
    Design,
    Finding,
    MapCell,
    OnPointSet,
    PiecedBorder,
    Place,
    SectionCell,
    SectionSet,
    Severity,
    StraightSet,
    border_key,
    cells_of,
    section_key,
    upright_letters,
)
from quarterturn.measure import show_count
from quarterturn.setting.standing import cloth_sideways
from quarterturn.setting.upright import Serving, other_ways


@dataclass(frozen=True, slots=True)
class Lying:
    """A word where it comes to lie: in a section that is turned by so many quarters, and slants if on point."""

    section: str
    turn: int
    slants: bool
    key: str
    detail: str
    word: MapCell


def sideways(design: Design, blocks: Blocks) -> Iterator[Finding]:
    """Tell once of each word whose print would not stand upright, wherever in the top it comes to lie so."""
    if not any(fabric.upright for fabric in design.fabrics):
        return
    serving, told = Serving(design, blocks), set()
    whole: str | None = None
    for lying in _all_lying(serving):
        word = lying.word
        if (word, lying.turn, lying.slants) in told:
            continue
        told.add((word, lying.turn, lying.slants))
        if not isinstance(word, Cell):
            continue
        if lying.slants:
            if letters := upright_letters(design, word.code):
                yield _slanting(lying, word, letters[0])
        elif not serving.choices(_as_it_lies(word, lying.turn)):
            if whole is None:
                whole = _whole_map(design, blocks)
            yield _on_its_side(serving, lying, word, whole)
    yield from _turned_borders(serving)
    yield from cloth_sideways(design)


def _as_it_lies(cell: Cell, turn: int) -> Cell:
    return replace(cell, turn=(cell.turn + turn) % 4)


def _all_lying(serving: Serving) -> Iterator[Lying]:
    """Return every word of the sections that lie in the top, for each turn in which its section lies."""
    design = serving.design
    waiting: list[tuple[str, int, bool]] = [(ROOT, 0, False)]
    for name, turn, slants in waiting:
        setting, borders = design.setting, design.borders
        if name != ROOT:
            setting = serving.settings[name]
            borders = setting.borders
        for lying in _lying_in(name, setting, borders, turn, slants):
            yield lying
            if isinstance(lying.word, SectionCell):
                inner = lying.word.section, (lying.word.turn + turn) % 4, lying.slants
                if inner not in waiting:
                    waiting.append(inner)


def _lying_in(
    name: str, setting: SectionSet, borders: tuple[AnyBorder, ...], turn: int, slants: bool
) -> Iterator[Lying]:
    """Return the words of one section, those of a map that is repeated as each copy has them."""
    if isinstance(setting, StraightSet):
        for r, row in enumerate(setting.rows()):
            key = section_key(name, "map", r) if r < len(setting.cells) else section_key(name, "map")
            for c, cell in enumerate(row):
                yield Lying(name, turn, slants, key, f"row {r + 1}, unit {c + 1}", cell)
    else:
        on_point = slants or isinstance(setting, OnPointSet)
        for named in cells_of(name, setting, ()):
            yield Lying(name, turn, on_point, named.key, named.detail, named.cell)
    for named in cells_of(name, replace(setting, borders=()), borders):
        if ".borders." in f".{named.key}":
            yield Lying(name, turn, slants, named.key, named.detail, named.cell)


def _slanting(lying: Lying, cell: Cell, letter: str) -> Finding:
    return Finding(
        "print-sideways",
        Severity.STOPS,
        Place(lying.key, lying.detail),
        f"On point `{_name(cell)}` stands on a corner, and the print of fabric {letter}, which must stand upright, "
        "slants.",
        f"Lay it in a straight setting, or let fabric {letter} lie any way up.",
    )


def _name(cell: Cell) -> str:
    return f"{cell.name}{cell.turn}"


def _on_its_side(serving: Serving, lying: Lying, cell: Cell, whole: str) -> Finding:
    letter = upright_letters(serving.design, cell.code)[0]
    turns = (turn for turn in range(4) if serving.choices(replace(cell, turn=(turn + lying.turn) % 4)))
    good = " or ".join(f"{cell.name}{turn}" for turn in turns) or "another unit"
    turned = f", with `{lying.section}` turned" if lying.turn else ""
    return Finding(
        "print-sideways",
        Severity.STOPS,
        Place(lying.key, lying.detail),
        f"As `{_name(cell)}` lies there{turned}, the print of fabric {letter}, which must stand upright, would not.",
        f"Write {good}, use another piece, or let fabric {letter} lie any way up.{whole}",
    )


def _whole_map(design: Design, blocks: Blocks) -> str:
    """Return how the whole map could be laid so that every print stands upright, if it can."""
    if not isinstance(design.setting, StraightSet):
        return ""
    rows = design.setting.rows()
    if any(isinstance(cell, SectionCell) for row in rows for cell in row):
        return ""
    way = next(other_ways(design, blocks, rows), None)
    if way is None:
        return ""
    turned = f"turned clockwise by {show_count(way.quarters, 'quarter')}" if way.quarters else ""
    how = " and ".join(filter(None, ("mirrored" if way.is_mirrored else "", turned)))
    return f" Or lay the whole map {how}: so every print stands upright."


def _turned_borders(serving: Serving) -> Iterator[Finding]:
    """Tell of pieced borders: the strip on the right is the left one by a half turn, and corners turn by quarters."""
    design = serving.design
    rounds = [(ROOT, design.borders), *((name, each.borders) for name, each in serving.settings.items())]
    for name, borders in rounds:
        for number, border in enumerate(borders):
            if isinstance(border, PiecedBorder):
                yield from _turned_border(serving, border_key(name, number), border)


def _turned_border(serving: Serving, key: str, border: PiecedBorder) -> Iterator[Finding]:
    parts: tuple[tuple[str, MapCell | None, int, str], ...] = (
        ("sides", border.sides, 2, "The right strip of the border is the left one, turned by a half"),
        ("ends", border.ends, 2, "The lower strip of the border is the upper one, turned by a half"),
        ("corners", border.corners, 1, "Each corner of the border is the one before it, turned by a quarter"),
    )
    for part, word, step, sentence in parts:
        if word is not None and serving.period(word) > step:
            yield Finding(
                "print-sideways",
                Severity.STOPS,
                Place(f"{key}.{part}"),
                f"{sentence}, and a print in it must stand upright.",
                "Use other colourways in it, or let the fabric of that print lie any way up.",
            )
