"""The rehearsal: carry out every step on exact shapes, with so much cloth and web as was bought.

It knows cloth, web and steps alone. It stops at the first step that cannot be done as written.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from typing import Any

from quarterturn import steps as s
from quarterturn.geometry import StraightLine, rectangle, shift
from quarterturn.measure import Length
from quarterturn.proof.rehearsal import (
    binding,
    cutting,
    framing,
    masters,
    nested,
    panels,
    set_in,
    sewing,
    shapes,
    slanting,
    tracing,
    units,
)
from quarterturn.proof.rehearsal.cloth import CutOff, Patch, Print, Scrap, SpoiledError, keep
from quarterturn.proof.rehearsal.table import Supplies, Table

Doing = Callable[[Table, s.Step, Any], None]

DOINGS: Mapping[type, Doing] = {
    s.Straighten: cutting.straighten,
    s.CutStrips: cutting.cut_strips,
    s.CutPanels: cutting.cut_panels,
    s.Subcut: cutting.subcut,
    s.SquareParcels: cutting.square_parcels,
    s.CutParcels: cutting.cut_parcels,
    s.CutSegments: cutting.cut_segments,
    s.CutRest: cutting.cut_rest,
    s.JoinEnds: cutting.join_ends,
    s.SetAside: cutting.set_aside,
    s.TraceRings: tracing.trace_rings,
    s.TraceNested: nested.trace_nested,
    s.FuseRings: shapes.fuse_rings,
    s.CutOut: shapes.cut_out,
    s.Crease: masters.crease,
    s.FuseToGround: masters.fuse_to_ground,
    s.StitchEdge: masters.stitch_edge,
    s.CutApart: masters.cut_apart,
    s.CutAway: units.cut_away,
    s.Trim: units.trim,
    s.Rejoin: units.rejoin,
    s.LabelStacks: sewing.label_stacks,
    s.FuseToPanel: panels.fuse_to_panel,
    s.StitchMotifs: panels.stitch_motifs,
    s.CutAwayBehind: panels.cut_away_behind,
    s.CutTriangles: slanting.cut_triangles,
    s.AddTriangles: slanting.add_triangles,
    s.JoinRows: slanting.join_rows,
    s.SetIn: set_in.set_in,
    s.AddCorners: slanting.add_corners,
    s.SquareUp: slanting.square_up,
    s.TrimToFit: framing.trim_to_fit,
    s.AddMitred: framing.add_mitred,
    s.LayOut: sewing.lay_out,
    s.SewLine: sewing.sew_line,
    s.AddBorder: sewing.add_border,
    s.JoinPanels: sewing.join_panels,
    s.LayerQuilt: sewing.layer_quilt,
    s.QuiltLayers: sewing.quilt_layers,
    s.CutBias: binding.cut_bias,
    s.Bind: binding.bind,
}
"""How each kind of step is carried out. A kind that is not here cannot be rehearsed."""


@dataclass(frozen=True, slots=True)
class Failure:
    """A step that could not be done as written; step 0 is what was found when all was done."""

    step: int
    sentence: str


@dataclass(frozen=True, slots=True)
class Rehearsal:
    """What came of carrying out the steps. `top` is empty where no top was made."""

    failures: tuple[Failure, ...]
    top: tuple[Scrap, ...]
    """Visible cloth, seams taken in all round; the origin is the top left corner inside the binding."""
    width: float
    height: float
    cloth_left: Mapping[str, Length]
    web_left: Length
    steps_done: int
    cut_off: tuple[CutOff, ...] = ()
    """What was cut away behind shapes."""
    parcels_left: Mapping[str, int] = field(default_factory=dict)
    """Pieces of cloth left of each label."""


Watch = Callable[[s.Step, Table], None]
"""Told each step when it has been carried out, with the table as it then is."""


def rehearse(supplies: Supplies, steps: s.Steps, watch: Watch = lambda step, table: None) -> Rehearsal:
    """Carry out the steps with these supplies."""
    table = Table(supplies)
    failures: list[Failure] = []
    done = 0
    for step in steps.steps:
        try:
            DOINGS[type(step.action)](table, step, step.action)
        except SpoiledError as spoiled:
            failures.append(Failure(step.number, str(spoiled)))
            break
        except (ValueError, StopIteration):
            failures.append(Failure(step.number, "The step takes or makes the wrong number of things."))
            break
        done += 1
        watch(step, table)
    if not failures:
        failures += [*_left_lying(table), *_not_upright(table)]
    top = _seen(table.top, table.seam) if table.top and not failures else None
    return Rehearsal(
        failures=tuple(failures),
        top=top.scraps if top else (),
        width=top.box.width if top else 0.0,
        height=top.box.height if top else 0.0,
        cloth_left=table.cloth_left(),
        web_left=table.web_left(),
        steps_done=done,
        cut_off=tuple(table.fallen),
        parcels_left=table.parcels_left(),
    )


def _left_lying(table: Table) -> list[Failure]:
    """Return a failure for whatever lies on the table besides one quilt."""
    left = table.left()
    if left.pop("quilt", 0) != 1:
        return [Failure(0, "There is no finished quilt.")]
    return [Failure(0, f"{count} of '{label}' are left over.") for label, count in left.items()]


def _not_upright(table: Table) -> list[Failure]:
    """Return a failure for each fabric whose print does not stand upright in the top as it should."""
    odd = dict.fromkeys(
        scrap.fabric
        for scrap in (table.top.scraps if table.top else ())
        if scrap.print and not scrap.print.looks_like(Print(-1j, scrap.print.ways))
    )
    return [Failure(0, f"The print of fabric {fabric} does not stand upright everywhere.") for fabric in odd]


def _seen(top: Patch, seam: Length) -> Patch:
    """Return the top inside its binding seam, laid at the origin."""
    box = top.box.grown(-float(seam))
    seen: Patch | None = top
    for edge in rectangle(box.left, box.top, box.right, box.bottom).segments:
        way = edge.tangent(0)
        seen = keep(seen, StraightLine(edge.start, way / abs(way))) if seen else None
    assert seen is not None, "a top is larger than its seam allowance"
    return seen.moved(shift(-complex(box.left, box.top)))
