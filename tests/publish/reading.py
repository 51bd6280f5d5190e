"""What the files say, read back with other programs than those that wrote them."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import Any

MM_PER_POINT = 25.4 / 72


@dataclass(frozen=True)
class Stroked:
    """A stroked path of a PDF page: corners and control points in millimetres from the top left, line width."""

    points: tuple[complex, ...]
    width: float
    closed: bool
    dashed: bool

    @property
    def box(self) -> tuple[float, float, float, float]:
        """Return left, top, right, bottom of the points."""
        across, down = [p.real for p in self.points], [p.imag for p in self.points]
        return min(across), min(down), max(across), max(down)

    @property
    def size(self) -> tuple[float, float]:
        """Return width and height of the points."""
        left, top, right, bottom = self.box
        return right - left, bottom - top


@dataclass(frozen=True)
class Page:
    """A page of a PDF: its size in millimetres and its stroked paths."""

    width: float
    height: float
    paths: tuple[Stroked, ...]


def read_pdf(pdf: bytes) -> list[Page]:
    """Read the vector paths of all pages with pdfium."""
    import pypdfium2

    document = pypdfium2.PdfDocument(pdf)
    try:
        return [_page(document[index]) for index in range(len(document))]
    finally:
        document.close()


def _page(page: Any) -> Page:
    from pypdfium2 import raw

    width, height = page.get_size()
    form = raw.FPDFPage_GetObject
    paths: list[Stroked] = []
    identity = (1.0, 0.0, 0.0, 1.0, 0.0, 0.0)
    for index in range(raw.FPDFPage_CountObjects(page.raw)):
        paths += _paths(form(page.raw, index), _placing(identity, height))
    return Page(width * MM_PER_POINT, height * MM_PER_POINT, tuple(paths))


Matrix = tuple[float, float, float, float, float, float]
Placing = Callable[[float, float, Matrix], complex]


def _placing(outer: Matrix, height: float) -> Placing:
    def place(x: float, y: float, inner: Matrix) -> complex:
        x, y = _apply(inner, x, y)
        x, y = _apply(outer, x, y)
        return complex(x, height - y) * MM_PER_POINT

    return place


def _apply(m: Matrix, x: float, y: float) -> tuple[float, float]:
    return m[0] * x + m[2] * y + m[4], m[1] * x + m[3] * y + m[5]


def _matrix(handle: Any) -> Matrix:
    from pypdfium2 import raw

    found = raw.FS_MATRIX()
    assert raw.FPDFPageObj_GetMatrix(handle, found)
    return found.a, found.b, found.c, found.d, found.e, found.f


def _paths(handle: Any, place: Placing) -> Iterator[Stroked]:
    from pypdfium2 import raw

    kind = raw.FPDFPageObj_GetType(handle)
    matrix = _matrix(handle)
    if kind == raw.FPDF_PAGEOBJ_FORM:
        for index in range(raw.FPDFFormObj_CountObjects(handle)):
            inner = raw.FPDFFormObj_GetObject(handle, index)
            yield from _paths(inner, lambda x, y, m: place(*_apply(m, x, y), matrix))
    elif kind == raw.FPDF_PAGEOBJ_PATH and _is_stroked(handle):
        yield _stroked(handle, place, matrix)


def _is_stroked(handle: Any) -> bool:
    import ctypes

    from pypdfium2 import raw

    fill, stroke = ctypes.c_int(), ctypes.c_int()
    assert raw.FPDFPath_GetDrawMode(handle, fill, stroke)
    return bool(stroke.value)


def _stroked(handle: Any, place: Placing, matrix: Matrix) -> Stroked:
    import ctypes

    from pypdfium2 import raw

    points, closed = [], False
    for index in range(raw.FPDFPath_CountSegments(handle)):
        segment = raw.FPDFPath_GetPathSegment(handle, index)
        x, y = ctypes.c_float(), ctypes.c_float()
        assert raw.FPDFPathSegment_GetPoint(segment, x, y)
        points.append(place(x.value, y.value, matrix))
        closed = closed or bool(raw.FPDFPathSegment_GetClose(segment))
    width = ctypes.c_float()
    assert raw.FPDFPageObj_GetStrokeWidth(handle, width)
    dashed = raw.FPDFPageObj_GetDashCount(handle) > 0
    scale = abs(place(1, 0, matrix) - place(0, 0, matrix))
    return Stroked(tuple(points), width.value * scale, closed, dashed)
