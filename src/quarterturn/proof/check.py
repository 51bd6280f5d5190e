"""Run every check on a pattern."""

from __future__ import annotations

from quarterturn.design import Finding
from quarterturn.proof.checks.agreement import AGREEMENT
from quarterturn.proof.checks.beds import BEDS
from quarterturn.proof.checks.behaviour import BEHAVIOUR
from quarterturn.proof.checks.borders import BORDERS
from quarterturn.proof.checks.cloth import CLOTH
from quarterturn.proof.checks.colours import COLOURS
from quarterturn.proof.checks.counts import COUNTS
from quarterturn.proof.checks.curve_pieces import CURVE_PIECES
from quarterturn.proof.checks.cutting import CUTTING
from quarterturn.proof.checks.decided import DECIDED
from quarterturn.proof.checks.flow import FLOW
from quarterturn.proof.checks.imprint import IMPRINT
from quarterturn.proof.checks.joins import JOINS
from quarterturn.proof.checks.metric import METRIC
from quarterturn.proof.checks.motifs import MOTIFS
from quarterturn.proof.checks.narrow import NARROW
from quarterturn.proof.checks.overlaps import OVERLAPS
from quarterturn.proof.checks.parcels import PARCELS
from quarterturn.proof.checks.plain import PLAIN_CLOTH
from quarterturn.proof.checks.rings import RINGS
from quarterturn.proof.checks.selling import SELLING
from quarterturn.proof.checks.sewing import SEWING
from quarterturn.proof.checks.shopping import SHOPPING
from quarterturn.proof.checks.templates import TEMPLATES
from quarterturn.proof.checks.unit_geometry import UNIT_GEOMETRY
from quarterturn.proof.checks.web import WEB
from quarterturn.proof.model import Check, Pattern

CHECKS: tuple[Check, ...] = (
    *UNIT_GEOMETRY,
    *RINGS,
    *OVERLAPS,
    *CURVE_PIECES,
    *JOINS,
    *FLOW,
    *COUNTS,
    *CUTTING,
    *DECIDED,
    *NARROW,
    *PARCELS,
    *CLOTH,
    *WEB,
    *SHOPPING,
    *SELLING,
    *AGREEMENT,
    *SEWING,
    *BORDERS,
    *PLAIN_CLOTH,
    *MOTIFS,
    *TEMPLATES,
    *BEHAVIOUR,
    *COLOURS,
    *METRIC,
    *IMPRINT,
    *BEDS,
)
"""Every check, by the groups of the trade's list for the technical edit."""


def check_pattern(pattern: Pattern) -> tuple[Finding, ...]:
    """Return what every check finds, in the order of the checks."""
    return tuple(finding for check in CHECKS for finding in check.run(pattern))
