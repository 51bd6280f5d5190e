"""The sentences of the cutting chapter, in the trade's style: cut (3) 5½" × WOF strips; subcut into (16) …"""

from __future__ import annotations

import math
from collections.abc import Iterator

from quarterturn.design import Direction
from quarterturn.materials import ClothPlan, JoinMethod
from quarterturn.pieces import Purpose
from quarterturn.proof import Pattern
from quarterturn.publish.wording.model import Wording
from quarterturn.publish.wording.names import (
    counted_pieces,
    length,
    listed,
    named,
    piece_of,
    plural,
    typeset_words,
)
from quarterturn.steps import (
    CutPanels,
    CutRest,
    CutSegments,
    CutStrips,
    JoinEnds,
    Pile,
    Product,
    SetAside,
    Step,
    Straighten,
    Subcut,
)


def tell_straighten(step: Step, action: Straighten, pattern: Pattern) -> Wording:
    """Tell the squaring of a cut end."""
    loss = length(pattern.design, action.loss)
    return Wording(
        named(pattern.design, action.fabric),
        (),
        f"Press the fabric, and cut its end square to the fold; up to {loss} is allowed for this."
        f"{_print(pattern, action.fabric)}",
    )


def _print(pattern: Pattern, letter: str) -> str:
    """Tell how a print with a direction lies in the plan, and that its top is to be marked where it must stand up."""
    fabric = pattern.design.fabric(letter)
    if fabric.direction is Direction.NONE:
        return ""
    runs = {
        Direction.TWO_WAY: "Its print runs along the selvages, up and down in the plan.",
        Direction.ONE_WAY: "Its print runs along the selvages: lay the cloth so that it stands upright in the plan.",
    }[fabric.direction]
    return f" {runs} Mark the top of each piece as you cut it." if fabric.upright else f" {runs}"


def tell_cut_strips(step: Step, action: CutStrips, pattern: Pattern) -> Wording:
    """Tell the cutting of equal strips across the width."""
    (made,) = step.makes
    strips = plural(made.count, "strip")
    line = f"Cut ({made.count}) {length(pattern.design, action.height)} × WOF {strips}"
    if _stays_whole(pattern, made.label):
        line += f" – {made.label}"
    return Wording(named(pattern.design, action.fabric), (), line)


def _stays_whole(pattern: Pattern, label: str) -> bool:
    """Tell whether a strip goes whole into a joined run, which calls it by its label."""
    return any(run.strip == label for plan in pattern.materials.cloth for run in plan.runs)


def tell_subcut(step: Step, action: Subcut, pattern: Pattern) -> Wording:
    """Tell into what the strips just cut, or a joined run, are cut across."""
    pieces = listed([_lettered(pattern, made) for made in step.makes])
    (used,) = step.uses
    plan = _plan_with(pattern, used.label)
    verb = _verb(plan, used.label)
    return Wording(named(pattern.design, plan.fabric), (), f"{verb}{_in_stacks(used, action)} into {pieces}")


def tell_cut_segments(step: Step, action: CutSegments, pattern: Pattern) -> Wording:
    """Tell into what segments of strips are cut, one piece below the other."""
    pieces = listed([_lettered(pattern, made) for made in step.makes])
    (used,) = step.uses
    plan = _plan_with(pattern, used.label)
    line = f"cut {used.label}{_in_stacks(used, action)}, one below the other, into {pieces}"
    return Wording(named(pattern.design, plan.fabric), (), line)


def _plan_with(pattern: Pattern, label: str) -> ClothPlan:
    """Return the plan that has a strip, a segment of one or a run of a label."""
    return next(plan for plan in pattern.materials.cloth if label in _labels(plan))


def _labels(plan: ClothPlan) -> Iterator[str]:
    yield from (run.label for run in plan.runs)
    for layout in plan.parcels.layouts if plan.parcels else ():
        yield from (group.label for group in layout.strips)
    for group, _ in plan.groups:
        yield group.label
        yield from (split.label for split in group.splits)


def _in_stacks(used: Pile, action: Subcut | CutSegments) -> str:
    """Tell in how many stacks strips are cut up; nothing where a single one is."""
    if action.layers < 2 or used.count < 2:
        return ""
    stacks = math.ceil(used.count / action.layers)
    return " in one stack" if stacks == 1 else f" in {stacks} stacks"


def _verb(plan: ClothPlan, label: str) -> str:
    """Return how a strip just cut is told to be cut on; those that are not alone are called by their labels."""
    along = [strip for strip in plan.strips if strip.height > plan.usable_width and strip.crosscuts]
    if any(strip.label == label for strip in along):
        return "cut along the cloth"
    apart = [each for strip in plan.strips for each in strip.rest]
    apart += [each for layout in (plan.parcels.layouts if plan.parcels else ()) for each in layout.strips]
    named_so = label in {run.label for run in plan.runs} | {each.label for each in apart}
    return f"cut {label}" if named_so else "subcut"


def tell_cut_rest(step: Step, action: CutRest, pattern: Pattern) -> Wording:
    """Tell the strips cut from what is left beside pieces."""
    (used,) = step.uses
    strips = listed(
        [
            f"({made.count}) {length(pattern.design, made.height)} × {length(pattern.design, made.width)} "
            f"{plural(made.count, 'strip')} – {made.label}"
            for made in step.makes
        ]
    )
    return Wording(named(pattern.design, action.fabric), (), f"Cut {used.label} into {strips}")


def _lettered(pattern: Pattern, made: Product) -> str:
    piece = piece_of(pattern, made.label)
    use = f" ({piece.name})" if piece else ""
    return f"{counted_pieces(pattern.design, made)} – {made.label}{use}"


def tell_join_ends(step: Step, action: JoinEnds, pattern: Pattern) -> Wording:
    """Tell the joining of strips into one run."""
    whole, (run,) = step.uses[0], step.makes
    plan = next(p for p in pattern.materials.cloth if any(r.label == run.label for r in p.runs))
    size = f"{length(pattern.design, run.height)} wide and {length(pattern.design, run.width)} long"
    if whole.count == len(step.uses) == 1:
        line = f"Set the strip {whole.label} aside whole: it is {run.label}, {size}"
    else:
        seam = "diagonal" if action.method is JoinMethod.DIAGONAL else "straight"
        strips = listed([_strips(pile) for pile in step.uses])
        line = (
            f"Sew the {strips} end to end with {seam} seams, and press the seams "
            f"open; each join takes {length(pattern.design, action.loss)} of length. "
            f"The run {run.label} is {size}"
        )
    return Wording(named(pattern.design, plan.fabric), (), line)


def _strips(pile: Pile) -> str:
    return f"({pile.count}) {plural(pile.count, 'strip')} {pile.label}"


def tell_cut_panels(step: Step, action: CutPanels, pattern: Pattern) -> Wording:
    """Tell the cutting of lengths for the backing."""
    (made,) = step.makes
    line = (
        f"Cut ({made.count}) {plural(made.count, 'length')} of {length(pattern.design, action.length)} × WOF "
        f"for the backing – {_backing(pattern, action.fabric)}; trim the selvages off"
    )
    return Wording(named(pattern.design, action.fabric), (), line)


def _backing(pattern: Pattern, fabric: str) -> str:
    """Return the label of the backing, as the cutting plan has it."""
    pieces = (each for each in pattern.bill.pieces if each.purpose is Purpose.BACKING)
    return next(piece.label for piece in pieces if piece.fabric == fabric)


def tell_set_aside(step: Step, action: SetAside, pattern: Pattern) -> Wording:
    """Tell which pieces this quilt does not use."""
    piles = listed([f"({pile.count}) {pile.label}" for pile in step.uses])
    return Wording("Set aside what is left over", (), f"{piles}: {typeset_words(action.reason)}.")
