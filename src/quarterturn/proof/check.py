"""Run every check on a pattern."""

from __future__ import annotations

from quarterturn.design import Finding
from quarterturn.proof.checks.unit_geometry import UNIT_GEOMETRY
from quarterturn.proof.model import Check, Pattern

CHECKS: tuple[Check, ...] = (*UNIT_GEOMETRY,)
"""Every check, by the groups of the trade's list for the technical edit."""


def check_pattern(pattern: Pattern) -> tuple[Finding, ...]:
    """Return what every check finds, in the order of the checks."""
    return tuple(finding for check in CHECKS for finding in check.run(pattern))
