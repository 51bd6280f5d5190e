"""How places on a master are told: measured from its middle, or along its edges from a corner."""

from __future__ import annotations

from collections.abc import Iterator

from quarterturn.blocks import Master
from quarterturn.design import Design
from quarterturn.geometry import Point, StraightLine
from quarterturn.measure import Length, show_length
from quarterturn.publish.wording.names import listed

NEAR = 1e-6
_ORDINALS = ("first", "second", "third", "fourth", "fifth", "sixth")


def ordinal(number: int) -> str:
    """Return a number as a word of order."""
    return _ORDINALS[number - 1] if number <= len(_ORDINALS) else f"{number}th"


def measure(design: Design, value: Length | float) -> str:
    """Print a measure on cloth to the nearest 1/16" or millimetre."""
    return show_length(value, design.units, sixteenths=True)


def place_from_middle(design: Design, point: Point) -> str:
    """Say where a point lies, seen from the middle of its master."""
    across = f"{measure(design, abs(point.real))} to the {'right' if point.real > 0 else 'left'}"
    down = f"{measure(design, abs(point.imag))} {'below' if point.imag > 0 else 'above'}"
    said = [text for text, value in ((across, point.real), (down, point.imag)) if abs(value) > NEAR]
    return listed(said) if said else "on the middle"


def drawn_line(design: Design, master: Master, line: StraightLine) -> str:
    """Say where a line is drawn: its two ends on the edges of the master, each from the nearer corner."""
    one, other = ends_on_edges(master, line)
    return f"from {edge_place(design, master, one)} to {edge_place(design, master, other)}"


def ends_on_edges(master: Master, line: StraightLine) -> tuple[Point, Point]:
    """Return where a line runs over the edges of a master, the higher end first."""
    found = sorted(_edge_points(master, line), key=lambda p: (round(p.imag, 6), round(p.real, 6)))
    return found[0], found[-1]


def _edge_points(master: Master, line: StraightLine) -> Iterator[Point]:
    across, down = float(master.width) / 2, float(master.height) / 2
    x, y = line.direction.real, line.direction.imag
    for side in (-across, across):
        if abs(x) > NEAR:
            point = line.at((side - line.through.real) / x)
            if abs(point.imag) < down + NEAR:
                yield point
    for side in (-down, down):
        if abs(y) > NEAR:
            point = line.at((side - line.through.imag) / y)
            if abs(point.real) < across + NEAR:
                yield point


def edge_place(design: Design, master: Master, point: Point) -> str:
    """Say where a point lies on the edge of a master."""
    across, down = float(master.width) / 2, float(master.height) / 2
    level = "left" if point.real < 0 else "right"
    upright = "top" if point.imag < 0 else "bottom"
    off_side, off_end = across - abs(point.real), down - abs(point.imag)
    if off_side < NEAR and off_end < NEAR:
        return f"the {upright} {level} corner"
    if off_end < NEAR:
        return f"the {upright} edge, {measure(design, off_side)} from its {level} corner"
    return f"the {level} edge, {measure(design, off_end)} from its {upright} corner"
