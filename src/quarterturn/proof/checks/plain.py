"""Checks of plain cloth in the top: strips, squares, sashing, panels, and squares for triangles (groups B, C and F)."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

from quarterturn.design import (
    Design,
    Direction,
    OnPointSet,
    Severity,
    TriangleFit,
    code_of_unit,
    dotted,
)
from quarterturn.measure import (
    CUT_TOLERANCE,
    ROOT_TWO,
    Length,
    Units,
    cut_step,
    inches,
    mm,
    round_up,
    show_count,
)
from quarterturn.pieces import Grain, Piece, Purpose
from quarterturn.proof.checks.drafting import named_parts
from quarterturn.proof.checks.fault import REBUILD, Fault, check, tell
from quarterturn.proof.checks.laying import (
    BORDER,
    COPING,
    CORNER_TRIANGLE,
    PANEL,
    SASH,
    SIDE_TRIANGLE,
    STRIP,
    Leaf,
)
from quarterturn.proof.checks.sizing import CLOSE, Sizes, sash_width, to_cut
from quarterturn.proof.checks.walking import cloths_of, settings_of, units_of
from quarterturn.proof.model import Pattern
from quarterturn.steps import CutTriangles

Cut = tuple[str, Length, Length]
"""Fabric, longer and shorter side as cut."""

TRIANGLES = (SIDE_TRIANGLE, CORNER_TRIANGLE)
STRIPS = (Purpose.BORDER, Purpose.COPING)
PLAIN = (Purpose.PANEL, Purpose.STRIP, Purpose.SASH, Purpose.SQUARE, Purpose.CORNERSTONE)

WASTE = {Units.INCH: inches(1), Units.METRIC: mm(25)}
"""Setting triangles cut this much larger than they must be are more than the trade's margin of 1/2" to 1" (38)."""

EACH = {SIDE_TRIANGLE: 4, CORNER_TRIANGLE: 2}
"""Triangles from a square cut twice, and once, corner to corner (K. Combs, Formulas for Quilters, 2002)."""


def border_strips(pattern: Pattern) -> Iterator[Fault]:
    """Recalculate the strips of all borders: those sewn first as long as the edge, the others covering their ends."""
    wanted = _wanted(pattern, (BORDER, COPING))
    yield from _differing(pattern, wanted, _listed(pattern, STRIPS), "borders", "border strips")


def plain_pieces(pattern: Pattern) -> Iterator[Fault]:
    """Recalculate strips, sashing, cornerstones, squares and panels: finished, and a seam larger all round."""
    kinds = {leaf.what for leaf in cloths_of(pattern.design)} - {BORDER, COPING, *TRIANGLES}
    wanted = _wanted(pattern, tuple(kinds))
    yield from _differing(pattern, wanted, _listed(pattern, PLAIN), "setting", "pieces")


def _wanted(pattern: Pattern, kinds: tuple[str, ...]) -> Counter[Cut]:
    wanted: Counter[Cut] = Counter()
    for leaf in cloths_of(pattern.design):
        if leaf.what in kinds and leaf.area > 0:
            wanted[_as_cut(pattern.design, leaf)] += 1
    return wanted


def _as_cut(design: Design, leaf: Leaf) -> Cut:
    """Return the cut size of a strip or square; what √2 is in goes up to the ruler's next mark."""
    short, long = sorted(leaf.size)
    seams = 2 * design.making.seam
    more = mitre_extra(design) if leaf.mitred else Length(0)
    return leaf.name, to_cut(long + seams + more, design.units), to_cut(short + seams, design.units)


def mitre_extra(design: Design) -> Length:
    """Return what a mitred strip is cut longer for: 2" (50 mm), or what the folds take where that is more."""
    habit = inches(2) if design.units is Units.INCH else mm(50)
    return max(habit, to_cut(2 * design.making.seam * (1 + ROOT_TWO), design.units))


def _listed(pattern: Pattern, purposes: tuple[Purpose, ...]) -> Counter[Cut]:
    listed: Counter[Cut] = Counter()
    for piece in pattern.bill.pieces:
        if piece.purpose in purposes:
            short, long = sorted((piece.length, piece.width))
            listed[piece.fabric, long, short] += piece.count - piece.spare
    return listed


def _differing(
    pattern: Pattern, wanted: Counter[Cut], listed: Counter[Cut], key: str, noun: str
) -> Iterator[Fault]:
    units = pattern.design.units
    for cut in sorted(wanted.keys() | listed.keys()):
        if wanted[cut] != listed[cut]:
            fabric, length, width = cut
            sentence = (
                f"{wanted[cut]} {noun} of fabric {fabric}, {tell(width, units)} × {tell(length, units)}, "
                f"are needed; the list has {listed[cut]}."
            )
            yield Fault(key, sentence, REBUILD, f"fabric {fabric}")


def triangle_counts(pattern: Pattern) -> Iterator[Fault]:
    """Recalculate the squares for setting triangles: m × n cells take 2(m + n − 2) side triangles and 4 for corners."""
    needed: Counter[tuple[str, str, Length]] = Counter()
    for leaf in cloths_of(pattern.design):
        if leaf.what in TRIANGLES:
            needed[leaf.what, leaf.name, leaf.size[0]] += 1
    wanted: Counter[tuple[str, str]] = Counter()
    for (what, fabric, _), count in needed.items():
        wanted[what, fabric] += -(-count // EACH[what])
    listed: Counter[tuple[str, str]] = Counter()
    for piece in pattern.bill.pieces:
        if what := _triangle_of(piece):
            listed[what, piece.fabric] += piece.count - piece.spare
    for what, fabric in wanted.keys() | listed.keys():
        if wanted[what, fabric] > listed[what, fabric]:
            sentence = (
                f"{show_count(wanted[what, fabric], 'square')} of fabric {fabric} must be cut into {what}s; the list "
                f"has {listed[what, fabric]}."
            )
            yield Fault("setting.triangles", sentence, REBUILD, f"fabric {fabric}")


def _triangle_of(piece: Piece) -> str:
    kinds = {Purpose.SIDE_TRIANGLES: SIDE_TRIANGLE, Purpose.CORNER_TRIANGLES: CORNER_TRIANGLE}
    return kinds.get(piece.purpose, "")


def least_squares(design: Design) -> Iterator[tuple[str, OnPointSet, str, str, Length]]:
    """Return for each setting on point what its squares must measure at least, as cut.

    A quarter of a square has the finished long edge of the notch that it fills and 2s(1 + √2), a half the short edge
    and s(2 + √2) (computed; the handbook's 1¼" and ⅞" for s = ¼" are these, rounded up).
    """
    sizes, seam = Sizes(design), design.making.seam
    for key, setting in settings_of(design):
        if isinstance(setting, OnPointSet):
            over, sash = 2 * setting.float, sash_width(setting)
            edge = sizes.pitch(setting) * ROOT_TWO + over
            leg = (sizes.side(setting) + 2 * sash) / ROOT_TWO + over
            if len(setting.cells) + len(setting.cells[0]) > 2:
                yield key, setting, "side_square", setting.side_fabric, edge + 2 * seam * (1 + ROOT_TWO)
            yield key, setting, "corner_square", setting.corner_fabric, leg + seam * (2 + ROOT_TWO)


def _squares_for(pattern: Pattern) -> Iterator[tuple[str, OnPointSet, Piece, Length]]:
    """Pair what squares must measure with the listed piece that is nearest to it of those large enough."""
    purposes = {"side_square": Purpose.SIDE_TRIANGLES, "corner_square": Purpose.CORNER_TRIANGLES}
    for key, setting, which, fabric, least in least_squares(pattern.design):
        pieces = [p for p in pattern.bill.of_fabric(fabric) if p.purpose is purposes[which]]
        if pieces:
            enough = [p for p in pieces if p.width >= least - CUT_TOLERANCE] or pieces
            yield f"{key}.{which}", setting, min(enough, key=lambda p: abs(p.width - least)), least


def triangles_small(pattern: Pattern) -> Iterator[Fault]:
    """Hold the squares as listed against what the notches take."""
    units = pattern.design.units
    for key, _, piece, least in _squares_for(pattern):
        if piece.width < least - CUT_TOLERANCE:
            sentence = (
                f"Squares {piece.label} are {tell(piece.width, units)}; the triangles cut from them need squares of "
                f"{tell(float(least), units)}."
            )
            remedy = f"State at least {tell(round_up(least, cut_step(units)), units)}."
            yield Fault(key, sentence, remedy, piece.label)


def triangles_waste(pattern: Pattern) -> Iterator[Fault]:
    """Tell of squares that are larger than any margin that is trimmed off."""
    units = pattern.design.units
    for key, setting, piece, least in _squares_for(pattern):
        over = piece.width - least
        if over > WASTE[units] and setting.fit is not TriangleFit.OVERSIZED:
            sentence = (
                f"Squares {piece.label} are {tell(piece.width, units)}, {tell(float(over), units)} larger than the "
                "triangles need; what is over is trimmed off."
            )
            enough = tell(round_up(least, cut_step(units)), units)
            remedy = f"Cut them {enough}, or let the triangles stand out by a float."
            yield Fault(key, sentence, remedy, piece.label)


def triangle_grain(pattern: Pattern) -> Iterator[Fault]:
    """Ask that side triangles are quarters of squares and corner triangles halves: so the straight grain is outside."""
    for step in pattern.steps.steps:
        if isinstance(step.action, CutTriangles):
            piece = pattern.bill.piece(step.uses[0].label)
            want = 2 if piece.purpose is Purpose.SIDE_TRIANGLES else 1
            if step.action.cuts != want:
                sentence = (
                    f"Step {step.number} cuts squares {piece.label} corner to corner {_times(step.action.cuts)}: "
                    f"{piece.purpose.value} would have the bias on the outer edge, which stretches."
                )
                yield Fault("setting.triangles", sentence, REBUILD, f"step {step.number}")


def _times(count: int) -> str:
    return "once" if count == 1 else "twice"


def triangle_print(pattern: Pattern) -> Iterator[Fault]:
    """Tell of a print that lies in four ways round the top: a square cut twice gives a triangle for each way."""
    for key, setting in settings_of(pattern.design):
        if isinstance(setting, OnPointSet):
            for letter in dict.fromkeys((setting.side_fabric, setting.corner_fabric)):
                fabric = pattern.design.fabric(letter)
                if fabric.direction is not Direction.NONE:
                    sentence = (
                        f"The setting triangles are of fabric {letter}, whose print is {fabric.direction.value}: along "
                        "two edges of four it lies on its side."
                    )
                    remedy = "Choose a print without direction, or say in `about` that the turn is meant."
                    yield Fault(f"{key}.triangles", sentence, remedy)


def strip_print(pattern: Pattern) -> Iterator[Fault]:
    """Tell of a print that lies on its side, or slants, in strips, sashing and panels.

    On a print with a direction a piece is cut with its length along the grain that the list says; crosswise, its print
    stands along its width, and lengthwise along its length.
    """
    units, seen = pattern.design.units, set[tuple[str, str]]()
    for leaf in cloths_of(pattern.design):
        fabric = pattern.design.fabric(leaf.name)
        if fabric.direction is Direction.NONE or leaf.what not in (STRIP, SASH, PANEL):
            continue
        if (leaf.section, leaf.name) in seen or _stands(pattern, leaf):
            continue
        seen.add((leaf.section, leaf.name))
        how = "slants" if leaf.eighths % 2 else "lies on its side"
        size = f"{leaf.what} of {tell(leaf.size[0], units)} × {tell(leaf.size[1], units)}"
        sentence = (
            f"The print of fabric {leaf.name} is {fabric.direction.value}; in the {size} finished it {how}."
        )
        remedy = "Choose a print without direction, or say in `about` that it lies so."
        yield Fault(leaf.key, sentence, remedy)


def _stands(pattern: Pattern, leaf: Leaf) -> bool:
    """Tell whether a print stands upright in a piece as it lies in the top."""
    if leaf.eighths % 2:
        return False
    fabric, length, width = _as_cut(pattern.design, leaf)
    if length == width:
        return True
    grains = {p.grain for p in pattern.bill.of_fabric(fabric) if (p.length, p.width) == (length, width)}
    level = (leaf.size[0] > leaf.size[1]) == (leaf.eighths % 4 == 0)
    return level if grains == {Grain.CROSSWISE} else not level if grains == {Grain.LENGTHWISE} else True


def unit_print(pattern: Pattern) -> Iterator[Fault]:
    """Tell of a print with a direction in units that stand on a corner: it slants in all of them."""
    design = pattern.design
    slanting = {code_of_unit(leaf.name) for leaf in units_of(design) if leaf.eighths % 2}
    masters = {code for used in slanting for code in design.masters_of(used)}
    for colourway in design.colourways:
        if colourway.code not in masters:
            continue
        for part, letter in (("ground", colourway.ground), *named_parts(design, colourway)):
            if design.fabric(letter).direction is not Direction.NONE:
                sentence = (
                    f"The print of fabric {letter} is {design.fabric(letter).direction.value}; in units of colourway "
                    f"{colourway.code}, which are set on point, it slants."
                )
                remedy = "Choose a print without direction, or say in `about` that it slants."
                yield Fault(dotted("colourways", colourway.code, part), sentence, remedy)


def strips_narrow(pattern: Pattern) -> Iterator[Fault]:
    """Tell of sashing or strips narrower than their own two seam allowances: they cannot be pressed flat."""
    design, units = pattern.design, pattern.design.units
    least, seen = 2 * design.making.seam, set[str]()
    for leaf in cloths_of(design):
        narrow = min(leaf.size) < least and leaf.what not in (BORDER, *TRIANGLES)
        if narrow and leaf.area > 0 and leaf.key not in seen:
            seen.add(leaf.key)
            sentence = (
                f"A {leaf.what} finishes {tell(min(leaf.size), units)}, and the allowances behind it take "
                f"{tell(least, units)}."
            )
            yield Fault(leaf.key, sentence, f"Make it {tell(least, units)} wide or wider.")


def mitres_short(pattern: Pattern) -> Iterator[Fault]:
    """Ask that mitred strips reach round their corners.

    Along its raw outer edge such a strip measures the finished outer edge and, at each end, s to the raw corner and
    s·√2 that the slanting allowance of the mitre takes (computed).
    """
    design, units = pattern.design, pattern.design.units
    mitred = [leaf for leaf in cloths_of(design) if leaf.mitred]
    for leaf in mitred:
        least = max(leaf.size) + 2 * design.making.seam * (1 + ROOT_TWO)
        _, length, width = _as_cut(design, leaf)
        strips = [
            p
            for p in pattern.bill.of_fabric(leaf.name)
            if p.purpose is Purpose.BORDER and p.width == width and p.length <= length
        ]
        longest = max((p.length for p in strips), default=Length(0))
        if longest < least - CLOSE:
            sentence = (
                f"A mitred strip of fabric {leaf.name} is {tell(longest, units)} long; its corners take "
                f"{tell(float(least), units)}."
            )
            yield Fault(leaf.key, sentence, REBUILD)
            return


def points_at_edge(pattern: Pattern) -> Iterator[Fault]:
    """Tell of squares on point whose corners end at the binding: sewn a thread too deep, it cuts them off."""
    setting = pattern.design.setting
    if not isinstance(setting, OnPointSet) or pattern.design.borders:
        return
    if not setting.float and not sash_width(setting):
        sentence = (
            "The squares stand with their corners on the finished edge, where the binding is sewn: a seam that is a "
            "little wider cuts the points off."
        )
        remedy = 'Set fit = "oversized" with a float of 1/4" or more, or put a border round the quilt.'
        yield Fault("setting.fit", sentence, remedy)


PLAIN_CLOTH = (
    check("pieces-differ", Severity.STOPS, (20, 26, 60, 80), "Plain pieces fill their places.", plain_pieces),
    check(
        "triangles-miscounted",
        Severity.STOPS,
        (22, 23),
        "Squares give all setting triangles.",
        triangle_counts,
    ),
    check("triangles-short", Severity.STOPS, (36,), "Setting triangles fill their notches.", triangles_small),
    check("triangles-waste", Severity.COSTS, (38,), "Setting triangles waste no cloth.", triangles_waste),
    check("triangle-bias", Severity.STOPS, (37,), "The outer edge has the straight grain.", triangle_grain),
    check(
        "triangle-print-turns", Severity.CONFUSES, (94,), "A print stands in all triangles.", triangle_print
    ),
    check("strip-print-lies", Severity.CONFUSES, (93, 94), "A print stands in all strips.", strip_print),
    check("unit-print-slants", Severity.CONFUSES, (93,), "A print stands in units on point.", unit_print),
    check("strip-narrow", Severity.CONFUSES, (80,), "Strips are wider than their seams.", strips_narrow),
    check("mitre-short", Severity.STOPS, (76, 77), "Mitred strips reach round corners.", mitres_short),
    check("points-at-edge", Severity.CONFUSES, (38,), "No corner ends at the binding.", points_at_edge),
)
