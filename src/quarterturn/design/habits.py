"""Read how the quilt is made and how its pattern speaks, filling in the defaults."""

from __future__ import annotations

from typing import TYPE_CHECKING

from quarterturn.design import limits
from quarterturn.design.defaults import default_making
from quarterturn.design.model import (
    EdgeStitch,
    EdgeStitchKind,
    House,
    Joins,
    LongCut,
    Making,
    Paper,
    Pressing,
)
from quarterturn.design.needle import read_needle
from quarterturn.design.notes import Notes
from quarterturn.design.words import read_text
from quarterturn.measure import Length, Units, show_count

if TYPE_CHECKING:
    from quarterturn.design.file import HouseTable, MakingTable, StitchTable

DEFAULT_SKILL = "confident beginner"


def read_making(table: MakingTable | None, notes: Notes) -> Making:
    """Return how the quilt is made. Where a value is bad it is noted, and the default stands in."""
    default = default_making(notes.units)
    if table is None:
        return default

    def length(name: str) -> Length:
        given = notes.length(getattr(table, name), f"making.{name}", limits.MAKING[name])
        standard: Length = getattr(default, name)
        return standard if given is None else given

    making = Making(
        seam=length("seam"),
        usable_width=length("usable_width"),
        ring_out=length("ring_out"),
        ring_in=length("ring_in"),
        tracing_gap=length("tracing_gap"),
        cut_away=length("cut_away"),
        web_width=length("web_width"),
        binding_extra=length("binding_extra"),
        overage=length("overage"),
        backing_seam=length("backing_seam"),
        squaring=length("squaring"),
        slack=length("slack"),
        spare_masters=read_count(table.spare_masters, "making.spare_masters", 0, limits.MOST_SPARES, notes),
        pressing=Pressing(table.pressing) if table.pressing else default.pressing,
        stitch=_stitch(table.stitch, default.stitch, notes),
        borders=LongCut(table.borders) if table.borders else default.borders,
        web_sheet=_web_sheet(table.web_sheet, notes),
        piece_squaring=length("piece_squaring"),
        joins=Joins(table.joins) if table.joins else default.joins,
        layers=read_count(table.layers, "making.layers", default.layers, limits.MOST_CUT_LAYERS, notes),
    )
    _check_web(making, notes)
    return making


def read_count(
    count: int | None, key: str, default: int, most: int, notes: Notes, least: int | None = None
) -> int:
    """Return a whole number from `least`, or else the lower of 1 and the default, up to `most`."""
    if count is None:
        return default
    least = min(default, 1) if least is None else least
    if least <= count <= most:
        return count
    name = key.rpartition(".")[2]
    notes.add(
        "count-out-of-range",
        key,
        f"`{name}` is out of range.",
        f"Give a whole number from {least} to {most}.",
    )
    return default


def _web_sheet(sides: list[str | int | float] | None, notes: Notes) -> tuple[Length, Length] | None:
    """Return the width and height of a sheet of web; None where it is sold by the length."""
    key = "making.web_sheet"
    if sides is None:
        return None
    if len(sides) != 2:
        sentence = f"A sheet has a width and a height, and here it has {show_count(len(sides), 'size')}."
        notes.add("sheet-unclear", key, sentence, "Write web_sheet = ['9\"', '12\"'].")
        return None
    width, height = (notes.length(side, f"{key}.{n}", limits.WEB_SHEET) for n, side in enumerate(sides))
    return None if width is None or height is None else (width, height)


def _check_web(making: Making, notes: Notes) -> None:
    if making.ring_in + making.ring_out == 0:
        notes.add(
            "no-web",
            "making.ring_in",
            "The ring is left without any web, so nothing would hold the shape.",
            "Make ring_in or ring_out more than nothing.",
        )


def _stitch(table: StitchTable | None, default: EdgeStitch, notes: Notes) -> EdgeStitch:
    if table is None:
        return default
    key = "making.stitch"
    width = notes.length(table.width, f"{key}.width", limits.STITCH["width"])
    length = notes.length(table.length, f"{key}.length", limits.STITCH["length"])
    return EdgeStitch(
        kind=EdgeStitchKind(table.kind) if table.kind else default.kind,
        width=default.width if width is None else width,
        length=default.length if length is None else length,
        thread=read_text(table.thread, f"{key}.thread", notes) or default.thread,
        needle=read_text(table.needle, f"{key}.needle", notes) or default.needle,
        repeat=read_needle(table.repeat, f"{key}.repeat", notes),
        layers=read_count(table.layers, f"{key}.layers", default.layers, limits.MOST_LAYERS, notes),
        bobbin=notes.length(table.bobbin, f"{key}.bobbin", limits.BOBBIN) or default.bobbin,
    )


def default_house(units: Units) -> House:
    """Return the house style of a file that says nothing about it."""
    return House(Paper.A4 if units is Units.METRIC else Paper.LETTER, False, "", DEFAULT_SKILL)


def read_house(table: HouseTable | None, has_prices: bool, notes: Notes) -> House:
    """Return the house style."""
    default = default_house(notes.units)
    house = default
    if table is not None:
        house = House(
            paper=Paper(table.paper) if table.paper else default.paper,
            sixteenths=bool(table.sixteenths),
            currency=read_text(table.currency, "house.currency", notes),
            skill=read_text(table.skill, "house.skill", notes) or default.skill,
        )
    if has_prices and not house.currency and not notes.is_spoiled("house.currency"):
        notes.add(
            "price-without-currency",
            "house.currency",
            "There are prices, but no currency is named.",
            'Name it in [house], such as currency = "USD".',
        )
    return house
