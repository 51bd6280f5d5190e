"""What is proved, and what a check is."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass

from quarterturn.blocks import Blocks
from quarterturn.design import Design, Finding, Severity
from quarterturn.materials import Materials
from quarterturn.pieces import Bill
from quarterturn.setting import Setting
from quarterturn.steps import Steps


@dataclass(frozen=True, slots=True)
class Pattern:
    """The results of all stages for one design: everything that will be printed."""

    design: Design
    blocks: Blocks
    setting: Setting
    bill: Bill
    materials: Materials
    steps: Steps


@dataclass(frozen=True, slots=True)
class Check:
    """One check: a stable code, how bad a failure is, the trade's checklist numbers it answers, and the doing."""

    code: str
    severity: Severity
    answers: tuple[int, ...]
    title: str
    run: Callable[[Pattern], Iterable[Finding]]
