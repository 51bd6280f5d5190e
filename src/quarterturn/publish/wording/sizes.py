"""A design in its sizes, side by side: rows of what differs, with a cell for each size.

The rows stand as a requirement table has them, fabrics in the order of the design and the sizes from small to
large (common practice, no source). A cell of several parts has them between semicolons.
"""

from __future__ import annotations

from collections.abc import Callable, Hashable, Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from functools import partial
from typing import TypeAlias, TypeVar

from quarterturn.materials import ClothPlan
from quarterturn.measure import Length, show_cloth
from quarterturn.pieces import Piece, Purpose
from quarterturn.proof import Pattern, Proof
from quarterturn.publish.wording.names import fabric_name, length, listed, rectangle
from quarterturn.publish.wording.requirements import thread_length

NONE = "–"
"""Stands where a size has no such thing."""

T = TypeVar("T", bound=Hashable)
SEWN = (Purpose.BINDING, Purpose.BACKING)
"""What is listed as a whole, though it is sewn from strips or lengths."""

Say: TypeAlias = Callable[[Pattern], str]


@dataclass(frozen=True, slots=True)
class SizeRow:
    """What is told, and what it is in each size."""

    what: str
    cells: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class SizePart:
    """Rows under a title."""

    title: str
    rows: tuple[SizeRow, ...]


def by_size(patterns: Iterable[Pattern]) -> tuple[Pattern, ...]:
    """Return the patterns of the sizes from small to large."""
    return tuple(sorted(patterns, key=lambda each: each.setting.width * each.setting.height))


def size_parts(patterns: Sequence[Pattern]) -> tuple[SizePart, ...]:
    """Return all rows, part by part; the cells stand in the order of the patterns."""
    parts = (
        SizePart("The quilt", _rows(patterns, _quilt(patterns))),
        SizePart("Units and squares", _rows(patterns, _units(patterns))),
        SizePart("To buy", _rows(patterns, _to_buy(patterns))),
        *(
            SizePart(f"Cut from {name}", _rows(patterns, _cuts(patterns, letter)))
            for letter, name in _fabrics(patterns).items()
        ),
    )
    return tuple(part for part in parts if part.rows)


def _rows(patterns: Sequence[Pattern], told: Iterable[tuple[str, Say]]) -> tuple[SizeRow, ...]:
    """Return the rows of which at least one size has something."""
    rows = (SizeRow(what, tuple(say(pattern) or NONE for pattern in patterns)) for what, say in told)
    return tuple(row for row in rows if any(cell != NONE for cell in row.cells))


def _quilt(patterns: Sequence[Pattern]) -> Iterator[tuple[str, Say]]:
    yield "Finished size", lambda p: rectangle(p.design, p.setting.width, p.setting.height)
    yield "For a mattress", _mattress
    yield "Drop at sides and foot", lambda p: length(p.design, p.design.bed.drop) if p.design.bed else ""
    yield "Tuck at the pillows", _tuck
    yield "Finished unit, square", lambda p: length(p.design, p.setting.side)
    yield "Map laid across × down", lambda p: f"{p.design.setting.across} × {p.design.setting.down}"
    yield "Units across × down", lambda p: f"{p.setting.columns} × {p.setting.rows}"
    for ring in range(max(len(pattern.design.borders) for pattern in patterns)):
        yield f"Border {ring + 1}, finished width", partial(_border, ring)


def _mattress(pattern: Pattern) -> str:
    bed = pattern.design.bed
    if bed is None:
        return ""
    size = rectangle(pattern.design, bed.width, bed.length)
    return f"{bed.name}; {size}" if bed.name else size


def _tuck(pattern: Pattern) -> str:
    bed = pattern.design.bed
    return length(pattern.design, bed.tuck) if bed and bed.tuck else ""


def _border(ring: int, pattern: Pattern) -> str:
    borders = pattern.design.borders
    if ring >= len(borders):
        return ""
    return f"{length(pattern.design, borders[ring].width)} {borders[ring].fabric}"


def _units(patterns: Sequence[Pattern]) -> Iterator[tuple[str, Say]]:
    for name in _union(pattern.setting.tally for pattern in patterns):
        yield f"Units {name}", partial(_unit_count, name)
    for code in _union((master.code for master in pattern.bill.masters) for pattern in patterns):
        yield f"Squares to fuse for {code}", partial(_master_count, code)
    yield "Squares in all", lambda p: f"({sum(master.count for master in p.bill.masters)})"


def _unit_count(name: str, pattern: Pattern) -> str:
    count = pattern.setting.tally.get(name, 0)
    return f"({count})" if count else ""


def _master_count(code: str, pattern: Pattern) -> str:
    count = sum(master.count for master in pattern.bill.masters if master.code == code)
    return f"({count})" if count else ""


def _to_buy(patterns: Sequence[Pattern]) -> Iterator[tuple[str, Say]]:
    for letter, name in _fabrics(patterns).items():
        yield name, partial(_bought, letter)
    yield "Fusible web", lambda p: show_cloth(p.materials.web.bought, p.design.units)
    yield "Web, width", lambda p: length(p.design, p.materials.web.web_width)
    yield "Batting", lambda p: rectangle(p.design, p.materials.batting_width, p.materials.batting_height)
    for letter in _union((line.fabric for line in pattern.materials.stitching) for pattern in patterns):
        yield f"Thread to match Fabric {letter}, about", partial(_thread, letter)
    whole = all(fabric.price is not None for pattern in patterns for fabric in pattern.design.fabrics)
    yield "Cost of the fabrics" if whole else "Cost of the fabrics with a price", _cost


def _bought(letter: str, pattern: Pattern) -> str:
    plan = _plan(letter, pattern)
    return show_cloth(plan.bought, pattern.design.units) if plan else ""


def _thread(letter: str, pattern: Pattern) -> str:
    lines = [line for line in pattern.materials.stitching if line.fabric == letter]
    return thread_length(sum(line.thread for line in lines), pattern.design.units) if lines else ""


def _cost(pattern: Pattern) -> str:
    prices = [line.price for line in pattern.materials.shopping if line.price is not None]
    return f"{float(sum(prices)):.2f} {pattern.design.house.currency}".strip() if prices else ""


def _cuts(patterns: Sequence[Pattern], letter: str) -> Iterator[tuple[str, Say]]:
    yield "Strips × WOF", partial(_strips, letter)
    yield "Lengths × WOF, for the backing", partial(_panels, letter)
    for name in _union(
        (_cut_name(piece) for piece in pattern.bill.of_fabric(letter)) for pattern in patterns
    ):
        yield name[:1].upper() + name[1:], partial(_pieces, letter, name)


def _cut_name(piece: Piece) -> str:
    """Return what a piece is called in all sizes: a border has a number even where it is the only one."""
    sewn = ", sewn" if piece.purpose in SEWN else ""
    return f"{piece.name.replace('border,', 'border 1,')}{sewn}"


def _strips(letter: str, pattern: Pattern) -> str:
    """Return the strips of a fabric, equal ones together, in the order in which they are cut."""
    counts: dict[Length, int] = {}
    plan = _plan(letter, pattern)
    for group in plan.strips if plan else ():
        counts[group.height] = counts.get(group.height, 0) + group.strips
    return "; ".join(f"({count}) {length(pattern.design, height)}" for height, count in counts.items())


def _panels(letter: str, pattern: Pattern) -> str:
    plan = _plan(letter, pattern)
    panels = plan.panels if plan else ()
    return "; ".join(f"({group.panels}) {length(pattern.design, group.cut_length)}" for group in panels)


def _pieces(letter: str, name: str, pattern: Pattern) -> str:
    mine = [piece for piece in pattern.bill.of_fabric(letter) if _cut_name(piece) == name]
    return "; ".join(_piece(pattern, piece) for piece in mine)


def _piece(pattern: Pattern, piece: Piece) -> str:
    """Return count and size of a piece; of what is sewn from strips or lengths, which is one, its size alone."""
    if piece.purpose is Purpose.BINDING:
        return length(pattern.design, piece.length)
    if piece.purpose is Purpose.BACKING:
        return rectangle(pattern.design, piece.length, piece.width)
    if piece.length == piece.width:
        return f"({piece.count}) {length(pattern.design, piece.length)}"
    return f"({piece.count}) {rectangle(pattern.design, piece.width, piece.length)}"


def _plan(letter: str, pattern: Pattern) -> ClothPlan | None:
    return next((plan for plan in pattern.materials.cloth if plan.fabric == letter), None)


def _fabrics(patterns: Sequence[Pattern]) -> dict[str, str]:
    """Return letter and name of every fabric that is cut in some size, in the order of the designs."""
    letters = _union((plan.fabric for plan in pattern.materials.cloth) for pattern in patterns)
    return {letter: fabric_name(_first_with(patterns, letter).design.fabric(letter)) for letter in letters}


def _first_with(patterns: Sequence[Pattern], letter: str) -> Pattern:
    return next(p for p in patterns if any(fabric.letter == letter for fabric in p.design.fabrics))


def _union(groups: Iterable[Iterable[T]]) -> tuple[T, ...]:
    """Return every item of all groups once, in the order in which they first come."""
    return tuple(dict.fromkeys(item for group in groups for item in group))


def size_notes(base: Pattern, others: Sequence[Pattern]) -> tuple[str, ...]:
    """Return what a sewer must know of the columns, and by which sizes this booklet can be followed."""
    own = base.design.size
    like = [each.design.size for each in others if _is_like(base, each)]
    unlike = [each.design.size for each in others if not _is_like(base, each)]
    notes = [
        f"This pattern comes in {len(others) + 1} sizes. Circle the column of yours before you buy or cut. The numbers "
        f"in the rest of this booklet are those of the {own} size."
    ]
    if like:
        notes.append(
            f"In the {_sizes(like)} the units, the shapes and the map are the same: sew by this booklet with the "
            "counts of the column, and lay the map as often as it says."
        )
    if unlike:
        notes.append(
            f"In the {_sizes(unlike)} the units or the map differ, so the templates and the map of this booklet do "
            "not serve; ask for the booklet of that size."
        )
    return tuple(notes)


def _sizes(names: Sequence[str]) -> str:
    return f"{listed(names)} size{'' if len(names) == 1 else 's'}"


def _is_like(base: Pattern, other: Pattern) -> bool:
    """Tell whether a size is made of the same units by the same map, with other repeats or borders at most."""
    one, two = base.design.setting, other.design.setting
    return base.blocks == other.blocks and replace(one, across=1, down=1) == replace(two, across=1, down=1)


def sizes_rehearsed(proofs: Sequence[tuple[Pattern, Proof]]) -> tuple[str, ...]:
    """Return what the rehearsals of the other sizes found, a sentence for those that hold and one for the others."""
    told = []
    for holds, what in (
        (True, "make the top in their picture"),
        (False, "do not make the top in their picture"),
    ):
        names = [pattern.design.size for pattern, proof in proofs if proof.holds is holds]
        if names:
            told.append(f"Rehearsed as well: the {_sizes(names)}. The steps {what}.")
    return tuple(told)
