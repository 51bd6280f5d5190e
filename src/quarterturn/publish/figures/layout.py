"""The whole top with its sections named; a section as sewn; a grid of parts pulled apart."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from quarterturn.design.colour import text_colour_on
from quarterturn.geometry import Motion, Path, Region, polygon, region_bounds, shift
from quarterturn.proof import Pattern
from quarterturn.publish.figures.frames import Drawing
from quarterturn.publish.figures.inks import (
    ACCENT,
    DARK,
    LABEL,
    QUIET,
    SMALL,
    SMALLEST,
    arrow,
    caption,
    measured,
)
from quarterturn.publish.figures.lines import pressing
from quarterturn.publish.figures.nodes import held_at, names_in, node_marks, node_symbols
from quarterturn.publish.sheet import Area, Ink, Mark, Sheet, Use
from quarterturn.publish.wording import length, node_said, section_name
from quarterturn.setting import Child, Grid, Node, OneUnit, PlainCloth, Side, is_sashing, turned_in_place
from quarterturn.steps import Press, Towards

OUTLINED = Ink(stroke=ACCENT, width=0.45)
PLATE = Ink(fill="#ffffff", stroke=ACCENT, width=0.2)
SPREAD = 0.11
"""Between the rows of a grid that is pulled apart, as a share of the higher of its rows."""
MOST_SPREAD = 4.0
LARGEST, LONGEST = 34.0, 64.0
"""Millimetres of a section drawn by itself, and of one that is long and narrow."""
LARGEST_PART, TALLEST, NARROW = 22.0, 110.0, 84.0


def layout_figure(pattern: Pattern, width: float, height: float) -> Sheet:
    """Return the whole top, each section outlined and named with its turn, those that others hold left out."""
    top = pattern.setting.top
    factor = min((width - 1) / float(top.width), (height - 1) / float(top.height))
    marks = list(node_marks(pattern, top, factor))
    named: list[Mark] = []
    for child, motion in _sections(pattern.setting.centre, _centre_at(pattern)):
        outline = _outline(child.node, motion, factor)
        marks.append(Area(Region((outline,)), OUTLINED))
        named += _name_plate(f"{section_name(child.node)}{child.turn}", outline)
    for child, motion in _border_sections(top):
        outline = _outline(child.node, motion, factor)
        marks.append(Area(Region((outline,)), OUTLINED))
        named += _name_plate(f"{section_name(child.node)}{child.turn}", outline)
    symbols = node_symbols(pattern, names_in((top,)), factor)
    drawing = Drawing(float(top.width) * factor, float(top.height) * factor, (*marks, *named), symbols)
    said = node_said(pattern.setting.centre)
    return drawing.sheet("Layout", f"The whole top with its sections named; the quilt centre is set {said}.")


def _centre_at(pattern: Pattern) -> Motion:
    centre, top = pattern.setting.centre, pattern.setting.top
    return shift(complex(float(top.width - centre.width), float(top.height - centre.height)) / 2)


def _sections(node: Node, at: Motion) -> Iterator[tuple[Child, Motion]]:
    for child, motion in held_at(node):
        if section_name(child.node):
            yield child, motion.then(at)


def _border_sections(top: Node) -> Iterator[tuple[Child, Motion]]:
    """Return the sections of which borders of the quilt are pieced."""
    yield from (
        (child, motion)
        for child, motion in held_at(top)
        if section_name(child.node) and hasattr(top, "frames")
    )


def _outline(node: Node, motion: Motion, factor: float) -> Path:
    width, height = float(node.width), float(node.height)
    corners = (0j, complex(width, 0), complex(width, height), complex(0, height))
    return polygon(tuple(motion(corner) * factor for corner in corners))


def _name_plate(text: str, outline: Path) -> tuple[Mark, ...]:
    """Return a name on a white plate in the middle of an outline, as large as it has room; nothing where none is."""
    bounds = region_bounds(Region((outline,)))
    across, down = bounds.right - bounds.left, bounds.bottom - bounds.top
    middle = complex(bounds.left + bounds.right, bounds.top + bounds.bottom) / 2
    size = min(LABEL, across * 0.9 / (0.6 * len(text) + 0.6), down * 0.7)
    if size < SMALLEST:
        return ()
    half = complex(0.31 * size * len(text) + 0.7, size * 0.75)
    plate = polygon((middle - half, middle + half.conjugate(), middle + half, middle - half.conjugate()))
    return Area(Region((plate,)), PLATE), caption(middle, text, size, colour=DARK)


def section_figure(pattern: Pattern, node: Node) -> Sheet:
    """Return a section as sewn, with its finished width and height."""
    long, short = float(max(node.width, node.height)), float(min(node.width, node.height))
    factor = (LARGEST if long < 2 * short else LONGEST) / long
    width, height = float(node.width) * factor, float(node.height) * factor
    left, top = 1.0, 5.0
    marks = [
        *node_marks(pattern, node, factor, complex(left, top)),
        *measured(complex(left, top), complex(left + width, top), length(pattern.design, node.width), -1.6j),
        *measured(
            complex(left + width, top),
            complex(left + width, top + height),
            length(pattern.design, node.height),
            1.6,
        ),
    ]
    symbols = node_symbols(pattern, names_in((node,)), factor)
    name = section_name(node) or "the quilt centre"
    alt = f"{name} as sewn, finished; {node_said(node)}."
    return Drawing(left + width + 13, top + height + 1, tuple(marks), symbols).sheet(name, alt)


def grid_figure(
    pattern: Pattern,
    node: Grid,
    labels: Sequence[Sequence[str]],
    presses: Sequence[Press],
    width: float,
    height: float,
) -> Sheet:
    """Return the parts of a grid pulled apart: rows from the top down, each numbered, with the way of pressing.

    `labels` names each part of each row; `presses` has the way of pressing of each row.
    """
    rows = node.rows
    many = len(rows) > 1
    left, right = (7.0 if many else 1.0), 8.0
    gaps_across = max(len(row) for row in rows) - 1
    smallest = min(min(child.width, child.height) for row in rows for child in row if not is_sashing(child))
    factor = min(
        (width - left - right - 2 - 1.2 * gaps_across) / float(node.width),
        (min(height, TALLEST if len(rows[0]) > 1 else NARROW) - 2) / float(node.height) / (1 + SPREAD),
        LARGEST_PART / float(smallest),
    )
    apart = min(MOST_SPREAD, SPREAD * float(max(row[0].height for row in rows)) * factor)
    between = min(1.2, apart / 2)
    marks: list[Mark] = []
    names: list[Mark] = []
    top = 1.0
    for index, row in enumerate(rows):
        x, tall = left, float(row[0].height) * factor
        for child, label in zip(row, labels[index], strict=True):
            here = complex(x, top)
            marks += _child_marks(pattern, child, factor, here)
            if len(row) == 1 and many and isinstance(child.node, OneUnit):
                beside = here + complex(float(child.width) * factor + 1.4, tall / 2)
                names.append(caption(beside, label, SMALL, "start"))
            else:
                names += _part_name(pattern, child, label, factor, here)
            x += float(child.width) * factor + between
        if many:
            names.append(
                caption(
                    complex(left - 1.8, top + tall / 2), str(index + 1), SMALL, "end", bold=True, colour=QUIET
                )
            )
        if len(row) > 1 and tall > 1.0:
            names += _press_mark(presses[index], complex(x + 3.0, top + tall / 2), min(2.6, tall / 2 + 0.6))
        top += tall + apart
    symbols = node_symbols(pattern, names_in(child.node for row in rows for child in row), factor)
    wide = left + float(node.width) * factor + between * gaps_across + right
    alt = f"{len(rows)} rows pulled apart; from the top: " + "; ".join(" ".join(row) for row in labels) + "."
    return Drawing(wide, top - apart + 1, (*marks, *names), symbols).sheet(
        section_name(node) or "Assembly", alt
    )


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
        return _small_plate(label, outline)
    return _name_plate(label, outline)


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
        for mark in _name_plate(text, outline)
    )


def downwards(x: float, height: float) -> tuple[Mark, ...]:
    """Return the arrow that shows seams between rows pressed down."""
    return arrow(complex(x, height * 0.25), complex(x, height * 0.75), ACCENT, 0.5, 2.4)
