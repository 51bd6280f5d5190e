"""Checks of kits and classes: what is cut for kits comes off a bolt, and a class is done in its hours (group J).

That supplies are what is required less the kit, and that tickets cut what kits hold, is held by tests of the papers.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Iterator
from dataclasses import replace
from math import ceil

from quarterturn.design import Kits, Lesson, Severity
from quarterturn.design.limits import MOST_HOURS
from quarterturn.materials.classes import STUDENTS_PER_IRON, ClassPlan
from quarterturn.materials.kits import KitCloth, kit_tickets, kits_cloth
from quarterturn.measure import Length, show_cloth, show_count, show_length
from quarterturn.proof.checks.fault import Fault, check
from quarterturn.proof.model import Pattern
from quarterturn.proof.work import class_plan


def bolts_hold(pattern: Pattern) -> Iterator[Fault]:
    """Name what is cut for kits and is longer than a bolt."""
    design, kits = pattern.design, _kits(pattern)
    if kits is None:
        return
    for cloth in kits_cloth(design, pattern.bill, kits):
        long = kit_tickets(cloth, kits, design.making.squaring).too_long
        if not long:
            continue
        cut = ", ".join(
            f"({line.count}) {line.label} of {show_length(line.height, design.units)}" for line in long
        )
        sentence = (
            f"Kits take cuts of fabric {cloth.fabric} for which a bolt of {show_cloth(kits.bolt, design.units)} is too "
            f"short: {cut}."
        )
        least = max(line.height for line in long) + design.making.squaring
        yield Fault("kits.bolt", sentence, _longer_bolt(kits, cloth, least, pattern))


def _kits(pattern: Pattern) -> Kits | None:
    """Return the kits where they are of this size."""
    kits = pattern.design.selling.kits
    return kits if kits and kits.size == pattern.design.size else None


def _longer_bolt(kits: Kits, cloth: KitCloth, least: Length, pattern: Pattern) -> str:
    backing = kits.backing and cloth.fabric == pattern.design.backing_fabric
    leave = ", or leave the backing out of the kits" if backing else ""
    return f"Cut it from bolts of {show_length(least, pattern.design.units)} or more{leave}."


def class_ends(pattern: Pattern) -> Iterator[Fault]:
    """Tell of a class that its hours do not hold."""
    lesson = _lesson(pattern)
    if lesson is None:
        return
    plan = class_plan(pattern, lesson)
    if not plan.fits:
        sentence = (
            f"The class takes about {_hours(plan.needed)}, and has {_hours(plan.minutes)}: {plan.done:.0%} of the "
            "work is done."
        )
        yield Fault("class.hours", sentence, _shorter(pattern, lesson, plan))


def _lesson(pattern: Pattern) -> Lesson | None:
    """Return the class where it makes this size."""
    lesson = pattern.design.selling.lesson
    return lesson if lesson and lesson.size == pattern.design.size else None


def _hours(minutes: float) -> str:
    hours, rest = divmod(round(minutes), 60)
    return f"{hours}:{rest:02d} hours"


def _shorter(pattern: Pattern, lesson: Lesson, plan: ClassPlan) -> str:
    """Advise so few masters that the class is done in time, or as many hours as it takes."""

    def takes_too_long(masters: int) -> bool:
        return not class_plan(pattern, replace(lesson, masters=masters)).fits

    hours = ceil(plan.needed / 15) / 4
    longer = f"set class.hours to {hours:g}" if hours <= MOST_HOURS else ""
    now = lesson.masters or sum(count.count for count in pattern.bill.masters)
    if fitting := bisect_left(range(1, now), True, key=takes_too_long):
        ways = (f"set class.masters to {fitting}", longer)
    else:
        ways = (longer, "let more be done at home")
    said = ", or ".join(way for way in ways if way)
    return f"{said[0].upper()}{said[1:]}."


def irons_queue(pattern: Pattern) -> Iterator[Fault]:
    """Tell of more students to an iron than wait without a queue: one for three or four (common practice)."""
    lesson = _lesson(pattern)
    if lesson is None or not lesson.irons or lesson.students <= lesson.irons * STUDENTS_PER_IRON:
        return
    sentence = (
        f"{show_count(lesson.students, 'student')} share {show_count(lesson.irons, 'iron')}: "
        f"up to {ceil(lesson.students / lesson.irons)} wait for one."
    )
    irons = ceil(lesson.students / STUDENTS_PER_IRON)
    yield Fault(
        "class.irons", sentence, f"Have {show_count(irons, 'iron')}, one for {STUDENTS_PER_IRON} students."
    )


def homework_there(pattern: Pattern) -> Iterator[Fault]:
    """Name homework that the quilt does not have: homework and class are all of its chapters together."""
    lesson = _lesson(pattern)
    chapters = {step.chapter.value for step in pattern.steps.steps}
    for number, stage in enumerate((lesson and lesson.homework) or ()):
        if stage not in chapters:
            sentence = f"The class has {stage} for homework, and the quilt has no such chapter."
            yield Fault(f"class.homework.{number}", sentence, "Take it out of the homework.")


SELLING = (
    check("kit-over-bolt", Severity.COSTS, (55,), "What kits take comes off a bolt.", bolts_hold),
    check("class-too-long", Severity.CONFUSES, (101,), "A class is done in its hours.", class_ends),
    check("irons-few", Severity.CONFUSES, (101,), "Students do not queue for an iron.", irons_queue),
    check("homework-absent", Severity.CONFUSES, (100,), "Homework is part of the quilt.", homework_there),
)
