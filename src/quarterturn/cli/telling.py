"""Say findings: lines for people, records for programs."""

from __future__ import annotations

import json
from collections.abc import Sequence
from typing import TYPE_CHECKING

import click

if TYPE_CHECKING:
    from quarterturn.design import Finding


def tell_findings(name: str, findings: Sequence[Finding], err: bool = False) -> None:
    """Print the findings of the file called `name`, and a line that sums them up."""
    from quarterturn.proof import findings_text

    click.echo(findings_text(findings, name), nl=False, err=err)


def finding_record(finding: Finding) -> dict[str, object]:
    """Return a finding as JSON has it; line and column are null where they are not known."""
    place = finding.place
    return {
        "code": finding.code,
        "severity": finding.severity.value,
        "line": place.line,
        "column": place.column,
        "key": place.key,
        "detail": place.detail,
        "sentence": finding.sentence,
        "remedy": finding.remedy,
    }


def tell_json(value: object) -> None:
    """Print a value as JSON."""
    click.echo(json.dumps(value, ensure_ascii=False, indent=2))
