"""Checks of what meets at the seams between units (trade checks 6, 7 and 73).

The shape lies in the corner that a unit's turn tells: 0 top left, 1 top right, 2 bottom right, 3 bottom left.
Its edge leaves each of the two sides at the crossing a, measured from that corner.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise
from typing import TypeAlias

from quarterturn.design import Design, Severity, dotted
from quarterturn.measure import show_count, show_length
from quarterturn.proof.checks.drafting import draft_of
from quarterturn.proof.checks.fault import REBUILD, Fault, check, near, tell
from quarterturn.proof.checks.mapping import Turned, key_of_row, map_of, place_of
from quarterturn.proof.model import Pattern
from quarterturn.setting import Meeting, Side

MATCHED = 1 / 32
"""Edges nearer than this, in inches, meet (trade check 6)."""

MEANT = 0.25
"""Edges nearer than this share of the seam are meant to meet."""

TOUCHING = 1e-6
"""A curve that leaves a side this near to its far end, in inches, leaves it at the corner: the shape fills the side."""

WIDEST_PEAK = 10.0
"""Degrees. Where two halves of a curve are rejoined, a softer corner passes for round (trade check 7)."""

_CORNERS = {Side.RIGHT: (1, 2), Side.LEFT: (0, 3), Side.TOP: (0, 1), Side.BOTTOM: (3, 2)}
"""Turns that bring the shape to the near (top or left) and to the far end of a side."""
_FACING = {Side.RIGHT: Side.LEFT, Side.BOTTOM: Side.TOP}

Pair: TypeAlias = tuple[Turned, Turned, Side]


@dataclass(frozen=True, slots=True)
class Seam:
    """What meets at a seam: how many edges match, step or end; how far the step; whether halves are rejoined."""

    matches: int = 0
    steps: int = 0
    ends: int = 0
    distance: float = 0.0
    rejoined: bool = False
    doubtful: bool = False
    """So near to where a step begins or ends that two ways of calculating may differ."""


def seams_of(design: Design) -> dict[Pair, tuple[Seam, int]]:
    """Return what meets in each kind of pair of neighbours, and how often the map has it."""
    side = float(design.recipes[0].finished)
    crossing = {
        c.code: draft_of(design, design.recipe(c.recipe)).crossing if c.ground != c.shape else None
        for c in design.colourways
    }
    return {pair: (_seam(pair, crossing, side), count) for pair, count in _pairs(design)}


def _pairs(design: Design) -> Iterator[tuple[Pair, int]]:
    """Count the pairs: each unit with its right one, and with the one below. Equal rows are gone through once."""
    rows = [tuple(row) for row in map_of(design)]
    level: Counter[tuple[Turned, Turned]] = Counter()
    upright: Counter[tuple[Turned, Turned]] = Counter()
    for row, count in Counter(rows).items():
        for pair in pairwise(row):
            level[pair] += count
    for (upper, lower), count in Counter(pairwise(rows)).items():
        for pair in zip(upper, lower, strict=True):
            upright[pair] += count
    for pairs, way in ((level, Side.RIGHT), (upright, Side.BOTTOM)):
        yield from (((first, second, way), count) for (first, second), count in pairs.items())


def _seam(pair: Pair, crossing: dict[str, float | None], side: float) -> Seam:
    first, second, way = pair
    a = _edge(first, way, crossing, side)
    b = _edge(second, _FACING[way], crossing, side)
    if a is None or b is None:
        return Seam(ends=(a is not None) + (b is not None))
    distance = abs(a[0] - b[0])
    doubtful = any(abs(distance - limit) < TOUCHING for limit in (MATCHED, MEANT * side))
    if distance <= MATCHED:
        return Seam(matches=1, distance=distance, rejoined=a[1] == b[1], doubtful=doubtful)
    if distance <= MEANT * side:
        return Seam(steps=1, distance=distance, doubtful=doubtful)
    return Seam(ends=2, doubtful=doubtful)


def _edge(
    unit: Turned, way: Side, crossing: dict[str, float | None], side: float
) -> tuple[float, bool] | None:
    """Return where a unit's curve leaves its side, and whether its shape is at the near end."""
    code, turn = unit
    at, (near, far) = crossing[code], _CORNERS[way]
    if at is None or at >= side - TOUCHING or turn not in (near, far):
        return None
    return (at, True) if turn == near else (side - at, False)


def stepping_edges(pattern: Pattern) -> Iterator[Fault]:
    """Tell of curves that nearly meet at a seam."""
    design, units = pattern.design, pattern.design.units
    stepping = [
        (seam.distance, count, pair) for pair, (seam, count) in seams_of(design).items() if seam.steps
    ]
    if not stepping:
        return
    distance, _, worst = max(stepping, key=lambda step: step[0])
    row, column = _first(design, worst)
    recipe = design.recipe(design.colourway(worst[0][0]).recipe)
    sentence = (
        f"At {show_count(sum(count for _, count, _ in stepping), 'seam')} the curves of neighbours nearly meet: "
        f"they step by up to {near(distance, units)}."
    )
    remedy = (
        f"For paths that flow set shape = {{ flow = true }} in recipes.{recipe.name}, so that the curve meets the "
        f"middle of the side, {show_length(recipe.finished / 2, units, sixteenths=True)}; or turn the units."
    )
    yield Fault(key_of_row(design, row), sentence, remedy, place_of(row, column))


def _first(design: Design, pair: Pair) -> tuple[int, int]:
    """Return row and column of the first unit that makes a pair."""
    first, second, way = pair
    rows = map_of(design)
    down, right = (1, 0) if way is Side.BOTTOM else (0, 1)
    for r in range(len(rows) - down):
        for c in range(len(rows[0]) - right):
            if rows[r][c] == first and rows[r + down][c + right] == second:
                return r, c
    raise ValueError(f"the map has no pair {pair}")


def peaks(pattern: Pattern) -> Iterator[Fault]:
    """Tell of the corner that a plain circle makes where two of its halves are rejoined."""
    design, units = pattern.design, pattern.design.units
    rejoined = _rejoined_seams(design)
    for recipe in design.recipes:
        draft = draft_of(design, recipe)
        if draft.peak > WIDEST_PEAK and rejoined[recipe.name]:
            sentence = (
                f"Where curves of {recipe.name} are rejoined they make a corner of {draft.peak:.0f}°, at "
                f"{show_count(rejoined[recipe.name], 'seam')}: the seams take {tell(design.making.seam, units)} "
                "off each side of the cut."
            )
            remedy = 'Set curve = "sewn true", make the shape larger, or leave it so if the peak is wanted.'
            yield Fault(dotted("recipes", recipe.name, "curve"), sentence, remedy)


def _rejoined_seams(design: Design) -> Counter[str]:
    found: Counter[str] = Counter()
    for pair, (seam, count) in seams_of(design).items():
        if seam.rejoined:
            found[design.colourway(pair[0][0]).recipe] += count
    return found


def joins_drawn(pattern: Pattern) -> Iterator[Fault]:
    """Hold the joins that the setting lists against the map."""
    wanted: Counter[Meeting] = Counter()
    seams = seams_of(pattern.design).values()
    if any(seam.doubtful for seam, _ in seams):
        return
    for seam, count in seams:
        wanted[Meeting.MATCH] += seam.matches * count
        wanted[Meeting.STEP] += seam.steps * count
        wanted[Meeting.END] += seam.ends * count
    found = {
        meeting: sum(mark.meeting is meeting for join in pattern.setting.joins for mark in join.marks)
        for meeting in Meeting
    }
    for meeting in Meeting:
        if wanted[meeting] != found[meeting]:
            sentence = (
                f"The setting counts {found[meeting]} edges that {meeting.value} at a seam; the map has "
                f"{wanted[meeting]}."
            )
            yield Fault("setting.map", sentence, REBUILD)


JOINS = (
    check("edges-step", Severity.CONFUSES, (6, 73), "Curves that are meant to meet do meet.", stepping_edges),
    check("seam-peaks", Severity.CONFUSES, (7,), "Rejoined curves make no sharp corner.", peaks),
    check("joins-miscounted", Severity.STOPS, (6, 73), "The joins are those of the map.", joins_drawn),
)
