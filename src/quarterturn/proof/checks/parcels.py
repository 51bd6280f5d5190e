"""Checks of cloth in pieces: precuts, and what lies on the shelf (groups C and D of the trade's list)."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, replace

from quarterturn.design import PINKED, Direction, Fabric, Parcel, Precut, Severity, counted, dotted, sides_of
from quarterturn.materials import ClothPlan, ParcelLayout, plan_cloth
from quarterturn.measure import Length, Units, show_length
from quarterturn.pieces import Grain, Piece, Purpose
from quarterturn.proof.checks.fault import REBUILD, Fault, check, tell
from quarterturn.proof.model import Pattern


@dataclass(frozen=True, slots=True)
class _Laid:
    """A piece laid on a piece of cloth: its box as the cloth came off the bolt, and whether its length runs across."""

    piece: str
    left: Length
    top: Length
    width: Length
    height: Length

    def overlaps(self, other: _Laid) -> bool:
        """Tell whether two pieces share some cloth."""
        across = self.left < other.left + other.width and other.left < self.left + self.width
        return across and self.top < other.top + other.height and other.top < self.top + self.height


def _plans(pattern: Pattern) -> Iterator[tuple[Fabric, ClothPlan]]:
    """Return the fabrics of which some is cut from pieces of cloth, with their plans."""
    for plan in pattern.materials.cloth:
        if plan.parcels:
            yield pattern.design.fabric(plan.fabric), plan


def _layouts(plan: ClothPlan) -> tuple[ParcelLayout, ...]:
    return plan.parcels.layouts if plan.parcels else ()


def _sources(fabric: Fabric) -> dict[str, Parcel]:
    """Return the pieces of cloth of a fabric as the design states them, by the labels of the plan."""
    found = {f"{fabric.letter} on hand {n}": parcel for n, parcel in enumerate(fabric.on_hand, 1)}
    return found | ({f"{fabric.letter} bought": fabric.bought_as} if fabric.bought_as else {})


def _true_size(parcel: Parcel, fabric: Fabric) -> tuple[Length, Length]:
    """Return what is left of a piece when it is squared up; what is bought is washed before, if the fabric is."""
    if parcel.count is not None:
        return parcel.width - parcel.squaring, parcel.height - parcel.squaring
    return (
        parcel.width * (1 - fabric.shrink_across) - parcel.squaring,
        parcel.height * (1 - fabric.shrink_along) - parcel.squaring,
    )


def _laid(layout: ParcelLayout) -> list[_Laid]:
    """Lay every piece of a layout where the cuts leave it: strip below strip, pieces side by side."""
    found, top = [], Length(0)
    for group in layout.strips:
        for _ in range(group.strips):
            left = Length(0)
            for cut in group.crosscuts:
                for _ in range(cut.count):
                    found.append(_Laid(cut.piece, left, top, cut.along, cut.across))
                    left += cut.along
            if not group.crosscuts:
                found.append(_Laid(group.label, left, top, layout.length, group.height))
            top += group.height
    return [_turned(each) for each in found] if layout.upright else found


def _turned(laid: _Laid) -> _Laid:
    """Return a piece as it lies when the cloth is turned back: strips then run down, from left to right."""
    return _Laid(laid.piece, laid.top, laid.left, laid.height, laid.width)


def layouts_fit(pattern: Pattern) -> Iterator[Fault]:
    """Lay every piece on the true piece of cloth: none sticks out, and no two share any cloth."""
    units = pattern.design.units
    for fabric, plan in _plans(pattern):
        sources = _sources(fabric)
        for layout in _layouts(plan):
            width, height = _true_size(sources[layout.stock], fabric)
            laid = _laid(layout)
            for one in laid:
                if one.left + one.width > width or one.top + one.height > height:
                    sentence = (
                        f"{one.piece} sticks out of a piece of fabric {fabric.letter}, which is {tell(width, units)} × "
                        f"{tell(height, units)} squared up."
                    )
                    yield Fault(dotted("fabrics", fabric.letter), sentence, REBUILD, layout.label)
            pairs = ((a, b) for n, a in enumerate(laid) for b in laid[:n] if a.overlaps(b))
            for a, b in pairs:
                sentence = f"{a.piece} and {b.piece} are cut from the same cloth of a piece."
                yield Fault(dotted("fabrics", fabric.letter), sentence, REBUILD, layout.label)


def grain_kept(pattern: Pattern) -> Iterator[Fault]:
    """Ask that pieces whose grain or print has a direction lie so on every piece of cloth.

    Strips to be joined run across the cloth where the print has a direction, as they do off the bolt.
    """
    listed = {piece.label: piece for piece in pattern.bill.pieces}
    for fabric, plan in _plans(pattern):
        for layout in _layouts(plan):
            wrong = {
                each.piece
                for each in _laid(layout)
                if each.piece in listed and not _lies_well(each, listed[each.piece], fabric.direction)
            } | {
                each.piece
                for each in _laid(layout)
                if each.piece not in listed
                and fabric.direction is not Direction.NONE
                and each.width < each.height
            }
            for label in sorted(wrong):
                sentence = (
                    f"{label} lies on a piece of fabric {fabric.letter} against its grain or its print."
                )
                yield Fault(dotted("fabrics", fabric.letter, "direction"), sentence, REBUILD, label)


def _lies_well(laid: _Laid, piece: Piece, direction: Direction) -> bool:
    """Tell whether a piece lies as it may: its length across the cloth, along it where its grain says so."""
    across = (laid.width, laid.height) == (piece.length, piece.width)
    along = (laid.width, laid.height) == (piece.width, piece.length)
    if piece.grain is Grain.LENGTHWISE:
        return along
    return across or (along and piece.grain is Grain.ANY and direction is Direction.NONE)


def enough_on_hand(pattern: Pattern) -> Iterator[Fault]:
    """Ask that no more pieces are taken from the shelf than lie there."""
    for fabric, plan in _plans(pattern):
        taken: Counter[str] = Counter()
        for layout in _layouts(plan):
            taken[layout.stock] += layout.count
        for label, parcel in _sources(fabric).items():
            if parcel.count is not None and taken[label] > parcel.count:
                sentence = f"{taken[label]} of '{label}' are cut into, and there are {parcel.count}."
                yield Fault(dotted("fabrics", fabric.letter, "on_hand"), sentence, REBUILD, label)


def shelf_unused(pattern: Pattern) -> Iterator[Fault]:
    """Tell of pieces on hand of which none is cut into."""
    for fabric, plan in _plans(pattern):
        used = {layout.stock for layout in _layouts(plan)}
        for number, parcel in enumerate(fabric.on_hand):
            if f"{fabric.letter} on hand {number + 1}" not in used:
                whole = "The piece" if parcel.count == 1 else f"None of the {parcel.count} pieces"
                size = f"{tell(parcel.width, pattern.design.units)} × {tell(parcel.height, pattern.design.units)}"
                cut = "is not cut into" if parcel.count == 1 else "is cut into"
                sentence = f"{whole} of fabric {fabric.letter} on hand, {size}, {cut}: {_why_unused(plan)}."
                remedy = "Keep them for another quilt and take them out of the file."
                yield Fault(dotted("fabrics", fabric.letter, "on_hand", number), sentence, remedy)


def _why_unused(plan: ClothPlan) -> str:
    if plan.parcels and plan.parcels.to_buy and plan.parcels.bought:
        return "no fewer would have to be bought"
    return "that would save no cloth" if plan.is_off_the_bolt else "other pieces hold everything"


def overstated(pattern: Pattern) -> Iterator[Fault]:
    """Hold a precut whose size the design states against what can be counted on of such a one (trade check 39)."""
    units = pattern.design.units
    for fabric in pattern.design.fabrics:
        parcel = fabric.bought_as
        if parcel is None or parcel.precut is None:
            continue
        width, height = sides_of(parcel.precut, units, fabric.width)
        if parcel.width > width or parcel.height > height:
            sentence = (
                f"Fabric {fabric.letter} counts on {tell(parcel.width, units)} × {tell(parcel.height, units)} of each "
                f"{parcel.name}; of what shops sell by that name {tell(width, units)} × {tell(height, units)} can be "
                f"counted on, {_why_less(parcel.precut)}."
            )
            remedy = f'Write bought_as = "{parcel.precut.value}", or give the pieces a name of their own.'
            yield Fault(dotted("fabrics", fabric.letter, "bought_as"), sentence, remedy)


def _why_less(precut: Precut) -> str:
    return "points included" if precut in PINKED else "selvage off"


def elsewhere(pattern: Pattern) -> Iterator[Fault]:
    """Cut fat quarters and eighths of the other measure: 50 × 55 cm, or 18″ × 22″, which is 45.7 × 55.9 cm."""
    design = pattern.design
    other = Units.INCH if design.units is Units.METRIC else Units.METRIC
    for fabric, plan in _plans(pattern):
        parcel = fabric.bought_as
        if parcel is None or parcel.precut is None or parcel.pinked or plan.unplaced:
            continue
        width, height = sides_of(parcel.precut, other, fabric.width)
        abroad = replace(fabric, bought_as=replace(parcel, width=width, height=height))
        if more := _worse(pattern, abroad, plan, parcel.name):
            size = f"{show_length(width, design.units)} × {show_length(height, design.units)}"
            where = "by the yard" if other is Units.INCH else "by the metre"
            sentence = (
                f"A {parcel.name} where cloth is sold {where} is {size} without its selvage: of such, fabric "
                f"{fabric.letter} {more}."
            )
            remedy = "Say in `about` which size of cloth the pattern counts on."
            yield Fault(dotted("fabrics", fabric.letter, "bought_as"), sentence, remedy)


def _worse(pattern: Pattern, fabric: Fabric, plan: ClothPlan, name: str) -> str:
    """Return by what a plan of a fabric as it might be is worse than the one there is; nothing where it is not."""
    pieces = pattern.bill.of_fabric(fabric.letter)
    found = plan_cloth(fabric, pieces, pattern.design.making, pattern.design.units)
    lost = [label for label in found.unplaced if label not in plan.unplaced]
    if lost:
        return f"cannot give {' and '.join(lost)}"
    if not (found.parcels and plan.parcels) or found.parcels.bought <= plan.parcels.bought:
        return ""
    return f"takes {counted(found.parcels.bought, name)} instead of {plan.parcels.bought}"


def print_forbids(pattern: Pattern) -> Iterator[Fault]:
    """Plan a fabric whose print has a direction as if it had none, and tell what that would save (trade check 54)."""
    for fabric, plan in _plans(pattern):
        if fabric.direction is Direction.NONE or not fabric.bought_as or not plan.parcels:
            continue
        # The grain of every piece follows from the print; the backing's alone does not.
        listed = pattern.bill.of_fabric(fabric.letter)
        pieces = [p if p.purpose is Purpose.BACKING else replace(p, grain=Grain.ANY) for p in listed]
        plain = replace(fabric, direction=Direction.NONE, upright=False)
        found = plan_cloth(plain, pieces, pattern.design.making, pattern.design.units)
        gained = [label for label in plan.unplaced if label not in found.unplaced]
        fewer = found.parcels.bought if found.parcels else 0
        if gained or (fewer < plan.parcels.bought and not plan.unplaced):
            what = (
                f"{' and '.join(gained)} fits no piece"
                if gained
                else f"it takes {plan.parcels.bought} pieces"
            )
            then = "it would fit" if gained else f"{fewer} would do"
            sentence = (
                f"The print of fabric {fabric.letter} is {fabric.direction.value}, so that nothing may be turned: "
                f"{what}; without a direction {then}."
            )
            remedy = "Choose a print without direction, or larger pieces."
            yield Fault(dotted("fabrics", fabric.letter, "direction"), sentence, remedy)


PARCELS = (
    check(
        "layout-overfull", Severity.STOPS, (28, 33, 34, 39), "Pieces of cloth hold what is cut.", layouts_fit
    ),
    check("layout-turned", Severity.STOPS, (93,), "Pieces of cloth are cut with the grain.", grain_kept),
    check("on-hand-overdrawn", Severity.STOPS, (33,), "The shelf holds what is taken.", enough_on_hand),
    check("on-hand-unused", Severity.CONFUSES, (52,), "What is on hand is used.", shelf_unused),
    check("precut-overstated", Severity.COSTS, (39,), "Precuts are as large as planned.", overstated),
    check("precut-elsewhere", Severity.CONFUSES, (40,), "Precuts of other shops do too.", elsewhere),
    check("print-costs-pieces", Severity.COSTS, (54,), "A print's direction costs no pieces.", print_forbids),
)
