"""Carrying out the cutting steps."""

from __future__ import annotations

from dataclasses import replace

from quarterturn.geometry import shift
from quarterturn.materials import Crosscut, JoinMethod
from quarterturn.proof.rehearsal.cloth import EQUAL, Patch, Scrap, SpoiledError, plain
from quarterturn.proof.rehearsal.table import Table
from quarterturn.steps import (
    CutPanels,
    CutParcels,
    CutRest,
    CutSegments,
    CutStrips,
    JoinEnds,
    Product,
    SetAside,
    SquareParcels,
    Step,
    Straighten,
    Subcut,
)


def straighten(table: Table, step: Step, action: Straighten) -> None:
    """Lose a little at the cut end of a fabric."""
    table.cut_off(action.fabric, action.loss)


def cut_strips(table: Table, step: Step, action: CutStrips) -> None:
    """Cut strips across a fabric."""
    for product in step.makes:
        width = table.cut_off(action.fabric, action.height * product.count)
        table.put(product, plain(action.fabric, width, action.height, table.print_of(action.fabric)))


def cut_panels(table: Table, step: Step, action: CutPanels) -> None:
    """Cut full-width lengths off a fabric."""
    for product in step.makes:
        width = table.cut_off(action.fabric, action.length * product.count)
        table.put(product, plain(action.fabric, width, action.length, table.print_of(action.fabric)))


def subcut(table: Table, step: Step, action: Subcut) -> None:
    """Cut strips across into pieces, side by side."""
    (pile,) = step.uses
    strip = table.take_patch(pile)
    _fits(strip, action.crosscuts)
    (cloth,) = strip.scraps
    _put_pieces(table, step, action, cloth)


def cut_segments(table: Table, step: Step, action: CutSegments) -> None:
    """Cut segments of strips into pieces one below the other, as they lay in the strip."""
    (pile,) = step.uses
    segment = table.take_patch(pile)
    if action.along < action.across:
        # It was laid down with its longer side from left to right: here it lies as it did in the strip.
        segment = segment.turned(1)
    (cloth,), box = segment.scraps, segment.box
    if abs(box.width - action.along) > EQUAL or abs(box.height - action.across) > EQUAL:
        raise SpoiledError(f"'{pile.label}' is {box.width:.4f} by {box.height:.4f} inches.")
    used = sum(cut.across * cut.count for cut in action.crosscuts)
    if used > box.height + EQUAL:
        raise SpoiledError(
            f"The segment is {box.height:.4f} inches high; {float(used):.4f} would be cut from it."
        )
    for cut in action.crosscuts:
        if cut.along > box.width + EQUAL or cut.count < 1:
            raise SpoiledError(f"'{cut.piece}' does not fit in a segment {box.width:.4f} inches long.")
    _put_pieces(table, step, action, cloth)


def _put_pieces(table: Table, step: Step, action: Subcut | CutSegments, cloth: Scrap) -> None:
    """Lay the pieces cut on the table, as many as were promised."""
    (pile,) = step.uses
    if action.layers < 1:
        raise SpoiledError("Nothing is cut where no layer is.")
    if [c.piece for c in action.crosscuts] != [p.label for p in step.makes]:
        raise SpoiledError("The pieces cut are not the pieces promised.")
    for crosscut, product in zip(action.crosscuts, step.makes, strict=True):
        if product.count != crosscut.count * pile.count:
            raise SpoiledError(
                f"{pile.count} × {crosscut.count} of '{product.label}' are not {product.count}."
            )
        table.put(*_lying(product, cloth, crosscut))


def square_parcels(table: Table, step: Step, action: SquareParcels) -> None:
    """Take pieces of cloth and cut each to a size that lies within it; what that takes off is lost."""
    (product,) = step.makes
    parcels, lying = table.take_parcels(action.stock, action.fabric, product.count)
    lost = (parcels.width - product.width, parcels.height - product.height)
    if min(lost) < 0:
        raise SpoiledError(
            f"'{action.stock}' is {float(parcels.width):.4f} by {float(parcels.height):.4f} inches: nothing of "
            f"{float(product.width):.4f} by {float(product.height):.4f} can be cut from it."
        )
    if lost != action.loss:
        raise SpoiledError("What is squared off is not what the step says.")
    table.put(product, plain(action.fabric, product.width, product.height, lying))


def cut_parcels(table: Table, step: Step, action: CutParcels) -> None:
    """Cut pieces of cloth into strips as long as they are wide as they lie, the next where the last one ended."""
    (pile,) = step.uses
    piece = table.take_patch(pile)
    if piece.scraps[0].fabric != action.fabric:
        raise SpoiledError(f"'{pile.label}' is not of fabric {action.fabric}.")
    if action.upright:
        piece = piece.turned(1)
        piece = piece.moved(shift(-complex(piece.box.left, piece.box.top)))
    (cloth,), wide, left = piece.scraps, piece.box.width, piece.box.height
    for product in step.makes:
        if product.count % pile.count or abs(float(product.width) - wide) > EQUAL:
            raise SpoiledError(
                f"'{pile.label}' gives strips {wide:.4f} inches long, the same from each piece."
            )
        left -= float(product.height) * (product.count // pile.count)
        table.put(product, plain(cloth.fabric, product.width, product.height, cloth.print))
    if left < -EQUAL:
        raise SpoiledError(f"The strips need {-left:.4f} inches more than '{pile.label}' has.")


def cut_rest(table: Table, step: Step, action: CutRest) -> None:
    """Cut strips from what is left of a band, one below the other, each as long as the rest is wide."""
    (pile,) = step.uses
    rest = table.take_patch(pile)
    sides, cloth = (rest.box.width, rest.box.height), rest.scraps[0]
    if cloth.fabric != action.fabric:
        raise SpoiledError(f"'{pile.label}' is not of fabric {action.fabric}.")
    along = float(step.makes[0].width)
    wide, high = sides if abs(sides[0] - along) < EQUAL else sides[::-1]
    for product in step.makes:
        if abs(float(product.width) - wide) > EQUAL or product.count % pile.count:
            raise SpoiledError(f"'{pile.label}' does not give strips {float(product.width):.4f} inches long.")
        high -= float(product.height) * (product.count // pile.count)
        table.put(product, plain(cloth.fabric, wide, product.height, cloth.print))
    if high < -EQUAL:
        raise SpoiledError(f"The strips need {-high:.4f} inches more than '{pile.label}' has.")


def _lying(product: Product, cloth: Scrap, crosscut: Crosscut) -> tuple[Product, Patch]:
    """Return a piece with its longer side from left to right, as it is laid down however it was cut.

    It is turned by a quarter anticlockwise, so that a print stands upright again where the piece will stand.
    """
    patch = plain(cloth.fabric, crosscut.along, crosscut.across, cloth.print)
    if crosscut.along < crosscut.across:
        product = replace(product, width=product.height, height=product.width)
        patch = patch.turned(3)
        patch = patch.moved(shift(-complex(patch.box.left, patch.box.top)))
    return product, patch


def _fits(strip: Patch, crosscuts: tuple[Crosscut, ...]) -> None:
    box, used = strip.box, sum(c.along * c.count for c in crosscuts)
    if used > box.width + EQUAL:
        raise SpoiledError(
            f"The strip is {box.width:.4f} inches long; {float(used):.4f} would be cut from it."
        )
    for crosscut in crosscuts:
        if crosscut.across > box.height + EQUAL or crosscut.count < 1:
            raise SpoiledError(f"'{crosscut.piece}' does not fit in a strip {box.height:.4f} inches high.")


def join_ends(table: Table, step: Step, action: JoinEnds) -> None:
    """Sew strips end to end, those of each pile as long as they are."""
    (product,) = step.makes
    strips = [(table.take_patch(pile), pile.count) for pile in step.uses]
    first = strips[0][0]
    (cloth,), height = first.scraps, first.box.height
    diagonal = action.method is JoinMethod.DIAGONAL
    if action.loss <= 0 or (diagonal and abs(action.loss - height) > EQUAL):
        raise SpoiledError("Ends cannot be joined with that loss of length.")
    if any(abs(strip.box.height - height) > EQUAL for strip, _ in strips):
        raise SpoiledError("Strips of different heights cannot be joined end to end.")
    joins = sum(count for _, count in strips) - 1
    length = sum(strip.box.width * count for strip, count in strips) - joins * float(action.loss)
    table.put(product, plain(cloth.fabric, length, height, cloth.print))


def set_aside(table: Table, step: Step, action: SetAside) -> None:
    """Take declared leftovers off the table."""
    for pile in step.uses:
        table.take(pile)
