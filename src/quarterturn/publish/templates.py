"""True-size templates: for each recipe the shape to trace, on one page or tiled over several, and its unit.

Fused shapes have no seam allowance added. Every page carries test marks, and says what to do with it.
"""

from __future__ import annotations

import itertools
from collections.abc import Iterator

from quarterturn.blocks import SHAPE, Blocks, Master, Unit
from quarterturn.design import Curve, Design, DrawnOutline, Paper
from quarterturn.geometry import Line, Path, Point, Segment, rectangle
from quarterturn.measure import show_length
from quarterturn.pieces import Bill
from quarterturn.publish.paper import (
    INK,
    NOTE,
    PLAIN,
    Entry,
    Head,
    body,
    outline,
    wrapped,
)
from quarterturn.publish.shape_marks import (
    CUT,
    HOLLOW,
    TRACED,
    TRUE_SIZE,
    WEB,
    Template,
    extent,
    line_points,
    template_marks,
    template_of,
    traced_extent,
)
from quarterturn.publish.sheet import MM_PER_INCH, Area, Ink, Mark, Scale, Sheet, Stroke, Text
from quarterturn.publish.true_size import Draft, Drawn, drawn_pages, numbered

MOST_COUNT_ROWS = 3
"""More fabrics than fit these rows are left to the booklet's list of shapes."""

SEAM_LINE = Ink(None, INK, 0.25, (2.0, 1.2))


def template_sheets(design: Design, blocks: Blocks, bill: Bill, paper: Paper) -> tuple[Sheet, ...]:
    """Return the pages of templates: the shapes of all recipes that are made, then their trimmed units."""
    made = {count.recipe for count in bill.masters}
    masters = [master for master in blocks.masters if master.recipe in made]
    drafts: list[Draft] = []
    for master in masters:
        drafts += _shape_pages(design, bill, master, paper, len(drafts) + 1)
    for master in masters:
        drafts += _unit_pages(design, master, paper)
    return tuple(numbered(paper, draft, k, len(drafts)) for k, draft in enumerate(drafts, 1))


def _shape_pages(design: Design, bill: Bill, master: Master, paper: Paper, first: int) -> Iterator[Draft]:
    template = template_of(master.shape, master.cuts)
    head = Head(
        title=f"{_pattern_name(design)} – template {master.recipe}",
        rows=(*_about(design, master), *_counts(design, bill, master, paper), *_manner(template, paper)),
        legend=_legend(template),
    )
    yield from drawn_pages(_drawn(design, master, template), head, paper, first)


def _drawn(design: Design, master: Master, template: Template) -> Drawn:
    size = _size(design, master)
    return Drawn(
        extent=extent(template),
        inner_width=traced_extent(template)[0],
        marks=template_marks(template, size),
        marks_when_tiled=template_marks(template, size, everywhere=True),
        points=line_points(template),
        outline=TRUE_SIZE.path(template.shape.traced),
        alt=lambda part: _alt(master, part),
    )


def _pattern_name(design: Design) -> str:
    return f"{design.title} (no. {design.number})" if design.number else design.title


def _size(design: Design, master: Master) -> str:
    shape = master.shape
    across, high = (show_length(side, design.units, sixteenths=True) for side in (shape.width, shape.height))
    return f"{across} across" if across == high else f"{across} × {high}"


def _about(design: Design, master: Master) -> tuple[str, ...]:
    size = _size(design, master)
    recipe = design.recipe(master.recipe)
    outline = _outline_word(design, master).capitalize()
    if recipe.curve is Curve.SEWN_TRUE:
        seam = show_length(2 * master.seam, design.units)
        return (f"{outline} sewn true, {size}: spread by {seam} for the seams. True size.",)
    return (f"{outline} as drawn, {size}. True size.",)


def _outline_word(design: Design, master: Master) -> str:
    size = design.recipe(master.recipe).size
    return size.outline if isinstance(size, DrawnOutline) else "circle"


def _counts(design: Design, bill: Bill, master: Master, paper: Paper) -> list[str]:
    """Say how many shapes to fuse of which fabric."""
    parts = []
    for count in bill.masters:
        if count.recipe == master.recipe:
            fabric = design.fabric(design.colourway(count.code).shape)
            parts.append(f"{count.count} of fabric {fabric.letter} ({fabric.name}) for {count.code}")
    rows = wrapped(paper, f"Fuse {', '.join(parts)}.")
    if len(rows) > MOST_COUNT_ROWS:
        return [*rows[: MOST_COUNT_ROWS - 1], "… and more: see the list of shapes in the booklet."]
    return rows


def _manner(template: Template, paper: Paper) -> list[str]:
    way = "Mirrored for tracing" if template.mirrored else "Same both ways: no need to mirror"
    return wrapped(paper, f"{way}. No seam allowance is added to fused shapes.")


def _legend(template: Template) -> tuple[Entry, ...]:
    entries = [Entry(TRACED, "trace; cut the cloth here"), Entry(WEB, "web: cut here")]
    if not template.shape.ring_in.is_empty():
        entries.append(Entry(HOLLOW, "web: hollow out inside"))
    return (*entries, Entry(CUT, "cut 1, cut 2 (after stitching)"))


def _alt(master: Master, part: str) -> str:
    return (
        f"True-size template of the shape {master.recipe} ({part}): traced line, web ring, centre cross,"
        " two cut lines, grain arrow, test squares and rulers."
    )


def _unit_pages(design: Design, master: Master, paper: Paper) -> Iterator[Draft]:
    """Return a page for each kind of unit that fits: as trimmed, with its seam line and what its curve does."""
    for number, unit in enumerate(master.units):
        name = _unit_name(master, number)
        side = show_length(unit.cut_side, design.units)
        head = Head(
            title=f"{_pattern_name(design)} – unit check {master.recipe}",
            rows=(
                f"{name[0].upper()}{name[1:]}, trimmed to {side}. True size.",
                "Lay a trimmed unit on this page: its edges lie on the solid square,",
                "and its curve on the curve. Do not trace or cut from this page.",
            ),
            legend=(
                Entry(TRACED, "edge as trimmed"),
                Entry(SEAM_LINE, "seam line"),
                Entry(HOLLOW, "edge of the shape"),
            ),
        )
        room = body(paper, head)
        if float(unit.cut_side) * MM_PER_INCH <= min(room.width, room.height) - 8:
            marks = tuple(_unit_marks(design, master, number, room.centre))
            yield Draft(head, marks, f"True-size drawing of the {name}, trimmed to {side}.")


def _unit_name(master: Master, number: int) -> str:
    """Return what a kind of unit is called: by its recipe, and by its quarter where the master has several kinds."""
    quarter = master.units[number].quarter
    return f"unit of {master.recipe}" + (f", quarter {quarter}" if quarter else "")


def _unit_marks(design: Design, master: Master, number: int, middle: Point) -> Iterator[Mark]:
    unit = master.units[number]
    side, seam = float(unit.side), float(unit.seam)
    scale = Scale(MM_PER_INCH, middle - complex(side, side) / 2 * MM_PER_INCH)
    shapes = (p for layer in unit.cut_layers if layer.part == SHAPE for p in layer.region.paths)
    for path in shapes:
        yield from (Stroke(run, HOLLOW) for run in _inner_edges(path, unit, scale))
    yield outline(scale.path(rectangle(0, 0, side, side)), SEAM_LINE)
    yield Area(scale.region(unit.cut_layers[0].region), TRACED)
    low, high = scale.point(complex(-seam, -seam)), scale.point(complex(side + seam, side + seam))
    name = f"{_unit_name(master, number)}, trimmed to {show_length(unit.cut_side, design.units)}"
    yield Text(complex(middle.real, high.imag + 5), name, PLAIN, "middle", bold=True)
    yield _middle_named(unit.quarter or "br", _outline_word(design, master), low, high)


def _middle_named(quarter: str, outline: str, low: Point, high: Point) -> Text:
    """Return the note at the corner of a unit that was the middle of its master."""
    at_left, at_top = quarter.endswith("r"), quarter.startswith("b")
    at = complex(low.real if at_left else high.real, low.imag - 2 if at_top else high.imag + 10)
    return Text(at, f"middle of the traced {outline} at this corner", NOTE, "start" if at_left else "end")


def _inner_edges(path: Path, unit: Unit, scale: Scale) -> Iterator[tuple[Segment, ...]]:
    """Return the stretches of a shape's outline that do not lie along the edges of its unit."""
    low, high = -float(unit.seam), float(unit.side + unit.seam)

    def is_inner(segment: Segment) -> bool:
        ends = (segment.start, segment.end)
        upright = any(max(abs(p.real - edge) for p in ends) < 1e-6 for edge in (low, high))
        level = any(max(abs(p.imag - edge) for p in ends) < 1e-6 for edge in (low, high))
        return not (isinstance(segment, Line) and (upright or level))

    for inner, run in itertools.groupby(path.segments, key=is_inner):
        if inner:
            yield tuple(scale.segment(s) for s in run)
