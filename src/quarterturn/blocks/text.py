"""The text form of the blocks: what each recipe's master is, and the units that it gives."""

from __future__ import annotations

import cmath
import math
from collections.abc import Iterator
from functools import partial

from quarterturn.blocks.model import Blocks, FusedShape, Master, Unit
from quarterturn.geometry import EPSILON, Arc, Cubic, Line, Point, Region, Segment, StraightLine
from quarterturn.measure import Units, aligned, show_area, show_length, show_plain


def blocks_text(blocks: Blocks, units: Units) -> str:
    """Return every master with its shape, its cuts, its facts and the outlines of its units.

    Lengths are exact to 1/10000" or 1/100 mm; outlines are in the frames of `blocks.model`.
    """
    return "\n".join("\n".join(_master(master, units)) + "\n" for master in blocks.masters)


def _master(master: Master, units: Units) -> Iterator[str]:
    plain = partial(show_plain, units=units)
    yield f"recipe {master.recipe}"
    yield from aligned(
        [
            (
                "master",
                f"{plain(master.side)} square; {plain(master.trim)} trimmed off; {plain(master.seam)} seam",
            ),
            ("cuts", ", then ".join(_cut(cut, units) for cut in master.cuts)),
            *_shape(master.shape, units),
            *_facts(master, units),
        ]
    )
    for number, unit in enumerate(master.units):
        yield from _unit(number, master.per_master(number), unit, units)


def _shape(shape: FusedShape, units: Units) -> Iterator[tuple[str, str]]:
    size = f"{show_plain(shape.width, units)} × {show_plain(shape.height, units)}"
    yield "shape", f"{shape.name}, {size} as traced, {show_plain(shape.edge, units)} of edge"
    yield from _outlines("traced", Region((shape.traced,)), units)
    yield from _outlines("ring out", shape.ring_out, units)
    yield from _outlines("ring in", shape.ring_in, units)


def _cut(cut: StraightLine, units: Units) -> str:
    angle = round(math.degrees(cmath.phase(cut.direction)) % 180, 2) % 180
    way = {0.0: "level", 90.0: "upright"}.get(angle, f"at {angle:g}°")
    return f"{way} through {_point(cut.through, units)}"


def _facts(master: Master, units: Units) -> Iterator[tuple[str, str]]:
    facts = master.facts
    yield "crossing", f"{show_plain(facts.crossing, units)} from the finished corner along the seam"
    if len(master.units) == 1:
        yield "diagonal", f"{show_plain(facts.diagonal, units)} from the finished corner to the curve"
    yield "peak", f"{facts.peak:.2f}° where the curve is rejoined"
    if facts.step > EPSILON:
        yield "step", f"{show_plain(round(facts.step, 9), units)} where the curve is rejoined"
    yield "clearance", f"{show_plain(facts.clearance, units)} to the outer cut edge"
    sewn, wanted = show_area(facts.shape_area, units), show_area(facts.wanted_area, units)
    yield "area", f"{sewn} of shape in a sewn unit; {wanted} if no seam took its share"


def _unit(number: int, count: int, unit: Unit, units: Units) -> Iterator[str]:
    finished, cut = show_length(unit.side, units), show_length(unit.cut_side, units)
    named = f"unit {number + 1}" if not unit.quarter else f"unit {unit.quarter}"
    yield f"  {named}: {count} from each master, {finished} finished, {cut} cut"
    states = (("cut", unit.cut_layers), ("sewn", unit.sewn_layers))
    parts = ((f"{state} {layer.part}", layer.region) for state, layers in states for layer in layers)
    yield from aligned(
        [row for name, region in parts for row in _outlines(name, region, units)], indent="    "
    )


def _outlines(name: str, region: Region, units: Units) -> Iterator[tuple[str, str]]:
    """Write each path as the corner that it starts from, then a row for what leads to each next corner."""
    for path in region.paths:
        yield name, f"from {_point(path.segments[0].start, units)}"
        yield from (("", _segment(segment, units)) for segment in path.segments)


def _segment(segment: Segment, units: Units) -> str:
    match segment:
        case Line(_, end):
            return f"line to {_point(end, units)}"
        case Arc():
            turn = "clockwise" if segment.sweep > 0 else "anticlockwise"
            about = f"about {_point(segment.centre, units)}"
            return (
                f"arc to {_point(segment.end, units)} {turn} {about}, {math.degrees(abs(segment.sweep)):.2f}°"
            )
        case Cubic(_, control1, control2, end):
            return f"curve to {_point(end, units)} by {_point(control1, units)} and {_point(control2, units)}"


def _point(point: Point, units: Units) -> str:
    return f"({_bare(point.real, units)}, {_bare(point.imag, units)})"


def _bare(value: float, units: Units) -> str:
    """Print a coordinate; noise of floats is taken off first, lest it decide a tie."""
    return show_plain(round(value, 9), units).removesuffix('"').removesuffix(" mm")
