"""Papers for a class: what students do at home and bring, and a run sheet. All times are estimates."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from quarterturn.design import Kits, Lesson
from quarterturn.materials.classes import OWN_PACE, ClassPlan
from quarterturn.measure import aligned, show_count
from quarterturn.proof import Pattern
from quarterturn.proof.work import class_plan
from quarterturn.publish.kits import edition, packing_of, supply_list
from quarterturn.publish.tables import csv_text
from quarterturn.publish.wording.names import size_named
from quarterturn.publish.wording.requirements import cloth_needs, other_needs

RUN_HEAD = ("from", "to", "what", "minutes", "waits for")


def class_files(pattern: Pattern, lesson: Lesson, kits: Kits | None = None) -> Mapping[str, str]:
    """Return the papers by name; `kits` are those that students bring."""
    plan = class_plan(pattern, lesson)
    return {"class.txt": class_text(pattern, lesson, plan, kits), "run-sheet.csv": run_sheet_csv(plan)}


def run_rows(plan: ClassPlan) -> Iterator[tuple[str, ...]]:
    """Return a row for the showing of each stage and one for its work: from, to, what, minutes, what it waits for."""
    for slot in plan.slots:
        begun = slot.start + slot.showing
        if slot.showing:
            yield clock(slot.start), clock(begun), f"show {slot.stage}", f"{slot.showing:.0f}", ""
        yield clock(begun), clock(slot.end), slot.stage, f"{slot.work:.0f}", slot.waits_for


def run_sheet_csv(plan: ClassPlan) -> str:
    """Return the run sheet: times are hours and minutes from the beginning."""
    return csv_text([RUN_HEAD, *run_rows(plan)])


def clock(minutes: float) -> str:
    """Print minutes from the beginning: ``1:05``."""
    hours, rest = divmod(round(minutes), 60)
    return f"{hours}:{rest:02d}"


def class_text(pattern: Pattern, lesson: Lesson, plan: ClassPlan, kits: Kits | None = None) -> str:
    """Return the teacher's sheet and the students' lists."""
    title = ", ".join(part for part in (pattern.design.title, size_named(pattern)) if part)
    lines = [
        f"{title}: class for {show_count(plan.students, 'student')}, {clock(plan.minutes)} hours",
        *([f"By {edition(pattern.design)}."] if edition(pattern.design) else []),
        f"Each makes {_made(pattern, plan)}. All times are estimates: a student is taken to need "
        f"{float(lesson.pace):g} times as long as a practised sewer.",
        *_room(plan),
        *_home("Before class, at home", plan.before),
        "",
        "In class",
        *aligned([RUN_HEAD, *run_rows(plan)], right=(0, 1, 3)),
        f"  {_verdict(plan)}",
        *_home("After class, at home", (*_others(plan), *plan.after)),
        "",
        "Each student brings",
        *(f"  {line}" for line in _brings(pattern, kits)),
    ]
    return "\n".join(lines) + "\n"


def _made(pattern: Pattern, plan: ClassPlan) -> str:
    """Say how many masters each student makes of how many, and of which there are how many."""
    if not plan.others:
        return "the whole quilt"
    masters = pattern.bill.masters
    total = sum(master.count for master in masters)
    kinds = ", ".join(f"({master.count}) {master.code}" for master in masters)
    of_kinds = f": {kinds}; say which" if len(masters) > 1 else ""
    return f"{total - plan.others} of the {show_count(total, 'master')}{of_kinds}"


def _others(plan: ClassPlan) -> Iterator[tuple[str, float]]:
    """Return the stages of the masters that are not made in class."""
    others = "the other master" if plan.others == 1 else f"the other {plan.others} masters"
    yield from ((f"{stage}, {others}", minutes) for stage, minutes in plan.rest)


def _room(plan: ClassPlan) -> Iterator[str]:
    irons, cutters = plan.heads
    yield (
        f"In the room: {show_count(plan.irons, 'iron')}, one for {irons:.1f} students; "
        f"{show_count(plan.cutters, 'place')} to cut at, one for {cutters:.1f}."
    )
    waits = {slot.waits_for: slot.stage for slot in plan.slots if slot.waits_for != OWN_PACE}
    for what, stage in waits.items():
        yield f"Students wait for the {what}, as in {stage}: more of them would shorten the class."


def _verdict(plan: ClassPlan) -> str:
    if plan.fits:
        return f"{clock(plan.minutes - plan.needed)} hours are left."
    return (
        f"This takes {clock(plan.needed)} hours, and the class has {clock(plan.minutes)}: "
        f"in that time {plan.done:.0%} of the work is done."
    )


def _home(title: str, stages: tuple[tuple[str, float], ...]) -> Iterator[str]:
    if stages:
        yield ""
        yield title
        yield from aligned([(stage, f"about {clock(minutes)} hours") for stage, minutes in stages])


def _brings(pattern: Pattern, kits: Kits | None) -> Iterator[str]:
    """Return what no kit holds, or all that is needed where there are no kits."""
    if kits:
        yield "the kit"
        yield from supply_list(packing_of(pattern, kits))
        return
    needs = (*cloth_needs(pattern), *other_needs(pattern))
    yield from (f"{need.amount}: {need.what}" for need in needs)
    yield from (f"{each.count} {each.name}" for each in pattern.design.selling.notions)
