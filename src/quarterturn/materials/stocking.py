"""Ask the planner of pieces of cloth for layouts, and bring its answer back into lengths and labels."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction

from quarterturn.materials.kinds import Kind, Position
from quarterturn.materials.model import Crosscut, ParcelStock
from quarterturn.materials.strips import job_of
from quarterturn.materials.strips.stock import Cloth, CutCloth, StockPlan, plan_stock
from quarterturn.measure import Length

FINEST = 20_000
"""Steps that a side of cloth may have; sizes that are finer are rounded up to the next of `GRAIN`."""

GRAIN = Fraction(1, 64)


@dataclass(frozen=True, slots=True)
class Cut:
    """Pieces of cloth cut alike: the strips of each, as what is cut from one and how many of them."""

    stock: str
    count: int
    upright: bool
    length: Length
    room: Length
    strips: tuple[tuple[tuple[Crosscut, ...], int], ...]


@dataclass(frozen=True, slots=True)
class Stocked:
    """What is cut from pieces of cloth: how many are bought, and used in all, and how large those are together."""

    plan: StockPlan
    layouts: tuple[Cut, ...]
    bought: int
    used: int
    area: Length


def stocked(kinds: Sequence[Kind], stocks: Sequence[ParcelStock], turnable: bool) -> Stocked:
    """Plan the cutting of kinds from pieces of cloth, which may be turned unless the print has a direction."""
    cloths = [
        Cloth(each.label, each.usable_width, each.usable_height, each.there, turnable, each.on_hand)
        for each in stocks
    ]
    if not kinds:
        return Stocked(plan_stock((), cloths), (), 0, 0, Length(0))
    coarse, exact = _coarse(kinds, max(max(each.width, each.height) for each in cloths))
    plan = plan_stock(coarse, cloths)
    sizes = {each.label: each for each in stocks}
    cuts = sorted(
        (_cut(one, plan, sizes[one.cloth], exact) for one in plan.cut), key=lambda cut: _order(cut, stocks)
    )
    return Stocked(
        plan=plan,
        layouts=tuple(cuts),
        bought=sum(cut.count for cut in cuts if not sizes[cut.stock].on_hand),
        used=sum(cut.count for cut in cuts),
        area=sum((cut.count * cut.length * cut.room for cut in cuts), Length(0)),
    )


_Exact = Sequence[tuple[str, dict[Position, Position]]]
"""The label of each kind, and its positions in exact lengths by those that were planned."""


def _coarse(kinds: Sequence[Kind], widest: Length) -> tuple[list[Kind], _Exact]:
    """Return kinds whose sizes are no finer than the planner can count, and the way back."""
    job = job_of(kinds, widest)
    fine = any(widest / step > FINEST for step in (job.along_step, job.across_step))
    planned = [{_rounded(p) if fine else p: p for p in kind.positions} for kind in kinds]
    coarse = [Kind(kind.label, kind.count, tuple(by)) for kind, by in zip(kinds, planned, strict=True)]
    return coarse, [(kind.label, by) for kind, by in zip(kinds, planned, strict=True)]


def _rounded(lying: Position) -> Position:
    return Position(-(-lying.along // GRAIN) * GRAIN, -(-lying.across // GRAIN) * GRAIN)


def _cut(one: CutCloth, plan: StockPlan, stock: ParcelStock, exact: _Exact) -> Cut:
    sides = (stock.usable_width, stock.usable_height)
    length, room = sides[::-1] if one.upright else sides
    strips = sorted(_strips(one, plan, exact), key=lambda each: _strip_order(each[0]))
    return Cut(one.cloth, one.count, one.upright, length, room, tuple(strips))


def _strips(one: CutCloth, plan: StockPlan, exact: _Exact) -> Iterator[tuple[tuple[Crosscut, ...], int]]:
    """Return what each strip is cut into, and how many there are; equal strips only once."""
    found: dict[tuple[Crosscut, ...], int] = {}
    for pattern, strips in one.strips:
        crosscuts = []
        for cut, each in pattern.cuts:
            label, by = exact[cut.kind]
            lying = by[Position(cut.along * plan.job.along_step, cut.across * plan.job.across_step)]
            crosscuts.append(Crosscut(label, lying.along, lying.across, each))
        found[tuple(crosscuts)] = found.get(tuple(crosscuts), 0) + strips
    yield from found.items()


def _strip_order(crosscuts: tuple[Crosscut, ...]) -> tuple[Length, Length, list[str]]:
    """Put strips with long pieces first: large pieces are cut before small ones."""
    longest = max(max(cut.along, cut.across) for cut in crosscuts)
    return -longest, -max(cut.across for cut in crosscuts), [cut.piece for cut in crosscuts]


def _order(cut: Cut, stocks: Sequence[ParcelStock]) -> tuple[int, tuple[Length, Length, list[str]], int]:
    """Put layouts in the order of the cloth, those with the longest pieces first."""
    number = next(n for n, stock in enumerate(stocks) if stock.label == cut.stock)
    return number, _strip_order(cut.strips[0][0]), -cut.count
