"""Where the strips of a border lie, in the frame of its own outer edge."""

from __future__ import annotations

from collections.abc import Iterator

from quarterturn.geometry import Point, Region, polygon
from quarterturn.setting.model import Side
from quarterturn.setting.tree import Child, Frame


def strip_places(frame: Frame, width: float, height: float) -> Iterator[tuple[Side, Child, Point]]:
    """Return the strips in the order of sewing, with the top left corner of each.

    `width` and `height` are those of the outer edge. Strips without a width are passed over.
    """
    left, right, top, bottom = frame.strips
    side, end = float(frame.side_depth), float(frame.end_depth)
    down = (height - float(left.height)) / 2
    over = (width - float(top.width)) / 2
    sides = [(Side.LEFT, left, complex(0, down)), (Side.RIGHT, right, complex(width - side, down))]
    ends = [(Side.TOP, top, complex(over, 0)), (Side.BOTTOM, bottom, complex(over, height - end))]
    for pair, depth in ((sides, side), (ends, end)) if frame.sides_first else ((ends, end), (sides, side)):
        yield from pair if depth else ()


def mitred_strip(side: Side, frame: Frame, width: float, height: float) -> Region:
    """Return what is left of a mitred strip, whose ends are cut between outer and inner corners."""
    depth, end = float(frame.side_depth), float(frame.end_depth)
    outer = (0j, complex(width, 0), complex(width, height), complex(0, height))
    near, far = complex(depth, end), complex(width - depth, height - end)
    inner = (near, complex(far.real, near.imag), far, complex(near.real, far.imag))
    start = (Side.TOP, Side.RIGHT, Side.BOTTOM, Side.LEFT).index(side)
    after = (start + 1) % 4
    return Region((polygon((outer[start], outer[after], inner[after], inner[start])),))


def corner_places(frame: Frame, width: float, height: float) -> Iterator[tuple[Child, Point]]:
    """Return what fills the corners, clockwise from the top left, with the top left corner of each."""
    far = complex(width - float(frame.side_depth), height - float(frame.end_depth))
    places = (0j, complex(far.real, 0), far, complex(0, far.imag))
    return zip(frame.corners, places, strict=False)
