"""7. All -> findings.

In:  a `Pattern`, the results of all stages; for the rehearsal, fabrics, lengths of cloth and steps alone.
Out: findings, and the top that the steps really make.
Promise: a check calculates anew and never asks the stage it checks; the rehearsal knows cloth and steps only.
"""

from quarterturn.proof.across import ACROSS_CODES, check_sizes
from quarterturn.proof.check import CHECKS, check_pattern
from quarterturn.proof.checks.layers import SeamLayers, cut_away_of, seam_layers
from quarterturn.proof.model import Check, Pattern
from quarterturn.proof.proving import ACCEPTED, Proof, compare_top, prove, supplies_of
from quarterturn.proof.sizing import (
    Suggestion,
    border_depths,
    changes_of,
    sizes_text,
    suggestion_table,
    suggestions,
    suggestions_text,
    unit_sizes,
)
from quarterturn.proof.text import (
    cut_away_sentences,
    finding_lines,
    findings_text,
    rehearsal_sentences,
    rehearsal_text,
    summary,
)

__all__ = [
    "ACCEPTED",
    "ACROSS_CODES",
    "CHECKS",
    "Check",
    "Pattern",
    "Proof",
    "SeamLayers",
    "Suggestion",
    "border_depths",
    "changes_of",
    "check_pattern",
    "check_sizes",
    "compare_top",
    "cut_away_of",
    "cut_away_sentences",
    "finding_lines",
    "findings_text",
    "prove",
    "rehearsal_sentences",
    "rehearsal_text",
    "seam_layers",
    "sizes_text",
    "suggestion_table",
    "suggestions",
    "suggestions_text",
    "summary",
    "supplies_of",
    "unit_sizes",
]
