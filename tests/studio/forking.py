"""Real studios in processes of their own, forked from one that has loaded the program: a start takes no second.

As a person starts it, a studio loads the program anew; `running` does so, for tests of the start and the end.
"""

from __future__ import annotations

import contextlib
import multiprocessing
import os
import sys
import warnings
from collections.abc import Iterator
from multiprocessing.connection import Connection
from pathlib import Path

from quarterturn.cli.door import run
from tests.studio.running import SAID, Running

LOADED = [
    "quarterturn.cli.door",
    "quarterturn.studio.serving",
    "quarterturn.studio.app",
    "tests.studio.forking",
]


@contextlib.contextmanager
def forked(state: Path, *arguments: str) -> Iterator[Running]:
    """Fork a studio, and see to it that it has ended afterwards."""
    forking = multiprocessing.get_context("forkserver")
    forking.set_forkserver_preload(LOADED)
    heard, told = forking.Pipe(duplex=False)
    process = forking.Process(target=_studio, args=(told, state, arguments), daemon=True)
    process.start()
    told.close()
    try:
        with open(heard.fileno(), encoding="utf-8", closefd=False) as lines:
            found = next((found for line in lines if (found := SAID.search(line))), None)
        assert found, "the studio has not told its address"
        yield Running(int(found[1]), found[2], found[3])
    finally:
        process.kill()
        process.join()
        process.close()
        heard.close()


def _studio(told: Connection, state: Path, arguments: tuple[str, ...]) -> None:
    """Be a studio, and tell the address through the pipe."""
    warnings.simplefilter("error")
    os.environ["XDG_STATE_HOME"] = str(state)
    os.dup2(told.fileno(), 1)
    sys.stdout = os.fdopen(1, "w", encoding="utf-8", closefd=False)
    sys.exit(run(list(arguments)))
