"""What all views are made of: the types that the page knows, as OpenAPI tells them."""

from __future__ import annotations

from fractions import Fraction

from pydantic import BaseModel, ConfigDict

from quarterturn.design import Finding
from quarterturn.geometry import Motion, Path, Region, write_path_data

DIGITS = 6
"""Of an inch, behind the point: far below what a screen shows."""

Matrix = tuple[float, float, float, float, float, float]
"""The six numbers of SVG's matrix: a motion of a unit's frame into the top's."""


class View(BaseModel):
    """A frozen record, whose fields are all there is."""

    model_config = ConfigDict(frozen=True, extra="forbid")


class FindingView(View):
    """A fact about the design that the designer should know."""

    code: str
    severity: str
    key: str
    """Dotted key of the design file."""
    detail: str
    line: int | None
    column: int | None
    sentence: str
    remedy: str


class LengthView(View):
    """A length, for reckoning on the screen and as it is printed."""

    inches: float
    text: str


class CellView(View):
    """The address of what can be painted: a section, and the row and column in its map as written."""

    section: str
    row: int
    column: int


def finding_view(finding: Finding) -> FindingView:
    """Return a finding for the page."""
    place = finding.place
    return FindingView(
        code=finding.code,
        severity=finding.severity.value,
        key=place.key,
        detail=place.detail,
        line=place.line,
        column=place.column,
        sentence=finding.sentence,
        remedy=finding.remedy,
    )


def inches_of(length: Fraction | float) -> float:
    """Return a length as a number for the screen."""
    return round(float(length), DIGITS) + 0.0


def matrix(motion: Motion) -> Matrix:
    """Return a motion as SVG's matrix."""
    along = motion.factor
    mirror = -1.0 if motion.mirrored else 1.0
    linear = (along.real, along.imag, -along.imag * mirror, along.real * mirror)
    numbers = (*linear, motion.move.real, motion.move.imag)
    a, b, c, d, e, f = (round(number, DIGITS) + 0.0 for number in numbers)
    return a, b, c, d, e, f


def path_data(shape: Region | Path) -> str:
    """Return an outline, or all of a region, as SVG's path data; arcs stay arcs."""
    paths = shape.paths if isinstance(shape, Region) else (shape,)
    return " ".join(write_path_data(path, DIGITS - 1) for path in paths)
