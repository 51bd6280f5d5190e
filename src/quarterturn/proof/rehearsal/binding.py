"""Carrying out the binding, from a sheet on the bias if there is one."""

from __future__ import annotations

import math

from quarterturn.design import FACES
from quarterturn.proof.rehearsal.cloth import EQUAL, SpoiledError, plain
from quarterturn.proof.rehearsal.table import Table
from quarterturn.steps import Bind, CutBias, Step


def cut_bias(table: Table, step: Step, action: CutBias) -> None:
    """Cut a sheet at 45°, sew both seams, and cut the tube in whole rows: the strip must be long enough.

    The area adds up: all of the sheet is in the strip, in the allowances of two seams, or beyond the last row.
    """
    (pile,), (product,) = step.uses, step.makes
    sheet = table.take_patch(pile)
    if pile.count != 1 or product.count != 1:
        raise SpoiledError("One sheet makes one strip.")
    short, along = sorted((sheet.box.width, sheet.box.height))
    seam, strip = float(action.seam), float(action.strip_width)
    base, high = along - 2 * seam, short - 2 * seam
    taken = action.rows * strip * math.sqrt(2)
    if action.rows < 1 or high <= 0 or taken > base + EQUAL:
        raise SpoiledError(
            f"The tube is {base / math.sqrt(2):.3f} inches wide: too narrow for {action.rows} rows."
        )
    length = action.rows * high * math.sqrt(2)
    seams = 2 * seam * short + 2 * seam * base
    if abs(short * along - seams - (base - taken) * high - length * strip) > EQUAL:
        raise SpoiledError("The strip has not the area that the sheet has beyond its seams.")
    if length < float(product.width) - EQUAL:
        raise SpoiledError(f"The strip is {length:.3f} inches long; {float(product.width):.3f} are promised.")
    table.put(product, plain(sheet.scraps[0].fabric, product.width, action.strip_width))


def bind(table: Table, step: Step, action: Bind) -> None:
    """Bind the quilt: the run must go round it and overlap itself by two strip widths."""
    (product,) = step.makes
    quilted, run = (table.take_patch(pile) for pile in step.uses)
    box, strip = quilted.box, float(action.strip_width)
    if abs(run.box.height - strip) > EQUAL:
        raise SpoiledError("The binding has another width than the step says.")
    if FACES[action.fold] * float(action.seam) > strip + EQUAL:
        raise SpoiledError(f"The binding is too narrow to be folded {action.fold.value} round the edge.")
    needed = 2 * (box.width + box.height) + 2 * strip
    if run.box.width < needed:
        raise SpoiledError(f"The binding is {run.box.width:.3f} inches long; {needed:.3f} are needed.")
    table.seam = action.seam
    inner = plain("layers", box.width - 2 * float(action.seam), box.height - 2 * float(action.seam))
    table.put(product, inner)
