"""Checks that the sewing makes the map: layout, turns, sizes at each seam, pressing (groups B, E and F)."""

from __future__ import annotations

import cmath
import math
from collections.abc import Callable, Iterator
from itertools import pairwise

from quarterturn.design import Pressing, Severity, code_of_unit
from quarterturn.geometry import Motion
from quarterturn.measure import show_count
from quarterturn.proof.checks.fault import REBUILD, Fault, check
from quarterturn.proof.checks.laying import place_of
from quarterturn.proof.checks.seams import sewn_sizes
from quarterturn.proof.checks.taking_apart import tops_taken_apart
from quarterturn.proof.checks.tallying import Turned
from quarterturn.proof.checks.walking import units_of
from quarterturn.proof.model import Pattern
from quarterturn.setting import Side
from quarterturn.steps import SewLine, Steps

Row = list[Turned]


def layout_drawn(pattern: Pattern) -> Iterator[Fault]:
    """Hold every unit and every piece of cloth of the setting, where it lies and how it is turned, against the maps."""
    wanted = {_place_of(leaf.middle): leaf for leaf in units_of(pattern.design)}
    names = {name: unit_middle(pattern, name) for name in pattern.setting.tally}
    found = {
        _place_of(unit.motion(names.get(unit.name, 0j))): (unit.name, _eighths(unit.motion))
        for unit in pattern.setting.units
    }
    for place, leaf in wanted.items():
        drawn = found.pop(place, None)
        if drawn != (leaf.name, leaf.eighths):
            told = f"has {_written(drawn)}" if drawn else "has none"
            wanted_here = f"{_written((leaf.name, leaf.eighths))} in {place_of(leaf)}"
            sentence = f"The map has {wanted_here}; the assembly drawing {told}."
            yield Fault(leaf.key, sentence, REBUILD, place_of(leaf))
            return
    if found:
        sentence = f"The assembly drawing has {show_count(len(found), 'unit')} more than the maps."
        yield Fault("setting", sentence, REBUILD)


def unit_middle(pattern: Pattern, name: str) -> complex:
    """Return the middle of a unit in its own frame."""
    side = float(pattern.design.recipe(pattern.design.colourway(code_of_unit(name)).recipe).finished)
    return complex(side, side) / 2


def _eighths(motion: Motion) -> int:
    return round(cmath.phase(motion.factor) / (math.pi / 4)) % 8


def _place_of(point: complex) -> tuple[int, int]:
    """Return a point so roughly that sums of floats agree; no length on a ruler is torn."""
    return int((point.real + 1) * 1024 + 0.25), int((point.imag + 1) * 1024 + 0.25)


def _written(unit: Turned) -> str:
    """Write a unit as a map does; one on point as if its section lay upright."""
    return f"{unit[0]}{unit[1] // 2}"


def pressing(pattern: Pattern) -> Iterator[Fault]:
    """Ask that the seams of neighbouring rows are pressed opposite ways, or all open."""
    opposed = pattern.design.making.pressing is Pressing.OPPOSED
    rows = _row_ways(pattern.steps)
    for number, (upper, lower) in enumerate(pairwise(rows), start=1):
        for seam, pair in enumerate(zip(upper, lower, strict=False), start=1):
            if not _goes_well(*pair, opposed):
                sentence = (
                    f"Rows {number} and {number + 1} press their seam {seam} {_way(pair[0])} and {_way(pair[1])}: "
                    f"it does not {'nest' if opposed else 'lie open'}."
                )
                yield Fault("making.pressing", sentence, REBUILD, f"rows {number} and {number + 1}")
                return


def _goes_well(upper: Side | None, lower: Side | None, opposed: bool) -> bool:
    if opposed:
        return upper is not lower and upper is not None and lower is not None
    return upper is None and lower is None


def _way(press: Side | None) -> str:
    return f"to the {press.value}" if press else "open"


def _row_ways(steps: Steps) -> list[tuple[Side | None, ...]]:
    """Return for each row of the centre, top to bottom, the way in which each of its seams is pressed."""
    made = {step.makes[0].label: step.action for step in steps.steps if isinstance(step.action, SewLine)}
    known: dict[str, tuple[Side | None, ...]] = {}

    def ways(label: str) -> tuple[Side | None, ...]:
        if label not in known:
            line = made.get(label)
            known[label] = () if line is None or line.way is Side.BOTTOM else _between(line, ways)
        return known[label]

    centre = next((line for line in made.values() if line.way is Side.BOTTOM), None)
    return [ways(part.label) for part in centre.parts] if centre else []


def _between(line: SewLine, ways: Callable[[str], tuple[Side | None, ...]]) -> tuple[Side | None, ...]:
    found: list[Side | None] = []
    for number, part in enumerate(line.parts):
        found += [line.press] if number else []
        found += ways(part.label)
    return tuple(found)


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
        "pressing-clashes",
        Severity.CONFUSES,
        (74,),
        "Seams that cross are pressed opposite ways, or open.",
        pressing,
    ),
)
