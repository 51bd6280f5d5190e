"""The sentences of assembly, borders and finishing."""

from __future__ import annotations

from collections import defaultdict

from quarterturn.design import Direction
from quarterturn.measure import Length
from quarterturn.proof import Pattern
from quarterturn.publish.wording.lines import tell_parts
from quarterturn.publish.wording.model import Wording
from quarterturn.publish.wording.names import length, listed, plural, sized
from quarterturn.publish.wording.owners import owner_of
from quarterturn.publish.wording.sections import unit_grid
from quarterturn.setting import Side
from quarterturn.steps import (
    Chapter,
    JoinPanels,
    LayerQuilt,
    LayOut,
    Placed,
    QuiltLayers,
    SewLine,
    Step,
    labels,
)

UNIT = "unit "


def tell_lay_out(step: Step, action: LayOut, pattern: Pattern) -> Wording:
    """Tell laying out."""
    if unit_grid(pattern.setting.centre) is None:
        return _lay_out_parts(action)
    rows, columns = len(action.rows), len(action.rows[0])
    sentences = (
        "Lay out all units as in the unit map, each with its turn.",
        "Step back and compare the whole with the cover. Photograph it before you pick anything up.",
        "Pin a label with the row’s number to the left-hand unit of each row.",
        *_kept_back(action),
    )
    sizes = listed(list(dict.fromkeys(sized(pattern.design, *size) for size in _unit_sizes(pattern))))
    line = (
        f"({rows}) {plural(rows, 'row')} of ({columns}) {plural(columns, 'unit')}; "
        f"each unit should measure {sizes.replace(' and ', ' or ')}, unfinished."
    )
    return Wording("Lay out the units", sentences, line)


ON_POINT = (
    "What stands on a corner is turned by an eighth clockwise besides its own turn: the corner that is its top left "
    "one as drawn and named comes to the top.",
)


def _lay_out_parts(action: LayOut) -> Wording:
    count = len(action.rows)
    first = "Pin a label with its number to the first part of each row."
    if action.slanting:
        first = (
            "The rows slant. Pin a label with its number to the upper left end of each row, as in the figure."
        )
    sentences = (
        "Lay out all parts of the quilt centre as in the layout, each with its turn.",
        *(ON_POINT if action.slanting else ()),
        "Step back and compare the whole with the cover. Photograph it before you pick anything up.",
        *((first,) if count > 1 else ()),
        *_kept_back(action),
    )
    slanting = "slanting " if action.slanting else ""
    if count == 1:
        return Wording("Lay out the quilt centre", sentences, f"One row of ({len(action.rows[0])}) parts.")
    return Wording("Lay out the quilt centre", sentences, f"({count}) {slanting}{plural(count, 'row')}.")


def _kept_back(action: LayOut) -> tuple[str, ...]:
    """Tell what stays in its stacks for the borders."""
    if not action.later:
        return ()
    piles = listed([f"({pile.count}) {pile.label}" for pile in action.later])
    return (f"Keep back for the borders: {piles}.",)


def _unit_sizes(pattern: Pattern) -> list[tuple[Length, Length]]:
    """Return the size of each unit that is laid out, as the last step that made it says."""
    made = {p.label: (p.width, p.height) for s in pattern.steps.steps for p in s.makes}
    return [made[f"{UNIT}{name}"] for name in pattern.setting.tally]


def tell_sew(step: Step, action: SewLine, pattern: Pattern) -> Wording:
    """Tell sewing a pair, a row, or the rows together."""
    (made,) = step.makes
    size = sized(pattern.design, made.width, made.height)
    seam = length(pattern.design, action.seam)
    if unit_grid(pattern.setting.centre) is None or owner_of(step, pattern) or not _is_of_centre(made.label):
        return tell_parts(step, action, pattern)
    if action.way is Side.BOTTOM:
        return _rows_together(pattern, action, size, seam)
    if all(part.label.startswith(UNIT) for part in action.parts):
        sentences = (
            f"Lay the right-hand unit on the left-hand one, right sides together, and sew with a {seam} seam.",
            _pressing(action),
            f"Each pair should measure {size}, unfinished.",
        )
        parts = listed([placed_name(part) for part in action.parts])
        return Wording(
            "Sew the units in pairs",
            sentences,
            f"{made.label.capitalize()}: {parts}. Make ({made.count}){_pressed(action)}.",
        )
    sentences = (
        f"Sew the pairs of each row together in their order with {seam} seams.",
        _pressing(action),
        f"Each row should measure {size}, unfinished.",
    )
    places = row_places(centre_sewing(pattern))[made.label]
    where = f"{plural(len(places), 'row')} {listed([str(place) for place in places])} from the top"
    line = f"{made.label[0].upper()}{made.label[1:]}: {_run_of(action.parts)}. Make ({made.count}): {where}."
    return Wording("Sew the pairs in rows", sentences, line)


def _is_of_centre(label: str) -> bool:
    """Tell whether what is made is a pair or a row of units, or the rows together."""
    return label == labels.TOP or label.startswith(("pair ", "row kind "))


def centre_sewing(pattern: Pattern) -> SewLine:
    """Return the sewing that puts the rows together."""
    steps = pattern.steps.of(Chapter.ASSEMBLY)
    sewn = (s.action for s in steps if isinstance(s.action, SewLine) and s.makes[0].label == labels.TOP)
    return next(action for action in sewn if action.way is Side.BOTTOM)


def _pressing(action: SewLine) -> str:
    if action.press is None:
        return "Press all seams open."
    return "Press the seams as the arrows show: those of neighbouring rows lie opposite ways, and nest."


def _at_crossings(action: SewLine) -> str:
    return "" if action.press is None else "the seams nest, and "


def _pressed(action: SewLine) -> str:
    """Tell the way of pressing, which is all that tells some pairs apart."""
    return "" if action.press is None else f", pressed to the {action.press.value}"


def placed_name(part: Placed) -> str:
    """Return `a2` for unit a at turn 2, and the label of anything else."""
    if part.label.startswith(UNIT):
        return f"{part.label.removeprefix(UNIT)}{part.turn}"
    return part.label


def _run_of(parts: tuple[Placed, ...]) -> str:
    """Return the parts in their order: `pairs 1, 2, 1, 2 and unit a0`."""
    pairs = [part.label.removeprefix("pair ") for part in parts if part.label.startswith("pair ")]
    units = [placed_name(part) for part in parts if part.label.startswith(UNIT)]
    said = [f"{plural(len(pairs), 'pair')} {', '.join(pairs)}"] if pairs else []
    return " and ".join([*said, *(f"unit {unit}" for unit in units)])


def row_places(action: SewLine) -> dict[str, tuple[int, ...]]:
    """Return at which places, counted from 1 at the top, each kind of row stands."""
    places: dict[str, list[int]] = defaultdict(list)
    for number, part in enumerate(action.parts, start=1):
        places[placed_name(part)].append(number)
    return {label: tuple(numbers) for label, numbers in places.items()}


def _rows_together(pattern: Pattern, action: SewLine, size: str, seam: str) -> Wording:
    if len(action.parts) == 1:
        sentences: tuple[str, ...] = ("The quilt centre has one row: there is nothing to sew to it.",)
    else:
        press = "open" if action.press is None else "down, towards the bottom edge"
        sentences = (
            f"Sew the rows together in their order, from the top down, with {seam} seams.",
            f"Pin at every crossing: {_at_crossings(action)}the stitched edges should meet.",
            f"Press these seams {press}.",
        )
    return Wording("Sew the rows together", sentences, f"The quilt centre should measure {size}, unfinished.")


def tell_panels(step: Step, action: JoinPanels, pattern: Pattern) -> Wording:
    """Tell making up the backing."""
    (used,), (made,) = step.uses, step.makes
    size = sized(pattern.design, made.width, made.height)
    if used.count == 1:
        sentences: tuple[str, ...] = ("One length is wide enough. Press it and trim it to size.",)
    else:
        sentences = (
            f"Sew the ({used.count}) lengths together along their selvage edges with "
            f"{length(pattern.design, action.seam)} seams, and press the seams open.",
            *_same_way_up(pattern),
            f"Trim the sheet so that {'the seam lies in the middle' if used.count == 2 else 'the seams lie evenly'}.",
        )
    return Wording("Make the backing", sentences, f"The backing should measure {size}.")


def _same_way_up(pattern: Pattern) -> tuple[str, ...]:
    """Tell a backing with a print that has a way up to be joined accordingly."""
    if pattern.design.fabric(pattern.design.backing_fabric).direction is Direction.NONE:
        return ()
    return ("Lay all lengths with the print the same way up.",)


def tell_layer(step: Step, action: LayerQuilt, pattern: Pattern) -> Wording:
    """Tell layering."""
    (made,) = step.makes
    sentences = (
        "Lay the backing wrong side up and smooth it. Lay the batting on it, and the top right side up.",
        f"Centre the top. Batting and backing are {length(pattern.design, action.overage)} larger on each side than "
        "the finished quilt, so that they reach beyond the raw edge of the top by one seam allowance less. Baste.",
    )
    line = f"Cut the batting {sized(pattern.design, made.width, made.height)}."
    return Wording("Layer the quilt", sentences, line)


def tell_quilting(step: Step, action: QuiltLayers, pattern: Pattern) -> Wording:
    """Tell quilting."""
    (made,) = step.makes
    sentences = (
        "Quilt as you like. A suggestion: echo the curves inside each shape, and quilt the ground with lines "
        "that run on from unit to unit.",
        "Trim batting and backing to the edge of the top.",
    )
    size = sized(pattern.design, made.width, made.height)
    return Wording("Quilt and trim", sentences, f"The quilt now measures about {size}.")
