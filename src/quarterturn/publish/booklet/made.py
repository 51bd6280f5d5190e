"""The steps of the assembly by the sections that they make."""

from __future__ import annotations

from collections.abc import Iterator

from quarterturn.proof import Pattern
from quarterturn.publish.wording import Made, owner_of, sections_of
from quarterturn.steps import Chapter, Step


def root_steps(pattern: Pattern) -> tuple[Step, ...]:
    """Return the steps of the assembly that make the quilt centre."""
    return tuple(step for step in pattern.steps.of(Chapter.ASSEMBLY) if not owner_of(step, pattern))


def section_steps(pattern: Pattern) -> Iterator[tuple[Made, tuple[Step, ...]]]:
    """Return each section with the steps that make it, in the order of their making."""
    owned = [(owner_of(step, pattern), step) for step in pattern.steps.of(Chapter.ASSEMBLY)]
    for made in sections_of(pattern.setting.top):
        yield made, tuple(step for owner, step in owned if owner == made.name)
