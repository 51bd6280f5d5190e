"""Checks of motifs on panels (group F of the trade's list): where they lie, and how near to the seams."""

from __future__ import annotations

import cmath
import math
from collections.abc import Iterator

from quarterturn.design import PanelMotif, Severity
from quarterturn.geometry import Motion, Region, path_bounds, region_bounds, same_region, shift
from quarterturn.proof.checks.fault import REBUILD, Fault, check, near
from quarterturn.proof.checks.laying import PANEL, Leaf
from quarterturn.proof.checks.walking import cloths_of, panel_of
from quarterturn.proof.model import Pattern
from quarterturn.steps import FuseToPanel, PlacedMotif

CLEARANCE = 1 / 8
"""From a motif to the finished edge of its panel, in inches: nearer, and the seam touches it (common practice)."""

CLOSE = 1e-6


def motifs_placed(pattern: Pattern) -> Iterator[Fault]:
    """Hold the place and the turn of each motif in the steps against the design: a seam allowance further in."""
    panels = {leaf.section: leaf for leaf in _panels(pattern)}
    seam = float(pattern.design.making.seam)
    for step in pattern.steps.steps:
        if not isinstance(step.action, FuseToPanel) or step.action.panel not in panels:
            continue
        wanted = panel_of(pattern.design, step.action.panel).motifs
        found = step.action.motifs
        for number, motif in enumerate(wanted, start=1):
            laid = _laid(pattern, found[number - 1]) if number <= len(found) else None
            want = _wanted(pattern, motif, complex(seam, seam))
            if laid is None or not same_region(want, laid):
                which = f"motif {number} of {step.action.panel}"
                sentence = f"Step {step.number} does not lay {which} where the design has it."
                yield Fault(_key(panels[step.action.panel], number), sentence, REBUILD, f"step {step.number}")


def _wanted(pattern: Pattern, motif: PanelMotif, seams: complex = 0j) -> Region:
    """Return the outline of a motif on its panel as the design says: the middle of its shape at its place, turned."""
    (shape,) = pattern.design.recipe(motif.recipe).shapes
    turn = cmath.rect(1.0, math.radians(motif.degrees))
    place = complex(float(motif.x), float(motif.y)) + seams
    motion = Motion(turn, place - turn * complex(float(shape.x), float(shape.y)))
    return motion.region(Region((pattern.blocks.master(motif.recipe).shape.traced,)))


def _laid(pattern: Pattern, motif: PlacedMotif) -> Region:
    """Return the outline of a motif on its raw panel as a step lays it, by the middle of its template."""
    traced = pattern.blocks.master(motif.recipe).shape.traced
    return motif.motion.region(shift(-path_bounds(traced).centre).region(Region((traced,))))


def _panels(pattern: Pattern) -> Iterator[Leaf]:
    return (leaf for leaf in cloths_of(pattern.design) if leaf.what == PANEL)


def _key(panel: Leaf, number: int) -> str:
    return f"{panel.key}.motifs.{number - 1}.at"


def motifs_near_seams(pattern: Pattern) -> Iterator[Fault]:
    """Ask that motifs stay clear of the seams round their panel."""
    units, seen = pattern.design.units, set[str]()
    for leaf in _panels(pattern):
        if leaf.section in seen:
            continue
        seen.add(leaf.section)
        panel = panel_of(pattern.design, leaf.section)
        for number, motif in enumerate(panel.motifs, start=1):
            room = _room(pattern, motif, float(panel.width), float(panel.height))
            if room < CLEARANCE - CLOSE:
                sentence = (
                    f"Motif {number}, the {motif.recipe}, comes within {near(max(room, 0.0), units)} of the seam round "
                    "its panel; where that is sewn a little too wide it cuts into the motif."
                )
                remedy = f"Move it {near(CLEARANCE - room, units)} inwards, or make the panel larger."
                yield Fault(_key(leaf, number), sentence, remedy)


def _room(pattern: Pattern, motif: PanelMotif, width: float, height: float) -> float:
    """Return how far the outline of a motif stays inside its panel's finished edge, at the nearest."""
    box = region_bounds(_wanted(pattern, motif))
    return min(box.left, box.top, width - box.right, height - box.bottom)


MOTIFS = (
    check(
        "motif-misplaced", Severity.STOPS, (65, 81), "Motifs lie where the design has them.", motifs_placed
    ),
    check("motif-near-seam", Severity.CONFUSES, (81,), "Motifs stay clear of the seams.", motifs_near_seams),
)
