"""A step before it has its number."""

from __future__ import annotations

from dataclasses import dataclass

from quarterturn.steps.model import Action, Chapter, Step
from quarterturn.steps.things import Pile, Product


@dataclass(frozen=True, slots=True)
class Draft:
    """Everything of a step but its number."""

    chapter: Chapter
    action: Action
    uses: tuple[Pile, ...]
    makes: tuple[Product, ...]

    def numbered(self, number: int) -> Step:
        """Return the step with its number."""
        return Step(number, self.chapter, self.action, self.uses, self.makes)


def draft(
    chapter: Chapter, action: Action, uses: tuple[Pile, ...] = (), makes: tuple[Product, ...] = ()
) -> Draft:
    """Return a step that still needs its number."""
    return Draft(chapter, action, uses, makes)
