"""The sentences of panels: motifs fused and stitched on plain cloth."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from quarterturn.proof import Pattern
from quarterturn.publish.wording.masters import handling, stitch_values
from quarterturn.publish.wording.model import Wording
from quarterturn.publish.wording.names import length, listed, named, plural, shape_word
from quarterturn.publish.wording.outlines import motifs_overlap
from quarterturn.publish.wording.sections import ROOTS
from quarterturn.publish.wording.slanting import capital
from quarterturn.steps import CutAwayBehind, FuseToPanel, PlacedMotif, Product, Step, StitchMotifs, labels


def tell_fuse_to_panel(step: Step, action: FuseToPanel, pattern: Pattern) -> Wording:
    """Tell laying and fusing the motifs of a panel."""
    (made,) = step.makes
    counts = Counter((motif.shape, _fabric(motif.label, motif.shape)) for motif in action.motifs)
    motifs = listed(
        [
            f"({count}) {shape_word(shape)}{'s' if count > 1 else ''} of {named(pattern.design, fabric)}"
            for (shape, fabric), count in counts.items()
        ]
    )
    sentences = (
        "Lay the panel right side up. Mark by two rulers where the middle of each motif comes, which is where its "
        "creases cross: the lines below say how far from two raw edges.",
        _order(pattern, action.motifs),
        "Measure once more, fuse from the middle outwards, and let it cool.",
    )
    line = f"{capital(motifs)} on {'the' if made.count == 1 else 'each'} panel. Make ({made.count})."
    return Wording(f"Fuse the motifs to {panel_name(made)}", sentences, line)


def _order(pattern: Pattern, motifs: Sequence[PlacedMotif]) -> str:
    if not motifs_overlap(pattern.blocks, motifs):
        return "Lay each motif on its mark, turned as in the figure."
    return (
        "Lay the motifs in the order of their numbers, each turned as in the figure. Where they overlap, the later "
        "lies on top."
    )


def _fabric(label: str, shape: str) -> str:
    return label.removesuffix(f" {shape}")


def panel_name(made: Product) -> str:
    """Return what a panel is called, without what has been done to it."""
    name = made.label.partition(",")[0]
    return "the quilt centre" if name in (*ROOTS, labels.TOP) else f"panel {name}"


def tell_stitch_motifs(step: Step, action: StitchMotifs, pattern: Pattern) -> Wording:
    """Tell stitching round the motifs of a panel."""
    (made,) = step.makes
    sentences = (
        f"Start with {stitch_values(action.stitch)}, as for the masters.",
        *handling(action.stitch),
        "Stitch all round each motif, overlap the first few stitches, and fasten off. Press from the back.",
        "Check that the panel has not drawn up; if it has, press it, and steam it to its size.",
    )
    edges = listed(
        [
            f"round ({edge.motifs}) {plural(edge.motifs, 'motif')} with thread to match "
            f"{named(pattern.design, edge.thread_fabric)}, {length(pattern.design, edge.edge)} of edge in all"
            for edge in action.edges
        ]
    )
    on_each = "" if made.count == 1 else " on each"
    line = f"{capital(panel_name(made))}, ({made.count}): stitch {edges}{on_each}."
    return Wording("Stitch round the motifs", sentences, line)


def tell_cut_away_behind(step: Step, action: CutAwayBehind, pattern: Pattern) -> Wording:
    """Tell cutting the panel away behind its motifs."""
    (made,) = step.makes
    lower = " Where one motif lies on another, leave the lower one whole." if _overlap(pattern, made) else ""
    sentences = (
        "Turn the panel wrong side up. Pinch the ground away from the motif, and snip into it.",
        f"Cut the ground away behind each motif, {length(pattern.design, action.inside)} inside the stitching.{lower}",
    )
    count = f"({made.count}) {plural(made.count, 'panel')}"
    return Wording(
        "Cut the ground away behind the motifs", sentences, f"{capital(panel_name(made))}: {count}."
    )


def _overlap(pattern: Pattern, made: Product) -> bool:
    """Tell whether motifs of a panel lie on one another."""
    laid = (
        step.action.motifs
        for step in pattern.steps.steps
        if isinstance(step.action, FuseToPanel) and panel_name(step.makes[0]) == panel_name(made)
    )
    return any(motifs_overlap(pattern.blocks, motifs) for motifs in laid)
