"""How each node of the tree is found on the sewing table: under which label, and lying how."""

from __future__ import annotations

from collections.abc import Iterator

from quarterturn.design import Design
from quarterturn.measure import Length
from quarterturn.pieces import Bill, ClothPiece, Piece, cloth_piece, held_by, is_measurable, times_made
from quarterturn.setting import Child, ClothUse, Framed, Node, OneUnit, PlainCloth, Setting
from quarterturn.steps import labels
from quarterturn.steps.draft import Draft, draft
from quarterturn.steps.model import Chapter
from quarterturn.steps.sections import TrimToFit
from quarterturn.steps.things import Pile, Placed, Product


class Names:
    """What everything is called that is made of a tree, and how often it is made.

    Cut rectangles lie with their longer side from left to right.
    """

    def __init__(self, design: Design, setting: Setting, bill: Bill) -> None:
        self.design, self.setting, self.bill = design, setting, bill
        self.seam: Length = design.making.seam
        self.made = times_made(setting.top)
        self._placed: dict[Node, Placed] = {}
        self._taken = set(labels.FIXED)

    def name(self, wanted: str) -> str:
        """Return a label that nothing else has, as near to the wanted one as can be."""
        number, name = 1, wanted
        while name in self._taken:
            number += 1
            name = f"{wanted} ({number})"
        self._taken.add(name)
        return name

    def put(self, node: Node, placed: Placed) -> None:
        """Note what a node is called once it is made."""
        self._placed[node] = placed

    def placed(self, child: Child) -> Placed:
        """Return a made child as it is laid down at its place."""
        lying = self._of(child.node)
        turn = (lying.turn + child.turn) % 4
        return Placed(lying.label, turn % 2 if isinstance(child.node, PlainCloth) else turn)

    def _of(self, node: Node) -> Placed:
        if isinstance(node, OneUnit):
            return Placed(labels.unit(node.name), 0)
        if isinstance(node, PlainCloth) and node not in self._placed:
            self.put(
                node, Placed(self.find(cloth_piece(node, self.seam, self.design.units)).label, stands(node))
            )
        return self._placed[node]

    def find(self, piece: ClothPiece) -> Piece:
        """Return the piece of the bill."""
        size = (piece.length, piece.width)
        return self.bill.find(piece.fabric, piece.purpose, piece.name, *size, stands=piece.stands)

    def raw(self, size: Length) -> Length:
        """Return a size with its seam allowances."""
        return size + 2 * self.seam

    def product(self, label: str, count: int, width: Length, height: Length) -> Product:
        """Return equal things of this finished size."""
        return Product(label, count, self.raw(width), self.raw(height))

    def trimmed_cloth(self) -> Iterator[Draft]:
        """Trim the plain pieces of sections that no ruler measures to the sections beside them."""
        for node, count in self.made.items():
            if isinstance(node, PlainCloth) and node.use not in (ClothUse.BORDER, ClothUse.COPING):
                piece = cloth_piece(node, self.seam, self.design.units)
                step, label = self.trim(node, piece, count, self._holder(node), Chapter.ASSEMBLY)
                if step:
                    self.put(node, Placed(label, stands(node)))
                    yield step

    def _holder(self, cloth: PlainCloth) -> str:
        """Return the name of the first section that holds a plain cloth."""
        return next(
            getattr(n, "name", "") for n in self.made if not isinstance(n, PlainCloth) and cloth in held_by(n)
        )

    def trim(
        self, cloth: PlainCloth, piece: ClothPiece, count: int, fits: str, chapter: Chapter
    ) -> tuple[Draft | None, str]:
        """Return the step that trims pieces to a finished size, where it takes one, and what they are called then."""
        label = self.find(piece).label
        if is_measurable(cloth.width) and is_measurable(cloth.height):
            return None, label
        width, length = sorted((cloth.width, cloth.height))
        made = self.product(self.name(labels.fitted(label, fits)), count, length, width)
        action = TrimToFit(fits, made.width, made.height)
        return draft(chapter, action, (Pile(label, count),), (made,)), made.label


def stands(cloth: PlainCloth) -> int:
    """Return the quarter turns that bring a piece, longer side level, into its place: 1 where it stands upright."""
    return int(cloth.width < cloth.height)


def chapter_of(node: Node, setting: Setting) -> Chapter:
    """Return the chapter in which a border is sewn on: that of the borders for the root's."""
    return Chapter.BORDERS if isinstance(node, Framed) and node == setting.top else Chapter.ASSEMBLY
