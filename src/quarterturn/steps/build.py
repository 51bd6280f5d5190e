"""Put all steps in order and number them."""

from __future__ import annotations

import itertools

from quarterturn.blocks import Blocks
from quarterturn.design import Design
from quarterturn.materials import Materials
from quarterturn.pieces import Bill
from quarterturn.setting import Setting
from quarterturn.steps.cutting import cutting_steps
from quarterturn.steps.finishing import finishing_steps
from quarterturn.steps.masters import master_steps
from quarterturn.steps.model import Steps
from quarterturn.steps.naming import Names
from quarterturn.steps.panels import panel_steps
from quarterturn.steps.shapes import shape_steps
from quarterturn.steps.tree import top_steps, triangle_steps


def build_steps(design: Design, blocks: Blocks, setting: Setting, bill: Bill, materials: Materials) -> Steps:
    """Return every step from bolt to bound quilt."""
    names = Names(design, setting, bill)
    drafts = itertools.chain(
        cutting_steps(bill, materials, design.making.layers),
        triangle_steps(names),
        shape_steps(design, blocks, bill, materials),
        master_steps(design, blocks, bill),
        panel_steps(names, blocks),
        top_steps(names),
        finishing_steps(design, setting, bill, materials),
    )
    return Steps(tuple(d.numbered(number) for number, d in enumerate(drafts, start=1)))
