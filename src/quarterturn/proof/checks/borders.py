"""Checks of the borders (group F of the trade's list)."""

from __future__ import annotations

from collections.abc import Iterator

from quarterturn.design import AnyBorder, Border, Corner, Design, Direction, PiecedBorder, Severity, dotted
from quarterturn.proof.checks.bordering import borders_taken_apart
from quarterturn.proof.checks.fault import REBUILD, Fault, check, tell
from quarterturn.proof.checks.plain import border_strips
from quarterturn.proof.checks.sizing import Sizes
from quarterturn.proof.checks.walking import settings_of
from quarterturn.proof.model import Pattern
from quarterturn.setting import Frame, Framed, Side, strip_places
from quarterturn.steps import Action, AddBorder, AddMitred, Chapter

PAIRS = ((Side.LEFT, Side.RIGHT), (Side.TOP, Side.BOTTOM))


def border_order(pattern: Pattern) -> Iterator[Fault]:
    """Ask that border strips are placed and sewn in pairs, in the stated order."""
    placed = [side for frame in _frames(pattern) for side in _placed(frame)]
    told = [side for step in pattern.steps.of(Chapter.BORDERS) for side in _told(step.action)]
    wanted = list(_wanted(pattern.design))
    for sides in (placed, told):
        if sides != wanted:
            names = ", ".join(side.value for side in sides)
            yield Fault("borders", f"The borders are sewn {names}; not in pairs as stated.", REBUILD)
            return


def _frames(pattern: Pattern) -> tuple[Frame, ...]:
    return pattern.setting.top.frames if isinstance(pattern.setting.top, Framed) else ()


def _placed(frame: Frame) -> list[Side]:
    """Return the sides of a frame in their order of sewing; a mitred one has none."""
    if frame.corner is Corner.MITRED:
        return [*PAIRS[0], *PAIRS[1]]
    return [side for side, _, _ in strip_places(frame, 0.0, 0.0)]


def _told(action: Action) -> tuple[Side, ...]:
    """Return the sides that a step sews strips to; a mitred border goes round in one step."""
    if isinstance(action, AddBorder):
        return (action.side,)
    return PAIRS[0] + PAIRS[1] if isinstance(action, AddMitred) else ()


def _wanted(design: Design) -> Iterator[Side]:
    """Return the sides of all borders in their stated order; a coping strip that nothing is left for is none."""
    sizes = Sizes(design)
    size = sizes.centre()
    for border in design.borders:
        depths = sizes.depths(size, border)
        pairs = [pair for pair, depth in zip(PAIRS, depths, strict=True) if depth]
        mitred = isinstance(border, Border) and border.corner is Corner.MITRED
        yield from (
            side for pair in (pairs if border.sides_first or mitred else pairs[::-1]) for side in pair
        )
        size = size[0] + 2 * depths[0], size[1] + 2 * depths[1]


def _all_borders(design: Design) -> Iterator[tuple[str, str, AnyBorder]]:
    """Return each border of the quilt and of its sections with its key and its name."""
    for number, border in enumerate(design.borders):
        yield dotted("borders", number), f"Border {number + 1}", border
    for key, setting in settings_of(design):
        for number, border in enumerate(setting.borders):
            name = f"Border {number + 1} of {key.rpartition('.')[2]}"
            yield f"{key}.borders.{number}", name, border


def border_narrow(pattern: Pattern) -> Iterator[Fault]:
    """Tell of a border narrower than its own two seam allowances: it cannot be pressed flat."""
    design, units = pattern.design, pattern.design.units
    for key, name, border in _all_borders(design):
        if isinstance(border, Border) and border.width < 2 * design.making.seam:
            sentence = (
                f"{name} finishes {tell(border.width, units)}, and the allowances behind it take "
                f"{tell(2 * design.making.seam, units)}."
            )
            remedy = f"Make it {tell(2 * design.making.seam, units)} wide or wider."
            yield Fault(f"{key}.width", sentence, remedy)


def border_print(pattern: Pattern) -> Iterator[Fault]:
    """Tell of a print that stands upright in two strips of a border and lies on its side in the others.

    One that must stand upright has its side strips cut along the cloth, and where a coping brings its section to a
    size one way only, there is no corner to turn at.
    """
    one_way = _one_way(pattern.design)
    for key, name, border in _all_borders(pattern.design):
        if isinstance(border, PiecedBorder) or key in one_way:
            continue
        fabric = pattern.design.fabric(border.fabric)
        if fabric.direction is not Direction.NONE and not fabric.upright:
            sentence = (
                f"{name} is of fabric {fabric.letter}, whose print is {fabric.direction.value}; all its "
                "strips are cut across the cloth, so the print turns at each corner."
            )
            remedy = "Choose a print without direction, or say in `about` that the turn is meant."
            yield Fault(f"{key}.fabric", sentence, remedy)


def _one_way(design: Design) -> set[str]:
    """Return the keys of borders that have no strips at the sides, or none at the ends."""
    sizes, found = Sizes(design), set()
    rings = [("", sizes.centre(), design.borders)]
    rings += [(f"{key}.", sizes.inside(each), each.borders) for key, each in settings_of(design)]
    for owner, inner, borders in rings:
        for number, border in enumerate(borders):
            size = sizes.bordered(inner, borders[:number])
            if 0 in sizes.depths(size, border):
                found.add(f"{owner}borders.{number}")
    return found


BORDERS = (
    check(
        "border-strips", Severity.STOPS, (76, 77), "Border strips have the length of the top.", border_strips
    ),
    check("border-order", Severity.STOPS, (76,), "Borders go on in their stated order.", border_order),
    check(
        "border-parts", Severity.STOPS, (65, 78), "Each side has its strip and corners.", borders_taken_apart
    ),
    check("border-narrow", Severity.CONFUSES, (76,), "A border is wider than its seams.", border_narrow),
    check("border-print-turns", Severity.CONFUSES, (94,), "A border's print runs all one way.", border_print),
)
