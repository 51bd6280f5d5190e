"""The text form of a search: what was looked at, and a line for each setting."""

from __future__ import annotations

from quarterturn.design import Map, Symmetry, map_word
from quarterturn.measure import aligned, show_count
from quarterturn.setting.finder.scoring import Score
from quarterturn.setting.finder.search import SEED, Found, Selection

_LAID = {
    Symmetry.SLIDE: "slid",
    Symmetry.MIRROR: "mirrored",
    Symmetry.TURN: "turned",
    Symmetry.HALF_TURN: "half turned",
}


def selection_text(selection: Selection) -> str:
    """Return what was looked at, and for each setting its number, score, measures in hundredths, and map."""
    head = ("", "score", "flow", "rounds", "cloth", "balance", "map")
    rows = [head, *(_row(number, found) for number, found in enumerate(selection.best, start=1))]
    return "\n".join((*looked_at(selection), *aligned(rows, indent="", right=range(6)), ""))


def looked_at(selection: Selection) -> tuple[str, str]:
    """Return two sentences: what is laid, in how many different ways; and which of them were looked at."""
    size, codes = selection.size, selection.codes
    units = f"{size} × {size} units of {'colourway' if len(codes) == 1 else 'colourways'} {', '.join(codes)}"
    different = show_count(selection.different, "different setting")
    what = f"{units}, {_LAID[selection.symmetry]}: {different} in {selection.ways:,} ways to lay them."
    if selection.sampled is None:
        return what, f"All were looked at; these are the best {len(selection.best)}."
    drawn = f"{selection.sampled:,} ways were drawn by lot (seed {SEED}) and the best of those improved"
    return what, f"{drawn}; there may be better ones than these {len(selection.best)}."


def map_lines(cells: Map) -> list[str]:
    """Return the rows of a map as a design file has them."""
    wide = max(len(map_word(cell)) for row in cells for cell in row)
    return [" ".join(map_word(cell).ljust(wide) for cell in row).rstrip() for row in cells]


def measures(score: Score) -> tuple[str, str, str, str, str]:
    """Return the score and its four measures as they are printed."""
    parts = (score.flow, score.rounds, score.cloth, score.balance)
    flow, rounds, cloth, balance = (f"{100 * part:.0f}" for part in parts)
    return f"{score.total:.1f}", flow, rounds, cloth, balance


def _row(number: int, found: Found) -> tuple[str, ...]:
    return str(number), *measures(found.score), " / ".join(map_lines(found.cells))
