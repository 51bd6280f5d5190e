"""What each action does, in a few words with every figure but outlines (which the text of the blocks has)."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from itertools import groupby

from quarterturn.measure import Length
from quarterturn.steps.model import (
    Action,
    AddBorder,
    Bind,
    Crease,
    CutApart,
    CutAway,
    CutOut,
    CutPanels,
    CutStrips,
    FuseRings,
    FuseToGround,
    JoinEnds,
    JoinPanels,
    LabelStacks,
    LayerQuilt,
    LayOut,
    QuiltLayers,
    SetAside,
    SewLine,
    StitchEdge,
    Straighten,
    Subcut,
    TraceRings,
    Trim,
)
from quarterturn.steps.things import Placed

Plain = Callable[[Length | float], str]
"""Prints a length in the units of the pattern."""


def doing(action: Action, plain: Plain) -> str:
    """Say what is done."""
    match action:
        case Straighten() | CutStrips() | Subcut() | JoinEnds() | CutPanels() | SetAside():
            return _cutting(action, plain)
        case TraceRings() | FuseRings() | CutOut() | Crease() | FuseToGround() | StitchEdge():
            return _fusing(action, plain)
        case CutApart() | CutAway() | Trim() | LabelStacks():
            return _units(action, plain)
        case LayOut() | SewLine() | AddBorder():
            return _sewing(action, plain)
        case JoinPanels() | LayerQuilt() | QuiltLayers() | Bind():
            return _finishing(action, plain)


def _cutting(action: Straighten | CutStrips | Subcut | JoinEnds | CutPanels | SetAside, plain: Plain) -> str:
    match action:
        case Straighten(fabric, loss):
            return f"straighten {fabric}, {plain(loss)} at most"
        case CutStrips(fabric, height):
            return f"cut strips of {fabric}, {plain(height)} high"
        case Subcut(crosscuts):
            each = (f"{c.count} {c.piece} of {plain(c.along)} × {plain(c.across)}" for c in crosscuts)
            return f"subcut each into {', '.join(each)}"
        case JoinEnds(method, loss):
            return f"join ends with {method.value} seams, {plain(loss)} lost in each"
        case CutPanels(fabric, length):
            return f"cut panels of {fabric}, {plain(length)} long"
        case SetAside(reason):
            return f"set aside ({reason})"


def _fusing(
    action: TraceRings | FuseRings | CutOut | Crease | FuseToGround | StitchEdge, plain: Plain
) -> str:
    match action:
        case TraceRings():
            room = f"rooms of {plain(action.room_width)} × {plain(action.room_height)}, {plain(action.gap)} apart"
            hand = "" if action.same_mirrored else ", mirrored"
            return f"trace {action.recipe} on the web{hand}, {action.per_row} to a row, {room}; cut the rings out"
        case FuseRings(recipe):
            return f"fuse {recipe} rings to the wrong side"
        case CutOut(recipe):
            return f"cut {recipe} out on the drawn line"
        case Crease(cuts):
            return f"crease {len(cuts)} ways through the middle"
        case FuseToGround(code, recipe):
            return f"fuse {recipe} to the ground of {code}, middle on middle"
        case StitchEdge():
            return f"stitch {plain(round(action.edge, 9))} of edge, thread to match {action.thread_fabric}"


def _units(action: CutApart | CutAway | Trim | LabelStacks, plain: Plain) -> str:
    match action:
        case CutApart():
            return f"cut {action.code} apart by {len(action.cuts)} cuts into {len(action.parts)}"
        case CutAway(inside):
            return f"cut the ground away behind the shape, {plain(inside)} inside the stitching"
        case Trim(side):
            return f"trim the outer edges to {plain(side)}"
        case LabelStacks(stacks):
            return f"stack and label {', '.join(f'{pile.count} {pile.label}' for pile in stacks)}"


def _sewing(action: LayOut | SewLine | AddBorder, plain: Plain) -> str:
    match action:
        case LayOut(rows):
            return f"lay out {len(rows)} rows of {len(rows[0])}"
        case SewLine(parts, way, seam, press):
            pressed = "open" if press is None else f"to the {press.value}"
            return f"sew towards the {way.value}, {plain(seam)} seam, press {pressed}: {line_of_parts(parts)}"
        case AddBorder(side, seam):
            return f"add a border at the {side.value}, {plain(seam)} seam, press to the border"


def _finishing(action: JoinPanels | LayerQuilt | QuiltLayers | Bind, plain: Plain) -> str:
    match action:
        case JoinPanels(seam, runs_down):
            return f"join panels with {'upright' if runs_down else 'level'} seams of {plain(seam)}, trim the sheet"
        case LayerQuilt(overage):
            return f"layer, {plain(overage)} beyond the finished edge all round"
        case QuiltLayers():
            return "quilt, and trim to the edge of the top"
        case Bind(seam, strip_width):
            return f"bind with a strip of {plain(strip_width)}, {plain(seam)} seam"


def line_of_parts(parts: Iterable[Placed]) -> str:
    """Write parts in their order; neighbours of one kind share its name: `pair 1 2 2 1, unit a3`.

    Units have their turn behind their code, as in the map; other parts lie as they were sewn.
    """
    words = [_name_and_rest(part) for part in parts]
    groups = groupby(words, key=lambda word: word[0])
    return ", ".join(f"{name} {' '.join(rest for _, rest in group)}" for name, group in groups)


def _name_and_rest(part: Placed) -> tuple[str, str]:
    name, _, rest = part.label.partition(" ")
    turned = f"@{part.turn}" if part.turn else ""
    return name, f"{rest}{part.turn}" if name == "unit" else f"{rest}{turned}"


def map_rows(rows: Sequence[Sequence[Placed]]) -> list[str]:
    """Write a layout as a map: `a2 a3 b0`, a line for each row."""
    return [" ".join(f"{part.label.partition(' ')[2]}{part.turn}" for part in row) for row in rows]
