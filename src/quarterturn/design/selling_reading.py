"""Read money, notions, kits and the class, filling in the defaults."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import fields
from fractions import Fraction
from typing import TYPE_CHECKING

from quarterturn.design import limits
from quarterturn.design.cloth import check_count
from quarterturn.design.habits import read_count
from quarterturn.design.keys import dotted
from quarterturn.design.model import Fabric
from quarterturn.design.notes import Notes
from quarterturn.design.percent import read_number, read_percent
from quarterturn.design.selling import (
    KitContent,
    Kits,
    Lesson,
    Minutes,
    Money,
    Notion,
    Selling,
    default_kits,
    default_money,
)
from quarterturn.design.words import read_name, read_text

if TYPE_CHECKING:
    from quarterturn.design.file import DesignFile
    from quarterturn.design.selling_tables import ClassTable, KitsTable, MinutesTable, MoneyTable, NotionTable


def read_selling(file: DesignFile, notes: Notes) -> Selling:
    """Return what is sold. Where a value is bad it is noted, and the default stands in."""
    return Selling(
        money=_money(file.money, notes) if file.money else default_money(notes.units),
        notions=_notions(file.notions or [], notes),
        kits=_kits(file.kits, notes) if file.kits else None,
        lesson=_lesson(file.lesson, notes) if file.lesson else None,
    )


def has_prices(selling: Selling, fabrics: Iterable[Fabric]) -> bool:
    """Tell whether anything has a price, so that a currency is needed."""
    money = selling.money
    prices = [money.rate, money.web, money.batting, money.thread]
    prices += [notion.price for notion in selling.notions]
    prices += [fabric.price for fabric in fabrics]
    return any(price is not None for price in prices)


def _money(table: MoneyTable, notes: Notes) -> Money:
    rate, web, batting, thread = (
        read_number(getattr(table, name), f"money.{name}", limits.HIGHEST_PRICE, notes)
        for name in ("rate", "web", "batting", "thread")
    )
    return Money(
        rate=rate,
        share=read_percent(table.share, "money.share", limits.HIGHEST_SHARE, notes),
        web=web,
        batting=batting,
        thread=thread,
        spool=notes.length(table.spool, "money.spool", limits.SPOOL) or default_money(notes.units).spool,
        minutes=_minutes(table.minutes, notes) if table.minutes else Minutes(),
    )


def _minutes(table: MinutesTable, notes: Notes) -> Minutes:
    read = {
        field.name: read_number(
            getattr(table, field.name), f"money.minutes.{field.name}", limits.MOST_MINUTES, notes
        )
        for field in fields(Minutes)
    }
    return Minutes(**{name: value for name, value in read.items() if value is not None})


def _notions(tables: list[NotionTable], notes: Notes) -> tuple[Notion, ...]:
    numbered = {str(index): table for index, table in enumerate(tables)}
    return tuple(
        _notion(table, dotted("notions", index), notes)
        for index, table in check_count(numbered, "notions", limits.MOST_NOTIONS, notes)
    )


def _notion(table: NotionTable, key: str, notes: Notes) -> Notion:
    return Notion(
        name=read_name(table.name, f"{key}.name", 'Say what it is: name = "square-up ruler".', notes),
        count=read_count(table.count, f"{key}.count", 1, limits.MOST_SPARES, notes),
        price=read_number(table.price, f"{key}.price", limits.HIGHEST_PRICE, notes),
    )


def _kits(table: KitsTable, notes: Notes) -> Kits:
    if table.count is None:
        notes.missing("kits.count", "Say how many kits: count = 12.")
    default = default_kits(notes.units)
    return Kits(
        count=read_count(table.count, "kits.count", 1, limits.MOST_KITS, notes),
        content=KitContent(table.content) if table.content else default.content,
        spare=read_percent(table.spare, "kits.spare", 100, notes, default.spare),
        web=default.web if table.web is None else table.web,
        backing=default.backing if table.backing is None else table.backing,
        bolt=notes.length(table.bolt, "kits.bolt", limits.BOLT) or default.bolt,
        label=read_text(table.label, "kits.label", notes),
        size=read_text(table.size, "kits.size", notes),
    )


def _lesson(table: ClassTable, notes: Notes) -> Lesson:
    for name, remedy in (("students", "students = 8"), ("hours", "hours = 6")):
        if getattr(table, name) is None:
            notes.missing(f"class.{name}", f"Say how many: {remedy}.")
    default = Lesson(1, Fraction(6))
    hours = read_number(table.hours, "class.hours", limits.MOST_HOURS, notes)
    pace = read_number(table.pace, "class.pace", limits.SLOWEST_PACE, notes)
    showing = read_number(table.showing, "class.showing", limits.MOST_MINUTES, notes)
    masters, irons, cutters = (
        read_count(getattr(table, name), f"class.{name}", 0, limits.MOST_SPARES, notes)
        for name in ("masters", "irons", "cutters")
    )
    return Lesson(
        students=read_count(table.students, "class.students", 1, limits.MOST_STUDENTS, notes),
        hours=hours or default.hours,
        masters=masters,
        pace=pace or default.pace,
        irons=irons,
        cutters=cutters,
        showing=default.showing if showing is None else showing,
        homework=None if table.homework is None else tuple(table.homework),
        size=read_text(table.size, "class.size", notes),
    )
