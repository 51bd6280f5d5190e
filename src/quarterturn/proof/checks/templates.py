"""Checks of the templates (group G of the trade's list)."""

from __future__ import annotations

from collections.abc import Iterator

from quarterturn.design import Design, Paper, Severity, dotted
from quarterturn.geometry import Bounds, path_bounds
from quarterturn.measure import Length, Units, inches, mm
from quarterturn.proof.checks.drafting import ShapeDraft, called, shape_key, shapes_of
from quarterturn.proof.checks.fault import REBUILD, Fault, check, near, tell
from quarterturn.proof.model import Pattern
from quarterturn.steps import CutOut, Step, TraceRings, Tracing, tracings_of

PRINTABLE: dict[Paper, tuple[Length, Length]] = {
    Paper.LETTER: (inches(8), inches(10, 1, 2)),
    Paper.A4: (mm(190), mm(277)),
}
"""Letter is 8½" × 11" (ANSI/ASME Y14.1), A4 210 × 297 mm (ISO 216); margins as in trade check 84."""

_NAMES = {Paper.LETTER: "Letter", Paper.A4: "A4"}
CLOSE = 1e-3


def template_size(pattern: Pattern) -> Iterator[Fault]:
    """Hold the outline that is traced and cut out against the draft: true size, and no seam added."""
    units = pattern.design.units
    for step, drawn in _outlines(pattern):
        bounds, drafts = path_bounds(drawn.traced), _drafts(pattern.design, drawn)
        if not any(_measures(draft, bounds) for draft in drafts):
            sentence = (
                f"The outline of {drawn.recipe} in step {step.number} measures {tell(bounds.width, units)} × "
                f"{tell(bounds.height, units)}; drafted it is {_size(drafts[0], units)}."
            )
            yield Fault(dotted("recipes", drawn.recipe), sentence, REBUILD, f"step {step.number}")


def _outlines(pattern: Pattern) -> Iterator[tuple[Step, TraceRings | Tracing | CutOut]]:
    """Return every outline that is traced or cut out, with its step."""
    for step in pattern.steps.steps:
        yield from ((step, traced) for traced, _ in tracings_of(step))
        if isinstance(step.action, CutOut):
            yield step, step.action


def _drafts(design: Design, action: TraceRings | Tracing | CutOut) -> list[ShapeDraft]:
    """Return the drafts of the shapes of a recipe: they may be of several sizes."""
    return [shape for recipe, shape in shapes_of(design) if recipe.name == action.recipe]


def _measures(draft: ShapeDraft, bounds: Bounds) -> bool:
    return max(abs(bounds.width - draft.width), abs(bounds.height - draft.height)) <= CLOSE


def mirrored(pattern: Pattern) -> Iterator[Fault]:
    """Ask that the steps say rightly whether a shape is the same both ways."""
    for step, drawn in _outlines(pattern):
        if not isinstance(drawn, CutOut) and drawn.same_mirrored not in _same(pattern, drawn):
            said, true = ("the same both ways", "not") if drawn.same_mirrored else ("mirrored", "the same")
            sentence = f"Step {step.number} has {drawn.recipe} traced as {said}; both ways it is {true}."
            yield Fault(dotted("recipes", drawn.recipe), sentence, REBUILD, f"step {step.number}")


def _same(pattern: Pattern, action: TraceRings | Tracing) -> set[bool]:
    """Return whether the shapes of the size that is traced are the same both ways."""
    bounds = path_bounds(action.traced)
    drafts = _drafts(pattern.design, action)
    return {draft.same_mirrored for draft in drafts if _measures(draft, bounds) or len(drafts) == 1}


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
    for recipe, draft in shapes_of(pattern.design):
        if draft.width > room[0] or draft.height > room[1]:
            told, wide, high = _told(draft, (float(room[0]), float(room[1])), units)
            sentence = (
                f"The template of {called(recipe, draft)} is {told}; {_NAMES[paper]} paper has {wide} × {high} "
                "to print on."
            )
            remedy = "Print it in parts with join marks, or print a quarter of it to be placed on folds."
            yield Fault(dotted("recipes", recipe.name, shape_key(recipe)), sentence, remedy)


def _size(draft: ShapeDraft, units: Units) -> str:
    if draft.width == draft.height:
        return f"{tell(draft.width, units)} across"
    return f"{tell(draft.width, units)} × {tell(draft.height, units)}"


def _told(draft: ShapeDraft, room: tuple[float, float], units: Units) -> tuple[str, str, str]:
    """Return the size of a template and the sides of its room, as a ruler shows them unless it shows them alike."""
    sides = ((draft.width, room[0]), (draft.height, room[1]))
    alike = any(side > most and near(side, units) == near(most, units) for side, most in sides)
    show = tell if alike else near
    (width, wide), (height, high) = ((show(side, units), show(most, units)) for side, most in sides)
    return (f"{width} across" if draft.width == draft.height else f"{width} × {height}"), wide, high


TEMPLATES = (
    check("template-size", Severity.STOPS, (83, 90), "Templates have the drafted size.", template_size),
    check("template-mirrored", Severity.STOPS, (87, 88), "Templates say rightly if mirrored.", mirrored),
    check("template-over-page", Severity.CONFUSES, (84,), "Templates fit the paper.", over_page),
    check("template-over-other", Severity.STYLE, (84,), "Templates fit Letter and A4.", over_other_page),
)
