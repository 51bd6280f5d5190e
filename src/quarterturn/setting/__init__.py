"""3. Blocks -> Setting.

In:  a `Design` and its `Blocks`.
Out: the tree of all that is sewn by itself, every piece of cloth of it at its place, what meets at each seam, and
     where the curves run.
Promise: the picture is drawn from sewn outlines only; it shows what the seams leave, not what was traced.
"""

from quarterturn.setting.arrange import arrange, lay_out
from quarterturn.setting.building import build_top
from quarterturn.setting.closing import Closing, closing_turns
from quarterturn.setting.curves import Curves
from quarterturn.setting.fitting import (
    fit_to,
    growth,
    nearest_to,
    outermost_of,
    quilt_size,
    repeats_of,
    why_once,
    with_repeats,
)
from quarterturn.setting.framing import frames_of
from quarterturn.setting.lattice import EIGHTH, corner_triangles, places_on_point, sashes, side_triangles
from quarterturn.setting.misfits import FIT_CODES
from quarterturn.setting.model import (
    WAYS,
    Face,
    Flow,
    Join,
    JoinMark,
    Meeting,
    NodeKind,
    PlacedCloth,
    PlacedNode,
    PlacedUnit,
    Setting,
    Side,
    Stop,
    Trail,
    WidestStep,
)
from quarterturn.setting.picture import picture
from quarterturn.setting.placing import is_sashing, place_all, place_nodes, turned_in_place
from quarterturn.setting.quarters import MAP_CODES, map_findings
from quarterturn.setting.stretching import Stretched, stretched_to
from quarterturn.setting.strips import corner_places, mitred_strip, strip_places
from quarterturn.setting.text import setting_text
from quarterturn.setting.tree import (
    Child,
    ClothUse,
    Frame,
    Framed,
    Grid,
    Motif,
    Node,
    OneUnit,
    OnPoint,
    Panel,
    PlainCloth,
)
from quarterturn.setting.upright import Saving, laid_upright, masters_for, other_ways

__all__ = [
    "EIGHTH",
    "FIT_CODES",
    "MAP_CODES",
    "WAYS",
    "Child",
    "Closing",
    "ClothUse",
    "Curves",
    "Face",
    "Flow",
    "Frame",
    "Framed",
    "Grid",
    "Join",
    "JoinMark",
    "Meeting",
    "Motif",
    "Node",
    "NodeKind",
    "OnPoint",
    "OneUnit",
    "Panel",
    "PlacedCloth",
    "PlacedNode",
    "PlacedUnit",
    "PlainCloth",
    "Saving",
    "Setting",
    "Side",
    "Stop",
    "Stretched",
    "Trail",
    "WidestStep",
    "arrange",
    "build_top",
    "closing_turns",
    "corner_places",
    "corner_triangles",
    "fit_to",
    "frames_of",
    "growth",
    "is_sashing",
    "laid_upright",
    "lay_out",
    "map_findings",
    "masters_for",
    "mitred_strip",
    "nearest_to",
    "other_ways",
    "outermost_of",
    "picture",
    "place_all",
    "place_nodes",
    "places_on_point",
    "quilt_size",
    "repeats_of",
    "sashes",
    "setting_text",
    "side_triangles",
    "stretched_to",
    "strip_places",
    "turned_in_place",
    "why_once",
    "with_repeats",
]
