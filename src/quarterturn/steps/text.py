"""The text form of the steps: a line for each, from bolt to bound quilt."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from functools import partial
from itertools import groupby

from quarterturn.measure import Units, show_plain
from quarterturn.steps.doing import doing, map_rows
from quarterturn.steps.model import LayOut, Step, Steps
from quarterturn.steps.things import Pile, Product


def steps_text(steps: Steps, units: Units) -> str:
    """Return number, doing, pieces used and pieces made of each step, under its chapter; sizes are unfinished.

    A layout is followed by its map: a row for each row of the quilt.
    """
    width = len(str(len(steps.steps)))
    chapters = groupby(steps.steps, key=lambda step: step.chapter)
    lines = (line for name, group in chapters for line in (name.value, *_chapter(group, width, units)))
    return "\n".join((*lines, ""))


def _chapter(steps: Iterable[Step], width: int, units: Units) -> Iterator[str]:
    for step in steps:
        said = doing(step.action, partial(show_plain, units=units))
        yield f"  {step.number:{width}}  {said}{_flow(step, units)}"
        if isinstance(step.action, LayOut):
            yield from (f"  {'':{width}}  {row}" for row in map_rows(step.action.rows))


def _flow(step: Step, units: Units) -> str:
    """Write what leaves the table and what comes onto it: `; 4 As1 -> 32 A1 5.5" × 5.5"`."""
    used = ", ".join(map(_pile, step.uses))
    made = ", ".join(_product(product, units) for product in step.makes)
    return "".join((f"; {used}" if used else "", f" -> {made}" if made else ""))


def _pile(pile: Pile) -> str:
    return f"{pile.count} {pile.label}"


def _product(product: Product, units: Units) -> str:
    size = f"{show_plain(product.width, units)} × {show_plain(product.height, units)}"
    return f"{product.count} {product.label} {size}"
