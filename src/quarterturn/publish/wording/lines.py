"""The sentences of lines of any parts: rows of sections, sashing, sections put together."""

from __future__ import annotations

from itertools import groupby

from quarterturn.proof import Pattern
from quarterturn.publish.wording.model import Wording
from quarterturn.publish.wording.names import length, listed, sized
from quarterturn.publish.wording.owners import is_section_label, owner_of, plain_label, titled, without_owner
from quarterturn.publish.wording.pressing import pressed_to
from quarterturn.publish.wording.slanting import capital
from quarterturn.setting import Side
from quarterturn.steps import Placed, Press, SewLine, Step, Towards, labels

UNIT = "unit "


def tell_parts(step: Step, action: SewLine, pattern: Pattern) -> Wording:
    """Tell sewing parts side by side, or one below another."""
    (made,) = step.makes
    owner, seam = owner_of(step, pattern), length(pattern.design, action.seam)
    if len(action.parts) == 1:
        return _nothing_to_sew(step, pattern)
    below = action.way is Side.BOTTOM
    sentences = [
        f"Sew the parts together in their order, {'from the top down' if below else 'from left to right'}, with {seam} "
        "seams."
    ]
    if below and len(action.parts) > 1:
        sentences.append(_matching(action.press))
    nests = not below and isinstance(action.press, Side) and without_owner(made.label).startswith("row ")
    sentences.append(NESTING if nests else _pressing(action.press))
    size = sized(pattern.design, made.width, made.height)
    what = "The quilt centre" if made.label == labels.TOP else capital(without_owner(made.label))
    run = run_of(action.parts)
    if made.label == labels.TOP:
        line = f"{capital(run)}. {what} should measure {size}, unfinished."
    else:
        pressed = f", pressed {pressed_to(action.press)}" if nests else ""
        line = f"{what}: {run}. Make ({made.count}), {size}, unfinished{pressed}."
    return Wording(titled(owner, _title(step, action, owner)), tuple(sentences), line)


def _nothing_to_sew(step: Step, pattern: Pattern) -> Wording:
    """Tell that a quilt centre of one row is done when its row is."""
    (made,) = step.makes
    size = sized(pattern.design, made.width, made.height)
    sentences = ("The quilt centre has one row: there is nothing to sew to it.",)
    return Wording(
        "Measure the quilt centre", sentences, f"The quilt centre should measure {size}, unfinished."
    )


NESTING = "Press the seams as the arrows show: those of neighbouring rows lie opposite ways, and nest."


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
    if rows := rows_run(names):
        return rows
    groups = [(name, len(list(group))) for name, group in groupby(names)]
    if len(groups) > LONG:
        return _alternating(names) or listed(_told(groups))
    return listed(_told(groups))


def rows_run(names: list[str]) -> str:
    """Return `rows 1 to 4` or `rows 1, 2, 1 and 2` for names that are all of rows; nothing for others."""
    numbers = [name.partition(",")[0].removeprefix("row ") for name in names]
    if len(names) < 2 or not all(name.startswith("row ") for name in names):
        return ""
    if numbers == [str(k) for k in range(1, len(numbers) + 1)] and len(numbers) > 2:
        return f"rows 1 to {numbers[-1]}"
    return f"rows {listed(numbers)}"


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
    if part.label[:1].isupper():
        return part.label.partition(",")[0]
    if is_section_label(part.label):
        return f"{plain_label(part.label)}{part.turn}"
    return without_owner(part.label)
