"""Time nestings, and set their densities beside the published best, and rings with centres beside none."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from benchmarks.timing import Row, milliseconds, row_of
from quarterturn.geometry import circle, disc
from quarterturn.materials.nesting import EFFORT, Nesting, Shape, nest_roll, nest_sheets
from quarterturn.measure import show_count
from tests.materials.nesting.nesting_cases import best_known, density, heart_ring, instance

INSTANCES = ("fu", "jakobs1", "blaz1", "shapes0")
SECONDS = 5
WEB = 17.0
GAP = 0.125


def nesting_rows() -> list[Row]:
    """Time the published instances, with and without a search by the clock, and rings of hearts and of circles."""
    published = [_published(name, seconds) for name in INSTANCES for seconds in (0, SECONDS)]
    return [*published, *_ring_rows("hearts", _hearts()), *_ring_rows("circles", _circles())]


def _published(name: str, seconds: int) -> Row:
    wanted, width = instance(name)
    row, nesting = _once(name, partial(nest_roll, wanted, 0, width, seconds=seconds))
    found, best = density(wanted, width, nesting), best_known(name)
    search = f", {show_count(seconds, 'second')} more" if seconds else ""
    note = f"density {found:.1f}% of best known {best:.1f}%: {found / best:.0%}{search}"
    return Row(row.name, row.middle, row.least, note)


def _once(name: str, call: Callable[[], Nesting]) -> tuple[Row, Nesting]:
    found: list[Nesting] = []
    time = milliseconds(lambda: found.append(call()))
    return row_of(name, [time]), found[0]


def _ring_rows(name: str, wanted: list[Shape]) -> list[Row]:
    solid = [Shape(shape.name, shape.outline, count=shape.count, turns=shape.turns) for shape in wanted]
    return [
        _told(f"{name}, one in another", partial(nest_roll, wanted, GAP, WEB)),
        _told(f"{name}, none in another", partial(nest_roll, solid, GAP, WEB)),
        _told(f"{name} on sheets", partial(nest_sheets, wanted, GAP, 9, 12, effort=EFFORT)),
    ]


def _told(name: str, call: Callable[[], Nesting]) -> Row:
    row, nesting = _once(name, call)
    used, bound, rows = (float(x) for x in (nesting.length, nesting.bound, nesting.rows_length))
    note = f"{show_count(len(nesting.places), 'shape')} take {used:.2f}, bound {bound:.2f}, plain rows {rows:.2f}"
    return Row(row.name, row.middle, row.least, note)


def _hearts() -> list[Shape]:
    return [
        heart_ring(f"{size} in", size, count) for size, count in ((8, 3), (6, 6), (4, 8), (3, 10), (2, 10))
    ]


def _circles() -> list[Shape]:
    sizes = ((8, 4), (6, 8), (4, 12), (2.5, 16))
    return [Shape(f"{d} in", circle(d / 2), disc(d / 2 - 0.5), count) for d, count in sizes]
