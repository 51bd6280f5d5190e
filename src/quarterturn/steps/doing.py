"""What each action does, in a few words with every figure but outlines (which the text of the blocks has)."""

from __future__ import annotations

from collections.abc import Sequence

from quarterturn.steps.doing_sections import section_doing, slanting_doing
from quarterturn.steps.lines import Plain, line_of_parts, pressed
from quarterturn.steps.model import (
    Action,
    AddBorder,
    Bind,
    Crease,
    CutApart,
    CutAway,
    CutOut,
    CutPanels,
    CutRest,
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
from quarterturn.steps.sections import AddMitred, CutAwayBehind, FuseToPanel, StitchMotifs, TrimToFit
from quarterturn.steps.things import Placed


def doing(action: Action, plain: Plain) -> str:
    """Say what is done."""
    match action:
        case Straighten() | CutStrips() | Subcut() | CutRest() | JoinEnds() | CutPanels() | SetAside():
            return _cutting(action, plain)
        case TraceRings() | FuseRings() | CutOut() | Crease() | FuseToGround() | StitchEdge():
            return _fusing(action, plain)
        case CutApart() | CutAway() | Trim() | LabelStacks():
            return _units(action, plain)
        case LayOut() | SewLine() | AddBorder():
            return _sewing(action, plain)
        case JoinPanels() | LayerQuilt() | QuiltLayers() | Bind():
            return _finishing(action, plain)
        case FuseToPanel() | StitchMotifs() | CutAwayBehind() | TrimToFit() | AddMitred():
            return section_doing(action, plain)
        case _:
            return slanting_doing(action, plain)


def _cutting(
    action: Straighten | CutStrips | Subcut | CutRest | JoinEnds | CutPanels | SetAside, plain: Plain
) -> str:
    match action:
        case Straighten(fabric, loss):
            return f"straighten {fabric}, {plain(loss)} at most"
        case CutStrips(fabric, height):
            return f"cut strips of {fabric}, {plain(height)} high"
        case Subcut(crosscuts):
            each = (f"{c.count} {c.piece} of {plain(c.along)} × {plain(c.across)}" for c in crosscuts)
            return f"subcut each into {', '.join(each)}"
        case CutRest(fabric):
            return f"cut strips from the rest of a band of {fabric}"
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
        case LayOut(rows, slanting, later):
            said = f"{len(rows)} slanting rows" if slanting else f"{len(rows)} rows of {len(rows[0])}"
            kept = f"; keep {', '.join(f'{pile.count} {pile.label}' for pile in later)}" if later else ""
            return f"lay out {said}{kept}"
        case SewLine(parts, way, seam, press):
            return (
                f"sew towards the {way.value}, {plain(seam)} seam, {pressed(press)}: {line_of_parts(parts)}"
            )
        case AddBorder(side, seam, turn):
            laid = f", strip turned @{turn}" if turn else ""
            return f"add a border at the {side.value}, {plain(seam)} seam, press to the border{laid}"


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


def map_rows(rows: Sequence[Sequence[Placed]]) -> list[str]:
    """Write a layout as a map: `a2 a3 b0`, a line for each row."""
    return [" ".join(_in_map(part) for part in row) for row in rows]


def _in_map(part: Placed) -> str:
    name, _, rest = part.label.partition(" ")
    if name == "unit":
        return f"{rest}{part.turn}"
    return f"{part.label}@{part.turn}" if part.turn else part.label
