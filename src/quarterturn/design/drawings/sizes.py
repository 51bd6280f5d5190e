"""Lengths, transforms and the page of an SVG file, as maps to inches (SVG 1.1 sections 7.6 to 7.10)."""

from __future__ import annotations

import math
import re
from collections.abc import Callable, Mapping

from quarterturn.geometry import Affine, PathDataError, read_numbers

PIXELS = 96
"""Units to the inch where a file states no other (CSS Values and Units, section 6.2: 1in = 96px)."""

_INCH: Mapping[str, float] = {
    "": 1 / PIXELS,
    "px": 1 / PIXELS,
    "in": 1.0,
    "mm": 1 / 25.4,
    "cm": 1 / 2.54,
    "pt": 1 / 72,
    "pc": 1 / 6,
    "q": 1 / 101.6,
}
"""Inches to each unit of length (the same section; px without a name is the user unit)."""
_LENGTH = re.compile(r"\s*([+-]?(?:[0-9]+(?:\.[0-9]*)?|\.[0-9]+)(?:[eE][+-]?[0-9]+)?)\s*([A-Za-z]*|%)\s*")
_CALL = re.compile(r"[\s,]*(matrix|translate|scale|rotate|skewX|skewY)\s*\(([^()]*)\)[\s,]*")


class BadValueError(ValueError):
    """An attribute that cannot be read. The message goes on from `it`."""


def user_units(value: str, name: str) -> float:
    """Read a length as user units. Raises BadValueError."""
    return _inches(value, name) * PIXELS


def _inches(value: str, name: str) -> float:
    found = _LENGTH.fullmatch(value)
    unit = found[2].lower() if found else ""
    if not found or unit not in _INCH:
        raise BadValueError(f"has the {name} {shortened(value)}, which is no length with a unit known here")
    length = float(found[1]) * _INCH[unit]
    if not math.isfinite(length):
        raise BadValueError(f"has a {name} larger than numbers go")
    return length


def shortened(value: str) -> str:
    """Return the beginning of a value from the file, fit to be printed."""
    shown = value if len(value) <= 30 else value[:29] + "…"
    return "`" + "".join(c if c.isprintable() else "�" for c in shown) + "`"


def page(attributes: Mapping[str, str]) -> tuple[Affine, bool]:
    """Return the map from the units of an svg element to inches, and whether the file states its size.

    Where it lies on the page is left out. Raises BadValueError.
    """
    across, down = (_page_side(attributes, side) for side in ("width", "height"))
    box = _view_box(attributes.get("viewBox"))
    stated = across is not None or down is not None
    if box is None:
        return Affine(1 / PIXELS, 0, 0, 1 / PIXELS), stated
    scales = [side / part for side, part in zip((across, down), box, strict=True) if side is not None]
    if not scales:
        return Affine(1 / PIXELS, 0, 0, 1 / PIXELS), False
    words = attributes.get("preserveAspectRatio", "").split()
    if "none" in words and len(scales) == 2:
        return Affine(scales[0], 0, 0, scales[1]), True
    scale = max(scales) if "slice" in words else min(scales)
    return Affine(scale, 0, 0, scale), True


def _page_side(attributes: Mapping[str, str], name: str) -> float | None:
    value = attributes.get(name, "auto").strip()
    if value == "auto" or value.endswith("%"):
        return None
    length = _inches(value, name)
    if length <= 0:
        raise BadValueError(f"has the {name} {shortened(value)}, on which nothing can be drawn")
    return length


def _view_box(value: str | None) -> tuple[float, float] | None:
    if value is None or value.strip() == "none":
        return None
    numbers = numbers_of(value, "viewBox")
    if len(numbers) != 4 or min(numbers[2:]) <= 0:
        raise BadValueError(
            f"has the viewBox {shortened(value)}; four numbers are wanted, the last two above 0"
        )
    return numbers[2], numbers[3]


def numbers_of(value: str, name: str) -> tuple[float, ...]:
    """Read a list of numbers. Raises BadValueError."""
    try:
        return read_numbers(value)
    except PathDataError as error:
        raise BadValueError(f"has a {name} that is no list of numbers: {error}") from error


def transform(value: str) -> Affine:
    """Read the value of a transform attribute: the first function named is done last. Raises BadValueError."""
    whole, at = Affine(), 0
    if value.strip() == "none":
        return whole
    bare = value.strip()
    while at < len(bare):
        found = _CALL.match(bare, at)
        if not found:
            raise BadValueError(f"has the transform {shortened(value)}, which cannot be read")
        whole, at = whole.after(_function(found[1], found[2])), found.end()
    if not all(map(math.isfinite, (whole.a, whole.b, whole.c, whole.d, whole.e, whole.f))):
        raise BadValueError("has a transform larger than numbers go")
    return whole


def _function(name: str, inside: str) -> Affine:
    numbers = numbers_of(inside, "transform")
    counts, build = _FUNCTIONS[name]
    if len(numbers) not in counts:
        raise BadValueError(f"has a transform with {name}({shortened(inside)[1:-1]}), which cannot be read")
    return build(*numbers)


def _translate(x: float, y: float = 0.0) -> Affine:
    return Affine(e=x, f=y)


def _scale(x: float, y: float | None = None) -> Affine:
    return Affine(a=x, d=x if y is None else y)


def _rotate(angle: float, x: float = 0.0, y: float = 0.0) -> Affine:
    cos, sin = _turn(angle)
    return Affine(e=x, f=y).after(Affine(cos, sin, -sin, cos)).after(Affine(e=-x, f=-y))


def _turn(degrees: float) -> tuple[float, float]:
    """Return cosine and sine, exact for quarter turns."""
    quarters, rest = divmod(degrees, 90)
    cos, sin = (math.cos(math.radians(rest)), math.sin(math.radians(rest))) if rest else (1.0, 0.0)
    return ((cos, sin), (-sin, cos), (-cos, -sin), (sin, -cos))[int(quarters) % 4]


def _skew_x(angle: float) -> Affine:
    return Affine(c=math.tan(math.radians(angle)))


def _skew_y(angle: float) -> Affine:
    return Affine(b=math.tan(math.radians(angle)))


_FUNCTIONS: Mapping[str, tuple[tuple[int, ...], Callable[..., Affine]]] = {
    "matrix": ((6,), Affine),
    "translate": ((1, 2), _translate),
    "scale": ((1, 2), _scale),
    "rotate": ((1, 3), _rotate),
    "skewX": ((1,), _skew_x),
    "skewY": ((1,), _skew_y),
}
"""How many numbers each function takes, and the map that it is (SVG 1.1 section 7.6)."""
