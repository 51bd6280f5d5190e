"""The ledger of the sewing table: what each step takes, and what is there for it to take."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass

from quarterturn.design import Design, RecipeKind, quarter_of_unit, unit_name
from quarterturn.geometry import Motion
from quarterturn.proof.checks.laid import first_of, laid_out, piece_names
from quarterturn.proof.checks.sides import laid_blocks, same_blocks
from quarterturn.proof.model import Pattern
from quarterturn.steps import CutApart, CutAway, Rejoin, SetAside, Step, Steps, StitchEdge, Trim

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


def names_of_units(pattern: Pattern) -> dict[str, str]:
    """Return what the map calls each label that a unit bears on its way from the master to the layout.

    The quarter is read off the places from which the pieces of a label are taken, not off the label.
    """
    names: dict[str, str] = {}
    uncut = {recipe.name for recipe in pattern.design.recipes if not recipe.cuts}
    for step in pattern.steps.steps:
        if isinstance(step.action, CutApart):
            names |= _named(pattern.design, step.action)
        elif isinstance(step.action, StitchEdge) and step.action.recipe in uncut:
            names |= {made.label: step.action.code for made in step.makes}
        elif isinstance(step.action, Rejoin):
            names |= {made.label: _rejoined_name(pattern.design, step.action, names) for made in step.makes}
        elif isinstance(step.action, CutAway | Trim):
            names |= dict(_renamed(step, names))
    return names


def _named(design: Design, action: CutApart) -> dict[str, str]:
    quarters: dict[str, list[str]] = {}
    for (label, _), place in zip(action.parts, _places(design, action), strict=False):
        quarters.setdefault(label, []).append(place)
    several = len(quarters) > 1
    return {
        label: unit_name(action.code, first_of(places) if several else "")
        for label, places in quarters.items()
    }


def _places(design: Design, action: CutApart) -> list[str]:
    """Return where each piece lies in the master: by the order of cutting, or in a short form by its motion."""
    recipe = next((each for each in design.recipes if each.name == action.recipe), None)
    if recipe is None or recipe.kind is not RecipeKind.SHAPES:
        return [_quarter(motion) for _, motion in action.parts]
    return list(piece_names(recipe, laid_out(recipe, design.making.seam)))


def _quarter(motion: Motion) -> str:
    """Return the quarter of the master from which a motion brings a piece into its own frame."""
    place = motion.inverse()(INSIDE)
    return f"{'b' if place.imag > 0 else 't'}{'r' if place.real > 0 else 'l'}"


def _rejoined_name(design: Design, action: Rejoin, names: dict[str, str]) -> str:
    """Return what rejoined halves are called: by their colourway, and by the first half where the two blocks differ."""
    rejoined = design.rejoined_recipe(action.recipe)
    blocks = laid_blocks(rejoined, design.recipe(rejoined.of), design.making.seam)
    first = quarter_of_unit(names.get(action.halves[0][0], ""))
    return unit_name(action.code, "" if same_blocks(blocks) else first)


def _renamed(step: Step, names: dict[str, str]) -> Iterator[tuple[str, str]]:
    for pile in step.uses:
        if pile.label in names:
            for product in step.makes:
                yield product.label, names[pile.label]
