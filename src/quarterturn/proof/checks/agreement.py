"""Checks that what is told more than once is told alike (groups D and E of the trade's list)."""

from __future__ import annotations

from collections.abc import Iterator

from quarterturn.design import Design, Severity, dotted
from quarterturn.measure import Length, Units
from quarterturn.proof.checks.fault import REBUILD, Fault, check, differ, tell
from quarterturn.proof.checks.sizing import centre_size, finished_size
from quarterturn.proof.checks.tallying import master_codes, unit_counts
from quarterturn.proof.checks.walking import cloths_of, motifs_of
from quarterturn.proof.model import Pattern
from quarterturn.steps import (
    Action,
    AddBorder,
    Bind,
    Chapter,
    CutAway,
    CutBias,
    CutSegments,
    JoinPanels,
    LayerQuilt,
    SewLine,
    StitchEdge,
    Subcut,
)

FOR_SHAPES = ("web", "thread")
"""Needed besides cloth for shapes that are fused and stitched."""


def finished_sizes(pattern: Pattern) -> Iterator[Fault]:
    """Finished size = the columns and twice the borders: in the setting and in the last step."""
    design, setting, units = pattern.design, pattern.setting, pattern.design.units
    sizes = [
        ("The quilt", finished_size(design), (setting.width, setting.height)),
        ("The centre", centre_size(design), (setting.centre.width, setting.centre.height)),
    ]
    last = pattern.steps.steps[-1]
    sizes += [("The quilt as bound", finished_size(design), (made.width, made.height)) for made in last.makes]
    for name, want, found in sizes:
        if any(map(differ, want, found)):
            sentence = (
                f"{name} is said to finish {_rectangle(found, units)}; units and borders add up to "
                f"{_rectangle(want, units)}."
            )
            yield Fault("setting", sentence, REBUILD)


def _rectangle(size: tuple[Length, Length], units: Units) -> str:
    return f"{tell(size[0], units)} × {tell(size[1], units)}"


def step_numbers(pattern: Pattern) -> Iterator[Fault]:
    """Ask for steps numbered from 1 without a gap, in the order of the chapters."""
    numbers = [step.number for step in pattern.steps.steps]
    if numbers != list(range(1, len(numbers) + 1)):
        wrong = next(n for n, number in enumerate(numbers, start=1) if n != number)
        yield Fault("", f"Where step {wrong} should be, step {numbers[wrong - 1]} is.", REBUILD)
    order = {chapter: place for place, chapter in enumerate(Chapter)}
    places = [order[step.chapter] for step in pattern.steps.steps]
    if places != sorted(places):
        wrong = next(n for n in range(1, len(places)) if places[n] < places[n - 1])
        step = pattern.steps.steps[wrong]
        yield Fault("", f"Step {step.number} is of {step.chapter.value}, after a later chapter.", REBUILD)


def settings_repeated(pattern: Pattern) -> Iterator[Fault]:
    """Ask that every step states the allowances of the design."""
    units = pattern.design.units
    for step in pattern.steps.steps:
        for key, want, found in _stated(step.action, pattern.design):
            if want != found:
                sentence = (
                    f"Step {step.number} says {tell(found, units)}; the design says {tell(want, units)}."
                )
                yield Fault(key, sentence, REBUILD, f"step {step.number}")
        most = pattern.design.making.layers
        if isinstance(step.action, Subcut | CutSegments) and step.action.layers > most:
            sentence = f"Step {step.number} cuts {step.action.layers} layers at once; the design says {most}."
            yield Fault("making.layers", sentence, REBUILD, f"step {step.number}")


def _stated(action: Action, design: Design) -> Iterator[tuple[str, Length, Length]]:
    """Return key, value of the design, and value in the step."""
    making = design.making
    if isinstance(action, SewLine | AddBorder | CutBias | Bind | LayerQuilt):
        yield "making.seam", making.seam, action.seam
    if isinstance(action, Bind | CutBias):
        yield "binding.width", design.binding_width, action.strip_width
    elif isinstance(action, LayerQuilt):
        yield "making.overage", making.overage, action.overage
    elif isinstance(action, CutAway):
        yield from _underlaps(action, design)
    elif isinstance(action, JoinPanels):
        yield "making.backing_seam", making.backing_seam, action.seam
    elif isinstance(action, StitchEdge):
        yield "making.stitch.width", making.stitch.width, action.stitch.width
        yield "making.stitch.length", making.stitch.length, action.stitch.length


def _underlaps(action: CutAway, design: Design) -> Iterator[tuple[str, Length, Length]]:
    """Return how much is left inside the stitching of each shape: as it says itself, else as all do."""
    shapes = design.recipe(action.recipe).shapes
    for behind in action.behind:
        own = shapes[behind.number].underlap
        key = "making.cut_away" if own is None else dotted("recipes", action.recipe, "shapes", behind.number)
        yield key, design.making.cut_away if own is None else own, behind.inside


def materials_listed(pattern: Pattern) -> Iterator[Fault]:
    """Ask that every material the quilt needs is on the list."""
    listed = {line.key for line in pattern.materials.shopping}
    planned = {plan.fabric for plan in pattern.materials.cloth}
    for letter in sorted(used_fabrics(pattern.design)):
        for where, letters in (("shopping list", listed), ("cutting", planned)):
            if letter not in letters:
                sentence = f"The quilt uses fabric {letter}, and the {where} does not have it."
                yield Fault(dotted("fabrics", letter), sentence, REBUILD)
    shapes = bool(pattern.setting.tally or any(motifs_of(pattern.design)))
    for thing in ("batting", *(FOR_SHAPES if shapes else ())):
        if thing not in listed:
            yield Fault(
                "", f"The quilt needs {thing}, and the shopping list does not have it.", REBUILD, thing
            )


def materials_used(pattern: Pattern) -> Iterator[Fault]:
    """Ask that every material on the list is used."""
    used = used_fabrics(pattern.design)
    letters = {fabric.letter for fabric in pattern.design.fabrics}
    for line in pattern.materials.shopping:
        if line.key in letters and line.key not in used:
            sentence = f"The shopping list has fabric {line.key}, which the quilt does not use."
            yield Fault(dotted("fabrics", line.key), sentence, REBUILD)


def used_fabrics(design: Design) -> set[str]:
    """Return the letters of all fabrics that are cut."""
    return {design.binding_fabric, design.backing_fabric} | top_fabrics(design)


def top_fabrics(design: Design) -> set[str]:
    """Return the letters of all fabrics that are sewn into the top."""
    used = {leaf.name for leaf in cloths_of(design)}
    used |= {motif.fabric for _, motif in motifs_of(design)}
    for code in master_codes(design):
        used |= {*design.colourway(code).letters}
    return used


def fabrics_in_use(pattern: Pattern) -> Iterator[Fault]:
    """Tell of fabrics in the file that the quilt does not use."""
    used = used_fabrics(pattern.design)
    for fabric in pattern.design.fabrics:
        if fabric.letter not in used:
            sentence = f"Fabric {fabric.letter}, {fabric.name}, is named but never used."
            remedy = "Use it, or take it out of the file, so that nobody buys it."
            yield Fault(dotted("fabrics", fabric.letter), sentence, remedy)


def colourways_in_use(pattern: Pattern) -> Iterator[Fault]:
    """Tell of colourways and recipes that the map does not use."""
    design = pattern.design
    used = {*unit_counts(design), *master_codes(design)}
    for colourway in design.colourways:
        if colourway.code not in used:
            sentence = f"The map has no unit of colourway {colourway.code}."
            yield Fault(dotted("colourways", colourway.code), sentence, "Use it in the map, or take it out.")
    recipes = {design.colourway(code).recipe for code in used}
    recipes |= {motif.recipe for _, motif in motifs_of(design)}
    for name in (*(recipe.name for recipe in design.recipes), *(each.name for each in design.rejoined)):
        if name not in recipes:
            sentence = f"The map has no unit of recipe {name}."
            coloured = [each.code for each in design.colourways if each.recipe == name]
            remedy = f"Lay {' or '.join(coloured)} on the map" if coloured else "Use it in a colourway"
            yield Fault(dotted("recipes", name), sentence, f"{remedy}, or take it out.")


AGREEMENT = (
    check("finished-size", Severity.STOPS, (57, 58), "Columns and borders add up.", finished_sizes),
    check("steps-misnumbered", Severity.CONFUSES, (63,), "Steps run on from 1.", step_numbers),
    check(
        "settings-differ", Severity.STOPS, (57, 71), "Steps state the design's allowances.", settings_repeated
    ),
    check("material-missing", Severity.COSTS, (52, 53), "Whatever is needed is listed.", materials_listed),
    check("material-unneeded", Severity.COSTS, (52,), "Whatever is listed is needed.", materials_used),
    check("fabric-unused", Severity.CONFUSES, (52, 61), "Every fabric is used.", fabrics_in_use),
    check("colourway-unused", Severity.CONFUSES, (52,), "The map uses every colourway.", colourways_in_use),
)
