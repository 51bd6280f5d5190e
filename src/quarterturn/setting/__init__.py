"""3. Blocks -> Setting.

In:  a `Design` and its `Blocks`.
Out: every unit at its place with its turn, the borders in order of sewing, and what meets at each seam.
Promise: the picture is drawn from sewn outlines only; it shows what the seams leave, not what was traced.
"""

from quarterturn.setting.arrange import arrange
from quarterturn.setting.model import (
    BorderStrip,
    Face,
    Join,
    JoinMark,
    Meeting,
    PlacedUnit,
    Setting,
    Side,
)
from quarterturn.setting.picture import picture
from quarterturn.setting.quarters import MAP_CODES, map_findings
from quarterturn.setting.text import setting_text

__all__ = [
    "MAP_CODES",
    "BorderStrip",
    "Face",
    "Join",
    "JoinMark",
    "Meeting",
    "PlacedUnit",
    "Setting",
    "Side",
    "arrange",
    "map_findings",
    "picture",
    "setting_text",
]
