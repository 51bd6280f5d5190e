"""5. Bill -> Materials.

In:  a `Design`, its `Blocks`, `Setting` and `Bill`.
Out: a cutting plan for each fabric, rows on the web, binding, backing, batting, thread, and the shopping list.
Promise: every plan says how long it is, how short it could be at best, and what the plain hand rule would need.
"""

from quarterturn.materials.model import (
    ClothPlan,
    Crosscut,
    JoinedRun,
    JoinMethod,
    Materials,
    PanelGroup,
    RunEnd,
    ShoppingLine,
    Split,
    StitchSum,
    StripGroup,
    WebPlan,
    WebRows,
)
from quarterturn.materials.plan import plan_curves, plan_materials
from quarterturn.materials.shopping import show_money
from quarterturn.materials.strips import EFFORT, QUICK, Effort
from quarterturn.materials.text import gap_percent, materials_text

__all__ = [
    "EFFORT",
    "QUICK",
    "ClothPlan",
    "Crosscut",
    "Effort",
    "JoinMethod",
    "JoinedRun",
    "Materials",
    "PanelGroup",
    "RunEnd",
    "ShoppingLine",
    "Split",
    "StitchSum",
    "StripGroup",
    "WebPlan",
    "WebRows",
    "gap_percent",
    "materials_text",
    "plan_curves",
    "plan_materials",
    "show_money",
]
