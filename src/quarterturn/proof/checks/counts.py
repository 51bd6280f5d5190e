"""Checks of counts (group B of the trade's list): units, squares, pieces, and that every pile comes out even."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping
from fractions import Fraction

from quarterturn.design import (
    Design,
    Recipe,
    Severity,
    code_of_unit,
    dotted,
    quarter_of_unit,
    unit_name,
)
from quarterturn.measure import show_count
from quarterturn.pieces import MasterCount, Purpose
from quarterturn.proof.checks.drafting import drafts_of
from quarterturn.proof.checks.fault import REBUILD, Fault, check
from quarterturn.proof.checks.ledger import keep_ledger, made_of, names_of_units, set_aside
from quarterturn.proof.checks.sides import halves_of
from quarterturn.proof.checks.tallying import kind_counts, master_codes
from quarterturn.proof.checks.walking import motifs_of
from quarterturn.proof.model import Pattern
from quarterturn.steps import (
    Crease,
    CutApart,
    CutOut,
    CutSegments,
    FuseRings,
    FuseToGround,
    Step,
    StitchEdge,
    Subcut,
)


def units_made(pattern: Pattern) -> Iterator[Fault]:
    """Hold the units that the steps leave for sewing against the units of the map."""
    names, made, aside = names_of_units(pattern), made_of(pattern.steps), set_aside(pattern.steps)
    last = {name: label for label, name in names.items()}
    counts = units_needed(pattern.design)
    for name in counts.keys() | last.keys():
        label = last.get(name, "")
        found = made[label] - aside[label]
        if found != counts[name]:
            sentence = (
                f"The map needs {show_count(counts[name], 'unit')} of {_called(name)}, but the steps leave {found} "
                "to sew."
            )
            yield Fault(dotted("colourways", code_of_unit(name)), sentence, REBUILD)


def _called(name: str) -> str:
    quarter = quarter_of_unit(name)
    return f"colourway {code_of_unit(name)}" + (f", quarter {quarter}" if quarter else "")


def units_tallied(pattern: Pattern) -> Iterator[Fault]:
    """Hold the tally of the setting against the map."""
    for name, count in kind_counts(pattern.design).items():
        found = pattern.setting.tally.get(name, 0)
        if found != count:
            sentence = f"The map has {show_count(count, 'unit')} of {_called(name)}, and the tally {found}."
            yield Fault(dotted("colourways", code_of_unit(name)), sentence, REBUILD)


def units_needed(design: Design) -> Counter[str]:
    """Count the units that the map takes, and the halves that its rejoined units are made of."""
    found = kind_counts(design)
    for name, count in tuple(found.items()):
        if design.colourway(code_of_unit(name)).is_rejoined:
            for half in halves_of(design, name):
                found[half] += count
    return found


def masters_counted(pattern: Pattern) -> Iterator[Fault]:
    """Hold the squares to make against the map.

    They are the units needed of a kind over those that a square gives, rounded up, for the kind of which most are
    needed, and the spares. What is left over is stated.
    """
    design, spare = pattern.design, pattern.design.making.spare_masters
    drafts = {recipe.name: draft for recipe, draft in drafts_of(design)}
    named = units_needed(design)
    listed = {count.code: count for count in pattern.bill.masters}
    for code in master_codes(design):
        draft = drafts[design.colourway(code).recipe]
        needs = {quarter: named[unit_name(code, quarter)] for quarter in draft.kinds}
        want = max(-(-needs[quarter] // each) for quarter, each in draft.kinds.items()) + spare
        found = listed[code].count if code in listed else 0
        over = want * draft.pieces - sum(needs.values())
        if found != want:
            sentence = (
                f"{show_count(sum(needs.values()), 'unit')} of colourway {code}, {_to_a_square(draft.kinds)} to a "
                f"square, and {show_count(spare, 'spare')} need {show_count(want, 'square')}; the list makes {found}."
            )
            yield Fault(dotted("colourways", code), sentence, REBUILD)
        elif listed[code].surplus_units != over:
            sentence = (
                f"{show_count(want, 'square')} of colourway {code} leave {over} units over; the list says "
                f"{listed[code].surplus_units}."
            )
            yield Fault(dotted("colourways", code), sentence, REBUILD)


UNEVEN = Fraction(1, 4)
"""The share of its units that a colourway may leave over without a word. Our own choice; no source."""


def kinds_taken_alike(pattern: Pattern) -> Iterator[Fault]:
    """Tell of units left over because a square gives kinds of which the quilt takes more of one than of another.

    What the spare squares give, and what is left because a square is never made in part, is not told.
    """
    for master in pattern.bill.masters:
        per, needed = master.per_master, master.units_needed
        least = -(-needed // per)
        left = sum(master.needed * unit.per_master - unit.needed for unit in master.units)
        if least >= master.needed or left < UNEVEN * master.needed * per:
            continue
        takes = ", ".join(f"{unit.needed} {unit.name}" for unit in master.units)
        sentence = (
            f"A square of colourway {master.code} gives {_gives(master)}, but the quilt takes {takes}: "
            f"{left} of {show_count(master.needed * per, 'unit')} are left over."
        )
        remedy = (
            f"Lay as many of each kind as a square gives: then {show_count(least, 'square')} "
            f"{'does' if least == 1 else 'do'} instead of {master.needed}."
        )
        yield Fault(dotted("colourways", master.code), sentence, remedy)


def _gives(master: MasterCount) -> str:
    return ", ".join(f"{unit.per_master} {unit.name}" for unit in master.units)


def _to_a_square(yields: Mapping[str, int]) -> str:
    each = ", ".join(f"{count} {quarter}" for quarter, count in yields.items())
    return str(next(iter(yields.values()))) if len(yields) == 1 else each


def masters_followed(pattern: Pattern) -> Iterator[Fault]:
    """Ask that as many squares are creased and cut apart as are listed, and every shape of each is made and fused.

    Motifs are shapes too, which are fused and stitched to panels by themselves.
    """
    drafts = {recipe.name: draft for recipe, draft in drafts_of(pattern.design)}
    squares = sum(count.count for count in pattern.bill.masters)
    cut = sum(c.count for c in pattern.bill.masters if len(_recipe_of(pattern, c).cuts))
    shapes = sum(c.count * len(drafts[c.recipe].shapes) for c in pattern.bill.masters)
    made = shapes + sum(1 for _ in motifs_of(pattern.design))
    wanted = {
        "fused with web": (FuseRings, "shape", made),
        "cut out": (CutOut, "shape", made),
        "creased": (Crease, "square", squares),
        "fused to squares": (FuseToGround, "shape", shapes),
        "stitched": (StitchEdge, "shape", shapes),
        "cut apart": (CutApart, "square", cut),
    }
    done: Counter[type] = Counter()
    for step in pattern.steps.steps:
        done[type(step.action)] += _done(step)
    for doing, (kind, noun, want) in wanted.items():
        if done[kind] != want:
            sentence = f"{show_count(want, noun)} are listed in all, but {done[kind]} are {doing}."
            yield Fault("colourways", sentence, REBUILD, doing)


def _recipe_of(pattern: Pattern, masters: MasterCount) -> Recipe:
    return pattern.design.recipe(masters.recipe)


def _done(step: Step) -> int:
    """Return how many squares or shapes a step does its work on."""
    count = step.uses[0].count if step.uses else 0
    if isinstance(step.action, FuseToGround):
        return count * len(step.action.places)
    if isinstance(step.action, StitchEdge):
        return count * len(step.action.numbers)
    return count


def nothing_wanting(pattern: Pattern) -> Iterator[Fault]:
    """Ask that a step finds on the table whatever it takes."""
    if cannot_be_cut(pattern):
        return
    for want in keep_ledger(pattern.steps).wants:
        sentence = f"Step {want.step} takes {want.asked} of {want.label}, but only {want.there} are there."
        yield Fault("", sentence, REBUILD, f"step {want.step}")


def cannot_be_cut(pattern: Pattern) -> set[str]:
    """Return what fits neither its cloth nor the web.

    Other checks tell of it; what follows from it would only say it again.
    """
    unplaced = {label for plan in pattern.materials.cloth for label in plan.unplaced}
    return unplaced | set(pattern.materials.web.unplaced)


def nothing_left(pattern: Pattern) -> Iterator[Fault]:
    """Ask that nothing is left at the end but the quilt."""
    if cannot_be_cut(pattern):
        return
    left = keep_ledger(pattern.steps).left
    last = pattern.steps.steps[-1].makes if pattern.steps.steps else ()
    for product in last:
        left.pop(product.label, None)
    for label, count in left.items():
        sentence = f"{count} of {label} are made and never used, nor set aside."
        yield Fault("", sentence, REBUILD, label)


def pieces_cut(pattern: Pattern) -> Iterator[Fault]:
    """Pieces cut = pieces listed and what is set aside, for each label."""
    cut: Counter[str] = Counter()
    for step in pattern.steps.steps:
        if isinstance(step.action, Subcut | CutSegments):
            cut.update({product.label: 0 for product in step.makes})
            for product in step.makes:
                cut[product.label] += product.count
    aside, unplaced = set_aside(pattern.steps), cannot_be_cut(pattern)
    for piece in pattern.bill.pieces:
        if piece.purpose in (Purpose.BINDING, Purpose.BACKING):
            continue
        found = cut[piece.label] - aside[piece.label]
        if found != piece.count and piece.label not in unplaced:
            listed = show_count(piece.count, "piece")
            sentence = f"{listed} {piece.label} ({piece.name}) are listed; the steps cut {found}."
            yield Fault(dotted("fabrics", piece.fabric), sentence, REBUILD, piece.label)


COUNTS = (
    check("units-miscounted", Severity.STOPS, (16,), "As many units are made as the map needs.", units_made),
    check("tally-wrong", Severity.STOPS, (16,), "The tally of units is that of the map.", units_tallied),
    check(
        "squares-miscounted",
        Severity.COSTS,
        (17, 24),
        "Just enough squares are made, and what is left over is stated.",
        masters_counted,
    ),
    check(
        "kinds-uneven",
        Severity.COSTS,
        (17, 24),
        "The quilt takes the kinds of a square alike.",
        kinds_taken_alike,
    ),
    check(
        "squares-lost",
        Severity.STOPS,
        (18, 19),
        "Every square goes through every step.",
        masters_followed,
    ),
    check("step-wanting", Severity.STOPS, (19, 70), "A step finds whatever it takes.", nothing_wanting),
    check("step-orphan", Severity.STOPS, (19, 24), "Whatever is made is used or set aside.", nothing_left),
    check("pieces-miscounted", Severity.STOPS, (20, 25), "As many pieces are cut as listed.", pieces_cut),
)
