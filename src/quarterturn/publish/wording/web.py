"""What is said of the web besides its tracings: how much is saved, how good that is, which centres remain."""

from __future__ import annotations

import math
from fractions import Fraction

from quarterturn.design import Design
from quarterturn.materials import WebCentre, WebPlan, ruler_step, web_gap_percent
from quarterturn.measure import Length, show_cloth, show_count, show_length
from quarterturn.proof import Pattern
from quarterturn.publish.wording.names import length, rectangle

PROVED = Fraction(1, 1000)
"""What a plan may take above the bound, in inches, and still be the shortest: bounds are rounded down."""

ZERO = Length(0)

ROUNDED = Fraction(1, 10**6)
"""In inches: rooms are measured from curves, and may be off by so little."""


def on_ruler(design: Design, value: Length | float) -> str:
    """Print a place on the web: always to the step of a ruler that it was brought to."""
    return show_length(value, design.units, sixteenths=True)


def room_side(design: Design, side: Length, count: int = 1, gap: Length = ZERO, within: Length = ZERO) -> str:
    """Print a side of the room of a tracing, rounded up to the step of a ruler.

    Where so many sides, a gap between them, fill what they lie within so that they would not fit when rounded up, it
    is rounded down, and told to be a little more.
    """
    step = ruler_step(design.units)
    shown = math.ceil((side - ROUNDED) / step) * step
    if within and shown > side + ROUNDED and count * (shown + gap) - gap > within:
        return f"a little over {on_ruler(design, shown - step)}"
    return on_ruler(design, shown)


def web_name(design: Design, web: WebPlan) -> str:
    """Print what web is asked for in a shop."""
    if web.sheet:
        return f"Paper-backed fusible web, sheets of {rectangle(design, web.web_width, web.sheet)}"
    return f"Paper-backed fusible web, {length(design, web.web_width)} wide"


def web_size(design: Design, web: WebPlan) -> str:
    """Print the width of the web, or the sides of a sheet."""
    return rectangle(design, web.web_width, web.sheet) if web.sheet else length(design, web.web_width)


def web_amount(design: Design, web: WebPlan, bought: Length | None = None) -> str:
    """Print how much web is bought: a length as a shop cuts it, or a number of sheets."""
    bought = web.bought if bought is None else bought
    return show_count(int(bought / web.sheet), "sheet") if web.sheet else show_cloth(bought, design.units)


def web_taken(design: Design, web: WebPlan, taken: Length) -> str:
    """Print how much web tracings take: a length, or a number of sheets."""
    return show_count(int(taken / web.sheet), "sheet") if web.sheet else length(design, taken)


def web_sentence(pattern: Pattern) -> str:
    """Return how much web the tracings take."""
    web = pattern.materials.web
    return f"The tracings take {web_taken(pattern.design, web, web.used_length)} of web."


def web_row(pattern: Pattern) -> tuple[str, ...]:
    """Return how good the plan of the web is: what it takes, what no way of laying can save, what plain rows take."""
    design, web = pattern.design, pattern.materials.web
    taken, plain = (web_taken(design, web, each) for each in (web.used_length, web.plain_length))
    if web.used_length - web.bound <= PROVED:
        return "Web", taken, "No plan takes less", plain
    least, gap = web_taken(design, web, web.bound), math.ceil(web_gap_percent(web))
    return "Web", taken, f"No plan can take less than {least}: this one takes at most {gap} % more", plain


CENTRE_HEADS = ("Cut out of", "Count", "Size", "Circle at most", "Of this quilt, one holds")


def centre_rows(pattern: Pattern) -> tuple[tuple[str, ...], ...]:
    """Return a row for each kind of centre that remains, those with the most room first."""
    return tuple(_centre(pattern.design, centre) for centre in pattern.materials.web.centres)


def _centre(design: Design, centre: WebCentre) -> tuple[str, ...]:
    size = " × ".join(on_ruler(design, side) for side in (centre.width, centre.height))
    held = f", less {_listed(centre.holds)} traced in it" if centre.holds else ""
    fits = " or ".join(f"({most}) {shape}" for shape, most in centre.fits) or "nothing more"
    return f"“{centre.shape}”", f"({centre.count})", f"{size}{held}", on_ruler(design, centre.disc), fits


def _listed(names: tuple[str, ...]) -> str:
    counted = {name: names.count(name) for name in names}
    return ", ".join(f"({count}) “{name}”" for name, count in counted.items())
