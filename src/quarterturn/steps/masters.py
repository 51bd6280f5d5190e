"""The steps that turn ground and shapes into stitched masters."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

from quarterturn.blocks import Blocks, Master
from quarterturn.design import Design
from quarterturn.pieces import Bill, MasterCount
from quarterturn.steps import labels
from quarterturn.steps.draft import Draft, draft
from quarterturn.steps.ground import Kind, crease_of, kinds_of, place_of, starts_on
from quarterturn.steps.making import Crease, FuseToGround, StitchEdge
from quarterturn.steps.model import Chapter
from quarterturn.steps.things import Pile, Product
from quarterturn.steps.units import is_done_when_stitched, rejoin_steps, stacks, unit_steps


def master_steps(design: Design, blocks: Blocks, bill: Bill) -> Iterator[Draft]:
    """Return creasing, fusing, stitching and everything up to trimmed, counted units.

    What lies on the ground alone is fused to every master, then stitched; then what lies on that, and so on.
    """
    creases = _Creases(blocks, bill)
    yield from creases.steps()
    kinds = {master.recipe: kinds_of(master) for master in blocks.masters}
    top = max((kind.level for each in bill.masters for kind in kinds[each.recipe]), default=0)
    for level in range(top + 1):
        for each in bill.masters:
            yield from _fuse_level(design, blocks, each, creases.label(each), kinds[each.recipe], level)
        for each in bill.masters:
            yield from _stitch_level(design, blocks, each, kinds[each.recipe], level)
    for each in bill.masters:
        yield from unit_steps(blocks.master(each.recipe), each)
    for rejoined in bill.rejoined:
        yield from rejoin_steps(design, blocks, rejoined)
    yield from stacks(bill)


class _Creases:
    """The creased pieces of ground, by the piece that they are and by how they are creased."""

    def __init__(self, blocks: Blocks, bill: Bill) -> None:
        self._blocks, self._bill = blocks, bill
        self._ways: dict[str, list[Crease]] = {}
        for each in bill.masters:
            ways, way = self._ways.setdefault(each.ground, []), crease_of(blocks.master(each.recipe))
            if all(_marks(way) != _marks(other) for other in ways):
                ways.append(way)

    def label(self, masters: MasterCount) -> str:
        """Return the name of the creased ground of a colourway; it says for which recipe where that matters."""
        one = len(self._ways[masters.ground]) == 1
        return labels.creased(masters.ground, "" if one else masters.recipe)

    def steps(self) -> Iterator[Draft]:
        """Return the creasing of every piece of ground, for each recipe by itself."""
        counts: Counter[tuple[str, str, str]] = Counter()
        for each in self._bill.masters:
            counts[each.ground, each.recipe, self.label(each)] += each.count
        for (ground, recipe, label), count in counts.items():
            master = self._blocks.master(recipe)
            made = Product(label, count, master.width, master.height)
            yield draft(Chapter.FUSING, crease_of(master), (Pile(ground, count),), (made,))


def _marks(way: Crease) -> tuple[object, ...]:
    return way.folds, way.drawn, way.middles


def _fuse_level(
    design: Design, blocks: Blocks, masters: MasterCount, creased: str, kinds: tuple[Kind, ...], level: int
) -> Iterator[Draft]:
    """Return fusing what lies on one level; above the ground it is part of the stitching."""
    master, code = blocks.master(masters.recipe), masters.code
    before = sum(kind.level < level for kind in kinds)
    for done, kind in enumerate(kinds):
        if kind.level == level:
            ground = labels.master(code, done, before, len(kinds)) if done else creased
            cloth = labels.cut_out(design.cloth(code, kind.part), kind.shape)
            shapes = Pile(cloth, masters.count * len(kind.numbers))
            made = _product(labels.master(code, done + 1, before, len(kinds)), masters, master)
            places = tuple(place_of(master, number) for number in kind.numbers)
            action = FuseToGround(code, masters.recipe, kind.shape, kind.part, places)
            chapter = Chapter.STITCHING if level else Chapter.FUSING
            yield draft(chapter, action, (Pile(ground, masters.count), shapes), (made,))


def _stitch_level(
    design: Design, blocks: Blocks, masters: MasterCount, kinds: tuple[Kind, ...], level: int
) -> Iterator[Draft]:
    master, code = blocks.master(masters.recipe), masters.code
    fused = sum(kind.level <= level for kind in kinds)
    for done, kind in enumerate(kinds):
        if kind.level == level:
            used = Pile(labels.master(code, fused, done, len(kinds)), masters.count)
            label = labels.master(code, fused, done + 1, len(kinds))
            if done + 1 == len(kinds) and is_done_when_stitched(master):
                label = labels.unit(masters.units[0].name)
            made = _product(label, masters, master)
            yield draft(Chapter.STITCHING, _stitching(design, master, code, kind), (used,), (made,))


def _stitching(design: Design, master: Master, code: str, kind: Kind) -> StitchEdge:
    shapes = [master.shapes[number] for number in kind.numbers]
    return StitchEdge(
        code=code,
        recipe=master.recipe,
        shape=kind.shape,
        part=kind.part,
        numbers=kind.numbers,
        stitch=design.making.stitch,
        edge=sum(shape.edge for shape in shapes),
        starts=tuple(start for shape in shapes for start in starts_on(shape, master.cuts)),
        thread_fabric=design.cloth(code, kind.part),
    )


def _product(label: str, masters: MasterCount, master: Master) -> Product:
    return Product(label, masters.count, master.width, master.height)
