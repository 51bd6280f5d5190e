"""Enter by the command line: run a command, and turn whatever happens into a sentence and an exit code."""

from __future__ import annotations

import io
import os
import sys
from collections.abc import Sequence
from typing import NoReturn

import click

from quarterturn.cli.check import check
from quarterturn.cli.ending import Ending
from quarterturn.cli.find import find
from quarterturn.cli.new import new
from quarterturn.cli.outline import outline
from quarterturn.cli.publish import publish
from quarterturn.cli.rehearse import rehearse
from quarterturn.cli.schema import schema
from quarterturn.cli.settings import settings
from quarterturn.cli.show import show
from quarterturn.cli.sizes import sizes
from quarterturn.cli.studio import open_studio, studio

SHOW_FAULTS = "QUARTERTURN_FAULTS"
"""Set this in the environment, and a fault of the program is shown with its traceback."""


@click.group(
    "quarterturn",
    commands=[studio, new, settings, outline, find, sizes, check, rehearse, publish, show, schema],
    invoke_without_command=True,
    context_settings={"help_option_names": ["-h", "--help"], "max_content_width": 100},
)
@click.version_option(package_name="quarterturn", message="%(prog)s %(version)s")
@click.pass_context
def quarterturn(context: click.Context) -> None:
    """Turn a quilt design file into a printed pattern, proved by rehearsal.

    Without a command the studio opens in the browser. On the command line begin with `quarterturn new`; FILE is a
    design in TOML, or - for standard input.
    """
    if context.invoked_subcommand is None:
        open_studio(None, None, with_browser=True)


def main() -> NoReturn:
    """Run the program and end it."""
    for stream in (sys.stdout, sys.stderr):
        speak_unicode(stream)
    sys.exit(run(sys.argv[1:]))


def speak_unicode(stream: object) -> None:
    """Let a stream print ½ and × whatever the locale: pipes and files get UTF-8, a terminal what it can show."""
    if not isinstance(stream, io.TextIOWrapper):
        return
    if stream.isatty():
        stream.reconfigure(errors="backslashreplace")
    else:
        stream.reconfigure(
            encoding="utf-8", errors="surrogateescape"
        )  # names of files go out as they came in


def run(arguments: Sequence[str]) -> int:
    """Run one command; return its exit code. Whatever goes wrong is told in one line on standard error."""
    try:
        with quarterturn.make_context("quarterturn", list(arguments)) as context:
            quarterturn.invoke(context)
        sys.stdout.flush()
    except click.exceptions.Exit as ended:
        return _flushed(ended.exit_code)
    except click.UsageError as error:
        where = error.ctx.command_path if error.ctx else "quarterturn"
        return _refuse(f"{error.format_message().rstrip('.')}; see {where} --help", error.exit_code)
    except click.ClickException as error:
        return _refuse(error.format_message(), error.exit_code)
    except (KeyboardInterrupt, click.Abort):
        return _refuse("interrupted", Ending.INTERRUPTED)
    except BrokenPipeError:
        return _silence()
    except OSError as error:
        return _refuse(reason(error), Ending.REFUSED)
    except Exception as error:
        return _fault(error)
    return Ending.GOOD


def reason(error: OSError) -> str:
    """Return what the system says of a file, and of which."""
    said = (error.strerror or str(error)).lower()
    return f"{error.filename}: {said}" if error.filename else said


def _flushed(code: int) -> int:
    try:
        sys.stdout.flush()
    except BrokenPipeError:
        return _silence()
    except OSError as error:
        return _refuse(reason(error), Ending.REFUSED)
    return code


def _refuse(sentence: str, code: int) -> int:
    line = " ".join(sentence.split())
    try:
        click.echo(f"quarterturn: {line}", err=True)
    except OSError:
        return code
    return code


def _silence() -> int:
    """Let Python's own last flush go nowhere, after the reader of a pipe has gone."""
    nowhere = os.open(os.devnull, os.O_WRONLY)
    os.dup2(nowhere, sys.stdout.fileno())
    return Ending.UNREAD


def _fault(error: Exception) -> int:
    if os.environ.get(SHOW_FAULTS):
        raise error
    kind = type(error).__name__
    return _refuse(
        f"this is a fault of the program, not of your design ({kind}: {error}); "
        f"set {SHOW_FAULTS}=1 to see where it happened",
        Ending.FAULT,
    )
