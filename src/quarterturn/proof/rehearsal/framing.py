"""Carrying out what only some borders need: strips trimmed to fit, mitred corners."""

from __future__ import annotations

import math
from collections import Counter

from quarterturn.geometry import Path, Region, polygon, quarter_turns, rectangle
from quarterturn.proof.rehearsal.cloth import EQUAL, Patch, SpoiledError, plain, with_scrap
from quarterturn.proof.rehearsal.slanting import between
from quarterturn.proof.rehearsal.table import Table
from quarterturn.steps import AddMitred, Step, TrimToFit


def trim_to_fit(table: Table, step: Step, action: TrimToFit) -> None:
    """Trim plain pieces, which lie with their longer side from left to right, to a measure."""
    (pile,), (product,) = step.uses, step.makes
    if pile.count != product.count:
        raise SpoiledError(f"{pile.count} pieces go in and {product.count} come out.")
    piece = table.take_patch(pile)
    if piece.box.width < action.length - EQUAL or piece.box.height < action.width - EQUAL:
        raise SpoiledError(
            f"The piece measures {piece.box.width:.4f} by {piece.box.height:.4f} inches: too little to be trimmed "
            f"to {float(action.length):.4f} by {float(action.width):.4f}."
        )
    cloth = piece.scraps[0]
    table.put(product, plain(cloth.fabric, action.length, action.width, cloth.print))


def add_mitred(table: Table, step: Step, action: AddMitred) -> None:
    """Sew a strip to every side up to a seam from the corners, and sew the strips' ends together at 45°."""
    (product,) = step.makes
    wanted = Counter((action.sides, action.sides, action.ends, action.ends))
    piles = {pile.label: pile.count for pile in step.uses[1:]}
    if (
        piles != {label: n * product.count for label, n in wanted.items()}
        or step.uses[0].count != product.count
    ):
        raise SpoiledError("The strips taken are not those to be sewn on.")
    work = table.take_patch(step.uses[0]).turned(action.laid).centred()
    strips = {pile.label: table.take_patch(pile) for pile in step.uses[1:]}
    seam, depth, box = float(action.seam), float(action.depth), work.box
    width, height = box.width - 2 * seam, box.height - 2 * seam
    seen = between(between(work, 1, -width / 2, width / 2), 1j, -height / 2, height / 2)
    for turn, label in enumerate((action.ends, action.sides, action.ends, action.sides)):
        along, up = (width, height) if turn % 2 == 0 else (height, width)
        strip = _mitred(strips[label], along, up, depth, seam)
        region = Region((quarter_turns(turn).path(strip),))
        (cloth,) = strips[label].turned(turn % 2).scraps
        seen = with_scrap(seen, cloth, region)
    out = depth + seam
    edge = rectangle(-width / 2 - out, -height / 2 - out, width / 2 + out, height / 2 + out)
    table.put(product, Patch(edge, seen.scraps))


def _mitred(strip: Patch, along: float, up: float, depth: float, seam: float) -> Path:
    """Return what is seen of the strip at the top of work of this finished size, its ends cut off at 45°."""
    if abs(strip.box.height - depth - 2 * seam) > EQUAL:
        raise SpoiledError(f"The strip is {strip.box.height:.4f} inches wide, not {depth + 2 * seam:.4f}.")
    needed = along + 2 * depth + 2 * seam * (1 + math.sqrt(2))
    if strip.box.width < needed - EQUAL:
        raise SpoiledError(f"The strip is {strip.box.width:.4f} inches long; a mitre takes {needed:.4f}.")
    half, top, out = along / 2, -up / 2, depth + seam
    return polygon(
        [
            complex(-half - out, top - out),
            complex(half + out, top - out),
            complex(half, top),
            complex(-half, top),
        ]
    )
