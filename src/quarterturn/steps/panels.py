"""The steps of panels: motifs fused to plain cloth, stitched, and the panel cut away behind them.

Behind motifs too small to be hollowed out nothing is cut away: their web holds the panel everywhere.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

from quarterturn.blocks import Blocks
from quarterturn.geometry import STAY, Motion, congruence, shift
from quarterturn.pieces import panel_piece
from quarterturn.setting import Motif, Panel, Side
from quarterturn.steps import labels
from quarterturn.steps.draft import Draft, draft
from quarterturn.steps.grids import sewn
from quarterturn.steps.model import Chapter
from quarterturn.steps.naming import Names
from quarterturn.steps.sections import CutAwayBehind, FuseToPanel, MotifEdge, PlacedMotif, StitchMotifs
from quarterturn.steps.shapes import about_its_middle
from quarterturn.steps.things import Pile, Placed, Product


def panel_steps(names: Names, blocks: Blocks) -> Iterator[Draft]:
    """Return fusing, stitching and cutting away of every kind of panel."""
    for node in names.made:
        if isinstance(node, Panel):
            yield from _panel(names, blocks, node)


def _panel(names: Names, blocks: Blocks, panel: Panel) -> Iterator[Draft]:
    piece = names.find(panel_piece(panel, names.seam, names.design.units))
    label = labels.TOP if panel == names.setting.top else names.name(labels.node(panel.name))
    turn = int(panel.width < panel.height)
    if not panel.motifs:
        placed = Placed(piece.label, turn)
        if panel == names.setting.top:
            made = names.product(label, 1, panel.width, panel.height)
            yield sewn((placed,), Side.BOTTOM, names, None, made)
        names.put(panel, placed)
        return
    count, making = names.made[panel], names.design.making
    fused, stitched = labels.fused_panel(label), labels.stitched_panel(label)

    def product(name: str) -> tuple[Product]:
        return (names.product(name, count, panel.width, panel.height),)

    motifs = tuple(_placed(names, blocks, motif) for motif in panel.motifs)
    shapes = Counter(motif.label for motif in motifs)
    used = (Pile(piece.label, count), *(Pile(name, n * count) for name, n in shapes.items()))
    yield draft(Chapter.PANELS, FuseToPanel(panel.name, motifs, turn), used, product(fused))
    opened = any(blocks.master(motif.recipe).shape.ring_in.paths for motif in panel.motifs)
    stitching = StitchMotifs(making.stitch, _edges(blocks, panel))
    yield draft(Chapter.PANELS, stitching, (Pile(fused, count),), product(stitched if opened else label))
    if opened:
        yield draft(Chapter.PANELS, CutAwayBehind(making.cut_away), (Pile(stitched, count),), product(label))
    names.put(panel, Placed(label, 0))


def _placed(names: Names, blocks: Blocks, motif: Motif) -> PlacedMotif:
    """Return where a motif lies on the raw panel: a seam allowance further in than on the finished one."""
    seam = float(names.seam)
    motion = motion_of(blocks, motif).then(shift(complex(seam, seam)))
    name = blocks.master(motif.recipe).shape.name
    return PlacedMotif(labels.cut_out(motif.fabric, name), motif.recipe, name, motion)


def motion_of(blocks: Blocks, motif: Motif) -> Motion:
    """Return the motion that lays the shape, the middle of its box at 0, on its place on the finished panel."""
    shape = blocks.master(motif.recipe).shape
    drawn = about_its_middle(shape).path(shape.traced)
    return next(iter(congruence(drawn, motif.outline)), STAY)


def _edges(blocks: Blocks, panel: Panel) -> tuple[MotifEdge, ...]:
    counts: Counter[str] = Counter(motif.fabric for motif in panel.motifs)
    edges: dict[str, float] = dict.fromkeys(counts, 0.0)
    for motif in panel.motifs:
        edges[motif.fabric] += blocks.master(motif.recipe).shape.edge
    return tuple(MotifEdge(fabric, counts[fabric], edges[fabric]) for fabric in counts)
