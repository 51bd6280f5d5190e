"""5. Bill -> Materials.

In:  a `Design`, its `Blocks`, `Setting` and `Bill`.
Out: a cutting plan for each fabric, tracings on the web, binding, backing, batting, thread, and the shopping list.
Promise: every plan says how long it is, how short it could be at best, and what the plain hand rule would need.
"""

from quarterturn.materials.model import (
    ClothPlan,
    Crosscut,
    JoinedRun,
    JoinMethod,
    Materials,
    PanelGroup,
    ParcelLayout,
    ParcelPlan,
    ParcelStock,
    RunEnd,
    ShoppingLine,
    Split,
    StitchSum,
    StripGroup,
    WebPlan,
    WebRows,
)
from quarterturn.materials.nested import NestedWeb, TracedPlace, WebCentre
from quarterturn.materials.parcels import plan_cloth
from quarterturn.materials.plan import plan_curves, plan_materials
from quarterturn.materials.shopping import show_bought, show_money
from quarterturn.materials.staggered import Stagger
from quarterturn.materials.strips import EFFORT, QUICK, Effort
from quarterturn.materials.text import gap_percent, materials_text
from quarterturn.materials.web_nesting import drawn_motion, ruler_step
from quarterturn.materials.web_text import web_gap_percent

__all__ = [
    "EFFORT",
    "QUICK",
    "ClothPlan",
    "Crosscut",
    "Effort",
    "JoinMethod",
    "JoinedRun",
    "Materials",
    "NestedWeb",
    "PanelGroup",
    "ParcelLayout",
    "ParcelPlan",
    "ParcelStock",
    "RunEnd",
    "ShoppingLine",
    "Split",
    "Stagger",
    "StitchSum",
    "StripGroup",
    "TracedPlace",
    "WebCentre",
    "WebPlan",
    "WebRows",
    "drawn_motion",
    "gap_percent",
    "materials_text",
    "plan_cloth",
    "plan_curves",
    "plan_materials",
    "ruler_step",
    "show_bought",
    "show_money",
    "web_gap_percent",
]
