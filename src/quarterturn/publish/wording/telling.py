"""Tell any step: one function for each kind of action."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any, TypeAlias

from quarterturn import steps
from quarterturn.proof import Pattern
from quarterturn.publish.wording import (
    assembly,
    binding,
    borders,
    cutting,
    masters,
    nested,
    panels,
    parcels,
    shapes,
    slanting,
    units,
)
from quarterturn.publish.wording.model import Wording
from quarterturn.steps import Chapter, SetAside, Step

Teller: TypeAlias = Callable[[Step, Any, Pattern], Wording]
"""Takes a step, its action (of the kind that the teller is for) and the pattern."""


def tell(step: Step, pattern: Pattern) -> Wording:
    """Return the words of a step. Every number in them is one of the step's own, printed."""
    return TELLERS[type(step.action)](step, step.action, pattern)


def tell_set_aside(step: Step, action: SetAside, pattern: Pattern) -> Wording:
    """Tell what is left over: pieces in the cutting, units after it."""
    teller = cutting.tell_set_aside if step.chapter is Chapter.CUTTING else units.tell_surplus
    return teller(step, action, pattern)


TELLERS: Mapping[type, Teller] = {
    steps.Straighten: cutting.tell_straighten,
    steps.CutStrips: cutting.tell_cut_strips,
    steps.Subcut: cutting.tell_subcut,
    steps.JoinEnds: cutting.tell_join_ends,
    steps.SquareParcels: parcels.tell_square_parcels,
    steps.CutParcels: parcels.tell_cut_parcels,
    steps.CutSegments: cutting.tell_cut_segments,
    steps.CutRest: cutting.tell_cut_rest,
    steps.CutPanels: cutting.tell_cut_panels,
    steps.SetAside: tell_set_aside,
    steps.TraceRings: shapes.tell_trace,
    steps.TraceNested: nested.tell_trace_nested,
    steps.FuseRings: shapes.tell_fuse_rings,
    steps.CutOut: shapes.tell_cut_out,
    steps.Crease: masters.tell_crease,
    steps.FuseToGround: masters.tell_fuse,
    steps.StitchEdge: masters.tell_stitch,
    steps.CutApart: units.tell_cut_apart,
    steps.CutAway: units.tell_cut_away,
    steps.Trim: units.tell_trim,
    steps.Rejoin: units.tell_rejoin,
    steps.LabelStacks: units.tell_stacks,
    steps.LayOut: assembly.tell_lay_out,
    steps.SewLine: assembly.tell_sew,
    steps.AddBorder: borders.tell_border,
    steps.AddMitred: borders.tell_mitred,
    steps.TrimToFit: borders.tell_trim_to_fit,
    steps.CutTriangles: slanting.tell_cut_triangles,
    steps.AddTriangles: slanting.tell_add_triangles,
    steps.JoinRows: slanting.tell_join_rows,
    steps.SetIn: slanting.tell_set_in,
    steps.AddCorners: slanting.tell_corners,
    steps.SquareUp: slanting.tell_square_up,
    steps.FuseToPanel: panels.tell_fuse_to_panel,
    steps.StitchMotifs: panels.tell_stitch_motifs,
    steps.CutAwayBehind: panels.tell_cut_away_behind,
    steps.JoinPanels: assembly.tell_panels,
    steps.LayerQuilt: assembly.tell_layer,
    steps.QuiltLayers: assembly.tell_quilting,
    steps.CutBias: binding.tell_bias,
    steps.Bind: binding.tell_binding,
}
