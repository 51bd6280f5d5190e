"""The finder: settings for the units of a design, ranked, each as words that the page draws with its units."""

from __future__ import annotations

from collections.abc import Callable
from typing import Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field

from quarterturn.design import ROOT, StraightSet, Symmetry, codes_in, laid, map_word
from quarterturn.measure import show_length
from quarterturn.setting.finder import (
    MOST_CODES,
    SearchError,
    Selection,
    codes_of,
    find_settings,
    map_lines,
)
from quarterturn.studio.stages import OneSize
from quarterturn.studio.views.model import View
from quarterturn.studio.views.quilt import UnitView, unit_view

COPIES = 3
"""How often a block is laid each way in its picture."""

Code = Annotated[str, Field(pattern=r"^[a-z]{1,2}$")]


class FindQuestion(BaseModel):
    """What is looked for: a block of `repeat` × `repeat` units in some colourways, laid with a symmetry."""

    model_config = ConfigDict(frozen=True, extra="forbid")
    repeat: Annotated[int, Field(ge=1, le=4)] = 2
    symmetry: Literal["slide", "mirror", "turn", "half turn"] = "slide"
    codes: Annotated[tuple[Code, ...], Field(max_length=12)] = ()
    section: Annotated[str, Field(max_length=60)] = ROOT
    """Which section is to be laid so."""
    most: Annotated[int, Field(ge=1, le=60)] = 12


class FitView(View):
    """A colourway: whether it lies in the quilt, and why its units cannot be laid so; empty where they can."""

    code: str
    laid: bool
    why: str
    side: str
    """Of its units, as printed; only units of one side can be laid together. Empty where they cannot be laid."""


class FinderView(View):
    """What there is to choose from: colourways, how many of them at most, and the sections that can be laid so."""

    revision: int
    codes: tuple[FitView, ...]
    most: int
    sections: tuple[str, ...]


class TakeView(View):
    """The arguments of the act `take-setting`: in about as many rows and columns as the section has."""

    section: str
    lines: tuple[str, ...]
    symmetry: str
    across: int
    down: int


class FoundView(View):
    """A setting: its score of 100 and the four measures from 0 to 1, its picture as words, and how it is taken."""

    number: int
    score: float
    flow: float
    rounds: float
    cloth: float
    balance: float
    rows: tuple[tuple[str, ...], ...]
    take: TakeView | None
    """Nothing where the section is not set in rows and columns."""


class FindView(View):
    """What was found, of how many that differ; `sampled` says how many were drawn by lot, if not all were looked at."""

    revision: int
    repeat: int
    symmetry: str
    codes: tuple[str, ...]
    ways: int
    different: int
    sampled: int | None
    units: dict[str, UnitView]
    found: tuple[FoundView, ...]


def finder_view(revision: int, size: OneSize) -> FinderView:
    """Return what there is to choose from. Raises UnmadeError."""
    design = size.laid_design
    named = {ROOT: design.setting, **{each.name: each.setting for each in design.sections}}
    used = codes_in(design)
    return FinderView(
        revision=revision,
        codes=tuple(_fit(size, each.code, is_laid=each.code in used) for each in design.colourways),
        most=MOST_CODES,
        sections=tuple(name for name, setting in named.items() if isinstance(setting, StraightSet)),
    )


def _fit(size: OneSize, code: str, *, is_laid: bool) -> FitView:
    try:
        codes_of(size.laid_design, size.blocks, (code,))
    except SearchError as error:
        said = str(error)
        return FitView(code=code, laid=is_laid, why=f"{said[:1].upper()}{said[1:]}.", side="")
    design = size.laid_design
    unit = size.blocks.units(design.colourway(code).recipe)[0]
    return FitView(code=code, laid=is_laid, why="", side=show_length(unit.side, design.units))


def find_view(
    revision: int, size: OneSize, question: FindQuestion, watch: Callable[[], None] = lambda: None
) -> FindView:
    """Return the best settings.

    Raises SearchError where no search can be made, UnmadeError, and what `watch` raises.
    """
    design, blocks = size.laid_design, size.blocks
    codes = codes_of(design, blocks, question.codes)
    symmetry = Symmetry(question.symmetry)
    selection = size.once(
        f"found {question.model_dump_json(exclude={'section'})}",
        lambda: find_settings(design, blocks, codes, question.repeat, symmetry, question.most, watch),
    )
    return FindView(
        revision=revision,
        repeat=question.repeat,
        symmetry=question.symmetry,
        codes=codes,
        ways=selection.ways,
        different=selection.different,
        sampled=selection.sampled,
        units={code: unit_view(design, blocks, code) for code in codes},
        found=tuple(
            _found(size, selection, number, question.section) for number in range(1, len(selection.best) + 1)
        ),
    )


def _found(size: OneSize, selection: Selection, number: int, section: str) -> FoundView:
    found = selection.best[number - 1]
    rows = laid(found.cells, selection.symmetry, COPIES, COPIES)
    score = found.score
    return FoundView(
        number=number,
        score=round(score.total, 1),
        flow=round(score.flow, 4),
        rounds=round(score.rounds, 4),
        cloth=round(score.cloth, 4),
        balance=round(score.balance, 4),
        rows=tuple(tuple(map_word(cell) for cell in row) for row in rows),
        take=_take(size, selection, number, section),
    )


def _take(size: OneSize, selection: Selection, number: int, section: str) -> TakeView | None:
    named = {each.name: each.setting for each in size.design.sections}
    now = size.design.setting if section == ROOT else named.get(section)
    if not isinstance(now, StraightSet):
        return None
    setting = selection.setting_like(number, *now.size)
    return TakeView(
        section=section,
        lines=tuple(map_lines(setting.cells)),
        symmetry=setting.symmetry.value,
        across=setting.across,
        down=setting.down,
    )
