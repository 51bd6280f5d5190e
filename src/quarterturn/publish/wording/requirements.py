"""What must be bought, read off the materials."""

from __future__ import annotations

import math
from dataclasses import dataclass

from quarterturn.design import Fabric
from quarterturn.materials import (
    ClothPlan,
    StitchSum,
    show_bought,
)
from quarterturn.materials.backing import WIDE, in_one_width, panels_length
from quarterturn.materials.shrinkage import to_buy
from quarterturn.materials.thread import bobbins_to_wind
from quarterturn.measure import MM, Units, show_cloth, show_count
from quarterturn.pieces import Purpose
from quarterturn.proof import Pattern
from quarterturn.publish.wording.names import fabric_name, length, named, rectangle
from quarterturn.publish.wording.parcels import parcel_note
from quarterturn.publish.wording.plans import may_turn
from quarterturn.publish.wording.web import web_amount, web_name

PURPOSES = {
    Purpose.BORDER: "borders",
    Purpose.COPING: "coping",
    Purpose.PANEL: "panels",
    Purpose.STRIP: "strips",
    Purpose.SASH: "sashing",
    Purpose.SIDE_TRIANGLES: "side triangles",
    Purpose.CORNER_TRIANGLES: "corner triangles",
    Purpose.SQUARE: "plain squares",
    Purpose.CORNERSTONE: "cornerstones",
    Purpose.GROUND: "ground squares",
    Purpose.SHAPE: "shapes",
    Purpose.BIAS: "binding",
    Purpose.BINDING: "binding",
    Purpose.BACKING: "backing",
}


@dataclass(frozen=True, slots=True)
class Need:
    """A line of the requirement table."""

    what: str
    use: str
    amount: str
    note: str


def cloth_needs(pattern: Pattern) -> tuple[Need, ...]:
    """Return the fabrics in order of the design, with the slack stated."""
    return tuple(_cloth(pattern, plan) for plan in pattern.materials.cloth)


def _cloth(pattern: Pattern, plan: ClothPlan) -> Need:
    design = pattern.design
    has = {piece.purpose for piece in pattern.bill.of_fabric(plan.fabric)}
    uses = ", ".join(word for purpose, word in PURPOSES.items() if purpose in has)
    fabric, notes = design.fabric(plan.fabric), []
    if plan.is_off_the_bolt or not plan.parcels:
        wide, slack = length(design, plan.usable_width), length(design, plan.slack)
        notes.append(
            f"usable width {wide}; includes {slack} beyond the cuts{_washing(fabric)}{_wide(pattern, plan)}"
        )
    if plan.parcels:
        notes.append(parcel_note(pattern, fabric, plan))
    return Need(fabric_name(fabric), uses, show_bought(plan, design.units), "; ".join(notes))


def _washing(fabric: Fabric) -> str:
    """Return that a fabric is washed before it is cut, and what that is taken to cost; nothing where it is not."""
    if not fabric.shrink_along and not fabric.shrink_across:
        return ""
    along, across = (f"{float(share * 100):g} %" for share in (fabric.shrink_along, fabric.shrink_across))
    return (
        f" and the wash; wash it first, it is taken to lose {along} of its length and {across} of its width"
    )


def other_needs(pattern: Pattern) -> tuple[Need, ...]:
    """Return batting, web and thread."""
    design, materials = pattern.design, pattern.materials
    over = length(design, design.making.overage)
    size = rectangle(design, materials.batting_width, materials.batting_height)
    web = materials.web
    return (
        Need("Batting", "", size, f"{over} beyond the finished quilt on each side"),
        Need(
            web_name(design, web),
            "rings",
            web_amount(design, web),
            "lightweight",
        ),
        *(_thread(pattern, line) for line in materials.stitching),
    )


def _thread(pattern: Pattern, line: StitchSum) -> Need:
    design, stitch = pattern.design, pattern.design.making.stitch
    bobbins = bobbins_to_wind(stitch, (line,))[line.fabric]
    return Need(
        f"Thread to match {named(design, line.fabric)}",
        "edge stitching",
        f"about {thread_length(line.thread, design.units)}",
        f"an estimate, needle and bobbin together; {stitch.thread}; wind {show_count(bobbins, 'bobbin')} of it",
    )


def thread_length(inches: float, units: Units) -> str:
    """Print a length of thread: up to whole yards or metres, as it is bought."""
    if units is Units.METRIC:
        metres = max(1, math.ceil(inches / float(MM) / 1000))
        return f"{metres} m"
    yards = max(1, math.ceil(inches / 36))
    return f"{yards} {'yard' if yards == 1 else 'yards'}"


def width_line(pattern: Pattern) -> str:
    """Return the line that stands below the table: usable width and seam allowance."""
    design = pattern.design
    usable = usable_widths(pattern)
    seam = f"eam allowance {length(design, design.making.seam)}, included in all cut sizes; fused shapes have none."
    return f"Usable width of fabric {usable}; s{seam}" if usable else f"S{seam}"


def usable_widths(pattern: Pattern) -> str:
    """Return the widths that plans count on; nothing where no cloth comes off the bolt."""
    bolts = (plan for plan in pattern.materials.cloth if plan.is_off_the_bolt or not plan.parcels)
    return " and ".join(
        length(pattern.design, each) for each in sorted({plan.usable_width for plan in bolts})
    )


def _wide(pattern: Pattern, plan: ClothPlan) -> str:
    """Tell what a wide backing would take where it needs no seam, and the panels have one; nothing elsewhere.

    What is then left to buy of this cloth is a bill of its own: the other cuts, with their own slack.
    """
    design, making = pattern.design, pattern.design.making
    group = next((group for group in plan.panels if group.panels > 1), None)
    if group is None:
        return ""
    along = in_one_width(pattern.bill.piece(group.piece), design.units, may_turn(pattern, plan))
    if along is None:
        return ""
    shrinks, units = design.fabric(plan.fabric).shrink_along, design.units
    others = plan.cut_length - sum(map(panels_length, plan.panels))
    one, rest = (
        show_cloth(to_buy(cut, 1, making.squaring, making.slack, shrinks, units).bought, units)
        for cut in (along, others)
    )
    then = f", and then only {rest} of this" if others else ""
    return (
        f"; without a seam, the backing takes {one} of cloth {length(design, WIDE[design.units])} wide{then}"
    )
