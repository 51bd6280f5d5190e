"""Checks of masters with several shapes: what is hidden, what is narrow, what is bulky, and halves rejoined."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import combinations
from typing import TYPE_CHECKING

from quarterturn.design import GROUND, Design, Recipe, RecipeKind, Rejoined, Severity, code_of_unit, dotted
from quarterturn.measure import MM, Length, Units, show_count
from quarterturn.proof.checks.fault import REBUILD, Fault, check, differ, near, tell
from quarterturn.proof.checks.joins import seams_of
from quarterturn.proof.checks.laid import Laid, LaidShape, laid_out, line_of_cut
from quarterturn.proof.checks.layers import Count, SeamLayers, cut_away_of, seam_layers
from quarterturn.proof.checks.laying import place_of
from quarterturn.proof.checks.rings import LEAST_CUT_AWAY
from quarterturn.proof.checks.sides import laid_blocks, same_blocks
from quarterturn.proof.checks.walking import units_of
from quarterturn.proof.model import Pattern
from quarterturn.setting import Side

if TYPE_CHECKING:
    from shapely import LinearRing, Polygon

SHOWN = 1 / 64
"""Square inches. A part that shows less is not seen."""

BAND_MARGIN = 1 / 8
"""Between two rows of stitches, in inches, beside the swing of each (common practice, no source)."""

MOST_LAYERS = 6
"""Layers of cloth in the two allowances of a seam: with more a machine foot stumbles (common practice, no source)."""

_SIDES = (Side.TOP, Side.RIGHT, Side.BOTTOM, Side.LEFT)
_FACING = {Side.RIGHT: Side.LEFT, Side.BOTTOM: Side.TOP}


def _general(design: Design) -> Iterator[tuple[Recipe, Laid]]:
    for recipe in design.recipes:
        if recipe.kind is RecipeKind.SHAPES:
            yield recipe, laid_out(recipe, design.making.seam)


def parts_seen(pattern: Pattern) -> Iterator[Fault]:
    """Tell of a part that no sewn unit of its recipe shows: it lies under others, or the seams take it."""
    for recipe, laid in _general(pattern.design):
        shown = dict.fromkeys((GROUND, *recipe.parts), 0.0)
        for piece in laid.pieces:
            for part, area in laid.seen(piece).items():
                shown[part] += area.area
        for part, area in shown.items():
            if area < SHOWN:
                what = "its ground" if part == GROUND else f"its {part}"
                sentence = f"The sewn units of {recipe.name} show nothing of {what}."
                remedy = "Leave the part out, or make what hides it smaller."
                yield Fault(dotted("recipes", recipe.name, "shapes"), sentence, remedy, part)


def bands(pattern: Pattern) -> Iterator[Fault]:
    """Ask for room between two edges that are both stitched, where one shape lies within another."""
    design, units = pattern.design, pattern.design.units
    least = 2 * float(design.making.stitch.width) + BAND_MARGIN
    for recipe, laid in _general(design):
        for what, width in _bands(laid):
            if width < least - 1e-3:
                sentence = (
                    f"In {recipe.name} {what} leaves a band of {near(width, units)}, and two rows of stitches need "
                    f"{near(least, units)}."
                )
                remedy = "Make the lower shape larger, the upper one smaller, or the stitch narrower."
                yield Fault(dotted("recipes", recipe.name, "shapes"), sentence, remedy)


def _bands(laid: Laid) -> Iterator[tuple[str, float]]:
    for shape in laid.shapes:
        if shape.hole:
            inner = _hole_of(shape)
            yield f"the ring {shape.on.part}", float(inner.distance(shape.whole.exterior))
    for lower, upper in combinations(laid.shapes, 2):
        if _filled(lower).contains(_filled(upper)):
            width = float(lower.whole.boundary.distance(upper.whole.boundary))
            yield f"the {upper.on.part} on the {lower.on.part}", width


def _hole_of(shape: LaidShape) -> LinearRing:
    return shape.whole.interiors[0]


def _filled(shape: LaidShape) -> Polygon:
    import shapely

    return shapely.Polygon(shape.whole.exterior)


def underlaps(pattern: Pattern) -> Iterator[Fault]:
    """Ask that what lies below a shape stays far enough inside its stitching."""
    design, units = pattern.design, pattern.design.units
    for recipe in design.recipes:
        for number, shape in enumerate(recipe.shapes):
            if shape.underlap is not None and float(shape.underlap) < LEAST_CUT_AWAY - 1e-3:
                sentence = (
                    f"Below the {shape.part} of {recipe.name} {tell(shape.underlap, units)} stays inside the "
                    "stitching; stitches pull out of so little cloth."
                )
                key = dotted("recipes", recipe.name, "shapes", number, "underlap")
                yield Fault(key, sentence, f"Make underlap {tell(_habit(units), units)}, or leave it out.")


def _habit(units: Units) -> Length:
    return 5 * MM if units is Units.METRIC else Length(1, 4)


def bulky_seams(pattern: Pattern) -> Iterator[Fault]:
    """Tell of seams in whose two allowances more layers lie than can be sewn well."""
    design = pattern.design
    if all(recipe.kind is not RecipeKind.SHAPES for recipe in design.recipes):
        return
    away = cut_away_of(pattern)
    names = {leaf.name for leaf in units_of(design)}
    layers = {name: seam_layers(pattern, name, away) for name in names}
    yield from _bulky_blocks(design, layers)
    worst, where, count = MOST_LAYERS, None, 0
    for (first, second, way), met in seams_of(design).items():
        most = _most(
            _turned(layers[first[0]], first[1], way), _turned(layers[second[0]], second[1], _FACING[way])
        )
        count += met.count if most > MOST_LAYERS else 0
        if most > worst:
            worst, where = most, met.first
    if where:
        sentence = (
            f"At {show_count(count, 'seam')} more than {MOST_LAYERS} layers of cloth lie in the allowances, {worst} at "
            "the most: the machine foot stumbles, and the seam does not lie flat."
        )
        yield Fault(where.key, sentence, _THINNER, place_of(where))


_THINNER = (
    "Cut more away behind the shapes (underlap, making.cut_away), move shapes off the cuts, or turn units."
)


def _bulky_blocks(design: Design, layers: dict[str, SeamLayers]) -> Iterator[Fault]:
    for name in sorted(layers):
        most = max((count for _, _, count in layers[name].inner), default=0)
        if most > MOST_LAYERS:
            recipe = design.colourway(code_of_unit(name)).recipe
            sentence = (
                f"In the seam that rejoins the halves of {recipe} {most} layers of cloth lie on one another."
            )
            yield Fault(dotted("recipes", recipe), sentence, _THINNER, f"unit {name}")


def _turned(layers: SeamLayers, turn: int, where: Side) -> tuple[Count, ...]:
    """Return the counts along a side of a turned unit: twice in a round a side's ends change places."""
    index = (_SIDES.index(where) - turn) % 4
    side = _SIDES[index]
    counts = layers.sides[side]
    flipped = False
    for step in range(turn):
        flipped ^= (index + step) % 4 in (1, 3)
    if not flipped or not counts:
        return counts
    length = max(end for _, end, _ in counts)
    return tuple((length - end, length - start, count) for start, end, count in reversed(counts))


def _most(one: tuple[Count, ...], other: tuple[Count, ...]) -> int:
    """Return the most layers where the allowances of two sides lie on one another."""
    return max(
        (a + b for s, e, a in one for t, f, b in other if min(e, f) - max(s, t) > 1e-3),
        default=0,
    )


def rejoined_sizes(pattern: Pattern) -> Iterator[Fault]:
    """Hold a block of two halves against its master: two outer seams and what the inner one takes, square to it.

    A square of side c halved corner to corner makes c − s(2 + √2), less its trimming.
    """
    design, units = pattern.design, pattern.design.units
    for block in design.rejoined:
        want = _block_size(design, block)
        drafted = ((unit.width, unit.height) for unit in pattern.blocks.rejoining(block.name).units)
        for where, size in (
            ("design", (block.finished_width, block.finished_height)),
            *(("blocks", s) for s in drafted),
        ):
            if any(map(differ, want, size)):
                told, wanted = (f"{tell(w, units)} × {tell(h, units)}" for w, h in (size, want))
                sentence = (
                    f"A block of {block.name} finishes {told} in the {where}; its halves make {wanted}."
                )
                yield Fault(dotted("recipes", block.name), sentence, REBUILD)


def _block_size(design: Design, block: Rejoined) -> tuple[Length, Length]:
    recipe, seam = design.recipe(block.of), float(design.making.seam)
    across = line_of_cut(recipe.cuts[0]).direction * 1j
    taken = (
        Length(2 * seam * (1 + abs(part))).limit_denominator(10**9) for part in (across.real, across.imag)
    )
    less = (recipe.trim_width + block.trim_width, recipe.trim_height + block.trim_height)
    width, height = (
        side - trim - off for side, trim, off in zip((recipe.width, recipe.height), less, taken, strict=True)
    )
    return width, height


def rejoined_kinds(pattern: Pattern) -> Iterator[Fault]:
    """Ask that the two blocks which two masters give are found equal or not as they are."""
    design = pattern.design
    for block in design.rejoined:
        same = same_blocks(laid_blocks(block, design.recipe(block.of), design.making.seam))
        found = len(pattern.blocks.rejoining(block.name).units) == 1
        if same != found:
            said = "equal" if same else "of two kinds"
            sentence = f"Two masters of {block.of} give two blocks of {block.name} that are {said}; here they are not."
            yield Fault(dotted("recipes", block.name), sentence, REBUILD)


OVERLAPS = (
    check("part-hidden", Severity.COSTS, (12,), "Every part of a recipe is seen in its units.", parts_seen),
    check(
        "band-narrow", Severity.CONFUSES, (13,), "Two rows of stitches have room beside one another.", bands
    ),
    check(
        "underlap-small",
        Severity.STOPS,
        (95,),
        "What lies below a shape stays under its stitching.",
        underlaps,
    ),
    check("seam-bulky", Severity.CONFUSES, (75, 95), "No seam has too many layers.", bulky_seams),
    check(
        "rejoined-size",
        Severity.STOPS,
        (1, 60),
        "A rejoined block is its master less its seams.",
        rejoined_sizes,
    ),
    check(
        "rejoined-unequal",
        Severity.STOPS,
        (8, 17),
        "Rejoined blocks are of the kinds that they are.",
        rejoined_kinds,
    ),
)
