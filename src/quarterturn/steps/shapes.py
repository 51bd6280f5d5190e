"""The steps that turn web and cloth blanks into shapes ready to fuse."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from fractions import Fraction

from quarterturn.blocks import Blocks, FusedShape
from quarterturn.design import Design
from quarterturn.geometry import Motion, Path, is_same_mirrored, mirror_across_vertical, path_bounds, shift
from quarterturn.materials import Materials, WebRows
from quarterturn.measure import Length
from quarterturn.pieces import Bill
from quarterturn.steps import labels
from quarterturn.steps.draft import Draft, draft
from quarterturn.steps.making import CutOut, FuseRings, TraceRings
from quarterturn.steps.model import Chapter
from quarterturn.steps.things import Pile, Product

FLIP = mirror_across_vertical()
"""Web is drawn on the paper side and goes on the wrong side of the cloth: what is drawn comes out mirrored."""


def shape_steps(design: Design, blocks: Blocks, bill: Bill, materials: Materials) -> Iterator[Draft]:
    """Return tracing, hollowing, fusing to the cloth blanks and cutting out."""
    for rows in materials.web.rows:
        yield _trace(template_of(blocks, rows.recipe, rows.shape), rows)
    blanks = _blank_counts(blocks, bill)
    for (label, recipe, shape), count in blanks.items():
        yield _fuse_rings(bill, label, recipe, shape, count)
    for (label, recipe, shape), count in blanks.items():
        yield _cut_out(bill, template_of(blocks, recipe, shape), label, recipe, count)


def template_of(blocks: Blocks, recipe: str, name: str) -> FusedShape:
    """Return the shape of a recipe that a template shows."""
    return next(shape for shape, _ in blocks.master(recipe).templates if shape.name == name)


def about_its_middle(shape: FusedShape) -> Motion:
    """Return the shift that brings the middle of a shape's upright box to 0."""
    return shift(-path_bounds(shape.traced).centre)


def as_length(value: float) -> Length:
    """Return a curve's measure as a length: it is known to float precision only."""
    return Fraction(value).limit_denominator(10**9)


def _drawn(shape: FusedShape) -> Motion:
    """Return the motion that brings a shape from its place in the master to how it is drawn on the paper."""
    return about_its_middle(shape).then(FLIP)


def _hole(shape: FusedShape) -> Path | None:
    return _drawn(shape).path(shape.hole) if shape.hole else None


def _trace(shape: FusedShape, rows: WebRows) -> Draft:
    """Return tracing a shape, which is laid by the upright line of its template: it may not be turned by eye."""
    drawn = _drawn(shape)
    action = TraceRings(
        recipe=rows.recipe,
        shape=shape.name,
        traced=drawn.path(shape.traced),
        hole=_hole(shape),
        ring_out=drawn.region(shape.ring_out),
        ring_in=drawn.region(shape.ring_in),
        same_mirrored=is_same_mirrored(shape.traced, upright=True),
        room_width=rows.width,
        room_height=rows.height,
        gap=rows.gap,
        per_row=rows.per_row,
    )
    made = Product(labels.ring(shape.name), rows.count, rows.width, rows.height)
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
    action = CutOut(recipe, shape.name, _drawn(shape).path(shape.traced), _hole(shape))
    return draft(Chapter.SHAPES, action, used, (made,))
