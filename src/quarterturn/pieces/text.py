"""The text form of the bill: the masters to make and the pieces to cut."""

from __future__ import annotations

from collections.abc import Iterator

from quarterturn.measure import Units, aligned, show_plain
from quarterturn.pieces.model import Bill, MasterCount, Piece

_MASTER_HEAD = (
    "code",
    "recipe",
    "ground",
    "shape",
    "masters",
    "needed",
    "spare",
    "units",
    "each",
    "left over",
)
_PIECE_HEAD = ("piece", "purpose", "count", "spare", "length", "width", "grain", "name", "for")


def bill_text(bill: Bill, units: Units) -> str:
    """Return the masters of each colourway and the pieces in the bill's order; sizes are unfinished and exact."""
    rows = (row for master in bill.masters for row in _master(master))
    masters = aligned([_MASTER_HEAD, *rows], right=range(4, len(_MASTER_HEAD)))
    pieces = aligned([_PIECE_HEAD, *(_piece(piece, units) for piece in bill.pieces)], right=(2, 3, 4, 5))
    return "\n".join(("masters", *masters, *_rejoined(bill), "pieces", *pieces, ""))


def _rejoined(bill: Bill) -> Iterator[str]:
    if bill.rejoined:
        rows = [
            (join.unit, each.recipe, " + ".join(join.halves), str(join.count))
            for each in bill.rejoined
            for join in each.joins
        ]
        yield "rejoined"
        yield from aligned([("unit", "recipe", "halves", "blocks"), *rows], right=(3,))


def _master(master: MasterCount) -> Iterator[tuple[str, ...]]:
    """Return the row of a colourway, and a row for each kind of unit where there are several."""
    made = (master.count, master.needed, master.spare)
    units = (master.units_needed, master.per_master, master.surplus_units)
    shapes = ", ".join(blank.label for blank in master.blanks)
    yield master.code, master.recipe, master.ground, shapes, *map(str, (*made, *units))
    if len(master.units) > 1:
        for unit in master.units:
            counts = map(str, (unit.needed, unit.per_master, unit.surplus))
            yield unit.name, "", "", "", "", "", "", *counts


def _piece(piece: Piece, units: Units) -> tuple[str, ...]:
    return (
        piece.label,
        piece.purpose.value,
        str(piece.count),
        str(piece.spare),
        show_plain(piece.length, units),
        show_plain(piece.width, units),
        piece.grain.value,
        piece.name,
        piece.used_for,
    )
