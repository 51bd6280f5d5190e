"""Checks of the cutting (group C of the trade's list). All sums are exact: no fit is lost or gained by rounding."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Mapping
from itertools import pairwise
from types import MappingProxyType

from quarterturn.design import Direction, Severity, dotted
from quarterturn.materials import ClothPlan, Crosscut, JoinedRun, StripGroup
from quarterturn.measure import Length, Units, inches, is_on_ruler, mm, show_count
from quarterturn.pieces import Piece, Purpose
from quarterturn.proof.checks.fault import REBUILD, Fault, check, tell
from quarterturn.proof.checks.joining import sewn_end_to_end
from quarterturn.proof.checks.laying import BORDER, COPING
from quarterturn.proof.checks.walking import cloths_of
from quarterturn.proof.model import Pattern

TIGHT = {Units.INCH: inches(0, 1, 2), Units.METRIC: mm(10)}
"""Less than this left of a strip is a tight fit: cloth a little narrower loses a piece (trade check 29)."""

NEAR = inches(0, 1, 4)
"""Strips that differ by no more can often be cut alike (trade check 35)."""

LARGEST_RULER = inches(20, 1, 2)
"""Side of the largest square ruler commonly sold (from memory)."""


def strip_width(pattern: Pattern) -> Iterator[Fault]:
    """Recalculate what each strip must hold, and hold it against the usable width."""
    units = pattern.design.units
    for plan, group, width in _groups(pattern):
        used = _used(group)
        if used > width:
            sentence = (
                f"Strip {group.label} must hold {_told(group.pieces)}, {tell(used, units)} in all; the cloth is "
                f"{tell(width, units)} wide."
            )
            yield Fault(dotted("fabrics", plan.fabric, "width"), sentence, REBUILD, group.label)
        elif group.pieces and used != group.used:
            sentence = (
                f"Strip {group.label} uses {tell(used, units)} of its length, not {tell(group.used, units)}."
            )
            yield Fault(dotted("fabrics", plan.fabric), sentence, REBUILD, group.label)
        rest = sum((each.height * each.strips for each in group.rest), Length(0))
        if rest > group.height * group.strips:
            sentence = (
                f"From the rest of {group.label} strips {tell(rest, units)} high are cut; it has "
                f"{tell(group.height * group.strips, units)}."
            )
            yield Fault(dotted("fabrics", plan.fabric), sentence, REBUILD, group.label)


def _groups(pattern: Pattern) -> Iterator[tuple[ClothPlan, StripGroup, Length]]:
    """Return every group of strips with its plan and its length."""
    for plan in pattern.materials.cloth:
        for group, width in plan.groups:
            yield plan, group, width
        for layout in plan.parcels.layouts if plan.parcels else ():
            yield from ((plan, group, layout.length) for group in layout.strips)


def _along(crosscuts: tuple[Crosscut, ...]) -> Length:
    return sum((cut.along * cut.count for cut in crosscuts), Length(0))


def _used(group: StripGroup) -> Length:
    """Return the length that pieces and segments take of a strip."""
    return _along(group.crosscuts) + sum((each.along * each.count for each in group.splits), Length(0))


def _told(crosscuts: tuple[Crosscut, ...], names: Mapping[str, str] = MappingProxyType({})) -> str:
    """Tell what a strip is cut into, by labels, with the names of those that have one."""
    labels = {cut.piece: f" ({names[cut.piece]})" if cut.piece in names else "" for cut in crosscuts}
    return " and ".join(f"{cut.count} of {cut.piece}{labels[cut.piece]}" for cut in crosscuts)


def tight_fits(pattern: Pattern) -> Iterator[Fault]:
    """Flag strips that are filled to their end; the tightest is told, the others are counted."""
    units = pattern.design.units
    tight = [
        (rest, width, plan, group)
        for plan, group, width in _groups(pattern)
        if group.pieces and 0 <= (rest := width - _used(group)) < TIGHT[units]
    ]
    if not tight:
        return
    rest, width, plan, group = min(tight, key=lambda each: each[0])
    letters = list(dict.fromkeys(each.fabric for _, _, each, _ in tight))
    count = sum(each.strips for _, _, _, each in tight)
    held = _told(group.pieces, {piece.label: piece.name for piece in pattern.bill.pieces})
    sentence = (
        f"{show_count(count, 'strip')} of {'fabrics' if len(letters) > 1 else 'fabric'} {', '.join(letters)} "
        f"{'leaves' if count == 1 else 'leave'} less than "
        f"{tell(TIGHT[units], units)}. The tightest, strip {group.label} with {held}, leaves "
        f"{tell(rest, units)} of {tell(width, units)}: on cloth a little narrower its last piece is lost."
    )
    in_pieces = pattern.design.fabric(plan.fabric).bought_as is not None
    measure = (
        "Measure the pieces, and state their width in `bought_as` if they are narrower"
        if in_pieces
        else "Measure the cloth, and set its width if it is narrower"
    )
    remedy = f"{measure}; or say in the pattern that it is tight."
    yield Fault(dotted("fabrics", plan.fabric, "bought_as" if in_pieces else "width"), sentence, remedy)


def subcut_sizes(pattern: Pattern) -> Iterator[Fault]:
    """Ask that each piece is cut in the size in which it is listed, from a strip that is high enough."""
    listed = {piece.label: piece for piece in pattern.bill.pieces}
    for plan in pattern.materials.cloth:
        joined = {run.strip for run in plan.runs}
        parcels = (group for each in (plan.parcels.layouts if plan.parcels else ()) for group in each.strips)
        holders: list[StripGroup | JoinedRun] = [*(group for group, _ in plan.groups), *parcels, *plan.runs]
        for holder in holders:
            for cut in holder.pieces if isinstance(holder, StripGroup) else holder.crosscuts:
                if cut.piece in joined:
                    continue
                if fault := _miscut(cut, listed.get(cut.piece), holder, pattern.design.units):
                    yield Fault(dotted("fabrics", plan.fabric), fault, REBUILD, holder.label)
        yield from _overfull_segments(plan, pattern.design.units)


def _overfull_segments(plan: ClothPlan, units: Units) -> Iterator[Fault]:
    """Ask that the pieces of a segment lie one below the other in its strip, none longer than the segment."""
    for group, _ in plan.groups:
        for split in group.splits:
            high = sum((cut.across * cut.count for cut in split.crosscuts), Length(0))
            if high > group.height or any(cut.along > split.along for cut in split.crosscuts):
                sentence = (
                    f"{split.label}, {tell(split.along, units)} × {tell(group.height, units)}, cannot be cut into "
                    f"{_told(split.crosscuts)}."
                )
                yield Fault(dotted("fabrics", plan.fabric), sentence, REBUILD, split.label)


def _miscut(cut: Crosscut, piece: Piece | None, holder: StripGroup | JoinedRun, units: Units) -> str:
    """Say what is wrong with a crosscut; nothing where it is right."""
    if piece is None:
        return f"{holder.label} is cut into {cut.piece}, which no list has."
    if {cut.along, cut.across} != {piece.length, piece.width}:
        listed = f"{tell(piece.width, units)} × {tell(piece.length, units)}"
        size = f"{tell(cut.across, units)} × {tell(cut.along, units)}"
        return f"{cut.piece} is listed {listed}, but cut {size} from {holder.label}."
    if cut.across > holder.height:
        height, across = tell(holder.height, units), tell(cut.across, units)
        return f"{holder.label} is {height} high; {cut.piece} needs {across}."
    return ""


def pieces_that_fit_nowhere(pattern: Pattern) -> Iterator[Fault]:
    """Name what is larger than its cloth allows."""
    units = pattern.design.units
    plans = {plan.fabric: plan for plan in pattern.materials.cloth}
    for piece in pattern.bill.pieces:
        plan = plans.get(piece.fabric)
        if plan is None:
            continue
        square = piece.purpose in (Purpose.GROUND, Purpose.SHAPE)
        if piece.label in plan.unplaced or (square and min(piece.length, piece.width) > plan.usable_width):
            sentence = (
                f"{piece.label} ({piece.name}) is {tell(piece.width, units)} × {tell(piece.length, units)}; it cannot "
                f"be cut or joined from fabric {piece.fabric}, {_cloth_of(plan, units)}."
            )
            remedy = _other_cloth(pattern, piece, plan)
            yield Fault(dotted("fabrics", piece.fabric, "width"), sentence, remedy, piece.label)


def _cloth_of(plan: ClothPlan, units: Units) -> str:
    """Tell how large the cloth is that a fabric is cut from."""
    if plan.parcels is None:
        return f"{tell(plan.usable_width, units)} wide"
    sizes = (
        f"{tell(each.usable_width, units)} × {tell(each.usable_height, units)}"
        for each in plan.parcels.stocks
    )
    return f"in pieces of {' and '.join(dict.fromkeys(sizes))} at most"


def _other_cloth(pattern: Pattern, piece: Piece, plan: ClothPlan) -> str:
    """Advise what would hold a piece: of pieces of cloth often the bolt, or a turn that a print forbids."""
    if plan.parcels is None:
        return "Make it smaller, or use wider cloth and state its width."
    if piece.purpose is Purpose.BACKING:
        return "A backing is sewn from lengths of cloth: give it a fabric of its own that comes off the bolt."
    sides = [(each.usable_height, each.usable_width) for each in plan.parcels.stocks]
    turned = any(piece.length <= across and piece.width <= along for across, along in sides)
    if turned and pattern.design.fabric(piece.fabric).direction is not Direction.NONE:
        return "Turned it would fit: choose a print without direction, or buy the fabric off the bolt."
    return f"Make it smaller, or leave out fabrics.{piece.fabric}.bought_as and buy the fabric off the bolt."


def long_pieces_joined(pattern: Pattern) -> Iterator[Fault]:
    """Ask that whatever is longer than the cloth is wide comes from joined strips."""
    units = pattern.design.units
    for plan in pattern.materials.cloth:
        for group, width in plan.groups:
            for cut in group.pieces:
                if cut.along > width:
                    sentence = (
                        f"{cut.piece} is {tell(cut.along, units)} long and is cut from a strip of "
                        f"{tell(width, units)} that is not joined."
                    )
                    yield Fault(dotted("fabrics", plan.fabric), sentence, REBUILD, group.label)


def joined_runs(pattern: Pattern) -> Iterator[Fault]:
    """Recalculate every run of joined strips: each join takes its loss, and the pieces must fit."""
    units = pattern.design.units
    for plan in pattern.materials.cloth:
        for run in plan.runs:
            strips, length = sewn_end_to_end(plan, run)
            key = dotted("fabrics", plan.fabric)
            if run.length > length or strips != run.joins + 1:
                sentence = (
                    f"{show_count(strips, 'strip')} make a run {tell(length, units)} long when joined; "
                    f"{run.label} is said to be {tell(run.length, units)}."
                )
                yield Fault(key, sentence, REBUILD, run.label)
            if _along(run.crosscuts) > run.length:
                sentence = (
                    f"{run.label} is {tell(run.length, units)} long and must give {_told(run.crosscuts)}, "
                    f"{tell(_along(run.crosscuts), units)}."
                )
                yield Fault(key, sentence, REBUILD, run.label)


def ruler_marks(pattern: Pattern) -> Iterator[Fault]:
    """Ask for sizes that a ruler shows: multiples of 1/8", or of 2.5 mm."""
    units = pattern.design.units
    mark = '1/8"' if units is Units.INCH else "2.5 mm"
    for piece in pattern.bill.pieces:
        sizes = {Purpose.BACKING: (), Purpose.BINDING: (piece.width,)}
        for side in sizes.get(piece.purpose, (piece.width, piece.length)):
            if not is_on_ruler(side, units):
                sentence = (
                    f"{piece.label} ({piece.name}) is to be cut {tell(side, units)}, which no ruler shows."
                )
                remedy = f"Choose finished sizes and allowances that make it a multiple of {mark}."
                yield Fault(_decider(pattern, piece), sentence, remedy, piece.label)
                break


def _decider(pattern: Pattern, piece: Piece) -> str:
    """Return the key that decides the size of a piece."""
    if piece.purpose in (Purpose.BINDING, Purpose.BIAS):
        return "binding.width"
    if piece.purpose not in (Purpose.GROUND, Purpose.SHAPE):
        return _key_of_plain(pattern, piece)
    recipes = (
        each.recipe
        for each in pattern.bill.masters
        if piece.label in (each.ground, *(blank.label for blank in each.blanks))
    )
    return dotted("recipes", next(recipes, pattern.design.recipes[0].name), "start")


def _key_of_plain(pattern: Pattern, piece: Piece) -> str:
    """Return the key of a border, or of a part of a setting, whose plain cloth a piece is."""
    kinds = {BORDER: "width", COPING: "to"}
    for leaf in cloths_of(pattern.design):
        border = piece.purpose in (Purpose.BORDER, Purpose.COPING)
        if leaf.name == piece.fabric and (leaf.what in kinds) == border:
            return f"{leaf.key}.{kinds[leaf.what]}" if border else leaf.key
    return "setting"


def unit_on_ruler(pattern: Pattern) -> Iterator[Fault]:
    """Ask for a trimmed unit whose side a ruler shows."""
    units = pattern.design.units
    for recipe in pattern.design.recipes:
        sides = (
            side + 2 * pattern.design.making.seam for side in (recipe.finished_width, recipe.finished_height)
        )
        for side in dict.fromkeys(sides):
            if not is_on_ruler(side, units):
                sentence = f"Units of {recipe.name} are trimmed to {tell(side, units)}, which no ruler shows."
                remedy = "Change finished so that it and two seams make a size on the ruler."
                yield Fault(dotted("recipes", recipe.name, "finished"), sentence, remedy)


def too_large_to_square(pattern: Pattern) -> Iterator[Fault]:
    """Tell of squares that no ruler squares up in one go."""
    units = pattern.design.units
    for recipe in pattern.design.recipes:
        largest = max(recipe.width, recipe.height)
        if largest > LARGEST_RULER:
            sentence = (
                f"The square of {recipe.name} is {tell(largest, units)}; the largest square ruler is "
                f"{tell(LARGEST_RULER, units)}."
            )
            remedy = "Make the unit smaller, or say in `about` how the square is measured out."
            yield Fault(dotted("recipes", recipe.name, "start"), sentence, remedy)


def large_first(pattern: Pattern) -> Iterator[Fault]:
    """Ask that of each fabric joined strips come first, then those with long pieces before those with short ones."""
    units = pattern.design.units
    for plan in pattern.materials.cloth:
        cut = [group for group in plan.strips if group.pieces]
        for first, second in pairwise(cut):
            before, after = _longest(first), _longest(second)
            if after > before:
                sentence = (
                    f"Strip {second.label}, with pieces {tell(after, units)} long, is cut after {first.label}, whose "
                    f"longest are {tell(before, units)}: large pieces come first."
                )
                yield Fault(dotted("fabrics", plan.fabric), sentence, REBUILD, second.label)
                break


def _longest(group: StripGroup) -> Length:
    return max(max(cut.along, cut.across) for cut in group.pieces)


def near_equal_strips(pattern: Pattern) -> Iterator[Fault]:
    """Tell of strips of one fabric that differ needlessly little."""
    units = pattern.design.units
    for plan in pattern.materials.cloth:
        for low, high in pairwise(sorted({group.height for group in plan.strips})):
            if high - low <= NEAR:
                sentence = (
                    f"Fabric {plan.fabric} is cut in strips of {tell(low, units)} and of {tell(high, units)}; such "
                    "strips are easily exchanged."
                )
                remedy = "Make them alike where you can, such as by the width of the binding or of a border."
                yield Fault(dotted("fabrics", plan.fabric), sentence, remedy)
                break


def labels_agree(pattern: Pattern) -> Iterator[Fault]:
    """Ask for one label for each kind of piece: the letter of its fabric, and a number."""
    groups: dict[str, list[str]] = defaultdict(list)
    for piece in pattern.bill.pieces:
        groups[piece.label].append(piece.name)
        if not piece.label.startswith(piece.fabric) or not piece.label[len(piece.fabric) :].isdigit():
            sentence = f"{piece.name.capitalize()} of fabric {piece.fabric} bears the label {piece.label}."
            yield Fault(dotted("fabrics", piece.fabric), sentence, REBUILD, piece.label)
    for label, names in groups.items():
        if len(names) > 1:
            yield Fault("", f"{' and '.join(names)} bear the same label {label}.", REBUILD, label)


CUTTING = (
    check("strip-overfull", Severity.STOPS, (28, 31), "A strip holds what is cut from it.", strip_width),
    check("strip-tight", Severity.COSTS, (29,), "No strip is filled to its end.", tight_fits),
    check("subcut-wrong", Severity.STOPS, (32, 41, 70), "Pieces are cut as they are listed.", subcut_sizes),
    check("piece-unplaced", Severity.STOPS, (31,), "Every piece fits its cloth.", pieces_that_fit_nowhere),
    check("piece-not-joined", Severity.STOPS, (31, 77), "Long pieces are joined.", long_pieces_joined),
    check("run-too-short", Severity.STOPS, (31, 49, 77), "Joined strips are long enough.", joined_runs),
    check("off-ruler", Severity.STOPS, (42,), "Pieces have sizes that a ruler shows.", ruler_marks),
    check(
        "unit-off-ruler", Severity.STOPS, (42,), "Trimmed units have sizes that a ruler shows.", unit_on_ruler
    ),
    check("beyond-ruler", Severity.CONFUSES, (53,), "A ruler squares up every square.", too_large_to_square),
    check(
        "small-cut-first", Severity.CONFUSES, (34,), "Large pieces are cut before small ones.", large_first
    ),
    check(
        "strips-near-equal", Severity.STYLE, (35,), "Strips are alike or clearly differ.", near_equal_strips
    ),
    check("label-unclear", Severity.CONFUSES, (41,), "Each kind of piece has its own label.", labels_agree),
)
