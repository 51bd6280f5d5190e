"""What must be bought, read off the materials."""

from __future__ import annotations

import math
from dataclasses import dataclass

from quarterturn.design import Fabric
from quarterturn.materials import ClothPlan, JoinMethod, StitchSum
from quarterturn.materials.thread import bobbins_to_wind
from quarterturn.measure import MM, Units, inches, show_cloth, show_count
from quarterturn.pieces import Purpose
from quarterturn.proof import Pattern
from quarterturn.publish.wording.names import fabric_name, length, listed, named, rectangle

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
    wide, slack = length(design, plan.usable_width), length(design, plan.slack)
    note = f"usable width {wide}; includes {slack} beyond the cuts{_washing(design.fabric(plan.fabric))}"
    return Need(fabric_name(design.fabric(plan.fabric)), uses, show_cloth(plan.bought, design.units), note)


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
            f"Paper-backed fusible web, {length(design, web.web_width)} wide",
            "rings",
            show_cloth(web.bought, design.units),
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
    widths = sorted({plan.usable_width for plan in pattern.materials.cloth})
    usable = " and ".join(length(design, width) for width in widths)
    seam = length(design, design.making.seam)
    return f"Usable width of fabric {usable}; seam allowance {seam}, included in all cut sizes; fused shapes have none."


def plan_line(pattern: Pattern, plan: ClothPlan) -> str:
    """Return how good a cutting plan is."""
    lengths = (plan.cut_length, plan.bought, plan.slack, plan.lower_bound, plan.hand_rule)
    cuts, bought, slack, least, plain = (length(pattern.design, value) for value in lengths)
    split = any(group.splits for group, _ in plan.groups)
    rows = "pieces below one another where they fit" if split else "pieces side by side in one row to a strip"
    pinned = "" if plan.unpinned is None else "the strips that are decided on, "
    return (
        f"The cuts take {cuts}; {bought} is bought, so {slack} is slack, straightening included. With {pinned}the same "
        f"strips joined, the same lengths cut off and {rows}, no plan can need less "
        f"than {least}; each kind of piece in strips of its own would need {plain}."
        f"{_other_way(pattern, plan)}{_other_join(pattern, plan)}{_unpinned(pattern, plan)}{_tight(pattern, plan)}"
    )


def _other_join(pattern: Pattern, plan: ClothPlan) -> str:
    """State how long pieces are joined, and what the other way would take."""
    if plan.other_join is None:
        return ""
    other = length(pattern.design, plan.other_join)
    straight = any(run.crosscuts and run.method is JoinMethod.STRAIGHT for run in plan.runs)
    way, else_ = ("straight", "on the diagonal") if straight else ("on the diagonal", "straight")
    return f" Their joins are {way}; {else_}, they would need {other} bought."


def _unpinned(pattern: Pattern, plan: ClothPlan) -> str:
    """State what the strips that the designer has decided on cost."""
    if plan.unpinned is None:
        return ""
    other = length(pattern.design, plan.unpinned)
    return f" Some strips are cut as the designer has decided; without that, {other} would be bought."


def _other_way(pattern: Pattern, plan: ClothPlan) -> str:
    """State how long pieces are cut, and what the other way would take."""
    if plan.other_way is None:
        return ""
    other = length(pattern.design, plan.other_way)
    if any(cut.across > plan.usable_width for group in plan.strips for cut in group.crosscuts):
        return f" Long pieces are cut along the cloth, without joins; joined, they would need {other} bought."
    return f" Long pieces are joined from strips; cut along the cloth, they would need {other} bought."


def _tight(pattern: Pattern, plan: ClothPlan) -> str:
    """Warn of strips that are filled to their end."""
    strips = [(g, width - g.used) for g, width in plan.groups if g.pieces and width - g.used < TIGHT]
    if not strips:
        return ""
    names = listed([f"{g.label} ({length(pattern.design, left)} left)" for g, left in strips])
    return f" Cut exactly: strips {names} are filled almost to their end."
