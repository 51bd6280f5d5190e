"""True-size drawings of trimmed units, to lay a sewn unit on."""

from __future__ import annotations

import itertools
from collections.abc import Iterator, Sequence

from quarterturn.blocks import GROUND, Blocks, Unit
from quarterturn.design import HALF_MARK, Design, DrawnOutline, Paper, RecipeKind, unit_name
from quarterturn.geometry import Line, Path, Point, Segment, StraightLine, line_through, path_bounds
from quarterturn.measure import show_length
from quarterturn.pieces import Bill
from quarterturn.publish.paper import INK, NOTE, PLAIN, Entry, Head, body, outline, wrapped
from quarterturn.publish.shape_marks import HOLLOW, TRACED
from quarterturn.publish.sheet import MM_PER_INCH, Ink, Mark, Scale, Stroke, Text
from quarterturn.publish.true_size import Draft, pattern_name
from quarterturn.publish.wording.names import listed, plural
from quarterturn.publish.wording.outlines import outline_said, triangle_edges

MOST_NAMED = 4
"""Colourways of a recipe of which each is named on the page of their unit."""
SEAM_LINE = Ink(None, INK, 0.25, (2.0, 1.2))


def units_of(design: Design, blocks: Blocks, bill: Bill) -> Iterator[tuple[str, tuple[Unit, ...]]]:
    """Return the recipes that are made with their kinds of unit, those that rejoin halves last."""
    made = {*(count.recipe for count in bill.masters), *(count.recipe for count in bill.rejoined)}
    yield from ((master.recipe, master.units) for master in blocks.masters if master.recipe in made)
    yield from ((each.recipe, each.units) for each in blocks.rejoined if each.recipe in made)


def unit_pages(design: Design, recipe: str, units: Sequence[Unit], paper: Paper) -> Iterator[Draft]:
    """Return a page for each kind of unit that fits: as trimmed, with its seam line and what its curves do."""
    for unit in units:
        name, size = _unit_name(design, recipe, unit), _size(design, unit)
        head = Head(
            title=f"{pattern_name(design)} – unit check, {_codes(design, recipe, unit)}",
            rows=(
                *wrapped(paper, f"{name[0].upper()}{name[1:]}, {size}. True size."),
                f"Lay {'a trimmed' if unit.is_rectangle else 'the'} unit on this page: "
                f"its edges lie on the solid {_outline_word(unit)},",
                "and its curve on the curve. Do not trace or cut from this page.",
            ),
            legend=(
                Entry(TRACED, "edge as trimmed" if unit.is_rectangle else "edge as cut"),
                Entry(SEAM_LINE, "seam line"),
                Entry(HOLLOW, "edge of the shape"),
            ),
        )
        room, box = body(paper, head), path_bounds(unit.cut_outline)
        if box.width * MM_PER_INCH <= room.width - 8 and box.height * MM_PER_INCH <= room.height - 8:
            marks = tuple(_unit_marks(design, recipe, unit, room.centre))
            yield Draft(head, marks, f"True-size drawing of {name}, {size}.")


def _unit_name(design: Design, recipe: str, unit: Unit) -> str:
    """Return what a kind of unit is called: as in the steps, or by its recipe where that has many colourways."""
    codes = _codes(design, recipe, unit)
    if codes == recipe:
        kind = "quarter" if unit.quarter in ("tl", "tr", "br", "bl") else "piece"
        return f"unit of {recipe}" + (f", {kind} {unit.quarter}" if unit.quarter else "")
    return codes


def _codes(design: Design, recipe: str, unit: Unit) -> str:
    """Return `unit g` or `units a-tl and b-tl`: what the steps call a kind of unit; the recipe where they are many."""
    ways = [way.code for way in design.colourways if way.recipe == recipe]
    if not 0 < len(ways) <= MOST_NAMED:
        return recipe
    return f"{plural(len(ways), 'unit')} {listed([unit_name(code, unit.quarter) for code in ways])}"


def _outline_word(unit: Unit) -> str:
    if unit.is_rectangle and unit.width == unit.height:
        return "square"
    return "triangle" if triangle_edges(unit.cut_outline) else "outline"


def _size(design: Design, unit: Unit) -> str:
    if not unit.is_rectangle:
        return f"{outline_said(design, unit)}, as cut"
    across, down = (show_length(side, design.units) for side in (unit.cut_width, unit.cut_height))
    return f"trimmed to {across if across == down else f'{across} × {down}'}"


def _unit_marks(design: Design, recipe: str, unit: Unit, middle: Point) -> Iterator[Mark]:
    scale = Scale(MM_PER_INCH, middle - path_bounds(unit.cut_outline).centre * MM_PER_INCH)
    joins = list(_joins(unit))
    edges = [line_through(side.start, side.end) for side in (*unit.cut_outline.segments, *joins)]
    for layer in unit.cut_layers:
        if not _is_ground(layer.part):
            for path in layer.region.paths:
                yield from (Stroke(run, HOLLOW) for run in _inner_edges(path, edges, scale))
    if joins:
        yield Stroke((scale.segment(joins[0]),), SEAM_LINE)
    yield outline(scale.path(unit.outline), SEAM_LINE)
    yield outline(scale.path(unit.cut_outline), TRACED)
    box = path_bounds(scale.path(unit.cut_outline))
    name = f"{_unit_name(design, recipe, unit)}, {_size(design, unit)}"
    yield Text(complex(middle.real, box.bottom + 5), name, PLAIN, "middle", bold=True)
    short = next((r for r in design.recipes if r.name == recipe and r.kind is not RecipeKind.SHAPES), None)
    if short:
        word = short.size.outline if isinstance(short.size, DrawnOutline) else "circle"
        yield _middle_named(
            unit.quarter or "br", word, complex(box.left, box.top), complex(box.right, box.bottom)
        )


def _middle_named(quarter: str, outline: str, low: Point, high: Point) -> Text:
    """Return the note at the corner of a unit that was the middle of its master."""
    at_left, at_top = quarter.endswith("r"), quarter.startswith("b")
    at = complex(low.real if at_left else high.real, low.imag - 2 if at_top else high.imag + 10)
    return Text(at, f"middle of the traced {outline} at this corner", NOTE, "start" if at_left else "end")


def _is_ground(part: str) -> bool:
    return part.rpartition(HALF_MARK)[2] == GROUND


def _joins(unit: Unit) -> Iterator[Line]:
    """Return the seam of a joined unit, as it runs along the ground of each of its halves."""
    outer = [line_through(side.start, side.end) for side in unit.cut_outline.segments]
    for layer in unit.cut_layers if unit.halves else ():
        if _is_ground(layer.part):
            for segment in layer.region.segments():
                if isinstance(segment, Line) and not _on_any(segment, outer):
                    yield segment


def _inner_edges(path: Path, edges: Sequence[StraightLine], scale: Scale) -> Iterator[tuple[Segment, ...]]:
    """Return the stretches of a shape's outline that do not lie along the edges of its unit, or its seam."""
    for inner, run in itertools.groupby(path.segments, key=lambda segment: not _on_any(segment, edges)):
        if inner:
            yield tuple(scale.segment(s) for s in run)


def _on_any(segment: Segment, edges: Sequence[StraightLine]) -> bool:
    if not isinstance(segment, Line):
        return False
    return any(max(abs(edge.side(segment.start)), abs(edge.side(segment.end))) < 1e-6 for edge in edges)
