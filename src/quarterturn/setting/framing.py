"""Borders round a section, from the inside outwards: plain, pieced, and coping strips."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from quarterturn.design import (
    ROOT,
    TOP,
    AnyBorder,
    Border,
    ClothCell,
    Coping,
    Corner,
    MapCell,
    PiecedBorder,
    SectionCell,
    border_key,
)
from quarterturn.measure import Length
from quarterturn.setting.remedies import NARROWEST, remedy_for, shorter_ways
from quarterturn.setting.tree import Child, ClothUse, Frame, Framed, Node, PlainCloth

if TYPE_CHECKING:
    from quarterturn.setting.building import Builder

Size = tuple[Length, Length]


def framed(builder: Builder, name: str, centre: Node, borders: Sequence[AnyBorder]) -> Node:
    """Return a section with its borders; the section itself where it has none."""
    width, height = centre.width, centre.height
    frames: list[Frame] = []
    fits = True
    for number, border in enumerate(borders):
        key, known = border_key(name, number), len(builder.notes.findings)
        frame = _frame(builder, key, border, (width, height))
        fits = builder.notes.settle(key, known, fits)
        if frame.side_depth or frame.end_depth:
            frames.append(frame)
        width, height = width + 2 * frame.side_depth, height + 2 * frame.end_depth
    if not frames:
        return centre
    return Framed(TOP if name == ROOT else name, Child(centre), tuple(frames), width, height)


def frames_of(top: Node, borders: Sequence[AnyBorder]) -> tuple[Frame | None, ...]:
    """Return the frame of each border round a node that has them; None for a coping that has nothing to bring."""
    frames = iter(top.frames if isinstance(top, Framed) else ())
    inner = top.centre if isinstance(top, Framed) else top
    width, height = inner.width, inner.height
    found: list[Frame | None] = []
    for border in borders:
        idle = isinstance(border, Coping) and (border.width, border.height) == (width, height)
        frame = None if idle else next(frames)
        if frame is not None:
            width, height = width + 2 * frame.side_depth, height + 2 * frame.end_depth
        found.append(frame)
    return tuple(found)


def _frame(builder: Builder, key: str, border: AnyBorder, inner: Size) -> Frame:
    if isinstance(border, Border):
        return _plain(border, inner)
    if isinstance(border, Coping):
        return _coping(builder, key, border, inner)
    return _pieced(builder, key, border, inner)


def _plain(border: Border, inner: Size) -> Frame:
    depth = border.width
    if border.corner is Corner.BUTTED:
        return _butted(ClothUse.BORDER, border.fabric, inner, (depth, depth), border.sides_first)
    over = 2 * depth if border.corner is Corner.MITRED else 0
    strips = _pairs(
        Child(PlainCloth(ClothUse.BORDER, border.fabric, depth, inner[1] + over)),
        Child(PlainCloth(ClothUse.BORDER, border.fabric, inner[0] + over, depth)),
    )
    stone = Child(PlainCloth(ClothUse.CORNERSTONE, border.cornerstone, depth, depth))
    corners = (stone,) * 4 if border.corner is Corner.CORNERSTONES else ()
    return Frame(border.corner, border.sides_first, strips, corners, depth, depth)


def _butted(use: ClothUse, fabric: str, inner: Size, depths: Size, sides_first: bool) -> Frame:
    """The pair sewn first has the length of the edge as it is; the other pair covers its ends."""
    (width, height), (side, end) = inner, depths
    upright = PlainCloth(use, fabric, side, height if sides_first else height + 2 * end)
    level = PlainCloth(use, fabric, width + 2 * side if sides_first else width, end)
    return Frame(Corner.BUTTED, sides_first, _pairs(Child(upright), Child(level)), (), side, end)


def _pairs(side: Child, end: Child) -> tuple[Child, Child, Child, Child]:
    return side, side, end, end


def _coping(builder: Builder, key: str, border: Coping, inner: Size) -> Frame:
    missing = (border.width - inner[0], border.height - inner[1])
    show = builder.notes.show
    for over, word in zip(missing, ("wide", "high"), strict=True):
        if over < 0:
            sentence = f"What is to be coped is {show(-over)} too {word} already."
            least = " and ".join(
                show(max(a, b)) for a, b in zip(inner, (border.width, border.height), strict=True)
            )
            builder.notes.add("edges-misfit", key, sentence, f"Make it no less than {least}.")
        elif 0 < over < 2 * NARROWEST:
            sentence = f"The coping strips would be {show(over / 2)} wide, which nobody can sew."
            remedy = f"Bring it to its own size there, or to one {show(2 * NARROWEST)} larger at least."
            builder.notes.add("coping-too-narrow", key, sentence, remedy)
    side, end = (max(each, Length(0)) / 2 for each in missing)
    return _butted(ClothUse.COPING, border.fabric, inner, (side, end), border.sides_first)


def _pieced(builder: Builder, key: str, border: PiecedBorder, inner: Size) -> Frame:
    side, end = builder.sized(border.sides), builder.sized(border.ends)
    assert side is not None, "a section has a size"
    assert end is not None, "a section has a size"
    depths = side.width, end.height
    upright, level = inner[1], inner[0]
    if border.corners is None and border.sides_first:
        level += 2 * side.width
    elif border.corners is None:
        upright += 2 * end.height
    _hold(builder, f"{key}.sides", border.sides, "height", side.height, upright)
    _hold(builder, f"{key}.ends", border.ends, "width", end.width, level)
    corners = () if border.corners is None else _corners(builder, key, border.corners, depths)
    strips = (side, _further(side, 2), end, _further(end, 2))
    corner = Corner.CORNERSTONES if corners else Corner.BUTTED
    return Frame(corner, border.sides_first, strips, corners, *depths)


def _further(child: Child, quarters: int) -> Child:
    return Child(child.node, (child.turn + quarters) % 4)


def _corners(builder: Builder, key: str, cell: MapCell, depths: Size) -> tuple[Child, ...]:
    """Return the four corners, each turned a quarter further than the one before it."""
    if isinstance(cell, ClothCell):
        return (Child(PlainCloth(ClothUse.CORNERSTONE, cell.fabric, *depths)),) * 4
    first = builder.sized(cell)
    assert first is not None, "only plain cloth has no size of its own"
    corners = tuple(_further(first, quarters) for quarters in range(4))
    show = builder.notes.show
    for corner in corners:
        if (corner.width, corner.height) != depths:
            sentence = (
                f"A corner of the border is {show(depths[0])} × {show(depths[1])}, and what is to fill it is "
                f"{show(corner.width)} × {show(corner.height)}."
            )
            remedy = "Fill it with plain cloth, or make both pairs of strips as deep as the corner is wide."
            builder.notes.add("edges-misfit", f"{key}.corners", sentence, remedy)
            break
    return corners


def _hold(builder: Builder, key: str, cell: SectionCell, measure: str, size: Length, edge: Length) -> None:
    """Note a pieced strip that has not the length of its edge."""
    if size == edge:
        return
    show = builder.notes.show
    more = "short" if size < edge else "long"
    sentence = (
        f"The border strip `{cell.section}` is {show(size)} long and its edge {show(edge)}: "
        f"it is {show(abs(edge - size))} too {more}."
    )
    if size < edge:
        remedy = remedy_for(builder, cell, measure, size, edge)
    else:
        ways = shorter_ways(builder, cell, measure, edge)
        strip = (size - edge) / 2
        if strip >= NARROWEST:
            ways.append(f'put a border of kind "coping" before it, whose strips are {show(strip)} wide')
        sentence_of_ways = ", or ".join(ways)
        remedy = f"{sentence_of_ways[0].upper()}{sentence_of_ways[1:]}."
    builder.notes.add("edges-misfit", key, sentence, remedy)
