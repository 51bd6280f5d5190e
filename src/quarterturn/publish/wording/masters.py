"""The sentences of creasing, fusing and stitching."""

from __future__ import annotations

import cmath
import math

from quarterturn.design import GROUND, DrawnOutline, EdgeStitch, EdgeStitchKind, Recipe, RecipeKind
from quarterturn.proof import Pattern
from quarterturn.publish.wording.model import Wording
from quarterturn.publish.wording.names import (
    length,
    machine_length,
    named,
    plural,
    shape_word,
    sized,
    turned_by,
)
from quarterturn.publish.wording.places import drawn_line, ordinal, place_from_middle
from quarterturn.steps import Crease, FuseToGround, Step, StitchEdge

STITCH_WORDS = {
    EdgeStitchKind.ZIGZAG: "a zigzag",
    EdgeStitchKind.SATIN: "a satin stitch",
    EdgeStitchKind.BLANKET: "a blanket stitch",
    EdgeStitchKind.STRAIGHT: "a straight stitch",
}


def is_general(pattern: Pattern, recipe: str) -> bool:
    """Tell whether a recipe is told in full: it is no short form of one shape cut both ways."""
    return pattern.design.recipe(recipe).kind is RecipeKind.SHAPES


def ground_word(pattern: Pattern, recipe: str) -> str:
    """Return what the ground of a master is: a square or a rectangle."""
    master = pattern.blocks.master(recipe)
    return "square" if master.width == master.height else "rectangle"


def tell_crease(step: Step, action: Crease, pattern: Pattern) -> Wording:
    """Tell the creasing of the grounds, and what is drawn on them."""
    (used,), (made,) = step.uses, step.makes
    fabric = named(pattern.design, pattern.bill.piece(used.label).fabric)
    word = ground_word(pattern, action.recipe)
    line = (
        f"{fabric}: crease ({used.count}) {plural(used.count, word)} {used.label}, "
        f"{sized(pattern.design, made.width, made.height)}"
    )
    if not is_general(pattern, action.recipe):
        return Wording("Crease the ground squares", _creased_both_ways(), f"{line}.")
    upright = pattern.design.fabric(pattern.bill.piece(used.label).fabric).upright
    for_which = f", for {action.recipe}" if len(pattern.design.recipes) > 1 else ""
    return Wording(
        f"Crease {'and mark ' if action.drawn or action.middles else ''}the ground{for_which}",
        tuple(_marking(pattern, action, upright=upright)),
        f"{line}.",
    )


def _creased_both_ways() -> tuple[str, str]:
    return (
        "Fold each square in half, edges matched all along, and press the fold.",
        "Open it, fold it in half the other way, and press again. The creases cross in the middle and show "
        "where the cuts will go.",
    )


def _marking(pattern: Pattern, action: Crease, *, upright: bool) -> list[str]:
    """Return how the ground of a general recipe is folded, drawn on and marked."""
    design, master = pattern.design, pattern.blocks.master(action.recipe)
    corner = [fold for fold in action.folds if min(abs(fold.direction.real), abs(fold.direction.imag)) > 1e-6]
    top = ("Lay each with its print upright, and mark its top edge: it stays at the top in every step.",)
    said = [
        *(top if upright else ()),
        f"Fold each {ground_word(pattern, action.recipe)} in half, edges matched all along, and press the fold. Open "
        "it, fold it in half the other way, and press again: the creases cross in the middle.",
    ]
    if corner:
        more = " both ways" if len(corner) > 1 else ""
        said.append(f"Fold it corner to corner{more} as well, and press: there it will be cut.")
    for number, line in enumerate(action.drawn, 1):
        where = drawn_line(design, master, line)
        said.append(f"Draw line {number} with a pen that can be removed, by a ruler: {where}.")
    if action.middles:
        places = "; ".join(place_from_middle(design, point) for point in action.middles)
        said.append(
            f"Mark where the middles of shapes will lie, measured from the crossing of the creases: {places}."
        )
    return said


def tell_fuse(step: Step, action: FuseToGround, pattern: Pattern) -> Wording:
    """Tell fusing shapes to their ground."""
    if is_general(pattern, action.recipe):
        return _fuse_in_place(step, action, pattern)
    ground, shape = step.uses
    way = pattern.design.colourway(action.code)
    drawn = isinstance(pattern.design.recipe(action.recipe).size, DrawnOutline)
    sentences = (
        *(
            ()
            if drawn
            else ("Fold each shape in quarters and finger-press the folds; a hot iron would glue them.",)
        ),
        "Lay the square right side up, and the shape on it right side up, fold on crease, centre on centre.",
        *_way_up(pattern.design.recipe(action.recipe)),
        "Fuse from the middle outwards, then press the whole square flat. Let it cool.",
    )
    line = (
        f"Colourway {action.code}: fuse ({shape.count}) {plural(shape.count, shape_word(action.shape))} of "
        f"{named(pattern.design, way.cloth(action.part))} to ({ground.count}) {plural(ground.count, 'square')} of "
        f"{named(pattern.design, way.ground)}."
    )
    return Wording("Fuse the shapes to the squares", sentences, line)


def _way_up(recipe: Recipe) -> tuple[str, ...]:
    if not isinstance(recipe.size, DrawnOutline):
        return ()
    return (f"Lay every {recipe.size.outline} with its top, as the template names it, at the top.",)


def level_of(step: Step, pattern: Pattern) -> int:
    """Return on which layer of shapes a step works: 0 lies on the ground, 1 on what is stitched there, and so on."""
    assert isinstance(step.action, FuseToGround | StitchEdge)
    level, stitched = 0, False
    for other in pattern.steps.steps[: step.number]:
        if isinstance(other.action, FuseToGround | StitchEdge) and other.action.code == step.action.code:
            level += stitched and isinstance(other.action, FuseToGround)
            stitched = isinstance(other.action, StitchEdge)
    return level


def _fuse_in_place(step: Step, action: FuseToGround, pattern: Pattern) -> Wording:
    design, (ground, shape) = pattern.design, step.uses
    level = level_of(step, pattern)
    on = "what is stitched" if level else "the ground"
    sentences = (
        f"Lay {on} right side up, and each {shape_word(action.shape)} on it right side up, the crossing of its creases "
        "on its mark, its top at the top, and its vertical crease even with that of the ground.",
        f"{'Its mark is' if len(action.places) == 1 else 'Its marks are'} {_places(pattern, action)}.",
        "Fuse from the middle outwards, then press the whole flat. Let it cool before you stitch.",
    )
    line = (
        f"Colourway {action.code}: fuse ({shape.count}) {plural(shape.count, shape_word(action.shape))} of "
        f"{named(design, design.cloth(action.code, action.part))} to ({ground.count}) "
        f"{_masters_or_ground(pattern, action, level, ground.count)}."
    )
    title = f"Fuse the {ordinal(level + 1)} layer of shapes" if level else "Fuse the shapes to the ground"
    return Wording(title, sentences, line)


def _places(pattern: Pattern, action: FuseToGround) -> str:
    """Return where each shape lies and how far it is turned against its template."""
    said = []
    for place in action.places:
        turned = turned_by(math.degrees(cmath.phase(place.motion.factor)))
        where = place_from_middle(pattern.design, place.motion(0j))
        said.append(f"{where}, {turned}" if turned else where)
    return "; ".join(said)


def _masters_or_ground(pattern: Pattern, action: FuseToGround, level: int, count: int) -> str:
    if level:
        return f"{plural(count, 'master')} {action.code}"
    cloth = named(pattern.design, pattern.design.cloth(action.code, GROUND))
    return f"{plural(count, ground_word(pattern, action.recipe))} of {cloth}"


def tell_stitch(step: Step, action: StitchEdge, pattern: Pattern) -> Wording:
    """Tell stitching round the edges, with starting values."""
    (made,), general = step.makes, is_general(pattern, action.recipe)
    level = level_of(step, pattern)
    sentences = (
        f"Start with {stitch_values(action.stitch)}. These are starting values: test them on a scrap of the "
        "same layers.",
        f"Use {action.stitch.thread} in a {action.stitch.needle} needle, which should be changed often.",
        _start(pattern, action),
        *handling(action.stitch),
        "Stitch all round, overlap the first few stitches, and fasten off. Press from the back.",
        *_untrimmed(pattern, action.recipe),
    )
    which = f" round {_which(action)} of" if general else ""
    line = (
        f"Colourway {action.code}: stitch{which} ({made.count}) {plural(made.count, 'master')}, thread to match "
        f"{named(pattern.design, action.thread_fabric)}; {length(pattern.design, action.edge)} of edge on each."
    )
    title = f"Stitch round the {ordinal(level + 1)} layer of shapes" if level else "Stitch round the edge"
    return Wording(title, sentences, line)


def _which(action: StitchEdge) -> str:
    """Return which shapes are stitched round."""
    many = len(action.numbers)
    return f"the {shape_word(action.shape)}" if many == 1 else f"the ({many}) {shape_word(action.shape)}s"


def _start(pattern: Pattern, action: StitchEdge) -> str:
    master = pattern.blocks.master(action.recipe)
    if not master.cuts:
        return "Start where the edge is straightest or the curve widest."
    if is_general(pattern, action.recipe):
        rings = any(master.shapes[number].hole for number in action.numbers)
        both = " Stitch round both edges of a ring." if rings else ""
        return f"Start where the edge is far from every cut to come, as the arrows show.{both}"
    return "Start between two creases, away from the cuts to come."


def _untrimmed(pattern: Pattern, recipe: str) -> tuple[str, ...]:
    """Warn where stitching may draw up a square that leaves nothing to trim."""
    master = pattern.blocks.master(recipe)
    if master.trim_width or master.trim_height:
        return ()
    return (
        f"This {ground_word(pattern, recipe)} leaves nothing to be trimmed: starch it before stitching, or lay "
        "stabiliser under it, and check that it has not drawn up.",
    )


def stitch_values(stitch: EdgeStitch) -> str:
    """Return stitch, width and length as a machine shows them."""
    word, along = STITCH_WORDS[stitch.kind], machine_length(stitch.length)
    if stitch.kind is EdgeStitchKind.STRAIGHT:
        return f"{word} {along} long"
    return f"{word} {machine_length(stitch.width)} wide and {along} long"


def handling(stitch: EdgeStitch) -> tuple[str, ...]:
    """Return how the needle is led round a curve."""
    turn = "Turn with the needle down on the outer side of the curve, a little at a time."
    if stitch.kind is EdgeStitchKind.STRAIGHT:
        return ("Keep the line just inside the edge of the shape, the same distance all round.", turn)
    swing = "Let the needle swing in to land in the shape, and swing out to land in the ground, just off the edge."
    return (swing, turn)
