"""Cut a master apart, trim what comes out, and say which piece is which."""

from __future__ import annotations

import cmath
import math
import string
from collections.abc import Sequence
from dataclasses import dataclass

from quarterturn.blocks.model import Layer
from quarterturn.design import HALVES, QUARTERS, TRIANGLES
from quarterturn.geometry import (
    EPSILON,
    Motion,
    Path,
    Point,
    StraightLine,
    cross,
    cut,
    keep_left,
    line_through,
    merged,
    offset_path,
)

Layers = tuple[Layer, ...]


@dataclass(frozen=True, slots=True)
class Piece:
    """What the cuts leave: its layers as cut, and the outlines to which it is trimmed and sewn."""

    name: str
    outline: Path
    """As the cuts leave it."""
    raw: Layers
    trimmed: Layers
    """Its layers inside `cut_outline`."""
    cut_outline: Path
    sewn_outline: Path


def pieces_of(whole: Layers, cuts: Sequence[StraightLine], trimmed: Path, seam: float) -> list[Piece]:
    """Return the pieces in the order in which the cuts leave them: of each cut the part on its left first.

    `trimmed` is the outline to which the whole master would be trimmed. A piece must be wider than its seams.
    """
    raw = [whole]
    for line in cuts:
        raw = [half for piece in raw for half in _halves(piece, line)]
    names = piece_names([_middle(piece) for piece in raw], cuts)
    return [_piece(name, layers, trimmed, seam) for name, layers in zip(names, raw, strict=True)]


def _halves(piece: Layers, line: StraightLine) -> list[Layers]:
    both: tuple[list[Layer], list[Layer]] = ([], [])
    for layer in piece:
        for side, region in zip(both, cut(layer.region, line), strict=True):
            if not region.is_empty():
                side.append(Layer(layer.part, region, layer.shape))
    return [tuple(side) for side in both if side]


def _piece(name: str, layers: Layers, trimmed: Path, seam: float) -> Piece:
    ground = kept_within(layers[:1], trimmed)
    outline = merged(ground[0].region.paths[0])
    return Piece(
        name=name,
        outline=merged(layers[0].region.paths[0]),
        raw=layers,
        trimmed=kept_within(layers, outline),
        cut_outline=outline,
        sewn_outline=offset_path(outline, -seam).paths[0],
    )


def _middle(piece: Layers) -> Point:
    corners = piece[0].region.paths[0].corners()
    return sum(corners, 0j) / len(corners)


def kept_within(layers: Layers, outline: Path) -> Layers:
    """Keep what lies inside a convex outline."""
    lines = [line_through(side.start, side.end) for side in outline.segments]
    kept = []
    for layer in layers:
        region = layer.region
        for line in lines:
            region = keep_left(region, line)
        if not region.is_empty():
            kept.append(Layer(layer.part, region, layer.shape))
    return tuple(kept)


def moved(layers: Layers, motion: Motion) -> Layers:
    """Return layers moved together."""
    return tuple(Layer(layer.part, motion.region(layer.region), layer.shape) for layer in layers)


def piece_names(middles: Sequence[Point], cuts: Sequence[StraightLine]) -> list[str]:
    """Name the pieces by where they lie: see `blocks.model`."""
    if len(middles) == 1:
        return [""]
    if len(middles) == 2:
        return _named_halves(*middles)
    if len(middles) == 4 and len(cuts) == 2:
        return _named_quarters(middles, cuts)
    order = sorted(range(len(middles)), key=lambda k: (round(middles[k].imag, 6), middles[k].real))
    return [f"p{string.ascii_lowercase[order.index(k)]}" for k in range(len(middles))]


def _named_halves(first: Point, second: Point) -> list[str]:
    between = second - first
    left, right, top, bottom = HALVES
    if abs(between.real) > abs(between.imag) - 1e-6:
        return [left, right] if between.real > 0 else [right, left]
    return [top, bottom] if between.imag > 0 else [bottom, top]


def _named_quarters(middles: Sequence[Point], cuts: Sequence[StraightLine]) -> list[str]:
    """Name four pieces round a crossing: by their corners where it is upright, else by their sides."""
    off = [middle - _crossing(*cuts) for middle in middles]
    if all(min(abs(line.direction.real), abs(line.direction.imag)) < EPSILON for line in cuts):
        return [f"{'b' if p.imag > 0 else 't'}{'r' if p.real > 0 else 'l'}" for p in off]
    top = max(off, key=lambda p: round(-p.imag / abs(p), 6))
    clockwise = sorted(off, key=lambda p: round(cmath.phase(p / top) % math.tau, 6) % round(math.tau, 6))
    return [TRIANGLES[clockwise.index(p)] for p in off]


def _crossing(one: StraightLine, other: StraightLine) -> Point:
    """Return the point where two lines cross that are not parallel."""
    return one.at(-other.side(one.through) / cross(other.direction, one.direction))


def in_order(names: Sequence[str]) -> list[int]:
    """Return the places of pieces in the order of their names: clockwise, or from the top down."""
    known = (*QUARTERS, *HALVES, *TRIANGLES)
    return sorted(
        range(len(names)), key=lambda k: (known.index(names[k]) if names[k] in known else 0, names[k])
    )
