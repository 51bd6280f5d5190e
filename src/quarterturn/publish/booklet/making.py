"""The pages from the first cut to a counted stack of units."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from quarterturn.design import code_of_unit
from quarterturn.materials import ClothPlan
from quarterturn.proof import Pattern
from quarterturn.publish.booklet.entries import cut_lines, gather
from quarterturn.publish.booklet.model import (
    Block,
    Cell,
    CutLine,
    CutList,
    Entry,
    Figure,
    Notes,
    Plate,
    Section,
)
from quarterturn.publish.figures import (
    apart_figure,
    blank_figure,
    cloth_figure,
    colourway_figure,
    fusing_figure,
    ring_figure,
    stitching_figure,
    triangles_figure,
    trim_figure,
)
from quarterturn.publish.wording import curve_facts, cutting_advice, named, plan_line, tell
from quarterturn.steps import (
    Chapter,
    Crease,
    CutApart,
    CutAway,
    CutTriangles,
    FuseRings,
    SetAside,
    Step,
    StitchEdge,
    TraceRings,
    Trim,
)


def cutting(pattern: Pattern, width: float, first: int) -> tuple[Block, ...]:
    """Return the cutting list of each fabric with its plan, and what is left over."""
    blocks: list[Block] = [Section("Cutting")]
    blocks.append(Notes("", cutting_advice(pattern)))
    number = first
    for plan, steps in _by_fabric(pattern):
        lines = cut_lines(steps, pattern, number)
        number += len(lines)
        blocks.append(_cut_list(pattern, plan, lines, width))
    spare = [s for s in pattern.steps.of(Chapter.CUTTING) if isinstance(s.action, SetAside)]
    return (*blocks, *_triangles(pattern), *gather(spare, pattern, number))


def _triangles(pattern: Pattern) -> tuple[Plate, ...]:
    """Return how squares are cut corner to corner, a drawing for each kind."""
    steps = [s for s in pattern.steps.of(Chapter.CUTTING) if isinstance(s.action, CutTriangles)]
    cells = tuple(Cell(triangles_figure(pattern, step), _triangles_line(step)) for step in steps)
    if not cells:
        return ()
    what = "Squares cut corner to corner; the straight grain comes to the outer edge"
    return (Plate(Figure(what, cells, columns=min(2, len(cells)))),)


def _triangles_line(step: Step) -> str:
    """Return which squares they are, and what becomes of each."""
    assert isinstance(step.action, CutTriangles)
    if step.action.cuts == 2:
        return f"{step.uses[0].label}: cut twice, each square gives (4) side triangles"
    return f"{step.uses[0].label}: cut once, each square gives (2) corner triangles"


def _cut_list(pattern: Pattern, plan: ClothPlan, lines: tuple[CutLine, ...], width: float) -> CutList:
    fabric = pattern.design.fabric(plan.fabric)
    figure = Figure(
        f"Cutting plan of Fabric {plan.fabric}", (Cell(cloth_figure(pattern, plan, width * 0.5)),)
    )
    return CutList(named(pattern.design, plan.fabric), fabric.colour, lines, figure, plan_line(pattern, plan))


def _by_fabric(pattern: Pattern) -> Iterator[tuple[ClothPlan, list[Step]]]:
    """Return each fabric's plan with its cutting steps, by the titles under which they are told."""
    steps = [s for s in pattern.steps.of(Chapter.CUTTING) if not isinstance(s.action, SetAside)]
    for plan in pattern.materials.cloth:
        mine = [s for s in steps if tell(s, pattern).title == named(pattern.design, plan.fabric)]
        if mine:
            yield plan, mine


def shapes(pattern: Pattern, first: int) -> Iterator[Block]:
    """Return the preparing of the shapes."""
    steps = pattern.steps.of(Chapter.SHAPES)
    if not steps:
        return
    yield Section("Preparing the shapes")
    shapes = [(made.recipe, made.shape) for made in pattern.bill.masters]
    shapes += [(motif.recipe, motif.shape) for motif in pattern.bill.motifs]
    sheet = blank_figure(pattern, *shapes[0])
    blank = Figure("A ring fused to the wrong side", (Cell(sheet),))
    for entry in gather(steps, pattern, first):
        action = _step(pattern, entry).action
        if isinstance(action, TraceRings):
            yield _with(entry, _tracings(pattern, entry))
        else:
            yield _with(entry, blank if isinstance(action, FuseRings) else None)


def _tracings(pattern: Pattern, entry: Entry) -> Figure:
    """Return a row of the tracings of each recipe that an entry tells of."""
    actions = [pattern.steps.steps[number - 1].action for number in entry.steps]
    recipes = {action.recipe for action in actions if isinstance(action, TraceRings)}
    rows = (rows for rows in pattern.materials.web.rows if rows.shape in recipes)
    cells = tuple(Cell(ring_figure(pattern, row)) for row in rows)
    return Figure("Tracings in a row across the web, to scale; the tinted ring stays", cells)


def _step(pattern: Pattern, entry: Entry) -> Step:
    return pattern.steps.steps[entry.steps[0] - 1]


def _with(entry: Entry, figure: Figure | None) -> Entry:
    return replace(entry, figures=(figure,)) if figure else entry


def fusing(pattern: Pattern, first: int) -> Iterator[Block]:
    """Return creasing, fusing and stitching."""
    if not pattern.setting.codes:
        return
    yield Section("Fusing and stitching")
    stitching = pattern.steps.of(Chapter.STITCHING)
    code = pattern.setting.codes[0]
    figures = {
        Crease: Figure(
            "Crease the square; centre the shape on the creases", (Cell(fusing_figure(pattern, code)),)
        ),
        StitchEdge: Figure("Start between two creases", (Cell(stitching_figure(pattern, stitching[0])),)),
    }
    for entry in gather((*pattern.steps.of(Chapter.FUSING), *stitching), pattern, first):
        yield _with(entry, figures.get(type(_step(pattern, entry).action)))


def units(pattern: Pattern, first: int) -> Iterator[Block]:
    """Return cutting apart, cutting away and trimming, and each colourway's unit."""
    if not pattern.setting.codes:
        return
    yield Section("Cutting apart")
    steps = pattern.steps.of(Chapter.UNITS)
    for entry in gather(steps, pattern, first):
        yield _unit_entry(pattern, entry, steps)
    yield Plate(_colourways(pattern))
    used = {masters.recipe for masters in pattern.bill.masters}
    facts = [said for m in pattern.blocks.masters if m.recipe in used for said in curve_facts(pattern, m)]
    yield Notes("What the seams make of the curve", tuple(facts))


def _unit_entry(pattern: Pattern, entry: Entry, steps: tuple[Step, ...]) -> Entry:
    step = _step(pattern, entry)
    if isinstance(step.action, CutApart):
        figure = Figure(
            "The ruler on the creases; the dashed line is the cut", (Cell(apart_figure(pattern, step)),)
        )
        return replace(entry, figures=(figure,), place="below")
    if isinstance(step.action, CutAway):
        trim = next((s for s in steps if isinstance(s.action, Trim)), None)
        code = next(iter(pattern.setting.tally))
        what = "Cut the ground away, then trim the two outer edges" if trim else "Cut the ground away"
        return _with(entry, Figure(what, (Cell(trim_figure(pattern, code, step, trim)),)))
    return entry


def _colourways(pattern: Pattern) -> Figure:
    cells = tuple(
        Cell(colourway_figure(pattern, code), _make_line(pattern, code)) for code in pattern.setting.tally
    )
    trimmed = any(isinstance(step.action, Trim) for step in pattern.steps.of(Chapter.UNITS))
    what = "The units, trimmed; seam lines dashed" if trimmed else "The units; seam lines dashed"
    return Figure(what, cells, columns=min(6, len(cells)))


def _make_line(pattern: Pattern, code: str) -> str:
    """Return what the last making step of a unit says: so many of it."""
    made = [
        product
        for step in pattern.steps.of(Chapter.UNITS)
        for product in step.makes
        if product.label == f"unit {code}"
    ]
    way = pattern.design.colourway(code_of_unit(code))
    return f"Make ({made[-1].count}) unit {code}, {way.shape} on {way.ground}"
