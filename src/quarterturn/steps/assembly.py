"""The steps from loose units to a top with its borders."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

from quarterturn.design import Design, Pressing
from quarterturn.measure import Length
from quarterturn.pieces import Bill, Purpose
from quarterturn.setting import BorderStrip, PlacedUnit, Setting, Side
from quarterturn.steps import labels
from quarterturn.steps.draft import Draft, draft
from quarterturn.steps.model import AddBorder, Chapter, LayOut, Pile, Placed, Product, SewLine

Line = tuple[tuple[Placed, ...], Side | None]
"""What is sewn side by side, and the side to which its seams are pressed."""


def assembly_steps(design: Design, setting: Setting) -> Iterator[Draft]:
    """Return laying out, sewing pairs, rows and the centre.

    Pairs and rows that are alike are made together. Seams of odd and even rows are pressed opposite ways, so
    that they nest wherever four units meet.
    """
    rows = [tuple(_placed(unit) for unit in setting.row(index)) for index in range(setting.rows)]
    press = [_row_press(design, index) for index in range(setting.rows)]
    yield draft(Chapter.ASSEMBLY, LayOut(tuple(rows)))

    laid = list(zip(rows, press, setting.heights, strict=True))
    pair_sizes = {
        (pair, way): (width, height)
        for row, way, height in laid
        for pair, width in zip(_pairs(row), _pair_widths(setting), strict=True)
    }
    pairs = _number([(pair, way) for row, way, _ in laid for pair in _pairs(row)], "pair")
    for line, (label, count) in pairs.items():
        yield _sewn(design, line, pair_sizes[line], label, count)

    lines = [(_in_pairs(row, way, pairs), way) for row, way, _ in laid]
    row_sizes = {
        line: (setting.centre_width, height) for line, height in zip(lines, setting.heights, strict=True)
    }
    kinds = _number(lines, "row kind")
    for line, (label, count) in kinds.items():
        if len(line[0]) > 1:
            yield _sewn(design, line, row_sizes[line], label, count)

    yield _centre(design, setting, [_row_label(line, kinds) for line in lines])


def _placed(unit: PlacedUnit) -> Placed:
    return Placed(labels.unit(unit.name), unit.turn)


def _row_press(design: Design, index: int) -> Side | None:
    if design.making.pressing is Pressing.OPEN:
        return None
    return Side.LEFT if index % 2 else Side.RIGHT


def _pairs(row: tuple[Placed, ...]) -> list[tuple[Placed, ...]]:
    return [row[i : i + 2] for i in range(0, len(row) - 1, 2)]


def _pair_widths(setting: Setting) -> list[Length]:
    return [sum(setting.widths[i : i + 2], Length(0)) for i in range(0, setting.columns - 1, 2)]


def _number(lines: list[Line], word: str) -> dict[Line, tuple[str, int]]:
    """Name equal lines once, in order of first use, and count them."""
    counts = Counter(lines)
    return {line: (f"{word} {number}", count) for number, (line, count) in enumerate(counts.items(), start=1)}


def _in_pairs(
    row: tuple[Placed, ...], way: Side | None, pairs: dict[Line, tuple[str, int]]
) -> tuple[Placed, ...]:
    """Return a row as its pairs, and the unit left over at its end where its length is odd."""
    joined = tuple(Placed(pairs[pair, way][0], 0) for pair in _pairs(row))
    return joined + row[len(row) // 2 * 2 :]


def _row_label(line: Line, kinds: dict[Line, tuple[str, int]]) -> Placed:
    """Return what a row is called: a row of one pair or one unit needs no sewing and keeps its name."""
    return line[0][0] if len(line[0]) == 1 else Placed(kinds[line][0], 0)


def _sewn(design: Design, line: Line, size: tuple[Length, Length], label: str, count: int) -> Draft:
    """Return the sewing of `count` equal lines of parts, of this size inside their seams."""
    (parts, way), seam, (width, height) = line, design.making.seam, size
    made = Product(label, count, width + 2 * seam, height + 2 * seam)
    return draft(Chapter.ASSEMBLY, SewLine(parts, Side.RIGHT, seam, way), _piles(parts, count), (made,))


def _piles(parts: tuple[Placed, ...], count: int) -> tuple[Pile, ...]:
    return tuple(Pile(label, n * count) for label, n in Counter(part.label for part in parts).items())


def _centre(design: Design, setting: Setting, rows: list[Placed]) -> Draft:
    seam = design.making.seam
    press = None if design.making.pressing is Pressing.OPEN else Side.BOTTOM
    parts = tuple(rows)
    made = _top(setting.centre_width, setting.centre_height, seam)
    return draft(Chapter.ASSEMBLY, SewLine(parts, Side.BOTTOM, seam, press), _piles(parts, 1), (made,))


def _top(width: Length, height: Length, seam: Length) -> Product:
    return Product(labels.TOP, 1, width + 2 * seam, height + 2 * seam)


def border_steps(design: Design, setting: Setting, bill: Bill) -> Iterator[Draft]:
    """Return the sewing on of every border strip, in order."""
    seam = design.making.seam
    width, height = setting.centre_width, setting.centre_height
    for strip in setting.borders:
        upright = strip.side in (Side.LEFT, Side.RIGHT)
        width += strip.depth if upright else 0
        height += 0 if upright else strip.depth
        used = (Pile(labels.TOP, 1), Pile(_border_piece(bill, strip, seam), 1))
        yield draft(Chapter.BORDERS, AddBorder(strip.side, seam), used, (_top(width, height, seam),))


def _border_piece(bill: Bill, strip: BorderStrip, seam: Length) -> str:
    size = (strip.length + 2 * seam, strip.depth + 2 * seam)
    ring, pair = str(strip.ring + 1), "side" if strip.side in (Side.LEFT, Side.RIGHT) else "end"
    return next(
        p.label
        for p in bill.of_fabric(strip.fabric)
        if p.purpose is Purpose.BORDER
        and (p.length, p.width) == size
        and _serves(p.used_for, ring)
        and p.name.endswith(f"{pair} strip")
    )


def _serves(used_for: str, ring: str) -> bool:
    """Tell whether a border piece is of this ring; with a single ring its name carries no number."""
    return used_for == "border" or used_for.endswith(f" {ring}")
