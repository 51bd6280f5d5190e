"""The spine: every stage in order, from the text of a design to a proved pattern."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from quarterturn.blocks import Blocks, draft_blocks
from quarterturn.design import Design, Finding, locate, read_design
from quarterturn.materials import plan_materials
from quarterturn.pieces import bill_of_pieces
from quarterturn.proof import Pattern, check_pattern
from quarterturn.setting import arrange, laid_upright, map_findings
from quarterturn.steps import build_steps

Watch = Callable[[str], None]
"""Told the name of each stage as it begins."""


@dataclass(frozen=True, slots=True)
class Job:
    """What became of a design: its pattern, or None where the findings forbid making one."""

    pattern: Pattern | None
    findings: tuple[Finding, ...]


def run(text: str | bytes, name: str = "design.toml", watch: Watch = lambda stage: None) -> Job:
    """Run all stages on the text of a design file called `name`; never raises for what the file says.

    Findings of the checks are given the lines of the keys that they name, as those of the reader are.
    """
    watch("design")
    reading = read_design(text, name)
    if reading.design is None:
        return Job(None, reading.findings)
    plain = text if isinstance(text, str) else text.decode("utf-8-sig")
    watch("blocks")
    blocks = draft_blocks(reading.design)
    if unknown := map_findings(reading.design, blocks):
        return Job(None, (*reading.findings, *locate(plain, unknown)))
    pattern = make_pattern(reading.design, watch, blocks)
    watch("proof")
    return Job(pattern, (*reading.findings, *locate(plain, check_pattern(pattern))))


def make_pattern(design: Design, watch: Watch = lambda stage: None, blocks: Blocks | None = None) -> Pattern:
    """Run the stages between a design and its proof; the map must name units that the blocks have."""
    blocks = blocks or draft_blocks(design)
    watch("setting")
    design = laid_upright(design, blocks)
    setting = arrange(design, blocks)
    watch("pieces")
    bill = bill_of_pieces(design, blocks, setting)
    watch("materials")
    materials = plan_materials(design, blocks, setting, bill)
    watch("steps")
    steps = build_steps(design, blocks, setting, bill, materials)
    return Pattern(design, blocks, setting, bill, materials, steps)
