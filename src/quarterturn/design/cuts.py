"""The straight cuts of a master: by a word, or as lines each through two points."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping, Sequence
from itertools import combinations
from types import MappingProxyType
from typing import Any

from quarterturn.design import limits
from quarterturn.design.notes import Notes, did_you_mean, quoted
from quarterturn.design.recipes import Cut
from quarterturn.measure import Length, Units

Cuts = tuple[Cut, ...]
_NOTHING = Length(0)


def cut_down(width: Length, height: Length) -> Cut:
    """Return the cut down the middle of a master."""
    return Cut(_NOTHING, -height / 2, _NOTHING, height / 2)


def cut_across(width: Length, height: Length) -> Cut:
    """Return the cut across the middle of a master, from its right to its left."""
    return Cut(width / 2, _NOTHING, -width / 2, _NOTHING)


def _falling(width: Length, height: Length) -> Cut:
    return Cut(-width / 2, -height / 2, width / 2, height / 2)


def _rising(width: Length, height: Length) -> Cut:
    return Cut(-width / 2, height / 2, width / 2, -height / 2)


CUT_WORDS: Mapping[str, tuple[Callable[[Length, Length], Cut], ...]] = MappingProxyType(
    {
        "none": (),
        "across": (cut_across,),
        "down": (cut_down,),
        "both ways": (cut_down, cut_across),
        "one diagonal": (_falling,),
        "both diagonals": (_falling, _rising),
    }
)
"""Word -> the cuts of a master of some width and height, in the order of cutting. One diagonal falls to the right."""


def pieces_of(cuts: Cuts) -> tuple[int, int] | None:
    """Return how many units lie across and down a master where cuts leave equal sizes; None where they do not.

    They do where each runs through the middle, vertical or horizontal, whether said by a word or as a line.
    """
    vertical = [cut for cut in cuts if cut.start_x == cut.end_x == 0]
    horizontal = [cut for cut in cuts if cut.start_y == cut.end_y == 0]
    if len(vertical) + len(horizontal) < len(cuts):
        return None
    return len(vertical) + 1, len(horizontal) + 1


def cuts_of_word(word: str, width: Length, height: Length) -> Cuts:
    """Return the cuts that a word of CUT_WORDS means on a master of this size."""
    return tuple(make(width, height) for make in CUT_WORDS[word])


def word_of_cuts(cuts: Cuts, width: Length, height: Length) -> str | None:
    """Return the word that means just these cuts, if there is one."""
    return next((word for word in CUT_WORDS if cuts_of_word(word, width, height) == cuts), None)


def read_cuts(raw: Any, key: str, notes: Notes) -> str | Cuts | None:
    """Read a word of CUT_WORDS, or lines; None where it is neither, which is noted."""
    if raw is None:
        notes.missing(key, f'Write cuts = "both ways"; other words are {_words()}.')
        return None
    if isinstance(raw, str):
        if raw in CUT_WORDS:
            return raw
        notes.add(
            "unknown-word", key, f"{quoted(raw)} is not a word for `cuts`.", did_you_mean(raw, CUT_WORDS)
        )
        return None
    if not isinstance(raw, list) or not raw:
        notes.add("wrong-type", key, "`cuts` is neither a word nor a list of lines.", _how_to_write(notes))
        return None
    if len(raw) > limits.MOST_CUTS:
        notes.add("too-many", key, f"There are {len(raw)} cuts.", f"Keep to {limits.MOST_CUTS}.")
        return None
    lines = [_read_line(line, f"{key}.{index}", notes) for index, line in enumerate(raw)]
    cuts = tuple(line for line in lines if line is not None)
    return cuts if len(cuts) == len(lines) and are_apart(cuts, key, notes) else None


def _read_line(raw: Any, key: str, notes: Notes) -> Cut | None:
    if not isinstance(raw, list) or len(raw) != 2:
        notes.add("wrong-type", key, "A cut is a line through two points.", _how_to_write(notes))
        return None
    points = [read_point(point, f"{key}.{index}", notes) for index, point in enumerate(raw)]
    start, end = points
    if start is None or end is None:
        return None
    if start == end:
        sentence = "The two points of the cut are one point, which leaves its direction open."
        notes.add("cut-unclear", key, sentence, "Give two points that differ.")
        return None
    return Cut(*start, *end)


def read_point(raw: Any, key: str, notes: Notes) -> tuple[Length, Length] | None:
    """Read a point as two lengths, right of and below the middle of the master; None where it is none."""
    if not isinstance(raw, list) or len(raw) != 2 or not all(_is_measure(each) for each in raw):
        example = "['15 mm', '-30 mm']" if notes.units is Units.METRIC else "['1/2\"', '-1\"']"
        sentence = "A point is two lengths: how far right of the middle of the master, and how far below."
        notes.add("wrong-type", key, sentence, f"Write {example}; to the left and above they are negative.")
        return None
    x, y = (notes.length(each, f"{key}.{index}", limits.OFF_MIDDLE) for index, each in enumerate(raw))
    return None if x is None or y is None else (x, y)


def _is_measure(raw: Any) -> bool:
    return (
        isinstance(raw, str | int | float)
        and not isinstance(raw, bool)
        and not (isinstance(raw, float) and math.isnan(raw))
    )


def are_apart(cuts: Sequence[Cut], key: str, notes: Notes) -> bool:
    """Tell whether no two cuts run along one line, and note where two do."""
    for (i, one), (j, other) in combinations(enumerate(cuts), 2):
        if _off(one, other.start_x, other.start_y) == _off(one, other.end_x, other.end_y) == 0:
            sentence = f"Cuts {i + 1} and {j + 1} run along one line."
            notes.add("cut-unclear", f"{key}.{j}", sentence, "Leave one of them out.")
            return False
    return True


def _off(cut: Cut, x: Length, y: Length) -> Length:
    """Return twice the area of the triangle that a point makes with a cut: 0 on its line."""
    return (cut.end_x - cut.start_x) * (y - cut.start_y) - (cut.end_y - cut.start_y) * (x - cut.start_x)


def _how_to_write(notes: Notes) -> str:
    a, b = ("'-40 mm'", "'40 mm'") if notes.units is Units.METRIC else ("'-4\"'", "'4\"'")
    return (
        f"Write cuts = [[[{a}, 0], [{b}, 0]]], a pair of points for each cut; or one of the words {_words()}."
    )


def _words() -> str:
    words = [f'"{word}"' for word in CUT_WORDS]
    return f"{', '.join(words[:-1])} and {words[-1]}"
