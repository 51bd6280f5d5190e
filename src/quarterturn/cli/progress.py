"""Say on a terminal which stage is at work, and how long each one took."""

from __future__ import annotations

import sys
import time

import click


class Progress:
    """Told the name of each stage as it begins; silent where nobody watches."""

    def __init__(self, quiet: bool) -> None:
        self._silent = quiet or not sys.stderr.isatty()
        self._stage = ""
        self._since = 0.0

    def __call__(self, stage: str) -> None:
        """Begin a stage, which ends the one before it."""
        self.end()
        self._stage, self._since = stage, time.perf_counter()

    def end(self) -> None:
        """End the stage at work, if there is one."""
        if self._stage and not self._silent:
            click.echo(f"{self._stage:<12} {time.perf_counter() - self._since:6.2f} s", err=True)
        self._stage = ""
