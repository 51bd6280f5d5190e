"""Put all steps in order and number them."""

from __future__ import annotations

import itertools

from quarterturn.blocks import Blocks
from quarterturn.design import Design
from quarterturn.materials import Materials
from quarterturn.pieces import Bill
from quarterturn.setting import Setting
from quarterturn.steps.assembly import assembly_steps, border_steps
from quarterturn.steps.cutting import cutting_steps
from quarterturn.steps.finishing import finishing_steps
from quarterturn.steps.masters import master_steps
from quarterturn.steps.model import Steps
from quarterturn.steps.shapes import shape_steps


def build_steps(design: Design, blocks: Blocks, setting: Setting, bill: Bill, materials: Materials) -> Steps:
    """Return every step from bolt to bound quilt."""
    drafts = itertools.chain(
        cutting_steps(bill, materials),
        shape_steps(design, blocks, bill, materials),
        master_steps(design, blocks, bill),
        assembly_steps(design, setting),
        border_steps(design, setting, bill),
        finishing_steps(design, setting, bill, materials),
    )
    return Steps(tuple(d.numbered(number) for number, d in enumerate(drafts, start=1)))
