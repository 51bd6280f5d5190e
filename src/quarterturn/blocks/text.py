"""The text form of the blocks: what each recipe's master is, and the units that it gives."""

from __future__ import annotations

import cmath
import math
from collections.abc import Iterator
from functools import partial

from quarterturn.blocks.model import Blocks, FusedShape, Master, Rejoining, Unit
from quarterturn.geometry import EPSILON, Arc, Cubic, Line, Point, Region, Segment, StraightLine, path_bounds
from quarterturn.measure import Length, Units, aligned, show_area, show_length, show_plain


def blocks_text(blocks: Blocks, units: Units) -> str:
    """Return every master with its shape, its cuts, its facts and the outlines of its units.

    Lengths are exact to 1/10000" or 1/100 mm; outlines are in the frames of `blocks.model`.
    """
    masters = (_master(master, units) for master in blocks.masters)
    rejoined = (_rejoining(each, units) for each in blocks.rejoined)
    return "\n".join("\n".join(lines) + "\n" for lines in (*masters, *rejoined))


def _size(width: Length, height: Length, units: Units) -> str:
    plain = partial(show_plain, units=units)
    return f"{plain(width)} square" if width == height else f"{plain(width)} × {plain(height)}"


def _trimmed(width: Length, height: Length, units: Units) -> str:
    plain = partial(show_plain, units=units)
    if width == height:
        return f"{plain(width)} trimmed off"
    return f"{plain(width)} of the width and {plain(height)} of the height trimmed off"


def _rejoining(each: Rejoining, units: Units) -> Iterator[str]:
    """Describe the blocks of two masters: their halves, then their outlines; parts say which master they come from."""
    yield f"recipe {each.recipe}"
    yield from aligned(
        [
            ("halves", f"of two masters of {each.of}, rejoined {_cut(each.cut, units)}"),
            (
                "block",
                f"{_trimmed(each.trim_width, each.trim_height, units)}; {show_plain(each.seam, units)} seam",
            ),
        ]
    )
    for number, unit in enumerate(each.units):
        yield from _unit(number, f"{each.per_pair(number)} from every two masters", unit, units)


def _master(master: Master, units: Units) -> Iterator[str]:
    plain = partial(show_plain, units=units)
    yield f"recipe {master.recipe}"
    yield from aligned(
        [
            (
                "master",
                f"{_size(master.width, master.height, units)}; "
                f"{_trimmed(master.trim_width, master.trim_height, units)}; {plain(master.seam)} seam",
            ),
            ("cuts", ", then ".join(_cut(cut, units) for cut in master.cuts) or "none"),
            *(row for shape in master.shapes for row in _shape(shape, units)),
            *_facts(master, units),
        ]
    )
    for number, unit in enumerate(master.units):
        yield from _unit(number, f"{master.per_master(number)} from each master", unit, units)


def _shape(shape: FusedShape, units: Units) -> Iterator[tuple[str, str]]:
    size = f"{show_plain(shape.width, units)} × {show_plain(shape.height, units)}"
    yield "shape", f"{shape.name}, {size} as traced, {show_plain(shape.edge, units)} of edge"
    yield from _outlines("traced", shape.region, units)
    yield from _outlines("ring out", shape.ring_out, units)
    yield from _outlines("ring in", shape.ring_in, units)


def _cut(cut: StraightLine, units: Units) -> str:
    angle = round(math.degrees(cmath.phase(cut.direction)) % 180, 2) % 180
    way = {0.0: "horizontal", 90.0: "vertical"}.get(angle, f"at {angle:g}°")
    return f"{way} through {_point(cut.through, units)}"


def _facts(master: Master, units: Units) -> Iterator[tuple[str, str]]:
    facts = master.facts
    if facts.crossing:
        yield "crossing", f"{show_plain(facts.crossing, units)} from the finished corner along the seam"
    if facts.diagonal and len(master.units) == 1:
        yield "diagonal", f"{show_plain(facts.diagonal, units)} from the finished corner to the curve"
    yield "peak", f"{facts.peak:.2f}° where the curve is rejoined"
    if facts.step > EPSILON:
        yield "step", f"{show_plain(round(facts.step, 9), units)} where the curve is rejoined"
    yield "clearance", f"{show_plain(facts.clearance, units)} to the outer cut edge"
    sewn, wanted = show_area(facts.shape_area, units), show_area(facts.wanted_area, units)
    yield "area", f"{sewn} of shape in a sewn unit; {wanted} if no seam took its share"


def _unit(number: int, count: str, unit: Unit, units: Units) -> Iterator[str]:
    box = path_bounds(unit.cut_outline)
    finished, cut = _shown(unit.width, unit.height, units), _shown(box.width, box.height, units)
    named = f"unit {number + 1}" if not unit.quarter else f"unit {unit.quarter}"
    yield f"  {named}: {count}, {finished} finished, {cut} cut"
    states = (("cut", unit.cut_layers), ("sewn", unit.sewn_layers))
    parts = ((f"{state} {layer.part}", layer.region) for state, layers in states for layer in layers)
    yield from aligned(
        [row for name, region in parts for row in _outlines(name, region, units)], indent="    "
    )


def _shown(width: Length | float, height: Length | float, units: Units) -> str:
    across, down = show_length(width, units), show_length(height, units)
    return across if across == down else f"{across} × {down}"


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
