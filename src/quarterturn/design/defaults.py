"""The defaults, for inch and for metric patterns. Each is a setting of the file, shown and printed.

Common practice of the trade; where habits differ the commoner is taken. Metric patterns are drafted in metric:
these are sizes a metric ruler shows, not inches converted.
"""

from __future__ import annotations

from dataclasses import replace

from quarterturn.design.model import EdgeStitch, EdgeStitchKind, Fold, Making, Pressing
from quarterturn.measure import Length, Units, inches, mm

LARGE_MASTER = {Units.INCH: inches(8), Units.METRIC: mm(200)}
"""Masters up to this side are trimmed by the smaller allowance."""

SMALL_TRIM = {Units.INCH: inches(0, 1, 2), Units.METRIC: mm(10)}
LARGE_TRIM = {Units.INCH: inches(0, 3, 4), Units.METRIC: mm(20)}
BINDING_WIDTH = {
    Fold.DOUBLE: {Units.INCH: inches(2, 1, 2), Units.METRIC: mm(65)},
    Fold.SINGLE: {Units.INCH: inches(1, 1, 4), Units.METRIC: mm(35)},
}

STITCH = EdgeStitch(
    EdgeStitchKind.ZIGZAG, mm("1.5"), mm("1.4"), "50 wt cotton to match the shape", "70/10 sharp"
)
"""A fine zigzag of 1.5 mm by 1.4 mm (common practice, no source)."""


def default_trim(untrimmed: Length, units: Units) -> Length:
    """Return the trim allowance for a master whose units need this side in all."""
    small = untrimmed + SMALL_TRIM[units] <= LARGE_MASTER[units]
    return SMALL_TRIM[units] if small else LARGE_TRIM[units]


def default_making(units: Units) -> Making:
    """Return the making of a pattern whose file says nothing about it."""
    return _METRIC if units is Units.METRIC else _INCH


_INCH = Making(
    seam=inches(0, 1, 4),
    usable_width=inches(40),
    ring_out=inches(0, 1, 4),
    ring_in=inches(0, 1, 4),
    tracing_gap=inches(0, 1, 2),
    cut_away=inches(0, 1, 4),
    web_width=inches(17),
    binding_extra=inches(12),
    overage=inches(4),
    backing_seam=inches(0, 1, 2),
    squaring=inches(1),
    slack=inches(2),
    spare_masters=0,
    pressing=Pressing.OPPOSED,
    stitch=STITCH,
)
_METRIC = Making(
    seam=mm("7.5"),
    usable_width=mm(1000),
    ring_out=mm(5),
    ring_in=mm(5),
    tracing_gap=mm(10),
    cut_away=mm(5),
    web_width=mm(430),
    binding_extra=mm(300),
    overage=mm(100),
    backing_seam=mm(15),
    squaring=mm(25),
    slack=mm(50),
    spare_masters=0,
    pressing=Pressing.OPPOSED,
    stitch=replace(STITCH, bobbin=mm(55_000)),
    piece_squaring=mm(25),
)
