"""The whole top with its sections named, and a section by itself, as sewn."""

from __future__ import annotations

from collections.abc import Iterator

from quarterturn.geometry import Motion, Path, Region, polygon, shift
from quarterturn.pieces import Purpose
from quarterturn.proof import Pattern
from quarterturn.publish.figures.frames import Drawing
from quarterturn.publish.figures.inks import (
    ACCENT,
    measured,
)
from quarterturn.publish.figures.nodes import held_at, name_plate, names_in, node_marks, node_symbols
from quarterturn.publish.sheet import Area, Ink, Mark, Sheet
from quarterturn.publish.wording import length, node_said, section_name
from quarterturn.setting import Child, ClothUse, Node, PlainCloth

OUTLINED = Ink(stroke=ACCENT, width=0.45)
LARGEST, LONGEST = 34.0, 64.0
"""Millimetres of a section drawn by itself, and of one that is long and narrow."""


def layout_figure(pattern: Pattern, width: float, height: float) -> Sheet:
    """Return the whole top, each section outlined and named with its turn, those that others hold left out."""
    top = pattern.setting.top
    factor = min((width - 1) / float(top.width), (height - 1) / float(top.height))
    marks = list(node_marks(pattern, top, factor))
    named: list[Mark] = []
    for child, motion in _sections(pattern.setting.centre, _centre_at(pattern)):
        outline = _outline(child.node, motion, factor)
        marks.append(Area(Region((outline,)), OUTLINED))
        named += name_plate(f"{section_name(child.node)}{child.turn}", outline)
    for node, motion in _plain(pattern.setting.centre, _centre_at(pattern)):
        if label := _piece_label(pattern, node):
            named += name_plate(label, _outline(node, motion, factor))
    for child, motion in _border_sections(top):
        outline = _outline(child.node, motion, factor)
        marks.append(Area(Region((outline,)), OUTLINED))
        named += name_plate(f"{section_name(child.node)}{child.turn}", outline)
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


def _plain(node: Node, at: Motion) -> Iterator[tuple[PlainCloth, Motion]]:
    """Return the plain pieces that stand in the stead of a section, or beside sections."""
    for child, motion in held_at(node):
        if isinstance(child.node, PlainCloth) and child.node.use in (ClothUse.SQUARE, ClothUse.STRIP):
            yield child.node, motion.then(at)


def _piece_label(pattern: Pattern, node: PlainCloth) -> str:
    """Return the label of the piece that is cut for a plain piece of cloth; nothing where its size is another."""
    seams = 2 * pattern.design.making.seam
    sides = sorted((node.width + seams, node.height + seams))
    purpose = Purpose.SQUARE if node.use is ClothUse.SQUARE else Purpose.STRIP
    mine = (p for p in pattern.bill.pieces if p.fabric == node.fabric and p.purpose is purpose)
    return next((piece.label for piece in mine if sorted((piece.length, piece.width)) == sides), "")


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
