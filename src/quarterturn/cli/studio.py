"""`studio`: design with your hands, on a page in the browser."""

from __future__ import annotations

import sys
from pathlib import Path

import click

from quarterturn.cli.ending import RefusedError


@click.command(short_help="Design with your hands, on a page in the browser.")
@click.argument("file", metavar="[FILE]", required=False, type=click.Path(path_type=Path))
@click.option(
    "--port",
    type=click.IntRange(1, 65535),
    metavar="NUMBER",
    help="Serve the page on this port; if not given, a free one.",
)
@click.option("--no-browser", is_flag=True, help="Do not open the browser; the address is printed.")
def studio(file: Path | None, port: int | None, no_browser: bool) -> None:
    """Serve a page on this machine alone, and open it in the browser. Ctrl-C ends it.

    Every change is written down at once, and is found again however the studio ends; the design file changes when
    the design is saved. Nothing is fetched from or sent to any other machine.
    """
    open_studio(file, port, with_browser=not no_browser)


def open_studio(file: Path | None, port: int | None, *, with_browser: bool) -> None:
    """Serve the page until interrupted."""
    from quarterturn.studio.desk import state_folder
    from quarterturn.studio.filing import place
    from quarterturn.studio.page_files import PAGE
    from quarterturn.studio.refusals import Refusal
    from quarterturn.studio.serving import PortTakenError, Start, in_browser, serve

    try:
        start = Start(place(str(file)) if file else None, port, with_browser, state_folder())
        serve(start, PAGE, _tell, in_browser)
    except PortTakenError as error:
        raise RefusedError(str(error)) from error
    except Refusal as error:
        raise RefusedError(
            f"{error.sentence.rstrip('.')}; {error.remedy[:1].lower()}{error.remedy[1:]}"
        ) from error
    click.echo("The studio is closed.", err=True)


def _tell(address: str, is_shown: bool) -> None:
    """Say where the page is."""
    shown = "The studio is open in your browser:" if is_shown else "Open the studio in a browser:"
    click.echo(f"{shown}\n\n    {address}\n\nKeep this window open while you work; Ctrl-C ends the studio.")
    sys.stdout.flush()
