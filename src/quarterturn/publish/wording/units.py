"""The sentences of cutting apart, cutting away, trimming and rejoining."""

from __future__ import annotations

from quarterturn.design import code_of_unit, quarter_of_unit
from quarterturn.geometry import StraightLine
from quarterturn.proof import Pattern
from quarterturn.publish.wording.masters import ground_word, is_general
from quarterturn.publish.wording.model import Wording
from quarterturn.publish.wording.names import (
    length,
    listed,
    plural,
    rectangle,
    sized,
    typeset_words,
)
from quarterturn.publish.wording.outlines import outline_said, shapes_overlap
from quarterturn.publish.wording.places import NEAR, drawn_line, measure
from quarterturn.steps import (
    Behind,
    CutApart,
    CutAway,
    LabelStacks,
    Product,
    Reference,
    Rejoin,
    SetAside,
    Step,
    Trim,
)

GROUND_LAYER = -1


def general_names(pattern: Pattern) -> tuple[str, ...]:
    """Return the units of general recipes that the quilt has, of each recipe those of its first colourway."""
    firsts: dict[str, str] = {}
    for name in pattern.setting.tally:
        way = pattern.design.colourway(code_of_unit(name))
        if way.is_rejoined or is_general(pattern, way.recipe):
            firsts.setdefault(way.recipe, way.code)
    return tuple(name for name in pattern.setting.tally if code_of_unit(name) in firsts.values())


def tell_cut_apart(step: Step, action: CutApart, pattern: Pattern) -> Wording:
    """Tell cutting the master apart."""
    (used,), made = step.uses, step.makes
    line = (
        f"Colourway {action.code}: cut ({used.count}) {plural(used.count, 'master')} to make "
        f"{listed([_units(product) for product in made])}, {_as_cut(pattern, made)} as cut."
    )
    if is_general(pattern, action.recipe):
        return Wording(f"Cut the masters apart: {action.recipe}", tuple(_cuts(pattern, action)), line)
    side = length(pattern.design, made[0].width)
    sentences = (
        "Lay the master right side up on the mat.",
        f"Lay the ruler along one crease and check that {side} of the square lies on each side of it. Cut.",
        "Do not move the parts. Turn the mat, lay the ruler along the other crease, and cut again.",
    )
    return Wording("Cut the masters apart", sentences, line)


def _as_cut(pattern: Pattern, made: tuple[Product, ...]) -> str:
    sizes = dict.fromkeys(_one_as_cut(pattern, product) for product in made)
    return listed(list(sizes))


def _one_as_cut(pattern: Pattern, made: Product) -> str:
    unit = pattern.blocks.unit(pattern.design, _bare(made.label).removeprefix("unit "))
    if unit.is_rectangle:
        return sized(pattern.design, made.width, made.height)
    return outline_said(pattern.design, unit, made.count)


def _units(made: Product) -> str:
    return f"({made.count}) {made.label.removesuffix(', as cut')}"


def _cuts(pattern: Pattern, action: CutApart) -> list[str]:
    said = ["Lay the master right side up on the mat."]
    for number, line in enumerate(action.cuts):
        turn = "Do not move the parts. Turn the mat, and lay" if number else "Lay"
        said.append(f"{turn} the ruler {_along(pattern, action, line)}. Cut{' again' if number else ''}.")
    return said


def _along(pattern: Pattern, action: CutApart, line: StraightLine) -> str:
    design, master = pattern.design, pattern.blocks.master(action.recipe)
    x, y = abs(line.direction.real), abs(line.direction.imag)
    if abs(line.side(0j)) < NEAR:
        if min(x, y) < NEAR:
            half = length(design, (master.height if y < x else master.width) / 2)
            way = "horizontal" if y < x else "vertical"
            word = ground_word(pattern, action.recipe)
            return f"along the {way} crease and check that {half} of the {word} lies on each side of it"
        if abs(x * float(master.height) - y * float(master.width)) < NEAR:
            return "from corner to corner along the crease, and check that it runs through the middle"
    return f"on the line {drawn_line(design, master, line)}"


def tell_cut_away(step: Step, action: CutAway, pattern: Pattern) -> Wording:
    """Tell cutting the ground away behind the shapes."""
    (used,) = step.uses
    label = _bare(used.label)
    if is_general(pattern, action.recipe):
        unit = pattern.blocks.unit(pattern.design, label.removeprefix("unit ").removeprefix("master "))
        sentences = IN_ORDER if shapes_overlap(unit) else ONE_BY_ONE
        return _cut_away_behind(pattern, action, f"({used.count}) {label}", sentences)
    inside = length(pattern.design, action.behind[0].inside)
    sentences = (
        "Turn the unit wrong side up, and lift the loose corner of the ground off the shape.",
        f"Cut the ground away behind the shape, {inside} inside the stitching. "
        "Keep the scissors flat so that they do not nick the shape.",
    )
    return Wording("Cut the ground away", sentences, f"({used.count}) {label}.")


def _bare(label: str) -> str:
    for end in (", as cut", ", stitched", ", trimmed", ", cut away", ", rejoined"):
        label = label.removesuffix(end)
    return label


IN_ORDER = (
    "Turn the unit wrong side up. Begin behind the shape that lies lowest, and go on to what lies on it.",
    "Lift each layer off the shape before you cut it, and keep the scissors flat so that they do not nick the "
    "cloth that is to stay.",
    "Where a higher shape is stitched through a layer, leave as much of it outside that stitching as inside.",
)
ONE_BY_ONE = (
    "Turn the unit wrong side up.",
    "Lift the ground off the shape before you cut it, and keep the scissors flat so that they do not nick the shape.",
)


def _cut_away_behind(pattern: Pattern, action: CutAway, what: str, sentences: tuple[str, ...]) -> Wording:
    told = "; ".join(dict.fromkeys(_behind(pattern, action, each) for each in action.behind))
    return Wording("Cut away what lies behind", sentences, f"{what}: {told}.")


def _behind(pattern: Pattern, action: CutAway, behind: Behind) -> str:
    shapes = pattern.blocks.master(action.recipe).shapes
    layers = dict.fromkeys(
        "the ground" if k == GROUND_LAYER else f"the {shapes[k].part}" for k in behind.layers
    )
    return (
        f"behind the {behind.part} cut {listed(list(layers))} away, {length(pattern.design, behind.inside)} inside "
        "the stitching"
    )


def tell_trim(step: Step, action: Trim, pattern: Pattern) -> Wording:
    """Tell trimming outer edges, each from its reference."""
    (made,) = step.makes
    size = sized(pattern.design, made.width, made.height)
    line = f"Make ({made.count}) {_bare(made.label)}; each should measure {size}, unfinished."
    if _has_its_size(step, pattern, action):
        return Wording("Square up the blocks where needed", tuple(_squared(pattern, action)), line)
    distances = list(dict.fromkeys(trim.distance for trim in action.lines))
    kinds = {trim.kind for trim in action.lines}
    if kinds == {Reference.CUT} and len(distances) == 1 and len(action.lines) == 2:
        sentences = (
            "Find the two centre-cut edges: they meet at the corner of the shape. Leave them as they are.",
            f"Measure {measure(pattern.design, distances[0])} from them, and trim the two outer edges only.",
        )
        return Wording("Trim the units", sentences, line)
    title = "Trim the blocks" if Reference.SEAM in kinds else "Trim the units"
    if made.label.startswith("master "):
        title = "Trim the masters"
    return Wording(title, tuple(_trims(pattern, action)), line)


def _has_its_size(step: Step, pattern: Pattern, action: Trim) -> bool:
    """Tell whether a joined block comes, to what can be measured on cloth, at the size to which it is trimmed."""
    (made,) = step.makes
    if {trim.kind for trim in action.lines} != {Reference.SEAM}:
        return False
    joined = next(p for s in pattern.steps.steps for p in s.makes if p.label == step.uses[0].label)
    sides = ((joined.width, made.width), (joined.height, made.height))
    return all(measure(pattern.design, was) == measure(pattern.design, now) for was, now in sides)


def _squared(pattern: Pattern, action: Trim) -> list[str]:
    *checks, _ = _trims(pattern, action)
    return [
        "The block has its size when it is joined: lay the square-up ruler on it, and trim only what stands out.",
        *checks,
    ]


def _trims(pattern: Pattern, action: Trim) -> list[str]:
    """Return a sentence for each kind of reference, with every distance and the edges that it is for."""
    told = {
        Reference.CUT: "Leave the edges where the master was cut as they are. From them measure {}.",
        Reference.CREASE: "From the crease through the middle measure {}.",
        Reference.SEAM: "Find the middle of the seam. From it measure {}.",
    }
    said = []
    for kind, sentence in told.items():
        mine = [trim for trim in action.lines if trim.kind is kind]
        if mine:
            parts = [f"{measure(pattern.design, t.distance)} to the {_edge(t.line)} edge" for t in mine]
            said.append(sentence.format(listed(parts)))
    return [*said, "Trim those edges only."]


def _edge(line: StraightLine) -> str:
    """Return which edge of a piece a line makes, whose cloth lies on the line's left."""
    inward = line.direction * 1j
    if abs(inward.real) > abs(inward.imag):
        return "left" if inward.real > 0 else "right"
    return "top" if inward.imag > 0 else "bottom"


def tell_rejoin(step: Step, action: Rejoin, pattern: Pattern) -> Wording:
    """Tell joining halves of two masters."""
    (made,) = step.makes
    size = rectangle(pattern.design, made.width, made.height)
    first, second = (_bare(pile.label) for pile in step.uses)
    slanted = min(abs(action.way.real), abs(action.way.imag)) > NEAR
    sentences = (
        "Lay a half of each of the two masters right sides together, cut edge on cut edge; where shapes meet, their "
        "stitched edges should lie on one another. Pin there and at both ends.",
        *(("The cut edges run on the bias: do not stretch them.",) if slanted else ()),
        f"Sew along the cut edges with a {length(pattern.design, action.seam)} seam.",
        _pressed(action, first, second),
        *(("Trim the ears that stand out at the ends of the seam.",) if action.ears else ()),
    )
    line = (
        f"Colourway {action.code}: join ({step.uses[0].count}) {first} to ({step.uses[1].count}) {second}. Make "
        f"({made.count}) {_bare(made.label)}, each about {size}, unfinished."
    )
    return Wording("Join halves of two masters", sentences, line)


def _pressed(action: Rejoin, first: str, second: str) -> str:
    if action.press_to is None:
        return "Press the seam open: it is the thickest of the quilt."
    return f"Press the seam to the half of {(first, second)[action.press_to].removeprefix('unit ')}."


def tell_surplus(step: Step, action: SetAside, pattern: Pattern) -> Wording:
    """Tell which units are left over."""
    (used,) = step.uses
    return Wording(
        "Set the surplus aside",
        ("What the last masters give beyond the need is not used in this quilt; keep it for a label.",),
        f"({used.count}) {_bare(used.label)}: {typeset_words(action.reason)}.",
    )


def tell_stacks(step: Step, action: LabelStacks, pattern: Pattern) -> Wording:
    """Tell stacking and labelling the units."""
    names = [pile.label.removeprefix("unit ") for pile in action.stacks]
    drawn = any(quarter_of_unit(name) or not _has_corner(pattern, name) for name in names)
    lie = "each as it is drawn among the units" if drawn else "the shape’s corner at the top left"
    sentences = (f"Stack the units by kind, {lie}, and pin a label to each stack.",)
    return Wording(
        "Label the stacks", sentences, "; ".join(f"({p.count}) {p.label}" for p in action.stacks) + "."
    )


def _has_corner(pattern: Pattern, name: str) -> bool:
    """Tell whether a unit has the middle of its master, and so of its shape, at its top left corner."""
    colourway = pattern.design.colourway(name)
    return not colourway.is_rejoined and not is_general(pattern, colourway.recipe)
