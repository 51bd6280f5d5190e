"""The cutting done again on narrow cloth, where the design states wider cloth (trade check 44)."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, replace

from quarterturn.design import Severity, dotted
from quarterturn.materials import ClothPlan, Crosscut, StripGroup
from quarterturn.measure import Length, Units, inches, mm
from quarterturn.pieces import Purpose
from quarterturn.proof.checks.fault import Fault, check, tell
from quarterturn.proof.checks.sizing import finished_size
from quarterturn.proof.model import Pattern

NARROWEST = {Units.INCH: inches(40), Units.METRIC: mm(1000)}
"""Cloth as narrow as this is sold (common practice)."""


@dataclass(slots=True)
class _Room:
    """What is left of a strip on narrow cloth."""

    length: Length
    height: Length


def lost_when_narrow(pattern: Pattern) -> Iterator[Fault]:
    """Cut the same strips from narrow cloth, and name what is lost."""
    units = pattern.design.units
    narrow = NARROWEST[units]
    for plan in pattern.materials.cloth:
        if plan.usable_width <= narrow:
            continue
        lost = [f"{count} of {label}" for label, count in _lost_pieces(plan, narrow).items()]
        lost += _short_runs(pattern, plan, narrow) + _short_panels(pattern, plan, narrow)
        if lost:
            sentence = (
                f"The cutting counts on {tell(plan.usable_width, units)} of fabric {plan.fabric}. On cloth "
                f"{tell(narrow, units)} wide, the same cuts lose {' and '.join(lost)}."
            )
            remedy = _remedy(pattern, plan, narrow)
            yield Fault(dotted("fabrics", plan.fabric, "width"), sentence, remedy)


def _remedy(pattern: Pattern, plan: ClothPlan, narrow: Length) -> str:
    """Advise narrow cloth only where every piece fits it."""
    units = pattern.design.units
    tell_buyers = f"say in `about` that fabric {plan.fabric} must be {tell(plan.usable_width, units)} wide"
    pieces = (p for p in pattern.bill.of_fabric(plan.fabric) if p.purpose in (Purpose.GROUND, Purpose.SHAPE))
    if any(min(piece.length, piece.width) > narrow for piece in pieces):
        return f"{tell_buyers[0].upper()}{tell_buyers[1:]}."
    return f"Set fabrics.{plan.fabric}.width to {tell(narrow, units)}, or {tell_buyers}."


def _lost_pieces(plan: ClothPlan, narrow: Length) -> Counter[str]:
    """Return the pieces that fit neither their own strip nor what is left of another one."""
    rooms: list[_Room] = []
    homeless: list[Crosscut] = []
    for group, width in plan.groups:
        if not group.pieces:
            continue
        there = narrow - (plan.usable_width - width)
        used, over = _kept(group, there)
        if not group.rest:
            rooms += [_Room(there - used, group.height) for _ in range(group.strips)]
        homeless += over * group.strips
    lost: Counter[str] = Counter()
    for cut in sorted(homeless, key=lambda cut: -cut.along):
        if not _finds_room(cut, rooms):
            lost[cut.piece] += 1
    return lost


def _kept(group: StripGroup, narrow: Length) -> tuple[Length, list[Crosscut]]:
    """Cut a strip in order; return the length used, and the pieces that do not fit."""
    used, over = Length(0), list[Crosscut]()
    segments = [(cut.along, [replace(cut, count=1)]) for cut in group.crosscuts for _ in range(cut.count)]
    for split in group.splits:
        pieces = [replace(cut, count=1) for cut in split.crosscuts for _ in range(cut.count)]
        segments += [(split.along, pieces)] * split.count
    for along, pieces in segments:
        if used + along <= narrow:
            used += along
        else:
            over += pieces
    return used, over


def _finds_room(cut: Crosscut, rooms: list[_Room]) -> bool:
    for room in rooms:
        if cut.along <= room.length and cut.across <= room.height:
            room.length -= cut.along
            return True
    return False


def _short_runs(pattern: Pattern, plan: ClothPlan, narrow: Length) -> list[str]:
    """Name the joined strips that are too short for what is cut from them, or for the binding."""
    units, short = pattern.design.units, list[str]()
    for run in plan.runs:
        narrower = plan.usable_width - narrow
        ends = sum((end.strips * (end.length - narrower) for end in run.ends), Length(0))
        length = run.strips * narrow + ends - run.joins * run.loss
        cut = sum((cut.along * cut.count for cut in run.crosscuts), Length(0))
        need = cut or pattern.materials.binding_run
        if length < need:
            short.append(f"{tell(need - length, units)} of the joined strips {run.label}")
    return short


def _short_panels(pattern: Pattern, plan: ClothPlan, narrow: Length) -> list[str]:
    """Say whether the backing panels no longer reach across."""
    over = 2 * pattern.design.making.overage
    width, height = finished_size(pattern.design)
    backing = [piece.label for piece in pattern.bill.pieces if piece.purpose is Purpose.BACKING]
    for group in plan.panels:
        across = (width if group.runs_down else height) + over
        reach = group.panels * narrow - 2 * group.seam * (group.panels - 1)
        if reach < across:
            return [
                f"{tell(across - reach, pattern.design.units)} of the width of the backing {''.join(backing)}"
            ]
    return []


NARROW = (
    check("narrow-cloth", Severity.COSTS, (44,), "The cutting works on narrow cloth too.", lost_when_narrow),
)
