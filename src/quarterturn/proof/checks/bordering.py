"""The borders of the quilt and of its sections, held strip by strip and corner by corner against the design."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from quarterturn.design import (
    AnyBorder,
    Border,
    Cell,
    ClothCell,
    Coping,
    Corner,
    Design,
    MapCell,
    SectionCell,
    dotted,
)
from quarterturn.proof.checks.fault import REBUILD, Fault
from quarterturn.proof.checks.laying import ROOT, turned_further
from quarterturn.proof.checks.sizing import Size, Sizes
from quarterturn.proof.checks.taking_apart import Lain, TakenApart, Word, word_of
from quarterturn.proof.model import Pattern
from quarterturn.setting import Side
from quarterturn.steps import AddBorder, Step, labels

PAIRS = ((Side.LEFT, Side.RIGHT), (Side.TOP, Side.BOTTOM))
ENDS = {Side.LEFT: (0, 3), Side.RIGHT: (1, 2), Side.TOP: (0, 1), Side.BOTTOM: (3, 2)}
"""The corners at the two ends of a strip, top or left first; corners are counted clockwise from the top left."""

Strip = tuple[Side, list[Word]]


def borders_taken_apart(pattern: Pattern) -> Iterator[Fault]:
    """Hold what is sewn to each side, and the corners at its ends, against the design; mitred strips aside."""
    design, sizes, apart = pattern.design, Sizes(pattern.design), TakenApart(pattern)
    bordered = {section.name: section.setting.borders for section in design.sections}
    for name, borders in (*bordered.items(), (ROOT, design.borders)):
        inner = sizes.inside(design.setting if name == ROOT else sizes.settings[name])
        wanted = list(_wanted(sizes, inner, borders))
        found = [(step, _sewn(apart, step)) for step in _steps(pattern, name)]
        key = "borders" if name == ROOT else dotted("sections", name, "borders")
        if name != ROOT and not found:
            continue
        for number, want in enumerate(wanted):
            if number >= len(found) or found[number][1] != want:
                has = _told(found[number][1]) if number < len(found) else "nothing"
                sentence = f"A border has {_told(want)}; the steps sew {has}."
                yield Fault(key, sentence, REBUILD)
                break


def _told(strip: Strip) -> str:
    side, words = strip
    return f"{' '.join(words)} at the {side.value}"


def _steps(pattern: Pattern, name: str) -> list[Step]:
    """Return the steps that sew strips to a section, or to the quilt."""
    label = labels.TOP if name == ROOT else name
    return [
        step
        for step in pattern.steps.steps
        if isinstance(step.action, AddBorder) and step.makes[0].label.partition(" (")[0] == label
    ]


def _sewn(apart: TakenApart, step: Step) -> Strip:
    action = step.action
    assert isinstance(action, AddBorder)
    return action.side, apart.line(Lain(step.uses[1].label, action.turn or 0), False)


def _wanted(sizes: Sizes, size: Size, borders: Sequence[AnyBorder]) -> Iterator[Strip]:
    """Return what each side gets, in the order of sewing; a coping strip that nothing is left for is none."""
    for border in borders:
        depths = sizes.depths(size, border)
        if not (isinstance(border, Border) and border.corner is Corner.MITRED):
            pairs = [pair for pair, depth in zip(PAIRS, depths, strict=True) if depth]
            for pair in pairs if border.sides_first else pairs[::-1]:
                last = pair is (PAIRS[1] if border.sides_first else PAIRS[0])
                yield from ((side, _strip(sizes.design, border, side, cornered=last)) for side in pair)
        size = size[0] + 2 * depths[0], size[1] + 2 * depths[1]


def _strip(design: Design, border: AnyBorder, side: Side, *, cornered: bool) -> list[Word]:
    """Return the words of a strip, with its corners where it is sewn second and there are any."""
    corners = _corners(border)
    strip = word_of(design, _between(border, side))
    if not cornered or corners is None:
        return [strip]
    first, last = (word_of(design, turned_further(corners, number)) for number in ENDS[side])
    return [first, strip, last]


def _between(border: AnyBorder, side: Side) -> MapCell:
    if isinstance(border, Border | Coping):
        return ClothCell(border.fabric)
    cell = border.sides if side in PAIRS[0] else border.ends
    far = side in (Side.RIGHT, Side.BOTTOM)
    return replace(cell, turn=(cell.turn + 2) % 4) if far else cell


def _corners(border: AnyBorder) -> Cell | ClothCell | SectionCell | None:
    if isinstance(border, Border):
        return ClothCell(border.cornerstone) if border.corner is Corner.CORNERSTONES else None
    return None if isinstance(border, Coping) else border.corners
