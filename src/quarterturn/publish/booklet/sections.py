"""The pages of sections, of a quilt centre that is put together of them, and of borders."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from quarterturn.design import Corner
from quarterturn.measure import Length
from quarterturn.proof import Pattern
from quarterturn.publish.booklet.entries import gather
from quarterturn.publish.booklet.made import root_steps, section_steps
from quarterturn.publish.booklet.model import Block, Cell, Entry, Figure, Plate, Section, Table
from quarterturn.publish.booklet.top import unit_counts
from quarterturn.publish.figures import (
    border_figure,
    grid_figure,
    layout_figure,
    least_share,
    mitre_figure,
    motif_line,
    panel_figure,
    section_figure,
    slanting_figure,
    turns_figure,
)
from quarterturn.publish.sheet import Sheet
from quarterturn.publish.wording import (
    Made,
    node_said,
    part_name,
    rectangle,
    ring_of,
    section_name,
    sections_of,
)
from quarterturn.setting import Frame, Framed, Grid, Node, OneUnit, OnPoint, PlainCloth, Side
from quarterturn.steps import (
    AddBorder,
    AddMitred,
    AddTriangles,
    Chapter,
    FuseToPanel,
    JoinRows,
    LayOut,
    Press,
    SewLine,
    Step,
)

MOST_SLANTING = 7
"""Rows and columns together of a section on point that is drawn beside its rows pulled apart."""
SLANTING_TALLEST = 96.0


def layout(pattern: Pattern, width: float, height: float) -> Iterator[Block]:
    """Return the picture of the whole top with its sections named, and what they are."""
    yield Section("Layout")
    sheet = layout_figure(pattern, min(width, 150.0), min(height, 128.0))
    what = "The whole top; each section bears its name and its quarter turns clockwise"
    if not sections_of(pattern.setting.top):
        what = "The whole top"
    yield Plate(Figure(what, (Cell(sheet),), least=least_share(sheet, 0.6)))
    if parts := sections_of(pattern.setting.top):
        yield _parts_table(pattern, parts)
    if pattern.setting.units:
        yield Plate(Figure("Each turn is a quarter turn clockwise", (Cell(turns_figure(pattern)),)))
        yield unit_counts(pattern)


def _parts_table(pattern: Pattern, parts: Sequence[Made]) -> Table:
    rows = tuple(
        (
            made.name,
            node_said(made.node),
            rectangle(pattern.design, made.node.width, made.node.height),
            f"({made.count})",
        )
        for made in parts
    )
    return Table(("Section", "Set", "Finished", "Make"), rows, (1.6, 3, 2, 0.9))


def panels(pattern: Pattern, width: float, first: int) -> Iterator[Block]:
    """Return laying, fusing and stitching the motifs of each panel."""
    steps = pattern.steps.of(Chapter.PANELS)
    if not steps:
        return
    yield Section("Panels")
    for entry in gather(steps, pattern, first):
        mine = [pattern.steps.steps[number - 1] for number in entry.steps]
        if isinstance(mine[0].action, FuseToPanel):
            (step,) = mine
            what = "The panel as cut, to scale; the seam lines are dashed"
            figure = Figure(what, (Cell(panel_figure(pattern, step, width)),))
            lines = (*entry.lines, *_motif_lines(pattern, step))
            yield replace(entry, lines=lines, figures=(figure,), place="below")
        else:
            yield entry


def _motif_lines(pattern: Pattern, step: Step) -> Iterator[str]:
    assert isinstance(step.action, FuseToPanel)
    for number, motif in enumerate(step.action.motifs, start=1):
        yield f"{motif_line(pattern, number, motif)}."


def sections(pattern: Pattern, width: float, height: float, first: int) -> Iterator[Block]:
    """Return the making of each section, those first that others hold."""
    if not any(steps for _, steps in section_steps(pattern)):
        return
    yield Section("Sections")
    number = first
    for made, steps in section_steps(pattern):
        if not steps:
            continue
        entries = tuple(gather(steps, pattern, number))
        beside = _is_small(made.node)
        yield Plate(_made_figure(pattern, made, entries if beside else (), width))
        yield from _with_figures(pattern, made.node, entries, width, height, drawn=beside)
        number += len(entries)


def _is_small(node: Node) -> bool:
    """Tell whether the parts of a section have room beside the section as sewn."""
    inner = _inner(node)
    if isinstance(inner, OnPoint):
        return len(inner.cells) + len(inner.cells[0]) <= MOST_SLANTING
    return isinstance(inner, Grid) and max(len(row) for row in inner.rows) <= 6 and len(inner.rows) <= 8


def _inner(node: Node) -> Node:
    return node.centre.node if isinstance(node, Framed) else node


def _made_figure(pattern: Pattern, made: Made, entries: Sequence[Entry], width: float) -> Figure:
    """Return the small drawing of a section with how many to make, and its parts beside it where they have room."""
    size = rectangle(pattern.design, made.node.width, made.node.height)
    cells = [Cell(section_figure(pattern, made.node), f"{made.name}: make ({made.count}), {size} finished")]
    inner = _inner(made.node)
    if entries and isinstance(inner, Grid):
        names, presses = _names(pattern, inner, entries)
        arrows = ", with their pressing arrows" if any(isinstance(press, Side) for press in presses) else ""
        apart = grid_figure(pattern, inner, names, presses, (width / 2 - 6, 58.0))
        cells.append(Cell(apart, f"its parts{arrows}"))
    elif entries and isinstance(inner, OnPoint):
        apart = slanting_figure(pattern, inner, width / 2 - 6, SLANTING_TALLEST)
        cells.append(Cell(apart, "its slanting rows; the arrows show where to begin"))
    return Figure(f"Section {made.name}: {node_said(made.node)}", tuple(cells), columns=len(cells))


def assembly(pattern: Pattern, width: float, height: float, first: int) -> Iterator[Block]:
    """Return the quilt centre, put together of sections and other parts."""
    steps = root_steps(pattern)
    if not steps:
        return
    yield Section("Assembly")
    entries = tuple(gather(steps, pattern, first))
    yield from _with_figures(pattern, pattern.setting.centre, entries, width, height)


def _with_figures(
    pattern: Pattern,
    node: Node,
    entries: Sequence[Entry],
    width: float,
    height: float,
    *,
    drawn: bool = False,
) -> Iterator[Entry]:
    """Put the figures of a section to its entries: its parts pulled apart with the first, borders in their place."""
    inner = _inner(node)
    for entry in entries:
        mine = [pattern.steps.steps[number - 1] for number in entry.steps]
        action = mine[0].action
        if isinstance(action, AddBorder | AddMitred) and isinstance(node, Framed):
            yield _bordered(pattern, node, entry, mine)
        elif isinstance(action, LayOut | SewLine | AddTriangles | JoinRows) and not drawn:
            drawn = True
            figure = _apart(pattern, inner, entries, width, height)
            yield replace(entry, figures=(figure,), place="below") if figure else entry
        else:
            yield entry


def _apart(
    pattern: Pattern, node: Node, entries: Sequence[Entry], width: float, height: float
) -> Figure | None:
    if isinstance(node, OnPoint):
        sheet = slanting_figure(pattern, node, width, height)
        what = "The slanting rows with their triangles, pulled apart; the arrows show where to begin"
        return _figure(what, sheet)
    if not isinstance(node, Grid):
        return None
    names, presses = _names(pattern, node, entries)
    sheet = grid_figure(pattern, node, names, presses, (width, height))
    rows = "The rows" if len(node.rows) > 1 else "The parts"
    arrows = ", with their pressing arrows" if any(isinstance(press, Side) for press in presses) else ""
    return _figure(f"{rows}, pulled apart{arrows}", sheet)


def _figure(what: str, sheet: Sheet) -> Figure:
    return Figure(what, (Cell(sheet),), least=least_share(sheet, 0.6))


def _names(pattern: Pattern, node: Grid, entries: Sequence[Entry]) -> tuple[list[list[str]], list[Press]]:
    """Return what each part of each row is called in the steps, and how the seams of each row are pressed."""
    steps = [pattern.steps.steps[number - 1] for entry in entries for number in entry.steps]
    sewn = {step.makes[0].label: step.action for step in steps if isinstance(step.action, SewLine)}
    names = [[_child_name(child.node, child.turn) for child in row] for row in node.rows]
    presses: list[Press] = [None] * len(node.rows)
    whole = next((action for action in sewn.values() if action.way is Side.BOTTOM), None)
    lines = [sewn.get(part.label) for part in whole.parts] if whole else [next(iter(sewn.values()), None)]
    if len(lines) != len(node.rows):
        return names, presses
    for index, (line, row) in enumerate(zip(lines, node.rows, strict=True)):
        if line and len(line.parts) == len(row):
            names[index] = [part_name(part).partition(",")[0] for part in line.parts]
            presses[index] = line.press
        elif whole and len(row) == 1:
            names[index] = [part_name(whole.parts[index]).partition(",")[0]]
    return _turned(node, names), presses


def _turned(node: Grid, names: list[list[str]]) -> list[list[str]]:
    """Return names in which sections have their turn behind them, as in the layout."""
    return [
        [
            _child_name(c.node, c.turn) if section_name(c.node) else name
            for c, name in zip(row, told, strict=True)
        ]
        for row, told in zip(node.rows, names, strict=True)
    ]


def _child_name(node: Node, turn: int) -> str:
    if isinstance(node, PlainCloth):
        return node.fabric
    name = node.name if isinstance(node, OneUnit) else section_name(node)
    return f"{name}{turn}"


def borders(pattern: Pattern, first: int) -> Iterator[Block]:
    """Return the borders of the quilt, ring by ring."""
    steps = pattern.steps.of(Chapter.BORDERS)
    if not steps:
        return
    yield Section("Borders")
    for entry in gather(steps, pattern, first):
        mine = [pattern.steps.steps[number - 1] for number in entry.steps]
        if isinstance(mine[0].action, AddBorder | AddMitred):
            assert isinstance(pattern.setting.top, Framed)
            yield _bordered(pattern, pattern.setting.top, entry, mine)
        else:
            yield entry


def _bordered(pattern: Pattern, framed: Framed, entry: Entry, steps: Sequence[Step]) -> Entry:
    """Put the drawing of a ring to the entry that sews it on."""
    frame, outer = _frame_of(framed, steps[-1], pattern)
    name = section_name(framed) or "top"
    figures = [
        Figure(
            "The strips, in their order of sewing", (Cell(border_figure(pattern, frame, outer, 56.0, name)),)
        )
    ]
    if frame.corner is Corner.MITRED:
        strip = frame.strips[0].node
        assert isinstance(strip, PlainCloth), "mitred strips are of plain cloth"
        figures.append(Figure("A mitred corner", (Cell(mitre_figure(pattern, strip.fabric)),)))
    return replace(entry, figures=tuple(figures))


def _frame_of(framed: Framed, step: Step, pattern: Pattern) -> tuple[Frame, tuple[float, float]]:
    """Return the ring that a step sews on, and the size of its outer edge."""
    ring = ring_of(step, framed, pattern)
    done = framed.frames[: ring + 1]
    width = framed.centre.width + 2 * sum((frame.side_depth for frame in done), Length(0))
    height = framed.centre.height + 2 * sum((frame.end_depth for frame in done), Length(0))
    return done[-1], (float(width), float(height))
