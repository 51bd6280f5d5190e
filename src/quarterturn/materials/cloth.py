"""The cutting plan of one fabric: joined strips first, then pieces in strips, and the lengths for a backing."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import count, repeat

from quarterturn.design import Direction, Fabric, LongCut, Making
from quarterturn.materials import bounds
from quarterturn.materials.backing import backing_panels
from quarterturn.materials.kinds import Kind, kind_of
from quarterturn.materials.lengthwise import Band, bands_of
from quarterturn.materials.model import ClothPlan, JoinedRun, PanelGroup, StripGroup
from quarterturn.materials.runs import (
    Run,
    binding_run,
    border_runs,
    joined_run,
    least_of_borders,
    length_of_runs,
    separate_runs,
)
from quarterturn.materials.shelves import Shelf
from quarterturn.materials.shortest import shortest_strips
from quarterturn.materials.shrinkage import before_wash
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


def plan_bolt(fabric: Fabric, pieces: Sequence[Piece], making: Making, units: Units) -> ClothPlan:
    """Plan all that is cut from a fabric off the bolt; nothing is bought where nothing is cut.

    What is bought covers the cuts and the slack or the squaring, if more. Where the cloth is washed first, so much
    more is bought that this is left of it. On cloth without a direction a piece may lie either way; see
    `kinds.kind_of`. There, long pieces are joined from strips across the cloth or cut along it in one piece, as
    `making.borders` says.
    """
    demand = _demand(fabric, pieces)
    joined = _planned(fabric, demand, (), making, units)
    either = [p for p in demand.long if _may_turn(p, fabric)]
    if not either or making.borders is LongCut.CROSSWISE:
        return joined
    choices, widths = [either], sorted({p.width for p in either})
    if making.borders is LongCut.CHEAPEST and len(widths) > 1:
        choices += [[p for p in either if p.width == width] for width in widths]
    ways = [_planned(fabric, demand, choice, making, units) for choice in choices]
    along = min(ways, key=lambda plan: (plan.bought, plan.cut_length))
    if making.borders is LongCut.LENGTHWISE or along.bought < joined.bought:
        return replace(along, other_way=joined.bought)
    return replace(joined, other_way=along.bought)


def _may_turn(piece: Piece, fabric: Fabric) -> bool:
    return piece.grain is Grain.ANY and fabric.direction is Direction.NONE and piece.width <= fabric.width


def _planned(
    fabric: Fabric, demand: _Demand, along: Sequence[Piece], making: Making, units: Units
) -> ClothPlan:
    """Plan with some of the long pieces cut along the cloth, and the others joined."""
    usable, long = fabric.width, [piece for piece in demand.long if piece not in along]
    bindings = [binding_run(piece, usable, making.seam) for piece in demand.binding]
    runs = [*border_runs(long, usable, making.seam), *bindings]
    panels, unsewable = _panels(demand.backing, fabric, making.backing_seam)
    bands, kinds = bands_of(along, demand.kinds, usable)
    plan = shortest_strips(kinds, usable)
    strips, joined = _labelled(fabric.letter, usable, runs, bands, plan.shelves)
    given = length_of_runs(bindings) + _panel_length(panels)
    cut = _strip_length(strips) + _panel_length(panels)
    return ClothPlan(
        fabric=fabric.letter,
        usable_width=usable,
        strips=strips,
        runs=joined,
        panels=panels,
        cut_length=cut,
        squaring=making.squaring,
        bought=_to_buy(cut, fabric, making, units),
        lower_bound=given
        + sum((band.height for band in bands), Length(0))
        + plan.bound
        + least_of_borders(long, usable, making.seam),
        hand_rule=given
        + bounds.hand_rule(demand.kinds, usable)
        + length_of_runs(separate_runs(demand.long, usable, making.seam)),
        unplaced=(*demand.unplaced, *unsewable),
    )


def _to_buy(cut: Length, fabric: Fabric, making: Making, units: Units) -> Length:
    whole = cut + max(making.slack, making.squaring) if cut else cut
    return buy_up(before_wash(whole, fabric.shrink_along), units)


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


def _labelled(
    letter: str, usable: Length, runs: Sequence[Run], bands: Sequence[Band], shelves: Sequence[Shelf]
) -> tuple[tuple[StripGroup, ...], tuple[JoinedRun, ...]]:
    """Number the strips in cutting order: bands, then those to be joined, then the tallest."""
    numbers = map("{}s{}".format, repeat(letter), count(1))
    along = [_band(band, usable, numbers) for band in bands]
    whole = [StripGroup(next(numbers), run.height, run.strips, (), Length(0)) for run in runs]
    pairs = enumerate(zip(runs, whole, strict=True), 1)
    joined = tuple(joined_run(f"{letter}r{n}", strip.label, run, usable) for n, (run, strip) in pairs)
    return (*along, *whole, *_cut_strips(shelves, usable, numbers)), joined


def _band(band: Band, usable: Length, numbers: Iterator[str]) -> StripGroup:
    label = next(numbers)
    rest = tuple(_cut_strips(band.rest, usable - band.used, numbers))
    return StripGroup(label, band.height, 1, band.crosscuts, band.used, rest)


def _cut_strips(shelves: Sequence[Shelf], width: Length, numbers: Iterator[str]) -> Iterator[StripGroup]:
    for shelf in shelves:
        yield StripGroup(next(numbers), shelf.height, shelf.strips, shelf.crosscuts, width - shelf.room)


def _strip_length(strips: Sequence[StripGroup]) -> Length:
    return sum((group.height * group.strips for group in strips), Length(0))


def _panel_length(panels: Sequence[PanelGroup]) -> Length:
    return sum((group.cut_length * group.panels for group in panels), Length(0))
