"""Binding: how much is needed, and where it comes from, straight or on the bias. Its width is in `design.edging`."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from quarterturn.design import BindingKind
from quarterturn.materials.runs import strips_to_join
from quarterturn.measure import Length, Units, buy_up
from quarterturn.pieces import bias_length, bias_square


def binding_need(width: Length, height: Length, extra: Length) -> Length:
    """Return the binding for a quilt of a finished size.

    What is added to the perimeter for joins, mitres and the ends is a habit: sources have 8" to 24", most of them 10"
    (a book, *Quilter's Complete Guide*, has 15").
    """
    return 2 * (width + height) + extra


@dataclass(frozen=True, slots=True)
class StraightBinding:
    """So many strips cut across the cloth and joined; together they take `cut` of its length."""

    strips: int
    cut: Length
    length: Length
    """Of the binding when joined."""


@dataclass(frozen=True, slots=True)
class BiasBinding:
    """A square cut on the diagonal, joined to a tube and cut round and round into one strip."""

    side: Length
    """Of the square to cut, on the ruler."""
    length: Length
    """What it gives, the seams of the tube lost."""


@dataclass(frozen=True, slots=True)
class BindingWay:
    """One way to get a binding: straight or on the bias, the length of cloth it takes, and what to buy for it alone."""

    way: BindingKind
    cut: Length
    bought: Length
    length: Length


def straight_binding(need: Length, strip: Length, usable: Length, loss: Length) -> StraightBinding:
    """Return the strips across the cloth for a length of binding; each join takes `loss`.

    The loss is a strip width where strips are joined on the diagonal. It must be less than the usable width.
    """
    strips = strips_to_join(need, usable, loss)
    return StraightBinding(strips, strips * strip, strips * usable - (strips - 1) * loss)


def bias_yield(side: Length, strip: Length, seam: Length) -> Length:
    """Return what a square gives as a continuous strip on the bias by a published sum: (side − seam)² / strip.

    It takes 21¾² for 22", at ¼" seams. Without seams it is the plain law of areas, side² / strip. It is a little more
    than the tube has, of which both seams take both allowances: see `pieces.bias`.
    """
    return (side - seam) ** 2 / strip


def square_side(need: Length, strip: Length) -> float:
    """Return the side of the square that has the area of a strip: √(need · strip), without a seam."""
    return math.sqrt(need * strip)


def bias_binding(need: Length, strip: Length, seam: Length, units: Units) -> BiasBinding:
    """Return the smallest square, on the ruler, whose whole rows are long enough when its seams are lost."""
    side = bias_square(need, strip, seam, units)
    return BiasBinding(side, bias_length(side, side, strip, seam, units))


def binding_ways(
    need: Length, strip: Length, usable: Length, seam: Length, units: Units
) -> tuple[BindingWay, ...]:
    """Return the ways to get a binding, the shorter cut first; a square must lie within the usable width."""
    return tuple(sorted(_ways(need, strip, usable, seam, units), key=lambda way: way.cut))


def _ways(need: Length, strip: Length, usable: Length, seam: Length, units: Units) -> Iterator[BindingWay]:
    straight = straight_binding(need, strip, usable, min(strip, usable / 2))
    yield BindingWay(BindingKind.STRAIGHT, straight.cut, buy_up(straight.cut, units), straight.length)
    bias = bias_binding(need, strip, seam, units)
    if bias.side <= usable:
        yield BindingWay(BindingKind.BIAS, bias.side, buy_up(bias.side, units), bias.length)
