"""Beds: known mattresses, and the arithmetic of how many repeats of a map a quilt needs to cover one.

A quilt of n repeats measures fixed + n · step each way, where what is fixed are its borders (and whatever else does
not repeat). "Standard" sizes of quilts differ by up to 20 inches from chart to chart, so none are given here: a
wanted size is always reckoned from a mattress and a drop.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from itertools import product
from types import MappingProxyType

from quarterturn.measure import MM, Length, Units, inches, mm

DROP = {Units.INCH: inches(12), Units.METRIC: mm(300)}
"""The drop where none is stated: to below the mattress (common practice; published charts use 12 inches)."""
WITHIN = {Units.INCH: inches(2), Units.METRIC: mm(50)}
"""How far a quilt may be from the wanted size where nothing else is stated (no source)."""
BORDER_STEP = {Units.INCH: inches(0, 1, 4), Units.METRIC: 5 * MM}
NARROWEST, WIDEST = 4, 48
"""Steps between which a border may be changed to come nearer to a bed: 1 to 12 inches, 2 to 24 cm (no source)."""

US_BEDS: Mapping[str, tuple[Length, Length]] = MappingProxyType(
    {
        "crib": (inches(28), inches(52, 3, 8)),
        "twin": (inches(39), inches(75)),
        "twin XL": (inches(39), inches(80)),
        "full": (inches(54), inches(75)),
        "queen": (inches(60), inches(80)),
        "king": (inches(76), inches(80)),
        "California king": (inches(72), inches(84)),
    }
)
"""Trade sizes, of which mattresses as made are up to 1 inch short (thesprucecrafts.com 4145709; mattressmill.com).
A crib is the inside of a full-size one (16 CFR 1219). Some charts have a king of 78 × 80 (quiltersreview.com)."""

UK_BEDS: Mapping[str, tuple[Length, Length]] = MappingProxyType(
    {
        "UK small single": (mm(750), mm(1900)),
        "UK single": (mm(900), mm(1900)),
        "UK small double": (mm(1200), mm(1900)),
        "UK double": (mm(1350), mm(1900)),
        "UK king": (mm(1500), mm(2000)),
        "UK super king": (mm(1800), mm(2000)),
        "UK emperor": (mm(2000), mm(2000)),
    }
)
"""As five dealers agree (barkerandstonehouse.co.uk, winstonsbeds.com, aspirestore.co.uk among them)."""

CONTINENTAL_BEDS: Mapping[str, tuple[Length, Length]] = MappingProxyType(
    {f"continental {width}": (mm(10 * width), mm(2000)) for width in (90, 140, 160, 180)}
)
"""160 × 200 cm: mynextmattress.co.uk; the others from memory."""

BEDS: Mapping[str, tuple[Length, Length]] = MappingProxyType({**US_BEDS, **UK_BEDS, **CONTINENTAL_BEDS})
"""Width and length of every known mattress, by name."""


@dataclass(frozen=True, slots=True)
class Growth:
    """How a quilt grows in one direction: n repeats measure fixed + n · step."""

    fixed: Length
    step: Length

    def at(self, repeats: int) -> Length:
        """Return what so many repeats measure."""
        return self.fixed + repeats * self.step

    def repeats_over(self, wanted: Length) -> int:
        """Return the fewest repeats, at least one, that measure as much as is wanted; one where they add nothing."""
        if not self.step:
            return 1
        return max(1, math.ceil((wanted - self.fixed) / self.step))


@dataclass(frozen=True, slots=True)
class Fit:
    """A quilt that comes near a wanted size: repeats each way, its size, and a new width of the outermost border.

    `border` is None where it stays as it is, or there is none.
    """

    across: int
    down: int
    width: Length
    height: Length
    border: Length | None = None

    def off(self, wanted: tuple[Length, Length]) -> Length:
        """Return how far the quilt is from a wanted size, in the direction in which it is further."""
        return max(abs(self.width - wanted[0]), abs(self.height - wanted[1]))


def fit_over(
    wanted: tuple[Length, Length], across: Growth, down: Growth, border: Length | None, step: Length
) -> Fit:
    """Return the fit with the fewest repeats that is nowhere smaller than is wanted.

    The outermost border becomes as much narrower, in whole steps, as the quilt then still allows. Where repeats add
    nothing it becomes as much wider as is wanted, if a border may be so wide.
    """
    columns, rows = across.repeats_over(wanted[0]), down.repeats_over(wanted[1])
    plain = Fit(columns, rows, across.at(columns), down.at(rows))
    spare = min(plain.width - wanted[0], plain.height - wanted[1])
    return _with_border(plain, border, -(spare / 2 // step), step)


def nearest_fit(
    wanted: tuple[Length, Length],
    across: Growth,
    down: Growth,
    border: Length | None,
    step: Length,
    within: Length,
) -> Fit:
    """Return the fit that comes nearest, larger or smaller; one that keeps the border, where that is near enough."""
    fits = []
    ways = (_about(across.repeats_over(wanted[0])), _about(down.repeats_over(wanted[1])))
    for columns, rows in product(*ways):
        plain = Fit(columns, rows, across.at(columns), down.at(rows))
        over = (plain.width - wanted[0]) + (plain.height - wanted[1])
        fits += [plain, _with_border(plain, border, -round(over / 4 / step), step)]
    near = [fit for fit in fits if fit.off(wanted) <= within]
    if near:
        return min(near, key=lambda fit: (fit.border is not None, fit.off(wanted)))
    return min(fits, key=lambda fit: fit.off(wanted))


def _about(repeats: int) -> tuple[int, ...]:
    return (repeats, repeats - 1) if repeats > 1 else (repeats,)


def _with_border(fit: Fit, border: Length | None, steps: int, step: Length) -> Fit:
    """Return the fit with its outermost border so many steps wider, or narrower, as far as a border goes."""
    if border is None:
        return fit
    fewest, most = math.ceil(NARROWEST - border / step), math.floor(WIDEST - border / step)
    wider = max(min(steps, max(most, 0)), min(fewest, 0)) * step
    if not wider:
        return fit
    return Fit(fit.across, fit.down, fit.width + 2 * wider, fit.height + 2 * wider, border + wider)
