"""The work of a quilt, read off its steps: how much of each kind there is in each chapter."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from itertools import pairwise

from quarterturn.design import Lesson
from quarterturn.materials.classes import ClassPlan, plan_class
from quarterturn.materials.hours import Task, Work, stage_times
from quarterturn.proof.model import Pattern
from quarterturn.setting import Side
from quarterturn.steps import (
    AddBorder,
    AddMitred,
    Bind,
    Chapter,
    Crease,
    CutApart,
    CutAway,
    CutAwayBehind,
    CutBias,
    CutOut,
    CutPanels,
    CutParcels,
    CutRest,
    CutSegments,
    CutStrips,
    CutTriangles,
    FuseRings,
    FuseToGround,
    FuseToPanel,
    JoinEnds,
    LabelStacks,
    LayerQuilt,
    LayOut,
    QuiltLayers,
    Rejoin,
    SetAside,
    SewLine,
    SquareParcels,
    SquareUp,
    Step,
    Steps,
    StitchEdge,
    StitchMotifs,
    Straighten,
    Subcut,
    TraceNested,
    TraceRings,
    Trim,
)

SQUARE_YARD = 36 * 36
"""Square inches."""

METHOD = tuple(
    chapter.value for chapter in (Chapter.SHAPES, Chapter.FUSING, Chapter.STITCHING, Chapter.UNITS)
)
"""The chapters in which masters are made and cut apart.

Panels are none of them: a class that makes fewer masters makes no fewer panels, and these can be done at home.
"""


def tasks_of(steps: Steps) -> tuple[Task, ...]:
    """Return the tasks of all steps. What a step does in passing (straightening, creasing) is in another's time."""
    return tuple(
        Task(step.chapter.value, work, amount) for step in steps.steps for work, amount in _work(step)
    ) + (tuple(_behind_motifs(steps)))


def class_plan(pattern: Pattern, lesson: Lesson) -> ClassPlan:
    """Plan a class that makes a pattern."""
    times = stage_times(tasks_of(pattern.steps), pattern.design.selling.money.minutes)
    return plan_class(times, lesson, METHOD, sum(master.count for master in pattern.bill.masters))


def _behind_motifs(steps: Steps) -> Iterator[Task]:
    """Return cutting panels away behind their motifs: how many those are only the step before tells."""
    for before, step in pairwise(steps.steps):
        if isinstance(step.action, CutAwayBehind) and isinstance(before.action, StitchMotifs):
            motifs = sum(edge.motifs for edge in before.action.edges)
            yield Task(step.chapter.value, Work.CUT_AWAY, motifs * _made(step))


_FOR_EACH_MADE: Mapping[type, Work] = {
    CutStrips: Work.STRIP,
    CutRest: Work.STRIP,
    SquareParcels: Work.STRIP,
    CutParcels: Work.STRIP,
    CutPanels: Work.STRIP,
    Subcut: Work.CUT,
    TraceNested: Work.RING,
    CutSegments: Work.CUT,
    TraceRings: Work.RING,
    CutOut: Work.SHAPE,
    Trim: Work.TRIM,
    SquareUp: Work.TRIM,
    AddBorder: Work.BORDER,
}
"""What is done once for each piece that a step makes."""


def _made(step: Step) -> int:
    return sum(product.count for product in step.makes)


def _work(step: Step) -> Iterator[tuple[Work, float]]:
    if type(step.action) in _FOR_EACH_MADE:
        yield _FOR_EACH_MADE[type(step.action)], _made(step)
        return
    match step.action:
        case Straighten() | FuseRings() | Crease() | CutAwayBehind():
            return
        case CutApart(cuts=cuts) | CutTriangles(cuts=cuts):
            work = Work.APART if isinstance(step.action, CutApart) else Work.CUT
            count = cuts if isinstance(cuts, int) else len(cuts)
            yield work, count * sum(pile.count for pile in step.uses)
        case FuseToGround() | FuseToPanel() | StitchEdge() | StitchMotifs() | CutAway():
            yield from _on_cloth(step)
        case _:
            yield from _sewing(step)


def _on_cloth(step: Step) -> Iterator[tuple[Work, float]]:
    """Return what is done to each of the shapes that lie on a piece."""
    match step.action:
        case FuseToGround(places=shapes) | FuseToPanel(motifs=shapes):
            yield Work.PLACING, len(shapes) * _made(step)
        case StitchEdge(edge=edge):
            yield Work.STITCHING, edge * _made(step)
        case StitchMotifs(edges=edges):
            yield Work.STITCHING, sum(edge.edge for edge in edges) * _made(step)
        case CutAway(behind=behind):
            yield Work.CUT_AWAY, len(behind) * _made(step)


def _sewing(step: Step) -> Iterator[tuple[Work, float]]:
    made = _made(step)
    match step.action:
        case AddMitred():
            yield Work.BORDER, 4 * made
        case CutBias(rows=rows):
            yield Work.SEAM, 2
            yield Work.CUT, rows
        case Rejoin(way=way):
            yield Work.SEAM, made
            yield Work.SEAM_INCH, made * _chord(step, way)
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


def _chord(step: Step, way: complex) -> float:
    """Return the length of a seam square to `way` through the middle of what is made."""
    along = way * 1j / abs(way)
    sides = ((float(step.makes[0].width), abs(along.real)), (float(step.makes[0].height), abs(along.imag)))
    return min(side / share for side, share in sides if share > 1e-9)


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
    used, made = sum(pile.count for pile in step.uses), _made(step)
    if used > made and step.makes:
        yield Work.SEAM, used - made
        longest = max(max(product.width, product.height) for product in step.makes)
        yield Work.SEAM_INCH, (used - made) * float(longest)
    elif made > used:
        yield Work.CUT, made - used
    else:
        yield Work.OTHER, max(used, made)
