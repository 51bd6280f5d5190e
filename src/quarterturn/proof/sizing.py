"""The text form of a design in its sizes, and of how near its repeats come to every known bed."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import partial

from quarterturn.blocks import Blocks
from quarterturn.design import BEDS, WITHIN, Bed, Design, Fit, dotted, write_length
from quarterturn.design.limits import MOST_ROWS
from quarterturn.measure import Length, aligned, show_cloth, show_count, show_length
from quarterturn.proof.model import Pattern
from quarterturn.setting import fit_to

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
    plain = partial(show_length, units=design.units)
    bought = sum((plan.bought for plan in pattern.materials.cloth), Length(0))
    return (
        design.size,
        _rectangle(design, setting.width, setting.height),
        f"{design.setting.across} × {design.setting.down}",
        f"{setting.columns} × {setting.rows}",
        plain(setting.side),
        " + ".join(plain(border.width) for border in design.borders) or "none",
        str(sum(master.count for master in pattern.bill.masters)),
        show_cloth(bought, design.units),
        *_bed_cells(design, setting.width, setting.height),
    )


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
    """How a design can be laid for a known bed: the fit, or None where the map would have too many rows."""

    bed: Bed
    fit: Fit | None


def suggestions(design: Design, blocks: Blocks, drop: Length, tuck: Length) -> tuple[Suggestion, ...]:
    """Return for every known bed the fewest repeats that are nowhere smaller than is wanted."""
    beds = (Bed(name, *sides, drop, tuck, WITHIN[design.units]) for name, sides in BEDS.items())
    return tuple(Suggestion(bed, _possible(design, fit_to(design, blocks, bed.wanted))) for bed in beds)


def _possible(design: Design, fit: Fit) -> Fit | None:
    rows, columns = design.setting.size
    most = max(rows * fit.down // design.setting.down, columns * fit.across // design.setting.across)
    return fit if most <= MOST_ROWS else None


def changes_of(design: Design, fit: Fit) -> dict[str, object]:
    """Return the changes that make a size of a fit: dotted keys with their values."""
    changes: dict[str, object] = {"setting.across": fit.across, "setting.down": fit.down}
    if fit.border is not None:
        changes[dotted("borders", len(design.borders) - 1, "width")] = write_length(fit.border, design.units)
    return changes


def suggestions_text(design: Design, found: Sequence[Suggestion]) -> str:
    """Return a line for each bed."""
    bed = found[0].bed
    drop, tuck = show_length(bed.drop, design.units), show_length(bed.tuck, design.units)
    head = f"Repeats of the map that cover each bed with a drop of {drop} and a tuck of {tuck}:"
    lines = (head, *aligned([_BEDS_HEAD, *(_bed_row(design, each) for each in found)]))
    return "".join(f"{line}\n" for line in lines)


def _bed_row(design: Design, each: Suggestion) -> tuple[str, ...]:
    bed, fit = each.bed, each.fit
    told = (bed.name, _rectangle(design, bed.width, bed.length), _rectangle(design, *bed.wanted))
    if fit is None:
        return (*told, f"more than {show_count(MOST_ROWS, 'row')}")
    border = "as it is" if fit.border is None else show_length(fit.border, design.units)
    return (*told, f"{fit.across} × {fit.down}", border, _rectangle(design, fit.width, fit.height))


def suggestion_table(design: Design, each: Suggestion) -> str:
    """Return the lines that make a size of a suggestion when they are put into the file."""
    bed, units = each.bed, design.units
    if each.fit is None:
        return f"# {bed.name}: the map would have more than {show_count(MOST_ROWS, 'row')}.\n"
    values = {"drop": bed.drop, **({"tuck": bed.tuck} if bed.tuck else {})}
    changes = ", ".join(f'"{key}" = {_toml(value)}' for key, value in changes_of(design, each.fit).items())
    return "\n".join(
        (
            f"[{dotted('sizes', bed.name)}] # finishes {_rectangle(design, each.fit.width, each.fit.height)}",
            f'bed = "{bed.name}"',
            *(f"{key} = '{write_length(value, units)}'" for key, value in values.items()),
            f"changes = {{ {changes} }}",
            "",
        )
    )


def _toml(value: object) -> str:
    return f"'{value}'" if isinstance(value, str) else str(value)
