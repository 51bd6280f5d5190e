"""The work of a quilt, read off its steps: how much of each kind there is in each chapter."""

from __future__ import annotations

from collections.abc import Iterator

from quarterturn.materials.hours import Task, Work
from quarterturn.setting import Side
from quarterturn.steps import (
    AddBorder,
    Bind,
    Chapter,
    Crease,
    CutApart,
    CutAway,
    CutOut,
    CutPanels,
    CutStrips,
    FuseRings,
    FuseToGround,
    LabelStacks,
    LayerQuilt,
    LayOut,
    QuiltLayers,
    SetAside,
    SewLine,
    Step,
    Steps,
    StitchEdge,
    Straighten,
    Subcut,
    TraceRings,
    Trim,
)

SQUARE_YARD = 36 * 36
"""Square inches."""

METHOD = tuple(
    chapter.value for chapter in (Chapter.SHAPES, Chapter.FUSING, Chapter.STITCHING, Chapter.UNITS)
)
"""The chapters in which masters are made and cut apart."""


def tasks_of(steps: Steps) -> tuple[Task, ...]:
    """Return the tasks of all steps. What a step does in passing (straightening, creasing) is in another's time."""
    return tuple(
        Task(step.chapter.value, work, amount) for step in steps.steps for work, amount in _work(step)
    )


def _work(step: Step) -> Iterator[tuple[Work, float]]:
    made = sum(product.count for product in step.makes)
    match step.action:
        case Straighten() | FuseRings() | Crease():
            return
        case CutStrips() | CutPanels():
            yield Work.STRIP, made
        case Subcut():
            yield Work.CUT, made
        case TraceRings():
            yield Work.RING, made
        case CutOut():
            yield Work.SHAPE, made
        case FuseToGround():
            yield Work.PLACING, made
        case StitchEdge(edge=edge):
            yield Work.STITCHING, made * edge
        case CutApart(cuts=cuts):
            yield Work.APART, len(cuts) * sum(pile.count for pile in step.uses)
        case CutAway():
            yield Work.CUT_AWAY, made
        case Trim():
            yield Work.TRIM, made
        case AddBorder():
            yield Work.BORDER, made
        case SewLine(parts=parts, way=way):
            seams = (len(parts) - 1) * made
            yield Work.SEAM, seams
            yield Work.SEAM_INCH, seams * _seam_length(step, way)
        case _:
            yield from _finishing(step)


def _seam_length(step: Step, way: Side) -> float:
    product = step.makes[0]
    return float(product.height if way in (Side.LEFT, Side.RIGHT) else product.width)


def _finishing(step: Step) -> Iterator[tuple[Work, float]]:
    product = step.makes[0] if step.makes else None
    wide, high = (float(product.width), float(product.height)) if product else (0.0, 0.0)
    match step.action:
        case LayOut(rows=rows):
            yield Work.OTHER, sum(len(row) for row in rows)
        case LabelStacks(stacks=stacks):
            yield Work.OTHER, len(stacks)
        case SetAside():
            yield Work.OTHER, len(step.uses)
        case LayerQuilt():
            yield Work.LAYERING, wide * high / SQUARE_YARD
        case QuiltLayers():
            yield Work.QUILTING, wide * high / SQUARE_YARD
        case Bind():
            yield Work.BINDING, 2 * (wide + high)
        case _:
            yield from _by_count(step)


def _by_count(step: Step) -> Iterator[tuple[Work, float]]:
    """Return the work of any other step by the law that sewing n pieces into m takes n − m seams, or the like."""
    used = sum(pile.count for pile in step.uses)
    made = sum(product.count for product in step.makes)
    if used > made and step.makes:
        yield Work.SEAM, used - made
        longest = max(max(product.width, product.height) for product in step.makes)
        yield Work.SEAM_INCH, (used - made) * float(longest)
    elif made > used:
        yield Work.CUT, made - used
    else:
        yield Work.OTHER, max(used, made)
