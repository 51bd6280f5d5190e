"""Outlines to fuse: each a positive path, 1 wide as it stands, the middle of its upright box at 0.

"As it stands": points of hearts, petals and drops look down (a petal and a drop have their point below), a leaf
has its tips above and below. Lobes are those of a scallop.
"""

from __future__ import annotations

import cmath
import math
from collections.abc import Callable, Iterable, Mapping

from quarterturn.geometry.motion import Motion, quarter_turns, shift
from quarterturn.geometry.paths import Path, path_bounds
from quarterturn.geometry.segments import Arc, Cubic, Line, Point, Segment
from quarterturn.geometry.shapes import circle

MIRRORED = Motion(-1 + 0j, 0j, mirrored=True)


def outline_path(outline: str | Path, width: float, turn: int = 0, lobes: int = 8) -> Path:
    """Return an outline, so wide before it is turned by so many quarters clockwise, the middle of its box at 0.

    It is one of OUTLINES by its name, or any closed path.
    """
    whole = OUTLINES[outline](lobes) if isinstance(outline, str) else fitted(outline)
    return quarter_turns(turn).path(scaled(whole, width))


def _heart(lobes: int) -> Path:
    """Return a square on its corner with half discs on its two upper sides: a heart as pieced for long."""
    half = math.sqrt(0.5)
    left, bottom, right = -half + 0j, half * 1j, half + 0j
    first = Arc(complex(-half, -half) / 2, 0.5, 3 * math.pi / 4, math.pi)
    second = Arc(complex(half, -half) / 2, 0.5, -3 * math.pi / 4, math.pi)
    return _fitted((Line(bottom, left), first, second, Line(right, bottom)))


def _soft_heart(lobes: int) -> Path:
    """Return a heart without straight lines, of two curves a side."""
    side = (
        Cubic(1j, -0.42 + 0.62j, -1 + 0.28j, -1 - 0.3j),
        Cubic(-1 - 0.3j, -1 - 0.98j, -0.2 - 1.08j, -0.5j),
    )
    return _fitted(_with_mirror_image(side))


def _leaf(lobes: int) -> Path:
    """Return two arcs of 120° that meet in two tips."""
    third = math.pi / 3
    return _fitted((Arc(-0.5 + 0j, 1.0, -third, 2 * third), Arc(0.5 + 0j, 1.0, math.pi - third, 2 * third)))


def _petal(lobes: int) -> Path:
    """Return half a disc above two arcs of 60° that run on from it to a point."""
    third = math.pi / 3
    return _fitted(
        (
            Arc(0.5 + 0j, 1.0, math.pi - third, third),
            Arc(0j, 0.5, math.pi, math.pi),
            Arc(-0.5 + 0j, 1.0, 0.0, third),
        )
    )


def _drop(lobes: int) -> Path:
    """Return a disc with two tangents to a point as far from its middle as the disc is wide."""
    right, left = cmath.rect(0.5, math.pi / 6), cmath.rect(0.5, 5 * math.pi / 6)
    return _fitted((Line(1j, left), Arc(0j, 0.5, 5 * math.pi / 6, 4 * math.pi / 3), Line(right, 1j)))


def _rounded_square(lobes: int) -> Path:
    """Return a square whose corners are rounded by a quarter of its side."""
    parts: list[Segment] = []
    for quarter, (x, y) in enumerate(((1, 1), (-1, 1), (-1, -1), (1, -1))):
        arc = Arc(complex(x, y) / 4, 0.25, quarter * math.pi / 2, math.pi / 2)
        parts += [Line(parts[-1].end, arc.start), arc] if parts else [arc]
    return _fitted((*parts, Line(parts[-1].end, parts[0].start)))


def _scallop(lobes: int) -> Path:
    """Return half discs on the sides of a regular polygon, one of them at the top."""
    step = math.tau / lobes
    middles = [cmath.rect(math.cos(step / 2), step * k - math.pi / 2) for k in range(lobes)]
    arcs = [Arc(m, math.sin(step / 2), cmath.phase(m) - math.pi / 2, math.pi) for m in middles]
    return _fitted(arcs)


def _with_mirror_image(side: tuple[Segment, ...]) -> tuple[Segment, ...]:
    """Return the segments up the left side, and down the right side after them."""
    return (*side, *(MIRRORED.segment(s).reversed() for s in reversed(side)))


def _fitted(segments: Iterable[Segment]) -> Path:
    return fitted(Path(tuple(segments)))


def fitted(path: Path) -> Path:
    """Return a closed path as outlines are kept: positive, 1 wide, the middle of its box at 0."""
    wide = scaled(path if path.area() > 0 else path.reversed(), 1 / path_bounds(path).width)
    return shift(-path_bounds(wide).centre).path(wide)


def scaled(path: Path, factor: float) -> Path:
    """Return a path made larger or smaller about 0."""
    return Path(tuple(_scaled_segment(s, factor) for s in path.segments))


def _scaled_segment(segment: Segment, factor: float) -> Segment:
    def by(point: Point) -> Point:
        return point * factor

    match segment:
        case Line(start, end):
            return Line(by(start), by(end))
        case Arc(centre, radius, start_angle, sweep):
            return Arc(by(centre), radius * factor, start_angle, sweep)
        case Cubic(start, control1, control2, end):
            return Cubic(by(start), by(control1), by(control2), by(end))


OUTLINES: Mapping[str, Callable[[int], Path]] = {
    "circle": lambda lobes: circle(0.5),
    "heart": _heart,
    "soft heart": _soft_heart,
    "leaf": _leaf,
    "petal": _petal,
    "drop": _drop,
    "rounded square": _rounded_square,
    "scallop": _scallop,
}
"""Name -> the outline 1 wide, of so many lobes where it has any."""
