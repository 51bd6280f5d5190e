"""A finding: a fact about the design that the designer should know. It is a value, never an exception."""

from __future__ import annotations

import enum
from dataclasses import dataclass


class Severity(enum.Enum):
    """What a fault does to the person who sews, worst first."""

    STOPS = "stops"
    COSTS = "costs"
    CONFUSES = "confuses"
    STYLE = "style"

    @property
    def meaning(self) -> str:
        """Return the severity in words."""
        return {
            Severity.STOPS: "stops the sewer or spoils pieces",
            Severity.COSTS: "costs cloth or money",
            Severity.CONFUSES: "confuses",
            Severity.STYLE: "house style",
        }[self]


@dataclass(frozen=True, slots=True)
class Place:
    """Where in the design: a dotted key of the file (``recipes.round.trim``), a detail, and the line if known."""

    key: str
    detail: str = ""
    line: int | None = None
    column: int | None = None


@dataclass(frozen=True, slots=True)
class Finding:
    """One fact: a stable code, how bad, where, what is so (a sentence), and what would mend it (a sentence)."""

    code: str
    severity: Severity
    place: Place
    sentence: str
    remedy: str
