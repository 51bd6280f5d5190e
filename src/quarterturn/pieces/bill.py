"""List every piece that must exist before sewing."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from typing import TypeAlias

from quarterturn.blocks import Blocks, FusedShape, Master
from quarterturn.design import GROUND, Design, Direction, Recipe, RecipeKind
from quarterturn.measure import Length, Units, cut_step, cut_up
from quarterturn.pieces.counting import codes_of_masters, count_masters, count_rejoined
from quarterturn.pieces.model import Bill, Blank, Grain, MasterCount, Piece, Purpose
from quarterturn.setting import BorderStrip, Setting, Side

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
        *_border_wants(design, setting),
        *(want for each in masters for want in _master_wants(design, blocks, each)),
        _binding_want(design, setting),
        _backing_want(design, setting),
    ]
    pieces, labels = _labelled(design, wants)
    return Bill(tuple(_with_labels(design, blocks, each, labels) for each in masters), pieces, rejoined)


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


def _border_wants(design: Design, setting: Setting) -> Iterable[_Want]:
    for strip in setting.borders:
        if strip.side in (Side.LEFT, Side.TOP):
            yield _border_want(design, strip)


def _border_want(design: Design, strip: BorderStrip) -> _Want:
    """Return the wish for a pair of border strips; the opposite one is its twin.

    Of a print that must stand upright the strips for the sides are cut along the cloth.
    """
    seam, pair = design.making.seam, "side" if strip.side is Side.LEFT else "end"
    length, width = strip.length + 2 * seam, strip.depth + 2 * seam
    which = f"border {strip.ring + 1}" if len(design.borders) > 1 else "border"
    lengthwise = pair == "side" and design.fabric(strip.fabric).upright
    grain = Grain.LENGTHWISE if lengthwise else Grain.ANY
    name = f"{which}, {pair} strip"
    return _Want(strip.fabric, Purpose.BORDER, name, length, width, 2, 0, which, grain)


def _binding_want(design: Design, setting: Setting) -> _Want:
    run = 2 * (setting.width + setting.height) + design.making.binding_extra
    return _Want(
        design.binding_fabric, Purpose.BINDING, "binding", run, design.binding_width, 1, 0, "binding"
    )


def _backing_want(design: Design, setting: Setting) -> _Want:
    over = 2 * design.making.overage
    fabric, width, height = design.backing_fabric, setting.width + over, setting.height + over
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
    grain = Grain.CROSSWISE if first.grain is Grain.ANY and direction is not Direction.NONE else first.grain
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
