"""Sewing borders round a section, from the inside outwards."""

from __future__ import annotations

from collections.abc import Generator, Iterator

from quarterturn.design import Corner, Pressing
from quarterturn.measure import Length
from quarterturn.pieces import strip_piece
from quarterturn.setting import Child, Frame, Framed, PlainCloth, Side
from quarterturn.steps import labels
from quarterturn.steps.draft import Draft, draft
from quarterturn.steps.grids import piles
from quarterturn.steps.model import AddBorder, SewLine
from quarterturn.steps.naming import Names, chapter_of, stands
from quarterturn.steps.sections import AddMitred
from quarterturn.steps.things import Pile, Placed, Product, Towards

PLACES = (Side.LEFT, Side.RIGHT, Side.TOP, Side.BOTTOM)
"""The order of the strips of a frame."""

CORNERS_OF = {Side.LEFT: (0, 3), Side.RIGHT: (1, 2), Side.TOP: (0, 1), Side.BOTTOM: (3, 2)}
"""The corners at the two ends of each strip, top or left first, in the order of `Frame.corners`."""


class Framing:
    """The sewing of the borders of one framed section."""

    def __init__(self, names: Names, framed: Framed) -> None:
        self.names, self.framed = names, framed
        self.times = names.made[framed]
        self.chapter = chapter_of(framed, names.setting)
        self.work = names.placed(framed.centre)
        self.width, self.height = framed.centre.width, framed.centre.height
        self.label = self._label()

    def _label(self) -> str:
        """Return what the section is called with its borders: as it is called without them, where that is its name."""
        if self.framed == self.names.setting.top:
            return labels.TOP
        wanted = labels.node(self.framed.name)
        return wanted if self.work.label == wanted else self.names.name(wanted)

    def steps(self) -> Iterator[Draft]:
        """Return the sewing of all borders."""
        for ring, frame in enumerate(self.framed.frames):
            if frame.corner is Corner.MITRED:
                yield from self._mitred(ring, frame)
            else:
                yield from self._strips(ring, frame)
        self.names.put(self.framed, Placed(self.label, 0))

    def _product(self) -> Product:
        return self.names.product(self.label, self.times, self.width, self.height)

    def _mitred(self, ring: int, frame: Frame) -> Iterator[Draft]:
        pieces = [self._piece(ring, place) for place in (0, 2)]
        depth = frame.side_depth
        self.width, self.height = self.width + 2 * depth, self.height + 2 * depth
        action = AddMitred(pieces[0], pieces[1], depth, self.names.seam, self.work.turn)
        strips = tuple(Placed(piece, 0) for piece in (*pieces, *pieces))
        used = (Pile(self.work.label, self.times), *piles(strips, self.times))
        yield draft(self.chapter, action, used, (self._product(),))
        self.work = Placed(self.label, 0)

    def _piece(self, ring: int, place: int) -> str:
        piece = strip_piece(self.framed, ring, place, self.names.seam, self.names.design.units)
        assert piece is not None, "this strip is of plain cloth"
        return self.names.find(piece).label

    def _strips(self, ring: int, frame: Frame) -> Iterator[Draft]:
        """Sew on one pair of strips, then the other, with the corners at its ends where there are any."""
        pairs = ((0, 1), (2, 3)) if frame.sides_first else ((2, 3), (0, 1))
        for number, pair in enumerate(pairs):
            if not (frame.strips[pair[0]].width and frame.strips[pair[0]].height):
                continue
            label = yield from self._trimmed(ring, pair[0])
            for place in pair:
                if number == 1 and frame.corners:
                    line = yield from self._with_corners(ring, place, label)
                    yield self._added(frame, PLACES[place], line, 0)
                else:
                    yield self._added(frame, PLACES[place], *self._strip(frame.strips[place], label))

    def _trimmed(self, ring: int, place: int) -> Generator[Draft, None, str]:
        """Trim a pair of plain strips where no ruler measures them; return what they are called."""
        cloth = self.framed.frames[ring].strips[place].node
        piece = strip_piece(self.framed, ring, place, self.names.seam, self.names.design.units)
        if piece is None or not isinstance(cloth, PlainCloth):
            return ""
        step, label = self.names.trim(cloth, piece, 2 * self.times, self.framed.name, self.chapter)
        if step:
            yield step
        return label

    def _with_corners(self, ring: int, place: int, label: str) -> Generator[Draft, None, str]:
        """Sew corners to both ends of a strip; return what the line is called."""
        frame, side = self.framed.frames[ring], PLACES[place]
        upright = side in (Side.LEFT, Side.RIGHT)
        strip = frame.strips[place]
        laid = (
            Placed(label, stands(strip.node))
            if isinstance(strip.node, PlainCloth)
            else self.names.placed(strip)
        )
        first, last = (self.names.placed(frame.corners[corner]) for corner in CORNERS_OF[side])
        name = self.names.name(labels.border_line(self.framed.name, ring + 1, side.value))
        size = (frame.side_depth, self.height) if upright else (self.width, frame.end_depth)
        press = None if self.names.design.making.pressing is Pressing.OPEN else Towards.STRIPS
        parts = (first, laid, last)
        action = SewLine(parts, Side.BOTTOM if upright else Side.RIGHT, self.names.seam, press)
        made = self.names.product(name, self.times, *size)
        yield draft(self.chapter, action, piles(parts, self.times), (made,))
        return name

    def _strip(self, child: Child, label: str) -> tuple[str, int | None]:
        """Return what a strip is called and how it is turned; a plain one is laid along the side anyhow."""
        if isinstance(child.node, PlainCloth):
            return label, None
        placed = self.names.placed(child)
        return placed.label, placed.turn

    def _added(self, frame: Frame, side: Side, strip: str, turn: int | None) -> Draft:
        upright = side in (Side.LEFT, Side.RIGHT)
        self.width += frame.side_depth if upright else Length(0)
        self.height += Length(0) if upright else frame.end_depth
        used = (Pile(self.work.label, self.times), Pile(strip, self.times))
        action = AddBorder(side, self.names.seam, turn, self.work.turn)
        self.work = Placed(self.label, 0)
        return draft(self.chapter, action, used, (self._product(),))
