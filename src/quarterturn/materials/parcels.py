"""The cutting plan of a fabric that is there in pieces: precuts, and what lies on the shelf.

As few pieces as possible are bought, and of those on the shelf only such are cut into as save something. Long pieces
and the binding are joined from strips as long as one of the pieces of cloth is wide or high.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from functools import partial
from itertools import count, repeat
from typing import TypeAlias

from quarterturn.design import Direction, Fabric, Joins, Making, Parcel
from quarterturn.materials.cloth import LONG_PURPOSES, plan_bolt
from quarterturn.materials.kinds import Kind, Position, kind_of
from quarterturn.materials.model import (
    ClothPlan,
    Crosscut,
    JoinedRun,
    JoinMethod,
    ParcelLayout,
    ParcelPlan,
    ParcelStock,
    StripGroup,
)
from quarterturn.materials.runs import Run, binding_run, border_runs, joined_run
from quarterturn.materials.stocking import Stocked, stocked
from quarterturn.materials.strips import EFFORT, Effort
from quarterturn.measure import Length, Units, cut_step, inches
from quarterturn.pieces import Grain, Piece, Purpose

OffBolt: TypeAlias = Callable[[Sequence[Piece]], ClothPlan]
"""Plans pieces of a fabric off the bolt."""

ENDLESS = inches(100_000)
"""Longer than any piece: cloth of this width would hold all positions."""


def plan_cloth(
    fabric: Fabric,
    pieces: Sequence[Piece],
    making: Making,
    units: Units,
    effort: Effort = EFFORT,
    *,
    plain: bool = False,
) -> ClothPlan:
    """Plan all that is cut from a fabric: from pieces of cloth as far as it has any, and else off the bolt.

    A plain plan has no strips that are decided on, none that are split, and whole strips alone are joined.
    """
    off_bolt = partial(plan_bolt, fabric, making=making, units=units, effort=effort, plain=plain)
    stocks = parcel_stocks(fabric, units)
    if not stocks:
        return off_bolt(pieces)
    if fabric.bought_as:
        return _all_in_parcels(fabric, stocks, pieces, making, off_bolt)
    return _shelf_first(fabric, stocks, pieces, making, off_bolt)


def parcel_stocks(fabric: Fabric, units: Units) -> tuple[ParcelStock, ...]:
    """Return the pieces of cloth of a fabric: those on the shelf first, then those that are bought."""
    shelf = (
        _stock(f"{fabric.letter} on hand {n}", parcel, fabric, units)
        for n, parcel in enumerate(fabric.on_hand, 1)
    )
    if not fabric.bought_as:
        return tuple(shelf)
    return (*shelf, _stock(f"{fabric.letter} bought", fabric.bought_as, fabric, units))


def _stock(label: str, parcel: Parcel, fabric: Fabric, units: Units) -> ParcelStock:
    """Return pieces as they are cut: what is bought is washed first, if the fabric is; then all are squared up.

    What is squared up is measured by marks on the ruler.
    """
    width, height = parcel.width, parcel.height
    if parcel.count is None:
        width, height = width * (1 - fabric.shrink_across), height * (1 - fabric.shrink_along)
    usable = (width, height)
    if parcel.squaring or (width, height) != (parcel.width, parcel.height):
        step = cut_step(units)
        across, along = ((side - parcel.squaring) // step * step for side in (width, height))
        usable = (max(across, step), max(along, step))
    return ParcelStock(label, parcel.name, width, height, *usable, 0, parcel.count)


@dataclass(frozen=True, slots=True)
class _Wanted:
    """Pieces by the way in which they are cut: in strips, from joined strips, or not from pieces of cloth at all."""

    kinds: tuple[Kind, ...]
    long: tuple[Piece, ...]
    binding: tuple[Piece, ...]
    unplaced: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class _Way:
    """A plan with joined strips of one length."""

    stocked: Stocked
    runs: tuple[JoinedRun, ...]
    unplaced: tuple[str, ...]

    @property
    def cost(self) -> tuple[int, int, Length, int, Length]:
        """Rank it: by what is not cut, then what is bought, then what is cut into and how much that is."""
        plan, found = self.stocked.plan, self.stocked
        seams = sum((run.height * run.strips for run in self.runs), Length(0))
        return len(self.unplaced) + sum(plan.unplaced), found.bought, found.area, found.used, seams


def _wanted(pieces: Iterable[Piece], direction: Direction, stocks: Sequence[ParcelStock]) -> _Wanted:
    kinds, long, binding, unplaced = [], [], [], []
    for piece in pieces:
        kind = kind_of(piece, direction, ENDLESS)
        if piece.purpose is Purpose.BINDING:
            binding.append(piece)
        elif piece.purpose is Purpose.BACKING:
            unplaced.append(piece.label)
        elif any(_holds(stock, position) for stock in stocks for position in kind.positions):
            kinds.append(kind)
        elif piece.purpose in LONG_PURPOSES and piece.grain is not Grain.LENGTHWISE:
            long.append(piece)
        else:
            unplaced.append(piece.label)
    return _Wanted(tuple(kinds), tuple(long), tuple(binding), tuple(unplaced))


def _holds(stock: ParcelStock, lying: Position) -> bool:
    return lying.along <= stock.usable_width and lying.across <= stock.usable_height


def _ways(fabric: Fabric, stocks: Sequence[ParcelStock], wanted: _Wanted, making: Making) -> Iterator[_Way]:
    """Plan with strips to be joined of every length that a piece of cloth gives; without any where none is joined."""
    turnable = fabric.direction is Direction.NONE
    apart = (*wanted.long, *wanted.binding)
    if apart:
        for each in _strip_lengths(stocks, turnable):
            if runs := _runs(fabric.letter, wanted, each, making):
                kinds = [
                    *wanted.kinds,
                    *(Kind(run.strip, run.strips, _positions(run, turnable)) for run in runs),
                ]
                found = stocked(kinds, stocks, turnable)
                if not any(found.plan.unplaced[len(wanted.kinds) :]):
                    yield _Way(found, runs, wanted.unplaced)
    labels = tuple(piece.label for piece in apart)
    yield _Way(stocked(wanted.kinds, stocks, turnable), (), (*wanted.unplaced, *labels))


def _strip_lengths(stocks: Sequence[ParcelStock], turnable: bool) -> list[Length]:
    """Return the lengths that strips can have, long to short: the widths of the cloth, and its heights if it turns."""
    sides = {stock.usable_width for stock in stocks}
    if turnable:
        sides |= {stock.usable_height for stock in stocks}
    return sorted(sides, reverse=True)


def _positions(run: JoinedRun, turnable: bool) -> tuple[Position, ...]:
    listed = Position(run.each, run.height)
    return (listed, Position(run.height, run.each)) if turnable and run.each != run.height else (listed,)


def _runs(letter: str, wanted: _Wanted, each: Length, making: Making) -> tuple[JoinedRun, ...]:
    """Return the runs of strips of a length; none where joins would take half of such strips, or more.

    Strips for borders are joined straight, which takes less of such short ones, unless the design wants it otherwise.
    """
    method, seam = JoinMethod.STRAIGHT, making.seam
    if making.joins is Joins.DIAGONAL:
        method = JoinMethod.DIAGONAL
    diagonal = [*wanted.binding, *(wanted.long if method is JoinMethod.DIAGONAL else ())]
    loss = max([2 * seam, *(piece.width for piece in diagonal)])
    widest = max(piece.width for piece in (*wanted.long, *wanted.binding))
    if 2 * loss >= each or widest > each:
        return ()
    found: list[Run] = [
        *border_runs(wanted.long, each, seam, method),
        *(binding_run(piece, each, seam) for piece in wanted.binding),
    ]
    return tuple(joined_run(f"{letter}r{n}", f"{letter}s{n}", run, each) for n, run in enumerate(found, 1))


def _all_in_parcels(
    fabric: Fabric,
    stocks: tuple[ParcelStock, ...],
    pieces: Sequence[Piece],
    making: Making,
    off_bolt: OffBolt,
) -> ClothPlan:
    wanted = _wanted(pieces, fabric.direction, stocks)
    best = min(_ways(fabric, stocks, wanted, making), key=lambda way: way.cost)
    nothing = off_bolt(())
    return _with(nothing, best, stocks, wanted.kinds)


def _with(plan: ClothPlan, way: _Way, stocks: Sequence[ParcelStock], kinds: Sequence[Kind]) -> ClothPlan:
    """Add what is cut from pieces of cloth to the plan of what comes off the bolt."""
    letter, first = plan.fabric, len(plan.groups) + len(way.runs) + 1
    whole = {run.strip: run for run in way.runs}
    layouts = tuple(_layouts(letter, way.stocked, whole, map("{}s{}".format, repeat(letter), count(first))))
    used = [
        replace(stock, used=sum(each.count for each in layouts if each.stock == stock.label))
        for stock in stocks
    ]
    left = (kind.label for kind, short in zip(kinds, way.stocked.plan.unplaced, strict=False) if short)
    return replace(
        plan,
        runs=(*plan.runs, *way.runs),
        unplaced=tuple(dict.fromkeys((*plan.unplaced, *way.unplaced, *left))),
        parcels=ParcelPlan(tuple(used), layouts, way.stocked.plan.bound),
    )


def _layouts(
    letter: str, found: Stocked, whole: dict[str, JoinedRun], numbers: Iterator[str]
) -> Iterator[ParcelLayout]:
    """Return the layouts, those of the shelf first, and of each the highest strips first."""
    for number, cut in enumerate(found.layouts, 1):
        groups = tuple(_strip(shelf, each, cut.length, whole, numbers) for shelf, each in cut.strips)
        yield ParcelLayout(
            f"{letter}p{number}", cut.stock, cut.count, cut.upright, cut.length, cut.room, groups
        )


def _strip(
    crosscuts: tuple[Crosscut, ...],
    strips: int,
    length: Length,
    whole: dict[str, JoinedRun],
    numbers: Iterator[str],
) -> StripGroup:
    """Return a group of strips; one that is nothing but a strip to be joined is left whole, under its label."""
    height = max(cut.across for cut in crosscuts)
    used = sum((cut.along * cut.count for cut in crosscuts), Length(0))
    only = crosscuts[0]
    if (
        len(crosscuts) == 1
        and only.count == 1
        and only.piece in whole
        and (only.along, only.across) == (length, height)
    ):
        return StripGroup(only.piece, height, strips, (), Length(0))
    return StripGroup(next(numbers), height, strips, crosscuts, used)


def _shelf_first(
    fabric: Fabric,
    stocks: tuple[ParcelStock, ...],
    pieces: Sequence[Piece],
    making: Making,
    off_bolt: OffBolt,
) -> ClothPlan:
    """Plan what lies on the shelf, and the rest off the bolt; nothing from the shelf where that saves no cloth.

    Strips to be joined come from the shelf only where it holds all of a fabric's pieces but the backing.
    """
    backing = [piece for piece in pieces if piece.purpose is Purpose.BACKING]
    others = [piece for piece in pieces if piece not in backing]
    wanted = _wanted(others, fabric.direction, stocks)
    best = min(_ways(fabric, stocks, wanted, making), key=lambda way: way.cost)
    if not best.cost[0]:
        return _with(off_bolt(backing), best, stocks, wanted.kinds)
    found = stocked(wanted.kinds, stocks, fabric.direction is Direction.NONE)
    left = dict(zip((kind.label for kind in wanted.kinds), found.plan.unplaced, strict=True))
    rest = [replace(p, count=left.get(p.label, p.count)) for p in pieces if left.get(p.label, p.count)]
    bolt, all_of_it = (off_bolt(some) for some in (rest, pieces))
    if bolt.cut_length >= all_of_it.cut_length:
        found = stocked((), stocks, True)
        bolt = all_of_it
    return _with(bolt, _Way(found, (), ()), stocks, ())
