"""The pages from the first cut to a counted stack of units."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from quarterturn.design import code_of_unit
from quarterturn.materials import ClothPlan
from quarterturn.measure import Units
from quarterturn.proof import Pattern
from quarterturn.publish.booklet.entries import cut_lines, gather
from quarterturn.publish.booklet.finishing_units import finishing_entry, is_told_in_full
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
    Table,
)
from quarterturn.publish.figures import (
    apart_figure,
    blank_figure,
    bulk_figures,
    cloth_figure,
    colourway_figure,
    fusing_figure,
    layer_figure,
    marking_figure,
    nested_figures,
    parcel_figure,
    ring_figure,
    sewn_figure,
    staggered_figure,
    stitching_figure,
    template_shape,
    triangles_figure,
    trim_figure,
)
from quarterturn.publish.sheet import Sheet
from quarterturn.publish.wording import (
    CENTRE_HEADS,
    beside_plan,
    centre_rows,
    curve_facts,
    cutting_advice,
    joined_cloths,
    layout_line,
    named,
    tell,
    web_sentence,
)
from quarterturn.publish.wording.masters import is_general
from quarterturn.steps import (
    Chapter,
    Crease,
    CutApart,
    CutAway,
    CutTriangles,
    FuseRings,
    Rejoin,
    SetAside,
    Step,
    StitchEdge,
    TraceNested,
    TraceRings,
    Trim,
)

LAYOUTS = {Units.INCH: 3, Units.METRIC: 2}
"""Of pieces of cloth, drawn side by side: metric measures take more room."""


def cutting(pattern: Pattern, width: float, first: int) -> tuple[Block, ...]:
    """Return the cutting list of each fabric with its plan, and what is left over."""
    blocks: list[Block] = [Section("Cutting")]
    blocks.append(Notes("Before the first cut", cutting_advice(pattern)))
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
    title, told = named(pattern.design, plan.fabric), beside_plan(pattern, plan)
    what = f"Cutting plan of Fabric {plan.fabric}"
    bolt: tuple[Cell, ...] = (Cell(cloth_figure(pattern, plan, width * 0.5)),)
    if not plan.parcels or not plan.parcels.layouts:
        return CutList(title, fabric.colour, lines, Figure(what, bolt), told)
    layouts = plan.parcels.layouts
    if len(layouts) == 1 and not plan.is_off_the_bolt:
        cells: tuple[Cell, ...] = (
            Cell(parcel_figure(pattern, plan, layouts[0], width * 0.5), layout_line(plan, layouts[0])),
        )
        return CutList(title, fabric.colour, lines, Figure(what, cells), told)
    columns = 2 if plan.is_off_the_bolt else min(LAYOUTS[pattern.design.units], len(layouts))
    each = (width - 4 * (columns - 1)) / columns - 2
    cells = tuple(Cell(parcel_figure(pattern, plan, one, each), layout_line(plan, one)) for one in layouts)
    figure = Figure(what, (*(bolt if plan.is_off_the_bolt else ()), *cells), columns=columns)
    return CutList(title, fabric.colour, lines, figure, told, below=True)


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
    blank = Figure("A ring fused to the wrong side", (Cell(_first_blank(pattern)),))
    told: set[str] = set()
    entries = gather(steps, pattern, first)
    traced = [
        entry for entry in entries if isinstance(_step(pattern, entry).action, TraceNested | TraceRings)
    ]
    for entry in entries:
        action = _step(pattern, entry).action
        if isinstance(action, TraceNested):
            yield _with(entry, _nested(pattern, action), below=True)
        elif isinstance(action, TraceRings):
            figure = _staggered(pattern, entry) if action.stagger else _tracings(pattern, entry)
            yield _with(entry, figure, below=action.stagger is not None)
        else:
            shown = isinstance(action, FuseRings) and "blank" not in told
            told |= {"blank"} if shown else set()
            yield _with(entry, blank if shown else None)
        if traced and entry is traced[-1]:
            yield from _web(pattern)


def _web(pattern: Pattern) -> Iterator[Block]:
    """Return how much web is used, and the centres that rings leave."""
    rows = centre_rows(pattern)
    left = (
        ("Keep the centres that are cut out of the rings: small shapes can be traced on them.",)
        if rows
        else ()
    )
    yield Notes("The web", (web_sentence(pattern), *left))
    if rows:
        yield Table(CENTRE_HEADS, rows, (1.7, 0.8, 3.2, 1.5, 2.6))


def _first_blank(pattern: Pattern) -> Sheet:
    """Return the cloth of the first shape that is prepared: of a master, or where there is none of a motif."""
    for masters in pattern.bill.masters:
        blank = masters.blanks[0]
        return blank_figure(pattern, template_shape(pattern, masters.recipe, blank.shape), blank.label)
    motif = pattern.bill.motifs[0]
    name = pattern.blocks.master(motif.recipe).shape.name
    return blank_figure(pattern, template_shape(pattern, motif.recipe, name), motif.shape)


def _tracings(pattern: Pattern, entry: Entry) -> Figure:
    """Return a row of the tracings of each shape that an entry tells of."""
    shapes = {step.action.shape for step in _steps(pattern, entry) if isinstance(step.action, TraceRings)}
    rows = (rows for rows in pattern.materials.web.rows if rows.shape in shapes)
    cells = tuple(Cell(ring_figure(pattern, row)) for row in rows)
    return Figure("Tracings in a row across the web, to scale; the tinted ring stays", cells)


def _staggered(pattern: Pattern, entry: Entry) -> Figure:
    """Return the first rows of the tracings of each shape that an entry tells of."""
    steps = _steps(pattern, entry)
    width, named = (78.0, True) if len(steps) > 1 else (96.0, False)
    cells = tuple(
        Cell(
            staggered_figure(pattern, step.action, step.action.stagger, step.makes[0].count, width),
            step.action.shape if named else "",
        )
        for step in steps
        if isinstance(step.action, TraceRings) and step.action.stagger
    )
    told = "The first rows across the web, to scale; sizes lead to middles, the tinted ring stays"
    return Figure(told, cells, 2 if named else 1)


def _nested(pattern: Pattern, action: TraceNested) -> Figure:
    """Return the web with all its tracings."""
    cells = tuple(Cell(sheet) for sheet in nested_figures(pattern, action))
    if pattern.materials.web.sheet:
        return Figure("The sheets of web, to scale; numbers are those of the list", cells, 3)
    return Figure("The web from its cut end, at the left, to scale; numbers are those of the list", cells)


def _step(pattern: Pattern, entry: Entry) -> Step:
    return pattern.steps.steps[entry.steps[0] - 1]


def _steps(pattern: Pattern, entry: Entry) -> list[Step]:
    return [pattern.steps.steps[number - 1] for number in entry.steps]


def _with(entry: Entry, figure: Figure | None, *, below: bool = False) -> Entry:
    if figure is None:
        return entry
    return replace(entry, figures=(figure,), place="below" if below else "side")


def fusing(pattern: Pattern, first: int) -> Iterator[Block]:
    """Return creasing, fusing and stitching."""
    if not pattern.setting.codes:
        return
    yield Section("Fusing and stitching")
    stitching = pattern.steps.of(Chapter.STITCHING)
    for entry in gather((*pattern.steps.of(Chapter.FUSING), *stitching), pattern, first):
        step = _step(pattern, entry)
        if isinstance(step.action, Crease):
            yield _creasing(pattern, entry, step.action)
        elif isinstance(step.action, StitchEdge):
            yield _stitching(pattern, entry)
        else:
            yield entry


def _creasing(pattern: Pattern, entry: Entry, action: Crease) -> Entry:
    """Add the figure of the first colourway of a recipe; short forms are all creased alike, and shown once."""
    code = next(masters.code for masters in pattern.bill.masters if masters.recipe == action.recipe)
    if is_general(pattern, action.recipe):
        sheet = marking_figure(pattern, _step(pattern, entry), code)
        done = "marked" if action.drawn or action.middles else "creased"
        return _with(entry, Figure(f"The ground, {done}; the master, fused", (Cell(sheet),)), below=True)
    sheet = fusing_figure(pattern, code)
    return _with(entry, Figure("Crease the square; centre the shape on the creases", (Cell(sheet),)))


def _stitching(pattern: Pattern, entry: Entry) -> Entry:
    """Add a figure for each recipe of which an entry tells, from its first colourway."""
    steps = [step for step in _steps(pattern, entry) if isinstance(step.action, StitchEdge)]
    general = {
        (action.recipe, action.shape): step
        for step in reversed(steps)
        if isinstance(action := step.action, StitchEdge) and is_general(pattern, action.recipe)
    }
    if general:
        cells = tuple(Cell(layer_figure(pattern, step)) for step in reversed(tuple(general.values())))
        columns = min(3, len(cells))
        figure = Figure("Start at the arrows, away from the cuts", cells, columns=columns)
        return _with(entry, figure, below=columns > 1)
    return _with(entry, Figure("Start between two creases", (Cell(stitching_figure(pattern, steps[0])),)))


def units(pattern: Pattern, first: int) -> Iterator[Block]:
    """Return cutting apart, cutting away and trimming, and each colourway's unit."""
    if not pattern.setting.codes:
        return
    yield Section("Cutting apart")
    steps = pattern.steps.of(Chapter.UNITS)
    shown: set[tuple[str, ...]] = set()
    for entry in gather(steps, pattern, first):
        yield _unit_entry(pattern, entry, steps, shown)
    yield Plate(_colourways(pattern))
    yield from (Plate(figure) for figure in _seams(pattern))
    used = {masters.recipe for masters in pattern.bill.masters}
    facts = [said for m in pattern.blocks.masters if m.recipe in used for said in curve_facts(pattern, m)]
    yield Notes("What the seams make of the curve", tuple(facts))


def _unit_entry(
    pattern: Pattern, entry: Entry, steps: tuple[Step, ...], shown: set[tuple[str, ...]]
) -> Entry:
    step = _step(pattern, entry)
    action = step.action
    if isinstance(action, CutApart | CutAway | Trim | Rejoin) and is_told_in_full(pattern, action):
        return finishing_entry(pattern, entry, steps, shown)
    if isinstance(action, CutApart):
        figure = Figure(
            "The ruler on the creases; the dashed line is the cut", (Cell(apart_figure(pattern, step)),)
        )
        return _with(entry, figure, below=True)
    if isinstance(action, CutAway):
        trim = next((s for s in steps if isinstance(s.action, Trim) and s.action.code == action.code), None)
        code = next(name for name in pattern.setting.tally if code_of_unit(name) == action.code)
        what = "Cut the ground away, then trim the two outer edges" if trim else "Cut the ground away"
        return _with(entry, Figure(what, (Cell(trim_figure(pattern, code, step, trim)),)))
    return entry


def _seams(pattern: Pattern) -> Iterator[Figure]:
    """Return what the seams leave of each general master, and the layers of cloth that meet in its seams."""
    general = [m for m in pattern.bill.masters if is_general(pattern, m.recipe)]
    firsts = {m.recipe: m.code for m in reversed(general) if m.code in pattern.setting.codes}
    sewn = [sheet for code in reversed(tuple(firsts.values())) if (sheet := sewn_figure(pattern, code))]
    if sewn:
        cells = tuple(Cell(sheet) for sheet in sewn)
        yield Figure("What the seams leave of the shapes", cells, columns=min(2, len(cells)))
    if general:
        cells = tuple(Cell(sheet) for sheet in bulk_figures(pattern))
        yield Figure("Layers of cloth along each side, allowances and all", cells, columns=min(3, len(cells)))


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
        product for step in pattern.steps.steps for product in step.makes if product.label == f"unit {code}"
    ]
    return f"Make ({made[-1].count}) unit {code}, {joined_cloths(pattern, code, str)}"
