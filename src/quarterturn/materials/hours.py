"""How long a quilt takes, stage by stage: an estimate, amounts of work times minutes that are assumed.

One published tally has a pattern's writing and sums at 15 hours and its sewing far above; no source gives minutes for
each kind of work, so that every one of `design.selling.Minutes` is an assumption, told beside the result.
"""

from __future__ import annotations

import enum
from collections.abc import Iterable
from dataclasses import dataclass, fields

from quarterturn.design import Minutes


class Work(enum.Enum):
    """The kinds of work that take time; each is a field of `Minutes`."""

    STRIP = "strip"
    CUT = "cut"
    RING = "ring"
    SHAPE = "shape"
    PLACING = "placing"
    STITCHING = "stitching"
    APART = "apart"
    CUT_AWAY = "cut_away"
    TRIM = "trim"
    SEAM = "seam"
    SEAM_INCH = "seam_inch"
    BORDER = "border"
    LAYERING = "layering"
    QUILTING = "quilting"
    BINDING = "binding"
    OTHER = "other"


IRON = dict.fromkeys((Work.SHAPE, Work.PLACING, Work.SEAM, Work.BORDER), 0.25)
"""The part of some work that is done at the iron: such that the trade's one iron for four makes no queue."""

CUTTER = dict.fromkeys((Work.STRIP, Work.CUT, Work.APART, Work.TRIM), 0.5)
"""The part of some work in which a rotary cutter and a mat are in use (from memory)."""


@dataclass(frozen=True, slots=True)
class Task:
    """So much work of one kind in a stage: a count, inches, or square yards."""

    stage: str
    work: Work
    amount: float


@dataclass(frozen=True, slots=True)
class StageTime:
    """Minutes of a stage, and how many of them the iron and the cutter are in use."""

    stage: str
    minutes: float
    iron: float
    cutter: float

    def times(self, factor: float) -> StageTime:
        """Return the time of so many times the work."""
        return StageTime(self.stage, self.minutes * factor, self.iron * factor, self.cutter * factor)


def minutes_of(task: Task, minutes: Minutes) -> float:
    """Return how long a task takes."""
    return task.amount * float(getattr(minutes, task.work.value))


def stage_times(tasks: Iterable[Task], minutes: Minutes) -> tuple[StageTime, ...]:
    """Return the time of each stage, in the order in which the stages begin."""
    found: dict[str, StageTime] = {}
    for task in tasks:
        took = minutes_of(task, minutes)
        sofar = found.get(task.stage, StageTime(task.stage, 0, 0, 0))
        found[task.stage] = StageTime(
            task.stage,
            sofar.minutes + took,
            sofar.iron + took * IRON.get(task.work, 0),
            sofar.cutter + took * CUTTER.get(task.work, 0),
        )
    return tuple(found.values())


def hours_of(times: Iterable[StageTime]) -> float:
    """Return the hours of some stages together."""
    return sum(time.minutes for time in times) / 60


@dataclass(frozen=True, slots=True)
class Assumption:
    """What is assumed of a kind of work that a quilt has: minutes for one of it, and how much of it there is."""

    work: Work
    each: float
    amount: float


def assumptions(tasks: Iterable[Task], minutes: Minutes) -> tuple[Assumption, ...]:
    """Return the minutes that the hours of these tasks rest on, in the order of `Minutes`."""
    amounts: dict[str, float] = {}
    for task in tasks:
        amounts[task.work.value] = amounts.get(task.work.value, 0) + task.amount
    return tuple(
        Assumption(Work(field.name), float(getattr(minutes, field.name)), amounts[field.name])
        for field in fields(minutes)
        if field.name in amounts
    )
