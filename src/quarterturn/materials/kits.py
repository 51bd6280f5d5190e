"""Kits: what one holds, what all of them take when their pieces are cut together or apart, and a ticket per bolt.

Pieces that are cut from strips can be pooled: those of all kits are planned as one. What the sewer joins herself,
strips for long borders and for the binding, and lengths for a backing, goes whole into each kit, and so is not.
"""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from functools import partial

from quarterturn.design import Design, KitContent, Kits, LongCut
from quarterturn.materials.model import ClothPlan, Crosscut, ParcelStock
from quarterturn.materials.parcels import plan_cloth
from quarterturn.materials.shrinkage import to_buy
from quarterturn.measure import Length, Units
from quarterturn.pieces import Bill, Piece, Purpose

Plan = Callable[[Sequence[Piece]], ClothPlan]
"""Plans some pieces of one fabric."""

UNSPARED = (
    Purpose.BORDER, Purpose.COPING, Purpose.STRIP, Purpose.SASH, Purpose.BIAS, Purpose.BINDING, Purpose.BACKING,
)  # fmt: skip
"""Long pieces, of which a kit holds no spare."""


@dataclass(frozen=True, slots=True)
class Whole:
    """Strips or lengths of cloth that go uncut into each kit: how many, how high, and what they become."""

    label: str
    height: Length
    count: int
    used_for: tuple[str, ...]
    """Labels of the pieces that the sewer makes of them; empty for a binding."""


@dataclass(frozen=True, slots=True)
class KitCloth:
    """One fabric of all kits: the pieces and whole strips of one, and the cloth for all, pooled or apart."""

    fabric: str
    kits: int
    pieces: tuple[Piece, ...]
    """Of one kit, spares included, cut to size."""
    whole: tuple[Whole, ...]
    each: Length
    """What is bought for one kit alone, all of its pieces with their spares."""
    usable_width: Length
    plan: ClothPlan | None
    """Of the pieces of all kits together; None where no piece is cut to size."""
    pooled_cut: Length
    """All that is cut, whole strips included."""
    pooled: Length
    """What is bought for that."""
    parcels: int = 0
    """Pieces of cloth, as they are bought, that go uncut into each kit; then nothing of the fabric is by the length."""
    parcel: str = ""
    """What one of them is called."""
    parcel_size: tuple[Length, Length] = (Length(0), Length(0))
    """Its height along the cloth and its width across it."""

    @property
    def apart(self) -> Length:
        """Return what is bought where every kit gets a length of its own."""
        return self.kits * self.each

    @property
    def saved(self) -> Length:
        """Return how much less cloth is bought when the kits are cut together."""
        return self.apart - self.pooled


def with_spares(piece: Piece, share: Fraction) -> Piece:
    """Return a piece with a share of its count more, one at least; long pieces and a share of 0 as they are."""
    if not share or piece.purpose in UNSPARED:
        return piece
    more = max(1, math.ceil(piece.count * share))
    return replace(piece, count=piece.count + more, spare=piece.spare + more)


def kit_cloth(
    pieces: Sequence[Piece],
    kits: int,
    spare: Fraction,
    slack: Length,
    shrinks: Fraction,
    units: Units,
    plan: Plan,
) -> KitCloth:
    """Return one fabric of so many kits. The pieces are those of one quilt in this fabric, one at least.

    `spare` is a share of the pieces, `shrinks` the share of its length that the cloth loses if it is washed first.
    """
    spared = tuple(with_spares(piece, spare) for piece in pieces)
    alone = plan(spared)
    if alone.parcels and (stock := alone.parcels.to_buy):
        return _in_parcels(alone, stock, kits)
    whole = tuple(_whole(alone))
    cut = _cut_to_size(spared, alone)
    pool = plan([times(piece, kits) for piece in cut]) if cut else None
    length = kits * _length(whole) + (pool.cut_length if pool else 0)
    bought = to_buy(length, 1, alone.squaring, slack, shrinks, units).bought
    return KitCloth(
        fabric=alone.fabric,
        kits=kits,
        pieces=cut,
        whole=whole,
        each=alone.bought,
        usable_width=alone.usable_width,
        plan=pool,
        pooled_cut=length,
        pooled=bought,
    )


def _in_parcels(alone: ClothPlan, stock: ParcelStock, kits: int) -> KitCloth:
    """Return a fabric that goes into kits in the pieces in which it is bought."""
    nothing = Length(0)
    return KitCloth(
        fabric=alone.fabric,
        kits=kits,
        pieces=(),
        whole=(),
        each=nothing,
        usable_width=alone.usable_width,
        plan=None,
        pooled_cut=nothing,
        pooled=nothing,
        parcels=stock.used,
        parcel=stock.name,
        parcel_size=(stock.height, stock.width),
    )


def kits_cloth(design: Design, bill: Bill, kits: Kits) -> Iterator[KitCloth]:
    """Return every fabric of which kits hold anything."""
    for fabric in design.fabrics:
        pieces = [
            piece
            for piece in bill.of_fabric(fabric.letter)
            if kits.backing or piece.purpose is not Purpose.BACKING
        ]
        if pieces:
            # A sewer joins her own long strips: whole ones take less room in a kit than borders in one piece.
            # What lies on a designer's shelf goes into no kit.
            making = replace(design.making, borders=LongCut.CROSSWISE)
            plan = partial(
                plan_cloth, replace(fabric, on_hand=()), making=making, units=design.units, plain=True
            )
            yield kit_cloth(
                pieces, kits.count, kits.spare, design.making.slack, fabric.shrink_along, design.units, plan
            )


def kit_tickets(cloth: KitCloth, kits: Kits, squaring: Length) -> Tickets:
    """Return the tickets of one fabric: of pieces cut together, or of a length for each kit."""
    lines = pooled_lines(cloth) if kits.content is KitContent.PIECES else length_lines(cloth)
    return cut_tickets(cloth.fabric, lines, kits.bolt, squaring)


def times(piece: Piece, kits: int) -> Piece:
    """Return the pieces of so many kits."""
    return replace(piece, count=piece.count * kits, spare=piece.spare * kits)


def _cut_to_size(pieces: Iterable[Piece], alone: ClothPlan) -> tuple[Piece, ...]:
    cut = {crosscut.piece for group in alone.strips for crosscut in group.crosscuts}
    return tuple(piece for piece in pieces if piece.label in cut)


def _whole(alone: ClothPlan) -> Iterator[Whole]:
    for panels in alone.panels:
        yield Whole(panels.piece, panels.cut_length, panels.panels, (panels.piece,))
    for run in alone.runs:
        yield Whole(run.strip, run.height, run.strips, tuple(cut.piece for cut in run.crosscuts))


def _length(whole: Iterable[Whole]) -> Length:
    return sum((each.height * each.count for each in whole), Length(0))


@dataclass(frozen=True, slots=True)
class TicketLine:
    """Equal strips or lengths to cut off one bolt: across the width, `height` high, then into pieces."""

    label: str
    height: Length
    count: int
    crosscuts: tuple[Crosscut, ...]
    """Pieces of each strip; empty for what goes whole into the kits."""


@dataclass(frozen=True, slots=True)
class Ticket:
    """What is cut from one bolt, in cutting order. It is straightened first."""

    fabric: str
    number: int
    bolt: Length
    squaring: Length
    lines: tuple[TicketLine, ...]

    @property
    def used(self) -> Length:
        """Return what the cuts take, straightening included."""
        return self.squaring + sum((line.height * line.count for line in self.lines), Length(0))

    @property
    def left(self) -> Length:
        """Return what is left on the bolt."""
        return self.bolt - self.used


@dataclass(frozen=True, slots=True)
class Tickets:
    """The tickets of one fabric, and the cuts that are too long for every bolt."""

    tickets: tuple[Ticket, ...]
    too_long: tuple[TicketLine, ...]


def pooled_lines(cloth: KitCloth) -> tuple[TicketLine, ...]:
    """Return all cuts of kits that are cut together."""
    whole = (TicketLine(each.label, each.height, each.count * cloth.kits, ()) for each in cloth.whole)
    strips = cloth.plan.strips if cloth.plan else ()
    # Plans made apart number their strips alike: those of the pool are told apart from the whole ones by a p.
    cut = (TicketLine(f"p{group.label}", group.height, group.strips, group.crosscuts) for group in strips)
    return (*whole, *cut)


def length_lines(cloth: KitCloth) -> tuple[TicketLine, ...]:
    """Return the cuts where each kit gets its cloth by the length; none where none is bought so."""
    if cloth.parcels or not cloth.each:
        return ()
    return (TicketLine(f"{cloth.fabric} for a kit", cloth.each, cloth.kits, ()),)


def cut_tickets(
    fabric: str, lines: Iterable[TicketLine], bolt: Length, squaring: Length, ends: Sequence[Length] = ()
) -> Tickets:
    """Share the cuts out among bolts, the highest first, each cut on the first bolt that has room for it.

    Bolt ends that are there are used before full bolts are opened. No cut is divided.
    """
    bolts = [_Bolt(end, end - squaring, Counter()) for end in ends]
    too_long: Counter[TicketLine] = Counter()
    for line in sorted(lines, key=lambda line: -line.height):
        one, left = replace(line, count=1), line.count
        for each in bolts:
            left -= each.take(one, left)
        while left and line.height <= bolt - squaring:
            bolts.append(_Bolt(bolt, bolt - squaring, Counter()))
            left -= bolts[-1].take(one, left)
        if left:
            too_long[one] += left
    used = [each for each in bolts if each.cuts]
    tickets = (
        Ticket(fabric, number, each.length, squaring, _counted(each.cuts))
        for number, each in enumerate(used, 1)
    )
    return Tickets(tuple(tickets), _counted(too_long))


@dataclass(slots=True)
class _Bolt:
    """A bolt while it is being filled."""

    length: Length
    room: Length
    cuts: Counter[TicketLine]

    def take(self, one: TicketLine, wanted: int) -> int:
        """Cut as many as are wanted and there is room for; return how many."""
        count = min(wanted, max(0, self.room // one.height))
        if count:
            self.room -= count * one.height
            self.cuts[one] += count
        return count


def _counted(cuts: Counter[TicketLine]) -> tuple[TicketLine, ...]:
    return tuple(replace(one, count=count) for one, count in cuts.items())


@dataclass(frozen=True, slots=True)
class PickLine:
    """Equal things that go into each kit: how many into one, and into all."""

    fabric: str
    label: str
    name: str
    count: int
    kits: int
    length: Length
    width: Length

    @property
    def total(self) -> int:
        """Return how many all kits take."""
        return self.count * self.kits


def pick_list(cloth: KitCloth, ready_cut: bool) -> tuple[PickLine, ...]:
    """Return what goes into each kit of one fabric: pieces and whole strips, or one length of cloth."""
    wide = cloth.usable_width
    if cloth.parcels:
        name, count = cloth.parcel, cloth.parcels
        return (PickLine(cloth.fabric, cloth.fabric, name, count, cloth.kits, *cloth.parcel_size),)
    if not ready_cut:
        return (PickLine(cloth.fabric, cloth.fabric, "length of cloth", 1, cloth.kits, cloth.each, wide),)
    pieces = (
        PickLine(cloth.fabric, piece.label, piece.name, piece.count, cloth.kits, piece.length, piece.width)
        for piece in cloth.pieces
    )
    whole = (
        PickLine(cloth.fabric, each.label, _word(each), each.count, cloth.kits, wide, each.height)
        for each in cloth.whole
    )
    return (*pieces, *whole)


def _word(whole: Whole) -> str:
    return (
        f"left whole, for {' and '.join(whole.used_for)}" if whole.used_for else "left whole, for the binding"
    )
