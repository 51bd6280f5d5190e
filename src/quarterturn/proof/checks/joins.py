"""Checks of what meets at the seams between units (trade checks 6, 7 and 73).

Each kind of unit has its shape at the corner that was the middle of its master. There the two seams begin along
which the edge of the shape is met; a turn carries them to other sides.
"""

from __future__ import annotations

import cmath
import math
from collections import Counter
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from functools import lru_cache
from typing import TypeAlias

from quarterturn.design import (
    Curve,
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
from quarterturn.proof.checks.laying import Leaf, place_of
from quarterturn.proof.checks.sides import changes, is_slight, laid_unit
from quarterturn.proof.checks.tallying import Turned
from quarterturn.proof.checks.walking import units_of
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

SAME_PLACE = 1e-6
"""Two corners nearer than this, in inches, are one place: the noise of adding lengths as floats."""

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


@dataclass(frozen=True, slots=True)
class Met:
    """What meets in a kind of pair of neighbours, how often the top has it, and the first unit of the first pair."""

    seam: Seam
    count: int
    first: Leaf


@lru_cache(maxsize=2)
def seams_of(design: Design) -> Mapping[Pair, Met]:
    """Return what meets in each kind of pair of neighbours: those side by side first."""
    edges: dict[tuple[Turned, Side], list[Edge]] = {}
    found = {}
    for pair, (count, leaf) in _pairs(design).items():
        first, second, way = pair
        for unit, where in ((first, way), (second, _FACING[way])):
            if (unit, where) not in edges:
                edges[unit, where] = list(_edges(design, unit, where))
        seam = _seam(edges[first, way], edges[second, _FACING[way]], _length(leaf, way))
        slight = _all_but_touches(design, first, way) or _all_but_touches(design, second, _FACING[way])
        found[pair] = Met(replace(seam, doubtful=seam.doubtful or slight), count, leaf)
    return found


def _pairs(design: Design) -> dict[Pair, tuple[int, Leaf]]:
    """Count the pairs of units that share a whole side, as the first one's map shows them; vertical seams first."""
    open_sides: dict[tuple[int, int], tuple[Leaf, int]] = {}
    found: dict[Side, dict[Pair, tuple[int, Leaf]]] = {Side.RIGHT: {}, Side.BOTTOM: {}}
    for leaf in units_of(design):
        for number in range(4):
            spot = _spot(leaf, number)
            if (other := open_sides.pop(spot, None)) is None:
                open_sides[spot] = leaf, number
            elif _share(*other, leaf, number):
                pair, first = _as_mapped(*other, leaf)
                count, earlier = found[pair[2]].get(pair, (0, first))
                found[pair[2]][pair] = count + 1, earlier
    return found[Side.RIGHT] | found[Side.BOTTOM]


def _ends(leaf: Leaf, number: int) -> tuple[complex, complex]:
    """Return the ends of a side of a unit, counted clockwise from its own top."""
    width, height = (float(side) for side in leaf.size)
    corners = (0j, complex(width, 0), complex(width, height), complex(0, height))
    return leaf.motion(corners[number]), leaf.motion(corners[(number + 1) % 4])


def _length(leaf: Leaf, way: Side) -> float:
    """Return the length of the side of a unit that lies to the right, or below, as its map shows it."""
    width, height = leaf.size[::-1] if leaf.turn % 2 else leaf.size
    return float(height if way is Side.RIGHT else width)


def _spot(leaf: Leaf, number: int) -> tuple[int, int]:
    """Return where the middle of a side lies, so roughly that sums of floats agree; no ruler's mark is torn."""
    a, b = _ends(leaf, number)
    middle = (a + b) / 2
    return int((middle.real + 1) * 1024 + 0.25), int((middle.imag + 1) * 1024 + 0.25)


def _share(one: Leaf, side: int, other: Leaf, other_side: int) -> bool:
    """Tell whether two sides are one seam: the ends of one are those of the other."""
    a, b = _ends(one, side)
    c, d = _ends(other, other_side)
    return abs(a - d) < SAME_PLACE and abs(b - c) < SAME_PLACE


def _as_mapped(one: Leaf, side: int, other: Leaf) -> tuple[Pair, Leaf]:
    """Return two neighbours as the map of the earlier one shows them: one right of, or below, the other."""
    frame = one.motion.factor / 1j**one.turn
    turn = round(cmath.phase(other.motion.factor / frame) / (math.pi / 2)) % 4
    way = _SIDES[(side + one.turn) % 4]
    here, there = (one.name, one.turn), (other.name, turn)
    if way in _FACING:
        return (here, there, way), one
    return (there, here, _SIDES[(side + one.turn + 2) % 4]), other


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
        "horizontal": (2 if low else 0, left),
        "vertical": (1 if left else 3, low),
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
    stepping = [(pair, met) for pair, met in seams_of(design).items() if met.seam.steps]
    if not stepping:
        return
    worst, met = max(stepping, key=lambda step: step[1].seam.distance)
    recipe = _recipe_of(design, worst[0][0])
    sentence = (
        f"At {show_count(sum(each.count for _, each in stepping), 'seam')} the curves of neighbours nearly meet: "
        f"they step by up to {near(met.seam.distance, units)}.{_where_met(design, worst)}"
    )
    yield Fault(met.first.key, sentence, _mended(recipe, units), place_of(met.first))


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


MOVED = "Move or resize its shapes, or turn the units."
RESIZED = "Make its shape larger or smaller, so that the curves come to the sides alike; or turn the units."


def _mended(recipe: Recipe, units: Units) -> str:
    true = "" if recipe.curve is Curve.SEWN_TRUE else f'Set curve = "sewn true" in recipes.{recipe.name}'
    if recipe.kind is RecipeKind.SHAPES:
        return f"{true}, move or resize its shapes, or turn the units." if true else MOVED
    if isinstance(recipe.size, DrawnOutline):
        return f"{true} where its own quarters meet; or turn the units." if true else RESIZED
    return (
        f"For paths that flow set shape = {{ flow = true }} in recipes.{recipe.name}, so that the curve meets the "
        f"middle of the side, {show_length(recipe.finished / 2, units, sixteenths=True)}; or turn the units."
    )


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
    for pair, met in seams_of(design).items():
        if met.seam.rejoined:
            found[_recipe_of(design, pair[0][0]).name] += met.count
    return found


def joins_drawn(pattern: Pattern) -> Iterator[Fault]:
    """Hold the joins that the setting lists against the map."""
    wanted: Counter[Meeting] = Counter()
    seams = seams_of(pattern.design).values()
    if any(met.seam.doubtful for met in seams):
        return
    for met in seams:
        wanted[Meeting.MATCH] += met.seam.matches * met.count
        wanted[Meeting.STEP] += met.seam.steps * met.count
        wanted[Meeting.END] += met.seam.ends * met.count
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
