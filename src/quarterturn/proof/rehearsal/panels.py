"""Carrying out the steps of panels: motifs fused at their places, stitched, and cut away behind."""

from __future__ import annotations

from collections import Counter, defaultdict
from dataclasses import replace
from itertools import combinations

from quarterturn.geometry import (
    Region,
    as_polygon,
    from_polygons,
    joined,
    offset_region,
    region_bounds,
    shift,
    uncovered_area,
)
from quarterturn.proof.rehearsal.cloth import EQUAL, Fused, Patch, SpoiledError, with_shape
from quarterturn.proof.rehearsal.shapes import SLIVER
from quarterturn.proof.rehearsal.table import Table, all_used
from quarterturn.proof.rehearsal.units import NEAREST_CUT, fallen_off
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
    (cloth,) = shape.scraps
    region = motif.motion.region(cloth.region)
    if uncovered_area(Region(region.paths[:1]), [Region((panel.edge,))]) > SLIVER:
        raise SpoiledError("The shape reaches past the edge of its panel.")
    fused = Fused(len(panel.shapes), region, motif.motion.region(shape.loose))
    return with_shape(panel, cloth.moved(motif.motion), fused)


def stitch_motifs(table: Table, step: Step, action: StitchMotifs) -> None:
    """Stitch round every motif."""
    (pile,), (product,) = step.uses, step.makes
    all_used(pile.count, product.count)
    panel = table.take_patch(pile)
    edges: dict[str, list[float]] = defaultdict(list)
    for motif, scrap in zip(panel.shapes, panel.scraps[1:], strict=True):
        edges[scrap.fabric].append(motif.region.perimeter())
    if {edge.thread_fabric: edge.motifs for edge in action.edges} != {
        f: len(all_) for f, all_ in edges.items()
    }:
        raise SpoiledError("The threads are not those of the motifs.")
    for edge in action.edges:
        there = sum(edges[edge.thread_fabric])
        if abs(there - edge.edge) > EQUAL:
            raise SpoiledError(f"The edges are {there:.4f} inches long, not {edge.edge:.4f}.")
    swing = float(action.stitch.width)
    stitched = tuple(replace(motif, stitched=True, swing=swing) for motif in panel.shapes)
    table.put(product, replace(panel, shapes=stitched))


def cut_away_behind(table: Table, step: Step, action: CutAwayBehind) -> None:
    """Cut the panel away behind its motifs."""
    (pile,), (product,) = step.uses, step.makes
    all_used(pile.count, product.count)
    panel = table.take_patch(pile)
    if not panel.shapes or not all(motif.stitched for motif in panel.shapes):
        raise SpoiledError("There is no stitched motif to cut away behind.")
    if action.inside < NEAREST_CUT:
        raise SpoiledError("Cutting so near would cut the stitches.")
    if not any(motif.loose.paths for motif in panel.shapes):
        raise SpoiledError("There is no motif that is not glued down everywhere.")
    hollow = _hollow([motif for motif in panel.shapes if motif.loose.paths], float(action.inside))
    ground = replace(panel.scraps[0], hollow=hollow)
    table.fallen += fallen_off([(replace(ground, hollow=Region(())), ground)], product.count)
    table.put(product, replace(panel, scraps=(ground, *panel.scraps[1:])))


def _hollow(motifs: list[Fused], inside: float) -> Region:
    """Return what is cut away behind motifs that web does not hold all over, as one where some overlap."""
    for motif in motifs:
        if uncovered_area(offset_region(motif.region, -inside - motif.swing), [motif.loose]) > SLIVER:
            raise SpoiledError("What is to be cut away is glued down.")
    hollows = [offset_region(motif.region, -inside) for motif in motifs]
    if not any(_near(a.region, b.region) for a, b in combinations(motifs, 2)):
        return Region(tuple(path for hollow in hollows for path in hollow.paths))
    whole = as_polygon(Region(()))
    for hollow in hollows:
        whole = joined(whole, as_polygon(hollow))
    return from_polygons(whole)


def _near(a: Region, b: Region) -> bool:
    one, other = region_bounds(a), region_bounds(b)
    return (
        one.left < other.right
        and other.left < one.right
        and one.top < other.bottom
        and other.top < one.bottom
    )
