"""Plan generated jobs of strips, and set their lengths beside the proved bound, the hand rule and a packer of boxes.

The packer, rectpack, is asked in two ways: skyline lays boxes anywhere, guillotine so that they can be cut straight
across, but in any number of stages. It turns all boxes or none: so it is asked only for jobs whose pieces may all turn
alike, and its shorter lengths are not always strips.
"""

from __future__ import annotations

import random
from collections.abc import Sequence
from dataclasses import dataclass
from importlib.util import find_spec
from statistics import mean

from benchmarks.timing import Row, milliseconds, row_of
from quarterturn.materials.bounds import hand_rule
from quarterturn.materials.kinds import Kind, Position
from quarterturn.materials.strips import EFFORT, StripPlan, plan_strips
from quarterturn.materials.strips.splitting import split_strips
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


PACKERS = {"skyline": "SkylineBlWm", "guillotine": "GuillotineBafSas"}
"""What the packer's ways are called here, and there."""


@dataclass(frozen=True, slots=True)
class Result:
    """A job with its plan, the same with split strips, and what the packer takes in inches where it can be told."""

    seed: int
    job: Cutting
    plan: StripPlan
    split: StripPlan
    time: float
    packed: dict[str, float]

    @property
    def hand(self) -> Length:
        """Return the length by the plain hand rule."""
        return hand_rule(self.job.kinds, self.job.usable)


def cutting_results() -> list[Result]:
    """Plan all jobs."""
    return [_result(seed, generated(seed)) for seed in range(JOBS)]


def _result(seed: int, job: Cutting) -> Result:
    plans: list[StripPlan] = []
    time = milliseconds(lambda: plans.append(plan_strips(job.kinds, job.usable)))
    split = split_strips(job.kinds, job.usable, EFFORT, plans[0], lambda length: length)
    packed = {way: boxes_length(job, way) for way in PACKERS} if has_packer() and _can_be_told(job) else {}
    return Result(seed, job, plans[0], split, time, packed)


def has_packer() -> bool:
    """Tell whether the packer is installed: it comes as source only, which a hash-locked list cannot build."""
    return find_spec("rectpack") is not None


def cutting_rows(results: Sequence[Result]) -> list[Row]:
    """Tell how long the jobs took, and how near their plans are to what is proved."""
    times = [each.time for each in results]
    over = [float(each.plan.length / each.plan.bound - 1) for each in results]
    saved = [float(1 - each.plan.length / each.hand) for each in results]
    split = [float(1 - each.split.length / each.plan.length) for each in results]
    proved = sum(each.plan.proved for each in results)
    return [
        row_of(
            f"{JOBS} jobs, each", times, f"{proved / JOBS:.0%} proved; the longest took {max(times):.0f} ms"
        ),
        Row("over the bound", 0, 0, f"{mean(over):.2%} in the mean, {max(over):.1%} at worst"),
        Row("saved of the hand rule", 0, 0, f"{mean(saved):.1%} in the mean, {max(saved):.0%} at best"),
        Row("saved by split strips", 0, 0, f"{mean(split):.1%} in the mean, {max(split):.0%} at best"),
        *(_packed(way, results) for way in PACKERS if has_packer()),
    ]


def _packed(way: str, results: Sequence[Result]) -> Row:
    """Return how long the packer lays the jobs that it can be told, for each length of our plans."""
    ratios = [each.packed[way] / float(each.plan.length) for each in results if each.packed]
    note = (
        f"{len(ratios)} jobs: {mean(ratios):.1%} of ours in the mean, {min(ratios):.0%} to {max(ratios):.0%}"
    )
    return Row(f"a packer of boxes, {way}", 0, 0, note)


def cutting_table(results: Sequence[Result]) -> str:
    """Return every job in inches: hand rule, our plan, its bound, with splits, and the packer where it can be told."""
    names = ("hand rule", "plan", "bound", "split", *PACKERS)
    lines = ["  job kinds pieces" + "".join(f"{name:>11}" for name in names)]
    for each in results:
        lengths = (each.hand, each.plan.length, each.plan.bound, each.split.length)
        packed = (each.packed.get(way) for way in PACKERS)
        cells = [
            f"{float(length):11.2f}" if length is not None else f"{'–':>11}" for length in (*lengths, *packed)
        ]
        pieces = sum(kind.count for kind in each.job.kinds)
        lines.append(f"  {each.seed:3} {len(each.job.kinds):5} {pieces:6}{''.join(cells)}")
    if not has_packer():
        lines.append("  rectpack is not installed: the columns of its packers are empty.")
    return "\n".join(lines)


def _can_be_told(job: Cutting) -> bool:
    """Tell whether all pieces that are not square may turn, or none, and they are few enough."""
    turning = {len(k.positions) > 1 for k in job.kinds if k.positions[0].along != k.positions[0].across}
    return len(turning) <= 1 and sum(kind.count for kind in job.kinds) <= MOST_BOXES


def boxes_length(job: Cutting, way: str) -> float:
    """Return the length that the packer takes, in inches."""
    import rectpack

    turning = any(len(kind.positions) > 1 for kind in job.kinds)
    packer = rectpack.newPacker(rotation=turning, pack_algo=getattr(rectpack, PACKERS[way]))
    for kind in job.kinds:
        side = kind.positions[0]
        for _ in range(kind.count):
            packer.add_rect(int(side.along * 8), int(side.across * 8))
    tall = sum(int(max(p.across for p in kind.positions) * 8) * kind.count for kind in job.kinds)
    packer.add_bin(int(job.usable * 8), tall)
    packer.pack()
    return max(float(y + height) for _, _, y, _, height, _ in packer.rect_list()) / 8
