"""What the actions of sections do, in a few words: on point, mitred, panels, strips trimmed to fit."""

from __future__ import annotations

import cmath
import math

from quarterturn.steps.lines import Plain, pressed
from quarterturn.steps.sections import (
    AddCorners,
    AddMitred,
    AddTriangles,
    CutAwayBehind,
    CutTriangles,
    EndTriangle,
    FuseToPanel,
    JoinRows,
    PlacedMotif,
    SetIn,
    SquareUp,
    StitchMotifs,
    TrimToFit,
)
from quarterturn.steps.things import Placed


def section_doing(
    action: FuseToPanel | StitchMotifs | CutAwayBehind | TrimToFit | AddMitred, plain: Plain
) -> str:
    """Say what is done to panels, strips and mitred borders."""
    match action:
        case FuseToPanel(panel, motifs):
            return f"fuse to {panel}: {', '.join(_motif(motif, plain) for motif in motifs)}"
        case StitchMotifs(_, edges):
            each = (
                f"{e.motifs} of {plain(round(e.edge, 9))} in all to match {e.thread_fabric}" for e in edges
            )
            return f"stitch the edges of the motifs: {', '.join(each)}"
        case CutAwayBehind(inside):
            return f"cut the panel away behind the motifs, {plain(inside)} inside the stitching"
        case TrimToFit(fits, length, width):
            return f"measure {fits}, and trim to it: about {plain(length)} × {plain(width)}"
        case AddMitred(sides, ends, depth, seam):
            strips = f"{sides} at the sides, {ends} at the ends"
            return f"add mitred borders {plain(depth)} deep, {strips}, {plain(seam)} seam"


def _motif(motif: PlacedMotif, plain: Plain) -> str:
    middle = motif.motion(0j)
    degrees = round(math.degrees(cmath.phase(motif.motion.factor))) % 360
    turned = f" turned {degrees}°" if degrees else ""
    return f"{motif.label} at {plain(round(middle.real, 6))}, {plain(round(middle.imag, 6))}{turned}"


def slanting_doing(
    action: CutTriangles | AddTriangles | JoinRows | SetIn | AddCorners | SquareUp, plain: Plain
) -> str:
    """Say what is done to work on point."""
    match action:
        case CutTriangles(cuts):
            return f"cut corner to corner {'once' if cuts == 1 else 'both ways'}"
        case AddTriangles(left, right, seam, press):
            ends = " and ".join(_end(name, end) for name, end in (("left", left), ("right", right)) if end)
            return f"add triangles, {ends}, {plain(seam)} seam, {pressed(press)}, trim the points level"
        case JoinRows(parts, offsets, seam, press):
            rows = zip(parts, offsets, strict=True)
            each = ", ".join(f"{_name(part)} from {plain(offset)}" for part, offset in rows)
            return f"join downwards, {plain(seam)} seam, {pressed(press)}: {each}"
        case SetIn(places, seam):
            each = ", ".join(f"@{p.turn} at {plain(p.x)}, {plain(p.y)}" for p in places)
            return f"set triangles in, {plain(seam)} seam: {each}"
        case AddCorners(corners, level, across, seam):
            each = ", ".join(f"{c.side.value} at {plain(c.middle)}" for c in corners)
            return f"trim level {plain(level)} inside, {plain(across)} across; add corners, {plain(seam)} seam: {each}"
        case SquareUp(beyond):
            return f"turn upright and square up, {plain(beyond)} beyond the points"


def _end(name: str, end: EndTriangle) -> str:
    return f"{name} @{end.turn} level with the {end.level.value}"


def _name(part: Placed) -> str:
    return f"{part.label}@{part.turn}" if part.turn else part.label
