"""Checks of the templates (group G of the trade's list)."""

from __future__ import annotations

from collections.abc import Iterator

from quarterturn.design import Paper, Severity, dotted
from quarterturn.geometry import path_bounds
from quarterturn.measure import Length, inches, mm
from quarterturn.proof.checks.drafting import drafts_of
from quarterturn.proof.checks.fault import REBUILD, Fault, check, tell
from quarterturn.proof.model import Pattern
from quarterturn.steps import CutOut, TraceRings

PRINTABLE: dict[Paper, tuple[Length, Length]] = {
    Paper.LETTER: (inches(8), inches(10, 1, 2)),
    Paper.A4: (mm(190), mm(277)),
}
"""Letter is 8½" × 11" (ANSI/ASME Y14.1), A4 210 × 297 mm (ISO 216); margins as in trade check 84."""

_NAMES = {Paper.LETTER: "Letter", Paper.A4: "A4"}
CLOSE = 1e-3


def template_size(pattern: Pattern) -> Iterator[Fault]:
    """Hold the outline that is traced and cut out against the draft: true size, and no seam added."""
    units, reach = pattern.design.units, {r.name: d.reach for r, d in drafts_of(pattern.design)}
    for step in pattern.steps.steps:
        if not isinstance(step.action, TraceRings | CutOut):
            continue
        bounds, want = path_bounds(step.action.traced), 2 * reach[step.action.recipe]
        if max(abs(bounds.width - want), abs(bounds.height - want)) > CLOSE:
            sentence = (
                f"The outline of {step.action.recipe} in step {step.number} measures {tell(bounds.width, units)} × "
                f"{tell(bounds.height, units)}; drafted it is {tell(want, units)} across."
            )
            yield Fault(dotted("recipes", step.action.recipe), sentence, REBUILD, f"step {step.number}")


def mirrored(pattern: Pattern) -> Iterator[Fault]:
    """Ask that the steps call a circle the same both ways."""
    for step in pattern.steps.steps:
        if isinstance(step.action, TraceRings) and not step.action.same_mirrored:
            sentence = (
                f"Step {step.number} has {step.action.recipe} traced in mirror image, but a circle is the same "
                "both ways."
            )
            yield Fault(dotted("recipes", step.action.recipe), sentence, REBUILD, f"step {step.number}")


def over_page(pattern: Pattern) -> Iterator[Fault]:
    """Tell of a shape that does not fit the house's paper in one piece."""
    yield from _too_large(pattern, pattern.design.house.paper)


def over_other_page(pattern: Pattern) -> Iterator[Fault]:
    """Tell of a shape that fits the house's paper but not the other one, which half the readers have."""
    paper = pattern.design.house.paper
    other = Paper.A4 if paper is Paper.LETTER else Paper.LETTER
    fits = {fault.key for fault in _too_large(pattern, paper)}
    yield from (fault for fault in _too_large(pattern, other) if fault.key not in fits)


def _too_large(pattern: Pattern, paper: Paper) -> Iterator[Fault]:
    units, room = pattern.design.units, PRINTABLE[paper]
    for recipe, draft in drafts_of(pattern.design):
        if 2 * draft.reach > min(room):
            sentence = (
                f"The template of {recipe.name} is {tell(2 * draft.reach, units)} across; {_NAMES[paper]} paper has "
                f"{tell(float(room[0]), units)} × {tell(float(room[1]), units)} to print on."
            )
            remedy = "Print it in parts with join marks, or print a quarter of it to be placed on folds."
            yield Fault(dotted("recipes", recipe.name, "shape"), sentence, remedy)


TEMPLATES = (
    check("template-size", Severity.STOPS, (83, 90), "Templates have the drafted size.", template_size),
    check("template-mirrored", Severity.STOPS, (87, 88), "Templates say rightly if mirrored.", mirrored),
    check("template-over-page", Severity.CONFUSES, (84,), "Templates fit the paper.", over_page),
    check("template-over-other", Severity.STYLE, (84,), "Templates fit Letter and A4.", over_other_page),
)
