"""Read and write pieces of cloth: what lies on the shelf, and the pieces in which a fabric is bought."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING

from quarterturn.design import limits
from quarterturn.design.habits import read_count
from quarterturn.design.keys import dotted
from quarterturn.design.model import Fabric, Making
from quarterturn.design.notes import Notes
from quarterturn.design.parcels import Parcel, bought_parcel, name_of, precut_of, size_name
from quarterturn.design.section_tables import Pair, inline_table, list_lines
from quarterturn.design.text import quote_length, quote_text
from quarterturn.design.words import read_text
from quarterturn.measure import Length, Units, show_length

if TYPE_CHECKING:
    from quarterturn.design.file import BoughtTable, OnHandTable
    from quarterturn.design.notes import Raw

BOLT = "bolt"


def read_on_hand(
    tables: Sequence[OnHandTable] | None, key: str, making: Making, notes: Notes
) -> tuple[Parcel, ...]:
    """Return the pieces of a fabric that lie on the shelf, in the order of the file."""
    tables = tables or ()
    if len(tables) > limits.MOST_ON_HAND:
        sentence = f"There are {len(tables)} kinds of pieces on hand."
        notes.add("too-many", key, sentence, f"Keep to {limits.MOST_ON_HAND} of one fabric.")
    found = (
        _on_hand(table, dotted(*key.split("."), n), making, notes)
        for n, table in enumerate(tables[: limits.MOST_ON_HAND])
    )
    return tuple(parcel for parcel in found if parcel)


def _on_hand(table: OnHandTable, key: str, making: Making, notes: Notes) -> Parcel | None:
    width, height = (_side(getattr(table, side), f"{key}.{side}", notes) for side in ("width", "height"))
    squaring = notes.length(table.squaring, f"{key}.squaring", limits.MAKING["piece_squaring"])
    count = read_count(table.count, f"{key}.count", 1, limits.MOST_PARCELS, notes)
    if width is None or height is None:
        return None
    loss = making.piece_squaring if squaring is None else squaring
    parcel = Parcel(size_name(width, height, notes.units), width, height, loss, count)
    return _left_over(parcel, key, notes)


def _side(raw: Raw | None, key: str, notes: Notes) -> Length | None:
    if raw is None:
        notes.missing(key, "Give the true size of the piece, selvage off.")
    return notes.length(raw, key, limits.PARCEL)


def _left_over(parcel: Parcel, key: str, notes: Notes) -> Parcel | None:
    """Return a parcel of which something is left when it is squared up."""
    if min(parcel.width, parcel.height) > parcel.squaring:
        return parcel
    loss = show_length(parcel.squaring, notes.units)
    sentence = f"Squaring up takes {loss} off each side of the piece, which leaves nothing."
    notes.add("size-out-of-range", key, sentence, "State a larger piece, or a smaller `squaring` for it.")
    return None


def read_bought_as(
    given: str | BoughtTable | None, key: str, usable_width: Length, making: Making, notes: Notes
) -> Parcel | None:
    """Return the pieces in which a fabric is bought; None where it comes off the bolt."""
    if given is None or given == BOLT:
        return None
    if isinstance(given, str):
        precut = precut_of(given)
        assert precut, "the file knows no other word"
        return _left_over(bought_parcel(precut, notes.units, usable_width, making.piece_squaring), key, notes)
    return _own(given, key, usable_width, making, notes)


def _own(table: BoughtTable, key: str, usable_width: Length, making: Making, notes: Notes) -> Parcel | None:
    """Return pieces of one's own size; where they bear the word of a precut, what they leave out is of that."""
    name = read_text(table.name, f"{key}.name", notes)
    precut = precut_of(name)
    known = bought_parcel(precut, notes.units, usable_width, making.piece_squaring) if precut else None
    sides = []
    for side in ("width", "height"):
        raw = getattr(table, side)
        if raw is None and known:
            sides.append(getattr(known, side))
        else:
            sides.append(_side(raw, f"{key}.{side}", notes))
    squaring = notes.length(table.squaring, f"{key}.squaring", limits.MAKING["piece_squaring"])
    if squaring is None:
        squaring = known.squaring if known else making.piece_squaring
    width, height = sides
    if width is None or height is None:
        return None
    called = name_of(precut) if precut else name or size_name(width, height, notes.units)
    return _left_over(Parcel(called, width, height, squaring, None, precut), key, notes)


def parcel_pairs(fabric: Fabric, making: Making, units: Units) -> Iterator[Pair]:
    """Return the keys of a fabric that tell of pieces of cloth; none where it has none."""
    if fabric.on_hand:
        yield "on_hand", list_lines(_on_hand_text(parcel, units) for parcel in fabric.on_hand)
    if parcel := fabric.bought_as:
        yield "bought_as", _bought_text(parcel, fabric, making, units)


def _on_hand_text(parcel: Parcel, units: Units) -> str:
    return inline_table(*_sides(parcel, units), ("count", str(parcel.count)), _squaring(parcel, units))


def _bought_text(parcel: Parcel, fabric: Fabric, making: Making, units: Units) -> str:
    """Write a precut by its word, if that says all."""
    precut = parcel.precut
    if precut and parcel == bought_parcel(precut, units, fabric.width, making.piece_squaring):
        return quote_text(precut.value)
    name = precut.value if precut else parcel.name
    unnamed = name == size_name(parcel.width, parcel.height, units)
    named = [] if unnamed else [("name", quote_text(name))]
    return inline_table(*named, *_sides(parcel, units), _squaring(parcel, units))


def _sides(parcel: Parcel, units: Units) -> tuple[Pair, ...]:
    return ("width", quote_length(parcel.width, units)), ("height", quote_length(parcel.height, units))


def _squaring(parcel: Parcel, units: Units) -> Pair:
    return "squaring", quote_length(parcel.squaring, units)
