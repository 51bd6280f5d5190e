"""What is noted while the tree of a top is built: edges that do not fit, by how much, and what would make them fit."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from quarterturn.design import Finding, Place, Severity
from quarterturn.measure import Length, Units, show_exact

FIT_CODES: Mapping[str, str] = MappingProxyType(
    {
        "edges-misfit": "edges that are to be sewn together and differ in length",
        "coping-too-narrow": "coping strips that are too narrow to be sewn",
        "size-open": "a row or column of plain cloth alone, whose size nothing tells",
        "cells-not-square": "a place of a setting on point that is not a square of the common size",
        "triangles-too-small": "a square for setting triangles that is too small for what it has to cover",
        "motif-outside": "a motif that reaches past the edge of its panel",
        "quilt-too-large": "a quilt that is larger than any room",
    }
)
"""Code -> meaning of what is found when sections are laid together; all of it stops."""


class Misfits:
    """Findings so far, each told once."""

    def __init__(self, units: Units) -> None:
        self.units = units
        self.findings: dict[Finding, None] = {}

    def add(self, code: str, key: str, sentence: str, remedy: str, detail: str = "") -> None:
        """Note a finding that stops."""
        self.findings.setdefault(Finding(code, Severity.STOPS, Place(key, detail), sentence, remedy))

    def settle(self, key: str, known: int, fits: bool) -> bool:
        """Return whether all still fits with a border, given how many findings there were before it.

        Where something further in does not fit, what is found at the border's own key follows from it, since its edge
        then has not the length that it will have: so it is left out.
        """
        mine = [each for each in list(self.findings)[known:] if f"{each.place.key}.".startswith(f"{key}.")]
        if not fits:
            for each in mine:
                del self.findings[each]
        return fits and not mine

    def show(self, value: Length) -> str:
        """Print a length exactly as far as rulers go, and then in figures too."""
        return show_exact(value, self.units)
