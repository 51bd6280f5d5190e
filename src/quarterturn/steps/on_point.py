"""Sewing a section on point: slanting rows with their side triangles, joined, cornered and squared up.

All sizes of slanting work are those of its box as it lies on the table: rows level, points counted. A side triangle
cut from a square of side S has short edges S/√2; laid with its right angle level with an edge of a row it reaches
S/√2 − 2s beyond the row's raw end. A corner triangle cut from a square of side S has the long edge S√2 and
is S/√2 high.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from quarterturn.design import Pressing
from quarterturn.measure import ROOT_TWO, Length
from quarterturn.pieces import (
    SashRow,
    SlantRow,
    Slope,
    corner_square,
    cornerstone,
    horizontal_sash,
    left_of,
    pitch,
    right_of,
    row_sash,
    sash_rows,
    side_square,
    slanting_rows,
)
from quarterturn.setting import Child, OnPoint, Side
from quarterturn.steps import labels
from quarterturn.steps.draft import Draft, draft
from quarterturn.steps.grids import Line, piles, sewn
from quarterturn.steps.model import Chapter
from quarterturn.steps.naming import Names
from quarterturn.steps.sections import (
    AddCorners,
    AddTriangles,
    CornerPlace,
    EndTriangle,
    JoinRows,
    SetIn,
    SetInPlace,
    SquareUp,
)
from quarterturn.steps.things import Pile, Placed, Press, Product, Towards


@dataclass(frozen=True, slots=True)
class Work:
    """Something slanting that is made: its label, its raw box, and where that begins on the lattice of the section."""

    label: str
    left: Length
    width: Length
    height: Length
    turn: int = 0
    """Quarter turns with which it is laid: a row may be a single square."""
    points: tuple[bool, bool] = (False, False)
    """Whether a point of a triangle stands out at its left and right; a seam allowance of it goes when it is joined."""

    @property
    def right(self) -> Length:
        """Return where its box ends."""
        return self.left + self.width


class OnPointSewing:
    """The sewing of one section on point."""

    def __init__(self, names: Names, node: OnPoint, label: str = "") -> None:
        self.names, self.node, self.times = names, node, names.made[node]
        self.seam = names.seam
        self.label = label or names.name(labels.node(node.name))
        self.leg = node.side_square * ROOT_TWO / 2
        self.triangle = labels.triangle(names.find(side_square(node)).label) if self._has_sides() else ""
        self.corner = labels.triangle(names.find(corner_square(node)).label)
        self.rows = slanting_rows(node)
        self.sashes = sash_rows(node)
        self._lines: dict[Line, Placed] = {}

    def _has_sides(self) -> bool:
        return len(self.node.cells) + len(self.node.cells[0]) > 2

    def steps(self) -> Iterator[Draft]:
        """Return all the sewing of the section."""
        yield from self._sew_lines()
        parts: list[Work] = []
        for row in self.rows:
            before = self.rows[row.number - 2].slope
            if self.sashes and row.slope is Slope.SHRINKS and before in (Slope.GROWS, Slope.MOVES):
                parts.append(self._sash_work(row.number - 1))
            drafts, work = self._unit(row)
            yield from drafts
            parts.append(work)
        yield from self._joined(parts)
        self.names.put(self.node, Placed(self.label, 0))

    # Lines of squares and of sashing

    def _sew_lines(self) -> Iterator[Draft]:
        """Sew every kind of line once, as often as all copies of the section take it."""
        counts: dict[Line, int] = {}
        first: dict[Line, tuple[str, Length, Length]] = {}
        for line, name, width, height in self._all_lines():
            counts[line] = counts.get(line, 0) + self.times
            first.setdefault(line, (name, width, height))
        for line, count in counts.items():
            parts, press = line
            if len(parts) == 1:
                self._lines[line] = parts[0]
                continue
            name, width, height = first[line]
            label = self.names.name(name)
            self._lines[line] = Placed(label, 0)
            made = self.names.product(label, count, width, height)
            yield sewn(parts, Side.RIGHT, self.names, press, made)

    def _all_lines(self) -> Iterator[tuple[Line, str, Length, Length]]:
        for row in self.rows:
            yield (
                self._row_line(row),
                labels.row(self.node.name, row.number),
                self._width(row),
                self.node.side,
            )
        for index, sashes in enumerate(self.sashes):
            name = labels.sashing(self.node.name, index + 1)
            yield self._sash_line(sashes), name, self._width(sashes), self.node.sash

    def _width(self, row: SlantRow | SashRow) -> Length:
        return right_of(self.node, row.last) - left_of(self.node, row.first)

    def _row_line(self, row: SlantRow) -> Line:
        return self._spaced(row.squares, row_sash(self.node)), self._row_press(row)

    def _sash_line(self, sashes: SashRow) -> Line:
        strips = (horizontal_sash(self.node),) * (sashes.last - sashes.first + 1)
        return self._spaced(strips, cornerstone(self.node)), self._press(Side.RIGHT)

    def _spaced(self, children: tuple[Child, ...], between: Child) -> tuple[Placed, ...]:
        """Return children as they are laid, with another between them and at both ends where there is sashing."""
        laid = tuple(self.names.placed(child) for child in children)
        if not self.node.sash:
            return laid
        one = self.names.placed(between)
        return (one, *(part for each in laid for part in (each, one)))

    def _row_press(self, row: SlantRow) -> Press:
        return self._press(Side.LEFT if row.number % 2 == 0 else Side.RIGHT)

    def _press(self, side: Side) -> Press:
        if self.names.design.making.pressing is Pressing.OPEN:
            return None
        return Towards.SASHING if self.node.sash else side

    # Rows with the sashing beside them and triangles at their ends

    def _unit(self, row: SlantRow) -> tuple[list[Draft], Work]:
        """Return how a row is made ready to be joined to the others."""
        drafts: list[Draft] = []
        work = self._row_work(row)
        if self.sashes:
            work = self._with_sashing(row, work, drafts)
        return drafts, self._with_triangles(row, work, drafts)

    def _row_work(self, row: SlantRow) -> Work:
        raw, lying = self.names.raw, self._lines[self._row_line(row)]
        left = left_of(self.node, row.first) - self.seam
        return Work(lying.label, left, raw(self._width(row)), raw(self.node.side), lying.turn)

    def _sash_work(self, index: int) -> Work:
        sashes, raw = self.sashes[index], self.names.raw
        label, left = self._lines[self._sash_line(sashes)].label, left_of(self.node, sashes.first) - self.seam
        return Work(label, left, raw(self._width(sashes)), raw(self.node.sash))

    def _with_sashing(self, row: SlantRow, work: Work, drafts: list[Draft]) -> Work:
        above, below = self._sash_work(row.number - 1), self._sash_work(row.number)
        parts = {
            Slope.GROWS: [above, work],
            Slope.MOVES: [above, work],
            Slope.SHRINKS: [work, below],
            Slope.LONGEST: [above, work, below],
        }[row.slope]
        return self._join(parts, self.names.name(labels.sashed_row(self.node.name, row.number)), drafts)

    def _join(self, parts: list[Work], label: str, drafts: list[Draft]) -> Work:
        """Join works one below another, each where it lies on the lattice."""
        left = min(part.left + self.seam * part.points[0] for part in parts)
        right = max(part.right - self.seam * part.points[1] for part in parts)
        height = sum((part.height for part in parts), Length(0)) - 2 * self.seam * (len(parts) - 1)
        made = Product(label, self.times, right - left, height)
        placed = tuple(Placed(part.label, part.turn) for part in parts)
        press = self._press(Side.BOTTOM)
        if all((part.left, part.right, any(part.points)) == (left, right, False) for part in parts):
            drafts.append(sewn(placed, Side.BOTTOM, self.names, press, made))
        else:
            offsets = tuple(part.left - parts[0].left for part in parts)
            action = JoinRows(placed, offsets, self.seam, press)
            drafts.append(draft(Chapter.ASSEMBLY, action, piles(placed, self.times), (made,)))
        return Work(label, left, right - left, height)

    def _with_triangles(self, row: SlantRow, work: Work, drafts: list[Draft]) -> Work:
        level = Side.TOP if row.slope in (Slope.SHRINKS, Slope.LONGEST) else Side.BOTTOM
        ends = tuple(
            self._end(side, row, level) if has else None
            for side, has in zip((Side.LEFT, Side.RIGHT), self._ends(row), strict=True)
        )
        count = sum(end is not None for end in ends)
        if not count:
            return work
        reach = self.leg - 2 * self.seam
        begins = work.left - (reach if ends[0] else 0)
        width = work.width + count * reach
        label = self.names.name(labels.ended_row(self.node.name, row.number))
        used = (Pile(work.label, self.times), Pile(self.triangle, count * self.times))
        action = AddTriangles(ends[0], ends[1], self.seam, self._row_press(row), work.turn)
        made = Product(label, self.times, width, work.height)
        drafts.append(draft(Chapter.ASSEMBLY, action, used, (made,)))
        points = (ends[0] is not None, ends[1] is not None)
        return Work(label, begins, width, work.height, points=points)

    def _ends(self, row: SlantRow) -> tuple[bool, bool]:
        """Tell at which ends triangles can be sewn on: a sashed row that moves has one that must be set in later."""
        if row.slope is Slope.MOVES and self.node.sash:
            return (False, True) if self._moves_right() else (True, False)
        return row.left, row.right

    def _moves_right(self) -> bool:
        return len(self.node.cells) > len(self.node.cells[0])

    def _end(self, side: Side, row: SlantRow, level: Side) -> EndTriangle:
        """Return a triangle at an end of a row: its right angle lies inwards, its long edge along the section's.

        Where rows move without sashing, one end is level with the top: that at which the rows below have moved away.
        """
        if row.slope is Slope.MOVES and (side is Side.LEFT) == self._moves_right():
            level = Side.TOP
        turns = {
            (Side.LEFT, Side.BOTTOM): 2,
            (Side.LEFT, Side.TOP): 1,
            (Side.RIGHT, Side.BOTTOM): 3,
            (Side.RIGHT, Side.TOP): 0,
        }
        return EndTriangle(self.triangle, turns[side, level], level)

    # Joining, corners, squaring up

    def _joined(self, parts: list[Work]) -> Iterator[Draft]:
        drafts: list[Draft] = []
        work = parts[0]
        if len(parts) > 1:
            work = self._join(parts, self.names.name(labels.joined_rows(self.node.name)), drafts)
        work = self._set_in(work, drafts)
        yield from drafts
        yield from self._cornered(work)

    def _set_in(self, work: Work, drafts: list[Draft]) -> Work:
        """Set the triangles into the inner corners that rows leave which move: their right angle is at the top."""
        moving = [row for row in self.rows if row.slope is Slope.MOVES]
        if not moving or not self.node.sash:
            return work
        turn = 1 if self._moves_right() else 0
        top = self._row_top(self.rows[0]) - self.node.sash
        places = []
        for row in moving:
            if turn == 1:
                x = left_of(self.node, row.first) + self.seam - self.leg
            else:
                x = right_of(self.node, row.last) - self.seam
            places.append(SetInPlace(turn, x - work.left, self._row_top(row) - top))
        left, right = work.left, work.right
        for place in places:  # a seam allowance of the upper point goes
            if turn == 1:
                left = min(left, work.left + place.x + self.seam)
            else:
                right = max(right, work.left + place.x + self.leg - self.seam)
        label = self.names.name(labels.set_in(self.node.name))
        made = Product(label, self.times, right - left, work.height)
        used = (Pile(work.label, self.times), Pile(self.triangle, len(places) * self.times))
        drafts.append(draft(Chapter.ASSEMBLY, SetIn(tuple(places), self.seam), used, (made,)))
        return Work(label, left, right - left, work.height)

    def _row_top(self, row: SlantRow) -> Length:
        """Return where the squares of a row begin, from top to bottom."""
        return (row.number - 1) * pitch(self.node)

    def _cornered(self, work: Work) -> Iterator[Draft]:
        rows, columns = len(self.node.cells), len(self.node.cells[0])
        across = self.names.raw((rows + columns - 1) * pitch(self.node) + self.node.sash)
        near = (columns - Fraction(1, 2)) * pitch(self.node) + self.node.sash / 2 + self.seam
        far = (rows - Fraction(1, 2)) * pitch(self.node) + self.node.sash / 2 + self.seam
        corners = (
            CornerPlace(Side.TOP, near),
            CornerPlace(Side.BOTTOM, far),
            CornerPlace(Side.LEFT, near),
            CornerPlace(Side.RIGHT, far),
        )
        label = self.names.name(labels.cornered(self.node.name))
        size = across + 2 * (self.node.corner_square * ROOT_TWO / 2 - 2 * self.seam)
        level = left_of(self.node, 1) - self.seam - work.left
        used = (Pile(work.label, self.times), Pile(self.corner, 4 * self.times))
        action = AddCorners(corners, level, across, self.seam, work.turn)
        yield draft(Chapter.ASSEMBLY, action, used, (Product(label, self.times, size, size),))
        made = self.names.product(self.label, self.times, self.node.width, self.node.height)
        square = SquareUp(self.seam + self.node.float)
        yield draft(Chapter.ASSEMBLY, square, (Pile(label, self.times),), (made,))
