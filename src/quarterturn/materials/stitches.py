"""How much thread a machine stitch takes, from the way of its needle. An estimate.

In a lockstitch two threads take the same path, one above the cloth and one below, and cross half way through it at
each penetration of the needle: each goes through its whole thickness once for each stitch (half of it down and half
up again), so needle and bobbin take alike, 1 : 1 (ISO 4915 stitches 301 and 304; apparelscience.com). For a straight
stitch this is the textbooks' 2 + 2·T·S inches of both threads for an inch of seam, at S stitches an inch and cloth T
thick (textilecalculations.com and textileblog.com agree; 2.2 for T = 0.01", S = 10).

A stitch here is the way from one penetration to the next, and its length what the cloth is fed on between
them: so a zigzag of length L comes back to the same side of the edge after 2·L. Some machines count a whole zig
and zag as one stitch; they take more thread for the same setting. The rest is our own model, published nowhere:

* zigzag and satin, width W: the path slants, √(W² + L²) for each stitch. Satin is a zigzag with a short length.
* blanket: one stitch L along the edge, one W into the shape and one W back; three penetrations for each L.
* any other: the way of the needle through one repeat, as it is drawn.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from quarterturn.design import EdgeStitch, EdgeStitchKind
from quarterturn.measure import YARD, Length, mm

LAYER = float(mm("0.3"))
"""Inches. One layer of quilting cotton with its share of web, pressed (from memory)."""

WASTE = 0.15
"""Added for ends, tests and bobbin changes: 10–15 % by one trade table, 15–20 % by another (apparelscience.com,
apparel-merchandising.com)."""

BOBBIN: Length = 60 * YARD
"""Thread on a full home-wound bobbin of class 15: 60 to 70 yards of tex 20 to 25 (from memory)."""


@dataclass(frozen=True, slots=True)
class Repeat:
    """One repeat of a stitch: inches it goes on along the edge, the way of the needle, and its penetrations."""

    along: float
    path: float
    penetrations: int


@dataclass(frozen=True, slots=True)
class ThreadUse:
    """Inches of thread, waste included. Both threads are of one colour."""

    needle: float
    bobbin: float

    @property
    def both(self) -> float:
        """Return needle and bobbin thread together."""
        return self.needle + self.bobbin


def thickness_of(layers: int) -> float:
    """Return how thick so many layers of cloth are, in inches."""
    return layers * LAYER


def repeat_of(stitch: EdgeStitch) -> Repeat:
    """Return one repeat of a stitch: as it is drawn where the design draws it, else by its kind."""
    if stitch.repeat:
        return drawn_repeat(stitch.repeat)
    length, width = float(stitch.length), float(stitch.width)
    match stitch.kind:
        case EdgeStitchKind.STRAIGHT:
            return Repeat(length, length, 1)
        case EdgeStitchKind.BLANKET:
            return Repeat(length, length + 2 * width, 3)
        case EdgeStitchKind.ZIGZAG | EdgeStitchKind.SATIN:
            return Repeat(length, math.hypot(width, length), 1)


def drawn_repeat(needle: Sequence[complex]) -> Repeat:
    """Return the repeat whose penetrations are points in inches, x into the shape and y along the edge.

    The first point is where the repeat begins and the last where the next one does: they differ along the edge alone.
    Raises ValueError where they do not, or where the repeat does not go on.
    """
    if len(needle) < 2 or needle[-1].imag <= needle[0].imag:
        raise ValueError("a repeat goes on along the edge")
    if needle[-1].real != needle[0].real:
        raise ValueError("a repeat ends as far into the shape as it begins")
    path = sum(abs(b - a) for a, b in pairwise(needle))
    return Repeat(needle[-1].imag - needle[0].imag, path, len(needle) - 1)


def thread_for(repeat: Repeat, edge: float, thickness: float, waste: float = WASTE) -> ThreadUse:
    """Return the thread for so many inches of edge through cloth so thick; the two threads take alike."""
    each = edge / repeat.along * (repeat.path + repeat.penetrations * thickness) * (1 + waste)
    return ThreadUse(each, each)


def bobbins_for(bobbin_thread: float, capacity: Length = BOBBIN) -> int:
    """Return how many bobbins to wind for so many inches of bobbin thread of one colour, a part one as a whole."""
    return math.ceil(bobbin_thread / float(capacity) - 1e-9)
