"""Time the stages in this process, after a first run that loads what they need."""

from __future__ import annotations

import time
from collections.abc import Callable
from functools import partial
from pathlib import Path
from statistics import median

from benchmarks.timing import Row, milliseconds, row_of, timed
from quarterturn.materials import EFFORT, QUICK, Effort
from quarterturn.materials.shortest import shortest_strips
from quarterturn.measure import show_count
from quarterturn.pipeline import Job, run
from quarterturn.proof import Pattern, prove
from quarterturn.publish.release import Verdict, release

RUNS = 5


def made(file: Path) -> tuple[Job, Pattern]:
    """Run the stages on a design that can be made."""
    job = run(file.read_bytes(), file.name)
    assert job.pattern is not None, job.findings
    return job, job.pattern


def edit_rows(files: list[Path]) -> list[Row]:
    """Time what happens at each edit: text in, findings and steps out."""
    return [_edit_row(file) for file in files]


def _edit_row(file: Path) -> Row:
    _, pattern = made(file)
    units, steps = len(pattern.setting.units), len(pattern.steps.steps)
    note = f"{show_count(units, 'unit')}, {show_count(steps, 'step')}"
    return timed(file.stem, partial(run, file.read_bytes(), file.name), note=note)


def effort_rows(files: list[Path]) -> list[Row]:
    """Time an edit that changes every plan, with the default effort and with the quick one."""
    efforts = {"proved": EFFORT, "quick": QUICK}
    return [_effort_row(file, name, effort) for file in files for name, effort in efforts.items()]


def _effort_row(file: Path, name: str, effort: Effort) -> Row:
    text, plans = file.read_bytes(), list[float]()

    def edit() -> None:
        laps = Laps()
        shortest_strips.cache_clear()
        run(text, file.name, laps, effort=effort)
        laps("")
        plans.append(laps.times["materials"])

    row = timed(f"{file.stem}: {name}", edit)
    return Row(row.name, row.middle, row.least, f"{median(plans[1:]):.1f} ms of it for the plans")


def stage_rows(file: Path) -> list[Row]:
    """Time each stage, each part of a publish, and say which share of the whole it takes."""
    runs = [_laps(file) for _ in range(RUNS + 1)][1:]
    rows = [row_of(name, [laps[name] for laps in runs]) for name in runs[0]]
    whole = sum(row.middle for row in rows)
    return [Row(row.name, row.middle, row.least, f"{row.middle / whole:4.0%}") for row in rows]


class Laps:
    """Told the name of each stage as it begins; knows how long each took."""

    def __init__(self) -> None:
        self.times: dict[str, float] = {}
        self._stage, self._since = "", 0.0

    def __call__(self, stage: str) -> None:
        """End the stage at work and begin another; an empty name only ends."""
        now = time.perf_counter()
        if self._stage:
            self.times[self._stage] = (now - self._since) * 1000
        self._stage, self._since = stage, now


def _laps(file: Path) -> dict[str, float]:
    laps = Laps()
    _publish(file, laps)
    laps("")
    return laps.times


def _publish(file: Path, watch: Callable[[str], None]) -> dict[str, bytes]:
    job = run(file.read_bytes(), file.name, watch)
    assert job.pattern is not None, job.findings
    watch("rehearsal")
    proof = prove(job.pattern)
    return release(job.pattern, Verdict(file.name, job.findings, proof), watch=watch)


def publish_rows(files: list[Path]) -> list[Row]:
    """Time the booklet alone and everything that `publish` does but writing."""
    return [row for file in files for row in _publish_rows(file)]


def _publish_rows(file: Path) -> list[Row]:
    job, pattern = made(file)
    verdict = Verdict(file.name, job.findings, prove(pattern))
    booklet = partial(release, pattern, verdict, only=("booklet",))
    first = milliseconds(booklet)
    return [
        timed(f"{file.stem}: booklet", booklet, runs=3, note=f"{first:.0f} ms the first time"),
        timed(f"{file.stem}: publish", partial(_publish, file, lambda stage: None), runs=3),
    ]
