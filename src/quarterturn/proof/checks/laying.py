"""Strips, squares and triangles between and round the places of a map, as the checks lay them."""

from __future__ import annotations

import cmath
import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import TypeAlias

from quarterturn.design import Border, Cell, MapCell, OnPointSet, Sashing, SectionCell
from quarterturn.geometry import Motion, quarter_turns, shift
from quarterturn.measure import ROOT_TWO, Length
from quarterturn.proof.checks.sizing import Size, sash_width

UNIT = "unit"
SQUARE = "plain square"
SASH = "sashing strip"
CORNERSTONE = "cornerstone"
STRIP = "strip"
BORDER = "border strip"
COPING = "coping strip"
PANEL = "panel"
SIDE_TRIANGLE = "side triangle"
CORNER_TRIANGLE = "corner triangle"

ROOT = "centre"
"""What the root is called among the sections."""

EIGHTH = cmath.exp(1j * math.pi / 4)


@dataclass(frozen=True, slots=True)
class Leaf:
    """A unit or a piece of cloth: what it is, of which unit or fabric, how large finished, and where it lies.

    `motion` brings its own frame, whose origin is its top left corner, to the top's. `turn` is the unit's own in its
    map. `row` and `column` count in the section from 0. A triangle's size is that of its two short sides.
    """

    what: str
    name: str
    size: Size
    motion: Motion
    turn: int = 0
    section: str = ROOT
    row: int = 0
    column: int = 0
    key: str = ""
    mitred: bool = False
    """A border strip whose size is the longest that it measures; its ends are cut off slanting."""

    @property
    def middle(self) -> complex:
        """Return where the middle of a rectangle lies in the top."""
        return self.motion(complex(float(self.size[0]), float(self.size[1])) / 2)

    @property
    def area(self) -> float:
        """Return how much of the top it covers; mitred strips as if they were whole."""
        whole = float(self.size[0] * self.size[1])
        return whole / 2 if self.what in (SIDE_TRIANGLE, CORNER_TRIANGLE) else whole

    @property
    def eighths(self) -> int:
        """Return by how many eighths of a round it is turned in the top, 0 to 7."""
        return round(cmath.phase(self.motion.factor) / (math.pi / 4)) % 8


@dataclass(frozen=True, slots=True)
class Spot:
    """Where a walk is: section, the key of the file that tells of it, row and column."""

    section: str
    key: str
    row: int = 0
    column: int = 0


Leaves: TypeAlias = Iterator[Leaf]


def place_of(leaf: Leaf) -> str:
    """Say where a unit lies, counted from 1 as people count."""
    section = "" if leaf.section == ROOT else f" of {leaf.section}"
    return f"row {leaf.row + 1}, unit {leaf.column + 1}{section}"


def turned_further(cell: MapCell, turn: int) -> MapCell:
    """Return what fills a corner, turned by so many quarters more."""
    if isinstance(cell, Cell):
        return Cell(cell.code, (cell.turn + turn) % 4, cell.quarter)
    return SectionCell(cell.section, (cell.turn + turn) % 4) if isinstance(cell, SectionCell) else cell


def cloth(what: str, fabric: str, size: Size, spot: Spot, at: Motion) -> Leaf:
    return Leaf(what, fabric, size, at, 0, spot.section, spot.row, spot.column, spot.key)


def moved(at: Motion, x: Length | int, y: Length | int) -> Motion:
    """Return the motion of a frame that begins at x, y in another."""
    return shift(complex(float(x), float(y))).then(at)


def turned_about(lying: Size, turn: int) -> Motion:
    """Return the motion that turns a rectangle, its top left corner at the origin, to lie so again.

    `lying` is its size when it is turned.
    """
    width, height = float(lying[0]), float(lying[1])
    corner = (0j, complex(width, 0), complex(width, height), complex(0, height))[turn % 4]
    return quarter_turns(turn).then(shift(corner))


def starts_of(sizes: Sequence[Length], sashing: Sashing | None) -> list[Length]:
    """Return where each place of a row or a column begins."""
    sash = sashing.width if sashing else Length(0)
    at, starts = sash if sashing and sashing.outer else Length(0), list[Length]()
    for size in sizes:
        starts.append(at)
        at += size + sash
    return starts


def sashes(sashing: Sashing, widths: list[Length], heights: list[Length], spot: Spot, at: Motion) -> Leaves:
    """Walk through the strips between the places of a straight set, and the squares where they cross."""
    lefts, tops = starts_of(widths, sashing), starts_of(heights, sashing)
    wide = sashing.width
    upright, level = (_lines(starts, sizes, sashing) for starts, sizes in ((lefts, widths), (tops, heights)))
    for x in upright:
        for top, height in zip(tops, heights, strict=True):
            yield cloth(SASH, sashing.fabric, (wide, height), spot, moved(at, x, top))
    for y in level:
        if not sashing.cornerstone:
            begin = Length(0)
            end = lefts[-1] + widths[-1] + (wide if sashing.outer else 0)
            yield cloth(SASH, sashing.fabric, (end - begin, wide), spot, moved(at, begin, y))
            continue
        for left, width in zip(lefts, widths, strict=True):
            yield cloth(SASH, sashing.fabric, (width, wide), spot, moved(at, left, y))
        for x in upright:
            yield cloth(CORNERSTONE, sashing.cornerstone, (wide, wide), spot, moved(at, x, y))


def _lines(starts: list[Length], sizes: list[Length], sashing: Sashing) -> list[Length]:
    """Return where the strips between, and perhaps outside, a row of places begin."""
    after = [start + size for start, size in zip(starts, sizes, strict=True)]
    return [starts[0] - sashing.width, *after] if sashing.outer else after[:-1]


def slanting(setting: OnPointSet) -> Iterator[tuple[tuple[int, int], tuple[MapCell, str, int, int]]]:
    """Return each cell on point by its place along the slanting rows, and down from the middle one."""
    for r, row in enumerate(setting.cells):
        for c, cell in enumerate(row):
            yield (r + c + 1, r - c), (cell, "map", 2 * r, c)
    for r, row in enumerate(setting.between):
        for c, cell in enumerate(row):
            yield (r + c + 2, r - c), (cell, "between", 2 * r + 1, c)


def slanting_sashes(
    sashing: Sashing, places: set[tuple[int, int]], side: Length, spot: Spot, at: Motion
) -> Leaves:
    """Walk through the strips on the four sides of every cell on point, and the squares at its four corners."""
    wide, pitch, half = sashing.width, side + sashing.width, Length(1, 2)
    across = {(i + step, Length(j)) for i, j in places for step in (-half, half)}
    down = {(Length(i), j + step) for i, j in places for step in (-half, half)}
    corners = {(i + x, j + y) for i, j in places for x in (-half, half) for y in (-half, half)}

    def here(i: Length, j: Length, size: Size) -> Motion:
        return moved(at, i * pitch - size[0] / 2, j * pitch - size[1] / 2)

    for i, j in sorted(across):
        yield cloth(SASH, sashing.fabric, (wide, side), spot, here(i, j, (wide, side)))
    for i, j in sorted(down):
        yield cloth(SASH, sashing.fabric, (side, wide), spot, here(i, j, (side, wide)))
    for i, j in sorted(corners):
        yield cloth(CORNERSTONE, sashing.cornerstone, (wide, wide), spot, here(i, j, (wide, wide)))


def triangles(setting: OnPointSet, side: Length, pitch: Length, spot: Spot, at: Motion) -> Leaves:
    """Name the triangles by number and size; where each lies is a matter of how it is trimmed."""
    rows, columns = len(setting.cells), len(setting.cells[0])
    here = Spot(spot.section, f"{spot.key}.triangles")
    corner = (side + 2 * sash_width(setting)) * ROOT_TWO / 2
    for _ in range(2 * (rows - 1) + 2 * (columns - 1)):
        yield cloth(SIDE_TRIANGLE, setting.side_fabric, (pitch, pitch), here, at)
    for _ in range(4):
        yield cloth(CORNER_TRIANGLE, setting.corner_fabric, (corner, corner), here, at)


def strips(
    what: str, fabric: str, outer: Size, depth: Size, sides_first: bool, spot: Spot, at: Motion
) -> Leaves:
    """Walk through four strips of which one pair runs through."""
    (width, height), (side, end) = outer, depth
    top = end if sides_first else Length(0)
    left = Length(0) if sides_first else side
    for x in (Length(0), width - side):
        yield cloth(what, fabric, (side, height - 2 * top), spot, moved(at, x, top))
    for y in (Length(0), height - end):
        yield cloth(what, fabric, (width - 2 * left, end), spot, moved(at, left, y))


def strips_between_corners(border: Border, outer: Size, spot: Spot, at: Motion) -> Leaves:
    (width, height), wide = outer, border.width
    for x in (Length(0), width - wide):
        size = wide, height - 2 * wide
        yield cloth(BORDER, border.fabric, size, spot, moved(at, x, wide))
    for y in (Length(0), height - wide):
        size = width - 2 * wide, wide
        yield cloth(BORDER, border.fabric, size, spot, moved(at, wide, y))
        for x in (Length(0), width - wide):
            yield cloth(CORNERSTONE, border.cornerstone, (wide, wide), spot, moved(at, x, y))


def mitred_strips(border: Border, outer: Size, spot: Spot, at: Motion) -> Leaves:
    (width, height), wide = outer, border.width
    places = (
        ((wide, height), Length(0), Length(0)), ((wide, height), width - wide, Length(0)),
        ((width, wide), Length(0), Length(0)), ((width, wide), Length(0), height - wide),
    )  # fmt: skip
    for size, x, y in places:
        here = moved(at, x, y)
        yield Leaf(BORDER, border.fabric, size, here, 0, spot.section, spot.row, spot.column, spot.key, True)
