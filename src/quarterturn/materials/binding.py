"""Binding: how much is needed, and where it comes from, straight or on the bias. Its width is in `design.edging`."""

from __future__ import annotations

import enum
import math
from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from quarterturn.materials.runs import strips_to_join
from quarterturn.measure import Length, Units, buy_up, cut_step, round_up


class Way(enum.Enum):
    """How a binding lies on the cloth it is cut from."""

    STRAIGHT = "straight"
    BIAS = "bias"


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

    way: Way
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
    """Return what a square gives as a continuous strip on the bias: (side − seam)² / strip.

    Two seams are sewn, one after the other, each of a side's length; of the square's area that leaves about what a
    square smaller by one allowance has (a published sum takes 21¾² for 22", at ¼" seams). Without seams it is the
    plain law of areas, side² / strip.
    """
    return (side - seam) ** 2 / strip


def square_side(need: Length, strip: Length) -> float:
    """Return the side of the square that has the area of a strip: √(need · strip), without a seam."""
    return math.sqrt(need * strip)


def bias_binding(
    need: Length, strip: Length, seam: Length, units: Units, margin: Length = Fraction(0)
) -> BiasBinding:
    """Return the smallest square, on the ruler, whose strip is long enough when its seams are lost.

    `margin` is added to the side: sources have none, 2" and 3".
    """
    step = cut_step(units)
    side = round_up(square_side(need, strip) + float(seam + margin), step)
    while bias_yield(side - margin, strip, seam) < need:
        side += step
    return BiasBinding(side, bias_yield(side, strip, seam))


def binding_ways(
    need: Length, strip: Length, usable: Length, seam: Length, units: Units
) -> tuple[BindingWay, ...]:
    """Return the ways to get a binding, the shorter cut first; a square must lie within the usable width."""
    return tuple(sorted(_ways(need, strip, usable, seam, units), key=lambda way: way.cut))


def _ways(need: Length, strip: Length, usable: Length, seam: Length, units: Units) -> Iterator[BindingWay]:
    straight = straight_binding(need, strip, usable, min(strip, usable / 2))
    yield BindingWay(Way.STRAIGHT, straight.cut, buy_up(straight.cut, units), straight.length)
    bias = bias_binding(need, strip, seam, units)
    if bias.side <= usable:
        yield BindingWay(Way.BIAS, bias.side, buy_up(bias.side, units), bias.length)
