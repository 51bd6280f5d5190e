"""Designs for the tests of publish, run through the stages by hand."""

from __future__ import annotations

from dataclasses import dataclass

from quarterturn.blocks import Blocks, draft_blocks
from quarterturn.design import Design, read_design
from quarterturn.pieces import Bill, bill_of_pieces
from quarterturn.setting import Setting, arrange

MOONS = """
format = 1
title = "Pocket of Moons"
units = "inch"
[fabrics.A]
name = "oyster"
colour = "#efe6d8"
[fabrics.B]
name = "ink"
colour = "#22304a"
[recipes.moon]
kind = "circle cut both ways"
finished = 'FINISHED'
shape = SHAPE
curve = "CURVE"
[colourways.a]
recipe = "moon"
ground = "A"
shape = "B"
[colourways.b]
recipe = "moon"
ground = "B"
shape = "A"
[setting]
kind = "straight"
map = '''
MAP
'''
[[borders]]
fabric = "B"
width = '2"'
[binding]
fabric = "B"
[backing]
fabric = "A"
[house]
paper = "PAPER"
"""


@dataclass(frozen=True)
class Stages:
    """What the first stages make of a design."""

    design: Design
    blocks: Blocks
    setting: Setting
    bill: Bill


def moons(
    finished: str = '4 1/4"',
    shape: str = "{ diameter = '7\"' }",
    curve: str = "as drawn",
    cells: str = "a2 b3\nb1 a0",
    paper: str = "letter",
) -> Stages:
    """Return a small quilt of one recipe in two colourways."""
    text = MOONS.replace("FINISHED", finished).replace("SHAPE", shape).replace("CURVE", curve)
    return stages(text.replace("MAP", cells).replace("PAPER", paper))


def stages(text: str) -> Stages:
    """Run a design that has no findings as far as the bill."""
    reading = read_design(text, "design.toml")
    assert reading.design, reading.findings
    blocks = draft_blocks(reading.design)
    setting = arrange(reading.design, blocks)
    return Stages(reading.design, blocks, setting, bill_of_pieces(reading.design, blocks, setting))
