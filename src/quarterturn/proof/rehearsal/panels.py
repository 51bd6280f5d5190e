"""Carrying out the steps of panels: motifs fused at their places, stitched, and cut away behind."""

from __future__ import annotations

from collections import Counter, defaultdict
from dataclasses import replace
from itertools import combinations

from quarterturn.geometry import (
    Path,
    Region,
    as_polygon,
    from_polygons,
    joined,
    offset_path,
    path_bounds,
    shift,
    uncovered_area,
)
from quarterturn.measure import MM, Length
from quarterturn.proof.rehearsal.cloth import EQUAL, Patch, SpoiledError, with_scrap
from quarterturn.proof.rehearsal.masters import SLIVER
from quarterturn.proof.rehearsal.table import Table
from quarterturn.steps import CutAwayBehind, FuseToPanel, PlacedMotif, Step, StitchMotifs


def fuse_to_panel(table: Table, step: Step, action: FuseToPanel) -> None:
    """Fuse shapes to panels, the later on top."""
    (product,) = step.makes
    wanted = Counter(motif.label for motif in action.motifs)
    if {p.label: p.count for p in step.uses[1:]} != {label: n * product.count for label, n in wanted.items()}:
        raise SpoiledError("The shapes taken are not those to be fused.")
    if step.uses[0].count != product.count:
        raise SpoiledError(f"{step.uses[0].count} panels go in and {product.count} come out.")
    panel = table.take_patch(step.uses[0]).turned(action.turn)
    panel = panel.moved(shift(-complex(panel.box.left, panel.box.top)))
    shapes = {pile.label: table.take_patch(pile) for pile in step.uses[1:]}
    for motif in action.motifs:
        panel = _fused(panel, shapes[motif.label], motif)
    table.put(product, panel)


def _fused(panel: Patch, shape: Patch, motif: PlacedMotif) -> Patch:
    if not shape.fusible:
        raise SpoiledError("There is no web on the shape.")
    if motif.motion.mirrored:
        raise SpoiledError("The shape would lie with its web up.")
    outline = motif.motion.path(shape.edge)
    if uncovered_area(Region((outline,)), [Region((panel.edge,))]) > SLIVER:
        raise SpoiledError("The shape reaches past the edge of its panel.")
    fused = with_scrap(panel, shape.scraps[0].fabric, Region((outline,)))
    return replace(fused, motifs=(*panel.motifs, outline))


def stitch_motifs(table: Table, step: Step, action: StitchMotifs) -> None:
    """Stitch round every motif."""
    (pile,), (product,) = step.uses, step.makes
    _all_used(pile.count, product.count)
    panel = table.take_patch(pile)
    edges: dict[str, list[float]] = defaultdict(list)
    for motif, scrap in zip(panel.motifs, panel.scraps[1:], strict=True):
        edges[scrap.fabric].append(motif.length())
    if {edge.thread_fabric: edge.motifs for edge in action.edges} != {
        f: len(all_) for f, all_ in edges.items()
    }:
        raise SpoiledError("The threads are not those of the motifs.")
    for edge in action.edges:
        there = sum(edges[edge.thread_fabric])
        if abs(there - edge.edge) > EQUAL:
            raise SpoiledError(f"The edges are {there:.4f} inches long, not {edge.edge:.4f}.")
    table.put(product, replace(panel, stitched=True))


def cut_away_behind(table: Table, step: Step, action: CutAwayBehind) -> None:
    """Cut the panel away behind its motifs."""
    (pile,), (product,) = step.uses, step.makes
    _all_used(pile.count, product.count)
    panel = table.take_patch(pile)
    if not panel.stitched or not panel.motifs:
        raise SpoiledError("There is no stitched motif to cut away behind.")
    if action.inside < 2 * MM:
        raise SpoiledError("Cutting so near would cut the stitches.")
    ground = replace(panel.scraps[0], hollow=_hollow(panel.motifs, action.inside))
    table.put(product, replace(panel, scraps=(ground, *panel.scraps[1:])))


def _hollow(motifs: tuple[Path, ...], inside: Length) -> Region:
    """Return what is cut away behind motifs; where some overlap, their hollows are one."""
    hollows = [offset_path(motif, -float(inside)) for motif in motifs]
    if not any(_near(a, b) for a, b in combinations(motifs, 2)):
        return Region(tuple(path for hollow in hollows for path in hollow.paths))
    whole = as_polygon(Region(()))
    for hollow in hollows:
        whole = joined(whole, as_polygon(hollow))
    return from_polygons(whole)


def _near(a: Path, b: Path) -> bool:
    one, other = path_bounds(a), path_bounds(b)
    return (
        one.left < other.right
        and other.left < one.right
        and one.top < other.bottom
        and other.top < one.bottom
    )


def _all_used(used: int, made: int) -> None:
    if used != made:
        raise SpoiledError(f"{used} pieces go in and {made} come out.")
