"""What must be bought, read off the materials."""

from __future__ import annotations

import math
from dataclasses import dataclass

from quarterturn.design import Design, Direction, Fabric
from quarterturn.materials import (
    ClothPlan,
    JoinMethod,
    PanelGroup,
    StitchSum,
    StripGroup,
    gap_percent,
    show_bought,
)
from quarterturn.materials.backing import WIDE, backing_ways, in_one_width, panels_length
from quarterturn.materials.shrinkage import to_buy
from quarterturn.materials.thread import bobbins_to_wind
from quarterturn.measure import MM, Units, inches, show_cloth, show_count
from quarterturn.pieces import Purpose
from quarterturn.proof import Pattern
from quarterturn.publish.wording.names import fabric_name, length, listed, named, plural, rectangle
from quarterturn.publish.wording.parcels import parcel_note, parcels_line
from quarterturn.publish.wording.web import web_amount, web_name

TIGHT = inches(0, 1, 2)
"""A strip with less than this left is told to the sewer (trade check 29)."""

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
    bolts = (plan for plan in pattern.materials.cloth if plan.is_off_the_bolt or not plan.parcels)
    widths = sorted({plan.usable_width for plan in bolts})
    usable = " and ".join(length(design, width) for width in widths)
    seam = length(design, design.making.seam)
    if not widths:
        return f"Seam allowance {seam}, included in all cut sizes; fused shapes have none."
    return f"Usable width of fabric {usable}; seam allowance {seam}, included in all cut sizes; fused shapes have none."


def plan_line(pattern: Pattern, plan: ClothPlan) -> str:
    """Return how good a cutting plan is. What a plan is, and the plain rule, is told once by `plans_explained`."""
    if not plan.parcels:
        return _bolt_line(pattern, plan)
    said = [_bolt_line(pattern, plan)] if plan.is_off_the_bolt else []
    return " ".join(filter(None, (parcels_line(pattern, plan), *said)))


def _bolt_line(pattern: Pattern, plan: ClothPlan) -> str:
    design = pattern.design
    cuts, slack, plain = (length(design, value) for value in (plan.cut_length, plan.slack, plan.hand_rule))
    rule = (
        f"the plain rule would take {plain}"
        if plan.hand_rule > plan.cut_length
        else "the plain rule takes as much"
    )
    bought = show_cloth(plan.bought, design.units)
    return (
        f"Bought {bought}: cuts {cuts}, slack {slack}. {_nearness(pattern, plan)}; {rule}."
        f"{_split(plan)}{_backing(pattern, plan)}{_other_way(pattern, plan)}{_other_join(pattern, plan)}"
        f"{_unpinned(pattern, plan)}{_tight(pattern, plan)}"
    )


def _split(plan: ClothPlan) -> str:
    """State where what is said of a plan holds for more plans than those of one row to a strip."""
    if not any(group.splits for group, _ in plan.groups):
        return ""
    return " Here pieces may lie below one another in a strip too, in every plan compared."


def _nearness(pattern: Pattern, plan: ClothPlan) -> str:
    """Return how near a plan is to the shortest: its proved bound, and by how much it may be longer.

    Where no plan could buy less, that alone is told.
    """
    design, making = pattern.design, pattern.design.making
    if plan.cut_length <= plan.lower_bound:
        return "No plan is shorter"
    shrinks = design.fabric(plan.fabric).shrink_along
    if (
        to_buy(plan.lower_bound, 1, making.squaring, making.slack, shrinks, design.units).bought
        >= plan.bought
    ):
        return f"No plan needs less than {show_cloth(plan.bought, design.units)}"
    tenths = math.ceil(10 * gap_percent(plan) - 1e-9)
    least = length(design, plan.lower_bound)
    return f"No plan can be shorter than {least}: this one is at most {tenths / 10:g} % longer"


def plans_explained() -> str:
    """Return what the lines below cutting plans rest on."""
    return (
        "Slack is what is bought beyond the cuts, for straightening and a miscut. A plan cuts strips across the cloth, "
        "and from each strip pieces side by side in one row; what is said of its length holds for all such plans with "
        "the same strips joined and the same lengths cut off, or cut along the cloth. By the plain rule each kind of "
        "piece has strips of its own."
    )


def _backing(pattern: Pattern, plan: ClothPlan) -> str:
    """Tell the backing both ways: its panels as they run, and as they would run turned."""
    return "".join(_panels(pattern, plan, group) for group in plan.panels)


def _panels(pattern: Pattern, plan: ClothPlan, group: PanelGroup) -> str:
    design, turnable = pattern.design, _may_turn(pattern, plan)
    ways = backing_ways(pattern.bill.piece(group.piece), plan.usable_width, group.seam, turnable)
    said = _lengths(design, group)
    for other in ways:
        if other.runs_down != group.runs_down:
            if (other.panels, other.cut_length) == (group.panels, group.cut_length):
                return f" The backing takes {said}, and as much if it is turned."
            return f" The backing takes {said}; turned, it would take {_lengths(design, other)}."
    return f" The backing takes {said}."


def _may_turn(pattern: Pattern, plan: ClothPlan) -> bool:
    """Tell whether the cloth of a plan may lie either way."""
    return pattern.design.fabric(plan.fabric).direction is Direction.NONE


def _lengths(design: Design, group: PanelGroup) -> str:
    seam = "" if group.panels == 1 else f", {'vertical' if group.runs_down else 'horizontal'} seams"
    each = f"({group.panels}) {plural(group.panels, 'length')} of {length(design, group.cut_length)}"
    return f"{each}{seam if group.panels != 2 else seam.removesuffix('s')}"


def _wide(pattern: Pattern, plan: ClothPlan) -> str:
    """Tell what a wide backing would take where it needs no seam, and the panels have one; nothing elsewhere.

    What is then left to buy of this cloth is a bill of its own: the other cuts, with their own slack.
    """
    design, making = pattern.design, pattern.design.making
    group = next((group for group in plan.panels if group.panels > 1), None)
    if group is None:
        return ""
    along = in_one_width(pattern.bill.piece(group.piece), design.units, _may_turn(pattern, plan))
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


def _other_join(pattern: Pattern, plan: ClothPlan) -> str:
    """State how long pieces are joined, and what the other way would take."""
    if plan.other_join is None:
        return ""
    straight = any(run.crosscuts and run.method is JoinMethod.STRAIGHT for run in plan.runs)
    way, else_ = ("straight", "on the diagonal") if straight else ("on the diagonal", "straight")
    if plan.other_join == plan.bought:
        return f" Their joins are {way}; {else_}, they take as much."
    other = show_cloth(plan.other_join, pattern.design.units)
    return f" Their joins are {way}; {else_}, the best plan found takes {other}."


def _unpinned(pattern: Pattern, plan: ClothPlan) -> str:
    """State what the strips that the designer has decided on cost."""
    if plan.unpinned is None:
        return ""
    said = " Some strips are cut as the designer has decided, in every plan compared; without that, "
    if plan.unpinned == plan.bought:
        return f"{said}as much would be bought."
    return f"{said}{show_cloth(plan.unpinned, pattern.design.units)} would be bought."


def _other_way(pattern: Pattern, plan: ClothPlan) -> str:
    """State how long pieces are cut, and what the best plan found for the other way takes.

    That plan is not proved to be the shortest of its way, so it is not told as what they need.
    """
    if plan.other_way is None:
        return ""
    along = any(cut.across > plan.usable_width for group in plan.strips for cut in group.crosscuts)
    way = "cut along the cloth, without joins" if along else "joined from strips"
    else_ = "joined" if along else "cut along the cloth"
    if plan.other_way == plan.bought:
        return f" Long pieces are {way}; {else_}, they take as much."
    other = show_cloth(plan.other_way, pattern.design.units)
    return f" Long pieces are {way}; {else_}, the best plan found takes {other}."


def _tight(pattern: Pattern, plan: ClothPlan) -> str:
    """Warn of strips that are filled to their end."""
    strips = [(g, width - g.used) for g, width in plan.groups if g.pieces and width - g.used < TIGHT]
    if not strips:
        return ""
    names = listed(
        [f"{_strip_named(pattern, g)} ({length(pattern.design, left)} left)" for g, left in strips]
    )
    return f" Cut exactly, for they are filled to their end, or almost: {names}."


def _strip_named(pattern: Pattern, group: StripGroup) -> str:
    """Return what strips are known by, which bear no label: their height, and what is cut from them."""
    pieces = listed([f"({cut.count}) {cut.piece}" for cut in group.pieces])
    return f"strips {length(pattern.design, group.height)} × WOF with {pieces}"
