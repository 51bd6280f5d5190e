"""Faults planted in steps and supplies, for tests that want them caught."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from fractions import Fraction
from typing import Any, TypeVar

from quarterturn import steps as s
from quarterturn.proof import ACCEPTED, Pattern
from quarterturn.proof.rehearsal import Supplies, area_of_difference, rehearse
from quarterturn.setting import picture

EIGHTH = Fraction(1, 8)
Case = tuple[Supplies, tuple[s.Step, ...]]
Mutation = Callable[[Case], Case]
A = TypeVar("A")


def verdict(pattern: Pattern, case: Case) -> str:
    """Rehearse and compare: 'sound', or how the fault shows."""
    supplies, steps = case
    rehearsal = rehearse(supplies, s.Steps(steps))
    if rehearsal.failures:
        return rehearsal.failures[0].sentence
    drawn = picture(pattern.design, pattern.blocks, pattern.setting)
    share = area_of_difference(rehearsal.top, drawn) / float(pattern.setting.width * pattern.setting.height)
    return "sound" if share <= ACCEPTED else f"{share:.1e} of the top differs"


def alter(kind: type[A], change: Callable[[A], object], nth: int = 0) -> Mutation:
    """Change the action of the nth step of a kind."""

    def mutate(case: Case) -> Case:
        supplies, steps = case
        step = [step for step in steps if isinstance(step.action, kind)][nth]
        changed: Any = replace(step, action=change(step.action))  # type: ignore[arg-type]
        return supplies, tuple(changed if one is step else one for one in steps)

    return mutate


def rework(kind: type, change: Callable[[s.Step], s.Step], nth: int = 0) -> Mutation:
    """Change the nth step of a kind as a whole."""

    def mutate(case: Case) -> Case:
        supplies, steps = case
        step = [step for step in steps if isinstance(step.action, kind)][nth]
        return supplies, tuple(change(one) if one is step else one for one in steps)

    return mutate


def drop(kind: type, nth: int = 0) -> Mutation:
    """Leave a step out."""

    def mutate(case: Case) -> Case:
        supplies, steps = case
        step = [step for step in steps if isinstance(step.action, kind)][nth]
        return supplies, tuple(one for one in steps if one is not step)

    return mutate


def swap(first: type, second: type, nth: int = 0, other: int = 0) -> Mutation:
    """Exchange two steps: the nth of one kind and the other-th of another."""

    def mutate(case: Case) -> Case:
        supplies, steps = case
        a = [i for i, step in enumerate(steps) if isinstance(step.action, first)][nth]
        b = [i for i, step in enumerate(steps) if isinstance(step.action, second)][other]
        order = list(steps)
        order[a], order[b] = order[b], order[a]
        return supplies, tuple(order)

    return mutate


def supply(change: Callable[[Supplies], Supplies]) -> Mutation:
    """Change what was bought."""
    return lambda case: (change(case[0]), case[1])


def one_more(piles: tuple[s.Pile, ...], index: int = 0, by: int = 1) -> tuple[s.Pile, ...]:
    """Change the count of one pile."""
    return tuple(replace(p, count=p.count + by) if i == index else p for i, p in enumerate(piles))


def made_more(products: tuple[s.Product, ...], by: int = 1) -> tuple[s.Product, ...]:
    """Change the count of the first product."""
    return (replace(products[0], count=products[0].count + by), *products[1:])


def narrower(products: tuple[s.Product, ...]) -> tuple[s.Product, ...]:
    """Make the first product an eighth narrower."""
    return (replace(products[0], width=products[0].width - EIGHTH), *products[1:])


def trimmed_by(by: Fraction) -> Callable[[Any], s.Trim]:
    """Trim nearer to the edges that it is measured from."""

    def change(action: s.Trim) -> s.Trim:
        lines = (
            replace(line, line=line.line.moved_left(float(by)), distance=line.distance - by)
            for line in action.lines
        )
        return replace(action, lines=tuple(lines))

    return change
