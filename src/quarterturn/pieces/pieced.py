"""The pieces of a quilt whose quarter circles are sewn along the curve instead of fused."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterator
from dataclasses import dataclass, replace

from quarterturn.blocks import Blocks, pieced_pair
from quarterturn.design import Design
from quarterturn.geometry import path_bounds
from quarterturn.measure import Length, cut_up
from quarterturn.pieces.model import Bill, Grain, MasterCount, Piece, Purpose


@dataclass(frozen=True, slots=True)
class CurveCount:
    """The quarter discs and surrounds of one colourway: one of each for every unit that the quilt takes."""

    code: str
    recipe: str
    units: int
    disc: str
    """Label of the square from which a quarter disc is cut."""
    surround: str
    """Label of the square from which a surround is cut."""


@dataclass(frozen=True, slots=True)
class CurveBill:
    """What is cut where curves are sewn: the counts by colourway, and all pieces of the quilt in a bill's order."""

    counts: tuple[CurveCount, ...]
    pieces: tuple[Piece, ...]

    def of_fabric(self, letter: str) -> tuple[Piece, ...]:
        """Return the pieces cut from one fabric."""
        return tuple(p for p in self.pieces if p.fabric == letter)

    def piece(self, label: str) -> Piece:
        """Return the piece with a label that the bill has."""
        return next(p for p in self.pieces if p.label == label)


def pieced_masters(design: Design, blocks: Blocks, bill: Bill) -> tuple[MasterCount, ...]:
    """Return the colourways whose recipe offers the curve to be sewn, and whose unit allows it."""
    return tuple(
        masters
        for masters in bill.masters
        if design.recipe(masters.recipe).pieced and pieced_pair(blocks.master(masters.recipe))
    )


def curve_bill(design: Design, blocks: Blocks, bill: Bill) -> CurveBill | None:
    """Return the pieces with quarter discs and surrounds for masters; None where no recipe offers them."""
    masters = pieced_masters(design, blocks, bill)
    if not masters:
        return None
    wants = [want for each in masters for want in _wants(design, blocks, each)]
    labels = _labels(bill, wants)
    kept = _without_masters(bill, masters)
    counts = tuple(
        CurveCount(m.code, m.recipe, m.units_needed, labels[disc.key], labels[surround.key])
        for m, (disc, surround) in zip(masters, zip(wants[::2], wants[1::2], strict=True), strict=True)
    )
    order = [fabric.letter for fabric in design.fabrics]
    pieces = (*kept, *_pieces(wants, labels))
    return CurveBill(counts, tuple(sorted(pieces, key=lambda piece: order.index(piece.fabric))))


@dataclass(frozen=True, slots=True)
class _Want:
    """A wish for equal squares of one fabric for one colourway."""

    fabric: str
    name: str
    side: Length
    count: int
    code: str
    purpose: Purpose

    @property
    def key(self) -> tuple[str, str, Length]:
        """Return what equal wishes share."""
        return self.fabric, self.name, self.side


def _wants(design: Design, blocks: Blocks, masters: MasterCount) -> Iterator[_Want]:
    master = blocks.master(masters.recipe)
    pair = pieced_pair(master)
    assert pair, "only what can be sewn along the curve is asked for"
    letter, count, code = design.cloth, masters.units_needed, masters.code
    disc = cut_up(path_bounds(pair.disc).width, design.units)
    unit = master.units[0]
    shape = next(layer.part for layer in reversed(unit.sewn_layers))
    yield _Want(letter(code, shape), "square for a quarter disc", disc, count, code, Purpose.SHAPE)
    side = unit.width + 2 * unit.seam
    yield _Want(letter(code, "ground"), "square for a surround", side, count, code, Purpose.GROUND)


def _labels(bill: Bill, wants: list[_Want]) -> dict[tuple[str, str, Length], str]:
    """Number the new pieces of each fabric on from those of the bill."""
    last = Counter(piece.fabric for piece in bill.pieces)
    labels: dict[tuple[str, str, Length], str] = {}
    for want in wants:
        if want.key not in labels:
            last[want.fabric] += 1
            labels[want.key] = f"{want.fabric}{last[want.fabric]}"
    return labels


def _without_masters(bill: Bill, masters: tuple[MasterCount, ...]) -> list[Piece]:
    """Return the pieces of a bill but for the squares and cloth blanks of some masters."""
    gone: Counter[str] = Counter()
    for each in masters:
        gone[each.ground] += each.count
        gone.update({blank.label: each.count * blank.each for blank in each.blanks})
    kept = (replace(piece, count=piece.count - gone[piece.label]) for piece in bill.pieces)
    return [piece for piece in kept if piece.count > 0]


def _pieces(wants: list[_Want], labels: dict[tuple[str, str, Length], str]) -> Iterator[Piece]:
    groups: dict[str, list[_Want]] = defaultdict(list)
    for want in wants:
        groups[labels[want.key]].append(want)
    for label, group in groups.items():
        first = group[0]
        yield Piece(
            label=label,
            name=first.name,
            fabric=first.fabric,
            purpose=first.purpose,
            length=first.side,
            width=first.side,
            count=sum(want.count for want in group),
            spare=0,
            grain=Grain.ANY,
            used_for=", ".join(f"colourway {want.code}" for want in group),
        )
