"""The spine: every stage in order, from the text of a design to a proved pattern of each of its sizes."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from quarterturn.blocks import Blocks, draft_blocks
from quarterturn.design import Design, Finding, locate, read_design, told_of_size
from quarterturn.materials import EFFORT, Effort, plan_materials
from quarterturn.pieces import bill_of_pieces
from quarterturn.proof import Pattern, Proof, check_pattern, check_sizes
from quarterturn.publish.release import Verdict
from quarterturn.setting import arrange, laid_upright, map_findings
from quarterturn.steps import build_steps

Watch = Callable[[str], None]
"""Told the name of each stage as it begins, and instead of its stages the name of each further size."""


@dataclass(frozen=True, slots=True)
class Job:
    """What became of a design: the pattern of each size, that of the file first; none where findings forbid it."""

    patterns: tuple[Pattern, ...]
    findings: tuple[Finding, ...]

    @property
    def pattern(self) -> Pattern | None:
        """Return the pattern of the file's own size, or None."""
        return self.patterns[0] if self.patterns else None


def run(
    text: str | bytes,
    name: str = "design.toml",
    watch: Watch = lambda stage: None,
    size: str | None = None,
    effort: Effort = EFFORT,
) -> Job:
    """Run all stages on the text of a design file called `name`; never raises for what the file says.

    Findings of the checks are given the lines of the keys that they name, as those of the reader are. Where a
    `size` is named, the job has the pattern and the findings of that size alone: UnknownSizeError if there is none.
    `effort` says how hard to look for short cutting plans: QUICK for what must answer while somebody types.
    """
    watch("design")
    reading = read_design(text, name)
    if reading.design is None:
        return Job((), reading.findings)
    plain = text if isinstance(text, str) else text.decode("utf-8-sig")
    designs = (reading.design, *reading.design.sizes) if size is None else (reading.design.in_size(size),)
    watch("blocks")
    blocks = [draft_blocks(design) for design in designs]
    unknown = [map_findings(*each) for each in zip(designs, blocks, strict=True)]
    if any(unknown):
        return Job((), (*reading.findings, *locate(plain, _told(reading.design, designs, unknown))))
    patterns = [make_pattern(designs[0], watch, blocks[0], effort)]
    for design, drafted in zip(designs[1:], blocks[1:], strict=True):
        watch(design.size)
        patterns.append(make_pattern(design, blocks=drafted, effort=effort))
    watch("proof")
    found = [check_pattern(pattern) for pattern in patterns]
    told = (*_told(reading.design, designs, found), *check_sizes(patterns))
    return Job(tuple(patterns), (*reading.findings, *locate(plain, told)))


def _told(base: Design, designs: tuple[Design, ...], found: list[tuple[Finding, ...]]) -> Iterator[Finding]:
    """Return what was found in each size: in the file's own as it is, in another with the size's name, once."""
    own = found[0] if designs[0] is base else ()
    for design, findings in zip(designs, found, strict=True):
        yield from findings if design is base else told_of_size(design.size, findings, own)


def make_pattern(
    design: Design,
    watch: Watch = lambda stage: None,
    blocks: Blocks | None = None,
    effort: Effort = EFFORT,
) -> Pattern:
    """Run the stages between a design and its proof; the map must name units that the blocks have."""
    blocks = blocks or draft_blocks(design)
    watch("setting")
    design = laid_upright(design, blocks)
    setting = arrange(design, blocks)
    watch("pieces")
    bill = bill_of_pieces(design, blocks, setting)
    watch("materials")
    materials = plan_materials(design, blocks, setting, bill, effort)
    watch("steps")
    steps = build_steps(design, blocks, setting, bill, materials)
    return Pattern(design, blocks, setting, bill, materials, steps)


def judge(job: Job, name: str, rehearse: Callable[[Pattern], Proof]) -> Verdict:
    """Rehearse all sizes of a job that has patterns; return what is known for and against it, called `name`."""
    pattern, *rest = job.patterns
    proof = rehearse(pattern)
    others = tuple((each, rehearse(each)) for each in rest)
    found = [*job.findings, *proof.findings]
    for each, its in others:
        found += told_of_size(each.design.size, its.findings, ())
    return Verdict(name, tuple(found), proof, others)
