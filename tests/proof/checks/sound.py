"""A small design in which no check finds anything, and ways to spoil it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import cache
from typing import Any, TypeAlias

from quarterturn.design import Recipe
from quarterturn.materials import ClothPlan, StripGroup
from quarterturn.measure import Length, inches
from quarterturn.pieces import Purpose
from quarterturn.proof import CHECKS, Pattern
from quarterturn.steps import Step, Steps
from tests.samples import pattern_of

SOUND = """
format = 1
title = "Low Water"
maker = "Isolde Marram"
units = "inch"
number = "T-2"
version = "1.0"
date = "2026-11-25"
contact = "corrections@marram.example"
about = "Pools on the sand, and sand in the pools."

[fabrics.A]
name = "sand"
role = "background"
colour = "#efe6d8"

[fabrics.B]
name = "ink"
role = "pools"
colour = "#22304a"

[fabrics.C]
name = "brick"
role = "border and binding"
colour = "#9c4a35"

[recipes.pool]
kind = "circle cut both ways"
finished = '4"'
shape = { flow = true }
curve = "sewn true"

[colourways.a]
recipe = "pool"
ground = "A"
shape = "B"

[colourways.b]
recipe = "pool"
ground = "B"
shape = "A"

[setting]
kind = "straight"
map = '''
a2 a3 b2 b3
a1 a0 b1 b0
b2 b3 a2 a3
b1 b0 a1 a0
'''

[[borders]]
fabric = "C"
width = '2"'

[binding]
fabric = "C"

[backing]
fabric = "A"
"""

Spoil: TypeAlias = Callable[[], Pattern]


@cache
def sound() -> Pattern:
    """Return the sound pattern."""
    return pattern_of(SOUND)


def found(code: str, pattern: Pattern) -> list[str]:
    """Return what one check says of a pattern."""
    check = next(check for check in CHECKS if check.code == code)
    return [finding.sentence for finding in check.run(pattern)]


def text(*changes: tuple[str, str]) -> Spoil:
    """Return the pattern of the text with words exchanged; each must be there."""

    def spoilt() -> Pattern:
        words = SOUND
        for before, after in changes:
            assert before in words, before
            words = words.replace(before, after, 1)
        return pattern_of(words)

    return spoilt


def recipe(lines: str) -> tuple[str, str]:
    """Return the change that gives the recipe other lines after its kind."""
    old = 'finished = \'4"\'\nshape = { flow = true }\ncurve = "sewn true"'
    return old, lines


def making(lines: str) -> tuple[str, str]:
    """Return the change that adds a table of allowances."""
    return "[binding]", f"[making]\n{lines}\n\n[binding]"


def design(**values: Any) -> Spoil:
    """Return the sound pattern with values of its design changed after the other stages have run."""
    return lambda: replace(sound(), design=replace(sound().design, **values))


def in_making(**values: Any) -> Spoil:
    """Return the sound pattern with an allowance changed after the other stages have run."""
    return design(making=replace(sound().design.making, **values))


def with_recipe(**values: Any) -> Spoil:
    """Return the sound pattern with its recipe changed after the other stages have run; `size` is that of its shape."""
    if size := values.pop("size", None):
        values["shapes"] = tuple(replace(each, size=size) for each in sound().design.recipes[0].shapes)
    recipes: tuple[Recipe, ...] = tuple(replace(each, **values) for each in sound().design.recipes)
    return design(recipes=recipes)


def blocks(**values: Any) -> Spoil:
    """Return the sound pattern with its drafted master changed."""
    masters = tuple(replace(master, **values) for master in sound().blocks.masters)
    return lambda: replace(sound(), blocks=replace(sound().blocks, masters=masters))


def setting(**values: Any) -> Spoil:
    """Return the sound pattern with the setting changed."""
    return lambda: replace(sound(), setting=replace(sound().setting, **values))


def materials(**values: Any) -> Spoil:
    """Return the sound pattern with its materials changed."""
    return lambda: replace(sound(), materials=replace(sound().materials, **values))


def plan(letter: str, change: Callable[[ClothPlan], ClothPlan]) -> Spoil:
    """Return the sound pattern with the plan of one fabric changed."""
    cloth = tuple(change(each) if each.fabric == letter else each for each in sound().materials.cloth)
    return materials(cloth=cloth)


def first_cut(change: Callable[[StripGroup], StripGroup]) -> Spoil:
    """Return the sound pattern with the first strip of fabric A that is cut into pieces changed."""

    def changed(whole: ClothPlan) -> ClothPlan:
        first = next(group for group in whole.strips if group.crosscuts)
        strips = tuple(change(group) if group is first else group for group in whole.strips)
        return replace(whole, strips=strips)

    return plan("A", changed)


def pieces(purpose: Purpose, **values: Any) -> Spoil:
    """Return the sound pattern with the listed pieces of a purpose changed."""
    bill = sound().bill
    changed = tuple(replace(p, **values) if p.purpose is purpose else p for p in bill.pieces)
    return lambda: replace(sound(), bill=replace(bill, pieces=changed))


def masters(**values: Any) -> Spoil:
    """Return the sound pattern with the count of masters of its first colourway changed."""
    bill = sound().bill
    changed = (replace(bill.masters[0], **values), *bill.masters[1:])
    return lambda: replace(sound(), bill=replace(bill, masters=changed))


def steps(change: Callable[[tuple[Step, ...]], tuple[Step, ...]]) -> Spoil:
    """Return the sound pattern with its steps changed."""
    return lambda: replace(sound(), steps=Steps(change(sound().steps.steps)))


def step(kind: type, change: Callable[[Step], Step], last: bool = False) -> Spoil:
    """Return the sound pattern with its first (or last) step of a kind of action changed."""
    numbers = [each.number for each in sound().steps.steps if isinstance(each.action, kind)]
    number = numbers[-1 if last else 0]
    return steps(lambda all_: tuple(change(each) if each.number == number else each for each in all_))


def action(kind: type, last: bool = False, **values: Any) -> Spoil:
    """Return the sound pattern with the action of its first (or last) step of a kind changed."""
    return step(kind, lambda each: replace(each, action=replace(each.action, **values)), last)


def without(kind: type) -> Spoil:
    """Return the sound pattern without its steps of a kind."""
    return steps(lambda all_: tuple(each for each in all_ if not isinstance(each.action, kind)))


def one_more(step: Step) -> Step:
    """Let a step make one more of what it makes."""
    first = step.makes[0]
    return replace(step, makes=(replace(first, count=first.count + 1), *step.makes[1:]))


def one_fewer(step: Step) -> Step:
    """Let a step make one fewer of what it makes."""
    first = step.makes[0]
    return replace(step, makes=(replace(first, count=first.count - 1), *step.makes[1:]))


def one_fewer_used(step: Step) -> Step:
    """Let a step use one fewer of what it uses."""
    first = step.uses[0]
    return replace(step, uses=(replace(first, count=first.count - 1), *step.uses[1:]))


def wider(step: Step) -> Step:
    """Let what a step makes be said to be wider."""
    first = step.makes[0]
    return replace(step, makes=(replace(first, width=first.width + EIGHTH),))


EIGHTH: Length = inches(0, 1, 8)
