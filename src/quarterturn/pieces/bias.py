"""The square that a binding on the bias is cut from, round and round a tube.

A square a × b (a rectangle where the cloth is too narrow, a ≤ b) is cut at 45° from a corner, and the triangle moved to
the other end and sewn there: that leaves a slanting piece a high and b − 2·seam along its straight edges. These are
sewn to a tube, so it is a − 2·seam high, and (b − 2·seam)/√2 lie between its slanting edges. Rows run along those, each
√2·(a − 2·seam) long, and only whole rows give a strip of full width.

So a square gives at most (a − 2·seam)²/strip. A published sum, (a − seam)²/strip, takes off one allowance of the two
and leaves the last row out of account; other sources add 2″ or 3″ to the side, which is about what that takes.
"""

from __future__ import annotations

import math

from quarterturn.measure import Length, Units, cut_step, round_up

ROOT_TWO = math.sqrt(2)
HAIR = 1e-9


def bias_rows(along: Length, strip: Length, seam: Length) -> int:
    """Return how many whole rows of a strip there are in a tube from a sheet with this longer side."""
    return max(0, math.floor(float(along - 2 * seam) / (ROOT_TWO * float(strip)) + HAIR))


def bias_length(short: Length, along: Length, strip: Length, seam: Length, units: Units) -> Length:
    """Return the length of the strip from a sheet of short × longer side, down to the mark of a ruler."""
    exact = bias_rows(along, strip, seam) * ROOT_TWO * max(0.0, float(short - 2 * seam))
    step = cut_step(units)
    return math.floor(exact / float(step) + HAIR) * step


def bias_sheet(
    need: Length, strip: Length, usable: Length, seam: Length, units: Units
) -> tuple[Length, Length]:
    """Return the shorter and the longer side of the smallest sheet for a length of strip, on the ruler.

    It is a square, unless this is wider than the cloth: then a rectangle across its whole width.
    """
    side = bias_square(need, strip, seam, units)
    step = cut_step(units)
    short = usable // step * step
    if side <= usable or short <= 2 * seam:
        return side, side
    rows = math.ceil(float(need) / (ROOT_TWO * float(short - 2 * seam)) - HAIR)
    along = max(short, round_up(rows * ROOT_TWO * float(strip) + 2 * float(seam) - HAIR, step))
    while bias_length(short, along, strip, seam, units) < need:
        along += step
    return short, along


def bias_square(need: Length, strip: Length, seam: Length, units: Units) -> Length:
    """Return the side of the smallest square for a length of strip, on the ruler."""
    step = cut_step(units)
    side = round_up(math.sqrt(need * strip), step)
    while bias_length(side, side, strip, seam, units) < need:
        side += step
    return side
