"""`show`: what a stage makes of a design."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import TYPE_CHECKING

import click

from quarterturn.cli.reading import Taken, design_file, made_pattern, one_size, run_file, take_in
from quarterturn.cli.telling import finding_record, tell_findings, tell_json

if TYPE_CHECKING:
    from quarterturn.proof import Pattern

FINDINGS = "findings"
STAGES = ("design", "blocks", "setting", "pieces", "materials", "steps", FINDINGS)


@click.command(short_help="Print what a stage makes of a design.")
@click.argument("stage", metavar="STAGE", type=click.Choice(STAGES))
@design_file
@one_size
@click.option("--json", "as_json", is_flag=True, help="Print it as JSON.")
def show(stage: str, file: str, size: str | None, as_json: bool) -> None:
    """Print what a stage makes of a design.

    STAGE is design, blocks, setting, pieces, materials, steps or findings.
    """
    taken = take_in(file)
    if stage == FINDINGS:
        _show_findings(taken, size, as_json)
        return
    pattern, _ = made_pattern(taken, size=size)
    if as_json:
        tell_json(stage_record(pattern, stage))
    else:
        click.echo(TEXTS[stage](pattern), nl=False)


def _show_findings(taken: Taken, size: str | None, as_json: bool) -> None:
    findings = run_file(taken, size=size).findings
    if as_json:
        tell_json([finding_record(finding) for finding in findings])
    else:
        tell_findings(taken.name, findings)


def stage_record(pattern: Pattern, stage: str) -> object:
    """Return what a stage made, as job.json has it."""
    from quarterturn.publish.tables import json_value

    return json_value(getattr(pattern, "bill" if stage == "pieces" else stage))


def _design_text(pattern: Pattern) -> str:
    from quarterturn.design import format_design

    return format_design(pattern.design)


def _blocks_text(pattern: Pattern) -> str:
    from quarterturn.blocks import blocks_text

    return blocks_text(pattern.blocks, pattern.design.units)


def _setting_text(pattern: Pattern) -> str:
    from quarterturn.setting import setting_text

    return setting_text(pattern.setting, pattern.design.units)


def _pieces_text(pattern: Pattern) -> str:
    from quarterturn.pieces import bill_text

    return bill_text(pattern.bill, pattern.design.units)


def _materials_text(pattern: Pattern) -> str:
    from quarterturn.materials import materials_text

    return materials_text(pattern.materials, pattern.design.units)


def _steps_text(pattern: Pattern) -> str:
    from quarterturn.steps import steps_text

    return steps_text(pattern.steps, pattern.design.units)


TEXTS: Mapping[str, Callable[[Pattern], str]] = {
    "design": _design_text,
    "blocks": _blocks_text,
    "setting": _setting_text,
    "pieces": _pieces_text,
    "materials": _materials_text,
    "steps": _steps_text,
}
"""The text form of each stage."""
