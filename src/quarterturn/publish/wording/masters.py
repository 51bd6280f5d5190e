"""The sentences of fusing, stitching and cutting apart."""

from __future__ import annotations

from quarterturn.design import DrawnOutline, EdgeStitch, EdgeStitchKind, Recipe, quarter_of_unit
from quarterturn.proof import Pattern
from quarterturn.publish.wording.model import Wording
from quarterturn.publish.wording.names import (
    length,
    listed,
    machine_length,
    named,
    plural,
    shape_word,
    sized,
    typeset_words,
)
from quarterturn.steps import (
    Crease,
    CutApart,
    CutAway,
    FuseToGround,
    LabelStacks,
    Product,
    SetAside,
    Step,
    StitchEdge,
    Trim,
)

STITCH_WORDS = {
    EdgeStitchKind.ZIGZAG: "a zigzag",
    EdgeStitchKind.SATIN: "a satin stitch",
    EdgeStitchKind.BLANKET: "a blanket stitch",
    EdgeStitchKind.STRAIGHT: "a straight stitch",
}


def tell_crease(step: Step, action: Crease, pattern: Pattern) -> Wording:
    """Tell the creasing of the ground squares."""
    (used,), (made,) = step.uses, step.makes
    fabric = named(pattern.design, pattern.bill.piece(used.label).fabric)
    sentences = (
        "Fold each square in half, edges matched all along, and press the fold.",
        "Open it, fold it in half the other way, and press again. The creases cross in the middle and show "
        "where the cuts will go.",
    )
    line = (
        f"{fabric}: crease ({used.count}) {plural(used.count, 'square')} {used.label}, "
        f"{sized(pattern.design, made.width, made.height)}."
    )
    return Wording("Crease the ground squares", sentences, line)


def tell_fuse(step: Step, action: FuseToGround, pattern: Pattern) -> Wording:
    """Tell fusing the shape to its square."""
    ground, shape = step.uses
    way = pattern.design.colourway(action.code)
    sentences = (
        "Fold each shape in quarters and finger-press the folds; a hot iron would glue them.",
        "Lay the square right side up, and the shape on it right side up, fold on crease, centre on centre.",
        *_way_up(pattern.design.recipe(action.recipe)),
        "Fuse from the middle outwards, then press the whole square flat. Let it cool.",
    )
    line = (
        f"Colourway {action.code}: fuse ({shape.count}) {shape_word(action.recipe)}s of "
        f"{named(pattern.design, way.shape)} to ({ground.count}) squares of {named(pattern.design, way.ground)}."
    )
    return Wording("Fuse the shapes to the squares", sentences, line)


def _way_up(recipe: Recipe) -> tuple[str, ...]:
    if not isinstance(recipe.size, DrawnOutline):
        return ()
    return (f"Turn the {recipe.size.outline} on every square as the template shows it.",)


def tell_stitch(step: Step, action: StitchEdge, pattern: Pattern) -> Wording:
    """Tell stitching round the edge, with starting values."""
    (made,) = step.makes
    sentences = (
        f"Start with {stitch_values(action.stitch)}. These are starting values: test them on a scrap of the "
        "same layers.",
        f"Use {action.stitch.thread} in a {action.stitch.needle} needle, which should be changed often.",
        "Start between two creases, away from the cuts to come.",
        *handling(action.stitch),
        "Stitch all round, overlap the first few stitches, and fasten off. Press from the back.",
        *_untrimmed(pattern, made.label),
    )
    code = _code(made.label)
    line = (
        f"Colourway {code}: stitch ({made.count}) {plural(made.count, 'master')}, thread to match "
        f"{named(pattern.design, action.thread_fabric)}; {length(pattern.design, action.edge)} of edge on each."
    )
    return Wording("Stitch round the edge", sentences, line)


def _untrimmed(pattern: Pattern, label: str) -> tuple[str, ...]:
    """Warn where stitching may draw up a square that leaves nothing to trim."""
    recipe = pattern.design.colourway(_code(label)).recipe
    if pattern.blocks.master(recipe).trim:
        return ()
    return (
        "This square leaves nothing to be trimmed: starch it before stitching, or lay stabiliser under it, and check "
        "that it has not drawn up.",
    )


def _code(label: str) -> str:
    return label.removeprefix("master ").removesuffix(", stitched")


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


def tell_cut_apart(step: Step, action: CutApart, pattern: Pattern) -> Wording:
    """Tell cutting the square apart."""
    (used,), made = step.uses, step.makes
    side = length(pattern.design, made[0].width)
    sentences = (
        "Lay the master right side up on the mat.",
        f"Lay the ruler along one crease and check that {side} of the square lies on each side of it. Cut.",
        "Do not move the parts. Turn the mat, lay the ruler along the other crease, and cut again.",
    )
    line = (
        f"Colourway {action.code}: cut ({used.count}) {plural(used.count, 'master')} to make "
        f"{listed([_units(product) for product in made])}, "
        f"{sized(pattern.design, made[0].width, made[0].height)} as cut."
    )
    return Wording("Cut the masters apart", sentences, line)


def _units(made: Product) -> str:
    return f"({made.count}) {made.label.removesuffix(', as cut')}"


def tell_cut_away(step: Step, action: CutAway, pattern: Pattern) -> Wording:
    """Tell cutting the ground away behind the shape."""
    (used,) = step.uses
    sentences = (
        "Turn the unit wrong side up, and lift the loose corner of the ground off the shape.",
        f"Cut the ground away behind the shape, {length(pattern.design, action.inside)} inside the stitching. "
        "Keep the scissors flat so that they do not nick the shape.",
    )
    label = used.label.removesuffix(", as cut")
    return Wording("Cut the ground away", sentences, f"({used.count}) {label}.")


def tell_trim(step: Step, action: Trim, pattern: Pattern) -> Wording:
    """Tell trimming the two outer edges."""
    (made,) = step.makes
    side = length(pattern.design, action.side)
    sentences = (
        "Find the two centre-cut edges: they meet at the corner of the shape. Leave them as they are.",
        f"Measure {side} from them, and trim the two outer edges only.",
    )
    size = sized(pattern.design, made.width, made.height)
    line = f"Make ({made.count}) {made.label}; each should measure {size}, unfinished."
    return Wording("Trim the units", sentences, line)


def tell_surplus(step: Step, action: SetAside, pattern: Pattern) -> Wording:
    """Tell which units are left over."""
    (used,) = step.uses
    return Wording(
        "Set the surplus aside",
        ("What the last masters give beyond the need is not used in this quilt; keep it for a label.",),
        f"({used.count}) {used.label.removesuffix(', as cut')}: {typeset_words(action.reason)}.",
    )


def tell_stacks(step: Step, action: LabelStacks, pattern: Pattern) -> Wording:
    """Tell stacking and labelling the units."""
    several = any(quarter_of_unit(pile.label.removeprefix("unit ")) for pile in action.stacks)
    lie = "each as it is drawn among the units" if several else "the shape’s corner at the top left"
    sentences = (f"Stack the units by kind, {lie}, and pin a label to each stack.",)
    return Wording(
        "Label the stacks", sentences, "; ".join(f"({p.count}) {p.label}" for p in action.stacks) + "."
    )
