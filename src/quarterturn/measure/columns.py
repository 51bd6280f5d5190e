"""Plain text in aligned columns, for the text forms of the stages."""

from __future__ import annotations

from collections.abc import Iterable, Sequence


def aligned(rows: Iterable[Sequence[str]], indent: str = "  ", right: Iterable[int] = ()) -> list[str]:
    """Return a line for each row, its cells padded to the widest of their column, two spaces apart.

    Columns numbered in `right` are set flush right. A short row leaves its last columns empty; no line ends in space.
    """
    table, flush = [tuple(row) for row in rows], set(right)
    count = max((len(row) for row in table), default=0)
    widths = [max(len(row[i]) for row in table if i < len(row)) for i in range(count)]
    return [indent + _line(row, widths, flush) for row in table]


def _line(row: Sequence[str], widths: Sequence[int], flush: set[int]) -> str:
    cells = (
        cell.rjust(width) if number in flush else cell.ljust(width)
        for number, (cell, width) in enumerate(zip(row, widths, strict=False))
    )
    return "  ".join(cells).rstrip()
