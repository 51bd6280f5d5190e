"""The text form of the setting: map, borders in order of sewing, what meets at the seams, where the curves run."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from typing import TypeAlias

from quarterturn.measure import Units, aligned, show_count, show_length, show_plain, show_rectangle
from quarterturn.setting.model import BorderStrip, Join, JoinMark, Meeting, Setting, Trail


def setting_text(setting: Setting, units: Units) -> str:
    """Return map, finished sizes, tally and borders of the quilt; its joins and its curves, equal ones together."""
    return "\n".join(
        (
            *_sizes(setting, units),
            *_map(setting),
            *_borders(setting, units),
            *_joins(setting, units),
            *_flow(setting, units),
            "",
        )
    )


def _sizes(setting: Setting, units: Units) -> Iterator[str]:
    yield f"{show_count(setting.rows, 'row')} of {show_count(setting.columns, 'unit')}, {_each(setting, units)}"
    left, top = show_plain(setting.centre_left, units), show_plain(setting.centre_top, units)
    centre = show_rectangle(setting.centre_width, setting.centre_height, units)
    yield from aligned(
        [
            ("centre", f"{centre}, {left} from the left, {top} from the top"),
            ("top", show_rectangle(setting.width, setting.height, units)),
            ("tally", ", ".join(f"{code} {count}" for code, count in setting.tally.items())),
        ]
    )


def _each(setting: Setting, units: Units) -> str:
    """Return what the units finish as, or where they differ what the columns and rows do."""
    if len({*setting.widths, *setting.heights}) == 1:
        return f"each {show_length(setting.side, units)} finished"
    across, down = (
        ", ".join(show_length(side, units) for side in sides) for sides in (setting.widths, setting.heights)
    )
    return f"columns {across} wide, rows {down} high"


def _map(setting: Setting) -> list[str]:
    rows = ([f"{unit.name}{unit.turn}" for unit in setting.row(index)] for index in range(setting.rows))
    return ["map", *aligned([[" ".join(row)] for row in rows])]


def _borders(setting: Setting, units: Units) -> Iterator[str]:
    if setting.borders:
        yield "borders, in order of sewing"
        yield from aligned(
            [_border(number, strip, units) for number, strip in enumerate(setting.borders, 1)], right=[0]
        )


def _border(number: int, strip: BorderStrip, units: Units) -> tuple[str, ...]:
    size = show_rectangle(strip.depth, strip.length, units)
    place = f"at {show_plain(strip.left, units)}, {show_plain(strip.top, units)}"
    return str(number), f"border {strip.ring + 1}", strip.side.value, f"fabric {strip.fabric}", size, place


def _joins(setting: Setting, units: Units) -> Iterator[str]:
    met = Counter(mark.meeting for join in setting.joins for mark in join.marks)
    counts = ", ".join(f"{met[meeting]} {meeting.value}" for meeting in Meeting)
    yield f"{show_count(len(setting.joins), 'seam')} between units; edges at them: {counts}"
    alike = Counter(_meeting_text(join, units) for join in setting.joins)
    yield from aligned([(f"{count} ×", text) for text, count in sorted(alike.items())], right=[0])


def _meeting_text(join: Join, units: Units) -> str:
    """Describe a seam; the neighbour is to the right of, or below, the unit."""
    marks = "; ".join(_mark_text(mark, units) for mark in join.marks)
    return f"{join.side.value}: {marks or 'no edge'}"


def _mark_text(mark: JoinMark, units: Units) -> str:
    off = f" by {show_plain(round(mark.distance, 9), units)}" if mark.meeting is Meeting.STEP else ""
    return f"{mark.meeting.value} at {show_plain(round(mark.at, 9), units)}{off}"


def _flow(setting: Setting, units: Units) -> Iterator[str]:
    flow = setting.flow
    circles = f" ({show_count(flow.circles, 'circle')})" if flow.circles else ""
    said = [
        f"{show_count(len(flow.rounds), 'closed round')}{circles}",
        show_count(len(flow.paths), "open path"),
    ]
    if flow.paths:
        said.append(f"longest {_tenths(max(trail.length for trail in flow.paths), units)}")
    yield f"flow: {', '.join((*said, show_count(flow.steps, 'step')))}"
    if flow.widest:
        at = f"row {flow.widest.row + 1}, unit {flow.widest.column + 1}, {flow.widest.side.value}"
        yield f"  widest step {show_plain(round(flow.widest.distance, 9), units)}: {at}"
    alike = Counter(_trail_key(trail) for trail in (*flow.rounds, *flow.paths))
    kinds = sorted(alike.items(), key=lambda kind: (bool(kind[0][2]), kind))
    yield from aligned([(f"{count} ×", *_trail_text(key, units)) for key, count in kinds], right=[0, 3])


TrailKey: TypeAlias = tuple[int, float, tuple[str, ...], bool]


def _trail_key(trail: Trail) -> TrailKey:
    """Return what makes two curves one kind, whichever way they are followed."""
    stops = tuple(sorted(stop.value for stop in trail.stops))
    return trail.pieces, round(trail.length, 6), stops, trail.circle


def _trail_text(key: TrailKey, units: Units) -> tuple[str, str, str]:
    pieces, length, stops, circle = key
    what = "path" if stops else "circle" if circle else "round"
    where = f", {stops[0]} to {stops[1]}" if stops else ""
    return what, f"of {show_count(pieces, 'piece')}{where}", _tenths(length, units)


def _tenths(length: float, units: Units) -> str:
    """Print the length of a curve as closely as a tape shows it."""
    return show_plain(round(length, 1), units) if units is Units.INCH else show_length(length, units)
