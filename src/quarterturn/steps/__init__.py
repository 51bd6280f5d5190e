"""6. All before -> Steps.

In:  a `Design`, its `Blocks`, `Setting`, `Bill` and `Materials`.
Out: the ordered operations from bolt to bound quilt, each consuming and producing labelled, sized, counted pieces.
Promise: a step holds everything needed to carry it out.
"""

from quarterturn.steps.build import build_steps
from quarterturn.steps.model import (
    Action,
    AddBorder,
    Bind,
    Chapter,
    Crease,
    CutApart,
    CutAway,
    CutOut,
    CutPanels,
    CutStrips,
    FuseRings,
    FuseToGround,
    JoinEnds,
    JoinPanels,
    LayerQuilt,
    LayOut,
    Pile,
    Placed,
    Product,
    QuiltLayers,
    SetAside,
    SewLine,
    Step,
    Steps,
    StitchEdge,
    Straighten,
    Subcut,
    TraceRings,
    Trim,
)
from quarterturn.steps.text import steps_text

__all__ = [
    "Action",
    "AddBorder",
    "Bind",
    "Chapter",
    "Crease",
    "CutApart",
    "CutAway",
    "CutOut",
    "CutPanels",
    "CutStrips",
    "FuseRings",
    "FuseToGround",
    "JoinEnds",
    "JoinPanels",
    "LayOut",
    "LayerQuilt",
    "Pile",
    "Placed",
    "Product",
    "QuiltLayers",
    "SetAside",
    "SewLine",
    "Step",
    "Steps",
    "StitchEdge",
    "Straighten",
    "Subcut",
    "TraceRings",
    "Trim",
    "build_steps",
    "steps_text",
]
