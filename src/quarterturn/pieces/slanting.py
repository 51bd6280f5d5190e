"""The slanting rows of a section on point.

Rows run from the upper left to the lower right, and are listed from the upper right to the lower left. Seen turned
back by an eighth they lie level on a lattice of pitch p = side + sash: a row holds every lattice place from its
`first` to its `last`, squares of the section and squares between them by turns. Square (r, c) has the place
r + c + 1 in row r − c; see `setting.OnPoint`.

Side triangles have legs of length p. Where there is sashing they stand by a row and by the sashing beside it: above
it in rows that grow (their right angle at the bottom), below it in rows that shrink. In a section with more rows than
columns, or fewer, there are rows between that do neither: they begin one place further on than the row above (or
end one place earlier), and have at one end a triangle of either kind.
"""

from __future__ import annotations

import enum
from collections import Counter
from dataclasses import dataclass
from fractions import Fraction

from quarterturn.measure import Length
from quarterturn.setting import Child, ClothUse, OnPoint, PlainCloth


class Slope(enum.Enum):
    """Whether rows of a section on point grow at this row, are longest, move sideways, or shrink."""

    GROWS = "grows"
    LONGEST = "longest"
    MOVES = "moves"
    SHRINKS = "shrinks"


@dataclass(frozen=True, slots=True)
class SlantRow:
    """A row of squares: `first` and `last` are lattice places, both of squares of the map."""

    number: int
    """From 1, at the upper right."""
    squares: tuple[Child, ...]
    first: int
    last: int
    slope: Slope
    left: bool
    """Whether a side triangle stands at its left end (else a corner triangle will)."""
    right: bool


@dataclass(frozen=True, slots=True)
class SashRow:
    """A row of strips and cornerstones that reaches over the lattice places from `first` to `last`."""

    first: int
    last: int


def slanting_rows(node: OnPoint) -> tuple[SlantRow, ...]:
    """Return the rows of squares from the upper right to the lower left."""
    rows, columns = len(node.cells), len(node.cells[0])
    return tuple(_row(node, d, rows, columns) for d in range(1 - columns, rows))


def _row(node: OnPoint, d: int, rows: int, columns: int) -> SlantRow:
    at = [(r, r - d) for r in range(max(0, d), min(rows, columns + d))]
    squares = [node.cells[r][c] for r, c in at]
    for k, (r, c) in enumerate(at[:-1]):
        squares.insert(2 * k + 1, node.between[r][c])
    first = sum(at[0]) + 1
    spare = rows - columns
    return SlantRow(
        number=d + columns,
        squares=tuple(squares),
        first=first,
        last=first + len(squares) - 1,
        slope=_slope(d, spare),
        left=d != 0,
        right=d != spare,
    )


def _slope(d: int, spare: int) -> Slope:
    if d == spare == 0:
        return Slope.LONGEST
    if d <= min(0, spare):
        return Slope.GROWS
    return Slope.SHRINKS if d >= max(0, spare) else Slope.MOVES


def sash_rows(node: OnPoint) -> tuple[SashRow, ...]:
    """Return the rows of sashing: above the first row of squares, between every two, and below the last.

    Each reaches as far as the rows beside it. Without sashing there are none.
    """
    if not node.sash:
        return ()
    ends = [(row.first, row.last) for row in slanting_rows(node)]
    pairs = zip([ends[0], *ends], [*ends, ends[-1]], strict=True)
    return tuple(SashRow(min(a[0], b[0]), max(a[1], b[1])) for a, b in pairs)


def row_sash(node: OnPoint) -> Child:
    """Return the strip between two squares of a row, as it lies there."""
    return Child(PlainCloth(ClothUse.SASH, node.sash_fabric, node.sash, node.side))


def horizontal_sash(node: OnPoint) -> Child:
    """Return the strip above or below a square, as it lies there: that between two squares, turned."""
    return Child(row_sash(node).node, 1)


def cornerstone(node: OnPoint) -> Child:
    """Return the square where strips cross."""
    return Child(PlainCloth(ClothUse.CORNERSTONE, node.cornerstone_fabric, node.sash, node.sash))


def sashing_of(node: OnPoint) -> Counter[PlainCloth]:
    """Count the strips and cornerstones of a section on point."""
    counts: Counter[PlainCloth] = Counter()
    for row in slanting_rows(node) if node.sash else ():
        counts[_cloth(row_sash(node))] += len(row.squares) + 1
    for sashes in sash_rows(node):
        places = sashes.last - sashes.first + 1
        counts[_cloth(row_sash(node))] += places
        counts[_cloth(cornerstone(node))] += places + 1
    return counts


def _cloth(child: Child) -> PlainCloth:
    assert isinstance(child.node, PlainCloth), "sashing is plain cloth"
    return child.node


def pitch(node: OnPoint) -> Length:
    """Return from the middle of one lattice place to that of the next."""
    return node.side + node.sash


def left_of(node: OnPoint, place: int) -> Length:
    """Return where a row begins, finished and its outer sash included, whose first square has this place."""
    return (place - Fraction(1, 2)) * pitch(node) - node.sash / 2


def right_of(node: OnPoint, place: int) -> Length:
    """Return where a row ends, finished and its outer sash included, whose last square has this place."""
    return (place + Fraction(1, 2)) * pitch(node) + node.sash / 2


def side_triangles(node: OnPoint) -> int:
    """Return how many side triangles a section takes: 2(r + c − 2) for r rows of c squares."""
    return 2 * (len(node.cells) + len(node.cells[0]) - 2)


CORNERS = 4
"""Corner triangles of a section on point."""
