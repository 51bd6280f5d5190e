"""The stages of a design, each run once for what goes into it, so that an edit runs again only what it touches.

In:  the text of a design.
Out: a `Made`: what every stage makes of it, run when it is first asked for.
Promise: results are those of `pipeline`, whatever was run before; a stage is run once for equal inputs.
"""

from __future__ import annotations

import threading
from collections import OrderedDict
from collections.abc import Callable, Hashable
from dataclasses import dataclass, field, replace
from functools import cached_property
from typing import TypeVar

from quarterturn.blocks import Blocks, draft_blocks
from quarterturn.design import Design, Finding, Reading, locate, read_design, told_of_size
from quarterturn.materials import EFFORT, Effort, Materials, plan_materials
from quarterturn.pieces import Bill, bill_of_pieces
from quarterturn.pipeline import Job
from quarterturn.proof import Pattern, Proof, check_pattern, check_sizes, compare_top, prove
from quarterturn.proof.rehearsal import Rehearsal
from quarterturn.setting import (
    FIT_CODES,
    Node,
    PlacedCloth,
    PlacedUnit,
    Setting,
    arrange,
    build_top,
    laid_upright,
    lay_out,
    map_findings,
    place_all,
)
from quarterturn.steps import Steps, build_steps

T = TypeVar("T")
KEEP = 12
"""Results of a stage that are kept: the sizes of a design, and what undo goes back to."""
FILMS = 2
"""Films that are kept: one holds all that was ever made on the table."""


class UnmadeError(Exception):
    """A design that stops before a pattern can be made of it: the findings that stop it, in the order of lines."""

    def __init__(self, findings: tuple[Finding, ...]) -> None:
        first = findings[0]
        super().__init__(f"{first.sentence} {first.remedy}")
        self.findings = findings


@dataclass
class _Entry:
    """One result, made under a lock of its own, so that slow work holds up nobody but those who wait for it."""

    lock: threading.Lock = field(default_factory=threading.Lock)
    made: list[object] = field(default_factory=list)


class Memo:
    """Results by what they were made of, the newest kept. Safe to share between threads."""

    def __init__(self, keep: int = KEEP) -> None:
        self._kept: OrderedDict[Hashable, _Entry] = OrderedDict()
        self._keep = keep
        self._lock = threading.Lock()

    def get(self, key: Hashable, make: Callable[[], T]) -> T:
        """Return what was made of a key before, or make it; two threads never make the same thing at once."""
        with self._lock:
            entry = self._kept.setdefault(key, _Entry())
            self._kept.move_to_end(key)
            while len(self._kept) > self._keep:
                self._kept.popitem(last=False)
        with entry.lock:
            if not entry.made:
                entry.made.append(make())
            return entry.made[0]  # type: ignore[return-value]


class Key:
    """Parts of a design that a result is kept by; their hash is reckoned once."""

    def __init__(self, *parts: Hashable) -> None:
        self._parts = parts
        self._hash = hash(parts)

    def __hash__(self) -> int:
        return self._hash

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Key) and self._hash == other._hash and self._parts == other._parts


STAGES = (
    "made",
    "blocks",
    "unlaid",
    "lying",
    "setting",
    "bill",
    "materials",
    "steps",
    "checks",
    "film",
    "proof",
    "views",
)


class Stages:
    """The stages of one open design over all its edits."""

    def __init__(self) -> None:
        self._memos = {stage: Memo(FILMS if stage == "film" else KEEP) for stage in STAGES}
        self.runs: dict[str, int] = dict.fromkeys(STAGES, 0)
        """How often each stage was really run."""

    def at(self, text: str, name: str = "design.toml") -> Made:
        """Return what is made of a text."""
        return self.once("made", (text, name), lambda: Made(self, text, read_design(text, name)))

    def once(self, stage: str, key: Hashable, make: Callable[[], T]) -> T:
        """Return what a stage makes, run at most once for a key."""

        def counted() -> T:
            self.runs[stage] += 1
            return make()

        return self._memos[stage].get(key, counted)


class Made:
    """What the stages make of one text."""

    def __init__(self, stages: Stages, text: str, reading: Reading) -> None:
        self.stages, self.text, self.reading = stages, text, reading

    @property
    def design(self) -> Design:
        """Return the design. Raises UnmadeError where the text is none."""
        if self.reading.design is None:
            raise UnmadeError(self.reading.findings)
        return self.reading.design

    def size(self, name: str | None = None) -> OneSize:
        """Return the design in one of its sizes, its own if no name is given. Raises UnknownSizeError."""
        wanted = self.design if name is None else self.design.in_size(name)
        return next(size for size in self.sizes if size.design is wanted)

    @cached_property
    def sizes(self) -> tuple[OneSize, ...]:
        """Return all sizes, the file's own first."""
        return tuple(OneSize(self, design) for design in (self.design, *self.design.sizes))

    @property
    def stops(self) -> tuple[Finding, ...]:
        """Return what stops the design from becoming a pattern; nothing where it does not."""
        if self.reading.design is None:
            return self.reading.findings
        return locate(self.text, [found for size in self.sizes for found in size.told(size.unlaid)])

    @property
    def findings(self) -> tuple[Finding, ...]:
        """Return all that is found: what stops, or else what the checks of all sizes find."""
        if self.reading.design is None:
            return self.reading.findings
        if stops := self.stops:
            return (*self.reading.findings, *stops)
        own = self.size().checked
        found = [found for size in self.sizes for found in size.told(size.checked, own)]
        if len(self.sizes) > 1:
            found += check_sizes([size.pattern() for size in self.sizes])
        return (*self.reading.findings, *locate(self.text, found))

    @property
    def job(self) -> Job:
        """Return the proved patterns of all sizes with what is found, as `pipeline.run` does."""
        if self.reading.design is None or self.stops:
            return Job((), self.findings)
        return Job(tuple(size.pattern() for size in self.sizes), self.findings)


@dataclass(frozen=True, slots=True)
class Drawn:
    """What lies where in a top; where parts of it do not fit their sizes are guesses."""

    design: Design
    blocks: Blocks
    top: Node
    units: tuple[PlacedUnit, ...]
    cloths: tuple[PlacedCloth, ...]
    fits: bool


class OneSize:
    """What the stages make of a design in one size."""

    def __init__(self, made: Made, design: Design) -> None:
        self.made, self.design = made, design
        self.stages = made.stages

    def told(self, findings: tuple[Finding, ...], own: tuple[Finding, ...] = ()) -> tuple[Finding, ...]:
        """Return findings of this size as the whole job tells them."""
        if self.design is self.made.design:
            return findings
        return tuple(told_of_size(self.design.size, findings, own))

    @property
    def as_written(self) -> Blocks:
        """Return the masters and units by the names that the maps of the file write."""
        return self._drafted(self.design)

    def _drafted(self, design: Design) -> Blocks:
        key = (design.recipes, design.rejoined, design.making)
        return self.stages.once("blocks", key, lambda: draft_blocks(design))

    @property
    def unlaid(self) -> tuple[Finding, ...]:
        """Return what stops the setting from being laid."""
        design = self.design
        return self.stages.once("unlaid", self._written, lambda: map_findings(design, self.as_written))

    @cached_property
    def _written(self) -> Key:
        return _bones(self.design)

    @cached_property
    def laid_design(self) -> Design:
        """Return the design with its prints laid upright, from which all that follows is made.

        Raises UnmadeError where something does not fit.
        """
        if self.unlaid:
            raise UnmadeError(locate(self.made.text, self.told(self.unlaid)))
        return laid_upright(self.design, self.as_written)

    @cached_property
    def _laid(self) -> Key:
        return self._written if self.laid_design is self.design else _bones(self.laid_design)

    @cached_property
    def _plain(self) -> Key:
        return _plain(self.laid_design)

    @property
    def blocks(self) -> Blocks:
        """Return the masters and units as they are laid."""
        return self._drafted(self.laid_design)

    @property
    def setting(self) -> Setting:
        """Return the top."""
        return self.stages.once("setting", self._laid, lambda: arrange(self.laid_design, self.blocks))

    @property
    def lying(self) -> Setting:
        """Return the top without what meets at its seams: enough for the pieces, the plans and the picture."""
        return self.stages.once("lying", self._laid, lambda: lay_out(self.laid_design, self.blocks))

    @property
    def drawn(self) -> Drawn:
        """Return all that is drawn of the top, where parts do not fit by sizes that are guesses.

        Raises UnmadeError where a word of a map means nothing that can be laid.
        """
        if not self.unlaid:
            laid = self.lying
            return Drawn(self.laid_design, self.blocks, laid.top, laid.units, laid.cloths, fits=True)
        if any(finding.code not in FIT_CODES for finding in self.unlaid):
            raise UnmadeError(locate(self.made.text, self.told(self.unlaid)))
        design = laid_upright(self.design, self.as_written)
        blocks = self._drafted(design)
        top, _ = build_top(design, blocks)
        return Drawn(design, blocks, top, *place_all(top), fits=False)

    @property
    def bill(self) -> Bill:
        """Return the masters to make and the pieces to cut."""
        key = (self._laid, _cloths(self.laid_design))
        return self.stages.once(
            "bill", key, lambda: bill_of_pieces(self.laid_design, self.blocks, self.lying)
        )

    def materials(self, effort: Effort = EFFORT) -> Materials:
        """Return the plans: made again only where the pieces, or how they are bought, are others."""
        design, setting, bill = self.laid_design, self.lying, self.bill
        sizes = (setting.width, setting.height, design.recipes, design.rejoined)
        bought = (design.making, design.packages, design.selling, design.units)
        key = (effort, bill, sizes, _cloths(design), bought)
        return self.stages.once(
            "materials", key, lambda: plan_materials(design, self.blocks, setting, bill, effort)
        )

    def steps(self, effort: Effort = EFFORT) -> Steps:
        """Return the steps."""
        key = (effort, self._plain)
        inputs = (self.laid_design, self.blocks, self.setting, self.bill)
        return self.stages.once("steps", key, lambda: build_steps(*inputs, self.materials(effort)))

    def pattern(self, effort: Effort = EFFORT) -> Pattern:
        """Return all of it."""
        made = (self.setting, self.bill, self.materials(effort), self.steps(effort))
        return Pattern(self.laid_design, self.blocks, *made)

    @property
    def checked(self) -> tuple[Finding, ...]:
        """Return what the checks find in the proved pattern, without lines."""
        return self.stages.once("checks", self._whole, lambda: check_pattern(self.pattern()))

    @property
    def proof(self) -> Proof:
        """Return what the rehearsal finds."""
        return self.stages.once("proof", self._whole, lambda: prove(self.pattern()))

    def film(self, make: Callable[[], T]) -> T:
        """Return the film of the rehearsal, made by a view, kept while the design stays."""
        return self.stages.once("film", self._whole, make)

    def prove_by(self, rehearsal: Rehearsal) -> Proof:
        """Return what the rehearsal finds, from one that has been carried out."""
        return self.stages.once("proof", self._whole, lambda: compare_top(self.pattern(), rehearsal))

    @cached_property
    def _whole(self) -> Key:
        return Key(self.laid_design)

    def once(self, what: str, make: Callable[[], T]) -> T:
        """Return something that a view makes of this size, kept while the design stays."""
        return self.stages.once("views", (what, self._whole), make)


def _bones(design: Design) -> Key:
    """Return all of a design that says what lies where."""
    laid = (design.setting, design.sections, design.borders)
    drafted = (design.recipes, design.rejoined, design.colourways, design.units)
    prints = tuple((fabric.letter, fabric.direction, fabric.upright) for fabric in design.fabrics)
    return Key(laid, drafted, prints, design.making, design.binding_fabric, design.backing_fabric)


def _cloths(design: Design) -> Key:
    """Return all of a design that says from what its pieces are cut: no colours."""
    bound = (design.binding_fabric, design.binding_width, design.binding_kind, design.binding_fold)
    fabrics = tuple(replace(fabric, role="", colour="#000000") for fabric in design.fabrics)
    return Key(fabrics, bound, design.backing_fabric)


def _plain(design: Design) -> Key:
    """Return a design without what is only printed of it."""
    fabrics = tuple(replace(fabric, role="", colour="#000000") for fabric in design.fabrics)
    bare = replace(design, fabrics=fabrics, sizes=(), title="", maker="", number="", version="")
    return Key(replace(bare, date="", contact="", about="", size=""))
