"""The parts of a grid pulled apart: its rows from the top down, numbered, with their names and the way of pressing."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from quarterturn.design.colour import text_colour_on
from quarterturn.geometry import Motion, Path, Region, polygon, region_bounds, shift
from quarterturn.proof import Pattern
from quarterturn.publish.figures.cells import lettered, longest_side
from quarterturn.publish.figures.frames import Drawing
from quarterturn.publish.figures.inks import QUIET, SMALL, SMALLEST, caption
from quarterturn.publish.figures.lines import pressing
from quarterturn.publish.figures.nodes import name_plate, names_in, node_marks, node_symbols
from quarterturn.publish.sheet import Area, Ink, Mark, Sheet, Use
from quarterturn.publish.wording import section_name
from quarterturn.setting import Child, Grid, OneUnit, PlainCloth, Side, is_sashing, turned_in_place
from quarterturn.steps import Press, Towards

SPREAD, MOST_SPREAD = 0.11, 4.0
"""Between the rows, as a share of the highest of them, and in millimetres at most."""
LARGEST_PART, TALLEST, NARROW = 22.0, 110.0, 84.0
"""Millimetres of a part, of the whole drawing, and of one with a single column."""
LEGIBLE = 7.5
"""Millimetres of a part on which its name can be read: for that a drawing of many rows may be taller."""
LETTERED, PLATED = 5.0, 12.0
"""Millimetres of a unit from which on its name stands on its cloth, and from which on a plate."""
NUMBERS, ARROWS = 7.0, 8.0
"""Room at the left and at the right."""


@dataclass(frozen=True, slots=True)
class Apart:
    """What is pulled apart: the grid, what its parts are called, how its rows are pressed, and at what scale."""

    pattern: Pattern
    node: Grid
    labels: Sequence[Sequence[str]]
    presses: Sequence[Press]
    factor: float

    @property
    def many(self) -> bool:
        """Tell whether there are rows to be numbered."""
        return len(self.node.rows) > 1

    @property
    def left(self) -> float:
        """Return where the rows begin."""
        return NUMBERS if self.many else 1.0

    @property
    def gap(self) -> float:
        """Return how far rows stand apart."""
        return min(MOST_SPREAD, SPREAD * float(max(row[0].height for row in self.node.rows)) * self.factor)

    @property
    def between(self) -> float:
        """Return how far the parts of a row stand apart."""
        return min(1.2, self.gap / 2)


def grid_figure(
    pattern: Pattern,
    node: Grid,
    labels: Sequence[Sequence[str]],
    presses: Sequence[Press],
    room: tuple[float, float],
) -> Sheet:
    """Return the parts of a grid pulled apart, as large as the room (width and height) allows.

    `labels` names each part of each row; `presses` has the way of pressing of each row.
    """
    apart = Apart(pattern, node, labels, presses, _factor(node, room))
    marks: list[Mark] = []
    names: list[Mark] = []
    top = 1.0
    for index, row in enumerate(node.rows):
        for child, label, here in _row_places(apart, index, top):
            marks += _child_marks(pattern, child, apart.factor, here)
            names += _name(apart, child, label, here, alone=len(row) == 1)
        names += _row_marks(apart, index, top)
        top += float(row[0].height) * apart.factor + apart.gap
    symbols = node_symbols(pattern, names_in(child.node for row in node.rows for child in row), apart.factor)
    wide = apart.left + float(node.width) * apart.factor + apart.between * _gaps(node) + ARROWS
    said = "; ".join(" ".join(row) for row in labels)
    alt = f"{len(node.rows)} rows pulled apart; from the top: {said}."
    drawing = Drawing(wide, top - apart.gap + 1, (*marks, *names), symbols)
    return drawing.sheet(section_name(node) or "Assembly", alt)


def _gaps(node: Grid) -> int:
    return max(len(row) for row in node.rows) - 1


def _factor(node: Grid, room: tuple[float, float]) -> float:
    """Return millimetres to the inch: what the room allows, and no part needlessly large."""
    parts = [child for row in node.rows for child in row if not is_sashing(child)]
    smallest = min(min(child.width, child.height) for child in parts)
    legible = LEGIBLE * float(node.height / smallest) * (1 + SPREAD) + 2
    tallest = min(room[1], max(TALLEST, legible) if _gaps(node) else NARROW)
    return min(
        (room[0] - NUMBERS - ARROWS - 2 - 1.2 * _gaps(node)) / float(node.width),
        (tallest - 2) / float(node.height) / (1 + SPREAD),
        LARGEST_PART / float(smallest),
    )


def _row_places(apart: Apart, index: int, top: float) -> Iterator[tuple[Child, str, complex]]:
    """Return each part of a row with its label and the place of its top left corner."""
    x = apart.left
    for child, label in zip(apart.node.rows[index], apart.labels[index], strict=True):
        yield child, label, complex(x, top)
        x += float(child.width) * apart.factor + apart.between


def _row_marks(apart: Apart, index: int, top: float) -> Iterator[Mark]:
    """Return the number of a row at its left, and its pressing arrow at its right."""
    row = apart.node.rows[index]
    tall = float(row[0].height) * apart.factor
    if apart.many:
        at = complex(apart.left - 1.8, top + tall / 2)
        yield caption(at, str(index + 1), SMALL, "end", bold=True, colour=QUIET)
    if len(row) > 1 and tall > 1.0:
        end = apart.left + float(apart.node.width) * apart.factor + apart.between * len(row)
        yield from _press_mark(
            apart.presses[index], complex(end + 3.0, top + tall / 2), min(2.6, tall / 2 + 0.6)
        )


def _name(apart: Apart, child: Child, label: str, here: complex, *, alone: bool) -> tuple[Mark, ...]:
    """Return the name of a part: on it, or beside a unit that has its row to itself."""
    if alone and apart.many and isinstance(child.node, OneUnit):
        width, height = float(child.width) * apart.factor, float(child.height) * apart.factor
        return (caption(here + complex(width + 1.4, height / 2), label, SMALL, "start"),)
    return _part_name(apart.pattern, child, label, apart.factor, here)


def _press_mark(press: Press, at: complex, reach: float) -> tuple[Mark, ...]:
    """Return arrows for a row whose seams go to one side; towards sashing or strips is said in words."""
    if isinstance(press, Towards):
        return ()
    return pressing(press if press in (Side.LEFT, Side.RIGHT) else None, at, reach)


def _child_marks(pattern: Pattern, child: Child, factor: float, at: complex) -> tuple[Mark, ...]:
    """Return a child as it lies, its top left corner at a place."""
    motion = shift(at)
    turned = _turning(child, factor)
    return tuple(_moved(mark, turned.then(motion)) for mark in node_marks(pattern, child.node, factor))


def _turning(child: Child, factor: float) -> Motion:
    node = child.node
    return turned_in_place(float(node.width) * factor, float(node.height) * factor, child.turn)


def _moved(mark: Mark, motion: Motion) -> Mark:
    if isinstance(mark, Use):
        return Use(mark.symbol, mark.motion.then(motion))
    assert isinstance(mark, Area)
    return Area(motion.region(mark.region), mark.ink)


def _part_name(pattern: Pattern, child: Child, label: str, factor: float, at: complex) -> tuple[Mark, ...]:
    outline = shift(at).path(_lying(child, factor))
    if isinstance(child.node, PlainCloth):
        return _on_cloth(pattern, child, label, outline)
    if isinstance(child.node, OneUnit):
        smallest = float(min(child.width, child.height)) * factor
        if LETTERED < smallest < PLATED:  # a plate would hide what lies below
            cell = factor * max(longest_side(pattern, name) for name in pattern.setting.tally)
            return (lettered(pattern, child.node.name, child.turn, at, cell, max(SMALLEST, smallest * 0.36)),)
        return _small_plate(label, outline)
    return name_plate(label, outline)


def _on_cloth(pattern: Pattern, child: Child, label: str, outline: Path) -> tuple[Mark, ...]:
    """Return a label in the middle of a plain piece, upright, where it has room."""
    assert isinstance(child.node, PlainCloth)
    bounds = region_bounds(Region((outline,)))
    size = min(SMALL, (bounds.right - bounds.left) / (0.7 * len(label)), (bounds.bottom - bounds.top) * 0.75)
    if size < SMALLEST:
        return ()
    middle = complex(bounds.left + bounds.right, bounds.top + bounds.bottom) / 2
    ink = text_colour_on(pattern.design.fabric(child.node.fabric).colour)
    return (caption(middle, label, size, colour=ink),)


def _lying(child: Child, factor: float) -> Path:
    width, height = float(child.width) * factor, float(child.height) * factor
    return polygon((0j, complex(width, 0), complex(width, height), complex(0, height)))


def _small_plate(text: str, outline: Path) -> tuple[Mark, ...]:
    bounds = region_bounds(Region((outline,)))
    if (bounds.right - bounds.left) < 5.0:
        return ()
    return tuple(
        Area(mark.region, Ink(fill="#ffffff")) if isinstance(mark, Area) else mark
        for mark in name_plate(text, outline)
    )
