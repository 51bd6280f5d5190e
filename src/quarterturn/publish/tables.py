"""Lists for other programs: the cut list as CSV, all results as JSON.

CSV follows RFC 4180: fields between commas, quoted where they need it, every line ended by CR LF, UTF-8, one
head line. A cell that a spreadsheet would take for a formula gets an apostrophe before it. Sizes are given
exactly, as decimals in inches and in millimetres.
"""

from __future__ import annotations

import dataclasses
import enum
import json
import types
import typing
from collections.abc import Hashable, Iterable, Iterator, Mapping, Sequence
from fractions import Fraction
from functools import cache
from io import StringIO
from typing import Any, TypeAlias

from quarterturn.design import Design
from quarterturn.materials import (
    ClothPlan,
    Crosscut,
    JoinedRun,
    Materials,
    PanelGroup,
    ParcelLayout,
    StripGroup,
)
from quarterturn.measure import MM, Length
from quarterturn.pieces import Bill
from quarterturn.proof import Pattern

JsonValue: TypeAlias = "bool | int | float | str | list[JsonValue] | dict[str, JsonValue] | None"

COLUMNS = (
    "fabric",
    "fabric name",
    "cut",
    "what",
    "piece",
    "piece name",
    "count",
    "length in",
    "width in",
    "length mm",
    "width mm",
)
_FORMULA = ("=", "+", "-", "@", "\t", "\r")
"""First letters by which spreadsheets take a cell for a formula."""


def cut_list_csv(bill: Bill, materials: Materials, design: Design) -> str:
    """Return the cut list: for each fabric its strips, then what is cut from them, in cutting order.

    `cut` is the label of the strip, run or sheet; `count` is in the whole quilt.
    """
    rows = (
        (plan.fabric, design.fabric(plan.fabric).name, *row)
        for plan in materials.cloth
        for row in _rows(plan, bill)
    )
    return csv_text([COLUMNS, *rows])


def sizes_csv(patterns: Sequence[Pattern]) -> str:
    """Return the sizes side by side, as the booklet has them: for each row its part, what it tells, a cell a size.

    The sizes stand from small to large. What the fabrics cost stands at the end, and in no booklet.
    """
    from quarterturn.publish.wording import by_size, cost_part, size_parts

    ordered = by_size(patterns)
    head = ("part", "what", *(pattern.design.size for pattern in ordered))
    parts = (*size_parts(ordered), cost_part(ordered))
    rows = ((part.title, row.what, *row.cells) for part in parts for row in part.rows)
    return csv_text([head, *rows])


def csv_text(rows: Iterable[Sequence[str]]) -> str:
    """Return rows as CSV, the head first."""
    import csv

    out = StringIO(newline="")
    writer = csv.writer(out, lineterminator="\r\n")
    writer.writerows([_plain_cell(cell) for cell in row] for row in rows)
    return out.getvalue()


Row: TypeAlias = tuple[str, ...]


def _rows(plan: ClothPlan, bill: Bill) -> Iterator[Row]:
    for layout in plan.parcels.layouts if plan.parcels else ():
        yield from _layout_rows(plan, layout, bill)
    for strip, width in plan.groups:
        yield from _strip_rows(width, strip, bill)
    for run in plan.runs:
        yield from _run_rows(run, bill)
    for panel in plan.panels:
        yield _panel_row(plan, panel, bill)


def _layout_rows(plan: ClothPlan, layout: ParcelLayout, bill: Bill) -> Iterator[Row]:
    assert plan.parcels, "a layout is of pieces of cloth"
    sizes = _sizes(layout.length, layout.room)
    name = plan.parcels.stock(layout.stock).name
    yield (layout.label, "piece of cloth", "", name, str(layout.count), *sizes)
    for group in layout.strips:
        yield from _strip_rows(
            layout.length, dataclasses.replace(group, strips=group.strips * layout.count), bill
        )


def _strip_rows(width: Length, strip: StripGroup, bill: Bill) -> Iterator[Row]:
    yield (strip.label, "strip", "", "", str(strip.strips), *_sizes(width, strip.height))
    yield from (_piece_row(strip.label, cut, strip.strips, bill) for cut in strip.pieces)


def _run_rows(run: JoinedRun, bill: Bill) -> Iterator[Row]:
    yield (run.label, "joined strips", "", "", str(run.joins + 1), *_sizes(run.length, run.height))
    yield from (_piece_row(run.label, cut, 1, bill) for cut in run.crosscuts)


def _piece_row(label: str, cut: Crosscut, strips: int, bill: Bill) -> Row:
    name = next((piece.name for piece in bill.pieces if piece.label == cut.piece), "strip to be joined")
    return (label, "piece", cut.piece, name, str(cut.count * strips), *_sizes(cut.along, cut.across))


def _panel_row(plan: ClothPlan, panel: PanelGroup, bill: Bill) -> Row:
    piece = bill.piece(panel.piece)
    sizes = _sizes(panel.cut_length, plan.usable_width)
    return ("", "panel", panel.piece, piece.name, str(panel.panels), *sizes)


def _sizes(length: Length, width: Length) -> Row:
    return (decimal(length), decimal(width), decimal(length / MM), decimal(width / MM))


def decimal(value: Fraction) -> str:
    """Print an exact size with four figures behind the point at most."""
    text = f"{float(value):.4f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text


def _plain_cell(text: str) -> str:
    return f"'{text}" if text.startswith(_FORMULA) else text


def job_json(value: object) -> str:
    """Return the JSON text of any record of the program, two blanks to the level, keys in the records' order.

    A length or other fraction is a text such as "19/2"; a point is [x, y]; an enum is its value; a record
    that stands where one of several kinds may stand (a segment, an action) tells its kind under "kind".
    """
    return json.dumps(json_value(value), ensure_ascii=False, indent=2, allow_nan=False) + "\n"


def json_value(value: object, *, tagged: bool = False) -> JsonValue:
    """Return a record as plain JSON values; `tagged` adds its kind."""
    match value:
        case enum.Enum():
            return json_value(value.value)
        case None | bool() | int() | float() | str():
            return value
        case Fraction():
            return str(value)
        case complex():
            return [value.real, value.imag]
        case Mapping():
            return {str(key): json_value(item, tagged=tagged) for key, item in value.items()}
        case tuple() | list():
            return [json_value(item, tagged=tagged) for item in value]
    assert dataclasses.is_dataclass(value), f"no JSON for a {type(value).__name__}"
    assert not isinstance(value, type), "a kind of record is no record"
    return _record(value, tagged=tagged)


def _record(value: Any, *, tagged: bool) -> JsonValue:
    kind = type(value)
    known: dict[str, JsonValue] = {"kind": kind.__name__} if tagged else {}
    unions = _fields_of_unions(typing.cast("Hashable", kind))
    for name in (f.name for f in dataclasses.fields(value)):
        known[name] = json_value(getattr(value, name), tagged=name in unions)
    return known


@cache
def _fields_of_unions(kind: Hashable) -> set[str]:
    """Return the fields in which records of more than one kind may stand."""
    hints = typing.get_type_hints(kind)
    return {name for name, hint in hints.items() if _is_union_of_records(hint)}


def _is_union_of_records(hint: object) -> bool:
    parts: Iterable[object] = typing.get_args(hint)
    if isinstance(hint, types.UnionType) or typing.get_origin(hint) is typing.Union:
        return sum(dataclasses.is_dataclass(part) for part in parts) > 1
    return any(_is_union_of_records(part) for part in parts)
