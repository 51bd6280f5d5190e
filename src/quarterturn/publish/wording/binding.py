"""The sentences of the binding: cut on the bias, if it is, and sewn on."""

from __future__ import annotations

from quarterturn.design import Fold
from quarterturn.proof import Pattern
from quarterturn.publish.wording.model import Wording
from quarterturn.publish.wording.names import length, sized
from quarterturn.steps import Bind, CutBias, Step
from quarterturn.steps.labels import BINDING


def tell_bias(step: Step, action: CutBias, pattern: Pattern) -> Wording:
    """Tell how a sheet becomes one strip on the bias."""
    (used,), (made,) = step.uses, step.makes
    piece = pattern.bill.piece(used.label)
    seam, strip = length(pattern.design, action.seam), length(pattern.design, action.strip_width)
    sentences = (
        *_slanting(used.label, piece.length == piece.width, seam),
        f"On the wrong side draw lines along the slanting edges, {strip} apart: {action.rows} rows. Cut off what is "
        "left beyond the last line.",
        "Bring the two straight edges together to a tube, right sides together, and shift them by one row: the first "
        f"line on one meets the slanting edge on the other, {seam} inside the straight edges, the second line the "
        f"first, and so on. Sew with a {seam} seam, and press it open.",
        "Begin where a row stands out at one end, and cut along the line, round and round, to the other end.",
    )
    line = f"The strip is {strip} wide and at least {length(pattern.design, made.width)} long; its ends are slanting."
    return Wording("Cut the binding on the bias", sentences, line)


def _slanting(label: str, square: bool, seam: str) -> tuple[str, ...]:
    """Tell how the sheet is cut and sewn to a slanting piece."""
    if square:
        return (
            f"Cut the square {label} once from corner to corner.",
            "Lay the two triangles right sides together with a short edge of one on a short edge of the other, so that "
            "they form a slanting piece with two slanting and two straight edges when they are opened. Sew with a "
            f"{seam} seam, and press it open.",
        )
    return (
        f"Fold a short edge of {label} up to a long one, crease, and cut along the crease: a triangle comes off.",
        "Move the triangle to the other end, its short edge on the short edge there, right sides together, so that "
        f"both ends slant alike when it is opened. Sew with a {seam} seam, and press it open.",
    )


def tell_binding(step: Step, action: Bind, pattern: Pattern) -> Wording:
    """Tell binding."""
    (made,), run = step.makes, step.uses[1].label
    width, seam = length(pattern.design, action.strip_width), length(pattern.design, action.seam)
    called = f"{width} binding" if run == BINDING else f"{width} binding {run}"
    single = action.fold is Fold.SINGLE
    if single:
        folded = f"Fold a {seam} edge of the {called} to its wrong side along its length, and press."
    else:
        folded = f"Fold the {called} in half along its length, wrong sides together, and press."
    how = "its flat edge even with the raw edge, right sides together" if single else "raw edges even"
    sentences = (
        folded,
        f"Sew it to the front with a {seam} seam, {how}, mitring each corner: stop {seam} from the "
        "corner, fold the strip up, then down along the next edge.",
        "Join the ends with a diagonal seam, turn the fold to the back, and sew it down.",
    )
    return Wording(
        "Bind the quilt",
        sentences,
        f"The finished quilt measures {sized(pattern.design, made.width, made.height)}.",
    )
