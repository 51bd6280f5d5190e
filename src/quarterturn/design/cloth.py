"""Read the fabrics."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction
from typing import TYPE_CHECKING, TypeVar

from quarterturn.design import limits
from quarterturn.design.habits import read_count
from quarterturn.design.keys import dotted
from quarterturn.design.model import ClothKind, Direction, Fabric, Making, PinnedStrips
from quarterturn.design.notes import Notes
from quarterturn.design.parcel_tables import read_bought_as, read_on_hand
from quarterturn.design.percent import read_percent
from quarterturn.design.photos import read_photo
from quarterturn.design.words import check_letter, read_colour, read_name, read_text
from quarterturn.measure import Length

if TYPE_CHECKING:
    from quarterturn.design.file import FabricTable, PinnedTable

K = TypeVar("K")
T = TypeVar("T")


def read_fabrics(
    tables: Mapping[str, FabricTable] | None, making: Making, notes: Notes
) -> tuple[Fabric, ...]:
    """Read the fabrics, in the order of the file."""
    kept = check_count(tables, "fabrics", limits.MOST_FABRICS, notes)
    fabrics = tuple(_fabric(letter, table, making, notes) for letter, table in kept)
    _check_names(fabrics, notes)
    return fabrics


def check_count(tables: Mapping[K, T] | None, key: str, most: int, notes: Notes) -> list[tuple[K, T]]:
    """Return as many tables of a kind as can be, and note it if there are more."""
    items = list((tables or {}).items())
    if len(items) > most:
        what = key.rpartition(".")[2].replace("_", " ")
        notes.add("too-many", key, f"There are {len(items)} {what}.", f"Keep to {most}.")
    return items[:most]


def _fabric(letter: str, table: FabricTable, making: Making, notes: Notes) -> Fabric:
    key = dotted("fabrics", letter)
    width = notes.length(table.width, f"{key}.width", limits.CLOTH_WIDTH) or making.usable_width
    check_letter(letter, key, notes)
    return Fabric(
        letter=letter,
        name=read_name(
            table.name, f"{key}.name", 'Give it a name that tells it apart: name = "oyster".', notes
        ),
        role=read_text(table.role, f"{key}.role", notes),
        colour=read_colour(table.colour, f"{key}.colour", notes),
        width=width,
        direction=Direction(table.direction or "none"),
        kind=ClothKind(table.kind or "cotton"),
        price=_price(table.price, f"{key}.price", notes),
        shrink_along=read_percent(table.shrink_along, f"{key}.shrink_along", limits.MOST_SHRINKAGE, notes),
        shrink_across=read_percent(table.shrink_across, f"{key}.shrink_across", limits.MOST_SHRINKAGE, notes),
        upright=_upright(table, key, notes),
        photo=read_photo(table, key, notes),
        on_hand=read_on_hand(table.on_hand, f"{key}.on_hand", making, notes),
        bought_as=read_bought_as(table.bought_as, f"{key}.bought_as", width, making, notes),
        strips=tuple(_pinned(table.strips, f"{key}.strips", notes)),
        strip_heights=_heights(table, f"{key}.strip_heights", notes),
    )


def _pinned(tables: list[PinnedTable] | None, key: str, notes: Notes) -> Iterator[PinnedStrips]:
    """Read the strips that the designer has decided on."""
    kept = check_count(dict(enumerate(tables or ())), key, limits.MOST_PINS, notes)
    for number, table in kept:
        own = f"{key}.{number}"
        height = notes.length(table.height, f"{own}.height", limits.STRIP_HEIGHT)
        if table.height is None:
            notes.missing(f"{own}.height", "Say how high the strips are: height = '4 1/2\"'.")
        count = None
        if table.count is not None:
            count = read_count(table.count, f"{own}.count", 1, limits.MOST_STRIPS, notes)
        pieces = tuple(dict.fromkeys(table.pieces or ()))
        if count is None and not pieces and not notes.is_spoiled(f"{own}.pieces"):
            remedy = 'Add count = 4, or pieces = ["A1"] with the labels that the booklet prints.'
            notes.add(
                "strips-unclear", own, "Neither how many strips these are is said nor what for.", remedy
            )
        if height is not None:
            yield PinnedStrips(height, count, pieces)


def _heights(table: FabricTable, key: str, notes: Notes) -> tuple[Length, ...]:
    given = check_count(dict(enumerate(table.strip_heights or ())), key, limits.MOST_PINS, notes)
    read = (notes.length(raw, f"{key}.{number}", limits.STRIP_HEIGHT) for number, raw in given)
    return tuple(sorted({height for height in read if height is not None}))


def _upright(table: FabricTable, key: str, notes: Notes) -> bool:
    if table.upright and table.direction in (None, "none"):
        sentence = "The print is to stand upright, and it has no direction."
        remedy = 'Write direction = "two-way" or direction = "one-way", or leave upright out.'
        notes.add("upright-unclear", f"{key}.upright", sentence, remedy)
    return bool(table.upright)


def _price(price: int | float | None, key: str, notes: Notes) -> Fraction | None:
    if price is None:
        return None
    if not 0 <= price <= limits.HIGHEST_PRICE:
        remedy = f"Give a price from 0 to {limits.HIGHEST_PRICE}, or leave it out."
        notes.add("count-out-of-range", key, "No cloth has this price.", remedy)
        return None
    return Fraction(repr(price))


def _check_names(fabrics: tuple[Fabric, ...], notes: Notes) -> None:
    first: dict[str, str] = {}
    for fabric in fabrics:
        if not fabric.name:
            continue
        other = first.setdefault(fabric.name.lower(), fabric.letter)
        if other != fabric.letter:
            notes.add(
                "name-twice",
                dotted("fabrics", fabric.letter, "name"),
                f"Fabrics {other} and {fabric.letter} are both called {fabric.name}.",
                "Give each its own name, so that nobody cuts the wrong one.",
            )
