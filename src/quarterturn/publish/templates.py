"""True-size templates: for each recipe the shape to trace, on one page or tiled over several, and its unit.

Fused shapes have no seam allowance added. Every page carries test marks, and says what to do with it.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from quarterturn.blocks import Blocks, FusedShape, Master
from quarterturn.design import Curve, Design, DrawnOutline, Paper, RecipeKind
from quarterturn.geometry import path_bounds
from quarterturn.measure import show_length
from quarterturn.pieces import Bill
from quarterturn.publish.curve_pages import curve_pages
from quarterturn.publish.paper import Entry, Head, wrapped
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
from quarterturn.publish.sheet import Sheet
from quarterturn.publish.true_size import Draft, Drawn, drawn_pages, numbered, pattern_name
from quarterturn.publish.unit_pages import unit_pages, units_of
from quarterturn.publish.wording.places import place_from_middle

MOST_COUNT_ROWS = 3
"""More fabrics than fit these rows are left to the booklet's list of shapes."""


def template_sheets(design: Design, blocks: Blocks, bill: Bill, paper: Paper) -> tuple[Sheet, ...]:
    """Return the pages of templates: the shapes of all recipes that are made, then the trimmed units of masters."""
    cut = {count.recipe for count in bill.masters}
    traced = cut | {motif.recipe for motif in bill.motifs}
    drafts: list[Draft] = []
    for master, shape in blocks.templates(traced):
        whole = master if master.recipe in cut else replace(master, cuts=())
        drafts += _shape_pages(_Making(design, blocks, bill, paper), whole, shape, len(drafts) + 1)
    drafts += curve_pages(design, blocks, bill, paper, len(drafts) + 1)
    for name, units in units_of(design, blocks, bill):
        drafts += unit_pages(design, name, units, paper)
    return tuple(numbered(paper, draft, k, len(drafts)) for k, draft in enumerate(drafts, 1))


@dataclass(frozen=True, slots=True)
class _Making:
    """What a page of templates tells of the quilt, and its paper."""

    design: Design
    blocks: Blocks
    bill: Bill
    paper: Paper


def _shape_pages(making: _Making, master: Master, shape: FusedShape, first: int) -> Iterator[Draft]:
    """Return the pages of a shape to trace: of those that are equal but for their place there is one."""
    design, paper = making.design, making.paper
    template = template_of(shape, master.cuts)
    rows = (
        *_about(design, master, shape),
        *(_placed(design, master, shape, paper) if _is_made(making.bill, master) else ()),
        *_counts(making, shape),
        *_manner(template, paper),
    )
    head = Head(f"{pattern_name(design)} – template {shape.name}", rows, _legend(template))
    return drawn_pages(_drawn(design, template), head, paper, first)


def _drawn(design: Design, template: Template) -> Drawn:
    size = _size(design, template.shape)
    return Drawn(
        extent=extent(template),
        inner_width=traced_extent(template)[0],
        marks=template_marks(template, size),
        marks_when_tiled=template_marks(template, size, everywhere=True),
        points=line_points(template),
        outline=TRUE_SIZE.path(template.shape.traced),
        alt=lambda part: _alt(template, part),
    )


def _size(design: Design, shape: FusedShape) -> str:
    across, high = (show_length(side, design.units, sixteenths=True) for side in (shape.width, shape.height))
    return f"{across} across" if across == high else f"{across} × {high}"


def _about(design: Design, master: Master, shape: FusedShape) -> tuple[str, ...]:
    size = _size(design, shape)
    recipe = design.recipe(master.recipe)
    outline = _outline_word(design, master, shape).capitalize()
    if recipe.curve is Curve.SEWN_TRUE:
        seam = show_length(2 * master.seam, design.units)
        return (f"{outline} sewn true, {size}: spread by {seam} for the seams. True size.",)
    return (f"{outline} as drawn, {size}. True size.",)


def _outline_word(design: Design, master: Master, shape: FusedShape) -> str:
    size = design.recipe(master.recipe).shapes[master.shapes.index(shape)].size
    return size.outline if isinstance(size, DrawnOutline) else "circle"


def _placed(design: Design, master: Master, shape: FusedShape, paper: Paper) -> list[str]:
    """Say where the cross of a shape goes on its master, which a short form need not say."""
    if design.recipe(master.recipe).kind is not RecipeKind.SHAPES:
        return []
    crosses = [path_bounds(each.traced).centre for each in master.shapes if each.name == shape.name]
    places = list(dict.fromkeys(place_from_middle(design, cross) for cross in crosses))
    if places == ["on the middle"]:
        return ["Its cross goes on the middle of the master."]
    row = f"From the middle of the master its cross goes {'; '.join(places)}."
    return wrapped(paper, row)[:MOST_COUNT_ROWS]


def _is_made(bill: Bill, master: Master) -> bool:
    return any(count.recipe == master.recipe for count in bill.masters)


def _counts(making: _Making, shape: FusedShape) -> list[str]:
    """Say how many shapes to fuse of which fabric."""
    design, bill, paper = making.design, making.bill, making.paper
    parts = []
    for count in bill.masters:
        each = sum(laid.name == shape.name for laid in making.blocks.master(count.recipe).shapes)
        if each:
            fabric = design.fabric(design.cloth(count.code, shape.part))
            parts.append(f"{count.count * each} of fabric {fabric.letter} ({fabric.name}) for {count.code}")
    for motif in bill.motifs:
        if any(laid.name == shape.name for laid in making.blocks.master(motif.recipe).shapes):
            fabric = design.fabric(motif.fabric)
            parts.append(f"{motif.count} of fabric {fabric.letter} ({fabric.name}) as motifs")
    rows = wrapped(paper, f"Fuse {', '.join(parts)}.")
    if len(rows) > MOST_COUNT_ROWS:
        return [*rows[: MOST_COUNT_ROWS - 1], "… and more: see the list of shapes in the booklet."]
    return rows


def _manner(template: Template, paper: Paper) -> list[str]:
    way = "Mirrored for tracing" if template.mirrored else "Same both ways: no need to mirror"
    marks = "Trace the short marks at its edge too: folds through them cross where its cross lies"
    return wrapped(paper, f"{way}. No seam allowance is added to fused shapes. {marks}.")


def _legend(template: Template) -> tuple[Entry, ...]:
    entries = [Entry(TRACED, "trace; cut the cloth here"), Entry(WEB, "web: cut here")]
    if not template.shape.ring_in.is_empty():
        entries.append(Entry(HOLLOW, "web: hollow out inside"))
    if not template.cuts:
        return tuple(entries)
    numbers = ", ".join(f"cut {cut.number}" for cut in template.cuts)
    return (*entries, Entry(CUT, f"{numbers} (after stitching)"))


def _alt(template: Template, part: str) -> str:
    cuts = " cut lines," if template.cuts else ""
    return (
        f"True-size template of the shape {template.shape.name} ({part}): traced line, web ring, centre cross,"
        f"{cuts} grain arrow, test squares and rulers."
    )
