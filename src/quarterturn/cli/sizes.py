"""`sizes`: a design in all its sizes, and how near its repeats come to every known bed."""

from __future__ import annotations

from typing import TYPE_CHECKING

import click

from quarterturn.cli.ending import RefusedError
from quarterturn.cli.reading import design_file, made_pattern, take_in
from quarterturn.cli.telling import tell_json

if TYPE_CHECKING:
    from quarterturn.design import SectionSet
    from quarterturn.measure import Length, Units
    from quarterturn.proof import Pattern, Suggestion


@click.command(short_help="List the sizes of a design, and the repeats for each bed.")
@design_file
@click.option(
    "--drop", metavar="LENGTH", help="Let the quilt hang down so far; 12 inches or 30 cm if not given."
)
@click.option("--tuck", metavar="LENGTH", help="Add so much at the head; nothing if not given.")
@click.option("--bed", metavar="NAME", help="Print the lines that make a size for this bed.")
@click.option("--json", "as_json", is_flag=True, help="Print it all as JSON.")
def sizes(file: str, drop: str | None, tuck: str | None, bed: str | None, as_json: bool) -> None:
    """List the sizes of a design, then for each known bed the repeats that come nearest from above.

    The outermost border is made narrower where the quilt still covers the bed then.
    """
    from quarterturn.design import DROP
    from quarterturn.measure import inches
    from quarterturn.proof import sizes_text, suggestion_table, suggestions, suggestions_text

    taken = take_in(file)
    pattern, job = made_pattern(taken)
    units = pattern.design.units
    hang = DROP[units] if drop is None else _length(drop, "--drop", units)
    behind = inches(0) if tuck is None else _length(tuck, "--tuck", units)
    found = suggestions(pattern.design, pattern.blocks, hang, behind)
    if bed is not None:
        found = _of_bed(found, bed)
    if as_json:
        tell_json(_record(taken.name, job.patterns, found))
    elif bed is not None:
        click.echo("\n".join(suggestion_table(pattern.design, each) for each in found), nl=False)
    else:
        click.echo(f"{sizes_text(job.patterns)}\n{suggestions_text(pattern.design, found)}", nl=False)


def _length(text: str, option: str, units: Units) -> Length:
    from quarterturn.design.limits import DROP
    from quarterturn.measure import LengthError, parse_length

    try:
        value = parse_length(text, units)
    except LengthError as error:
        raise RefusedError(f"{option} {text!r} is not a length: {error.reason}") from error
    if not DROP.holds(value):
        raise RefusedError(f"{option} {text!r} is longer than any quilt hangs down")
    return value


def _of_bed(found: tuple[Suggestion, ...], name: str) -> tuple[Suggestion, ...]:
    chosen = tuple(each for each in found if each.bed.name == name)
    if not chosen:
        names = ", ".join(each.bed.name for each in found)
        raise RefusedError(f"there is no bed {name!r}; choose from {names}")
    return chosen


def _record(name: str, patterns: tuple[Pattern, ...], found: tuple[Suggestion, ...]) -> dict[str, object]:
    """Return sizes and suggestions as JSON has them: lengths in inches."""
    return {
        "file": name,
        "sizes": [_size_record(pattern) for pattern in patterns],
        "beds": [_bed_record(patterns[0], each) for each in found],
    }


def _size_record(pattern: Pattern) -> dict[str, object]:
    from quarterturn.proof import border_depths, unit_sizes

    design, setting = pattern.design, pattern.setting
    return {
        "size": design.size,
        "finished_inches": _pair(setting.width, setting.height),
        **_root_record(design.setting),
        "units": dict(setting.tally),
        "unit_inches": [_pair(*size) for size in unit_sizes(pattern)],
        "borders_inches": [_pair(*depths) for depths in border_depths(design, setting)],
        "masters": sum(master.count for master in pattern.bill.masters),
        "cloth_inches": {plan.fabric: float(plan.bought) for plan in pattern.materials.cloth},
        "cloth_pieces": {
            plan.fabric: plan.parcels.bought for plan in pattern.materials.cloth if plan.parcels
        },
        "bed": design.bed.name if design.bed else None,
        "wanted_inches": _pair(*design.bed.wanted) if design.bed else None,
    }


def _root_record(root: SectionSet) -> dict[str, object]:
    """Return how the root is set; `across` and `down`, `rows` and `columns` only where it has them."""
    from quarterturn.design import LineSet, OnPointSet, PanelSet, StraightSet

    record: dict[str, object] = dict.fromkeys(("across", "down", "rows", "columns"))
    match root:
        case StraightSet():
            rows, columns = root.size
            record |= {"across": root.across, "down": root.down, "rows": rows, "columns": columns}
            return {"kind": "straight", **record}
        case OnPointSet():
            return {"kind": "on point", **record, "rows": len(root.cells), "columns": len(root.cells[0])}
        case LineSet():
            size = {"rows": len(root.parts)} if root.below else {"columns": len(root.parts)}
            return {"kind": "rows" if root.below else "columns", **record, **size}
        case PanelSet():
            return {"kind": "panel", **record}


def _bed_record(pattern: Pattern, each: Suggestion) -> dict[str, object]:
    from quarterturn.proof import changes_of

    bed, fit = each.bed, each.fit
    return {
        "bed": bed.name,
        "mattress_inches": _pair(bed.width, bed.length),
        "drop_inches": float(bed.drop),
        "tuck_inches": float(bed.tuck),
        "wanted_inches": _pair(*bed.wanted),
        "finished_inches": _pair(fit.width, fit.height) if fit else None,
        "changes": changes_of(pattern.design, fit) if fit else None,
        "but": each.but or None,
    }


def _pair(width: Length, height: Length) -> list[float]:
    return [float(width), float(height)]
