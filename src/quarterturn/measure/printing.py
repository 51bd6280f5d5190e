"""Print lengths in the trade's style: ``9½"`` and never 9.5", ``24 cm``, ``1¼ yards``."""

from __future__ import annotations

from fractions import Fraction

from quarterturn.measure.lengths import MM, YARD, Length, Units
from quarterturn.measure.rounding import quote, round_nearest

_SIGNS = {
    Fraction(1, 2): "½", Fraction(1, 4): "¼", Fraction(3, 4): "¾", Fraction(1, 8): "⅛",
    Fraction(3, 8): "⅜", Fraction(5, 8): "⅝", Fraction(7, 8): "⅞",
}  # fmt: skip
_RAISED = str.maketrans("0123456789", "⁰¹²³⁴⁵⁶⁷⁸⁹")
_LOWERED = str.maketrans("0123456789", "₀₁₂₃₄₅₆₇₈₉")


def show_length(value: Length | float, units: Units, *, sixteenths: bool = False) -> str:
    """Print a length: ``9½"`` to the nearest 1/8" (1/16" where asked), or ``24.5 cm`` to the millimetre.

    Whatever is to be cut has been rounded by `cut_up` before; this quotes. Lengths under 2 cm are printed
    in millimetres, to the tenth, as seam allowances are.
    """
    if units is Units.INCH:
        step = Fraction(1, 16) if sixteenths else Fraction(1, 8)
        return f'{_mixed(round_nearest(value, step))}"'
    tenths = round_nearest(value, MM / 10)
    if abs(tenths) < 20 * MM:
        return f"{_decimal(tenths / MM)} mm"
    return f"{_decimal(quote(value, units) / MM / 10)} cm"


def show_square(side: Length, units: Units) -> str:
    """Print the size of a square, which needs one number."""
    return show_length(side, units)


def show_rectangle(width: Length | float, height: Length | float, units: Units) -> str:
    """Print width × height with the unit on both numbers: ``2½" × 4½"``."""
    return f"{show_length(width, units)} × {show_length(height, units)}"


def show_cloth(length: Length, units: Units) -> str:
    """Print a length of cloth to buy: ``¾ yard``, ``1¼ yards``, ``1.2 m``. It has been rounded by `buy_up`."""
    if units is Units.METRIC:
        return f"{float(round_nearest(length, 100 * MM) / MM / 1000):.1f} m"
    yards = round_nearest(length / YARD, Fraction(1, 8))
    return f"{_mixed(yards)} {'yards' if yards > 1 or not yards else 'yard'}"


def show_area(square_inches: float, units: Units) -> str:
    """Print an area with two figures behind the point; areas are for the designer, not for the sewer."""
    if units is Units.METRIC:
        return f"{square_inches * 6.4516:.2f} cm²"
    return f"{square_inches:.2f} sq in"


def show_count(count: int, noun: str, plural: str | None = None) -> str:
    """Print ``1 unit``, ``64 units``."""
    return f"{count:,} {noun if count == 1 else plural or noun + 's'}"


def show_plain(value: Length | float, units: Units) -> str:
    """Print a length with the figures that a check needs: ``3.2411"`` or ``82.32 mm``; never in a pattern."""
    if units is Units.INCH:
        return f'{_decimal(round_nearest(value, Fraction(1, 10000)))}"'
    return f"{_decimal(round_nearest(Fraction(value) / MM, Fraction(1, 100)))} mm"


def show_exact(value: Length, units: Units) -> str:
    """Print a length that has not been rounded: ``4³⁄₁₆"`` as far as rulers go, else ``about 7¹³⁄₁₆" (7.7942")``."""
    if value < 0:
        return f"-{show_exact(-value, units)}"
    if units is Units.INCH and (value * 16).denominator != 1:
        return f"about {show_length(value, units, sixteenths=True)} ({show_plain(value, units)})"
    if units is Units.METRIC and (value / MM * 10).denominator != 1:
        return f"{float(value / MM):.2f} mm"
    return show_length(value, units, sixteenths=True)


def _mixed(value: Fraction) -> str:
    sign, value = ("−", -value) if value < 0 else ("", value)
    whole, part = divmod(value, 1)
    if not part:
        return f"{sign}{whole}"
    figure = _SIGNS.get(part) or (
        f"{str(part.numerator).translate(_RAISED)}⁄{str(part.denominator).translate(_LOWERED)}"
    )
    return f"{sign}{whole or ''}{figure}"


def _decimal(value: Fraction) -> str:
    text = f"{float(value):.4f}".rstrip("0").rstrip(".")
    return "0" if text in ("", "-0") else text.replace("-", "−")
