"""From the elements of an SVG file to outlines that can be cut out of cloth, in inches."""

from __future__ import annotations

from dataclasses import dataclass

from quarterturn.design import limits
from quarterturn.design.drawings.curves import subpaths_of
from quarterturn.design.drawings.elements import DrawingError, Element, Refused, scan
from quarterturn.design.drawings.sizes import BadValueError
from quarterturn.design.own_outlines import caret
from quarterturn.design.soundness import UnsoundError, sound_path
from quarterturn.geometry import Path, PathDataError, path_bounds


@dataclass(frozen=True, slots=True)
class Found:
    """An outline: the element, its id (or nothing) and its line, and the path at true size in inches, y down."""

    name: str
    identity: str
    line: int
    path: Path


@dataclass(frozen=True, slots=True)
class Drawing:
    """What a file gave, in its order. `states_size` tells whether the file says how large it is."""

    outlines: tuple[Found, ...]
    refused: tuple[Refused, ...]
    states_size: bool


def read_drawing(content: bytes | str, identity: str | None = None) -> Drawing:
    """Read every closed outline of an SVG file, or only that of the element with an id. Raises DrawingError."""
    scanned = scan(content)
    wanted = [each for each in scanned.elements if identity is None or each.identity == identity]
    refused = [each for each in scanned.refused if identity is None or each.identity == identity]
    if len(wanted) > limits.MOST_OUTLINES:
        raise DrawingError(
            f"has {len(wanted)} shapes, and {limits.MOST_OUTLINES} are the most; say which by its id",
            wanted[limits.MOST_OUTLINES].line,
        )
    results = [_outline(element) for element in wanted]
    refused += [each for each in results if isinstance(each, Refused)]
    return Drawing(
        tuple(each for each in results if isinstance(each, Found)),
        tuple(sorted(refused, key=lambda each: each.line)),
        scanned.states_size,
    )


def _outline(element: Element) -> Found | Refused:
    reason, detail = "", ""
    try:
        path = sound_path(subpaths_of(element), element.to)
    except PathDataError as error:
        reason = f"has no sound path data: {error}"
        detail = caret(element.attributes.get("d", ""), error.offset)
    except (BadValueError, UnsoundError) as error:
        reason = str(error)
    else:
        reason = _size_fault(path)
        if not reason:
            return Found(element.name, element.identity, element.line, path)
    return Refused(element.name, element.identity, element.line, reason, detail)


def _size_fault(path: Path) -> str:
    width, sizes = path_bounds(path).width, limits.DIAMETER
    if float(sizes.low) <= width <= float(sizes.high):
        return ""
    return f'is {width:.4g}" wide; an outline is from {float(sizes.low):g}" to {float(sizes.high):g}" wide'
