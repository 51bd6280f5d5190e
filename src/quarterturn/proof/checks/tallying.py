"""How many units of each kind the design's maps have, counted place by place."""

from __future__ import annotations

from collections import Counter
from typing import TypeAlias

from quarterturn.design import Design, code_of_unit
from quarterturn.proof.checks.walking import units_of

Turned: TypeAlias = tuple[str, int]
"""A unit's name and its turn."""


def turned_counts(design: Design) -> Counter[Turned]:
    """Count the units of each name in each turn that they have in the top; a unit on point in the quarter before."""
    return Counter((leaf.name, leaf.eighths // 2) for leaf in units_of(design))


def unit_counts(design: Design) -> dict[str, int]:
    """Count the units of each colourway that the maps use, in the order of the design."""
    found: Counter[str] = Counter()
    for name, count in kind_counts(design).items():
        found[code_of_unit(name)] += count
    return {colourway.code: found[colourway.code] for colourway in design.colourways if found[colourway.code]}


def kind_counts(design: Design) -> Counter[str]:
    """Count the units of each name that the maps use."""
    return Counter(leaf.name for leaf in units_of(design))


def master_codes(design: Design) -> tuple[str, ...]:
    """Return the colourways of the masters that the maps need, in the order of the design."""
    needed = {code for used in unit_counts(design) for code in design.masters_of(used)}
    return tuple(colourway.code for colourway in design.colourways if colourway.code in needed)
