"""What is said of cutting plans: what the sewer needs beside each, and how good they are, on the last page."""

from __future__ import annotations

import math
from collections.abc import Iterator

from quarterturn.design import Design, Direction
from quarterturn.materials import ClothPlan, JoinMethod, PanelGroup, StripGroup, gap_percent, show_bought
from quarterturn.materials.backing import backing_ways
from quarterturn.materials.shrinkage import to_buy
from quarterturn.measure import inches, show_cloth
from quarterturn.proof import Pattern
from quarterturn.publish.wording.names import length, listed, plural
from quarterturn.publish.wording.parcels import PARCELS_COMPARED, parcels_bound, parcels_line, parcels_taken
from quarterturn.publish.wording.web import web_row

TIGHT = inches(0, 1, 2)
"""A strip with less than this left is told to the sewer (trade check 29)."""

PLAN_HEADS = ("Of", "The plan takes", "What is proved", "The plain rule takes")


def plan_line(pattern: Pattern, plan: ClothPlan) -> str:
    """Return how good a cutting plan is. What a plan is, and the plain rule, is told once by `plans_explained`."""
    if not plan.parcels:
        return _bolt_line(pattern, plan)
    said = [_bolt_line(pattern, plan)] if plan.is_off_the_bolt else []
    return " ".join(filter(None, (parcels_line(pattern, plan), *said)))


def _bolt_line(pattern: Pattern, plan: ClothPlan) -> str:
    plain = length(pattern.design, plan.hand_rule)
    rule = (
        f"the plain rule would take {plain}"
        if plan.hand_rule > plan.cut_length
        else "the plain rule takes as much"
    )
    return (
        f"{_bought(pattern, plan)} {_nearness(pattern, plan)}; {rule}."
        f"{_split(plan)}{_backing(pattern, plan)}{_other_ways(pattern, plan)}{_tight(pattern, plan)}"
    )


def _bought(pattern: Pattern, plan: ClothPlan) -> str:
    design = pattern.design
    bought = show_cloth(plan.bought, design.units)
    return f"Bought {bought}: cuts {length(design, plan.cut_length)}, slack {length(design, plan.slack)}."


def _other_ways(pattern: Pattern, plan: ClothPlan) -> str:
    return f"{_other_way(pattern, plan)}{_other_join(pattern, plan)}{_unpinned(pattern, plan)}"


def beside_plan(pattern: Pattern, plan: ClothPlan) -> str:
    """Return what the sewer needs beside a cutting plan: what is bought for it, and where it leaves nothing over."""
    said = [parcels_taken(plan)] if plan.parcels else []
    if plan.is_off_the_bolt or not plan.parcels:
        panels = "".join(f" The backing takes {_lengths(pattern.design, group)}." for group in plan.panels)
        said.append(f"{_bought(pattern, plan)}{panels}{_tight(pattern, plan)}")
    return " ".join(filter(None, said))


def plan_rows(pattern: Pattern) -> Iterator[tuple[str, ...]]:
    """Return how good each cutting plan is, and that of the web."""
    for plan in pattern.materials.cloth:
        if plan.parcels and plan.parcels.bought:
            taken = show_bought(plan, pattern.design.units)
            yield f"Fabric {plan.fabric}", taken, parcels_bound(plan.parcels), ""
        if plan.is_off_the_bolt or not plan.parcels:
            taken, plain = (length(pattern.design, each) for each in (plan.cut_length, plan.hand_rule))
            yield f"Fabric {plan.fabric}", taken, _nearness(pattern, plan), plain
    if pattern.materials.web.used_length:
        yield web_row(pattern)


def plans_compared(pattern: Pattern) -> tuple[str, ...]:
    """Return what the table of plans rests on, and what other ways to cut would take."""
    ways = (
        f"Fabric {plan.fabric}:{said}"
        for plan in pattern.materials.cloth
        if (said := f"{_split(plan)}{_turned_over(pattern, plan)}{_other_ways(pattern, plan)}")
    )
    return (*plans_explained(pattern), *ways)


def _turned_over(pattern: Pattern, plan: ClothPlan) -> str:
    """Tell the backing both ways where there is another."""
    ways = (_panels(pattern, plan, group) for group in plan.panels)
    return "".join(said for said in ways if "turned" in said)


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


def plans_explained(pattern: Pattern) -> tuple[str, ...]:
    """Return what is meant by what is said of plans."""
    has_parcels = any(plan.parcels for plan in pattern.materials.cloth)
    return (
        "Slack is what is bought beyond the cuts, for straightening and a miscut. A plan cuts strips across the cloth, "
        "and from each strip pieces side by side in one row; what is said of its length holds for all such plans with "
        "the same strips joined and the same lengths cut off, or cut along the cloth. By the plain rule each kind of "
        "piece has strips of its own.",
        *((PARCELS_COMPARED,) if has_parcels else ()),
    )


def _backing(pattern: Pattern, plan: ClothPlan) -> str:
    """Tell the backing both ways: its panels as they run, and as they would run turned."""
    return "".join(_panels(pattern, plan, group) for group in plan.panels)


def _panels(pattern: Pattern, plan: ClothPlan, group: PanelGroup) -> str:
    design, turnable = pattern.design, may_turn(pattern, plan)
    ways = backing_ways(pattern.bill.piece(group.piece), plan.usable_width, group.seam, turnable)
    said = _lengths(design, group)
    for other in ways:
        if other.runs_down != group.runs_down:
            if (other.panels, other.cut_length) == (group.panels, group.cut_length):
                return f" The backing takes {said}, and as much if it is turned."
            return f" The backing takes {said}; turned, it would take {_lengths(design, other)}."
    return f" The backing takes {said}."


def may_turn(pattern: Pattern, plan: ClothPlan) -> bool:
    """Tell whether the cloth of a plan may lie either way."""
    return pattern.design.fabric(plan.fabric).direction is Direction.NONE


def _lengths(design: Design, group: PanelGroup) -> str:
    seam = "" if group.panels == 1 else f", {'vertical' if group.runs_down else 'horizontal'} seams"
    each = f"({group.panels}) {plural(group.panels, 'length')} of {length(design, group.cut_length)}"
    return f"{each}{seam if group.panels != 2 else seam.removesuffix('s')}"


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
