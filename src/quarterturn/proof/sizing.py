"""The text form of a design in its sizes, and of how near its repeats come to every known bed."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from quarterturn.blocks import Blocks
from quarterturn.design import (
    BEDS,
    WITHIN,
    Bed,
    Cell,
    Design,
    Fit,
    LineSet,
    OnPointSet,
    PanelSet,
    StraightSet,
    dotted,
    places_of,
    write_length,
)
from quarterturn.design.limits import MOST_PLACES, MOST_ROWS
from quarterturn.measure import Length, aligned, show_cloth, show_count, show_length
from quarterturn.proof.checks.beds import grown_by
from quarterturn.proof.model import Pattern
from quarterturn.setting import (
    Setting,
    fit_to,
    frames_of,
    outermost_of,
    repeats_of,
    why_once,
    with_repeats,
)

_SIZES_HEAD = (
    "size",
    "finished",
    "laid",
    "units",
    "unit",
    "borders",
    "masters",
    "cloth",
    "bed",
    "wants",
    "differs",
)
_BEDS_HEAD = ("bed", "mattress", "wants", "lay", "border", "gives")


def sizes_text(patterns: Sequence[Pattern]) -> str:
    """Return a line for each size: what it measures, how it is laid, what it takes, and its bed."""
    lines = aligned([_SIZES_HEAD, *(_size_row(pattern) for pattern in patterns)], indent="")
    return "".join(f"{line}\n" for line in lines)


def _size_row(pattern: Pattern) -> tuple[str, ...]:
    design, setting = pattern.design, pattern.setting
    bought = sum((plan.bought for plan in pattern.materials.cloth), Length(0))
    return (
        design.size,
        _rectangle(design, setting.width, setting.height),
        _laid(design),
        _units(design, setting),
        " and ".join(_unit(design, *size) for size in unit_sizes(pattern)) or "none",
        " + ".join(_border(design, *depths) for depths in border_depths(design, setting)) or "none",
        str(sum(master.count for master in pattern.bill.masters)),
        " and ".join((show_cloth(bought, design.units), *_pieces_bought(pattern))),
        *_bed_cells(design, setting.width, setting.height),
    )


def _pieces_bought(pattern: Pattern) -> tuple[str, ...]:
    """Return how many pieces of cloth are bought besides, if any are."""
    count = sum(plan.parcels.bought for plan in pattern.materials.cloth if plan.parcels)
    return (show_count(count, "piece"),) if count else ()


def _laid(design: Design) -> str:
    """Tell how often a map in rows and columns is laid; of any other setting its kind."""
    match design.setting:
        case OnPointSet():
            return "on point"
        case LineSet(below=below):
            return "rows" if below else "columns"
        case PanelSet():
            return "panel"
        case StraightSet(across=across, down=down):
            return f"{across} × {down}"


def _units(design: Design, setting: Setting) -> str:
    """Tell columns × rows of a map that holds units alone; else how many units there are, wherever they stand."""
    root = design.setting
    if isinstance(root, StraightSet) and all(isinstance(cell, Cell) for row in root.cells for cell in row):
        rows, columns = root.size
        return f"{columns} × {rows}"
    return str(len(setting.units))


def unit_sizes(pattern: Pattern) -> tuple[tuple[Length, Length], ...]:
    """Return finished width and height of the units that are used, each size once, in the order of the colourways."""
    units = (pattern.blocks.unit(pattern.design, name) for name in pattern.setting.tally)
    return tuple(dict.fromkeys((unit.width, unit.height) for unit in units))


def _unit(design: Design, width: Length, height: Length) -> str:
    return show_length(width, design.units) if width == height else _rectangle(design, width, height)


def border_depths(design: Design, setting: Setting) -> tuple[tuple[Length, Length], ...]:
    """Return how wide each border is at the sides and at the ends, finished; 0 where a coping has nothing to bring."""
    frames = frames_of(setting.top, design.borders)
    return tuple((f.side_depth, f.end_depth) if f else (Length(0), Length(0)) for f in frames)


def _border(design: Design, side: Length, end: Length) -> str:
    if side == end:
        return show_length(side, design.units)
    return f"{show_length(side, design.units)} and {show_length(end, design.units)}"


def _bed_cells(design: Design, width: Length, height: Length) -> tuple[str, ...]:
    bed = design.bed
    if bed is None:
        return ()
    drop = (
        f"{bed.name or _rectangle(design, bed.width, bed.length)}, drop {show_length(bed.drop, design.units)}"
    )
    tuck = f", tuck {show_length(bed.tuck, design.units)}" if bed.tuck else ""
    off = _rectangle(design, width - bed.wanted[0], height - bed.wanted[1])
    return drop + tuck, _rectangle(design, *bed.wanted), off


def _rectangle(design: Design, width: Length, height: Length) -> str:
    return f"{show_length(width, design.units)} × {show_length(height, design.units)}"


@dataclass(frozen=True, slots=True)
class Suggestion:
    """How a design can be laid for a known bed: the fit, or None and in a few words what keeps it from one."""

    bed: Bed
    fit: Fit | None
    but: str = ""


def suggestions(design: Design, blocks: Blocks, drop: Length, tuck: Length) -> tuple[Suggestion, ...]:
    """Return for every known bed the fewest repeats that are nowhere smaller than is wanted.

    Where the map is laid once, the narrowest outermost border that does so instead.
    """
    beds = (Bed(name, *sides, drop, tuck, WITHIN[design.units]) for name, sides in BEDS.items())
    return tuple(_suggestion(design, bed, fit_to(design, blocks, bed.wanted)) for bed in beds)


def _suggestion(design: Design, bed: Bed, fit: Fit) -> Suggestion:
    but = _beyond(design, fit) if repeats_of(design) else _too_small(design, bed, fit)
    return Suggestion(bed, None if but else fit, but)


def _beyond(design: Design, fit: Fit) -> str:
    """Tell what the repeats of a fit would have too much of; nothing where a file can say them."""
    wider = with_repeats(design, fit.across, fit.down)
    if isinstance(wider.setting, StraightSet) and max(wider.setting.size) > MOST_ROWS:
        return f"more than {show_count(MOST_ROWS, 'row')}"
    return f"more than {MOST_PLACES:,} places" if places_of(wider) > MOST_PLACES else ""


def _too_small(design: Design, bed: Bed, fit: Fit) -> str:
    covers = fit.width >= bed.wanted[0] and fit.height >= bed.wanted[1]
    return "" if covers else f"make {grown_by(design)} larger"


def changes_of(design: Design, fit: Fit) -> dict[str, object]:
    """Return the changes that make a size of a fit: dotted keys with their values."""
    changes: dict[str, object] = {}
    if repeats_of(design):
        changes |= {"setting.across": fit.across, "setting.down": fit.down}
    if fit.border is not None:
        changes[dotted("borders", len(design.borders) - 1, "width")] = write_length(fit.border, design.units)
    return changes


def suggestions_text(design: Design, found: Sequence[Suggestion]) -> str:
    """Return a line for each bed."""
    bed = found[0].bed
    drop, tuck = show_length(bed.drop, design.units), show_length(bed.tuck, design.units)
    head = f"{_what_covers(design)} each bed with a drop of {drop} and a tuck of {tuck}:"
    lines = (*_once(design), head, *aligned([_BEDS_HEAD, *(_bed_row(design, each) for each in found)]))
    return "".join(f"{line}\n" for line in lines)


def _once(design: Design) -> tuple[str, ...]:
    """Return a line that says why nothing is laid more often, and whether there is a border to change instead."""
    if repeats_of(design):
        return ()
    stuck = " Nor has it a plain border outermost to make wider." if outermost_of(design) is None else ""
    return (f"{why_once(design)}{stuck}",)


def _what_covers(design: Design) -> str:
    if repeats_of(design):
        return "Repeats of the map that cover"
    if outermost_of(design) is None:
        return "Whether the quilt as it is covers"
    return "The outermost border that covers"


def _bed_row(design: Design, each: Suggestion) -> tuple[str, ...]:
    bed, fit = each.bed, each.fit
    told = (bed.name, _rectangle(design, bed.width, bed.length), _rectangle(design, *bed.wanted))
    if fit is None:
        return (*told, each.but)
    border = "as it is" if fit.border is None else show_length(fit.border, design.units)
    lay = f"{fit.across} × {fit.down}" if repeats_of(design) else "once"
    return (*told, lay, border, _rectangle(design, fit.width, fit.height))


def suggestion_table(design: Design, each: Suggestion) -> str:
    """Return the lines that make a size of a suggestion when they are put into the file."""
    bed, units = each.bed, design.units
    if each.fit is None:
        if repeats_of(design):
            return f"# {bed.name}: the map would have {each.but}.\n"
        return f"# {bed.name}: {why_once(design)} {each.but.capitalize()}.\n"
    values = {"drop": bed.drop, **({"tuck": bed.tuck} if bed.tuck else {})}
    changed = changes_of(design, each.fit).items()
    changes = ", ".join(f'"{key}" = {_toml(value)}' for key, value in changed)
    return "\n".join(
        (
            f"[{dotted('sizes', bed.name)}] # finishes {_rectangle(design, each.fit.width, each.fit.height)}",
            f'bed = "{bed.name}"',
            *(f"{key} = '{write_length(value, units)}'" for key, value in values.items()),
            *([f"changes = {{ {changes} }}"] if changes else []),
            "",
        )
    )


def _toml(value: object) -> str:
    return f"'{value}'" if isinstance(value, str) else str(value)
