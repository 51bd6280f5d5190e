"""Papers for packing kits: a pick list, cut tickets, and a label that says what a kit holds and does not hold."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import partial

from quarterturn.design import Design, KitContent, Kits, counted, several
from quarterturn.materials.kits import (
    KitCloth,
    PickLine,
    Ticket,
    TicketLine,
    Tickets,
    kit_tickets,
    kits_cloth,
    pick_list,
)
from quarterturn.materials.shopping import show_bought
from quarterturn.measure import MM, Length, aligned, buy_up, show_cloth, show_count
from quarterturn.proof import Pattern
from quarterturn.publish.tables import csv_text, decimal
from quarterturn.publish.wording.names import length, named, rectangle, size_named
from quarterturn.publish.wording.requirements import other_needs
from quarterturn.publish.wording.web import web_amount, web_name

PICK_HEAD = (
    "fabric", "fabric name", "piece", "piece name", "in a kit", "kits", "in all", "length in", "width in",
    "length mm", "width mm",
)  # fmt: skip

CARE = (
    "A rotary cutter is very sharp: close it whenever you lay it down, and keep it from children.",
    "An iron burns: follow the times and the heat that the maker of the web gives, and test on a scrap.",
    "A quilt is not safe in the bed of a sleeping infant.",
)


@dataclass(frozen=True, slots=True)
class Packing:
    """All kits of a pattern, fabric by fabric."""

    pattern: Pattern
    kits: Kits
    cloth: tuple[KitCloth, ...]

    @property
    def ready_cut(self) -> bool:
        """Tell whether a kit holds pieces rather than lengths of cloth."""
        return self.kits.content is KitContent.PIECES

    def picks(self) -> Iterator[PickLine]:
        """Return all that goes into a kit, but for its web."""
        for cloth in self.cloth:
            yield from pick_list(cloth, self.ready_cut)

    def tickets(self, cloth: KitCloth) -> Tickets:
        """Return the tickets of one fabric."""
        return kit_tickets(cloth, self.kits, self.pattern.design.making.squaring)

    def web(self) -> Length:
        """Return the web of one kit, with the spares that its shapes have; nothing where it holds none."""
        if not self.kits.web:
            return Length(0)
        web = self.pattern.materials.web
        more = 1 + self.kits.spare if self.ready_cut else Length(1)
        if web.sheet:
            return math.ceil(web.sheets * more) * web.sheet
        return max(web.bought, buy_up(web.used_length * more, self.pattern.design.units))


def packing_of(pattern: Pattern, kits: Kits) -> Packing:
    """Plan the kits of a pattern."""
    return Packing(pattern, kits, tuple(kits_cloth(pattern.design, pattern.bill, kits)))


def kit_files(pattern: Pattern, kits: Kits) -> Mapping[str, str]:
    """Return the papers by name."""
    packing = packing_of(pattern, kits)
    return {
        "pick-list.csv": pick_list_csv(packing),
        "cut-tickets.txt": tickets_text(packing),
        "kit-label.txt": label_text(packing),
    }


def pick_list_csv(packing: Packing) -> str:
    """Return a row for all that goes into a kit, with sizes in inches and millimetres."""
    design = packing.pattern.design
    rows: list[tuple[str, ...]] = [
        (
            line.fabric, design.fabric(line.fabric).name, line.label, line.name, str(line.count), str(line.kits),
            str(line.total), *_sizes(line.length, line.width),
        )
        for line in packing.picks()
    ]  # fmt: skip
    if web := packing.web():
        rows.append(("", "", "web", "paper-backed fusible web", *_web_counts(packing, web)))
    return csv_text([PICK_HEAD, *rows])


def _web_counts(packing: Packing, web: Length) -> tuple[str, ...]:
    """Return the pieces of web in one kit, the kits, all pieces, and the sizes of one: sheets are pieces."""
    plan, kits = packing.pattern.materials.web, packing.kits.count
    each = int(web / plan.sheet) if plan.sheet else 1
    return str(each), str(kits), str(each * kits), *_sizes(plan.sheet or web, plan.web_width)


def _sizes(long: Length, wide: Length) -> tuple[str, str, str, str]:
    return decimal(long), decimal(wide), decimal(long / MM), decimal(wide / MM)


def tickets_text(packing: Packing) -> str:
    """Return for each fabric what all kits take, pooled and apart, and a ticket for each bolt."""
    lines = [_heading(packing), ""]
    for cloth in packing.cloth:
        lines += [*_sum(packing, cloth), *_tickets(packing, packing.tickets(cloth)), ""]
    return "\n".join(lines)


def _heading(packing: Packing) -> str:
    design = packing.pattern.design
    what = "cut to size" if packing.ready_cut else "cloth by the length"
    title = ", ".join(part for part in (design.title, size_named(packing.pattern)) if part)
    return f"{title}: cut tickets for {show_count(packing.kits.count, 'kit')}, {what}"


def _sum(packing: Packing, cloth: KitCloth) -> Iterator[str]:
    design = packing.pattern.design
    show = partial(show_cloth, units=design.units)
    yield named(design, cloth.fabric)
    if cloth.parcels:
        each, all_of_them = (counted(n, cloth.parcel) for n in (cloth.parcels, cloth.parcels * cloth.kits))
        yield f"  {each} for each kit, {all_of_them} in all, as they are bought"
        return
    yield (
        f"  {show(cloth.each)} for each kit, {show(cloth.apart)} in all; cut together {show(cloth.pooled)}, "
        f"{show(cloth.saved)} less"
        if cloth.saved > 0
        else f"  {show(cloth.each)} for each kit, {show(cloth.apart)} in all; cutting together saves nothing"
    )


def _tickets(packing: Packing, found: Tickets) -> Iterator[str]:
    design = packing.pattern.design
    for ticket in found.tickets:
        yield f"  bolt {ticket.number} of {show_cloth(ticket.bolt, design.units)}: straighten the end, then cut"
        yield from aligned((_ticket_row(design, line) for line in ticket.lines), indent="    ", right=(0,))
        yield f"    {_left(design, ticket)} left"
    for line in found.too_long:
        yield f"  no bolt is long enough for ({line.count}) {line.label}, {length(design, line.height)} high"


def _ticket_row(design: Design, line: TicketLine) -> tuple[str, ...]:
    cuts = ", ".join(
        f"{cut.count} {cut.piece} {rectangle(design, cut.along, cut.across)}" for cut in line.crosscuts
    )
    return (
        f"({line.count})",
        line.label,
        length(design, line.height),
        f"each cut into {cuts}" if cuts else "whole",
    )


def _left(design: Design, ticket: Ticket) -> str:
    return length(design, ticket.left)


def label_text(packing: Packing) -> str:
    """Return the label of a kit: what it is, what it holds, what it does not hold, and how to take care."""
    pattern, kits = packing.pattern, packing.kits
    design, setting = pattern.design, pattern.setting
    lines = [
        ", ".join(part for part in (f"{design.title}: kit", size_named(pattern)) if part),
        ", ".join(word for word in (design.maker, edition(design), design.contact) if word),
        kits.label,
        f"Finished quilt {rectangle(design, setting.width, setting.height)}",
        "",
        "In this kit",
        *_held(packing),
        "",
        "Not in this kit, and needed",
        *(f"  {line}" for line in supply_list(packing)),
        "",
        *CARE,
    ]
    return "\n".join(line for number, line in enumerate(lines) if line or number > 3) + "\n"


def edition(design: Design) -> str:
    """Return the number and the version of the pattern, as far as they are stated."""
    words = (
        f"pattern {design.number}" if design.number else "",
        f"version {design.version}" if design.version else "",
    )
    return " ".join(word for word in words if word)


def _held(packing: Packing) -> Sequence[str]:
    design = packing.pattern.design
    rows = [_held_row(packing, line) for line in packing.picks()]
    if web := packing.web():
        plan = packing.pattern.materials.web
        name = web_name(design, plan)
        rows.append(("(1)", "", f"{name[0].lower()}{name[1:]}", web_amount(design, plan, web)))
    return aligned(rows, right=(0,))


def _held_row(packing: Packing, line: PickLine) -> tuple[str, ...]:
    design = packing.pattern.design
    if any(each.fabric == line.fabric and each.parcels for each in packing.cloth):
        name = line.name if line.count == 1 else several(line.name)
        size = rectangle(design, line.length, line.width)
        return f"({line.count})", line.label, f"{name}, {named(design, line.fabric)}", size
    if not packing.ready_cut:
        return (
            f"({line.count})",
            line.label,
            named(design, line.fabric),
            show_cloth(line.length, design.units),
        )
    size = rectangle(design, line.width, line.length)
    return f"({line.count})", line.label, f"{line.name}, {named(design, line.fabric)}", size


def supply_list(packing: Packing) -> tuple[str, ...]:
    """Return what a quilt takes and a kit does not hold: all that is required, less the kit."""
    pattern, kits = packing.pattern, packing.kits
    design = pattern.design
    held = {cloth.fabric for cloth in packing.cloth}
    missing = [
        f"{show_bought(plan, design.units)} of {named(design, plan.fabric)}"
        for plan in pattern.materials.cloth
        if plan.fabric not in held
    ]
    if not kits.backing and design.backing_fabric in held:
        missing.append(f"{_backing(pattern)} of {named(design, design.backing_fabric)} for the backing")
    others = (need for need in other_needs(pattern) if not (kits.web and need.use == "rings"))
    notions = (f"{each.count} {each.name}" for each in design.selling.notions)
    return (*missing, *(f"{need.amount}: {need.what}" for need in others), *notions)


def _backing(pattern: Pattern) -> str:
    design = pattern.design
    plan = pattern.materials.plan(design.backing_fabric)
    cut = sum((group.cut_length * group.panels for group in plan.panels), Length(0))
    return show_cloth(buy_up(cut + design.making.slack, design.units), design.units)
