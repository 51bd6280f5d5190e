"""Join a half of one master to the other half of a second, along the line where both were cut."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from quarterturn.blocks.apart import Layers, Piece, in_order, kept_within, moved
from quarterturn.blocks.kinds import as_length, laying, turn_of, unit_of, with_mirror_images
from quarterturn.blocks.model import Half, Layer, Lie, Master, Rejoining, Unit, half_part
from quarterturn.design import FIRST, SECOND, Rejoined
from quarterturn.geometry import (
    Line,
    Motion,
    Path,
    Region,
    Segment,
    StraightLine,
    difference_area,
    keep_left,
    merged,
    offset_path,
    path_bounds,
    rectangle,
    shift,
)

_NOTHING = 1e-6
"""Areas below this, in square inches, are the noise of a polygon overlay."""


def rejoin(recipe: Rejoined, master: Master) -> Rejoining:
    """Return the blocks that two masters of one recipe, cut once, give when their halves change places.

    Each half loses a seam allowance along the cut; what is left of the two lies on either side of the line of the
    cut, which is where the seam is.
    """
    (line,), seam = master.cuts, float(master.seam)
    trimmed = _trimmed(recipe, master)
    pieces = [_block(master, firsts, line, trimmed, seam) for firsts in (0, 1)]
    back = laying(pieces[1], pieces[0])
    order = in_order([piece.name for piece in pieces])
    same, kept = back is not None, order if back is None or recipe.base else [0]
    box = path_bounds(pieces[0].sewn_outline)
    frame = shift(-complex(float(as_length(box.left)), float(as_length(box.top))))
    named = bool(recipe.base) or not same
    units = with_mirror_images(
        [_unit(recipe, master, pieces[k], k, frame, named=named) for k in kept], [pieces[k] for k in kept]
    )
    first, second = (piece.name for piece in pieces)
    lies = (
        Lie(first, "" if same else first, 0),
        Lie(second, "" if same else second, turn_of(back) if back else 0),
    )
    return Rejoining(
        recipe=recipe.name,
        of=recipe.of,
        cut=line,
        trim_width=recipe.trim_width,
        trim_height=recipe.trim_height,
        raw_outline=frame.path(pieces[0].outline),
        seam=master.seam,
        units=units,
        blocks=(kept.index(0), kept.index(1)) if len(kept) > 1 else (0, 0),
        lies=lies,
    )


def _trimmed(recipe: Rejoined, master: Master) -> Path:
    across = float(recipe.finished_width / 2 + master.seam)
    down = float(recipe.finished_height / 2 + master.seam)
    return rectangle(-across, -down, across, down)


def _halves(master: Master, line: StraightLine) -> tuple[tuple[Motion, StraightLine], ...]:
    """Return for each half how it moves, from its unit's frame, to the seam, and the line on whose left it lies."""
    off = line.direction * 1j * float(master.seam)
    ways = ((master.parts[0], -off, line), (master.parts[1], off, line.reversed()))
    return tuple((part.motion.inverse().then(shift(by)), beside) for part, by, beside in ways)


def _block(master: Master, firsts: int, line: StraightLine, trimmed: Path, seam: float) -> Piece:
    """Return the block with the first master's half `firsts` as it lies about the middle of the master."""
    halves = [_half_layers(master, k, line) for k in (firsts, 1 - firsts)]
    named = [
        Layer(half_part(which, layer.part), layer.region, layer.shape)
        for which, layers in zip((FIRST, SECOND), halves, strict=True)
        for layer in layers
    ]
    raw = tuple(named)
    return Piece(
        name=master.parts[firsts].name,
        outline=_outline(halves, line, trimmed),
        raw=raw,
        trimmed=kept_within(raw, trimmed),
        cut_outline=trimmed,
        sewn_outline=offset_path(trimmed, -seam).paths[0],
    )


def _outline(halves: Sequence[Layers], line: StraightLine, trimmed: Path) -> Path:
    """Return the outline of what two halves cover, before it is trimmed; exact where there is nothing to trim.

    Their ends may lie apart along the line on which they touch: there the outline runs along it.
    """
    (first, second) = (_opened(layers[0].region.paths[0], line) for layers in halves)
    ends = (*first, Line(first[-1].end, second[0].start), *second, Line(second[-1].end, first[0].start))
    whole = merged(Path(ends))
    return trimmed if difference_area(Region((whole,)), Region((trimmed,))) < _NOTHING else whole


def _opened(path: Path, line: StraightLine) -> tuple[Segment, ...]:
    """Return the segments of a path from behind the one that lies along a line round to before it."""
    gap = next(
        k
        for k, s in enumerate(path.segments)
        if max(abs(line.side(s.start)), abs(line.side(s.end))) < _NOTHING
    )
    return (*path.segments[gap + 1 :], *path.segments[:gap])


def _half_layers(master: Master, which: int, line: StraightLine) -> Layers:
    motion, beside = _halves(master, line)[which]
    layers = moved(master.units[master.parts[which].unit].cut_layers, motion)
    kept = (Layer(layer.part, keep_left(layer.region, beside), layer.shape) for layer in layers)
    return tuple(layer for layer in kept if not layer.region.is_empty())


def _unit(recipe: Rejoined, master: Master, block: Piece, firsts: int, frame: Motion, *, named: bool) -> Unit:
    ways = _halves(master, master.cuts[0])
    halves = tuple(
        Half(which, master.parts[k].unit, ways[k][0].then(frame))
        for which, k in ((FIRST, firsts), (SECOND, 1 - firsts))
    )
    unit = unit_of(block, frame, master.seam, block.name if named else "")
    return replace(unit, width=recipe.finished_width, height=recipe.finished_height, halves=halves)
