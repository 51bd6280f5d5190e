"""Draft a recipe: cut the master's exact outlines apart, and sort what comes out into kinds of unit."""

from __future__ import annotations

import cmath
import itertools
from dataclasses import dataclass

from quarterturn.blocks.facts import curve_facts
from quarterturn.blocks.model import GROUND, SHAPE, Blocks, Layer, Master, Part, Unit
from quarterturn.blocks.shapes import fused_shape
from quarterturn.design import QUARTERS, Design, Making, Recipe
from quarterturn.geometry import (
    STAY,
    Motion,
    Point,
    Region,
    StraightLine,
    congruence,
    cut,
    keep_left,
    rectangle,
    same_region,
    shift,
)
from quarterturn.measure import Length

Layers = tuple[Layer, ...]

BOTH_WAYS = (StraightLine(0j, 1j), StraightLine(0j, -1 + 0j))
"""The two cuts through the middle: down the square first, then across."""


def draft_blocks(design: Design) -> Blocks:
    """Draft every recipe of a design."""
    return Blocks(tuple(draft_master(recipe, design.making) for recipe in design.recipes))


def draft_master(recipe: Recipe, making: Making) -> Master:
    """Draft one recipe: its shape, its cuts, and the kinds of unit that the cuts leave."""
    shape = fused_shape(recipe, making, BOTH_WAYS)
    half = float(recipe.start / 2)
    whole = (
        Layer(GROUND, Region((rectangle(-half, -half, half, half),))),
        Layer(SHAPE, Region((shape.traced,)), 0),
    )
    kinds, parts = _sort_into_kinds(_cut_apart(whole, BOTH_WAYS), making.seam, recipe.finished)
    units = tuple(_unit(kind, recipe.finished, making.seam) for kind in kinds)
    return Master(
        recipe=recipe.name,
        width=recipe.width,
        height=recipe.height,
        trim_width=recipe.trim_width,
        trim_height=recipe.trim_height,
        seam=making.seam,
        shapes=(shape,),
        cuts=BOTH_WAYS,
        units=units,
        parts=parts,
        facts=curve_facts(units, parts, shape, BOTH_WAYS),
    )


def _cut_apart(whole: Layers, cuts: tuple[StraightLine, ...]) -> list[Layers]:
    pieces = [whole]
    for line in cuts:
        pieces = [half for piece in pieces for half in _halves(piece, line)]
    return pieces


def _halves(piece: Layers, line: StraightLine) -> list[Layers]:
    both: tuple[list[Layer], list[Layer]] = ([], [])
    for layer in piece:
        for side, region in zip(both, cut(layer.region, line), strict=True):
            if not region.is_empty():
                side.append(Layer(layer.part, region, layer.shape))
    return [tuple(side) for side in both if side]


@dataclass(frozen=True, slots=True)
class _Kind:
    """Equal pieces of a master: the layers as they lie in the unit's frame, and the quarter if it has a name."""

    layers: Layers
    quarter: str


def _sort_into_kinds(
    pieces: list[Layers], seam: Length, side: Length
) -> tuple[list[_Kind], tuple[Part, ...]]:
    """Find which pieces are the same cloth, turned. The first of a kind, clockwise from the top left, names it.

    Here, and nowhere else, the frame of a unit is decided: see `blocks.model`.
    """
    firsts: list[Layers] = []
    found: dict[int, tuple[int, Motion]] = {}
    for index in sorted(range(len(pieces)), key=lambda k: QUARTERS.index(_quarter(pieces[k]))):
        piece = pieces[index]
        laid = next(((k, m) for k, kind in enumerate(firsts) if (m := _laying(piece, kind))), None)
        if laid is None:
            laid = len(firsts), STAY
            firsts.append(piece)
        found[index] = laid
    several = len(firsts) > 1
    frames = [_as_it_lies(first, seam, side) if several else _into_frame(first, seam) for first in firsts]
    kinds = [
        _Kind(_moved(first, frame), _quarter(first) if several else "")
        for first, frame in zip(firsts, frames, strict=True)
    ]
    parts = (
        Part(kind, motion.then(frames[kind]), _quarter(pieces[k]), pieces[k][0].region.paths[0])
        for k, (kind, motion) in sorted(found.items())
    )
    return kinds, tuple(parts)


def _middle(piece: Layers) -> Point:
    corners = piece[0].region.paths[0].corners()
    return sum(corners, 0j) / len(corners)


def _quarter(piece: Layers) -> str:
    """Return the quarter of the master in which a piece lies."""
    middle = _middle(piece)
    return f"{'b' if middle.imag > 0 else 't'}{'r' if middle.real > 0 else 'l'}"


def _laying(piece: Layers, kind: Layers) -> Motion | None:
    """Return the turn and shift that lay a piece on a kind, layer on layer, if there is one."""
    if [layer.part for layer in piece] != [layer.part for layer in kind]:
        return None
    ways = congruence(piece[0].region.paths[0], kind[0].region.paths[0])
    return next((motion for motion in ways if _covers(piece, kind, motion)), None)


def _covers(piece: Layers, kind: Layers, motion: Motion) -> bool:
    return all(same_region(motion.region(a.region), b.region) for a, b in zip(piece, kind, strict=True))


def _into_frame(piece: Layers, seam: Length) -> Motion:
    """Return the motion that brings the master's middle to the cut corner at the top left of the unit."""
    turns = round(cmath.phase(_middle(piece) / (1 + 1j)) / (cmath.pi / 2))
    turned = Motion((1 + 0j, -1j, -1 + 0j, 1j)[turns % 4]) if turns else STAY
    return turned.then(shift(complex(-float(seam), -float(seam))))


def _as_it_lies(piece: Layers, seam: Length, side: Length) -> Motion:
    """Return the shift that brings the master's middle to its cut corner of the unit, which is not turned."""
    middle, near, far = _middle(piece), -float(seam), float(side + seam)
    return shift(complex(near if middle.real > 0 else far, near if middle.imag > 0 else far))


def _moved(piece: Layers, motion: Motion) -> Layers:
    return tuple(Layer(layer.part, motion.region(layer.region), layer.shape) for layer in piece)


def _unit(kind: _Kind, side: Length, seam: Length) -> Unit:
    trimmed = _kept_within(kind.layers, -float(seam), float(side + seam))
    near, far = -float(seam), float(side + seam)
    return Unit(
        width=side,
        height=side,
        seam=seam,
        outline=rectangle(0.0, 0.0, float(side), float(side)),
        cut_outline=rectangle(near, near, far, far),
        cut_layers=trimmed,
        sewn_layers=_kept_within(trimmed, 0.0, float(side)),
        quarter=kind.quarter,
    )


def _kept_within(layers: Layers, low: float, high: float) -> Layers:
    """Keep what lies in the upright square from `low` to `high` both ways."""
    corners = (complex(low, low), complex(high, low), complex(high, high), complex(low, high))
    lines = [StraightLine(a, (b - a) / abs(b - a)) for a, b in itertools.pairwise((*corners, corners[0]))]
    kept = []
    for layer in layers:
        region = layer.region
        for line in lines:
            region = keep_left(region, line)
        if not region.is_empty():
            kept.append(Layer(layer.part, region, layer.shape))
    return tuple(kept)
