"""The cutting done again on narrow cloth, and on web of the usual width, where the design states more."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, replace

from quarterturn.design import Severity, dotted
from quarterturn.materials import ClothPlan, Crosscut, StripGroup
from quarterturn.materials.parcels import plan_cloth
from quarterturn.materials.web import plan_web
from quarterturn.measure import Length, Units, inches, mm, show_cloth
from quarterturn.pieces import Purpose
from quarterturn.proof.checks.fault import Fault, check, tell
from quarterturn.proof.checks.sizing import finished_size
from quarterturn.proof.model import Pattern

NARROWEST = {Units.INCH: inches(40), Units.METRIC: mm(1000)}
"""Cloth as narrow as this is sold (common practice)."""
NARROWEST_WEB = {Units.INCH: inches(17), Units.METRIC: mm(430)}
"""The usual width of web by the length (suznquilts.blog 2013: 17"); wider rolls are the exception."""


@dataclass(slots=True)
class _Room:
    """What is left of a strip on narrow cloth."""

    length: Length
    height: Length


def lost_when_narrow(pattern: Pattern) -> Iterator[Fault]:
    """Cut the same strips from narrow cloth, name what is lost, and plan anew to tell what more must be bought."""
    units = pattern.design.units
    narrow = NARROWEST[units]
    for plan in pattern.materials.cloth:
        if plan.usable_width <= narrow or not plan.is_off_the_bolt:
            continue
        lost = [
            f"{count} of {label} ({pattern.bill.piece(label).name})"
            for label, count in _lost_pieces(plan, narrow).items()
        ]
        lost += _short_runs(pattern, plan, narrow) + _short_panels(pattern, plan, narrow)
        if lost:
            sentence = (
                f"The cutting counts on {tell(plan.usable_width, units)} of fabric {plan.fabric}. On cloth "
                f"{tell(narrow, units)} wide, the same cuts lose {' and '.join(lost)}. "
                f"{_more(pattern, plan, narrow)}"
            )
            remedy = _remedy(pattern, plan, narrow)
            yield Fault(dotted("fabrics", plan.fabric, "width"), sentence, remedy)


def _more(pattern: Pattern, plan: ClothPlan, narrow: Length) -> str:
    """Return what a plan for narrow cloth takes, and how much more that is."""
    design, units = pattern.design, pattern.design.units
    fabric = replace(design.fabric(plan.fabric), width=narrow)
    anew = plan_cloth(fabric, pattern.bill.of_fabric(plan.fabric), design.making, units)
    takes, more = show_cloth(anew.bought, units), anew.bought - plan.bought
    if anew.unplaced:
        return f"Cut anew for it, {' and '.join(anew.unplaced)} still do not fit."
    if more > 0:
        return f"Cut anew for it, {takes} must be bought: {show_cloth(more, units)} more."
    return f"Cut anew for it, what is bought is enough, {show_cloth(plan.bought, units)}."


def lost_on_narrow_web(pattern: Pattern) -> Iterator[Fault]:
    """Lay the tracings on web of the usual width, where the design states wider web, and tell what more it takes."""
    making, units, web = pattern.design.making, pattern.design.units, pattern.materials.web
    narrow = NARROWEST_WEB[units]
    if web.sheet or making.web_width <= narrow or not web.bought:
        return
    bill = pattern.bill
    anew = plan_web(replace(making, web_width=narrow), pattern.blocks, bill.masters, units, bill.motifs)
    if anew.bought <= web.bought and not anew.unplaced:
        return
    lost = f"{' and '.join(anew.unplaced)} do not fit" if anew.unplaced else ""
    more = show_cloth(anew.bought - web.bought, units)
    takes = f"{show_cloth(anew.bought, units)} must be bought instead of {show_cloth(web.bought, units)}: {more} more"
    sentence = (
        f"The tracings count on web {tell(making.web_width, units)} wide. On web {tell(narrow, units)} wide, "
        f"{lost or takes}."
    )
    remedy = f"Set making.web_width to {tell(narrow, units)}, or say in `about` how wide the web must be."
    yield Fault("making.web_width", sentence, remedy)


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
        if all(group.label != run.strip for group in plan.strips):
            continue
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
    check(
        "narrow-web", Severity.COSTS, (48,), "The tracings fit web of the usual width.", lost_on_narrow_web
    ),
)
