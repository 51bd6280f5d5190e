"""The sentences of the chapter that prepares the shapes."""

from __future__ import annotations

from quarterturn.design import Design, DrawnOutline, RecipeKind
from quarterturn.materials import Stagger
from quarterturn.proof import Pattern
from quarterturn.publish.wording.model import Wording
from quarterturn.publish.wording.names import length, named, plural, shape_word
from quarterturn.publish.wording.web import ZERO, on_ruler, room_side
from quarterturn.steps import CutOut, FuseRings, Step, TraceRings, Tracing


def tell_trace(step: Step, action: TraceRings, pattern: Pattern) -> Wording:
    """Tell tracing and hollowing out."""
    design, (made,) = pattern.design, step.makes
    way = (
        "The shape is the same both ways, so the tracing needs no mirroring."
        if action.same_mirrored
        else "Trace it mirrored, as the template is printed: the web goes on the wrong side."
    )
    sentences = (
        "Trace the template on the paper side of the web, its ring lines and the short marks across its outline too. "
        f"{way}",
        _spaced(design, action),
        f"Cut round each tracing on the outer ring line, {length(design, design.making.ring_out)} outside "
        "the outline.",
        hollow(design, action),
    )
    rows = _rows if action.stagger is None else staggered_rows
    line = f"Template “{action.shape}”: trace ({made.count}){rows(pattern, action, made.count)}."
    return Wording("Trace the shapes and hollow them out", sentences, line)


def _rows(pattern: Pattern, action: TraceRings, count: int) -> str:
    """Say how plain rows are laid."""
    sheets = _on_sheets(count, action.rows_on_sheet, action.rows_on_sheet * action.per_row)
    return f", up to ({action.per_row}) to a row{sheets}; {_room(pattern, action)}"


def _room(pattern: Pattern, action: TraceRings) -> str:
    design, web = pattern.design, pattern.materials.web
    abreast = 1 if action.stagger else action.per_row
    below = 1 if action.stagger else max(1, action.rows_on_sheet)
    wide = room_side(design, action.room_width, abreast, action.gap, web.web_width)
    high = room_side(design, action.room_height, below, action.gap, web.sheet or ZERO)
    return f"each takes {wide} × {high}, its ring included"


def _on_sheets(count: int, rows: int, on_sheet: int) -> str:
    return f", ({rows}) {plural(rows, 'row')} to a sheet, ({-(-count // on_sheet)}) sheets" if rows else ""


def staggered_rows(pattern: Pattern, action: TraceRings, count: int) -> str:
    """Say how staggered rows are laid: how many are in each, where they begin, and how far they are apart."""
    design, rule = pattern.design, action.stagger
    assert rule is not None
    if rule.in_one_line and not action.rows_on_sheet:
        return _one_line(pattern, action, rule)
    on_sheet = -(-action.rows_on_sheet // 2) * rule.odd + action.rows_on_sheet // 2 * rule.even
    flipped = " In every second row turn it by a half besides." if rule.flipped else ""
    if rule.in_one_line:
        apart = (
            "Every second row lies on the line of the one before, between its tracings; the next one is "
            f"{on_ruler(design, rule.back)} further"
        )
    elif rule.down == rule.back:
        apart = f"Rows are {on_ruler(design, rule.down)} apart"
    else:
        apart = f"Rows are {on_ruler(design, rule.down)} and {on_ruler(design, rule.back)} apart in turn"
    first, second, pitch = (on_ruler(design, each) for each in (rule.first, rule.second, rule.pitch))
    return (
        f" in rows of ({rule.odd}) and ({rule.even}) in turn{_on_sheets(count, action.rows_on_sheet, on_sheet)}. "
        f"The first row is {_top(pattern, action, rule)}; its middles begin {first} from the left edge, "
        f"those of every second row {second}, then one every {pitch}. {apart}.{_quarter(rule)}{flipped} "
        f"{_sentence(_room(pattern, action))}"
    )


def _one_line(pattern: Pattern, action: TraceRings, rule: Stagger) -> str:
    """Say how rows are laid that are two in one line, every second tracing upside down."""
    first, step, back = (on_ruler(pattern.design, each) for each in (rule.first, rule.pitch / 2, rule.back))
    return (
        f" in rows of ({rule.odd + rule.even}). The first row is {_top(pattern, action, rule)}; its middles begin "
        f"{first} from the left edge, then one every {step}. Rows are {back} apart.{_quarter(rule)} Turn every second "
        f"template in a row by a half. {_sentence(_room(pattern, action))}"
    )


def _top(pattern: Pattern, action: TraceRings, rule: Stagger) -> str:
    """Say how far the first row is from what it begins at."""
    design, only = pattern.design, len(pattern.materials.web.rows) == 1
    begins = (
        "the cut end" if only else f"the cut end, or from {_beyond(design, action)} what is traced before"
    )
    begins = "the upper edge of the sheet" if action.rows_on_sheet else begins
    return f"{on_ruler(design, rule.top)} from {begins}"


def _quarter(rule: Stagger) -> str:
    return " The template lies turned by a quarter, clockwise." if rule.quarter else ""


def _sentence(words: str) -> str:
    return f"{words[0].upper()}{words[1:]}"


def _beyond(design: Design, action: TraceRings) -> str:
    return f"{on_ruler(design, action.gap)} beyond" if action.gap else "the end of"


def _spaced(design: Design, action: TraceRings) -> str:
    if action.stagger and action.stagger.in_one_line and not action.rows_on_sheet:
        return (
            "Set the tracings in rows in which every second one stands on its head, so that they reach into each "
            "other. All sizes lead to the middle of a tracing, the cross of its template."
        )
    if action.stagger:
        return (
            "Set the tracings in rows that reach into each other: every second row is shifted by half a step. All "
            "sizes lead to the middle of a tracing, the cross of its template."
        )
    if action.gap == 0:
        return "Set the tracings in rows; the rings may touch."
    return f"Set the tracings in rows, with {length(design, action.gap)} between the rings."


def hollow(design: Design, action: TraceRings | Tracing) -> str:
    if action.ring_in.is_empty() and action.hole:
        within = length(design, design.making.ring_out)
        return f"Cut the inside out {within} within the inner outline; the band is too narrow to be hollowed out."
    if action.ring_in.is_empty():
        return "These shapes are too small to be hollowed out: leave the web whole."
    if action.hole:
        within = length(design, design.making.ring_out)
        return (
            f"Cut the inside of the ring out as well, {within} within its inner outline, and hollow the band out "
            "between its two inner ring lines."
        )
    return (
        f"Cut the middle out on the inner ring line, {length(design, design.making.ring_in)} inside the "
        "outline, so that a ring is left."
    )


def tell_fuse_rings(step: Step, action: FuseRings, pattern: Pattern) -> Wording:
    """Tell fusing the rings to the cloth."""
    _, cloth = step.uses
    fabric, word = (
        named(pattern.design, pattern.bill.piece(cloth.label).fabric),
        _cloth_word(pattern, cloth.label),
    )
    sentences = (
        f"Lay a {word} of cloth wrong side up on the non-stick sheet, and centre a ring on it, paper side up.",
        "Press with a dry iron for as long as the web maker says. Lift and press; do not slide.",
        "Let it cool flat before you touch the paper.",
    )
    line = (
        f"{fabric}: fuse ({step.uses[0].count}) {_rings(pattern, action, step.uses[0].count)} to ({cloth.count}) "
        f"{plural(cloth.count, word)} {cloth.label}."
    )
    return Wording("Fuse the rings to the wrong side of the cloth", sentences, line)


def _rings(pattern: Pattern, action: FuseRings, count: int) -> str:
    if pattern.design.recipe(action.recipe).kind is not RecipeKind.SHAPES:
        return f"{action.shape} {plural(count, 'ring')}"
    return f"{plural(count, 'ring')} of web for {plural(count, shape_word(action.shape))}"


def _cloth_word(pattern: Pattern, label: str) -> str:
    piece = pattern.bill.piece(label)
    return "square" if piece.length == piece.width else "rectangle"


def tell_cut_out(step: Step, action: CutOut, pattern: Pattern) -> Wording:
    """Tell cutting the shapes out and peeling."""
    (made,) = step.makes
    letter = made.label.removesuffix(f" {action.shape}")
    sentences = (
        "Cut out each shape exactly on the outline, through paper, web and cloth together.",
        *(("Cut out the hole of each ring on its line too; begin in its middle.",) if action.hole else ()),
        *_folded(pattern, action),
        "Peel the paper off; where it holds, score it with a pin first.",
        "Stack the shapes with cloth between them, never web to web.",
    )
    across, high = (length(pattern.design, side) for side in (made.width, made.height))
    size, way = (across, "across") if across == high else (f"{across} × {high}", "over all")
    what = plural(made.count, shape_word(action.shape))
    line = f"{named(pattern.design, letter)}: make ({made.count}) {what}, about {size} {way}."
    return Wording("Cut out the shapes and peel off the paper", sentences, line)


def _folded(pattern: Pattern, action: CutOut) -> tuple[str, ...]:
    """Tell how a shape keeps the cross of its template, which is hollowed out; a circle is folded in quarters."""
    recipe = pattern.design.recipe(action.recipe)
    circle = recipe.kind is not RecipeKind.SHAPES and not isinstance(recipe.size, DrawnOutline)
    if circle and not any(motif.recipe == action.recipe for motif in pattern.bill.motifs):
        return ()
    return (
        "While the paper is on, fold each shape through the marks at its edge, one way and the other, and finger-press "
        "the folds: the creases cross where the cross of the template lies. Where the template names a top, put a pin "
        "there.",
    )
