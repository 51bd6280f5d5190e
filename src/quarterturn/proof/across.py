"""What must hold between the sizes of a design, which no check of one size sees."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from itertools import permutations
from types import MappingProxyType

from quarterturn.design import Finding, Place, Severity, dotted
from quarterturn.materials import show_bought
from quarterturn.measure import Length, show_length
from quarterturn.proof.model import Pattern

ACROSS_CODES: Mapping[str, str] = MappingProxyType(
    {"larger-takes-less": "A larger size takes no less of a fabric."}
)
"""Title by code; each costs."""


def check_sizes(patterns: Sequence[Pattern]) -> tuple[Finding, ...]:
    """Return what is found by comparing sizes: the need of a fabric does not fall as a quilt grows both ways.

    A fabric that one of two sizes does without is not compared. Each is told once, against the greatest need.
    """
    return tuple(_less_needed(patterns))


def _less_needed(patterns: Sequence[Pattern]) -> Iterator[Finding]:
    for letter in dict.fromkeys(plan.fabric for pattern in patterns for plan in pattern.materials.cloth):
        having = [each for each in patterns if any(plan.fabric == letter for plan in each.materials.cloth)]
        told: dict[str, tuple[Pattern, Pattern]] = {}
        for small, large in permutations(having, 2):
            if not _lies_within(small, large) or _need(small, letter) <= _need(large, letter):
                continue
            other = told.get(large.design.size)
            if other is None or _need(small, letter) > _need(other[0], letter):
                told[large.design.size] = (small, large)
        yield from (_finding(letter, small, large) for small, large in told.values())


def _lies_within(small: Pattern, large: Pattern) -> bool:
    """Tell whether one quilt is as wide and as long as another, either way round, and larger."""
    one, other = (sorted((each.setting.width, each.setting.height)) for each in (small, large))
    return one != other and all(a <= b for a, b in zip(one, other, strict=True))


def _need(pattern: Pattern, letter: str) -> Length:
    """Return what is bought of a fabric: its length, or where it is bought in pieces how many."""
    plan = pattern.materials.plan(letter)
    return Length(plan.parcels.bought) if plan.parcels and plan.parcels.to_buy else plan.bought


def _finding(letter: str, small: Pattern, large: Pattern) -> Finding:
    units = large.design.units
    sizes = [
        f"{each.design.size} ({show_length(each.setting.width, units)} × {show_length(each.setting.height, units)})"
        for each in (small, large)
    ]
    needs = [show_bought(each.materials.plan(letter), units) for each in (small, large)]
    sentence = (
        f"The size {sizes[0]} takes {needs[0]} of fabric {letter}, and the larger size {sizes[1]} {needs[1]}."
    )
    remedy = (
        "See whether that is meant, and tell the reader why: a border left out, or fewer and larger units."
    )
    (code,) = ACROSS_CODES
    return Finding(code, Severity.COSTS, Place(dotted("fabrics", letter)), sentence, remedy)
