"""`check`: all that the checks find in a design."""

from __future__ import annotations

import click

from quarterturn.cli.ending import Ending
from quarterturn.cli.reading import design_file, run_file, stopping, take_in
from quarterturn.cli.telling import finding_record, tell_findings, tell_json


@click.command(short_help="Tell what is wrong with a design.")
@design_file
@click.option("--json", "as_json", is_flag=True, help="Print the findings as JSON.")
@click.option("--strict", is_flag=True, help="Let any finding at all count as one that stops.")
def check(file: str, as_json: bool, strict: bool) -> None:
    """Read a design, run every check on it, and print a line and a remedy for each finding."""
    taken = take_in(file)
    findings = run_file(taken).findings
    stops = len(stopping(findings))
    if as_json:
        tell_json({"file": taken.name, "stops": stops, "findings": [finding_record(f) for f in findings]})
    else:
        tell_findings(taken.name, findings)
    if stops or (strict and findings):
        raise click.exceptions.Exit(Ending.STOPPED)
