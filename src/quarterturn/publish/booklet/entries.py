"""Gather steps into numbered entries: steps that are told alike become one entry with a line for each."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator
from typing import TypeAlias

from quarterturn.proof import Pattern
from quarterturn.publish.booklet.model import CutLine, Entry
from quarterturn.publish.wording import Wording, listed, plural, tell
from quarterturn.steps import (
    CutApart,
    CutAway,
    CutOut,
    CutSegments,
    FuseRings,
    FuseToGround,
    Rejoin,
    Step,
    StitchEdge,
    Subcut,
    TraceRings,
    Trim,
)

UNIT = "unit "
MOST_NAMED = 6
"""Names that a title may bear."""

Told: TypeAlias = list[tuple[Step, Wording]]
"""Steps that are told alike, in their order, with their words."""


def gather(steps: Iterable[Step], pattern: Pattern, first: int) -> tuple[Entry, ...]:
    """Return the entries of a chapter in the order of their first step, numbered from `first`."""
    alike: dict[tuple[str, tuple[str, ...]], Told] = {}
    for step in steps:
        words = tell(step, pattern)
        alike.setdefault(words.alike, []).append((step, words))
    groups = list(_in_order(list(alike.values())))
    titles = Counter(told[0][1].title for told in groups)
    return tuple(
        _entry(number, told, _what(told) if titles[told[0][1].title] > 1 else "")
        for number, told in enumerate(groups, start=first)
    )


def _what(told: Told) -> str:
    """Return what tells a group from others with its title: its few shapes, or units, by their names."""
    names = list(dict.fromkeys(_worked_on(step) for step, _ in told))
    if len(names) > MOST_NAMED or not all(names):
        return ""
    if all(name.startswith(UNIT) for name in names):
        return f"{plural(len(names), 'unit')} {listed([name.removeprefix(UNIT) for name in names])}"
    return listed(names)


def _worked_on(step: Step) -> str:
    """Return the name of the shape, or of the unit, that a step works on; nothing where it has another title."""
    match step.action:
        case TraceRings() | FuseRings() | CutOut() | FuseToGround() | StitchEdge() as action:
            return action.shape
        case CutApart():
            return step.action.recipe
        case Rejoin():
            return f"{UNIT}{step.action.code}"
        case CutAway() | Trim():
            return step.makes[0].label.partition(",")[0]
    return ""


def _entry(number: int, told: Told, what: str) -> Entry:
    words = told[0][1]
    return Entry(
        number=number,
        steps=tuple(step.number for step, _ in told),
        title=f"{words.title}: {what}" if what else words.title,
        sentences=words.sentences,
        lines=tuple(line for _, each in told for line in each.line.splitlines()),
    )


def _in_order(groups: list[Told]) -> Iterator[Told]:
    """Return groups of steps so that each finds on the table what it uses; else in the order of first steps."""
    waiting = list(groups)
    while waiting:
        ready = (group for group in waiting if not _waits(group, waiting))
        group = next(ready, waiting[0])
        waiting.remove(group)
        yield group


def _waits(group: Told, waiting: list[Told]) -> bool:
    """Tell whether something that a group uses is made by a step of another group that is still to come."""
    used = {pile.label for step, _ in group for pile in step.uses}
    others = (step for other in waiting if other is not group for step, _ in other)
    last = group[-1][0].number
    return any(made.label in used and step.number < last for step in others for made in step.makes)


def cut_lines(steps: Iterable[Step], pattern: Pattern, first: int) -> tuple[CutLine, ...]:
    """Return the cutting of one fabric line by line: strips and what they are cut into are one line."""
    groups = list(_with_their_subcuts(steps))
    return tuple(
        CutLine(number, tuple(s.number for s in group), _sentence([tell(s, pattern).line for s in group]))
        for number, group in enumerate(groups, start=first)
    )


def _with_their_subcuts(steps: Iterable[Step]) -> Iterator[list[Step]]:
    group: list[Step] = []
    for step in steps:
        if group and not isinstance(step.action, Subcut | CutSegments):
            yield group
            group = []
        group.append(step)
    if group:
        yield group


def _sentence(lines: list[str]) -> str:
    return f"{'; '.join(line.rstrip('.') for line in lines)}."
