"""Time the finder: how fast blocks are listed, scored, and searched."""

from __future__ import annotations

from functools import partial

from benchmarks.timing import Row, timed
from quarterturn.blocks import draft_blocks
from quarterturn.design import Symmetry
from quarterturn.measure import show_count
from quarterturn.setting.finder import Judge, find_settings, moves_of, representatives
from quarterturn.setting.known import known_setting

CASES = (
    (Symmetry.SLIDE, 2, "ab"),
    (Symmetry.TURN, 2, "ab"),
    (Symmetry.SLIDE, 3, "a"),
    (Symmetry.MIRROR, 3, "a"),
    (Symmetry.SLIDE, 3, "ab"),
    (Symmetry.SLIDE, 4, "ab"),
)


def finding_rows() -> list[Row]:
    """Time whole searches, and how many blocks are listed and scored in a second."""
    return [*(_search_row(*case) for case in CASES), _listing_row(), _scoring_row()]


def _search_row(symmetry: Symmetry, size: int, codes: str) -> Row:
    design = known_setting("drunkards-path").design
    blocks = draft_blocks(design)
    search = partial(find_settings, design, blocks, tuple(codes), size, symmetry, 12)
    selection = search()
    looked_at = selection.different if selection.sampled is None else selection.sampled
    row = timed(f"{size} × {size}, {symmetry.value}, {show_count(len(codes), 'colourway')}", search, runs=3)
    return Row(row.name, row.middle, row.least, f"{_rate(looked_at, row)} settings a second")


def _listing_row() -> Row:
    moves = moves_of(Symmetry.SLIDE, 3, 1)
    row = timed("list 3 × 3, slide, 1 colourway", lambda: list(representatives(moves)), runs=3)
    return Row(row.name, row.middle, row.least, f"{_rate(4**9, row)} blocks a second")


def _scoring_row() -> Row:
    design = known_setting("drunkards-path").design
    judge = Judge(design, draft_blocks(design), ("a", "b"), Symmetry.SLIDE, 3)
    listed = list(representatives(moves_of(Symmetry.SLIDE, 3, 1)))
    row = timed("score them", lambda: [judge.score(block) for block in listed], runs=3)
    return Row(row.name, row.middle, row.least, f"{_rate(len(listed), row)} blocks a second")


def _rate(count: int, row: Row) -> str:
    return f"{count / row.least * 1000:,.0f}"
