"""Time whole processes: the command as it is typed."""

from __future__ import annotations

import subprocess
import sys
from functools import partial
from pathlib import Path

from benchmarks.timing import Row, timed

PROGRAM = [sys.executable, "-c", "from quarterturn.cli import main; main()"]


def starting_rows(file: Path) -> list[Row]:
    """Time Python alone, the commands that need no design, and a check."""
    commands = [["--version"], ["--help"], ["schema"], ["check", str(file)]]
    bare = timed("python alone", partial(run, [sys.executable, "-c", ""]))
    return [bare, *(timed(_name(command), partial(run, [*PROGRAM, *command])) for command in commands)]


def _name(command: list[str]) -> str:
    return " ".join(["quarterturn", *(Path(word).name for word in command)])


def run(command: list[str]) -> None:
    """Run a command to its end, silently; its exit code does not matter."""
    subprocess.run(command, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, check=False)
