"""The steps that turn web and cloth blanks into shapes ready to fuse."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from fractions import Fraction

from quarterturn.blocks import Blocks, FusedShape
from quarterturn.design import Design
from quarterturn.geometry import Motion, Path, is_same_mirrored, path_bounds, shift
from quarterturn.materials import Materials, WebPlan, WebRows, drawn_motion
from quarterturn.measure import Length
from quarterturn.pieces import Bill
from quarterturn.steps import labels
from quarterturn.steps.draft import Draft, draft
from quarterturn.steps.making import CutOut, FuseRings, TraceRings
from quarterturn.steps.model import Chapter, Step
from quarterturn.steps.nested import TraceNested, Tracing
from quarterturn.steps.things import Pile, Product


def shape_steps(design: Design, blocks: Blocks, bill: Bill, materials: Materials) -> Iterator[Draft]:
    """Return tracing, hollowing, fusing to the cloth blanks and cutting out."""
    yield from _tracing(blocks, materials.web)
    blanks = _blank_counts(blocks, bill)
    for (label, recipe, shape), count in blanks.items():
        yield _fuse_rings(bill, label, recipe, shape, count)
    for (label, recipe, shape), count in blanks.items():
        yield _cut_out(bill, template_of(blocks, recipe, shape), label, recipe, count)


def _tracing(blocks: Blocks, web: WebPlan) -> Iterator[Draft]:
    """Return tracing the shapes in rows, one after another, or all of them nested."""
    tracings = [_drawn_with_ring(blocks, rows) for rows in web.rows]
    if web.nested is None:
        for rows, tracing in zip(web.rows, tracings, strict=True):
            yield _trace(tracing, rows)
        return
    made = tuple(Product(labels.ring(rows.shape), rows.count, rows.width, rows.height) for rows in web.rows)
    nested = web.nested
    action = TraceNested(tuple(tracings), nested.places, nested.gap, nested.length)
    yield draft(Chapter.SHAPES, action, makes=made)


def tracings_of(step: Step) -> Iterator[tuple[TraceRings | Tracing, int]]:
    """Return what a step traces, and how many of each: nothing where it traces nothing."""
    match step.action:
        case TraceRings() as action:
            yield action, sum(product.count for product in step.makes)
        case TraceNested(tracings=tracings):
            yield from ((one, product.count) for one, product in zip(tracings, step.makes, strict=False))


def template_of(blocks: Blocks, recipe: str, name: str) -> FusedShape:
    """Return the shape of a recipe that a template shows."""
    return next(shape for shape, _ in blocks.master(recipe).templates if shape.name == name)


def about_its_middle(shape: FusedShape) -> Motion:
    """Return the shift that brings the middle of a shape's upright box to 0."""
    return shift(-path_bounds(shape.traced).centre)


def as_length(value: float) -> Length:
    """Return a curve's measure as a length: it is known to float precision only."""
    return Fraction(value).limit_denominator(10**9)


def _hole(shape: FusedShape) -> Path | None:
    return drawn_motion(shape).path(shape.hole) if shape.hole else None


def _drawn_with_ring(blocks: Blocks, rows: WebRows) -> Tracing:
    """Return how a shape is drawn. It is laid by the vertical line of its template: it may not be turned by eye."""
    shape = template_of(blocks, rows.recipe, rows.shape)
    drawn = drawn_motion(shape)
    return Tracing(
        recipe=rows.recipe,
        shape=shape.name,
        traced=drawn.path(shape.traced),
        hole=_hole(shape),
        ring_out=drawn.region(shape.ring_out),
        ring_in=drawn.region(shape.ring_in),
        same_mirrored=is_same_mirrored(shape.traced, upright=True),
    )


def _trace(tracing: Tracing, rows: WebRows) -> Draft:
    action = TraceRings(
        recipe=tracing.recipe,
        shape=tracing.shape,
        traced=tracing.traced,
        hole=tracing.hole,
        ring_out=tracing.ring_out,
        ring_in=tracing.ring_in,
        same_mirrored=tracing.same_mirrored,
        room_width=rows.width,
        room_height=rows.height,
        gap=rows.gap,
        per_row=rows.per_row,
        length=rows.length,
        stagger=rows.stagger,
        rows_on_sheet=rows.rows_on_sheet,
    )
    made = Product(labels.ring(tracing.shape), rows.count, rows.width, rows.height)
    return draft(Chapter.SHAPES, action, makes=(made,))


def _blank_counts(blocks: Blocks, bill: Bill) -> dict[tuple[str, str, str], int]:
    """Count the cloth blanks by label, recipe and shape, those of the colourways before those of motifs."""
    counts: Counter[tuple[str, str, str]] = Counter()
    for masters in bill.masters:
        for blank in masters.blanks:
            counts[blank.label, masters.recipe, blank.shape] += masters.count * blank.each
    for motifs in bill.motifs:
        counts[motifs.shape, motifs.recipe, blocks.master(motifs.recipe).shape.name] += motifs.count
    return dict(counts)


def _fuse_rings(bill: Bill, label: str, recipe: str, shape: str, count: int) -> Draft:
    piece = bill.piece(label)
    used = (Pile(labels.ring(shape), count), Pile(label, count))
    made = Product(labels.backed(piece.fabric, shape), count, piece.length, piece.width)
    return draft(Chapter.SHAPES, FuseRings(recipe, shape), used, (made,))


def _cut_out(bill: Bill, shape: FusedShape, label: str, recipe: str, count: int) -> Draft:
    fabric = bill.piece(label).fabric
    made = Product(labels.cut_out(fabric, shape.name), count, as_length(shape.width), as_length(shape.height))
    used = (Pile(labels.backed(fabric, shape.name), count),)
    action = CutOut(recipe, shape.name, drawn_motion(shape).path(shape.traced), _hole(shape))
    return draft(Chapter.SHAPES, action, used, (made,))
