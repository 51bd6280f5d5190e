"""What each kind of element draws, as path data; SVG 2 chapter 10 gives the equivalent path of each shape."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from quarterturn.design import limits
from quarterturn.design.drawings.elements import Element
from quarterturn.design.drawings.sizes import BadValueError, numbers_of, user_units
from quarterturn.geometry import Subpath, read_path_data


def subpaths_of(element: Element) -> tuple[Subpath, ...]:
    """Return what an element draws, in its own units. Raises BadValueError and PathDataError."""
    data = _DATA[element.name](element.attributes)
    if len(data) > limits.LONGEST_PATH:
        raise BadValueError(
            f"has {len(data):,} characters of path data; {limits.LONGEST_PATH:,} are the most"
        )
    return read_path_data(data)


Attributes = Mapping[str, str]


def _path(attributes: Attributes) -> str:
    data = attributes.get("d", "")
    return "" if data.strip() == "none" else data


def _length(attributes: Attributes, name: str) -> float:
    return user_units(attributes.get(name, "0"), name)


def _corner_radius(attributes: Attributes, name: str) -> float | None:
    """Return the radius of a rectangle's corners one way; None where it follows the other way."""
    value = attributes.get(name, "auto").strip()
    return None if value == "auto" else max(0.0, user_units(value, name))


def _rect(attributes: Attributes) -> str:
    x, y, w, h = (_length(attributes, name) for name in ("x", "y", "width", "height"))
    if w <= 0 or h <= 0:
        return ""
    given = _corner_radius(attributes, "rx"), _corner_radius(attributes, "ry")
    across, down = (own if own is not None else other or 0.0 for own, other in (given, given[::-1]))
    across, down = min(across, w / 2), min(down, h / 2)
    if not across or not down:
        return f"M {x} {y} H {x + w} V {y + h} H {x} Z"
    arc = f"A {across} {down} 0 0 1"
    return (
        f"M {x + across} {y} H {x + w - across} {arc} {x + w} {y + down} V {y + h - down} "
        f"{arc} {x + w - across} {y + h} H {x + across} {arc} {x} {y + h - down} V {y + down} "
        f"{arc} {x + across} {y} Z"
    )


def _circle(attributes: Attributes) -> str:
    radius = _length(attributes, "r")
    return _oval(attributes, radius, radius)


def _ellipse(attributes: Attributes) -> str:
    given = _corner_radius(attributes, "rx"), _corner_radius(attributes, "ry")
    across, down = (own if own is not None else other or 0.0 for own, other in (given, given[::-1]))
    return _oval(attributes, across, down)


def _oval(attributes: Attributes, across: float, down: float) -> str:
    x, y = _length(attributes, "cx"), _length(attributes, "cy")
    if across <= 0 or down <= 0:
        return ""
    arc = f"A {across} {down} 0 0 1"
    return (
        f"M {x + across} {y} {arc} {x} {y + down} {arc} {x - across} {y} {arc} {x} {y - down} "
        f"{arc} {x + across} {y} Z"
    )


def _polygon(attributes: Attributes) -> str:
    numbers = numbers_of(attributes.get("points", ""), "points")
    if len(numbers) % 2:
        raise BadValueError(f"has {len(numbers)} numbers in its points, and one of them is alone")
    pairs = [f"{x} {y}" for x, y in zip(numbers[::2], numbers[1::2], strict=True)]
    return f"M {' L '.join(pairs)} Z" if pairs else ""


_DATA: Mapping[str, Callable[[Attributes], str]] = {
    "path": _path,
    "rect": _rect,
    "circle": _circle,
    "ellipse": _ellipse,
    "polygon": _polygon,
}
