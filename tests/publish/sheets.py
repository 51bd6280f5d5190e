"""A sheet with every kind of mark, for the tests of pens."""

from __future__ import annotations

import math

from quarterturn.geometry import Arc, Cubic, Line, Motion, circle, disc, offset_path, polygon
from quarterturn.geometry import Region as Cloth
from quarterturn.publish import Area, Ink, Sheet, Stroke, Text, Use

SOLID = Ink(None, "#22304a", 0.25)
DASHED = Ink(None, "#22304a", 0.25, (2.0, 1.0))
RING = Cloth((circle(20, 50 + 50j), circle(10, 50 + 50j).reversed()))


def every_mark(text: str = "9½\" & <b>'moon'</b> ⅛ × °") -> Sheet:
    """Return a sheet of 120 × 100 mm."""
    return Sheet(
        width=120,
        height=100,
        marks=(
            Area(RING, Ink("#efe6d8", "#22304a", 0.3)),
            Area(offset_path(circle(30, 50 + 50j), 2.0), DASHED),
            Stroke((Line(5 + 5j, 15 + 5j), Cubic(15 + 5j, 20 + 5j, 20 + 10j, 15 + 10j)), SOLID),
            Stroke((Arc(100 + 80j, 12.5, math.pi, math.pi / 2),), SOLID),
            Text(60 + 95j, text, 4, "middle", -30, bold=True),
            Use("leaf", Motion(1j, 100 + 20j)),
            Use("leaf", Motion(1, 100 + 50j, mirrored=True)),
        ),
        title="A & B <c>",
        alt='A ring, "lines" & leaves.',
        symbols={
            "leaf": (Area(Cloth((polygon((0j, 8 + 0j, 8 + 4j)),)), Ink("#aa0000")), Area(disc(1), SOLID))
        },
    )
