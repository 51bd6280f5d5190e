"""Find the elements of an SVG file that draw an outline, where they are, and how they are mapped to inches.

Python's own expat is used, for it tells lines as it goes and lets each handler stop it, so that depth and number
are bounded while the file is read. Expat opens nothing by itself; a document type with declarations of its own, and
so every entity, is refused before it can grow. A document type that only names the standard is passed over.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

from quarterturn.design import limits
from quarterturn.design.drawings.sizes import BadValueError, page, transform
from quarterturn.geometry import Affine

SVG = "http://www.w3.org/2000/svg"
"""The name space of SVG: a name, never an address to go to."""
DRAWN = ("path", "rect", "circle", "ellipse", "polygon")
_GROUPS = ("g", "a")
_TOLD = ("use", "image", "text", "line", "polyline", "foreignObject", "switch", "svg")
"""Elements that show something and are passed over, which is told."""


class DrawingError(ValueError):
    """A file of which nothing can be read. `line` and `column` count from 1; 0 where none is known."""

    def __init__(self, reason: str, line: int = 0, column: int = 0) -> None:
        super().__init__(reason)
        self.reason = reason
        self.line = line
        self.column = column


@dataclass(frozen=True, slots=True)
class Element:
    """An element: its name, id, line and attributes, and the map from its units to inches."""

    name: str
    identity: str
    line: int
    attributes: Mapping[str, str]
    to: Affine


@dataclass(frozen=True, slots=True)
class Refused:
    """An element that gave no outline: which, where, and why (going on from `it`)."""

    name: str
    identity: str
    line: int
    reason: str
    detail: str = ""


@dataclass
class Scan:
    """What was found: the elements that draw, those refused, and whether the file states its size."""

    elements: list[Element] = field(default_factory=list)
    refused: list[Refused] = field(default_factory=list)
    states_size: bool = False


@dataclass(frozen=True, slots=True)
class _Around:
    """What holds for the inside of an element: its map, whether it is seen, whether it is passed over."""

    to: Affine
    visible: bool = True
    passed_over: bool = False


def scan(content: bytes | str) -> Scan:
    """Go through a document once. Raises DrawingError where it is not SVG, or too much."""
    if len(content) > limits.LARGEST_DRAWING:
        raise DrawingError(f"is larger than {limits.LARGEST_DRAWING:,} bytes; simplify the drawing")
    from xml.parsers import expat

    handler = _Handler()
    handler.parser = parser = expat.ParserCreate(namespace_separator=" ")
    parser.StartElementHandler = handler.start
    parser.EndElementHandler = handler.end
    parser.StartDoctypeDeclHandler = handler.doctype
    parser.EntityDeclHandler = handler.entity
    try:
        parser.Parse(content.encode() if isinstance(content, str) else content, True)
    except expat.ExpatError as error:
        reason = expat.errors.messages.get(error.code, "") or expat.ErrorString(error.code)
        raise DrawingError(
            f"cannot be read as an SVG drawing: {reason}", error.lineno, error.offset + 1
        ) from error
    except (LookupError, UnicodeError) as error:
        raise DrawingError("is in an encoding that is not known here; save it as UTF-8") from error
    return handler.found


class _Handler:
    """Told of each element as it starts and ends; keeps what holds inside each that is open."""

    parser: Any

    def __init__(self) -> None:
        self.found = Scan()
        self._open: list[_Around] = []
        self._count = 0

    def doctype(self, name: str, system: str | None, public: str | None, declares: int) -> None:
        """Pass over a document type that only names the standard."""
        if declares:
            raise self._error("declares things of its own in its document type; save it as plain SVG")

    def entity(self, *declared: object) -> None:
        """Refuse entities, by which a small file could grow without end."""
        raise self._error("declares an entity; save it as plain SVG")

    def start(self, name: str, attributes: dict[str, str]) -> None:
        """Take in the start of an element."""
        self._count += 1
        if self._count > limits.MOST_ELEMENTS:
            raise self._error(f"has over {limits.MOST_ELEMENTS:,} elements; simplify the drawing")
        if len(self._open) >= limits.DEEPEST_DRAWING:
            raise self._error(f"is nested over {limits.DEEPEST_DRAWING} deep")
        space, _, local = name.rpartition(" ")
        if not self._open:
            self._open.append(self._root(space, local, attributes))
            return
        around = self._open[-1]
        if around.passed_over or space not in (SVG, ""):
            self._open.append(_PASSED_OVER)
        else:
            self._open.append(self._inside(local, attributes, around))

    def end(self, name: str) -> None:
        """Take in the end of an element."""
        self._open.pop()

    def _root(self, space: str, local: str, attributes: Mapping[str, str]) -> _Around:
        if local != "svg" or space not in (SVG, ""):
            raise self._error("is not SVG: its first element is not svg")
        try:
            to, self.found.states_size = page(attributes)
        except BadValueError as error:
            raise self._error(str(error)) from error
        return self._seen(attributes, _Around(to)) or _PASSED_OVER

    def _inside(self, local: str, attributes: Mapping[str, str], around: _Around) -> _Around:
        """Return what holds inside an element, and note the element if it draws."""
        shown = self._seen(attributes, around)
        if shown is None:
            return _PASSED_OVER
        if local in _TOLD and shown.visible:
            self._refuse(local, attributes, "is passed over: only closed shapes and groups of them are read")
        if local not in (*DRAWN, *_GROUPS):
            return _PASSED_OVER
        try:
            inner = _Around(around.to.after(_moved(attributes)), shown.visible)
        except BadValueError as error:
            self._refuse(local, attributes, str(error))
            return _PASSED_OVER
        if local in _GROUPS:
            return inner
        if inner.visible:
            self._add(Element(local, attributes.get("id", ""), self._line, dict(attributes), inner.to))
        return _PASSED_OVER

    def _add(self, element: Element) -> None:
        self.found.elements.append(element)

    def _refuse(self, local: str, attributes: Mapping[str, str], reason: str) -> None:
        if len(self.found.refused) < limits.MOST_FINDINGS:
            self.found.refused.append(Refused(local, attributes.get("id", ""), self._line, reason))

    @staticmethod
    def _seen(attributes: Mapping[str, str], around: _Around) -> _Around | None:
        """Return the surroundings with the visibility of an element; None where it is not displayed at all."""
        style = _style(attributes)
        if style.get("display", attributes.get("display", "")).strip() == "none":
            return None
        word = style.get("visibility", attributes.get("visibility", "")).strip()
        visible = word == "visible" if word in ("visible", "hidden", "collapse") else around.visible
        return _Around(around.to, visible)

    @property
    def _line(self) -> int:
        return int(self.parser.CurrentLineNumber)

    def _error(self, reason: str) -> DrawingError:
        return DrawingError(reason, self._line, int(self.parser.CurrentColumnNumber) + 1)


_PASSED_OVER = _Around(Affine(), visible=False, passed_over=True)


def _style(attributes: Mapping[str, str]) -> dict[str, str]:
    """Return the declarations of a style attribute, without judging them."""
    pairs = (each.partition(":") for each in attributes.get("style", "").split(";"))
    return {name.strip().lower(): value.replace("!important", "") for name, _, value in pairs}


def _moved(attributes: Mapping[str, str]) -> Affine:
    """Return the transform of an element. Raises BadValueError."""
    if any("transform" in name or name in ("translate", "rotate", "scale") for name in _style(attributes)):
        raise BadValueError("is moved by its style; let it have a transform attribute instead")
    if "transform-origin" in attributes or "transform-box" in attributes:
        raise BadValueError("is turned about a place of its own; apply its transform where it was drawn")
    return transform(attributes.get("transform", ""))
