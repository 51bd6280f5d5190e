"""How the outline of a piece is named: as a square, a rectangle or a triangle, with its size."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import combinations

from quarterturn.blocks import Blocks, Unit
from quarterturn.design import Design
from quarterturn.geometry import Path, Region, path_bounds, shared_area, shift
from quarterturn.publish.wording.names import length, listed, rectangle, sized
from quarterturn.publish.wording.places import NEAR
from quarterturn.steps import PlacedMotif

OVERLAP = 1e-4
"""Shapes that share less than this, in square inches, do not overlap."""


def outline_said(design: Design, unit: Unit, count: int = 1) -> str:
    """Return what a unit is as cut or trimmed, with its size: `6½" square`, `triangle with short edges of 6⅞"`."""
    if unit.is_rectangle:
        return sized(design, unit.cut_width, unit.cut_height)
    edges = triangle_edges(unit.cut_outline)
    if not edges:
        box = path_bounds(unit.cut_outline)
        return f"about {rectangle(design, box.width, box.height)} over all"
    word = "triangle" if count == 1 else "triangles"
    shorts = dict.fromkeys(length(design, edge) for edge in edges[:2])
    long = "" if _is_right(edges) else f" and a long edge of {length(design, edges[2])}"
    return f"{word} with short edges of {listed(list(shorts))}{long}"


def triangle_edges(outline: Path) -> tuple[float, float, float] | None:
    """Return the edges of a triangle from the shortest to the longest, in inches; None for another outline."""
    if len(outline.segments) != 3 or not outline.is_straight():
        return None
    one, two, three = sorted(segment.length() for segment in outline.segments)
    return one, two, three


def _is_right(edges: tuple[float, float, float]) -> bool:
    """Tell whether a triangle has a right angle."""
    one, two, three = edges
    return abs(one * one + two * two - three * three) < NEAR


def shapes_overlap(unit: Unit) -> bool:
    """Tell whether one shape lies on another in a unit."""
    shapes = [layer for layer in unit.cut_layers if layer.shape >= 0]
    return _meet([layer.region for layer in shapes])


def motifs_overlap(blocks: Blocks, motifs: Iterable[PlacedMotif]) -> bool:
    """Tell whether one motif lies on another on a panel."""
    return _meet([_laid(blocks, motif) for motif in motifs])


def _laid(blocks: Blocks, motif: PlacedMotif) -> Region:
    """Return what a motif covers in the frame of its panel."""
    shape = next(each for each, _ in blocks.master(motif.recipe).templates if each.name == motif.shape)
    return shift(-path_bounds(shape.traced).centre).then(motif.motion).region(shape.region)


def _meet(regions: Sequence[Region]) -> bool:
    return any(shared_area(a, b) > OVERLAP for a, b in combinations(regions, 2))
