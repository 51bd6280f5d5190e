"""The sentences of borders: strips sewn on, trimmed to fit, mitred."""

from __future__ import annotations

from quarterturn.proof import Pattern
from quarterturn.publish.wording.model import Wording
from quarterturn.publish.wording.names import length, listed, named, piece_of, rectangle, sized
from quarterturn.publish.wording.owners import owner_of, titled, without_owner
from quarterturn.publish.wording.sections import section_name, sections_of
from quarterturn.publish.wording.slanting import capital
from quarterturn.setting import ClothUse, Framed, PlainCloth, Side
from quarterturn.steps import AddBorder, AddMitred, Chapter, Step, TrimToFit, labels

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
        f"{_laid(work, action.laid)}{SIDE_NAMES[action.side].capitalize()}: ({strip.count // made.count}) "
        f"{without_owner(strip.label)}"
        f"{_turned(action.turn)}{f', {size}' if size else ''}. {_now(pattern, step)}"
    )
    return Wording(_title(pattern, step), sentences, line)


def _laid(work: str, turn: int) -> str:
    """Return how the work is laid, where that is another way than it was cut or made."""
    return f"Lay {without_owner(work)}{_turned(turn)}. " if turn % 4 else ""


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


def _title(pattern: Pattern, step: Step) -> str:
    """Return which border is sewn on, and of what."""
    owner, framed = owner_of(step, pattern), framed_of(step, pattern)
    ring = ring_of(step, framed, pattern)
    many = f" {ring + 1}" if len(framed.frames) > 1 else ""
    strips = [child.node for child in framed.frames[ring].strips]
    cloths = [node for node in strips if isinstance(node, PlainCloth)]
    kind = "coping" if cloths and cloths[0].use is ClothUse.COPING else "border"
    what = f"Sew on {kind}{many}" if many else f"Sew on the {kind}"
    if cloths:
        return f"{titled(owner, what)}: {named(pattern.design, cloths[0].fabric)}"
    return f"{titled(owner, what)}: {listed(list(dict.fromkeys(map(section_name, strips))))}"


def framed_of(step: Step, pattern: Pattern) -> Framed:
    """Return the section whose border a step sews on."""
    owner = owner_of(step, pattern)
    made = (made.node for made in sections_of(pattern.setting.top) if made.name == owner)
    framed = next(made) if owner else pattern.setting.top
    assert isinstance(framed, Framed), "only what has borders has borders sewn on"
    return framed


def ring_of(step: Step, framed: Framed, pattern: Pattern) -> int:
    """Return which border a step sews on, by the size that the work has then."""
    (made,) = step.makes
    seams = 2 * pattern.design.making.seam
    width, height = framed.centre.width, framed.centre.height
    for ring, frame in enumerate(framed.frames):
        width, height = width + 2 * frame.side_depth, height + 2 * frame.end_depth
        if made.width <= width + seams and made.height <= height + seams:
            return ring
    return len(framed.frames) - 1


def tell_mitred(step: Step, action: AddMitred, pattern: Pattern) -> Wording:
    """Tell sewing on a mitred border."""
    (made,) = step.makes
    design, seam = pattern.design, length(pattern.design, action.seam)
    pieces = [pattern.bill.piece(label) for label in (action.sides, action.ends)]
    sentences = (
        *((MEASURE_MITRED,) if made.label == labels.TOP else ()),
        "Mark the middle of each strip and of each edge, and pin middle on middle; the strips stand out at both ends.",
        f"Sew each strip with a {seam} seam, beginning and stopping {seam} from the raw corners. Press to the border.",
        "At each corner lay the two strips right sides together, so that their raw edges and the edges of the border "
        "lie level, and mark a line at 45° from the end of the seams outwards. Sew on it, from the inner corner out.",
        f"Unfold and look: the corner must lie flat and square. Trim {seam} outside the mitre, and press it open.",
    )
    strips = "; ".join(
        f"{where}: (2) {piece.label}, {rectangle(design, piece.width, piece.length)}"
        for where, piece in zip(("sides", "top and bottom"), pieces, strict=True)
    )
    laid = _laid(step.uses[0].label, action.laid)
    return Wording(_title(pattern, step), sentences, f"{laid}{capital(strips)}. {_now(pattern, step)}")


MEASURE_MITRED = (
    "The strips are longer than the finished edge, so that they can be mitred; "
    "do not cut them shorter before they are sewn."
)


def tell_trim_to_fit(step: Step, action: TrimToFit, pattern: Pattern) -> Wording:
    """Tell trimming strips to what they are sewn to."""
    (used,) = step.uses
    piece = pattern.bill.piece(used.label)
    whole = step.chapter is Chapter.BORDERS
    what = (
        "the top through its middle" if whole else "the sections that they are sewn to through their middle"
    )
    sentences = (
        "Not every measure of these pieces can be read off a ruler; where one cannot, they were cut at the next mark. "
        f"Measure {what}, and trim them to your measure; it may be that next to nothing comes off.",
    )
    size = sized(pattern.design, action.width, action.length)
    line = f"({used.count}) {used.label}, {piece.name}: about {size}, unfinished."
    return Wording(titled(owner_of(step, pattern), "Trim strips to fit"), sentences, line)
