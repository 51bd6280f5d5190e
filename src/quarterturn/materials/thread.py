"""Thread for the edge stitching, by its colour: an estimate from the geometry of the stitch (see `stitches`)."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable

from quarterturn.blocks import Blocks
from quarterturn.design import Design, EdgeStitch
from quarterturn.materials.model import StitchSum
from quarterturn.materials.stitches import WASTE, bobbins_for, repeat_of, thickness_of, thread_for
from quarterturn.pieces import MasterCount, MotifCount


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


def thread_ratio(stitch: EdgeStitch, thickness: float | None = None) -> float:
    """Return the inches of needle and bobbin thread for an inch of edge, without waste.

    The cloth is as thick as the layers that the design states, if no other thickness is given.
    """
    thick = thickness_of(stitch.layers) if thickness is None else thickness
    return thread_for(repeat_of(stitch), 1, thick, waste=0).both


def bobbins_to_wind(stitch: EdgeStitch, sums: Iterable[StitchSum]) -> dict[str, int]:
    """Return for each colour of thread how many bobbins the edges take: half of the thread is on them."""
    return {line.fabric: bobbins_for(line.thread / 2, stitch.bobbin) for line in sums}
