"""Checks that the sewing makes the map: layout, turns, sizes at each seam, pressing (groups B, E and F)."""

from __future__ import annotations

import cmath
import math
from collections.abc import Iterator
from itertools import pairwise

from quarterturn.design import Pressing, Severity
from quarterturn.geometry import Motion
from quarterturn.measure import show_count
from quarterturn.proof.checks.fault import REBUILD, Fault, check
from quarterturn.proof.checks.laying import Leaf, place_of
from quarterturn.proof.checks.seams import crossings, sewn_sizes
from quarterturn.proof.checks.sizing import unit_size
from quarterturn.proof.checks.taking_apart import laid_out, tops_taken_apart
from quarterturn.proof.checks.walking import units_of
from quarterturn.proof.model import Pattern
from quarterturn.setting import PlacedUnit, Side
from quarterturn.steps import Placed, Press, SewLine, Steps, Towards


def layout_drawn(pattern: Pattern) -> Iterator[Fault]:
    """Hold every unit of the setting, its place and its turn, and the layout of the steps against the maps."""
    wanted = {_place_of(leaf.middle): leaf for leaf in units_of(pattern.design)}
    middles = {name: unit_middle(pattern, name) for name in pattern.setting.tally}
    found = {_place_of(unit.motion(middles.get(unit.name, 0j))): unit for unit in pattern.setting.units}
    for place, leaf in wanted.items():
        drawn = found.pop(place, None)
        if drawn is None or not _as_mapped(drawn, leaf):
            here = f"{leaf.name}{leaf.turn} in {place_of(leaf)}"
            has = f"{drawn.name}{drawn.turn}" if drawn else "none"
            turned = (
                ", turned otherwise" if drawn and (drawn.name, drawn.turn) == (leaf.name, leaf.turn) else ""
            )
            sentence = f"The map has {here}; the assembly drawing has {has}{turned}."
            yield Fault(leaf.key, sentence, REBUILD, place_of(leaf))
            return
    if found:
        sentence = f"The assembly drawing has {show_count(len(found), 'unit')} more than the maps."
        yield Fault("setting", sentence, REBUILD)
    yield from laid_out(pattern)


def _as_mapped(drawn: PlacedUnit, leaf: Leaf) -> bool:
    here = (drawn.name, drawn.turn, _eighths(drawn.motion))
    return here == (leaf.name, leaf.turn, leaf.eighths)


def unit_middle(pattern: Pattern, name: str) -> complex:
    """Return the middle of a unit in its own frame."""
    width, height = unit_size(pattern.design, name)
    return complex(float(width), float(height)) / 2


def _eighths(motion: Motion) -> int:
    return round(cmath.phase(motion.factor) / (math.pi / 4)) % 8


def _place_of(point: complex) -> tuple[int, int]:
    """Return a point so roughly that sums of floats agree; no length on a ruler is torn."""
    return int((point.real + 1) * 1024 + 0.25), int((point.imag + 1) * 1024 + 0.25)


def pressing(pattern: Pattern) -> Iterator[Fault]:
    """Ask that the seams of neighbouring rows are pressed opposite ways, all to the sashing or strips, or all open."""
    opposed = pattern.design.making.pressing is Pressing.OPPOSED
    lines = _lines(pattern.steps)
    for step in pattern.steps.steps:
        if not isinstance(step.action, SewLine) or step.action.way is not Side.BOTTOM:
            continue
        rows = [_ways(part, lines) for part in step.action.parts]
        for number, (upper, lower) in enumerate(pairwise(rows), start=1):
            for seam, pair in enumerate(zip(upper, lower, strict=False), start=1):
                if len(upper) == len(lower) and not _goes_well(*pair, opposed):
                    sentence = (
                        f"Rows {number} and {number + 1} press their seam {seam} {_way(pair[0])} and "
                        f"{_way(pair[1])}: it does not {'nest' if opposed else 'lie open'}."
                    )
                    where = f"step {step.number}, rows {number} and {number + 1}"
                    yield Fault("making.pressing", sentence, REBUILD, where)
                    return


def _goes_well(upper: Press, lower: Press, opposed: bool) -> bool:
    if not opposed:
        return upper is None and lower is None
    if isinstance(upper, Towards) or isinstance(lower, Towards):
        return upper is lower
    return upper is not lower and upper is not None and lower is not None


def _way(press: Press) -> str:
    return f"to the {press.value}" if press else "open"


def _lines(steps: Steps) -> dict[str, SewLine]:
    """Return how each line that runs from left to right is sewn."""
    return {
        step.makes[0].label: step.action
        for step in steps.steps
        if isinstance(step.action, SewLine) and step.action.way is Side.RIGHT and step.makes
    }


def _ways(part: Placed, lines: dict[str, SewLine]) -> list[Press]:
    """Return the way in which each seam of a row is pressed, those of its pairs among them.

    Sections, which are single parts of a row, have seams of their own, and so has a line that is turned.
    """
    line = lines.get(part.label)
    if line is None or part.turn or not part.label.startswith(("pair ", "row ", "sashing ")):
        return []
    found: list[Press] = []
    for number, each in enumerate(line.parts):
        found += [line.press] if number else []
        found += _ways(each, lines)
    return found


SEWING = (
    check(
        "layout-differs",
        Severity.STOPS,
        (21, 64, 65),
        "Drawing and layout show every unit where the map has it, turned as there.",
        layout_drawn,
    ),
    check(
        "centre-differs",
        Severity.STOPS,
        (16, 21, 65),
        "Pairs and rows, taken apart again, are the map.",
        tops_taken_apart,
    ),
    check(
        "sewn-size-wrong",
        Severity.STOPS,
        (59, 60),
        "Whatever is sewn has the size of its parts less the seams, and both edges of a seam are equally long.",
        sewn_sizes,
    ),
    check(
        "crossings-miss",
        Severity.STOPS,
        (60, 74),
        "Seams of sashing and rows run on where they cross.",
        crossings,
    ),
    check(
        "pressing-clashes",
        Severity.CONFUSES,
        (74,),
        "Seams that cross are pressed opposite ways, or open.",
        pressing,
    ),
)
