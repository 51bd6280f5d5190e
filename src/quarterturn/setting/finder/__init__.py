"""Find settings: every way to lay a block of k × k units, told apart and put in order.

In:  a design with its blocks, the colourways to use, the size of a block and how it is laid.
Out: how many settings are different (exactly), and the best of them with their scores.
Promise: equal questions have equal answers; where not all ways are looked at, the result says so.
"""

from quarterturn.setting.finder.counting import canonical, count_different, representatives
from quarterturn.setting.finder.moves import Block, Move, moves_of
from quarterturn.setting.finder.scoring import Judge, Score
from quarterturn.setting.finder.search import (
    LARGEST_SIZE,
    MOST_CODES,
    SEED,
    Found,
    SearchError,
    Selection,
    codes_of,
    find_settings,
)
from quarterturn.setting.finder.text import looked_at, map_lines, measures, selection_text

__all__ = [
    "LARGEST_SIZE",
    "MOST_CODES",
    "SEED",
    "Block",
    "Found",
    "Judge",
    "Move",
    "Score",
    "SearchError",
    "Selection",
    "canonical",
    "codes_of",
    "count_different",
    "find_settings",
    "looked_at",
    "map_lines",
    "measures",
    "moves_of",
    "representatives",
    "selection_text",
]
