"""Shapes nested on fusible web, or on cloth that was fused first: in hollows of others, in scraps, on roll or sheets.

In:  shapes (an outline, what is hollow in it, how many, and how they may be turned), the gap between outlines, and
     the width of the roll, or the size of the sheets.
Out: a `Nesting`: a place for every shape, the length, a length below which no nesting can stay, what plain rows would
     take, and the hollows that remain with what would still fit them.
Promise: every nesting is checked apart from how it was found, and is never longer than plain rows. The same input gives
     the same nesting, since work is counted; only a search that is asked for by the second does not promise that.
"""

from quarterturn.materials.nesting.checking import Checker
from quarterturn.materials.nesting.model import STEP, TOUCH, Centre, Nesting, Place, Scrap, Shape
from quarterturn.materials.nesting.nest import (
    any_held,
    fitting,
    lower_bound,
    nest_roll,
    nest_sheets,
    whole_centres,
)
from quarterturn.materials.nesting.placing import EFFORT, QUICK, Effort

__all__ = [
    "EFFORT",
    "QUICK",
    "STEP",
    "TOUCH",
    "Centre",
    "Checker",
    "Effort",
    "Nesting",
    "Place",
    "Scrap",
    "Shape",
    "any_held",
    "fitting",
    "lower_bound",
    "nest_roll",
    "nest_sheets",
    "whole_centres",
]
