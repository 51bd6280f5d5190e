"""`rehearse`: carry the steps out on paper."""

from __future__ import annotations

from typing import TYPE_CHECKING

import click

from quarterturn.cli.ending import Ending
from quarterturn.cli.reading import design_file, made_pattern, take_in
from quarterturn.cli.telling import finding_record, tell_json

if TYPE_CHECKING:
    from quarterturn.proof import Pattern, Proof


@click.command(short_help="Carry out every step on exact shapes.")
@design_file
@click.option("--json", "as_json", is_flag=True, help="Print the result as JSON.")
def rehearse(file: str, as_json: bool) -> None:
    """Carry out every step with what the shopping list buys, and compare the sewn top with its picture."""
    from quarterturn.proof import finding_lines, prove, rehearsal_text

    taken = take_in(file)
    pattern, _ = made_pattern(taken)
    proof = prove(pattern)
    if as_json:
        tell_json(_record(taken.name, pattern, proof))
    else:
        for line in finding_lines(proof.findings, taken.name):
            click.echo(line)
        click.echo(rehearsal_text(pattern, proof), nl=False)
    if not proof.holds:
        raise click.exceptions.Exit(Ending.STOPPED)


def _record(name: str, pattern: Pattern, proof: Proof) -> dict[str, object]:
    """Return the result as JSON has it: lengths in inches."""
    rehearsal = proof.rehearsal
    return {
        "file": name,
        "holds": proof.holds,
        "steps": len(pattern.steps.steps),
        "steps_done": rehearsal.steps_done,
        "difference_square_inches": proof.difference,
        "difference_share": proof.share,
        "cloth_left_inches": {letter: float(length) for letter, length in rehearsal.cloth_left.items()},
        "web_left_inches": float(rehearsal.web_left),
        "findings": [finding_record(finding) for finding in proof.findings],
    }
