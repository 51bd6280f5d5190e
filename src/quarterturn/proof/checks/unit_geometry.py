"""Checks of a unit's sizes and of its curve between the seams (group A of the trade's list)."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping

from quarterturn.design import Curve, Severity, dotted
from quarterturn.geometry import StraightLine
from quarterturn.measure import Length, show_length
from quarterturn.proof.checks.drafting import drafts_of
from quarterturn.proof.checks.fault import REBUILD, Fault, check, in_millimetres, near, tell
from quarterturn.proof.model import Pattern
from quarterturn.steps import CutApart, Trim

CLOSE = 1e-3
"""Curves are calculated in floats by two ways; closer than this, in inches, they are the same."""

LEAST_CLEARANCE = 1 / 8
"""From the curve to the outer cut edge, in inches: nearer, and the outer seam touches it (common practice)."""

LEAST_AREA = 0.5
"""Share of the shape that must be left between the seams: below, it no longer looks like what was drawn."""

TIGHTEST_CURVE = 3
"""A curve of a radius below so many stitch widths cannot be followed neatly (common practice)."""


def unit_sizes(pattern: Pattern) -> Iterator[Fault]:
    """Hold the cut unit against u + 2s, in the drafted blocks and where units are trimmed."""
    design, units, allowed = pattern.design, pattern.design.units, set()
    for recipe in design.recipes:
        want = recipe.finished + 2 * design.making.seam
        allowed.add(want)
        for unit in pattern.blocks.master(recipe.name).units:
            if unit.cut_side != want:
                sentence = (
                    f"A unit of {recipe.name} is drafted {tell(unit.cut_side, units)} as cut, but finished "
                    f"{tell(recipe.finished, units)} and two seams make {tell(want, units)}."
                )
                yield Fault(dotted("recipes", recipe.name, "finished"), sentence, REBUILD)
    for step in pattern.steps.steps:
        if isinstance(step.action, Trim) and step.action.side not in allowed:
            side = tell(step.action.side, units)
            sentence = f"Step {step.number} trims units to {side}, which is the cut size of no unit."
            yield Fault("recipes", sentence, REBUILD, f"step {step.number}")


def master_sizes(pattern: Pattern) -> Iterator[Fault]:
    """Hold the square as cut against 2(u + 2s) + trim, in design, blocks and cutting list."""
    design, units = pattern.design, pattern.design.units
    for recipe in design.recipes:
        want = 2 * (recipe.finished + 2 * design.making.seam) + recipe.trim
        for where, side in _master_sides(pattern, recipe.name, recipe.start):
            if side != want:
                sentence = (
                    f"The square of {recipe.name} is {tell(side, units)} in {where}; four units, their seams and "
                    f"trimming make {tell(want, units)}."
                )
                remedy = f"Set start to {tell(want, units)} wherever it stands."
                yield Fault(dotted("recipes", recipe.name, "start"), sentence, remedy)


def _master_sides(pattern: Pattern, recipe: str, start: Length) -> Iterator[tuple[str, Length]]:
    yield "the design", start
    yield "the drafted block", pattern.blocks.master(recipe).side
    for count in pattern.bill.masters:
        if count.recipe == recipe:
            ground = pattern.bill.piece(count.ground)
            yield "the cutting list", ground.width
            yield "the cutting list", ground.length


def clearance(pattern: Pattern) -> Iterator[Fault]:
    """Ask that the curve stays clear of the outer seams of its unit."""
    design, units = pattern.design, pattern.design.units
    for recipe, draft in drafts_of(design):
        edge = float(recipe.finished + design.making.seam)
        if edge - draft.reach < LEAST_CLEARANCE - CLOSE:
            sentence = (
                f"The curve of {recipe.name} comes within {near(edge - draft.reach, units)} of its unit's outer "
                "cut edge; where that seam is sewn a little too wide it cuts into the curve."
            )
            share = (edge - LEAST_CLEARANCE) / draft.reach
            widest = show_length(share * draft.width, units, sixteenths=True)
            remedy = f"Trace the shape {widest} across or less, or make finished larger."
            yield Fault(dotted("recipes", recipe.name, "shape"), sentence, remedy)


def crossings(pattern: Pattern) -> Iterator[Fault]:
    """Hold where the drafted curve meets the seam against the closed form."""
    for recipe, draft in drafts_of(pattern.design):
        drawn = pattern.blocks.master(recipe.name).facts.crossing
        if abs(drawn - draft.crossing) > CLOSE:
            units = pattern.design.units
            sentence = (
                f"The drawings let the curve of {recipe.name} meet the seam {tell(drawn, units)} from the corner; "
                f"it meets it at {tell(draft.crossing, units)}."
            )
            yield Fault(dotted("recipes", recipe.name, "shape"), sentence, REBUILD)


def area_left(pattern: Pattern) -> Iterator[Fault]:
    """Tell where the seams take half of a shape that is traced as drawn."""
    design, units = pattern.design, pattern.design.units
    for recipe, draft in drafts_of(design):
        if draft.area_left < LEAST_AREA and recipe.curve is Curve.AS_DRAWN:
            sentence = (
                f"The seams leave {draft.area_left:.0%} of the shape of {recipe.name}: traced "
                f"{show_length(2 * draft.reach, units, sixteenths=True)} across, it finishes "
                f"{show_length(2 * draft.crossing, units, sixteenths=True)} across where four units meet."
            )
            remedy = 'Enlarge the shape, or set curve = "sewn true" so that it finishes as drawn.'
            yield Fault(dotted("recipes", recipe.name, "shape"), sentence, remedy)


def tight_curves(pattern: Pattern) -> Iterator[Fault]:
    """Ask for curves that the edge stitch can follow."""
    stitch, units = pattern.design.making.stitch, pattern.design.units
    for recipe, draft in drafts_of(pattern.design):
        least = TIGHTEST_CURVE * float(stitch.width)
        if draft.bend < least:
            sentence = (
                f"The curve of {recipe.name} has a radius of {near(draft.bend, units)}; a stitch "
                f"{in_millimetres(stitch.width)} wide needs {near(least, units)} to turn neatly."
            )
            remedy = "Use a larger shape, or make making.stitch.width smaller."
            yield Fault(dotted("recipes", recipe.name, "shape"), sentence, remedy)


def units_per_master(pattern: Pattern) -> Iterator[Fault]:
    """Ask that the cuts leave the kinds of unit that the outline has: four equal ones of a circle."""
    for recipe, draft in drafts_of(pattern.design):
        master = pattern.blocks.master(recipe.name)
        found = {unit.quarter: master.per_master(number) for number, unit in enumerate(master.units)}
        if found != draft.kinds:
            sentence = (
                f"A square of {recipe.name} cut both ways gives {_told(draft.kinds)}; here it "
                f"gives {_told(found)}."
            )
            yield Fault(dotted("recipes", recipe.name), sentence, REBUILD)


def _told(kinds: Mapping[str, int]) -> str:
    if len(kinds) == 1:
        return f"{next(iter(kinds.values()))} equal units"
    return ", ".join(f"{count} {quarter}" for quarter, count in kinds.items())


def cuts_through_middle(pattern: Pattern) -> Iterator[Fault]:
    """Ask that both cuts run through the middle of the square, at right angles to one another."""
    for step in pattern.steps.steps:
        if isinstance(step.action, CutApart) and not _cross_at_middle(step.action.cuts):
            sentence = (
                f"Step {step.number} does not cut its square twice through the middle at right angles, "
                "so its units would differ."
            )
            yield Fault(dotted("recipes", step.action.recipe), sentence, REBUILD, f"step {step.number}")


def _cross_at_middle(cuts: tuple[StraightLine, ...]) -> bool:
    if len(cuts) != 2 or any(abs(cut.side(0j)) > CLOSE for cut in cuts):
        return False
    first, second = (cut.direction for cut in cuts)
    return math.isclose((first * second.conjugate()).real, 0.0, abs_tol=1e-9)


UNIT_GEOMETRY = (
    check("unit-size", Severity.STOPS, (1,), "A cut unit is its finished side and two seams.", unit_sizes),
    check(
        "master-size",
        Severity.STOPS,
        (2,),
        "A square as cut holds four cut units and the trimming, and has one size everywhere.",
        master_sizes,
    ),
    check("curve-near-edge", Severity.STOPS, (4, 15), "The curve stays clear of the outer seams.", clearance),
    check("crossing-wrong", Severity.STOPS, (5,), "Drawings show where the curve meets the seam.", crossings),
    check("shape-shrinks", Severity.CONFUSES, (12,), "The seams leave most of the shape.", area_left),
    check("curve-too-tight", Severity.STOPS, (13,), "The edge stitch can follow the curve.", tight_curves),
    check(
        "units-unequal",
        Severity.STOPS,
        (8, 17),
        "A square gives the kinds of unit that it should.",
        units_per_master,
    ),
    check(
        "cut-off-centre",
        Severity.STOPS,
        (8,),
        "Both cuts run through the middle of the square.",
        cuts_through_middle,
    ),
)
