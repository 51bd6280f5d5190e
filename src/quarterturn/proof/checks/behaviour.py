"""Checks of how prints, wool, flannel and stitches behave (group H of the trade's list)."""

from __future__ import annotations

import re
from collections.abc import Iterator

from quarterturn.design import (
    ClothKind,
    Design,
    Direction,
    EdgeStitchKind,
    Pressing,
    Severity,
    code_of_unit,
    dotted,
    quarter_of_unit,
    unit_name,
)
from quarterturn.design.colour import value_of
from quarterturn.measure import Units, inches, mm, show_count, show_length
from quarterturn.proof.checks.agreement import top_fabrics
from quarterturn.proof.checks.counts import units_needed
from quarterturn.proof.checks.drafting import drafts_of, named_parts
from quarterturn.proof.checks.fault import REBUILD, Fault, check, in_millimetres, tell
from quarterturn.proof.checks.layers import to_open
from quarterturn.proof.checks.tallying import master_codes, turned_counts, unit_counts
from quarterturn.proof.checks.walking import motifs_of
from quarterturn.proof.model import Pattern
from quarterturn.steps import CutAway

THICK_SEAM = {Units.INCH: inches(0, 3, 8), Units.METRIC: mm(10)}
"""Wool and flannel fray or are thick: 3/8" to 1/2" is common practice."""

LONGEST_STITCH = {ClothKind.COTTON: mm("2.5"), ClothKind.FLANNEL: mm("2.5"), ClothKind.WOOL: mm(3)}
"""A longer stitch leaves the edge of the shape weak after washing (common practice)."""

SHADOW = 15.0
"""A shape lighter than its ground by this difference of L* shows the ground through (from memory)."""

THICK_NEEDLE = 90

_WAYS: dict[int, list[tuple[int, ...]]] = {
    1: [(0,), (1,), (2,), (3,)],
    2: [(0, 2), (1, 3)],
    4: [(0, 1, 2, 3)],
}
"""Turns for which a square lies one way up, by the equal units that it gives."""


def turned_prints(pattern: Pattern) -> Iterator[Fault]:
    """Count the squares that a print takes if it is to stand upright in every unit.

    The quarters of a square come from its four corners, and each turn of the map stands upright for one of
    them only; for stripes, which are the same upside down, for two.
    """
    design = pattern.design
    turns, made = turned_counts(design), {count.code: count.count for count in pattern.bill.masters}
    yields = {recipe.name: draft.kinds for recipe, draft in drafts_of(design)}
    for code in (code for code in unit_counts(design) if not design.colourway(code).is_rejoined):
        colourway = design.colourway(code)
        kinds = yields[colourway.recipe]
        counts = [[turns[unit_name(code, quarter), turn] for turn in range(4)] for quarter in kinds]
        for part, letter in (("ground", colourway.ground), *named_parts(design, colourway)):
            direction = design.fabric(letter).direction
            want = _upright_squares(counts, min(kinds.values()), direction)
            if want > made.get(code, 0) - design.making.spare_masters:
                sentence = (
                    f"The print of fabric {letter} is {direction.value}. To stand upright in every unit of "
                    f"colourway {code} it takes {show_count(want, 'square')}; {made.get(code, 0)} are made, and "
                    "the print turns with the units."
                )
                remedy = (
                    f"Choose a print without direction, balance the turns of {code} in the map, or say that the "
                    "print turns."
                )
                yield Fault(f"{dotted('colourways', code)}.{part}", sentence, remedy)


def _upright_squares(kinds: list[list[int]], each: int, direction: Direction) -> int:
    """Return the squares for units counted by kind and turn, of which a square gives `each` in as many turns.

    A square that is laid another way up stands upright for other turns; squares of one way serve all kinds.
    """
    if direction is Direction.NONE:
        return 0
    if direction is Direction.ONE_WAY:
        ways = _WAYS.get(each, _WAYS[1])
        return sum(max(counts[turn] for counts in kinds for turn in way) for way in ways)
    if each == 4:
        return max(-(-(c[way] + c[way + 2]) // 2) for c in kinds for way in (0, 1))
    share = 2 if each == 2 else 1
    return sum(max(-(-(c[way] + c[way + 2]) // share) for c in kinds) for way in (0, 1))


def backing_print(pattern: Pattern) -> Iterator[Fault]:
    """Tell of a backing whose print lies on its side."""
    fabric = pattern.design.fabric(pattern.design.backing_fabric)
    for plan in pattern.materials.cloth:
        for group in plan.panels:
            if (
                plan.fabric == fabric.letter
                and fabric.direction is not Direction.NONE
                and not group.runs_down
            ):
                sentence = (
                    f"The backing panels of fabric {fabric.letter} run across the quilt, so its print, which is "
                    f"{fabric.direction.value}, lies on its side."
                )
                remedy = "Choose a backing without direction, or say in `about` that it lies so."
                yield Fault("backing.fabric", sentence, remedy)


def thick_seams(pattern: Pattern) -> Iterator[Fault]:
    """Ask for a wider seam allowance where wool or flannel is pieced."""
    design, units = pattern.design, pattern.design.units
    for letter, kind in _pieced_kinds(design).items():
        if kind is not ClothKind.COTTON and design.making.seam < THICK_SEAM[units]:
            sentence = (
                f"Fabric {letter} is {kind.value}, and the seams are {tell(design.making.seam, units)}: it frays or "
                "is too thick for them."
            )
            remedy = f"Set making.seam to {show_length(THICK_SEAM[units], units)}; all sizes follow from it."
            yield Fault("making.seam", sentence, remedy, f"fabric {letter}")


def _pieced_kinds(design: Design) -> dict[str, ClothKind]:
    """Return the kind of each fabric that is sewn into the top."""
    letters = top_fabrics(design)
    return {fabric.letter: fabric.kind for fabric in design.fabrics if fabric.letter in letters}


def wool_bulk(pattern: Pattern) -> Iterator[Fault]:
    """Ask for open seams where wool is pieced: four corners of it meet at each crossing."""
    design = pattern.design
    woollen = [letter for letter, kind in _pieced_kinds(design).items() if kind is ClothKind.WOOL]
    if woollen and design.making.pressing is not Pressing.OPEN:
        sentence = (
            f"Seams in wool (fabric {woollen[0]}) pressed to one side make a lump wherever four units meet."
        )
        yield Fault("making.pressing", sentence, 'Set making.pressing to "open".')


def wool_needle(pattern: Pattern) -> Iterator[Fault]:
    """Ask for a needle that goes through wool."""
    design = pattern.design
    size = re.match(r"\d+", design.making.stitch.needle)
    woollen = [letter for letter, kind in _pieced_kinds(design).items() if kind is ClothKind.WOOL]
    if woollen and size and int(size[0]) < THICK_NEEDLE:
        sentence = f"Fabric {woollen[0]} is wool, and the needle a {design.making.stitch.needle}."
        yield Fault("making.stitch.needle", sentence, 'Set making.stitch.needle to "90/14".')


def long_stitches(pattern: Pattern) -> Iterator[Fault]:
    """Ask for stitches short enough to hold where the cuts sever them."""
    design, stitch = pattern.design, pattern.design.making.stitch
    shapes = {letter for code in master_codes(design) for _, letter in design.colourway(code).shapes}
    shapes |= {motif.fabric for _, motif in motifs_of(design)}
    longest = min((LONGEST_STITCH[design.fabric(letter).kind] for letter in shapes), default=stitch.length)
    if stitch.kind is not EdgeStitchKind.STRAIGHT and stitch.length > longest:
        sentence = (
            f"Edge stitches {in_millimetres(stitch.length)} long are severed by the cuts and do not hold until "
            "the seam catches them."
        )
        yield Fault(
            "making.stitch.length",
            sentence,
            f"Set making.stitch.length to {in_millimetres(longest)} or less.",
        )


def raw_edges(pattern: Pattern) -> Iterator[Fault]:
    """Tell that a straight stitch lets the edges fray, which the pattern must say."""
    stitch = pattern.design.making.stitch
    if stitch.kind is EdgeStitchKind.STRAIGHT:
        sentence = (
            "A straight stitch inside the edge leaves the edge of every shape raw: it frays in the wash."
        )
        remedy = 'Say in `about` that the raw edge is meant, or set making.stitch.kind to "zigzag".'
        yield Fault("making.stitch.kind", sentence, remedy)


def shadows(pattern: Pattern) -> Iterator[Fault]:
    """Ask that the ground is cut away behind a shape that is lighter than it, in the units that are needed."""
    design = pattern.design
    needed = dict[str, set[str]]()
    for name in units_needed(design):
        colourway = design.colourway(code_of_unit(name))
        if not colourway.is_rejoined:
            parts = to_open(design.recipe(colourway.recipe), quarter_of_unit(name), design.making)
            needed.setdefault(colourway.code, set()).update(parts)
    opened = {(action.code, each.part) for action in _cut_away(pattern) for each in action.behind}
    for code in master_codes(design):
        colourway = design.colourway(code)
        ground = value_of(design.fabric(colourway.ground).colour)
        for part, letter in colourway.shapes:
            lighter = value_of(design.fabric(letter).colour) - ground
            if lighter > SHADOW and part in needed.get(code, ()) and (code, part) not in opened:
                sentence = (
                    f"In colourway {code} the shape of fabric {letter} is lighter than its ground, fabric "
                    f"{colourway.ground}, and no step cuts the ground away: it shadows through."
                )
                yield Fault(dotted("colourways", code), sentence, REBUILD)


def _cut_away(pattern: Pattern) -> Iterator[CutAway]:
    return (step.action for step in pattern.steps.steps if isinstance(step.action, CutAway))


BEHAVIOUR = (
    check("print-turns", Severity.COSTS, (54, 93), "A print with a direction stands upright.", turned_prints),
    check("backing-print-lies", Severity.CONFUSES, (50,), "The print of the backing stands.", backing_print),
    check("seam-for-thick", Severity.CONFUSES, (96,), "Wool and flannel have wide seams.", thick_seams),
    check("wool-bulk", Severity.CONFUSES, (75,), "Seams in wool are pressed open.", wool_bulk),
    check("wool-needle", Severity.STYLE, (53,), "The needle suits the cloth.", wool_needle),
    check("stitch-too-long", Severity.COSTS, (), "The edge stitch is short enough to hold.", long_stitches),
    check("edges-fray", Severity.CONFUSES, (), "The edge stitch covers the edge.", raw_edges),
    check(
        "shadow-through", Severity.CONFUSES, (95,), "Dark ground is cut away behind light shapes.", shadows
    ),
)
