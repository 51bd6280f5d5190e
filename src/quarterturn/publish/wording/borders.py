"""The sentences of borders: strips sewn on, trimmed to fit, mitred."""

from __future__ import annotations

from quarterturn.proof import Pattern
from quarterturn.publish.wording.model import Wording
from quarterturn.publish.wording.names import length, piece_of, rectangle
from quarterturn.publish.wording.slanting import capital
from quarterturn.setting import Side
from quarterturn.steps import AddBorder, Step, labels

SIDE_NAMES = {
    Side.LEFT: "left side",
    Side.RIGHT: "right side",
    Side.TOP: "top edge",
    Side.BOTTOM: "bottom edge",
}

MEASURE = (
    "The lengths given are calculated. Measure your own top through its centre: ease it to the strips, or, where "
    "you left them uncut, cut them to your measure."
)


def tell_border(step: Step, action: AddBorder, pattern: Pattern) -> Wording:
    """Tell sewing on a border strip."""
    (made,) = step.makes
    work, strip = step.uses[0].label, step.uses[1]
    whole = made.label == labels.TOP
    what = "top" if whole else work
    piece = piece_of(pattern, strip.label)
    size = rectangle(pattern.design, piece.width, piece.length) if piece else ""
    sentences = (
        *((MEASURE,) if whole and piece else ()),
        f"Match ends, centres and quarter points of strip and {what}; pin, and ease the {what} to the strip.",
        f"Sew with a {length(pattern.design, action.seam)} seam, and press the seam towards the border.",
    )
    line = (
        f"{SIDE_NAMES[action.side].capitalize()}: ({strip.count // made.count}) {strip.label}"
        f"{_turned(action.turn)}{f', {size}' if size else ''}. "
        f"{_now(pattern, step)}"
    )
    return Wording(_title(pattern, step), sentences, line)


def _turned(turn: int | None) -> str:
    words = {
        1: ", turned a quarter clockwise",
        2: ", turned by a half",
        3: ", turned a quarter anticlockwise",
    }
    return words.get(turn or 0, "")


def _now(pattern: Pattern, step: Step) -> str:
    (made,) = step.makes
    size = rectangle(pattern.design, made.width, made.height)
    if made.label == labels.TOP:
        return f"The top now measures {size}, unfinished."
    return f"{capital(made.label)} now measures {size}, unfinished; make ({made.count})."
