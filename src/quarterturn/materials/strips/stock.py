"""Cut pieces from pieces of cloth that are there already: fat quarters, squares, strips, whatever lies on the shelf.

As few pieces of cloth as possible are bought, then as few as possible used of those that are there, and of equal
numbers those with the least area. Each is cut into strips, one way or the other, and the strips across into pieces.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from typing import TYPE_CHECKING

from quarterturn.materials.kinds import Kind
from quarterturn.materials.strips.beds import Bed, Column, best_column, filled
from quarterturn.materials.strips.job import Job, job_of
from quarterturn.materials.strips.master import in_whole, solver_with_options
from quarterturn.materials.strips.patterns import Pattern, without_excess
from quarterturn.materials.strips.pricing import FINE, whole_prices
from quarterturn.measure import Length

if TYPE_CHECKING:
    import highspy

ROUNDS = 60
"""Of generating columns, at each depth."""

NODES = 200
"""Of the solver's search for whole pieces of cloth."""

AREA_SHARE = 1000
"""The largest piece of cloth counts one part in so many more than one without area: a tie is broken by area."""

ON_HAND_SHARE = 500
"""A piece of cloth that is there costs one part in so many of one that must be bought: it is always taken first."""

SHORT = 1000.0
"""What pieces cost that are cut from nothing, in pieces of cloth, for as much of them as the largest cloth has area."""

LEAST = 0.005
"""The share of SHORT that any piece costs at least: so none is left out to save a piece of cloth."""


@dataclass(frozen=True, slots=True)
class Cloth:
    """Equal pieces of cloth: how many there are, None for any number. `turnable` unless the print has a direction.

    What is `on_hand` need not be bought.
    """

    name: str
    width: Length
    height: Length
    count: int | None
    turnable: bool
    on_hand: bool = False


@dataclass(frozen=True, slots=True)
class CutCloth:
    """Equal pieces of cloth cut alike: strips across the width, or along the height where they are cut `upright`."""

    cloth: str
    upright: bool
    count: int
    strips: tuple[tuple[Pattern, int], ...]


@dataclass(frozen=True, slots=True)
class StockPlan:
    """What is cut from the cloth there is, and what is not, by kind.

    No plan of strips that cuts everything buys fewer pieces of cloth than `bound` (uses, where all are on hand).
    """

    job: Job
    cut: tuple[CutCloth, ...]
    unplaced: tuple[int, ...]
    bound: int

    @property
    def used(self) -> int:
        """Return how many pieces of cloth are cut into."""
        return sum(one.count for one in self.cut)


def plan_stock(kinds: Sequence[Kind], stock: Sequence[Cloth]) -> StockPlan:
    """Plan the cutting of kinds (each with a position) from the cloth there is."""
    widest = max((max(cloth.width, cloth.height) for cloth in stock), default=Length(0))
    job = job_of(kinds, widest)
    beds = [bed for number, cloth in enumerate(stock) for bed in _beds(job, number, cloth)]
    areas = [cloth.width * cloth.height for cloth in stock]
    shares = [ON_HAND_SHARE if cloth.on_hand else 1 for cloth in stock]
    costs = [
        (1 + float(area / max(areas)) / AREA_SHARE) / share for area, share in zip(areas, shares, strict=True)
    ]
    supply = _Supply(
        tuple(beds),
        tuple(costs),
        tuple(c.count for c in stock),
        tuple(c.on_hand for c in stock),
        _shorts(job, areas),
    )
    columns, seen, bound = _dived(job, supply)
    plans = (_exact(job, plan) for plan in (columns, _chosen(job, supply, seen)))
    cut, left = min(plans, key=lambda plan: _worse(plan, supply))
    return StockPlan(job, tuple(_told(stock, _smaller(job, supply, cut))), tuple(left), bound)


def _shorts(job: Job, areas: Sequence[Fraction]) -> tuple[float, ...]:
    """Return for each kind what a piece costs that is cut from nothing: the more the larger it is."""
    largest = max(areas, default=Fraction(1))
    sizes = {cut.kind: cut.along * cut.across * job.along_step * job.across_step for cut in job.cuts}
    return tuple(SHORT * (LEAST + float(sizes.get(n, 0) / largest)) for n in range(len(job.demand)))


def _beds(job: Job, number: int, cloth: Cloth) -> Iterator[Bed]:
    yield Bed(number, False, int(cloth.width // job.along_step), int(cloth.height // job.across_step))
    if cloth.turnable and cloth.width != cloth.height:
        yield Bed(number, True, int(cloth.height // job.along_step), int(cloth.width // job.across_step))


@dataclass(frozen=True, slots=True)
class _Supply:
    """The beds, and for each kind of cloth its cost, how many there are (None: any number) and if it is on hand.

    `shorts` are what pieces of each kind cost that are cut from nothing.
    """

    beds: tuple[Bed, ...]
    costs: tuple[float, ...]
    counts: tuple[int | None, ...]
    on_hand: tuple[bool, ...]
    shorts: tuple[float, ...]

    def less(self, column: Column) -> _Supply:
        """Return the supply without one piece of cloth."""
        counts = tuple(
            None if count is None else count - (number == column.bed.stock)
            for number, count in enumerate(self.counts)
        )
        return replace(self, counts=counts)

    @property
    def open_beds(self) -> list[Bed]:
        """Return the beds of which there is cloth left."""
        return [bed for bed in self.beds if self.counts[bed.stock] != 0]


def _dived(job: Job, supply: _Supply) -> tuple[list[Column], list[Column], int]:
    """Return columns, one for each piece of cloth cut into; all that were seen; and the least number that could do.

    The piece with the largest share of the relaxed plan is cut first; then all is planned again for the rest.
    """
    taken: list[Column] = []
    columns: list[Column] = []
    seen: dict[Column, None] = {}
    bound: int | None = None
    left = job
    while any(left.demand):
        columns, shares, least = _relaxed(left, supply, columns)
        bound = least if bound is None else bound
        seen.update(dict.fromkeys(columns))
        if not any(share > 1e-9 for share in shares):
            break
        number = max(range(len(columns)), key=lambda n: (_readiness(shares[n]), -n))
        times = math.floor(shares[number] + 1e-6)
        column = columns[number] if times else filled(left, columns[number])
        times = max(1, times)
        seen[column] = None
        for _ in range(times):
            taken.append(column)
            supply = supply.less(column)
        given = [times * count for count in column.yields(len(job.demand))]
        left = left.reduced([max(0, d - g) for d, g in zip(left.demand, given, strict=True)])
        columns = [c for c in columns if supply.counts[c.bed.stock] != 0]
    return taken, list(seen), bound or 0


def _readiness(share: float) -> tuple[float, float]:
    """Rank a share for being fixed: whole pieces of cloth first, then what is nearest to the next whole one."""
    whole = math.floor(share + 1e-6)
    return (1.0, whole) if whole else (round(share, 6), 0.0)


def _relaxed(job: Job, supply: _Supply, columns: Sequence[Column]) -> tuple[list[Column], list[float], int]:
    """Generate ways to cut pieces of cloth; return them, how often each is used in part, and a valid bound."""
    found = dict.fromkeys(columns)
    best = Fraction(0)
    shares: list[float] = []
    for _ in range(ROUNDS):
        shares, prices, rents = _solved(job, supply, tuple(found))
        new = []
        worths: list[tuple[Bed, int]] = []
        for bed in supply.open_beds:
            column, worth = best_column(job, bed, prices)
            worths.append((bed, worth))
            cost = supply.costs[bed.stock] + rents[bed.stock]
            if column and worth > cost * FINE * (1 + 1e-6) and column not in found:
                new.append(column)
        best = max(best, _count_bound(job, supply, prices, worths))
        if not new:
            break
        found.update(dict.fromkeys(new))
    shares += [0.0] * (len(found) - len(shares))
    return list(found), shares, math.ceil(best)


def _count_bound(
    job: Job, supply: _Supply, prices: Sequence[int], worths: Sequence[tuple[Bed, int]]
) -> Fraction:
    """Return a number of pieces of cloth below which no plan that cuts everything can stay (linear duality).

    Where some cloth must be bought, what is on hand counts nothing, and gives no more than its worth.
    """
    total = sum(wanted * price for wanted, price in zip(job.demand, prices, strict=True))
    worth = dict.fromkeys((bed.stock for bed, _ in worths), 0)
    for bed, value in worths:
        worth[bed.stock] = max(worth[bed.stock], value)
    counted = [stock for stock in worth if not supply.on_hand[stock]] or list(worth)
    given = sum((supply.counts[stock] or 0) * value for stock, value in worth.items() if stock not in counted)
    dearest = max((worth[stock] for stock in counted), default=0)
    return Fraction(total - given, dearest) if dearest else Fraction(0)


def _solved(
    job: Job, supply: _Supply, columns: Sequence[Column]
) -> tuple[list[float], tuple[int, ...], list[float]]:
    """Return how often each column is used in part, the prices of the kinds, and of what each cloth is short."""
    kinds = len(job.demand)
    solver = _model(job, supply, columns)
    solver.run()
    solution = solver.getSolution()
    rents = [max(0.0, -value) for value in solution.row_dual[kinds:]]
    return list(solution.col_value[: len(columns)]), whole_prices(solution.row_dual[:kinds]), rents


def _model(job: Job, supply: _Supply, columns: Sequence[Column]) -> highspy.Highs:
    """Return the model: columns first, then for each kind what is cut from nothing."""
    kinds = len(job.demand)
    solver = solver_with_options()
    for wanted in job.demand:
        solver.addRow(float(wanted), solver.inf, 0, [], [])
    for count in supply.counts:
        solver.addRow(-solver.inf, solver.inf if count is None else float(count), 0, [], [])
    for column in columns:
        given = [(kind, count) for kind, count in enumerate(column.yields(kinds)) if count]
        rows = [*(kind for kind, _ in given), kinds + column.bed.stock]
        counts = [*(float(count) for _, count in given), 1.0]
        solver.addCol(supply.costs[column.bed.stock], 0.0, solver.inf, len(rows), rows, counts)
    for kind, short in enumerate(supply.shorts):
        solver.addCol(short, 0.0, solver.inf, 1, [kind], [1.0])
    return solver


def _chosen(job: Job, supply: _Supply, columns: Sequence[Column]) -> list[Column]:
    """Return the best whole choice among columns, as far as the solver looks; empty where it finds none."""
    if not columns:
        return []
    solver = _model(job, supply, columns)
    in_whole(solver, len(columns))
    solver.setOptionValue("mip_max_nodes", NODES)
    solver.run()
    values = solver.getSolution().col_value[: len(columns)]
    return [c for c, value in zip(columns, values, strict=False) for _ in range(round(value))]


def _smaller(job: Job, supply: _Supply, columns: Sequence[Column]) -> list[Column]:
    """Cut each piece of cloth's pieces from the cheapest cloth, still there, that holds them all."""
    for column in columns:
        supply = supply.less(column)
    found = []
    for column in columns:
        needed = job.reduced(column.yields(len(job.demand)))
        cheaper = (b for b in supply.open_beds if supply.costs[b.stock] < supply.costs[column.bed.stock])
        beds = sorted(cheaper, key=lambda bed: supply.costs[bed.stock])
        other = next((fitting for bed in beds if (fitting := _in_one(needed, supply, bed))), None)
        supply = supply.less(other) if other else supply
        found.append(other or column)
    return found


def _in_one(job: Job, supply: _Supply, bed: Bed) -> Column | None:
    """Return a way to cut a whole job from one piece of cloth, if one is found."""
    one = tuple(1 if number == bed.stock else 0 for number in range(len(supply.counts)))
    columns, left = _exact(job, _dived(job, replace(supply, beds=(bed,), counts=one))[0])
    return columns[0] if not any(left) and len(columns) == 1 else None


def _worse(plan: tuple[list[Column], list[int]], supply: _Supply) -> tuple[float, float]:
    """Rank a plan: by what it leaves uncut, then by what its cloth costs."""
    columns, left = plan
    short = sum(count * cost for count, cost in zip(left, supply.shorts, strict=True))
    return round(short, 6), sum(supply.costs[column.bed.stock] for column in columns)


def _exact(job: Job, columns: Sequence[Column]) -> tuple[list[Column], list[int]]:
    """Return the columns without what is cut too much, those with nothing left out, and what is still wanted."""
    left, kept = list(job.demand), []
    for column in columns:
        strips = without_excess(column.strips, left)
        if strips:
            kept.append(Column(column.bed, tuple(strips)))
            for kind, count in enumerate(kept[-1].yields(len(left))):
                left[kind] -= count
    return kept, left


def _told(stock: Sequence[Cloth], columns: Sequence[Column]) -> Iterator[CutCloth]:
    for column in dict.fromkeys(columns):
        name = stock[column.bed.stock].name
        yield CutCloth(name, column.bed.upright, columns.count(column), column.strips)
