"""A drawing at true size laid on paper: on one page where it fits, else tiled over several."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass

from quarterturn.design import Design, Paper
from quarterturn.geometry import Bounds, Path, Point
from quarterturn.publish.clearing import text_box
from quarterturn.publish.paper import BLEED, PAPER_MM, Head, body, corner, page, wrapped
from quarterturn.publish.sheet import Mark, Sheet, Text
from quarterturn.publish.tiles import Tile, join_marks, key_marks, placed, seen_through, tiling

LINE = 0.5
"""Room for the width of the outermost line."""


@dataclass(frozen=True, slots=True)
class Draft:
    """A page before it knows its number: head, marks, and what it shows, in words."""

    head: Head
    marks: tuple[Mark, ...]
    alt: str


@dataclass(frozen=True, slots=True)
class Drawn:
    """A drawing in millimetres about its middle, which is the origin. `extent` holds its outermost line.

    `inner_width` is that of the lines that must stay inside the margins; the outermost may run into the bleed.
    `points` lie along its lines, so that join marks keep clear of them; `outline` stands for it in the key.
    """

    extent: tuple[float, float]
    inner_width: float
    marks: tuple[Mark, ...]
    marks_when_tiled: tuple[Mark, ...]
    points: Sequence[Point]
    outline: Path
    alt: Callable[[str], str]
    """Says what is drawn, told which part of it a page shows."""


def pattern_name(design: Design) -> str:
    """Return title and number of a pattern, as every page bears them."""
    return f"{design.title} (no. {design.number})" if design.number else design.title


def numbered(paper: Paper, draft: Draft, number: int, count: int) -> Sheet:
    """Return a page that says which of how many it is."""
    head = Head(draft.head.title, draft.head.rows, draft.head.legend, number, count)
    return page(paper, head, draft.marks, draft.alt)


def drawn_pages(drawn: Drawn, head: Head, paper: Paper, first: int) -> Iterator[Draft]:
    """Return the page of a drawing, or the pages over which it is tiled; the first of them has the number `first`."""
    room = body(paper, head)
    if _fits(drawn, room, PAPER_MM[paper][0]):
        whole = Tile(0, 0, Bounds(0, 0, 0, 0))
        yield Draft(head, placed(whole, room, drawn.marks), drawn.alt("whole"))
    else:
        yield from _tiled_pages(drawn, head, paper, first)


def _fits(drawn: Drawn, room: Bounds, paper_width: float) -> bool:
    width, height = drawn.extent
    return drawn.inner_width <= room.width and width <= paper_width - 2 * BLEED and height <= room.height


def _tiled_pages(drawn: Drawn, head: Head, paper: Paper, first: int) -> Iterator[Draft]:
    rows = (*head.rows, *wrapped(paper, _how_to_join()))
    room = body(paper, Head(head.title, rows, head.legend))
    width, height = drawn.extent
    tiles = tiling((width + LINE, height + LINE), (room.width, room.height))
    taken = [*drawn.points, *_lettered(drawn.marks_when_tiled)]
    for number, tile in enumerate(tiles.tiles, 1):
        shown = (*join_marks(tiles, tile, taken), *seen_through(tile.window, drawn.marks_when_tiled))
        key = tuple(key_marks(tiles, tile, drawn.outline, corner(paper), first))
        part = f"part {number} of {len(tiles.tiles)}, row {tile.row + 1}, column {tile.column + 1}"
        titled = Head(f"{head.title}, part {number} of {len(tiles.tiles)}", rows, head.legend)
        yield Draft(titled, (*placed(tile, room, shown), *key), drawn.alt(part))


def _lettered(marks: Iterable[Mark]) -> Iterator[Point]:
    """Return points on all lettering, near enough to one another for diamonds to keep clear of it."""
    for mark in marks:
        if isinstance(mark, Text):
            left, right, *_ = text_box(mark)
            yield from (left + (right - left) * k / 8 for k in range(9))


def _how_to_join() -> str:
    return (
        "Joining: cut one page along the middle of the grey line through its diamonds, lay it on the same line of the"
        " next page so that diamonds with equal numbers meet, and tape."
    )
