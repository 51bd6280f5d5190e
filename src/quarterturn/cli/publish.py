"""`publish`: make the files of a pattern."""

from __future__ import annotations

import re
from collections.abc import Callable, Collection
from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING

import click

from quarterturn.cli.ending import Ending, RefusedError
from quarterturn.cli.progress import Progress
from quarterturn.cli.reading import (
    STANDARD_INPUT,
    Taken,
    design_file,
    made_pattern,
    one_size,
    stopping,
    take_in,
)
from quarterturn.cli.telling import tell_findings
from quarterturn.files import ForeignFolderError, guard, guard_others, write_folder

if TYPE_CHECKING:
    from quarterturn.proof import Pattern
    from quarterturn.publish.release import Verdict

PARTS = ("booklet", "templates", "picture", "lists", "selling", "findings")
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
@one_size
@click.option(
    "--draft", is_flag=True, help="Publish whatever stops the sewer, and mark the booklet as a draft."
)
@click.option("--quiet", "-q", is_flag=True, help="Do not tell of the stages.")
def publish(
    file: str,
    folder: Path | None,
    paper: str | None,
    only: tuple[str, ...],
    size: str | None,
    draft: bool,
    quiet: bool,
) -> None:
    """Check and rehearse a design, and make the files of its pattern.

    The booklet of a design in several sizes has a column for each. With --size it is that of one size.

    The folder is put in place whole, or not at all. A design with findings that stop the sewer is not
    published, unless as a draft.
    """
    place = folder or Path("out") / _called(file, size)
    _allowed(guard, place)
    progress = Progress(quiet)
    verdict, pattern = _judged(take_in(file), size, progress)
    if stopping(verdict.findings) and not draft:
        _refuse_to_publish(verdict)
    files = _made(file, _on_paper(pattern, paper), verdict, draft, only, progress)
    if only:
        _allowed(guard_others, place, files)
    progress("writing")
    write_folder(place, files)
    progress.end()
    click.echo(f"{place}: {', '.join(files)}")


def _made(
    file: str, pattern: Pattern, verdict: Verdict, draft: bool, only: tuple[str, ...], progress: Progress
) -> dict[str, bytes]:
    """Return the files of a pattern; refuse where the fonts lack a letter of its text."""
    from quarterturn.publish import UnprintableTextError
    from quarterturn.publish.release import release

    try:
        return release(pattern, verdict, draft=draft, only=only, watch=progress)
    except UnprintableTextError as error:
        raise RefusedError(f"{file}: {error}") from error


def _allowed(ask: Callable[..., None], place: Path, *made: Collection[str]) -> None:
    """Ask whether a folder may be replaced; refuse where not."""
    try:
        ask(place, *made)
    except ForeignFolderError as error:
        raise RefusedError(f"{error}; name another folder with --to") from error


def _called(file: str, size: str | None) -> str:
    """Return the name of the folder for a file, or for one size of it."""
    name = "pattern" if file == STANDARD_INPUT else Path(file).stem
    word = re.sub(r"[^\w]+", "-", size or "").strip("-")
    return f"{name}-{word}" if word else name


def _judged(taken: Taken, size: str | None, progress: Progress) -> tuple[Verdict, Pattern]:
    """Return a pattern with all that the checks and the rehearsals of all its sizes find."""
    from quarterturn.pipeline import judge
    from quarterturn.proof import prove

    pattern, job = made_pattern(taken, progress, size)
    progress("rehearsal")
    return judge(job, Path(taken.name).name, prove), pattern


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
