"""Time a call several times, and set the figures in a table."""

from __future__ import annotations

import time
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from statistics import median


@dataclass(frozen=True, slots=True)
class Row:
    """What was timed, the median and the least of its runs in milliseconds, and a word on it."""

    name: str
    middle: float
    least: float
    note: str = ""


def timed(name: str, call: Callable[[], object], runs: int = 5, note: str = "") -> Row:
    """Call once to warm up, then so many times."""
    call()
    return row_of(name, [milliseconds(call) for _ in range(runs)], note)


def milliseconds(call: Callable[[], object]) -> float:
    """Return how long one call takes."""
    began = time.perf_counter()
    call()
    return (time.perf_counter() - began) * 1000


def row_of(name: str, times: list[float], note: str = "") -> Row:
    """Return the row of several times."""
    return Row(name, median(times), min(times), note)


def table(rows: Iterable[Row]) -> str:
    """Return the rows under a head."""
    kept = list(rows)
    width = max(len(row.name) for row in kept)
    lines = [f"  {'':{width}}  median ms   least ms"]
    lines += [
        f"  {row.name:{width}}  {row.middle:9.1f}  {row.least:9.1f}  {row.note}".rstrip() for row in kept
    ]
    return "\n".join(lines)
