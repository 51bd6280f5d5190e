"""The last page: every default by which the pattern was made, and where to write about errors."""

from __future__ import annotations

from functools import partial

from quarterturn.design import BindingKind, Design, Joins, LongCut, Pressing, Recipe
from quarterturn.materials.stitches import LAYER, WASTE
from quarterturn.measure import MM, show_count
from quarterturn.proof import Pattern
from quarterturn.publish.wording.masters import stitch_values
from quarterturn.publish.wording.names import length, listed, rectangle
from quarterturn.publish.wording.parcels import parcels_of
from quarterturn.publish.wording.requirements import thread_length


def defaults(pattern: Pattern) -> tuple[tuple[str, str], ...]:
    """Return every setting of the making, with its value."""
    design, making = pattern.design, pattern.design.making
    size = partial(length, design)
    fused = {each.recipe for each in pattern.bill.masters}
    pressing = "open" if making.pressing is Pressing.OPEN else "opposed at every crossing"
    return (
        ("Seam allowance", size(making.seam)),
        ("Usable width where a fabric states none", size(making.usable_width)),
        ("Web outside the outline", size(making.ring_out)),
        ("Web inside the outline", size(making.ring_in)),
        ("Between two outlines on the web", size(making.tracing_gap)),
        _web(design),
        ("Ground left inside the stitching", size(making.cut_away)),
        *(
            (f"Trimmed off each master, {r.name}", _trim(pattern, r))
            for r in design.recipes
            if r.name in fused
        ),
        (_strip(design), size(design.binding_width)),
        ("Binding beyond the perimeter", size(making.binding_extra)),
        ("Backing and batting beyond the finished quilt, each side", size(making.overage)),
        ("Seam allowance of the backing", size(making.backing_seam)),
        ("Lost in straightening a cut end", size(making.squaring)),
        *_squared_off(pattern),
        ("Cloth bought beyond the cuts, at least", size(making.slack)),
        ("Spare masters of each colourway", str(making.spare_masters)),
        ("Pressing of joining seams", pressing),
        ("Borders longer than the cloth is wide", _LONG[making.borders]),
        ("Their strips, where they are joined", _JOINS[making.joins]),
        ("Layers of cloth cut at once, at most", str(making.layers)),
        ("Edge stitch, as a start", stitch_values(making.stitch)),
        ("Thread", making.stitch.thread),
        ("Needle", making.stitch.needle),
    )


def _web(design: Design) -> tuple[str, str]:
    if design.making.web_sheet:
        return "Sheets of web", rectangle(design, *design.making.web_sheet)
    return "Width of the web", length(design, design.making.web_width)


def _squared_off(pattern: Pattern) -> tuple[tuple[str, str], ...]:
    """Return what squaring takes off pieces of cloth; nothing where it takes nothing."""
    losses = sorted({each.squaring for each in parcels_of(pattern) if each.squaring})
    off = listed([length(pattern.design, loss) for loss in losses]) if losses else ""
    return (("Squared off the width and the height of pieces of cloth", off),) if off else ()


def _strip(design: Design) -> str:
    cut = " on the bias" if design.binding_kind is BindingKind.BIAS else ""
    return f"Binding strip{cut}, folded {design.binding_fold.value}"


def _trim(pattern: Pattern, recipe: Recipe) -> str:
    if recipe.trim_width == recipe.trim_height:
        return length(pattern.design, recipe.trim_width)
    return rectangle(pattern.design, recipe.trim_width, recipe.trim_height)


def estimates(pattern: Pattern) -> tuple[str, ...]:
    """Return what is only estimated, and what is taken for granted in it."""
    design, stitch = pattern.design, pattern.design.making.stitch
    depend = "Lengths of thread are estimates: they depend on stitch, tension and thread."
    if not pattern.materials.stitching:
        return (depend,)
    return (
        f"{depend} The stitch is taken to go through {show_count(stitch.layers, 'layer')} of cloth, each "
        f"{LAYER / float(MM):g} mm thick; {WASTE * 100:g} % is added for ends, tests and changes of bobbin.",
        f"Half of the thread is on bobbins, and a full one is taken to hold about "
        f"{thread_length(float(stitch.bobbin), design.units)}.",
    )


_LONG = {
    LongCut.CHEAPEST: "cut along the cloth or joined, whichever takes less",
    LongCut.LENGTHWISE: "cut along the cloth",
    LongCut.CROSSWISE: "joined from strips",
}


_JOINS = {
    Joins.CHEAPEST: "straight or on the diagonal, whichever takes less",
    Joins.STRAIGHT: "straight",
    Joins.DIAGONAL: "on the diagonal",
}


def imprint(pattern: Pattern) -> tuple[tuple[str, str], ...]:
    """Return title, number, version, date and the address for corrections, as far as the design has them."""
    design = pattern.design
    lines = (
        ("Pattern", design.title),
        ("Designed by", design.maker),
        ("Number", design.number),
        ("Version", design.version),
        ("Date", design.date),
        ("Corrections and questions", design.contact),
    )
    return tuple((name, value) for name, value in lines if value)
