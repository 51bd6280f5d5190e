"""The page for those who would rather sew the curve than fuse it."""

from __future__ import annotations

from collections.abc import Iterator

from quarterturn.materials import plan_curves, show_bought
from quarterturn.pieces import CurveBill, curve_bill
from quarterturn.proof import Pattern
from quarterturn.publish.booklet.model import Block, Cell, Figure, Notes, Plate, Section, Table
from quarterturn.publish.figures import curve_figure
from quarterturn.publish.wording import curve_lines, fabric_name, length


def sewn_curve(pattern: Pattern) -> Iterator[Block]:
    """Return how the curve is sewn, with its pieces and its cloth, where a recipe offers it."""
    curves = curve_bill(pattern.design, pattern.blocks, pattern.bill)
    if curves is None:
        return
    yield Section("Or sew the curve", opens=True)
    yield Notes("", curve_lines.instead(pattern))
    firsts = {count.recipe: count.code for count in reversed(curves.counts)}
    cells = tuple(Cell(curve_figure(pattern, code)) for code in reversed(tuple(firsts.values())))
    yield Plate(Figure("Quarter disc and surround, as cut; the unit that they make", cells))
    yield Notes("How it is sewn", curve_lines.sewing(pattern))
    yield _pieces(pattern, curves)
    yield _cloth(pattern, curves)


def _pieces(pattern: Pattern, curves: CurveBill) -> Table:
    design, rows = pattern.design, []
    for count in curves.counts:
        for label, what in ((count.disc, "quarter disc"), (count.surround, "surround")):
            piece = curves.piece(label)
            side = length(design, piece.length)
            fabric = fabric_name(design.fabric(piece.fabric))
            rows.append((f"unit {count.code}", fabric, f"({count.units}) {what}s", f"{side} squares"))
    return Table(("For", "Fabric", "Cut by the templates", "Out of"), tuple(rows), (0.8, 3, 2, 1.6), "Pieces")


def _cloth(pattern: Pattern, curves: CurveBill) -> Table:
    """Return the cloth for the whole quilt, beside what it takes when the shapes are fused."""
    design = pattern.design
    fused = {plan.fabric: show_bought(plan, design.units) for plan in pattern.materials.cloth}
    rows = tuple(
        (
            fabric_name(design.fabric(plan.fabric)),
            show_bought(plan, design.units),
            fused.get(plan.fabric, "none"),
        )
        for plan in plan_curves(design, curves)
    )
    heads = ("Cloth for the whole quilt", "Curves sewn", "Shapes fused")
    return Table(heads, rows, (4, 1.5, 1.5), "Cloth to buy instead")
