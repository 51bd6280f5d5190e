"""3. Blocks -> Setting.

In:  a `Design` and its `Blocks`.
Out: every unit at its place with its turn, the borders in order of sewing, what meets at each seam, and where the
     curves run.
Promise: the picture is drawn from sewn outlines only; it shows what the seams leave, not what was traced.
"""

from quarterturn.setting.arrange import arrange
from quarterturn.setting.closing import Closing, closing_turns
from quarterturn.setting.model import (
    BorderStrip,
    Face,
    Flow,
    Join,
    JoinMark,
    Meeting,
    PlacedUnit,
    Setting,
    Side,
    Stop,
    Trail,
    WidestStep,
)
from quarterturn.setting.picture import picture
from quarterturn.setting.quarters import MAP_CODES, map_findings
from quarterturn.setting.text import setting_text
from quarterturn.setting.upright import Saving, laid_upright, masters_for, other_ways

__all__ = [
    "MAP_CODES",
    "BorderStrip",
    "Closing",
    "Face",
    "Flow",
    "Join",
    "JoinMark",
    "Meeting",
    "PlacedUnit",
    "Saving",
    "Setting",
    "Side",
    "Stop",
    "Trail",
    "WidestStep",
    "arrange",
    "closing_turns",
    "laid_upright",
    "map_findings",
    "masters_for",
    "other_ways",
    "picture",
    "setting_text",
]
