"""A real studio in a process of its own, as a person starts it."""

from __future__ import annotations

import contextlib
import json
import os
import re
import signal
import subprocess
import sys
from collections.abc import Iterator
from dataclasses import dataclass
from http.client import HTTPConnection
from pathlib import Path

from quarterturn.studio.guard import TOKEN

PROGRAM = [sys.executable, "-c", "from quarterturn.cli import main; main()"]
SAID = re.compile(r"http://127\.0\.0\.1:(\d+)/#token=([\w-]+)(?:&design=(\w+))?")


@dataclass
class Running:
    """A studio that runs: its port, token and the design that it opened."""

    port: int
    token: str
    design: str | None

    def get(self, path: str) -> tuple[int, bytes]:
        """Ask for something with the token."""
        connection = HTTPConnection("127.0.0.1", self.port, timeout=30)
        with contextlib.closing(connection):
            connection.request("GET", path, headers={TOKEN: self.token})
            answer = connection.getresponse()
            return answer.status, answer.read()

    def act(self, **what: object) -> None:
        """Do an act to the design, as another window does."""
        path = f"/api/designs/{self.design}"
        revision = json.loads(self.get(path)[1])["revision"]
        body = json.dumps({"revision": revision, "act": what})
        connection = HTTPConnection("127.0.0.1", self.port, timeout=30)
        with contextlib.closing(connection):
            connection.request(
                "POST", f"{path}/acts", body, {TOKEN: self.token, "Content-Type": "application/json"}
            )
            answer = connection.getresponse()
            assert answer.status == 200, answer.read()

    @property
    def address(self) -> str:
        """Return the address that it told."""
        design = f"&design={self.design}" if self.design else ""
        return f"http://127.0.0.1:{self.port}/#token={self.token}{design}"


@dataclass
class Started(Running):
    """A studio that was started as a person starts it, and its process."""

    process: subprocess.Popen[str]

    def interrupt(self) -> tuple[int, str, str]:
        """End it by Ctrl-C, and return its exit code and what it said."""
        self.process.send_signal(signal.SIGINT)
        out, err = self.process.communicate(timeout=15)
        return self.process.returncode, out, err


@contextlib.contextmanager
def running(state: Path, *arguments: str, **environment: str) -> Iterator[Started]:
    """Start a studio, and see to it that it has ended afterwards."""
    more = {"XDG_STATE_HOME": str(state), "PYTHONWARNINGS": "error", **environment}
    process = subprocess.Popen(
        [*PROGRAM, *arguments],
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
        env={**os.environ, **more},
    )
    try:
        assert process.stdout
        found = None
        while not found and (line := process.stdout.readline()):
            found = SAID.search(line)
        assert found, process.communicate()[1]
        yield Started(int(found[1]), found[2], found[3], process)
    finally:
        process.kill()
        process.wait()
        for stream in (process.stdout, process.stderr):
            if stream:
                stream.close()
