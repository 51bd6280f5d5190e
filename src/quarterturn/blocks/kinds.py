"""Sort the pieces of a master into kinds of unit: the same cloth, turned, is one kind; its mirror image another."""

from __future__ import annotations

import cmath
import itertools
from collections.abc import Sequence
from dataclasses import dataclass, replace
from fractions import Fraction

from quarterturn.blocks.apart import Layers, Piece, in_order, kept_within, moved
from quarterturn.blocks.model import Layer, Part, Unit
from quarterturn.design import QUARTERS
from quarterturn.geometry import (
    EPSILON,
    STAY,
    Motion,
    Path,
    Point,
    Region,
    as_polygon,
    congruence,
    path_bounds,
    quarter_turns,
    rectangle,
    region_bounds,
    same_outline,
    same_region,
    shift,
)
from quarterturn.measure import Length

_COARSE = 1e-3
"""Layers that share less than this, in square inches, do not overlap."""


@dataclass(frozen=True, slots=True)
class Sorted:
    """The kinds of unit; and for each piece, in the order of cutting, its kind and its way into that unit's frame."""

    units: tuple[Unit, ...]
    parts: tuple[Part, ...]


def sort_into_kinds(pieces: Sequence[Piece], seam: Length, *, apart: bool = False) -> Sorted:
    """Find which pieces are the same cloth, turned. The first of a kind, in the order of names, names it.

    Where pieces are kept apart each is a kind of its own all the same, and lies as it lies in the master. Here, and
    nowhere else, the frame of a unit is decided: see `blocks.model`.
    """
    firsts: list[Piece] = []
    found: dict[int, tuple[int, Motion]] = {}
    for index in in_order([piece.name for piece in pieces]):
        piece = pieces[index]
        laid = next(((k, m) for k, first in enumerate(firsts) if (m := laying(piece, first))), None)
        if laid is None:
            laid = len(firsts), STAY
            firsts.append(piece)
        found[index] = laid
    frames = [_frame(first, turned=len(firsts) == 1 and len(pieces) > 1) for first in firsts]
    words = [first.name if len(firsts) > 1 else "" for first in firsts]
    units = [
        unit_of(*each, seam, word) for each, word in zip(zip(firsts, frames, strict=True), words, strict=True)
    ]
    parts = [
        Part(kind, way, pieces[k].name, pieces[k].outline, words[kind], turn_of(way))
        for k, (kind, motion) in sorted(found.items())
        for way in (motion.then(frames[kind]),)
    ]
    if apart:
        return _apart(pieces, parts, seam)
    return Sorted(with_mirror_images(units, firsts), tuple(parts))


def _apart(pieces: Sequence[Piece], parts: Sequence[Part], seam: Length) -> Sorted:
    """Return each piece as a kind of its own; words and turns tell what it would have been."""
    order = in_order([piece.name for piece in pieces])
    frames = [_frame(piece, turned=False) for piece in pieces]
    units = [unit_of(pieces[k], frames[k], seam, pieces[k].name) for k in order]
    kept = (replace(part, unit=order.index(k), motion=frames[k]) for k, part in enumerate(parts))
    return Sorted(with_mirror_images(units, [pieces[k] for k in order]), tuple(kept))


def turn_of(motion: Motion) -> int:
    """Return by how many quarters clockwise a kind is turned where it lies as a piece that this brings into its frame.

    0 where that is no quarter turn, as it may be among slanting pieces, which no map names.
    """
    back = motion.inverse().factor
    ways = (1 + 0j, 1j, -1 + 0j, -1j)
    return next((turn for turn, way in enumerate(ways) if abs(back - way) < EPSILON), 0)


def with_mirror_images(units: Sequence[Unit], firsts: Sequence[Piece]) -> tuple[Unit, ...]:
    """Say of each kind which kind is its mirror image; `firsts` are pieces of these kinds."""
    return tuple(
        replace(
            unit,
            mirror=next((k for k, other in enumerate(firsts) if laying(first, other, mirrored=True)), None),
        )
        for unit, first in zip(units, firsts, strict=True)
    )


def laying(piece: Piece, kind: Piece, *, mirrored: bool = False) -> Motion | None:
    """Return the motion that lays a piece on another, before and after trimming, layer on layer, if there is one."""
    one, other = in_runs(piece.trimmed), in_runs(kind.trimmed)
    if [part for part, _ in one] != [part for part, _ in other]:
        return None
    for motion in congruence(piece.cut_outline, kind.cut_outline, mirrored=mirrored):
        fits = same_outline(motion.path(piece.outline), kind.outline)
        if fits and all(same_region(motion.region(a), b) for (_, a), (_, b) in zip(one, other, strict=True)):
            return motion
    return None


def in_runs(layers: Layers) -> list[tuple[str, Region]]:
    """Return the layers in an order that does not depend on which of two that do not overlap was fused first.

    Of the layers that lie on none that is left, the first by name comes next. Those of one part that come together
    are one region.
    """
    left, laid = list(layers[1:]), [layers[0]]
    while left:
        free = [k for k, layer in enumerate(left) if not any(_overlap(below, layer) for below in left[:k])]
        laid.append(left.pop(min(free, key=lambda k: left[k].part)))
    runs = itertools.groupby(laid, key=lambda layer: layer.part)
    return [(part, Region(tuple(p for layer in run for p in layer.region.paths))) for part, run in runs]


def _overlap(below: Layer, above: Layer) -> bool:
    a, b = region_bounds(below.region), region_bounds(above.region)
    if a.right <= b.left or b.right <= a.left or a.bottom <= b.top or b.bottom <= a.top:
        return False
    common = as_polygon(below.region, _COARSE).intersection(as_polygon(above.region, _COARSE))
    return bool(common.area > _COARSE)


def _frame(first: Piece, *, turned: bool) -> Motion:
    """Return the motion into a unit's frame: turned so that the master's middle is top left, or as the piece lies.

    It is turned only where a master cut both ways gives one kind.
    """
    turns = 0
    if turned and first.name in QUARTERS:
        turns = round(cmath.phase(_middle(first.outline) / (1 + 1j)) / (cmath.pi / 2))
    turn = quarter_turns(-turns)
    box = path_bounds(turn.path(first.sewn_outline))
    return turn.then(shift(-complex(float(as_length(box.left)), float(as_length(box.top)))))


def _middle(path: Path) -> Point:
    corners = path.corners()
    return sum(corners, 0j) / len(corners)


def unit_of(piece: Piece, frame: Motion, seam: Length, quarter: str) -> Unit:
    """Return the kind of unit that a piece is, as it lies when moved into its frame."""
    box = path_bounds(frame.path(piece.sewn_outline))
    width, height = as_length(box.width), as_length(box.height)
    outline, cut_outline = (_exact(frame.path(path)) for path in (piece.sewn_outline, piece.cut_outline))
    trimmed = kept_within(moved(piece.raw, frame), cut_outline)
    return Unit(
        width=width,
        height=height,
        seam=seam,
        outline=outline,
        cut_outline=cut_outline,
        cut_layers=trimmed,
        sewn_layers=kept_within(trimmed, outline),
        quarter=quarter,
    )


def _exact(path: Path) -> Path:
    """Return an upright rectangle from its top left corner, its sides to the last digit; any other path as it is."""
    box = path_bounds(path)
    sides = (float(as_length(side)) for side in (box.left, box.top, box.right, box.bottom))
    upright = rectangle(*sides)
    return upright if same_outline(path, upright) else path


def as_length(value: float) -> Length:
    """Return a measure of an outline as a length: a size that was given exactly comes back exactly."""
    return Fraction(value).limit_denominator(10**9)
