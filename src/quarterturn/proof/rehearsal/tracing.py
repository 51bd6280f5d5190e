"""Carrying out the tracing of rings in rows, plain or staggered, on the roll or on sheets."""

from __future__ import annotations

import math
from collections.abc import Iterator
from itertools import islice

from quarterturn.geometry import Motion, Path, Region, as_polygon, quarter_turns, region_bounds, shift
from quarterturn.materials import Stagger
from quarterturn.measure import Length
from quarterturn.proof.rehearsal.apart import check_apart, laid
from quarterturn.proof.rehearsal.cloth import EQUAL, SpoiledError
from quarterturn.proof.rehearsal.shapes import ring_of
from quarterturn.proof.rehearsal.table import Table
from quarterturn.steps import Step, TraceRings


def trace_rings(table: Table, step: Step, action: TraceRings) -> None:
    """Trace shapes on the web in rows, and cut the rings out."""
    (product,) = step.makes
    if action.per_row < 1 or action.gap < 0:
        raise SpoiledError(f"{action.per_row} rings do not fit across the web.")
    if action.stagger:
        _trace_staggered(table, action, action.stagger, product.count)
    else:
        _trace_plain(table, action, product.count)
    table.put(product, ring_of(action))


def _trace_plain(table: Table, action: TraceRings, count: int) -> None:
    """Give each ring a room, and use up the rows that the rooms take. Raises SpoiledError where one is too small."""
    ring = region_bounds(action.ring_out)
    if ring.width > action.room_width + EQUAL or ring.height > action.room_height + EQUAL:
        raise SpoiledError("A ring is larger than the room it is given on the web.")
    row = action.per_row * (action.room_width + action.gap) - action.gap
    if row > table.supplies.web.width:
        raise SpoiledError(f"{action.per_row} rings do not fit across the web.")
    rows = math.ceil(count / action.per_row)
    if table.supplies.web.sheet is None:
        table.unroll(_deep(action, rows), action.gap)
        return
    if action.rows_on_sheet < 1 or _deep(action, action.rows_on_sheet) > table.supplies.web.sheet:
        raise SpoiledError(f"{action.rows_on_sheet} rows do not fit on a sheet of web.")
    table.take_sheets(math.ceil(rows / action.rows_on_sheet))


def _deep(action: TraceRings, rows: int) -> Length:
    return rows * (action.room_height + action.gap) - action.gap


def _trace_staggered(table: Table, action: TraceRings, rule: Stagger, count: int) -> None:
    """Lay each ring where the rule says. Raises SpoiledError where one reaches over the edge or comes too near."""
    if min(rule.odd, rule.even) < 1 or rule.pitch <= 0 or min(rule.down, rule.back) < 0:
        raise SpoiledError("The rule of the rows leads nowhere.")
    web = table.supplies.web
    if web.sheet is None:
        table.unroll(action.length, action.gap)
        _lay(action, list(_motions(rule, count)), (web.width, action.length))
        return
    on_sheet = list(islice(_motions(rule, count, action.rows_on_sheet), count))
    if not on_sheet:
        raise SpoiledError("No row is traced on a sheet of web.")
    _lay(action, on_sheet, (web.width, web.sheet))
    table.take_sheets(math.ceil(count / len(on_sheet)))


def _motions(rule: Stagger, count: int, rows: int | None = None) -> Iterator[Motion]:
    """Return the places of rings row by row, of no more than so many rows."""
    row, along, left = 0, rule.top, count
    while left > 0 and (rows is None or row < rows):
        shifted = row % 2 == 1
        across, most = (rule.second, rule.even) if shifted else (rule.first, rule.odd)
        turned = quarter_turns((1 if rule.quarter else 0) + (2 if shifted and rule.flipped else 0))
        for _ in range(min(most, left)):
            yield turned.then(shift(complex(across, along)))
            across += rule.pitch
        left -= most
        along += rule.back if shifted else rule.down
        row += 1


def _lay(action: TraceRings, motions: list[Motion], size: tuple[Length, Length]) -> None:
    whole = max(action.ring_out.paths, key=Path.area)
    boxes = {
        turn: region_bounds(Motion(turn).region(action.ring_out)) for turn in {m.factor for m in motions}
    }
    for motion in motions:
        box, at = boxes[motion.factor], motion.move
        room = (
            box.left + at.real,
            box.top + at.imag,
            size[0] - box.right - at.real,
            size[1] - box.bottom - at.imag,
        )
        if min(room) < -EQUAL:
            raise SpoiledError(f"A ring of {action.shape} reaches over the edge of the web.")
    band = as_polygon(Region((whole,)))
    check_apart([laid(band, motion) for motion in motions], float(action.gap))
