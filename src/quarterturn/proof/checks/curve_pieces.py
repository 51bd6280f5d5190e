"""Checks of the quarter circle that is offered as two pieces to be sewn along the curve."""

from __future__ import annotations

import math
from collections.abc import Iterator

from quarterturn.blocks import PiecedPair, pieced_pair
from quarterturn.design import Curve, Recipe, RecipeKind, Severity, dotted
from quarterturn.geometry import Path, Region, as_polygon
from quarterturn.measure import Units, inches, mm
from quarterturn.pieces import curve_bill
from quarterturn.proof.checks.drafting import draft_of
from quarterturn.proof.checks.fault import REBUILD, Fault, check, near, tell
from quarterturn.proof.checks.tallying import unit_counts
from quarterturn.proof.model import Pattern

CLOSE = 1e-3
"""Square inches, and inches: curves are measured as polygons."""

LEAST_ARM = {Units.INCH: inches(0, 1, 2), Units.METRIC: mm(12)}
"""The block's side less the radius is 1/2" to 2" by a maker's page of 14 October 2020; narrower arms tear."""


def offered(pattern: Pattern) -> Iterator[tuple[Recipe, PiecedPair | None]]:
    """Return the recipes that offer the curve to be sewn, with their pieces if they can be."""
    for recipe in pattern.design.recipes:
        if recipe.pieced and recipe.kind is RecipeKind.CIRCLE:
            yield recipe, pieced_pair(pattern.blocks.master(recipe.name))


def cannot_be_sewn(pattern: Pattern) -> Iterator[Fault]:
    """Tell of a curve that leaves no room for the allowances of its two pieces."""
    for recipe, pair in offered(pattern):
        if pair is None:
            sentence = f"The curve of {recipe.name} is too tight, or too large for its unit, to be sewn as two pieces."
            yield Fault(
                dotted("recipes", recipe.name, "pieced"), sentence, "Leave `pieced` out, or resize the shape."
            )


def pieces_make_the_unit(pattern: Pattern) -> Iterator[Fault]:
    """Hold the sewn quarter disc and surround against the fused unit: area by area, and the radii 2s apart."""
    design, units = pattern.design, pattern.design.units
    seam = float(design.making.seam)
    for recipe, pair in offered(pattern):
        if pair is None:
            continue
        shape, whole = _fused_area(pattern, recipe), float(recipe.finished_width * recipe.finished_height)
        disc, surround = _sewn_area(pair.disc, seam), _sewn_area(pair.surround, seam)
        apart = pair.disc_radius - pair.surround_radius
        if abs(disc - shape) > CLOSE or abs(disc + surround - whole) > CLOSE or abs(apart - 2 * seam) > CLOSE:
            sentence = (
                f"Sewn, the quarter disc of {recipe.name} has {disc:.3f} square inches and the surround "
                f"{surround:.3f}; in the fused unit they are {shape:.3f} and {whole - shape:.3f}. Their curves are cut "
                f"{tell(apart, units)} apart in radius; two seams are {tell(2 * seam, units)}."
            )
            yield Fault(dotted("recipes", recipe.name, "pieced"), sentence, REBUILD)


def _fused_area(pattern: Pattern, recipe: Recipe) -> float:
    """Return what a sewn unit shows of the circle, by closed form: its share of what is traced."""
    draft = draft_of(pattern.design, recipe)
    quarter = math.pi * draft.shape.bend**2 / 4
    return quarter if recipe.curve is Curve.SEWN_TRUE else quarter * draft.area_left


def _sewn_area(path: Path, seam: float) -> float:
    """Return the area of a piece inside its seams."""
    whole = as_polygon(Region((path,)), CLOSE / 50)
    return float(whole.buffer(-seam, join_style="mitre", quad_segs=200).area)


def arms(pattern: Pattern) -> Iterator[Fault]:
    """Tell of a surround whose arms are narrow where the curve ends."""
    units = pattern.design.units
    for recipe, pair in offered(pattern):
        crossing = draft_of(pattern.design, recipe).crossing
        if pair is None or crossing is None:
            continue
        arm = float(recipe.finished_width) - crossing
        if arm < float(LEAST_ARM[units]) - CLOSE:
            sentence = (
                f"The arms of the surround of {recipe.name} finish {near(max(arm, 0.0), units)} wide at the ends "
                "of the curve: they stretch and tear when it is sewn."
            )
            remedy = "Make the shape smaller, or finished larger; or leave `pieced` out."
            yield Fault(dotted("recipes", recipe.name, "pieced"), sentence, remedy)


def curves_counted(pattern: Pattern) -> Iterator[Fault]:
    """Ask for a quarter disc and a surround for each unit of the map."""
    curves = curve_bill(pattern.design, pattern.blocks, pattern.bill)
    if curves is None:
        return
    wanted = unit_counts(pattern.design)
    for count in curves.counts:
        if count.units != wanted.get(count.code, 0):
            sentence = (
                f"The map has {wanted.get(count.code, 0)} units of colourway {count.code}; quarter discs and surrounds "
                f"are listed for {count.units}."
            )
            yield Fault(dotted("colourways", count.code), sentence, REBUILD)


CURVE_PIECES = (
    check(
        "curve-unsewable", Severity.STOPS, (4,), "A curve that is offered to be sewn can be.", cannot_be_sewn
    ),
    check(
        "curve-pieces-wrong",
        Severity.STOPS,
        (1, 83),
        "Disc and surround make the fused unit.",
        pieces_make_the_unit,
    ),
    check("curve-arms-narrow", Severity.CONFUSES, (4,), "A surround to be sewn has arms that hold.", arms),
    check(
        "curves-miscounted", Severity.STOPS, (16, 20), "Each unit has its disc and surround.", curves_counted
    ),
)
