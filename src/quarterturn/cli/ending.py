"""How a command ends: its exit code, and the one exception by which it refuses."""

from __future__ import annotations

import enum

import click


class Ending(enum.IntEnum):
    """The exit codes. `meaning` is what docs/commands.md says of each."""

    GOOD = 0
    STOPPED = 1
    REFUSED = 2
    FAULT = 3
    INTERRUPTED = 130
    UNREAD = 141

    @property
    def meaning(self) -> str:
        """Return what the code tells a script."""
        return {
            Ending.GOOD: "done; nothing found that stops the sewer",
            Ending.STOPPED: "something was found that stops the sewer, or anything at all under `--strict`",
            Ending.REFUSED: "the command could not be understood, or a file could not be read or written",
            Ending.FAULT: "a fault of the program itself",
            Ending.INTERRUPTED: "interrupted from the keyboard",
            Ending.UNREAD: "whoever read the output stopped reading",
        }[self]


class RefusedError(click.ClickException):
    """The command cannot do what is asked. The message is one sentence, without a full stop at its end."""

    exit_code = Ending.REFUSED
