"""The ledger of the sewing table: what each step takes, and what is there for it to take."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass

from quarterturn.design import QUARTERS, code_of_unit, unit_name
from quarterturn.geometry import Motion
from quarterturn.steps import CutApart, CutAway, SetAside, Step, Steps, Trim

INSIDE = 0.1 + 0.1j
"""A place inside every unit, in its own frame: units finish at least a quarter of an inch wide."""


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


def names_of_units(steps: Steps) -> dict[str, str]:
    """Return what the map calls each label that a cut unit bears on its way from the square to the layout.

    The quarter is read off the places from which the pieces of a label are taken, not off the label.
    """
    names: dict[str, str] = {}
    for step in steps.steps:
        if isinstance(step.action, CutApart):
            names |= _named(step.action)
        elif isinstance(step.action, CutAway | Trim):
            names |= dict(_renamed(step, names))
    return names


def codes_of_units(steps: Steps) -> dict[str, str]:
    """Return the colourway of each label that a cut unit bears."""
    return {label: code_of_unit(name) for label, name in names_of_units(steps).items()}


def _named(action: CutApart) -> dict[str, str]:
    quarters: dict[str, list[str]] = {}
    for label, motion in action.parts:
        quarters.setdefault(label, []).append(_quarter(motion))
    several = len(quarters) > 1
    return {
        label: unit_name(action.code, min(places, key=QUARTERS.index) if several else "")
        for label, places in quarters.items()
    }


def _quarter(motion: Motion) -> str:
    """Return the quarter of the master from which a motion brings a piece into its own frame."""
    place = motion.inverse()(INSIDE)
    return f"{'b' if place.imag > 0 else 't'}{'r' if place.real > 0 else 'l'}"


def _renamed(step: Step, names: dict[str, str]) -> Iterator[tuple[str, str]]:
    for pile in step.uses:
        if pile.label in names:
            for product in step.makes:
                yield product.label, names[pile.label]
