"""The text form of the setting: sections with their maps and borders, what meets at seams, where the curves run."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from typing import TypeAlias

from quarterturn.design import ROOT
from quarterturn.measure import Units, aligned, show_count, show_length, show_plain
from quarterturn.setting.model import JoinMark, Meeting, PlacedUnit, Setting, Trail
from quarterturn.setting.section_text import sections_text


def setting_text(setting: Setting, units: Units) -> str:
    """Return sections, finished sizes, tally and borders of the quilt; its joins and curves, equal ones together."""
    return "\n".join((*sections_text(setting, units), *_joins(setting, units), *_flow(setting, units), ""))


def _joins(setting: Setting, units: Units) -> Iterator[str]:
    met = Counter(mark.meeting for join in setting.joins for mark in join.marks)
    counts = ", ".join(f"{met[meeting]} {meeting.value}" for meeting in Meeting)
    yield f"{show_count(len(setting.joins), 'seam')} between units; edges at them: {counts}"
    alike = Counter(_meeting_text(join.side.value, join.marks, units) for join in setting.joins)
    yield from aligned([(f"{count} ×", text) for text, count in sorted(alike.items())], right=[0])


def _meeting_text(side: str, marks: tuple[JoinMark, ...], units: Units) -> str:
    """Describe the seam at a side of a unit."""
    told = "; ".join(_mark_text(mark, units) for mark in marks)
    return f"{side}: {told or 'no edge'}"


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
        at = f"{place_text(setting.units[flow.widest.unit])}, {flow.widest.side.value}"
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


def place_text(unit: PlacedUnit) -> str:
    """Tell where a unit stands: in which row, and in which copy of which section unless that is the root."""
    place = f"row {unit.row + 1}, unit {unit.column + 1}"
    return place if unit.section == ROOT else f"{place} of {unit.section}, copy {unit.copy + 1}"
