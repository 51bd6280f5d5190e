"""Print the parts of a design file: text in quotes, and lengths that read back exactly."""

from __future__ import annotations

import json
from fractions import Fraction

from quarterturn.measure import MM, YARD, Length, Units

_RULER = 64
_DIGITS = 12
_LARGEST = 10**9 - 1


def quote_text(text: str) -> str:
    """Return text as a TOML string on one line, in single quotes where that saves escapes."""
    if "'" not in text and ('"' in text or "\\" in text) and text.isprintable():
        return f"'{text}'"
    return json.dumps(text, ensure_ascii=False).replace("\x7f", "\\u007f")


def quote_lines(text: str) -> str:
    """Return text of several lines as a TOML string, its first line below the quotes."""
    escaped = text.replace("\\", "\\\\").replace('"""', '""\\"')
    return f'"""\n{escaped}\n"""'


def write_length(value: Length, units: Units) -> str:
    """Return a length as text that reads back as the same: ``4 1/4"``, ``7.5 mm``.

    A denominator of more than nine figures, which no ruler and no sum of ruler sizes has, is rounded.
    """
    if units is Units.METRIC:
        return f"{_decimal(value / MM) or _mixed(value / MM)} mm"
    if _RULER % value.denominator == 0:
        return f'{_mixed(value)}"'
    if short := _decimal(value / MM, 3):
        return f"{short} mm"
    return f'{_decimal(value) or _mixed(value)}"'


def quote_length(value: Length, units: Units) -> str:
    """Return a length as a TOML string."""
    return quote_text(write_length(value, units))


def quote_long(value: Length, units: Units) -> str:
    """Return the length of something long, a bolt or the thread on a spool, in yards or metres if that is exact."""
    unit, word = (1000 * MM, "m") if units is Units.METRIC else (YARD, "yd")
    whole = value / unit
    return quote_text(f"{whole} {word}") if whole.denominator == 1 else quote_length(value, units)


def _mixed(value: Fraction) -> str:
    whole, part = divmod(value.limit_denominator(_LARGEST), 1)
    if not part:
        return str(whole)
    return f"{whole} {part}" if whole else str(part)


def _decimal(value: Fraction, digits: int = _DIGITS) -> str | None:
    """Return the decimal that is exactly the value, if so few digits behind the point do."""
    scaled = value * 10**digits
    if scaled.denominator != 1:
        return None
    whole, part = divmod(scaled.numerator, 10**digits)
    return f"{whole}.{part:0{digits}d}".rstrip("0").rstrip(".")
