"""Take in a design file and run it through the stages."""

from __future__ import annotations

import sys
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

import click

from quarterturn.cli.ending import Ending, RefusedError
from quarterturn.cli.telling import tell_findings

if TYPE_CHECKING:
    from quarterturn.design import Finding
    from quarterturn.pipeline import Job
    from quarterturn.proof import Pattern

STANDARD_INPUT = "-"

MOST_BYTES = 32 * 2**20
"""No more is taken in; the reader of designs has a lower limit, and tells of it."""

design_file = click.argument("file", metavar="FILE", type=str)
"""The design that a command reads."""

one_size = click.option("--size", metavar="NAME", help="Take this size of the design alone.")


@dataclass(frozen=True, slots=True)
class Taken:
    """A design file as taken in: the name by which it is spoken of, and its bytes."""

    name: str
    content: bytes


def take_in(file: str) -> Taken:
    """Read a file, or standard input for `-`; raise OSError where the system does not let us."""
    if file == STANDARD_INPUT:
        return Taken("standard input", sys.stdin.buffer.read(MOST_BYTES))
    with Path(file).open("rb") as stream:
        return Taken(file, stream.read(MOST_BYTES))


def run_file(taken: Taken, watch: Callable[[str], None] = lambda stage: None, size: str | None = None) -> Job:
    """Run all stages on a file, in all its sizes or in the one that is named."""
    from quarterturn.design import UnknownSizeError
    from quarterturn.pipeline import run

    try:
        return run(taken.content, taken.name, watch, size)
    except UnknownSizeError as error:
        raise RefusedError(f"{taken.name}: {error}") from error


def made_pattern(
    taken: Taken, watch: Callable[[str], None] = lambda stage: None, size: str | None = None
) -> tuple[Pattern, Job]:
    """Return the pattern of a file, in its own size or the one that is named, and the job with those of all.

    Ends the command, telling why, where the findings forbid making one.
    """
    job = run_file(taken, watch, size)
    if job.pattern is None:
        tell_findings(taken.name, job.findings, err=True)
        raise click.exceptions.Exit(Ending.STOPPED)
    return job.pattern, job


def stopping(findings: tuple[Finding, ...]) -> tuple[Finding, ...]:
    """Return the findings that stop the sewer."""
    from quarterturn.design import Severity

    return tuple(finding for finding in findings if finding.severity is Severity.STOPS)
