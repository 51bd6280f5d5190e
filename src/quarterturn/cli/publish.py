"""`publish`: make the files of a pattern."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING

import click

from quarterturn.cli.ending import Ending, RefusedError
from quarterturn.cli.folders import guard, guard_others
from quarterturn.cli.progress import Progress
from quarterturn.cli.reading import STANDARD_INPUT, Taken, design_file, made_pattern, stopping, take_in
from quarterturn.cli.telling import tell_findings
from quarterturn.cli.writing import write_folder

if TYPE_CHECKING:
    from quarterturn.proof import Pattern
    from quarterturn.publish.release import Verdict

PARTS = ("booklet", "templates", "picture", "lists", "findings")
"""What --only takes: the names of the parts in `quarterturn.publish.release`."""


@click.command(short_help="Make the booklet, the templates, the picture and the lists.")
@design_file
@click.option(
    "--to",
    "folder",
    type=click.Path(path_type=Path),
    metavar="FOLDER",
    help="Where to; if not given, a folder named after FILE in the folder out.",
)
@click.option(
    "--paper", type=click.Choice(["letter", "a4"]), help="Print on this paper, whatever the design says."
)
@click.option(
    "--only", type=click.Choice(PARTS), multiple=True, help="Make this part; may be given several times."
)
@click.option(
    "--draft", is_flag=True, help="Publish whatever stops the sewer, and mark the booklet as a draft."
)
@click.option("--quiet", "-q", is_flag=True, help="Do not tell of the stages.")
def publish(
    file: str, folder: Path | None, paper: str | None, only: tuple[str, ...], draft: bool, quiet: bool
) -> None:
    """Check and rehearse a design, and make the files of its pattern.

    The folder is put in place whole, or not at all. A design with findings that stop the sewer is not
    published, unless as a draft.
    """
    from quarterturn.publish import UnprintableTextError
    from quarterturn.publish.release import release

    place = folder or Path("out") / ("pattern" if file == STANDARD_INPUT else Path(file).stem)
    guard(place)
    progress = Progress(quiet)
    verdict, pattern = _judged(take_in(file), progress)
    if stopping(verdict.findings) and not draft:
        _refuse_to_publish(verdict)
    try:
        files = release(_on_paper(pattern, paper), verdict, draft=draft, only=only, watch=progress)
    except UnprintableTextError as error:
        raise RefusedError(f"{file}: {error}") from error
    if only:
        guard_others(place, files)
    progress("writing")
    write_folder(place, files)
    progress.end()
    click.echo(f"{place}: {', '.join(files)}")


def _judged(taken: Taken, progress: Progress) -> tuple[Verdict, Pattern]:
    """Return a pattern with all that the checks and the rehearsal find."""
    from quarterturn.proof import prove
    from quarterturn.publish.release import Verdict

    pattern, job = made_pattern(taken, progress)
    progress("rehearsal")
    proof = prove(pattern)
    return Verdict(Path(taken.name).name, (*job.findings, *proof.findings), proof), pattern


def _refuse_to_publish(verdict: Verdict) -> None:
    tell_findings(verdict.name, verdict.findings, err=True)
    click.echo("Not published: mend what stops the sewer, or publish a draft with --draft.", err=True)
    raise click.exceptions.Exit(Ending.STOPPED)


def _on_paper(pattern: Pattern, paper: str | None) -> Pattern:
    from quarterturn.design import Paper

    if paper is None:
        return pattern
    house = replace(pattern.design.house, paper=Paper(paper))
    return replace(pattern, design=replace(pattern.design, house=house))
