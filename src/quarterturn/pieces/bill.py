"""List every piece that must exist before sewing."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from typing import TypeAlias

from quarterturn.blocks import Blocks, FusedShape, Master
from quarterturn.design import GROUND, BindingKind, Design, Direction, Recipe, RecipeKind
from quarterturn.measure import Length, Units, cut_step, cut_up
from quarterturn.pieces.bias import bias_sheet
from quarterturn.pieces.cloths import UPRIGHT_STRIP, cloth_wants, to_cut
from quarterturn.pieces.counting import codes_of_masters, count_masters, count_rejoined, times_made
from quarterturn.pieces.model import Bill, Blank, Grain, MasterCount, MotifCount, Piece, Purpose
from quarterturn.setting import Panel, Setting

HAIR = 1e-7
"""The noise of a curve's measure, in inches."""

_Key: TypeAlias = tuple[str, Purpose, str, Length, Length, Grain]


@dataclass(frozen=True, slots=True)
class _Want:
    """A wish for equal pieces, before equal wishes of one fabric are made one and labelled."""

    fabric: str
    purpose: Purpose
    name: str
    length: Length
    width: Length
    count: int
    spare: int
    user: str
    grain: Grain = Grain.ANY

    def key(self) -> _Key:
        return (self.fabric, self.purpose, self.name, self.length, self.width, self.grain)


def bill_of_pieces(design: Design, blocks: Blocks, setting: Setting) -> Bill:
    """Return masters and pieces of a quilt top, its binding and its backing."""
    rejoined = count_rejoined(design, blocks, setting)
    masters = [
        count_masters(design, blocks, setting, rejoined, code) for code in codes_of_masters(design, setting)
    ]
    wants = [
        *_cloth_wants(design, setting),
        *(want for each in masters for want in _master_wants(design, blocks, each)),
        *_motif_wants(design, blocks, setting),
        _binding_want(design, setting),
        _backing_want(design, setting),
    ]
    pieces, labels = _labelled(design, wants)
    labelled = tuple(_with_labels(design, blocks, each, labels) for each in masters)
    return Bill(labelled, pieces, tuple(_motif_counts(design, blocks, setting, labels)), rejoined)


def blank_size(shape: FusedShape, recipe: Recipe, design: Design) -> tuple[Length, Length]:
    """Return width and height of the cloth for one shape: the whole ring lies on it, cut sizes rounded up.

    Short forms of a recipe take a square. `shape` is the first of its name, as its template shows it.
    """
    over = 2 * design.making.ring_out
    width, height = (_holding(across + over, design.units) for across in (shape.width, shape.height))
    if recipe.kind is not RecipeKind.SHAPES:
        width = height = max(width, height)
    return width, height


def _holding(ring: float, units: Units) -> Length:
    """Round up so that not even the little which `cut_up` ignores of a ring hangs over its cloth."""
    side = cut_up(ring, units)
    return side if ring - side < HAIR else side + cut_step(units)


def _master_wants(design: Design, blocks: Blocks, masters: MasterCount) -> Iterator[_Want]:
    master, user = blocks.master(masters.recipe), f"colourway {masters.code}"
    ground = design.cloth(masters.code, GROUND)
    name = _named("ground square", master.width, master.height)
    yield _Want(ground, Purpose.GROUND, name, master.width, master.height, masters.count, masters.spare, user)
    for blank in masters.blanks:
        yield _blank_want(design, master, masters, blank)


def _blank_want(design: Design, master: Master, masters: MasterCount, blank: Blank) -> _Want:
    width, height = blank_size(_template(master, blank.shape), design.recipe(masters.recipe), design)
    return _Want(
        design.cloth(masters.code, blank.part),
        Purpose.SHAPE,
        _named("square for a shape", width, height),
        width,
        height,
        masters.count * blank.each,
        masters.spare * blank.each,
        f"colourway {masters.code}",
    )


def _named(square: str, width: Length, height: Length) -> str:
    return square if width == height else square.replace("square", "rectangle")


def _template(master: Master, name: str) -> FusedShape:
    return next(shape for shape, _ in master.templates if shape.name == name)


def _with_labels(
    design: Design, blocks: Blocks, masters: MasterCount, labels: dict[_Key, str]
) -> MasterCount:
    ground, *blanks = (labels[want.key()] for want in _master_wants(design, blocks, masters))
    labelled = tuple(replace(blank, label=label) for blank, label in zip(masters.blanks, blanks, strict=True))
    return replace(masters, ground=ground, blanks=labelled)


def _cloth_wants(design: Design, setting: Setting) -> Iterable[_Want]:
    """Yield the plain pieces; of a print that must stand upright those that stand are cut along the cloth."""
    for want in cloth_wants(setting.top, design.making.seam, design.units):
        piece = want.piece
        lengthwise = piece.stands and design.fabric(piece.fabric).upright
        grain = Grain.LENGTHWISE if lengthwise else Grain.ANY
        size = (piece.length, piece.width)
        yield _Want(piece.fabric, piece.purpose, piece.name, *size, want.count, 0, want.user, grain)


def motifs_made(setting: Setting) -> Counter[tuple[str, str, str]]:
    """Count the motifs of all panels by recipe, fabric and panel."""
    counts: Counter[tuple[str, str, str]] = Counter()
    for node, times in times_made(setting.top).items():
        if isinstance(node, Panel):
            for motif in node.motifs:
                counts[motif.recipe, motif.fabric, node.name] += times
    return counts


def _motif_want(design: Design, blocks: Blocks, motif: tuple[str, str, str], count: int) -> _Want:
    recipe, fabric, panel = motif
    width, height = blank_size(blocks.master(recipe).shape, design.recipe(recipe), design)
    name = _named("square for a shape", width, height)
    return _Want(fabric, Purpose.SHAPE, name, width, height, count, 0, f"motifs of {panel}")


def _motif_wants(design: Design, blocks: Blocks, setting: Setting) -> Iterable[_Want]:
    for motif, count in motifs_made(setting).items():
        yield _motif_want(design, blocks, motif, count)


def _motif_counts(
    design: Design, blocks: Blocks, setting: Setting, labels: dict[_Key, str]
) -> Iterable[MotifCount]:
    counts: Counter[tuple[str, str, str]] = Counter()
    for motif, count in motifs_made(setting).items():
        recipe, fabric, _ = motif
        counts[recipe, fabric, labels[_motif_want(design, blocks, motif, count).key()]] += count
    for (recipe, fabric, label), count in counts.items():
        yield MotifCount(recipe, fabric, label, count)


def _binding_want(design: Design, setting: Setting) -> _Want:
    run = to_cut(2 * (setting.width + setting.height) + design.making.binding_extra, design.units)
    letter, strip = design.binding_fabric, design.binding_width
    if design.binding_kind is BindingKind.STRAIGHT:
        return _Want(letter, Purpose.BINDING, "binding", run, strip, 1, 0, "binding")
    usable = design.fabric(letter).width
    short, along = bias_sheet(run, strip, usable, design.making.seam, design.units)
    name = "bias square" if short == along else "bias rectangle"
    return _Want(letter, Purpose.BIAS, name, along, short, 1, 0, "binding")


def _backing_want(design: Design, setting: Setting) -> _Want:
    over = 2 * design.making.overage
    width, height = (to_cut(side + over, design.units) for side in (setting.width, setting.height))
    fabric = design.backing_fabric
    return _Want(fabric, Purpose.BACKING, "backing", width, height, 1, 0, "backing", Grain.LENGTHWISE)


def _labelled(design: Design, wants: list[_Want]) -> tuple[tuple[Piece, ...], dict[_Key, str]]:
    """Make equal wishes one, order them as a pattern lists them, and give each its letter and number."""
    groups: dict[_Key, list[_Want]] = defaultdict(list)
    for want in wants:
        groups[want.key()].append(want)
    pieces: list[Piece] = []
    labels: dict[_Key, str] = {}
    for fabric in design.fabrics:
        mine = [group for group in groups.values() if group[0].fabric == fabric.letter]
        for number, group in enumerate(sorted(mine, key=_listing_order), start=1):
            label = f"{fabric.letter}{number}"
            labels[group[0].key()] = label
            pieces.append(_piece(label, group, fabric.direction))
    return tuple(pieces), labels


def _listing_order(group: list[_Want]) -> tuple[int, Length, Length]:
    first = group[0]
    return list(Purpose).index(first.purpose), -first.length, -first.width


def _piece(label: str, group: list[_Want], direction: Direction) -> Piece:
    first = group[0]
    grain = first.grain
    if grain is Grain.ANY and direction is not Direction.NONE:
        grain = Grain.LENGTHWISE if first.name == UPRIGHT_STRIP else Grain.CROSSWISE
    return Piece(
        label=label,
        name=first.name,
        fabric=first.fabric,
        purpose=first.purpose,
        length=first.length,
        width=first.width,
        count=sum(w.count for w in group),
        spare=sum(w.spare for w in group),
        grain=grain,
        used_for=", ".join(dict.fromkeys(w.user for w in group)),
    )
