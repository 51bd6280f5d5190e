"""Print money, notions, kits and the class as tables of a complete file, each that says anything."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator
from dataclasses import fields
from fractions import Fraction
from itertools import chain

from quarterturn.design.selling import Kits, Lesson, Money, Notion, Selling, default_money
from quarterturn.design.text import quote_long, quote_text
from quarterturn.measure import Units

Pair = tuple[str, str]


def selling_tables(selling: Selling, units: Units, sizes: Collection[str]) -> Iterator[str]:
    """Return the tables, each as text. The size that is sold is named where it is one of the other `sizes`."""
    if selling.money != default_money(units):
        yield _table("[money]", _money(selling.money, units))
        yield _table("[money.minutes]", _minutes(selling.money))
    for notion in selling.notions:
        yield _table("[[notions]]", _notion(notion))
    if selling.kits:
        yield _table("[kits]", chain(_kits(selling.kits, units), _size(selling.kits.size, sizes)))
    if selling.lesson:
        yield _table("[class]", chain(_lesson(selling.lesson), _size(selling.lesson.size, sizes)))


def write_number(value: Fraction) -> str:
    """Write a number as TOML: a whole one without a point."""
    return str(value.numerator) if value.denominator == 1 else repr(float(value))


def _table(header: str, pairs: Iterable[Pair]) -> str:
    return "\n".join([header, *(f"{key} = {value}" for key, value in pairs)])


def _priced(prices: dict[str, Fraction | None]) -> Iterator[Pair]:
    yield from ((name, write_number(price)) for name, price in prices.items() if price is not None)


def _money(money: Money, units: Units) -> Iterator[Pair]:
    yield from _priced({"rate": money.rate})
    yield "share", write_number(money.share * 100)
    yield from _priced({"web": money.web, "batting": money.batting, "thread": money.thread})
    yield "spool", quote_long(money.spool, units)


def _minutes(money: Money) -> Iterator[Pair]:
    for field in fields(money.minutes):
        yield field.name, write_number(getattr(money.minutes, field.name))


def _notion(notion: Notion) -> Iterator[Pair]:
    yield "name", quote_text(notion.name)
    yield "count", str(notion.count)
    yield from _priced({"price": notion.price})


def _size(size: str, sizes: Collection[str]) -> Iterator[Pair]:
    if size in sizes:
        yield "size", quote_text(size)


def _kits(kits: Kits, units: Units) -> Iterator[Pair]:
    yield "count", str(kits.count)
    yield "content", quote_text(kits.content.value)
    yield "spare", write_number(kits.spare * 100)
    yield "web", "true" if kits.web else "false"
    yield "backing", "true" if kits.backing else "false"
    yield "bolt", quote_long(kits.bolt, units)
    if kits.label:
        yield "label", quote_text(kits.label)


def _lesson(lesson: Lesson) -> Iterator[Pair]:
    yield "students", str(lesson.students)
    yield "hours", write_number(lesson.hours)
    yield "masters", str(lesson.masters)
    yield "pace", write_number(lesson.pace)
    yield "irons", str(lesson.irons)
    yield "cutters", str(lesson.cutters)
    yield "showing", write_number(lesson.showing)
    if lesson.homework is not None:
        yield "homework", f"[{', '.join(map(quote_text, lesson.homework))}]"
