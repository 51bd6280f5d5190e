"""What stands before the first cut: how the pattern speaks, what it takes for granted, where to take care."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from itertools import chain

from quarterturn.blocks import CurveFacts, Master
from quarterturn.design import (
    QUARTERS,
    ClothKind,
    Curve,
    Design,
    Direction,
    DrawnOutline,
    EdgeStitchKind,
    Fabric,
    RecipeKind,
    code_of_unit,
    quarter_of_unit,
)
from quarterturn.materials import ClothPlan
from quarterturn.measure import Units, show_length
from quarterturn.proof import Pattern
from quarterturn.publish.wording.names import fabric_name, length, listed, plural, shape_word
from quarterturn.publish.wording.parcels import PARCELS_EXPLAINED, parcel_advice
from quarterturn.publish.wording.requirements import usable_widths
from quarterturn.publish.wording.shorts import ABBREVIATIONS
from quarterturn.steps import Chapter

TECHNIQUE = "Curves without curved piecing: fuse, stitch, cut."
LABEL = "Write name, place, date and care on a label, and sew it to the back."


def assumptions(pattern: Pattern) -> tuple[str, ...]:
    """Return what the pattern takes for granted."""
    design, making = pattern.design, pattern.design.making
    return (
        "Read all the steps before you cut.",
        f"Every seam is {length(design, making.seam)} wide unless a step says otherwise.",
        f"Cloth is reckoned with a usable width of {_widths(design)}, selvages off. Measure yours; if it is "
        "narrower, buy more.",
        f"The cloth is {_kinds(design)}. {_washing(design)}",
        *parcel_advice(pattern),
        "Press, do not iron: lift the iron and set it down.",
        "Web means lightweight paper-backed fusible web. Follow its maker’s instructions for heat and time.",
        *(
            _directional(design, fabric)
            for fabric in design.fabrics
            if fabric.direction is not Direction.NONE
        ),
    )


def _directional(design: Design, fabric: Fabric) -> str:
    said = f"{fabric_name(fabric)} has a print with a direction: cut it as its plan shows"
    in_units = any(fabric.letter in way.letters for way in design.colourways)
    if in_units and fabric.upright:
        return f"{said}. It stands upright in the quilt: mark the top of every piece, and keep to the names of the map."
    return f"{said}; in the units it turns with them." if in_units else f"{said}."


def _widths(design: Design) -> str:
    return listed([length(design, width) for width in sorted({f.width for f in design.fabrics})])


def _kinds(design: Design) -> str:
    words = {ClothKind.COTTON: "quilting cotton", ClothKind.FLANNEL: "flannel", ClothKind.WOOL: "felted wool"}
    return listed([word for kind, word in words.items() if any(f.kind is kind for f in design.fabrics)])


def _washing(design: Design) -> str:
    """Tell how the cloth is washed before cutting; the amounts allow nothing for shrinking."""
    wool = any(fabric.kind is ClothKind.WOOL for fabric in design.fabrics)
    felted = (
        " Never wash felted wool; press it under a cloth, and follow its seller’s advice on heat and needle."
    )
    return (
        "The amounts allow nothing for shrinking: use cloth unwashed, or buy more, wash all of it alike, and "
        f"measure again before you cut.{felted if wool else ''}"
    )


def sizes_said(pattern: Pattern) -> tuple[str, ...]:
    """Return how sizes are said, and our own few words."""
    eighth = '¹⁄₁₆"' if pattern.design.house.sixteenths else '⅛"'
    nearest = f"the nearest {eighth}" if pattern.design.units is Units.INCH else "the nearest millimetre"
    return (
        "Sizes in the steps are unfinished: they include the seam allowances. Finished sizes, without them, stand "
        "on the cover and in the lists.",
        f"Sizes that are only quoted are rounded to {nearest}.",
        "A count stands in brackets before the size.",
        _master_said(pattern),
        *_names_said(pattern),
        "Pictures of the sewn quilt show what the seams leave of the curves, not what was traced.",
    )


def _master_said(pattern: Pattern) -> str:
    square = all(master.width == master.height for master in pattern.blocks.masters)
    word = "square" if square else "square or rectangle"
    return f"A master is the {word} that is fused, stitched and then cut into units."


def _names_said(pattern: Pattern) -> tuple[str, ...]:
    """Return how units are named; where quarters differ, by their place in the master as well."""
    quartered = next((name for name in pattern.setting.tally if quarter_of_unit(name)), None)
    plain = next((name for name in pattern.setting.tally if not quarter_of_unit(name)), None)
    said = []
    if plain:
        names = ", ".join(f"{plain if quartered else 'a'}{turn}" for turn in range(4))
        said.append(
            f"A unit is named by its letter; the figure behind it counts its quarter turns clockwise: {names}."
        )
    if quartered and quarter_of_unit(quartered) not in QUARTERS:
        said.append(_pieces_said(pattern, quartered))
    elif quartered:
        code = code_of_unit(quartered)
        said.append(
            f"Where the quarters of a master differ, a unit is named by its letter and its quarter: {code}-tl is top "
            f"left in the master, {code}-tr top right, {code}-br bottom right, {code}-bl bottom left. The figure "
            f"behind counts its quarter turns clockwise; {quartered}0 lies as in the master."
        )
    return tuple(said)


def _pieces_said(pattern: Pattern, name: str) -> str:
    """Tell the names of pieces that are no quarters."""
    code = code_of_unit(name)
    names = {"lh": "left half", "rh": "right half", "th": "top half", "bh": "bottom half"}
    kinds = (unit.quarter for unit in pattern.blocks.units(pattern.design.colourway(code).recipe))
    told = [f"{code}-{kind}" + (f" is the {names[kind]}" if kind in names else "") for kind in kinds]
    return (
        f"Where the pieces of a master differ, a unit is named by its letter and its piece: {listed(told)}; the "
        f"figures of cutting apart show them. The figure behind counts its quarter turns clockwise; {name}0 lies "
        "as in the master."
    )


_BLADE = "Rotary cutter: close the blade after every cut, cut away from yourself, keep fingers off the ruler’s edge."
_IRON = "Iron: web glue and steam burn. Let fused cloth cool before you handle it."
_NEEDLE = "Needle: a gummed needle bends and breaks. Keep fingers clear of it, and switch off to change it."
_TOOLS: Mapping[Chapter, tuple[str, ...]] = {
    Chapter.CUTTING: (_BLADE,),
    Chapter.SHAPES: (_IRON,),
    Chapter.FUSING: (_IRON,),
    Chapter.STITCHING: (_NEEDLE,),
    Chapter.UNITS: (_BLADE, _IRON),
    Chapter.PANELS: (_IRON, _NEEDLE),
    Chapter.ASSEMBLY: (_NEEDLE, _IRON),
    Chapter.BORDERS: (_NEEDLE, _IRON),
    Chapter.FINISHING: (_BLADE, _NEEDLE),
}
"""The cautions of each chapter, by the tools that it takes up."""


def cautions_of(chapters: Iterable[Chapter]) -> tuple[str, ...]:
    """Return the cautions of some parts of the work, each once."""
    return tuple(dict.fromkeys(said for chapter in chapters for said in _TOOLS[chapter]))


def cautions(pattern: Pattern) -> tuple[str, ...]:
    """Return the cautions: makers' instructions and local rules come first."""
    return (
        "The instructions of the makers of your tools, web and thread, and local rules, come before this pattern.",
        _BLADE,
        _IRON,
        _NEEDLE,
        "Pins, blades and trimmings are small parts: keep them away from children and animals.",
        "Loose bedding is not safe for sleeping infants; follow the advice given where you live.",
    )


def abbreviations(printed: Sequence[str], units: Units) -> tuple[tuple[str, str], ...]:
    """Return the abbreviations that the printed texts use, with their meanings."""
    text = " ".join(chain(printed))
    used = [(short, long) for short, long in ABBREVIATIONS.items() if re.search(rf"\b{short}\b", text)]
    return (*used, ('"', "inch")) if units is Units.INCH else tuple(used)


def cutting_advice(pattern: Pattern) -> tuple[str, ...]:
    """Return what goes before the cutting lists."""
    borders = "Border lengths are calculated; you may leave the borders uncut until your top is measured."
    has_parcels = any(plan.parcels for plan in pattern.materials.cloth)
    return (
        "Cut in the order given. Trim the selvages off each strip before you cut it up or join it.",
        *_counted_width(pattern),
        *_standing(pattern),
        "Label each stack with its letter and number. A letter with s is a strip, with r a run of joined strips.",
        *_stacking(pattern),
        *((TRIMMED,) if any(map(_has_lower_pieces, pattern.materials.cloth)) else ()),
        *((borders,) if pattern.design.borders else ()),
        *((PARCELS_EXPLAINED,) if has_parcels else ()),
    )


TRIMMED = (
    "Some pieces are lower than the strip that they are cut from: cut them off the strip, then trim them to the size "
    "that the step says. The figures show what falls away."
)


def _counted_width(pattern: Pattern) -> Iterator[str]:
    """Return the width that the plans count on, which is to be measured before the first cut."""
    if widths := usable_widths(pattern):
        yield f"The plans count on a usable width of {widths}: measure your cloth first."


def _standing(pattern: Pattern) -> Iterator[str]:
    """Return which prints must stand upright, so that the top of each piece is to be marked."""
    letters = [fabric.letter for fabric in pattern.design.fabrics if fabric.upright]
    if letters:
        fabrics = f"{plural(len(letters), 'fabric')} {listed(letters)}"
        yield f"Mark the top of each piece of {fabrics}: the print stands upright."


def _has_lower_pieces(plan: ClothPlan) -> bool:
    """Tell whether any piece is lower than its strip, or than its segment of one."""
    layouts = plan.parcels.layouts if plan.parcels else ()
    groups = [*(group for group, _ in plan.groups), *(group for each in layouts for group in each.strips)]
    return any(
        cut.across < high
        for group in groups
        for high, cuts in (
            (group.height, group.crosscuts),
            *((split.across, split.crosscuts) for split in group.splits),
        )
        for cut in cuts
    )


def _stacking(pattern: Pattern) -> Iterator[str]:
    """Return how many layers are cut at once, where strips are stacked at all."""
    layers = pattern.design.making.layers
    if layers > 1:
        yield (
            f"Strips that are cut up alike are stacked, up to {layers} layers, edge on edge. Cut no more layers at "
            "once than the maker of your rotary cutter says: a stack that slips spoils all of its pieces."
        )


def notions(pattern: Pattern) -> tuple[str, ...]:
    """Return what is needed besides cloth, web and thread."""
    design, stitch = pattern.design, pattern.design.making.stitch
    fused = {each.recipe for each in pattern.bill.masters}
    sides = [max(each.width, each.height) for each in pattern.blocks.masters if each.recipe in fused]
    ruler = f"Square-up ruler that covers {length(design, max(sides))} each way" if sides else "Ruler"
    foot = "Sewing machine with a straight stitch"
    if stitch.kind is not EdgeStitchKind.STRAIGHT:
        foot = f"Sewing machine with {stitch.kind.value} stitch, and an open-toe foot"
    return (
        f"{foot}; {stitch.needle} needles",
        f"{ruler}, rotary cutter, and a mat that turns",
        "Iron, and a non-stick pressing sheet to save its sole and the board from glue",
        "Fine pencil or fine permanent marker for tracing on the web paper",
        "Small sharp scissors, pins, row labels",
        "Neutral thread for the seams, and thread for the quilting",
        *(each.name if each.count == 1 else f"({each.count}) {each.name}" for each in design.selling.notions),
    )


def curve_facts(pattern: Pattern, master: Master) -> tuple[str, ...]:
    """Return what the seams make of a curve, for the sewer to check by."""
    recipe = pattern.design.recipe(master.recipe)
    if recipe.kind is RecipeKind.SHAPES:
        return _general_facts(pattern, master)
    if isinstance(size := recipe.size, DrawnOutline):
        return _outline_facts(pattern, master, size)
    design, facts = pattern.design, master.facts
    of = f" of {master.recipe}" if len(pattern.design.recipes) > 1 else ""
    across = f"In a sewn unit{of} the curve meets each seam {length(design, facts.crossing)} from the finished corner"
    diagonal = f"and reaches {length(design, facts.diagonal)} along the diagonal."
    shape = f"The {shape_word(master.recipe)}"
    if recipe.curve is Curve.SEWN_TRUE:
        how = "is sewn true: it has been spread for the seams, so its template has four short flats."
        joint = "Where quarters are rejoined the curve runs smoothly over the seam."
    else:
        how = "is traced as drawn: the seams take their share of it."
        joint = f"Where quarters are rejoined there is a soft peak of about {facts.peak:.0f}° at the seam."
    return f"{shape} {how}", f"{across} {diagonal}", joint


def _general_facts(pattern: Pattern, master: Master) -> tuple[str, ...]:
    """Return what the seams make of the shapes of a master of any shapes and cuts."""
    design, facts = pattern.design, master.facts
    shapes = "shape" if len(master.shapes) == 1 else f"({len(master.shapes)}) shapes"
    of = f"The {shapes} of {master.recipe}"
    verb = "is" if len(master.shapes) == 1 else "are"
    if not master.cuts:
        return (f"{of} {verb} not cut: what is fused is what is seen.",)
    if design.recipe(master.recipe).curve is Curve.SEWN_TRUE:
        return (f"{of} {verb} sewn true: spread for the seams, with short flats on the cut lines.",)
    return (f"{of} {verb} traced as drawn: the seams take their share.", *_rejoined(design, facts, "units"))


def _outline_facts(pattern: Pattern, master: Master, size: DrawnOutline) -> tuple[str, ...]:
    design, facts = pattern.design, master.facts
    named = master.recipe if master.recipe == size.outline else f"{master.recipe} ({size.outline})"
    shape = f"The {named}"
    farthest = (
        f"Its edge meets the seams {length(design, facts.crossing)} from the finished corner at the farthest."
    )
    if design.recipe(master.recipe).curve is Curve.SEWN_TRUE:
        how = "is sewn true: it has been spread for the seams, so its template has short flats on the cut lines."
        return f"{shape} {how}", farthest, "Where its quarters are rejoined the edge runs on as it was drawn."
    how = "is traced as drawn: the seams take their share of it."
    return f"{shape} {how}", farthest, *_rejoined(design, facts)


def _rejoined(design: Design, facts: CurveFacts, parts: str = "quarters") -> tuple[str, ...]:
    """Return what is seen where quarters that are traced as drawn are rejoined."""
    said = []
    if facts.step > 1 / 64:
        said.append(f"miss one another by up to {show_length(facts.step, design.units, sixteenths=True)}")
    if facts.peak >= 1:
        said.append(f"turn there by up to {facts.peak:.0f}° more than the traced outline does")
    return (f"Where its {parts} are rejoined the edges {' and '.join(said)}.",) if said else ()
