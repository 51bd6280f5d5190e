"""The work of a quilt, read off its steps: how much of each kind there is in each chapter."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

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
    CutRest,
    CutStrips,
    FuseRings,
    FuseToGround,
    JoinEnds,
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


_FOR_EACH_MADE: Mapping[type, Work] = {
    CutStrips: Work.STRIP,
    CutRest: Work.STRIP,
    CutPanels: Work.STRIP,
    Subcut: Work.CUT,
    TraceRings: Work.RING,
    CutOut: Work.SHAPE,
    FuseToGround: Work.PLACING,
    CutAway: Work.CUT_AWAY,
    Trim: Work.TRIM,
    AddBorder: Work.BORDER,
}
"""What is done once for each piece that a step makes."""


def _work(step: Step) -> Iterator[tuple[Work, float]]:
    made = sum(product.count for product in step.makes)
    if type(step.action) in _FOR_EACH_MADE:
        yield _FOR_EACH_MADE[type(step.action)], made
        return
    match step.action:
        case Straighten() | FuseRings() | Crease():
            return
        case StitchEdge(edge=edge):
            yield Work.STITCHING, made * edge
        case CutApart(cuts=cuts):
            yield Work.APART, len(cuts) * sum(pile.count for pile in step.uses)
        case JoinEnds():
            joins = sum(pile.count for pile in step.uses) - made
            yield Work.SEAM, joins
            yield Work.SEAM_INCH, joins * float(min(step.makes[0].width, step.makes[0].height))
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
