"""Carrying out the sewing steps, from laid-out units to a bound quilt."""

from __future__ import annotations

from collections import Counter

from quarterturn.proof.rehearsal.cloth import EQUAL, Patch, SpoiledError, plain, sew
from quarterturn.proof.rehearsal.table import Table
from quarterturn.setting import WAYS, Side
from quarterturn.steps import (
    AddBorder,
    JoinPanels,
    LabelStacks,
    LayerQuilt,
    LayOut,
    Pile,
    QuiltLayers,
    SewLine,
    Step,
)


def label_stacks(table: Table, step: Step, action: LabelStacks) -> None:
    """Count the stacks: each must hold what its label says."""
    for pile in action.stacks:
        there = table.count(pile.label)
        if there != pile.count:
            raise SpoiledError(f"A stack should hold {pile.count} of '{pile.label}'; it holds {there}.")


def lay_out(table: Table, step: Step, action: LayOut) -> None:
    """Lay out the units: they must be there, all of them, and no more."""
    wanted = Counter(placed.label for row in action.rows for placed in row)
    if not action.slanting and len({len(row) for row in action.rows if len(row) > 1}) > 1:
        raise SpoiledError("The rows differ in length.")
    wanted.update({pile.label: pile.count for pile in action.later})
    for label, count in wanted.items():
        if table.count(label) != count:
            raise SpoiledError(f"The layout wants {count} of '{label}'; there are {table.count(label)}.")


def sew_line(table: Table, step: Step, action: SewLine) -> None:
    """Sew parts in a line, as often as the step makes it."""
    (product,) = step.makes
    wanted = Counter(placed.label for placed in action.parts)
    if {label: n * product.count for label, n in wanted.items()} != {p.label: p.count for p in step.uses}:
        raise SpoiledError("The parts of the line are not the pieces taken.")
    lying = {pile.label: table.take_patch(pile) for pile in step.uses}
    parts = [lying[placed.label].turned(placed.turn) for placed in action.parts]
    line = parts[0]
    for part in parts[1:]:
        line = sew(line, part, WAYS[action.way], action.seam)
    table.put(product, line)


def add_border(table: Table, step: Step, action: AddBorder) -> None:
    """Sew a strip to one side of the top, raw edges together: its end where only that is as long."""
    (product,) = step.makes
    if any(pile.count != product.count for pile in step.uses):
        raise SpoiledError("Each section takes one strip on a side.")
    top, strip = (table.take_patch(pile) for pile in step.uses)
    top = top.turned(action.laid)
    upright = action.side in (Side.LEFT, Side.RIGHT)
    edge = top.box.height if upright else top.box.width
    by_end = abs(strip.box.height - edge) < EQUAL < abs(strip.box.width - edge)
    turn = int(upright != by_end) if action.turn is None else action.turn
    table.put(product, sew(top, strip.turned(turn), WAYS[action.side], action.seam))


def join_panels(table: Table, step: Step, action: JoinPanels) -> None:
    """Sew backing panels along their long edges and trim the sheet."""
    (pile,), (product,) = step.uses, step.makes
    panel = table.take_patch(pile)
    wide = pile.count * panel.box.width - (pile.count - 1) * 2 * float(action.seam)
    width, height = (wide, panel.box.height) if action.runs_down else (panel.box.height, wide)
    if product.width > width + EQUAL or product.height > height + EQUAL:
        raise SpoiledError(
            f"The joined panels measure {width:.3f} by {height:.3f} inches: too small for the sheet."
        )
    table.put(product, plain(panel.scraps[0].fabric, product.width, product.height))


def layer_quilt(table: Table, step: Step, action: LayerQuilt) -> None:
    """Lay backing, batting and top over one another; the lower two must stand out all round."""
    (product,) = step.makes
    top, backing = _top_and_backing(table, step.uses)
    batting = table.supplies.batting
    for name, width, height in (
        ("backing", backing.box.width, backing.box.height),
        ("batting", float(batting.width), float(batting.length)),
    ):
        out = min(width - top.box.width, height - top.box.height) / 2 + float(action.seam)
        if out < float(action.overage) - EQUAL:
            raise SpoiledError(f"The {name} stands out by {out:.3f} inches only.")
    table.top = top
    table.put(product, plain("layers", batting.width, batting.length))


def _top_and_backing(table: Table, uses: tuple[Pile, ...]) -> tuple[Patch, Patch]:
    if len(uses) != 2:
        raise SpoiledError("A quilt takes one top and one backing.")
    top, backing = (table.take_patch(pile) for pile in uses)
    return top, backing


def quilt_layers(table: Table, step: Step, action: QuiltLayers) -> None:
    """Quilt, and trim the layers to the edge of the top."""
    (pile,), (product,) = step.uses, step.makes
    table.take_patch(pile)
    if table.top is None:
        raise SpoiledError("No top has been layered.")
    box = table.top.box
    table.put(product, plain("layers", box.width, box.height))
