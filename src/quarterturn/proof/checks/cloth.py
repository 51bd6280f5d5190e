"""Checks of yardage, binding, backing, batting and thread (group D of the trade's list)."""

from __future__ import annotations

from collections.abc import Iterator

from quarterturn.design import BindingKind, Direction, Fold, Severity, dotted
from quarterturn.materials import ClothPlan, PanelGroup
from quarterturn.measure import MM, Length, Units, buy_up, inches, show_cloth, show_length
from quarterturn.pieces import Purpose
from quarterturn.proof.checks.drafting import draft_of
from quarterturn.proof.checks.fault import REBUILD, Fault, check, near, tell
from quarterturn.proof.checks.joining import sewn_end_to_end
from quarterturn.proof.checks.sizing import finished_size, to_cut
from quarterturn.proof.checks.walking import motifs_of
from quarterturn.proof.model import Pattern

LARGEST_BATTING = inches(120)
"""The largest packaged batting is 120" square (two shops' tables of packaged sizes agree, 2011 and 2012)."""

LEAST_OVERAGE = inches(2)
"""Backing beyond the top on each side: published habits run from 2" to 6"."""

CLOSE = 0.05
"""Inches. Edges to stitch are sums of curves, calculated in floats by two ways."""


def yardage(pattern: Pattern) -> Iterator[Fault]:
    """Recalculate every fabric from its cutting plan."""
    units = pattern.design.units
    for plan in pattern.materials.cloth:
        cut = _cut_length(plan)
        if cut != plan.cut_length:
            sentence = (
                f"The cuts of fabric {plan.fabric} add up to {tell(cut, units)}, and the plan says "
                f"{tell(plan.cut_length, units)}."
            )
            yield Fault(dotted("fabrics", plan.fabric), sentence, REBUILD)
        if cut and _left(pattern, plan) < 0:
            sentence = (
                f"Fabric {plan.fabric} needs {tell(cut + plan.squaring, units)}, straightening included, and "
                f"{show_cloth(plan.bought, units)} is bought."
            )
            yield Fault(dotted("fabrics", plan.fabric), sentence, REBUILD)


def _all_left(pattern: Pattern) -> Iterator[tuple[str, Length]]:
    """Return what is left of each fabric, and of web by the length where there is any."""
    for plan in pattern.materials.cloth:
        if plan.is_off_the_bolt or not plan.parcels:
            yield f"fabric {plan.fabric}", _left(pattern, plan)
    if pattern.materials.web.bought and not pattern.materials.web.sheet:
        yield "the web", pattern.materials.web.bought - pattern.materials.web.used_length


def _left(pattern: Pattern, plan: ClothPlan) -> Length:
    """Return what is there when the cloth is washed, straightened and cut."""
    washed = plan.bought * (1 - pattern.design.fabric(plan.fabric).shrink_along)
    return washed - plan.squaring - _cut_length(plan)


def _cut_length(plan: ClothPlan) -> Length:
    strips = sum((group.height * group.strips for group in plan.strips), Length(0))
    return strips + sum((group.cut_length * group.panels for group in plan.panels), Length(0))


def rounding(pattern: Pattern) -> Iterator[Fault]:
    """Hold every yardage to one rule: what is cut and the slack, up to the next length that a shop cuts."""
    units, making = pattern.design.units, pattern.design.making
    for plan in pattern.materials.cloth:
        washed = 1 - pattern.design.fabric(plan.fabric).shrink_along
        cut = _cut_length(plan)
        want = buy_up((cut + max(making.slack, making.squaring)) / washed, units) if cut else cut
        if plan.bought != want:
            sentence = (
                f"By the rule for all fabrics {show_cloth(want, units)} of fabric {plan.fabric} is bought, and the "
                f"list says {show_cloth(plan.bought, units)}."
            )
            yield Fault(dotted("fabrics", plan.fabric), sentence, REBUILD)


def no_slack(pattern: Pattern) -> Iterator[Fault]:
    """Tell where no slack is asked for, so that what is left for a miscut is what rounding up leaves by chance."""
    making, units = pattern.design.making, pattern.design.units
    if making.slack <= making.squaring:
        left = sorted(_all_left(pattern), key=lambda one: one[1])
        told = [f"{near(rest, units)} of {what}" for what, rest in left if rest < inches(1)][:6]
        told = told or [f"no more than {near(left[0][1], units)} of {left[0][0]}"]
        sentence = (
            f"Slack is {tell(making.slack, units)} and straightening the cloth takes {tell(making.squaring, units)}. "
            f"For a miscut there is {', '.join(told)}."
        )
        remedy = f"Set making.slack to {show_length(making.squaring + inches(1), units)} or more."
        yield Fault("making.slack", sentence, remedy)


def widths_agree(pattern: Pattern) -> Iterator[Fault]:
    """Ask that each plan uses the width that the design states."""
    units = pattern.design.units
    for fabric in pattern.design.fabrics:
        for plan in pattern.materials.cloth:
            if plan.fabric == fabric.letter and plan.usable_width != fabric.width:
                sentence = (
                    f"Fabric {fabric.letter} is {tell(fabric.width, units)} wide, and is cut as if it were "
                    f"{tell(plan.usable_width, units)}."
                )
                yield Fault(dotted("fabrics", fabric.letter, "width"), sentence, REBUILD)


def _is_unplaced(pattern: Pattern, purpose: Purpose) -> bool:
    """Tell whether no cloth holds a piece of a purpose, of which another check tells."""
    unplaced = {label for plan in pattern.materials.cloth for label in plan.unplaced}
    return any(p.purpose is purpose and p.label in unplaced for p in pattern.bill.pieces)


def binding_run(pattern: Pattern) -> Iterator[Fault]:
    """Recalculate the binding: the perimeter and its extra, from strips that each join shortens."""
    design, units = pattern.design, pattern.design.units
    width, height = finished_size(design)
    want = 2 * (width + height) + design.making.binding_extra
    runs = [
        sewn_end_to_end(plan, run)[1]
        for plan in pattern.materials.cloth
        for run in plan.runs
        if plan.fabric == design.binding_fabric and run.height == design.binding_width
    ]
    if not runs and _is_unplaced(pattern, Purpose.BINDING):
        return
    found = max(runs, default=Length(0)) if design.binding_kind is BindingKind.STRAIGHT else _bias(pattern)
    if found < want or pattern.materials.binding_run < want:
        sentence = (
            f"The binding goes round {tell(2 * (width + height), units)} and needs {tell(want, units)}; its strips "
            f"make {tell(min(found, pattern.materials.binding_run), units)}."
        )
        yield Fault("binding", sentence, REBUILD)


def _bias(pattern: Pattern) -> Length:
    """Return what the sheet of a binding on the bias gives: whole rows between its slanting edges, less the seams."""
    strip, lost = float(pattern.design.binding_width), 2 * float(pattern.design.making.seam)
    for piece in pattern.bill.pieces:
        if piece.purpose is Purpose.BIAS:
            high, base = (float(side) - lost for side in sorted((piece.length, piece.width)))
            rows = int((base / 2**0.5 + CLOSE / 1000) / strip)
            return Length(rows * high * 2**0.5)
    return Length(0)


def binding_extra(pattern: Pattern) -> Iterator[Fault]:
    """Ask for a binding that is longer than the edge: its corners and its last join take of it.

    Published allowances run from 8" to 24", most are 10" (six sources, such as monicacurryquiltdesign.com 2019).
    """
    design, units = pattern.design, pattern.design.units
    edge = 2 * sum(finished_size(design), Length(0))
    least = 200 * MM if units is Units.METRIC else inches(8)
    if design.making.binding_extra < least:
        sentence = (
            f"The edge of the quilt is {tell(edge, units)} long, and the binding "
            f"{tell(edge + design.making.binding_extra, units)}: {tell(design.making.binding_extra, units)} is left "
            "for corners and the last join."
        )
        yield Fault(
            "making.binding_extra", sentence, f"Set making.binding_extra to {tell(least, units)} or more."
        )


def binding_width(pattern: Pattern) -> Iterator[Fault]:
    """Ask for a binding that reaches round the edge.

    Folded double it takes six finished widths and 1/8" for turning (a publisher's chart: 1 5/8" for 1/4"), and single
    four.
    """
    design, units = pattern.design, pattern.design.units
    least = (6 if design.binding_fold is Fold.DOUBLE else 4) * design.making.seam + inches(0, 1, 8)
    if design.binding_width < least:
        sentence = (
            f"Binding cut {tell(design.binding_width, units)} wide and folded {design.binding_fold.value} does not "
            f"reach round an edge with a seam of {tell(design.making.seam, units)}."
        )
        yield Fault("binding.width", sentence, f"Cut it {show_length(least, units)} wide or wider.")


def backing(pattern: Pattern) -> Iterator[Fault]:
    """Recalculate whether the backing panels, less their seams, cover the top and the overage all round."""
    design, units = pattern.design, pattern.design.units
    over = 2 * design.making.overage
    width, height = (side + over for side in finished_size(design))
    panels = [(plan, group) for plan in pattern.materials.cloth for group in plan.panels]
    if not panels and not _is_unplaced(pattern, Purpose.BACKING):
        yield Fault("backing.fabric", "No backing is cut.", REBUILD)
    for plan, group in panels:
        across = group.panels * plan.usable_width - 2 * group.seam * (group.panels - 1)
        sheet = (across, group.cut_length) if group.runs_down else (group.cut_length, across)
        if sheet[0] < width or sheet[1] < height:
            sentence = (
                f"The backing panels make a sheet of {tell(sheet[0], units)} × {tell(sheet[1], units)}; top and "
                f"overage need {tell(width, units)} × {tell(height, units)}."
            )
            yield Fault("backing.fabric", sentence, REBUILD)


def backing_way(pattern: Pattern) -> Iterator[Fault]:
    """Try the backing both ways, and tell where the other takes less cloth."""
    design, units = pattern.design, pattern.design.units
    over = 2 * design.making.overage
    width, height = (side + over for side in finished_size(design))
    for plan in pattern.materials.cloth:
        for group in plan.panels:
            if design.fabric(plan.fabric).direction is not Direction.NONE:
                continue
            along, across = (width, height) if group.runs_down else (height, width)
            along = to_cut(along, units)
            panels = _panels_for(across, plan, group)
            other = along * (panels or group.panels)
            if panels and other < group.cut_length * group.panels:
                sentence = (
                    f"The backing takes {tell(group.cut_length * group.panels, units)} of cloth this way, and "
                    f"{tell(other, units)} with its panels turned."
                )
                yield Fault("backing.fabric", sentence, REBUILD)


def _panels_for(across: Length, plan: ClothPlan, group: PanelGroup) -> int:
    """Return how many panels side by side reach across, each further one losing two allowances; 0 where none do."""
    if across <= plan.usable_width:
        return 1
    each = plan.usable_width - 2 * group.seam
    return -(-(across - 2 * group.seam) // each) if each > 0 else 0


def batting(pattern: Pattern) -> Iterator[Fault]:
    """Ask for batting that is large enough."""
    design, units, found = pattern.design, pattern.design.units, pattern.materials
    over = 2 * design.making.overage
    width, height = (side + over for side in finished_size(design))
    if found.batting_width < width or found.batting_height < height:
        sentence = (
            f"The batting is {tell(found.batting_width, units)} × {tell(found.batting_height, units)}; top and "
            f"overage need {tell(width, units)} × {tell(height, units)}."
        )
        yield Fault("making.overage", sentence, REBUILD)


def batting_sold(pattern: Pattern) -> Iterator[Fault]:
    """Tell of batting that no package holds."""
    design, units = pattern.design, pattern.design.units
    largest = max(finished_size(design)) + 2 * design.making.overage
    if largest > LARGEST_BATTING:
        sentence = (
            f"The batting must be {tell(largest, units)} long; the largest packaged batting is "
            f"{tell(LARGEST_BATTING, units)} square."
        )
        yield Fault(
            "setting", sentence, "Say on the back cover that batting by the length, or joined, is needed."
        )


def overage(pattern: Pattern) -> Iterator[Fault]:
    """Ask for backing and batting that stand out enough to be quilted."""
    over, units = pattern.design.making.overage, pattern.design.units
    if over < LEAST_OVERAGE:
        sentence = (
            f"Backing and batting stand out {tell(over, units)} on each side, which is too little to quilt."
        )
        remedy = f"Set making.overage to {tell(100 * MM if units is Units.METRIC else inches(4), units)}."
        yield Fault("making.overage", sentence, remedy)


def thread(pattern: Pattern) -> Iterator[Fault]:
    """Recalculate the edge to be stitched in each colour from closed forms."""
    want: dict[str, float] = {}
    for count in pattern.bill.masters:
        colourway = pattern.design.colourway(count.code)
        for shape in draft_of(pattern.design, pattern.design.recipe(colourway.recipe)).shapes:
            letter = colourway.cloth(shape.part)
            want[letter] = want.get(letter, 0.0) + count.count * shape.edge
    for _, motif in motifs_of(pattern.design):
        edge = draft_of(pattern.design, pattern.design.recipe(motif.recipe)).shape.edge
        want[motif.fabric] = want.get(motif.fabric, 0.0) + edge
    found = {stitching.fabric: stitching.edge for stitching in pattern.materials.stitching}
    for letter in sorted(want.keys() | found.keys()):
        if abs(want.get(letter, 0.0) - found.get(letter, 0.0)) > CLOSE:
            units = pattern.design.units
            sentence = (
                f"{tell(want.get(letter, 0.0), units)} of edge is stitched in thread to match fabric {letter}; the "
                f"thread list says {tell(found.get(letter, 0.0), units)}."
            )
            yield Fault(dotted("fabrics", letter), sentence, REBUILD)


CLOTH = (
    check("yardage-short", Severity.STOPS, (30, 43, 47), "Enough cloth is bought for the cuts.", yardage),
    check("yardage-rounding", Severity.COSTS, (45, 47), "One rounding rule holds for all fabrics.", rounding),
    check("no-slack", Severity.COSTS, (30, 45), "Cloth is bought beyond the cuts.", no_slack),
    check("width-differs", Severity.STOPS, (43, 57), "Cloth is cut in its stated width.", widths_agree),
    check("binding-short", Severity.STOPS, (49,), "The binding reaches round the quilt.", binding_run),
    check("binding-tight", Severity.COSTS, (49,), "The binding is longer than the edge.", binding_extra),
    check("binding-narrow", Severity.STOPS, (49,), "The binding reaches round the edge.", binding_width),
    check("backing-short", Severity.STOPS, (50,), "The backing covers top and overage.", backing),
    check("backing-dear", Severity.COSTS, (50,), "The backing runs the cheaper way.", backing_way),
    check("batting-small", Severity.STOPS, (51,), "The batting covers top and overage.", batting),
    check("batting-unsold", Severity.COSTS, (51,), "Batting of the size is sold.", batting_sold),
    check("overage-small", Severity.COSTS, (50, 51), "The lower layers stand out enough.", overage),
    check("thread-miscounted", Severity.COSTS, (53,), "The thread list sums all edges.", thread),
)
