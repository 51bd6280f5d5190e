"""Thread for the edge stitching: an estimate from the geometry of the stitch.

In a lockstitch two threads take the same path, one above the cloth and one below, and cross half way through it at
each penetration of the needle: together they go through its whole thickness twice, once down and once up, for each
stitch. For a straight stitch this is the textbooks' 2 + 2·T·S inches of thread for an inch of seam, at S stitches
an inch and cloth T thick (textilecalculations.com and textileblog.com agree; 2.2 for T = 0.01", S = 10).

A stitch here is the way from one penetration to the next, and its length what the cloth is fed on between
them: so a zigzag of length L comes back to the same side of the edge after 2·L. Some machines count a whole zig
and zag as one stitch; they take more thread for the same setting. The rest is our own model, published nowhere:

* zigzag and satin, width W: the path slants, √(W² + L²) for each stitch. Satin is a zigzag with a short length.
* blanket: one stitch L along the edge, one W into the shape and one W back; three penetrations for each L.
"""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Iterable

from quarterturn.blocks import Blocks
from quarterturn.design import Design, EdgeStitch, EdgeStitchKind
from quarterturn.materials.model import StitchSum
from quarterturn.measure import mm
from quarterturn.pieces import MasterCount, MotifCount

THICKNESS = float(mm("0.6"))
"""Inches. Two layers of quilting cotton and the web, pressed (from memory)."""

WASTE = 0.15
"""Added for ends, tests and bobbin changes: 10–15 % by one trade table, 15–20 % by another (apparelscience.com,
apparel-merchandising.com)."""


def stitching_sums(
    design: Design, blocks: Blocks, masters: Iterable[MasterCount], motifs: Iterable[MotifCount] = ()
) -> tuple[StitchSum, ...]:
    """Return for each colour of thread, which is that of a shape, the edge to stitch and the thread for it."""
    edges: dict[str, float] = defaultdict(float)
    for master in masters:
        for shape in blocks.master(master.recipe).shapes:
            edges[design.cloth(master.code, shape.part)] += master.count * shape.edge
    for motif in motifs:
        edges[motif.fabric] += motif.count * blocks.master(motif.recipe).shape.edge
    ratio = thread_ratio(design.making.stitch) * (1 + WASTE)
    letters = (fabric.letter for fabric in design.fabrics if fabric.letter in edges)
    return tuple(StitchSum(letter, edges[letter], edges[letter] * ratio) for letter in letters)


def thread_ratio(stitch: EdgeStitch, thickness: float = THICKNESS) -> float:
    """Return the inches of needle and bobbin thread for an inch of edge, without waste."""
    length, width = float(stitch.length), float(stitch.width)
    match stitch.kind:
        case EdgeStitchKind.STRAIGHT:
            path, penetrations = length, 1
        case EdgeStitchKind.BLANKET:
            path, penetrations = length + 2 * width, 3
        case EdgeStitchKind.ZIGZAG | EdgeStitchKind.SATIN:
            path, penetrations = math.hypot(width, length), 1
    return 2 * (path + penetrations * thickness) / length
