"""What a quilt costs in each of its sizes, how long it takes, and the least price of one on commission."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction

from quarterturn.design import Design, several
from quarterturn.materials.costs import CostLine, Costs, Floor, costs_of, price_floor
from quarterturn.materials.hours import Work, assumptions, hours_of, stage_times
from quarterturn.materials.shopping import show_money
from quarterturn.measure import Units, aligned, show_count
from quarterturn.proof import Pattern
from quarterturn.proof.work import tasks_of
from quarterturn.publish.tables import csv_text
from quarterturn.publish.wording import by_size, size_named
from quarterturn.publish.wording.names import named

WORK = {
    Work.STRIP: "a strip to cut",
    Work.CUT: "a piece to cut",
    Work.RING: "a ring to trace and hollow out",
    Work.SHAPE: "a shape to back and cut out",
    Work.PLACING: "a shape to centre and fuse down",
    Work.STITCHING: "an inch of edge to stitch",
    Work.APART: "a master to cut once",
    Work.CUT_AWAY: "a piece to cut away behind",
    Work.TRIM: "a piece to trim",
    Work.SEAM: "a seam to pin and press",
    Work.SEAM_INCH: "an inch of seam to sew",
    Work.BORDER: "a border strip",
    Work.LAYERING: "a square yard to layer and baste",
    Work.QUILTING: "a square yard to quilt",
    Work.BINDING: "an inch of edge to bind",
    Work.OTHER: "a thing to lay, label or set aside",
}


def is_priced(design: Design) -> bool:
    """Tell whether a design says anything of money."""
    money = design.selling.money
    prices = [money.rate, money.web, money.batting, money.thread]
    prices += [fabric.price for fabric in design.fabrics]
    prices += [notion.price for notion in design.selling.notions]
    return any(price is not None for price in prices)


def money_files(patterns: Sequence[Pattern]) -> Mapping[str, str]:
    """Return the papers by name, of all sizes."""
    return {"money.txt": "\n".join(map(money_text, patterns)), "costs.csv": costs_csv(patterns)}


def hours_by_stage(pattern: Pattern) -> dict[str, float]:
    """Return the hours of each stage, an estimate."""
    times = stage_times(tasks_of(pattern.steps), pattern.design.selling.money.minutes)
    return {time.stage: hours_of([time]) for time in times}


def floor_of(pattern: Pattern) -> Floor | None:
    """Return the least price of a pattern's quilt; None where no rate is stated."""
    costs = costs_of(pattern.design, pattern.materials)
    return price_floor(costs, sum(hours_by_stage(pattern).values()), pattern.design.selling.money)


def money_text(pattern: Pattern) -> str:
    """Return materials, hours and price of one size, with what they rest on."""
    design = pattern.design
    costs, hours = costs_of(design, pattern.materials), hours_by_stage(pattern)
    lines = [
        ", ".join(part for part in (design.title, size_named(pattern)) if part),
        f"Materials{_in(design)}",
        *aligned((_cost_row(design, line) for line in costs.lines), right=(1, 2, 3)),
        f"  in all {amount(costs.total)}{_without(design, costs)}",
        "Hours, an estimate",
        *aligned(((stage, f"{time:.1f}") for stage, time in hours.items()), right=(1,)),
        f"  in all {sum(hours.values()):.1f}",
        *_price(floor_of(pattern)),
        "Minutes that the hours rest on, assumed",
        *aligned(_assumed(pattern), right=(1, 2)),
    ]
    return "\n".join(lines) + "\n"


def amount(value: Fraction | None) -> str:
    """Print a sum of money to the hundredth, half of one up; nothing where there is none."""
    return "" if value is None else show_money(value)


def _in(design: Design) -> str:
    return f", in {design.house.currency}" if design.house.currency else ""


def _cost_row(design: Design, line: CostLine) -> tuple[str, ...]:
    return (
        item(design, line),
        _amount(design, line),
        amount(line.each),
        amount(line.cost),
    )


def item(design: Design, line: CostLine) -> str:
    """Return what a line of the costs is called."""
    if line.matches:
        return f"{line.key} to match {named(design, line.matches)}"
    if any(fabric.letter == line.key for fabric in design.fabrics):
        return named(design, line.key)
    return line.key


def _amount(design: Design, line: CostLine) -> str:
    if line.key == "web" and design.making.web_sheet:
        return show_count(int(line.amount), "sheet")
    return f"{float(line.amount):g} {_unit(design, line)}".rstrip()


def _unit(design: Design, line: CostLine) -> str:
    parcels = {each.letter: each.bought_as.name for each in design.fabrics if each.bought_as}
    if line.key in parcels:
        return parcels[line.key] if line.amount == 1 else several(parcels[line.key])
    if line.key == "web" or any(fabric.letter == line.key for fabric in design.fabrics):
        return "m" if design.units is Units.METRIC else "yd"
    return ""


def _without(design: Design, costs: Costs) -> str:
    names = [item(design, line) for line in costs.unpriced]
    return f"; no price is stated for {', '.join(names)}" if names else ""


def _price(floor: Floor | None) -> Iterator[str]:
    if floor is None:
        return
    yield "The least price of one on commission: (materials + hours × rate) × (1 + share)"
    rows = (
        ("materials", amount(floor.materials)),
        (f"{float(floor.hours):.1f} hours at {amount(floor.rate)}", amount(floor.work)),
        (f"share of {float(floor.share):.0%}", amount(floor.added)),
        ("price", amount(floor.price)),
    )
    yield from aligned(rows, right=(1,))


def _assumed(pattern: Pattern) -> Iterator[tuple[str, ...]]:
    for each in assumptions(tasks_of(pattern.steps), pattern.design.selling.money.minutes):
        yield WORK[each.work], f"{each.each:g}", f"× {each.amount:.4g}"


def costs_csv(patterns: Sequence[Pattern]) -> str:
    """Return what each thing costs, a column for each size, small to large; then the hours by stage and the price."""
    ordered = by_size(patterns)
    head = ("part", "what", *(pattern.design.size for pattern in ordered))
    tables = [dict(_cells(pattern)) for pattern in ordered]
    keys = dict.fromkeys(key for table in tables for key in table)
    return csv_text([head, *((*key, *(table.get(key, "") for table in tables)) for key in keys)])


def _cells(pattern: Pattern) -> Iterator[tuple[tuple[str, str], str]]:
    design = pattern.design
    costs, hours = costs_of(design, pattern.materials), hours_by_stage(pattern)
    for line in costs.lines:
        yield ("materials", item(design, line)), amount(line.cost)
    yield ("materials", "in all"), amount(costs.total)
    for stage, time in hours.items():
        yield ("hours", stage), f"{time:.1f}"
    yield ("hours", "in all"), f"{sum(hours.values()):.1f}"
    if floor := floor_of(pattern):
        yield ("price", "at least"), amount(floor.price)
