"""The ledger of the sewing table: what each step takes, and what is there for it to take."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass

from quarterturn.steps import CutApart, CutAway, SetAside, Step, Steps, Trim


@dataclass(frozen=True, slots=True)
class Want:
    """A step that asks for more of a label than is there."""

    step: int
    label: str
    asked: int
    there: int


@dataclass(frozen=True, slots=True)
class Ledger:
    """What was asked in vain, and what is left on the table at the end."""

    wants: tuple[Want, ...]
    left: dict[str, int]


def keep_ledger(steps: Steps) -> Ledger:
    """Go through the steps, adding what they make and taking off what they use."""
    table: Counter[str] = Counter()
    wants = []
    for step in steps.steps:
        for pile in step.uses:
            if table[pile.label] < pile.count:
                wants.append(Want(step.number, pile.label, pile.count, table[pile.label]))
            table[pile.label] -= pile.count
        for product in step.makes:
            table[product.label] += product.count
    return Ledger(tuple(wants), {label: count for label, count in table.items() if count > 0})


def made_of(steps: Steps) -> Counter[str]:
    """Count everything that is made, by label."""
    found: Counter[str] = Counter()
    for step in steps.steps:
        for product in step.makes:
            found[product.label] += product.count
    return found


def set_aside(steps: Steps) -> Counter[str]:
    """Count what is declared as not used, by label."""
    found: Counter[str] = Counter()
    for step in steps.steps:
        if isinstance(step.action, SetAside):
            found.update({pile.label: pile.count for pile in step.uses})
    return found


def codes_of_units(steps: Steps) -> dict[str, str]:
    """Return the colourway of each label that a cut unit bears on its way from the square to the layout."""
    codes: dict[str, str] = {}
    for step in steps.steps:
        if isinstance(step.action, CutApart):
            codes |= {label: step.action.code for label, _ in step.action.parts}
        elif isinstance(step.action, CutAway | Trim):
            codes |= dict(_renamed(step, codes))
    return codes


def _renamed(step: Step, codes: dict[str, str]) -> Iterator[tuple[str, str]]:
    for pile in step.uses:
        if pile.label in codes:
            for product in step.makes:
                yield product.label, codes[pile.label]
