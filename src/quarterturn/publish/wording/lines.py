"""The sentences of lines of any parts: rows of sections, sashing, sections put together."""

from __future__ import annotations

from itertools import groupby

from quarterturn.proof import Pattern
from quarterturn.publish.wording.model import Wording
from quarterturn.publish.wording.names import length, listed, sized
from quarterturn.publish.wording.owners import owner_of, titled, without_owner
from quarterturn.publish.wording.pressing import pressed_to
from quarterturn.publish.wording.slanting import capital
from quarterturn.setting import Side
from quarterturn.steps import Placed, Press, SewLine, Step, Towards, labels

UNIT = "unit "


def tell_parts(step: Step, action: SewLine, pattern: Pattern) -> Wording:
    """Tell sewing parts side by side, or one below another."""
    (made,) = step.makes
    owner, seam = owner_of(step, pattern), length(pattern.design, action.seam)
    below = action.way is Side.BOTTOM
    sentences = [
        f"Sew the parts together in their order, {'from the top down' if below else 'from left to right'}, with {seam} "
        "seams."
    ]
    if below and len(action.parts) > 1:
        sentences.append(_matching(action.press))
    sentences.append(_pressing(action.press))
    size = sized(pattern.design, made.width, made.height)
    what = "The quilt centre" if made.label == labels.TOP else capital(without_owner(made.label))
    run = run_of(action.parts)
    if made.label == labels.TOP:
        line = f"{run}. {what} should measure {size}, unfinished."
    else:
        line = f"{what}: {run}. Make ({made.count}), {size}, unfinished."
    return Wording(titled(owner, _title(step, action, owner)), tuple(sentences), line)


def _title(step: Step, action: SewLine, owner: str) -> str:
    label = step.makes[0].label
    if label.startswith("sashing "):
        return "Sew the sashing in rows"
    if "border" in label:
        return "Sew the corners to the border strips"
    if label.endswith("with sashing"):
        return "Sew the sashing to the rows"
    if label == labels.TOP or without_owner(label).startswith(owner or "\0"):
        rows = any(part.label.startswith("row ") for part in action.parts)
        return "Sew the rows together" if rows else "Sew the parts together"
    return "Sew the rows"


def _matching(press: Press) -> str:
    if press is Towards.SASHING:
        return "Pin at every cornerstone, so that its seams run on from row to row."
    return "Match and pin the seams that meet."


def _pressing(press: Press) -> str:
    return "Press all seams open." if press is None else f"Press the seams {pressed_to(press)}."


def run_of(parts: tuple[Placed, ...]) -> str:
    """Return parts in their order, equal ones that follow one another counted: `a0, (2) A3, wreath1`."""
    names = [part_name(part) for part in parts]
    groups = [(name, len(list(group))) for name, group in groupby(names)]
    if len(groups) > LONG:
        return _alternating(names) or listed(_told(groups))
    return listed(_told(groups))


LONG = 6
"""Parts of a line above which a repeat is looked for."""


def _told(groups: list[tuple[str, int]]) -> list[str]:
    return [f"({count}) {name}" if count > 1 else name for name, count in groups]


def _alternating(names: list[str]) -> str:
    """Return how a line goes on that repeats from its beginning; nothing where none does."""
    for period in (2, 4):
        if all(name == names[k % period] for k, name in enumerate(names)):
            first = ", ".join(names[:period])
            return f"{first} and so on, ({len(names)}) parts, the last {names[-1]}"
    return ""


def part_name(part: Placed) -> str:
    """Return `a2` for unit a at turn 2, `wreath1` for a section turned once, the label of cloth as it lies."""
    if part.label.startswith(UNIT):
        return f"{part.label.removeprefix(UNIT)}{part.turn}"
    name = without_owner(part.label)
    if part.label[:1].isupper():
        return name
    return f"{name}, turned {_QUARTERS[part.turn % 4]}" if part.turn % 4 else name


_QUARTERS = {1: "a quarter clockwise", 2: "by a half", 3: "a quarter anticlockwise"}
