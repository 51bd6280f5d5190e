"""`rehearse`: carry the steps out on paper."""

from __future__ import annotations

from typing import TYPE_CHECKING

import click

from quarterturn.cli.ending import Ending
from quarterturn.cli.reading import design_file, made_pattern, one_size, take_in
from quarterturn.cli.telling import finding_record, tell_json

if TYPE_CHECKING:
    from quarterturn.proof import Pattern, Proof


@click.command(short_help="Carry out every step on exact shapes.")
@design_file
@one_size
@click.option("--json", "as_json", is_flag=True, help="Print the result as JSON.")
def rehearse(file: str, size: str | None, as_json: bool) -> None:
    """Carry out every step with what the shopping list buys, and compare the sewn top with its picture.

    A design in several sizes is rehearsed in each of them.
    """
    from quarterturn.proof import prove

    taken = take_in(file)
    _, job = made_pattern(taken, size=size)
    proofs = [(pattern, prove(pattern)) for pattern in job.patterns]
    if as_json:
        own, *others = (_record(taken.name, *each) for each in proofs)
        tell_json({**own, "sizes": others})
    else:
        for pattern, proof in proofs:
            _tell(taken.name, pattern, proof, named=len(proofs) > 1)
    if not all(proof.holds for _, proof in proofs):
        raise click.exceptions.Exit(Ending.STOPPED)


def _tell(name: str, pattern: Pattern, proof: Proof, named: bool) -> None:
    """Print what the rehearsal of one size found, under the size's name where there are several."""
    from quarterturn.proof import finding_lines, rehearsal_text

    if named:
        click.echo(f"In {pattern.design.size} size:")
    for line in finding_lines(proof.findings, name):
        click.echo(line)
    click.echo(rehearsal_text(pattern, proof), nl=False)


def _record(name: str, pattern: Pattern, proof: Proof) -> dict[str, object]:
    """Return the result for one size as JSON has it: lengths in inches."""
    rehearsal = proof.rehearsal
    return {
        "file": name,
        "size": pattern.design.size,
        "holds": proof.holds,
        "steps": len(pattern.steps.steps),
        "steps_done": rehearsal.steps_done,
        "difference_square_inches": proof.difference,
        "difference_share": proof.share,
        "cloth_pieces_left": dict(rehearsal.parcels_left),
        "cloth_left_inches": {letter: float(length) for letter, length in rehearsal.cloth_left.items()},
        "web_left_inches": float(rehearsal.web_left),
        "findings": [finding_record(finding) for finding in proof.findings],
    }
