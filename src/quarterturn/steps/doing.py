"""What each action does, in a few words with every figure but outlines (which the text of the blocks has)."""

from __future__ import annotations

import cmath
import math
from collections.abc import Sequence

from quarterturn.design import Fold
from quarterturn.geometry import EPSILON, Motion, Point, StraightLine
from quarterturn.materials import Crosscut
from quarterturn.steps.doing_sections import section_doing, slanting_doing
from quarterturn.steps.lines import Plain, line_of_parts, pressed
from quarterturn.steps.making import (
    Behind,
    Crease,
    CutApart,
    CutAway,
    CutOut,
    FuseRings,
    FuseToGround,
    Reference,
    Rejoin,
    StitchEdge,
    TraceRings,
    Trim,
    TrimLine,
)
from quarterturn.steps.model import (
    Action,
    AddBorder,
    Bind,
    CutBias,
    CutPanels,
    CutParcels,
    CutRest,
    CutSegments,
    CutStrips,
    JoinEnds,
    JoinPanels,
    LabelStacks,
    LayerQuilt,
    LayOut,
    QuiltLayers,
    SetAside,
    SewLine,
    SquareParcels,
    Straighten,
    Subcut,
)
from quarterturn.steps.nested import TraceNested
from quarterturn.steps.sections import AddMitred, CutAwayBehind, FuseToPanel, StitchMotifs, TrimToFit
from quarterturn.steps.things import Placed


def doing(action: Action, plain: Plain) -> str:
    """Say what is done."""
    match action:
        case (
            Straighten()
            | CutStrips()
            | Subcut()
            | CutSegments()
            | CutRest()
            | JoinEnds()
            | CutPanels()
            | SetAside()
        ):
            return _cutting(action, plain)
        case SquareParcels(_, stock, (across, along)):
            return (
                f"take pieces of {stock} and square them up, {plain(across)} off across, {plain(along)} along"
            )
        case CutParcels(fabric, upright):
            return f"cut pieces of {fabric} into strips {'along' if upright else 'across'} the cloth"
        case TraceRings() | TraceNested() | FuseRings() | CutOut() | Crease() | FuseToGround() | StitchEdge():
            return _fusing(action, plain)
        case CutApart() | CutAway() | Trim() | Rejoin() | LabelStacks():
            return _units(action, plain)
        case LayOut() | SewLine() | AddBorder():
            return _sewing(action, plain)
        case JoinPanels() | LayerQuilt() | QuiltLayers() | CutBias() | Bind():
            return _finishing(action, plain)
        case FuseToPanel() | StitchMotifs() | CutAwayBehind() | TrimToFit() | AddMitred():
            return section_doing(action, plain)
        case _:
            return slanting_doing(action, plain)


def _cutting(
    action: Straighten | CutStrips | Subcut | CutSegments | CutRest | JoinEnds | CutPanels | SetAside,
    plain: Plain,
) -> str:
    match action:
        case Straighten(fabric, loss):
            return f"straighten {fabric}, {plain(loss)} at most"
        case CutStrips(fabric, height):
            return f"cut strips of {fabric}, {plain(height)} high"
        case Subcut(crosscuts, layers):
            return f"subcut each into {_crosscuts(crosscuts, plain)}{_at_once(layers)}"
        case CutSegments(along, across, crosscuts, layers):
            size = f"{plain(along)} × {plain(across)}"
            return f"split each of {size} into {_crosscuts(crosscuts, plain)}{_at_once(layers)}"
        case CutRest(fabric):
            return f"cut strips of {fabric} from what is left"
        case JoinEnds(method, loss):
            return f"join ends with {method.value} seams, {plain(loss)} lost in each"
        case CutPanels(fabric, length):
            return f"cut panels of {fabric}, {plain(length)} long"
        case SetAside(reason):
            return f"set aside ({reason})"


def _crosscuts(crosscuts: Sequence[Crosscut], plain: Plain) -> str:
    return ", ".join(f"{c.count} {c.piece} of {plain(c.along)} × {plain(c.across)}" for c in crosscuts)


def _at_once(layers: int) -> str:
    return f", up to {layers} layers at once" if layers > 1 else ""


def _fusing(
    action: TraceRings | TraceNested | FuseRings | CutOut | Crease | FuseToGround | StitchEdge, plain: Plain
) -> str:
    match action:
        case TraceRings():
            return _in_rows(action, plain)
        case TraceNested():
            return _nesting(action, plain)
        case FuseRings():
            return f"fuse {action.shape} rings to the wrong side"
        case CutOut():
            return f"cut {action.shape} out on the drawn line"
        case Crease():
            return _creasing(action, plain)
        case FuseToGround():
            return f"fuse {action.shape} to the ground of {action.code}, {_places(action, plain)}"
        case StitchEdge():
            return f"stitch {plain(round(action.edge, 9))} of edge, thread to match {action.thread_fabric}"


def _in_rows(action: TraceRings, plain: Plain) -> str:
    room = f"rooms of {plain(action.room_width)} × {plain(action.room_height)}, {plain(action.gap)} apart"
    hand = "" if action.same_mirrored else ", mirrored"
    sheets = f", {action.rows_on_sheet} rows to a sheet" if action.rows_on_sheet else ""
    rule = action.stagger
    if rule is None:
        row = f"{action.per_row} to a row, {room}"
        return f"trace {action.shape} on the web{hand}, {row}{sheets}; cut the rings out"
    turned = (", turned 90°" if rule.quarter else "") + (", 180° more in even rows" if rule.flipped else "")
    return (
        f"trace {action.shape} on {plain(action.length)} of web{hand}, rows of {rule.odd} and {rule.even} in turn, "
        f"{plain(rule.pitch)} apart from {plain(rule.first)} and {plain(rule.second)}, rows {plain(rule.down)} and "
        f"{plain(rule.back)} apart from {plain(rule.top)}{turned}{sheets}, {room}; cut the rings out"
    )


def _nesting(action: TraceNested, plain: Plain) -> str:
    hands = ", ".join(f"{t.shape}{'' if t.same_mirrored else ' mirrored'}" for t in action.tracings)
    said = f"trace {hands} on {plain(action.length)} of web, {plain(action.gap)} apart, at {_traced_at(action, plain)}"
    return f"{said}; cut the rings out, the outermost first"


def _traced_at(action: TraceNested, plain: Plain) -> str:
    return ", ".join(
        f"{number} {place.shape} {_at(place.middle, plain)}{_turn(place.motion)}"
        + (f" on sheet {place.sheet + 1}" if place.sheet else "")
        + ("" if place.within is None else f" in {place.within + 1}")
        for number, place in enumerate(action.places, start=1)
    )


def _creasing(action: Crease, plain: Plain) -> str:
    drawn = (f"draw a line through {_at(line.through, plain)} {_way(line)}" for line in action.drawn)
    middles = (f"mark {_at(middle, plain)}" for middle in action.middles)
    return "; ".join((f"crease {len(action.folds)} ways through the middle", *drawn, *middles))


def _places(action: FuseToGround, plain: Plain) -> str:
    """Say where the middles of shapes come, measured from that of the ground, and how the shapes are turned."""
    if all(abs(place.motion(0j)) < EPSILON and place.motion.factor == 1 for place in action.places):
        return "middle on middle"
    return ", ".join(
        f"middle at {_at(place.motion(0j), plain)}{_turn(place.motion)}" for place in action.places
    )


def _at(point: Point, plain: Plain) -> str:
    return f"({plain(round(point.real, 9) + 0.0)}, {plain(round(point.imag, 9) + 0.0)})"


def _turn(motion: Motion) -> str:
    turned = round(math.degrees(cmath.phase(motion.factor)), 6) % 360
    return f" turned {turned:g}°" if turned else ""


def _way(line: StraightLine) -> str:
    return f"at {round(math.degrees(cmath.phase(line.direction)), 6) % 180:g}°"


def _units(action: CutApart | CutAway | Trim | Rejoin | LabelStacks, plain: Plain) -> str:
    match action:
        case CutApart():
            return f"cut {action.code} apart by {len(action.cuts)} cuts into {len(action.parts)}"
        case CutAway():
            return "; ".join(_behind(behind, len(action.behind), plain) for behind in action.behind)
        case Trim(lines=lines):
            return f"trim the outer edges to {_trims(lines, plain)}"
        case Rejoin():
            (first, _), (second, _) = action.halves
            press = "open" if action.press_to is None else f"to {action.halves[action.press_to][0]}"
            ears = f", trim the ears at {action.ears} ends" if action.ears else ""
            return f"join {first} to {second} along the cut, {plain(action.seam)} seam, press {press}{ears}"
        case LabelStacks(stacks):
            return f"stack and label {', '.join(f'{pile.count} {pile.label}' for pile in stacks)}"


def _behind(behind: Behind, shapes: int, plain: Plain) -> str:
    lower = len(behind.layers) - 1
    what = "the ground" if not lower else f"the ground and {lower} {'shape' if lower == 1 else 'shapes'}"
    which = "the shape" if shapes == 1 else f"shape {behind.number + 1}, {behind.part}"
    return f"cut {what} away behind {which}, {plain(behind.inside)} inside the stitching"


def _trims(lines: tuple[TrimLine, ...], plain: Plain) -> str:
    """Say how far from what: one figure where all trims are alike, measured from edges that were cut."""
    alike = {(line.kind, line.distance) for line in lines}
    if len(alike) == 1 and lines[0].kind is Reference.CUT:
        return plain(lines[0].distance)
    return ", ".join(f"{plain(line.distance)} from the {line.kind.value}" for line in lines)


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


def _finishing(action: JoinPanels | LayerQuilt | QuiltLayers | CutBias | Bind, plain: Plain) -> str:
    match action:
        case JoinPanels(seam, runs_down):
            way = "vertical" if runs_down else "horizontal"
            return f"join panels with {way} seams of {plain(seam)}, trim the sheet"
        case LayerQuilt(overage):
            return f"layer, {plain(overage)} beyond the finished edge all round"
        case QuiltLayers():
            return "quilt, and trim to the edge of the top"
        case CutBias(seam, strip_width, rows):
            tube = f"sew to a tube with {plain(seam)} seams"
            return f"{tube}, cut it round and round in {rows} rows of {plain(strip_width)}"
        case Bind(seam, strip_width, fold):
            folded = ", folded single" if fold is Fold.SINGLE else ""
            return f"bind with a strip of {plain(strip_width)}{folded}, {plain(seam)} seam"


def map_rows(rows: Sequence[Sequence[Placed]]) -> list[str]:
    """Write a layout as a map: `a2 a3 b0`, a line for each row."""
    return [" ".join(_in_map(part) for part in row) for row in rows]


def _in_map(part: Placed) -> str:
    name, _, rest = part.label.partition(" ")
    if name == "unit":
        return f"{rest}{part.turn}"
    return f"{part.label}@{part.turn}" if part.turn else part.label
