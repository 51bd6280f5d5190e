"""Checks of the borders (group F of the trade's list)."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

from quarterturn.design import Border, Design, Direction, Severity, dotted
from quarterturn.measure import Length
from quarterturn.pieces import Purpose
from quarterturn.proof.checks.fault import REBUILD, Fault, check, tell
from quarterturn.proof.checks.finished import centre_size
from quarterturn.proof.model import Pattern
from quarterturn.setting import Side

Strip = tuple[str, Length, Length]
"""Fabric, length and width as cut."""


def border_strips(pattern: Pattern) -> Iterator[Fault]:
    """Recalculate the butted borders: the first pair as long as the top, the second covering its ends."""
    units = pattern.design.units
    wanted, listed = _wanted(pattern.design), Counter[Strip]()
    for piece in pattern.bill.pieces:
        if piece.purpose is Purpose.BORDER:
            listed[piece.fabric, _whole(piece.length), piece.width] += piece.count - piece.spare
    for strip in sorted(wanted.keys() | listed.keys()):
        if wanted[strip] != listed[strip]:
            fabric, length, width = strip
            sentence = (
                f"{wanted[strip]} border strips of fabric {fabric}, {tell(width, units)} × {tell(length, units)}, "
                f"are needed; the list has {listed[strip]}."
            )
            yield Fault("borders", sentence, REBUILD, f"fabric {fabric}")


def _wanted(design: Design) -> Counter[Strip]:
    seams, wanted = 2 * design.making.seam, Counter[Strip]()
    width, height = centre_size(design)
    for border in design.borders:
        upright = height if border.sides_first else height + 2 * border.width
        level = width + 2 * border.width if border.sides_first else width
        for length in (upright, level):
            wanted[border.fabric, _whole(length + seams), border.width + seams] += 2
        width, height = width + 2 * border.width, height + 2 * border.width
    return wanted


def _whole(length: Length) -> Length:
    """Return a length without the noise of one that is irrational, known to 10⁻⁹ inch."""
    return length.limit_denominator(10**6)


def border_order(pattern: Pattern) -> Iterator[Fault]:
    """Ask that border strips are placed and sewn in pairs, in the stated order."""
    setting = [strip.side for strip in pattern.setting.borders]
    wanted = [side for border in pattern.design.borders for side in _sides(border)]
    if setting != wanted:
        told = ", ".join(side.value for side in setting)
        yield Fault("borders", f"The borders are sewn {told}; not in pairs as stated.", REBUILD)


def _sides(border: Border) -> list[Side]:
    sides, ends = [Side.LEFT, Side.RIGHT], [Side.TOP, Side.BOTTOM]
    return sides + ends if border.sides_first else ends + sides


def border_narrow(pattern: Pattern) -> Iterator[Fault]:
    """Tell of a border narrower than its own two seam allowances: it cannot be pressed flat."""
    design, units = pattern.design, pattern.design.units
    for number, border in enumerate(design.borders):
        if border.width < 2 * design.making.seam:
            sentence = (
                f"Border {number + 1} finishes {tell(border.width, units)}, and the allowances behind it take "
                f"{tell(2 * design.making.seam, units)}."
            )
            remedy = f"Make it {tell(2 * design.making.seam, units)} wide or wider."
            yield Fault(dotted("borders", number, "width"), sentence, remedy)


def border_print(pattern: Pattern) -> Iterator[Fault]:
    """Tell of a print that stands upright in two strips of a border and lies on its side in the others."""
    for number, border in enumerate(pattern.design.borders):
        fabric = pattern.design.fabric(border.fabric)
        if fabric.direction is not Direction.NONE:
            sentence = (
                f"Border {number + 1} is of fabric {fabric.letter}, whose print is {fabric.direction.value}; all its "
                "strips are cut across the cloth, so the print turns at each corner."
            )
            remedy = "Choose a print without direction, or say in `about` that the turn is meant."
            yield Fault(dotted("borders", number, "fabric"), sentence, remedy)


BORDERS = (
    check(
        "border-strips", Severity.STOPS, (76, 77), "Border strips have the length of the top.", border_strips
    ),
    check("border-order", Severity.STOPS, (76,), "Borders go on in their stated order.", border_order),
    check("border-narrow", Severity.CONFUSES, (76,), "A border is wider than its seams.", border_narrow),
    check("border-print-turns", Severity.CONFUSES, (94,), "A border's print runs all one way.", border_print),
)
