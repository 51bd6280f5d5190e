"""The cutting plan of one fabric: strips that are decided on, joined strips, pieces in strips, backing lengths."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from quarterturn.design import Direction, Fabric, Joins, LongCut, Making
from quarterturn.materials import bounds
from quarterturn.materials.backing import backing_panels
from quarterturn.materials.ends import Joined, with_ends
from quarterturn.materials.kinds import Kind, kind_of
from quarterturn.materials.lengthwise import Band, bands_of
from quarterturn.materials.model import ClothPlan, JoinMethod, PanelGroup, StripGroup
from quarterturn.materials.naming import named_strips
from quarterturn.materials.pinned import at_own_height, pinned_strips, raised_to
from quarterturn.materials.runs import (
    Run,
    binding_run,
    border_runs,
    least_of_borders,
    length_of_runs,
    separate_runs,
)
from quarterturn.materials.shelves import Shelf, cutting_order, length_of
from quarterturn.materials.shortest import shortest_strips
from quarterturn.materials.shrinkage import before_wash
from quarterturn.materials.strips import EFFORT, Effort, StripPlan
from quarterturn.materials.strips.splitting import split_strips
from quarterturn.measure import Length, Units, buy_up
from quarterturn.pieces import Grain, Piece, Purpose

LONG_PURPOSES = (Purpose.BORDER, Purpose.COPING, Purpose.STRIP, Purpose.SASH)
"""What is sewn together from strips where it is longer than the cloth is wide, and need not lie lengthwise."""


@dataclass(frozen=True, slots=True)
class _Demand:
    """The pieces of a fabric by the way in which they are cut."""

    kinds: tuple[Kind, ...]
    long: tuple[Piece, ...]
    binding: tuple[Piece, ...]
    backing: tuple[Piece, ...]
    unplaced: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class _Task:
    """What is asked: the pieces of a fabric, and how they are to be cut."""

    fabric: Fabric
    demand: _Demand
    making: Making
    units: Units
    effort: Effort
    plain: bool

    def bought(self, cut: Length) -> Length:
        """Return what is bought where so much is cut: the slack or the squaring more, and what the wash takes."""
        wanted = cut + max(self.making.slack, self.making.squaring) if cut else cut
        return buy_up(before_wash(wanted, self.fabric.shrink_along), self.units)


def plan_bolt(
    fabric: Fabric,
    pieces: Sequence[Piece],
    making: Making,
    units: Units,
    effort: Effort = EFFORT,
    *,
    plain: bool = False,
) -> ClothPlan:
    """Plan all that is cut from a fabric off the bolt; nothing is bought where nothing is cut.

    What is bought covers the cuts and the slack or the squaring, if more.

    Where the cloth is washed first, so much more is bought that this is left of it.
    On cloth without a direction a piece may lie either way; see `kinds.kind_of`. There, long pieces are joined from
    strips across the cloth or cut along it in one piece, as `making.borders` says. A plain plan has no strips that are
    decided on, none that are split, and whole strips alone are joined.
    """
    free = replace(fabric, strips=(), strip_heights=())
    task = _Task(free, _demand(fabric, pieces), making, units, effort, plain)
    plan = _cheapest(task)
    if plain or fabric == free:
        return plan
    return replace(_cheapest(replace(task, fabric=fabric)), unpinned=plan.bought)


def _cheapest(task: _Task) -> ClothPlan:
    """Cut long pieces along the cloth or join them, as is wanted or takes less to buy."""
    making, fabric = task.making, task.fabric
    joined = _joined(task, ())
    either = [p for p in task.demand.long if _may_turn(p, fabric)]
    if not either or making.borders is LongCut.CROSSWISE:
        return joined
    choices, widths = [either], sorted({p.width for p in either})
    if making.borders is LongCut.CHEAPEST and len(widths) > 1:
        choices += [[p for p in either if p.width == width] for width in widths]
    ways = [_joined(task, choice) for choice in choices]
    along = min(ways, key=lambda plan: (plan.bought, plan.cut_length))
    if making.borders is LongCut.LENGTHWISE or along.bought < joined.bought:
        return replace(along, other_way=joined.bought)
    return replace(joined, other_way=along.bought)


def _joined(task: _Task, along: Sequence[Piece]) -> ClothPlan:
    """Join what is not cut along the cloth straight or on the diagonal, as is wanted or takes less to buy."""
    straight = _planned(task, along, JoinMethod.STRAIGHT)
    if not any(run.crosscuts and run.joins for run in straight.runs):
        return straight
    diagonal, joins = _planned(task, along, JoinMethod.DIAGONAL), task.making.joins
    if joins is Joins.DIAGONAL or (joins is Joins.CHEAPEST and diagonal.bought < straight.bought):
        return replace(diagonal, other_join=straight.bought)
    return replace(straight, other_join=diagonal.bought)


def _may_turn(piece: Piece, fabric: Fabric) -> bool:
    return piece.grain is Grain.ANY and fabric.direction is Direction.NONE and piece.width <= fabric.width


def _planned(task: _Task, along: Sequence[Piece], join: JoinMethod) -> ClothPlan:
    """Plan with some of the long pieces cut along the cloth, and the others joined in a way."""
    fabric, making, demand = task.fabric, task.making, task.demand
    usable, long = fabric.width, [piece for piece in demand.long if piece not in along]
    bindings = [binding_run(piece, usable, making.seam) for piece in demand.binding]
    runs = [*border_runs(long, usable, making.seam, join), *bindings]
    panels, unsewable = _panels(demand.backing, fabric, making.backing_seam)
    pinned, kinds = pinned_strips(fabric.strips, demand.kinds, usable, task.effort)
    bands, kinds = bands_of(along, raised_to(fabric.strip_heights, kinds), usable, task.effort)
    fixed = _panel_length(panels) + length_of(pinned) + sum((band.height for band in bands), Length(0))
    plan = _strips(task, kinds, fixed + length_of_runs(runs))
    shelves, bands = _at_own_height([*pinned, *plan.shelves], bands, demand.kinds)
    joined = _with_ends(task, runs, shelves, bands, fixed + plan.length)
    strips, sewn = named_strips(fabric.letter, usable, joined)
    least = length_of_runs(bindings) + least_of_borders(long, usable, making.seam, join)
    if length_of_runs(joined.runs) < length_of_runs(runs):
        least = length_of_runs(joined.runs)
    cut = _strip_length(strips) + _panel_length(panels)
    return ClothPlan(
        fabric=fabric.letter,
        usable_width=usable,
        strips=strips,
        runs=sewn,
        panels=panels,
        cut_length=cut,
        squaring=making.squaring,
        bought=task.bought(cut),
        lower_bound=fixed + plan.bound + least,
        hand_rule=length_of_runs(bindings)
        + _panel_length(panels)
        + bounds.hand_rule(demand.kinds, usable)
        + length_of_runs(separate_runs(demand.long, usable, making.seam, join)),
        unplaced=(*demand.unplaced, *unsewable),
    )


def _strips(task: _Task, kinds: tuple[Kind, ...], beside: Length) -> StripPlan:
    """Plan the strips for the pieces, and split some of them where less is bought for it."""
    usable = task.fabric.width
    plan = shortest_strips(kinds, usable, task.effort)
    if task.plain or task.fabric.strip_heights or not task.effort.rounds:
        return plan

    def bought(length: Length) -> Length:
        return task.bought(beside + length)

    return split_strips(kinds, usable, task.effort, plan, bought)


def _at_own_height(
    shelves: Iterable[Shelf], bands: Iterable[Band], kinds: Sequence[Kind]
) -> tuple[list[Shelf], list[Band]]:
    """Return strips and bands in cutting order, their pieces as high as they are."""
    lowered = [
        replace(band, rest=tuple(at_own_height(shelf, kinds) for shelf in band.rest)) for band in bands
    ]
    return sorted((at_own_height(shelf, kinds) for shelf in shelves), key=cutting_order), lowered


def _with_ends(
    task: _Task, runs: Sequence[Run], shelves: Sequence[Shelf], bands: Sequence[Band], beside: Length
) -> Joined:
    """Take ends of other strips into the runs, where less is bought for it."""
    if task.plain:
        return Joined(tuple(runs), tuple(shelves), tuple(bands))

    def bought(saved: Length) -> Length:
        return task.bought(beside + length_of_runs(runs) - saved)

    return with_ends(runs, shelves, bands, task.fabric.width, bought)


def _demand(fabric: Fabric, pieces: Sequence[Piece]) -> _Demand:
    def of(purpose: Purpose) -> tuple[Piece, ...]:
        return tuple(piece for piece in pieces if piece.purpose is purpose)

    strips = (piece for purpose in LONG_PURPOSES for piece in of(purpose))
    long = tuple(p for p in strips if p.length > fabric.width and p.grain is not Grain.LENGTHWISE)
    apart = (*long, *of(Purpose.BINDING), *of(Purpose.BACKING))
    kinds = [kind_of(piece, fabric.direction, fabric.width) for piece in pieces if piece not in apart]
    return _Demand(
        kinds=tuple(kind for kind in kinds if kind.positions),
        long=long,
        binding=of(Purpose.BINDING),
        backing=of(Purpose.BACKING),
        unplaced=tuple(kind.label for kind in kinds if not kind.positions),
    )


def _panels(
    sheets: Sequence[Piece], fabric: Fabric, seam: Length
) -> tuple[tuple[PanelGroup, ...], tuple[str, ...]]:
    """Return the panels of the sheets, and the labels of sheets that cannot be made."""
    turnable = fabric.direction is Direction.NONE
    ways = {sheet.label: backing_panels(sheet, fabric.width, seam, turnable) for sheet in sheets}
    return tuple(group for group in ways.values() if group), tuple(k for k, v in ways.items() if v is None)


def _strip_length(strips: Sequence[StripGroup]) -> Length:
    return sum((group.height * group.strips for group in strips), Length(0))


def _panel_length(panels: Sequence[PanelGroup]) -> Length:
    return sum((group.cut_length * group.panels for group in panels), Length(0))
