"""Checks of the curves that run through the top (trade check 73): counted anew, and rounds that one unit keeps open."""

from __future__ import annotations

import math
from collections.abc import Iterator

from quarterturn.design import Design, RecipeKind, Severity, code_of_unit, quarter_of_unit
from quarterturn.measure import show_count
from quarterturn.proof.checks.drafting import Draft, draft_of
from quarterturn.proof.checks.fault import REBUILD, Fault, check, tell
from quarterturn.proof.checks.joins import TOUCHING, seams_of
from quarterturn.proof.checks.laying import ROOT, place_of
from quarterturn.proof.checks.tallying import turned_counts
from quarterturn.proof.checks.walking import units_of
from quarterturn.proof.model import Pattern
from quarterturn.setting import closing_turns

CLOSE = 1e-6
"""Of a length, the share by which a sum of floats may differ."""

SELDOM = 1 / 3
"""Units that keep rounds open are told where they are no more than this share of the rounds like those that close
(common practice, no source): where they are many, the design means it."""


def flow_counted(pattern: Pattern) -> Iterator[Fault]:
    """Hold the flow against the map.

    Each match joins two curves to one or closes one, so that as many paths stay open as pieces are more than matches.
    """
    design, flow = pattern.design, pattern.setting.flow
    seams = seams_of(design).values()
    if any(met.seam.doubtful for met in seams) or _reaching_out(design):
        return
    pieces = _pieces(design)
    counts = (
        ("pieces of curve", flow.pieces, pieces),
        ("open paths", len(flow.paths), pieces - sum(met.seam.matches * met.count for met in seams)),
        ("steps", flow.steps, sum(met.seam.steps * met.count for met in seams)),
    )
    for noun, told, wanted in counts:
        if told != wanted:
            yield Fault(
                "setting.map", f"The setting counts {told:,} {noun}; the map has {wanted:,}.", REBUILD
            )
    if flow.pieces == pieces:
        yield from _lengths(pattern)


def _reaching_out(design: Design) -> bool:
    """Tell whether a shape reaches the outer sides of its units, where its edge has ends that no draft lists."""
    seam = float(design.making.seam)
    return any(
        recipe.kind is RecipeKind.SHAPES
        or max(draft_of(design, recipe).shape.reach) > float(recipe.finished) + seam - TOUCHING
        for recipe in design.recipes
    )


def _drafted(design: Design) -> Iterator[tuple[str, Draft, int]]:
    """Return each name of units that show a curve, with its draft and how many there are."""
    for (name, _), count in turned_counts(design).items():
        way = design.colourway(code_of_unit(name))
        if way.ground != way.shape:
            yield name, draft_of(design, design.recipe(way.recipe)), count


def _pieces(design: Design) -> int:
    """Count the pieces of curve: half as many as ends."""
    ends = 0
    for name, draft, count in _drafted(design):
        ends += count * sum(
            len(draft.meets[quarter_of_unit(name), way]) for way in ("horizontal", "vertical")
        )
    return ends // 2


def _lengths(pattern: Pattern) -> Iterator[Fault]:
    """Hold the sewn length of all curves against the closed form: of a quarter the seams take a peak's angle."""
    design, flow = pattern.design, pattern.setting.flow
    wanted = 0.0
    for _, draft, count in _drafted(design):
        if draft.peak is None:
            return
        wanted += count * draft.shape.bend * (math.pi / 2 - math.radians(draft.peak))
    told = sum(trail.length for trail in (*flow.rounds, *flow.paths))
    if abs(told - wanted) > CLOSE * wanted:
        sentence = (
            f"All curves of the setting are {tell(told, design.units)} long; those of the map are "
            f"{tell(wanted, design.units)}."
        )
        yield Fault("setting.map", sentence, REBUILD)


def rounds_left_open(pattern: Pattern) -> Iterator[Fault]:
    """Tell of a unit that keeps open a round such as others that close; it may be a slip in the map."""
    design = pattern.design
    closings = closing_turns(design, pattern.blocks, pattern.setting)
    if not closings or len(closings) > SELDOM * min(closing.alike for closing in closings):
        return
    first, *others = closings
    unit = pattern.setting.units[first.unit]
    more = f" So would {show_count(len(others), 'unit')} more elsewhere." if others else ""
    of_section = "" if unit.section == ROOT else f" of {unit.section}"
    sentence = (
        f"Turned by {show_count(first.quarters, 'quarter')} more, the unit at row {unit.row + 1}, column "
        f"{unit.column + 1}{of_section} would close a round of {first.pieces} pieces, like the "
        f"{first.alike} that close elsewhere.{more}"
    )
    remedy = "Turn the unit in the map, or leave it so if the open round is meant."
    leaf = min(units_of(design), key=lambda each: abs(each.motion.move - unit.motion.move))
    yield Fault(leaf.key, sentence, remedy, place_of(leaf))


FLOW = (
    check("flow-miscounted", Severity.STOPS, (73,), "Rounds and paths are those of the map.", flow_counted),
    check("round-left-open", Severity.STYLE, (73,), "No lone unit keeps a round open.", rounds_left_open),
)
