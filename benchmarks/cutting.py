"""Plan generated jobs of strips, and set their lengths beside the proved bound, the hand rule and a packer of boxes.

The packer, rectpack, lays boxes anywhere, not in strips that can be cut straight across, and turns all of them or
none: so it is asked only where all pieces may turn alike, and its shorter lengths are not always lengths that can be
cut.
"""

from __future__ import annotations

import random
from collections.abc import Sequence
from dataclasses import dataclass
from functools import partial
from importlib.util import find_spec
from statistics import mean

from benchmarks.timing import Row, milliseconds, row_of
from quarterturn.materials.bounds import hand_rule
from quarterturn.materials.kinds import Kind, Position
from quarterturn.materials.strips import StripPlan, plan_strips
from quarterturn.measure import Length, inches

JOBS = 80
MOST_BOXES = 300
"""More are too many for the packer."""


@dataclass(frozen=True, slots=True)
class Cutting:
    """A job: pieces of one fabric and its usable width."""

    kinds: tuple[Kind, ...]
    usable: Length


def generated(seed: int) -> Cutting:
    """Return a job as quilts have them: a few sizes in eighths, tens or hundreds of each, some prints directional."""
    draw = random.Random(seed)
    turning = draw.random() > 0.15
    kinds = [_kind(f"A{number}", draw, turning) for number in range(1, draw.randint(1, 15) + 1)]
    return Cutting(tuple(kinds), inches(draw.choice((40, 41, 42))))


def _kind(label: str, draw: random.Random, turning: bool) -> Kind:
    long = draw.randint(12, draw.choice((48, 96, 160)))
    wide = long if draw.random() < 0.4 else draw.randint(12, long)
    sides = inches(0, long, 8), inches(0, wide, 8)
    listed, turned = Position(*sides), Position(*reversed(sides))
    positions = (listed, turned) if turning and listed != turned else (listed,)
    return Kind(label, draw.choice((2, 4, 12, 20, 36, 64, 100)), positions)


def cutting_rows() -> list[Row]:
    """Time all jobs, and tell how near their plans are to what is proved."""
    jobs = [generated(seed) for seed in range(JOBS)]
    plans: list[StripPlan] = []
    times = [milliseconds(partial(_planned, job, plans)) for job in jobs]
    over = [float(plan.length / plan.bound - 1) for plan in plans]
    saved = [_saving(job, plan) for job, plan in zip(jobs, plans, strict=True)]
    proved = sum(plan.proved for plan in plans)
    return [
        row_of(
            f"{JOBS} jobs, each", times, f"{proved / JOBS:.0%} proved; the longest took {max(times):.0f} ms"
        ),
        Row("over the bound", 0, 0, f"{mean(over):.2%} in the mean, {max(over):.1%} at worst"),
        Row("saved of the hand rule", 0, 0, f"{mean(saved):.1%} in the mean, {max(saved):.0%} at best"),
        *_packed(jobs, plans),
    ]


def _planned(job: Cutting, plans: list[StripPlan]) -> None:
    plans.append(plan_strips(job.kinds, job.usable))


def _saving(job: Cutting, plan: StripPlan) -> float:
    return float(1 - plan.length / hand_rule(job.kinds, job.usable))


def _packed(jobs: Sequence[Cutting], plans: Sequence[StripPlan]) -> list[Row]:
    """Return how long the packer lays the jobs that it can be told, for each length of our plans.

    There is no row where it is not installed: it comes as source only, which a hash-locked list cannot build.
    """
    if find_spec("rectpack") is None:
        return []
    asked = [(job, plan) for job, plan in zip(jobs, plans, strict=True) if _can_be_told(job)]
    ratios: list[float] = []
    times = [milliseconds(partial(_compared, job, plan, ratios)) for job, plan in asked]
    note = (
        f"{len(asked)} jobs: {mean(ratios):.1%} of ours in the mean, {min(ratios):.0%} to {max(ratios):.0%}"
    )
    return [row_of("a packer of boxes", times, note)]


def _compared(job: Cutting, plan: StripPlan, ratios: list[float]) -> None:
    ratios.append(boxes_length(job) / float(plan.length))


def _can_be_told(job: Cutting) -> bool:
    return sum(kind.count for kind in job.kinds) <= MOST_BOXES


def boxes_length(job: Cutting) -> float:
    """Return the length that the packer takes, in inches."""
    from rectpack import newPacker

    turning = any(len(kind.positions) > 1 for kind in job.kinds)
    packer = newPacker(rotation=turning)
    for kind in job.kinds:
        side = kind.positions[0]
        for _ in range(kind.count):
            packer.add_rect(int(side.along * 8), int(side.across * 8))
    tall = sum(int(max(p.across for p in kind.positions) * 8) * kind.count for kind in job.kinds)
    packer.add_bin(int(job.usable * 8), tall)
    packer.pack()
    return max(float(y + height) for _, _, y, _, height, _ in packer.rect_list()) / 8
