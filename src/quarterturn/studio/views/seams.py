"""What lies on the seams between units, for the overlays of the canvas: joins, pressing, layers, curves that run on."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from quarterturn.geometry import Path, Segment
from quarterturn.measure import show_length
from quarterturn.proof import cut_away_of, seam_layers
from quarterturn.setting import Curves, Join, Side, turned_in_place
from quarterturn.steps import pressed_seams
from quarterturn.studio.stages import OneSize
from quarterturn.studio.views.model import View, inches_of, path_data

Ends = tuple[float, float, float, float]


class JoinView(View):
    """Where an edge of cloth comes to a seam, and what it finds there: match, step or end. In the top's frame."""

    at: Ends
    meeting: str
    distance: float
    first: int
    second: int


class PressView(View):
    """A seam of the top, and where its allowances go: a way of length 1, or none where they are opened."""

    at: Ends
    towards: tuple[float, float] | None


class LayersView(View):
    """So many layers of cloth in the allowance along a stretch of a unit's side, in the unit's own frame."""

    side: str
    start: float
    end: float
    layers: int


class TrailView(View):
    """A curve followed through the top: closed, a circle, or a path with two stops.

    `units` are places in `QuiltView.placed`, `numbers` which of each unit's `SeamsView.curves` it runs along.
    """

    units: tuple[int, ...]
    numbers: tuple[int, ...]
    length: str
    closed: bool
    circle: bool
    stops: tuple[str, ...]


class SeamsView(View):
    """All overlays of a size."""

    revision: int
    joins: tuple[JoinView, ...]
    pressing: tuple[PressView, ...]
    layers: dict[str, tuple[LayersView, ...]]
    curves: dict[str, tuple[str, ...]]
    """The pieces of curve of each kind of unit, as path data in its own frame."""
    trails: tuple[TrailView, ...]


@dataclass(frozen=True, slots=True)
class Seam:
    """A side of a unit in the top: where it begins, which way it runs, how long it is, and which way out is."""

    start: complex
    way: complex
    length: float
    out: complex

    def ends(self, at: float = 0.0, until: float | None = None) -> Ends:
        """Return a stretch of it as numbers."""
        one, other = (
            self.start + self.way * at,
            self.start + self.way * (self.length if until is None else until),
        )
        a, b, c, d = (inches_of(each) for each in (one.real, one.imag, other.real, other.imag))
        return a, b, c, d


def seams_view(revision: int, size: OneSize) -> SeamsView:
    """Return the overlays. Raises UnmadeError where the quilt does not fit together."""
    return SeamsView(
        revision=revision,
        joins=tuple(_joins(size)),
        pressing=tuple(_pressing(size)),
        layers=_layers(size),
        curves=_curves(size),
        trails=tuple(_trails(size)),
    )


def seam_of(size: OneSize, join: Join) -> Seam:
    """Return the seam of a join; marks are measured along it, from the left or top end in its section's map."""
    unit = size.setting.units[join.first]
    kind = size.blocks.unit(size.laid_design, unit.name)
    width, height = float(kind.width), float(kind.height)
    wide, high = (height, width) if unit.turn % 2 else (width, height)
    seen = turned_in_place(width, height, unit.turn).inverse().then(unit.motion)
    start = {Side.RIGHT: complex(wide, 0), Side.BOTTOM: complex(0, high)}.get(join.side, 0j)
    level = join.side in (Side.TOP, Side.BOTTOM)
    way, out = (1 + 0j, 1j) if level else (1j, 1 + 0j)
    out = -out if join.side in (Side.TOP, Side.LEFT) else out
    at = seen(start)
    return Seam(at, seen(start + way) - at, wide if level else high, seen(start + out) - at)


def _joins(size: OneSize) -> Iterator[JoinView]:
    for join in size.setting.joins:
        seam = seam_of(size, join)
        for mark in join.marks:
            half = mark.distance / 2
            yield JoinView(
                at=seam.ends(mark.at - half, mark.at + half),
                meeting=mark.meeting.value,
                distance=inches_of(mark.distance),
                first=join.first,
                second=join.second,
            )


def _pressing(size: OneSize) -> Iterator[PressView]:
    for seam in pressed_seams(size.steps(), size.bill.pieces, float(size.laid_design.making.seam)):
        ends = (seam.start.real, seam.start.imag, seam.end.real, seam.end.imag)
        a, b, c, d = (inches_of(each) for each in ends)
        way = seam.towards
        yield PressView(
            at=(a, b, c, d), towards=None if way is None else (inches_of(way.real), inches_of(way.imag))
        )


def _layers(size: OneSize) -> dict[str, tuple[LayersView, ...]]:
    pattern = size.pattern()
    away = cut_away_of(pattern)
    names = pattern.setting.tally
    counted = size.once("layers", lambda: {name: seam_layers(pattern, name, away) for name in names})
    return {
        name: tuple(
            LayersView(side=side.value, start=inches_of(start), end=inches_of(end), layers=layers)
            for side, counts in layers_of.sides.items()
            for start, end, layers in counts
        )
        for name, layers_of in counted.items()
    }


def _curves(size: OneSize) -> dict[str, tuple[str, ...]]:
    curves = Curves(size.laid_design, size.blocks)
    return {
        name: tuple(" ".join(_open(run) for run in piece.drawn) for piece in curves.pieces(name))
        for name in size.setting.tally
    }


def _open(run: tuple[Segment, ...]) -> str:
    return path_data(Path(run)).removesuffix(" Z")


def _trails(size: OneSize) -> Iterator[TrailView]:
    flow, units = size.setting.flow, size.laid_design.units
    for trail in (*flow.rounds, *flow.paths):
        yield TrailView(
            units=trail.units,
            numbers=trail.numbers,
            length=show_length(trail.length, units),
            closed=not trail.stops,
            circle=trail.circle,
            stops=tuple(stop.value for stop in trail.stops),
        )
