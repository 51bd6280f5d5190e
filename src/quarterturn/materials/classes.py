"""A class: which stages fit into its hours, which are done at home, and where students wait for an iron or a mat.

Everybody works at once. A stage lasts as long as a student takes for it, or as long as the irons or the places to cut
take to serve all of them in turn, whichever is longer; before each stage the teacher shows it. An estimate.
"""

from __future__ import annotations

import math
from collections.abc import Collection, Iterable, Sequence
from dataclasses import dataclass

from quarterturn.design import Lesson
from quarterturn.materials.hours import StageTime

STUDENTS_PER_IRON = 4
"""One iron for eight makes a queue; one for three or four does (common practice, no source)."""

STUDENTS_PER_CUTTER = 2
"""From memory."""

OWN_PACE, IRONS, CUTTERS = "own pace", "irons", "cutters"
"""What a stage waits for."""


@dataclass(frozen=True, slots=True)
class Slot:
    """A stage in class: minutes from the beginning, first the showing of it and then the work."""

    stage: str
    start: float
    showing: float
    work: float
    waits_for: str

    @property
    def end(self) -> float:
        """Return when the stage ends."""
        return self.start + self.showing + self.work


@dataclass(frozen=True, slots=True)
class ClassPlan:
    """The run of a class. What is done at home stands with the minutes that a student takes for it."""

    students: int
    minutes: float
    """Minutes of the class."""
    irons: int
    cutters: int
    before: tuple[tuple[str, float], ...]
    slots: tuple[Slot, ...]
    after: tuple[tuple[str, float], ...]
    rest: tuple[tuple[str, float], ...] = ()
    """What is left of stages in class, to be done first after it: those of masters that the class does not make."""
    others: int = 0
    """Masters that the quilt has and the class does not make."""

    @property
    def needed(self) -> float:
        """Return the minutes that all its stages take."""
        return self.slots[-1].end if self.slots else 0.0

    @property
    def fits(self) -> bool:
        """Tell whether all stages end in time."""
        return self.needed <= self.minutes

    @property
    def done(self) -> float:
        """Return the part of the work in class that there is time for, 1 where all is done."""
        work = sum(slot.work for slot in self.slots)
        free = self.minutes - sum(slot.showing for slot in self.slots)
        return 1.0 if self.fits else max(0.0, free / work)

    @property
    def heads(self) -> tuple[float, float]:
        """Return how many students share an iron and a place to cut."""
        return self.students / self.irons, self.students / self.cutters


def plan_class(
    times: Sequence[StageTime], lesson: Lesson, method: Collection[str], masters: int
) -> ClassPlan:
    """Return the run of a class for the stages of a quilt with so many masters.

    `method` names the stages in which masters are made: what the class is for. Where the class makes fewer masters
    than the quilt has, these stages are as much shorter in class, and what is left of them is homework. Where the
    design does not say what is done at home, it is as little as makes the rest fit, but never a stage of the method:
    the cutting first, then from the end.
    """
    made = min(lesson.masters, masters) if lesson.masters else masters
    share = made / masters if masters else 1.0
    whole = [time.times(float(lesson.pace)) for time in times]
    paced = [time.times(share) if time.stage in method else time for time in whole]
    irons = lesson.irons or math.ceil(lesson.students / STUDENTS_PER_IRON)
    cutters = lesson.cutters or math.ceil(lesson.students / STUDENTS_PER_CUTTER)
    minutes = float(lesson.hours) * 60
    home = lesson.homework
    if home is None:
        home = suggested_homework(paced, lesson, irons, cutters, method)
    held = [time for time in paced if time.stage not in home]
    first = paced.index(held[0]) if held else len(paced)
    left = [time.times(1 - share) for time in whole if time.stage in method and time.stage not in home]
    return ClassPlan(
        students=lesson.students,
        minutes=minutes,
        irons=irons,
        cutters=cutters,
        before=_told(whole[:first]),
        slots=_slots(held, lesson, irons, cutters),
        after=_told(time for time in whole[first:] if time.stage in home),
        rest=_told(left) if made < masters else (),
        others=masters - made,
    )


def _told(times: Iterable[StageTime]) -> tuple[tuple[str, float], ...]:
    return tuple((time.stage, time.minutes) for time in times)


def suggested_homework(
    paced: Sequence[StageTime], lesson: Lesson, irons: int, cutters: int, method: Collection[str]
) -> tuple[str, ...]:
    """Return the fewest stages to be done at home: the first, if need be, then from the end, none of the method."""
    spare = [time.stage for time in paced if time.stage not in method]
    order = spare[:1] + spare[:0:-1]
    for count in range(len(order) + 1):
        home = tuple(order[:count])
        slots = _slots([time for time in paced if time.stage not in home], lesson, irons, cutters)
        if not slots or slots[-1].end <= float(lesson.hours) * 60:
            return home
    return tuple(order)


def _slots(held: Sequence[StageTime], lesson: Lesson, irons: int, cutters: int) -> tuple[Slot, ...]:
    slots: list[Slot] = []
    for time in held:
        start = slots[-1].end if slots else 0.0
        work, waits_for = _lasts(time, lesson.students, irons, cutters)
        slots.append(Slot(time.stage, start, float(lesson.showing), work, waits_for))
    return tuple(slots)


def _lasts(time: StageTime, students: int, irons: int, cutters: int) -> tuple[float, str]:
    """Return how long a stage lasts for everybody, and what it waits for."""
    waits = {
        OWN_PACE: time.minutes,
        IRONS: time.iron * math.ceil(students / irons),
        CUTTERS: time.cutter * math.ceil(students / cutters),
    }
    longest = max(waits, key=lambda each: waits[each])
    return waits[longest], longest
