"""A design in its sizes, side by side: rows of what differs, with a cell for each size.

The rows stand as a requirement table has them, fabrics in the order of the design and the sizes from small to
large (common practice, no source). A cell of several parts has them between semicolons.
"""

from __future__ import annotations

from collections.abc import Callable, Hashable, Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from functools import partial
from typing import TypeAlias, TypeVar

from quarterturn.design import (
    AnyBorder,
    Border,
    Cell,
    Coping,
    Corner,
    LineSet,
    OnPointSet,
    PanelSet,
    PiecedBorder,
    SectionSet,
    StraightSet,
)
from quarterturn.materials import ClothPlan, show_bought
from quarterturn.measure import Length
from quarterturn.pieces import Piece, Purpose
from quarterturn.proof import Pattern, Proof, border_depths, unit_sizes
from quarterturn.publish.wording.names import fabric_name, length, listed, rectangle, sized
from quarterturn.publish.wording.parcels import parcels_used
from quarterturn.publish.wording.requirements import thread_length
from quarterturn.publish.wording.sections import sections_of
from quarterturn.publish.wording.web import web_amount, web_size

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
        SizePart(_counted(patterns), _rows(patterns, (*_sections(patterns), *_units(patterns)))),
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
    yield "Drop at the sides", partial(_hangs, 0)
    yield "Drop at the foot", partial(_hangs, 1)
    yield "Tuck at the pillows", partial(_hangs, 2)
    square = all(width == height for pattern in patterns for width, height in unit_sizes(pattern))
    yield f"Finished unit{', square' if square else ''}", partial(_unit_sizes, square)
    yield "Map laid across × down", _laid
    yield "Units across × down", partial(_places, True)
    yield "Places of the map across × down", partial(_places, False)
    yield "Squares on point, across × down", _on_point
    yield "Squares between them", _between
    yield "Parts side by side", partial(_parts, False)
    yield "Parts one below another", partial(_parts, True)
    yield "Panel, finished", _panel
    for ring in range(max(len(pattern.design.borders) for pattern in patterns)):
        yield f"Border {ring + 1}, finished width", partial(_border, ring)


def _mattress(pattern: Pattern) -> str:
    bed = pattern.design.bed
    if bed is None:
        return ""
    size = rectangle(pattern.design, bed.width, bed.length)
    return f"{bed.name}; {size}" if bed.name else size


def _hangs(end: int, pattern: Pattern) -> str:
    """Return how far the quilt as it finishes hangs down: at the sides (0), at the foot (1), beyond the pillows (2)."""
    bed = pattern.design.bed
    if bed is None:
        return ""
    left = bed.hangs(pattern.setting.width, pattern.setting.height)[end]
    return length(pattern.design, left) if left or end < 2 else ""


def _unit_sizes(square: bool, pattern: Pattern) -> str:
    sizes = unit_sizes(pattern)
    if square:
        return "; ".join(length(pattern.design, side) for side, _ in sizes)
    return "; ".join(sized(pattern.design, *size) for size in sizes)


def _laid(pattern: Pattern) -> str:
    root = pattern.design.setting
    return f"{root.across} × {root.down}" if isinstance(root, StraightSet) else ""


def _places(of_units: bool, pattern: Pattern) -> str:
    """Return columns × rows of a map that holds units alone, or of one that does not."""
    root = pattern.design.setting
    if not isinstance(root, StraightSet):
        return ""
    alone = all(isinstance(cell, Cell) for row in root.cells for cell in row)
    rows, columns = root.size
    return f"{columns} × {rows}" if alone is of_units else ""


def _on_point(pattern: Pattern) -> str:
    root = pattern.design.setting
    return f"{len(root.cells[0])} × {len(root.cells)}" if isinstance(root, OnPointSet) else ""


def _between(pattern: Pattern) -> str:
    root = pattern.design.setting
    if not isinstance(root, OnPointSet) or not any(root.between):
        return ""
    return f"{len(root.between[0])} × {len(root.between)}"


def _parts(below: bool, pattern: Pattern) -> str:
    root = pattern.design.setting
    return f"({len(root.parts)})" if isinstance(root, LineSet) and root.below is below else ""


def _panel(pattern: Pattern) -> str:
    root = pattern.design.setting
    return rectangle(pattern.design, root.width, root.height) if isinstance(root, PanelSet) else ""


def _border(ring: int, pattern: Pattern) -> str:
    """Return the width of a border, of both pairs where they differ, and what it is made of."""
    design = pattern.design
    if ring >= len(design.borders):
        return ""
    side, end = border_depths(design, pattern.setting)[ring]
    width = length(design, side)
    if side != end:
        pairs = (("sides", side), ("ends", end))
        width = ", ".join(f"{name} {length(design, depth)}" for name, depth in pairs if depth)
    return f"{width} {_border_words(design.borders[ring])}"


def _border_words(border: AnyBorder) -> str:
    match border:
        case Coping():
            return f"{border.fabric}, coping"
        case PiecedBorder():
            return f"pieced, {listed(list(dict.fromkeys((border.sides.section, border.ends.section))))}"
        case Border(corner=Corner.MITRED):
            return f"{border.fabric}, mitred"
        case Border(corner=Corner.CORNERSTONES):
            return f"{border.fabric}, corners {border.cornerstone}"
    return border.fabric


def _counted(patterns: Sequence[Pattern]) -> str:
    found = any(sections_of(pattern.setting.top) for pattern in patterns)
    return "Sections, units and squares" if found else "Units and squares"


def _sections(patterns: Sequence[Pattern]) -> Iterator[tuple[str, Say]]:
    for name in _union((made.name for made in sections_of(pattern.setting.top)) for pattern in patterns):
        yield f"Sections {name}", partial(_section_count, name)


def _section_count(name: str, pattern: Pattern) -> str:
    count = sum(made.count for made in sections_of(pattern.setting.top) if made.name == name)
    return f"({count})" if count else ""


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
    yield "Fusible web", lambda p: web_amount(p.design, p.materials.web)
    yield "Web, width or sheet", lambda p: web_size(p.design, p.materials.web)
    yield "Batting", lambda p: rectangle(p.design, p.materials.batting_width, p.materials.batting_height)
    for letter in _union((line.fabric for line in pattern.materials.stitching) for pattern in patterns):
        yield f"Thread to match Fabric {letter}, about", partial(_thread, letter)


def _bought(letter: str, pattern: Pattern) -> str:
    plan = _plan(letter, pattern)
    return show_bought(plan, pattern.design.units) if plan else ""


def _thread(letter: str, pattern: Pattern) -> str:
    lines = [line for line in pattern.materials.stitching if line.fabric == letter]
    return thread_length(sum(line.thread for line in lines), pattern.design.units) if lines else ""


def _cuts(patterns: Sequence[Pattern], letter: str) -> Iterator[tuple[str, Say]]:
    yield "Pieces of cloth", lambda p: parcels_used(_plan(letter, p))
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
    return f"({piece.count}) {rectangle(pattern.design, *sorted((piece.width, piece.length)))}"


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
        f"in the rest of this booklet are those of the {own} size. Narrow pieces may come from wider strips."
    ]
    repeats = isinstance(base.design.setting, StraightSet)
    sections = any(each.design.sections for each in (base, *others))
    if like:
        lay = ", and lay the map as often as it says" if repeats else ""
        same = "the shapes, the sections and the map" if sections else "the shapes and the map"
        notes.append(
            f"In the {_sizes(like)} the units, {same} are the same: make the units by this booklet with the counts "
            f"of the column{lay}; take plans, pairs, rows and borders from its own booklet."
        )
    if unlike:
        what = "the units, the sections or the map" if sections else "the units or the map"
        notes.append(
            f"In the {_sizes(unlike)} {what} differ: follow the booklet of "
            f"{'that size' if len(unlike) == 1 else 'such a size'} from the first cut."
        )
    return tuple(notes)


def _sizes(names: Sequence[str]) -> str:
    return f"{listed(names)} size{'' if len(names) == 1 else 's'}"


def _is_like(base: Pattern, other: Pattern) -> bool:
    """Tell whether a size is made of the same units by the same map, with other repeats or borders at most.

    Of its borders none may be sewn in a way that the base's are not.
    """
    one, two = base.design, other.design
    return (base.blocks, one.sections, _laid_once(one.setting)) == (
        other.blocks,
        two.sections,
        _laid_once(two.setting),
    ) and {_way_of(border) for border in two.borders} <= {_way_of(border) for border in one.borders}


def _laid_once(setting: SectionSet) -> SectionSet:
    return replace(setting, across=1, down=1) if isinstance(setting, StraightSet) else setting


def _way_of(border: AnyBorder) -> Hashable:
    """Return what makes the sewing of two borders one: all of a pieced border, else its kind and its corners."""
    if isinstance(border, PiecedBorder):
        return border
    return border.corner if isinstance(border, Border) else Coping


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
