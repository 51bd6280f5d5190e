"""Checks of what meets at the seams between units (trade checks 6, 7 and 73).

Each kind of unit has its shape at the corner that was the middle of its master. There the two seams begin along
which the edge of the shape is met; a turn carries them to other sides.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, replace
from itertools import pairwise
from typing import TypeAlias

from quarterturn.design import (
    Design,
    DrawnOutline,
    Recipe,
    RecipeKind,
    Severity,
    code_of_unit,
    dotted,
    quarter_of_unit,
)
from quarterturn.measure import Units, show_count, show_length
from quarterturn.proof.checks.drafting import Draft, draft_of
from quarterturn.proof.checks.fault import REBUILD, Fault, check, near, tell
from quarterturn.proof.checks.finished import unit_size
from quarterturn.proof.checks.mapping import Turned, key_of_row, map_of, place_of
from quarterturn.proof.checks.sides import changes, is_slight, laid_unit
from quarterturn.proof.model import Pattern
from quarterturn.setting import Meeting, Side

MATCHED = 1 / 32
"""Edges nearer than this, in inches, meet (trade check 6)."""

MEANT = 0.25
"""Edges nearer than this share of the seam are meant to meet."""

TOUCHING = 1e-6
"""A curve that leaves a side this near to its far end, in inches, leaves it at the corner: the shape fills the side."""

DOUBT = 1e-4
"""Two ways of calculating may differ by this, in inches, where a curve is measured as a polygon."""

WIDEST_PEAK = 10.0
"""Degrees. Where two halves of a curve are rejoined, a softer corner passes for round (trade check 7)."""

_SIDES = (Side.TOP, Side.RIGHT, Side.BOTTOM, Side.LEFT)
"""Clockwise, as a turn carries them."""
_FACING = {Side.RIGHT: Side.LEFT, Side.BOTTOM: Side.TOP}

Pair: TypeAlias = tuple[Turned, Turned, Side]


@dataclass(frozen=True, slots=True)
class Edge:
    """Where a shape's edge meets a side, from its near end (top or left), and whether the shape is on that side."""

    at: float
    shape_near: bool


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
    edges: dict[tuple[Turned, Side], list[Edge]] = {}
    found = {}
    for pair, count in _pairs(design):
        first, second, way = pair
        for unit, where in ((first, way), (second, _FACING[way])):
            if (unit, where) not in edges:
                edges[unit, where] = list(_edges(design, unit, where))
        length = float(unit_size(design, *first)[1 if way is Side.RIGHT else 0])
        seam = _seam(edges[first, way], edges[second, _FACING[way]], length)
        slight = _all_but_touches(design, first, way) or _all_but_touches(design, second, _FACING[way])
        found[pair] = replace(seam, doubtful=seam.doubtful or slight), count
    return found


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


def _seam(first: list[Edge], second: list[Edge], side: float) -> Seam:
    """Pair the edges of two sides, the nearest first; those that find none within reach end at the seam."""
    near_pairs = sorted((abs(a.at - b.at), i, j) for i, a in enumerate(first) for j, b in enumerate(second))
    doubtful = any(abs(d - limit) < DOUBT for d, _, _ in near_pairs for limit in (MATCHED, MEANT * side))
    left, right = set(range(len(first))), set(range(len(second)))
    matches = steps = 0
    farthest, rejoined = 0.0, False
    for distance, i, j in near_pairs:
        if i not in left or j not in right or distance > MEANT * side:
            continue
        left.remove(i)
        right.remove(j)
        farthest = max(farthest, distance)
        matches += distance <= MATCHED
        steps += distance > MATCHED
        rejoined |= distance <= MATCHED and first[i].shape_near == second[j].shape_near
    return Seam(matches, steps, len(left) + len(right), farthest, rejoined, doubtful)


def _edges(design: Design, unit: Turned, where: Side) -> Iterator[Edge]:
    """Return where the edges of a turned unit's shapes meet one of its sides.

    An edge at the far end is none: there the shape fills the side.
    """
    colourway = design.colourway(code_of_unit(unit[0]))
    if colourway.is_rejoined or design.recipe(colourway.recipe).kind is RecipeKind.SHAPES:
        yield from _laid_edges(design, unit, where)
    elif colourway.ground != colourway.shape:
        recipe = design.recipe(colourway.recipe)
        yield from _drafted_edges(draft_of(design, recipe), unit, where, float(recipe.finished_width))


def _all_but_touches(design: Design, unit: Turned, where: Side) -> bool:
    """Tell whether a curve of a unit of general recipes all but touches one of its sides."""
    name, turn = unit
    colourway = design.colourway(code_of_unit(name))
    if not colourway.is_rejoined and design.recipe(colourway.recipe).kind is not RecipeKind.SHAPES:
        return False
    return is_slight(laid_unit(design, name), _SIDES[(_SIDES.index(where) - turn) % 4])


def _drafted_edges(draft: Draft, unit: Turned, where: Side, side: float) -> Iterator[Edge]:
    name, turn = unit
    quarter = quarter_of_unit(name)
    low, left = quarter.startswith("t"), quarter.endswith("l")
    seams = {
        "level": (2 if low else 0, left),
        "upright": (1 if left else 3, low),
    }
    for way, (index, from_far_end) in seams.items():
        if _SIDES[(index + turn) % 4] is not where:
            continue
        for off, shape_at_corner in draft.meets[quarter, way]:
            if off < side - TOUCHING:
                yield _carried(off, shape_at_corner, from_far_end, index, turn, side)


def _laid_edges(design: Design, unit: Turned, where: Side) -> Iterator[Edge]:
    """Return where one fabric gives way to another along a side of a unit laid out as polygons."""
    name, turn = unit
    laid = laid_unit(design, name)
    order, index = list(laid.seen), (_SIDES.index(where) - turn) % 4
    side = _SIDES[index]
    length = laid.width if side in (Side.TOP, Side.BOTTOM) else laid.height
    for change in changes(laid)[side]:
        if design.cloth(name, change.near) != design.cloth(name, change.far):
            above = order.index(change.near) > order.index(change.far)
            yield _carried(change.at, above, False, index, turn, length)


def _carried(off: float, near: bool, from_far_end: bool, index: int, turn: int, side: float) -> Edge:
    """Return an edge as it lies when its side has been carried round: twice in a round, near and far change."""
    far = from_far_end
    for step in range(turn):
        far ^= (index + step) % 4 in (1, 3)
    return Edge(side - off, not near) if far else Edge(off, near)


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
    recipe = _recipe_of(design, worst[0][0])
    sentence = (
        f"At {show_count(sum(count for _, count, _ in stepping), 'seam')} the curves of neighbours nearly meet: "
        f"they step by up to {near(distance, units)}.{_where_met(design, worst)}"
    )
    yield Fault(key_of_row(design, row), sentence, _mended(recipe, units), place_of(row, column))


def _where_met(design: Design, pair: Pair) -> str:
    """Say how the step comes about where a circle meets its own turned neighbour: at a, and at u − a."""
    recipes = {_recipe_of(design, name) for name, _ in pair[:2]}
    recipe = min(recipes, key=lambda each: each.name)
    along = draft_of(design, recipe).crossing
    if len(recipes) > 1 or along is None or isinstance(recipe.size, DrawnOutline):
        return ""
    there, here = near(float(recipe.finished) - along, design.units), near(along, design.units)
    return f" The curve of {recipe.name} meets the side {here} from one end, and so {there} from the other."


def _recipe_of(design: Design, name: str) -> Recipe:
    """Return the recipe of the masters that a unit comes from."""
    code, *_ = design.masters_of(code_of_unit(name))
    return design.recipe(design.colourway(code).recipe)


def _mended(recipe: Recipe, units: Units) -> str:
    if recipe.kind is RecipeKind.SHAPES:
        return (
            f'Set curve = "sewn true" in recipes.{recipe.name}, move or resize its shapes, or turn the units.'
        )
    if isinstance(recipe.size, DrawnOutline):
        return f'Set curve = "sewn true" in recipes.{recipe.name} where its own quarters meet; or turn the units.'
    return (
        f"For paths that flow set shape = {{ flow = true }} in recipes.{recipe.name}, so that the curve meets the "
        f"middle of the side, {show_length(recipe.finished / 2, units, sixteenths=True)}; or turn the units."
    )


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
    """Tell of the corner that a curve makes where it is rejoined and its outline has none."""
    design, units = pattern.design, pattern.design.units
    rejoined = _rejoined_seams(design)
    for recipe in design.recipes:
        drafted = draft_of(design, recipe).peak
        peak = pattern.blocks.master(recipe.name).facts.peak if drafted is None else drafted
        if peak > WIDEST_PEAK and rejoined[recipe.name]:
            sentence = (
                f"Where curves of {recipe.name} are rejoined they make a corner of {peak:.0f}°, at "
                f"{show_count(rejoined[recipe.name], 'seam')}: the seams take {tell(design.making.seam, units)} "
                "off each side of the cut."
            )
            remedy = 'Set curve = "sewn true", make the shape larger, or leave it so if the peak is wanted.'
            yield Fault(dotted("recipes", recipe.name, "curve"), sentence, remedy)


def _rejoined_seams(design: Design) -> Counter[str]:
    found: Counter[str] = Counter()
    for pair, (seam, count) in seams_of(design).items():
        if seam.rejoined:
            found[_recipe_of(design, pair[0][0]).name] += count
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
