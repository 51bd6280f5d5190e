"""Gather steps into numbered entries: steps that are told alike become one entry with a line for each."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from quarterturn.proof import Pattern
from quarterturn.publish.booklet.model import CutLine, Entry
from quarterturn.publish.wording import Wording, tell
from quarterturn.steps import Step, Subcut


def gather(steps: Iterable[Step], pattern: Pattern, first: int) -> tuple[Entry, ...]:
    """Return the entries of a chapter in the order of their first step, numbered from `first`."""
    alike: dict[tuple[str, tuple[str, ...]], list[tuple[Step, Wording]]] = {}
    for step in steps:
        words = tell(step, pattern)
        alike.setdefault(words.alike, []).append((step, words))
    return tuple(
        Entry(
            number=number,
            steps=tuple(step.number for step, _ in told),
            title=title,
            sentences=sentences,
            lines=tuple(words.line for _, words in told if words.line),
        )
        for number, ((title, sentences), told) in enumerate(alike.items(), start=first)
    )


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
        if group and not isinstance(step.action, Subcut):
            yield group
            group = []
        group.append(step)
    if group:
        yield group


def _sentence(lines: list[str]) -> str:
    return f"{'; '.join(line.rstrip('.') for line in lines)}."
