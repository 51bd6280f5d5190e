"""Time an edit in the studio: the act, the figures that are shown first, the quilt; and the memory of many edits."""

from __future__ import annotations

import resource
import time
from pathlib import Path

from benchmarks.timing import Row, row_of
from quarterturn.materials import QUICK
from quarterturn.studio.acts import CellAt, do
from quarterturn.studio.acts.painting import TurnCells
from quarterturn.studio.stages import Made, Stages
from quarterturn.studio.views import figures_view, quilt_view

EDITS = 24
MANY = 500
KIB = 1024


def editing_rows(file: Path) -> list[Row]:
    """Turn unit after unit of a design by hand, and time what the page waits for."""
    stages = Stages()
    made = stages.at(file.read_text(encoding="utf-8"))
    cells = _cells(made)
    figures_view(0, made.size())
    times: dict[str, list[float]] = {"the act": [], "edit to first figures": [], "the quilt, as JSON": []}
    for edit in range(EDITS):
        began = time.perf_counter()
        made = _turned(made, cells[edit % len(cells)])
        acted = time.perf_counter()
        figures_view(edit, made.size(), QUICK)
        figured = time.perf_counter()
        quilt_view(edit, made.size()).model_dump_json()
        drawn = time.perf_counter()
        laps = (acted - began, figured - began, drawn - figured)
        for name, lap in zip(times, laps, strict=True):
            times[name].append(lap * 1000)
    return [row_of(name, found, note=f"worst {max(found):.0f} ms") for name, found in times.items()]


def memory_line(file: Path) -> str:
    """Say by how much the memory at its fullest grows over many edits."""
    stages = Stages()
    made = stages.at(file.read_text(encoding="utf-8"))
    cells = _cells(made)
    for edit in range(EDITS):
        made = _edited(made, cells[edit % len(cells)], edit)
    before = _fullest()
    for edit in range(MANY):
        made = _edited(made, cells[edit % len(cells)], edit)
    return (
        f"  memory {_fullest():.0f} MiB at its fullest, {_fullest() - before:.0f} MiB more after {MANY} edits"
    )


def _edited(made: Made, at: CellAt, edit: int) -> Made:
    after = _turned(made, at)
    figures_view(edit, after.size(), QUICK)
    quilt_view(edit, after.size()).model_dump_json()
    return after


def _turned(made: Made, at: CellAt) -> Made:
    return do(TurnCells(cells=(at,)), made.text, made.stages).made


def _cells(made: Made) -> list[CellAt]:
    placed = quilt_view(0, made.size()).placed
    return [CellAt(section=p.written, row=p.cell[0], column=p.cell[1]) for p in placed if p.cell]


def _fullest() -> float:
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / KIB
