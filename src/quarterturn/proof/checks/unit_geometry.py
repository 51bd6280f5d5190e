"""Checks of a unit's sizes and of its curve between the seams (group A of the trade's list)."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping

from quarterturn.design import Curve, Cut, Design, Recipe, RecipeKind, Rejoined, Severity, dotted
from quarterturn.geometry import StraightLine
from quarterturn.measure import Length, Units, show_count, show_length
from quarterturn.proof.checks.drafting import ShapeDraft, called, drafts_of, shape_key, shapes_of
from quarterturn.proof.checks.fault import REBUILD, Fault, check, differ, in_millimetres, near, tell
from quarterturn.proof.checks.laid import FAR, line_of_cut
from quarterturn.proof.checks.sides import laid_size
from quarterturn.proof.model import Pattern
from quarterturn.steps import CutApart, Reference, Trim

CLOSE = 1e-3
"""Curves are calculated in floats by two ways; closer than this, in inches, they are the same."""

LEAST_CLEARANCE = 1 / 8
"""From the curve to the outer cut edge, in inches: nearer, and the outer seam touches it (common practice)."""

LEAST_AREA = 0.5
"""Share of the shape that must be left between the seams: below, it no longer looks like what was drawn."""

TIGHTEST_CURVE = 3
"""A curve of a radius below so many stitch widths cannot be followed neatly (common practice)."""


def unit_sizes(pattern: Pattern) -> Iterator[Fault]:
    """Hold the cut unit against u + 2s both ways, in the drafted blocks and where units are trimmed."""
    design, units = pattern.design, pattern.design.units
    for recipe in design.recipes:
        for unit in pattern.blocks.master(recipe.name).units:
            want = _unit_size(recipe, unit.quarter, design)
            if unit.is_rectangle and any(map(differ, want, (unit.cut_width, unit.cut_height))):
                seams = 2 * design.making.seam
                sentence = (
                    f"A unit of {recipe.name} is drafted {_told_size(unit.cut_width, unit.cut_height, units)} as cut, "
                    f"but finished {_told_size(want[0] - seams, want[1] - seams, units)} and two seams "
                    f"make {_told_size(*want, units)}."
                )
                yield Fault(dotted("recipes", recipe.name, "finished"), sentence, REBUILD)
    yield from _trims(pattern)


def _unit_size(recipe: Recipe, quarter: str, design: Design) -> tuple[Length, Length]:
    """Return the cut size of a unit: as stated where its master is cut in the middle alone, else as laid out."""
    if all(map(_way, recipe.cuts)):
        return _cut_size(recipe, design)
    seams = 2 * design.making.seam
    width, height = laid_size(recipe, quarter, design.making.seam)
    return width + seams, height + seams


def _cut_size(recipe: Recipe | Rejoined, design: Design) -> tuple[Length, Length]:
    seams = 2 * design.making.seam
    return recipe.finished_width + seams, recipe.finished_height + seams


def _told_size(width: Length, height: Length, units: Units) -> str:
    return tell(width, units) if width == height else f"{tell(width, units)} × {tell(height, units)}"


def _trims(pattern: Pattern) -> Iterator[Fault]:
    """Ask that each trim is measured to the cut size of a unit, or to half of what is left of a master or a block."""
    design, units = pattern.design, pattern.design.units
    allowed = {
        length
        for recipe in design.recipes
        for unit in pattern.blocks.master(recipe.name).units
        for length in _unit_size(recipe, unit.quarter, design)
    }
    all_recipes: tuple[Recipe | Rejoined, ...] = (*design.recipes, *design.rejoined)
    halves = {side / 2 for each in all_recipes for side in _trimmed(each, design)}
    halves |= {side for each in design.rejoined for side in _from_seam(each, design)}
    for step in pattern.steps.steps:
        if not isinstance(step.action, Trim):
            continue
        for trim in step.action.lines:
            found = allowed if trim.kind is Reference.CUT else halves
            if not any(abs(trim.distance - each) < CLOSE for each in found):
                side = tell(trim.distance, units)
                sentence = f"Step {step.number} trims units to {side}, which is the cut size of no unit."
                yield Fault("recipes", sentence, REBUILD, f"step {step.number}")
                break


def _trimmed(recipe: Recipe | Rejoined, design: Design) -> tuple[Length, Length]:
    """Return what trimming leaves of a master, or of a rejoined block."""
    if isinstance(recipe, Rejoined):
        return _cut_size(recipe, design)
    return recipe.width - recipe.trim_width, recipe.height - recipe.trim_height


def _from_seam(rejoined: Rejoined, design: Design) -> Iterator[Length]:
    """Return how far the sides of a rejoined block lie from the middle of its seam, which is that of the cut."""
    import shapely

    recipe = design.recipe(rejoined.of)
    line = line_of_cut(recipe.cuts[0])
    half_width, half_height = (float(side) / 2 for side in _trimmed(recipe, design))
    ends = shapely.LineString([(p.real, p.imag) for p in (line.at(-FAR), line.at(FAR))])
    middle = ends.intersection(shapely.box(-half_width, -half_height, half_width, half_height)).centroid
    width, height = _cut_size(rejoined, design)
    for side, off in ((width, Length(middle.x)), (height, Length(middle.y))):
        yield from (side / 2 + off, side / 2 - off)


def master_sizes(pattern: Pattern) -> Iterator[Fault]:
    """Hold the master as cut against its units, u + 2s each, and the trimming: in design, blocks and cutting list."""
    design, units = pattern.design, pattern.design.units
    for recipe in design.recipes:
        want = _master_size(recipe, design)
        for where, size in _master_sizes(pattern, recipe):
            if size not in (want, want[::-1]):
                many = "four units" if recipe.kind is not RecipeKind.SHAPES else "its units"
                sentence = (
                    f"The square of {recipe.name} is {_told_size(*size, units)} in {where}; {many}, their seams and "
                    f"trimming make {_told_size(*want, units)}."
                )
                remedy = f"Set start to {_told_size(*want, units)} wherever it stands."
                yield Fault(dotted("recipes", recipe.name, "start"), sentence, remedy)


def _master_size(recipe: Recipe, design: Design) -> tuple[Length, Length]:
    """Add up a master: two units where a cut runs down (or across) its middle, else one; their seams; the trimming."""
    width, height = _cut_size(recipe, design)
    ways = {_way(cut) for cut in recipe.cuts}
    across, down = (2 if "down" in ways else 1), (2 if "across" in ways else 1)
    return across * width + recipe.trim_width, down * height + recipe.trim_height


def _way(cut: Cut) -> str:
    """Return how a cut through the middle runs, where it is vertical or horizontal."""
    if cut.start_x == cut.end_x == 0:
        return "down"
    return "across" if cut.start_y == cut.end_y == 0 else ""


def _master_sizes(pattern: Pattern, recipe: Recipe) -> Iterator[tuple[str, tuple[Length, Length]]]:
    yield "the design", (recipe.width, recipe.height)
    master = pattern.blocks.master(recipe.name)
    yield "the drafted block", (master.width, master.height)
    for count in pattern.bill.masters:
        if count.recipe == recipe.name:
            ground = pattern.bill.piece(count.ground)
            yield "the cutting list", (ground.width, ground.length)


def clearance(pattern: Pattern) -> Iterator[Fault]:
    """Ask that the curve stays clear of the outer seams of its unit."""
    design, units = pattern.design, pattern.design.units
    for recipe, shape in shapes_of(design):
        rooms = (side / 2 - design.making.seam for side in _trimmed(recipe, design))
        edge, reach = min(
            zip(map(float, rooms), shape.reach, strict=True), key=lambda pair: pair[0] - pair[1]
        )
        if edge - reach < LEAST_CLEARANCE - CLOSE:
            sentence = (
                f"The curve of {called(recipe, shape)} comes within {near(edge - reach, units)} of its unit's outer "
                "cut edge; where that seam is sewn a little too wide it cuts into the curve."
            )
            share = (edge - LEAST_CLEARANCE) / reach
            widest = show_length(share * shape.width, units, sixteenths=True)
            remedy = f"Trace the shape {widest} across or less, or make finished larger."
            if recipe.kind is RecipeKind.SHAPES:
                remedy = "Make the shape smaller, lay it nearer to the middle, or make the master larger."
            yield Fault(dotted("recipes", recipe.name, shape_key(recipe)), sentence, remedy)


def crossings(pattern: Pattern) -> Iterator[Fault]:
    """Hold where the drafted curve meets the seam against the closed form."""
    for recipe, draft in drafts_of(pattern.design):
        drawn = pattern.blocks.master(recipe.name).facts.crossing
        if draft.crossing is not None and abs(drawn - draft.crossing) > CLOSE:
            units = pattern.design.units
            sentence = (
                f"The drawings let the curve of {recipe.name} meet the seam {tell(drawn, units)} from the corner; "
                f"it meets it at {tell(draft.crossing, units)}."
            )
            yield Fault(dotted("recipes", recipe.name, "shape"), sentence, REBUILD)


def area_left(pattern: Pattern) -> Iterator[Fault]:
    """Tell where the seams take half of a shape that is traced as drawn; one used as a motif alone meets no seam."""
    design, units = pattern.design, pattern.design.units
    cut = {colourway.recipe for colourway in design.colourways}
    for recipe, draft in drafts_of(design):
        if recipe.name in cut and draft.area_left < LEAST_AREA and recipe.curve is Curve.AS_DRAWN:
            sentence = f"The seams leave {draft.area_left:.0%} of the shapes of {recipe.name}."
            if draft.crossing is not None:
                sentence = (
                    f"The seams leave {draft.area_left:.0%} of the shape of {recipe.name}: traced "
                    f"{_extent(draft.shape, units)}, it finishes "
                    f"{show_length(2 * draft.crossing, units, sixteenths=True)} across where four units meet."
                )
            remedy = 'Enlarge the shape, or set curve = "sewn true" so that it finishes as drawn.'
            yield Fault(dotted("recipes", recipe.name, shape_key(recipe)), sentence, remedy)


def _extent(shape: ShapeDraft, units: Units) -> str:
    """Tell how large a shape is traced: by one measure where it is as wide as high."""
    width, height = (show_length(each, units, sixteenths=True) for each in (shape.width, shape.height))
    return f"{width} across" if width == height else f"{width} wide and {height} high"


def tight_curves(pattern: Pattern) -> Iterator[Fault]:
    """Ask for curves that the edge stitch can follow."""
    stitch, units = pattern.design.making.stitch, pattern.design.units
    for recipe, shape in shapes_of(pattern.design):
        least = TIGHTEST_CURVE * float(stitch.width)
        if shape.bend < least:
            sentence = (
                f"The curve of {called(recipe, shape)} has a radius of {near(shape.bend, units)}; a stitch "
                f"{in_millimetres(stitch.width)} wide needs {near(least, units)} to turn neatly."
            )
            remedy = "Use a larger shape, or make making.stitch.width smaller."
            yield Fault(dotted("recipes", recipe.name, shape_key(recipe)), sentence, remedy)


def units_per_master(pattern: Pattern) -> Iterator[Fault]:
    """Ask that the cuts leave the kinds of unit that the outline has: four equal ones of a circle."""
    for recipe, draft in drafts_of(pattern.design):
        master = pattern.blocks.master(recipe.name)
        found = {unit.quarter: master.per_master(number) for number, unit in enumerate(master.units)}
        if found != draft.kinds:
            sentence = f"A master of {recipe.name} gives {_told(draft.kinds)}; here it gives {_told(found)}."
            yield Fault(dotted("recipes", recipe.name), sentence, REBUILD)


def _told(kinds: Mapping[str, int]) -> str:
    if len(kinds) == 1:
        return show_count(next(iter(kinds.values())), "equal unit")
    return ", ".join(f"{count} {quarter}" for quarter, count in kinds.items())


def cuts_through_middle(pattern: Pattern) -> Iterator[Fault]:
    """Ask that both cuts of a short form run through the middle of the square, at right angles to one another."""
    short = {recipe.name for recipe in pattern.design.recipes if recipe.kind is not RecipeKind.SHAPES}
    for step in pattern.steps.steps:
        action = step.action
        if isinstance(action, CutApart) and action.recipe in short and not _cross_at_middle(action.cuts):
            sentence = (
                f"Step {step.number} does not cut its square twice through the middle at right angles, "
                "so its units would differ."
            )
            yield Fault(dotted("recipes", action.recipe), sentence, REBUILD, f"step {step.number}")


def _cross_at_middle(cuts: tuple[StraightLine, ...]) -> bool:
    if len(cuts) != 2 or any(abs(cut.side(0j)) > CLOSE for cut in cuts):
        return False
    first, second = (cut.direction for cut in cuts)
    return math.isclose((first * second.conjugate()).real, 0.0, abs_tol=1e-9)


def cuts_as_stated(pattern: Pattern) -> Iterator[Fault]:
    """Ask that a master is cut where its recipe says, in that order: through both points of each cut."""
    recipes = {recipe.name: recipe for recipe in pattern.design.recipes}
    for step in pattern.steps.steps:
        if not isinstance(step.action, CutApart) or step.action.recipe not in recipes:
            continue
        cuts = recipes[step.action.recipe].cuts
        if len(cuts) != len(step.action.cuts) or not all(map(_runs_along, step.action.cuts, cuts)):
            sentence = f"Step {step.number} does not cut its master where recipe {step.action.recipe} says."
            yield Fault(dotted("recipes", step.action.recipe), sentence, REBUILD, f"step {step.number}")


def _runs_along(line: StraightLine, cut: Cut) -> bool:
    ends = ((cut.start_x, cut.start_y), (cut.end_x, cut.end_y))
    return all(abs(line.side(complex(float(x), float(y)))) < CLOSE for x, y in ends)


UNIT_GEOMETRY = (
    check("unit-size", Severity.STOPS, (1,), "A cut unit is its finished side and two seams.", unit_sizes),
    check(
        "master-size",
        Severity.STOPS,
        (2,),
        "A master as cut holds its cut units and the trimming, and has one size everywhere.",
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
        "A master gives the kinds of unit that it should.",
        units_per_master,
    ),
    check(
        "cut-off-centre",
        Severity.STOPS,
        (8,),
        "Both cuts run through the middle of the square.",
        cuts_through_middle,
    ),
    check("cut-misplaced", Severity.STOPS, (8,), "Masters are cut where the recipe says.", cuts_as_stated),
)
