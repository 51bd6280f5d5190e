"""A program that edits a design until it is killed, many times over; run by `test_killing.py`.

It forks a child for each round, so that no round waits for imports. A child opens the design as the studio does,
tells what it found, and goes on: acts, undoes, redoes, saves, telling each time what it has been answered. The parent
kills it at a random moment and holds what the next child finds against what was told.
"""

from __future__ import annotations

import hashlib
import os
import random
import signal
import sys
import time
from pathlib import Path

from quarterturn.studio.acts.putting import Put
from quarterturn.studio.desk import Desk
from quarterturn.studio.papers import Paper
from quarterturn.studio.stages import Stages

LONGEST = 0.08
"""Seconds that a child lives after it has told what it found."""


def told(paper: Paper) -> bytes:
    """Return a line that tells what a design is: its revision, and what its text is told from others by."""
    now = paper.now
    return f"{now.revision} {hashlib.sha256(now.text.encode()).hexdigest()}\n".encode()


def edit(file: Path, state: Path, pipe: int, seed: int) -> None:
    """Edit until killed."""
    chance = random.Random(seed)
    paper = Desk(state).open(file)
    os.write(pipe, told(paper))
    while True:
        kind, revision = chance.random(), paper.now.revision
        if kind < 0.15:
            paper.undo(revision)
        elif kind < 0.25:
            paper.redo(revision)
        elif kind < 0.35:
            paper.save()
        else:
            paper.act(revision, Put(at="title", value=f"Quilt {chance.randrange(10**6)}"))
        os.write(pipe, told(paper))


def killed(file: Path, state: Path, seed: int) -> list[bytes]:
    """Let a child edit for a random while, kill it, and return the whole lines that it told."""
    reading, writing = os.pipe()
    child = os.fork()
    if child == 0:
        os.close(reading)
        try:
            edit(file, state, writing, seed)
        finally:
            os._exit(1)
    os.close(writing)
    with os.fdopen(reading, "rb") as stream:
        first = stream.readline()
        time.sleep(random.Random(seed).random() * LONGEST)
        os.kill(child, signal.SIGKILL)
        rest = stream.read()
    _, status = os.waitpid(child, 0)
    if not os.WIFSIGNALED(status):
        sys.exit("the child ended by itself")
    return [line for line in (first + rest).splitlines(keepends=True) if line.endswith(b"\n")]


def lost(answered: bytes, found: bytes) -> bool:
    """Tell whether less was found than was answered; one change more may have been written but not told."""
    known, again = int(answered.split()[0]), int(found.split()[0])
    return again not in (known, known + 1) or (again == known and answered != found)


def main() -> None:
    """Kill as often as is asked; end with a sentence where anything was lost."""
    file, state, rounds = Path(sys.argv[1]), Path(sys.argv[2]), int(sys.argv[3])
    # A first look at a design loads what the stages need, so that the children need not.
    Stages().at(file.read_text(encoding="utf-8")).size().unlaid  # noqa: B018
    answered, edits = b"", 0
    for seed in range(rounds):
        lines = killed(file, state, seed)
        if answered and lost(answered, lines[0]):
            sys.exit(f"round {seed}: answered {answered!r}, found {lines[0]!r}")
        if Stages().at(file.read_text(encoding="utf-8")).reading.design is None:
            sys.exit(f"round {seed}: the file is no design")
        answered, edits = lines[-1], edits + len(lines) - 1
    sys.stdout.write(f"{rounds} kills, {edits} edits\n")


if __name__ == "__main__":
    main()
