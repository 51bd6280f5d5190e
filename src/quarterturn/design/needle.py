"""The way of the needle through one repeat of a stitch: points as text, across and along the edge in millimetres."""

from __future__ import annotations

import re

from quarterturn.design.notes import Notes
from quarterturn.measure import MM

MOST_POINTS = 60
FARTHEST = 13.0
"""Millimetres: the widest swing and the longest feed of a machine, with room to spare."""
_NUMBER = r"-?(?:\d{1,3}(?:\.\d{1,4})?|\.\d{1,4})"
_POINT = re.compile(rf"\s*({_NUMBER})\s+({_NUMBER})\s*")
_EXAMPLE = (
    'Write repeat = "0 0, 2 0, 0 0, 0 2.5": in millimetres across and along, from where the repeat begins.'
)


def read_needle(text: str | None, key: str, notes: Notes) -> tuple[complex, ...]:
    """Return the points in inches, x into the shape and y along the edge; none where there are no good ones."""
    if text is None:
        return ()
    found = [_POINT.fullmatch(part) for part in text.split(",")]
    points = [complex(float(each[1]), float(each[2])) for each in found if each]
    fault = _fault(points, len(found))
    if fault:
        notes.add("bad-repeat", key, f"The way of the needle {fault}.", _EXAMPLE)
        return ()
    return tuple(point * float(MM) for point in points)


def _fault(points: list[complex], parts: int) -> str:
    if len(points) < parts:
        return "has something in it that is not two numbers"
    if len(points) > MOST_POINTS:
        return f"has more than {MOST_POINTS} points"
    if any(max(abs(point.real), abs(point.imag)) > FARTHEST for point in points):
        return f"goes farther than {FARTHEST:g} mm"
    if points[-1].imag <= points[0].imag:
        return "does not go on along the edge"
    if points[-1].real != points[0].real:
        return "does not end as far into the shape as it begins"
    return ""


def write_needle(points: tuple[complex, ...]) -> str:
    """Write points as they are read."""
    return ", ".join(f"{_plain(point.real)} {_plain(point.imag)}" for point in points)


def _plain(inches: float) -> str:
    text = f"{inches / float(MM):.4f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text
