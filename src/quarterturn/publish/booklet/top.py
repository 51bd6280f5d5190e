"""The pages from loose units to a bound quilt: map, assembly, borders, finishing."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from quarterturn.design import BindingKind, StraightSet, Symmetry, code_of_unit
from quarterturn.proof import Pattern
from quarterturn.publish.booklet.entries import gather
from quarterturn.publish.booklet.made import root_steps
from quarterturn.publish.booklet.model import Block, Cell, Figure, Notes, Plate, Remainder, Section, Table
from quarterturn.publish.figures import (
    MapPart,
    backing_figure,
    bias_figure,
    binding_figure,
    centre_figure,
    least_share,
    map_figure,
    map_parts,
    name_letters,
    overview_figure,
    pair_figure,
    row_figure,
    turns_figure,
)
from quarterturn.publish.sheet import Sheet
from quarterturn.publish.wording import (
    LABEL,
    centre_sewing,
    cloths_of,
    fabric_name,
    flow_facts,
    halves_of,
    tell,
)
from quarterturn.setting import Side
from quarterturn.steps import Bind, Chapter, CutBias, JoinPanels, LayOut, SewLine, Step

PAIRS_IN_A_LINE = 6
MANY_UNITS = 400


def unit_map(pattern: Pattern, width: float, height: float, first: int) -> Iterator[Block]:
    """Return laying out with the map, the turns and the count of each unit."""
    yield Section("Unit map")
    step = next(s for s in pattern.steps.of(Chapter.ASSEMBLY) if isinstance(s.action, LayOut))
    assert isinstance(step.action, LayOut)
    turns = Figure("Each turn is a quarter turn clockwise", (Cell(turns_figure(pattern)),))
    (entry,) = gather((step,), pattern, first)
    yield replace(entry, figures=(turns,))
    yield unit_counts(pattern)
    if facts := flow_facts(pattern):
        yield Notes("Where the curves run", facts)
    repeat = pattern.design.setting
    assert isinstance(repeat, StraightSet), "a map of units is one of straight rows"
    alike = repeat.symmetry is Symmetry.SLIDE and repeat.across * repeat.down > 1
    if alike and len(pattern.setting.units) > MANY_UNITS:
        yield from _repeated_map(pattern, step.action, width, height)
    else:
        yield from _whole_map(pattern, step.action, width, height)


def _plate(what: str, sheet: Sheet, least: float) -> Plate:
    """Return a large drawing that may shrink to a share of its size while it stays legible."""
    return Plate(Figure(what, (Cell(sheet),), least=least_share(sheet, least)))


def _repeated_map(pattern: Pattern, layout: LayOut, width: float, height: float) -> Iterator[Block]:
    """Return the repeat, large, and how it is laid."""
    setting = pattern.design.setting
    assert isinstance(setting, StraightSet), "a map of units is one of straight rows"
    rows, columns = len(setting.cells), len(setting.cells[0])
    for part in map_parts(rows, columns, width, height, name_letters(layout)):
        sheet = map_figure(pattern, layout, part, width, height)
        what = f"The repeat: {part.title}"
        yield _plate(what, sheet, 0.75)
    tiles = tuple(
        MapPart(top * rows, left * columns, rows, columns, whole=False)
        for top in range(setting.down)
        for left in range(setting.across)
    )
    overview = overview_figure(pattern, layout, tiles, width)
    what = f"The repeat is laid ({setting.across}) across and ({setting.down}) down"
    yield _plate(what, overview, 0.5)


def _whole_map(pattern: Pattern, layout: LayOut, width: float, height: float) -> Iterator[Block]:
    """Return the map of all units: one drawing, or as many as keep the lettering legible."""
    rows, columns = len(layout.rows), len(layout.rows[0])
    parts = map_parts(rows, columns, width, height, name_letters(layout))
    if not parts[0].whole:
        overview = overview_figure(pattern, layout, parts, width)
        yield _plate("How the parts of the unit map lie", overview, 0.4)
    for number, part in enumerate(parts, start=1):
        sheet = map_figure(pattern, layout, part, width, height)
        what = "Unit map" if part.whole else f"Unit map, part {number}: {part.title}"
        yield _plate(what, sheet, 0.4)


def unit_counts(pattern: Pattern) -> Table:
    """Return how many units of each kind the quilt takes."""
    design, tally = pattern.design, pattern.setting.tally
    if any(design.colourway(code_of_unit(name)).is_rejoined for name in tally):
        told = tuple(
            (f"unit {name}", cloths_of(pattern, name), f"({count})") for name, count in tally.items()
        )
        return Table(("Unit", "Shapes on ground", "In the quilt"), told, (1, 6, 1.2))
    rows = tuple((f"unit {name}", *_cloths(pattern, name), f"({count})") for name, count in tally.items())
    return Table(("Unit", "Shape", "Ground", "In the quilt"), rows, (1, 3, 3, 1.2))


def _cloths(pattern: Pattern, name: str) -> tuple[str, str]:
    """Return the fabrics of a unit's shapes, and that of its ground."""
    (whole,) = halves_of(pattern, name)
    shapes = "; ".join(fabric_name(pattern.design.fabric(letter)) for letter in whole.shapes)
    return shapes or "none", fabric_name(pattern.design.fabric(whole.ground))


def assembly(pattern: Pattern, width: float, height: float, first: int) -> Iterator[Block]:
    """Return pairs, rows, and the rows together."""
    yield Section("Assembly")
    steps = [s for s in root_steps(pattern) if not isinstance(s.action, LayOut)]
    for entry in gather(steps, pattern, first):
        steps = [pattern.steps.steps[number - 1] for number in entry.steps]
        action = steps[0].action
        assert isinstance(action, SewLine)
        if action.way is Side.BOTTOM:
            figure = _rows_together(pattern, width, height)
            yield replace(entry, figures=(figure,), place="below")
        else:
            figure = _lines(pattern, steps, action, width)
            yield replace(entry, figures=(figure,), place="below", lines=())


def _sewing(pattern: Pattern) -> dict[str, SewLine]:
    """Return the sewing of pairs, rows and centre by the label of what is made."""
    return {s.makes[0].label: s.action for s in root_steps(pattern) if isinstance(s.action, SewLine)}


def _rows_together(pattern: Pattern, width: float, height: float) -> Figure:
    sheet = centre_figure(pattern, centre_sewing(pattern), _sewing(pattern), width, height)
    return Figure(
        "Assembly: the rows, with their pressing arrows", (Cell(sheet),), least=least_share(sheet, 0.6)
    )


def _lines(pattern: Pattern, steps: Sequence[Step], action: SewLine, width: float) -> Figure:
    """Return a drawing for each kind of pair or row, with the line that tells how many to make."""
    if all(part.label.startswith("unit ") for part in action.parts):
        cells = tuple(Cell(pair_figure(pattern, s), tell(s, pattern).line) for s in steps)
        return Figure("The pairs, with their pressing arrows", cells, columns=PAIRS_IN_A_LINE)
    parts = {label: sewn.parts for label, sewn in _sewing(pattern).items()}
    cells = tuple(Cell(row_figure(pattern, s, parts, width), tell(s, pattern).line) for s in steps)
    return Figure("The rows; small figures are the numbers of the pairs", cells)


def finishing(pattern: Pattern, width: float, first: int) -> Iterator[Block]:
    """Return backing, layering, quilting and binding."""
    yield Section("Finishing")
    for entry in gather(pattern.steps.of(Chapter.FINISHING), pattern, first):
        step = pattern.steps.steps[entry.steps[0] - 1]
        if isinstance(step.action, CutBias):
            sheet = bias_figure(pattern, step, width)
            what = "The binding on the bias, to scale, wrong side up: the cut, the slanting piece, the tube"
            figure = Figure(what, (Cell(sheet),), least=least_share(sheet, 0.6))
            yield replace(entry, figures=(figure,), place="below")
        else:
            yield replace(entry, figures=_finishing_figures(pattern, step))
    yield Notes("Label", (LABEL,))
    yield Remainder("Your notes")


def _finishing_figures(pattern: Pattern, step: Step) -> tuple[Figure, ...]:
    if isinstance(step.action, JoinPanels):
        return (Figure("The backing", (Cell(backing_figure(pattern, step)),)),)
    if isinstance(step.action, Bind) and pattern.design.binding_kind is BindingKind.STRAIGHT:
        return (Figure("A diagonal join", (Cell(binding_figure(pattern)),)),)
    return ()
