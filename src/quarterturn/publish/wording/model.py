"""What is said of a step."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Wording:
    """A step in words: a title, sentences that hold for every step told alike, and what this one alone needs.

    Steps of a chapter with equal title and sentences are printed as one numbered entry with a line for each.
    """

    title: str
    sentences: tuple[str, ...]
    line: str
    """Counts and sizes of this step; may be empty, or several lines."""

    @property
    def alike(self) -> tuple[str, tuple[str, ...]]:
        """Return what steps must share to be told together."""
        return self.title, self.sentences
