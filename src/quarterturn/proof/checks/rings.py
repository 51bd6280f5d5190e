"""Checks of the web ring and of the ground cut away behind the shape (group A of the trade's list).

The ring reaches `ring_in` inside the drawn line. The edge stitch swings its width into the shape; the ground is
cut away `cut_away` inside the stitching. So the web must end before that cut, and there must be a hollow.
"""

from __future__ import annotations

from collections.abc import Iterator

from quarterturn.design import Design, Severity, default_making, dotted, written_name
from quarterturn.geometry import Region, region_bounds
from quarterturn.measure import Length, show_count, show_length
from quarterturn.proof.checks.drafting import Draft, called, drafts_of, shape_key, shapes_of
from quarterturn.proof.checks.fault import REBUILD, Fault, check, in_millimetres, near, tell
from quarterturn.proof.model import Pattern
from quarterturn.steps import Step, TraceRings, Tracing, tracings_of

LEAST_HOLLOW = 0.5
"""Across, in inches: a smaller hollow cannot be cut out of the web (common practice)."""

STITCH_MARGIN = 1 / 16
"""Web inside the line beyond the width of the stitch, in inches, so that the stitch has hold (trade check 10)."""

LEAST_CUT_AWAY = 1 / 8
"""Ground left inside the stitching, in inches; 3/16" to 1/4" is common practice, less lets stitches pull out."""

LEAST_ROOM = 0.25
"""Radius of the ground that can be cut away, in inches: with less there is nothing to hold."""

CLOSE = 1e-3


def hollows(pattern: Pattern) -> Iterator[Fault]:
    """Ask for a hollow in every ring, so that the ground behind the shape can be lifted and cut away."""
    design, units = pattern.design, pattern.design.units
    ring = float(design.making.ring_in)
    for recipe, shape in shapes_of(design):
        across = 2 * (shape.room - ring)
        if across < LEAST_HOLLOW:
            hollow = near(max(across, 0.0), units)
            sentence = (
                f"The web of {called(recipe, shape)} would have a hollow of {hollow} across, too small to cut out: "
                "the shape is glued down all over, stiff, and its ground cannot be cut away."
            )
            most = show_length(max(shape.room - LEAST_HOLLOW / 2, 0.0), units, sixteenths=True)
            remedy = f"Make the shape larger, or set making.ring_in to {most} or less."
            yield Fault(dotted("recipes", recipe.name, shape_key(recipe)), sentence, remedy)


def ring_widths(pattern: Pattern) -> Iterator[Fault]:
    """Ask that the web reaches further in than the stitch."""
    making, units = pattern.design.making, pattern.design.units
    least = float(making.stitch.width) + STITCH_MARGIN
    if float(making.ring_in) < least - CLOSE:
        sentence = (
            f"The web reaches {tell(making.ring_in, units)} inside the line, the stitch "
            f"{in_millimetres(making.stitch.width)}: threads at the edge are not held."
        )
        remedy = f"Set making.ring_in to {show_length(least + 1 / 32, units, sixteenths=True)} or more."
        yield Fault("making.ring_in", sentence, remedy)


def glued_ground(pattern: Pattern) -> Iterator[Fault]:
    """Ask that what is to be cut away behind a shape is not glued to its ring."""
    making, units = pattern.design.making, pattern.design.units
    if sentence := _glued(pattern.design, making.cut_away, "the ground"):
        remedy = f"Set making.ring_in to {show_length(making.cut_away, units)}, as cut_away is."
        yield Fault("making.ring_in", sentence, remedy)
    for recipe in pattern.design.recipes:
        for number, shape in enumerate(recipe.shapes):
            if shape.underlap is None:
                continue
            if sentence := _glued(pattern.design, shape.underlap, f"what lies below the {shape.part}"):
                key = dotted("recipes", recipe.name, "shapes", number, "underlap")
                yield Fault(key, sentence, f"Make underlap {tell(making.ring_in, units)} or more.")


def _glued(design: Design, left: Length, what: str) -> str:
    """Say that web reaches beyond what is left inside the stitching; nothing where it does not."""
    cut, units = design.making.stitch.width + left, design.units
    if design.making.ring_in <= cut:
        return ""
    return (
        f"The web reaches {tell(design.making.ring_in, units)} inside the line, but {what} is cut away from "
        f"{near(cut, units)} inside it: there it is glued to the shape."
    )


def close_cutting(pattern: Pattern) -> Iterator[Fault]:
    """Ask for enough ground to be left inside the stitching."""
    left, units = pattern.design.making.cut_away, pattern.design.units
    if float(left) < LEAST_CUT_AWAY - CLOSE * 10:
        inside = tell(left, units)
        sentence = (
            f"The ground is cut away {inside} inside the stitching; stitches pull out of so little cloth."
        )
        habit = show_length(default_making(units).cut_away, units)
        yield Fault("making.cut_away", sentence, f"Set making.cut_away to {habit}, which is common practice.")


def room_to_cut_away(pattern: Pattern) -> Iterator[Fault]:
    """Ask that there is ground to cut away inside the stitching."""
    making, units = pattern.design.making, pattern.design.units
    for recipe, shape in shapes_of(pattern.design):
        room = shape.room - float(making.stitch.width + making.cut_away)
        if room < LEAST_ROOM:
            left = near(max(room, 0.0), units)
            sentence = (
                f"Behind the shape of {called(recipe, shape)} only {left} of ground, measured from its middle, "
                "could be cut away: too little to hold on to."
            )
            remedy = "Make the shape larger, or making.cut_away smaller."
            yield Fault(dotted("recipes", recipe.name, shape_key(recipe)), sentence, remedy)


def ring_lines(pattern: Pattern) -> Iterator[Fault]:
    """Hold the lines along which the web is cut against the shape and the ring's margins."""
    design, units = pattern.design, pattern.design.units
    drafts = {recipe.name: draft for recipe, draft in drafts_of(design)}
    for step, traced in _traced(pattern):
        if traced.recipe not in drafts:
            continue
        draft, found = drafts[traced.recipe], [_across(traced.ring_out)]
        wanted = [_outer(draft, found[0], float(design.making.ring_out))]
        if draft.peak is not None:  # a circle: the hollow of an outline with points ends short of them
            inner = draft.shape.width - 2 * float(design.making.ring_in)
            wanted.append(inner if inner >= LEAST_HOLLOW else 0.0)
            found.append(_across(traced.ring_in))
        for name, want, is_ in zip(("outer", "inner"), wanted, found, strict=False):
            if abs(want - is_) > CLOSE:
                sentence = (
                    f"The {name} line of the web ring of {traced.recipe} measures {tell(is_, units)} across "
                    f"in step {step.number}; it should measure {tell(want, units)}."
                )
                yield Fault("making.ring_in", sentence, REBUILD, f"step {step.number}")


def _traced(pattern: Pattern) -> Iterator[tuple[Step, TraceRings | Tracing]]:
    return ((step, traced) for step in pattern.steps.steps for traced, _ in tracings_of(step))


def _outer(draft: Draft, found: float, ring: float) -> float:
    """Return how wide the web of one of a recipe's shapes is: of that which comes nearest to what was found."""
    return min((shape.width + 2 * ring for shape in draft.shapes), key=lambda width: abs(width - found))


def _across(region: Region) -> float:
    return region_bounds(region).width if region.paths else 0.0


def rings_traced(pattern: Pattern) -> Iterator[Fault]:
    """Ask for as many rings as squares are made of each recipe, and of each of its shapes, and as motifs are.

    A recipe is counted together with its copy for prints that stand upright, with which it shares its templates.
    """
    drafts = {recipe.name: draft for recipe, draft in drafts_of(pattern.design)}
    needed: dict[str, int] = {}
    for count in pattern.bill.masters:
        shapes = len(drafts[count.recipe].shapes) if count.recipe in drafts else 1
        name = written_name(pattern.design, count.recipe)
        needed[name] = needed.get(name, 0) + count.count * shapes
    for motif in pattern.bill.motifs:
        name = written_name(pattern.design, motif.recipe)
        needed[name] = needed.get(name, 0) + motif.count
    traced: dict[str, int] = {}
    for step in pattern.steps.steps:
        for tracing, made in tracings_of(step):
            name = written_name(pattern.design, tracing.recipe)
            traced[name] = traced.get(name, 0) + made
    for recipe in sorted((needed.keys() | traced.keys()) - _too_wide(pattern)):
        want, found = needed.get(recipe, 0), traced.get(recipe, 0)
        if want != found:
            sentence = f"The squares of {recipe} need {show_count(want, 'shape')}, but {found} are traced."
            yield Fault(dotted("recipes", recipe), sentence, REBUILD)


def _too_wide(pattern: Pattern) -> set[str]:
    """Return the recipes of which some shape fits no web, which another check tells."""
    unplaced = set(pattern.materials.web.unplaced)
    return {
        written_name(pattern.design, m.recipe)
        for m in pattern.blocks.masters
        if unplaced & {shape.name for shape in m.shapes}
    }


RINGS = (
    check("ring-no-hollow", Severity.STOPS, (9,), "Every web ring has a hollow.", hollows),
    check(
        "ring-too-narrow", Severity.STOPS, (10,), "The web reaches further in than the stitch.", ring_widths
    ),
    check("ground-glued", Severity.STOPS, (9,), "Ground that is to be cut away is not glued.", glued_ground),
    check(
        "cut-away-too-close", Severity.STOPS, (95,), "Cutting away leaves the stitches a hold.", close_cutting
    ),
    check(
        "nothing-to-cut-away",
        Severity.CONFUSES,
        (9, 95),
        "There is ground to cut away behind every shape.",
        room_to_cut_away,
    ),
    check("ring-lines-wrong", Severity.STOPS, (10,), "The ring is cut as wide as stated.", ring_lines),
    check(
        "rings-miscounted", Severity.STOPS, (18,), "As many shapes are traced as squares made.", rings_traced
    ),
)
