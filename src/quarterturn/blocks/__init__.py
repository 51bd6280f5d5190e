"""2. Design -> Blocks.

In:  a `Design` whose recipes can be made.
Out: for each recipe its `Master`: the shape to trace, the cuts, and the kinds of unit they leave.
Promise: units are found by cutting the master's exact outlines, and equal ones by congruence, never declared.
"""

from quarterturn.blocks.draft import draft_blocks, draft_master
from quarterturn.blocks.edges import (
    is_own_mirror_image,
    mirror_turn,
    side_spans,
    turned_about_centre,
    turned_size,
)
from quarterturn.blocks.facts import Meeting, meetings
from quarterturn.blocks.model import (
    GROUND,
    SHAPE,
    Blocks,
    CurveFacts,
    FusedShape,
    Half,
    Layer,
    Lie,
    Master,
    Part,
    Rejoining,
    Span,
    Unit,
    half_part,
)
from quarterturn.blocks.pieced import PiecedPair, pieced_pair
from quarterturn.blocks.shown import shown_areas
from quarterturn.blocks.text import blocks_text

__all__ = [
    "GROUND",
    "SHAPE",
    "Blocks",
    "CurveFacts",
    "FusedShape",
    "Half",
    "Layer",
    "Lie",
    "Master",
    "Meeting",
    "Part",
    "PiecedPair",
    "Rejoining",
    "Span",
    "Unit",
    "blocks_text",
    "draft_blocks",
    "draft_master",
    "half_part",
    "is_own_mirror_image",
    "meetings",
    "mirror_turn",
    "pieced_pair",
    "shown_areas",
    "side_spans",
    "turned_about_centre",
    "turned_size",
]
