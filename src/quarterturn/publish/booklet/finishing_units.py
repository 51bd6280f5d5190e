"""The entries of units of any master: cut apart, cut away behind, trimmed, rejoined, with their figures."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from quarterturn.proof import Pattern
from quarterturn.publish.booklet.model import Cell, Entry, Figure
from quarterturn.publish.figures import (
    cuts_figure,
    finishing_figure,
    rejoin_figure,
    trimmed_whole_figure,
)
from quarterturn.publish.sheet import Sheet
from quarterturn.publish.wording.masters import is_general
from quarterturn.steps import CutApart, CutAway, Rejoin, Step, Trim

LINE, GAP = 160.0, 4.0
"""Millimetres of the line in which figures stand, and between two of them."""

Shown = set[tuple[str, ...]]
"""What has been drawn: the kind of figure, the recipe, and the piece."""


def finishing_entry(pattern: Pattern, entry: Entry, steps: tuple[Step, ...], shown: Shown) -> Entry:
    """Add to an entry a figure of each recipe and kind of unit that it tells of and that none has shown."""
    sheets: list[Sheet] = []
    for number in entry.steps:
        step = pattern.steps.steps[number - 1]
        sheets += _sheets(pattern, step, steps, shown)
    if not sheets:
        return entry
    cells = tuple(Cell(sheet) for sheet in sheets)
    widest = max(sheet.width for sheet in sheets)
    columns = min(len(cells), max(1, int((LINE + GAP) / (widest + GAP))))
    is_trimmed = any("trimmed" in sheet.alt for sheet in sheets)
    figure = Figure(_caption(pattern.steps.steps[entry.steps[0] - 1], is_trimmed), cells, columns=columns)
    return replace(entry, figures=(figure,), place="below")


def is_told_in_full(pattern: Pattern, action: CutApart | CutAway | Trim | Rejoin) -> bool:
    """Tell whether what is done belongs to a recipe that is no short form."""
    rejoined = {each.name for each in pattern.design.rejoined}
    return action.recipe in rejoined or is_general(pattern, action.recipe)


def _caption(step: Step, is_trimmed: bool) -> str:
    if isinstance(step.action, CutApart):
        return "The ruler along each line; the dashed line is the cut"
    if isinstance(step.action, Rejoin):
        return "Halves of two masters, joined; the dashed line is the seam"
    if isinstance(step.action, CutAway):
        behind = "From behind: what is cut away"
        return f"{behind}; from the front: what is trimmed" if is_trimmed else behind
    return "What is grey is trimmed off"


def _sheets(pattern: Pattern, step: Step, steps: tuple[Step, ...], shown: Shown) -> Iterator[Sheet]:
    action = step.action
    if not isinstance(action, CutApart | CutAway | Trim | Rejoin) or not is_told_in_full(pattern, action):
        return
    if isinstance(action, CutApart) and _new(shown, "apart", action.recipe):
        yield cuts_figure(pattern, step)
    elif isinstance(action, Rejoin) and _new(shown, "rejoin", action.recipe):
        label = step.makes[0].label
        yield rejoin_figure(pattern, step, _using(steps, label, Trim))
    elif isinstance(action, CutAway):
        name = _unit_name(step)
        if _new(shown, "finish", action.recipe, name.partition("-")[2]):
            trim = _using(steps, step.makes[0].label, Trim)
            sheet = finishing_figure(pattern, name, step, trim)
            yield from (sheet,) if sheet else ()
    elif isinstance(action, Trim):
        yield from _trim_sheets(pattern, step, action, shown)


def _trim_sheets(pattern: Pattern, step: Step, action: Trim, shown: Shown) -> Iterator[Sheet]:
    if step.makes[0].label.startswith("master "):
        if _new(shown, "whole", action.recipe):
            yield trimmed_whole_figure(pattern, step)
        return
    name = _unit_name(step)
    rejoined = {each.name for each in pattern.design.rejoined}
    if action.recipe not in rejoined and _new(shown, "finish", action.recipe, name.partition("-")[2]):
        sheet = finishing_figure(pattern, name, None, step)
        yield from (sheet,) if sheet else ()


def _new(shown: Shown, *what: str) -> bool:
    """Tell whether something has not been drawn, and remember that it is now."""
    if what in shown:
        return False
    shown.add(what)
    return True


def _unit_name(step: Step) -> str:
    """Return the name of the unit that a step works on."""
    name = step.makes[0].label.removeprefix("unit ").removeprefix("master ")
    return name.partition(",")[0]


def _using(steps: tuple[Step, ...], label: str, kind: type) -> Step | None:
    """Return the step of a kind that uses what is called so."""
    return next(
        (s for s in steps if isinstance(s.action, kind) and any(pile.label == label for pile in s.uses)), None
    )
