"""Read a length written by hand.

A `Length` is an exact Fraction of inches. Metric lengths are exact too, since an inch is 25.4 mm by
definition (international yard and pound agreement, 1959): 1 mm is 5/127 inch.
"""

from __future__ import annotations

import enum
import re
from fractions import Fraction
from typing import TypeAlias

Length: TypeAlias = Fraction

INCH: Length = Fraction(1)
MM: Length = Fraction(5, 127)
YARD: Length = Fraction(36)

ROOT_TWO: Length = Fraction(131836323, 93222358)
"""√2 as a Fraction, so that sizes on point stay exact sums of one another.

A convergent p/q of its continued fraction misses it by less than 1/q² (A. Khinchin, Continued Fractions, § 2, from
memory): here by 4.1 · 10⁻¹⁷, so that it is √2 as nearly as a float tells it.
"""

LONGEST = 100_000 * INCH
"""A length beyond this is a slip of the pen, not a quilt."""


class Units(enum.Enum):
    """The system in which a pattern is drafted and printed; the two are never mixed in one pattern."""

    INCH = "inch"
    METRIC = "metric"


class LengthError(ValueError):
    """Text that is not a length. `position` counts from 0 in `text`; `reason` is a clause without a full stop."""

    def __init__(self, text: str, position: int, reason: str) -> None:
        self.text, self.position, self.reason = text, position, reason
        super().__init__(f"{reason} in {text!r} at character {position + 1}")

    def caret(self) -> str:
        """Return the text on one line, with a caret under the place."""
        line = "".join(" " if sign.isspace() else sign for sign in self.text)
        return f"{line}\n{' ' * self.position}^"


def inches(whole: int | str | Fraction, numerator: int = 0, denominator: int = 1) -> Length:
    """Return a length in inches: ``inches(9, 1, 2)`` is 9½"."""
    return Fraction(whole) + Fraction(numerator, denominator)


def mm(value: int | str | Fraction) -> Length:
    """Return a length in millimetres as exact inches."""
    return Fraction(value) * MM


_VULGAR = {
    "½": (1, 2), "¼": (1, 4), "¾": (3, 4), "⅛": (1, 8), "⅜": (3, 8), "⅝": (5, 8), "⅞": (7, 8),
    "⅓": (1, 3), "⅔": (2, 3), "⅙": (1, 6), "⅚": (5, 6), "⅕": (1, 5), "⅖": (2, 5), "⅗": (3, 5), "⅘": (4, 5),
}  # fmt: skip
_UNIT_WORDS: dict[str, Length] = {
    '"': INCH, "″": INCH, "”": INCH, "in": INCH, "in.": INCH, "inch": INCH, "inches": INCH,
    "mm": MM, "cm": 10 * MM, "m": 1000 * MM,
    "ft": 12 * INCH, "'": 12 * INCH, "yd": YARD, "yard": YARD, "yards": YARD,
}  # fmt: skip
_NUMBER = re.compile(r"\d{1,12}(?:\.\d{1,20})?|\.\d{1,20}")
_FRACTION = re.compile(r"(\d{1,9})\s*[/⁄]\s*(\d{1,9})|([⁰¹²³⁴⁵⁶⁷⁸⁹]{1,9})⁄([₀₁₂₃₄₅₆₇₈₉]{1,9})")
_ON_THE_LINE = str.maketrans("⁰¹²³⁴⁵⁶⁷⁸⁹₀₁₂₃₄₅₆₇₈₉", "0123456789" * 2)
_UNIT = re.compile(r"[^\W\d_]+\.?|[\"″”']")


def parse_length(text: str, units: Units) -> Length:
    """Read one length; a bare number is in inches, or in millimetres where `units` is metric.

    Takes ``9``, ``9.5``, ``1/2``, ``9 1/2"``, ``9-1/2 in``, ``9½"``, ``1¹⁄₁₆"``, ``24 cm``, ``240 mm``.
    Raises LengthError, with the place, for anything else, negative lengths included.
    """
    beginning = _skip_space(text, 0)
    value, position = _read_value(text, beginning)
    position = _skip_space(text, position)
    scale = MM if units is Units.METRIC else INCH
    if word := _UNIT.match(text, position):
        if word.group().lower() not in _UNIT_WORDS:
            raise LengthError(text, position, f"{word.group()!r} is not a unit of length")
        scale, position = _UNIT_WORDS[word.group().lower()], _skip_space(text, word.end())
    if text.startswith(",", position):
        raise LengthError(text, position, "a decimal is written with a point, not with a comma")
    if position < len(text):
        raise LengthError(text, position, "there is something left over after the length")
    if value * scale > LONGEST:
        raise LengthError(text, beginning, "this is longer than any cloth")
    return value * scale


def _read_value(text: str, position: int) -> tuple[Fraction, int]:
    """Read a whole number, a decimal, a fraction or a mixed number; return it and the place behind it."""
    if position >= len(text):
        raise LengthError(text, position, "a length was expected")
    if part := _read_fraction(text, position):
        return part
    number = _NUMBER.match(text, position)
    if not number:
        raise LengthError(text, position, "a length starts with a number")
    whole, end = Fraction(number.group()), number.end()
    joint = _skip_space(text, end)
    if joint < len(text) and text[joint] in "-‑+":
        joint = _skip_space(text, joint + 1)
    if part := _read_fraction(text, joint):
        if "." in number.group():
            raise LengthError(text, joint, "a decimal cannot be followed by a fraction")
        if part[0] >= 1:
            raise LengthError(text, joint, "a fraction behind a whole number must be below 1")
        return whole + part[0], part[1]
    return whole, end


def _read_fraction(text: str, position: int) -> tuple[Fraction, int] | None:
    if position < len(text) and text[position] in _VULGAR:
        return Fraction(*_VULGAR[text[position]]), position + 1
    if not (found := _FRACTION.match(text, position)):
        return None
    above, below = (int(figures.translate(_ON_THE_LINE)) for figures in found.groups() if figures)
    if below == 0:
        raise LengthError(text, found.end() - 1, "nothing can be divided by 0")
    return Fraction(above, below), found.end()


def _skip_space(text: str, position: int) -> int:
    while position < len(text) and text[position].isspace():
        position += 1
    return position
